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

from coach.desktop.shared.enlarged import scaled
from coach.desktop.shared.theme import SPACES_PX, type_scale
from coach.desktop.shared.typeface import font
from coach.desktop.therapist.typed_dates import read_typed, typed
from coach.domain.fault import Fault
from coach.domain.movement import View
from coach.domain.plan import PlannedExercise, Weekday
from coach.review.plan_wording import weekday_word
from coach.review.wording import movement_name, position_word
from coach.texts import localised, translate

_NUMBER_PX = 72
_TARGET_PX = 24
_LABEL_PX = 88
_EXAMPLE = date(2026, 3, 31)
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
        self.setMinimumWidth(scaled(_NUMBER_PX))

    def textFromValue(self, v: float) -> str:  # noqa: N802
        """Write 30 and 12.5, with the language's decimal sign."""
        return localised(f"{v:g}")


class OptionalNumber(QLineEdit):
    """A number or nothing."""

    def __init__(self, name: str, least: float, most: float) -> None:
        """Begin empty; ``name`` is that in a ``Fault``."""
        super().__init__()
        self._name, self._range = name, (least, most)
        self.setMinimumWidth(scaled(_NUMBER_PX))
        self.setAccessibleName(name)
        self.setPlaceholderText(translate("plans", "none"))

    def show_number(self, value: float | None) -> None:
        """Show a number, or nothing."""
        self.setText("" if value is None else localised(f"{value:g}"))

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
                translate(
                    "plans",
                    "{field} is '{text}': write a number from {least:g} to {most:g}, or leave it "
                    "empty.",
                ).format(field=self._name, text=text[:20], least=least, most=most)
            )
        return value


class OptionalDate(QLineEdit):
    """A day as the language writes it or as 2026-03-31, or nothing."""

    def __init__(self, name: str) -> None:
        """Begin empty; ``name`` is that in a ``Fault``."""
        super().__init__()
        self._name = name
        self.setAccessibleName(name)
        self.setPlaceholderText(translate("dates", "YYYY-MM-DD"))

    def show_day(self, day: date | None) -> None:
        """Show a day, or nothing."""
        self.setText("" if day is None else typed(day))

    def day(self) -> date | None:
        """Give the day; a ``Fault`` where it is none."""
        text = self.text().strip()
        if not text:
            return None
        try:
            return read_typed(text)
        except ValueError as error:
            raise Fault(
                translate(
                    "plans",
                    "{field} is '{text}', which is no date: write it like {example}, or leave it "
                    "empty.",
                ).format(field=self._name, text=text[:20], example=typed(_EXAMPLE))
            ) from error


class OneOf(QComboBox):
    """One of several names, or None where ``nothing`` says what that means."""

    def __init__(self, name: str, words: Mapping[Choice, str], nothing: str | None = None) -> None:
        """Offer ``nothing`` first, then the kinds in ``words``."""
        super().__init__()
        self.setAccessibleName(name)
        if nothing is not None:
            self.addItem(nothing, None)
        for kind, said in words.items():
            self.addItem(said, kind.value)

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
        self.setAccessibleName(translate("plans", "Days"))
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        self.boxes = {weekday: QCheckBox(weekday_word(weekday)) for weekday in Weekday}
        for box in self.boxes.values():
            box.setFont(font(type_scale().small_px))
            box.setStyleSheet("QCheckBox { spacing: 3px; }")
            box.setMinimumHeight(_TARGET_PX)
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
    grid.setColumnMinimumWidth(0, scaled(_LABEL_PX))
    grid.setColumnMinimumWidth(2, scaled(_LABEL_PX))
    grid.setColumnStretch(1, 1)
    grid.setColumnStretch(3, 1)
    return grid


def measured_text(planned: PlannedExercise) -> str:
    """Say whether an exercise is measured, and where the laptop stands."""
    camera = camera_text(planned.seen_from)
    if planned.movement is None and planned.view is None:
        return translate("plans", "By time, not measured")
    if planned.movement is None:
        return translate("plans", "By time, not measured; {camera}").format(camera=camera)
    measured = translate("plans", "Measured: {movement}, {position}; {camera}")
    return measured.format(
        movement=movement_name(planned.movement),
        position=position_word(planned.position),
        camera=camera,
    )


def camera_text(view: View) -> str:
    """Say where the camera stands."""
    match view:
        case View.FRONT:
            return translate("plans", "camera in front")
        case View.SIDE:
            return translate("plans", "camera at the stiff side")
        case View.BACK:
            return translate("plans", "camera behind")
        case View.FOOT:
            return translate("plans", "camera raised at the foot end")
