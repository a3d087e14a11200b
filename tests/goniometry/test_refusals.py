"""What is not measured: each names something a person can change, and gives no number."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from coach.domain.movement import VIEWS, Movement, Position, Side, View
from coach.domain.pose import Landmark, Pose
from coach.domain.reading import Doubt, Reading
from coach.goniometry.sight import Sight
from tests.goniometry.stick_body import Seen, Way, mirrored, pose
from tests.goniometry.ways import USUAL_MARKS, WAYS, end_of, read, seen_from

STANDING, SITTING, SUPINE, PRONE = (
    Position.STANDING,
    Position.SITTING,
    Position.SUPINE,
    Position.PRONE,
)
REMEDIES = {
    View.FRONT: {Doubt.TURN_TO_FACE, Doubt.TURN_AROUND},
    View.SIDE: {Doubt.TURN_SIDEWAYS, Doubt.WRONG_SIDE},
    View.BACK: {Doubt.TURN_AROUND},
    View.FOOT: {Doubt.FEET_TO_CAMERA},
}
LIE = {SUPINE: Doubt.LIE_ON_BACK, PRONE: Doubt.LIE_FACE_DOWN}


def taken(
    movement: Movement,
    position: Position,
    seen: Seen,
    share: float = 0.5,
    side: Side = Side.LEFT,
    way: Way | None = None,
) -> Pose:
    """One pose on the way, as the position asks for it."""
    value = end_of(movement, position, share)[1]
    if way is None:
        turns = position is Position.DOORWAY
        way = Way(turn_left_deg=side.sign * value) if turns else Way()
    return pose(movement, value, side, seen, position=position, way=way, marks=USUAL_MARKS)


def judged(
    seen: Pose, movement: Movement, position: Position, view: View, side: Side = Side.LEFT
) -> Doubt:
    """The doubt of a pose in some frames; there is one, and no number."""
    readings = read([(t / 10, seen) for t in range(3)], movement, side, view, position).readings
    assert len({reading.doubt for reading in readings}) == 1
    return refused(readings[-1])


def refused(reading: Reading) -> Doubt:
    assert reading.value is None
    assert reading.error is None
    assert reading.doubt is not None
    return reading.doubt


@pytest.mark.parametrize(("movement", "position", "view"), WAYS)
def test_as_asked_nothing_is_refused(movement: Movement, position: Position, view: View) -> None:
    side = list(Side)[WAYS.index((movement, position, view)) % 2]
    seen, shares = seen_from(view, movement), (0.0, 0.3, 0.6, 1.0)
    poses = [(share, taken(movement, position, seen, share, side)) for share in shares]
    readings = read(poses, movement, side, view, position).readings
    assert [reading.doubt for reading in readings] == [None] * 4


ACROSS = [way for way in WAYS if way[1].lying and way[2] is View.SIDE]
"""Lying across the picture: the camera goes round toward the feet or the head, not round the
trunk."""
ROUND = [way for way in WAYS if way not in ACROSS]


@pytest.mark.parametrize(("movement", "position", "view"), ROUND)
@pytest.mark.parametrize("side", Side)
def test_a_wrong_view_is_refused_with_what_to_do(
    movement: Movement, position: Position, view: View, side: Side
) -> None:
    """In a doorway the trunk's turn is the stretch, up to a right angle."""
    allowed = REMEDIES[view]
    for turn_deg in (65.0, 100.0, 150.0, 180.0):
        if position is Position.DOORWAY and turn_deg < 90.0:
            continue
        for turned_deg in (turn_deg, -turn_deg):
            seen = seen_from(view, movement, turned_deg=turned_deg)
            share = 0.0 if position is Position.DOORWAY else 0.5
            body = taken(movement, position, seen, share, side)
            assert judged(body, movement, position, view, side) in allowed, turned_deg


@pytest.mark.parametrize(
    ("movement", "position", "view"), [way for way in ROUND if way[1] is not Position.DOORWAY]
)
@pytest.mark.parametrize("turned_deg", [-45.0, 45.0])
def test_an_oblique_view_is_refused(
    movement: Movement, position: Position, view: View, turned_deg: float
) -> None:
    """An arm 10 degrees off its plane then errs by 15 (closed form: tan a cos(turn + 10))."""
    body = taken(movement, position, seen_from(view, movement, turned_deg=turned_deg), 0.5)
    assert judged(body, movement, position, view) in REMEDIES[view]


@pytest.mark.parametrize(("movement", "position", "view"), ACROSS)
@pytest.mark.parametrize("side", Side)
def test_a_camera_at_the_wrong_end_of_somebody_lying_is_refused(
    movement: Movement, position: Position, view: View, side: Side
) -> None:
    """At the feet, at the head, or beyond the body at the other shoulder."""
    for turned_deg in (85.0, 120.0, 150.0, 180.0, -85.0, -120.0, -150.0):
        body = taken(
            movement, position, seen_from(view, movement, turned_deg=turned_deg), 0.5, side
        )
        doubt = judged(body, movement, position, view, side)
        assert doubt in REMEDIES[view] | {LIE[position], Doubt.OTHER_MOVEMENT}, turned_deg


@pytest.mark.parametrize(
    ("movement", "position", "view"),
    [way for way in ACROSS if way[0] is not Movement.EXTERNAL_ROTATION_90],
)
@pytest.mark.parametrize("turned_deg", [-65.0, 65.0])
def test_a_camera_near_an_end_of_somebody_lying_is_refused(
    movement: Movement, position: Position, view: View, turned_deg: float
) -> None:
    for share in (0.3, 0.6, 1.0):
        body = taken(movement, position, seen_from(view, movement, turned_deg=turned_deg), share)
        doubt = judged(body, movement, position, view)
        assert doubt in REMEDIES[view] | {Doubt.OTHER_MOVEMENT}


def remedies(position: Position, view: View) -> set[Doubt]:
    """What to do about a body that is seen from elsewhere or lies otherwise."""
    return REMEDIES[view] | {LIE.get(position, Doubt.BE_UPRIGHT)}


@pytest.mark.parametrize(("movement", "position", "view"), WAYS)
def test_the_camera_of_another_view_is_refused(
    movement: Movement, position: Position, view: View
) -> None:
    cameras = (View.SIDE, View.FOOT) if position.lying else (View.FRONT, View.SIDE, View.BACK)
    for other in cameras:
        if other not in VIEWS[movement, position]:
            body = taken(movement, position, seen_from(other, movement), 0.0)
            assert judged(body, movement, position, view) in remedies(position, view), other


@pytest.mark.parametrize(("movement", "position", "view"), WAYS)
def test_another_position_is_named(movement: Movement, position: Position, view: View) -> None:
    """Upright for lying, lying for upright, face down for on the back, and the reverse."""
    for other in (STANDING, SUPINE, PRONE):
        if other is position or (other is STANDING and not position.lying):
            continue
        for at in (View.SIDE, View.FOOT) if other.lying else (View.FRONT, View.SIDE, View.BACK):
            body = pose(
                Movement.FLEXION, 10.0, Side.LEFT, seen_from(at, movement),
                position=other, marks=USUAL_MARKS,
            )  # fmt: skip
            doubt = judged(body, movement, position, view)
            if at is view:
                assert doubt is LIE.get(position, Doubt.BE_UPRIGHT), other
            else:
                assert doubt in remedies(position, view), (other, at)


@pytest.mark.parametrize(
    ("movement", "position", "view"), [way for way in WAYS if way[2] is View.SIDE]
)
def test_the_wrong_shoulder_toward_the_camera_is_named(
    movement: Movement, position: Position, view: View
) -> None:
    right = taken(movement, position, seen_from(view, movement), side=Side.RIGHT)
    doubt = judged(right, movement, position, view, Side.LEFT)
    if position.lying:
        assert doubt in {Doubt.WRONG_SIDE, Doubt.TURN_SIDEWAYS, LIE[position]}
    else:
        assert doubt is Doubt.WRONG_SIDE


def test_what_no_view_measures_is_never_a_number() -> None:
    for movement in Movement:
        for position in Position:
            for view in View:
                if view in VIEWS.get((movement, position), ()):
                    continue
                camera = View.SIDE if position.lying else View.FRONT
                body = taken(movement, position, seen_from(camera, movement))
                doubt = judged(body, movement, position, view)
                views = VIEWS.get((movement, position), ())
                wanted = {d for v in views for d in REMEDIES[v]} or {Doubt.OTHER_MOVEMENT}
                assert doubt in wanted, (movement, position, view)


@pytest.mark.parametrize(("movement", "position", "view"), WAYS)
def test_what_a_pose_says_of_itself_is_heeded(
    movement: Movement, position: Position, view: View
) -> None:
    good = taken(movement, position, seen_from(view, movement))
    bright, dark = replace(good, brightness=0.4), replace(good, brightness=0.03)
    other = replace(good, another_person=True)
    poses = [(0.0, bright), (0.1, dark), (0.2, other), (0.3, None)]
    readings = read(poses, movement, Side.LEFT, view, position).readings
    assert readings[0].usable
    doubts = [refused(reading) for reading in readings[1:]]
    assert doubts == [Doubt.TOO_DARK, Doubt.ANOTHER_PERSON, Doubt.NOBODY]


@pytest.mark.parametrize(("movement", "position", "view"), WAYS)
def test_distance_is_named(movement: Movement, position: Position, view: View) -> None:
    far = taken(movement, position, seen_from(view, movement, distance_m=7.0), 0.0)
    assert judged(far, movement, position, view) is Doubt.TOO_FAR
    if view is not View.FOOT:  # from the foot end the legs would come first
        near = seen_from(view, movement, distance_m=0.6 if position.lying else 0.75)
        doubt = judged(taken(movement, position, near, 0.0), movement, position, view)
        assert doubt is Doubt.TOO_CLOSE


@pytest.mark.parametrize(("movement", "position", "view"), WAYS)
@pytest.mark.parametrize(
    ("name", "doubt"),
    [
        ("WRIST", Doubt.ARM_OUT_OF_VIEW),
        ("ELBOW", Doubt.ARM_OUT_OF_VIEW),
        ("HIP", Doubt.HIPS_OUT_OF_VIEW),
        ("SHOULDER", Doubt.SHOULDERS_OUT_OF_VIEW),
    ],
)
def test_a_point_that_is_hidden_or_cut_off_is_named(
    movement: Movement, position: Position, view: View, name: str, doubt: Doubt
) -> None:
    """The arm at a door is not looked at, a hand behind the back is mostly hidden."""
    good = taken(movement, position, seen_from(view, movement), 0.4)
    row = Landmark[f"LEFT_{name}"]
    hidden = good.visibility.copy()
    hidden[row] = 0.05
    outside = good.image_px.copy()
    outside[row, 0] = -0.1 * good.size_px[0]
    for body in (replace(good, visibility=hidden), replace(good, image_px=outside)):
        if position is Position.DOORWAY and doubt is Doubt.ARM_OUT_OF_VIEW:
            assert read([(0.0, body)], movement, Side.LEFT, view, position).readings[0].usable
        elif name in ("WRIST", "ELBOW") or body.visibility[row] < 0.5:
            assert judged(body, movement, position, view) is doubt
        else:  # a trunk cut at a shoulder or a hip may also look turned or lying
            judged(body, movement, position, view)


@pytest.mark.parametrize("name", ["LEFT_WRIST", "LEFT_ELBOW"])
@pytest.mark.parametrize(("movement", "position", "view"), WAYS)
def test_a_joint_that_the_edge_cuts_is_not_measured(
    movement: Movement, position: Position, view: View, name: str
) -> None:
    """A wrist is 6 cm broad, so half of it is outside where its middle is 1 cm from the edge."""
    if position is Position.DOORWAY:
        return  # the arm at a door is not looked at
    good = taken(movement, position, seen_from(view, movement), 0.4)
    sight = Sight.of(good, Side.LEFT)
    centimetre_px = sight.scale_px / 50
    for axis, size_px in enumerate(good.size_px):
        for edge_px in (centimetre_px, size_px - centimetre_px):
            cut = good.image_px.copy()
            cut[Landmark[name], axis] = edge_px
            body = replace(good, image_px=cut)
            assert judged(body, movement, position, view) is Doubt.ARM_OUT_OF_VIEW


@pytest.mark.parametrize("unknown", ["picture", "space", "space, one axis", "both"])
@pytest.mark.parametrize(("movement", "position", "view"), WAYS)
def test_points_that_are_not_numbers_are_refused(
    movement: Movement, position: Position, view: View, unknown: str
) -> None:
    """And take no other frame with them: what is learned of the body is learned from the rest."""
    good = taken(movement, position, seen_from(view, movement))
    names = ["LEFT_SHOULDER", "RIGHT_SHOULDER", "LEFT_HIP", "RIGHT_HIP", "LEFT_ELBOW", "LEFT_WRIST"]
    poses = [(0.0, good)]
    for name in names:
        image, world = good.image_px.copy(), good.world_m.copy()
        if unknown in ("picture", "both"):
            image[Landmark[name]] = np.nan
        if unknown in ("space", "both"):
            world[Landmark[name]] = np.nan
        if unknown == "space, one axis":
            world[Landmark[name], 2] = np.nan
        poses += [
            (poses[-1][0] + 0.1, replace(good, image_px=image, world_m=world)),
            (poses[-1][0] + 0.2, good),
        ]
    readings = read(poses, movement, Side.LEFT, view, position).readings
    assert [reading.usable for reading in readings] == [True] + [False, True] * len(names)
    for reading in readings[1::2]:
        refused(reading)
    assert [reading.doubt for reading in readings[9::2]] == [Doubt.ARM_OUT_OF_VIEW] * 2


@pytest.mark.parametrize(("row", "on"), [("ELBOW", "SHOULDER"), ("WRIST", "ELBOW")])
@pytest.mark.parametrize("apart_m", [0.0, 1e-170])
@pytest.mark.parametrize(("movement", "position", "view"), WAYS)
def test_an_arm_without_a_length_in_space_is_refused(
    movement: Movement, position: Position, view: View, row: str, on: str, apart_m: float
) -> None:
    good = taken(movement, position, seen_from(view, movement))
    world = good.world_m.copy()
    world -= world[Landmark[f"LEFT_{on}"]]
    world[Landmark[f"LEFT_{row}"]] = apart_m
    seen = replace(good, world_m=world)
    assert judged(seen, movement, position, view) is Doubt.ARM_OUT_OF_VIEW


@pytest.mark.parametrize(
    ("movement", "position"),
    [way[:2] for way in WAYS if way[2] is View.FOOT],
)
def test_from_the_foot_end(movement: Movement, position: Position) -> None:
    knees = taken(movement, position, seen_from(View.FOOT, movement), way=Way(knees_up=True))
    low = replace(seen_from(View.FOOT, movement), above_deg=22.0)
    knees_low = taken(movement, position, low, way=Way(knees_up=True))
    assert judged(knees_low, movement, position, View.FOOT) is Doubt.LEGS_IN_THE_WAY
    assert knees.image_px[Landmark.LEFT_KNEE, 1] > knees_low.image_px[Landmark.LEFT_KNEE, 1]
    flat = taken(movement, position, seen_from(View.FOOT, movement, above_deg=6.0))
    assert judged(flat, movement, position, View.FOOT) is Doubt.RAISE_CAMERA


FLEXION, EXTENSION, ABDUCTION = Movement.FLEXION, Movement.EXTENSION, Movement.ABDUCTION
ROTATION_0, ROTATION_90 = Movement.EXTERNAL_ROTATION_0, Movement.EXTERNAL_ROTATION_90
LEVEL, BEHIND = Movement.HORIZONTAL_ADDUCTION, Movement.HAND_BEHIND_BACK


@pytest.mark.parametrize("side", Side)
@pytest.mark.parametrize(
    ("asked", "position", "view", "done", "value"),
    [
        # Raised in front where it should go out to the side, and the reverse.
        (ABDUCTION, STANDING, View.FRONT, FLEXION, 90.0),
        (ABDUCTION, SITTING, View.BACK, FLEXION, 90.0),
        (FLEXION, STANDING, View.SIDE, ABDUCTION, 90.0),
        (FLEXION, SUPINE, View.SIDE, ABDUCTION, 90.0),
        (EXTENSION, STANDING, View.SIDE, FLEXION, 95.0),
        (EXTENSION, STANDING, View.SIDE, FLEXION, 165.0),
        (EXTENSION, PRONE, View.SIDE, ABDUCTION, 90.0),
        # Hanging, or overhead, where it should be level.
        (ROTATION_90, STANDING, View.SIDE, FLEXION, 5.0),
        (ROTATION_90, SITTING, View.SIDE, ROTATION_0, 0.0),
        (ROTATION_90, SUPINE, View.SIDE, FLEXION, 5.0),
        (LEVEL, STANDING, View.FRONT, FLEXION, 5.0),
        (LEVEL, SUPINE, View.FOOT, FLEXION, 5.0),
        (LEVEL, SITTING, View.FRONT, ABDUCTION, 165.0),
        # Abducted where the arm should stay at the side, or go behind the back.
        (ROTATION_0, STANDING, View.FRONT, ROTATION_90, 0.0),
        (BEHIND, STANDING, View.BACK, ABDUCTION, 120.0),
    ],
)
def test_another_movement_is_named(
    asked: Movement, position: Position, view: View, done: Movement, value: float, side: Side
) -> None:
    seen = seen_from(view, done)
    body = pose(done, value, side, seen, position=position, marks=USUAL_MARKS)
    assert judged(body, asked, position, view, side) is Doubt.OTHER_MOVEMENT


@pytest.mark.parametrize("side", Side)
@pytest.mark.parametrize(
    ("movement", "position", "view"),
    [
        (ABDUCTION, STANDING, View.FRONT),
        (ABDUCTION, SITTING, View.BACK),
        (FLEXION, STANDING, View.SIDE),
        (FLEXION, SUPINE, View.SIDE),
    ],
)
def test_an_arm_raised_half_way_between_two_planes_is_neither_movement(
    movement: Movement, position: Position, view: View, side: Side
) -> None:
    """Sixty degrees out of the plane, long enough in the picture to be taken for raised in it."""
    way = Way(out_deg=60.0, bend_deg=0.0)
    body = pose(
        movement, 70.0, side, seen_from(view, movement), position=position, way=way,
        marks=USUAL_MARKS,
    )  # fmt: skip
    assert judged(body, movement, position, view, side) is Doubt.OTHER_MOVEMENT


@pytest.mark.parametrize("side", Side)
@pytest.mark.parametrize(
    ("asked", "position", "view", "done", "value", "bend_deg", "doubt"),
    [
        (ROTATION_0, STANDING, View.FRONT, FLEXION, 5.0, 8.0, Doubt.BEND_ELBOW),
        (ROTATION_0, SITTING, View.FRONT, ROTATION_0, 20.0, 15.0, Doubt.BEND_ELBOW),
        (ROTATION_0, SUPINE, View.FOOT, FLEXION, 5.0, 8.0, Doubt.BEND_ELBOW),
        (ROTATION_90, STANDING, View.SIDE, ROTATION_90, 0.0, 8.0, Doubt.BEND_ELBOW),
        (FLEXION, STANDING, View.SIDE, FLEXION, 60.0, 85.0, Doubt.STRAIGHTEN_ELBOW),
        (FLEXION, SUPINE, View.SIDE, FLEXION, 90.0, 85.0, Doubt.STRAIGHTEN_ELBOW),
        (EXTENSION, STANDING, View.SIDE, EXTENSION, 30.0, 85.0, Doubt.STRAIGHTEN_ELBOW),
        (ABDUCTION, STANDING, View.FRONT, ABDUCTION, 80.0, 85.0, Doubt.STRAIGHTEN_ELBOW),
        (ABDUCTION, SITTING, View.BACK, ROTATION_0, 30.0, 90.0, Doubt.STRAIGHTEN_ELBOW),
    ],
)
def test_elbows_are_asked_to_be_as_the_movement_needs_them(
    asked: Movement,
    position: Position,
    view: View,
    done: Movement,
    value: float,
    bend_deg: float,
    doubt: Doubt,
    side: Side,
) -> None:
    way = Way(bend_deg=bend_deg)
    body = pose(
        done, value, side, seen_from(view, done), position=position, way=way, marks=USUAL_MARKS
    )
    assert judged(body, asked, position, view, side) is doubt


@pytest.mark.parametrize("movement", [FLEXION, ABDUCTION])
def test_a_bend_that_the_metric_points_miss_is_seen_in_the_picture(movement: Movement) -> None:
    view = View.SIDE if movement is FLEXION else View.FRONT
    straight = taken(movement, STANDING, seen_from(view, movement), 0.2)
    bent = pose(ROTATION_0, 50.0, Side.LEFT, seen_from(view, movement))
    missed = replace(bent, world_m=straight.world_m)
    assert judged(missed, movement, STANDING, view) is Doubt.STRAIGHTEN_ELBOW


def test_a_flipped_picture_is_refused_for_the_same_reason() -> None:
    for movement, position, view in WAYS:
        for turned_deg in (70.0, -110.0, 175.0):
            seen = taken(movement, position, seen_from(view, movement, turned_deg=turned_deg), 0.0)
            here = read([(0.0, seen)], movement, Side.LEFT, view, position).readings[0]
            there = read([(0.0, mirrored(seen))], movement, Side.RIGHT, view, position).readings[0]
            assert here.doubt is there.doubt, (movement, position, view, turned_deg)


def test_a_body_of_nothing_is_refused() -> None:
    """Every point in one place: no length, no direction."""
    good = taken(Movement.FLEXION, STANDING, seen_from(View.SIDE, Movement.FLEXION))
    point = replace(good, image_px=np.full((33, 2), 200.0), world_m=np.zeros((33, 3)))
    for movement, position, view in WAYS:
        judged(point, movement, position, view)


def test_a_trunk_without_a_length_in_the_picture_is_refused() -> None:
    """So short that its square is nothing."""
    good = taken(Movement.ABDUCTION, STANDING, seen_from(View.FRONT, Movement.ABDUCTION))
    image = good.image_px.copy()
    for side, x_px in (("LEFT", 370.0), ("RIGHT", 270.0)):
        image[Landmark[f"{side}_SHOULDER"]] = x_px, 0.0
        image[Landmark[f"{side}_HIP"]] = x_px, 1e-170
    flat = replace(good, image_px=image)
    assert judged(flat, Movement.ABDUCTION, STANDING, View.FRONT) is Doubt.TOO_FAR
