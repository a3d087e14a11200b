"""MediaPipe asked in the caller's thread, against MediaPipe as it comes."""

import sys
from collections.abc import Iterator
from threading import Event, Thread
from types import SimpleNamespace

import numpy as np
import pytest
import skimage.data
from numpy.typing import NDArray

from coach.pose import landmarker
from coach.pose.at_once import answer_at_once
from coach.pose.bundle import find_bundle, read_bundle
from coach.pose.landmarker import MediaPipeLandmarker

Picture = NDArray[np.uint8]


@pytest.fixture(scope="module")
def film() -> list[Picture]:
    photograph = skimage.data.astronaut()
    return [np.roll(photograph, 4 * step, axis=1) for step in range(6)]


def landmarker_of(film: bool) -> MediaPipeLandmarker:
    return MediaPipeLandmarker(read_bundle(find_bundle()), film=film, people=1, confidence=0.5)


@pytest.fixture(params=[True, False], ids=["film", "pictures"])
def two(request: pytest.FixtureRequest) -> Iterator[tuple[MediaPipeLandmarker, ...]]:
    asked_here = landmarker_of(request.param)
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(landmarker, "answer_at_once", lambda task: False)
        as_it_comes = landmarker_of(request.param)
    yield asked_here, as_it_comes
    asked_here.close()
    as_it_comes.close()


def test_the_points_are_the_same_to_the_last_bit(
    two: tuple[MediaPipeLandmarker, ...], film: list[Picture]
) -> None:
    for index, picture in enumerate(film):
        (here,), (there,) = (one.find(picture, 33 * (index + 1)) for one in two)
        for name in ("image_px", "world_m", "visibility"):
            assert np.array_equal(getattr(here, name), getattr(there, name)), (index, name)


def test_what_mediapipe_refuses_is_raised_all_the_same(
    two: tuple[MediaPipeLandmarker, ...], film: list[Picture]
) -> None:
    if not two[0]._film:
        pytest.skip("stamps count in a film only")
    for one in two:
        one.find(film[0], 500)
        with pytest.raises(ValueError, match="timestamp"):
            one.find(film[0], 400)


def test_the_installed_release_can_be_asked_so() -> None:
    asked = landmarker_of(film=True)
    try:
        assert answer_at_once(asked._task)
    finally:
        asked.close()


def test_a_release_that_is_built_otherwise_is_left_as_it_is() -> None:
    other = SimpleNamespace(detect=len)
    assert not answer_at_once(other)
    assert vars(other) == {"detect": len}


def test_a_release_that_lacks_a_function_is_left_as_it_is(
    film: list[Picture], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(landmarker, "answer_at_once", lambda task: False)
    asked = landmarker_of(film=False)
    module = sys.modules[type(asked._task).__module__]
    fewer = [each for each in module._CTYPES_SIGNATURES if "CloseResult" not in each.func_name]
    monkeypatch.setattr(module, "_CTYPES_SIGNATURES", fewer)
    before = dict(vars(asked._task._lib))
    assert not answer_at_once(asked._task)
    assert vars(asked._task._lib) == before
    assert len(asked.find(film[0], 0)) == 1
    asked.close()


def test_a_closed_one_finds_nobody(film: list[Picture]) -> None:
    closed = landmarker_of(film=False)
    closed.close()
    closed.close()
    assert closed.find(film[0], 0) == []


def test_a_landmarker_is_closed_only_between_two_pictures(film: list[Picture]) -> None:
    asked = landmarker_of(film=False)
    begun, gone_on, detect = Event(), Event(), asked._task.detect

    def slowly(image: object) -> object:
        begun.set()
        assert gone_on.wait(30)
        return detect(image)

    asked._task.detect = slowly
    found: list[int] = []
    looking = Thread(target=lambda: found.append(len(asked.find(film[0], 0))))
    closing = Thread(target=asked.close)
    looking.start()
    assert begun.wait(30)
    closing.start()
    closing.join(0.2)
    assert closing.is_alive()
    gone_on.set()
    looking.join(30)
    closing.join(30)
    assert found == [1]
    assert asked.find(film[0], 0) == []
