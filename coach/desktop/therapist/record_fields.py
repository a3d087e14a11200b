"""Fields of a record's form: each shows a value and gives it, or says what is wrong with it."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, timedelta
from typing import Any, Protocol

from PyQt6.QtCore import Qt
from PyQt6.QtGui import QKeyEvent
from PyQt6.QtWidgets import QComboBox, QLineEdit, QPlainTextEdit, QWidget

from coach.desktop.shared.enlarged import scaled
from coach.desktop.therapist.plan_fields import OptionalDate, OptionalNumber
from coach.desktop.therapist.typed_dates import read_typed, typed
from coach.domain.fault import Fault
from coach.review.wording import MINUS
from coach.texts import localised, translate

_LONG_TEXT_PX = 76
_STEPS = {Qt.Key.Key_Up: 1, Qt.Key.Key_Down: -1}


class Entry(Protocol):
    """What a form asks of a field."""

    def show_value(self, value: Any) -> None:
        """Show a value of the record."""

    def value(self) -> Any:
        """Give the value; a ``Fault`` in a sentence where it is none."""

    @property
    def widget(self) -> QWidget:
        """What takes the keyboard."""


class _Entry:
    """A field that is its own widget."""

    @property
    def widget(self) -> QWidget:
        """What takes the keyboard."""
        assert isinstance(self, QWidget)
        return self


class TextEntry(_Entry, QLineEdit):
    """One line of text."""

    def __init__(self, name: str, most: int, *, needed: bool = False, hint: str = "") -> None:
        """Begin empty; ``needed`` refuses an empty line."""
        super().__init__()
        self._name, self._needed = name, needed
        self.setAccessibleName(name)
        self.setMaxLength(most)
        self.setPlaceholderText(hint)

    def show_value(self, value: Any) -> None:
        """Show a text."""
        self.setText(value)

    def value(self) -> str:
        """Give the text without blanks around it."""
        text = self.text().strip()
        if self._needed and not text:
            raise Fault(
                translate("records", "{field} is empty: write something there.").format(
                    field=self._name
                )
            )
        return text


class LongEntry(_Entry, QPlainTextEdit):
    """Several lines of text; Tab goes on to the next field."""

    def __init__(self, name: str, most: int) -> None:
        """Begin empty."""
        super().__init__()
        self._name, self._most = name, most
        self.setAccessibleName(name)
        self.setTabChangesFocus(True)
        self.setFixedHeight(scaled(_LONG_TEXT_PX))

    def show_value(self, value: Any) -> None:
        """Show a text."""
        self.setPlainText(value)

    def value(self) -> str:
        """Give the text without blanks around it."""
        text = self.toPlainText().strip()
        if len(text) > self._most:
            raise Fault(
                translate(
                    "records", "{field} has {count} characters: shorten it to at most {most}."
                ).format(field=self._name, count=len(text), most=self._most)
            )
        return text


class DayEntry(_Entry, OptionalDate):
    """A day; Up and Down step to the next and the last one. ``ahead``: it may be yet to come."""

    def __init__(self, name: str, today: date, *, ahead: bool = False) -> None:
        """Begin with today."""
        super().__init__(name)
        self._today, self._ahead = today, ahead
        self.setText(typed(today))

    def show_value(self, value: Any) -> None:
        """Show a day."""
        self.setText(typed(value))

    def value(self) -> date:
        """Give the day."""
        text = self.text().strip()
        try:
            found = read_typed(text)
        except ValueError as error:
            told = translate(
                "records", "{field} is '{text}', which is no date: write it like {example}."
            )
            if not text:
                told = translate("records", "{field} is empty: write it like {example}.")
            raise Fault(
                told.format(field=self._name, text=text[:20], example=typed(self._today))
            ) from error
        if found > self._today and not self._ahead:
            raise Fault(
                translate(
                    "records",
                    "{field} is {day}, which is yet to come: write the day on which it was.",
                ).format(field=self._name, day=typed(found))
            )
        return found

    def keyPressEvent(self, event: QKeyEvent | None) -> None:  # noqa: N802
        """Step by a day."""
        if event is None or event.key() not in _STEPS:
            super().keyPressEvent(event)
            return
        try:
            now = self.day() or self._today
        except Fault:
            return
        self.show_value(now + timedelta(days=_STEPS[Qt.Key(event.key())]))


class NumberEntry(_Entry, OptionalNumber):
    """A number that must be there."""

    def __init__(self, name: str, least: float, most: float) -> None:
        """Begin empty."""
        super().__init__(name, least, most)
        self._name = name
        hint = translate("records", "{least} to {most}")
        self.setPlaceholderText(hint.format(least=_written(least), most=_written(most)))

    def show_value(self, value: Any) -> None:
        """Show a number."""
        self.show_number(value)

    def value(self) -> float:
        """Give the number."""
        try:
            found = self.number()
        except Fault:
            found = None
        if found is None:
            text, (least, most) = self.text().strip(), self._range
            told = translate(
                "records", "{field} is '{text}': write a number from {least} to {most}."
            )
            if not text:
                told = translate(
                    "records", "{field} is empty: write a number from {least} to {most}."
                )
            raise Fault(
                told.format(
                    field=self._name, text=text[:20], least=_written(least), most=_written(most)
                )
            )
        return found


class ChoiceEntry(_Entry, QComboBox):
    """One of several values in words; typing chooses."""

    def __init__(self, name: str, words: Mapping[Any, str]) -> None:
        """Offer ``words`` by their values, the first one chosen."""
        super().__init__()
        self.setAccessibleName(name)
        self._values = tuple(words)
        self.addItems(words.values())

    def show_value(self, value: Any) -> None:
        """Choose a value."""
        self.setCurrentIndex(self._values.index(value))

    def value(self) -> Any:
        """Give what is chosen."""
        return self._values[self.currentIndex()]


def _written(number: float) -> str:
    return localised(f"{number:g}".replace("-", MINUS))
