"""What every command prints in the chosen language: nothing that no table gave."""

from __future__ import annotations

import argparse
import ast
from collections.abc import Iterator
from pathlib import Path
from typing import Annotated

import msgspec
import pytest

from coach import texts
from coach.__main__ import main
from coach.app import argparse_words
from coach.app.arguments import asked_language, parser
from coach.app.convert import run_convert
from coach.app.demo import Played, beside_truth, demo_plan
from coach.app.example import example_plan
from coach.app.measure import Asked, run_measure
from coach.app.measure_summary import summary
from coach.cues.wording import doubt_sentence
from coach.documents.joints import Axis, Stand
from coach.documents.measurement import Measurement, measured_frame, measured_repetition
from coach.documents.refusal import convert
from coach.domain.fault import Fault
from coach.domain.movement import Movement, Position, Side, Unit, View
from coach.domain.progress import EndedBecause, Repetition
from coach.domain.reading import Doubt, Form, Reading
from coach.goniometry import DEFINITIONS
from coach.voice.timeline import Timeline
from tests.app.conftest import truth
from tests.app.test_measure import TABLE
from tests.pseudo import GROUP, SIGN, left_over, spoken
from tests.review.conftest import make_session

COMMANDS = ("review", "export", "key", "demo", "measure", "convert", "card", "lens")
OF_A_PROGRAMMER = {
    "conflicting option string: %s", "conflicting option strings: %s", ".__call__() not defined",
    "'required' is an invalid argument for positionals", "%r is not callable",
    "mutually exclusive arguments must be optional", "cannot merge actions - two groups are named"
    " %r", "invalid option string %(option)r: must start with a character %(prefix_chars)r",
    "dest= is required for options like %r", "invalid conflict_resolution value: %r",
    "cannot have multiple subparser arguments", "conflicting subparser: %s",
    "conflicting subparser alias: %s", "argument \"-\" with mode %r",
    "can't open '%(filename)s': %(error)s", "unexpected option string: %s",
    "unknown parser %(parser_name)r (choices: %(choices)s)",
    "expected %s argument", "expected %s arguments",
}  # fmt: skip
"""What argparse says of a parser that was built wrongly, or of kinds of arguments not used here."""


def messages_of_argparse() -> set[str]:
    """Read from the library's own source what it gives to gettext."""
    tree = ast.parse(Path(argparse.__file__).read_text("utf-8"))
    return {
        part.value
        for call in ast.walk(tree)
        if isinstance(call, ast.Call) and getattr(call.func, "id", "") in ("_", "ngettext")
        for part in call.args
        if isinstance(part, ast.Constant) and isinstance(part.value, str)
    }


def parsers() -> Iterator[argparse.ArgumentParser]:
    found = parser()
    yield found
    for action in found._actions:
        if isinstance(action, argparse._SubParsersAction):
            yield from action.choices.values()


def names(found: argparse.ArgumentParser) -> set[str]:
    """What stands as it is in every language: options, and the words that they take."""
    known = {"coach", found.prog}
    for action in found._actions:
        known |= {*action.option_strings, *(str(c) for c in action.choices or ())}
        known |= set(str(action.metavar).split("|")) if "|" in str(action.metavar) else set()
    return known


def test_every_message_of_the_command_line_is_known() -> None:
    assert messages_of_argparse() - set(argparse_words.words()) == OF_A_PROGRAMMER


def test_nothing_in_the_help_of_a_command_is_left_over() -> None:
    with spoken():
        said = [(line, names(p)) for p in parsers() for line in p.format_help().splitlines()]
        found = [line for line, known in said if left_over([line], known)]
    assert len(said) > 100
    assert found == []


@pytest.mark.parametrize(
    ("arguments", "known"),
    [
        (["measure"], ["--movement", "--side"]),
        (["measure", "x", "--movement"], ["--movement"]),
        (["measure", "x", "--movement", "no"], [*Movement, "--movement", "no"]),
        (["measure", "x", "--field-of-view", "9"], ["--field-of-view"]),
        (["--text-size", "300"], ["--text-size"]),
        (["--camera", "first"], ["--camera", "first"]),
        (["--begin=1"], ["--begin"]),
        (["--nowhere"], ["--nowhere"]),
        (["--camera", "1", "--clip", "a"], ["--camera", "--clip"]),
        (["lens"], ["--print", "--camera", "--clip"]),
        (["--p", "1"], ["--plan", "--pose-model", "--p"]),
        (["key", "break"], ["break", "make", "show", "back-up", "restore", "lock-store"]),
        (["unknown"], ["unknown", *COMMANDS]),
    ],
)
def test_a_refused_argument_is_told_in_the_language(
    arguments: list[str], known: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    with spoken(), pytest.raises(SystemExit):
        parser().parse_args(arguments)
    told = capsys.readouterr().err.splitlines()[-1]
    commands = [f"coach {arguments[0]}", "coach"]
    assert left_over([told], [*known, *commands]) == []


def held(value: float, error: float, unit: Unit, because: EndedBecause) -> Repetition:
    return Repetition(
        number=1, start_s=1.0, end_s=9.2, held_s=8.2, value=value, error=error, spread=0.01,
        unit=unit, seen_fraction=1.0, ended_because=because, form=Form(),
    )  # fmt: skip


@pytest.mark.parametrize("movement", Movement)
def test_nothing_that_measuring_prints_is_left_over(movement: Movement) -> None:
    unit = movement.unit
    value, error = (120.4, 7.5) if unit is Unit.DEGREES else (0.85, 0.05)
    for because in EndedBecause:
        found = Measurement(
            movement=movement,
            side=Side.LEFT,
            view=View.FRONT,
            position=Position.SITTING,
            definitions=DEFINITIONS,
            model_sha256=None,
            calibration=None,
            frames=(measured_frame(Reading(1.1, None, None, Doubt.UNSURE), unit),),
            repetitions=(measured_repetition(held(value, error, unit, because)),),
            excursions=(),
        )
        with spoken():
            lines = summary(found, None).splitlines()
        why = doubt_sentence(Doubt.UNSURE, Side.LEFT, Position.SITTING).spoken
        assert left_over(lines, [why]) == []
        assert f"1{SIGN}0" in lines[1]


@pytest.mark.parametrize("whose", [None, "Written by a table."])
def test_why_no_error_is_known_is_told_in_the_language(whose: str | None) -> None:
    found = Measurement(
        movement=Movement.FLEXION,
        side=Side.LEFT,
        view=View.SIDE,
        position=Position.STANDING,
        definitions=DEFINITIONS,
        model_sha256=None,
        calibration=None,
        frames=(measured_frame(Reading(1.1, None, None, Doubt.ERROR_NOT_KNOWN), Unit.DEGREES),),
        repetitions=(),
        excursions=(),
    )
    with spoken():
        assert left_over(summary(found, whose).splitlines(), [whose or "-"]) == []


def test_nothing_that_converting_prints_is_left_over(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    places = {"shoulder": 1.4, "hip": 0.9}
    columns = [f"{side}_{part}_{axis}_m" for part in places for side in ("left", "right")
               for axis in "xyz"]  # fmt: skip
    at = [{"x": 0.2 if "left" in c else -0.2, "y": places[c.split("_")[1]], "z": 0.0}[c[-3]]
          for c in columns]  # fmt: skip
    joints, out = tmp_path / "joints.csv", tmp_path / "table.csv"
    joints.write_text(",".join(["time_s", *columns]) + "\n" + ",".join(map(str, (0.1, *at))) + "\n")
    for stand in Stand:
        with spoken():
            run_convert(joints, out, Axis.Y, stand, 2.5)
        told = capsys.readouterr().out
        assert left_over([told], [str(out)]) == []
        assert f"2{SIGN}5" in told
    with spoken(), pytest.raises(Fault) as refused:
        run_convert(joints, out, Axis.Y, Stand.LEFT, 0.5)
    assert f"0{SIGN}5" in str(refused.value)
    assert left_over([str(refused.value)]) == []


def test_nothing_that_the_demo_prints_of_its_holds_is_left_over() -> None:
    played = Played(make_session(), Path("x"), Timeline(), 0.0, 1.0)
    with spoken():
        lines = beside_truth(played, truth("flexion_right_three_holds")).splitlines()
    assert len(lines) > 3
    assert left_over(lines) == []


def test_a_number_in_a_fault_is_written_as_the_language_does() -> None:
    sentence = texts.translate("x", "{a:,} and {b:.1f}, {c:g} and {name}")
    assert sentence.format(a=12_000, b=0.25, c=1.5, name="1.5") == "12,000 and 0.2, 1.5 and 1.5"
    with spoken():
        told = texts.translate("x", "{a:,} and {b:.1f}, {c:g} and {name}")
        assert told.format(a=12_000, b=0.25, c=1.5, name="1.5") == (
            f"12{GROUP}000 жжж 0{SIGN}2, 1{SIGN}5 жжж 1.5"
        )
        assert texts.localised("12,000.5") == f"12{GROUP}000{SIGN}5"


class Far(msgspec.Struct):
    gap_s: Annotated[float, msgspec.Meta(ge=0.5, le=20_000)]


class Many(msgspec.Struct):
    exercises: tuple[Far, ...]


def test_a_value_out_of_its_range_is_told_in_the_language_and_kept_in_english() -> None:
    raw = {"exercises": [{"gap_s": 0.1}]}
    with spoken(), texts.in_both(), pytest.raises(Fault) as refused:
        convert(raw, Many, "x.json")
    told = refused.value.sentence
    assert left_over([told.replace("is 0.1", "")], ["x.json", "gap_s", "0.1"]) == []
    assert f"0{SIGN}5 " in told
    assert f"20{GROUP}000" in told
    assert told.english == (
        "x.json cannot be used: exercise 1, gap_s is 0.1, allowed are 0.5 to 20,000 seconds; "
        "correct it or ask for a new file."
    )


def test_what_is_translated_can_stand_in_a_document() -> None:
    with spoken():
        told = texts.translate("x", "A title")
        number = texts.translate("x", "{count:,} rows").format(count=1_000)
        assert msgspec.json.decode(msgspec.json.encode([told, number])) == [told, number]
        assert msgspec.json.encode(demo_plan())
        assert msgspec.json.encode(example_plan())


def test_the_language_that_was_asked_for_is_spoken_and_left_again(
    tmp_path: Path, capfd: pytest.CaptureFixture[str]
) -> None:
    """Two tables are measured by processes of their own, which speak it too."""
    (tmp_path / "a.csv").write_text(TABLE)
    (tmp_path / "b.csv").write_text(TABLE)
    way = ["--movement", "abduction", "--side", "left"]
    clips = [str(tmp_path / "a.csv"), str(tmp_path / "b.csv")]
    assert main(["--language", "de", "measure", clips[0], *way]) == 0
    (first, *_) = capfd.readouterr().out.splitlines()
    assert first.startswith("Abduktion, links, im Stehen, Kamera: von vorn: 0 von")
    assert main(["measure", *clips, *way, "--language", "de"]) == 0
    assert capfd.readouterr().out.count("Kamera: von vorn: 0 von") == 2
    assert (texts.language(), texts.translate("dates", "Mar")) == ("en", "Mar")
    with pytest.raises(SystemExit):
        main(["--help", "--language", "de"])
    assert capfd.readouterr().out.startswith("Aufruf: coach")
    assert main(["measure", clips[0], *way, "--language", "xx"]) == 1
    assert "does not speak 'xx'" in capfd.readouterr().err


@pytest.mark.parametrize(
    ("arguments", "found"),
    [
        ([], None),
        (["--language", "de", "measure", "--json", "x"], "de"),
        (["card", "--lang=de"], "de"),
        (["card", "--language"], None),
    ],
)
def test_the_language_is_known_before_the_rest(arguments: list[str], found: str | None) -> None:
    assert asked_language(arguments) == found


def test_measuring_nobody_is_told_in_the_language(tmp_path: Path) -> None:
    (tmp_path / "a.csv").write_text(TABLE)
    with spoken(), pytest.raises(Fault) as refused:
        run_measure(tmp_path / "a.txt", Asked(Movement.ABDUCTION, Side.LEFT))
    assert left_over([str(refused.value)], [str(tmp_path / "a.txt")]) == []
