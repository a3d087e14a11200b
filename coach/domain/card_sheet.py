"""What the printed card looks like; the page draws it, the camera's side looks for it.

Two square markers stand side by side on a sheet that is folded between them like a tent, the ridge
upright. Each face stands back from the ridge, so that a small turn changes the width of one face
and of the other in opposite ways: a flat card's width goes with the cosine and says next to nothing
face-on. A strip behind holds the outer edges apart and thereby the angle.
"""

from __future__ import annotations

import math
from enum import StrEnum

MARKER_MM = 100.0
CELLS = 6
"""Cells along a marker's side, the black border of one cell included."""
TENT_DEG = 35.0
"""How far each face stands back. Steeper, the far face is lost too soon; flatter, a turn shows less
(tests/bench/card.py)."""
QUIET_MM = 9.0
"""White from a marker to the ridge and to the outer edge."""
QUIET_ABOVE_MM = 8.0
FACE_MM = MARKER_MM + 2 * QUIET_MM
HEIGHT_MM = MARKER_MM + 2 * QUIET_ABOVE_MM
BASE_MM = 2 * FACE_MM * math.cos(math.radians(TENT_DEG))
"""Between the outer edges, hence between the folds of the strip that holds them."""


def tent_deg(face_mm: float, base_mm: float) -> float:
    """How far the faces of a closed tent stand back: the base angle of an isosceles triangle."""
    return math.degrees(math.acos(base_mm / 2 / face_mm))


class Paper(StrEnum):
    """What the card is printed on."""

    A4 = "a4"
    LETTER = "letter"
