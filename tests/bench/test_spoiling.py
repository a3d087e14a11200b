"""A spoilt picture moves points as the closed forms of its camera say."""

from __future__ import annotations

import cv2
import numpy as np
import pytest

from coach.domain.movement import Side
from tests.bench.spoiling import Array, Clean, Spoil, barrel, turned
from tests.bench.spoiling_ways import WAYS

WIDTH, HEIGHT, FOV_DEG = 320, 240, 62.0
FOCAL_PX = WIDTH / 2 / np.tan(np.radians(FOV_DEG / 2))
CENTRE_PX = np.array([WIDTH / 2, HEIGHT / 2])


def clean_with_dot(dot_px: Array) -> Clean:
    picture = np.zeros((HEIGHT, WIDTH, 3), np.uint8)
    cv2.circle(picture, (int(dot_px[0]), int(dot_px[1])), 3, (255, 255, 255), -1)
    points_px = np.zeros((33, 2))
    points_px[[11, 12]], points_px[[23, 24]] = (150, 80), (150, 150)
    points_px[[13, 15], 0], points_px[[13, 15], 1] = (190, 220), 90
    points_px[[14, 16]] = points_px[[13, 15]]
    return Clean(
        picture, (picture,), Side.LEFT, FOV_DEG, points_px, np.array([240.0, 90.0]), picture,
        np.random.default_rng(1),
    )  # fmt: skip


def dot_of(spoil: Spoil, dot_px: Array) -> Array:
    picture = spoil(clean_with_dot(dot_px))[:, :, 0].astype(float)
    rows, columns = np.indices(picture.shape)
    weights = picture / picture.sum()
    return np.array([(columns * weights).sum(), (rows * weights).sum()])


@pytest.mark.parametrize("k1", [-0.15, -0.30])
def test_a_lens_draws_radii_in_by_its_coefficient(k1: float) -> None:
    dot_px = np.array([250.0, 180.0])
    ideal = (dot_px - CENTRE_PX) / FOCAL_PX
    bent = ideal * (1 + k1 * ideal @ ideal)
    assert dot_of(barrel(k1), dot_px) == pytest.approx(CENTRE_PX + FOCAL_PX * bent, abs=0.5)


def test_a_rolled_camera_turns_the_picture_about_its_middle() -> None:
    angle = np.radians(10.0)
    turn = np.array([[np.cos(angle), -np.sin(angle)], [np.sin(angle), np.cos(angle)]])
    off = dot_of(turned(roll_deg=10.0), CENTRE_PX + np.array([60.0, 0.0])) - CENTRE_PX
    assert off == pytest.approx(turn @ [60.0, 0.0], abs=0.5)


@pytest.mark.parametrize(("way", "axis"), [({"up_deg": 10.0}, 1), ({"right_deg": 10.0}, 0)])
def test_a_camera_turned_up_or_right_sees_its_middle_go_the_other_way(
    way: dict[str, float], axis: int
) -> None:
    expected = CENTRE_PX.copy()
    shift_px = FOCAL_PX * np.tan(np.radians(10.0))
    expected[axis] += shift_px if axis else -shift_px
    assert dot_of(turned(**way), CENTRE_PX) == pytest.approx(expected, abs=0.5)


@pytest.mark.parametrize("name", WAYS)
def test_no_way_writes_to_the_clean_picture(name: str) -> None:
    clean = clean_with_dot(np.array([100.0, 100.0]))
    before = clean.picture.copy()
    WAYS[name].spoil(clean)
    assert np.array_equal(clean.picture, before)
