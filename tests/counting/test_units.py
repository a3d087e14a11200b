"""A hand going up the back is counted by the same rules, though its ratio falls."""

from __future__ import annotations

from dataclasses import replace

import pytest

from coach.counting import advance, begin, count, task_of
from coach.domain.movement import Movement, Unit
from coach.domain.progress import EndedBecause, HoldCompleted
from coach.domain.reading import Reading

from .simulator import Arm, Camera, Leg

BACK_CM = 50.9
"""C7 to the posterior superior iliac spines, Ernst et al. 2013."""
REACH = task_of(Movement.HAND_BEHIND_BACK)


def reaching(*stays: tuple[float, float]) -> Arm:
    """The wrist's height, counted upward from C7, in hundredths of the back, hanging between."""
    legs = [Leg(-125, 0, 2)]
    for level, stay_s in stays:
        legs += [Leg(level, 1.5, stay_s), Leg(-125, 1.5, 3)]
    return Arm(-125, tuple(legs), breath_deg=0.8, sway_deg=0.5)


def look(arm: Arm, fps: float = 30.0, error: float = 0.06) -> list[Reading]:
    """Heights as the goniometry gives them: 0 at C7, falling as the hand goes up."""
    seen = Camera(fps, 0.7, 1.0, jitter=0.3).look(arm)
    return [
        replace(x, value=None if x.value is None else -x.value / 100, error=error) for x in seen
    ]


@pytest.mark.parametrize("fps", [10.0, 30.0, 60.0])
def test_holds_and_heights_are_true(fps: float) -> None:
    first, second = count(look(reaching((-80, 6), (-62, 8)), fps), REACH)
    for rep, height, held_s in ((first, 0.80, 6.0), (second, 0.62, 8.0)):
        assert rep.value == pytest.approx(height, abs=0.015)
        assert rep.held_s == pytest.approx(held_s, abs=0.7)
        assert (rep.error, rep.unit) == (0.06, Unit.RATIO)
        assert 0 < rep.spread < 0.03
        assert rep.ended_because is EndedBecause.LET_GO


def test_an_asked_hold_is_completed() -> None:
    state, done = begin(task_of(Movement.HAND_BEHIND_BACK, hold_s=5.0)), []
    for reading in look(reaching((-70, 9))):
        state, events = advance(state, reading)
        done += [event for event in events if isinstance(event, HoldCompleted)]
    (completed,) = done
    assert completed.time_s == pytest.approx(3.5 + 5.0, abs=0.7)


def test_shifting_the_hand_by_three_centimetres_is_no_range() -> None:
    shift = 100 * 3 / BACK_CM
    legs = (Leg(-125, 0, 3), Leg(-125 + shift, 1.0, 5), Leg(-125, 1.0, 3))
    assert count(look(Arm(-125, legs)), REACH) == ()


def test_each_movement_has_its_unit_and_its_rest() -> None:
    for movement in Movement:
        task = task_of(movement, 20.0, 90.0)
        assert (task.hold_s, task.target_deg, task.unit) == (20.0, 90.0, movement.unit)
    assert task_of(Movement.ABDUCTION).hanging_deg == 0.0
    assert task_of(Movement.EXTERNAL_ROTATION_90).hanging_deg is None
    assert REACH.hanging_deg is None
