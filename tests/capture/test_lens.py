"""The lens check on rendered boards whose optics are known, and beside OpenCV's own calibration."""

from __future__ import annotations

import cv2
import numpy as np
import pytest

from coach.capture.lens_board import Seen, corners_mm, find_board
from coach.capture.lens_check import field_of_view
from coach.capture.lens_fit import calibrate, fit_views
from coach.capture.lens_views import Missing, Views
from coach.domain.fault import Fault

from .rendered_board import Optics, Place, draw_optics, draw_places, film, render

SIZE_PX = (1280, 720)


def board_seen(optics: Optics, place: Place, noise_px: float, random: np.random.Generator) -> Seen:
    """Corners by the formula of the pinhole and one radial coefficient, without a picture."""
    from .rendered_card import turn

    f = optics.focal_px
    axes = turn(1, place.about_y_deg) @ turn(0, place.about_x_deg) @ turn(2, place.roll_deg)
    width, height = optics.size_px
    centre = place.distance_m * np.array(
        [place.at[0] * width / 2 / f, place.at[1] * height / 2 / f, 1.0]
    )
    flat = (corners_mm() - corners_mm().mean(axis=0)) / 1000
    points = flat @ axes.T + centre
    slopes = points[:, :2] / points[:, 2:]
    slopes = slopes * (1 + optics.k1 * (slopes**2).sum(axis=1, keepdims=True))
    image = slopes * f + np.array([width, height]) / 2 + optics.centre_off_px
    return Seen(np.arange(len(image)), image + random.normal(0, noise_px, image.shape))


def looked_at(optics: Optics, places: list[Place], seed: int = 0) -> Views:
    views = Views(optics.size_px)
    for frame in film(optics, places, np.random.default_rng(seed)):
        views.look(frame)
    return views


@pytest.mark.parametrize("seed", [40_001, 40_002, 40_003])
def test_a_rendered_lens_is_found_from_pictures(seed: int) -> None:
    random = np.random.default_rng(seed)
    optics = draw_optics(random)
    views = Views(optics.size_px)
    for frame in film(optics, draw_places(random, optics, 16), random):
        views.look(frame)
    found = field_of_view(views)
    off = abs(found.fit.field_of_view_deg - optics.field_of_view_deg)
    assert off < 2.0
    assert off <= found.error_deg


def test_corners_are_where_the_optics_put_them() -> None:
    """Numbered, too: the sheet is turned by a quarter, so that a mix-up could not pass."""
    place = Place(at=(0.2, -0.1), about_x_deg=20, about_y_deg=-25, roll_deg=90, distance_m=0.6)
    optics = Optics(k1=-0.1, field_of_view_deg=70)
    random = np.random.default_rng(1)
    seen = find_board(render(optics, place, random)[..., 0])
    assert seen is not None
    assert len(seen.numbers) == 24
    true = board_seen(optics, place, 0.0, random)
    np.testing.assert_allclose(seen.image_px, true.image_px[seen.numbers], atol=0.35)


def test_nine_of_ten_truths_lie_inside_the_interval_with_noisy_corners() -> None:
    """Forty lenses, corners with far more noise than pictures give; also checks the covariance."""
    inside, scores = 0, []
    for seed in range(50_001, 50_041):
        random = np.random.default_rng(seed)
        optics = draw_optics(random)
        places = draw_places(random, optics, 14)
        found = calibrate([board_seen(optics, p, 0.8, random) for p in places], SIZE_PX)
        assert found is not None
        off = found.fit.field_of_view_deg - optics.field_of_view_deg
        assert abs(off) < 2.0
        inside += abs(off) <= found.error_deg
        scores.append(off / found.fit.sd_deg)
    assert inside >= 36
    # Of 40 draws of a standard normal the root mean square lies in 0.74 to 1.27 with 99 %.
    assert 0.74 <= np.sqrt(np.mean(np.square(scores))) <= 1.27


def test_the_fit_is_that_of_another_library() -> None:
    """OpenCV's calibration with the principal point free, where corners leave the prior no say."""
    random = np.random.default_rng(7)
    optics = Optics(field_of_view_deg=72, k1=-0.08, centre_off_px=(6.0, -4.0))
    places = draw_places(random, optics, 20)
    views = [board_seen(optics, place, 0.05, random) for place in places]
    fit = fit_views(views, SIZE_PX)
    assert fit is not None
    guess = np.array([[1000.0, 0, 640], [0, 1000.0, 360], [0, 0, 1]])
    flags = (
        cv2.CALIB_FIX_K2
        | cv2.CALIB_FIX_K3
        | cv2.CALIB_ZERO_TANGENT_DIST
        | cv2.CALIB_FIX_ASPECT_RATIO
        | cv2.CALIB_USE_INTRINSIC_GUESS
    )
    _, matrix, distortion, *_ = cv2.calibrateCamera(
        [view.board_mm.astype(np.float32) for view in views],
        [view.image_px.astype(np.float32) for view in views],
        SIZE_PX,
        guess,
        np.zeros(5),
        flags=flags,
    )
    theirs = np.degrees(2 * np.arctan(640 / matrix[0, 0]))
    assert fit.field_of_view_deg == pytest.approx(theirs, abs=0.02)
    assert fit.k1 == pytest.approx(float(np.ravel(distortion)[0]), abs=0.002)
    assert fit.centre_px == pytest.approx((matrix[0, 2], matrix[1, 2]), abs=0.3)


@pytest.mark.parametrize(
    ("about_x_deg", "about_y_deg", "not_missing"),
    [
        (0, 30, Missing.LEFT),
        (0, -30, Missing.RIGHT),
        (-30, 0, Missing.TOP),
        (30, 0, Missing.BOTTOM),
    ],
)
def test_what_is_missing_knows_which_edge_is_away(
    about_x_deg: float, about_y_deg: float, not_missing: Missing
) -> None:
    """Down the camera's y axis a positive turn takes the sheet's right edge toward the camera."""
    places = [
        Place(at=(x, 0.0), distance_m=0.6, about_x_deg=about_x_deg, about_y_deg=about_y_deg)
        for x in (-0.2, 0.2)
    ]
    views = looked_at(Optics(), places)
    assert set(views.tilts_missing) == {
        Missing.LEFT,
        Missing.RIGHT,
        Missing.TOP,
        Missing.BOTTOM,
    } - {not_missing}


def test_the_same_view_again_is_no_new_view() -> None:
    views = looked_at(Optics(), [Place(distance_m=0.6, about_x_deg=25)] * 4)
    assert len(views.kept) == 1


FRONTAL = [
    Place(at=(x, y), distance_m=d) for d in (0.5, 0.8) for x in (-0.3, 0, 0.3) for y in (-0.2, 0.2)
]


@pytest.mark.parametrize(
    ("optics", "places", "words"),
    [
        (Optics(), FRONTAL, "was tilted in only 0 views"),
        (Optics(), [Place(distance_m=0.6, about_x_deg=25)], "Only 1 different views"),
        (Optics(), [Place(distance_m=1.6, about_y_deg=20)], "too small|not seen"),
        (Optics(blur_px=9.0), [Place(distance_m=0.6)], "not seen sharp"),
        (Optics(exposure=0.003), [Place(distance_m=0.6)], "not seen sharp"),
    ],
    ids=["frontal", "one view", "far", "blurred", "dark"],
)
def test_bad_collections_are_refused_in_one_sentence(
    optics: Optics, places: list[Place], words: str
) -> None:
    with pytest.raises(Fault, match=words) as told:
        field_of_view(looked_at(optics, places))
    assert str(told.value).count(".") - str(told.value).count("0.") <= 1


def test_a_crumpled_sheet_is_refused() -> None:
    """Corners off by three pixels, the same on every view as the sheet is, fit no lens."""
    random = np.random.default_rng(3)
    optics = Optics()
    crumple = random.normal(0, 3.0, (24, 2))
    views = looked_at(optics, draw_places(random, optics, 2))
    kept = views.kept[0]
    views.kept = []
    for place in draw_places(random, optics, 16):
        seen = board_seen(optics, place, 0.1, random)
        bent = Seen(seen.numbers, seen.image_px + crumple)
        views.kept.append(type(kept)(bent, kept.middle, kept.square, np.array([30.0, 0.0])))
    with pytest.raises(Fault, match=r"miss the best lens|do not fit one lens|known only to"):
        field_of_view(views)
