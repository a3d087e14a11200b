"""Standing still at the start: found and dated, or named as moving or missing."""

from __future__ import annotations

import numpy as np
import pytest

from coach.domain.movement import Movement, Position, Side, View
from coach.domain.pose import Pose
from coach.domain.reading import Calibration
from coach.goniometry import advance, begin
from tests.goniometry.stick_body import AT_JOINTS, MAN, Array, Seen, Way
from tests.goniometry.ways import DISTINCT, end_of, raised, read, seen_from, taken

FLEXION, LEFT, SIDE = Movement.FLEXION, Side.LEFT, View.SIDE
Poses = list[tuple[float, Pose | None]]


def flexed(values: Array, *, rate_hz: float = 10.0, jitter_px: float = 0.0) -> Poses:
    return taken(FLEXION, values, LEFT, Seen(SIDE), rate_hz=rate_hz, jitter_px=jitter_px)


def of_recording(poses: Poses) -> Calibration:
    return read(poses, FLEXION, LEFT, SIDE).calibration


def of_frames(poses: Poses) -> Calibration:
    state = begin(FLEXION, LEFT, SIDE)
    for time_s, pose in poses:
        state, _ = advance(state, time_s, pose)
    return state.calibration


END_ON = Movement.EXTERNAL_ROTATION_90


@pytest.mark.parametrize(
    ("movement", "position", "view"), [way for way in DISTINCT if way[0] is not END_ON]
)
def test_two_quiet_seconds_are_found_and_dated(
    movement: Movement, position: Position, view: View
) -> None:
    values = raised(*end_of(movement, position, 0.9), 25, 6, 2)
    poses = taken(movement, values, LEFT, seen_from(view, movement), position, jitter_px=0.3)
    found = read(poses, movement, LEFT, view, position).calibration
    assert found.state == "still"
    assert found.start_s == pytest.approx(0.0, abs=0.15)
    assert found.end_s == pytest.approx(2.0, abs=0.15)


@pytest.mark.parametrize("position", [Position.STANDING, Position.SUPINE])
def test_an_upper_arm_that_points_at_the_camera_may_be_still(position: Position) -> None:
    """As it should: at the level of the shoulder it looks shorter than a tenth of the trunk."""
    poses = taken(END_ON, np.full(25, 0.0), LEFT, Seen(SIDE), position, marks=AT_JOINTS)
    assert read(poses, END_ON, LEFT, SIDE, position).calibration.state == "still"


@pytest.mark.parametrize("of", [of_recording, of_frames])
@pytest.mark.parametrize("rate_hz", [5.0, 12.0])
def test_what_stillness_teaches_is_what_is_seen(of: type, rate_hz: float) -> None:
    """Arm hanging beside an upright trunk seen from the side: ratios in the picture by geometry."""
    build, marks = MAN, AT_JOINTS
    hanging = np.full(int(2.3 * rate_hz) + 1, 0.0)
    poses = taken(
        FLEXION, hanging, LEFT, Seen(SIDE, turned_deg=5.0), way=Way(out_deg=0.0, bend_deg=0.0),
        build=build, marks=marks, rate_hz=rate_hz,
    )  # fmt: skip
    found = of(poses)
    assert found.state == "still"
    assert found.trunk_tilt_deg == pytest.approx(0.0, abs=0.5)
    assert abs(found.trunk_yaw_deg) == pytest.approx(5.0, abs=0.5)
    # The arm is nearer than the middle of the trunk by half the shoulders' breadth.
    nearer = 2.4 / (2.4 - build.shoulder * np.cos(np.radians(5.0)))
    wanted = np.array([build.upper_arm, build.forearm]) / build.trunk * nearer
    assert [found.upper_arm_ratio, found.forearm_ratio] == pytest.approx(wanted, rel=0.02)
    across = 2.0 * build.shoulder * np.sin(np.radians(5.0)) / build.trunk
    assert abs(found.shoulder_breadth_ratio) == pytest.approx(across, abs=0.02)


@pytest.mark.parametrize("of", [of_recording, of_frames])
def test_movement_from_the_first_frame_on_is_named(of: type) -> None:
    moving = of(flexed(np.abs(np.sin(np.arange(45) / 5.0)) * 60.0))
    assert moving.state == "moving"
    assert moving.start_s == pytest.approx(0.0)
    assert moving.end_s == pytest.approx(3.1, abs=0.15)
    assert moving.upper_arm_ratio is None
    assert moving.trunk_tilt_deg is None


@pytest.mark.parametrize("of", [of_recording, of_frames])
def test_never_seen_for_so_long_is_missing(of: type) -> None:
    short = flexed(np.full(12, 5.0))
    assert of(short).state == "missing"
    assert of([(time_s, None) for time_s, _ in flexed(np.full(50, 5.0))]).state == "missing"
    assert of([]) == Calibration(state="missing")
    # One second seen, then nobody.
    gone: Poses = [(time_s, pose if time_s < 1.0 else None) for time_s, pose in short]
    assert of(gone).state == "missing"


@pytest.mark.parametrize("of", [of_recording, of_frames])
def test_a_later_stillness_is_a_hold_and_not_taken(of: type) -> None:
    """Two seconds of raising, then four of holding: rest was not seen."""
    values = np.concatenate([np.linspace(10.0, 90.0, 20), np.full(40, 90.0)])
    assert of(flexed(values)).state == "moving"


@pytest.mark.parametrize("of", [of_recording, of_frames])
def test_a_restless_first_second_is_left_out(of: type) -> None:
    values = np.concatenate([np.linspace(30.0, 5.0, 9), np.full(30, 5.0)])
    found = of(flexed(values))
    assert found.state == "still"
    assert found.start_s is not None
    assert 0.5 <= found.start_s <= 1.1
    assert found.end_s == pytest.approx(found.start_s + 2.0, abs=0.15)


@pytest.mark.parametrize("of", [of_recording, of_frames])
def test_the_search_begins_with_the_first_usable_frame(of: type) -> None:
    poses = flexed(np.full(60, 5.0))
    late: Poses = [(time_s, pose if time_s >= 2.5 else None) for time_s, pose in poses]
    found = of(late)
    assert found.state == "still"
    assert found.start_s == pytest.approx(2.5, abs=0.15)
    assert found.end_s == pytest.approx(4.5, abs=0.15)


@pytest.mark.parametrize("of", [of_recording, of_frames])
def test_trembling_points_are_not_quiet(of: type) -> None:
    """Noise of four per cent of the trunk's length is twice what counts as quiet."""
    trunk_px = 522.0 * MAN.trunk / 2.4
    values = np.full(33, 5.0)
    assert of(flexed(values, jitter_px=0.04 * trunk_px)).state == "moving"
    assert of(flexed(values, jitter_px=0.005 * trunk_px)).state == "still"
