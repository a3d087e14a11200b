"""Pose a body by clinical coordinates of the arm against the thorax.

The arm's direction is asked for in the thorax frame of ``truth`` and met to rounding, except that
the axial turn of the upper arm is spread over its two bones, and the truth is read back from the
joint centres anyway. A hand behind the back and a helping hand are asked for by place. All angles
in degrees; a positive lean goes forward, a positive side lean away from the exercising arm, a
positive twist turns the exercising shoulder backward.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from tests.bench.back import Back
from tests.bench.body import Body
from tests.bench.reaching import Reach, behind_back, bend, to_elbow, to_wrist
from tests.bench.scene import LYING, Door
from tests.bench.skeleton import Array, Posed, Rig, pose, turn, unit
from tests.bench.truth import Joints, thorax_axes

SPINE = ("spine05", "spine04", "spine03", "spine02", "spine01")
SINK_M = 0.02
"""How far somebody lying sinks into what is below."""
X, Y, Z = np.eye(3)
LEFT, BACKWARD, UPWARD = np.eye(3)


@dataclass(frozen=True, slots=True)
class Arm:
    """One arm against the thorax: ``angle_deg`` of the movement, and what goes with it.

    ``away_deg`` is the angle out of the plane of movement: outward for flexion, extension and
    rotation, forward for abduction, upward for horizontal adduction. ``pronation_deg`` is 0 with
    the thumb forward on a hanging arm, positive towards the palm facing back. ``forward_deg``
    carries a rotating arm forward. A hand behind the back has a ``reach`` and no angle; ``helps``
    (0-1) is how far this hand has come to hold the other arm's elbow; ``joins`` to go with its
    wrist, ``apart`` of the shoulders' breadth beside it.
    """

    movement: str
    angle_deg: float
    away_deg: float = 9.0
    elbow_deg: float = 8.0
    axial_deg: float = 0.0
    pronation_deg: float = 10.0
    forward_deg: float = 0.0
    reach: Reach | None = None
    helps: float = 0.0
    joins: float = 0.0
    apart: float = 0.0


@dataclass(frozen=True, slots=True)
class Stance:
    """The whole person apart from the arms. ``rhythm`` scales how far the girdle goes along.

    ``support_m`` is the height of what a lying person lies on; ``hips_deg`` bends the hips of
    somebody supine (the feet stay on the support) or sitting (the feet stay on the floor), where
    ``shins_deg`` tilts the shins and ``feet_apart_deg`` spreads the thighs. At a ``door`` the
    person turns and the forearm does not.
    """

    yaw_deg: float = 0.0
    sway_deg: tuple[float, float] = (0.0, 0.0)
    lean_deg: float = 0.0
    side_lean_deg: float = 0.0
    twist_deg: float = 0.0
    hike_deg: float = 0.0
    other_hike_deg: float = 0.0
    head_deg: tuple[float, float] = (0.0, 0.0)
    feet_apart_deg: float = 0.0
    rhythm: float = 1.0
    position: str = "standing"
    support_m: float = 0.0
    hips_deg: float = 0.0
    shins_deg: float = 0.0
    door: Door | None = None


def stand(body: Body, side: str, arm: Arm, other: Arm, stance: Stance) -> Posed:
    """Pose the body with its soles on z = 0, near x = y = 0.

    Lying, the back or the front is on the support and the shoulders are over x = y = 0.
    """
    root_turn, root_m = _root(body, stance)
    posed = stand_rig(body.rig, side, arm, other, stance, root_turn, root_m, body.back)
    return posed if stance.door is None else against(posed, side, stance.door)


def against(posed: Posed, side: str, door: Door) -> Posed:
    """Turn and move the whole person so that the forearm keeps its place at a door's post.

    The middle of the forearm stays where it is beside somebody facing -y on the origin, and the
    forearm points ``aside_deg`` from -y.
    """
    s, tag = (1, "R") if side == "right" else (-1, "L")
    elbow_m, wrist_m = posed.head(f"lowerarm01.{tag}"), posed.head(f"wrist.{tag}")
    ahead = wrist_m - elbow_m
    now_deg = np.degrees(np.arctan2(-s * ahead[0], -ahead[1]))
    whole = turn(UPWARD, -s * (door.aside_deg - now_deg))
    beside_m = abs(posed.rig.head(f"upperarm01.{tag}")[0]) + 0.04
    place_m = turn(UPWARD, -s * door.aside_deg) @ np.array([-s * beside_m, -0.13, 0.0])
    shift_m = (place_m - whole @ (0.5 * (elbow_m + wrist_m))) * (1, 1, 0)
    return Posed(posed.rig, whole @ posed.turns, posed.heads_m @ whole.T + shift_m)


def stand_rig(
    rig: Rig,
    side: str,
    arm: Arm,
    other: Arm,
    stance: Stance,
    root_turn: Array,
    root_m: Array,
    back: Back | None = None,
) -> Posed:
    """Pose a rig with its root turned (3, 3) and put (3,) as told; a reach needs the back."""
    s = 1 if side == "right" else -1
    relative = _trunk(stance, s) | _legs(rig, stance)
    beyond_deg = {side: _beyond_deg(arm), _other(side): _beyond_deg(other)}
    hike_deg = {side: stance.hike_deg, _other(side): stance.other_hike_deg}
    for name in ("left", "right"):
        relative |= _girdle(name, stance.rhythm * beyond_deg[name], hike_deg[name])
    if arm.movement == "horizontal-adduction":
        relative |= _protracted(side, relative, arm.angle_deg)
    trunk = pose(rig, relative, {}, root_turn, root_m)
    axes = thorax_axes(Joints.of(trunk))
    absolute: dict[str, Array] = {}

    def posed() -> Posed:
        return pose(rig, relative, absolute, root_turn, root_m)

    def lead(name: str, each: Arm, target_m: Array, pole: Array) -> None:
        """Bring a wrist to its target; the axial turn is spread, so the first try is near it."""
        tag, aim_m = name[0].upper(), target_m
        shoulder_m = trunk.head(f"upperarm01.{tag}")
        for _ in range(3):
            u, f = bend(shoulder_m, aim_m, *_bones(rig, name), pole)
            bent = replace(each, elbow_deg=float(np.degrees(np.arccos(np.clip(u @ f, -1, 1)))))
            neutral = _least_turn(-axes[:, 1], u) @ axes[:, 2]
            absolute.update(_arm(rig, name, bent, (u, unit(np.cross(u, f)), neutral)))
            aim_m = aim_m + target_m - posed().head(f"wrist.{tag}")

    for name, each in ((side, arm), (_other(side), other)):
        if each.reach is None:
            u, e, neutral = (axes @ v for v in arm_direction(each, 1 if name == "right" else -1))
            absolute.update(_arm(rig, name, each, (u, e, neutral)))
    if arm.reach is not None:
        if back is None:
            raise ValueError("a hand behind the back needs the skin of the back")
        lead(side, arm, *behind_back(trunk, side, arm.reach, back, axes, sum(_bones(rig, side))))
    if other.helps > 0.0:
        lead(_other(side), other, *to_elbow(posed(), side, other.helps, axes, _other(side)))
    if other.joins > 0.0:
        lead(_other(side), other, *to_wrist(posed(), side, other.joins, other.apart, axes))
    return posed()


def arm_direction(arm: Arm, s: int) -> tuple[Array, Array, Array]:
    """Upper arm direction and elbow axis (upper arm x forearm), in thorax axes (Xt, Yt, Zt).

    The third is the elbow axis before any axial turn, which the skin is measured against.
    """
    out = s * Z
    if arm.movement in ("flexion", "extension"):
        sign = 1 if arm.movement == "flexion" else -1
        swing, tilt_to = turn(Z, sign * arm.angle_deg), out
    elif arm.movement == "abduction":
        swing, tilt_to = turn(-s * X, arm.angle_deg), X
    elif arm.movement == "external-rotation-0":
        swing, tilt_to = turn(Z, arm.forward_deg), out
    elif arm.movement == "external-rotation-90":
        swing, tilt_to = turn(-s * X, 90.0), X
    elif arm.movement == "horizontal-adduction":
        swing, tilt_to = turn(s * Y, arm.angle_deg) @ turn(-s * X, 90.0), Y
    else:
        raise ValueError(f"unknown movement {arm.movement!r}")
    straight = swing @ -Y
    # The plane's angle is kept exactly: the part out of the plane is added at right angles.
    u = unit(straight + np.tan(np.radians(arm.away_deg)) * tilt_to)
    tilt = turn(unit(np.cross(straight, tilt_to)), arm.away_deg)
    if arm.movement.startswith("external-rotation"):
        a = unit(X - (X @ u) * u)
        angle_rad = np.radians(arm.angle_deg)
        forearm = np.cos(angle_rad) * a + np.sin(angle_rad) * s * np.cross(u, a)
        return u, np.cross(u, forearm), tilt @ swing @ Z
    neutral = tilt @ swing @ Z
    return u, turn(u, s * arm.axial_deg) @ neutral, neutral


def _arm(rig: Rig, side: str, arm: Arm, directions: tuple[Array, Array, Array]) -> dict[str, Array]:
    """Turn an arm's bones: upper arm direction, elbow axis and neutral elbow axis in the world."""
    tag, s = side[0].upper(), 1 if side == "right" else -1
    shoulder, elbow, wrist = (rig.head(f"{b}.{tag}") for b in ("upperarm01", "lowerarm01", "wrist"))
    u0, f0 = unit(elbow - shoulder), unit(wrist - elbow)
    e0 = unit(np.cross(u0, f0))
    u, e, neutral = directions
    rest = np.stack([u0, e0, np.cross(u0, e0)])
    whole = np.stack([u, e, np.cross(u, e)], axis=1) @ rest
    # Half of the axial turn is left to the second bone: the skin of the shoulder twists less.
    axial_deg = _angle_about_deg(u, neutral, e)
    upper = turn(u, -0.6 * axial_deg) @ whole
    bent_deg = float(np.degrees(np.arccos(u0 @ f0)))
    lower = whole @ turn(e0, arm.elbow_deg - bent_deg)
    f, thumb = lower @ f0, lower @ _thumb_at_rest(rig, tag)
    wanted = np.cross(whole @ e0, f)
    now_deg = _angle_about_deg(f, wanted, thumb)
    roll_deg = (-s * arm.pronation_deg - now_deg + 180.0) % 360.0 - 180.0
    return {
        f"upperarm01.{tag}": upper,
        f"upperarm02.{tag}": turn(u, -0.1 * axial_deg) @ whole,
        f"lowerarm01.{tag}": turn(f, 0.15 * roll_deg) @ lower,
        f"lowerarm02.{tag}": turn(f, 0.6 * roll_deg) @ lower,
        f"wrist.{tag}": turn(f, roll_deg) @ lower,
    }


def _bones(rig: Rig, side: str) -> tuple[float, float]:
    """Lengths of upper arm and forearm, metres."""
    heads = (rig.head(f"{b}.{side[0].upper()}") for b in ("upperarm01", "lowerarm01", "wrist"))
    shoulder, elbow, wrist = heads
    return float(np.linalg.norm(elbow - shoulder)), float(np.linalg.norm(wrist - elbow))


def _least_turn(a: Array, b: Array) -> Array:
    """Give the smallest rotation (3, 3) that takes one unit vector to another."""
    axis = np.cross(a, b)
    sine = float(np.linalg.norm(axis))
    if sine < 1e-9:
        return np.eye(3)
    return turn(axis / sine, float(np.degrees(np.arctan2(sine, a @ b))))


def _angle_about_deg(axis: Array, a: Array, b: Array) -> float:
    a, b = a - (a @ axis) * axis, b - (b @ axis) * axis
    return float(np.degrees(np.arctan2(np.cross(a, b) @ axis, a @ b)))


def _thumb_at_rest(rig: Rig, tag: str) -> Array:
    return unit(rig.head(f"finger2-1.{tag}") - rig.head(f"finger5-1.{tag}"))


def _beyond_deg(arm: Arm) -> float:
    """Elevation beyond the first 30 degrees, in which the girdle hardly takes part."""
    if arm.reach is not None:
        return 0.0
    u = arm_direction(arm, 1)[0]
    return max(float(np.degrees(np.arccos(np.clip(-u[1], -1.0, 1.0)))) - 30.0, 0.0)


def _girdle(side: str, beyond_deg: float, hike_deg: float) -> dict[str, Array]:
    """Raise collar bone and shoulder blade with the arm: the joint centre goes up by 4-5 cm."""
    tag, s = side[0].upper(), 1 if side == "right" else -1
    collar = turn(s * BACKWARD, 0.10 * beyond_deg + hike_deg)
    back = turn(-s * UPWARD, 0.06 * beyond_deg)
    return {
        f"clavicle.{tag}": back @ collar,
        f"shoulder01.{tag}": turn(s * BACKWARD, 0.22 * beyond_deg + 0.4 * hike_deg),
    }


def _protracted(side: str, girdle: dict[str, Array], across_deg: float) -> dict[str, Array]:
    """Carry the collar bone forward with an arm that goes across: a fifth of the way."""
    tag, s = side[0].upper(), 1 if side == "right" else -1
    forward = turn(s * UPWARD, 0.2 * max(across_deg - 20.0, 0.0))
    return {f"clavicle.{tag}": forward @ girdle[f"clavicle.{tag}"]}


def _trunk(stance: Stance, s: int) -> dict[str, Array]:
    """Spread the trunk's turns over the spine; axes as at rest (left, back, up)."""
    n = len(SPINE)
    each = (
        turn(UPWARD, -s * stance.twist_deg / n)
        @ turn(BACKWARD, s * stance.side_lean_deg / n)
        @ turn(LEFT, stance.lean_deg / n)
    )
    nod_deg, look_deg = stance.head_deg
    neck = turn(UPWARD, look_deg / 3) @ turn(LEFT, (nod_deg - 0.6 * stance.lean_deg) / 3)
    return dict.fromkeys(SPINE, each) | dict.fromkeys(("neck01", "neck02", "head"), neck)


def _legs(rig: Rig, stance: Stance) -> dict[str, Array]:
    out: dict[str, Array] = {}
    for tag, s in (("L", 1), ("R", -1)):
        apart = turn(BACKWARD, s * (3.5 - stance.feet_apart_deg))
        out[f"upperleg01.{tag}"] = apart
        out[f"foot.{tag}"] = turn(BACKWARD, -s * (3.5 - stance.feet_apart_deg))
        if stance.position == "supine" and stance.hips_deg > 0.0:
            knee_deg = _knee_to_support_deg(rig, tag, stance.hips_deg)
            out[f"upperleg01.{tag}"] = turn(LEFT, -stance.hips_deg) @ apart
            out[f"lowerleg01.{tag}"] = turn(LEFT, knee_deg)
            # The soles are flat on the support: a quarter turn from the trunk.
            out[f"foot.{tag}"] = turn(LEFT, 90.0 + stance.hips_deg - knee_deg)
        elif stance.position == "sitting":
            spread = turn(UPWARD, s * stance.feet_apart_deg)
            straight = turn(BACKWARD, s * 3.5)
            out[f"upperleg01.{tag}"] = spread @ turn(LEFT, -stance.hips_deg) @ straight
            out[f"lowerleg01.{tag}"] = turn(LEFT, stance.hips_deg + stance.shins_deg)
            out[f"foot.{tag}"] = turn(LEFT, -stance.shins_deg)
        elif stance.position in LYING:
            # Feet fall outwards on the back, and point away face down.
            point_deg = 28.0 if stance.position == "supine" else 58.0
            out[f"foot.{tag}"] = turn(UPWARD, s * 16.0) @ turn(LEFT, point_deg)
    return out


def _knee_to_support_deg(rig: Rig, tag: str, hips_deg: float) -> float:
    """Bend of the knee that puts the ankle of somebody supine near the support."""
    hip, knee, ankle = (rig.head(f"{b}.{tag}") for b in ("upperleg01", "lowerleg01", "foot"))
    thigh_m, shin_m = np.linalg.norm(knee - hip), np.linalg.norm(ankle - knee)
    # The hip joint lies about as high above the support as the ankle of a foot on its sole.
    drop = np.clip(thigh_m * np.sin(np.radians(hips_deg)) / shin_m, -1.0, 1.0)
    return hips_deg + float(np.degrees(np.arcsin(drop)))


def _root(body: Body, stance: Stance) -> tuple[Array, Array]:
    root_m = body.rig.head("root")
    if stance.position in LYING:
        y_m = body.vertices_m[body.share("spine") > 0.5, 1]
        if stance.position == "supine":
            over_m = float(y_m.max()) - root_m[1]
            lie = turn(UPWARD, stance.yaw_deg) @ turn(LEFT, -90.0)
        else:
            over_m = root_m[1] - float(y_m.min())
            lie = turn(UPWARD, 180.0 + stance.yaw_deg) @ turn(LEFT, 90.0)
        shoulders = 0.5 * (body.rig.head("upperarm01.L") + body.rig.head("upperarm01.R")) - root_m
        return lie, -(lie @ shoulders) * (1, 1, 0) + (0.0, 0.0, stance.support_m + over_m - SINK_M)
    if stance.position == "sitting":
        seated = pose(body.rig, _legs(body.rig, stance), {}, np.eye(3), np.zeros(3))
        ankle_m = body.rig.head("foot.L")[2] - body.sole_m
        lowest_m = min(seated.head(f"foot.{tag}")[2] for tag in "LR")
        return turn(UPWARD, stance.yaw_deg), np.array([0.0, 0.0, ankle_m - lowest_m])
    sway = turn(LEFT, stance.sway_deg[0]) @ turn(BACKWARD, stance.sway_deg[1])
    ankle_to_root = np.array([0.0, root_m[1], root_m[2] - body.sole_m])
    whole = turn(UPWARD, stance.yaw_deg) @ sway
    return whole, np.asarray(whole @ ankle_to_root)


def _other(side: str) -> str:
    return "left" if side == "right" else "right"
