"""Paragraphs that are written as large as all of them fit into their place."""

from __future__ import annotations

import math
from dataclasses import dataclass

from PyQt6.QtCore import QRectF, Qt
from PyQt6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen
from PyQt6.QtWidgets import QSizePolicy, QWidget

from coach.desktop.patient.lettering import grown
from coach.desktop.shared.looks import colour, looks
from coach.desktop.shared.typeface import font

_WRAP = (Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop).value
_STEP = 0.96
LEAST = 0.02
"""How far type is shrunk, a share of the window's height: 16 pixels of 800, as on a desk."""
_KEPT = 0.9
"""Share of its type that an enlarged block keeps; about what the cautions have unenlarged."""
_MARK = 1.25
"""Room for the mark before a paragraph, in heights of its type."""
_BETWEEN = 0.28
_ROUND_PX = 14.0


@dataclass(frozen=True, slots=True)
class Line:
    """A paragraph; ``mark`` stands before it, as a number or a bullet; ``colour`` is its name."""

    text: str
    mark: str = ""
    bold: bool = False
    colour: str = "ink"


class TextBlock(QWidget):
    """Shows paragraphs, ``share`` of the window's height at most; shrinks them until all fit."""

    def __init__(
        self,
        share: float,
        *,
        ground: str | None = None,
        edge: str = "hairline",
        least: float = LEAST,
        scrolls: bool = False,
        parent: QWidget | None = None,
    ) -> None:
        """Begin empty; ``ground`` names the colour of a card behind the text, ``edge`` its rim.

        Where it stands in an area that ``scrolls``, enlarged text is not shrunk to fit again.
        """
        super().__init__(parent)
        self._scrolls = scrolls
        self._share, self._least = share, min(share, least)
        self._ground, self._edge = ground, edge
        self._lines: tuple[Line, ...] = ()
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    @property
    def text(self) -> str:
        """All paragraphs, one a line."""
        return "\n".join(f"{line.mark} {line.text}".strip() for line in self._lines)

    @property
    def spoken(self) -> str:
        """All paragraphs without their marks, in one line, a stop after each."""
        return " ".join(f"{line.text.rstrip('.')}." for line in self._lines)

    def show_lines(self, lines: tuple[Line, ...]) -> None:
        """Show these paragraphs."""
        if lines != self._lines:
            self._lines = lines
            self.setAccessibleName(self.text)
            self.updateGeometry()
            self.update()

    def type_px(self) -> float:
        """Give the size of type at which everything fits, in pixels."""
        room = self._room()
        size_px = grown(self._share) * self._tall()
        while size_px > self._least_px() and self._height(size_px, room.width()) > room.height():
            size_px *= _STEP
        return size_px

    def heightForWidth(self, width: int) -> int:  # noqa: D102, N802
        if not self._lines:
            return 0
        inset = 0.018 * self._tall() if self._ground is not None else 0.0
        return math.ceil(self._height(self._least_px(), width - 2 * inset) + 1.4 * inset)

    def _least_px(self) -> float:
        kept = self._scrolls and looks().text > 1
        return grown(_KEPT * self._share if kept else self._least) * self._tall()

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: D102, N802
        if not self._lines:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self._ground is not None:
            painter.setPen(QPen(QColor(colour(self._edge)), 2))
            painter.setBrush(QColor(colour(self._ground)))
            painter.drawRoundedRect(
                QRectF(self.rect()).adjusted(1, 1, -1, -1), _ROUND_PX, _ROUND_PX
            )
        room, size_px = self._room(), self.type_px()
        top = room.top()
        for line in self._lines:
            chosen = font(size_px, bold=line.bold)
            indent = _MARK * size_px if line.mark else 0.0
            width = room.width() - indent
            height = _wrapped(QFontMetricsF(chosen), line.text, width)
            painter.setFont(chosen)
            painter.setPen(QColor(colour(line.colour)))
            painter.drawText(QRectF(room.left(), top, indent, height + 2), _WRAP, line.mark)
            painter.drawText(QRectF(room.left() + indent, top, width, height + 2), _WRAP, line.text)
            top += height + _BETWEEN * size_px
        painter.end()

    def _room(self) -> QRectF:
        inset = 0.018 * self._tall() if self._ground is not None else 0.0
        return QRectF(self.rect()).adjusted(inset, 0.7 * inset, -inset, -0.7 * inset)

    def _tall(self) -> float:
        window = self.window()
        return 800.0 if window is None else float(window.height())

    def _height(self, size_px: float, width: float) -> float:
        whole = 0.0
        for line in self._lines:
            metrics = QFontMetricsF(font(size_px, bold=line.bold))
            indent = _MARK * size_px if line.mark else 0.0
            whole += _wrapped(metrics, line.text, width - indent) + _BETWEEN * size_px
        return whole - _BETWEEN * size_px


def _wrapped(metrics: QFontMetricsF, text: str, width: float) -> float:
    return metrics.boundingRect(QRectF(0, 0, max(width, 1.0), 1e5), _WRAP, text).height()
