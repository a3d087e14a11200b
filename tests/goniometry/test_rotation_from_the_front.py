"""Rotation at the side seen from the front: the fit against a closed form for two rays."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from coach.domain.movement import Movement, Position, Side, View
from coach.domain.pose import Landmark, Pose
from coach.goniometry import Task
from coach.goniometry.fitting import learn, place
from coach.goniometry.skeleton import WRIST
from tests.goniometry.stick_body import MAN, Build, Seen, Way, pose, raised, recording
from tests.goniometry.ways import evidence_of, usual_build

MOVEMENT = Movement.EXTERNAL_ROTATION_0
CLOSE = Way(out_deg=0.0)


def frontal_rotation_deg(
    elbow_slope: float, wrist_slope: float, elbow_depth_m: float, forearm_m: float
) -> float:
    """External rotation at the side seen from the front, trunk square to the camera, degrees.

    The slopes are x/z of the elbow's and the wrist's ray, positive toward the measured side;
    ``elbow_depth_m`` is the elbow's distance along the camera's axis, ``forearm_m`` the length of
    the forearm, level in space. With the wrist at (x_e + L sin r, Z - L cos r) and
    x_w = (x_e Z + L sin r) / (Z - L cos r):

        r = asin[(x_w - x_e) Z / (L sqrt(1 + x_w^2))] - atan(x_w)
    """
    reach = (wrist_slope - elbow_slope) * elbow_depth_m / forearm_m
    sine = reach / math.hypot(1.0, wrist_slope)
    return math.degrees(math.asin(max(-1.0, min(1.0, sine))) - math.atan(wrist_slope))


def of_a_picture(body: Pose, seen: Seen, side: Side, build: Build = MAN) -> float:
    """The same from a picture of the sticks, whose lengths and place are known."""
    focal_px = max(seen.size_px) / 2 / math.tan(math.radians(seen.field_of_view_deg) / 2)
    elbow, wrist = (
        -side.sign * (body.image_px[Landmark[f"{side.name}_{name}"], 0] - seen.size_px[0] / 2)
        for name in ("ELBOW", "WRIST")
    )  # the person's right is at picture left
    return frontal_rotation_deg(elbow / focal_px, wrist / focal_px, seen.distance_m, build.forearm)


@given(
    rotation_deg=st.floats(-60, 75),
    elbow_x_m=st.floats(-0.3, 0.5),
    depth_m=st.floats(1.2, 4.0),
    forearm_m=st.floats(0.2, 0.32),
)
def test_the_closed_form_inverts_the_projection(
    rotation_deg: float, elbow_x_m: float, depth_m: float, forearm_m: float
) -> None:
    turn = math.radians(rotation_deg)
    wrist = (elbow_x_m + forearm_m * math.sin(turn)) / (depth_m - forearm_m * math.cos(turn))
    # Beyond the tangent ray from the camera two rotations share a picture.
    if rotation_deg + math.degrees(math.atan(wrist)) < 88:
        found = frontal_rotation_deg(elbow_x_m / depth_m, wrist, depth_m, forearm_m)
        assert found == pytest.approx(rotation_deg, abs=1e-4)


@given(
    rotation_deg=st.floats(-50, 60),
    distance_m=st.floats(1.8, 3.2),
    aside_m=st.floats(-0.3, 0.3),
    side=st.sampled_from(Side),
)
def test_it_reads_a_picture_of_the_sticks(
    rotation_deg: float, distance_m: float, aside_m: float, side: Side
) -> None:
    seen = Seen(View.FRONT, distance_m, aside_m=aside_m)
    body = pose(MOVEMENT, rotation_deg, side, seen, way=CLOSE)
    assert of_a_picture(body, seen, side) == pytest.approx(rotation_deg, abs=1e-6)


@pytest.mark.usefixtures("on_joints")
@pytest.mark.parametrize("side", Side)
@pytest.mark.parametrize("distance_m", [1.8, 3.2])
@pytest.mark.parametrize("build", [usual_build(), MAN])
def test_the_fit_agrees_with_it(side: Side, distance_m: float, build: Build) -> None:
    """Without being told the distance or the forearm's length, which a man's exceeds by 4 %.

    Seen along its ray, a forearm taken for shorter by q reads asin(q sin a) for a. A degree and a
    half is left for all else that is not told.
    """
    seen = Seen(View.FRONT, distance_m, aside_m=0.1, depth_shown=0.75)
    values = raised(-20.0, 45.0, 9, 6, 3)
    poses = recording(MOVEMENT, values, side, seen, ways=CLOSE, build=build, rate_hz=4.0)
    task = Task(MOVEMENT, side, View.FRONT, Position.STANDING)
    evidence = evidence_of(poses, task)
    expectation = task.expectation
    stance = place(evidence, expectation, learn(evidence, expectation).body).stance
    forearm, upper_arm = stance.forearm, stance.upper_arm
    assert np.all(upper_arm[:, 1] < -0.97)  # it hangs
    fitted = np.degrees(np.arctan2(side.sign * forearm[:, 2], forearm[:, 0]))
    closed = [of_a_picture(body, seen, side, build) for _, body in poses if body is not None]
    rays_deg = np.degrees(np.arctan(evidence.slopes[:, WRIST, 0])) * -side.sign
    usual = usual_build()
    longer = build.forearm / build.trunk / (usual.forearm / usual.trunk)
    along_deg = values + rays_deg
    taken_deg = np.degrees(np.arcsin(longer * np.sin(np.radians(along_deg))))
    assert np.all(np.abs(fitted - closed) <= np.abs(taken_deg - along_deg) + 1.5)
