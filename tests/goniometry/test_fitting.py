"""The fit against bodies of known lengths and against optima in closed form."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from scipy.spatial.transform import Rotation

from coach.domain.movement import Movement, Position, Side, Unit, View
from coach.domain.pose import Landmark, Pose
from coach.domain.reading import Doubt
from coach.goniometry import Task, fitting, newton, residuals
from coach.goniometry.angles import movement_angle_deg
from coach.goniometry.body import LENGTHS, REST, SHARED
from coach.goniometry.evidence import Evidence
from coach.goniometry.expectation import LOG_LENGTHS_SD, Expectation, Trust
from coach.goniometry.fitting import Fit, learn, place
from coach.goniometry.newton import Eliminated
from coach.goniometry.skeleton import FREEDOMS
from tests.goniometry.stick_body import MAN, Array, Build, Marks, Seen, Way, arm, raised, recording
from tests.goniometry.ways import (
    DISTINCT,
    USUAL_MARKS,
    end_of,
    evidence_of,
    read,
    seen_from,
    taken,
    usual_build,
)

ANGLES = [way for way in DISTINCT if way[0].unit is Unit.DEGREES and way[1] is not Position.DOORWAY]


def fitted(poses: list[tuple[float, Pose | None]], task: Task) -> tuple[Fit, Fit, Evidence]:
    """The body learned, the stances placed with it, and from what."""
    evidence = evidence_of(poses, task)
    learned = learn(evidence, task.expectation)
    return learned, place(evidence, task.expectation, learned.body), evidence


@pytest.mark.usefixtures("on_joints")
@pytest.mark.parametrize(("movement", "position", "view"), ANGLES)
def test_a_body_as_expected_is_found_as_it_stands(
    movement: Movement, position: Position, view: View
) -> None:
    """With usual lengths, in the view that was asked for, every direction to five degrees."""
    side = list(Side)[ANGLES.index((movement, position, view)) % 2]
    above_deg = 25.0 if view is View.FOOT else 0.0
    turning = view in (View.FRONT, View.BACK)
    seen = seen_from(view, movement, above_deg=above_deg, depth_shown=0.75 if turning else 1.0)
    values = raised(*end_of(movement, position, 0.9), 3, 5, 2)
    build = usual_build()
    poses = recording(movement, values, side, seen, position=position, build=build, rate_hz=4.0)
    _, fit, _ = fitted(poses, Task(movement, side, view, position))
    true = np.array([arm(movement, float(value), side, Way(), build) for value in values])
    for found, wanted in ((fit.stance.upper_arm, true[:, 0]), (fit.stance.forearm, true[:, 1])):
        off_deg = np.degrees(np.arccos(np.clip(np.sum(found * wanted, axis=1), -1.0, 1.0)))
        assert off_deg.max() < 5.0


@pytest.mark.usefixtures("on_joints")
@pytest.mark.parametrize("side", Side)
@pytest.mark.parametrize("by", [0.85, 1.18])
def test_lengths_are_learned_from_a_movement_that_shows_them(side: Side, by: float) -> None:
    """Out to the side, seen from the front: everything lies in the picture's plane.

    The upper arm is expected to 6 % and the forearm to 10 %: what is left of 17 % is less than
    two fifths of what was expected wrongly, and less than those spreads.
    """
    usual = usual_build()
    build = replace(usual, upper_arm=usual.upper_arm * by, forearm=usual.forearm * by)
    values = raised(5.0, 120.0, 3, 8, 3)
    seen = seen_from(View.FRONT, Movement.ABDUCTION, depth_shown=0.75)
    poses = recording(Movement.ABDUCTION, values, side, seen, build=build)
    learned, _, _ = fitted(poses, Task(Movement.ABDUCTION, side, View.FRONT, Position.STANDING))
    lengths = np.array([build.shoulder, build.hip, build.upper_arm, build.forearm]) / build.trunk
    off = np.abs(learned.body.log_lengths - np.log(lengths))
    assert np.all(off < LOG_LENGTHS_SD)
    assert np.all(off[2:] < 0.4 * abs(np.log(by)))


@pytest.mark.parametrize(("movement", "position", "view"), ANGLES)
def test_a_misplaced_wrist_bends_no_other_frame_and_is_no_number(
    movement: Movement, position: Position, view: View
) -> None:
    """A trunk's length away in five frames of eighteen, each time in another direction.

    The others keep their value to a degree or a tenth of its interval, whichever is more: an arm
    straight out to the side, seen from in front, hardly shows how far forward it points.
    """
    values = raised(*end_of(movement, position, 0.7), 9, 6, 3)
    seen = seen_from(view, movement)
    poses = taken(movement, values, Side.RIGHT, seen, position, rate_hz=4.0)
    trunk_px = 522.0 * MAN.trunk / seen.distance_m  # 320 / tan(31.5 degrees)
    spoiled = {2: (1, 0), 6: (-1, 0), 10: (0, 1), 13: (0, -1), 16: (0.7, -0.7)}
    rows = list(poses)
    for row, direction in spoiled.items():
        time_s, body = poses[row]
        assert body is not None
        image = body.image_px.copy()
        image[Landmark.RIGHT_WRIST] += trunk_px * np.array(direction)
        rows[row] = (time_s, replace(body, image_px=image))
    clean = read(poses, movement, Side.RIGHT, view, position).readings
    mixed = read(rows, movement, Side.RIGHT, view, position).readings
    for row, (before, after) in enumerate(zip(clean, mixed, strict=True)):
        if row in spoiled:
            assert after.value is None, (row, after.value, before.value)
            assert after.doubt in {
                Doubt.UNSURE,
                Doubt.ARM_OUT_OF_VIEW,
                Doubt.STRAIGHTEN_ELBOW,
                Doubt.BEND_ELBOW,
                Doubt.OTHER_MOVEMENT,
            }
        else:
            assert before.error is not None
            allowed = max(1.0, before.error / 10.0)
            assert after.value == pytest.approx(before.value, abs=allowed), row


@pytest.fixture
def blind(monkeypatch: pytest.MonkeyPatch) -> Expectation:
    """A hand behind the back of which the picture says nothing, and the metric points the trunk.

    What is left is a Gaussian for each turn of the trunk: how it turns at rest, how far it strays
    from that in a frame, and what the frame's metric points say.
    """
    monkeypatch.setattr(residuals, "PICTURE_SD", (1e6,) * 4)
    usual = Expectation.of(Movement.HAND_BEHIND_BACK, Side.RIGHT, Position.STANDING, View.BACK)
    trust = Trust((9.0, 11.0, 13.0), 1.0, (1.0, 1.0), (1.0, 1.0), elbow=1e6, wrist=1e6)
    return replace(
        usual, trust=trust, trunk_between_deg=(10.0, 12.0, 14.0), trunk_within_deg=(5.0, 8.0, 6.0)
    )


def turned(expectation: Expectation, turns_deg: Array, about: int) -> Evidence:
    """Frames whose metric trunk is turned about one of its axes."""
    poses = taken(
        Movement.HAND_BEHIND_BACK, np.full(len(turns_deg), 0.9), Side.RIGHT, Seen(View.BACK)
    )
    task = Task(Movement.HAND_BEHIND_BACK, Side.RIGHT, View.BACK, Position.STANDING)
    evidence = evidence_of(poses, task)
    turns = Rotation.from_rotvec(np.radians(turns_deg)[:, None] * np.eye(3)[about]).as_matrix()
    return replace(evidence, trunk=expectation.trunk @ turns)


def about_axis_deg(expectation: Expectation, axes: Array, about: int) -> Array:
    turns = Rotation.from_matrix(expectation.trunk.T @ axes).as_rotvec(degrees=True)
    return turns[..., about]


@pytest.mark.parametrize("about", [0, 1, 2])
@pytest.mark.parametrize("turns_deg", [(12.0,), (3.0, -8.0, 15.0), tuple(np.linspace(-9, 12, 8))])
def test_turns_of_the_trunk_are_weighed_as_a_gaussian_hierarchy_weighs_them(
    blind: Expectation, about: int, turns_deg: tuple[float, ...]
) -> None:
    """Turns t_i of frames about one axis, each with variance m; w within, b between sittings.

    Integrated over the frames the rest is r = sum(t / (m + w)) / (n / (m + w) + 1 / b), with
    variance 1 / (n / (m + w) + 1 / b); given r, a frame is (t / m + r / w) / (1 / m + 1 / w).
    """
    seen = np.array(turns_deg)
    m, w, b = (
        spread[about] ** 2
        for spread in (blind.trust.trunk_deg, blind.trunk_within_deg, blind.trunk_between_deg)
    )
    precision = len(seen) / (m + w) + 1 / b
    rest_deg = np.sum(seen / (m + w)) / precision
    frames_deg = (seen / m + rest_deg / w) / (1 / m + 1 / w)
    fit = learn(turned(blind, seen, about), blind)
    assert about_axis_deg(blind, fit.body.rest, about) == pytest.approx(rest_deg, abs=1e-3)
    assert about_axis_deg(blind, fit.stance.trunk, about) == pytest.approx(frames_deg, abs=1e-3)
    variance = np.diag(fit.body.covariance)[REST][about]
    assert np.degrees(np.sqrt(variance)) == pytest.approx(precision**-0.5, rel=1e-3)


@pytest.mark.parametrize("about", [0, 1, 2])
def test_with_the_rest_known_a_frame_is_the_mean_of_two(blind: Expectation, about: int) -> None:
    seen = np.array([-20.0, 5.0, 14.0])
    evidence = turned(blind, seen, about)
    body = learn(turned(blind, np.zeros(1), about), blind).body
    fit = place(evidence, blind, body)
    m, w = (s[about] ** 2 for s in (blind.trust.trunk_deg, blind.trunk_within_deg))
    wanted = seen * w / (m + w)
    assert about_axis_deg(blind, fit.stance.trunk, about) == pytest.approx(wanted, abs=1e-3)
    variance = np.diagonal(fit.covariance, axis1=1, axis2=2)[:, about]
    assert np.degrees(np.sqrt(variance)) == pytest.approx((1 / m + 1 / w) ** -0.5, rel=2e-2)


def test_a_long_recording_teaches_no_more_than_eight_frames(blind: Expectation) -> None:
    """Errors of points repeat from frame to frame (module docstring of ``fitting``)."""
    eight, eighty = (learn(turned(blind, np.full(n, 10.0), 1), blind).body for n in (8, 80))
    one = learn(turned(blind, np.full(1, 10.0), 1), blind).body
    assert np.diag(eighty.covariance) == pytest.approx(np.diag(eight.covariance), rel=1e-6)
    assert one.covariance[5, 5] > 1.5 * eight.covariance[5, 5]


@pytest.mark.parametrize(("movement", "position", "view"), DISTINCT)
def test_covariances_are_positive_definite(
    movement: Movement, position: Position, view: View
) -> None:
    values = raised(*end_of(movement, position, 0.8), 3, 3, 2)
    poses = taken(movement, values, Side.LEFT, seen_from(view, movement), position)
    learned, fit, evidence = fitted(poses, Task(movement, Side.LEFT, view, position))
    assert fit.covariance.shape == (len(evidence), FREEDOMS, FREEDOMS)
    for each in (learned, fit):
        matrices = np.concatenate([each.covariance, learned.covariance])
        assert np.all(np.linalg.eigvalsh((matrices + np.swapaxes(matrices, 1, 2)) / 2) > 0)
        assert matrices == pytest.approx(np.swapaxes(matrices, 1, 2), rel=1e-6, abs=1e-9)
    known = learned.body.covariance
    assert known.shape == (SHARED, SHARED)
    shown = np.diag(known) > 0
    assert np.all(np.linalg.eigvalsh(known[np.ix_(shown, shown)]) > 0)
    # What was seen leaves the lengths no less certain than they were.
    assert np.all(np.sqrt(np.diag(known)[LENGTHS]) <= LOG_LENGTHS_SD * (1 + 1e-6))


def spread_deg(view: View, movement: Movement, value: float, trust: Trust | None = None) -> float:
    """Standard deviation of the arm's elevation in a sagittal plane, by a view of it."""
    side = Side.RIGHT
    seen = Seen(view)
    expectation = Expectation.of(movement, side, Position.STANDING, view)
    if trust is not None:
        expectation = replace(expectation, trust=trust)
    poses = taken(movement, np.full(4, value), side, seen)
    evidence = evidence_of(poses, Task(movement, side, view, Position.STANDING))
    fit = place(evidence, expectation, learn(evidence, expectation).body)

    def elevation_deg(step: Array) -> float:
        arm_now = fit.stance.moved(step).upper_arm[0]
        return float(np.degrees(np.arctan2(arm_now[0], -arm_now[1])))

    tiny = 1e-5
    nothing = np.zeros((4, FREEDOMS))
    slope = np.array(
        [
            (elevation_deg(nothing + tiny * unit) - elevation_deg(nothing)) / tiny
            for unit in np.eye(FREEDOMS)
        ]
    )
    return float(np.sqrt(slope @ fit.covariance[0] @ slope))


def test_a_view_that_says_less_leaves_more_uncertainty() -> None:
    """The height of the elbow in front of the body goes with the cosine: flat near hanging."""
    trust = Trust()
    aside = spread_deg(View.SIDE, Movement.FLEXION, 15.0, trust)
    ahead = spread_deg(View.FRONT, Movement.FLEXION, 15.0, trust)
    assert ahead > 2.0 * aside
    blurred = spread_deg(View.SIDE, Movement.FLEXION, 15.0, replace(trust, elbow=0.15, wrist=0.15))
    assert blurred > 1.5 * aside


def test_a_points_share_of_the_cost_is_bounded() -> None:
    """By Geman and McClure r^2 / (1 + r^2 / c^2) < c^2 with c = 3: a wrist at 20 deviations
    costs 9, one at 180 hardly more, and the fit's misfit names the wrist alone."""
    values = np.full(3, 60.0)
    seen = seen_from(View.SIDE, Movement.FLEXION)
    poses = taken(Movement.FLEXION, values, Side.RIGHT, seen)
    costs = []
    for away_px in (0.0, 100.0, 900.0):
        rows: list[tuple[float, Pose | None]] = []
        for time_s, body in poses:
            assert body is not None
            image = body.image_px.copy()
            image[Landmark.RIGHT_WRIST] += [0.0, away_px]
            rows.append((time_s, replace(body, image_px=image)))
        task = Task(Movement.FLEXION, Side.RIGHT, View.SIDE, Position.STANDING)
        _, fit, _ = fitted(rows, task)
        costs.append(fit.cost[0])
        if away_px:
            assert np.argmax(fit.misfit[0]) == 5
            assert np.all(fit.misfit[0, :5] < 2.0)
    assert 8.0 < costs[1] - costs[0] < 9.5
    assert 0.0 < costs[2] - costs[1] < 0.5


def settles(
    monkeypatch: pytest.MonkeyPatch, poses: list[tuple[float, Pose | None]], task: Task
) -> None:
    """One more step, or three times as many, leave the angle where it is, to half a degree."""
    evidence = evidence_of(poses, task)
    body = learn(evidence, task.expectation).body
    usual = fitting.PLACING_STEPS
    axes = (np.eye(3)[0], np.eye(3)[1], np.eye(3)[2])
    found = []
    for steps in (usual, usual + 1, 3 * usual):
        monkeypatch.setattr(fitting, "PLACING_STEPS", steps)
        stance = place(evidence, task.expectation, body).stance
        found.append(
            movement_angle_deg(task.movement, task.side, axes, stance.upper_arm, stance.forearm)
        )
    assert found[1] == pytest.approx(found[0], abs=0.5)
    assert found[2] == pytest.approx(found[0], abs=0.5)


@pytest.mark.parametrize(("movement", "position", "view"), ANGLES)
def test_more_steps_change_nothing(
    movement: Movement, position: Position, view: View, monkeypatch: pytest.MonkeyPatch
) -> None:
    values = raised(*end_of(movement, position, 0.9), 3, 4, 2)
    seen = seen_from(view, movement, turned_deg=5.0)
    poses = taken(movement, values, Side.RIGHT, seen, position, rate_hz=4.0)
    settles(monkeypatch, poses, Task(movement, Side.RIGHT, view, position))


def test_more_steps_change_nothing_where_a_forearm_points_square_out(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """Long in the picture, the forearm has hardly a slope left to be found by."""
    movement, side, position = Movement.EXTERNAL_ROTATION_0, Side.RIGHT, Position.STANDING
    draw = np.random.default_rng(3)
    build, marks = Build.drawn(draw), Marks.drawn(draw)
    seen = Seen(View.FRONT, distance_m=2.6, turned_deg=-6.0, depth_shown=0.75, above_deg=5.0)
    build = replace(build, forearm=1.08 * MAN.forearm)
    values = raised(-20.0, 60.0, 9, 6, 2)
    poses = taken(movement, values, side, seen, position, build=build, marks=marks, rate_hz=4.0)
    settles(monkeypatch, poses, Task(movement, side, View.FRONT, position))


@pytest.mark.parametrize("side", Side)
def test_following_and_beginning_anew_lead_to_the_same(side: Side) -> None:
    """Stances close by in time are a start, not a prior."""
    values = np.array([40.0, 44.0])
    poses = taken(Movement.FLEXION, values, side, Seen(View.SIDE), marks=USUAL_MARKS)
    task = Task(Movement.FLEXION, side, View.SIDE, Position.STANDING)
    evidence = evidence_of(poses, task)
    body = learn(evidence, task.expectation).body
    before = place(evidence[:1], task.expectation, body).stance
    anew = place(evidence[1:], task.expectation, body).stance
    followed = place(evidence[1:], task.expectation, body, before).stance
    assert followed.upper_arm == pytest.approx(anew.upper_arm, abs=0.01)
    assert followed.trunk == pytest.approx(anew.trunk, abs=0.01)


@pytest.mark.parametrize(("movement", "position", "view"), ANGLES)
def test_an_arm_that_hardly_moves_is_found_in_one_look_where_many_looks_find_it(
    movement: Movement, position: Position, view: View, monkeypatch: pytest.MonkeyPatch
) -> None:
    looks: list[bool] = []

    def eliminate(problem: residuals.Problem, *, learning: bool, begun: bool) -> Eliminated:
        looks.append(begun)
        return newton.eliminate(problem, learning=learning, begun=begun)

    first, last = end_of(movement, position, 0.9)
    middle = (first + last) / 2
    values = np.array([middle, middle, middle + 0.2])
    poses = taken(movement, values, Side.LEFT, seen_from(view, movement), position)
    task = Task(movement, Side.LEFT, view, position)
    evidence = evidence_of(poses, task)
    body = learn(evidence, task.expectation).body
    before = place(evidence[:2], task.expectation, body)[np.array([1])].stance
    monkeypatch.setattr(fitting, "eliminate", eliminate)
    once = place(evidence[2:], task.expectation, body, before).stance
    assert looks == [False]
    monkeypatch.setattr(fitting, "NEAR", 0.0)
    monkeypatch.setattr(fitting, "SETTLED", 1e-9)
    monkeypatch.setattr(fitting, "FOLLOWING_STEPS", 60)
    often = place(evidence[2:], task.expectation, body, before).stance
    assert len(looks) > 3
    assert _apart_deg(once.upper_arm, often.upper_arm) < 0.05
    # Of a nearly straight forearm three looks leave as much.
    assert _apart_deg(once.forearm, often.forearm) < 0.2


def _apart_deg(one: Array, other: Array) -> float:
    return float(np.degrees(np.arccos(np.clip(np.sum(one * other), -1.0, 1.0))))


def test_a_body_of_other_proportions_is_learned_once_and_kept() -> None:
    """Placing frames with a body that is known leaves the body as it is."""
    build = Build.drawn(np.random.default_rng(5))
    poses = taken(Movement.ABDUCTION, np.full(4, 90.0), Side.LEFT, Seen(View.FRONT), build=build)
    learned, fit, _ = fitted(
        poses, Task(Movement.ABDUCTION, Side.LEFT, View.FRONT, Position.STANDING)
    )
    assert fit.body is learned.body
