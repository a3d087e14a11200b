"""The printed card as a PDF: a sheet to cut and fold, and a page on how to make and wear it."""

from __future__ import annotations

from collections.abc import Callable, Sequence

import numpy as np
from numpy.typing import NDArray
from PyQt6.QtCore import QBuffer, QIODevice, QMarginsF, QPointF, QRectF, Qt
from PyQt6.QtGui import QColor, QPageLayout, QPageSize, QPainter, QPdfWriter, QPen, QPolygonF

from coach.desktop.shared.canvas import Align, Canvas
from coach.desktop.shared.card_howto import paint_howto
from coach.desktop.shared.pdf_text import with_true_spaces
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
from coach.domain.fault import Fault

_DPI = 1200
_SIZES_MM = {Paper.A4: (297.0, 210.0), Paper.LETTER: (279.4, 215.9)}
SHEET_MM = (266.0, 196.0)
"""Of the content; fits both papers with the 6 mm and more that printers leave white."""
_TEXT_POINT = 9.0

BANK_CARD_MM = (85.60, 53.98)
BANK_CARD_CORNER_MM = 3.18
"""ID-1 of ISO/IEC 7810, from memory."""
RULER_MM = 100.0

_FRONT = QRectF(0, 10, 2 * FACE_MM, HEIGHT_MM)
_TAB_MM = 16.0
_STRIP = QRectF(0, 150, BASE_MM + 2 * _TAB_MM, 46)
_TONGUE = QRectF((_STRIP.width() - 92) / 2, 130, 92, 20)

BLACK = "#000000"
_CUT = "#231A35"
_CUT_MM, _FOLD_MM = 0.25, 0.35


class Sheet:
    """A canvas on which a millimetre is a millimetre."""

    def __init__(self, painter: QPainter, per_mm: float, corner_mm: tuple[float, float]) -> None:
        """Take over an active painter; the corner is where the content begins on the paper."""
        self.canvas = Canvas(painter, _TEXT_POINT * 25.4 / 72 * per_mm)
        self._per_mm = per_mm
        self._corner_mm = corner_mm

    def at(self, x_mm: float, y_mm: float) -> QPointF:
        """Give a place in device units."""
        x0, y0 = self._corner_mm
        return QPointF((x0 + x_mm) * self._per_mm, (y0 + y_mm) * self._per_mm)

    def box(self, box_mm: QRectF) -> QRectF:
        """Give a box in device units."""
        return QRectF(
            self.at(box_mm.left(), box_mm.top()), self.at(box_mm.right(), box_mm.bottom())
        )

    def mm(self, length_mm: float) -> float:
        """Give a length in device units."""
        return length_mm * self._per_mm

    def pen(self, width_mm: float, colour: str = _CUT, dashes: Sequence[float] = ()) -> QPen:
        """Give a pen; dashes in millimetres."""
        pen = QPen(QColor(colour), self.mm(width_mm))
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        if dashes:
            pen.setDashPattern([dash / width_mm for dash in dashes])
        return pen

    def line(self, x0: float, y0: float, x1: float, y1: float, pen: QPen) -> None:
        """Draw a straight line."""
        self.canvas.painter.setPen(pen)
        self.canvas.painter.drawLine(self.at(x0, y0), self.at(x1, y1))

    def fold(self, x_mm: float, top_mm: float, bottom_mm: float) -> None:
        """Draw an upright fold."""
        self.line(x_mm, top_mm, x_mm, bottom_mm, self.pen(_FOLD_MM, dashes=(2.5, 1.8)))

    def text(
        self,
        box_mm: QRectF,
        text: str,
        *,
        size: float = 1.0,
        bold: bool = False,
        align: Align = Align.AlignLeft | Align.AlignVCenter,
    ) -> None:
        """Write one line."""
        self.canvas.text(self.box(box_mm), text, size=size, bold=bold, align=align)


def card_pdf(cells: NDArray[np.bool_], paper: Paper) -> bytes:
    """Write both pages and give the file's bytes.

    ``cells`` (2, 6, 6) are the markers' patterns, left and right, rows from above, True is white.
    Needs a running QGuiApplication, an offscreen one will do, with the fonts loaded.
    """
    return landscape_pdf(
        paper,
        "Chest card",
        (
            lambda sheet: paint_card(sheet, cells),
            lambda sheet: paint_howto(sheet.canvas, sheet.box(QRectF(0, 0, *SHEET_MM))),
        ),
    )


def landscape_pdf(paper: Paper, title: str, pages: Sequence[Callable[[Sheet], None]]) -> bytes:
    """Write pages to true size, content in the middle of the paper, and give the file's bytes."""
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(_DPI)
    size = QPageSize.PageSizeId.A4 if paper is Paper.A4 else QPageSize.PageSizeId.Letter
    writer.setPageSize(QPageSize(size))
    writer.setPageOrientation(QPageLayout.Orientation.Landscape)
    writer.setPageMargins(QMarginsF(0, 0, 0, 0), QPageLayout.Unit.Millimeter)
    writer.setTitle(title)
    painter = QPainter()
    if not painter.begin(writer):
        raise Fault(f"{title} could not be drawn: try again, and restart the program if it fails.")
    width_mm, height_mm = _SIZES_MM[paper]
    corner = (width_mm - SHEET_MM[0]) / 2, (height_mm - SHEET_MM[1]) / 2
    sheet = Sheet(painter, _DPI / 25.4, corner)
    for number, paint in enumerate(pages):
        if number:
            writer.newPage()
        paint(sheet)
    painter.end()
    buffer.close()
    return with_true_spaces(bytes(buffer.data().data()))


def paint_card(sheet: Sheet, cells: NDArray[np.bool_]) -> None:
    """Paint the sheet that is cut and folded."""
    _heading(sheet)
    _front(sheet, cells)
    _strip(sheet)
    _bank_card(sheet)
    _ruler(sheet, QRectF(243, _FRONT.top() + 8, 20, RULER_MM))
    _beside(sheet)


def _heading(sheet: Sheet) -> None:
    sheet.text(QRectF(0, 0, 120, 7), "Chest card", size=1.7, bold=True)
    line = QRectF(38, 0.6, 150, 7)
    sheet.text(line, "Print this page at 100 % on stiff, matt, white paper.", size=1.05)
    cut, fold = sheet.pen(_CUT_MM), sheet.pen(_FOLD_MM, dashes=(2.5, 1.8))
    for x, pen, words in ((166, cut, "cut"), (196, fold, "fold back, print outside")):
        sheet.line(x, 4.2, x + 12, 4.2, pen)
        sheet.text(QRectF(x + 14, 0.6, 50, 7), words, size=1.05)


def _front(sheet: Sheet, cells: NDArray[np.bool_]) -> None:
    painter = sheet.canvas.painter
    painter.setPen(sheet.pen(_CUT_MM))
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
    painter.setPen(sheet.pen(_CUT_MM))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPolygon(QPolygonF([sheet.at(x, y) for x, y in outline]))
    for fold in (strip.left() + _TAB_MM, strip.right() - _TAB_MM):
        sheet.fold(fold, strip.top(), strip.bottom())
    for tab in (QRectF(0, 150, _TAB_MM, 46), QRectF(strip.right() - _TAB_MM, 150, _TAB_MM, 46)):
        sheet.text(tab, "glue", bold=True, align=Align.AlignCenter)


def _bank_card(sheet: Sheet) -> None:
    width, height = BANK_CARD_MM
    middle = _STRIP.center().x()
    card = QRectF(middle - width / 2, 136, width, height)
    painter = sheet.canvas.painter
    painter.setPen(sheet.pen(0.2))
    painter.drawRoundedRect(
        sheet.box(card), sheet.mm(BANK_CARD_CORNER_MM), sheet.mm(BANK_CARD_CORNER_MM)
    )
    lines = "Was it printed at full size?", "Lay a bank card here:", "it must fill this outline."
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
    sheet.text(QRectF(2, _FRONT.bottom() + 0.8, 60, 5), "Front, 1 piece", bold=True)
    sheet.text(QRectF(2, _STRIP.top() - 6, 62, 5), "Strip for the back, 1 piece", bold=True)
    right = QRectF(_TONGUE.right() + 3, _STRIP.top() - 12, 90, 5)
    sheet.text(right, "Glue the tabs behind the front's outer edges,")
    sheet.text(right.translated(0, 5.2), "fold on edge, both pieces level at the top.")
