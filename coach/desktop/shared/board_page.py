"""The printed board for the check of the camera's lens, as a PDF of one page."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from PyQt6.QtCore import QRectF, Qt
from PyQt6.QtGui import QColor

from coach.desktop.shared.canvas import Align
from coach.desktop.shared.card_page import BANK_CARD_MM
from coach.desktop.shared.sheet import BLACK, SHEET_MM, Sheet, landscape_pdf
from coach.domain.card_sheet import Paper
from coach.domain.lens import BOARD_MM, CELLS, COLUMNS, MARKER_MM, ROWS, SQUARE_MM
from coach.texts import translate

_BOARD = QRectF(4, 13, *BOARD_MM)
_RULER_MM = 100.0
_DOWN = QRectF(_BOARD.right() + 7, _BOARD.top() + 6, 14, _RULER_MM)
_ACROSS = QRectF(_BOARD.left(), _BOARD.bottom() + 5, _RULER_MM, 8)


def board_pdf(cells: NDArray[np.bool_], paper: Paper) -> bytes:
    """Write the page and give the file's bytes.

    ``cells`` (17, 6, 6) are the markers' patterns in the order of the white squares, rows from
    above, True is white. Needs a running QGuiApplication with the fonts loaded.
    """
    return landscape_pdf(
        paper, translate("card", "Lens board"), (lambda sheet: _paint(sheet, cells),)
    )


def _paint(sheet: Sheet, cells: NDArray[np.bool_]) -> None:
    title = translate("card", "Lens board")
    sheet.text(QRectF(0, 0, 60, 7), title, size=1.7, bold=True)
    left = 8 + sheet.width(title, size=1.7, bold=True)
    line = QRectF(left, 0.4, SHEET_MM[0] - left, 6)
    sheet.text(
        line,
        translate(
            "card",
            "Print at 100 % on matt white paper and stick it flat on something stiff."
            " It measures your camera, not you.",
        ),
        size=1.05,
    )
    _board(sheet, cells)
    _rulers(sheet)


def _board(sheet: Sheet, cells: NDArray[np.bool_]) -> None:
    painter = sheet.canvas.painter
    painter.setPen(Qt.PenStyle.NoPen)
    black, white = QColor(BLACK), QColor("#FFFFFF")
    inset, cell = (SQUARE_MM - MARKER_MM) / 2, MARKER_MM / CELLS
    number = 0
    for row in range(ROWS):
        for column in range(COLUMNS):
            left = _BOARD.left() + column * SQUARE_MM
            top = _BOARD.top() + row * SQUARE_MM
            if (row + column) % 2 == 0:
                painter.fillRect(sheet.box(QRectF(left, top, SQUARE_MM, SQUARE_MM)), black)
                continue
            left, top = left + inset, top + inset
            painter.fillRect(sheet.box(QRectF(left, top, MARKER_MM, MARKER_MM)), black)
            for y, x in np.argwhere(cells[number]):
                hole = QRectF(left + x * cell, top + y * cell, cell, cell)
                painter.fillRect(sheet.box(hole), white)
            number += 1


def _rulers(sheet: Sheet) -> None:
    pen, thick = sheet.pen(0.2), sheet.pen(0.6)
    x, y = _DOWN.left(), _ACROSS.top()
    sheet.line(x, _DOWN.top(), x, _DOWN.top() + _RULER_MM, pen)
    sheet.line(_ACROSS.left(), y, _ACROSS.left() + _RULER_MM, y, pen)
    for mm in range(0, round(_RULER_MM) + 1, 5):
        long = 3.0 if mm % 10 == 0 else 1.8
        sheet.line(x, _DOWN.top() + mm, x + long, _DOWN.top() + mm, pen)
        sheet.line(_ACROSS.left() + mm, y, _ACROSS.left() + mm, y + long, pen)
    card = BANK_CARD_MM[0]
    sheet.line(x - 2, _DOWN.top() + card, x + 4, _DOWN.top() + card, thick)
    sheet.line(_ACROSS.left() + card, y - 2, _ACROSS.left() + card, y + 4, thick)
    sheet.text(QRectF(x - 4, _DOWN.top() + _RULER_MM + 1, 22, 5), "100 mm", align=Align.AlignLeft)
    words = translate(
        "card",
        "Was it printed true? A bank card's long edge reaches from 0 to the thick mark on both "
        "lines, each 100 mm long. Where one is longer than the other, use another printer.",
    )
    sheet.paragraph(QRectF(_ACROSS.right() + 5, y - 2.5, SHEET_MM[0] - 109, 4.6), words)
