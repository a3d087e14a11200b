"""Every caution, large enough to be read from a metre: before the first sitting, later by key."""

from __future__ import annotations

import time
from collections.abc import Callable

from PyQt6.QtCore import Qt, pyqtSignal
from PyQt6.QtGui import QResizeEvent
from PyQt6.QtWidgets import QAbstractButton, QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from coach import texts
from coach.catalogue import When, safety
from coach.desktop.patient.caption import Caption
from coach.desktop.patient.controls import KeyButton
from coach.desktop.patient.prose import ProsePage
from coach.desktop.patient.reading_area import ReadingArea
from coach.desktop.patient.text_block import Line, TextBlock
from coach.desktop.patient.wording import translate
from coach.desktop.shared.looks import looks
from coach.domain.plan import Plan

_CAPTION_OF_HEIGHT, _WITH_NOTE = 0.05, 0.11
CAUTIONS_KEY = Qt.Key.Key_C
WORDS_A_MINUTE = 180
"""Adults read 175 to 300 (Brysbaert 2019, from memory); these sentences are to be minded."""


class CautionsPage(ProsePage):
    """Emits ``read`` once it was read, ``spoken`` with what is to be read aloud, ``closed`` where
    somebody would rather not begin."""

    read = pyqtSignal()
    spoken = pyqtSignal(str)
    closed = pyqtSignal()

    def __init__(
        self,
        plan: Plan,
        parent: QWidget | None = None,
        clock: Callable[[], float] = time.monotonic,
    ) -> None:
        """Show all of them, with the limit of pain and the practice of this plan."""
        super().__init__(parent)
        self._clock, self._since_s, self._first = clock, 0.0, True
        self.before = TextBlock(0.03, ground="card", scrolls=True, parent=self)
        self.before.show_lines(before_lines())
        self.stop = TextBlock(
            0.03, ground="caution_wash", edge="caution", scrolls=True, parent=self
        )
        self.stop.show_lines((*stop_lines(plan), *ring_lines(plan)))
        self.emergency = TextBlock(
            0.03, ground="caution", edge="caution", scrolls=True, parent=self
        )
        self.emergency.show_lines(emergency_lines())
        self.stop_button = KeyButton(self.tr("Close"), "S", "stop", share=0.03)
        self.stop_button.clicked.connect(self.closed)
        self.aloud_button = KeyButton(self.tr("Read aloud"), "A", share=0.03)
        self.aloud_button.clicked.connect(lambda: self.spoken.emit("\n".join(self._told)))
        self.read_button = KeyButton(
            self.tr("I have read all of this"), self.tr("Space"), "primary", share=0.034
        )
        self.read_button.clicked.connect(self._go_on)
        self.caption = Caption(self)
        self.say_how_to_go_on()
        for button in (self.stop_button, self.aloud_button, self.read_button):
            button.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        both = QHBoxLayout()
        both.setSpacing(12)
        both.addWidget(self.before, 40)
        both.addWidget(self.stop, 60)
        buttons = QHBoxLayout()
        buttons.setSpacing(12)
        buttons.addWidget(self.stop_button, 2)
        buttons.addWidget(self.aloud_button, 2)
        buttons.addWidget(self.read_button, 5)
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 10, 12, 12)
        column.setSpacing(6)
        told = QVBoxLayout()
        told.setContentsMargins(0, 0, 0, 0)
        told.setSpacing(6)
        told.addLayout(both, 162)
        told.addWidget(self.emergency, 23)
        self.area = ReadingArea(told, self.tr("Cautions"), self)
        column.addWidget(self.area, 1)
        column.addWidget(self.caption)
        column.addLayout(buttons)

    def say_how_to_go_on(self) -> None:
        """Say how to go on, from near and from afar."""
        self.caption.show_words(
            self.tr("Read all of it. Then press Space, or raise your good hand.")
        )

    def resizeEvent(self, event: QResizeEvent | None) -> None:  # noqa: D102, N802
        self._fit_caption()
        super().resizeEvent(event)

    def show_note(self, sentence: str) -> None:
        """Show something lasting under the caption."""
        self.caption.show_note(sentence)
        self._fit_caption()

    def _fit_caption(self) -> None:
        share = _CAPTION_OF_HEIGHT * min(looks().text, 1.6)
        share = _WITH_NOTE if self.caption.accessibleDescription() else share
        self.caption.setFixedHeight(round(share * self.height()))

    def ask(self, *, first: bool) -> None:
        """Have it read; the ``first`` time nobody goes on but by saying that they did."""
        self._first, self._since_s = first, self._clock()
        self.stop_button.setVisible(first)
        self.read_button.setFocus()

    def _go_on(self) -> None:
        """Turn to what is not in sight yet, else take it as read."""
        if self.area.at_end:
            self.read.emit()
        else:
            self.area.scroll(1)

    def button_of(self, key: Qt.Key, *, onward: bool, stops: bool) -> QAbstractButton | None:
        """Give the button that a key presses; who has read it before only goes back."""
        if key is Qt.Key.Key_A:
            return self.aloud_button
        if onward or (stops and not self._first):
            return self.read_button
        return self.stop_button if stops else None

    @property
    def prompt(self) -> str:
        """What is said when it comes for the first time."""
        return self.tr(
            "First read all that stands on the screen. Press A to have it read to you. Then press "
            "the space bar, or raise your good hand."
        )

    @property
    def words(self) -> str:
        """Everything that is to be read."""
        return " ".join(self._told)

    @property
    def _told(self) -> list[str]:
        return [block.spoken for block in (self.before, self.stop, self.emergency)]

    @property
    def reading_s(self) -> float:
        """How long it takes to read, in seconds."""
        return 60.0 * len(self.words.split()) / WORDS_A_MINUTE

    @property
    def read_through(self) -> bool:
        """Whether it can have been read by now: before that no raised hand says so."""
        return not self._first or self._clock() - self._since_s >= self.reading_s


def before_lines() -> tuple[Line, ...]:
    """Say who asks their therapist first."""
    heading = translate("patient", "Before you start")
    return (Line(heading, bold=True), *_rules(When.BEFORE_START))


def stop_lines(plan: Plan) -> tuple[Line, ...]:
    """Say when to stop at once."""
    heading = translate("patient", "Stop at once")
    return (
        Line(heading, bold=True, colour="caution"),
        Line(_limit(plan), "•"),
        *_rules(When.STOP_NOW),
    )


def ring_lines(plan: Plan) -> tuple[Line, ...]:
    """Say when to ring the practice, and its number."""
    ring = Line(practice(plan), bold=True, colour="caution")
    return (ring, *_rules(When.RING_THE_PRACTICE))


def emergency_lines() -> tuple[Line, ...]:
    """Say when to call for help, to be written on the caution's own colour."""
    return tuple(
        Line(texts.of(rule.text), bold=True, colour="on_accent")
        for rule in safety().when(When.EMERGENCY)
    )


def _limit(plan: Plan) -> str:
    limits = [min(each.pain_limit, safety().pain_to_stop) for each in plan.exercises]
    if min(limits) == max(limits):
        return translate(
            "patient", "Pain above {limit} of 10 is more than your plan allows."
        ).format(limit=min(limits))
    return translate(
        "patient",
        "Pain above {least} to {most} of 10, by exercise, is more than your plan allows.",
    ).format(least=min(limits), most=max(limits))


def practice(plan: Plan) -> str:
    """Say where to ring."""
    if plan.contact:
        return translate("patient", "Ring your practice: {contact}").format(contact=plan.contact)
    return translate("patient", "Ring your practice")


def _rules(when: When) -> tuple[Line, ...]:
    return tuple(Line(texts.of(rule.text), "•") for rule in safety().when(when))
