"""True shoulder angles from exact joint centres.

Frame of the thorax (after Wu et al. 2005, J Biomech 38:981-992, with joint centres in the place
of the bony landmarks):

    Yt = unit(Ms - Mh)         Ms, Mh: midpoints of the shoulder and of the hip joint centres
    Xt = unit(Yt x right)      right: from the left to the right shoulder joint centre
    Zt = Xt x Yt               X forward, Y up, Z right: right-handed

Ms and ``right`` are taken with the shoulder girdle as it is at rest, carried along by the upper
trunk: a shrug or a raised arm moves the joint centre S, and does not tilt the trunk.

With s = +1 for the right arm and -1 for the left, Zlat = s Zt, U = unit(E - S), F = unit(W - E):

    flexion               atan2(U.Xt, -U.Yt)              forward positive, 0 hanging
    extension             -flexion                        backward positive
    abduction             atan2(U.Zlat, -U.Yt)            +360 where it went past the vertical
    external rotation     atan2(F.b, F.a)                 0 forearm forward, external positive
                          a = unit(Xt - (Xt.U) U), b = s (U x a)
    horizontal adduction  atan2(U.Xt, U.Zlat)             0 out to the side, across positive
    elevation             atan2(|U x Yt|, -U.Yt)          0 hanging, 180 overhead
    plane of elevation    atan2(U.Xt, U.Zlat)             0 abduction, 90 flexion
    elbow flexion         acos(U.F)                       0 straight

The hand behind the back has no angle but the height of the wrist W along the line from C7 to the
mid-point P of the posterior superior iliac spines (PSIS), both on the skin of the back:

    reach ratio           (W - C7).d / |P - C7|           d = unit(P - C7); 0 at C7, 1 at the PSIS

Everything is in the frame and unit of the joint centres given; angles are degrees.
"""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

from tests.bench.skeleton import Array, Posed, unit

MOVEMENTS = (
    "flexion",
    "extension",
    "abduction",
    "external-rotation-0",
    "external-rotation-90",
    "horizontal-adduction",
)
"""Movements that have an angle."""

BEHIND_BACK = "hand-behind-back"


@dataclass(frozen=True, slots=True, eq=False)
class Joints:
    """Joint centres of one frame, metres, each row left then right, in any right-handed frame.

    ``thorax_m`` (2, 3) are the shoulder joint centres as the upper trunk alone would carry them.
    ``back_m`` (2, 3) are C7 and the mid-point of the PSIS on the skin.
    """

    shoulders_m: Array = field(repr=False)
    elbows_m: Array = field(repr=False)
    wrists_m: Array = field(repr=False)
    hips_m: Array = field(repr=False)
    thorax_m: Array = field(repr=False)
    back_m: Array = field(default_factory=lambda: np.full((2, 3), np.nan), repr=False)

    @classmethod
    def of(cls, posed: Posed) -> Joints:
        """Read the joint centres off a posed rig."""

        def both(bone: str) -> Array:
            return np.stack([posed.head(f"{bone}.L"), posed.head(f"{bone}.R")])

        rest = [posed.rig.head(f"upperarm01.{side}") for side in "LR"]
        return cls(
            both("upperarm01"),
            both("lowerarm01"),
            both("wrist"),
            both("upperleg01"),
            np.stack([posed.carried("spine01", point) for point in rest]),
            np.stack([posed.mark("c7"), posed.mark("psis")]),
        )

    def stacked(self) -> Array:
        """Points (12, 3): shoulders, elbows, wrists, hips, thorax, left then right; C7, PSIS."""
        pairs = (self.shoulders_m, self.elbows_m, self.wrists_m, self.hips_m, self.thorax_m)
        return np.concatenate([*pairs, self.back_m])


def thorax_axes(joints: Joints) -> Array:
    """Give the thorax axes (3, 3) as columns Xt forward, Yt up, Zt right."""
    up = unit(joints.thorax_m.mean(axis=0) - joints.hips_m.mean(axis=0))
    forward = unit(np.cross(up, joints.thorax_m[1] - joints.thorax_m[0]))
    return np.stack([forward, up, np.cross(forward, up)], axis=1)


def angle_deg(movement: str, side: str, joints: Joints) -> float:
    """Give the true angle of a movement, degrees, by the module's definitions."""
    u, f, s = _arm(side, joints)
    xt, yt, zt = thorax_axes(joints).T
    if movement == "flexion":
        return _past_vertical(np.arctan2(u @ xt, -u @ yt))
    if movement == "extension":
        return -float(np.degrees(np.arctan2(u @ xt, -u @ yt)))
    if movement == "abduction":
        return _past_vertical(np.arctan2(s * (u @ zt), -u @ yt))
    if movement in ("external-rotation-0", "external-rotation-90"):
        a = unit(xt - (xt @ u) * u)
        return float(np.degrees(np.arctan2(f @ (s * np.cross(u, a)), f @ a)))
    if movement == "horizontal-adduction":
        return float(np.degrees(np.arctan2(u @ xt, s * (u @ zt))))
    raise ValueError(f"unknown movement {movement!r}")


def reach_ratio(side: str, joints: Joints) -> float:
    """Give the height of the wrist along the back: 0 at C7, 1 at the PSIS, above 1 below them."""
    c7_m, psis_m = joints.back_m
    line_m = psis_m - c7_m
    wrist_m = joints.wrists_m[{"left": 0, "right": 1}[side]]
    return float((wrist_m - c7_m) @ line_m / (line_m @ line_m))


def elevation_deg(side: str, joints: Joints) -> tuple[float, float]:
    """Give elevation and plane of elevation, degrees."""
    u, _, s = _arm(side, joints)
    xt, yt, zt = thorax_axes(joints).T
    elevation = np.arctan2(np.linalg.norm(np.cross(u, yt)), -u @ yt)
    return float(np.degrees(elevation)), float(np.degrees(np.arctan2(u @ xt, s * (u @ zt))))


def elbow_flexion_deg(side: str, joints: Joints) -> float:
    """Give the bend of the elbow, degrees, 0 straight."""
    u, f, _ = _arm(side, joints)
    return float(np.degrees(np.arccos(np.clip(u @ f, -1.0, 1.0))))


def _arm(side: str, joints: Joints) -> tuple[Array, Array, int]:
    row = {"left": 0, "right": 1}[side]
    u = unit(joints.elbows_m[row] - joints.shoulders_m[row])
    return u, unit(joints.wrists_m[row] - joints.elbows_m[row]), 1 if side == "right" else -1


def _past_vertical(angle_rad: float) -> float:
    """Keep an arm that has gone over the top above 180 instead of jumping to -180."""
    value = float(np.degrees(angle_rad))
    return value + 360.0 if value < -90.0 else value
