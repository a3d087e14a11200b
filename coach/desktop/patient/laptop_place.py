"""Draws where the laptop stands: the person and the laptop from above, its height from aside."""

from __future__ import annotations

import math

from PyQt6.QtCore import QPointF, QRectF, QSize, Qt
from PyQt6.QtGui import QColor, QPainter, QPaintEvent, QPen, QPolygonF
from PyQt6.QtWidgets import QWidget

from coach.desktop.patient.wording import translate
from coach.desktop.shared.looks import colours, looks
from coach.desktop.shared.typeface import font
from coach.domain.movement import Position, Side, View

_LABEL, _ROOM_PX, _MOST_GROWN = 0.086, (160, 140), 1.3
_EYE_LINE = 0.006


def distance_words(position: Position, view: View) -> str:
    """Say how far away, short; common practice, so that the picture holds head to hips."""
    if position.lying:
        high = view is View.FOOT
        return (
            translate("LaptopPlace", "2 m, up high")
            if high
            else translate("LaptopPlace", "2 m, chair height")
        )
    return "2\N{EN DASH}3 m"


class LaptopPlace(QWidget):
    """The room seen from above, and a caption."""

    def __init__(
        self,
        view: View,
        position: Position,
        side: Side,
        caption: str = "",
        parent: QWidget | None = None,
    ) -> None:
        """Draw the place for a view, a position and the stiff side, ``caption`` below it."""
        super().__init__(parent)
        self.show_place(view, position, side, caption)

    def show_place(self, view: View, position: Position, side: Side, caption: str = "") -> None:
        """Show another place."""
        self._view, self._position, self._side, self._caption = view, position, side, caption
        self.setAccessibleName(caption or self.tr("Where the laptop goes"))
        self.setAccessibleDescription(distance_words(position, view))
        self.update()

    def sizeHint(self) -> QSize:  # noqa: D102, N802
        return self.minimumSizeHint().expandedTo(QSize(300, 160))  # grows into what words leave it

    def minimumSizeHint(self) -> QSize:  # noqa: D102, N802
        return QSize(*_ROOM_PX) * min(looks().text, _MOST_GROWN)

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: D102, N802
        painter = QPainter(self)
        box = QRectF(self.rect())
        if self._caption:
            painter.setFont(font(15, bold=True))
            painter.setPen(QColor(colours().ink))
            flags = Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignBottom
            words = QRectF(box.left(), box.bottom() - 42, box.width(), 40)
            painter.drawText(words, flags.value | Qt.TextFlag.TextWordWrap.value, self._caption)
            box.setBottom(words.top())
        paint_laptop_place(painter, box, self._view, self._position, self._side)
        painter.end()


def laptop_at(view: View, position: Position, side: Side) -> tuple[float, float]:
    """Give the direction from the person to the laptop, seen from above.

    Right and ahead of the person, a unit vector; ahead of someone lying means toward the head,
    and their face is toward the ceiling, the floor or, lying on one side, the picture's left.
    """
    if position is Position.SIDE_LYING and view in (View.FRONT, View.BACK):
        return (-1.0, 0.0) if view is View.FRONT else (1.0, 0.0)
    if position.lying and view is not View.SIDE:
        return (0.0, -1.0)
    if view is View.SIDE:
        out = -side.sign if position is Position.PRONE else side.sign
        # On the back, the person's right is at the left of who looks down with the head up.
        return (float(-out) if position.lying else float(out), 0.0)
    return (0.0, -1.0) if view is View.BACK else (0.0, 1.0)


def paint_laptop_place(
    painter: QPainter, box: QRectF, view: View, position: Position, side: Side
) -> None:
    """Draw the person, the laptop and the distance between them, seen from above."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    scale = min(box.width(), box.height())
    painter.translate(box.center())
    painter.scale(scale, scale)
    right, ahead = laptop_at(view, position, side)
    way = QPointF(right, -ahead)
    person, laptop = way * -0.22, way * 0.31
    if position.lying and abs(ahead) > 0.5:
        person, laptop = way * -0.10, way * 0.41
    _sight(painter, laptop, way, 0.30)
    painter.save()
    painter.translate(person)
    _lying(painter, position, side) if position.lying else _upright(painter, position, side)
    painter.restore()
    _laptop(painter, laptop, way)
    painter.restore()
    sideways = position.lying or abs(way.x()) > 0.5
    words = distance_words(position, view)
    _labels(painter, box, scale, person, laptop, words, sideways=sideways)


def _sight(painter: QPainter, laptop: QPointF, way: QPointF, reach: float) -> None:
    """Draw the wedge that the camera sees."""
    across = QPointF(-way.y(), way.x())
    far = laptop - way * (reach + 0.32)
    wedge = QPolygonF([laptop, far + across * reach, far - across * reach])
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(colours().accent_wash))
    painter.drawPolygon(wedge)


def _upright(painter: QPainter, position: Position, side: Side) -> None:
    """Draw someone who faces up in the picture, from above, the stiff arm a little out."""
    if position is Position.SITTING:
        _fill(painter, colours().scene.furniture)
        painter.drawRoundedRect(QRectF(-0.085, -0.055, 0.17, 0.15), 0.02, 0.02)
    for arm_side, colour in ((-side.sign, colours().scene.shirt), (side.sign, colours().hold)):
        _limb(
            painter,
            QPointF(arm_side * 0.115, 0.0),
            QPointF(arm_side * 0.125, -0.085),
            colour,
            strong=arm_side == side.sign,
        )
    _fill(painter, colours().scene.shirt)
    painter.drawRoundedRect(QRectF(-0.125, -0.045, 0.25, 0.09), 0.045, 0.045)
    _fill(painter, colours().scene.hair)
    painter.drawPolygon(
        QPolygonF([QPointF(-0.022, -0.05), QPointF(0.022, -0.05), QPointF(0.0, -0.085)])
    )
    painter.drawEllipse(QPointF(0, 0), 0.056, 0.062)
    if position is Position.DOORWAY:
        _fill(painter, colours().scene.furniture)
        for x in (-0.215, 0.165):
            painter.drawRect(QRectF(x, -0.13, 0.05, 0.045))


def _lying(painter: QPainter, position: Position, side: Side) -> None:
    """Draw someone who lies with the head up in the picture, from above."""
    _fill(painter, colours().scene.floor)
    painter.drawRoundedRect(QRectF(-0.15, -0.28, 0.30, 0.56), 0.02, 0.02)
    stiff = side.sign if position is Position.PRONE else -side.sign
    if position is Position.SIDE_LYING:
        stiff = -1
    for x in (-0.032, 0.032):
        _limb(painter, QPointF(x, 0.05), QPointF(x, 0.235), colours().scene.trousers, wide=0.05)
    for arm_side in (-stiff, stiff):
        own = arm_side == stiff
        if position is Position.SIDE_LYING and not own:
            continue
        _limb(
            painter,
            QPointF(arm_side * 0.085, -0.115),
            QPointF(arm_side * 0.105, 0.02),
            colours().hold if own else colours().scene.skin,
            strong=own,
        )
    _fill(painter, colours().scene.shirt)
    painter.drawRoundedRect(QRectF(-0.08, -0.145, 0.16, 0.215), 0.045, 0.045)
    _fill(painter, colours().scene.hair if position is Position.PRONE else colours().scene.skin)
    painter.drawEllipse(QPointF(0, -0.205), 0.05, 0.055)
    if position is Position.SUPINE:
        _fill(painter, colours().ink)
        for x in (-0.018, 0.018):
            painter.drawEllipse(QPointF(x, -0.205), 0.006, 0.006)
    if position is Position.SIDE_LYING:
        _fill(painter, colours().scene.hair)
        painter.drawChord(QRectF(-0.05, -0.26, 0.10, 0.11), -90 * 16, 180 * 16)


def _limb(
    painter: QPainter,
    begin: QPointF,
    end: QPointF,
    colour: str,
    *,
    wide: float = 0.042,
    strong: bool = False,
) -> None:
    edge = 0.014 if strong else 0.006
    for tint, width in (
        (colours().scene.outline if strong else colours().line, wide + edge),
        (colour, wide),
    ):
        pen = QPen(QColor(tint), width)
        pen.setCapStyle(Qt.PenCapStyle.RoundCap)
        painter.setPen(pen)
        painter.drawLine(begin, end)


def _laptop(painter: QPainter, at: QPointF, way: QPointF) -> None:
    """Draw the laptop on its table, the screen toward the person."""
    painter.save()
    painter.translate(at)
    painter.rotate(math.degrees(math.atan2(way.y(), way.x())) + 90.0)
    _fill(painter, colours().scene.furniture)
    painter.drawRoundedRect(QRectF(-0.12, -0.06, 0.24, 0.13), 0.015, 0.015)
    _fill(painter, colours().stage)
    painter.drawRoundedRect(QRectF(-0.075, -0.02, 0.15, 0.022), 0.006, 0.006)
    _fill(painter, colours().line)
    painter.drawRect(QRectF(-0.07, 0.006, 0.14, 0.05))
    _fill(painter, colours().rest)
    painter.drawEllipse(QPointF(0, -0.009), _EYE_LINE, _EYE_LINE)
    painter.restore()


def _labels(
    painter: QPainter,
    box: QRectF,
    scale: float,
    person: QPointF,
    laptop: QPointF,
    words: str,
    *,
    sideways: bool,
) -> None:
    """Write the distance beside the way from the person to the laptop, above one that lies."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setFont(font(max(12.0, _LABEL * scale), bold=True))
    painter.setPen(QColor(colours().ink))
    middle = box.center() + (laptop * 0.55 + person * 0.45) * scale
    flags = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
    place = QRectF(middle.x() + 0.03 * scale, middle.y() - 0.06 * scale, scale, 0.12 * scale)
    if sideways:
        flags = Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignVCenter
        place = QRectF(box.left(), box.center().y() - 0.47 * scale, box.width(), 0.12 * scale)
    painter.drawText(place, flags.value, words)
    painter.restore()


def _fill(painter: QPainter, colour: str) -> None:
    painter.setPen(QPen(QColor(colour).darker(140), 0.005))
    painter.setBrush(QColor(colour))
