"""Raised hands of stick people, whose hands are where trigonometry puts them.

The watched hand is placed by directions of upper arm and forearm in the trunk's axes (X forward, Y
up, Z right); when it is up follows from the script.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import replace

import numpy as np
import pytest

from coach import gestures
from coach.domain.movement import Movement, Position, Side, View
from coach.domain.pose import Landmark, Pose
from coach.gestures import DOWN_S, KEPT_S, LOST_S, UP_S, Gesture, GestureEvent
from tests.goniometry.stick_body import MAN, NATURAL, Seen, X, Y, Z, camera, joints, project

HANGING = (-Y, -Y)
UP = (Y, Y)
EVERY_WAY = [
    (Position.STANDING, View.FRONT),
    (Position.STANDING, View.SIDE),
    (Position.STANDING, View.BACK),
    (Position.SITTING, View.FRONT),
    (Position.SITTING, View.SIDE),
    (Position.DOORWAY, View.FRONT),
    (Position.SUPINE, View.SIDE),
    (Position.SUPINE, View.FOOT),
]
OFF_THE_FLOOR = {Position.SUPINE: (X, X), Position.PRONE: (-X, -X)}

Arm = tuple[np.ndarray, np.ndarray]


def pose_of(
    other: Arm,
    time_s: float = 0.0,
    *,
    side: Side = Side.RIGHT,
    position: Position = Position.STANDING,
    view: View = View.FRONT,
    own_deg: float = 0.0,
    own: Arm | None = None,
    above_deg: float | None = None,
) -> Pose:
    """A body whose other arm points as told, and its exercised one at a flexion or as told."""
    placed, _ = joints(Movement.FLEXION, own_deg, side, position, NATURAL, MAN)
    for each, arm in ((side.other, other), (side, own)):
        if arm is None:
            continue
        shoulder = placed[f"{each.name}_SHOULDER"]
        elbow = shoulder + MAN.upper_arm * arm[0] / np.linalg.norm(arm[0])
        wrist = elbow + MAN.forearm * arm[1] / np.linalg.norm(arm[1])
        placed |= {f"{each.name}_ELBOW": elbow, f"{each.name}_WRIST": wrist}
    points = np.full((33, 3), np.nan)
    for name, point in placed.items():
        points[Landmark[name]] = point
    seen = Seen(view, above_deg=above_deg)
    axes, place = camera(seen, side, position, MAN)
    return project((points - place) @ axes.T, seen, time_s)


def told(
    rows: Iterable[tuple[float, Pose | None]],
    side: Side = Side.RIGHT,
    position: Position = Position.STANDING,
) -> list[GestureEvent]:
    watch, out = gestures.begin(side, position), list[GestureEvent]()
    for time_s, pose in rows:
        watch, events = gestures.advance(watch, time_s, pose)
        out += events
    return out


def kinds(events: list[GestureEvent]) -> list[Gesture]:
    return [event.gesture for event in events]


def at_rate(
    seconds: float, rate_hz: float, make: Callable[[float], Pose | None]
) -> list[tuple[float, Pose | None]]:
    times = np.arange(round(seconds * rate_hz)) / rate_hz
    return [(float(t), make(float(t))) for t in times]


def raised_from(up_s: float, down_s: float, **how: object) -> Callable[[float], Pose]:
    position = how.get("position", Position.STANDING)
    arm = OFF_THE_FLOOR.get(position, UP)  # type: ignore[arg-type]
    up, down = pose_of(arm, **how), pose_of(HANGING, **how)  # type: ignore[arg-type]
    return lambda t: up if up_s <= t < down_s else down


@pytest.mark.parametrize("side", Side)
@pytest.mark.parametrize(("position", "view"), EVERY_WAY)
def test_a_hand_kept_up_is_told_in_every_view(position: Position, view: View, side: Side) -> None:
    make = raised_from(2.0, 9.0, side=side, position=position, view=view)
    events = told(at_rate(11, 30, make), side, position)
    assert kinds(events) == [Gesture.UP, Gesture.KEPT, Gesture.DOWN]
    stamps = [event.time_s for event in events]
    assert stamps == pytest.approx([2 + UP_S, 2 + KEPT_S, 9 + DOWN_S], abs=1.1 / 30)


def test_face_down_an_arm_lifted_backward_is_told() -> None:
    make = raised_from(1.0, 4.0, position=Position.PRONE, view=View.SIDE)
    events = told(at_rate(6, 20, make), Side.RIGHT, Position.PRONE)
    assert kinds(events) == [Gesture.UP, Gesture.DOWN]


@pytest.mark.parametrize("rate_hz", [5, 7.5, 15, 60])
def test_every_frame_rate_gives_the_same_within_a_frame(rate_hz: float) -> None:
    events = told(at_rate(9, rate_hz, raised_from(1.0, 7.0)))
    assert kinds(events) == [Gesture.UP, Gesture.KEPT, Gesture.DOWN]
    stamps = [event.time_s for event in events]
    assert np.all(np.abs(np.subtract(stamps, [1 + UP_S, 1 + KEPT_S, 7 + DOWN_S])) < 2.01 / rate_hz)


def test_irregular_frames_give_the_same() -> None:
    rng = np.random.default_rng(3)
    make = raised_from(1.0, 7.0)
    times = np.cumsum(rng.uniform(0.02, 0.3, 60))
    events = told([(float(t), make(float(t))) for t in times])
    assert kinds(events) == [Gesture.UP, Gesture.KEPT, Gesture.DOWN]


def test_stamps_that_do_not_advance_change_nothing() -> None:
    watch = gestures.begin(Side.LEFT, Position.STANDING)
    up = pose_of(UP, side=Side.LEFT)
    watch, _ = gestures.advance(watch, 1.0, up)
    for time_s in (1.0, 0.5, float("nan")):
        assert gestures.advance(watch, time_s, up) == (watch, ())


@pytest.mark.parametrize("side", Side)
def test_the_exercised_hand_alone_tells_nothing(side: Side) -> None:
    up = pose_of(HANGING, side=side, own=UP)
    assert told(at_rate(8, 10, lambda _: up), side) == []
    assert kinds(told(at_rate(8, 10, lambda _: up), side.other)) == [Gesture.UP, Gesture.KEPT]


@pytest.mark.parametrize("own_deg", [40.0, 90.0, 120.0])
def test_it_is_told_during_a_hold(own_deg: float) -> None:
    make = raised_from(2.0, 6.0, view=View.SIDE, own_deg=own_deg)
    assert kinds(told(at_rate(8, 10, make))) == [Gesture.UP, Gesture.DOWN]


@pytest.mark.parametrize("apart", ["held", "stick"])
@pytest.mark.parametrize("view", [View.FRONT, View.BACK, View.SIDE])
@pytest.mark.parametrize("seconds", [1.0, 3.0, 6.0])
def test_both_hands_going_up_together_tell_nothing(view: View, apart: str, seconds: float) -> None:
    inward = 0.8 * Z if apart == "held" else 0.0 * Z

    def make(time_s: float) -> Pose:
        a = np.radians(170.0 * np.clip((time_s - 1.0) / seconds, 0.0, 1.0))
        way = np.sin(a) * X - np.cos(a) * Y
        return pose_of((way, way + inward), own=(way, way - inward), view=view)

    assert told(at_rate(14, 10, make)) == []


def test_after_hands_together_a_raise_is_told_once_the_hand_was_low() -> None:
    def make(time_s: float) -> Pose:
        if time_s < 5.0:
            a = np.radians(170.0 * np.clip((time_s - 1.0) / 2.0, 0.0, 1.0))
            way = np.sin(a) * X - np.cos(a) * Y
            return pose_of((way, way), own=(way, way))
        return pose_of(UP if time_s > 8.0 else HANGING)

    events = told(at_rate(11, 10, make))
    assert kinds(events) == [Gesture.UP]
    assert events[0].time_s == pytest.approx(8.1 + UP_S, abs=0.11)


def reaching(x_m: float, y_m: float, z_m: float) -> Arm:
    """The left arm whose wrist is at a place from the shoulders' middle, elbow out and down."""
    way = np.array([x_m, y_m, z_m + MAN.shoulder])
    far = np.linalg.norm(way)
    along = (far**2 + MAN.upper_arm**2 - MAN.forearm**2) / (2 * far)
    aside = -Z - 0.5 * Y
    aside -= (aside @ way) * way / far**2
    height = np.sqrt(MAN.upper_arm**2 - along**2)
    elbow = along * way / far + height * aside / np.linalg.norm(aside)
    return elbow, way - elbow


AT_THE_HEAD = {
    "on the crown": reaching(0.0, 0.34, -0.08),
    "at the ear": reaching(0.0, 0.22, -0.16),
    "at the nose": reaching(0.15, 0.17, -0.08),
    "on the forehead": reaching(0.14, 0.26, -0.09),
    "behind the head": reaching(-0.12, 0.24, -0.08),
    "level with the shoulder": (-Z, -Z),
    "pointing ahead": (X, X),
}
"""The stick people's ears are 0.22 m above the shoulders and 0.07 m from the middle, the crown 0.13
m above the ears (common practice)."""


@pytest.mark.parametrize("name", AT_THE_HEAD)
@pytest.mark.parametrize("view", [View.FRONT, View.BACK, View.SIDE])
def test_a_hand_at_the_head_or_lower_tells_nothing(name: str, view: View) -> None:
    at = pose_of(AT_THE_HEAD[name], view=view)
    assert told(at_rate(8, 10, lambda _: at)) == []


ON_THE_FLOOR = {
    "past the head": (Y, Y),
    "out to the side": (-Z, -Z),
    "on the forehead": reaching(0.14, 0.26, -0.09),
}


@pytest.mark.parametrize("name", ON_THE_FLOOR)
@pytest.mark.parametrize(
    ("view", "above_deg"), [(View.SIDE, 10), (View.SIDE, 50), (View.FOOT, 30), (View.FOOT, 50)]
)
def test_an_arm_on_the_floor_tells_nothing(name: str, view: View, above_deg: float) -> None:
    lying = pose_of(ON_THE_FLOOR[name], position=Position.SUPINE, view=view, above_deg=above_deg)
    assert told(at_rate(8, 10, lambda _: lying), Side.RIGHT, Position.SUPINE) == []


@pytest.mark.parametrize("row", [Landmark.LEFT_WRIST, Landmark.LEFT_SHOULDER])
def test_what_the_model_does_not_believe_is_not_told(row: Landmark) -> None:
    up = pose_of(UP)
    unseen = up.visibility.copy()
    unseen[row] = 0.4
    doubted = replace(up, visibility=unseen)
    assert told(at_rate(8, 10, lambda _: doubted)) == []
    lost = up.image_px.copy()
    lost[row] = np.nan
    assert told(at_rate(8, 10, lambda _: replace(up, image_px=lost))) == []


def test_somebody_elses_hand_is_not_told() -> None:
    stranger = replace(pose_of(UP), another_person=True)
    assert told(at_rate(8, 10, lambda _: stranger)) == []


@pytest.mark.parametrize("gap_s", [0.1, 0.3])
def test_a_short_loss_of_sight_does_not_end_a_raise(gap_s: float) -> None:
    up = pose_of(UP)
    make = lambda t: None if any(a <= t < a + gap_s for a in (2.0, 4.0)) else up  # noqa: E731
    assert kinds(told(at_rate(7, 20, make))) == [Gesture.UP, Gesture.KEPT]


def test_a_long_loss_of_sight_ends_it() -> None:
    up = pose_of(UP)
    events = told(at_rate(4, 20, lambda t: up if t < 2.0 else None))
    assert kinds(events) == [Gesture.UP, Gesture.DOWN]
    assert events[1].time_s == pytest.approx(1.95 + LOST_S, abs=0.06)


def test_flicker_is_no_raise() -> None:
    up, down = pose_of(UP), pose_of(HANGING)
    assert told(at_rate(8, 10, lambda t: up if round(t * 10) % 3 == 0 else down)) == []


def test_the_ring_fills_from_the_first_raised_frame_and_empties() -> None:
    watch, make = gestures.begin(Side.RIGHT, Position.STANDING), raised_from(1.0, 3.0)
    ring: dict[float, float | None] = {}
    for time_s, pose in at_rate(5, 10, make):
        watch, _ = gestures.advance(watch, time_s, pose)
        ring[round(time_s, 1)] = watch.raised_s
    assert ring[0.9] is None
    assert ring[1.0] == 0.0
    assert ring[2.5] == pytest.approx(1.5)
    assert ring[4.0] is None


def test_a_watch_stays_small_for_an_hour() -> None:
    watch, down = gestures.begin(Side.RIGHT, Position.STANDING), pose_of(HANGING)
    sizes = []
    for frame in range(20_000):
        watch, _ = gestures.advance(watch, frame / 60, down)
        sizes.append(len(watch.trail))
    assert max(sizes[10_000:]) == max(sizes[200:10_000]) <= 17


@pytest.mark.parametrize("side", Side)
@pytest.mark.parametrize(
    ("toward", "up"), [("ceiling", True), ("hip", False), ("floor", False), ("camera", False)]
)
def test_lying_on_the_exercised_side_the_upper_hand_points_at_the_ceiling(
    side: Side, toward: str, up: bool
) -> None:
    """The camera, beside a person who lies on one shoulder, stands upright and sees them so."""
    ceiling = -side.sign * Z
    arm = {"ceiling": ceiling, "hip": -Y, "floor": -ceiling, "camera": X}[toward]
    placed, _ = joints(Movement.FLEXION, 90.0, side, Position.STANDING, NATURAL, MAN)
    shoulder = placed[f"{side.other.name}_SHOULDER"]
    placed[f"{side.other.name}_ELBOW"] = shoulder + MAN.upper_arm * arm
    placed[f"{side.other.name}_WRIST"] = shoulder + (MAN.upper_arm + MAN.forearm) * arm
    points = np.full((33, 3), np.nan)
    for name, point in placed.items():
        points[Landmark[name]] = point
    away, down = -X, -ceiling
    axes = np.stack([np.cross(down, away), down, away])
    pose = project((points - (0.25 * Y + 2.5 * X)) @ axes.T, Seen(View.FRONT))
    rows = [(row / 10, pose) for row in range(20)]
    found = kinds(told(rows, side, Position.SIDE_LYING))
    assert found == ([Gesture.UP] if up else [])


@pytest.mark.parametrize("unknown", ["LEFT_WRIST", "LEFT_HIP", "LEFT_SHOULDER", "all in one place"])
@pytest.mark.parametrize("position", [Position.SUPINE, Position.SIDE_LYING])
def test_lying_nothing_is_told_where_the_floor_is_not_known(
    unknown: str, position: Position
) -> None:
    """What lies farther away than the head is as high in the picture as a raised hand."""
    up = pose_of((X, X), position=Position.SUPINE, view=View.SIDE)
    world = up.world_m.copy()
    if unknown in Landmark.__members__:
        world[Landmark[unknown]] = np.nan
    else:
        world[:] = 0.25
    blind = replace(up, world_m=world)
    assert told(at_rate(8, 10, lambda _: blind), position=position) == []
    assert kinds(told(at_rate(8, 10, lambda _: up))) != []


@pytest.mark.parametrize("trunk_px", [0.0, 1e-200, 1e-170])
def test_a_body_without_a_size_tells_nothing(trunk_px: float) -> None:
    image = np.zeros((33, 2))
    image[[Landmark.LEFT_HIP, Landmark.RIGHT_HIP], 1] = trunk_px
    image[Landmark.RIGHT_ELBOW] = 1e-5
    small = replace(pose_of(UP), image_px=image)
    assert told(at_rate(8, 10, lambda _: small)) == []
