"""The published schemas say what the program's own checks say, judged by another library."""

from __future__ import annotations

import json
import zipfile
from copy import deepcopy
from io import BytesIO
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from jsonschema import Draft202012Validator

from coach.documents.plan import read_plan, write_plan
from coach.documents.schemas import SCHEMAS, plan_schema, schema_text, session_schema
from coach.documents.session import read_session_document
from coach.domain.fault import Fault
from tests.documents.example import example_plan

PUBLISHED = Path(__file__).parents[2] / "docs" / "schemas"
GOLDEN = Path(__file__).parent / "golden"


def document(name: str) -> dict[str, Any]:
    archive = zipfile.ZipFile(BytesIO((GOLDEN / name).read_bytes()))
    found: dict[str, Any] = json.loads(archive.read("session.json"))
    return found


SESSION = document("session_v4.shoulder.zip")
SESSION_3 = document("session_v3.shoulder.zip")
SESSION_2 = document("session_v2.shoulder.zip")
SESSION_1 = document("session_v1.shoulder.zip")
PLAN = json.loads(write_plan(example_plan()))
SESSION_CHECK = Draft202012Validator(session_schema())
SESSION_1_CHECK, SESSION_2_CHECK, SESSION_3_CHECK = (
    Draft202012Validator(json.loads((PUBLISHED / f"session-{n}.schema.json").read_bytes()))
    for n in (1, 2, 3)
)
PLAN_CHECK = Draft202012Validator(plan_schema())


@pytest.mark.parametrize("name", SCHEMAS)
def test_the_published_schema_is_the_one_the_types_give(name: str) -> None:
    assert (PUBLISHED / name).read_text(encoding="utf-8") == schema_text(name)


@pytest.mark.parametrize("name", SCHEMAS)
def test_it_is_a_schema_of_2020_12(name: str) -> None:
    schema = json.loads((PUBLISHED / name).read_text(encoding="utf-8"))
    assert schema["$schema"] == "https://json-schema.org/draft/2020-12/schema"
    Draft202012Validator.check_schema(schema)


def test_the_golden_session_and_the_example_plan_fit() -> None:
    SESSION_CHECK.validate(SESSION)
    SESSION_3_CHECK.validate(SESSION_3)
    SESSION_2_CHECK.validate(SESSION_2)
    SESSION_1_CHECK.validate(SESSION_1)
    PLAN_CHECK.validate(PLAN)


def places(value: Any, here: tuple[str | int, ...] = ()) -> list[tuple[str | int, ...]]:
    inner = value.items() if isinstance(value, dict) else enumerate(value)
    found = []
    for key, child in inner:
        found.append((*here, key))
        if isinstance(child, dict | list):
            found += places(child, (*here, key))
    return found


OTHER_VALUES = st.one_of(
    st.sampled_from([None, True, False, [], {}, "", "left", "completed", [{}], "x" * 300, 1.0]),
    st.integers(-10, 20),
    st.sampled_from([10_001, 86_401, 10**7 + 1, 10**30, -181, 361]),
    st.floats(-1e5, 1e5, allow_nan=False),
    st.text(st.characters(min_codepoint=32, max_codepoint=126), max_size=5),
)


@st.composite
def mutated(draw: st.DrawFn, original: dict[str, Any]) -> dict[str, Any]:
    changed = deepcopy(original)
    for _ in range(draw(st.integers(1, 2))):
        place = draw(st.sampled_from(places(changed)))
        parent: Any = changed
        for step in place[:-1]:
            parent = parent[step]
        match draw(st.sampled_from(["replace", "remove", "add"])):
            case "remove":
                del parent[place[-1]]
            case "add" if isinstance(parent, dict):
                parent[draw(st.sampled_from(["note", "hold_s", "target_deg"]))] = draw(OTHER_VALUES)
            case _:
                parent[place[-1]] = draw(OTHER_VALUES)
    return changed


@settings(max_examples=200)
@given(mutated(PLAN))
def test_both_checks_agree_on_changed_plans(raw: dict[str, Any]) -> None:
    fits = PLAN_CHECK.is_valid(raw)
    refused = ""
    try:
        read_plan(json.dumps(raw).encode(), "plan.json")
    except Fault as fault:
        refused = str(fault)
    # Which movement is measured in which position and view is more than the schema says.
    assert fits == (not refused or "what cannot be measured" in refused)


@settings(max_examples=200)
@given(mutated(SESSION) | mutated(SESSION_3) | mutated(SESSION_2) | mutated(SESSION_1))
def test_both_checks_agree_on_changed_sessions(raw: dict[str, Any]) -> None:
    checks = {1: SESSION_1_CHECK, 2: SESSION_2_CHECK, 3: SESSION_3_CHECK}
    version = raw.get("version")
    check = checks.get(version, SESSION_CHECK) if isinstance(version, int) else SESSION_CHECK
    fits = check.is_valid(raw)
    refused = ""
    try:
        read_session_document(json.dumps(raw).encode(), "session.json")
    except Fault as fault:
        refused = str(fault)
    # What contradicts itself between fields is more than a schema can say.
    assert fits == (not refused or "contradicts itself" in refused)


@pytest.mark.parametrize(
    ("place", "value", "words"),
    [
        (("started_at",), "2026-02-30T10:00:00+01:00", "no date of the calendar"),
        (("exercises", 0, "planned_index"), 3, "exercise 1 is not in its plan"),
        (("exercises", 0, "ended_s"), 201.0, "exercise 1 ends after the session"),
        (("exercises", 0, "started_s"), 131.0, "exercise 1, it ends before it starts"),
        (("exercises", 0, "repetitions", 0, "end_s"), 19.0, "ends before it starts"),
        (("exercises", 0, "repetitions", 0, "held_s"), 30.5, "longer than it lasted"),
        (("exercises", 0, "repetitions", 0, "start_s"), 11.0, "starts before the exercise"),
        (("exercises", 0, "repetitions", 2, "end_s"), 131.0, "ends after the exercise"),
        (("exercises", 0, "repetitions", 1, "unit"), "deg", "2 of hand-behind-back is in the unit"),
        (("exercises", 2, "timed", 0, "held_s"), 30.5, "timed hold 1 was held for longer"),
        (("exercises", 2, "timed", 0, "end_s"), 147.0, "timed hold 1 was held for longer"),
        (("exercises", 2, "timed", 0, "start_s"), 139.0, "timed hold 1 starts outside"),
        (("exercises", 2, "exercise"), None, "neither an exercise nor a movement"),
    ],
)
def test_a_session_that_contradicts_itself_is_refused(
    place: tuple[str | int, ...], value: object, words: str
) -> None:
    raw = deepcopy(SESSION)
    parent: Any = raw
    for step in place[:-1]:
        parent = parent[step]
    parent[place[-1]] = value
    with pytest.raises(Fault, match="contradicts itself") as refused:
        read_session_document(json.dumps(raw).encode(), "session.json")
    assert words in str(refused.value)


def test_a_newer_session_asks_for_an_update() -> None:
    raw = {**SESSION, "version": 5}
    with pytest.raises(Fault, match=r"newer version of this program.*update the program"):
        read_session_document(json.dumps(raw).encode(), "session.json")
