"""What a plan says of the person and the practice, above its exercises."""

from __future__ import annotations

from typing import Any

from PyQt6.QtCore import pyqtSignal
from PyQt6.QtWidgets import QFrame, QGridLayout, QLineEdit

from coach.desktop.shared.enlarged import scaled
from coach.desktop.shared.theme import SPACES_PX
from coach.desktop.therapist.choices import irritabilities, phases, sides
from coach.desktop.therapist.plan_fields import Number, OneOf, OptionalDate, named
from coach.domain.exercise import Irritability, StiffnessPhase
from coach.domain.movement import Side
from coach.domain.plan import Plan
from coach.texts import translate

_MOST_SESSIONS = 21
"""As the plan's own bounds say."""
_MOST_COLUMNS, _COLUMN_PX = 12, 90


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
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(SPACES_PX[2], SPACES_PX[1], SPACES_PX[2], SPACES_PX[2])
        self._grid.setHorizontalSpacing(SPACES_PX[2])
        self._grid.setVerticalSpacing(SPACES_PX[0])
        self._fields = tuple(
            (named(text, field), field, share)
            for text, field, share in (
                (translate("plans", "&Patient code"), self.code, 2),
                (translate("plans", "&Title"), self.title, 4),
                (translate("plans", "Si&de"), self.side, 2),
                (translate("plans", "P&hase"), self.phase, 2),
                (translate("plans", "&Irritability"), self.irritability, 2),
                (translate("plans", "Sessions a &week"), self.sessions, 2),
                (translate("plans", "&Valid until"), self.valid_until, 2),
                (translate("plans", "&Contact"), self.contact, 4),
                (translate("plans", "Practice &key"), self.key, 4),
            )
        )
        self._columns = 0
        self._place(_MOST_COLUMNS)

    def reflow(self, width_px: int) -> None:
        """Take more rows where a row has too little room."""
        fits = width_px // scaled(_COLUMN_PX)
        self._place(next(n for n in (_MOST_COLUMNS, 6, 4) if n <= max(4, fits)))

    def _place(self, columns: int) -> None:
        if columns == self._columns:
            return
        self._columns, row, column = columns, 0, 0
        for at, (label, field, share) in enumerate(self._fields):
            following = self._fields[at + 1][2] if at + 1 < len(self._fields) else columns
            last = column + share + following > columns
            wide = columns - column if last else share
            self._grid.addWidget(label, 2 * row, column, 1, wide)
            self._grid.addWidget(field, 2 * row + 1, column, 1, wide)
            row, column = (row + 1, 0) if last else (row, column + share)
        for column in range(_MOST_COLUMNS):
            self._grid.setColumnStretch(column, int(column < columns))

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
