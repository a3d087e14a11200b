"""One thing to change at a time, in order, calm, and none only when all is right."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import replace

import numpy as np
import pytest

from coach import placing
from coach.domain.movement import Movement, Position, Side, View
from coach.domain.plan import PlannedExercise
from coach.domain.pose import Landmark, Pose
from coach.domain.reading import Doubt
from coach.placing import Placing
from tests.goniometry.stick_body import Seen, pose
from tests.goniometry.ways import RANGE, USUAL_MARKS, WAYS

RATE_HZ = 10.0
FLEXION = PlannedExercise(movement=Movement.FLEXION, side=Side.RIGHT, hold_s=10, repetitions=3)


def body(view: View = View.SIDE, side: Side = Side.RIGHT, **seen: float) -> Pose:
    """Somebody whose arms hang."""
    return pose(Movement.FLEXION, 0.0, side, Seen(view, **{"lift_m": 0.2, **seen}))  # type: ignore[arg-type]


RIGHT = body()


def after(
    planned: PlannedExercise, rows: Iterable[Pose | None], start: Placing | None = None
) -> list[Placing]:
    state = placing.begin(planned) if start is None else start
    first_s = 0.0 if not state.found else state.found[-1][0] + 1 / RATE_HZ
    states = []
    for row, seen in enumerate(rows):
        state = placing.advance(state, first_s + row / RATE_HZ, seen)
        states.append(state)
    return states


@pytest.mark.parametrize(("movement", "position", "view"), WAYS)
@pytest.mark.parametrize("side", Side)
def test_whoever_stands_as_asked_is_ready_at_once(
    movement: Movement, position: Position, view: View, side: Side
) -> None:
    planned = PlannedExercise(
        movement=movement, side=side, position=position, view=view, hold_s=10, repetitions=3
    )
    seen = Seen(view, lift_m=0.2 if not position.lying else 0.0)
    start = pose(movement, RANGE[movement][0], side, seen, position=position, marks=USUAL_MARKS)
    states = after(planned, [start] * 11)
    assert {state.doubt for state in states} == {None}
    assert states[-1].ready_s == pytest.approx(1.0)


def test_before_the_first_frame_nobody_is_seen_and_nothing_is_ready() -> None:
    state = placing.begin(FLEXION)
    assert (state.doubt, state.ready_s) == (Doubt.NOBODY, 0.0)


WRONG: dict[Doubt, Callable[[Pose], Pose | None]] = {
    Doubt.NOBODY: lambda _: None,
    Doubt.NOT_ALONE: lambda p: replace(p, people=2),
    Doubt.ANOTHER_PERSON: lambda p: replace(p, another_person=True),
    Doubt.TOO_DARK: lambda p: replace(p, brightness=0.05),
    Doubt.TURN_SIDEWAYS: lambda _: body(View.FRONT),
    Doubt.WRONG_SIDE: lambda _: body(View.SIDE, Side.LEFT),
    Doubt.TOO_FAR: lambda _: body(distance_m=5.2),
    Doubt.TOO_CLOSE: lambda _: body(distance_m=0.9),
    Doubt.NO_ROOM_ABOVE: lambda _: body(lift_m=-0.35),
    Doubt.NO_ROOM: lambda _: body(aside_m=1.0),
}


@pytest.mark.parametrize("doubt", WRONG)
def test_what_is_wrong_is_named_and_gone_once_it_is_mended(doubt: Doubt) -> None:
    states = after(FLEXION, [WRONG[doubt](RIGHT)] * 40)
    assert (states[-1].doubt, states[-1].ready_s) == (doubt, 0.0)
    mended = after(FLEXION, [RIGHT] * 40, states[-1])
    assert mended[-1].doubt is None
    assert mended[-1].ready_s > 1.0


def test_one_thing_at_a_time_in_order() -> None:
    """Everything wrong at once: mended one by one, each is said, none comes before its turn."""
    far = body(View.FRONT, distance_m=5.2)
    course = [
        None,
        replace(far, people=2, brightness=0.05),
        replace(far, brightness=0.05),
        far,
        body(distance_m=5.2, aside_m=2.3),
        body(aside_m=1.0),
        RIGHT,
    ]
    states = after(FLEXION, [seen for seen in course for _ in range(50)])
    said = [states[0].doubt]
    for state in states:
        if state.doubt is not said[-1]:
            said.append(state.doubt)
    # A second person is told from a coat after a while only.
    order = [
        Doubt.NOBODY, Doubt.TOO_DARK, Doubt.NOT_ALONE, Doubt.TOO_DARK, Doubt.TURN_SIDEWAYS,
        Doubt.TOO_FAR, Doubt.NO_ROOM, None,
    ]  # fmt: skip
    assert said == order


def test_a_hip_beyond_the_picture_comes_before_how_one_stands() -> None:
    """The model guesses what it does not see: seen from near, a body may seem to be anyhow."""
    near = body(View.FRONT, distance_m=1.0, lift_m=0.8)
    assert near.image_px[Landmark.RIGHT_HIP, 1] > near.size_px[1]
    doubts = {Doubt.HIPS_OUT_OF_VIEW, Doubt.TOO_CLOSE}
    assert after(FLEXION, [near])[-1].doubt in doubts


@pytest.mark.parametrize("wrong", [body(View.FRONT), None])
def test_nothing_flickers(wrong: Pose | None) -> None:
    """Faults of half a second change nothing; of a second they show after 0.7."""
    short = [RIGHT] * 20 + [wrong] * 5 + [RIGHT] * 20
    states = after(FLEXION, short)
    assert {state.doubt for state in states} == {None}
    assert states[-1].ready_s == pytest.approx(4.4)
    states = after(FLEXION, [RIGHT] * 20 + [wrong] * 10)
    changed = [row for row, state in enumerate(states) if state.doubt is not None]
    assert 0.6 <= (changed[0] - 20) / RATE_HZ <= 0.8
    assert {state.ready_s for state in states[changed[0] :]} == {0.0}


def test_taking_turns_is_not_ready() -> None:
    """Two faults that alternate, or a fault every half second, leave nobody ready."""
    either = after(FLEXION, [body(View.FRONT), None] * 30)
    assert None not in {state.doubt for state in either}
    now_and_then = after(FLEXION, [body(View.FRONT), *[RIGHT] * 4] * 10)
    assert {state.doubt for state in now_and_then} == {Doubt.TURN_SIDEWAYS}


def test_a_coat_that_is_a_person_for_a_second_is_none() -> None:
    states = after(FLEXION, [RIGHT] * 20 + [replace(RIGHT, people=2)] * 14 + [RIGHT] * 30)
    assert {state.doubt for state in states} == {None}


def test_a_timed_exercise_needs_only_somebody_alone_in_the_light() -> None:
    timed = PlannedExercise(exercise="shoulder-rolls", side=Side.LEFT, hold_s=10, repetitions=3)
    lost = body(View.BACK, distance_m=0.7)
    image = lost.image_px.copy()
    image[Landmark.LEFT_SHOULDER] = np.nan
    for seen in (body(View.BACK), lost, replace(lost, image_px=image), body(aside_m=-1.1)):
        assert after(timed, [seen] * 20)[-1].doubt is None
    for doubt in (Doubt.NOBODY, Doubt.NOT_ALONE, Doubt.ANOTHER_PERSON, Doubt.TOO_DARK):
        assert after(timed, [WRONG[doubt](RIGHT)] * 40)[-1].doubt is doubt
