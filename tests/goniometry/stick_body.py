"""A body of straight sticks seen by a pinhole camera: poses whose true values are known.

The room's axes are those of the trunk at rest: X forward, Y up along the trunk, Z to the person's
right. Up in the room is Y for somebody upright, X lying on the back, -X lying face down. The
marks that stand for the pose model's points lie beside the joint centres by ``Marks``.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace

import numpy as np
from numpy.typing import NDArray
from scipy.spatial.transform import Rotation

from coach.domain.movement import Movement, Position, Side, View
from coach.domain.pose import Landmark, Pose

Array = NDArray[np.float64]

X, Y, Z = np.eye(3)


@dataclass(frozen=True, slots=True)
class Build:
    """Lengths between joint centres, metres; the shoulders' and the hips' are half breadths.

    Trunk, upper arm and forearm of de Leva 1996 (J Biomech 29:1223-1230), men: 0.515, 0.282,
    0.269; half breadths 0.185 and 0.09 (common practice). All from memory.
    """

    trunk: float = 0.515
    shoulder: float = 0.185
    hip: float = 0.09
    upper_arm: float = 0.282
    forearm: float = 0.269

    @classmethod
    def drawn(cls, rng: np.random.Generator, spread: float = 0.05) -> Build:
        """Another person: every length differs by ``spread``, one SD, at most twice that."""
        usual = cls()
        by = np.exp(np.clip(rng.normal(0.0, spread, 5), -2 * spread, 2 * spread))
        return cls(
            usual.trunk * by[0],
            usual.shoulder * by[1],
            usual.hip * by[2],
            usual.upper_arm * by[3],
            usual.forearm * by[4],
        )


MAN = Build()
WOMAN = Build(0.498, 0.165, 0.088, 0.275, 0.264)
"""De Leva 1996, women, from memory; half breadths as above."""


@dataclass(frozen=True, slots=True, eq=False)
class Marks:
    """How far marks lie from joint centres, shares of the trunk's length.

    ``near`` and ``other`` (4, 3): shoulder, hip, elbow, wrist of the measured and of the other
    side; out, up, forward in the trunk's axes. ``cap``: the shoulders' marks lie so far beyond the
    joint on the upper arm's own line: above it while the arm hangs, below it overhead.
    ``end_on``: the measured elbow's mark slides so far along the forearm where the upper arm
    points at the camera.
    """

    near: Array = field(default_factory=lambda: np.zeros((4, 3)))
    other: Array = field(default_factory=lambda: np.zeros((4, 3)))
    cap: float = 0.0
    end_on: float = 0.0

    @classmethod
    def drawn(cls, rng: np.random.Generator, spread: float = 0.012) -> Marks:
        """Marks as a model of pictures puts them, 1 to 3 cm from the joints, as people differ.

        On the caps of the shoulders (4 to 5 % of the trunk beyond the joint, 3 % inward), on the
        groins (3 % inward, 6 % forward), on the inner sides of elbow and wrist (common practice).
        ``spread`` is the SD of every component.
        """
        usual = np.array(
            [[-0.03, 0.0, 0.0], [-0.03, 0.0, 0.06], [-0.015, 0.02, 0.0], [-0.02, -0.01, 0.0]]
        )
        by = np.clip(rng.normal(0.0, spread, (2, 4, 3)), -2 * spread, 2 * spread)
        return cls(usual + by[0], usual + by[1], rng.uniform(0.04, 0.05), 0.1)


AT_JOINTS = Marks()


@dataclass(frozen=True, slots=True)
class Seen:
    """From where the body is seen.

    ``turned_deg`` is how far the body is turned from its view, counterclockwise seen from above:
    facing the camera, toward picture right. The camera looks at a point ``lift_m`` along the
    trunk from its middle, moved by ``aside_m`` to picture left, from ``above_deg`` over the
    level (None: 30 from the foot end, else level), rolled clockwise by ``roll_deg``.
    ``depth_shown`` is the share of depth that the metric points keep.
    """

    view: View
    distance_m: float = 2.4
    turned_deg: float = 0.0
    aside_m: float = 0.0
    size_px: tuple[int, int] = (640, 480)
    field_of_view_deg: float = 63.0
    above_deg: float | None = None
    roll_deg: float = 0.0
    lift_m: float = 0.0
    depth_shown: float = 1.0


@dataclass(frozen=True, slots=True)
class Way:
    """How the body does it.

    The trunk leans to the person's right and forward and turns to the person's left. The
    shoulder rises by ``hike`` of the trunk. ``out_deg`` takes the upper arm out of the plane of
    movement (outward, in abduction forward, of a level arm upward), ``swung_deg`` a rotating one
    forward. ``bend_deg`` is the elbow's flexion (None: as usual). The other arm
    hangs. ``knees_up``: the feet drawn toward the trunk.
    """

    lean_right_deg: float = 0.0
    lean_forward_deg: float = 0.0
    turn_left_deg: float = 0.0
    hike: float = 0.0
    out_deg: float = 8.0
    swung_deg: float = 0.0
    bend_deg: float | None = None
    knees_up: bool = False


NATURAL = Way()
BEND_DEG = {Movement.HORIZONTAL_ADDUCTION: 35.0}
"""Of an arm that comes across the body."""

C7_UP, PSIS_UP, BEHIND = 0.22, 0.17, 0.21
"""Shares of the trunk: the seventh cervical spine above the shoulders' middle (de Leva 1996: 0.17
in men, 0.23 in women, from memory), the posterior superior iliac spines above the hips' (8 to 9
cm, common practice), a wrist behind the plane of the joints (half a trunk and half a wrist)."""
RISE_PER_DEG, RISES_FROM_DEG = 0.0005, 30.0
"""Rise of the shoulder's centre with the arm's elevation, shares of the trunk (common practice: two
to three centimetres overhead)."""


def arm(movement: Movement, value: float, side: Side, way: Way, build: Build) -> Array:
    """Upper arm and forearm directions (2, 3) in the trunk's axes.

    A hanging arm with its elbow bent forward is turned about its own length and then swung. Each
    swing leaves the plane of the next one's angle exact.
    """
    s = side.sign
    usual_deg = 90.0 if movement.rotating else BEND_DEG.get(movement, 8.0)
    bend_deg = usual_deg if way.bend_deg is None else way.bend_deg
    hanging = np.stack([-Y, Rotation.from_euler("Z", bend_deg, degrees=True).apply(-Y)])
    match movement:
        case Movement.FLEXION:
            swings = ("XZ", [-s * way.out_deg, value])
        case Movement.EXTENSION:
            swings = ("XZ", [-s * way.out_deg, -value])
        case Movement.ABDUCTION:
            swings = ("ZX", [way.out_deg, -s * value])
        case Movement.HORIZONTAL_ADDUCTION:
            swings = ("XY", [-s * (90.0 + way.out_deg), s * value])
        case Movement.EXTERNAL_ROTATION_0:
            swings = ("YZX", [-s * value, way.swung_deg, -s * way.out_deg])
        case Movement.EXTERNAL_ROTATION_90:
            swings = ("YZX", [-s * value, way.swung_deg, -s * 90.0])
        case Movement.HAND_BEHIND_BACK:
            return behind_back(value, s, build)
    letters, angles_deg = swings
    return Rotation.from_euler(letters.lower(), angles_deg, degrees=True).apply(hanging)


def behind_back(ratio: float, s: int, build: Build) -> Array:
    """The arm whose wrist is at a height behind the back, elbow out and a little backward."""
    c7, psis = 1.0 + C7_UP, PSIS_UP
    wrist = np.array([-BEHIND, c7 - ratio * (c7 - psis), 0.1 * s]) * build.trunk
    reach = wrist - np.array([0.0, build.trunk, s * build.shoulder])
    far = np.linalg.norm(reach)
    along = (far**2 + build.upper_arm**2 - build.forearm**2) / (2 * far)
    toward = reach / far
    aside = np.array([-0.5, -0.3, s * 1.0])
    aside -= (aside @ toward) * toward
    height = np.sqrt(build.upper_arm**2 - along**2)
    elbow = along * toward + height * aside / np.linalg.norm(aside)
    return np.stack([elbow / build.upper_arm, (reach - elbow) / build.forearm])


def joints(
    movement: Movement, value: float, side: Side, position: Position, way: Way, build: Build
) -> tuple[dict[str, Array], Rotation]:
    """Joint centres, metres in the room's axes from the middle of the hips; the trunk's turn."""
    trunk = Rotation.from_euler(
        "ZXY", [-way.lean_forward_deg, way.lean_right_deg, way.turn_left_deg], degrees=True
    )
    points: dict[str, Array] = {}
    for each in Side:
        directions = np.stack([-Y, -Y])
        rise = 0.0
        if each is side:
            directions = arm(movement, value, side, way, build)
            elevation_deg = np.degrees(np.arccos(np.clip(-directions[0, 1], -1.0, 1.0)))
            rise = way.hike + RISE_PER_DEG * max(0.0, elevation_deg - RISES_FROM_DEG)
        shoulder = np.array([0.0, (1.0 + rise) * build.trunk, each.sign * build.shoulder])
        elbow = shoulder + build.upper_arm * directions[0]
        wrist = elbow + build.forearm * directions[1]
        above = {
            "SHOULDER": shoulder,
            "ELBOW": elbow,
            "WRIST": wrist,
            "INDEX": wrist + 0.1 * directions[1],
            "HIP": np.array([0.0, 0.0, each.sign * build.hip]),
            "EAR": np.array([0.0, build.trunk + 0.22, 0.07 * each.sign]),
        }
        points |= {f"{each.name}_{name}": trunk.apply(point) for name, point in above.items()}
        hip = points[f"{each.name}_HIP"]
        if way.knees_up:
            thigh, shank = np.array([0.9, -0.44, 0.0]), np.array([-0.9, -0.44, 0.0])
        elif position is Position.SITTING:
            thigh, shank = X, -Y
        else:
            thigh, shank = -Y, -Y
        points[f"{each.name}_KNEE"] = knee = hip + 0.42 * thigh
        points[f"{each.name}_ANKLE"] = knee + 0.43 * shank
    points["NOSE"] = trunk.apply([0.1, build.trunk + 0.2, 0.0])
    return points, trunk


UP = {Position.SUPINE: X, Position.PRONE: -X}


def camera(seen: Seen, side: Side, position: Position, build: Build) -> tuple[Array, Array]:
    """Axes right, down, away (3, 3) as rows, and place (3,) in the room's axes."""
    up = UP.get(position, Y)
    from_ = {View.FRONT: X, View.BACK: -X, View.SIDE: side.sign * Z, View.FOOT: -Y}[seen.view]
    from_ = Rotation.from_rotvec(-np.radians(seen.turned_deg) * up).apply(from_)
    above_deg = seen.above_deg
    if above_deg is None:
        above_deg = 30.0 if seen.view is View.FOOT else 0.0
    above = np.radians(above_deg)
    away = -(np.cos(above) * from_ + np.sin(above) * up)
    right = np.cross(away, up)
    right /= np.linalg.norm(right)
    axes = np.stack([right, np.cross(away, right), away])
    axes = Rotation.from_rotvec(np.radians(seen.roll_deg) * away).apply(axes)
    aim = (build.trunk / 2 + seen.lift_m) * Y - seen.aside_m * axes[0]
    return axes, aim - seen.distance_m * away


def pose(
    movement: Movement,
    value: float,
    side: Side,
    seen: Seen,
    time_s: float = 0.0,
    *,
    position: Position = Position.STANDING,
    way: Way = NATURAL,
    build: Build = MAN,
    marks: Marks = AT_JOINTS,
) -> Pose:
    """What a camera sees of the body with its arm at a value."""
    placed, trunk = joints(movement, value, side, position, way, build)
    points = np.zeros((33, 3))
    for name, point in placed.items():
        points[Landmark[name]] = point
    axes, place = camera(seen, side, position, build)
    for each in Side:
        shoulder, elbow, wrist = (
            points[Landmark[f"{each.name}_{name}"]] for name in ("SHOULDER", "ELBOW", "WRIST")
        )
        upper_arm, forearm = (elbow - shoulder) / build.upper_arm, (wrist - elbow) / build.forearm
        shoulder -= marks.cap * build.trunk * upper_arm
        if each is side:
            elbow += marks.end_on * build.trunk * abs(upper_arm @ axes[2]) * forearm
        shifts = marks.near if each is side else marks.other
        for name, shift in zip(("SHOULDER", "HIP", "ELBOW", "WRIST"), shifts, strict=True):
            beside = np.array([shift[2], shift[1], each.sign * shift[0]]) * build.trunk
            points[Landmark[f"{each.name}_{name}"]] += trunk.apply(beside)
    return project((points - place) @ axes.T, seen, time_s)


def project(points_m: Array, seen: Seen, time_s: float = 0.0) -> Pose:
    """Points in the camera's axes to a pose.

    The model is given the person cut out of the picture, so its metric points are in the axes of
    a camera that looks at the middle of the body.
    """
    focal_px = max(seen.size_px) / 2 / np.tan(np.radians(seen.field_of_view_deg) / 2)
    image = focal_px * points_m[:, :2] / points_m[:, 2:] + np.array(seen.size_px) / 2
    hips = points_m[[Landmark.LEFT_HIP, Landmark.RIGHT_HIP]].mean(axis=0)
    shoulders = points_m[[Landmark.LEFT_SHOULDER, Landmark.RIGHT_SHOULDER]].mean(axis=0)
    away = (hips + shoulders) / np.linalg.norm(hips + shoulders)
    right = np.cross(Y, away)
    right /= np.linalg.norm(right)
    world = (points_m - hips) @ np.stack([right, np.cross(away, right), away], axis=1)
    world[:, 2] *= seen.depth_shown
    return Pose(time_s, seen.size_px, image, world, np.full(33, 0.99))


def recording(
    movement: Movement,
    values: Sequence[float] | Array,
    side: Side,
    seen: Seen,
    *,
    rate_hz: float = 10.0,
    jitter_px: float = 0.0,
    ways: Sequence[Way] | Way = NATURAL,
    position: Position = Position.STANDING,
    build: Build = MAN,
    marks: Marks = AT_JOINTS,
) -> list[tuple[float, Pose | None]]:
    """A pose for each value, with the same noise in every run."""
    rng = np.random.default_rng(0)
    rows: list[tuple[float, Pose | None]] = []
    for row, value in enumerate(values):
        time_s = row / rate_hz
        way = ways if isinstance(ways, Way) else ways[row]
        seen_pose = pose(
            movement, value, side, seen, time_s,
            position=position, way=way, build=build, marks=marks,
        )  # fmt: skip
        noisy = seen_pose.image_px + rng.normal(0.0, jitter_px, (33, 2))
        rows.append((time_s, replace(seen_pose, image_px=noisy)))
    return rows


def raised(rest: float, end: float, rest_n: int = 10, rise_n: int = 10, hold_n: int = 10) -> Array:
    """Values of a rest, an even rise and a hold."""
    rise = np.linspace(rest, end, rise_n + 2)[1:-1]
    return np.concatenate([np.full(rest_n, rest), rise, np.full(hold_n, end)])


def mirrored(pose: Pose) -> Pose:
    """The picture flipped left to right, as a model that knows left from right would see it."""
    swap = [
        Landmark[each.name.replace("LEFT", "#").replace("RIGHT", "LEFT").replace("#", "RIGHT")]
        for each in Landmark
    ]
    image = pose.image_px[swap] * [-1, 1] + [pose.size_px[0], 0]
    world = pose.world_m[swap] * [-1, 1, 1]
    return Pose(pose.time_s, pose.size_px, image, world, pose.visibility[swap])
