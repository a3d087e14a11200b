"""The first page: today's exercises, when to stop, the live picture, and START."""

from __future__ import annotations

from PyQt6.QtCore import Qt, pyqtSignal
from PyQt6.QtWidgets import (
    QAbstractButton,
    QHBoxLayout,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from coach.cues.wording import dose_sentence, instructed, placed, telling
from coach.desktop.patient.button_rows import ButtonRows
from coach.desktop.patient.caption import Caption
from coach.desktop.patient.cautions_page import CAUTIONS_KEY, emergency_lines, practice, stop_lines
from coach.desktop.patient.controls import KeyButton
from coach.desktop.patient.demonstration_place import DemonstrationPlace
from coach.desktop.patient.picture import Picture
from coach.desktop.patient.prose import ProsePage
from coach.desktop.patient.reading_area import ReadingArea
from coach.desktop.patient.text_block import Line, TextBlock
from coach.desktop.patient.wording import exercise_name, translate, with_side
from coach.domain.agenda import AgendaItem
from coach.domain.moment import Order
from coach.domain.plan import Plan, PlannedExercise

CHANGE_OVER_S = 12.0
"""Getting into the stretch and out of it, for the guess of how long a session takes."""
_CHARACTERS_A_LINE = 30
"""What a paragraph leaves empty: the end of its last line and the gap after it; a rim is two."""
MOST_CAUTIONS = 6
"""Lines on new exercises; more would be too small to read, and each comes again before its own."""


class WelcomePage(ProsePage):
    """Says what comes today and when to stop; when not to start is on the page of cautions."""

    ordered = pyqtSignal(Order)

    def __init__(
        self,
        plan: Plan,
        agenda: tuple[AgendaItem, ...] = (),
        notice: str = "",
        parent: QWidget | None = None,
    ) -> None:
        """Show what is due, by default the whole plan; START cannot be pressed before ``ready``."""
        super().__init__(parent)
        items = agenda or tuple(AgendaItem(n, each) for n, each in enumerate(plan.exercises))
        self.picture = Picture(framed=False, parent=self)
        self.caption = Caption(self)
        self.today = TextBlock(0.03, parent=self)
        self.demonstration = DemonstrationPlace(self)
        self.new_cautions = TextBlock(0.03, ground="caution_wash", edge="caution", parent=self)
        self.stop = TextBlock(0.03, ground="caution_wash", edge="caution", parent=self)
        self.emergency = TextBlock(0.03, ground="caution", edge="caution", parent=self)
        self.start_button = KeyButton("", self.tr("Space"), "primary", share=0.038)
        self.cautions_button = KeyButton(self.tr("All cautions"), "C", share=0.026)
        self.weeks_button = KeyButton(self.tr("My weeks"), "W", share=0.026)
        self.understanding_button = KeyButton(self.tr("Understand my shoulder"), "U", share=0.026)
        self.stop_button = KeyButton(self.tr("Close"), "S", "stop", share=0.026)
        self._keys: dict[Qt.Key, QAbstractButton] = {
            CAUTIONS_KEY: self.cautions_button,
            Qt.Key.Key_W: self.weeks_button,
            Qt.Key.Key_U: self.understanding_button,
        }
        self.wait()
        self.start_button.setEnabled(False)
        self.start_button.clicked.connect(lambda: self.ordered.emit(Order.START))
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addLayout(self._left(items, notice), 42)
        row.addLayout(self._right(plan, items), 58)

    def button_of(self, key: Qt.Key) -> QAbstractButton | None:
        """Give the button that a key presses, besides those that go on and stop."""
        return self._keys.get(key)

    def wait(self) -> None:
        """Tell that the picture and the measuring take a few seconds to begin."""
        self.picture.show_empty(
            self.tr("Getting the camera and the measuring ready. This takes a few seconds.")
        )
        self.caption.show_words(self.tr("Read this while you wait"))
        self.start_button.name(self.tr("Not ready yet"))
        self.start_button.setEnabled(False)

    def give_up(self) -> None:
        """Tell that there is no picture; why is said elsewhere."""
        if not self.start_button.isEnabled():
            self.picture.show_empty(self.tr("No picture"))
            self.caption.show_words("")
            self.start_button.name(self.tr("Cannot start without a picture"))

    def ready(self) -> None:
        """Let START be pressed: the first frame has come."""
        if not self.start_button.isEnabled():
            self.say_how_to_begin()
            self.start_button.name(self.tr("Start"))
            self.start_button.setEnabled(True)
            if self.isVisible():  # else it would take the focus from the page that is
                self.start_button.setFocus()

    def say_how_to_begin(self) -> None:
        """Say how to start, from near and from afar."""
        self.caption.show_words(self.tr("Raise your good hand, or press Space, to begin"))

    def _left(self, items: tuple[AgendaItem, ...], notice: str) -> QVBoxLayout:
        today = tuple(_today_line(item) for item in items)
        alone = items[0].planned if len(items) == 1 else None
        if alone is not None:
            today += (Line(placed(alone).caption, "•"), Line(instructed(alone).spoken, "•"))
        self.today.show_lines(today)
        words = QVBoxLayout()
        words.setContentsMargins(28, 12, 20, 8)
        words.setSpacing(4)
        words.addWidget(self.line(self._heading(items), 0.036, bold=True))
        if notice:
            words.addWidget(self.line(notice, 0.028, bold=True, role="caution"))
        words.addWidget(self.today, sum(len(line.text) for line in today))
        if self.demonstration.show_planned(alone):
            words.addWidget(self.demonstration, sum(len(line.text) for line in today))
        words.addWidget(
            self.line(
                self.tr(
                    "Stretch until it pulls, not until it hurts. Easing off is always right. "
                    "This program does not replace your therapist."
                ),
                0.0235,
                bold=True,
            )
        )
        column_of_words = ReadingArea(words, self.tr("Today"), self)
        mirror = QHBoxLayout()
        mirror.setSpacing(0)
        mirror.addWidget(self.picture, 58)
        mirror.addWidget(self.caption, 42)
        column = QVBoxLayout()
        column.setSpacing(0)
        column.addWidget(column_of_words, 69)
        column.addLayout(mirror, 31)
        return column

    def _right(self, plan: Plan, items: tuple[AgendaItem, ...]) -> QVBoxLayout:
        new = _new_cautions(items)
        self.new_cautions.show_lines(new)
        self.new_cautions.setVisible(bool(new))
        ring = (Line(practice(plan), bold=True),) if plan.contact else ()
        self.stop.show_lines((*stop_lines(plan), *ring))
        self.emergency.show_lines(emergency_lines())
        others = ButtonRows(
            (
                ((self.stop_button, 3), (self.cautions_button, 4)),
                ((self.weeks_button, 4), (self.understanding_button, 7)),
            )
        )
        column = QVBoxLayout()
        column.setContentsMargins(12, 14, 24, 20)
        column.setSpacing(8)
        cautions = QVBoxLayout()
        cautions.setContentsMargins(0, 0, 0, 0)
        cautions.setSpacing(8)
        for block in (self.new_cautions, self.stop, self.emergency):
            cautions.addWidget(block, _room_for(block))
        column.addWidget(ReadingArea(cautions, self.tr("When to stop"), self), 1)
        for each in (self.start_button, self.stop_button, *self._keys.values()):
            each.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        column.addWidget(others)
        column.addWidget(self.start_button)
        return column

    def _heading(self, items: tuple[AgendaItem, ...]) -> str:
        whole_s = sum(_seconds(item.planned) for item in items)
        minutes = max(1, round(whole_s / 60))
        if len(items) == 1:
            return self.tr("Today: one exercise, about {minutes} min").format(minutes=minutes)
        return self.tr("Today: {count} exercises, about {minutes} min").format(
            count=len(items), minutes=minutes
        )


def _room_for(block: TextBlock) -> int:
    """Give a share of a column that lets blocks be written in about one size of type."""
    return len(block.text) + _CHARACTERS_A_LINE * (3 + block.text.count("\n"))


def _today_line(item: AgendaItem) -> Line:
    planned = item.planned
    words = telling(planned)
    # A bare movement's name has its side in it.
    name = exercise_name(planned) if words is None else with_side(words.title, planned.side)
    parts = [name]
    parts.append(dose_sentence(planned).caption.replace(" ", "\N{NO-BREAK SPACE}"))
    if planned.movement is None:
        parts.append(translate("patient", "by time"))
    else:
        parts.append(translate("patient", "measured"))
    if item.new:
        parts.append(translate("patient", "NEW"))
    return Line("\N{NO-BREAK SPACE}· ".join(parts), "•", bold=item.new)


def _new_cautions(items: tuple[AgendaItem, ...]) -> tuple[Line, ...]:
    lines: list[Line] = []
    for item in items:
        words = telling(item.planned) if item.new else None
        if words is not None and words.cautions:
            heading = translate("patient", "New for you: {title}").format(title=words.title)
            lines.append(Line(heading, bold=True, colour="caution"))
            lines += [Line(each, "•") for each in words.cautions]
    if len(lines) > MOST_CAUTIONS:
        told = translate(
            "patient",
            "What to mind with each new exercise is shown and said before it begins.",
        )
        return (Line(told, "!", bold=True),)
    return tuple(lines)


def _seconds(planned: PlannedExercise) -> float:
    return planned.repetitions * (planned.hold_s + planned.rest_s + CHANGE_OVER_S)
