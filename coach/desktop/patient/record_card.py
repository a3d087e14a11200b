"""One exercise of a sitting that is over: its dose, what was measured, how it felt."""

from __future__ import annotations

from typing import assert_never

from msgspec.structs import replace
from PyQt6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout, QWidget

from coach.catalogue import catalogue
from coach.desktop.patient.back_scale import BackScale
from coach.desktop.patient.demonstration import Demonstration
from coach.desktop.patient.prose import ProsePage
from coach.desktop.patient.range_dial import RangeDial
from coach.desktop.patient.wording import exercise_name, translate, with_error
from coach.domain.movement import Unit
from coach.domain.plan import PlannedExercise
from coach.domain.progress import EndedBecause, Repetition
from coach.domain.session import ExerciseRecord, SessionEnd

NOTHING = "\N{EN DASH}"
_STILL_PX = (124, 124)
"""As large as the dials beside it."""


def record_card(page: ProsePage, record: ExerciseRecord, planned: PlannedExercise) -> QFrame:
    """Make the card of one exercise; its lines grow with ``page``."""
    frame = QFrame(page)
    frame.setProperty("role", "card")
    card = QVBoxLayout(frame)
    card.setContentsMargins(20, 12, 20, 14)
    row = QHBoxLayout()
    row.setSpacing(22)
    card.addLayout(row)
    middle = middle_repetition(record.repetitions)
    row.addWidget(_drawing(record, middle, done_exercise(record, planned)))
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
    held_s = sum(rep.held_s for rep in record.repetitions)
    held_s += sum(hold.held_s for hold in record.timed)
    asked_s = planned.repetitions * planned.hold_s
    value = NOTHING if middle is None else _reached(middle)
    if record.movement is None:
        value, kind = translate("patient", "by time"), translate("patient", "not measured")
    else:
        kind = _kind(record.movement.unit)
    for figure, below, share in (
        (
            translate("patient", "{done} of {asked} holds").format(
                done=done, asked=planned.repetitions
            ),
            translate("patient", "{held} s held, {asked} s asked").format(
                held=round(held_s), asked=f"{asked_s:g}"
            ),
            6,
        ),
        (value, kind, 4),
        (
            translate("patient", "{before} → {after}").format(
                before=_score(record.pain_before), after=_score(record.pain_after)
            ),
            translate("patient", "pain before, after"),
            4,
        ),
    ):
        column = QVBoxLayout()
        column.setSpacing(0)
        column.addStretch(1)
        column.addWidget(page.line(figure, 0.036, bold=True))
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
            held=round(rep.held_s), angle=_reached(rep)
        )
        for rep in repetitions
    ]
    return translate("patient", "Each hold: {holds}").format(holds=",  ".join(told))


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


def middle_repetition(repetitions: tuple[Repetition, ...]) -> Repetition | None:
    """Give the completed hold with the median range, the smaller one of two.

    Without a completed one it is of the others; None without any."""
    completed = [rep for rep in repetitions if rep.ended_because is EndedBecause.COMPLETED]
    by_value = sorted(completed or repetitions, key=lambda rep: rep.value * rep.unit.sign)
    return by_value[(len(by_value) - 1) // 2] if by_value else None


def _drawing(
    record: ExerciseRecord, middle: Repetition | None, planned: PlannedExercise
) -> QWidget:
    value, error = (None, 0.0) if middle is None else (middle.value, middle.error)
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


def _reached(rep: Repetition) -> str:
    return with_error(rep.value, rep.error, rep.unit)


def _score(pain: int | None) -> str:
    return NOTHING if pain is None else str(pain)
