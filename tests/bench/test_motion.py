"""Holds are as long as they are said to be, and posing meets what it is asked for."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from tests.bench import drawing_lots, everyday, posing, truth
from tests.bench.back import COLUMNS, Back, find
from tests.bench.motion import HOLD_BAND_DEG, Repetition, Script, wobble
from tests.bench.reaching import Reach, bend
from tests.bench.scene import Camera, Door, draw_lying_camera, place, place_lying
from tests.bench.skeleton import Array, Rig, pose

SCRIPT = Script(
    2.0,
    (
        Repetition(120.0, 10.0),
        Repetition(60.0, 1.2, raise_s=1.0, return_s=1.0),
        Repetition(95.0, 4.0, pause_s=1.0, creep_deg=-0.6),
    ),
)


def test_holds_are_the_time_inside_the_band() -> None:
    times_s = np.arange(0.0, SCRIPT.duration_s, 0.001)
    angle_deg = SCRIPT.angle_deg(times_s)
    assert [round(hold.held_s, 6) for hold in SCRIPT.holds()] == [10.0, 4.0]
    for hold in SCRIPT.holds():
        near = np.abs(angle_deg - hold.peak_deg) <= HOLD_BAND_DEG
        around = (times_s > hold.start_s - 1.0) & (times_s < hold.end_s + 1.0)
        inside = times_s[near & around]
        assert inside[0] == pytest.approx(hold.start_s, abs=0.003)
        assert inside[-1] == pytest.approx(hold.end_s, abs=0.003)


def test_holds_of_a_jerky_script_are_the_time_inside_the_band() -> None:
    jerky = replace(SCRIPT, jerk=0.9, jerk_hz=1.1)
    times_s = np.arange(0.0, jerky.duration_s + 1.0, 0.001)
    angle_deg = jerky.angle_deg(times_s)
    speed = np.abs(np.diff(angle_deg))
    assert speed.max() > 1.3 * np.abs(np.diff(SCRIPT.angle_deg(times_s))).max()
    for hold in jerky.holds():
        near = np.abs(angle_deg - hold.peak_deg) <= HOLD_BAND_DEG
        inside = times_s[near & (times_s > hold.start_s - 1.0) & (times_s < hold.end_s + 1.0)]
        assert inside[0] == pytest.approx(hold.start_s, abs=0.003)
        assert inside[-1] == pytest.approx(hold.end_s, abs=0.003)


@pytest.mark.parametrize("number", range(8))
def test_a_retake_is_the_same_clip_from_elsewhere(number: int) -> None:
    for combo in drawing_lots.COMBOS:
        for hard in (False, True):
            first = drawing_lots.draw("tuning", combo, number, 20.0, 15.0, hard)
            again = drawing_lots.draw("tuning", combo, number, 20.0, 15.0, hard, retake=1)
            assert again.name == f"{first.name}_r1"
            assert again.camera.fov_deg == first.camera.fov_deg
            assert again.camera.distance_m != first.camera.distance_m
            back = replace(again, name=first.name, camera=first.camera, blocks=first.blocks)
            assert back == first


@pytest.mark.parametrize("number", range(8))
def test_a_hard_clip_names_its_troubles(number: int) -> None:
    for combo in drawing_lots.COMBOS:
        spec = drawing_lots.draw("judging", combo, number, 20.0, 15.0, hard=True)
        assert 2 <= len(spec.troubles) <= 4
        assert ("bystander" in spec.troubles) == (spec.bystander is not None)
        assert ("crop" in spec.troubles) == (spec.camera.crop > 0.0)
        assert ("dark" in spec.troubles) == (spec.room.glow < 0.1)
        assert spec.script is not None
        assert len(spec.script.holds()) == len(spec.script.repetitions)
        if spec.bystander is not None:
            # Judging people stay among themselves, also in the background.
            names = {person.name for person in drawing_lots.SETS["judging"]}
            assert spec.bystander.person in names - {spec.person}


def test_a_touch_is_not_a_hold() -> None:
    assert [hold.peak_deg for hold in SCRIPT.holds()] == [120.0, 95.0]


def test_a_hold_shorter_than_its_ends_is_refused() -> None:
    with pytest.raises(ValueError, match="shorter than its gentle ends"):
        Script(0.0, (Repetition(10.0, 0.3, raise_s=3.0, return_s=3.0),)).holds()


def test_profiles_move_without_jumps() -> None:
    times_s = np.arange(0.0, SCRIPT.duration_s, 0.01)
    assert np.abs(np.diff(SCRIPT.angle_deg(times_s))).max() < 3.0


def test_wobble_stays_inside_its_amplitude() -> None:
    values = wobble(np.arange(0, 60, 0.05), 0.6, np.random.default_rng(1))
    assert 0.1 < np.abs(values).max() <= 0.6


def test_lots_are_the_same_every_time_and_the_sets_share_nobody() -> None:
    combo = drawing_lots.COMBOS[0]
    first = drawing_lots.draw("tuning", combo, 3, 20.0, 15.0)
    assert first == drawing_lots.draw("tuning", combo, 3, 20.0, 15.0)
    names = {key: {person.name for person in who} for key, who in drawing_lots.SETS.items()}
    assert not names["tuning"] & names["judging"]


def test_the_first_clips_keep_their_people_and_everybody_has_a_turn() -> None:
    flexion = drawing_lots.COMBOS[0]
    for which, names in (
        ("tuning", "amber basil cedar dahlia elm fern ginkgo"),
        ("judging", "hazel iris jasper kale laurel maple"),
    ):
        drawn = [drawing_lots.draw(which, flexion, n, 20.0, 15.0).person for n in range(11)]
        assert drawn[: len(names.split())] == names.split()
        assert set(drawn) == {person.name for person in drawing_lots.SETS[which]}


def test_everyday_movement_rests_in_no_raised_pose_for_two_seconds() -> None:
    times_s = np.arange(0, 60, 0.1)
    arms = everyday.perform(times_s, np.random.default_rng(4))
    raised = np.array([arm.angle_deg > 20 for arm, *_ in arms])
    still = np.abs(np.gradient([arm.angle_deg for arm, *_ in arms], 0.1)) < 2.0
    longest = max(map(len, "".join("1" if x else " " for x in raised & still).split()), default=0)
    assert longest < 20


def stick_rig() -> Rig:
    """A person of sticks, arms forty degrees out and the elbows somewhat bent."""
    rows: list[tuple[str, str, tuple[float, float, float]]] = [("root", "", (0, 0, 1.0))]
    above = "root"
    for i, name in enumerate(posing.SPINE):
        rows.append((name, above, (0, 0, 1.05 + 0.08 * i)))
        above = name
    for tag, s in (("L", 1), ("R", -1)):
        rows += [
            (f"upperleg01.{tag}", "root", (0.1 * s, 0, 0.95)),
            (f"clavicle.{tag}", "spine01", (0.02 * s, 0, 1.45)),
            (f"shoulder01.{tag}", f"clavicle.{tag}", (0.1 * s, 0, 1.47)),
            (f"upperarm01.{tag}", f"shoulder01.{tag}", (0.17 * s, 0, 1.43)),
            (f"upperarm02.{tag}", f"upperarm01.{tag}", (0.22 * s, 0, 1.37)),
            (f"lowerarm01.{tag}", f"upperarm02.{tag}", (0.35 * s, 0, 1.214)),
            (f"lowerarm02.{tag}", f"lowerarm01.{tag}", (0.40 * s, -0.07, 1.154)),
            (f"wrist.{tag}", f"lowerarm02.{tag}", (0.45 * s, -0.14, 1.094)),
            (f"finger2-1.{tag}", f"wrist.{tag}", (0.49 * s, -0.22, 1.05)),
            (f"finger5-1.{tag}", f"wrist.{tag}", (0.45 * s, -0.20, 1.0)),
        ]
    names = tuple(row[0] for row in rows)
    parents = tuple(names.index(row[1]) if row[1] else -1 for row in rows)
    marks_m = {
        "c7": ("spine01", np.array([0.0, 0.06, 1.50])),
        "psis": ("root", np.array([0.0, 0.08, 1.03])),
    }
    return Rig.of(names, parents, np.array([row[2] for row in rows]), marks_m)


def flat_back() -> Back:
    """A back that is a board 15 cm to either side, 2 cm behind the line from C7 to the PSIS."""
    heights_m = np.linspace(0.8, 1.5, 8)
    skin_m = np.full((8, COLUMNS), 0.09)
    skin_m[:, 6:] = np.nan
    marks_m = stick_rig().marks_m
    return Back(marks_m["c7"][1], marks_m["psis"][1], heights_m, skin_m)


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize(
    ("movement", "angle_deg", "elbow_deg"),
    [
        ("flexion", 0.0, 8.0),
        ("flexion", 155.0, 12.0),
        ("extension", 45.0, 5.0),
        ("abduction", 130.0, 9.0),
        ("external-rotation-0", -30.0, 90.0),
        ("external-rotation-0", 55.0, 85.0),
        ("external-rotation-90", 60.0, 90.0),
        ("external-rotation-90", -40.0, 90.0),
        ("horizontal-adduction", -15.0, 20.0),
        ("horizontal-adduction", 130.0, 70.0),
    ],
)
def test_posing_gives_the_angle_it_was_asked_for(
    side: str, movement: str, angle_deg: float, elbow_deg: float
) -> None:
    rig = stick_rig()
    posed = posing.stand_rig(
        rig, side, posing.Arm(movement, angle_deg, elbow_deg=elbow_deg, axial_deg=20.0),
        posing.Arm("flexion", 3.0), LEANING, np.eye(3), rig.head("root"),
    )  # fmt: skip
    joints = truth.Joints.of(posed)
    assert truth.angle_deg(movement, side, joints) == pytest.approx(angle_deg, abs=1.0)
    assert truth.elbow_flexion_deg(side, joints) == pytest.approx(elbow_deg, abs=1.5)


def test_the_back_of_an_elliptic_cylinder_is_found() -> None:
    around, heights = np.meshgrid(np.linspace(0, 2 * np.pi, 181), np.linspace(0.0, 1.71, 172))
    skin = np.stack([0.16 * np.cos(around), 0.10 * np.sin(around), heights], axis=-1)
    skin = skin.reshape(-1, 3)
    found = find(
        skin, np.full(len(skin), True), np.array([0.0, 0.0, 1.45]), np.array([0.0, 0.0, 0.90])
    )
    assert found.c7_m == pytest.approx([0.0, 0.10, 1.47], abs=1e-3)
    assert found.psis_m == pytest.approx([0.0, 0.10, 0.985], abs=1e-3)
    for aside_m in (0.0, 0.06, 0.09):
        true_m = 0.10 * np.sqrt(1 - (aside_m / 0.16) ** 2)
        # The largest y of a strip 4 cm wide.
        assert found.skin_behind_m(1.2, -aside_m) == pytest.approx(true_m, abs=0.012)
    assert np.isnan(found.skin_behind_m(1.2, 0.25))


LEANING = posing.Stance(lean_deg=7.0, twist_deg=5.0, hike_deg=9.0, side_lean_deg=4.0)


@pytest.mark.parametrize("side", ["left", "right"])
@pytest.mark.parametrize("ratio", [1.05, 0.95, 0.7, 0.4])
def test_a_hand_behind_the_back_is_as_high_as_asked_for(side: str, ratio: float) -> None:
    rig = stick_rig()
    posed = posing.stand_rig(
        rig, side, posing.Arm(truth.BEHIND_BACK, 0.0, reach=Reach(ratio)),
        posing.Arm("flexion", 3.0), LEANING, np.eye(3), rig.head("root"), flat_back(),
    )  # fmt: skip
    joints = truth.Joints.of(posed)
    assert truth.reach_ratio(side, joints) == pytest.approx(ratio, abs=0.004)
    row, s = (0, -1) if side == "left" else (1, 1)
    forward, _, right = truth.thorax_axes(joints).T
    from_c7 = joints.wrists_m[row] - joints.back_m[0]
    if ratio < 0.9:
        # Behind the skin and on the own side; the elbow farther out than the wrist.
        assert -0.16 < from_c7 @ forward < -0.03
        assert 0.0 < s * from_c7 @ right < 0.08
        assert s * (joints.elbows_m[row] - joints.wrists_m[row]) @ right > 0.08


def test_a_hand_asked_for_below_its_reach_hangs() -> None:
    rig = stick_rig()
    posed = posing.stand_rig(
        rig, "left", posing.Arm(truth.BEHIND_BACK, 0.0, reach=Reach(2.0)),
        posing.Arm("flexion", 3.0), posing.Stance(), np.eye(3), rig.head("root"), flat_back(),
    )  # fmt: skip
    joints = truth.Joints.of(posed)
    assert truth.elevation_deg("left", joints)[0] < 25.0
    assert truth.elbow_flexion_deg("left", joints) < 30.0


@pytest.mark.parametrize("pole", [(0.0, -1.0, 0.2), (1.0, 0.3, 0.0)])
def test_two_bones_meet_their_target(pole: tuple[float, float, float]) -> None:
    shoulder, target = np.array([0.1, 0.2, 1.4]), np.array([0.25, 0.35, 1.2])
    upper, fore = bend(shoulder, target, 0.3, 0.26, np.array(pole))
    assert shoulder + 0.3 * upper + 0.26 * fore == pytest.approx(target)
    assert (0.3 * upper) @ np.array(pole) > 0.0


def test_a_helping_hand_comes_to_the_other_elbow() -> None:
    rig = stick_rig()
    posed = posing.stand_rig(
        rig, "right", posing.Arm("horizontal-adduction", 110.0, elbow_deg=40.0),
        posing.Arm("flexion", 3.0, helps=1.0), LEANING, np.eye(3), rig.head("root"),
    )  # fmt: skip
    assert np.linalg.norm(posed.head("wrist.L") - posed.head("lowerarm01.R")) < 0.13
    assert truth.angle_deg("horizontal-adduction", "right", truth.Joints.of(posed)) == (
        pytest.approx(110.0, abs=1.0)
    )


@pytest.mark.parametrize("side", ["left", "right"])
def test_at_a_door_the_trunk_turns_and_the_forearm_stays(side: str) -> None:
    rig = stick_rig()
    seen = []
    for angle_deg in (-8.0, 30.0, 70.0):
        posed = posing.against(
            posing.stand_rig(
                rig, side, posing.Arm("external-rotation-0", angle_deg, elbow_deg=90.0),
                posing.Arm("flexion", 3.0), LEANING, np.eye(3), rig.head("root"),
            ),
            side, Door(aside_deg=20.0),
        )  # fmt: skip
        joints = truth.Joints.of(posed)
        assert truth.angle_deg("external-rotation-0", side, joints) == pytest.approx(
            angle_deg, abs=1.0
        )
        row, s = (0, -1) if side == "left" else (1, 1)
        forearm = joints.wrists_m[row] - joints.elbows_m[row]
        # World x is the person's left.
        assert np.degrees(np.arctan2(-s * forearm[0], -forearm[1])) == pytest.approx(20.0)
        forward = truth.thorax_axes(joints)[:, 0]
        facing_deg = float(np.degrees(np.arctan2(-s * forward[0], -forward[1])))
        seen.append((joints.elbows_m[row] + joints.wrists_m[row], facing_deg))
    middles, facings_deg = zip(*seen, strict=True)
    assert np.ptp([middle[:2] for middle in middles], axis=0) == pytest.approx(0.0, abs=1e-9)
    # Away from the arm, about as far as the rotation grows.
    assert facings_deg[0] - facings_deg[2] == pytest.approx(78.0, abs=8.0)


def test_a_raised_arm_carries_its_joint_centre_up_by_centimetres() -> None:
    rig = stick_rig()
    up = [
        posing.stand_rig(
            rig, "left", posing.Arm("flexion", a), posing.Arm("flexion", 0.0), posing.Stance(),
            np.eye(3), rig.head("root"),
        ).head("upperarm01.L")[2]
        for a in (0.0, 150.0)
    ]  # fmt: skip
    assert 0.02 < up[1] - up[0] < 0.07


def test_bones_at_rest_stay_where_they_are() -> None:
    rig = stick_rig()
    posed = pose(rig, {}, {}, np.eye(3), rig.head("root"))
    assert posed.heads_m == pytest.approx(rig.heads_m)
    assert posed.skin_matrices() == pytest.approx(np.tile(np.eye(4), (len(rig.names), 1, 1)))


@pytest.mark.parametrize(("view", "eye"), [("front", (0, -1)), ("back", (0, 1)), ("side", (-1, 0))])
def test_the_camera_stands_where_the_view_says(view: str, eye: tuple[int, int]) -> None:
    placed = place(Camera(distance_m=2.0, height_m=1.1), view, "right", 0.0, 1.9)
    assert placed.eye_m == pytest.approx([2.0 * eye[0], 2.0 * eye[1], 1.1], abs=1e-9)
    inside: Array = placed.project(np.array([0.0, 0.0, 1.0]))
    assert inside[0] == pytest.approx(320.0)
    assert placed.turn @ placed.turn.T == pytest.approx(np.eye(3), abs=1e-12)


@pytest.mark.parametrize("seed", range(12))
@pytest.mark.parametrize("view", ["foot", "side"])
def test_a_camera_by_somebody_lying_sees_the_trunk_and_the_raised_hand(
    view: str, seed: int
) -> None:
    rng = np.random.default_rng(seed)
    camera = draw_lying_camera(rng, view, 0.4, hidden=False)
    # Hips, crown of the head, a hand straight up and one out on the camera's side.
    points_m = np.array(
        [[0.1, -0.5, 0.5], [-0.1, -0.5, 0.5], [0, 0.33, 0.55], [-0.2, 0, 1.15], [-0.45, 0.1, 0.5]]
    )
    placed = place_lying(camera, view, on_the_left=False, points_m=points_m)
    seen = placed.project(points_m)
    assert (placed.to_camera(points_m)[:, 2] > 0.5).all()
    assert ((seen > 0) & (seen < (camera.width_px, camera.height_px))).all()
    head, hips = seen[2], seen[:2].mean(axis=0)
    if view == "foot":
        assert placed.eye_m[1] < -1.9
        assert head[1] < hips[1]
    else:
        # Looking along +x with z up, the picture's right is -y, where the feet are.
        assert placed.eye_m[0] < -1.6
        assert head[0] < hips[0]


def test_a_rendered_frame_shows_the_person() -> None:
    pytest.importorskip("anny")
    pytest.importorskip("moderngl")
    from tests.bench.clip import prepare

    take = prepare(drawing_lots.draw("tuning", drawing_lots.COMBOS[2], 0, 14.0, 1.0))
    shot = next(iter(take.shots()))
    assert shot.picture.shape == (480, 640, 3)
    assert shot.picture.std() > 10.0
