"""What was written stays readable: numbers by hand, from golden/make_session_v4.py."""

from __future__ import annotations

import csv
import io
import zipfile
from datetime import date
from pathlib import Path

import numpy as np
import pytest

from coach.catalogue import catalogue
from coach.documents.archive import unpack_document, unpack_session
from coach.documents.plan import read_plan
from coach.documents.tables import DOUBTS, FORM_COLUMNS, PHASES
from coach.domain.exercise import Irritability, StiffnessPhase
from coach.domain.form import FormFault
from coach.domain.movement import Movement, Position, Side, Unit, View
from coach.domain.plan import EVERY_DAY, Weekday
from coach.domain.pose import Landmark
from coach.domain.progress import EndedBecause, Phase
from coach.domain.reading import Doubt, Form
from coach.domain.session import SessionEnd

GOLDEN = Path(__file__).parent / "golden"


def test_document_of_version_1(golden_1: bytes) -> None:
    document = unpack_document(golden_1, "golden")
    assert (document.version, document.plan.version) == (4, 2)
    assert document.session_id == "0a1b2c3d4e5f60718293a4b5c6d7e8f9"
    assert document.started_at == "2026-11-24T10:15:30+01:00"
    assert document.duration_s == 135.5
    assert document.ended_because is SessionEnd.PAIN
    assert document.pain_at_end == 4
    assert document.plan.title == "Woche 3, Übungsplan für Anna Beispiel (erfunden)"
    assert document.plan.other_side[0].value_deg == 168
    assert document.camera.frames_seen == 40
    assert document.camera.field_of_view_deg == 62
    flexion, rotation = document.exercises
    assert (flexion.movement, flexion.side, flexion.view) == (
        Movement.FLEXION,
        Side.LEFT,
        View.SIDE,
    )
    assert (flexion.pain_before, flexion.pain_after) == (2, 4)
    assert flexion.ended_because is SessionEnd.SKIPPED
    assert [r.held_s for r in flexion.repetitions] == [30, 12.25, 30]
    assert [r.value for r in flexion.repetitions] == [121.4, 124.0, 125.75]
    assert {(r.error, r.spread, r.unit) for r in flexion.repetitions} == {(3.5, 1.25, Unit.DEGREES)}
    assert (flexion.position, flexion.calibration) == (Position.STANDING, None)
    assert document.plan.exercises[0].position is Position.STANDING
    assert flexion.repetitions[1].ended_because is EndedBecause.LET_GO
    assert flexion.repetitions[0].form.trunk_lean_deg == -4.5
    assert flexion.repetitions[0].form.trunk_turn_deg is None
    assert rotation.ended_because is SessionEnd.PAIN
    assert (rotation.pain_before, rotation.repetitions) == (4, ())


def test_document_of_version_4_says_which_pose_model_measured_an_exercise(golden: bytes) -> None:
    document = unpack_document(golden, "golden")
    assert document.software.model_sha256 == "5" * 64
    assert [e.model_sha256 for e in document.exercises] == ["6" * 64, None, None, None]


def test_in_a_document_of_version_3_one_pose_model_measured_all(golden_3: bytes) -> None:
    document = unpack_document(golden_3, "golden")
    assert [e.model_sha256 for e in document.exercises] == [None] * 4


def test_document_of_version_3(golden_3: bytes) -> None:
    document = unpack_document(golden_3, "golden")
    assert (document.version, document.plan.version) == (4, 2)
    plan = document.plan
    assert (plan.revision, plan.valid_until) == (3, date(2027, 1, 31))
    assert (plan.phase, plan.irritability) == (StiffnessPhase.STIFF, Irritability.LOW)
    assert plan.exercises[2].days == (Weekday.MONDAY, Weekday.TUESDAY)
    reach, _, pendulum, squeeze = document.exercises
    assert [r.faults for r in reach.repetitions] == [(), (), (FormFault.LEAN,)]
    assert (pendulum.exercise, pendulum.movement, pendulum.eased) == ("pendulum", None, False)
    assert [(h.number, h.start_s, h.held_s) for h in pendulum.timed] == [(1, 148.0, 30.0)]
    assert (pendulum.pain_before, pendulum.pain_after) == (4, 6)
    assert (pendulum.offered, pendulum.ended_because) == ("armpit-squeeze", SessionEnd.PAIN)
    assert (squeeze.exercise, squeeze.eased, squeeze.planned_index) == ("armpit-squeeze", True, 2)
    assert (squeeze.pain_before, squeeze.view) == (3, View.FRONT)


def test_plan_of_version_1() -> None:
    plan = read_plan((GOLDEN / "plan_v1.json").read_bytes(), "golden")
    assert (plan.version, plan.revision, plan.side, plan.issued_on) == (2, 1, None, None)
    reach, rotation = plan.exercises
    assert (reach.movement, reach.exercise, reach.rest_s) == (
        Movement.HAND_BEHIND_BACK,
        None,
        10.0,
    )
    assert (rotation.position, rotation.target_deg, rotation.pain_limit) == (
        Position.SUPINE,
        25,
        3,
    )
    assert (rotation.days, rotation.per_day, rotation.next_step) == (EVERY_DAY, 1, None)
    assert (plan.sessions_per_week, plan.other_side[0].value_deg) == (10, 168.0)


def test_plan_of_version_2() -> None:
    plan = read_plan((GOLDEN / "plan_v2.json").read_bytes(), "golden", catalogue().by_name)
    assert (plan.version, plan.revision) == (2, 3)
    assert (plan.issued_on, plan.valid_until) == (date(2026, 11, 20), date(2027, 1, 31))
    assert (plan.side, plan.irritability) == (Side.LEFT, Irritability.LOW)
    pendulum = plan.exercises[2]
    assert (pendulum.exercise, pendulum.movement, pendulum.hold_s) == ("pendulum", None, 30)
    assert pendulum.days == (Weekday.MONDAY, Weekday.TUESDAY)


def test_document_of_version_2(golden_2: bytes) -> None:
    document = unpack_document(golden_2, "golden")
    assert (document.version, document.plan.version) == (4, 2)
    reach, rotation = document.exercises
    assert (reach.movement, reach.view) == (Movement.HAND_BEHIND_BACK, View.BACK)
    assert [(r.value, r.error, r.spread) for r in reach.repetitions] == [
        (0.8125, 0.07, 0.0125),
        (0.79, 0.07, 0.0125),
        (0.775, 0.07, 0.0125),
    ]
    assert {r.unit for r in reach.repetitions} == {Unit.RATIO}
    assert reach.repetitions[0].form == Form(
        trunk_lean_deg=-4.5,
        shoulder_hike_ratio=0.042,
        trunk_lean_error_deg=3.0,
        shoulder_hike_error_ratio=0.05,
    )
    assert reach.calibration is not None
    assert (reach.calibration.state, reach.calibration.end_s) == ("still", 14.1)
    assert reach.calibration.trunk_yaw_deg == -6.0
    assert (rotation.position, rotation.view) == (Position.SUPINE, View.FOOT)


def test_readings_of_version_2(golden: bytes) -> None:
    readings = unpack_session(golden, "golden").readings
    assert readings.value[4] == 0.81
    assert readings.error[4] == 0.07
    hike = FORM_COLUMNS.index("shoulder_hike_ratio")
    assert readings.form[4, hike] == 0.042
    assert np.isnan(readings.form[4, hike + 1])


def test_tables_of_version_1(golden_1: bytes) -> None:
    session = unpack_session(golden_1, "golden")
    readings, landmarks = session.readings, session.landmarks
    assert len(readings) == 40
    assert readings.time_s[[0, 1, 39]] == pytest.approx([12.0, 12.05, 13.95])
    assert readings.value[4] == 101.0
    assert np.isnan(readings.value[9])
    assert DOUBTS[readings.doubt[9]] is Doubt.HIPS_OUT_OF_VIEW
    assert readings.doubt[10] == -1
    assert [PHASES[code] for code in readings.phase[[19, 20]]] == [Phase.MOVING, Phase.HOLDING]
    assert len(landmarks) == 20
    pose = list(landmarks.poses())[3]
    assert pose.time_s == pytest.approx(12.3)
    assert pose.size_px == (1280, 720)
    assert pose.brightness == 0.5
    assert pose.image_px[Landmark.RIGHT_WRIST] == pytest.approx([160, 326])
    assert pose.world_m[Landmark.RIGHT_WRIST] == pytest.approx([0.16, -0.32, 0.125])
    assert np.isnan(pose.visibility[Landmark.LEFT_INDEX])
    assert np.isnan(pose.image_px[Landmark.LEFT_ANKLE]).all()


def test_a_stranger_reads_it_with_other_tools(golden: bytes) -> None:
    with zipfile.ZipFile(io.BytesIO(golden)) as archive:
        assert archive.testzip() is None
        text = io.TextIOWrapper(archive.open("landmarks.csv"), encoding="utf-8", newline="")
        rows = list(csv.DictReader(text))
    assert len(rows) == 20
    assert rows[0]["left_hip_x_px"] == "230.0"
    assert rows[0]["left_hip_z_m"] == "0.125"
    assert rows[0]["left_index_visibility"] == ""
