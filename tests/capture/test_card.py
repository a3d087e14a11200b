from __future__ import annotations

from dataclasses import replace

import cv2
import numpy as np
import pytest

from coach.capture.card import LENS_ERROR, NoCard, card, place_card
from coach.capture.card_fit import Placed
from coach.capture.card_marks import marker_cells
from coach.capture.card_watch import CardWatch, chest_box
from coach.domain.frame import Frame
from coach.domain.pose import Card
from coach.goniometry.camera import Pinhole

from .rendered_card import FACING, Scene, Sheet, errors_deg, marker, render, true_axes, wearer

PLACES = [
    Scene(yaw_deg=-38, pitch_deg=8, roll_deg=3, at_m=(0.1, -0.2, 2.0), seed=1),
    Scene(yaw_deg=-21, pitch_deg=-14, roll_deg=-6, at_m=(-0.2, 0.0, 2.6), seed=2),
    Scene(yaw_deg=-6, pitch_deg=15, at_m=(0.3, 0.1, 1.6), shirt=0.05, seed=3),
    Scene(yaw_deg=0, at_m=(0.0, -0.3, 2.8), exposure=0.3, gradient=0.8, seed=4),
    Scene(yaw_deg=12, pitch_deg=-5, roll_deg=8, at_m=(0.2, 0.0, 2.2), shirt=0.7, seed=5),
    Scene(yaw_deg=29, pitch_deg=10, at_m=(-0.1, -0.1, 1.9), motion_px=(2.0, 1.0), seed=6),
    Scene(yaw_deg=37, pitch_deg=-9, at_m=(0.0, -0.2, 2.3), jpeg=50, seed=7),
]


def look(scene: Scene, **more: object) -> Placed | NoCard:
    box = chest_box(wearer(scene))
    assert box is not None
    return place_card(render(scene), Pinhole.of(scene.size_px), box, **more)  # type: ignore[arg-type]


def found(scene: Scene) -> Card:
    placed = look(scene)
    assert isinstance(placed, Placed), placed
    return card(placed, LENS_ERROR)


def shown(scene: Scene, index: int, time_s: float) -> Frame:
    return Frame(index, time_s, render(scene))


@pytest.mark.parametrize("scene", PLACES, ids=lambda scene: f"yaw{scene.yaw_deg:g}")
def test_turn_and_tilt_are_the_rendered_ones(scene: Scene) -> None:
    """Folded as printed, seen through the assumed lens: what is left is light, blur and noise."""
    seen = found(scene)
    turn, tilt = errors_deg(seen.axes, scene)
    assert abs(turn) < 1.0
    assert tilt < 0.4
    np.testing.assert_allclose(seen.axes.T @ seen.axes, np.eye(3), atol=1e-9)
    assert np.linalg.det(seen.axes) == pytest.approx(1)


def test_the_axes_are_those_of_the_trunk() -> None:
    """Forward is to the camera, up is up, right is the wearer's own, on the picture's left."""
    axes = found(Scene(at_m=(0.0, 0.0, 2.0))).axes
    np.testing.assert_allclose(axes, FACING, atol=np.radians(0.5))
    turned = found(Scene(yaw_deg=20, at_m=(0.0, 0.0, 2.0))).axes
    assert turned[0, 0] == pytest.approx(np.sin(np.radians(20)), abs=np.radians(0.5))


@pytest.mark.parametrize("tent_deg", [(31.0, 31.0), (39.0, 39.0), (35.5, 34.5)])
@pytest.mark.parametrize("yaw_deg", [-44.0, -18.0, 5.0, 24.0])
def test_paper_that_gives_stays_within_the_interval(
    tent_deg: tuple[float, float], yaw_deg: float
) -> None:
    scene = Scene(yaw_deg=yaw_deg, pitch_deg=6, tent_deg=tent_deg, bulge_mm=(1.0, -0.5), seed=11)
    seen = found(scene)
    turn, tilt = errors_deg(seen.axes, scene)
    assert abs(turn) <= seen.turn_error_deg
    assert tilt <= seen.tilt_error_deg


@pytest.mark.parametrize("field_of_view_deg", [55.0, 75.0])
def test_another_lens_is_in_the_interval_beside_the_middle(field_of_view_deg: float) -> None:
    scene = Scene(yaw_deg=15, at_m=(0.35, 0.0, 2.0), field_of_view_deg=field_of_view_deg, seed=12)
    seen = found(scene)
    turn, tilt = errors_deg(seen.axes, scene)
    # The card lies at the same place in the picture whatever the lens: its direction is wrong by
    # the difference of what both lenses make of that place.
    u = 0.35 / 2.0 * scene.focal_px
    wrong = np.degrees(np.arctan(u / Pinhole.of(scene.size_px).focal_px) - np.arctan(0.35 / 2.0))
    assert abs(turn) == pytest.approx(abs(wrong), abs=0.5)
    assert abs(turn) <= seen.turn_error_deg
    assert tilt <= seen.tilt_error_deg
    middle = found(replace(scene, at_m=(0.0, 0.0, 2.0)))
    assert middle.turn_error_deg < seen.turn_error_deg


def test_the_pictures_corner_need_not_be_the_chests() -> None:
    scene = PLACES[4]
    whole = place_card(render(scene), Pinhole.of(scene.size_px))
    assert isinstance(whole, Placed)
    assert abs(errors_deg(whole.axes, scene)[0]) < 1.0


STRANGE = {
    "mirrored": (Scene(mirrored=True), {NoCard.NOTHING}),
    "other markers": (Scene(sheet=Sheet(marker(3), marker(17))), {NoCard.NOTHING}),
    "one other marker": (Scene(sheet=Sheet(marker(11), marker(17))), {NoCard.NOT_BOTH}),
    "faces exchanged": (Scene(sheet=Sheet(marker(30), marker(11))), {NoCard.NOT_BOTH}),
    "one face covered": (Scene(only=(False, True)), {NoCard.NOT_BOTH}),
    "no card": (Scene(only=(False, False)), {NoCard.NOTHING}),
    "flat": (Scene(tent_deg=(0.0, 0.0)), {NoCard.NOT_BOTH}),
    "turned away": (Scene(yaw_deg=75), {NoCard.NOT_BOTH, NoCard.NOTHING}),
    "from behind": (Scene(yaw_deg=180), {NoCard.NOTHING}),
}


@pytest.mark.parametrize("case", STRANGE)
def test_what_is_no_card_is_not_taken_for_one(case: str) -> None:
    scene, reasons = STRANGE[case]
    assert look(scene) in reasons


def test_checks_and_noise_are_no_card() -> None:
    checks = np.kron(np.indices((36, 64)).sum(axis=0) % 2, np.ones((20, 20))).astype(np.uint8) * 220
    noise = np.random.default_rng(3).integers(0, 255, (720, 1280, 3), np.uint8)
    for picture in (np.dstack([checks] * 3), noise, np.zeros((720, 1280, 3), np.uint8)):
        assert place_card(picture, Pinhole.of((1280, 720))) is NoCard.NOTHING


def test_the_markers_are_the_dictionarys_and_unlike_each_other() -> None:
    cells = marker_cells()
    # OpenCV's own reading of its own drawing.
    dictionary = cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_4X4_50)
    for index, number in enumerate((11, 30)):
        large = np.kron(np.pad(cells[index], 1, constant_values=True), np.ones((30, 30)))
        detector = cv2.aruco.ArucoDetector(dictionary)
        _, ids, _ = detector.detectMarkers((large * 255).astype(np.uint8))
        assert np.ravel(ids).tolist() == [number]
    inner = cells[:, 1:-1, 1:-1]
    ways = [
        np.rot90(picture, quarter) != invert
        for face in inner
        for picture in (face, face[:, ::-1])
        for quarter in range(4)
        for invert in (False, True)
    ]
    for face in inner:
        differences = sorted(int(np.sum(face != way)) for way in ways)
        assert differences[0] == 0
        assert differences[1] >= 6


def test_a_small_picture_gives_none_and_says_why() -> None:
    scene = Scene(size_px=(640, 480), at_m=(0.0, 0.0, 1.2))
    assert look(scene) is NoCard.SMALL_PICTURE
    watch = CardWatch()
    assert watch.find(shown(scene, 0, 0.0), wearer(scene)) is None
    assert watch.why is NoCard.SMALL_PICTURE
    (note,) = watch.notes
    assert "640 by 480" in note
    assert "1280 by 720" in note


def test_small_pictures_without_a_card_need_no_word() -> None:
    scene = Scene(size_px=(640, 480), only=(False, False))
    watch = CardWatch()
    for n in range(40):
        assert watch.find(shown(scene, n, n / 30), wearer(scene)) is None
    assert watch.notes == ()


def test_every_fifth_frame_until_there_is_a_card_then_every_frame() -> None:
    scene, bare = Scene(at_m=(0.0, 0.0, 2.0)), Scene(at_m=(0.0, 0.0, 2.0), only=(False, False))
    pictures = {False: render(bare), True: render(scene)}
    watch = CardWatch()

    def watched(frames: range, *, there: bool) -> list[bool]:
        return [
            watch.find(Frame(n, n / 30, pictures[there]), wearer(scene, n / 30)) is not None
            for n in frames
        ]

    assert not any(watched(range(3), there=False))
    assert watched(range(3, 12), there=True) == [False, False, *[True] * 7]
    assert not any(watched(range(12, 30), there=False))
    assert watched(range(30, 33), there=True) == [True] * 3  # missed for less than two seconds
    assert not any(watched(range(33, 100), there=False))
    assert sum(watched(range(100, 105), there=True)) in range(1, 6)


def test_a_card_that_moves_is_followed() -> None:
    watch = CardWatch()
    off = []
    for n in range(16):
        scene = Scene(
            yaw_deg=-20 + 3 * n, pitch_deg=n / 2, at_m=(0.01 * n, -0.1, 2.1), seed=n, noise=3
        )
        seen = watch.find(shown(scene, n, n / 15), wearer(scene, n / 15))
        assert seen is not None
        off.append(abs(errors_deg(seen.axes, scene)[0]))
        assert off[-1] <= seen.turn_error_deg
    assert np.mean(off) < 0.5


def test_a_tent_once_seen_from_ahead_is_known_where_one_face_is_square() -> None:
    """Turn and tent exchange alike there: cos(t - a) and cos(t + a) give their sum."""
    turned = Scene(yaw_deg=36, tent_deg=(32.0, 32.0), at_m=(0.0, -0.1, 2.0), seed=21)
    fresh = CardWatch().find(shown(turned, 0, 0.0), wearer(turned))
    watch = CardWatch()
    for n in range(12):
        ahead = replace(turned, yaw_deg=float(n - 6), seed=30 + n)
        watch.find(shown(ahead, n, n / 30), wearer(ahead, n / 30))
    known = watch.find(shown(turned, 12, 0.4), wearer(turned, 0.4))
    assert fresh is not None
    assert known is not None
    for seen in (fresh, known):
        assert abs(errors_deg(seen.axes, turned)[0]) <= seen.turn_error_deg
    assert fresh.turn_error_deg > 4
    assert known.turn_error_deg < 2.5
    assert abs(errors_deg(known.axes, turned)[0]) < 1.5


def test_upside_down_is_the_right_way_up() -> None:
    scene = Scene(yaw_deg=14, pitch_deg=5, roll_deg=180, at_m=(0.0, -0.1, 2.0), seed=22)
    seen = CardWatch().find(shown(scene, 0, 0.0), wearer(scene))
    assert seen is not None
    worn = true_axes(scene) * (1, -1, -1)
    assert np.degrees(np.arccos((np.trace(worn.T @ seen.axes) - 1) / 2)) < 1.0


def test_a_card_that_is_not_on_the_chest_is_not_this_persons() -> None:
    scene = Scene(at_m=(0.7, -0.1, 2.0))
    beside = wearer(replace(scene, at_m=(-0.3, -0.1, 2.0)))
    assert CardWatch().find(shown(scene, 0, 0.0), beside) is None
    assert CardWatch().find(shown(scene, 0, 0.0), wearer(scene)) is not None
    assert (
        CardWatch().find(shown(scene, 0, 0.0), replace(wearer(scene), another_person=True)) is None
    )
