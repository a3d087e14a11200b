"""How the rest of the body goes along, against sticks that lean, turn, hike, bend and drift."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import numpy as np
import pytest

from coach.domain.movement import Movement, Position, Side, View
from coach.domain.pose import PoseModel
from coach.domain.reading import Form
from tests.goniometry.stick_body import Way, recording
from tests.goniometry.ways import DISTINCT, USUAL_MARKS, end_of, read, seen_from

FLEXION, EXTENSION, ABDUCTION = Movement.FLEXION, Movement.EXTENSION, Movement.ABDUCTION
ROTATION_0, LEVEL = Movement.EXTERNAL_ROTATION_0, Movement.HORIZONTAL_ADDUCTION
STANDING, SITTING, SUPINE = Position.STANDING, Position.SITTING, Position.SUPINE
FREE = [way for way in DISTINCT if way[1] is not Position.DOORWAY]
"""In a doorway the trunk's turn is the movement."""


DONE = {
    "nothing": Way(),
    "lean right": Way(lean_right_deg=10.0),
    "lean left": Way(lean_right_deg=-8.0),
    "lean forward": Way(lean_forward_deg=10.0),
    "lean backward": Way(lean_forward_deg=-8.0),
    "turn left": Way(turn_left_deg=15.0),
    "turn right": Way(turn_left_deg=-15.0),
    "hike": Way(hike=0.12),
    "bend": Way(bend_deg=35.0),
    "out": Way(out_deg=20.0),
    "in": Way(out_deg=-4.0),
}


@cache
def forms(movement: Movement, position: Position, view: View, side: Side) -> dict[str, Form]:
    """The arm is raised half way and held while the body does one thing after the other."""
    rest, held = end_of(movement, position, 0.5)
    done = {name: way for name, way in DONE.items() if name != "bend" or not movement.rotating}
    rise = np.linspace(rest, held, 6)[1:-1]
    values = np.concatenate([np.full(9, rest), rise, np.full(2 * len(done), held)])
    ways = [Way()] * 13 + [way for way in done.values() for _ in range(2)]
    flat = view in (View.FRONT, View.BACK)
    seen = seen_from(view, movement, depth_shown=0.75 if flat else 1.0)
    poses = recording(
        movement, values, side, seen, ways=ways, position=position, marks=USUAL_MARKS, rate_hz=4.0
    )
    readings = read(poses, movement, side, view, position).readings
    return {
        name: reading.form
        for name, reading in zip(done, readings[13::2], strict=True)
        if reading.doubt is None
    }


def within(found: float | None, error: float | None, wanted: float) -> bool:
    """Inside its interval, on the right side of zero, and not just zero."""
    assert found is not None
    assert error is not None
    assert error > 0
    return abs(found - wanted) <= error and (wanted == 0 or found / wanted > 0.25)


@pytest.mark.parametrize(("movement", "position", "view"), FREE)
@pytest.mark.parametrize("side", Side)
def test_who_only_raises_the_arm_does_nothing_else(
    movement: Movement, position: Position, view: View, side: Side
) -> None:
    """Half of each stated error: it leaves room for those who do something."""
    form = forms(movement, position, view, side)["nothing"]
    for name in ("trunk_lean", "trunk_turn", "elbow_drift", "shoulder_hike"):
        unit = "ratio" if name == "shoulder_hike" else "deg"
        found = getattr(form, f"{name}_{unit}")
        error = getattr(form, f"{name}_error_{unit}")
        assert (found is None) == (error is None)
        if found is not None:
            assert abs(found) <= error / 2, name


@pytest.mark.parametrize(
    ("movement", "position", "view"), [way for way in FREE if way[2] is not View.FOOT]
)
@pytest.mark.parametrize("side", Side)
def test_lean_is_read_in_the_picture(
    movement: Movement, position: Position, view: View, side: Side
) -> None:
    """Positive toward picture right: from in front that is the person's left, from behind the
    right; a right side shows somebody who faces picture right and leans there when forward, or
    lying on the back rises clockwise."""
    names = ("lean forward", "lean backward") if view is View.SIDE else ("lean right", "lean left")
    sign = {View.SIDE: side.sign, View.BACK: 1, View.FRONT: -1}[view]
    there, back = (forms(movement, position, view, side)[name] for name in names)
    assert within(there.trunk_lean_deg, there.trunk_lean_error_deg, sign * 10.0)
    assert within(back.trunk_lean_deg, back.trunk_lean_error_deg, sign * -8.0)


def test_along_the_body_no_lean_is_claimed() -> None:
    form = forms(ROTATION_0, SUPINE, View.FOOT, Side.LEFT)["lean right"]
    assert form.trunk_lean_deg is None
    assert form.trunk_lean_error_deg is None


@pytest.mark.parametrize(
    ("movement", "position", "view"),
    [way for way in FREE if (way[0], way[2]) != (LEVEL, View.FRONT)],
)
@pytest.mark.parametrize("side", Side)
def test_turns_either_way_are_read(
    movement: Movement, position: Position, view: View, side: Side
) -> None:
    left, right = (
        forms(movement, position, view, side)[f"turn {way}"] for way in ("left", "right")
    )
    assert left.trunk_turn_deg is not None
    assert right.trunk_turn_deg is not None
    assert left.trunk_turn_deg * right.trunk_turn_deg < 0
    for form in (left, right):
        assert within(abs(form.trunk_turn_deg or 0.0), form.trunk_turn_error_deg, 15.0)


@pytest.mark.parametrize("view", [View.FRONT, View.BACK])
def test_a_turn_is_positive_toward_picture_right(view: View) -> None:
    """As the trunk's front turns; from in front that is toward the person's left."""
    to_right = "turn left" if view is View.FRONT else "turn right"
    form = forms(ABDUCTION, STANDING, view, Side.RIGHT)[to_right]
    assert within(form.trunk_turn_deg, form.trunk_turn_error_deg, 15.0)


@pytest.mark.parametrize("side", Side)
def test_a_turn_is_read_behind_a_level_arm(side: Side) -> None:
    """Or not claimed: None is for what a view cannot tell."""
    for way in ("turn left", "turn right"):
        form = forms(LEVEL, STANDING, View.FRONT, side)[way]
        found = form.trunk_turn_deg
        assert found is None or within(abs(found), form.trunk_turn_error_deg, 15.0)


@pytest.mark.parametrize(
    ("movement", "position", "view"), [way for way in FREE if way[2] is not View.FOOT]
)
@pytest.mark.parametrize("side", Side)
def test_a_hiked_shoulder_is_read(
    movement: Movement, position: Position, view: View, side: Side
) -> None:
    """Twelve per cent of the trunk are six centimetres; what goes with the arm's elevation is not
    a hike."""
    form = forms(movement, position, view, side)["hike"]
    assert within(form.shoulder_hike_ratio, form.shoulder_hike_error_ratio, 0.12)


@pytest.mark.parametrize("side", Side)
def test_a_shoulder_hiked_away_from_the_feet_is_read(side: Side) -> None:
    """Or not claimed: None is for what a view cannot tell."""
    form = forms(ROTATION_0, SUPINE, View.FOOT, side)["hike"]
    found = form.shoulder_hike_ratio
    assert found is None or within(found, form.shoulder_hike_error_ratio, 0.12)


@pytest.mark.parametrize(
    ("movement", "position", "view", "bend_deg"),
    [
        (FLEXION, STANDING, View.SIDE, 35.0),
        (FLEXION, SUPINE, View.SIDE, 35.0),
        (EXTENSION, SITTING, View.SIDE, 35.0),
        (ROTATION_0, STANDING, View.FRONT, 90.0),
        (ROTATION_0, SUPINE, View.FOOT, 90.0),
        (Movement.EXTERNAL_ROTATION_90, STANDING, View.SIDE, 90.0),
        (LEVEL, STANDING, View.FRONT, 35.0),
        (LEVEL, SUPINE, View.FOOT, 35.0),
    ],
)
@pytest.mark.parametrize("side", Side)
def test_a_bent_elbow_is_read(
    movement: Movement, position: Position, view: View, bend_deg: float, side: Side
) -> None:
    seen = forms(movement, position, view, side)
    usual, bent = seen["nothing"], seen["nothing" if movement.rotating else "bend"]
    assert within(bent.elbow_flexion_deg, bent.elbow_flexion_error_deg, bend_deg)
    if bend_deg == 35.0 and movement is not LEVEL:
        assert within(usual.elbow_flexion_deg, usual.elbow_flexion_error_deg, 8.0)
        assert (bent.elbow_flexion_deg or 0.0) > (usual.elbow_flexion_deg or 0.0) + 10.0


@pytest.mark.parametrize("side", Side)
def test_an_elbow_bent_toward_the_camera_is_read(side: Side) -> None:
    """Or not claimed: None is for what a view cannot tell."""
    form = forms(ABDUCTION, STANDING, View.FRONT, side)["bend"]
    found = form.elbow_flexion_deg
    assert found is None or within(found, form.elbow_flexion_error_deg, 35.0)


@pytest.mark.parametrize("side", Side)
def test_a_level_arm_that_rises_drifts(side: Side) -> None:
    """Upward is positive: the side to which the plane of movement is left."""
    up, down = (forms(LEVEL, STANDING, View.FRONT, side)[way] for way in ("out", "in"))
    assert within(up.elbow_drift_deg, up.elbow_drift_error_deg, 12.0)
    assert within(down.elbow_drift_deg, down.elbow_drift_error_deg, -12.0)


@pytest.mark.parametrize("side", Side)
def test_an_elbow_that_leaves_the_side_while_rotating_drifts(side: Side) -> None:
    """By twelve degrees, a fifth of the upper arm's length; or not claimed, or not believed."""
    form = forms(ROTATION_0, STANDING, View.FRONT, side).get("out")
    found = None if form is None else form.elbow_drift_deg
    assert form is None or found is None or within(found, form.elbow_drift_error_deg, 12.0)


def test_behind_the_back_no_arm_is_claimed() -> None:
    form = forms(Movement.HAND_BEHIND_BACK, STANDING, View.BACK, Side.LEFT)["nothing"]
    assert form.elbow_flexion_deg is form.elbow_drift_deg is None
    assert form.elbow_flexion_error_deg is form.elbow_drift_error_deg is None


@pytest.mark.parametrize(
    ("model", "position", "error_deg"),
    [
        (PoseModel.FULL, SITTING, 5.0),
        (PoseModel.LITE, SITTING, 7.0),
        (PoseModel.LITE, STANDING, 5.0),
    ],
)
def test_a_lean_sitting_is_worth_less_with_the_small_model(
    model: PoseModel, position: Position, error_deg: float
) -> None:
    """Half widths of docs/measurement.md, "The small pose model"."""
    poses = recording(
        FLEXION, np.full(10, 60.0), Side.LEFT, seen_from(View.SIDE, FLEXION), position=position,
        marks=USUAL_MARKS,
    )  # fmt: skip
    seen = [(time_s, pose and replace(pose, model=model)) for time_s, pose in poses]
    readings = read(seen, FLEXION, Side.LEFT, View.SIDE, position).readings
    assert {reading.form.trunk_lean_error_deg for reading in readings} == {error_deg}
