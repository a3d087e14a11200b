"""An invented patient whose sittings hold everything that a session document can say."""

from __future__ import annotations

from datetime import date, timedelta

import msgspec

from coach.domain.exercise import Irritability, StiffnessPhase
from coach.domain.form import FormFault
from coach.domain.movement import Movement, Position, Side, View
from coach.domain.plan import NextStep, PlannedExercise
from coach.domain.practice import (
    Episode,
    HandMeasure,
    OtherSideMeasure,
    PatientRecords,
    Person,
    TotalScore,
    Treatment,
    TreatmentKind,
)
from coach.domain.progress import EndedBecause, TimedHold
from coach.domain.session import ExerciseRecord, SessionDocument, SessionEnd
from tests.review.conftest import BEGIN, make_session

PENDULUM = PlannedExercise(exercise="pendulum", side=Side.LEFT, hold_s=30, repetitions=2)


def full_session(number: int = 0, code: str = "SH-017", title: str = "Gently") -> SessionDocument:
    """Flexion with two holds, a timed exercise eased after pain, the hand behind the back."""
    reach = make_session(movement=Movement.HAND_BEHIND_BACK, values=(0.6,), error=0.06)
    timed = ExerciseRecord(
        planned_index=1,
        exercise="table-slide",
        eased=True,
        movement=None,
        side=Side.LEFT,
        view=View.FRONT,
        position=Position.SITTING,
        started_s=110,
        ended_s=150,
        ended_because=SessionEnd.PAIN,
        timed=(
            TimedHold(
                number=1, start_s=112.5, end_s=130, held_s=17.5, ended_because=EndedBecause.STOPPED
            ),
        ),
        pain_before=3,
        pain_after=6,
    )
    hold = msgspec.structs.replace(reach.exercises[0].repetitions[0], start_s=165.0, end_s=185.0)
    behind = msgspec.structs.replace(
        reach.exercises[0],
        repetitions=(hold,),
        planned_index=2,
        started_s=160.0,
        ended_s=200.0,
        pain_before=5,
    )
    document = make_session(
        number,
        (-12.0, -9.5),
        at=BEGIN + timedelta(days=number),
        code=code,
        movement=Movement.EXTERNAL_ROTATION_0,
        error=13.0,
        pain=(2, 3),
        other_side=55.0,
        extra=(timed, behind),
        planned=(PENDULUM, reach.plan.exercises[0]),
    )
    first, *others = document.exercises
    holds = (
        msgspec.structs.replace(first.repetitions[0], faults=(FormFault.LEAN,)),
        first.repetitions[1],
    )
    asked, *more = document.plan.exercises
    rule = NextStep(sessions=3, at_least_deg=30, pain_at_most=2)
    plan = msgspec.structs.replace(
        document.plan,
        title=title,
        phase=StiffnessPhase.STIFF,
        irritability=Irritability.LOW,
        issued_on=date(2026, 1, 2),
        valid_until=date(2026, 3, 1),
        exercises=(
            msgspec.structs.replace(asked, target_deg=40, next_step=rule, per_day=2),
            *more,
        ),
    )
    whole = msgspec.structs.replace(
        document,
        ended_because=SessionEnd.PAIN,
        duration_s=210.0,
        pain_at_end=4,
        plan=plan,
        exercises=(msgspec.structs.replace(first, repetitions=holds), *others),
    )
    # As a store gives it back: whole numbers become what their fields are.
    return msgspec.json.decode(msgspec.json.encode(whole), type=SessionDocument)


def own_records(code: str = "SH-017", said: str = "Reach the top shelf") -> PatientRecords:
    """One record of each kind and a treatment ahead, as a store gives them."""
    episode = Episode(
        id=1,
        code=code,
        side=Side.LEFT,
        began_on=date(2025, 11, 3),
        phase=StiffnessPhase.STIFF,
        irritability=Irritability.LOW,
        goals=said,
        note="Woke at night until Christmas",
    )
    return PatientRecords(
        person=Person(code=code, name="Invented Heron"),
        episodes=(episode,),
        treatments=(
            Treatment(
                id=1,
                code=code,
                episode_id=1,
                on=date(2026, 1, 9),
                kind=TreatmentKind.INJECTION,
                text=said,
            ),
            Treatment(id=2, code=code, on=date(2026, 3, 9), kind=TreatmentKind.HYDRODILATATION),
        ),
        by_hand=(
            HandMeasure(
                id=1,
                code=code,
                episode_id=1,
                on=date(2026, 1, 12),
                movement=Movement.FLEXION,
                side=Side.LEFT,
                value_deg=95.0,
                passive=True,
            ),
        ),
        other_side=(
            OtherSideMeasure(
                id=1,
                code=code,
                episode_id=1,
                on=date(2026, 1, 5),
                movement=Movement.FLEXION,
                value_deg=165.0,
            ),
        ),
        scores=(
            TotalScore(
                id=1,
                code=code,
                on=date(2026, 1, 20),
                name=said[:100] or "-",
                total=61.5,
                maximum=100,
            ),
        ),
    )
