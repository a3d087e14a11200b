"""``coach measure`` on clips whose angles and holds are known."""

from __future__ import annotations

import json
import zipfile
from pathlib import Path

import numpy as np
import pytest

from coach.__main__ import main
from coach.app.measure import measure
from coach.app.measure_summary import summary
from coach.documents.measurement import (
    Measurement,
    measured_frame,
    measured_repetition,
    measurement_json,
)
from coach.domain.movement import Movement, Position, Side, Unit, View, needed_view
from coach.domain.pose import PoseModel
from coach.domain.progress import EndedBecause, Repetition
from coach.domain.reading import Doubt, Form, Reading
from coach.goniometry import DEFINITIONS
from tests.app.conftest import CLIPS, DemoRun, errors_deg, tracked, truth

EXERCISES = [
    ("flexion_right_three_holds", Movement.FLEXION, Side.RIGHT),
    ("abduction_left_two_holds", Movement.ABDUCTION, Side.LEFT),
    ("external_rotation_right_two_holds", Movement.EXTERNAL_ROTATION_0, Side.RIGHT),
    ("extension_left_two_holds", Movement.EXTENSION, Side.LEFT),
    ("flexion_left_portrait", Movement.FLEXION, Side.LEFT),
]


FORM = {
    "trunk_lean_deg", "trunk_turn_deg", "elbow_flexion_deg", "shoulder_hike_ratio",
    "elbow_drift_deg", "trunk_lean_error_deg", "trunk_turn_error_deg", "elbow_flexion_error_deg",
    "shoulder_hike_error_ratio", "elbow_drift_error_deg",
}  # fmt: skip


def measured(
    name: str, movement: Movement, side: Side, model: PoseModel = PoseModel.FULL
) -> Measurement:
    view = needed_view(movement, Position.STANDING)
    return measure(tracked(name, model), movement, side, view, Position.STANDING)


@pytest.mark.parametrize(
    ("name", "movement", "side", "model"),
    [
        *((*exercise, PoseModel.FULL) for exercise in EXERCISES),
        *((*exercise, PoseModel.LITE) for exercise in EXERCISES[1:4]),
    ],
)
def test_holds_and_angles_are_those_of_the_clip(
    name: str, movement: Movement, side: Side, model: PoseModel
) -> None:
    true = truth(name)
    found = measured(name, movement, side, model)
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
            found = measured("everyday_no_holds", movement, side)
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
    found = measured(name, movement, side)
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
        "format", "version", "movement", "side", "view", "position", "estimator", "definitions",
        "model_sha256", "calibration", "frames", "repetitions", "excursions",
    }  # fmt: skip
    true_holds = truth("external_rotation_right_two_holds")["holds"]
    for there_and_back, hold in zip(written["excursions"], true_holds, strict=True):
        assert there_and_back["start_s"] < hold["start_s"] <= there_and_back["peak_s"]
        assert there_and_back["peak_s"] <= hold["end_s"] < there_and_back["end_s"]
        assert abs(there_and_back["value_deg"] - hold["value_deg"]) <= there_and_back["error_deg"]
        assert there_and_back["held_s"] > 0
    assert (written["movement"], written["side"], written["view"], written["position"]) == (
        "external-rotation-0",
        "right",
        "front",
        "standing",
    )
    assert (written["estimator"], written["definitions"]) == ("whole-sequence", DEFINITIONS)
    rows = truth("external_rotation_right_two_holds")["frames"]
    assert len(written["frames"]) == len(rows)
    for frame, row in zip(written["frames"], rows, strict=True):
        assert frame["time_s"] == pytest.approx(row["time_s"], abs=0.002)
        assert frame["usable"] is (frame["doubt"] is None)
        assert (frame["angle_deg"] is None) is (frame["error_deg"] is None)
        assert frame["usable"] is (frame["angle_deg"] is not None)
        assert set(frame["form"]) == FORM
        assert "reach_ratio" not in frame
    # The arm hangs still for the clip's first seconds.
    assert written["calibration"]["state"] == "still"
    assert written["calibration"]["end_s"] < written["repetitions"][0]["start_s"]
    assert len(written["repetitions"]) == 2
    assert all(set(rep["form"]) == FORM for rep in written["repetitions"])
    printed = capsys.readouterr().out
    assert "hold 1" in printed
    assert "±" in printed


TABLE = """\
time_s,picture_width_px,picture_height_px
0.0,640,480
0.1,640,480
"""


def test_what_no_view_measures_is_refused_in_a_sentence(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "t.csv").write_text(TABLE)
    arguments = ["measure", str(tmp_path / "t.csv"), "--side", "left"]
    assert main([*arguments, "--movement", "extension", "--position", "supine"]) == 1
    (said,) = capsys.readouterr().err.strip().splitlines()
    assert "measures extension in the position supine" in said
    assert "standing from the side, sitting from the side or prone from the side" in said
    assert main([*arguments, "--movement", "abduction", "--view", "foot"]) == 1
    assert "in the position supine" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("more", "view", "position"),
    [
        ([], "front", "standing"),
        (["--position", "doorway"], "front", "doorway"),
        (["--position", "supine"], "foot", "supine"),
        (["--view", "foot"], "foot", "supine"),
        (["--view", "foot", "--position", "sitting"], "foot", "sitting"),
    ],
)
def test_view_and_position_follow_from_each_other(
    more: list[str], view: str, position: str, tmp_path: Path
) -> None:
    (tmp_path / "t.csv").write_text(TABLE)
    json_path = tmp_path / "m.json"
    arguments = ["--movement", "external-rotation-0", "--side", "left", "--json", str(json_path)]
    assert main(["measure", str(tmp_path / "t.csv"), *arguments, *more]) == 0
    written = json.loads(json_path.read_text("utf-8"))
    assert (written["view"], written["position"]) == (view, position)
    assert not any(frame["usable"] for frame in written["frames"])


def test_a_reach_is_told_as_a_share_and_a_band(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    form = Form(elbow_flexion_deg=80.123)
    held = Repetition(
        number=1, start_s=1.0, end_s=9.0, held_s=8.0, value=0.85, error=0.05, spread=0.01,
        unit=Unit.RATIO, seen_fraction=1.0, ended_because=EndedBecause.LET_GO, form=form,
    )  # fmt: skip
    found = Measurement(
        movement=Movement.HAND_BEHIND_BACK,
        side=Side.LEFT,
        view=View.BACK,
        position=Position.STANDING,
        definitions=DEFINITIONS,
        model_sha256=None,
        calibration=None,
        frames=(
            measured_frame(Reading(1.0, 0.85012, 0.05, None, form), Unit.RATIO),
            measured_frame(Reading(1.1, None, None, Doubt.UNSURE), Unit.RATIO),
        ),
        repetitions=(measured_repetition(held),),
        excursions=(),
    )
    written = json.loads(measurement_json(found))
    seen, doubted = written["frames"]
    assert (seen["reach_ratio"], seen["error_ratio"]) == (0.8501, 0.05)
    assert seen["form"]["elbow_flexion_deg"] == 80.12
    assert (doubted["reach_ratio"], doubted["error_ratio"]) == (None, None)
    (rep,) = written["repetitions"]
    assert (rep["value_ratio"], rep["error_ratio"]) == (0.85, 0.05)
    for names in (seen, doubted, rep):
        assert not {"angle_deg", "error_deg", "value_deg"} & set(names)
    # The wrist at 85 % has the thumb at 61 %, between T11 (59.6) and T12 (65.4).
    assert "85 ± 5 %, about T10 to L1 (let go)" in summary(found, None)


def test_the_landmarks_of_a_session_can_be_measured_again(
    demo: DemoRun, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (archive,) = demo.folder.glob("*.shoulder.zip")
    with zipfile.ZipFile(archive) as members:
        table = Path(members.extract("landmarks.csv", tmp_path))
        members.extract("session.json", tmp_path)
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
