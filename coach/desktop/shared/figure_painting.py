"""Paints the drawn person of a demonstration in the program's colours, on any paint device."""

from __future__ import annotations

import math
from itertools import pairwise
from typing import assert_never

from PyQt6.QtCore import QPointF, QRectF, Qt
from PyQt6.QtGui import QColor, QPainter, QPainterPath, QPen, QPolygonF

from coach.desktop.shared.looks import colours
from coach.figure import Drawing, Point, Role, Shape, Stage, Stroke

_EDGED = frozenset({Role.SKIN, Role.SHIRT, Role.TROUSERS, Role.FURNITURE, Role.TOOL, Role.HAIR}) | {
    Role.CLOTH,
    Role.WALL,
}
EDGE_DARKER = 152
_UNIT = 1000.0
"""Qt unites round outlines well only where they are many units large."""
_EDGE, _STRONG_EDGE = 4.2, 9.5
"""Widths of outlines in thousandths of the picture; the exercised arm's is the stronger one."""
_ARROW, _ARROW_HEAD = 11.0, 34.0
_FAINT = 0.30


def paint_drawing(
    painter: QPainter, box: QRectF, stage: Stage, drawing: Drawing, *, mirrored: bool = False
) -> None:
    """Draw one instant as large as it fits into a box, in its middle; ``mirrored``, as a mirror
    shows it."""
    width, height = stage.size
    scale = min(box.width() / width, box.height() / height) / _UNIT
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.translate(box.center())
    painter.scale(-scale if mirrored else scale, scale)
    painter.translate(-width / 2 * _UNIT, -height / 2 * _UNIT)
    for shape in drawing.shapes:
        _paint_shape(painter, shape)
    if len(drawing.path) > 1:
        _paint_arrow(painter, [_at(point) for point in drawing.path], drawing.both_ways)
    painter.restore()


def _paint_shape(painter: QPainter, shape: Shape) -> None:
    colour = QColor(_colour(shape.role))
    if shape.role is Role.BEGINNING:
        colour.setAlphaF(_FAINT)
    outline = QPainterPath()
    if shape.polygon:
        outline.addPolygon(QPolygonF([_at(point) for point in shape.polygon]))
        outline.closeSubpath()
    for stroke in shape.strokes:
        outline = outline.united(_rounded(stroke))
    if shape.role is Role.WORKING:
        pen = QPen(QColor(colours().scene.outline), _STRONG_EDGE)
    elif shape.role is Role.BEGINNING:
        pen = QPen(QColor(colours().ink_soft), _EDGE, Qt.PenStyle.DashLine)
    elif shape.role in _EDGED:
        pen = QPen(colour.darker(EDGE_DARKER), _EDGE)
    else:
        pen = QPen(Qt.PenStyle.NoPen)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    painter.setPen(pen)
    painter.setBrush(colour)
    painter.drawPath(outline)


def _colour(role: Role) -> str:
    now = colours()
    scene = now.scene
    match role:
        case Role.FLOOR:
            return scene.floor
        case Role.MAT:
            return now.accent_wash
        case Role.FURNITURE:
            return scene.furniture
        case Role.WALL:
            return scene.wall
        case Role.TOOL:
            return scene.tool
        case Role.CLOTH:
            return scene.cloth
        case Role.SKIN:
            return scene.skin
        case Role.WORKING | Role.BEGINNING:
            return now.hold
        case Role.SHIRT:
            return scene.shirt
        case Role.TROUSERS:
            return scene.trousers
        case Role.SHOE:
            return scene.shoe
        case Role.HAIR:
            return scene.hair
        case Role.FACE:
            return scene.outline
        case _ as never:
            assert_never(never)


def _at(point: Point) -> QPointF:
    return _UNIT * QPointF(*point)


def _rounded(stroke: Stroke) -> QPainterPath:
    """Give the outline of a stroke: its two discs and what lies between their outer tangents."""
    begin, end = _at(stroke.begin), _at(stroke.end)
    first, last = _UNIT * stroke.begin_radius, _UNIT * stroke.end_radius
    path = QPainterPath()
    path.addEllipse(begin, first, first)
    across = end - begin
    length = math.hypot(across.x(), across.y())
    if length <= abs(first - last):
        wide = QPainterPath()
        wide.addEllipse(end, last, last)
        return path.united(wide)
    along = math.atan2(across.y(), across.x())
    lean = math.acos((first - last) / length)
    corners = [
        at + radius * QPointF(math.cos(along + turn), math.sin(along + turn))
        for at, radius, turn in (
            (begin, first, lean),
            (end, last, lean),
            (end, last, -lean),
            (begin, first, -lean),
        )
    ]
    sides, far = QPainterPath(), QPainterPath()
    sides.addPolygon(QPolygonF(corners))
    sides.closeSubpath()
    far.addEllipse(end, last, last)
    return path.united(sides).united(far)


def _paint_arrow(painter: QPainter, points: list[QPointF], both_ways: bool) -> None:
    line = QPainterPath(points[0])
    for point in points[1:]:
        line.lineTo(point)
    for colour, wider in ((colours().card, 8.0), (colours().accent, 0.0)):
        pen = QPen(QColor(colour), _ARROW + wider)
        pen.setCapStyle(Qt.PenCapStyle.RoundCap)
        pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPath(line)
        painter.setBrush(QColor(colour))
        pen.setWidthF(wider + 3.0)
        painter.setPen(pen)
        painter.drawPolygon(_head(points))
        if both_ways:
            painter.drawPolygon(_head(points[::-1]))


def _head(points: list[QPointF]) -> QPolygonF:
    """Give the arrow's head at the last point, along the way that leads there."""
    tip = points[-1]
    way = 0.0
    back = points[0]
    for later, earlier in pairwise(reversed(points)):
        way += math.hypot(later.x() - earlier.x(), later.y() - earlier.y())
        back = earlier
        if way >= _ARROW_HEAD:
            break
    along = math.atan2(tip.y() - back.y(), tip.x() - back.x())
    return QPolygonF(
        [
            tip + _ARROW_HEAD * reach * QPointF(math.cos(along + turn), math.sin(along + turn))
            for reach, turn in ((0.45, 0.0), (0.85, 2.45), (0.85, -2.45))
        ]
    )
