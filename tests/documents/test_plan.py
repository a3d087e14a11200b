from __future__ import annotations

import json
from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from coach.catalogue import catalogue
from coach.documents.plan import MAX_PLAN_BYTES, read_plan, write_plan
from coach.domain.exercise import Irritability, StiffnessPhase
from coach.domain.fault import Fault
from coach.domain.movement import VIEWS, Movement, Position, Side, Unit, View, best_view
from coach.domain.plan import EVERY_DAY, OtherSide, Plan, PlannedExercise, Weekday
from coach.domain.text import UNSHOWN
from tests.documents.example import example_plan

Change = Callable[[dict[str, Any]], object]


def on_first(**changes: Any) -> Change:
    return lambda plan: plan["exercises"][0].update(changes)


@pytest.mark.parametrize(
    ("change", "words"),
    [
        (on_first(hold_s=-3), "exercise 1, hold_s is -3, allowed are 1 to 60 seconds"),
        (on_first(hold_s=0), "exercise 1, hold_s is 0, allowed are 1 to 60 seconds"),
        (on_first(repetitions=10_000), "repetitions is 10000, allowed are whole numbers from 1"),
        (on_first(repetitions=2.5), "repetitions is 2.5, allowed are whole numbers from 1 to 30"),
        (on_first(repetitions=True), "exercise 1, repetitions is true"),
        (on_first(side="middle"), 'exercise 1, side is "middle", allowed are left, right'),
        (on_first(movement="somersault"), 'movement is "somersault", allowed are abduction'),
        (on_first(pain_limit=11), "pain_limit is 11, allowed are whole numbers from 0 to 10"),
        (on_first(target_deg=1e9), "allowed are -180 to 360 degrees or null"),
        (on_first(weight_kg=3), "exercise 1, weight_kg is not a known field"),
        (on_first(position="upside-down"), 'position is "upside-down", allowed are doorway, prone'),
        (
            on_first(position="prone"),
            "exercise 1 is flexion in the position prone, and flexion is measured standing from "
            "the side, sitting from the side or supine from the side",
        ),
        (on_first(view="front"), "exercise 1 is flexion in the position standing from the front"),
        (
            on_first(movement="hand-behind-back", target_deg=3),
            "exercise 1, hand-behind-back, has a target_deg, but is not an angle",
        ),
        (
            lambda plan: plan.update(
                other_side=[{"movement": "hand-behind-back", "value_deg": 0.5}]
            ),
            "other side 1, hand-behind-back, has a value_deg, but is not an angle",
        ),
        (lambda plan: plan["exercises"][1].pop("side"), "exercise 2, side is missing"),
        (lambda plan: plan.update(exercises=[]), "exercises is a list of 0"),
        (lambda plan: plan.update(patient_code=""), "allowed is text of 1 to 64 characters"),
        (lambda plan: plan.update(title="a\x00b"), "control characters"),
        (lambda plan: plan.update(title="\ud800"), "control characters"),
        (lambda plan: plan.update(version=3), "made by a newer version of this program"),
        (lambda plan: plan.update(version="1"), "allowed are whole numbers from 1 to 2"),
        (lambda plan: plan.pop("version"), "has the version null"),
        (lambda plan: plan.update(format="recipe"), 'its format is "recipe"'),
        (lambda plan: plan.pop("format"), "not of the format shoulder-plan"),
    ],
)
def test_refuses_what_is_out_of_bounds_and_names_the_place(change: Change, words: str) -> None:
    raw = json.loads(write_plan(example_plan()))
    change(raw)
    with pytest.raises(Fault) as refused:
        read_plan(json.dumps(raw).encode(), "anna.json")
    assert words in str(refused.value)
    assert str(refused.value).startswith("anna.json ")


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (b"", "not valid JSON"),
        (b"hold for thirty seconds", "not valid JSON (line 1, column 1)"),
        (b"\xff\xfe{\x00", "not UTF-8 text (byte 0)"),
        (b'{"format": "shoulder-plan", "format": "shoulder-plan"}', '"format" twice'),
        (b'{"format": NaN}', "NaN where a number belongs"),
        (b'{"format": -Infinity}', "-Infinity where a number belongs"),
        (b'{"format": 1e999}', "1e999 where a number belongs"),
        (b'{"format": ' + b"9" * 5_000 + b"}", "where a number belongs"),
        (b"[" * 100_000, "more than 32 levels deep"),
        (b'{"a":' * 33 + b"1" + b"}" * 33, "more than 32 levels deep"),
        (b'{"a": "' + b'\\"' * 400_000, "not valid JSON"),
        (b" " * (MAX_PLAN_BYTES + 1), "too large: 1,000,001 bytes, at most 1,000,000"),
        (b"[]", "its format is not given"),
        (b"null", "its format is not given"),
    ],
)
def test_refuses_what_is_no_plan(data: bytes, words: str) -> None:
    with pytest.raises(Fault) as refused:
        read_plan(data, "plan.json")
    assert words in str(refused.value)


def test_brackets_within_text_are_no_depth() -> None:
    raw = json.loads(write_plan(example_plan()))
    raw["title"] = "[" * 100 + '\\"' + "{" * 50
    assert read_plan(json.dumps(raw).encode(), "plan.json").title == raw["title"]


def test_takes_a_byte_order_mark_and_whole_numbers_with_a_point() -> None:
    raw = json.loads(write_plan(example_plan()))
    raw["exercises"][0]["repetitions"] = 3.0
    plan = read_plan(b"\xef\xbb\xbf" + json.dumps(raw).encode(), "plan.json")
    assert plan == example_plan()


def finite(low: float, high: float) -> st.SearchStrategy[float]:
    return st.floats(low, high, allow_nan=False)


TEXT = st.characters(exclude_categories=["Cc", "Cs"]).filter(lambda c: not UNSHOWN.match(c))
ANGLES = st.sampled_from([m for m in Movement if m.unit is Unit.DEGREES])


@st.composite
def exercises(draw: st.DrawFn) -> PlannedExercise:
    movement, position = draw(st.sampled_from(sorted(VIEWS)))
    angle = movement.unit is Unit.DEGREES
    return PlannedExercise(
        movement=movement,
        side=draw(st.sampled_from(Side)),
        hold_s=draw(finite(1, 60)),
        repetitions=draw(st.integers(1, 30)),
        rest_s=draw(finite(0, 300)),
        position=position,
        view=draw(st.none() | st.sampled_from(VIEWS[movement, position])),
        target_deg=draw(st.none() | finite(-180, 360)) if angle else None,
        pain_limit=draw(st.integers(0, 10)),
        days=tuple(draw(st.lists(st.sampled_from(Weekday), min_size=1, unique=True))),
        per_day=draw(st.integers(1, 6)),
    )


PLANS = st.builds(
    Plan,
    format=st.just("shoulder-plan"),
    version=st.just(2),
    revision=st.integers(1, 100_000),
    issued_on=st.none() | st.dates(date(2000, 1, 1), date(2050, 1, 1)),
    valid_until=st.none() | st.dates(date(2050, 1, 1), date(2100, 1, 1)),
    phase=st.none() | st.sampled_from(StiffnessPhase),
    irritability=st.none() | st.sampled_from(Irritability),
    patient_code=st.text(TEXT, min_size=1, max_size=64),
    title=st.text(TEXT, max_size=200),
    exercises=st.lists(exercises(), min_size=1, max_size=5).map(tuple),
    sessions_per_week=st.integers(1, 21),
    other_side=st.lists(
        st.builds(OtherSide, movement=ANGLES, value_deg=finite(-180, 360)),
        max_size=3,
    ).map(tuple),
    contact=st.text(TEXT, max_size=200),
)


@given(PLANS)
def test_reads_what_it_wrote(plan: Plan) -> None:
    assert read_plan(write_plan(plan), "plan.json") == plan


def named(**changes: Any) -> dict[str, Any]:
    """A plan of one exercise of the catalogue, as a therapist may write it."""
    exercise = {"exercise": "doorway-rotation-low", "side": "left", "hold_s": 20, "repetitions": 3}
    plan = {"format": "shoulder-plan", "version": 2, "patient_code": "X", "exercises": [exercise]}
    exercise.update({k: v for k, v in changes.items() if k in PlannedExercise.__struct_fields__})
    plan.update({k: v for k, v in changes.items() if k in ("issued_on", "valid_until")})
    return plan


def test_what_the_catalogue_says_is_filled_in() -> None:
    plan = read_plan(json.dumps(named()).encode(), "p.json", catalogue().by_name)
    (exercise,) = plan.exercises
    assert exercise.movement is Movement.EXTERNAL_ROTATION_0
    assert (exercise.position, exercise.view) == (Position.DOORWAY, View.FRONT)
    assert (exercise.days, exercise.per_day, exercise.pain_limit) == (EVERY_DAY, 1, 4)


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        ({"exercise": "doorway-rotation"}, "nearest names are doorway-rotation"),
        ({"movement": "flexion"}, "whose movement is external-rotation-0 and not flexion"),
        ({"position": "standing"}, "whose position is doorway and not standing"),
        ({"exercise": "pendulum", "target_deg": 40}, "has a target_deg, but is only timed"),
        ({"exercise": None}, "exercise 1 has neither an exercise nor a movement"),
        ({"days": ["mon", "mon"]}, "exercise 1 names a day twice"),
        ({"days": ["someday"]}, "days"),
        ({"days": []}, "days"),
        ({"hold_s": 0}, "hold_s is 0, allowed are 1 to 60 seconds"),
        ({"next_step": {"sessions": 3, "propose": "handstand"}}, "exercise 1 is 'handstand'"),
        (
            {"issued_on": "2026-11-02", "valid_until": "2026-11-01"},
            "it is valid until 2026-11-01, before it was issued on 2026-11-02",
        ),
    ],
)
def test_refuses_what_does_not_go_together(changes: dict[str, Any], words: str) -> None:
    with pytest.raises(Fault) as refused:
        read_plan(json.dumps(named(**changes)).encode(), "p.json", catalogue().by_name)
    assert words in str(refused.value)
    assert str(refused.value).startswith("p.json ")


def test_refuses_the_other_shoulder_than_the_plan_is_for() -> None:
    raw = named() | {"side": "right"}
    with pytest.raises(Fault, match="for the right shoulder, and exercise 1 is for the other one"):
        read_plan(json.dumps(raw).encode(), "p.json", catalogue().by_name)


def test_a_plan_of_version_1_is_one_of_bare_movements_for_every_day() -> None:
    exercise = {"movement": "flexion", "side": "left", "hold_s": 30, "repetitions": 3}
    raw = {"format": "shoulder-plan", "version": 1, "patient_code": "X", "exercises": [exercise]}
    plan = read_plan(json.dumps(raw).encode(), "old.json")
    assert (plan.version, plan.revision, plan.exercises[0].days) == (2, 1, EVERY_DAY)
    exercise["exercise"] = "pendulum"
    with pytest.raises(Fault, match="exercise of version 2 is not a known field"):
        read_plan(json.dumps(raw).encode(), "old.json", catalogue().by_name)


@given(st.binary(max_size=200) | st.text().map(str.encode))
def test_any_bytes_are_a_plan_or_a_fault(data: bytes) -> None:
    with pytest.raises(Fault):
        read_plan(data, "plan.json")


def test_the_example_in_the_guide_is_a_plan() -> None:
    guide = (Path(__file__).parents[2] / "docs" / "session_file.md").read_text(encoding="utf-8")
    example = guide.split("```json\n")[1].split("```")[0]
    plan = read_plan(example.encode(), "guide", catalogue().by_name)
    stick, bare = plan.exercises
    assert (stick.movement, stick.position, stick.view) == (
        Movement.EXTERNAL_ROTATION_0,
        Position.SUPINE,
        View.FOOT,
    )
    assert (bare.exercise, bare.position, bare.days) == (None, Position.STANDING, EVERY_DAY)


def test_a_plan_that_says_no_position_means_standing() -> None:
    raw = json.loads(write_plan(example_plan()))
    for exercise in raw["exercises"]:
        del exercise["position"]
    plan = read_plan(json.dumps(raw).encode(), "old.json")
    assert {exercise.position for exercise in plan.exercises} == {Position.STANDING}
    assert plan.exercises[0].seen_from is best_view(Movement.FLEXION, Position.STANDING)


@pytest.mark.parametrize("change", [{}, {"movement": None}])
def test_a_plan_of_version_1_without_a_movement_is_refused(change: dict[str, None]) -> None:
    raw = json.loads((Path(__file__).parent / "golden" / "plan_v1.json").read_bytes())
    del raw["exercises"][0]["movement"]
    raw["exercises"][0] |= change
    with pytest.raises(Fault, match="movement"):
        read_plan(json.dumps(raw).encode(), "plan.json")
