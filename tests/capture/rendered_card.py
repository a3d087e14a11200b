"""Pictures of a folded card whose place in space is known, with their own projection.

Axes of the camera: x right, y down, z away. Axes of the card, columns of ``axes``: X out of the
chest, Y up along the ridge, Z to the person's right. The two faces leave the ridge backward.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from itertools import pairwise

import cv2
import numpy as np

from coach.domain.pose import Landmark, Pose

SAMPLES = 5
"""Samples across a pixel."""
TEXELS_PER_MM = 4
GAMMA = 2.2
PAPER, INK = 0.85, 0.05
"""Reflectance."""

Array = np.ndarray


def marker(number: int) -> Array:
    """Cells of a marker of DICT_4X4_50, (6, 6) with the black border, True is white."""
    dictionary = cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_4X4_50)
    return cv2.aruco.generateImageMarker(dictionary, number, 6) > 0


@dataclass(frozen=True)
class Sheet:
    """What is printed: mm; markers stand upright, ``left`` as seen from the front."""

    left: Array = field(default_factory=lambda: marker(11), repr=False)
    right: Array = field(default_factory=lambda: marker(30), repr=False)
    marker_mm: float = 100.0
    ridge_mm: float = 9.0
    """From the ridge to a marker."""
    edge_mm: float = 9.0
    height_mm: float = 116.0

    @property
    def width_mm(self) -> float:
        return self.ridge_mm + self.marker_mm + self.edge_mm


@dataclass(frozen=True)
class Scene:
    yaw_deg: float = 0.0
    """Positive: the person turns their front toward the picture's right."""
    pitch_deg: float = 0.0
    """Positive: the ridge's upper end leans away from the camera."""
    roll_deg: float = 0.0
    at_m: tuple[float, float, float] = (0.0, -0.1, 2.0)
    """The middle of the ridge."""
    field_of_view_deg: float = 63.0
    size_px: tuple[int, int] = (1280, 720)
    tent_deg: tuple[float, float] = (35.0, 35.0)
    """How far the face on the picture's left, and that on its right, stand back."""
    bulge_mm: tuple[float, float] = (0.0, 0.0)
    """How far the middle of a face stands out of its chord."""
    noise: float = 4.0
    """Grey levels."""
    blur_px: float = 0.6
    motion_px: tuple[float, float] = (0.0, 0.0)
    jpeg: int | None = 85
    shirt: float = 0.3
    gradient: float = 0.0
    """By how much of its mean the light changes across the picture."""
    light: tuple[float, float, float] = (0.0, -0.6, -0.8)
    """Where the light comes from, in camera axes."""
    exposure: float = 0.8
    """Linear grey of paper square to the light; above 1 it is burnt out."""
    only: tuple[bool, bool] = (True, True)
    """Which faces are not covered."""
    mirrored: bool = False
    seed: int = 0
    sheet: Sheet = field(default_factory=Sheet, repr=False)

    @property
    def focal_px(self) -> float:
        return max(self.size_px) / 2 / np.tan(np.radians(self.field_of_view_deg) / 2)


def turn(axis: int, angle_deg: float) -> Array:
    """Rotation about a camera axis, (3, 3)."""
    c, s = np.cos(np.radians(angle_deg)), np.sin(np.radians(angle_deg))
    i, j = (axis + 1) % 3, (axis + 2) % 3
    matrix = np.eye(3)
    matrix[i, i] = matrix[j, j] = c
    matrix[j, i], matrix[i, j] = s, -s
    return matrix


FACING = np.array([[0.0, 0, -1], [0, -1, 0], [-1, 0, 0]])
"""The axes of a card whose wearer stands upright and square to the camera."""


def true_axes(scene: Scene) -> Array:
    """Columns X, Y, Z of the card in camera axes, (3, 3)."""
    # About y down a positive turn takes -z to -x; about x it takes -y to -z.
    return turn(1, -scene.yaw_deg) @ turn(0, -scene.pitch_deg) @ turn(2, scene.roll_deg) @ FACING


def project(points_m: Array, scene: Scene) -> Array:
    """Points (n, 3) in camera axes to pixels (n, 2)."""
    width, height = scene.size_px
    return points_m[:, :2] / points_m[:, 2:] * scene.focal_px + (width / 2, height / 2)


def homography(source: Array, target: Array) -> Array:
    """The projective map of four points (4, 2) onto four."""
    rows = []
    for (x, y), (u, v) in zip(source, target, strict=True):
        rows.append([x, y, 1, 0, 0, 0, -u * x, -u * y])
        rows.append([0, 0, 0, x, y, 1, -v * x, -v * y])
    solved = np.linalg.solve(np.array(rows), target.ravel())
    return np.append(solved, 1.0).reshape(3, 3)


def _profile_mm(width: float, tent_deg: float, bulge: float, strips: int) -> Array:
    """Where a face runs, seen along the ridge: (strips + 1, 3) along the paper, back, outward."""
    t = np.linspace(0, 1, strips + 1)
    out = 4 * bulge * t * (1 - t)
    a = np.radians(tent_deg)
    back = width * t * np.sin(a) - out * np.cos(a)
    sideways = width * t * np.cos(a) + out * np.sin(a)
    return np.stack([width * t, back, sideways], axis=1)


def _texture(sheet: Sheet, cells: Array, *, left: bool) -> Array:
    """Reflectance of a face as seen from the front."""
    k = TEXELS_PER_MM
    face = np.full((round(sheet.height_mm * k), round(sheet.width_mm * k)), PAPER, np.float32)
    side = round(sheet.marker_mm * k)
    printed = cv2.resize(cells.astype(np.float32), (side, side), interpolation=cv2.INTER_NEAREST)
    x = round((sheet.edge_mm if left else sheet.ridge_mm) * k)
    y = round((sheet.height_mm - sheet.marker_mm) / 2 * k)
    face[y : y + side, x : x + side] = np.where(printed > 0.5, PAPER, INK)
    return face


def wearer(scene: Scene, time_s: float = 0.0) -> Pose:
    """The pose of somebody upright who wears the card; only shoulders and hips are known."""
    axes = turn(1, -scene.yaw_deg) @ FACING
    image = np.full((33, 2), np.nan)
    for side, shoulder, hip in (
        (1, Landmark.RIGHT_SHOULDER, Landmark.RIGHT_HIP),
        (-1, Landmark.LEFT_SHOULDER, Landmark.LEFT_HIP),
    ):
        body = np.array([(-0.12, 0.08, 0.17 * side), (-0.15, -0.42, 0.09 * side)])
        image[[shoulder, hip]] = project(body @ axes.T + scene.at_m, scene)
    return Pose(time_s, scene.size_px, image, np.zeros((33, 3)), np.ones(33))


def errors_deg(axes: Array, scene: Scene) -> tuple[float, float]:
    """How far axes (3, 3) are off: signed turn about the ridge, and the ridge's tilt."""
    vector, _ = cv2.Rodrigues(true_axes(scene).T @ axes)
    about_x, about_y, about_z = np.degrees(vector.ravel())
    return float(about_y), float(np.hypot(about_x, about_z))


def render(scene: Scene) -> Array:
    """Give the picture, (height, width, 3), RGB."""
    random = np.random.default_rng(scene.seed)
    linear = _background(random, scene)
    patches = [patch for index in (0, 1) if scene.only[index] for patch in _face(scene, index)]
    if patches:
        _paste(linear, patches)
    across = np.linspace(-0.5, 0.5, scene.size_px[0])
    linear = linear * (1 + scene.gradient * across) * scene.exposure / PAPER
    picture = _camera(linear, scene, random)
    return np.ascontiguousarray(picture[:, ::-1]) if scene.mirrored else picture


def _face(scene: Scene, index: int) -> list[tuple[Array, Array, Array]]:
    """A face as strips: reflected light, corners in it (4, 2), corners in the picture (4, 2)."""
    sheet, left = scene.sheet, index == 0
    side = 1.0 if left else -1.0  # the person's right is on the picture's left
    light = np.array(scene.light) / np.linalg.norm(scene.light)
    face = _texture(sheet, sheet.left if left else sheet.right, left=left)
    bulge = scene.bulge_mm[index]
    profile = _profile_mm(sheet.width_mm, scene.tent_deg[index], bulge, 1 if bulge == 0 else 12)
    half = sheet.height_mm / 2
    axes, strips = true_axes(scene), []
    for (s0, back0, out0), (s1, back1, out1) in pairwise(profile):
        ends = (back0, out0, half), (back1, out1, half), (back1, out1, -half), (back0, out0, -half)
        card = np.array([(-back, up, side * out) for back, out, up in ends])
        points = card / 1000 @ axes.T + scene.at_m
        outward = axes @ np.array([out1 - out0, 0, side * (back1 - back0)])
        outward = outward / np.linalg.norm(outward)
        if outward @ points.mean(axis=0) >= 0:
            continue  # its back is seen
        xs = [sheet.width_mm - s for s in (s0, s1)] if left else [s0, s1]
        texels = np.array(
            [(xs[i], y * sheet.height_mm) for i, y in ((0, 0), (1, 0), (1, 1), (0, 1))]
        )
        shade = 0.5 + 0.5 * max(0.0, float(outward @ light))
        strips.append((face * shade, texels * TEXELS_PER_MM, project(points, scene)))
    return strips


def _paste(linear: Array, patches: list[tuple[Array, Array, Array]]) -> None:
    height, width = linear.shape
    every = np.concatenate([target for _, _, target in patches])
    low = np.clip(np.floor(every.min(axis=0)).astype(int) - 3, 0, (width, height))
    high = np.clip(np.ceil(every.max(axis=0)).astype(int) + 4, 0, (width, height))
    if (high <= low).any():
        return
    region = linear[low[1] : high[1], low[0] : high[0]]
    fine = np.repeat(np.repeat(region, SAMPLES, 0), SAMPLES, 1)
    size = (fine.shape[1], fine.shape[0])
    for face, texel, target in patches:
        # Pixel (0, 0) covers 0 to 1 in our coordinates; a sample's centre lies half a sample in.
        to_fine = (target - low) * SAMPLES
        map_ = homography(texel, to_fine)
        shift = np.array([[1, 0, -0.5], [0, 1, -0.5], [0, 0, 1.0]])
        whole = shift @ map_ @ np.linalg.inv(shift)
        warped = cv2.warpPerspective(face, whole, size, borderMode=cv2.BORDER_REPLICATE)
        mask = np.zeros(fine.shape, np.uint8)
        cv2.fillConvexPoly(mask, np.round((to_fine - 0.5) * 256).astype(np.int32), 1, shift=8)
        fine[mask > 0] = warped[mask > 0]
    rows, columns = region.shape
    linear[low[1] : high[1], low[0] : high[0]] = fine.reshape(rows, SAMPLES, columns, SAMPLES).mean(
        axis=(1, 3)
    )


def _background(random: np.random.Generator, scene: Scene) -> Array:
    """A room with things in it, and the shirt."""
    width, height = scene.size_px
    coarse = random.uniform(0.1, 0.5, (9, 16)).astype(np.float32)
    linear = cv2.resize(coarse, (width, height), interpolation=cv2.INTER_CUBIC)
    for _ in range(25):
        x, y = int(random.integers(width)), int(random.integers(height))
        w, h = (int(n) for n in random.integers(10, 160, 2))
        cv2.rectangle(linear, (x, y), (x + w, y + h), float(random.uniform(0.03, 0.8)), -1)
    (u, v), scale = project(np.array([scene.at_m]), scene)[0], scene.focal_px / scene.at_m[2]
    top, side = int(v - 0.15 * scale), int(0.21 * scale)
    cloth = random.normal(0, 0.04, (height, width)).astype(np.float32)
    cloth = cv2.GaussianBlur(cloth, (0, 0), 2.5) * 4 + scene.shirt
    mask = np.zeros(linear.shape, np.uint8)
    cv2.rectangle(mask, (int(u) - side, top), (int(u) + side, int(v + 0.45 * scale)), 1, -1)
    linear[mask > 0] = cloth[mask > 0]
    return np.clip(linear, 0.02, 0.9)


def _camera(linear: Array, scene: Scene, random: np.random.Generator) -> Array:
    if scene.blur_px > 0:
        linear = cv2.GaussianBlur(linear, (0, 0), scene.blur_px)
    length = float(np.hypot(*scene.motion_px))
    if length > 0:
        kernel = np.zeros((15, 15), np.float32)
        ends = np.array([[7.0, 7.0]]) + np.array([[-0.5], [0.5]]) * np.array([scene.motion_px])
        for t in np.linspace(0, 1, 31):
            x, y = ends[0] * (1 - t) + ends[1] * t
            i, j = int(x), int(y)
            a, b = x - i, y - j
            kernel[j : j + 2, i : i + 2] += np.outer([1 - b, b], [1 - a, a])
        linear = cv2.filter2D(linear, -1, kernel / kernel.sum())
    grey = 255 * np.clip(linear, 0, 1) ** (1 / GAMMA)
    picture = grey[..., None] + random.normal(0, scene.noise, (*grey.shape, 3))
    picture = np.clip(np.round(picture), 0, 255).astype(np.uint8)
    if scene.jpeg is not None:
        _, data = cv2.imencode(".jpg", picture, [cv2.IMWRITE_JPEG_QUALITY, scene.jpeg])
        picture = cv2.imdecode(data, cv2.IMREAD_COLOR)
    return picture
