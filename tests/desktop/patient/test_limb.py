"""What is drawn agrees with the pose it is drawn from."""

import math

import numpy as np
import pytest

from coach.desktop.patient.limb import Limb, limb_of
from coach.domain.movement import Movement, Position, Side
from coach.domain.plan import PlannedExercise
from coach.domain.pose import Landmark, Pose

from .scripted import standing


def planned(
    movement: Movement,
    side: Side,
    target_deg: float | None = None,
    position: Position = Position.STANDING,
) -> PlannedExercise:
    return PlannedExercise(
        movement=movement,
        side=side,
        hold_s=10,
        repetitions=1,
        target_deg=target_deg,
        position=position,
    )


def posed(side: Side, **joints: tuple[float, float]) -> Pose:
    """A pose of these joints alone, ``near`` and ``far`` standing for the two sides; pixels."""
    at = np.full((33, 2), np.nan)
    names = {"near": side.name, "far": side.other.name}
    for name, place in joints.items():
        which, _, joint = name.partition("_")
        full = f"{names[which]}_{joint.upper()}" if joint else which.upper()
        at[Landmark[full]] = place
    return Pose(0.0, (640, 480), at, np.zeros((33, 3)), np.ones(33))


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


def toward(limb: Limb, index: int = -1) -> np.ndarray:
    """Unit vector from the apex to a point of the arc."""
    arm = np.array(limb.arc[index]) - np.array(limb.apex)
    return arm / np.linalg.norm(arm)


SUPINE = {
    # On the back, head at picture left, the face up.
    "nose": (180, 300),
    "near_shoulder": (240, 330),
    "far_shoulder": (240, 330),
    "near_hip": (400, 330),
    "far_hip": (400, 330),
}


@pytest.mark.parametrize("side", list(Side))
def test_rotation_at_90_begins_ahead_and_goes_toward_the_head(side: Side) -> None:
    raised = math.radians(60)
    pose = posed(
        side,
        nose=(350, 90),
        near_shoulder=(320, 150),
        far_shoulder=(320, 150),
        near_hip=(320, 310),
        far_hip=(320, 310),
        near_elbow=(330, 150),
        near_wrist=(330 + 80 * math.cos(raised), 150 - 80 * math.sin(raised)),
    )
    limb = limb_of(pose, planned(Movement.EXTERNAL_ROTATION_90, side), 61.0)
    assert limb is not None
    assert limb.apex == (330, 150)
    assert toward(limb, 0) == pytest.approx([1, 0])
    assert toward(limb) == pytest.approx([math.cos(raised), -math.sin(raised)])
    assert limb.label[1] > 150, "the value would hide the face"


def test_lying_on_the_back_ahead_is_up_and_the_head_is_aside() -> None:
    pose = posed(Side.LEFT, **SUPINE, near_elbow=(240, 320), near_wrist=(200, 260))
    limb = limb_of(
        pose, planned(Movement.EXTERNAL_ROTATION_90, Side.LEFT, position=Position.SUPINE), 30.0
    )
    assert limb is not None
    assert toward(limb, 0) == pytest.approx([0, -1])
    assert toward(limb)[0] < 0


def test_flexion_lying_on_the_back_sweeps_over_the_ceiling() -> None:
    pose = posed(Side.LEFT, **SUPINE, near_elbow=(240, 230), near_wrist=(240, 150))
    limb = limb_of(pose, planned(Movement.FLEXION, Side.LEFT, position=Position.SUPINE), 90.0)
    assert limb is not None
    assert toward(limb, 0) == pytest.approx([1, 0])
    assert toward(limb) == pytest.approx([0, -1], abs=1e-9)


@pytest.mark.parametrize("side", list(Side))
def test_seen_from_the_foot_outward_is_outward_and_ahead_is_up(side: Side) -> None:
    # Facing the camera and from the foot alike, the person's left is at picture right.
    out = 1 if side is Side.LEFT else -1
    body = {
        "nose": (320, 150),
        "near_shoulder": (320 + 60 * out, 220),
        "far_shoulder": (320 - 60 * out, 220),
        "near_hip": (320 + 40 * out, 300),
        "far_hip": (320 - 40 * out, 300),
        "near_elbow": (320 + 70 * out, 260),
        "near_wrist": (320 + 120 * out, 210),
    }
    rotation = planned(Movement.EXTERNAL_ROTATION_0, side, position=Position.SUPINE)
    limb = limb_of(posed(side, **body), rotation, 45.0)
    assert limb is not None
    assert toward(limb, 0) == pytest.approx([0, -1])
    assert toward(limb) == pytest.approx([out * math.sqrt(0.5), -math.sqrt(0.5)])
    across = planned(Movement.HORIZONTAL_ADDUCTION, side, position=Position.SUPINE)
    body |= {"near_elbow": (320 + 60 * out, 120)}
    limb = limb_of(posed(side, **body), across, 90.0)
    assert limb is not None
    assert toward(limb, 0) == pytest.approx([out, 0])
    assert toward(limb) == pytest.approx([0, -1], abs=1e-9)


@pytest.mark.parametrize("side", list(Side))
def test_horizontal_adduction_in_front_goes_from_outside_forward_and_across(side: Side) -> None:
    out = 1 if side is Side.LEFT else -1
    limb = limb_of(standing(90, side), planned(Movement.HORIZONTAL_ADDUCTION, side), 120.0)
    assert limb is not None
    first, middle, last = (toward(limb, index) for index in (0, 36, -1))
    assert first == pytest.approx([out, 0])
    assert middle == pytest.approx([0, 1], abs=1e-9)
    assert last[0] * out < 0


@pytest.mark.parametrize("side", list(Side))
def test_at_a_door_frame_the_trunk_turns_and_the_forearm_stays(side: Side) -> None:
    pose = standing(0, side)
    at_door = planned(Movement.EXTERNAL_ROTATION_0, side, position=Position.DOORWAY)
    limb = limb_of(pose, at_door, 40.0)
    assert limb is not None
    assert toward(limb) == pytest.approx([0, 1], abs=1e-9)
    assert toward(limb, 0)[0] * (1 if side is Side.LEFT else -1) < 0


BACK = {
    "near_shoulder": (280, 160),
    "far_shoulder": (360, 160),
    "near_hip": (290, 320),
    "far_hip": (350, 320),
    "near_elbow": (240, 230),
    "near_wrist": (310, 250),
}


def test_the_band_of_a_reach_lies_on_the_spine_above_the_wrist() -> None:
    limb = limb_of(posed(Side.LEFT, **BACK), planned(Movement.HAND_BEHIND_BACK, Side.LEFT), 0.62)
    assert limb is not None
    assert limb.band is not None
    assert (limb.zero, limb.arc) == (None, ())
    (top_x, top_y), (bottom_x, bottom_y) = limb.band
    assert top_x == bottom_x == 320
    # Thumb at T7, so from T6 to T8: 0.29 to 0.18 of the back's 166 px above the wrist at 250.
    assert top_y == pytest.approx(250 - (0.62 - 0.331) * 1.04 * 160, abs=0.5)
    assert bottom_y == pytest.approx(250 - (0.62 - 0.442) * 1.04 * 160, abs=0.5)
    heights = [first[1] for first, _ in limb.ticks]
    assert heights == sorted(heights)
    assert len(heights) == 7
    assert limb.label[0] > 320, "the value would hide the arm"


def test_without_a_reach_there_is_the_scale_alone() -> None:
    limb = limb_of(posed(Side.LEFT, **BACK), planned(Movement.HAND_BEHIND_BACK, Side.LEFT), None)
    assert limb is not None
    assert limb.band is None
    assert len(limb.ticks) == 7
