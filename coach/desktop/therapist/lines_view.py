"""What lines are about, and what they say, in two columns."""

from __future__ import annotations

from PyQt6.QtCore import Qt
from PyQt6.QtWidgets import QGridLayout, QLabel, QSizePolicy, QWidget

from coach.desktop.shared.enlarged import scaled
from coach.desktop.shared.theme import SPACES_PX, type_scale
from coach.desktop.shared.typeface import font
from coach.review.findings_beside import Lines

_NAMES_PX = 116


class LinesView(QWidget):
    """Shows ``Lines``; each can be selected and copied."""

    def __init__(self) -> None:
        """Begin empty."""
        super().__init__()
        self._font = font(type_scale().small_px + 1)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(SPACES_PX[1])
        self._grid.setVerticalSpacing(SPACES_PX[0])
        self._grid.setColumnMinimumWidth(0, scaled(_NAMES_PX))
        self._grid.setColumnStretch(1, 1)

    def show_lines(self, lines: Lines) -> None:
        """Show other lines."""
        while (item := self._grid.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        top = Qt.AlignmentFlag.AlignTop
        for row, (name, text) in enumerate(lines):
            what, said = QLabel(name), QLabel(text)
            what.setProperty("role", "soft")
            said.setWordWrap(True)
            said.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Minimum)
            for label in (what, said):
                label.setFont(self._font)
                label.setTextFormat(Qt.TextFormat.PlainText)
            said.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
            said.setAccessibleName(f"{name}: {text}")
            self._grid.addWidget(what, row, 0, top)
            self._grid.addWidget(said, row, 1)
