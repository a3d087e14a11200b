"""What a plan says of the person and the practice, above its exercises."""

from __future__ import annotations

from typing import Any

from PyQt6.QtCore import pyqtSignal
from PyQt6.QtWidgets import QFrame, QGridLayout, QLineEdit, QWidget

from coach.desktop.shared.theme import SPACES_PX
from coach.desktop.therapist.choices import irritabilities, phases, sides
from coach.desktop.therapist.plan_fields import Number, OneOf, OptionalDate, named
from coach.domain.exercise import Irritability, StiffnessPhase
from coach.domain.movement import Side
from coach.domain.plan import Plan
from coach.texts import translate

_MOST_SESSIONS = 21
"""As the plan's own bounds say."""


class PlanHead(QFrame):
    """Shows and gives the fields of a ``Plan`` beside its exercises."""

    changed = pyqtSignal()

    def __init__(self) -> None:
        """Begin empty."""
        super().__init__()
        self.setProperty("role", "card")
        not_said = translate("plans", "not said")
        self.code = _line(translate("plans", "Patient code"), 64)
        self.title = _line(translate("plans", "Title"), 200)
        self.side = OneOf(translate("plans", "Side"), sides(), translate("plans", "both"))
        self.phase = OneOf(translate("plans", "Phase"), phases(), not_said)
        self.irritability = OneOf(translate("plans", "Irritability"), irritabilities(), not_said)
        self.sessions = Number(translate("plans", "Sessions a week"), 1, _MOST_SESSIONS)
        self.valid_until = OptionalDate(translate("plans", "Valid until"))
        self.contact = _line(translate("plans", "Contact"), 200)
        self.key = _line(translate("plans", "Practice key"), 200)
        self.key.setPlaceholderText(translate("plans", "optional, age1\N{HORIZONTAL ELLIPSIS}"))
        self._arrange()
        for line in (self.code, self.title, self.valid_until, self.contact, self.key):
            line.textChanged.connect(lambda _: self.changed.emit())
        for choice in (self.side, self.phase, self.irritability):
            choice.currentIndexChanged.connect(lambda _: self.changed.emit())
        self.sessions.valueChanged.connect(lambda _: self.changed.emit())
        self.clear()

    def _arrange(self) -> None:
        grid = QGridLayout(self)
        grid.setContentsMargins(SPACES_PX[2], SPACES_PX[1], SPACES_PX[2], SPACES_PX[2])
        grid.setHorizontalSpacing(SPACES_PX[2])
        grid.setVerticalSpacing(SPACES_PX[0])
        rows: tuple[tuple[tuple[str, QWidget, int], ...], ...] = (
            (
                (translate("plans", "&Patient code"), self.code, 2),
                (translate("plans", "&Title"), self.title, 4),
                (translate("plans", "Si&de"), self.side, 2),
                (translate("plans", "P&hase"), self.phase, 2),
                (translate("plans", "&Irritability"), self.irritability, 2),
            ),
            (
                (translate("plans", "Sessions a &week"), self.sessions, 2),
                (translate("plans", "&Valid until"), self.valid_until, 2),
                (translate("plans", "&Contact"), self.contact, 4),
                (translate("plans", "Practice &key"), self.key, 4),
            ),
        )
        for row, fields in enumerate(rows):
            column = 0
            for text, field, span in fields:
                grid.addWidget(named(text, field), 2 * row, column, 1, span)
                grid.addWidget(field, 2 * row + 1, column, 1, span)
                column += span
        for column in range(12):
            grid.setColumnStretch(column, 1)

    def clear(self) -> None:
        """Empty every field."""
        for line in (self.code, self.title, self.valid_until, self.contact, self.key):
            line.clear()
        for choice in (self.side, self.phase, self.irritability):
            choice.choose(None)
        self.sessions.setValue(7)

    def show_plan(self, plan: Plan) -> None:
        """Show a plan's fields."""
        self.code.setText(plan.patient_code)
        self.title.setText(plan.title)
        self.side.choose(plan.side)
        self.phase.choose(plan.phase)
        self.irritability.choose(plan.irritability)
        self.sessions.setValue(plan.sessions_per_week)
        self.valid_until.show_day(plan.valid_until)
        self.contact.setText(plan.contact)
        self.key.setText(plan.practice_key or "")

    def fields(self) -> dict[str, Any]:
        """Give the fields by their names in ``Plan``; a ``Fault`` where one is not what it says."""
        return {
            "patient_code": self.code.text().strip(),
            "title": self.title.text().strip(),
            "side": self.side.chosen(Side),
            "phase": self.phase.chosen(StiffnessPhase),
            "irritability": self.irritability.chosen(Irritability),
            "sessions_per_week": int(self.sessions.value()),
            "valid_until": self.valid_until.day(),
            "contact": self.contact.text().strip(),
            "practice_key": self.key.text().strip() or None,
        }

    def state(self) -> tuple[str, ...]:
        """Give what stands in the fields, to tell whether it was changed."""
        lines = (self.code, self.title, self.valid_until, self.contact, self.key)
        choices = (self.side, self.phase, self.irritability)
        return (
            *(line.text() for line in lines),
            *(choice.currentText() for choice in choices),
            self.sessions.text(),
        )


def _line(name: str, most: int) -> QLineEdit:
    line = QLineEdit()
    line.setAccessibleName(name)
    line.setMaxLength(most)
    return line
