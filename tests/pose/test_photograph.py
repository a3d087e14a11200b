"""The model on a real photograph, against what a person sees in it.

The photograph is scikit-image's ``astronaut`` (public domain): a woman in a bulky orange suit,
turned a little to her left, looking into the camera. Her right arm is at the picture's left.
"""

from __future__ import annotations

import os
import re
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest
import skimage.data
import skimage.transform

from coach.domain.fault import Fault
from coach.domain.frame import Frame
from coach.domain.pose import Landmark, Pose
from coach.pose.bundle import find_bundle
from coach.pose.estimator import Following, open_estimator

MIRROR = {
    mark: Landmark[mark.name.replace("LEFT", "#").replace("RIGHT", "LEFT").replace("#", "RIGHT")]
    for mark in Landmark
}

# Read off the enlarged photograph by eye: x, y, and how far the model may be from it, in pixels:
# on the face an eighth of its width; the shoulder joints and the elbow are somewhere in the suit.
SEEN = {
    Landmark.RIGHT_EYE: (203, 100, 15),
    Landmark.LEFT_EYE: (245, 103, 15),
    Landmark.NOSE: (223, 128, 15),
    Landmark.MOUTH_RIGHT: (206, 142, 15),
    Landmark.MOUTH_LEFT: (241, 142, 15),
    Landmark.RIGHT_EAR: (178, 122, 18),
    Landmark.LEFT_EAR: (269, 126, 18),
    Landmark.RIGHT_SHOULDER: (95, 245, 35),
    Landmark.LEFT_SHOULDER: (325, 258, 35),
    Landmark.RIGHT_ELBOW: (60, 415, 45),
}


@pytest.fixture
def photograph() -> np.ndarray:
    return np.asarray(skimage.data.astronaut())


@pytest.fixture
def estimator() -> Iterator[Following]:
    opened = open_estimator()
    yield opened
    opened.close()
    opened.close()


def film(estimator: Following, picture: np.ndarray, frames: int = 4) -> list[Pose | None]:
    return [estimator.estimate(Frame(n, 5 + n / 30, picture)) for n in range(frames)]


def shrunk(picture: np.ndarray, scale: float) -> np.ndarray:
    size = [round(length * scale) for length in picture.shape[:2]]
    return (255 * skimage.transform.resize(picture, size, anti_aliasing=True)).astype(np.uint8)


def side_by_side(left: np.ndarray, right: np.ndarray) -> np.ndarray:
    height = max(len(left), len(right))
    both = np.full((height, left.shape[1] + 20 + right.shape[1], 3), 180, np.uint8)
    both[height - len(left) :, : left.shape[1]] = left
    both[height - len(right) :, left.shape[1] + 20 :] = right
    return both


def shoulders_x(pose: Pose) -> float:
    return float(pose.image_px[[Landmark.LEFT_SHOULDER, Landmark.RIGHT_SHOULDER], 0].mean())


def test_points_are_where_a_person_sees_them(estimator: Following, photograph: np.ndarray) -> None:
    pose = film(estimator, photograph)[-1]
    assert pose is not None
    for mark, (x, y, within) in SEEN.items():
        assert np.hypot(*(pose.image_px[mark] - (x, y))) < within, mark.name
    assert pose.size_px == (512, 512)
    assert pose.time_s == pytest.approx(5.1)
    assert pose.people == 1
    assert not pose.another_person


def test_arrays_are_whole_finite_and_read_only(
    estimator: Following, photograph: np.ndarray
) -> None:
    wide = np.pad(photograph, ((0, 0), (150, 60), (0, 0)), mode="edge")
    for pose in film(estimator, wide):
        assert pose is not None
        arrays = pose.image_px, pose.world_m, pose.visibility
        assert [array.shape for array in arrays] == [(33, 2), (33, 3), (33,)]
        assert all(np.isfinite(array).all() and not array.flags.writeable for array in arrays)
        assert ((pose.visibility >= 0) & (pose.visibility <= 1)).all()
        assert pose.size_px == (722, 512)


def test_metric_axes_point_right_down_and_away(
    estimator: Following, photograph: np.ndarray
) -> None:
    pose = film(estimator, photograph)[-1]
    assert pose is not None
    x, y, z = pose.world_m.T
    # She faces the camera, so her left is at the picture's right.
    assert x[Landmark.LEFT_SHOULDER] > x[Landmark.RIGHT_SHOULDER]
    assert y[Landmark.NOSE] < y[Landmark.LEFT_SHOULDER] < y[Landmark.LEFT_HIP]
    # The tip of the nose is nearer to the camera than either ear.
    assert z[Landmark.NOSE] < min(z[Landmark.LEFT_EAR], z[Landmark.RIGHT_EAR])
    hips = pose.world_m[[Landmark.LEFT_HIP, Landmark.RIGHT_HIP]].mean(axis=0)
    np.testing.assert_allclose(hips, 0, atol=0.02)


def test_a_mirrored_photograph_swaps_the_sides(photograph: np.ndarray) -> None:
    poses = []
    for picture in (photograph, np.ascontiguousarray(photograph[:, ::-1])):
        opened = open_estimator()
        poses.append(film(opened, picture)[-1])
        opened.close()
    straight, mirrored = poses
    assert straight is not None
    assert mirrored is not None
    for mark, (_, _, within_px) in SEEN.items():
        x, y = mirrored.image_px[MIRROR[mark]]
        assert np.hypot(*(straight.image_px[mark] - (512 - x, y))) < within_px, mark.name


def test_nobody_in_view(estimator: Following, photograph: np.ndarray) -> None:
    for picture in (skimage.data.coffee(), np.zeros((480, 640, 3), np.uint8)):
        assert film(estimator, picture) == [None] * 4
    assert film(estimator, photograph)[-1] is not None


@pytest.mark.parametrize("size", [(1, 1), (9, 640), (31, 17)])
def test_tiny_pictures_hold_nobody(estimator: Following, size: tuple[int, int]) -> None:
    assert estimator.estimate(Frame(0, 0.0, np.full((*size, 3), 99, np.uint8))) is None


@pytest.mark.parametrize(
    ("left_scale", "right_scale", "left_light"),
    # In the last two the model itself would take up the smaller one, who is in better light.
    [(0.6, 1.0, 1.0), (1.0, 0.6, 1.0), (0.8, 0.5, 0.35), (1.0, 0.5, 0.35)],
)
def test_of_two_people_the_larger_is_followed_and_both_are_counted(
    estimator: Following,
    photograph: np.ndarray,
    left_scale: float,
    right_scale: float,
    left_light: float,
) -> None:
    left = (shrunk(photograph, left_scale) * left_light).astype(np.uint8)
    right = shrunk(photograph, right_scale)
    both = side_by_side(left, right)
    split = left.shape[1] + 10
    for pose in film(estimator, both):
        assert pose is not None
        assert (shoulders_x(pose) < split) == (left_scale > right_scale)
        assert pose.people == 2
        assert not pose.another_person


def test_the_person_is_kept_when_a_larger_one_comes_in(
    estimator: Following, photograph: np.ndarray
) -> None:
    person, visitor = shrunk(photograph, 0.6), shrunk(photograph, 0.9)
    both = side_by_side(person, visitor)
    alone = both.copy()
    alone[:, person.shape[1] :] = 180
    poses = [estimator.estimate(Frame(n, n / 10, alone if n < 5 else both)) for n in range(25)]
    assert all(pose is not None and shoulders_x(pose) < person.shape[1] for pose in poses)
    people = [pose.people for pose in poses if pose is not None]
    assert people[:5] == [1] * 5
    assert people[-1] == 2


def test_the_same_film_gives_the_same_poses(photograph: np.ndarray) -> None:
    films = []
    for _ in range(2):
        opened = open_estimator()
        poses = [
            opened.estimate(Frame(n, n / 20, np.roll(photograph, 2 * n, axis=1))) for n in range(25)
        ]
        films.append([pose.image_px for pose in poses if pose is not None])
        opened.close()
    assert len(films[0]) == 25
    np.testing.assert_array_equal(films[0], films[1])


def test_brightness_is_that_of_the_picture(estimator: Following, photograph: np.ndarray) -> None:
    light = film(estimator, photograph)[-1]
    dark = film(estimator, (photograph * 0.4).astype(np.uint8))[-1]
    assert light is not None
    assert dark is not None
    assert light.brightness is not None
    assert dark.brightness == pytest.approx(0.4 * light.brightness, abs=0.02)


def test_the_model_named_is_the_model_loaded(estimator: Following) -> None:
    manifest = (find_bundle().with_name("manifest.json")).read_text()
    assert re.fullmatch("[0-9a-f]{64}", estimator.model_sha256)
    assert f'"{estimator.model_sha256}"' in manifest


def test_a_damaged_bundle_is_refused(tmp_path: Path) -> None:
    bundle = tmp_path / "pose_full.task"
    content = bytearray(find_bundle().read_bytes())
    content[len(content) // 2] ^= 1
    bundle.write_bytes(content)
    manifest = find_bundle().with_name("manifest.json").read_bytes()
    (tmp_path / "manifest.json").write_bytes(manifest)
    with pytest.raises(Fault, match=r"is not the one that belongs .* install the program again"):
        open_estimator(bundle)


def test_the_library_leaves_error_stream_environment_and_modules_alone() -> None:
    code = (
        "import os, sys; import skimage.data; from coach.domain.frame import Frame;"
        "from coach.pose.estimator import open_estimator;"
        "estimator = open_estimator();"
        "assert estimator.estimate(Frame(0, 0.0, skimage.data.astronaut())) is not None;"
        "print('still heard', file=sys.stderr);"
        "print([name for name in os.environ if name.startswith('QT_QPA')]);"
        "import matplotlib.pyplot, matplotlib.figure;"  # the true ones are still to be had
        "print(callable(matplotlib.pyplot.plot))"
    )
    run = subprocess.run(
        [sys.executable, "-c", code],
        capture_output=True,
        text=True,
        check=True,
        cwd=Path.cwd(),
        env={key: value for key, value in os.environ.items() if not key.startswith("QT_QPA")},
    )
    assert run.stderr == "still heard\n"
    assert run.stdout == "[]\nTrue\n"
