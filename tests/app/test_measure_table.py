"""``coach measure`` on landmark tables: the errors are those of the model that found the points."""

from __future__ import annotations

import hashlib
import json
from dataclasses import replace
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from coach.__main__ import main
from coach.documents.landmarks import landmark_row, landmark_text
from coach.documents.session import write_session_document
from coach.domain.movement import Movement, Position, Side, View
from coach.domain.plan import Plan, PlannedExercise
from coach.domain.pose import Pose, PoseModel
from coach.domain.session import Camera, ExerciseRecord, SessionDocument, SessionEnd, Software
from coach.goniometry import Task, read_recording
from coach.pose.bundle import find_bundle
from tests.goniometry.stick_body import recording
from tests.goniometry.ways import USUAL_MARKS, seen_from

FULL, LITE = (
    hashlib.sha256(find_bundle().with_name(f"pose_{name}.task").read_bytes()).hexdigest()
    for name in ("full", "lite")
)
ELSEWHERE = "e" * 64
HALF_WIDTH_DEG = {FULL: 8.5, LITE: 9.5}
"""Flexion standing, docs/measurement.md, figures of both models, the body square to the camera."""


def poses(movement: Movement, since_s: float = 0.0) -> list[Pose]:
    """Ten seconds of a body of sticks that goes to an end of range and stays there."""
    top = 0.4 if movement is Movement.HAND_BEHIND_BACK else 100.0
    low = 1.0 if movement is Movement.HAND_BEHIND_BACK else 0.0
    share = np.clip((np.arange(100) / 10 - 3.0) / 2.0, 0, 1)
    view = View.BACK if movement is Movement.HAND_BEHIND_BACK else View.SIDE
    rows = recording(
        movement, low + (top - low) * share, Side.RIGHT, seen_from(view, movement),
        rate_hz=10.0, marks=USUAL_MARKS,
    )  # fmt: skip
    return [replace(p, time_s=since_s + p.time_s) for _, p in rows if p is not None]


def sitting(folder: Path, *exercises: tuple[str | None, list[Pose]], began_with: str) -> Path:
    """An unpacked session file's table and document; gives the table."""
    planned = PlannedExercise(movement=Movement.FLEXION, side=Side.RIGHT, hold_s=5, repetitions=1)
    document = SessionDocument(
        session_id="a" * 32,
        started_at="2026-02-03T10:00:00+01:00",
        duration_s=100.0,
        ended_because=SessionEnd.COMPLETED,
        software=Software(name="t", version="1", definitions=2, model_sha256=began_with),
        camera=Camera(kind="camera", width_px=640, height_px=480, frames_per_s=30.0),
        plan=Plan(patient_code="T", exercises=(planned,)),
        exercises=tuple(
            ExerciseRecord(
                planned_index=0, movement=Movement.FLEXION, side=Side.RIGHT, view=View.SIDE,
                model_sha256=model, started_s=rows[0].time_s, ended_s=rows[-1].time_s,
                ended_because=SessionEnd.COMPLETED,
            )
            for model, rows in exercises
        ),
    )  # fmt: skip
    (folder / "session.json").write_bytes(write_session_document(document))
    return table(folder / "landmarks.csv", *(rows for _, rows in exercises))


def table(path: Path, *parts: list[Pose]) -> Path:
    rows = [landmark_row(pose.time_s, pose) for part in parts for pose in part]
    path.write_text(landmark_text("".join(rows)), encoding="utf-8")
    return path


def measured(path: Path, *more: str, movement: Movement = Movement.FLEXION) -> dict[str, Any]:
    out = path.with_name("measured.json")
    arguments = ["--movement", movement, "--side", "right", "--json", str(out), *more]
    assert main(["measure", str(path), *arguments]) == 0
    document: dict[str, Any] = json.loads(out.read_text("utf-8"))
    return document


def widths(document: dict[str, Any]) -> set[float]:
    return {f["error_deg"] for f in document["frames"] if f["usable"]}


@pytest.mark.parametrize("model", [FULL, LITE])
@pytest.mark.parametrize("of_its_own", [False, True])
def test_the_errors_are_those_of_the_model_that_the_document_names(
    model: str, of_its_own: bool, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    began_with = ELSEWHERE if of_its_own else model
    path = sitting(
        tmp_path, (model if of_its_own else None, poses(Movement.FLEXION)), began_with=began_with
    )
    found = measured(path)
    assert widths(found) == {HALF_WIDTH_DEG[model]}
    assert found["model_sha256"] == model
    held = found["repetitions"][0]
    assert abs(held["value_deg"] - 100.0) <= held["error_deg"] == HALF_WIDTH_DEG[model]
    name = "full" if model is FULL else "lite"
    assert f"of the pose model {name}, as session.json says" in capsys.readouterr().out


@pytest.mark.parametrize("model", [None, "full", "lite"])
def test_a_table_that_names_no_model_has_no_values_unless_somebody_names_one(
    model: str | None, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = table(tmp_path / "landmarks.csv", poses(Movement.FLEXION))
    found = measured(path, *(() if model is None else ("--pose-model", model)))
    said = capsys.readouterr().out
    if model is None:
        assert {f["doubt"] for f in found["frames"]} == {"error-not-known"}
        assert found["repetitions"] == []
        assert found["model_sha256"] is None
        assert "not known which pose model found these points" in said
        assert "--pose-model" in said
        assert "±" not in said
    else:
        sha256 = FULL if model == "full" else LITE
        assert widths(found) == {HALF_WIDTH_DEG[sha256]}
        assert found["model_sha256"] == sha256
        assert f"of the pose model {model}, as --pose-model says" in said


def test_a_model_of_another_hash_is_not_taken_for_one_of_the_programs(tmp_path: Path) -> None:
    path = sitting(tmp_path, (None, poses(Movement.FLEXION)), began_with=ELSEWHERE)
    found = measured(path)
    assert {f["doubt"] for f in found["frames"]} == {"error-not-known"}
    assert found["model_sha256"] is None


def test_what_was_never_measured_with_the_small_model_is_doubted(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    movement = Movement.HAND_BEHIND_BACK
    path = sitting(tmp_path, (LITE, poses(movement)), began_with=FULL)
    found = measured(path, movement=movement)
    assert {f["doubt"] for f in found["frames"]} == {"error-not-known"}
    assert "never measured how wrong" in capsys.readouterr().out
    path = sitting(tmp_path, (None, poses(movement)), began_with=FULL)
    assert any(f["usable"] for f in measured(path, movement=movement)["frames"])


def test_each_exercise_has_the_errors_of_its_own_model(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """A table of two models, in rows outside of both of neither."""
    parts = [poses(Movement.FLEXION, since_s) for since_s in (0.0, 20.0, 40.0)]
    path = sitting(tmp_path, (None, parts[0]), (LITE, parts[1]), began_with=FULL)
    table(path, *parts)
    frames = measured(path)["frames"]
    for model, part in ((FULL, frames[:100]), (LITE, frames[100:200])):
        assert {f["error_deg"] for f in part} == {HALF_WIDTH_DEG[model]}
        assert abs(part[-1]["angle_deg"] - 100.0) <= HALF_WIDTH_DEG[model]
    assert {f["doubt"] for f in frames[200:]} == {"error-not-known"}
    assert "full and lite" in capsys.readouterr().out


def test_one_models_points_do_not_teach_the_body_of_the_others() -> None:
    """Points of the second model lie elsewhere: neither part reads otherwise for the other's."""
    first = poses(Movement.FLEXION)
    second = [
        replace(p, image_px=p.image_px * [1.0, 1.15], model=PoseModel.LITE)
        for p in poses(Movement.FLEXION, 20.0)
    ]
    task = Task(Movement.FLEXION, Side.RIGHT, View.SIDE, Position.STANDING)
    both = read_recording([(p.time_s, p) for p in [*first, *second]], task)
    alone = [read_recording([(p.time_s, p) for p in part], task) for part in (first, second)]
    assert both.readings == alone[0].readings + alone[1].readings


def test_a_stated_model_that_the_document_contradicts_is_refused(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = sitting(tmp_path, (LITE, poses(Movement.FLEXION)), began_with=FULL)
    arguments = ["--movement", "flexion", "--side", "right", "--pose-model", "full"]
    assert main(["measure", str(path), *arguments]) == 1
    (said,) = capsys.readouterr().err.strip().splitlines()
    assert "session.json" in said
    (tmp_path / "session.json").write_text("{")
    assert main(["measure", str(path), *arguments]) == 1
    assert "session.json" in capsys.readouterr().err
