"""Offers the easier exercise after too much pain."""

from __future__ import annotations

from PyQt6.QtCore import pyqtSignal
from PyQt6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from coach.cues.wording import instructed
from coach.desktop.patient.controls import KeyButton
from coach.desktop.patient.demonstration_place import DemonstrationPlace
from coach.desktop.patient.prose import ProsePage
from coach.desktop.patient.reading_area import ReadingArea
from coach.desktop.patient.wording import exercise_name
from coach.domain.moment import Moment, Order


class OfferPage(ProsePage):
    """Shows a Moment of the stage OFFER; ``ordered`` is what a button asks for."""

    ordered = pyqtSignal(Order)

    def __init__(self, parent: QWidget | None = None) -> None:
        """Begin empty."""
        super().__init__(parent)
        self._stopped = self.line("", 0.036, role="soft")
        self._name = self.line("", 0.068, bold=True)
        self._do = self.line("", 0.04)
        self.demonstration = DemonstrationPlace(self)
        self.accept_button = KeyButton(
            self.tr("Try the easier one"), self.tr("Space"), "primary", share=0.04
        )
        self.go_on_button = KeyButton(self.tr("Go on without it"), "N", share=0.032)
        self.stop_button = KeyButton(self.tr("Stop for today"), "S", "stop", share=0.026)
        self.accept_button.clicked.connect(lambda: self.ordered.emit(Order.ACCEPT))
        self.go_on_button.clicked.connect(lambda: self.ordered.emit(Order.GO_ON))
        self.stop_button.clicked.connect(lambda: self.ordered.emit(Order.STOP))
        words = QVBoxLayout()
        words.setSpacing(14)
        words.addWidget(
            self.line(
                self.tr("That hurt more than your plan allows. This one stops here."),
                0.046,
                bold=True,
                role="caution",
            )
        )
        words.addWidget(self._stopped)
        words.addSpacing(10)
        words.addWidget(self.line(self.tr("There is an easier one:"), 0.036, role="soft"))
        words.addWidget(self._name)
        words.addWidget(self._do)
        words.addStretch(1)
        row = QHBoxLayout()
        row.setSpacing(32)
        words.setContentsMargins(0, 0, 0, 0)
        row.addWidget(ReadingArea(words, self.tr("What is offered"), self), 11)
        row.addWidget(self.demonstration, 9)
        buttons = QHBoxLayout()
        buttons.setSpacing(16)
        buttons.addWidget(self.stop_button, 3)
        buttons.addWidget(self.go_on_button, 4)
        buttons.addWidget(self.accept_button, 6)
        column = QVBoxLayout(self)
        column.setContentsMargins(44, 30, 44, 34)
        column.setSpacing(16)
        column.addLayout(row, 86)
        column.addWidget(
            self.line(self.tr("Raise your good hand, or press Space, to try it."), 0.04, bold=True)
        )
        column.addLayout(buttons, 14)

    def offer(self, moment: Moment) -> None:
        """Offer the easier neighbour of this moment's exercise."""
        planned = moment.planned
        self._stopped.setText(
            ""
            if planned is None
            else self.tr("Ask your therapist before you do it again: {name}").format(
                name=exercise_name(planned)
            )
        )
        easier = None if moment.item is None else moment.item.easier
        self._name.setText("" if easier is None else exercise_name(easier))
        self._do.setText("" if easier is None else instructed(easier).caption)
        self.demonstration.show_planned(easier)
        self.accept_button.setFocus()
