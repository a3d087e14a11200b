"""The first page: the live picture to place oneself, the cautions, and START."""

from __future__ import annotations

from PyQt6.QtCore import pyqtSignal
from PyQt6.QtWidgets import QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from coach.desktop.patient.controls import KeyButton
from coach.desktop.patient.picture import Picture
from coach.desktop.patient.prose import ProsePage
from coach.desktop.patient.readouts import Caption
from coach.domain.moment import Order
from coach.domain.plan import Plan

CHANGE_OVER_S = 12.0
"""Getting into the stretch and out of it, for the guess of how long a session takes."""
PAIN_TO_STOP = 7
"""Pain above this means stop and ask whatever the plan allows; common practice."""


class WelcomePage(ProsePage):
    """Cautions before the start; what they say is common practice in physiotherapy."""

    ordered = pyqtSignal(Order)

    def __init__(self, plan: Plan, parent: QWidget | None = None) -> None:
        """Show this plan; START cannot be pressed before ``ready``."""
        super().__init__(parent)
        self.picture = Picture(framed=False, parent=self)
        self.caption = Caption(self)
        self.start_button = KeyButton("", self.tr("Space"), "primary", share=0.04)
        self.wait()
        self.start_button.setEnabled(False)
        self.start_button.clicked.connect(lambda: self.ordered.emit(Order.START))
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        mirror = QVBoxLayout()
        mirror.setSpacing(0)
        mirror.addWidget(self.picture, 84)
        mirror.addWidget(self.caption, 16)
        row.addLayout(mirror, 47)
        row.addLayout(self._words(plan), 53)

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
            self.say_where_to_stand()
            self.start_button.name(self.tr("Start"))
            self.start_button.setEnabled(True)
            self.start_button.setFocus()

    def say_where_to_stand(self) -> None:
        """Show what the picture is for."""
        self.caption.show_words(self.tr("Step back until you see your head and your hips"))

    def _words(self, plan: Plan) -> QVBoxLayout:
        limits = [each.pain_limit for each in plan.exercises]
        column = QVBoxLayout()
        column.setContentsMargins(28, 18, 28, 22)
        column.setSpacing(8)
        column.addWidget(self.line(self.tr("Before you start"), 0.056, bold=True))
        column.addWidget(self.line(self._today(plan), 0.032, role="soft"))
        column.addStretch(1)
        column.addWidget(
            self.card(
                "card",
                self.tr("Do not start today, ask your therapist first, if you have"),
                [
                    self.tr("pain above {limit} of 10, or pain at rest that is new").format(
                        limit=min(PAIN_TO_STOP, max(limits))
                    ),
                    self.tr("new numbness, tingling or weakness in the arm"),
                    self.tr("had a fall, a broken bone or a joint out of place"),
                    self.tr("had surgery and nobody has cleared you for this"),
                    self.tr("fever, an infection, or a hot, red joint"),
                ],
                0.0265,
            )
        )
        column.addWidget(
            self.card(
                "warning",
                self.tr("Stop at once if"),
                [
                    self.tr("pain goes above {limit}, or something pops or gives way").format(
                        limit=min(PAIN_TO_STOP, min(limits))
                    ),
                    self.tr("the arm goes numb, tingles or turns weak"),
                    self.tr("you feel dizzy"),
                    self.tr("your chest hurts or you cannot breathe: call for emergency help"),
                ],
                0.0265,
            )
        )
        column.addWidget(
            self.line(
                self.tr(
                    "Stretch until it pulls, not until it hurts. Easing off is always right. "
                    "This program counts and measures; it does not replace your therapist."
                ),
                0.0265,
            )
        )
        if plan.contact:
            contact = self.tr("Your practice: {contact}").format(contact=plan.contact)
            column.addWidget(self.line(contact, 0.0265, bold=True))
        column.addStretch(1)
        self.start_button.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        column.addWidget(self.start_button)
        return column

    def _today(self, plan: Plan) -> str:
        whole_s = sum(
            each.repetitions * (each.hold_s + each.rest_s + CHANGE_OVER_S)
            for each in plan.exercises
        )
        minutes = max(1, round(whole_s / 60))
        if len(plan.exercises) == 1:
            return self.tr("Today: one exercise, about {minutes} min").format(minutes=minutes)
        return self.tr("Today: {count} exercises, about {minutes} min").format(
            count=len(plan.exercises), minutes=minutes
        )
