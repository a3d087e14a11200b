"""What a session was measured with, and whether that is what another was measured with."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import StrEnum

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


class SetUpChange(StrEnum):
    """What measured later sessions that measured none of the earlier ones."""

    NONE = "nothing"
    CAMERA = "camera set-up"
    MODEL = "pose model"
    BOTH = "camera set-up and pose model"

    @property
    def happened(self) -> bool:
        """Whether anything did."""
        return self is not SetUpChange.NONE


def set_up_change(first: Sequence[SetUp], last: Sequence[SetUp]) -> SetUpChange:
    """Tell what is new about the set-ups of the last sessions against those of the first.

    Another pose model is as much another measurer as another camera: by what it differs is one
    person's bias, which no number of sessions takes out, and is known from few people only. So
    each of the three widens the comparison to all of the readings' error.
    """
    new = [s for s in last if not any(same_set_up(s, f) for f in first)]
    if not new:
        return SetUpChange.NONE
    alike = [replace(f, model_sha256="") for f in first]
    if all(any(same_set_up(replace(s, model_sha256=""), f) for f in alike) for s in new):
        return SetUpChange.MODEL
    known = {f.model_sha256 for f in first}
    return SetUpChange.CAMERA if all(s.model_sha256 in known for s in new) else SetUpChange.BOTH


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
