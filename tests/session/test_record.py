"""Recorder and assembly: from frames to a file's content."""

from __future__ import annotations

import csv
import io

import numpy as np
import pytest
from numpy.typing import NDArray

from coach.documents.archive import pack_session, unpack_session
from coach.domain.fault import Fault
from coach.domain.moment import Moment, Stage
from coach.domain.movement import Movement, Side, View
from coach.domain.plan import Plan, PlannedExercise
from coach.domain.pose import Landmark, Pose
from coach.domain.progress import EndedBecause, Phase, Repetition
from coach.domain.reading import Form, Reading
from coach.domain.session import Camera, SessionEnd, Software
from coach.session.assemble import assemble
from coach.session.entries import (
    Asked,
    CameraCounts,
    Entry,
    ExerciseEnded,
    ExerciseStarted,
    LandmarkRows,
    PainGiven,
    ReadingRows,
    RepetitionDone,
    SessionEnded,
    SessionOpened,
)
from coach.session.recorder import Recorder

PLANNED = PlannedExercise(movement=Movement.ABDUCTION, side=Side.LEFT, hold_s=30, repetitions=3)
OPENED = SessionOpened(
    session_id="1" * 32,
    started_at="2026-02-28T23:59:30-03:30",
    software=Software(name="test", version="0", definitions=1, model_sha256="0" * 64),
    camera=Camera(kind="camera", width_px=640, height_px=480, frames_per_s=30),
    plan=Plan(patient_code="INVENTED", exercises=(PLANNED, PLANNED)),
)


def moment(
    time_s: float,
    points: NDArray[np.float64] | None = None,
    stage: Stage = Stage.EXERCISE,
    angle_deg: float = 100.0,
) -> Moment:
    points = np.zeros((33, 6)) if points is None else points
    pose = Pose(
        time_s=time_s,
        size_px=(640, 480),
        image_px=points[:, 0:2],
        world_m=points[:, 2:5],
        visibility=points[:, 5],
        brightness=0.4,
    )
    # Angles, hike, and an error each that follows the frame as a live one does.
    form = Form(*points[:3, 0] / 99, points[3, 2], points[4, 0] / 99, *np.abs(points[5:10, 2]) * 9)
    return Moment(
        time_s=time_s,
        stage=stage,
        exercise_index=0,
        planned=PLANNED,
        following=PLANNED,
        pose=pose,
        reading=Reading(time_s, angle_deg, 3.5 + points[0, 2], form=form),
        phase=Phase.HOLDING,
    )


def rows(entries: list[Entry], kind: type[ReadingRows | LandmarkRows]) -> list[str]:
    found = [entry.rows for entry in entries if isinstance(entry, kind)]
    return "".join(found).splitlines()


@pytest.mark.parametrize("rate_hz", [8, 10, 15, 24, 29.97, 30, 60])
def test_readings_at_full_rate_and_at_most_ten_rows_of_landmarks_a_second(rate_hz: float) -> None:
    random = np.random.default_rng(3)
    recorder = Recorder(1e6)
    entries: list[Entry] = []
    frames = int(60 * rate_hz)
    for frame in range(frames):
        jitter_s = random.uniform(-0.003, 0.003)
        entries += recorder.note(moment(1e6 + 5 + frame / rate_hz + jitter_s))
    entries += recorder.flush()
    assert len(rows(entries, ReadingRows)) == frames
    thinned = rows(entries, LandmarkRows)
    assert min(rate_hz, 7) * 60 - 1 <= len(thinned) <= 601


def test_nothing_of_the_body_is_recorded_outside_an_exercise() -> None:
    recorder = Recorder(0.0)
    entries: list[Entry] = []
    for stage in Stage:
        if stage is not Stage.EXERCISE:
            entries += recorder.note(moment(1.0, stage=stage))
    entries += recorder.flush()
    assert all(isinstance(entry, CameraCounts) for entry in entries)
    assert entries[-1] == CameraCounts(time_s=1.0, frames_seen=len(Stage) - 1, frames_lost=0)


def test_rows_come_out_each_second_and_times_never_run_back() -> None:
    recorder = Recorder(10.0)
    assert recorder.note(moment(10.5)) == ()
    readings, landmarks, counts = recorder.note(moment(11.0), frames_lost=4)
    assert isinstance(readings, ReadingRows)
    assert isinstance(landmarks, LandmarkRows)
    assert readings.rows.splitlines() == [
        "0.500,0,holding,100.0,3.5,,0.0,0.0,0.0,0.000,0.0,0.0,0.0,0.0,0.000,0.0",
        "1.000,0,holding,100.0,3.5,,0.0,0.0,0.0,0.000,0.0,0.0,0.0,0.0,0.000,0.0",
    ]
    assert counts == CameraCounts(time_s=1.0, frames_seen=2, frames_lost=4)
    recorder.note(moment(10.2))
    (late, *_) = recorder.flush()
    assert isinstance(late, ReadingRows)
    assert late.rows.startswith("1.000,")


def noisy_points(
    frames: int, random: np.random.Generator
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """A standing person's sway and jitter: 1 px, 4 mm, correlated from frame to frame."""
    still = random.uniform((100, 100, -0.6, -0.6, -0.6, 0.9), (500, 400, 0.6, 0.6, 0.6, 1), (33, 6))
    steps = np.array([1.0, 1.0, 0.004, 0.004, 0.004, 0.01])
    noise = random.normal(size=(frames, 33, 6)) * steps * np.sqrt(1 - 0.7**2)
    for frame in range(1, frames):
        noise[frame] += 0.7 * noise[frame - 1]
    sway = np.cumsum(random.normal(size=(frames, 33, 6)) * steps * 0.05, axis=0)
    angle_deg = 100 + 20 * np.sin(np.arange(frames) / 400) + random.normal(size=frames)
    points = still + noise + sway - sway.mean(axis=0)
    points[:, :, 5] = np.clip(points[:, :, 5], 0, 1)
    return points, angle_deg


def test_half_an_hour_of_exercising_stays_under_five_megabytes() -> None:
    frames = 30 * 60 * 30
    random = np.random.default_rng(11)
    recorder = Recorder(0.0)
    entries: list[Entry] = [OPENED]
    minute = 30 * 60
    for start in range(0, frames, minute):
        points, angle_deg = noisy_points(minute, random)
        for i in range(minute):
            time_s = (start + i) / 30 + random.uniform(-0.004, 0.004)
            entries += recorder.note(moment(time_s, points[i], angle_deg=angle_deg[i]))
    entries += recorder.flush()
    session = assemble(entries)
    data = pack_session(session.document, session.readings_csv, session.landmarks_csv)
    assert len(data) < 5_000_000
    back = unpack_session(data, "half an hour")
    assert len(back.readings) == frames
    assert len(back.landmarks) == pytest.approx(18_000, rel=0.01)


def repetition(start_s: float, end_s: float) -> Repetition:
    return Repetition(
        number=1,
        start_s=start_s,
        end_s=end_s,
        held_s=end_s - start_s,
        value=-3.5,
        error=4.0,
        spread=1.0,
        seen_fraction=1.0,
        ended_because=EndedBecause.COMPLETED,
    )


WHOLE: list[Entry] = [
    OPENED,
    PainGiven(time_s=3, asked=Asked.BEFORE, score=2, planned_index=0),
    ExerciseStarted(time_s=3, planned_index=0, view=View.BACK),
    ReadingRows(time_s=4, rows="4.000,0,rest,1.0,2.0" + "," * 11 + "\n"),
    RepetitionDone(time_s=41, planned_index=0, repetition=repetition(10, 40)),
    CameraCounts(time_s=42, frames_seen=900, frames_lost=7),
    ExerciseEnded(time_s=50, planned_index=0, ended_because=SessionEnd.COMPLETED),
    PainGiven(time_s=55, asked=Asked.AFTER, score=3, planned_index=0),
    PainGiven(time_s=55, asked=Asked.BEFORE, score=3, planned_index=1),
    ExerciseStarted(time_s=55, planned_index=1, view=View.FRONT, model_sha256="2" * 64),
    ExerciseEnded(time_s=70, planned_index=1, ended_because=SessionEnd.STOPPED),
    SessionEnded(time_s=70, ended_because=SessionEnd.STOPPED),
    PainGiven(time_s=75, asked=Asked.AT_END, score=1),
]


def test_assembles_what_the_entries_tell() -> None:
    session = assemble(WHOLE)
    document = session.document
    assert document.session_id == "1" * 32
    assert document.started_at == "2026-02-28T23:59:30-03:30"
    assert document.duration_s == 75
    assert document.ended_because is SessionEnd.STOPPED
    assert document.pain_at_end == 1
    assert (document.camera.frames_seen, document.camera.frames_lost) == (900, 7)
    first, second = document.exercises
    assert (first.view, first.started_s, first.ended_s) == (View.BACK, 3, 50)
    assert (first.pain_before, first.pain_after) == (2, 3)
    assert first.ended_because is SessionEnd.COMPLETED
    assert first.repetitions == (repetition(10, 40),)
    assert (second.pain_before, second.pain_after, second.repetitions) == (3, None, ())
    assert (first.model_sha256, second.model_sha256) == (None, "2" * 64)
    assert list(csv.reader(io.StringIO(session.readings_csv.decode())))[1][3] == "1.0"
    assert session.landmarks_csv.count(b"\n") == 1


@pytest.mark.parametrize("kept", range(1, len(WHOLE)))
def test_any_beginning_makes_a_session_that_can_be_read(kept: int) -> None:
    session = assemble(WHOLE[:kept])
    data = pack_session(session.document, session.readings_csv, session.landmarks_csv)
    document = unpack_session(data, "cut").document
    times_s = [entry.time_s for entry in WHOLE[1:kept]]  # type: ignore[union-attr]
    assert document.duration_s == max(times_s, default=0)
    has_end = any(isinstance(entry, SessionEnded) for entry in WHOLE[:kept])
    assert (document.ended_because is SessionEnd.INTERRUPTED) == (not has_end)
    done = sum(isinstance(entry, RepetitionDone) for entry in WHOLE[:kept])
    assert sum(len(exercise.repetitions) for exercise in document.exercises) == done


def test_an_exercise_left_open_ends_interrupted_at_the_last_stamp() -> None:
    (exercise,) = assemble(WHOLE[:6]).document.exercises
    assert exercise.ended_because is SessionEnd.INTERRUPTED
    assert exercise.ended_s == 42


def test_a_hold_that_began_before_its_exercise_was_noted_stays_inside_it() -> None:
    early = RepetitionDone(time_s=20, planned_index=0, repetition=repetition(2.5, 20))
    (exercise,) = assemble([*WHOLE[:3], early]).document.exercises
    assert exercise.started_s == 2.5


def test_nothing_done_is_an_empty_session() -> None:
    assert assemble(WHOLE[:1]).empty
    assert assemble(WHOLE[:2]).empty
    assert not assemble(WHOLE[:3]).empty


@pytest.mark.parametrize(
    "entries",
    [
        [],
        WHOLE[1:],
        [OPENED, OPENED],
        [OPENED, ExerciseStarted(time_s=1, planned_index=2, view=View.SIDE)],
    ],
)
def test_entries_that_tell_no_session_are_refused(entries: list[Entry]) -> None:
    with pytest.raises(Fault, match="journal"):
        assemble(entries)


def test_points_far_out_are_not_known_rather_than_unreadable() -> None:
    points = np.zeros((33, 6))
    points[Landmark.LEFT_WRIST] = [1e7, 5, 1e4, 0, 0, 1]
    recorder = Recorder(0.0)
    entries: list[Entry] = [OPENED, *recorder.note(moment(1.0, points))]
    session = assemble(entries)
    data = pack_session(session.document, session.readings_csv, session.landmarks_csv)
    (pose,) = unpack_session(data, "far").landmarks.poses()
    assert np.isnan(pose.image_px[Landmark.LEFT_WRIST, 0])
    assert pose.image_px[Landmark.LEFT_WRIST, 1] == 5
    assert np.isnan(pose.world_m[Landmark.LEFT_WRIST, 0])
