"""Reasons not to measure a frame, each something a person can change."""

from __future__ import annotations

import math

from coach.domain.movement import VIEWS, Movement, Position, View, best_view
from coach.domain.reading import Doubt
from coach.goniometry.angles import Vector
from coach.goniometry.sight import Sight

MIN_VISIBILITY = 0.5
"""The model's own threshold for a point it believes to see."""
MIN_HIDDEN_VISIBILITY = 0.1
"""Of a wrist behind the back: the model takes it for hidden and still marks it within 5 % of the
trunk's length (tuning people, from behind)."""
MIN_END_ON_VISIBILITY = 0.3
"""Of an elbow and wrist that point at the camera."""
MIN_TRUNK_PX = 55.0
"""Below this a pixel of the trunk is worth more than a degree: atan(1 / 55)."""
LEAST_TRUNK_PX = 1.0
"""Of a trunk seen foreshortened: below a pixel it points nowhere in the picture."""
MIN_FOOT_SCALE_PX, MIN_FOOT_TRUNK_PX = 66.0, 32.0
"""The same of a lying body seen from the feet: how long its trunk would be, and how long it is seen
foreshortened; smaller, the points of tuning people are lost, lower, the camera looks along it."""
MIN_BRIGHTNESS = 0.10
MAX_TRUNK_SHARE = 0.62
"""Trunk over the picture's height (lying: width); above it a raised arm does not fit."""
MARGIN = 0.01
"""Share of the picture by which a joint of the trunk may lie outside and still be located."""
HALF_WRIST = 0.06
"""Half of a wrist's breadth over the trunk, 3 cm of 50 (from memory); an elbow's counts alike. An
arm's joint nearer to the edge is cut, and a cut arm's wrist the model puts at the edge itself."""
MAX_TURN_DEG = 35.0
"""Trunk turned further than this from the named view: the plane of movement is seen too
obliquely. An arm 10 degrees off its plane then errs by 9.9 degrees at worst, all of the interval,
by 15.7 at 45 (closed form, camera far away: tan a' = tan a cos(turn + 10)). In their right views
tuning people read up to 23."""
MAX_LYING_TURN_DEG = 50.0
"""The same lying down, where the camera looks down on the body and the points are less exact."""
MAX_DOORWAY_TURN_DEG = 75.0
"""In a doorway the trunk turns away from the arm: the turn is the stretch."""
WRONG_SIDE_DEG = 135.0
LYING_FROM_DEG, LYING_TO_DEG = 50.0, 130.0
"""Tilt of the trunk in the picture of somebody lying across it."""
UPRIGHT_WITHIN_DEG = 45.0
FACE_UP = 0.3
"""Upward part of the trunk's forward axis in the picture: tuning people lying on their backs show
0.37 to 1.0, upright ones -0.4 to 0.14."""
MIN_ROTATION_BEND_DEG = 40.0
"""Of the metric points, which read a bent elbow 15 to 35 degrees too straight (tuning bodies): an
elbow under about 60 degrees no longer shows the rotation (ISB, Wu et al. 2005, option 2)."""
MIN_END_ON_BEND_DEG = 22.0
"""The same where the forearm or the upper arm points at the camera."""
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
MAX_LYING_ROTATION_ELEVATION_DEG = 75.0
"""Elevation by the metric points with the arm at the side; tuning people lying reach 69."""
LEVEL_DEG = (45.0, 135.0)
"""Elevation of an arm that is level, by the metric points, half a right angle either way."""
MIN_UPPER_ARM = 0.28
"""Upper arm over trunk in the picture; it is 0.6 when seen at full length."""
MAX_END_ON_UPPER_ARM = 0.52
"""The same of an upper arm that points at the camera: tuning people show up to 0.45, 0.57 hanging.
"""
MIN_ACROSS_FOREARM = 0.2
MIN_FRONT_BREADTH = 0.28
MAX_SIDE_BREADTH = 0.52
_TURN_TO = {
    View.FRONT: Doubt.TURN_TO_FACE,
    View.SIDE: Doubt.TURN_SIDEWAYS,
    View.BACK: Doubt.TURN_AROUND,
    View.FOOT: Doubt.FEET_TO_CAMERA,
}


def doubt_of(sight: Sight, movement: Movement, view: View, position: Position) -> Doubt | None:
    """Name the first reason not to measure this frame, None if there is none."""
    if view not in VIEWS.get((movement, position), ()):
        better = best_view(movement, position)
        return Doubt.OTHER_MOVEMENT if better is None else _TURN_TO[better]
    body = (
        person(sight)
        or distance(sight, position)
        or posture(sight, view, position)
        or framing(sight)
        or (None if sight.arm_known else Doubt.ARM_OUT_OF_VIEW)
    )
    if body is not None or position is Position.DOORWAY:
        return body  # the arm against a door frame is not looked at
    return _arm_seen(sight, movement, view) or _arm(sight, movement, view)


def outside(sight: Sight, point_px: Vector, border_px: float | None = None) -> bool:
    """Whether a point (2,) lies outside the picture or in its border, or is not known."""
    size_px = sight.pose.size_px
    borders = [-MARGIN * size if border_px is None else border_px for size in size_px]
    rows = zip(borders, point_px.tolist(), size_px, strict=True)
    return not all(low <= value <= size - low for low, value, size in rows)  # NaN is outside


def person(sight: Sight) -> Doubt | None:
    """Whether it is still the same body, in enough light, its shoulders known."""
    pose = sight.pose
    if pose.another_person:
        return Doubt.ANOTHER_PERSON
    if pose.brightness is not None and pose.brightness < MIN_BRIGHTNESS:
        return Doubt.TOO_DARK
    if not all(map(math.isfinite, (*sight.near.shoulder_px.tolist(), sight.scale_px))):
        return Doubt.SHOULDERS_OUT_OF_VIEW
    return None


def distance(sight: Sight, position: Position) -> Doubt | None:
    """Whether the body is seen neither too small nor too large."""
    if sight.scale_px < MIN_TRUNK_PX or sight.trunk_px < LEAST_TRUNK_PX:
        return Doubt.TOO_FAR
    if sight.trunk_px > MAX_TRUNK_SHARE * sight.pose.size_px[0 if position.lying else 1]:
        return Doubt.TOO_CLOSE
    return None


def posture(sight: Sight, view: View, position: Position) -> Doubt | None:
    """Whether the body stands, sits or lies as asked, the right way round."""
    return _lying(sight, view, position) or _facing(sight, view, position)


def _lying(sight: Sight, view: View, position: Position) -> Doubt | None:
    """Whether the trunk lies or stands as asked."""
    face_up = -float(sight.axes[0][1])
    tilt_deg = abs(sight.tilt_deg)
    if not position.lying:
        upright = tilt_deg < UPRIGHT_WITHIN_DEG and abs(face_up) < 1.5 * FACE_UP
        return None if upright else Doubt.BE_UPRIGHT
    lie = Doubt.LIE_ON_BACK if position is Position.SUPINE else Doubt.LIE_FACE_DOWN
    if view is View.FOOT and tilt_deg > LYING_FROM_DEG:
        return Doubt.FEET_TO_CAMERA
    if view is View.SIDE and not LYING_FROM_DEG < tilt_deg < LYING_TO_DEG:
        return Doubt.TURN_SIDEWAYS if abs(face_up) > FACE_UP else lie
    facing = 1.0 if position is Position.SUPINE else -1.0
    return None if facing * face_up > FACE_UP else lie


def _facing(sight: Sight, view: View, position: Position) -> Doubt | None:
    turned_deg = abs(sight.turned_from_deg(view))
    breadth = sight.breadth
    limit_deg = MAX_LYING_TURN_DEG if position.lying else MAX_TURN_DEG
    match view:
        case View.FRONT:
            if position is Position.DOORWAY:
                limit_deg = MAX_DOORWAY_TURN_DEG
            if breadth < -0.1:
                return Doubt.TURN_AROUND
            if turned_deg > limit_deg or breadth < MIN_FRONT_BREADTH:
                return Doubt.TURN_TO_FACE
        case View.SIDE:
            if turned_deg > WRONG_SIDE_DEG:
                return Doubt.WRONG_SIDE
            if position.lying and abs(sight.above_deg) > MAX_TURN_DEG:
                return Doubt.TURN_SIDEWAYS
            if turned_deg > limit_deg or abs(breadth) > MAX_SIDE_BREADTH:
                return Doubt.TURN_SIDEWAYS
        case View.BACK:
            if breadth > -MIN_FRONT_BREADTH or turned_deg > limit_deg:
                return Doubt.TURN_AROUND
        case View.FOOT:
            if sight.scale_px < MIN_FOOT_SCALE_PX:
                return Doubt.TOO_FAR
            if sight.trunk_px < MIN_FOOT_TRUNK_PX:
                return Doubt.RAISE_CAMERA
            if sight.knees_above_shoulders:
                return Doubt.LEGS_IN_THE_WAY
            if abs(breadth) < MIN_FRONT_BREADTH or turned_deg > limit_deg:
                return Doubt.FEET_TO_CAMERA
    return None


def framing(sight: Sight) -> Doubt | None:
    """Whether the measured shoulder and hip are in the picture and believed."""
    shoulder, _, _, hip, _ = sight.near.visibility
    if outside(sight, sight.near.shoulder_px) or shoulder < MIN_VISIBILITY:
        return Doubt.SHOULDERS_OUT_OF_VIEW
    if outside(sight, sight.near.hip_px) or hip < MIN_VISIBILITY:
        return Doubt.HIPS_OUT_OF_VIEW
    return None


def _arm_seen(sight: Sight, movement: Movement, view: View) -> Doubt | None:
    _, elbow, wrist, _, _ = sight.near.visibility
    least = MIN_END_ON_VISIBILITY if view is View.FOOT else MIN_VISIBILITY
    least_wrist = MIN_HIDDEN_VISIBILITY if movement is Movement.HAND_BEHIND_BACK else least
    joints = sight.near.elbow_px, sight.near.wrist_px
    cut = any(outside(sight, px, HALF_WRIST * sight.scale_px) for px in joints)
    if cut or elbow < least or wrist < least_wrist:
        return Doubt.ARM_OUT_OF_VIEW
    return None


def _arm(sight: Sight, movement: Movement, view: View) -> Doubt | None:
    match movement:
        case Movement.EXTERNAL_ROTATION_0:
            return _rotating_at_side(sight, view)
        case Movement.EXTERNAL_ROTATION_90:
            if sight.upper_arm_share > MAX_END_ON_UPPER_ARM:
                return Doubt.OTHER_MOVEMENT
            return Doubt.BEND_ELBOW if sight.forearm_share < MIN_ACROSS_FOREARM else None
        case Movement.HORIZONTAL_ADDUCTION:
            low_deg, high_deg = LEVEL_DEG
            level = low_deg - 10.0 < sight.near_elevation_deg < high_deg
            return None if level else Doubt.OTHER_MOVEMENT
        case Movement.HAND_BEHIND_BACK:
            return None if sight.near_elevation_deg < 75.0 else Doubt.OTHER_MOVEMENT
        case _:
            return _straight(sight, movement)


def _rotating_at_side(sight: Sight, view: View) -> Doubt | None:
    end_on = view is View.FOOT
    least_deg = MIN_END_ON_BEND_DEG if end_on else MIN_ROTATION_BEND_DEG
    most_deg = MAX_LYING_ROTATION_ELEVATION_DEG if end_on else MAX_ROTATION_ELEVATION_DEG
    if sight.elbow_flexion_deg < least_deg:
        return Doubt.BEND_ELBOW
    return Doubt.OTHER_MOVEMENT if sight.near_elevation_deg > most_deg else None


def _straight(sight: Sight, movement: Movement) -> Doubt | None:
    if sight.elbow_flexion_deg > MAX_STRAIGHT_BEND_DEG:
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
