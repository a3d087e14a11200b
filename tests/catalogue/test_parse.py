"""Files of exercises: what is read, and every refusal with its file, its field and what to do."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Callable
from typing import Any

import msgspec
import pytest
from jsonschema import Draft202012Validator

from coach.catalogue import Catalogue, parse, shipped
from coach.documents.schemas import exercise_schema
from coach.domain.exercise import Exercise
from coach.domain.fault import Fault

MEASURED = "stick-flexion-lying.toml"
TIMED = "pendulum.toml"
FILES = shipped()


def changed(name: str, old: str, new: str) -> dict[str, bytes]:
    text = FILES[name].decode()
    assert text.count(old) >= 1, old
    return {**FILES, name: text.replace(old, new, 1).encode()}


def without(name: str, start: str, end: str) -> dict[str, bytes]:
    text, count = re.subn(f"(?ms)^{start}.*?{end}", "", FILES[name].decode(), count=1)
    assert count == 1
    return {**FILES, name: text.encode()}


def refusal(files: dict[str, bytes]) -> str:
    with pytest.raises(Fault) as refused:
        parse(files)
    sentence = str(refused.value)
    assert sentence.endswith(".")
    assert "\n" not in sentence
    return sentence


REFUSED: dict[str, tuple[Callable[[], dict[str, bytes]], str, str]] = {
    "unknown field": (
        lambda: changed(MEASURED, "name =", "speed = 3\nname ="),
        MEASURED,
        "unknown field speed",
    ),
    "unknown field in the words": (
        lambda: changed(MEASURED, "title =", 'titel = "x"\ntitle ='),
        MEASURED,
        "telling.en: the table contains unknown field titel",
    ),
    "missing field": (
        lambda: without(MEASURED, "name =", "\n"),
        MEASURED,
        "missing required field name",
    ),
    "wrong type": (
        lambda: changed(MEASURED, "at_s = 1,", 'at_s = "1",'),
        MEASURED,
        "demonstration[1].at_s: expected a number",
    ),
    "unknown neighbour": (
        lambda: changed(MEASURED, 'easier = "table-slide"', 'easier = "table-slider"'),
        MEASURED,
        "easier names table-slider, which is no exercise",
    ),
    "name of the file": (
        lambda: {**FILES, "lying.toml": FILES[MEASURED]},
        "lying.toml",
        f"exercise is stick-flexion-lying, whose file is {MEASURED}",
    ),
    "no view measures it": (
        lambda: changed(MEASURED, 'view = "side"', 'view = "front"'),
        MEASURED,
        "flexion, supine from the front, and flexion is measured standing from the side",
    ),
    "no position measures it": (
        lambda: changed(MEASURED, 'position = "supine"', 'position = "prone"'),
        MEASURED,
        "flexion, prone from the side",
    ),
    "least above most": (
        lambda: changed(MEASURED, "hold_s = [5, 15]", "hold_s = [15, 5]"),
        MEASURED,
        "doses.moderate.hold_s begins at 15, above its end 5",
    ),
    "repetitions above": (
        lambda: changed(MEASURED, "repetitions = [3, 5]", "repetitions = [6, 5]"),
        MEASURED,
        "doses.high.repetitions begins at 6",
    ),
    "times a day above": (
        lambda: changed(MEASURED, "per_day = [1, 3]", "per_day = [4, 3]"),
        MEASURED,
        "doses.high.per_day begins at 4",
    ),
    "hold over a minute": (
        lambda: changed(MEASURED, "hold_s = [20, 30]", "hold_s = [20, 90]"),
        MEASURED,
        "doses.low.hold_s[1]: expected a number <= 60",
    ),
    "hold that is no number": (
        lambda: changed(MEASURED, "hold_s = [20, 30]", "hold_s = [nan, 30]"),
        MEASURED,
        "doses.low.hold_s[0]: expected a number >= 1",
    ),
    "a number of thousands of digits": (
        lambda: changed(MEASURED, "hold_s = [20, 30]", f"hold_s = [20, {'1' * 5_000}]"),
        MEASURED,
        "a number in it is too long",
    ),
    "missing irritability": (
        lambda: without(MEASURED, r"\[doses.high\]", r"(?=\[doses)"),
        MEASURED,
        "doses.high is missing",
    ),
    "unknown irritability": (
        lambda: changed(MEASURED, "[doses.high]", "[doses.huge]"),
        MEASURED,
        "a name in doses: invalid enum value 'huge'",
    ),
    "no English": (
        lambda: changed(MEASURED, "[telling.en]", "[telling.fr]"),
        MEASURED,
        "telling.en, the words in English, is missing",
    ),
    "no reason for being timed": (
        lambda: without(TIMED, "by_time =", "\n"),
        TIMED,
        "telling.en.by_time is missing",
    ),
    "a reason for being timed though measured": (
        lambda: changed(MEASURED, "title =", 'by_time = "Because."\ntitle ='),
        MEASURED,
        "telling.en.by_time stands beside movement",
    ),
    "too large": (
        lambda: {**FILES, MEASURED: FILES[MEASURED] + b"#" * 100_000},
        MEASURED,
        "at most 100000 are read",
    ),
    "broken TOML": (
        lambda: changed(MEASURED, "[telling.en]", "[telling.en"),
        MEASURED,
        "it is not TOML",
    ),
    "nested without end": (
        lambda: {**FILES, MEASURED: b"name = " + b"[" * 50_000},
        MEASURED,
        "nested too deeply",
    ),
    "not text": (
        lambda: {**FILES, MEASURED: b'name = "\xff"'},
        MEASURED,
        "byte 9 is not UTF-8 text",
    ),
    "keyframes out of order": (
        lambda: changed(MEASURED, "at_s = 5.6", "at_s = 3.2"),
        MEASURED,
        "demonstration: at_s must begin at 0 and rise",
    ),
    "a circle of neighbours": (
        lambda: changed("pendulum.toml", 'harder = "table-slide"', 'easier = "wall-walk-forward"'),
        "pendulum.toml",
        "lead round in a circle",
    ),
    "its own neighbour": (
        lambda: changed("cross-body-stretch.toml", "side-lying-rotation", "cross-body-stretch"),
        "cross-body-stretch.toml",
        "lead round in a circle",
    ),
}


@pytest.mark.parametrize("what", REFUSED)
def test_what_cannot_be_used_is_refused_with_file_and_field(what: str) -> None:
    files, name, words = REFUSED[what]
    sentence = refusal(files())
    assert sentence.startswith(f"The exercise file {name} cannot be used: ")
    assert words in sentence
    assert "correct it there" in sentence


def test_an_exercise_is_added_from_outside_without_code() -> None:
    text = FILES[TIMED].decode()
    text = text.replace('exercise = "pendulum"', 'exercise = "pendulum-in-circles"')
    text = text.replace('harder = "table-slide"', 'easier = "pendulum"')
    found = parse({**FILES, "pendulum-in-circles.toml": text.encode()})
    assert len(found.all) == len(FILES) + 1
    assert found.easier("pendulum-in-circles") == found.get("pendulum")


def test_the_order_is_that_of_the_names_however_the_files_come() -> None:
    backwards = parse(dict(sorted(FILES.items(), reverse=True)))
    names = [exercise.exercise for exercise in backwards.all]
    assert names == sorted(name.removesuffix(".toml") for name in FILES)


def test_neighbours_are_looked_up() -> None:
    found = parse(FILES)
    assert found.harder("pendulum") == found.get("table-slide")
    assert found.easier("table-slide") == found.get("pendulum")
    assert found.easier("pendulum") is None
    assert found.harder("doorway-rotation-high") is None


@pytest.mark.parametrize(
    "ask", [Catalogue.get, Catalogue.easier, Catalogue.harder], ids=["get", "easier", "harder"]
)
def test_an_unknown_name_gets_the_nearest_ones(ask: Callable[[Catalogue, str], object]) -> None:
    with pytest.raises(Fault, match=r"no exercise 'wall-walk'.*wall-walk-(forward|sideways)"):
        ask(parse(FILES), "wall-walk")


def test_a_name_like_none_still_gets_a_sentence() -> None:
    with pytest.raises(Fault, match=r"no exercise ''; the nearest names are armpit-squeeze"):
        parse(FILES).get("")


def test_the_fields_of_a_file_come_through() -> None:
    exercise = parse(FILES).get("stick-flexion-lying")
    assert exercise.name == "Flexion with a stick, other hand lifting, supine"
    assert exercise.demonstration[2].arm == (90.0, 110.0, 0.0, 10.0)
    assert [str(item) for item in exercise.equipment] == ["stick", "mat"]
    assert exercise.form is None


@pytest.mark.parametrize("name", FILES)
def test_every_file_fits_the_published_schema(name: str) -> None:
    raw: dict[str, Any] = tomllib.loads(FILES[name].decode())
    Draft202012Validator(exercise_schema()).validate(raw)


def test_the_schema_names_every_field_and_no_other() -> None:
    schema = exercise_schema()
    assert set(schema["properties"]) == {f.name for f in msgspec.structs.fields(Exercise)}
    assert schema["additionalProperties"] is False
