"""Where both hands are in one pose, told without a doubt or not at all.

Lengths are shares of the trunk's length in the picture, as it would be unforeshortened. Up is the
picture's: of a laptop's camera it is up in the room, standing or lying. Lying, a camera that looks
down sees what lies farther away as higher, an arm on the floor past the head from the feet or out
to the far side; there the metric points must show the hand away from the floor as well.

Points of the picture are complex numbers here, x to the right and y down: of so few, plain numbers
are worked out many times as fast as arrays.
"""

from __future__ import annotations

import cmath
import math
from dataclasses import dataclass, field

import numpy as np

from coach.domain.movement import Position, Side
from coach.domain.pose import Landmark, Pose

MIN_VISIBILITY = 0.5
"""The model's own threshold for a point it believes to see."""
MARGIN = 0.01
"""Share of the picture by which a point may lie outside and still be located."""
LEAST_PX = 1.0
"""A trunk below a pixel is no scale."""
SHOULDERS_OVER_TRUNK = 0.75
"""Between the shoulders over the trunk (tuning people 0.69 to 0.83): of a trunk seen from its end
the shoulders give the scale."""
ABOVE_SHOULDER = 0.5
"""Eyes lie 0.118 of the body's height above the shoulders and the trunk is 0.288 of it (Drillis &
Contini 1966, from memory), a ratio of 0.41: the wrist is above the eyes."""
ABOVE_EYES = 0.1
OFF_THE_FACE = 0.33
"""A head's breadth is 0.15 m (common practice), of a trunk of 0.5 m 0.3: a wrist nearer to nose,
eyes or ears belongs to a hand at the face, on the head or behind it."""
OFF_THE_FLOOR = {Position.SUPINE: 0.6, Position.PRONE: 0.3, Position.SIDE_LYING: 0.6}
"""Lying: over the shoulder. An arm that points at the ceiling reaches 1.1, an arm lifted backward
by 40 degrees 0.7."""
WAVERING = 0.1
"""A raised hand may sink by so much before it counts as down."""
JOINED = 0.35
"""Hands this near hold each other or one thing: two palms' lengths."""
Place = tuple[float, float, float, float]
"""x and y of elbow and wrist from the middle of the shoulders."""
ROWS = {
    Side.LEFT: (Landmark.LEFT_SHOULDER, Landmark.LEFT_ELBOW, Landmark.LEFT_WRIST),
    Side.RIGHT: (Landmark.RIGHT_SHOULDER, Landmark.RIGHT_ELBOW, Landmark.RIGHT_WRIST),
}
FACE = (
    Landmark.NOSE,
    Landmark.LEFT_EYE,
    Landmark.RIGHT_EYE,
    Landmark.LEFT_EAR,
    Landmark.RIGHT_EAR,
)


@dataclass(frozen=True, slots=True)
class Look:
    """Where the hands are.

    ``above`` is how far the other wrist is over the line at which it counts as raised, negative
    below it. ``believed``: its arm is in the picture and seen. ``clear``: the hand is not at the
    head and not at the exercised arm. ``exercised`` is where the exercised arm is.
    """

    above: float
    believed: bool
    clear: bool
    exercised: Place = field(repr=False)

    @property
    def raised(self) -> bool:
        """Whether the other hand is up, without a doubt."""
        return self.believed and self.clear and self.above >= 0.0

    @property
    def still_raised(self) -> bool:
        """The same of a hand that was up before: it may waver."""
        return self.believed and self.clear and self.above >= -WAVERING


def look(pose: Pose, side: Side, position: Position) -> Look | None:
    """Look for the hand of the side not exercised; None where nothing can be told."""
    own, other = ROWS[side], ROWS[side.other]
    px = [complex(x, y) for x, y in pose.image_px.tolist()]
    shoulders_px = (px[own[0]] + px[other[0]]) / 2
    hips_px = (px[Landmark.LEFT_HIP] + px[Landmark.RIGHT_HIP]) / 2
    across_px, trunk_px = abs(px[own[0]] - px[other[0]]), abs(shoulders_px - hips_px)
    scale_px = max(trunk_px, across_px / SHOULDERS_OVER_TRUNK)
    if pose.another_person or not math.isfinite(scale_px) or scale_px < LEAST_PX:
        return None
    arm = [px[row] / scale_px for row in own]
    shoulder, wrist = px[other[0]] / scale_px, px[other[2]] / scale_px
    face = [px[row] / scale_px for row in FACE if cmath.isfinite(px[row])]
    if not face or not all(map(cmath.isfinite, (*arm, wrist))):
        return None
    above = shoulder.imag - wrist.imag
    if position.lying:
        off_the_floor = _off_the_floor(pose, side, position)
        if math.isnan(off_the_floor):
            return None
        above = min(above, off_the_floor) - OFF_THE_FLOOR[position]
    else:
        eyes = min(point.imag for point in face)
        above = min(above - ABOVE_SHOULDER, eyes - wrist.imag - ABOVE_EYES)
    from_face = min(abs(point - wrist) for point in face)
    from_arm = min(_apart(wrist, arm[0], arm[1]), _apart(wrist, arm[1], arm[2]))
    clear = from_face >= OFF_THE_FACE and from_arm >= JOINED
    elbow, hand = (point - shoulders_px / scale_px for point in arm[1:])
    exercised = elbow.real, elbow.imag, hand.real, hand.imag
    return Look(above, _believed(pose, px, other), clear, exercised)


def _believed(pose: Pose, px: list[complex], rows: tuple[int, int, int]) -> bool:
    width, height = pose.size_px
    inside = all(
        -MARGIN <= point.real / width <= 1 + MARGIN and -MARGIN <= point.imag / height <= 1 + MARGIN
        for point in (px[rows[0]], px[rows[2]])
    )
    seen = (float(pose.visibility[row]) for row in (rows[0], rows[2]))
    return inside and all(visible >= MIN_VISIBILITY for visible in seen)


def _off_the_floor(pose: Pose, side: Side, position: Position) -> float:
    """How far the metric points show the other wrist from the floor, over the trunk's length.

    NaN where one is not known, or where they have no length to go by.
    Away from the floor is the way of the chest on the back, of the back face down, of the other
    shoulder on the exercised side.
    """
    m = pose.world_m
    left, right = m[Landmark.LEFT_SHOULDER], m[Landmark.RIGHT_SHOULDER]
    trunk = (left + right - m[Landmark.LEFT_HIP] - m[Landmark.RIGHT_HIP]) / 2
    match position:
        case Position.SIDE_LYING:
            up = (left - right) * side.sign
        case Position.SUPINE:
            up = np.cross(trunk, right - left)
        case _:
            up = -np.cross(trunk, right - left)
    long, high = float(np.linalg.norm(trunk)), float(np.linalg.norm(up))
    if not (long > 0.0 and high > 0.0):
        return math.nan
    shoulder, _, wrist = m[list(ROWS[side.other])]
    return float(up / high @ (wrist - shoulder)) / long


def _apart(point: complex, start: complex, end: complex) -> float:
    """Distance of a point from a line between two others."""
    along = end - start
    share = ((point - start) * along.conjugate()).real / max(abs(along) ** 2, 1e-12)
    return abs(point - start - min(max(share, 0.0), 1.0) * along)
