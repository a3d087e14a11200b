"""Draw every exercise of the catalogue, four instants each, to look at.

python -m docs.make_demonstrations OUT [NAME ...]
"""

from __future__ import annotations

import os
import sys
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PyQt6.QtCore import QRectF, Qt
from PyQt6.QtGui import QColor, QImage, QPainter

from coach.catalogue import catalogue
from coach.desktop.patient.laptop_place import paint_laptop_place
from coach.desktop.shared.application import create_application
from coach.desktop.shared.figure_painting import paint_drawing
from coach.desktop.shared.palettes import LIGHT
from coach.desktop.shared.typeface import font
from coach.domain.exercise import Exercise
from coach.domain.movement import Side
from coach.figure import stage_of

CELL_PX = 320
TITLE_PX = 30
INSTANTS = 4


def sheet(exercise: Exercise, side: Side) -> QImage:
    """Give four instants from the beginning to the end of the movement, and the laptop's place."""
    stage = stage_of(exercise, side)
    image = QImage((INSTANTS + 1) * CELL_PX, CELL_PX + TITLE_PX, QImage.Format.Format_RGB32)
    image.fill(QColor(LIGHT.card))
    painter = QPainter(image)
    painter.setFont(font(18, bold=True))
    painter.setPen(QColor(LIGHT.ink))
    title = QRectF(8, 0, image.width(), TITLE_PX)
    painter.drawText(title, Qt.AlignmentFlag.AlignVCenter.value, f"{exercise.exercise}, {side} arm")
    for step in range(INSTANTS):
        share = step / (INSTANTS - 1)
        at_s = stage.begin_s + share * (stage.key_s - stage.begin_s)
        box = QRectF(step * CELL_PX, TITLE_PX, CELL_PX, CELL_PX)
        still = step == INSTANTS - 1
        paint_drawing(painter, box, stage, stage.drawing(at_s, beginning=still))
    box = QRectF(INSTANTS * CELL_PX, TITLE_PX, CELL_PX, CELL_PX)
    paint_laptop_place(painter, box, exercise.view, exercise.position, side)
    painter.end()
    return image


def main(out: Path, names: list[str]) -> None:
    """Write ``<exercise>-<side>.png`` for every exercise, or those named."""
    application = create_application(["demonstrations"], offscreen_allowed=True)
    out.mkdir(parents=True, exist_ok=True)
    for exercise in catalogue().all:
        if names and exercise.exercise not in names:
            continue
        for side in Side:
            path = out / f"{exercise.exercise}-{side}.png"
            if not sheet(exercise, side).save(str(path)):
                raise SystemExit(f"{path} could not be written")
    del application


if __name__ == "__main__":
    if len(sys.argv) < 2:
        raise SystemExit(__doc__)
    main(Path(sys.argv[1]), sys.argv[2:])
