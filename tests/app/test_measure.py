"""``coach measure`` on clips whose angles and holds are known."""

from __future__ import annotations

import json
import zipfile
from pathlib import Path

import numpy as np
import pytest

from coach.__main__ import main
from coach.app.measure import measure
from coach.domain.movement import BEST_VIEW, Movement, Side, View
from coach.domain.progress import EndedBecause
from coach.domain.reading import Doubt
from tests.app.conftest import CLIPS, DemoRun, errors_deg, tracked, truth

EXERCISES = [
    ("flexion_right_three_holds", Movement.FLEXION, Side.RIGHT),
    ("abduction_left_two_holds", Movement.ABDUCTION, Side.LEFT),
    ("external_rotation_right_two_holds", Movement.EXTERNAL_ROTATION_0, Side.RIGHT),
    ("extension_left_two_holds", Movement.EXTENSION, Side.LEFT),
    ("flexion_left_portrait", Movement.FLEXION, Side.LEFT),
]


@pytest.mark.parametrize(("name", "movement", "side"), EXERCISES)
def test_holds_and_angles_are_those_of_the_clip(name: str, movement: Movement, side: Side) -> None:
    true = truth(name)
    found = measure(tracked(name), movement, side, BEST_VIEW[movement])
    assert len(found.repetitions) == len(true["holds"])
    for repetition, hold in zip(found.repetitions, true["holds"], strict=True):
        assert repetition.held_s == pytest.approx(hold["held_s"], abs=0.7)
        assert repetition.start_s == pytest.approx(hold["start_s"], abs=0.7)
        assert abs(repetition.value_deg - hold["value_deg"]) <= repetition.error_deg
        assert repetition.ended_because is EndedBecause.LET_GO
    errors = errors_deg(found, true)
    assert len(errors) >= 0.85 * len(true["frames"])
    assert np.mean([abs(error) <= width for error, width in errors]) >= 0.9


def test_everyday_movement_counts_nothing() -> None:
    for movement in (Movement.ABDUCTION, Movement.EXTERNAL_ROTATION_0):
        for side in Side:
            found = measure(tracked("everyday_no_holds"), movement, side, View.FRONT)
            assert found.repetitions == ()


@pytest.mark.parametrize(
    ("name", "movement", "side", "doubts"),
    [
        ("flexion_right_three_holds", Movement.ABDUCTION, Side.RIGHT, {Doubt.TURN_TO_FACE}),
        ("flexion_right_three_holds", Movement.FLEXION, Side.LEFT, {Doubt.WRONG_SIDE}),
        ("abduction_left_two_holds", Movement.FLEXION, Side.LEFT, {Doubt.TURN_SIDEWAYS}),
        (
            "abduction_left_two_holds",
            Movement.EXTERNAL_ROTATION_0,
            Side.LEFT,
            {Doubt.BEND_ELBOW, Doubt.OTHER_MOVEMENT},
        ),
    ],
)
def test_what_cannot_be_measured_is_refused(
    name: str, movement: Movement, side: Side, doubts: set[Doubt]
) -> None:
    found = measure(tracked(name), movement, side, BEST_VIEW[movement])
    refused = [frame.doubt for frame in found.frames if not frame.usable]
    assert len(refused) >= 0.95 * len(found.frames)
    assert sum(doubt in doubts for doubt in refused) >= 0.9 * len(refused)
    assert found.repetitions == ()


def test_the_table_holds_every_frame(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    table = tmp_path / "measured.json"
    clip = CLIPS / "external_rotation_right_two_holds.mp4"
    arguments = ["--movement", "external-rotation-0", "--side", "right", "--json", str(table)]
    assert main(["measure", str(clip), *arguments]) == 0
    written = json.loads(table.read_text("utf-8"))
    assert set(written) == {
        "format", "version", "movement", "side", "view", "model_sha256", "frames", "repetitions",
    }  # fmt: skip
    assert (written["movement"], written["side"], written["view"]) == (
        "external-rotation-0",
        "right",
        "front",
    )
    rows = truth("external_rotation_right_two_holds")["frames"]
    assert len(written["frames"]) == len(rows)
    for frame, row in zip(written["frames"], rows, strict=True):
        assert frame["time_s"] == pytest.approx(row["time_s"], abs=0.002)
        assert frame["usable"] is (frame["doubt"] is None)
        assert (frame["angle_deg"] is None) is (frame["error_deg"] is None)
        assert frame["usable"] is (frame["angle_deg"] is not None)
    assert len(written["repetitions"]) == 2
    printed = capsys.readouterr().out
    assert "hold 1" in printed
    assert "±" in printed


def test_the_landmarks_of_a_session_can_be_measured_again(
    demo: DemoRun, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (archive,) = demo.folder.glob("*.shoulder.zip")
    with zipfile.ZipFile(archive) as members:
        table = Path(members.extract("landmarks.csv", tmp_path))
    arguments = ["--movement", "flexion", "--side", "right", "--json", str(tmp_path / "m.json")]
    assert main(["measure", str(table), *arguments]) == 0
    again = json.loads((tmp_path / "m.json").read_text("utf-8"))["repetitions"]
    holds = truth("flexion_right_three_holds")["holds"]
    # The last hold ends with the exercise, as soon as the arm has left: its end is in the table.
    assert len(again) == len(holds)
    for repetition, hold in zip(again, holds, strict=True):
        assert repetition["held_s"] == pytest.approx(hold["held_s"], abs=0.7)
        assert abs(repetition["value_deg"] - hold["value_deg"]) <= repetition["error_deg"]
    capsys.readouterr()
    table.write_text("time_s,nonsense\n1,2\n")
    assert main(["measure", str(table), *arguments]) == 1
    assert len(capsys.readouterr().err.strip().splitlines()) == 1
