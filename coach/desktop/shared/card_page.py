"""The printed card as a PDF: a sheet to cut and fold, and a page on how to make and wear it."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from PyQt6.QtCore import QRectF, Qt
from PyQt6.QtGui import QColor, QPolygonF

from coach.desktop.shared.canvas import Align
from coach.desktop.shared.card_howto import paint_howto
from coach.desktop.shared.sheet import BLACK, CUT_MM, FOLD_MM, SHEET_MM, Sheet, landscape_pdf
from coach.domain.card_sheet import (
    BASE_MM,
    CELLS,
    FACE_MM,
    HEIGHT_MM,
    MARKER_MM,
    QUIET_ABOVE_MM,
    QUIET_MM,
    Paper,
)
from coach.texts import translate

BANK_CARD_MM = (85.60, 53.98)
BANK_CARD_CORNER_MM = 3.18
"""ID-1 of ISO/IEC 7810, from memory."""
RULER_MM = 100.0

_FRONT = QRectF(0, 10, 2 * FACE_MM, HEIGHT_MM)
_TAB_MM = 16.0
_STRIP = QRectF(0, 150, BASE_MM + 2 * _TAB_MM, 46)
_TONGUE = QRectF((_STRIP.width() - 92) / 2, 130, 92, 20)


def card_pdf(cells: NDArray[np.bool_], paper: Paper) -> bytes:
    """Write both pages and give the file's bytes.

    ``cells`` (2, 6, 6) are the markers' patterns, left and right, rows from above, True is white.
    Needs a running QGuiApplication, an offscreen one will do, with the fonts loaded.
    """
    return landscape_pdf(
        paper,
        translate("card", "Chest card"),
        (
            lambda sheet: paint_card(sheet, cells),
            lambda sheet: paint_howto(sheet.canvas, sheet.box(QRectF(0, 0, *SHEET_MM))),
        ),
    )


def paint_card(sheet: Sheet, cells: NDArray[np.bool_]) -> None:
    """Paint the sheet that is cut and folded."""
    _heading(sheet)
    _front(sheet, cells)
    _strip(sheet)
    _bank_card(sheet)
    _ruler(sheet, QRectF(243, _FRONT.top() + 8, 20, RULER_MM))
    _beside(sheet)


def _heading(sheet: Sheet) -> None:
    title = translate("card", "Chest card")
    sheet.text(QRectF(0, 0, 120, 7), title, size=1.7, bold=True)
    line = QRectF(8 + sheet.width(title, size=1.7, bold=True), 0.6, 150, 7)
    how = translate("card", "Print this page at 100 % on stiff, matt, white paper.")
    sheet.text(line, how, size=1.05)
    cut, fold = sheet.pen(CUT_MM), sheet.pen(FOLD_MM, dashes=(2.5, 1.8))
    for x, pen, words in (
        (160, cut, translate("card", "cut")),
        (196, fold, translate("card", "fold back, print outside")),
    ):
        sheet.line(x, 4.2, x + 12, 4.2, pen)
        sheet.text(QRectF(x + 14, 0.6, 50, 7), words, size=1.05)


def _front(sheet: Sheet, cells: NDArray[np.bool_]) -> None:
    painter = sheet.canvas.painter
    painter.setPen(sheet.pen(CUT_MM))
    painter.drawRect(sheet.box(_FRONT))
    ridge = _FRONT.left() + FACE_MM
    for face, left in ((0, ridge - QUIET_MM - MARKER_MM), (1, ridge + QUIET_MM)):
        _marker(sheet, cells[face], left, _FRONT.top() + QUIET_ABOVE_MM)
    sheet.fold(ridge, _FRONT.top(), _FRONT.bottom())


def _marker(sheet: Sheet, cells: NDArray[np.bool_], left: float, top: float) -> None:
    # The painter's smoothing would leave hairlines between neighbours: one black square first.
    painter = sheet.canvas.painter
    painter.setPen(Qt.PenStyle.NoPen)
    painter.fillRect(sheet.box(QRectF(left, top, MARKER_MM, MARKER_MM)), QColor(BLACK))
    cell = MARKER_MM / CELLS
    for row, column in np.argwhere(cells):
        white = QRectF(left + column * cell, top + row * cell, cell, cell)
        painter.fillRect(sheet.box(white), QColor("#FFFFFF"))


def _strip(sheet: Sheet) -> None:
    strip, tongue = _STRIP, _TONGUE
    outline = [
        (strip.left(), strip.top()),
        (tongue.left(), strip.top()),
        (tongue.left(), tongue.top()),
        (tongue.right(), tongue.top()),
        (tongue.right(), strip.top()),
        (strip.right(), strip.top()),
        (strip.right(), strip.bottom()),
        (strip.left(), strip.bottom()),
    ]
    painter = sheet.canvas.painter
    painter.setPen(sheet.pen(CUT_MM))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPolygon(QPolygonF([sheet.at(x, y) for x, y in outline]))
    for fold in (strip.left() + _TAB_MM, strip.right() - _TAB_MM):
        sheet.fold(fold, strip.top(), strip.bottom())
    for tab in (QRectF(0, 150, _TAB_MM, 46), QRectF(strip.right() - _TAB_MM, 150, _TAB_MM, 46)):
        sheet.text(tab, translate("card", "glue"), bold=True, align=Align.AlignCenter)


def _bank_card(sheet: Sheet) -> None:
    width, height = BANK_CARD_MM
    middle = _STRIP.center().x()
    card = QRectF(middle - width / 2, 136, width, height)
    painter = sheet.canvas.painter
    painter.setPen(sheet.pen(0.2))
    painter.drawRoundedRect(
        sheet.box(card), sheet.mm(BANK_CARD_CORNER_MM), sheet.mm(BANK_CARD_CORNER_MM)
    )
    lines = (
        translate("card", "Was it printed at full size?"),
        translate("card", "Lay a bank card here:"),
        translate("card", "it must fill this outline."),
    )
    for number, words in enumerate(lines):
        row = QRectF(card.left(), card.top() + 17 + 6 * number, width, 6)
        sheet.text(row, words, size=1.1, bold=number == 0, align=Align.AlignCenter)


def _ruler(sheet: Sheet, box: QRectF) -> None:
    pen = sheet.pen(0.2)
    sheet.line(box.left(), box.top(), box.left(), box.bottom(), pen)
    for mm in range(0, round(RULER_MM) + 1, 5):
        y = box.top() + mm
        long = mm % 10 == 0
        sheet.line(box.left(), y, box.left() + (5 if long else 3), y, pen)
        if mm % 50 == 0:
            sheet.text(QRectF(box.left() + 6.5, y - 3, 14, 6), f"{mm} mm")


def _beside(sheet: Sheet) -> None:
    sheet.text(
        QRectF(2, _FRONT.bottom() + 0.8, 60, 5), translate("card", "Front, 1 piece"), bold=True
    )
    sheet.text(
        QRectF(2, _STRIP.top() - 6, 62, 5),
        translate("card", "Strip for the back, 1 piece"),
        bold=True,
    )
    right = QRectF(_TONGUE.right() + 3, _STRIP.top() - 12, 90, 5)
    glue = translate("card", "Glue the tabs behind the front's outer edges,")
    level = translate("card", "fold on edge, both pieces level at the top.")
    sheet.text(right, glue)
    sheet.text(right.translated(0, 5.2), level)
