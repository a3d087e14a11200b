"""A page for the printer on which a millimetre is a millimetre."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PyQt6.QtCore import QBuffer, QIODevice, QMarginsF, QPointF, QRectF, Qt
from PyQt6.QtGui import QColor, QPageLayout, QPageSize, QPainter, QPdfWriter, QPen

from coach.desktop.shared.canvas import Align, Canvas
from coach.desktop.shared.pdf_text import with_true_spaces
from coach.domain.card_sheet import Paper
from coach.domain.fault import Fault
from coach.texts import translate

_DPI = 1200
_SIZES_MM = {Paper.A4: (297.0, 210.0), Paper.LETTER: (279.4, 215.9)}
SHEET_MM = (266.0, 196.0)
"""Of the content; fits both papers with the 6 mm and more that printers leave white."""
_TEXT_POINT = 9.0

BLACK = "#000000"
_CUT = "#231A35"
CUT_MM, FOLD_MM = 0.25, 0.35


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
        self.line(x_mm, top_mm, x_mm, bottom_mm, self.pen(FOLD_MM, dashes=(2.5, 1.8)))

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

    def width(self, text: str, *, size: float = 1.0, bold: bool = False) -> float:
        """Give a line's width in millimetres."""
        return self.canvas.width(text, size, bold=bold) / self.mm(1.0)

    def paragraph(self, box_mm: QRectF, text: str) -> None:
        """Write lines broken at words, downward from the box's top."""
        self.canvas.paragraph(self.box(box_mm), text)


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
        told = translate(
            "faults", "{title} could not be drawn: try again, and restart the program if it fails."
        )
        raise Fault(told.format(title=title))
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
