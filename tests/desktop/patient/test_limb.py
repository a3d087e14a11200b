"""What is drawn agrees with the pose it is drawn from."""

import math

import numpy as np
import pytest

from coach.desktop.patient.limb import Limb, limb_of
from coach.domain.movement import Movement, Side
from coach.domain.plan import PlannedExercise
from coach.domain.pose import Landmark, Pose

from .scripted import standing


def planned(movement: Movement, side: Side, target_deg: float | None = None) -> PlannedExercise:
    return PlannedExercise(
        movement=movement, side=side, hold_s=10, repetitions=1, target_deg=target_deg
    )


def drawn_deg(limb: Limb) -> float:
    """The angle between the ends of the arc, seen from its apex."""
    apex = np.array(limb.zero[0])
    first, last = (np.array(limb.arc[end]) - apex for end in (0, -1))
    cosine = first @ last / np.linalg.norm(first) / np.linalg.norm(last)
    return math.degrees(math.acos(float(np.clip(cosine, -1, 1))))


@pytest.mark.parametrize("side", list(Side))
@pytest.mark.parametrize("angle_deg", [5.0, 45.0, 112.0, 170.0])
def test_the_arc_spans_the_arm_s_angle_and_ends_on_the_arm(side: Side, angle_deg: float) -> None:
    limb = limb_of(standing(angle_deg, side), planned(Movement.ABDUCTION, side), angle_deg)
    assert limb is not None
    assert drawn_deg(limb) == pytest.approx(angle_deg, abs=0.01)
    shoulder, elbow = np.array(limb.arm[0]), np.array(limb.arm[1])
    end = np.array(limb.arc[-1]) - shoulder
    along = (elbow - shoulder) / np.linalg.norm(elbow - shoulder)
    assert end / np.linalg.norm(end) == pytest.approx(along, abs=1e-6)


@pytest.mark.parametrize("side", list(Side))
def test_the_patient_s_left_arm_is_at_the_right_of_an_unmirrored_frame(side: Side) -> None:
    limb = limb_of(standing(90, side), planned(Movement.ABDUCTION, side), 90.0)
    assert limb is not None
    trunk_x = limb.trunk[0][0]
    assert all((x > trunk_x) == (side is Side.LEFT) for x, _ in limb.arm)


@pytest.mark.parametrize("side", list(Side))
def test_outward_rotation_is_drawn_outwards(side: Side) -> None:
    limb = limb_of(standing(0, side), planned(Movement.EXTERNAL_ROTATION_0, side), 60.0)
    assert limb is not None
    elbow_x, trunk_x = limb.arm[1][0], limb.trunk[0][0]
    outward = math.copysign(1, elbow_x - trunk_x)
    assert (limb.arc[-1][0] - elbow_x) * outward > 0


def test_a_negative_rotation_is_drawn_inwards() -> None:
    limb = limb_of(standing(0, Side.LEFT), planned(Movement.EXTERNAL_ROTATION_0, Side.LEFT), -20.0)
    assert limb is not None
    assert limb.arc[-1][0] < limb.arm[1][0]


def test_the_limit_stands_at_the_plan_s_target() -> None:
    limb = limb_of(standing(40, Side.LEFT), planned(Movement.ABDUCTION, Side.LEFT, 90.0), 40.0)
    assert limb is not None
    assert limb.limit is not None
    (_, from_y), (_, to_y) = limb.limit
    assert from_y == pytest.approx(to_y)
    assert limb.limit[1][0] > limb.arm[0][0]


def test_without_an_angle_there_is_no_arc() -> None:
    limb = limb_of(standing(40, Side.LEFT), planned(Movement.ABDUCTION, Side.LEFT), None)
    assert limb is not None
    assert limb.arc == ()


@pytest.mark.parametrize("missing", [Landmark.LEFT_ELBOW, Landmark.RIGHT_HIP])
def test_an_unknown_joint_draws_nothing_wrong(missing: Landmark) -> None:
    pose = standing(40, Side.LEFT)
    at = pose.image_px.copy()
    at[missing] = np.nan
    hidden = Pose(0.0, pose.size_px, at, pose.world_m, pose.visibility)
    assert limb_of(hidden, planned(Movement.ABDUCTION, Side.LEFT), 40.0) is None


def test_an_unknown_wrist_only_shortens_the_arm() -> None:
    pose = standing(40, Side.LEFT)
    at = pose.image_px.copy()
    at[Landmark.LEFT_WRIST] = np.nan
    hidden = Pose(0.0, pose.size_px, at, pose.world_m, pose.visibility)
    limb = limb_of(hidden, planned(Movement.ABDUCTION, Side.LEFT), 40.0)
    assert limb is not None
    assert len(limb.arm) == 2


@pytest.mark.parametrize("side", list(Side))
@pytest.mark.parametrize("angle_deg", [-10.0, 0.0, 20.0, 50.0, 64.0, 66.0, 90.0, 130.0, 175.0])
def test_the_value_is_written_away_from_the_arm(side: Side, angle_deg: float) -> None:
    limb = limb_of(standing(angle_deg, side), planned(Movement.ABDUCTION, side), angle_deg)
    assert limb is not None
    apex = np.array(limb.zero[0])
    to_label, to_elbow = np.array(limb.label) - apex, np.array(limb.arm[1]) - apex
    cosine = to_label @ to_elbow / np.linalg.norm(to_label) / np.linalg.norm(to_elbow)
    assert math.degrees(math.acos(cosine)) >= 30.0
