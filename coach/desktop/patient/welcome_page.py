"""The first page: the live picture to place oneself, the cautions, and START."""

from __future__ import annotations

from PyQt6.QtCore import pyqtSignal
from PyQt6.QtWidgets import QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from coach.catalogue import safety
from coach.desktop.patient.controls import KeyButton
from coach.desktop.patient.picture import Picture
from coach.desktop.patient.prose import ProsePage
from coach.desktop.patient.readouts import Caption
from coach.desktop.patient.wording import exercise_name
from coach.domain.agenda import AgendaItem
from coach.domain.moment import Order
from coach.domain.plan import Plan
from coach.session.agenda import whole

CHANGE_OVER_S = 12.0
"""Getting into the stretch and out of it, for the guess of how long a session takes."""
MOST_LISTED = 7
"""As many exercises of today fit in type that can be read from three metres."""


class WelcomePage(ProsePage):
    """Cautions before the start; what they say is common practice in physiotherapy."""

    ordered = pyqtSignal(Order)
    weeks_asked = pyqtSignal()
    reading_asked = pyqtSignal()

    def __init__(
        self,
        plan: Plan,
        agenda: tuple[AgendaItem, ...] = (),
        notice: str = "",
        parent: QWidget | None = None,
    ) -> None:
        """Show what is due, by default the whole plan; START cannot be pressed before ``ready``.

        ``notice`` is a sentence about the day so far.
        """
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
        mirror.addWidget(self.picture, 52)
        mirror.addWidget(self.caption, 13)
        mirror.addLayout(self._list(agenda or whole(plan), notice), 35)
        row.addLayout(mirror, 47)
        row.addLayout(self._words(plan, agenda or whole(plan)), 53)

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
            self.start_button.name(self.tr("Start, or raise your good hand"))
            self.start_button.setEnabled(True)
            self.start_button.setFocus()

    def say_where_to_stand(self) -> None:
        """Show what the picture is for."""
        self.caption.show_words(self.tr("Step back until you see your head and your hips"))

    def _list(self, items: tuple[AgendaItem, ...], notice: str) -> QVBoxLayout:
        column = QVBoxLayout()
        column.setContentsMargins(26, 14, 20, 14)
        column.setSpacing(3)
        column.addWidget(self.line(self._today(items), 0.032, bold=True))
        if notice:
            column.addWidget(self.line(notice, 0.0255, bold=True, role="caution"))
        most = MOST_LISTED - 1 if len(items) > MOST_LISTED else MOST_LISTED
        for number, item in enumerate(items[:most], start=1):
            column.addWidget(self.line(f"{number}  {self._line(item)}", 0.0255))
        if len(items) > most:
            more = self.tr("and {count} more").format(count=len(items) - most)
            column.addWidget(self.line(more, 0.0255, role="soft"))
        column.addStretch(1)
        return column

    def _line(self, item: AgendaItem) -> str:
        planned = item.planned
        dose = self.tr("{count} times {hold_s} s").format(
            count=planned.repetitions, hold_s=f"{planned.hold_s:g}"
        )
        parts = [exercise_name(planned), dose]
        if item.new:
            parts.append(self.tr("new"))
        return ", ".join(parts)

    def _words(self, plan: Plan, items: tuple[AgendaItem, ...]) -> QVBoxLayout:
        limits = [each.pain_limit for each in plan.exercises]
        column = QVBoxLayout()
        column.setContentsMargins(28, 18, 28, 22)
        column.setSpacing(8)
        column.addWidget(self.line(self.tr("Before you start"), 0.056, bold=True))
        column.addStretch(1)
        column.addWidget(
            self.card(
                "card",
                self.tr("Do not start today, ask your therapist first, if you have"),
                [
                    self.tr("pain above {limit} of 10, or pain at rest that is new").format(
                        limit=min(safety().pain_to_stop, max(limits))
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
                        limit=min(safety().pain_to_stop, min(limits))
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
        more = QHBoxLayout()
        more.setSpacing(14)
        self.weeks_button = KeyButton(self.tr("My weeks"), "W", share=0.026)
        self.reading_button = KeyButton(self.tr("Understand my shoulder"), "U", share=0.026)
        self.weeks_button.clicked.connect(self.weeks_asked)
        self.reading_button.clicked.connect(self.reading_asked)
        more.addWidget(self.weeks_button, 2)
        more.addWidget(self.reading_button, 3)
        column.addLayout(more)
        self.start_button.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        column.addWidget(self.start_button)
        return column

    def _today(self, items: tuple[AgendaItem, ...]) -> str:
        whole_s = sum(
            each.planned.repetitions * (each.planned.hold_s + each.planned.rest_s + CHANGE_OVER_S)
            for each in items
        )
        minutes = max(1, round(whole_s / 60))
        if len(items) == 1:
            return self.tr("Today: one exercise, about {minutes} min").format(minutes=minutes)
        return self.tr("Today: {count} exercises, about {minutes} min").format(
            count=len(items), minutes=minutes
        )
