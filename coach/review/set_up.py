"""What a session was measured with, and whether that is what another was measured with."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from coach.domain.movement import View

LENS_CHECKS_AGREE_DEG = 2 * math.sqrt(2)
"""Each is refused with a 95 % interval of more than two degrees to a side."""


@dataclass(frozen=True, slots=True)
class SetUp:
    """What, if changed, may shift all later values: see ``same_set_up``."""

    camera: str
    width_px: int
    height_px: int
    field_of_view_deg: float | None
    view: View
    model_sha256: str
    estimator: str


def same_set_up(one: SetUp, other: SetUp) -> bool:
    """Tell whether nothing is known to have changed that may shift the values.

    A lens that was checked for the first time is the lens it was, and knowing its field of view
    changes no angle by what could be measured (docs/measurement.md); two fields that differ by
    more than two checks of one lens do are two lenses.
    """
    a, b = one.field_of_view_deg, other.field_of_view_deg
    if replace(one, field_of_view_deg=None) != replace(other, field_of_view_deg=None):
        return False
    return a is None or b is None or abs(a - b) <= LENS_CHECKS_AGREE_DEG
