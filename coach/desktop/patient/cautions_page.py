"""Every caution, large enough to be read from a metre: before the first sitting, later by key."""

from __future__ import annotations

from PyQt6.QtCore import Qt, pyqtSignal
from PyQt6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from coach import texts
from coach.catalogue import When, safety
from coach.desktop.patient.controls import KeyButton
from coach.desktop.patient.prose import ProsePage
from coach.desktop.patient.text_block import Line, TextBlock
from coach.desktop.patient.wording import translate
from coach.desktop.shared.theme import LIGHT
from coach.domain.plan import Plan

CAUTIONS_KEY = Qt.Key.Key_C


class CautionsPage(ProsePage):
    """Emits ``read`` once it was read, ``closed`` where somebody would rather not begin."""

    read = pyqtSignal()
    closed = pyqtSignal()

    def __init__(self, plan: Plan, parent: QWidget | None = None) -> None:
        """Show all of them, with the limit of pain and the practice of this plan."""
        super().__init__(parent)
        self.before = TextBlock(0.03, ground=LIGHT.card, parent=self)
        self.before.show_lines(before_lines())
        self.stop = TextBlock(0.03, ground=LIGHT.caution_wash, edge=LIGHT.caution, parent=self)
        self.stop.show_lines((*stop_lines(plan), *ring_lines(plan)))
        self.emergency = TextBlock(0.03, ground=LIGHT.caution, edge=LIGHT.caution, parent=self)
        self.emergency.show_lines(emergency_lines())
        self.stop_button = KeyButton(self.tr("Close"), "S", "stop", share=0.03)
        self.stop_button.clicked.connect(self.closed)
        self.read_button = KeyButton(
            self.tr("I have read all of this"), self.tr("Space"), "primary", share=0.034
        )
        self.read_button.clicked.connect(self.read)
        both = QHBoxLayout()
        both.setSpacing(12)
        both.addWidget(self.before, 40)
        both.addWidget(self.stop, 60)
        buttons = QHBoxLayout()
        buttons.setSpacing(12)
        buttons.addWidget(self.stop_button, 2)
        buttons.addWidget(self.read_button, 5)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 14, 16, 16)
        column.setSpacing(8)
        column.addLayout(both, 81)
        column.addWidget(self.emergency, 11)
        column.addLayout(buttons, 9)

    def ask(self, *, first: bool) -> None:
        """Have it read; the ``first`` time nobody goes on but by saying that they did."""
        self.stop_button.setVisible(first)
        self.read_button.setFocus()


def before_lines() -> tuple[Line, ...]:
    """Say who asks their therapist first."""
    heading = translate("patient", "Before you start")
    return (Line(heading, bold=True), *_rules(When.BEFORE_START))


def stop_lines(plan: Plan) -> tuple[Line, ...]:
    """Say when to stop at once."""
    heading = translate("patient", "Stop at once")
    return (
        Line(heading, bold=True, colour=LIGHT.caution),
        Line(_limit(plan), "•"),
        *_rules(When.STOP_NOW),
    )


def ring_lines(plan: Plan) -> tuple[Line, ...]:
    """Say when to ring the practice, and its number."""
    ring = Line(practice(plan), bold=True, colour=LIGHT.caution)
    return (ring, *_rules(When.RING_THE_PRACTICE))


def emergency_lines() -> tuple[Line, ...]:
    """Say when to call for help, to be written on the caution's own colour."""
    return tuple(
        Line(texts.of(rule.text), bold=True, colour=LIGHT.on_accent)
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
