"""The last page: what was done, what was measured, how it felt, where it lies."""

from __future__ import annotations

from typing import assert_never

from msgspec.structs import replace
from PyQt6.QtCore import Qt, pyqtSignal
from PyQt6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from coach.catalogue import catalogue, safety
from coach.desktop.patient.back_scale import BackScale
from coach.desktop.patient.coaching import Outcome
from coach.desktop.patient.controls import KeyButton
from coach.desktop.patient.demonstration import Demonstration
from coach.desktop.patient.prose import ProsePage
from coach.desktop.patient.range_dial import RangeDial
from coach.desktop.patient.wording import exercise_name, with_error
from coach.domain.movement import Unit
from coach.domain.plan import PlannedExercise
from coach.domain.progress import EndedBecause, Repetition
from coach.domain.session import ExerciseRecord, SessionEnd

NOTHING = "\N{EN DASH}"
_STILL_PX = (124, 124)
"""As large as the dials beside it."""


class SummaryPage(ProsePage):
    """Shows an Outcome; says what was held and measured, and praises neither pain nor range."""

    closed = pyqtSignal()

    def __init__(self, parent: QWidget | None = None) -> None:
        """Begin empty."""
        super().__init__(parent)
        self._title = self.line("", 0.06, bold=True)
        self._advice = self.line("", 0.028, bold=True, role="caution")
        self._saved = self.line("", 0.025)
        self._saved.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse
            | Qt.TextInteractionFlag.TextSelectableByKeyboard
        )
        note = self.line(
            self.tr(
                "The angle is that of the arm against the trunk, shoulder blade included, or of "
                "the forearm turned out; behind the back it is the tip of the thumb against the "
                "spine. Above is the middle one of the holds. ± is the 95 % error. Only your "
                "therapist can say what it means."
            ),
            0.022,
            role="soft",
        )
        self.close_button = KeyButton(self.tr("Close"), self.tr("Enter"), "primary", share=0.034)
        self.close_button.clicked.connect(self.closed)
        self._scroll = QScrollArea(self)
        self._scroll.setWidgetResizable(True)
        self._scroll.setFrameShape(QFrame.Shape.NoFrame)
        self._scroll.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self._scroll.setAccessibleName(self.tr("What was done"))
        foot = QHBoxLayout()
        foot.setSpacing(24)
        words = QVBoxLayout()
        words.addWidget(self._saved)
        words.addWidget(note)
        foot.addLayout(words, 7)
        foot.addWidget(self.close_button, 3)
        column = QVBoxLayout(self)
        column.setContentsMargins(44, 24, 44, 28)
        column.setSpacing(10)
        column.addWidget(self._title)
        column.addWidget(self._advice)
        column.addWidget(self._scroll, 1)
        column.addLayout(foot)

    def show_outcome(self, outcome: Outcome) -> None:
        """Show how a session ended."""
        document = outcome.document
        by_pain = document.ended_because is SessionEnd.PAIN
        if by_pain:
            self._title.setText(self.tr("Stopped because of the pain. What you did is kept."))
        elif document.ended_because is SessionEnd.COMPLETED:
            self._title.setText(self.tr("Done for today"))
        else:
            self._title.setText(self.tr("Stopped. What you did is kept."))
        advice = self._advice_on(document.exercises)
        if by_pain:
            advice = self._ring(document.plan.contact)
        self._advice.setText(advice)
        self._advice.setVisible(bool(advice))
        if outcome.saved_at is not None:
            self._saved.setText(
                self.tr("Saved for your therapist: {path}").format(path=outcome.saved_at)
            )
        else:
            self._saved.setText(outcome.fault or self.tr("Nothing was saved."))
        inside = QWidget()
        inside.setObjectName("page")
        column = QVBoxLayout(inside)
        column.setContentsMargins(0, 0, 8, 0)
        column.setSpacing(10)
        for record in document.exercises:
            column.addWidget(self._record(record, document.plan.exercises[record.planned_index]))
        if not document.exercises:
            column.addWidget(self.line(self.tr("No exercise was begun."), 0.034))
        column.addStretch(1)
        old = self._scroll.takeWidget()
        if old is not None:
            self.forget(old)
            old.deleteLater()
        self._scroll.setWidget(inside)
        self.close_button.setFocus()

    def _ring(self, contact: str) -> str:
        if contact:
            return self.tr(
                "Rest your arm, and ring your practice before you exercise again: {contact}"
            ).format(contact=contact)
        return self.tr("Rest your arm, and ring your practice before you exercise again.")

    def _record(self, record: ExerciseRecord, planned: PlannedExercise) -> QFrame:
        frame = QFrame(self)
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
            title = self.tr("Easier one: {name}").format(name=title)
        name.addWidget(self.line(title, 0.034, bold=True))
        ended = self._ended(record.ended_because)
        if ended:
            name.addWidget(self.line(ended, 0.026, role="soft"))
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
            value, kind = self.tr("by time"), self.tr("not measured")
        else:
            kind = self._kind(record.movement.unit)
        for figure, below, share in (
            (
                self.tr("{done} of {asked} holds").format(done=done, asked=planned.repetitions),
                self.tr("{held} s held, {asked} s asked").format(
                    held=round(held_s), asked=f"{asked_s:g}"
                ),
                6,
            ),
            (value, kind, 4),
            (
                self.tr("{before} → {after}").format(
                    before=_score(record.pain_before), after=_score(record.pain_after)
                ),
                self.tr("pain before, after"),
                4,
            ),
        ):
            column = QVBoxLayout()
            column.setSpacing(0)
            column.addStretch(1)
            column.addWidget(self.line(figure, 0.036, bold=True))
            column.addWidget(self.line(below, 0.024, role="soft"))
            column.addStretch(1)
            row.addLayout(column, share)
        if record.repetitions:
            card.addWidget(self.line(self._each(record.repetitions), 0.028))
        return frame

    def _kind(self, unit: Unit) -> str:
        match unit:
            case Unit.DEGREES:
                return self.tr("angle")
            case Unit.RATIO:
                return self.tr("thumb reached")
            case _ as never:
                assert_never(never)

    def _each(self, repetitions: tuple[Repetition, ...]) -> str:
        told = [
            self.tr("{held} s at {angle}").format(held=round(rep.held_s), angle=_reached(rep))
            for rep in repetitions
        ]
        return self.tr("Each hold: {holds}").format(holds=",  ".join(told))

    def _ended(self, because: SessionEnd) -> str:
        match because:
            case SessionEnd.COMPLETED:
                return ""
            case SessionEnd.STOPPED:
                return self.tr("stopped by you")
            case SessionEnd.SKIPPED:
                return self.tr("skipped by you")
            case SessionEnd.PAIN:
                return self.tr("ended because of the pain: ask your therapist")
            case SessionEnd.UNFINISHED:
                return self.tr("ended after several short holds: tell your therapist")
            case SessionEnd.INPUT_ENDED:
                return self.tr("ended because the picture ended")
            case SessionEnd.INTERRUPTED:
                return self.tr("broken off")
            case _ as never:
                assert_never(never)

    def _advice_on(self, records: tuple[ExerciseRecord, ...]) -> str:
        rises = [
            record.pain_after - record.pain_before
            for record in records
            if record.pain_before is not None and record.pain_after is not None
        ]
        if max(rises, default=0) < safety().pain_rise:
            return ""
        return self.tr(
            "Your pain went up. If it stays up for more than half an hour, or keeps you awake, "
            "tell your therapist before the next session."
        )


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
