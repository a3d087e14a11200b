"""Camera, light and room of a clip: frozen choices, drawn from a seed.

World axes, metres: x to the person's left, y to the person's back, z up, the person near the
origin. Somebody lying has the shoulders over the origin and the head towards +y.
Camera axes: x picture right, y down, z forward (pinhole, square pixels, no distortion).
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from tests.bench.skeleton import Array, unit

Rgb = tuple[float, float, float]
VIEWS = ("front", "side", "back", "foot")

POSITIONS = ("standing", "sitting", "supine", "prone", "doorway")
LYING = ("supine", "prone")


@dataclass(frozen=True, slots=True)
class Camera:
    """Where the camera stands. ``off_axis_deg`` turns it about the person, away from the view.

    ``yaw_deg`` (to the picture's right) and ``pitch_deg`` (up) turn it away from its aim; ``crop``
    is the share of the exercising forearm that the picture's border cuts off at the farthest.
    """

    width_px: int = 640
    height_px: int = 480
    fov_deg: float = 62.0
    distance_m: float = 2.4
    height_m: float = 1.0
    off_axis_deg: float = 0.0
    roll_deg: float = 0.0
    aside_m: float = 0.0
    yaw_deg: float = 0.0
    pitch_deg: float = 0.0
    crop: float = 0.0

    @property
    def focal_px(self) -> float:
        """Focal length: ``fov_deg`` is horizontal."""
        return float(self.width_px / 2 / np.tan(np.radians(self.fov_deg / 2)))

    @property
    def intrinsics(self) -> Array:
        """Matrix (3, 3), pixels."""
        f = self.focal_px
        return np.array([[f, 0, self.width_px / 2], [0, f, self.height_px / 2], [0, 0, 1.0]])


@dataclass(frozen=True, slots=True, eq=False)
class Placed:
    """A camera put into the world: ``turn`` (3, 3) rows are its axes, ``eye_m`` (3,) its place."""

    camera: Camera
    eye_m: Array
    turn: Array

    def level_axes(self) -> tuple[Array, Array]:
        """Level unit vectors (3,) ahead of the camera and to its right."""
        ahead = unit(self.turn[2] * (1.0, 1.0, 0.0))
        return ahead, np.array([ahead[1], -ahead[0], 0.0])

    def to_camera(self, points_m: Array) -> Array:
        """World points (..., 3) to camera axes, metres."""
        return np.asarray((points_m - self.eye_m) @ self.turn.T)

    def project(self, points_m: Array) -> Array:
        """World points (..., 3) to pixels (..., 2)."""
        p = self.to_camera(points_m)
        k = self.camera
        centre = np.array([k.width_px / 2, k.height_px / 2])
        return np.asarray(k.focal_px * p[..., :2] / p[..., 2:] + centre)


@dataclass(frozen=True, slots=True)
class Room:
    """Walls, floor, things and light. ``key_deg``: the light's turn from the camera, height.

    ``support_m`` is the height of what a lying person lies on; ``backrest`` is a chair's; ``glow``
    is the brightness of a window.
    """

    wall: Rgb
    wall_kind: int
    floor: Rgb
    floor_kind: int
    accent: Rgb
    wall_gap_m: float
    things_seed: int
    key_deg: tuple[float, float] = (40.0, 50.0)
    key: Rgb = (2.2, 2.1, 1.9)
    ambient: Rgb = (0.75, 0.78, 0.85)
    position: str = "standing"
    support_m: float = 0.0
    backrest: bool = False
    glow: float = 1.0


@dataclass(frozen=True, slots=True)
class Door:
    """A door frame that the forearm rests against, its post on the palm's side.

    ``aside_deg`` turns the forearm from the world's -y to the person's own side; the post is
    ``thick_m`` across and ``deep_m`` along the forearm.
    """

    aside_deg: float = 15.0
    thick_m: float = 0.05
    deep_m: float = 0.11


@dataclass(frozen=True, slots=True)
class Block:
    """Something before the person: a ``chair``, a ``box`` or the ``edge`` of a door.

    ``ahead_m`` from the origin towards the camera and ``aside_m`` to the picture's right, on the
    floor.
    """

    kind: str
    ahead_m: float
    aside_m: float
    yaw_deg: float = 0.0
    size_m: float = 0.4


@dataclass(frozen=True, slots=True)
class Bystander:
    """Somebody standing still ``behind_m`` the origin and ``aside_m`` to the picture's right."""

    person: str
    behind_m: float
    aside_m: float
    yaw_deg: float


@dataclass(frozen=True, slots=True)
class Lens:
    """What happens to a rendered picture before anybody sees it; noise in grey levels."""

    gain: float = 1.0
    noise: float = 2.0
    blur_px: float = 0.4
    jpeg_quality: int = 85


def place(camera: Camera, view: str, side: str, lowest_m: float, highest_m: float) -> Placed:
    """Put the camera so that a person between two heights is framed as far as possible.

    Where both ends cannot fit, the upper one counts: the feet may leave the picture.
    """
    facing_deg = {"front": 0.0, "back": 180.0, "side": -90.0 if side == "right" else 90.0}[view]
    level, eye_m = _stand(camera, facing_deg)
    half_deg = _half_height_deg(camera)
    up_deg, down_deg = (
        np.degrees(np.arctan2(h - camera.height_m, camera.distance_m))
        for h in (highest_m, lowest_m)
    )
    pitch_deg = max((up_deg + down_deg) / 2, up_deg - half_deg)
    return _aim(camera, level, eye_m, pitch_deg, 0.0)


def place_lying(camera: Camera, view: str, on_the_left: bool, points_m: Array) -> Placed:
    """Put the camera by somebody lying and aim at points (N, 3), world metres.

    ``view`` is ``foot`` (seen from the feet) or ``side``, where ``on_the_left`` says whether the
    camera stands at +x. Where not everything fits, the feet's end and the bottom leave first.
    """
    level, eye_m = _stand(camera, 0.0 if view == "foot" else 90.0 if on_the_left else -90.0)
    ahead, across = -level, np.array([-level[1], level[0], 0.0])
    away_m = points_m - eye_m
    aside_deg = np.degrees(np.arctan2(away_m @ across, away_m @ ahead))
    up_deg = np.degrees(np.arctan2(away_m[:, 2], np.linalg.norm(away_m[:, :2], axis=1)))
    half_deg = _half_height_deg(camera)
    pitch_deg = max((up_deg.max() + up_deg.min()) / 2, up_deg.max() - half_deg)
    yaw_deg = (aside_deg.max() + aside_deg.min()) / 2
    if view == "side":
        # The head's end, in degrees towards it.
        way = 1.0 if across[1] > 0 else -1.0
        spare_deg = camera.fov_deg / 2 - 1.5
        yaw_deg = way * max(way * yaw_deg, (way * aside_deg).max() - spare_deg)
    return _aim(camera, level, eye_m, float(pitch_deg), float(yaw_deg))


def _stand(camera: Camera, facing_deg: float) -> tuple[Array, Array]:
    """Give the level way (3,) from the origin to the camera, and its place (3,)."""
    turn_rad = np.radians(facing_deg + camera.off_axis_deg)
    level = np.array([np.sin(turn_rad), -np.cos(turn_rad), 0.0])
    return level, camera.distance_m * level + np.array([0.0, 0.0, camera.height_m])


def _half_height_deg(camera: Camera) -> float:
    return float(np.degrees(np.arctan(camera.height_px / 2 / camera.focal_px))) - 1.5


def _aim(camera: Camera, level: Array, eye_m: Array, pitch_deg: float, yaw_deg: float) -> Placed:
    """Turn the camera: ``yaw_deg`` towards ``across`` of its level way, ``pitch_deg`` up."""
    across = np.array([-level[1], level[0], 0.0])
    pitch_rad = np.radians(pitch_deg + camera.pitch_deg)
    aside_rad = np.arctan2(camera.aside_m, camera.distance_m)
    aside_rad += np.radians(yaw_deg + camera.yaw_deg)
    ahead = -np.cos(aside_rad) * level + np.sin(aside_rad) * across
    forward = np.cos(pitch_rad) * ahead + np.sin(pitch_rad) * np.array([0, 0, 1.0])
    right = unit(np.cross(forward, np.array([0, 0, 1.0])))
    down = np.cross(forward, right)
    roll_rad = np.radians(camera.roll_deg)
    rolled_right = np.cos(roll_rad) * right + np.sin(roll_rad) * down
    turn = np.stack([rolled_right, np.cross(forward, rolled_right), forward])
    return Placed(camera, eye_m, turn)


def draw_camera(
    rng: np.random.Generator, size_px: tuple[int, int] = (640, 480), fov_deg: float | None = None
) -> Camera:
    """Draw a plausible place of a laptop or a phone, and its lens where none is given."""
    if fov_deg is None:
        fov_deg = float(rng.uniform(52, 73))
    # A narrow lens needs more room to show a raised hand.
    nearest_m = float(np.interp(fov_deg, (52, 73), (2.5, 1.75)))
    return Camera(
        *size_px,
        fov_deg=round(fov_deg, 2),
        distance_m=round(float(rng.uniform(nearest_m, 3.1)), 3),
        height_m=round(float(rng.uniform(0.75, 1.5)), 3),
        off_axis_deg=round(float(np.clip(rng.normal(0, 7), -15, 15)), 2),
        roll_deg=round(float(np.clip(rng.normal(0, 0.8), -2, 2)), 2),
        aside_m=round(float(rng.normal(0, 0.08)), 3),
    )


def draw_door_camera(
    rng: np.random.Generator, size_px: tuple[int, int] = (640, 480), fov_deg: float | None = None
) -> Camera:
    """Draw a place before a door frame, up to a shelf's height."""
    camera = draw_camera(rng, size_px, fov_deg)
    nearest_m = float(np.interp(camera.fov_deg, (52, 73), (2.4, 1.8)))
    return replace(
        camera,
        distance_m=round(float(rng.uniform(nearest_m, 3.0)), 3),
        height_m=round(float(rng.uniform(0.9, 2.15)), 3),
    )


def draw_lying_camera(
    rng: np.random.Generator,
    view: str,
    support_m: float,
    hidden: bool,
    size_px: tuple[int, int] = (640, 480),
    fov_deg: float | None = None,
) -> Camera:
    """Draw a laptop beside somebody lying, or raised at the foot end.

    ``hidden``: bent knees or buttocks would hide the trunk from a low camera at the feet.
    """
    low_m, high_m = (0.8, 1.6) if view == "foot" else (max(0.4, support_m + 0.2), 1.2)
    if view == "foot" and hidden:
        low_m = 1.2
    near_m, far_m = (2.0, 3.0) if view == "foot" else (1.8, 2.8)
    if fov_deg is None:
        fov_deg = float(rng.uniform(52, 73))
    # Across the picture a narrow lens needs more room.
    if view == "side":
        near_m = float(np.interp(fov_deg, (52, 73), (2.3, 1.8)))
    return Camera(
        *size_px,
        fov_deg=round(fov_deg, 2),
        distance_m=round(float(rng.uniform(near_m, far_m)), 3),
        height_m=round(float(rng.uniform(low_m, high_m)), 3),
        off_axis_deg=round(float(np.clip(rng.normal(0, 7), -15, 15)), 2),
        roll_deg=round(float(np.clip(rng.normal(0, 0.8), -2, 2)), 2),
        aside_m=round(float(rng.normal(0, 0.05)), 3),
    )


WALLS: tuple[Rgb, ...] = (
    (0.72, 0.69, 0.62), (0.58, 0.64, 0.66), (0.70, 0.62, 0.52), (0.50, 0.56, 0.47),
    (0.78, 0.77, 0.75), (0.60, 0.52, 0.50), (0.42, 0.47, 0.55),
)  # fmt: skip
FLOORS: tuple[Rgb, ...] = (
    (0.36, 0.23, 0.14), (0.50, 0.38, 0.26), (0.33, 0.32, 0.31), (0.40, 0.33, 0.29),
    (0.27, 0.17, 0.11), (0.46, 0.46, 0.45),
)  # fmt: skip
ACCENTS: tuple[Rgb, ...] = (
    (0.20, 0.28, 0.36), (0.45, 0.20, 0.16), (0.24, 0.33, 0.22), (0.46, 0.38, 0.22),
    (0.30, 0.22, 0.30), (0.38, 0.38, 0.40),
)  # fmt: skip


def draw_room(rng: np.random.Generator) -> Room:
    """Draw a room with its furniture and light."""
    warm = float(rng.uniform(-0.15, 0.2))
    strength, fill = float(rng.uniform(0.7, 2.0)), float(rng.uniform(0.6, 1.05))
    return Room(
        wall=WALLS[rng.integers(len(WALLS))],
        wall_kind=int(rng.integers(3)),
        floor=FLOORS[rng.integers(len(FLOORS))],
        floor_kind=int(rng.integers(3)),
        accent=ACCENTS[rng.integers(len(ACCENTS))],
        wall_gap_m=round(float(rng.uniform(0.7, 1.8)), 2),
        things_seed=int(rng.integers(10_000)),
        key_deg=(round(float(rng.uniform(-75, 75)), 1), round(float(rng.uniform(35, 65)), 1)),
        key=(strength * (1 + warm), strength, strength * (1 - warm)),
        ambient=(fill * 0.97, fill, fill * 1.05),
    )


def draw_lens(rng: np.random.Generator) -> Lens:
    """Draw the faults of a cheap camera."""
    return Lens(
        gain=round(float(rng.uniform(0.75, 1.2)), 3),
        noise=round(float(rng.uniform(1.0, 5.0)), 2),
        blur_px=round(float(rng.uniform(0.2, 0.9)), 2),
        jpeg_quality=int(rng.integers(60, 94)),
    )
