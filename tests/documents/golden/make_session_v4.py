"""Made session_v4.shoulder.zip, once: an invented person's short sitting.

The file stands for what version 4 of the program wrote and is never made anew; the script shows
where its numbers come from. Run it with the path to write to. That of version 3 beside it holds the
same but for the first exercise's own pose model; that of version 2 but for what came with version
3, too: the timed exercise, the easier one and the faults of form. The plans are those of the
sittings of versions 2 and 3; the journals of these are theirs, broken off before the last two and
the last three entries. Those of version 1 were made in the same way by the program of their time: a
session file, the journal of a sitting that broke off before its last pain question, and a store
with the session file and one refusal in it.
"""

from __future__ import annotations

import sys
from datetime import date
from pathlib import Path

import numpy as np

from coach.documents.archive import pack_session
from coach.domain.exercise import Irritability, StiffnessPhase
from coach.domain.form import FormFault
from coach.domain.moment import Moment, Stage
from coach.domain.movement import Movement, Position, Side, Unit, View
from coach.domain.plan import OtherSide, Plan, PlannedExercise, Weekday
from coach.domain.pose import Landmark, Pose
from coach.domain.progress import EndedBecause, Phase, Repetition, TimedHold
from coach.domain.reading import Calibration, Doubt, Form, Reading
from coach.domain.session import Camera, SessionEnd, Software
from coach.session.assemble import assemble
from coach.session.entries import (
    Asked,
    Calibrated,
    EasierOffered,
    Entry,
    ExerciseEnded,
    ExerciseStarted,
    PainGiven,
    RepetitionDone,
    SessionEnded,
    SessionOpened,
    TimedHoldDone,
)
from coach.session.recorder import Recorder

PLAN = Plan(
    patient_code="INVENTED-7",
    title="Woche 3, Übungsplan für Anna Beispiel (erfunden)",
    exercises=(
        PlannedExercise(
            movement=Movement.HAND_BEHIND_BACK, side=Side.LEFT, hold_s=30, repetitions=3
        ),
        PlannedExercise(
            movement=Movement.EXTERNAL_ROTATION_0,
            side=Side.LEFT,
            hold_s=20,
            repetitions=2,
            rest_s=15,
            position=Position.SUPINE,
            target_deg=25,
            pain_limit=3,
        ),
        PlannedExercise(
            exercise="pendulum",
            side=Side.LEFT,
            hold_s=30,
            repetitions=2,
            view=View.SIDE,
            pain_limit=5,
            days=(Weekday.MONDAY, Weekday.TUESDAY),
        ),
    ),
    revision=3,
    issued_on=date(2026, 11, 20),
    valid_until=date(2027, 1, 31),
    side=Side.LEFT,
    phase=StiffnessPhase.STIFF,
    irritability=Irritability.LOW,
    sessions_per_week=10,
    other_side=(OtherSide(movement=Movement.FLEXION, value_deg=168.0),),
    contact="Praxis am Beispielweg (erfunden)",
)

OPENED = SessionOpened(
    session_id="1b2c3d4e5f60718293a4b5c6d7e8f90a",
    started_at="2026-11-24T10:15:30+01:00",
    software=Software(
        name="stiff-shoulder-coach", version="0.1.0", definitions=1, model_sha256="5" * 64
    ),
    camera=Camera(
        kind="camera", width_px=1280, height_px=720, frames_per_s=30.0, field_of_view_deg=62.0
    ),
    plan=PLAN,
)

CALIBRATION = Calibration(
    state="still",
    start_s=12.1,
    end_s=14.1,
    trunk_tilt_deg=1.5,
    trunk_yaw_deg=-6.0,
    shoulder_breadth_ratio=0.71,
)
FORM = Form(
    trunk_lean_deg=-4.5,
    shoulder_hike_ratio=0.042,
    trunk_lean_error_deg=3.0,
    shoulder_hike_error_ratio=0.05,
)


def entries() -> list[Entry]:
    found: list[Entry] = [OPENED]
    found.append(PainGiven(time_s=12.0, asked=Asked.BEFORE, score=2, planned_index=0))
    found.append(
        ExerciseStarted(
            time_s=12.0,
            planned_index=0,
            view=View.BACK,
            position=Position.STANDING,
            model_sha256="6" * 64,
        )
    )
    found.append(Calibrated(time_s=14.5, planned_index=0, calibration=CALIBRATION))
    recorder = Recorder(1000.0)
    holds = [
        (20.0, 50.4, 30.0, 0.8125, EndedBecause.COMPLETED),
        (65.0, 77.5, 12.25, 0.79, EndedBecause.LET_GO),
        (90.0, 120.5, 30.0, 0.775, EndedBecause.COMPLETED),
    ]
    for frame in range(40):
        found.extend(recorder.note(moment(1012.0 + frame / 20, frame)))
    found.extend(recorder.flush())
    for number, (start_s, end_s, held_s, value, because) in enumerate(holds, start=1):
        repetition = Repetition(
            number=number,
            start_s=start_s,
            end_s=end_s,
            held_s=held_s,
            value=value,
            error=0.07,
            spread=0.0125,
            unit=Unit.RATIO,
            seen_fraction=0.96,
            ended_because=because,
            form=FORM,
            faults=(FormFault.LEAN,) if number == 3 else (),
        )
        found.append(RepetitionDone(time_s=end_s, planned_index=0, repetition=repetition))
    found.append(ExerciseEnded(time_s=130.0, planned_index=0, ended_because=SessionEnd.SKIPPED))
    found.append(PainGiven(time_s=135.5, asked=Asked.AFTER, score=4, planned_index=0))
    found.append(PainGiven(time_s=135.5, asked=Asked.BEFORE, score=4, planned_index=1))
    found.append(ExerciseEnded(time_s=135.5, planned_index=1, ended_because=SessionEnd.PAIN))
    found.append(PainGiven(time_s=135.5, asked=Asked.BEFORE, score=4, planned_index=2))
    found.append(
        ExerciseStarted(time_s=140.0, planned_index=2, view=View.SIDE, exercise="pendulum")
    )
    timed = TimedHold(
        number=1, start_s=148.0, end_s=178.0, held_s=30.0, ended_because=EndedBecause.COMPLETED
    )
    found.append(TimedHoldDone(time_s=178.0, planned_index=2, hold=timed))
    found.append(ExerciseEnded(time_s=180.0, planned_index=2, ended_because=SessionEnd.PAIN))
    found.append(PainGiven(time_s=180.0, asked=Asked.AFTER, score=6, planned_index=2))
    found.append(EasierOffered(time_s=180.0, planned_index=2, exercise="armpit-squeeze"))
    found.append(PainGiven(time_s=190.0, asked=Asked.BEFORE, score=3, planned_index=2, eased=True))
    found.append(
        ExerciseStarted(
            time_s=195.0,
            planned_index=2,
            view=View.FRONT,
            eased=True,
            exercise="armpit-squeeze",
        )
    )
    found.append(
        ExerciseEnded(time_s=200.0, planned_index=2, ended_because=SessionEnd.STOPPED, eased=True)
    )
    found.append(PainGiven(time_s=200.0, asked=Asked.AT_END, score=4))
    found.append(SessionEnded(time_s=200.0, ended_because=SessionEnd.STOPPED))
    return found


def moment(time_s: float, frame: int) -> Moment:
    """Row i: height 0.8 + i/400; every tenth is doubted; landmark k lies at (10 k, 20 k)."""
    rows = np.arange(len(Landmark), dtype=float)
    pose = Pose(
        time_s=time_s,
        size_px=(1280, 720),
        image_px=np.column_stack([10 * rows, 20 * rows + frame]),
        world_m=np.column_stack([rows / 100, -rows / 50, np.full(len(rows), 0.125)]),
        visibility=np.where(rows == Landmark.LEFT_INDEX, np.nan, 0.75),
        people=1,
        brightness=0.5,
    )
    doubted = frame % 10 == 9
    reading = Reading(
        time_s=time_s,
        value=None if doubted else 0.8 + frame / 400,
        error=None if doubted else 0.07,
        doubt=Doubt.HIPS_OUT_OF_VIEW if doubted else None,
        form=FORM,
    )
    return Moment(
        time_s=time_s,
        stage=Stage.EXERCISE,
        exercise_index=0,
        planned=PLAN.exercises[0],
        following=PLAN.exercises[1],
        pose=pose,
        reading=reading,
        phase=Phase.MOVING if frame < 20 else Phase.HOLDING,
    )


def main() -> None:
    session = assemble(entries())
    data = pack_session(session.document, session.readings_csv, session.landmarks_csv)
    Path(sys.argv[1]).write_bytes(data)


if __name__ == "__main__":
    main()
