"""What each angle means: closed forms on joint centres.

Frame of the trunk, after Wu et al. 2005 (J Biomech 38:981-992), from the centres that a pose
holds: Y up along the trunk, X forward, Z to the person's right. ``Zlat`` is Z turned to point
out of the measured shoulder (a left side is mirrored in the sagittal plane). ``U`` is the unit
vector shoulder to elbow, ``F`` elbow to wrist. All angles are humerothoracic: the shoulder
blade's share is included.

=================== ============================== ================================
quantity            formula                        zero and sign
=================== ============================== ================================
flexion             atan2(U.X, -U.Y)               0 hanging, forward positive
extension           atan2(-U.X, -U.Y)              0 hanging, backward positive
abduction           atan2(U.Zlat, -U.Y)            0 hanging, out to the side positive
external rotation   a = unit(X - (X.U)U),          0 forearm straight forward,
                    b = s (U x a), s = +1 right,   outward positive
                    atan2(F.b, F.a)
elbow flexion       acos(U.F)                      0 straight
=================== ============================== ================================

Flexion and abduction go on past the vertical (a reading of -170 is given as 190). External
rotation is read from the forearm and not from Y-X-Y Euler angles, which are singular with the
arm at the side.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from coach.domain.movement import Movement, Side

Vector = NDArray[np.float64]

WRAP_BELOW_DEG = -100.0
"""Elevation below this is an arm past the vertical: nobody extends or adducts so far."""
_NEXT, _AFTER_NEXT = np.array([1, 2, 0]), np.array([2, 0, 1])


def unit(v: Vector) -> Vector:
    """Scale vectors (..., 3) or (..., 2) to length one; NaN where the length is zero."""
    with np.errstate(invalid="ignore", divide="ignore"):
        scaled: Vector = v / np.sqrt(np.add.reduce(v * v, axis=-1, keepdims=True))
    return scaled


def dot(a: Vector, b: Vector) -> Vector:
    """Scalar product along the last axis."""
    product: Vector = np.einsum("...i,...i->...", a, b)
    return product


def cross(a: Vector, b: Vector) -> Vector:
    """Vector product along the last axis, (..., 3); for single vectors far quicker than NumPy's."""
    product: Vector = a[..., _NEXT] * b[..., _AFTER_NEXT] - a[..., _AFTER_NEXT] * b[..., _NEXT]
    return product


def trunk_axes(
    left_shoulder: Vector, right_shoulder: Vector, left_hip: Vector, right_hip: Vector
) -> tuple[Vector, Vector, Vector]:
    """Axes X forward, Y up, Z right of the trunk, unit vectors (..., 3), right-handed.

    Y runs from the middle of the hips to the middle of the shoulders; X is normal to Y and to the
    mean direction of the shoulder line and the hip line.
    """
    y = unit((left_shoulder + right_shoulder - left_hip - right_hip) / 2)
    across = unit(right_shoulder - left_shoulder) + unit(right_hip - left_hip)
    x = unit(cross(y, across))
    return x, y, cross(x, y)


def elevation_deg(upper_arm: Vector, toward: Vector, up: Vector) -> Vector:
    """Signed angle of the upper arm from hanging, in the plane of ``toward`` and ``up``.

    Degrees in [-100, 260); all arguments unit vectors (..., 3).
    """
    return past_vertical(np.degrees(np.arctan2(dot(upper_arm, toward), -dot(upper_arm, up))))


def past_vertical(angle_deg: Vector) -> Vector:
    """Let an elevation in [-180, 180] go on past overhead: -170 becomes 190."""
    wrapped: Vector = np.where(angle_deg < WRAP_BELOW_DEG, angle_deg + 360.0, angle_deg)
    return wrapped


def external_rotation_deg(upper_arm: Vector, forearm: Vector, x: Vector, side: Side) -> Vector:
    """Rotation of the humerus shown by the bent forearm, degrees, outward positive.

    ``upper_arm``, ``forearm`` and the trunk's forward axis ``x`` are unit vectors (..., 3).
    """
    a = unit(x - dot(x, upper_arm)[..., None] * upper_arm)
    b = side.sign * cross(upper_arm, a)
    angle: Vector = np.degrees(np.arctan2(dot(forearm, b), dot(forearm, a)))
    return angle


def horizontal_adduction_deg(upper_arm: Vector, x: Vector, out: Vector) -> Vector:
    """Angle of a level upper arm in the transverse plane: 0 straight out, forward positive.

    ``out`` is the trunk's axis out of the measured shoulder; all unit vectors (..., 3).
    """
    angle: Vector = np.degrees(np.arctan2(dot(upper_arm, x), dot(upper_arm, out)))
    return angle


def elbow_flexion_deg(upper_arm: Vector, forearm: Vector) -> Vector:
    """Angle between the upper arm and the forearm, 0 straight, degrees."""
    angle: Vector = np.degrees(np.arccos(np.clip(dot(upper_arm, forearm), -1.0, 1.0)))
    return angle


def movement_angle_deg(
    movement: Movement,
    side: Side,
    axes: tuple[Vector, Vector, Vector],
    upper_arm: Vector,
    forearm: Vector,
) -> Vector:
    """The angle that ``movement`` names, degrees, positive in the named direction."""
    x, y, z = axes
    match movement:
        case Movement.FLEXION:
            return elevation_deg(upper_arm, x, y)
        case Movement.EXTENSION:
            return -elevation_deg(upper_arm, x, y)
        case Movement.ABDUCTION:
            return elevation_deg(upper_arm, side.sign * z, y)
        case Movement.HORIZONTAL_ADDUCTION:
            return horizontal_adduction_deg(upper_arm, x, side.sign * z)
        case Movement.EXTERNAL_ROTATION_0 | Movement.EXTERNAL_ROTATION_90:
            return external_rotation_deg(upper_arm, forearm, x, side)
        case Movement.HAND_BEHIND_BACK:
            raise ValueError("the hand behind the back is read as a ratio, not as an angle")
