"""One exercise of a sitting that is over: its dose, what was measured, how it felt."""

from __future__ import annotations

from collections.abc import Sequence
from typing import assert_never

from msgspec.structs import replace
from PyQt6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout, QWidget

from coach.catalogue import catalogue
from coach.desktop.patient.back_scale import BackScale
from coach.desktop.patient.demonstration import Demonstration
from coach.desktop.patient.prose import ProsePage
from coach.desktop.patient.range_dial import RangeDial
from coach.desktop.patient.wording import exercise_name, translate, with_error
from coach.domain.movement import Movement, Unit
from coach.domain.plan import PlannedExercise
from coach.domain.progress import EndedBecause, Repetition
from coach.domain.session import ExerciseRecord, SessionDocument, SessionEnd
from coach.review.history import Point, point_of
from coach.review.holds import counted_s, holds_of

NOTHING = "\N{EN DASH}"
_STILL_PX = (124, 124)
"""As large as the dials beside it."""


def record_card(page: ProsePage, document: SessionDocument, record: ExerciseRecord) -> QFrame:
    """Make the card of one exercise; its lines grow with ``page``.

    Value and seconds are the therapist's own (``coach.review``), so that both read the same.
    """
    planned = document.plan.exercises[record.planned_index]
    frame = QFrame(page)
    frame.setProperty("role", "card")
    card = QVBoxLayout(frame)
    card.setContentsMargins(20, 12, 20, 14)
    row = QHBoxLayout()
    row.setSpacing(22)
    card.addLayout(row)
    point = None if record.movement is None else point_of(document, (record,))
    row.addWidget(_drawing(record, point, done_exercise(record, planned)))
    name = QVBoxLayout()
    name.addStretch(1)
    title = exercise_name(done_exercise(record, planned))
    if record.eased:
        title = translate("patient", "Easier one: {name}").format(name=title)
    name.addWidget(page.line(title, 0.034, bold=True))
    ended = how_it_ended(record.ended_because)
    if ended:
        name.addWidget(page.line(ended, 0.026, role="soft"))
    name.addStretch(1)
    row.addLayout(name, 9)
    because = [rep.ended_because for rep in record.repetitions]
    because += [hold.ended_because for hold in record.timed]
    done = because.count(EndedBecause.COMPLETED)
    asked_s = planned.repetitions * planned.hold_s
    if record.movement is None:
        value, kind = translate("patient", "by time"), translate("patient", "not measured")
    elif point is None:
        value, kind = NOTHING, translate("patient", "no hold long enough")
    else:
        value = with_error(point.value, point.error, record.movement.unit)
        kind = _kind(record.movement.unit)
    for figure, below, share in (
        (
            translate("patient", "{done} of {asked} holds").format(
                done=done, asked=planned.repetitions
            ),
            translate("patient", "{held} of {asked:g} s held").format(
                held=round(counted_s(record, planned)), asked=asked_s
            ),
            6,
        ),
        (value, kind, 4),
        (*_pain(record), 4),
    ):
        column = QVBoxLayout()
        column.setSpacing(0)
        column.addStretch(1)
        column.addWidget(page.line(figure, 0.036, bold=True, wrap=False))
        column.addWidget(page.line(below, 0.024, role="soft"))
        column.addStretch(1)
        row.addLayout(column, share)
    if record.repetitions:
        card.addWidget(page.line(_each(record.repetitions), 0.028))
    return frame


def _kind(unit: Unit) -> str:
    match unit:
        case Unit.DEGREES:
            return translate("patient", "angle")
        case Unit.RATIO:
            return translate("patient", "thumb reached")
        case _ as never:
            assert_never(never)


def _each(repetitions: tuple[Repetition, ...]) -> str:
    told = [
        translate("patient", "{held} s at {angle}").format(
            held=round(rep.held_s), angle=with_error(rep.value, rep.error, rep.unit)
        )
        for rep in repetitions
    ]
    return translate("patient", "Each hold: {holds}").format(holds=",  ".join(told))


def what_is_shown(records: Sequence[ExerciseRecord]) -> str:
    """Say what the cards' figures are, of what there is on them alone."""
    if not any(map(holds_of, records)):
        return ""
    told = [translate("patient", "Seconds beyond those asked for are not counted.")]
    movements = {r.movement for r in records if r.movement is not None and r.repetitions}
    if movements:
        told.append(
            translate(
                "patient",
                "The large figure is the middle of the holds; of two it is halfway between. A "
                "hold cut short, or with the body moving along, counts only if there is no other.",
            )
        )
    told += sorted({_measure(movement) for movement in movements})
    if any(movement.unit is Unit.DEGREES for movement in movements):
        told.append(translate("patient", "± is the 95 % error."))
    if movements:
        told.append(translate("patient", "Only your therapist can say what it means."))
    return " ".join(told)


def _measure(movement: Movement) -> str:
    match movement:
        case Movement.FLEXION | Movement.EXTENSION | Movement.ABDUCTION:
            return translate("patient", "It is the arm against the trunk, shoulder blade included.")
        case Movement.EXTERNAL_ROTATION_0 | Movement.EXTERNAL_ROTATION_90:
            return translate("patient", "For a turned forearm it is the turn from straight ahead.")
        case Movement.HORIZONTAL_ADDUCTION:
            return translate("patient", "Across the chest it is the way in from out to the side.")
        case Movement.HAND_BEHIND_BACK:
            return translate("patient", "Behind the back it is the tip of the thumb at the spine.")
        case _ as never:
            assert_never(never)


def how_it_ended(because: SessionEnd) -> str:
    """Say why it ended; nothing where it was done to its end."""
    match because:
        case SessionEnd.COMPLETED:
            return ""
        case SessionEnd.STOPPED:
            return translate("patient", "stopped by you")
        case SessionEnd.SKIPPED:
            return translate("patient", "skipped by you")
        case SessionEnd.PAIN:
            return translate("patient", "ended because of the pain: ask your therapist")
        case SessionEnd.UNFINISHED:
            return translate("patient", "ended after several short holds: tell your therapist")
        case SessionEnd.INPUT_ENDED:
            return translate("patient", "ended because the picture ended")
        case SessionEnd.INTERRUPTED:
            return translate("patient", "broken off")
        case _ as never:
            assert_never(never)


def done_exercise(record: ExerciseRecord, planned: PlannedExercise) -> PlannedExercise:
    """Give what was done: the planned exercise, or the easier one in its place."""
    if not record.eased:
        return planned
    return replace(
        planned,
        exercise=record.exercise,
        movement=record.movement,
        position=record.position,
        view=record.view,
        target_deg=None,
    )


def _drawing(record: ExerciseRecord, point: Point | None, planned: PlannedExercise) -> QWidget:
    value, error = (None, 0.0) if point is None else (point.value, point.error)
    if record.movement is None:
        return _still(planned)
    match record.movement.unit:
        case Unit.DEGREES:
            return RangeDial(record.movement, record.side, value, error)
        case Unit.RATIO:
            return BackScale(value, error)
        case _ as never:
            assert_never(never)


def _still(planned: PlannedExercise) -> QWidget:
    """Draw what was done where nothing was measured."""
    exercise = catalogue().by_name.get(planned.exercise or "")
    if exercise is None:
        return QWidget()
    drawing = Demonstration(exercise, planned.side, animated=False)
    drawing.setFixedSize(*_STILL_PX)
    return drawing


def _pain(record: ExerciseRecord) -> tuple[str, str]:
    before, after = record.pain_before, record.pain_after
    if before is None and after is None:
        return NOTHING, translate("patient", "pain not given")
    told = translate("patient", "{before} → {after}").format(
        before=_score(before), after=_score(after)
    )
    return told, translate("patient", "pain before, after")


def _score(pain: int | None) -> str:
    return NOTHING if pain is None else str(pain)
