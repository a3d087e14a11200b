"""Reasons not to measure a frame, each something a person can change."""

from __future__ import annotations

import numpy as np

from coach.domain.movement import Movement, Position, View, best_view
from coach.domain.reading import Doubt
from coach.goniometry.angles import Vector
from coach.goniometry.sight import Sight

MEASURED_FROM: dict[Movement, tuple[View, ...]] = {
    Movement.FLEXION: (View.SIDE,),
    Movement.EXTENSION: (View.SIDE,),
    Movement.ABDUCTION: (View.FRONT, View.BACK),
    Movement.EXTERNAL_ROTATION_0: (View.FRONT,),
}
"""Views that see the plane of movement, or for rotation the forearm's reach."""
MIN_VISIBILITY = 0.5
"""The model's own threshold for a point it believes to see."""
MIN_TRUNK_PX = 55.0
"""Below this a pixel of the trunk is worth more than a degree: atan(1 / 55)."""
MIN_BRIGHTNESS = 0.10
MAX_TRUNK_SHARE = 0.62
"""Trunk over picture height; above it a raised arm does not fit."""
MARGIN = 0.01
"""Share of the picture by which a joint may lie outside and still be located."""
MAX_TURN_DEG = 35.0
"""Trunk turned further than this from the named view: the plane of movement is seen too
obliquely. An arm 10 degrees off its plane then errs by 9.9 degrees at worst, all of the interval,
by 15.7 at 45 (closed form, camera far away: tan a' = tan a cos(turn + 10)). In their right views
tuning people read up to 23."""
WRONG_SIDE_DEG = 135.0
MIN_ROTATION_BEND_DEG = 40.0
"""Of the metric points, which read a bent elbow 15 to 35 degrees too straight (tuning bodies): an
elbow under about 60 degrees no longer shows the rotation (ISB, Wu et al. 2005, option 2)."""
MAX_STRAIGHT_BEND_DEG = 75.0
"""Of the metric points, which read straight arms up to 47 degrees bent (tuning people)."""
MAX_STRAIGHT_BEND_SEEN_DEG = 60.0
"""In the picture; from here on an elbow is bent as for rotation (ISB, Wu et al. 2005, option 2).
Straight arms of tuning people show up to 33 degrees."""
MIN_FOREARM = 0.27
"""Forearm over trunk in the picture: half of the 0.53 it shows at full length. Shorter it points
60 degrees out of the plane of movement, and as the upper arm lies in it, the elbow is bent so."""
MAX_EXTENSION_DEG = 80.0
"""Mean 62, SD 9.5 (Boone & Azen 1979; the SD from memory): an arm further from the trunk in the
picture than two SDs above is raised in front."""
MAX_ROTATION_ELEVATION_DEG = 40.0
MIN_UPPER_ARM = 0.28
"""Upper arm over trunk in the picture; it is 0.6 when seen at full length."""
_TURN_TO = {
    View.FRONT: Doubt.TURN_TO_FACE,
    View.SIDE: Doubt.TURN_SIDEWAYS,
    View.BACK: Doubt.TURN_AROUND,
    View.FOOT: Doubt.FEET_TO_CAMERA,
}
MIN_FRONT_BREADTH = 0.28
MAX_SIDE_BREADTH = 0.52


def doubt_of(sight: Sight, movement: Movement, view: View, position: Position) -> Doubt | None:
    """Name the first reason not to measure this frame, None if there is none."""
    if movement not in MEASURED_FROM:
        return Doubt.OTHER_MOVEMENT
    if view not in MEASURED_FROM[movement]:
        return _TURN_TO[best_view(movement, position) or MEASURED_FROM[movement][0]]
    return _person(sight) or _facing(sight, view) or _framing(sight) or _arm(sight, movement)


def _outside(sight: Sight, point_px: Vector) -> bool:
    size = np.asarray(sight.pose.size_px, dtype=np.float64)
    place = point_px / size
    return not bool(np.all((place >= -MARGIN) & (place <= 1 + MARGIN)))  # NaN is outside


def _person(sight: Sight) -> Doubt | None:
    pose = sight.pose
    if pose.another_person:
        return Doubt.ANOTHER_PERSON
    if pose.brightness is not None and pose.brightness < MIN_BRIGHTNESS:
        return Doubt.TOO_DARK
    if not np.all(np.isfinite(sight.near.shoulder_px)) or not np.isfinite(sight.trunk_px):
        return Doubt.SHOULDERS_OUT_OF_VIEW
    if sight.trunk_px < MIN_TRUNK_PX:
        return Doubt.TOO_FAR
    if sight.trunk_px > MAX_TRUNK_SHARE * pose.size_px[1]:
        return Doubt.TOO_CLOSE
    return None


def _framing(sight: Sight) -> Doubt | None:
    shoulder, elbow, wrist, hip, _ = sight.near.visibility
    if _outside(sight, sight.near.shoulder_px) or shoulder < MIN_VISIBILITY:
        return Doubt.SHOULDERS_OUT_OF_VIEW
    if _outside(sight, sight.near.hip_px) or hip < MIN_VISIBILITY:
        return Doubt.HIPS_OUT_OF_VIEW
    if (
        _outside(sight, sight.near.elbow_px)
        or _outside(sight, sight.near.wrist_px)
        or min(elbow, wrist) < MIN_VISIBILITY
    ):
        return Doubt.ARM_OUT_OF_VIEW
    return None


def _facing(sight: Sight, view: View) -> Doubt | None:
    turned_deg = sight.turned_from_deg(view)
    breadth = sight.breadth
    match view:
        case View.FRONT:
            if breadth < -0.1:
                return Doubt.TURN_AROUND
            if abs(turned_deg) > MAX_TURN_DEG or breadth < MIN_FRONT_BREADTH:
                return Doubt.TURN_TO_FACE
        case View.SIDE:
            if abs(turned_deg) > WRONG_SIDE_DEG:
                return Doubt.WRONG_SIDE
            if abs(turned_deg) > MAX_TURN_DEG or abs(breadth) > MAX_SIDE_BREADTH:
                return Doubt.TURN_SIDEWAYS
        case View.BACK:
            if breadth > 0.1:
                return Doubt.TURN_AROUND
            if abs(turned_deg) > MAX_TURN_DEG:
                return Doubt.TURN_AROUND
        case View.FOOT:
            return Doubt.FEET_TO_CAMERA
    return None


def _arm(sight: Sight, movement: Movement) -> Doubt | None:
    bend_deg = sight.elbow_flexion_deg
    if movement is Movement.EXTERNAL_ROTATION_0:
        if bend_deg < MIN_ROTATION_BEND_DEG:
            return Doubt.BEND_ELBOW
        if sight.near_elevation_deg > MAX_ROTATION_ELEVATION_DEG:
            return Doubt.OTHER_MOVEMENT
        return None
    if bend_deg > MAX_STRAIGHT_BEND_DEG:
        return Doubt.STRAIGHTEN_ELBOW
    if sight.upper_arm_share < MIN_UPPER_ARM:
        return Doubt.OTHER_MOVEMENT
    if movement is Movement.EXTENSION and sight.elevation_seen_deg > MAX_EXTENSION_DEG:
        return Doubt.OTHER_MOVEMENT
    if sight.forearm_share < MIN_FOREARM:
        # Only in front is this a bend: from the side an elbow bends within the picture, and a
        # short forearm is a misplaced wrist.
        return Doubt.STRAIGHTEN_ELBOW if movement is Movement.ABDUCTION else None
    if sight.bend_seen_deg > MAX_STRAIGHT_BEND_SEEN_DEG:
        return Doubt.STRAIGHTEN_ELBOW
    return None
