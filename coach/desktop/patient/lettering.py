"""Text painted as large as its place allows, for windows that are read from across a room."""

from __future__ import annotations

from PyQt6.QtCore import QPointF, QRectF, Qt
from PyQt6.QtGui import QColor, QFont, QFontMetricsF, QPainter

from coach.desktop.shared.looks import looks
from coach.desktop.shared.typeface import font

LARGE_SHARE = 0.05
"""Type this large, 40 pixels of 800, is read from three metres and grows no further."""
FAR_SHARE = 0.11
"""Type whose capitals are seen under 16 minutes of arc from three metres on a screen of 15.6 inches
(ISO 9241-303 on the least height of characters, from memory): 88 pixels of 800."""
_WRAP = Qt.TextFlag.TextWordWrap
_STEP = 0.94
_GAP = 0.16
"""Between a number and what stands beside it, as a share of the number's height."""


def grown(share: float) -> float:
    """Give a size of type, a share of the window's height, as large as the text is wanted."""
    return max(share, min(share * looks().text, LARGE_SHARE))


def draw_fitted(
    painter: QPainter,
    place: QRectF,
    text: str,
    *,
    largest_px: float,
    smallest_px: float,
    colour: str,
    bold: bool = False,
    align: Qt.AlignmentFlag = Qt.AlignmentFlag.AlignCenter,
) -> float:
    """Write ``text``, wrapped at words, as large as fits into ``place``; give the size used."""
    flags = _WRAP.value | align.value
    size_px = largest_px
    while size_px > smallest_px:
        if fits(font(size_px, bold=bold), place, text):
            break
        size_px = max(size_px * _STEP, smallest_px)
    painter.setFont(font(size_px, bold=bold))
    painter.setPen(QColor(colour))
    painter.drawText(place, flags, text)
    return size_px


def draw_number(
    painter: QPainter,
    place: QRectF,
    number: str,
    beside: str,
    *,
    largest_px: float,
    colour: str,
    beside_colour: str,
    beside_share: float = 0.55,
    centred: bool = False,
) -> float:
    """Write a number on the middle line of ``place`` with smaller text beside it.

    Both are made smaller together until they fit the width; gives the number's size in pixels.
    """
    size_px = largest_px
    while True:
        width_px = number_width(number, beside, size_px, beside_share)
        if width_px <= place.width() or size_px < 12:
            break
        size_px *= _STEP
    large = font(size_px, bold=True, tabular=True)
    small = font(size_px * beside_share, bold=True, tabular=True)
    number_px = QFontMetricsF(large).horizontalAdvance(number)
    gap_px = size_px * _GAP if beside else 0.0
    cap_px = QFontMetricsF(large).capHeight()
    base_px = place.center().y() + cap_px / 2
    left_px = place.left() + ((place.width() - width_px) / 2 if centred else 0.0)
    for chosen, colour_now, at_px, text in (
        (large, colour, left_px, number),
        (small, beside_colour, left_px + number_px + gap_px, beside),
    ):
        painter.setFont(chosen)
        painter.setPen(QColor(colour_now))
        painter.drawText(QPointF(at_px, base_px), text)
    return size_px


def number_width(number: str, beside: str, size_px: float, beside_share: float) -> float:
    """Tell how many pixels a number with smaller text beside it takes."""
    large = font(size_px, bold=True, tabular=True)
    small = font(size_px * beside_share, bold=True, tabular=True)
    gap_px = size_px * _GAP if beside else 0.0
    number_px = QFontMetricsF(large).horizontalAdvance(number)
    return number_px + gap_px + QFontMetricsF(small).horizontalAdvance(beside)


def fits(chosen: QFont, place: QRectF, text: str) -> bool:
    """Whether ``text``, wrapped at words, has room in ``place``."""
    metrics = QFontMetricsF(chosen)
    needed = metrics.boundingRect(place, _WRAP.value, text)
    longest = max((metrics.horizontalAdvance(word) for word in text.split()), default=0.0)
    return needed.height() <= place.height() and longest <= place.width()
