"""The other arm is noticed when it alone makes the movement, and not otherwise."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
import pytest

from coach.domain.movement import VIEWS, Movement, Position, Side, View
from coach.domain.pose import Pose
from coach.placing import watch, wrong_arm
from tests.goniometry.stick_body import Seen, Way, pose

RATE_HZ = 10.0
ABDUCTION, ROTATION = Movement.ABDUCTION, Movement.EXTERNAL_ROTATION_0


def both(
    movement: Movement, near: float | None, other: float | None, side: Side, view: View
) -> Pose:
    """Both arms at values; None hangs. The points of the other arm are from its own body."""
    ours, theirs = (
        pose(ABDUCTION, 4.0, each, Seen(view, lift_m=0.2), way=Way(bend_deg=5.0))
        if value is None
        else pose(movement, value, each, Seen(view, lift_m=0.2))
        for each, value in ((side, near), (side.other, other))
    )
    rows = [11, 13, 15, 17, 19, 21] if side.other is Side.LEFT else [12, 14, 16, 18, 20, 22]
    image, world = ours.image_px.copy(), ours.world_m.copy()
    image[rows], world[rows] = theirs.image_px[rows], theirs.world_m[rows]
    return replace(ours, image_px=image, world_m=world)


def calls(
    movement: Movement,
    course: Sequence[tuple[float | None, float | None]],
    side: Side = Side.LEFT,
    view: View = View.FRONT,
    position: Position = Position.STANDING,
) -> list[float]:
    """When it is called."""
    state, times = watch(side, movement, position), []
    for row, (near, other) in enumerate(course):
        seen = both(movement, near, other, side, view)
        state, wrong = wrong_arm.advance(state, row / RATE_HZ, seen)
        if wrong:
            times.append(row / RATE_HZ)
    return times


REST = [(None, None)] * 10
UP = [float(v) for v in np.linspace(5, 85, 15)]


@pytest.mark.parametrize("side", Side)
@pytest.mark.parametrize("view", VIEWS[ABDUCTION, Position.STANDING])
def test_the_other_arm_raised_alone_is_called_once(side: Side, view: View) -> None:
    course = [*REST, *((None, v) for v in UP), *[(None, 85.0)] * 40]
    times = calls(ABDUCTION, course, side, view)
    assert len(times) == 1
    above_35_s = (10 + next(i for i, v in enumerate(UP) if v > 39)) / RATE_HZ
    assert 1.5 <= times[0] - above_35_s <= 2.0


def test_the_exercised_arm_or_both_are_not_called() -> None:
    assert not calls(ABDUCTION, [*REST, *((v, None) for v in UP), *[(85.0, None)] * 40])
    assert not calls(ABDUCTION, [*REST, *((v, v) for v in UP), *[(85.0, 85.0)] * 40])
    assert not calls(ABDUCTION, [*REST, *((v / 3, v) for v in UP), *[(28.0, 85.0)] * 40])


@pytest.mark.parametrize(("up", "hold_s"), [(80.0, 1.2), (170.0, 3.0)])
def test_a_signal_is_not_called(up: float, hold_s: float) -> None:
    """Raised to the side for a second, or the hand above the head for three."""
    course = [*REST, (None, 60.0), *[(None, up)] * round(hold_s * RATE_HZ), *REST]
    assert not calls(ABDUCTION, course)


def test_a_helping_hand_is_not_called() -> None:
    """Across the body the other hand pulls the exercised arm, which stays where it is."""
    course = [(20.0, None)] * 10 + [(20.0, 60.0)] * 40
    assert not calls(Movement.HORIZONTAL_ADDUCTION, course)


@pytest.mark.parametrize("side", Side)
def test_the_other_forearm_turned_alone_is_called(side: Side) -> None:
    turned = [(None, float(v)) for v in np.linspace(0, 60, 15)]
    course = [*REST, *[(None, 0.0)] * 5, *turned, *[(None, 60.0)] * 30]
    assert len(calls(ROTATION, course, side)) == 1


def test_forearms_that_turn_together_are_not_called() -> None:
    """With a stick in both hands the one goes out as the other comes in."""
    turns = np.linspace(0, 50, 15)
    course = [*[(0.0, 0.0)] * 10, *((float(v), -float(v)) for v in turns), *[(50.0, -50.0)] * 30]
    assert not calls(ROTATION, course)
    assert not calls(ROTATION, [*[(0.0, 0.0)] * 10, *((float(v), 0.0) for v in turns)] * 2)


@pytest.mark.parametrize(
    ("movement", "position"),
    [way for way, views in VIEWS.items() if views[0] in (View.SIDE, View.FOOT)]
    + [(ROTATION, Position.DOORWAY), (Movement.HAND_BEHIND_BACK, Position.STANDING)],
)
def test_where_the_other_arm_is_hidden_it_is_never_called(
    movement: Movement, position: Position
) -> None:
    course = [*REST, *[(None, 85.0)] * 60]
    state = watch(Side.LEFT, movement, position)
    for row, (near, other) in enumerate(course):
        seen = both(ABDUCTION, near, other, Side.LEFT, View.FRONT)
        state, wrong = wrong_arm.advance(state, row / RATE_HZ, seen)
        assert not wrong
