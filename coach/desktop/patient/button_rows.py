"""Buttons beside each other, or in several rows where their text is enlarged."""

from __future__ import annotations

from collections.abc import Sequence

from PyQt6.QtCore import QEvent
from PyQt6.QtWidgets import QGridLayout, QWidget

from coach.desktop.patient.controls import KeyButton
from coach.desktop.shared.looks import looks

Row = Sequence[tuple[KeyButton, int]]
"""Buttons with their share of the width."""


class ButtonRows(QWidget):
    """Arranges buttons anew whenever the windows are dressed."""

    def __init__(self, rows: Sequence[Row], parent: QWidget | None = None) -> None:
        """Take rows of buttons; at the usual size of text they stand in one."""
        super().__init__(parent)
        self._rows, self._grid = rows, QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setSpacing(10)
        self._arrange()

    def changeEvent(self, event: QEvent | None) -> None:  # noqa: D102, N802
        if event is not None and event.type() is QEvent.Type.StyleChange:
            self._arrange()
        super().changeEvent(event)

    def _arrange(self) -> None:
        one = [[each for row in self._rows for each in row]]
        rows = one if looks().text == 1.0 else self._rows
        columns = max(sum(share for _, share in row) for row in rows)
        for down, row in enumerate(rows):
            at, whole = 0, sum(share for _, share in row)
            for button, share in row:
                width = share * columns // whole
                self._grid.addWidget(button, down, at, 1, width)
                at += width
        for column in range(sum(share for _, share in one[0])):
            self._grid.setColumnStretch(column, int(column < columns))
