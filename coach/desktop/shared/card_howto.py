"""How the printed card is made and worn, as a page."""

from __future__ import annotations

from PyQt6.QtCore import QPointF, QRectF

from coach.desktop.shared.canvas import Canvas
from coach.desktop.shared.card_drawings import paint_from_above, paint_worn
from coach.texts import translate

SIZE = 1.45
"""Of the text, in em: read standing at a table."""


def paint_howto(canvas: Canvas, box: QRectF) -> None:
    """Paint the page into ``box``."""
    em = canvas.em
    title = QRectF(box.left(), box.top(), box.width(), 3.4 * em)
    canvas.text(
        title, translate("card", "How to make and wear the chest card"), size=2.4, bold=True
    )
    lead = translate(
        "card",
        "With this card the camera sees how far your trunk is turned, which matters most for"
        " turning the arm outward.",
    )
    top = title.bottom() + 0.4 * em
    row = QRectF(box.left(), top, box.width(), em)
    top += canvas.paragraph(row, lead, size=1.4, colour=canvas.palette.ink_soft) + 1.4 * em
    make = _make()
    column = (box.width() - 3 * em) / 2
    left = QRectF(box.left(), top, column, box.bottom() - top)
    right = left.translated(column + 3 * em, 0)
    below = _numbered(canvas, left, translate("card", "Make it"), make, 1) + 1.2 * em
    half = (column - 2 * em) / 2
    paint_from_above(canvas, QRectF(left.left(), below, 1.25 * half, box.bottom() - below))
    paint_worn(
        canvas,
        QRectF(left.left() + 1.25 * half + 2 * em, below, 0.75 * half, box.bottom() - below),
    )
    below = _numbered(canvas, right, translate("card", "Wear it"), _wear(), len(make) + 1)
    below += 1.2 * em
    _care(canvas, QRectF(right.left(), below, column, box.bottom() - below))


def _numbered(canvas: Canvas, box: QRectF, title: str, lines: tuple[str, ...], first: int) -> float:
    em = canvas.em
    canvas.text(QRectF(box.left(), box.top(), box.width(), 2 * em), title, size=1.6, bold=True)
    top = box.top() + 2.5 * em
    for number, words in enumerate(lines, first):
        canvas.text(QRectF(box.left(), top, 2 * em, 1.7 * em), f"{number}", size=SIZE, bold=True)
        row = QRectF(box.left() + 2 * em, top, box.width() - 2 * em, em)
        top += canvas.paragraph(row, words, size=SIZE) + 0.55 * em
    return top


def _care(canvas: Canvas, box: QRectF) -> None:
    em, colours = canvas.em, canvas.palette
    inner = box.adjusted(1.2 * em, 0.8 * em, -1.2 * em, 0)
    canvas.text(
        QRectF(inner.left(), inner.top(), inner.width(), 2 * em),
        translate("card", "Take care"),
        size=1.6,
        bold=True,
        colour=colours.caution,
    )
    top = inner.top() + 2.5 * em
    for words in _care_for():
        canvas.disc(QPointF(inner.left() + 0.4 * em, top + 0.85 * em), 0.22, colours.caution)
        row = QRectF(inner.left() + 1.5 * em, top, inner.width() - 1.5 * em, em)
        top += canvas.paragraph(row, words, size=SIZE) + 0.45 * em
    canvas.painter.setPen(canvas.pen(colours.caution, 0.16))
    canvas.painter.drawRoundedRect(
        QRectF(box.left(), box.top(), box.width(), top + 0.4 * em - box.top()), em, em
    )


def _make() -> tuple[str, ...]:
    """Say how it is made, step by step."""
    return (
        translate(
            "card",
            "Print the first page at 100 % ('actual size', not 'fit to page') on stiff, matt, "
            "white paper. Keep this page apart.",
        ),
        translate(
            "card",
            "Check the size: a bank card fills its outline, the ruler is 100 mm long.",
        ),
        translate(
            "card",
            "Cut out the front and the strip along the solid lines.",
        ),
        translate(
            "card",
            "Fold along the dashed lines, print outside, and press the folds sharp.",
        ),
        translate(
            "card",
            "Glue the strip's tabs behind the outer edges of the front: folds on edges, both "
            "level at the top, the tongue standing out above. The front now is a tent.",
        ),
    )


def _wear() -> tuple[str, ...]:
    """Say how it is worn."""
    return (
        translate(
            "card",
            "Wear it over clothes that lie close and do not slide, on the upper breastbone, its "
            "ridge upright and in the middle of the chest.",
        ),
        translate(
            "card",
            "Hold the tongue to the neckline with a clothes peg, and the strip's lower edge with "
            "tape.",
        ),
        translate(
            "card",
            "Keep hair, chin and hands off both squares.",
        ),
        translate(
            "card",
            "Set the camera to 1280 by 720 or more, 1.5 to 2.8 metres away. There is nothing to "
            "switch on: the program uses the card while it sees both squares.",
        ),
    )


def _care_for() -> tuple[str, ...]:
    """Say what to mind."""
    return (
        translate(
            "card",
            "It is an extra, for use only where your therapist agrees. It measures how the trunk "
            "turns and diagnoses nothing.",
        ),
        translate(
            "card",
            "Let somebody else put it on where reaching up hurts.",
        ),
        translate(
            "card",
            "No pins: if your therapist does use one, through clothes only and away from the "
            "skin. Nothing round the neck.",
        ),
        translate(
            "card",
            "Not over a wound, a dressing, sore skin or a device under the skin.",
        ),
        translate(
            "card",
            "Take it off before you lie down or lean close to a wall, and when it presses, rubs "
            "or gets in the way of the arm.",
        ),
    )
