"""The hand leaves the picture when, by the pinhole, the circle of a body of known build does."""

from __future__ import annotations

import numpy as np
import pytest

from coach.domain.movement import Movement, Position, Side, View
from coach.domain.reading import Doubt
from coach.goniometry.offsets import DIRECTIONS, OFFSETS
from coach.goniometry.sight import Sight
from coach.placing import no_room
from tests.goniometry.stick_body import MAN, Array, Marks, Seen, Way, arm, camera, pose

PALM_M = 0.0862 / 2
"""From the wrist half way to the third knuckle (de Leva 1996, J Biomech 29:1223-1230, men)."""
STRAIGHT, BENT = Way(out_deg=0.0, bend_deg=0.0), Way(out_deg=0.0, bend_deg=90.0)
WAYS = [
    (Movement.FLEXION, Position.STANDING, View.SIDE, (0.0, 180.0)),
    (Movement.EXTENSION, Position.STANDING, View.SIDE, (0.0, 80.0)),
    (Movement.ABDUCTION, Position.STANDING, View.FRONT, (0.0, 180.0)),
    (Movement.ABDUCTION, Position.STANDING, View.BACK, (0.0, 180.0)),
    (Movement.HORIZONTAL_ADDUCTION, Position.STANDING, View.FRONT, (0.0, 130.0)),
    (Movement.EXTERNAL_ROTATION_0, Position.STANDING, View.FRONT, (-45.0, 90.0)),
    (Movement.EXTERNAL_ROTATION_90, Position.STANDING, View.SIDE, (-70.0, 90.0)),
    (Movement.EXTERNAL_ROTATION_0, Position.SUPINE, View.FOOT, (-45.0, 90.0)),
    (Movement.HORIZONTAL_ADDUCTION, Position.SUPINE, View.FOOT, (0.0, 130.0)),
    (Movement.FLEXION, Position.SUPINE, View.SIDE, (0.0, 180.0)),
    (Movement.EXTENSION, Position.PRONE, View.SIDE, (0.0, 80.0)),
]
"""With full ranges (AAOS 1965, by the neutral-zero method)."""
NEAR_PX = 12.0
"""A border is not told nearer than this: the body's build is assumed, its shoulders 4 % broader
than these."""
FOOT_NEAR_PX = 20.0
TRUNK = [11, 12, 23, 24]
"""Shoulders and hips: where they are not in the picture, that is said and not this."""


def marks_of(view: View) -> Marks:
    """The body's points above its joints as the goniometer finds those of a pose model."""
    up = OFFSETS[:4, DIRECTIONS.index("up")]
    if view is View.SIDE:
        up = up + OFFSETS[:4, DIRECTIONS.index("up, trunk seen from the side")]
    if view is View.FOOT:
        up = 0.0 * up
    near, other = np.zeros((4, 3)), np.zeros((4, 3))
    near[:2, 1], other[:2, 1] = up[[0, 2]], up[[1, 3]]
    return Marks(near, other)


def true_way_px(
    movement: Movement, side: Side, position: Position, seen: Seen, ends: tuple[float, float]
) -> Array:
    """The palm's places (N, 2), from the shoulder of the body at rest."""
    way = BENT if movement.rotating else STRAIGHT
    axes, eye = camera(seen, side, position, MAN)
    rest = np.array([0.0, MAN.trunk, side.sign * MAN.shoulder])
    points = []
    for value in np.linspace(*ends, 61):
        upper, fore = arm(movement, value, side, way, MAN)
        palm = rest + MAN.upper_arm * upper + (MAN.forearm + PALM_M) * fore
        points.append((palm - eye) @ axes.T)
    focal_px = max(seen.size_px) / 2 / np.tan(np.radians(seen.field_of_view_deg) / 2)
    space = np.array(points)
    return focal_px * space[:, :2] / space[:, 2:] + np.array(seen.size_px) / 2


def rooms(way_px: Array, size_px: tuple[int, int]) -> tuple[float, float]:
    """Pixels between the way and the top, and the nearest other edge; negative outside."""
    width, height = size_px
    x, y = way_px.T
    return float(y.min()), float(min(x.min(), width - x.max(), height - y.max()))


@pytest.mark.parametrize(("movement", "position", "view", "ends"), WAYS)
@pytest.mark.parametrize("side", Side)
def test_the_arm_has_no_room_when_its_true_way_leaves_the_picture(
    movement: Movement, position: Position, view: View, ends: tuple[float, float], side: Side
) -> None:
    near_px = FOOT_NEAR_PX if view is View.FOOT else NEAR_PX
    found: set[Doubt | None] = set()
    for distance_m in (1.4, 1.8, 2.6):
        for aside_m in np.linspace(-1.0, 1.0, 9):
            for lift_m in (-0.45, -0.3, -0.1, 0.15, 0.3):
                seen = Seen(view, distance_m, aside_m=aside_m, lift_m=lift_m)
                body = pose(
                    movement, 0.0, side, seen, position=position, way=STRAIGHT, marks=marks_of(view)
                )
                if not np.all((body.image_px[TRUNK] >= 0) & (body.image_px[TRUNK] <= seen.size_px)):
                    continue
                top_px, other_px = rooms(
                    true_way_px(movement, side, position, seen, ends), seen.size_px
                )
                if min(abs(top_px), abs(other_px)) < near_px:
                    continue
                expected = None
                if top_px < 0:
                    expected = Doubt.NO_ROOM_ABOVE
                elif other_px < 0:
                    expected = Doubt.NO_ROOM
                where = (distance_m, aside_m, lift_m, top_px, other_px)
                assert no_room(Sight.of(body, side), movement, view, None) is expected, where
                found.add(expected)
    assert {None, Doubt.NO_ROOM} <= found


@pytest.mark.parametrize("size_px", [(640, 480), (480, 640), (1280, 720)])
def test_a_target_that_is_not_to_be_passed_needs_less_room(size_px: tuple[int, int]) -> None:
    """The palm at 90 degrees is level with the shoulder, 0.62 m before it."""
    seen = Seen(View.SIDE, 1.5 if size_px[0] > size_px[1] else 0.9, size_px=size_px, lift_m=-0.1)
    body = pose(Movement.FLEXION, 0.0, Side.RIGHT, seen, marks=marks_of(View.SIDE))
    sight = Sight.of(body, Side.RIGHT)
    whole = true_way_px(Movement.FLEXION, Side.RIGHT, Position.STANDING, seen, (0.0, 180.0))
    half = true_way_px(Movement.FLEXION, Side.RIGHT, Position.STANDING, seen, (0.0, 60.0))
    assert rooms(whole, size_px)[0] < -NEAR_PX
    assert rooms(half, size_px)[0] > NEAR_PX
    assert no_room(sight, Movement.FLEXION, View.SIDE, None) is Doubt.NO_ROOM_ABOVE
    assert no_room(sight, Movement.FLEXION, View.SIDE, 60.0) is not Doubt.NO_ROOM_ABOVE


def test_behind_the_back_the_elbow_needs_room_beside_the_body() -> None:
    """It goes 0.24 m out (0.282 sin 60); 0.185 m of half shoulders make 0.43 beside the middle."""
    seen = Seen(View.BACK, 2.4)
    focal_px = 320 / np.tan(np.radians(31.5))
    for inside_m, expected in ((0.48, None), (0.37, Doubt.NO_ROOM)):
        aside_m = inside_m - 320 / focal_px * 2.4
        body = pose(
            Movement.HAND_BEHIND_BACK, 0.9, Side.LEFT, Seen(View.BACK, 2.4, aside_m=aside_m)
        )
        sight = Sight.of(body, Side.LEFT)
        assert sight.near.shoulder_px[0] < seen.size_px[0] / 2
        assert no_room(sight, Movement.HAND_BEHIND_BACK, View.BACK, None) is expected
