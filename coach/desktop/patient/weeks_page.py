"""The patient's own weeks: what is due, what was done, how far the arm went and how it felt."""

from __future__ import annotations

from datetime import date

from PyQt6.QtWidgets import QHBoxLayout, QLabel, QVBoxLayout, QWidget

from coach import texts
from coach.catalogue import catalogue
from coach.desktop.patient.calendar import Calendar
from coach.desktop.patient.leaves import LeavesPage
from coach.desktop.patient.series_view import SeriesView
from coach.desktop.patient.wording import exercise_name, translate, with_error, with_side
from coach.domain.movement import Unit
from coach.domain.plan import PlannedExercise
from coach.review.diary_entries import Diary, DiarySeries, Due, LastExercise
from coach.review.wording import day

MOST_DUE, MOST_DONE = 5, 6
"""Exercises named on a leaf; more would be too small to read from across a room."""


class WeeksPage(LeavesPage):
    """Shows a ``Diary``: today and the calendar, the last time, then a leaf for each movement."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Begin empty."""
        super().__init__(parent)
        self.turned.connect(self.show_leaf)
        self._diary: Diary | None = None
        self._today = self.line("", 0.036, bold=True)
        self._due = [self.line("", 0.034) for _ in range(MOST_DUE + 1)]
        self._last = self.line("", 0.036, bold=True)
        self._done = [self.line("", 0.034) for _ in range(MOST_DONE + 1)]
        self._none = self.line(self.tr("Nothing has been done yet."), 0.034)
        self.calendar = Calendar(self)
        self._sentence = self.line("", 0.036, bold=True)
        self._reached = self.line("", 0.03)
        self.chart = SeriesView(self)
        self._note = self.line(
            "",
            0.026,
            role="soft",
        )
        # A stacked layout is as tall as its tallest sheet, and the others would scroll for it.
        self._sheets = (self._overview(), self._last_time(), self._movement())
        for sheet in self._sheets:
            self.body.addWidget(sheet, 1)

    def show_diary(self, diary: Diary) -> None:
        """Show this diary from its first leaf on."""
        self._diary = diary
        self.calendar.show_days(diary.days)
        self._tell_today(diary)
        self._tell_last(diary)
        self.open_leaves(1 + (diary.last is not None) + len(diary.series))

    def show_leaf(self, index: int) -> None:
        """Show today and the calendar, or one movement."""
        if self._diary is None:
            return
        ahead = 1 if self._diary.last is None else 2
        if index < ahead:
            self._show_sheet(index)
            self.title.setText(self.tr("The last time") if index else self.tr("My weeks"))
            return
        self._show_sheet(2)
        entry = self._diary.series[index - ahead]
        name = series_name(entry)
        self.title.setText(name)
        self._sentence.setText(entry.sentence)
        self._reached.setText(self._last_value(entry))
        self._reached.setVisible(len(entry.days) > 1)
        self._note.setText(self._note_on(entry))
        self.chart.show_series(entry, self.tr("Each session, and pain below"))

    def _show_sheet(self, index: int) -> None:
        for place, sheet in enumerate(self._sheets):
            sheet.setVisible(place == index)

    def _overview(self) -> QWidget:
        sheet = QWidget(self)
        words = QVBoxLayout()
        words.setSpacing(8)
        for label in (self._today, *self._due):
            words.addWidget(label)
        words.addSpacing(18)
        words.addWidget(self._none)
        words.addStretch(1)
        row = QHBoxLayout(sheet)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(32)
        row.addLayout(words, 10)
        row.addWidget(self.calendar, 11)
        return sheet

    def _last_time(self) -> QWidget:
        sheet = QWidget(self)
        column = QVBoxLayout(sheet)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(10)
        for label in (self._last, *self._done):
            column.addWidget(label)
        column.addStretch(1)
        return sheet

    def _movement(self) -> QWidget:
        sheet = QWidget(self)
        column = QVBoxLayout(sheet)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        column.addWidget(self._sentence)
        column.addWidget(self._reached)
        column.addWidget(self.chart, 1)
        column.addWidget(self._note)
        return sheet

    def _tell_today(self, diary: Diary) -> None:
        if diary.expired_on is not None:
            heading = self.tr("Your plan held until {day}. Ask your therapist for a new one.")
            self._today.setText(heading.format(day=day(diary.expired_on)))
        elif not diary.due:
            self._today.setText(self.tr("Today is a rest day."))
        else:
            self._today.setText(self.tr("Today"))
        _fill(self._due, [self._due_line(due) for due in diary.due], self.tr("and {count} more"))

    def _due_line(self, due: Due) -> str:
        name = planned_name(due.planned)
        if due.done >= due.asked:
            return self.tr("✓ {name}: done").format(name=name)
        if due.asked == 1:
            return self.tr("• {name}").format(name=name)
        return self.tr("• {name}: {done} of {asked} times").format(
            name=name, done=due.done, asked=due.asked
        )

    def _tell_last(self, diary: Diary) -> None:
        self._none.setVisible(diary.last is None)
        if diary.last is None:
            return
        self._last.setText(_when(diary.last.on, diary.today))
        lines = [self._done_line(each) for each in diary.last.exercises]
        _fill(self._done, lines, self.tr("and {count} more"))

    def _done_line(self, each: LastExercise) -> str:
        holds = self.tr("{done} of {asked} holds").format(
            done=each.holds, asked=each.planned.repetitions
        )
        parts = [holds]
        movement = each.planned.movement
        if each.best is not None and each.best_error is not None and movement is not None:
            reached = with_error(each.best, each.best_error, movement.unit)
            parts.append(self.tr("furthest {reached}").format(reached=reached))
        if each.pain_before is not None and each.pain_after is not None:
            parts.append(
                self.tr("pain {before} before, {after} after").format(
                    before=each.pain_before, after=each.pain_after
                )
            )
        return f"{planned_name(each.planned)}: {', '.join(parts)}"

    def _note_on(self, entry: DiarySeries) -> str:
        note = self.tr(
            "The band shows how wrong each number may be. Going further is never worth more pain."
        )
        if entry.series.movement.unit is Unit.RATIO:
            scale = self.tr("0 % is the foot of the neck and 100 % the pelvis.")
            return f"{scale} {note}"
        return note

    def _last_value(self, entry: DiarySeries) -> str:
        if not entry.days:
            return ""
        last = entry.days[-1]
        return self.tr("Last measured on {day}: {value}, the middle of the holds.").format(
            day=day(last.on),
            value=with_error(last.value, last.error, entry.series.movement.unit),
        )


def planned_name(planned: PlannedExercise) -> str:
    """Name an exercise by the catalogue's title, or by its movement where it has none."""
    if planned.exercise is not None:
        known = catalogue().by_name.get(planned.exercise)
        title = planned.exercise if known is None else texts.of(known.telling).title
        return with_side(title, planned.side)
    return exercise_name(planned)


def series_name(entry: DiarySeries) -> str:
    """Name a series by its movement, side and position."""
    series = entry.series
    return exercise_name(
        PlannedExercise(
            movement=series.movement,
            side=series.side,
            position=series.position,
            hold_s=1,
            repetitions=1,
        )
    )


def _when(on: date, today: date) -> str:
    days = (today - on).days
    if days == 0:
        return translate("patient", "Today, {day}").format(day=day(on))
    if days == 1:
        return translate("patient", "Yesterday, {day}").format(day=day(on))
    return day(on)


def _fill(labels: list[QLabel], lines: list[str], more: str) -> None:
    if len(lines) > len(labels):
        shown = len(labels) - 1
        lines = [*lines[:shown], more.format(count=len(lines) - shown)]
    for place, label in enumerate(labels):
        label.setText(lines[place] if place < len(lines) else "")
        label.setVisible(place < len(lines))
