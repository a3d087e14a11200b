"""Arms that are told where the hand goes: behind the back, to the other elbow, to the other wrist.

All points in world axes, metres. Two bones reach a target by the law of cosines; the elbow lies on
a circle about the line from shoulder to wrist, on the side of a pole vector.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from tests.bench.back import Back
from tests.bench.skeleton import Array, Posed, unit

STRAIGHTEST = 0.985
"""Share of the arm's length that a hanging arm spans: nobody locks the elbow."""


@dataclass(frozen=True, slots=True)
class Reach:
    """A hand behind the back: what goes with the ratio that is asked for.

    ``aside_m`` to the own side of the mid-line and ``behind_m`` behind the skin once it is there;
    ``back_share`` and ``down_share`` are how far the elbow points backward and downward for one
    outward; ``out_deg`` is how far from the trunk the arm hangs.
    """

    ratio: float
    aside_m: float = 0.03
    behind_m: float = 0.045
    back_share: float = 0.35
    down_share: float = 0.6
    out_deg: float = 9.0


def bend(
    shoulder_m: Array, target_m: Array, upper_m: float, fore_m: float, pole: Array
) -> tuple[Array, Array]:
    """Give directions (3,) of upper arm and forearm that take the wrist to a target (3,).

    A target out of reach is met in direction only.
    """
    way = unit(target_m - shoulder_m)
    shortest_m, longest_m = abs(upper_m - fore_m) + 1e-3, 0.9995 * (upper_m + fore_m)
    span_m = float(np.clip(np.linalg.norm(target_m - shoulder_m), shortest_m, longest_m))
    along_m = (upper_m**2 - fore_m**2 + span_m**2) / (2 * span_m)
    off_m = np.sqrt(max(upper_m**2 - along_m**2, 0.0))
    elbow_m = along_m * way + off_m * unit(pole - (pole @ way) * way)
    return unit(elbow_m), unit(span_m * way - elbow_m)


def behind_back(
    trunk: Posed, side: str, reach: Reach, back: Back, axes: Array, arm_m: float
) -> tuple[Array, Array]:
    """Give the wrist's target (3,) and the elbow's pole vector (3,).

    The height along the line from C7 to the PSIS is met exactly, but never lower than the arm
    hangs; from hanging the hand goes round the hip on an ellipse and arrives behind at ratio 1.
    """
    s = 1 if side == "right" else -1
    c7_m, psis_m = trunk.mark("c7"), trunk.mark("psis")
    length_m = float(np.linalg.norm(psis_m - c7_m))
    down = unit(psis_m - c7_m)
    right = unit(axes[:, 2] - (axes[:, 2] @ down) * down)
    backward = np.cross(down, right)
    hanging = unit(-axes[:, 1] + s * np.tan(np.radians(reach.out_deg)) * axes[:, 2])
    shoulder_m = trunk.head(f"upperarm01.{side[0].upper()}")
    low_m = shoulder_m + STRAIGHTEST * arm_m * hanging - c7_m
    lowest = float(low_m @ down) / length_m
    hip_m, front_m = s * float(low_m @ right), float(low_m @ backward)
    ratio = min(reach.ratio, lowest)
    part = float(np.clip((lowest - ratio) / max(lowest - 1.0, 0.05), 0.0, 1.0))
    aside_m = reach.aside_m + (hip_m - reach.aside_m) * float(np.cos(np.pi / 2 * part))
    there_m = _skin_m(back, ratio, reach.aside_m) + reach.behind_m
    depth_m = front_m + (there_m - front_m) * float(np.sin(np.pi / 2 * part))
    here_m = _skin_m(back, ratio, aside_m) + reach.behind_m
    if np.isfinite(here_m):
        # Round the hip and not through it.
        depth_m += max(here_m - depth_m, 0.0) * float(np.clip(part / 0.4, 0.0, 1.0))
    target_m = c7_m + ratio * length_m * down + s * aside_m * right + depth_m * backward
    hang_pole = backward + 0.4 * s * right
    away = s * right + reach.back_share * backward + reach.down_share * down
    pole = (1 - part) * hang_pole + part * away
    return np.asarray(target_m), np.asarray(pole)


def _skin_m(back: Back, ratio: float, aside_m: float) -> float:
    """How far the skin lies behind the line from C7 to the PSIS at rest."""
    on_line_m = back.c7_m + ratio * (back.psis_m - back.c7_m)
    return back.skin_behind_m(float(on_line_m[2]), aside_m) - float(on_line_m[1])


def to_elbow(
    posed: Posed, side: str, share: float, axes: Array, helper: str
) -> tuple[Array, Array]:
    """Give target (3,) and pole (3,) of a helping hand on its way to the elbow of ``side``.

    ``share`` runs from 0, where the helping hand was in ``posed``, to 1 at the elbow.
    """
    s = 1 if side == "right" else -1
    tag, other = side[0].upper(), helper[0].upper()
    forward, up, right = axes.T
    shoulder_m, elbow_m = posed.head(f"upperarm01.{tag}"), posed.head(f"lowerarm01.{tag}")
    grip_m = shoulder_m + 0.92 * (elbow_m - shoulder_m)
    there_m = grip_m + 0.075 * forward - 0.03 * up - 0.035 * s * right
    from_m = posed.head(f"wrist.{other}")
    bulge_m = 0.5 * share * (1 - share) * forward
    pole = (1 - share) * -forward - share * up - 0.5 * s * right
    return (1 - share) * from_m + share * there_m + bulge_m, pole


def to_wrist(
    posed: Posed, side: str, share: float, apart: float, axes: Array
) -> tuple[Array, Array]:
    """Give target (3,) and pole (3,) of a hand on its way to the wrist of ``side``, or beside it.

    At ``share`` 1 it is there, ``apart`` of the shoulders' breadth toward its own side: on one
    stick with it, or holding it.
    """
    s, tag, other = (1, "R", "L") if side == "right" else (-1, "L", "R")
    forward, up, right = axes.T
    across_m = posed.head(f"upperarm01.{other}") - posed.head(f"upperarm01.{tag}")
    there_m = posed.head(f"wrist.{tag}") + apart * across_m
    from_m = posed.head(f"wrist.{other}")
    bulge_m = 0.5 * share * (1 - share) * forward
    return (1 - share) * from_m + share * there_m + bulge_m, -forward - up - 0.5 * s * right
