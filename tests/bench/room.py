"""Walls, floor and furniture of a room as one coloured mesh.

Room axes before it is turned to the camera: the camera looks along +v (into the room), u runs to
the picture's right, z up; the person stands at the origin and the far wall is behind.
"""

from __future__ import annotations

import numpy as np

from tests.bench.scene import LYING, Block, Door, Placed, Rgb, Room
from tests.bench.skeleton import Array, turn

PLAIN, PLANKS, CARPET, TILES, STRIPES, PAPER, GLOW, LEAVES = range(8)
WALL_KINDS, FLOOR_KINDS = (PLAIN, STRIPES, PAPER), (PLANKS, CARPET, TILES)
Box = tuple[tuple[float, float, float], tuple[float, float, float], Rgb, int]

_CORNERS = np.array([[x, y, z] for x in (0, 1) for y in (0, 1) for z in (0, 1)], float)
_SIDES = {
    (-1, 0, 0): (0, 1, 3, 2), (1, 0, 0): (4, 6, 7, 5), (0, -1, 0): (0, 4, 5, 1),
    (0, 1, 0): (2, 3, 7, 6), (0, 0, -1): (0, 2, 6, 4), (0, 0, 1): (1, 5, 7, 3),
}  # fmt: skip


def build(room: Room, placed: Placed) -> Array:
    """Give triangles (N, 3, 10): position (3, world metres), normal (3), colour (3), kind (1)."""
    boxes = [*_shell(room), *_furniture(room)]
    triangles = np.concatenate([_box(*box) for box in boxes])
    ahead = placed.turn[2] * (1, 1, 0)
    ahead = ahead / np.linalg.norm(ahead)
    # Real rooms are not square to the camera either.
    slant_rad = np.radians(np.random.default_rng(room.things_seed).uniform(-9, 9))
    c, s = np.cos(slant_rad), np.sin(slant_rad)
    v = np.array([c * ahead[0] - s * ahead[1], s * ahead[0] + c * ahead[1], 0.0])
    u = np.array([v[1], -v[0], 0.0])
    axes = np.stack([u, v, np.array([0, 0, 1.0])], axis=1)
    triangles[..., 0:3] = triangles[..., 0:3] @ axes.T
    triangles[..., 3:6] = triangles[..., 3:6] @ axes.T
    if room.position in LYING:
        # What a person lies on lies along the person, whatever the camera does.
        triangles = np.concatenate([triangles, *(_box(*box) for box in _bed(room))])
    return triangles


def _bed(room: Room) -> list[Box]:
    """Give a mat or a bed along the y axis, with a pillow, world axes."""
    if room.support_m < 0.1:
        mat = ((-0.36, -1.5, 0.0), (0.36, 0.45, room.support_m), room.accent, CARPET)
        return [mat, ((-0.24, 0.10, 0.02), (0.24, 0.42, 0.09), (0.66, 0.68, 0.72), PAPER)]
    top, white = room.support_m, (0.72, 0.72, 0.70)
    wood: Rgb = (0.42, 0.27, 0.16)
    return [
        ((-0.50, -1.60, 0.0), (0.50, 0.62, top - 0.16), wood, PLAIN),
        ((-0.50, -1.60, top - 0.16), (0.50, 0.62, top), white, PAPER),
        ((-0.505, -1.605, top - 0.10), (0.505, -0.75, top + 0.004), room.accent, STRIPES),
        ((-0.30, 0.10, top), (0.30, 0.50, top + 0.08), (0.66, 0.68, 0.72), PAPER),
    ]


def seat(room: Room, seat_m: float, yaw_deg: float, root_m: Array) -> Array:
    """Give the triangles of a stool or chair under somebody's root (3,), its top at a height."""
    wood: Rgb = (0.42, 0.27, 0.16) if room.things_seed % 2 else (0.30, 0.30, 0.31)
    back, front, half = 0.16, -0.26, 0.21
    boxes: list[Box] = [((-half, front, seat_m - 0.045), (half, back, seat_m), wood, PLAIN)]
    for x in (-half, half - 0.04):
        boxes.append(((x, front, 0.0), (x + 0.04, front + 0.04, seat_m - 0.045), wood, PLAIN))
        top_m = seat_m + 0.40 if room.backrest else seat_m - 0.045
        boxes.append(((x, back, 0.0), (x + 0.04, back + 0.04, top_m), wood, PLAIN))
    if room.backrest:
        boxes.append(((-half, back, seat_m + 0.18), (half, back + 0.025, seat_m + 0.40), wood, 0))
    return _put(boxes, root_m, yaw_deg)


def block(thing: Block, room: Room, placed: Placed) -> Array:
    """Give the triangles of something before the person."""
    ahead, across = placed.level_axes()
    place_m = -thing.ahead_m * ahead + thing.aside_m * across
    yaw_deg = float(np.degrees(np.arctan2(-ahead[0], ahead[1]))) + thing.yaw_deg
    half, cloth = thing.size_m / 2, room.accent
    boxes: dict[str, list[Box]] = {
        "chair": _chair(0.0, 0.0, (0.42, 0.27, 0.16)),
        "box": [((-half, -half, 0.0), (half, half, thing.size_m), cloth, CARPET)],
        "edge": [((-half, -0.06, 0.0), (half, 0.06, 2.3), (0.74, 0.73, 0.70), PLAIN)],
    }
    return _put(boxes[thing.kind], place_m, yaw_deg)


def door_frame(door: Door, side: str, wrist_m: Array, forearm: Array) -> Array:
    """Give the triangles of a frame whose post touches the palm's side of a wrist (3,).

    ``forearm`` (3,) points from elbow to wrist. The other post is a door's width behind.
    """
    way = np.arctan2(forearm[0], -forearm[1])
    # Along -y the forearm; the palm faces the person's middle.
    inner = 1.0 if side == "right" else -1.0
    white: Rgb = (0.74, 0.73, 0.70)
    gap_m = 0.038
    low_x, high_x = sorted((inner * gap_m, inner * (gap_m + door.thick_m)))
    y0, y1 = -0.09, -0.09 + door.deep_m
    behind_m = y1 + 0.86
    boxes: list[Box] = [
        ((low_x, y0, 0.0), (high_x, y1, 2.1), white, PLAIN),
        ((low_x, behind_m, 0.0), (high_x, behind_m + door.deep_m, 2.1), white, PLAIN),
        ((low_x, y0, 2.02), (high_x, behind_m + door.deep_m, 2.12), white, PLAIN),
    ]
    return _put(boxes, wrist_m, float(np.degrees(way)))


def _put(boxes: list[Box], origin_m: Array, yaw_deg: float) -> Array:
    """Turn boxes about the vertical and put them over a point's x and y."""
    triangles = np.concatenate([_box(*box) for box in boxes])
    turned = turn(np.array([0.0, 0.0, 1.0]), yaw_deg)
    triangles[..., 0:3] = triangles[..., 0:3] @ turned.T + origin_m * (1, 1, 0)
    triangles[..., 3:6] = triangles[..., 3:6] @ turned.T
    return triangles


def _shell(room: Room) -> list[Box]:
    far, wide, tall, near = room.wall_gap_m, 3.2, 2.7, -4.5
    white: Rgb = (0.80, 0.80, 0.78)
    wall, floor = WALL_KINDS[room.wall_kind], FLOOR_KINDS[room.floor_kind]
    return [
        ((-wide, near, -0.1), (wide, far, 0.0), room.floor, floor),
        ((-wide, far, 0.0), (wide, far + 0.1, tall), room.wall, wall),
        ((-wide - 0.1, near, 0.0), (-wide, far, tall), room.wall, wall),
        ((wide, near, 0.0), (wide + 0.1, far, tall), room.wall, wall),
        ((-wide, near, tall), (wide, far, tall + 0.1), (0.8, 0.8, 0.8), PLAIN),
        ((-wide, far - 0.015, 0.0), (wide, far, 0.09), white, PLAIN),
    ]


def _furniture(room: Room) -> list[Box]:
    rng = np.random.default_rng(room.things_seed)
    far = room.wall_gap_m
    side = 1.0 if rng.random() < 0.5 else -1.0
    out: list[Box] = []
    if rng.random() < 0.5:
        out += _window(side * rng.uniform(0.9, 1.5), far, room.accent, room.glow)
    else:
        out += _door(side * rng.uniform(1.1, 1.6), far)
    out += _picture(-side * rng.uniform(0.5, 1.2), far, rng)
    if far > 1.35 and rng.random() < 0.6:
        out += _sofa(-side * rng.uniform(0.7, 1.3), far, room.accent)
    else:
        out += _shelf(-side * rng.uniform(1.3, 1.8), far, rng)
    if rng.random() < 0.6:
        out += _plant(side * rng.uniform(1.6, 2.1), far - 0.35, rng)
    if rng.random() < 0.5:
        out += _chair(side * rng.uniform(1.0, 1.4), far - 0.7, (0.42, 0.27, 0.16))
    if room.position not in LYING and rng.random() < 0.5:
        rug = tuple(0.5 * a + 0.3 for a in room.accent)
        out.append(((-1.3, -1.0, 0.0), (1.3, min(0.6, far), 0.012), (rug[0], rug[1], rug[2]), 2))
    return out


def _window(u: float, far: float, curtain: Rgb, glow: float) -> list[Box]:
    sky: Rgb = (0.95 * glow, 1.0 * glow, 1.05 * glow)
    white: Rgb = (0.78, 0.78, 0.77)
    y = far - 0.05
    return [
        ((u - 0.55, y, 0.95), (u + 0.55, far, 2.15), white, PLAIN),
        ((u - 0.49, y - 0.005, 1.01), (u - 0.03, y, 2.09), sky, GLOW),
        ((u + 0.03, y - 0.005, 1.01), (u + 0.49, y, 2.09), sky, GLOW),
        ((u - 0.85, y - 0.06, 0.5), (u - 0.52, y, 2.3), curtain, STRIPES),
        ((u + 0.52, y - 0.06, 0.5), (u + 0.85, y, 2.3), curtain, STRIPES),
        ((u - 0.62, y - 0.10, 0.90), (u + 0.62, y, 0.95), white, PLAIN),
    ]


def _door(u: float, far: float) -> list[Box]:
    leaf: Rgb = (0.62, 0.57, 0.50)
    frame: Rgb = (0.74, 0.73, 0.70)
    return [
        ((u - 0.52, far - 0.04, 0.0), (u + 0.52, far, 2.12), frame, PLAIN),
        ((u - 0.44, far - 0.05, 0.0), (u + 0.44, far, 2.04), leaf, PLAIN),
        ((u - 0.30, far - 0.06, 1.15), (u + 0.30, far, 1.85), (0.57, 0.52, 0.45), PLAIN),
        ((u - 0.30, far - 0.06, 0.25), (u + 0.30, far, 0.95), (0.57, 0.52, 0.45), PLAIN),
        ((u + 0.34, far - 0.11, 1.0), (u + 0.42, far, 1.03), (0.35, 0.34, 0.33), PLAIN),
    ]


def _picture(u: float, far: float, rng: np.random.Generator) -> list[Box]:
    w, h = rng.uniform(0.18, 0.35), rng.uniform(0.18, 0.30)
    tint = rng.uniform(0.15, 0.6, 3)
    inner: Rgb = (float(tint[0]), float(tint[1]), float(tint[2]))
    return [
        ((u - w, far - 0.03, 1.6 - h), (u + w, far, 1.6 + h), (0.10, 0.08, 0.07), PLAIN),
        ((u - w + 0.03, far - 0.035, 1.63 - h), (u + w - 0.03, far, 1.57 + h), inner, PAPER),
    ]


def _sofa(u: float, far: float, cloth: Rgb) -> list[Box]:
    y = far - 0.06
    return [
        ((u - 0.9, y - 0.75, 0.06), (u + 0.9, y, 0.42), cloth, CARPET),
        ((u - 0.9, y - 0.22, 0.42), (u + 0.9, y, 0.86), cloth, CARPET),
        ((u - 1.05, y - 0.75, 0.06), (u - 0.87, y, 0.62), cloth, CARPET),
        ((u + 0.87, y - 0.75, 0.06), (u + 1.05, y, 0.62), cloth, CARPET),
        ((u - 0.5, y - 0.32, 0.42), (u - 0.1, y - 0.2, 0.78), (0.62, 0.58, 0.48), PAPER),
    ]


def _shelf(u: float, far: float, rng: np.random.Generator) -> list[Box]:
    wood: Rgb = (0.40, 0.29, 0.19)
    out: list[Box] = [((u - 0.45, far - 0.04, 0.0), (u + 0.45, far, 1.9), wood, PLAIN)]
    out += [((x, far - 0.3, 0.0), (x + 0.03, far, 1.9), wood, PLAIN) for x in (u - 0.46, u + 0.43)]
    for z in np.arange(0.05, 1.95, 0.36):
        out.append(((u - 0.45, far - 0.3, z), (u + 0.45, far, z + 0.025), wood, PLAIN))
        x = u - 0.42
        while z < 1.8 and x < u + 0.3:
            w, h, tint = rng.uniform(0.02, 0.06), rng.uniform(0.18, 0.28), rng.uniform(0.08, 0.6, 3)
            book: Rgb = (float(tint[0]), float(tint[1]), float(tint[2]))
            out.append(((x, far - 0.25, z + 0.025), (x + w, far - 0.04, z + h), book, PLAIN))
            x += w + (0.002 if rng.random() < 0.85 else 0.15)
    return out


def _plant(u: float, y: float, rng: np.random.Generator) -> list[Box]:
    out: list[Box] = [((u - 0.14, y - 0.14, 0.0), (u + 0.14, y + 0.14, 0.3), (0.5, 0.3, 0.2), 0)]
    for _ in range(26):
        x, q, z = rng.normal(0, 0.14), rng.normal(0, 0.1), rng.uniform(0.3, 1.0)
        w, h = rng.uniform(0.02, 0.06), rng.uniform(0.08, 0.2)
        green: Rgb = (0.08, float(rng.uniform(0.18, 0.34)), 0.08)
        low, high = (u + x - w, y + q - 0.01, z), (u + x + w, y + q + 0.01, z + h)
        out.append((low, high, green, LEAVES))
    return out


def _chair(u: float, y: float, wood: Rgb) -> list[Box]:
    out: list[Box] = [((u - 0.22, y - 0.22, 0.43), (u + 0.22, y + 0.22, 0.47), wood, PLAIN)]
    for x in (u - 0.21, u + 0.17):
        out.append(((x, y - 0.21, 0.0), (x + 0.04, y - 0.17, 0.43), wood, PLAIN))
        out.append(((x, y + 0.17, 0.0), (x + 0.04, y + 0.21, 0.95), wood, PLAIN))
    out.append(((u - 0.2, y + 0.18, 0.62), (u + 0.2, y + 0.2, 0.92), wood, PLAIN))
    return out


def _box(low: tuple[float, ...], high: tuple[float, ...], colour: Rgb, kind: int) -> Array:
    corners = np.array(low) + _CORNERS * (np.array(high) - np.array(low))
    out = []
    for normal, (a, b, c, d) in _SIDES.items():
        for three in ((a, b, c), (a, c, d)):
            rows = [np.concatenate([corners[i], normal, colour, [kind]]) for i in three]
            out.append(np.array(rows))
    return np.array(out)
