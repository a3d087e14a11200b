"""Version 1 stays readable: numbers by hand, from golden/make_session_v1.py."""

from __future__ import annotations

import csv
import io
import zipfile

import numpy as np
import pytest

from coach.documents.archive import unpack_document, unpack_session
from coach.documents.tables import DOUBTS, PHASES
from coach.domain.movement import Movement, Side, View
from coach.domain.pose import Landmark
from coach.domain.progress import EndedBecause, Phase
from coach.domain.reading import Doubt
from coach.domain.session import SessionEnd


def test_document(golden: bytes) -> None:
    document = unpack_document(golden, "golden")
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
    assert [r.value_deg for r in flexion.repetitions] == [121.4, 124.0, 125.75]
    assert flexion.repetitions[1].ended_because is EndedBecause.LET_GO
    assert flexion.repetitions[0].form.trunk_lean_deg == -4.5
    assert flexion.repetitions[0].form.trunk_turn_deg is None
    assert rotation.ended_because is SessionEnd.PAIN
    assert (rotation.pain_before, rotation.repetitions) == (4, ())


def test_tables(golden: bytes) -> None:
    session = unpack_session(golden, "golden")
    readings, landmarks = session.readings, session.landmarks
    assert len(readings) == 40
    assert readings.time_s[[0, 1, 39]] == pytest.approx([12.0, 12.05, 13.95])
    assert readings.angle_deg[4] == 101.0
    assert np.isnan(readings.angle_deg[9])
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
