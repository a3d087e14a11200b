"""Fields of which a plan is made: numbers, numbers that may be missing, days of the week."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date
from enum import StrEnum
from typing import TypeVar

from PyQt6.QtCore import Qt, pyqtSignal
from PyQt6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDoubleSpinBox,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QWidget,
)

from coach.desktop.shared.theme import SPACES_PX, type_scale
from coach.desktop.shared.typeface import font
from coach.domain.fault import Fault
from coach.domain.movement import View
from coach.domain.plan import PlannedExercise, Weekday
from coach.review.plan_wording import weekday_word
from coach.review.wording import MOVEMENTS

_NUMBER_PX = 72
_LABEL_PX = 88
_CAMERA: Mapping[View, str] = {
    View.FRONT: "in front",
    View.SIDE: "at the stiff side",
    View.BACK: "behind",
    View.FOOT: "raised at the foot end",
}
Choice = TypeVar("Choice", bound=StrEnum)


class Number(QDoubleSpinBox):
    """A number written without needless decimals; ``unit`` stands behind it."""

    def __init__(self, name: str, least: float, most: float, *, unit: str = "", step: int = 1):
        """Take numbers from ``least`` to ``most``; whole ones where there is no unit."""
        super().__init__()
        self.setAccessibleName(name)
        self.setDecimals(1 if unit else 0)
        self.setRange(least, most)
        self.setSingleStep(step)
        self.setSuffix(unit)
        # Arrow keys and the wheel step; the little buttons would be too small to press.
        self.setButtonSymbols(QDoubleSpinBox.ButtonSymbols.NoButtons)
        self.setMinimumWidth(_NUMBER_PX)

    def textFromValue(self, v: float) -> str:  # noqa: N802
        """Write 30 and 12.5."""
        return f"{v:g}"


class OptionalNumber(QLineEdit):
    """A number or nothing."""

    def __init__(self, name: str, least: float, most: float) -> None:
        """Begin empty; ``name`` is that in a ``Fault``."""
        super().__init__()
        self._name, self._range = name, (least, most)
        self.setMinimumWidth(_NUMBER_PX)
        self.setAccessibleName(name)
        self.setPlaceholderText("none")

    def show_number(self, value: float | None) -> None:
        """Show a number, or nothing."""
        self.setText("" if value is None else f"{value:g}")

    def number(self) -> float | None:
        """Give what stands there; a ``Fault`` where it is no number or out of range."""
        text = self.text().strip().replace(",", ".").rstrip("\N{DEGREE SIGN} ")
        if not text:
            return None
        least, most = self._range
        try:
            value = float(text)
        except ValueError:
            value = float("nan")
        if not least <= value <= most:
            raise Fault(
                f"{self._name} is {text[:20]!r}: write a number from {least:g} to {most:g}, "
                "or leave it empty."
            )
        return value


class OptionalDate(QLineEdit):
    """A day as 2026-03-31, or nothing."""

    def __init__(self, name: str) -> None:
        """Begin empty; ``name`` is that in a ``Fault``."""
        super().__init__()
        self._name = name
        self.setAccessibleName(name)
        self.setPlaceholderText("YYYY-MM-DD")

    def day(self) -> date | None:
        """Give the day; a ``Fault`` where it is none."""
        text = self.text().strip()
        if not text:
            return None
        try:
            return date.fromisoformat(text)
        except ValueError as error:
            raise Fault(
                f"{self._name} is {text[:20]!r}, which is no date: write it like 2026-03-31, "
                "or leave it empty."
            ) from error


class OneOf(QComboBox):
    """One of several names, or None where ``nothing`` says what that means."""

    def __init__(self, name: str, kinds: Sequence[StrEnum], nothing: str | None = None) -> None:
        """Offer ``nothing`` first."""
        super().__init__()
        self.setAccessibleName(name)
        if nothing is not None:
            self.addItem(nothing, None)
        for kind in kinds:
            self.addItem(kind.value, kind.value)

    def choose(self, kind: str | None) -> None:
        """Choose without a signal of a person's choice."""
        self.setCurrentIndex(max(0, self.findData(None if kind is None else str(kind))))

    def chosen(self, kinds: type[Choice]) -> Choice | None:
        """Give what is chosen."""
        value = self.currentData()
        return None if value is None else kinds(value)


class Days(QWidget):
    """A box to tick for each day of the week."""

    changed = pyqtSignal()

    def __init__(self) -> None:
        """Begin with none."""
        super().__init__()
        self.setAccessibleName("Days")
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(SPACES_PX[0])
        self.boxes = {weekday: QCheckBox(weekday_word(weekday)) for weekday in Weekday}
        for box in self.boxes.values():
            box.setFont(font(type_scale().small_px))
            box.setStyleSheet("QCheckBox { spacing: 3px; }")
            box.toggled.connect(self.changed)
            row.addWidget(box)

    def show_days(self, days: Sequence[Weekday]) -> None:
        """Tick these."""
        for weekday, box in self.boxes.items():
            box.setChecked(weekday in days)

    def days(self) -> tuple[Weekday, ...]:
        """Give the ticked ones in the order of the week."""
        return tuple(weekday for weekday, box in self.boxes.items() if box.isChecked())


def named(text: str, field: QWidget) -> QLabel:
    """Give a field's label, whose letter after ``&`` goes to it with Alt."""
    label = QLabel(text)
    label.setProperty("role", "soft")
    label.setFont(font(type_scale().small_px + 1))
    label.setBuddy(field)
    return label


def said(role: str = "", *, size_px: float = 0, bold: bool = False) -> QLabel:
    """Give an empty label for plain text that breaks its lines."""
    label = QLabel()
    if role:
        label.setProperty("role", role)
    if size_px:
        label.setFont(font(size_px, bold=bold))
    label.setWordWrap(True)
    label.setTextFormat(Qt.TextFormat.PlainText)
    return label


def grid_of(parent: QWidget, rows: Sequence[Sequence[QLabel]]) -> QGridLayout:
    """Set out labels with the fields they belong to, two to a row."""
    grid = QGridLayout(parent)
    grid.setContentsMargins(0, 0, 0, 0)
    grid.setHorizontalSpacing(SPACES_PX[1])
    grid.setVerticalSpacing(SPACES_PX[0])
    for row, labels in enumerate(rows):
        for number, label in enumerate(labels):
            grid.addWidget(label, row, 2 * number)
            grid.addWidget(label.buddy(), row, 2 * number + 1)
    grid.setColumnMinimumWidth(0, _LABEL_PX)
    grid.setColumnMinimumWidth(2, _LABEL_PX)
    grid.setColumnStretch(1, 1)
    grid.setColumnStretch(3, 1)
    return grid


def measured_text(planned: PlannedExercise) -> str:
    """Say whether an exercise is measured, and where the laptop stands."""
    camera = f"camera {_CAMERA[planned.seen_from]}"
    if planned.movement is None:
        return f"By time, not measured; {camera}"
    return f"Measured: {MOVEMENTS[planned.movement].lower()}, {planned.position}; {camera}"
