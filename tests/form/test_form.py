"""Faults of form against readings whose course is known in closed form."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest

from coach.domain.form import NO_LIMITS, FormFault, FormLimits
from coach.domain.movement import VIEWS, Movement, Position, Side, View
from coach.domain.reading import NO_FORM, Doubt, Form, Reading
from coach.form import (
    FormEvent,
    FormMended,
    FormNoticed,
    Usual,
    advance,
    begin,
    default_limits,
    faults_of,
)

LIMITS = FormLimits(
    lean_deg=6.0, turn_deg=5.0, hike_ratio=0.05, elbow_deg=(70.0, 110.0), drift_deg=10.0
)
GOOD = Form(
    trunk_lean_deg=0.0,
    trunk_turn_deg=0.0,
    elbow_flexion_deg=90.0,
    shoulder_hike_ratio=0.0,
    elbow_drift_deg=0.0,
    trunk_lean_error_deg=4.0,
    trunk_turn_error_deg=10.0,
    elbow_flexion_error_deg=15.0,
    shoulder_hike_error_ratio=0.04,
    elbow_drift_error_deg=9.0,
)
COLUMNS = tuple(Form.__struct_fields__)


def form(**changed: float | None) -> Form:
    return Form(**{**{name: getattr(GOOD, name) for name in COLUMNS}, **changed})


def leaning(deg: float | None) -> Form:
    return form(trunk_lean_deg=deg)


def watched(
    course: Callable[[float], Form], seconds: float, fps: float = 10.0, limits: FormLimits = LIMITS
) -> list[FormEvent]:
    watch, out = begin(limits), list[FormEvent]()
    for i in range(round(seconds * fps)):
        watch, events = advance(watch, Reading(i / fps, 40.0, 5.0, form=course(i / fps)))
        out += events
    return out


@pytest.mark.parametrize(
    ("changed", "fault"),
    [
        # Each just past its limit by half of its error (6 + 2, 5 + 5, 0.05 + 0.02, 110 + 7.5 ...).
        ({"trunk_lean_deg": 8.1}, FormFault.LEAN),
        ({"trunk_lean_deg": -8.1}, FormFault.LEAN),
        ({"trunk_turn_deg": 10.1}, FormFault.TURN),
        ({"trunk_turn_deg": -10.1}, FormFault.TURN),
        ({"shoulder_hike_ratio": 0.071}, FormFault.HIKE),
        ({"elbow_flexion_deg": 117.6}, FormFault.BENT),
        ({"elbow_flexion_deg": 62.4}, FormFault.STRAIGHT),
        ({"elbow_drift_deg": 14.6}, FormFault.DRIFT),
        ({"elbow_drift_deg": -14.6}, FormFault.DRIFT),
    ],
)
def test_each_value_past_its_limit_is_its_own_fault(
    changed: dict[str, float | None], fault: FormFault
) -> None:
    assert faults_of(form(**changed), LIMITS) == (fault,)


@pytest.mark.parametrize(
    "changed",
    [
        {"trunk_lean_deg": 7.9},
        {"trunk_turn_deg": -9.9},
        {"shoulder_hike_ratio": 0.069},
        {"shoulder_hike_ratio": -0.3},
        {"elbow_flexion_deg": 117.4},
        {"elbow_flexion_deg": 62.6},
        {"elbow_drift_deg": 14.4},
        {"trunk_lean_deg": None},
        {"trunk_lean_deg": 40.0, "trunk_lean_error_deg": None},
        {"trunk_lean_deg": 40.0, "trunk_lean_error_deg": 70.0},
    ],
)
def test_what_the_error_leaves_uncertain_is_no_fault(changed: dict[str, float | None]) -> None:
    assert faults_of(form(**changed), LIMITS) == ()


def test_what_is_not_asked_or_not_seen_is_no_fault() -> None:
    worst = form(trunk_lean_deg=90.0, trunk_turn_deg=90.0, elbow_flexion_deg=0.0)
    assert faults_of(worst, NO_LIMITS) == ()
    assert faults_of(NO_FORM, LIMITS) == ()


def test_the_trunk_comes_before_the_elbow() -> None:
    both = form(elbow_flexion_deg=20.0, trunk_lean_deg=20.0)
    assert faults_of(both, LIMITS) == (FormFault.LEAN, FormFault.STRAIGHT)


@pytest.mark.parametrize("fps", [10.0, 15.0, 30.0])
def test_a_lean_is_noticed_after_it_has_lasted_and_mended_alike(fps: float) -> None:
    events = watched(lambda t: leaning(15.0 if 3.0 <= t < 7.0 else 1.0), 12.0, fps)
    noticed, mended = events
    assert isinstance(noticed, FormNoticed)
    assert isinstance(mended, FormMended)
    assert (noticed.fault, noticed.value, noticed.error) == (FormFault.LEAN, 15.0, 4.0)
    # Four fifths of 1.5 s at the least, all of it and a frame at the most.
    assert 1.2 - 1 / fps <= noticed.time_s - 3.0 <= 1.5 + 1 / fps
    assert mended.fault is FormFault.LEAN
    assert 1.2 - 1 / fps <= mended.time_s - 7.0 <= 1.5 + 1 / fps


def test_a_sway_of_a_second_is_left_alone() -> None:
    assert watched(lambda t: leaning(20.0 if t % 4.0 < 1.0 else 0.0), 30.0) == []


def test_between_the_limit_and_certainty_nothing_changes() -> None:
    # Up to 15, then for good to 7: past the limit of 6, not past it for certain (8).
    events = watched(lambda t: leaning(15.0 if t < 4.0 else 7.0), 20.0)
    assert [type(event) for event in events] == [FormNoticed]
    assert watched(lambda _: leaning(7.0), 20.0) == []


def test_wrong_frames_neither_hide_nor_make_a_fault() -> None:
    rng = np.random.default_rng(3)
    wrong = rng.permutation(np.arange(300) % 10 == 0)
    lean = watched(lambda t: leaning(-40.0 if wrong[round(10 * t)] else 1.0), 30.0)
    assert lean == []
    seen = watched(lambda t: leaning(0.0 if round(10 * t) % 10 == 0 else 15.0), 30.0)
    assert [type(event) for event in seen] == [FormNoticed]


def test_what_was_not_seen_has_not_lasted() -> None:
    def course(t: float) -> Form:
        return leaning(15.0 if t % 2.0 < 1.0 else None)

    assert watched(course, 20.0) == []
    # A blink of 0.3 s does not interrupt.
    blinking = watched(lambda t: leaning(None if t % 1.0 < 0.25 else 15.0), 6.0)
    assert [type(event) for event in blinking] == [FormNoticed]


def test_the_same_is_not_said_again_before_one_can_act() -> None:
    # Four seconds wrong, three right, again and again: mended each time, said each 8 s at the most.
    events = watched(lambda t: leaning(15.0 if t % 7.0 < 4.0 else 0.0), 70.0)
    said = [event.time_s for event in events if isinstance(event, FormNoticed)]
    assert len(said) >= 4
    assert np.diff(said).min() >= 8.0


def test_two_faults_at_once_are_told_one_after_the_other() -> None:
    events = watched(lambda _: form(trunk_lean_deg=15.0, elbow_flexion_deg=30.0), 12.0)
    assert [event.fault for event in events] == [FormFault.LEAN, FormFault.STRAIGHT]
    assert events[1].time_s - events[0].time_s >= 4.0


def test_a_reading_not_later_changes_nothing() -> None:
    watch, _ = advance(begin(LIMITS), Reading(2.0, 40.0, 5.0, form=leaning(15.0)))
    for time_s in (2.0, 1.0):
        same, events = advance(watch, Reading(time_s, 40.0, 5.0, form=leaning(15.0)))
        assert same is watch
        assert events == ()


def test_a_doubted_reading_without_form_is_no_sight() -> None:
    watch = begin(LIMITS)
    for i in range(100):
        watch, events = advance(watch, Reading(i / 10, None, None, Doubt.UNSURE))
        assert events == ()
    assert watch.faults == ()


def test_every_measured_view_has_limits_and_no_more_than_it_sees() -> None:
    for (movement, position), views in VIEWS.items():
        for view in views:
            limits = default_limits(movement, position, view)
            if view is View.FOOT or position is Position.DOORWAY:
                assert limits.lean_deg is None
            else:
                assert limits.lean_deg is not None
            turning = (Movement.EXTERNAL_ROTATION_0, Position.STANDING)
            assert (limits.turn_deg is not None) == ((movement, position) == turning)
            assert (limits.drift_deg is not None) == (limits.turn_deg is not None)


def usual(side: Side, *turns_deg: float) -> Usual:
    known = Usual.of(Movement.EXTERNAL_ROTATION_0, Position.STANDING, side)
    assert known is not None
    for turn_deg in turns_deg:
        known = known.after(form(trunk_turn_deg=turn_deg), ())
    return known


@pytest.mark.parametrize("side", Side)
def test_a_turn_backward_beyond_the_own_usual_is_a_fault(side: Side) -> None:
    """Five degrees beyond the middle of 3, 4 and 6, far inside the limit of 5 + 5; positive is
    toward picture right, where the left shoulder of somebody facing the camera goes backward."""
    back = -side.sign
    before = usual(side, 3.0 * back, 6.0 * back, 4.0 * back)
    turned = {deg: form(trunk_turn_deg=deg * back) for deg in (8.9, 9.1, -9.0)}
    assert faults_of(turned[9.1], LIMITS, before) == (FormFault.TURN,)
    assert faults_of(turned[8.9], LIMITS, before) == ()
    assert faults_of(turned[-9.0], LIMITS, before) == ()
    assert faults_of(turned[9.1], LIMITS) == faults_of(turned[9.1], LIMITS, usual(side)) == ()
    assert faults_of(turned[9.1], FormLimits(lean_deg=6.0), before) == ()
    # Even the first repetition is told of a turn that feigns range, not of one that costs it.
    assert faults_of(form(trunk_turn_deg=10.1 * back), LIMITS, usual(side)) == (FormFault.TURN,)
    assert faults_of(form(trunk_turn_deg=-20.0 * back), LIMITS, usual(side)) == ()


def test_a_repetition_at_fault_for_its_turn_is_not_usual() -> None:
    known = usual(Side.LEFT, 1.0)
    assert known.after(form(trunk_turn_deg=20.0), (FormFault.TURN,)) == known
    assert known.after(form(trunk_turn_deg=None), ()) == known
    assert Usual.of(Movement.ABDUCTION, Position.STANDING, Side.LEFT) is None


def test_a_turn_beyond_the_usual_is_noticed_while_it_lasts() -> None:
    known = usual(Side.LEFT, 1.0)
    watch, out = begin(LIMITS, known), list[FormEvent]()
    for i in range(30):
        watch, events = advance(watch, Reading(i / 10, 40.0, 5.0, form=form(trunk_turn_deg=8.0)))
        out += events
    assert [event.fault for event in out] == [FormFault.TURN]
