"""The live picture as a mirror, the measured limb on it, and the band of time around it."""

from __future__ import annotations

import math
from collections.abc import Callable

from PyQt6.QtCore import QPointF, QRectF, Qt
from PyQt6.QtGui import (
    QColor,
    QImage,
    QPainter,
    QPainterPath,
    QPaintEvent,
    QPen,
    QPolygonF,
)
from PyQt6.QtWidgets import QWidget

from coach.desktop.patient.band import Band, paint_band
from coach.desktop.patient.fan import Point
from coach.desktop.patient.lettering import draw_fitted, draw_number, number_width
from coach.desktop.patient.limb import Limb
from coach.desktop.shared.looks import colours

_ERROR_SHARE = 0.7
"""Height of the error's type beside the value's."""


class Picture(QWidget):
    """Shows a frame mirrored; everything given to it is in pixels of the unmirrored frame.

    The band of a hold fills on both sides at once, from the middle of the lower edge to the middle
    of the upper one; that of a rest empties the same way back.
    """

    def __init__(self, *, framed: bool = True, parent: QWidget | None = None) -> None:
        """Begin dark and empty; without a frame there is no band."""
        super().__init__(parent)
        self._image: QImage | None = None
        self._limb: Limb | None = None
        self._value = self._error = ""
        self._empty = ""
        self._band: Band | None = None
        self._veil = ""
        self._framed = framed
        self.setAccessibleName(self.tr("Live picture, mirrored"))
        self.setMinimumSize(320, 240)

    def show_image(self, image: QImage) -> None:
        """Show another frame, upright and unmirrored."""
        self._image = image
        self.update()

    def show_limb(self, limb: Limb | None, value: str = "", error: str = "") -> None:
        """Draw this limb and write its value with its error beside it."""
        self._limb, self._value, self._error = limb, value, error
        self.update()

    def show_empty(self, words: str) -> None:
        """Say these words as long as there is no picture."""
        self._empty = words
        self.update()

    def show_band(self, band: Band | None) -> None:
        """Show how the time goes; None where nothing is timed."""
        self._band = band
        self.update()

    def show_veil(self, word: str) -> None:
        """Darken the picture and write one word on it; empty for a clear picture."""
        self._veil = word
        self.update()

    def picture_rect(self) -> QRectF:
        """Give the place of the picture inside the widget: never cropped, never stretched."""
        room = QRectF(self.rect())
        edge = self._edge_px() * (1.9 if self._framed else 0.7)
        room.adjust(edge, edge, -edge, -edge)
        if self._image is None or self._image.isNull():
            return room
        scale = min(room.width() / self._image.width(), room.height() / self._image.height())
        width_px, height_px = self._image.width() * scale, self._image.height() * scale
        middle = room.center()
        return QRectF(middle.x() - width_px / 2, middle.y() - height_px / 2, width_px, height_px)

    def mirrored(self, point: Point) -> QPointF:
        """Place a point of the unmirrored frame on the widget."""
        return self._mirror(self.picture_rect())(point)

    def _mirror(self, place: QRectF) -> Callable[[Point], QPointF]:
        """Give what puts points of the frame into ``place``: worked out once for all of a limb."""
        if self._image is None:
            return lambda _: place.center()
        across, down = place.width() / self._image.width(), place.height() / self._image.height()
        right, top = place.right(), place.top()
        return lambda point: QPointF(right - point[0] * across, top + point[1] * down)

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: D102, N802
        painter = QPainter(self)
        painter.setRenderHints(
            QPainter.RenderHint.Antialiasing | QPainter.RenderHint.SmoothPixmapTransform
        )
        painter.fillRect(self.rect(), QColor(colours().stage))
        if self._framed:
            paint_band(painter, QRectF(self.rect()), self._band, self._edge_px())
        place = self.picture_rect()
        if self._image is not None:
            clip = QPainterPath()
            clip.addRoundedRect(place, self._edge_px(), self._edge_px())
            painter.setClipPath(clip)
            self._paint_image(painter, place, self._image)
            if self._limb is not None:
                self._paint_limb(painter, self._limb, place)
            painter.setClipping(False)
        elif self._empty:
            draw_fitted(
                painter,
                place.adjusted(place.width() * 0.1, 0, -place.width() * 0.1, 0),
                self._empty,
                largest_px=max(18.0, 0.14 * place.height()),
                smallest_px=14,
                colour=colours().stage_soft,
                bold=True,
            )
        if self._veil:
            self._paint_veil(painter, place)
        painter.end()

    def _edge_px(self) -> float:
        return max(14.0, 0.036 * min(self.width(), self.height()))

    def _paint_image(self, painter: QPainter, place: QRectF, image: QImage) -> None:
        painter.save()
        painter.translate(place.right(), place.top())
        painter.scale(-place.width() / image.width(), place.height() / image.height())
        painter.drawImage(0, 0, image)
        painter.restore()

    def _paint_limb(self, painter: QPainter, limb: Limb, place: QRectF) -> None:
        thin = max(3.0, 0.009 * place.height())
        on = self._mirror(place)
        self._line(painter, [on(at) for at in limb.trunk], colours().rest, thin)
        if limb.zero is not None:
            self._line(
                painter, [on(at) for at in limb.zero], colours().rest, thin * 0.7, dashed=True
            )
        for tick in limb.ticks:
            self._line(painter, [on(at) for at in tick], colours().rest, thin * 0.7)
        if limb.band is not None:
            self._line(painter, [on(at) for at in limb.band], colours().hold, thin * 3.0)
        if limb.limit is not None:
            self._line(
                painter, [on(at) for at in limb.limit], colours().stage_ink, thin, dashed=True
            )
        if limb.arc:
            arc = [on(at) for at in limb.arc]
            wedge = QColor(colours().hold)
            wedge.setAlphaF(0.32)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(wedge)
            painter.drawPolygon(QPolygonF([on(limb.apex), *arc]))
            self._line(painter, arc, colours().hold, thin * 1.4)
        self._line(painter, [on(at) for at in limb.arm], colours().hold, thin * 1.9)
        painter.setPen(QPen(QColor(colours().stage), thin * 0.6))
        painter.setBrush(QColor(colours().stage_ink))
        for joint in limb.arm:
            painter.drawEllipse(on(joint), thin * 1.7, thin * 1.7)
        if self._value and (limb.arc or limb.band):
            self._paint_value(painter, on(limb.apex), on(limb.label), place)

    def _line(
        self,
        painter: QPainter,
        points: list[QPointF],
        colour: str,
        width_px: float,
        *,
        dashed: bool = False,
    ) -> None:
        # A dark casing keeps the line visible on any clothes and wall.
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for ink, extra_px in ((colours().stage, width_px * 0.8), (colour, 0.0)):
            pen = QPen(QColor(ink), width_px + extra_px)
            pen.setCapStyle(Qt.PenCapStyle.RoundCap)
            pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
            if dashed and ink == colour:
                pen.setDashPattern([1.5, 2.5])
            painter.setPen(pen)
            painter.drawPolyline(QPolygonF(points))

    def _paint_value(self, painter: QPainter, apex: QPointF, at: QPointF, place: QRectF) -> None:
        size_px = max(18.0, 0.062 * place.height())
        width_px = number_width(self._value, self._error, size_px, _ERROR_SHARE)
        pill = QRectF(0, 0, width_px + 0.9 * size_px, 1.3 * size_px)
        away = at - apex
        length = math.hypot(away.x(), away.y()) or 1.0
        push_px = (abs(away.x()) * pill.width() + abs(away.y()) * pill.height()) / (2 * length)
        pill.moveCenter(at + away * ((push_px + 0.02 * place.height()) / length))
        pill.moveLeft(min(max(pill.left(), place.left() + 8), place.right() - pill.width() - 8))
        pill.moveTop(min(max(pill.top(), place.top() + 8), place.bottom() - pill.height() - 8))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(colours().stage))
        painter.drawRoundedRect(pill, pill.height() / 2, pill.height() / 2)
        draw_number(
            painter,
            pill,
            self._value,
            self._error,
            largest_px=size_px,
            colour=colours().hold,
            beside_colour=colours().stage_ink,
            beside_share=_ERROR_SHARE,
            centred=True,
        )

    def _paint_veil(self, painter: QPainter, place: QRectF) -> None:
        dark = QColor(colours().stage)
        dark.setAlphaF(0.82)
        painter.fillRect(place.adjusted(-1, -1, 1, 1), dark)
        bars = QRectF(0, 0, place.height() * 0.2, place.height() * 0.24)
        bars.moveCenter(QPointF(place.center().x(), place.top() + place.height() * 0.34))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(colours().rest))
        third = bars.width() / 3
        for left in (bars.left(), bars.right() - third):
            painter.drawRoundedRect(QRectF(left, bars.top(), third, bars.height()), 6, 6)
        words = place.adjusted(0, place.height() * 0.48, 0, -place.height() * 0.12)
        large_px = 0.24 * place.height()
        draw_fitted(
            painter,
            words,
            self._veil,
            largest_px=large_px,
            smallest_px=20,
            colour=colours().stage_ink,
            bold=True,
        )
