from __future__ import annotations

import threading
from collections.abc import Callable, Iterator
from itertools import count, pairwise

import numpy as np
import pytest

from coach.capture.camera import Camera
from coach.capture.picture import PictureTrouble, picture_trouble
from coach.capture.sources import open_source
from coach.domain.fault import Fault


class Device:
    """A camera that does what a script of True (a picture), False (none), or a wait says."""

    def __init__(self, script: Iterator[bool | Callable[[], object]]) -> None:
        self.frames_per_s = 30.0
        self._script = script
        self._number = -1
        self.released = threading.Event()

    def grab(self) -> bool:
        step = next(self._script, False)
        if callable(step):
            step()
            return False
        self._number += step
        return step

    def retrieve(self) -> np.ndarray:
        picture = np.zeros((48, 64, 3), np.uint8)
        picture[...] = self._number
        return picture

    def release(self) -> None:
        self.released.set()


def test_frames_carry_the_moment_they_were_taken() -> None:
    go = [threading.Event() for _ in range(3)]
    script = [True, go[0].wait, True, go[1].wait, True, go[2].wait]
    ticks = count(100)
    device = Device(iter(script))
    camera = Camera("Camera 0", device, clock=lambda: float(next(ticks)), silence_s=5)
    assert (camera.kind, camera.size_px, camera.frame_count) == ("camera", (64, 48), None)
    frames = iter(camera)
    seen = []
    for event in go:
        seen.append(next(frames))
        event.set()
    # The clock is asked at every grab, those that give nothing included.
    assert [frame.time_s for frame in seen] == [100.0, 102.0, 104.0]
    assert [frame.index for frame in seen] == [0, 1, 2]
    assert [int(frame.image_rgb[0, 0, 0]) for frame in seen] == [0, 1, 2]
    assert camera.frames_lost == 0
    camera.close()
    camera.close()
    assert device.released.is_set()


def test_a_slow_reader_gets_the_newest_and_the_lost_are_counted() -> None:
    taken, go_on = threading.Event(), threading.Event()

    def script() -> Iterator[bool | Callable[[], object]]:
        yield from [True] * 10
        taken.set()
        yield go_on.wait
        yield True
        yield threading.Event().wait

    camera = Camera("Camera 0", Device(script()), silence_s=5)
    assert taken.wait(5)
    frames = iter(camera)
    newest = next(frames)
    assert newest.index == 9
    assert int(newest.image_rgb[0, 0, 0]) == 9
    assert camera.frames_lost == 9
    go_on.set()
    assert next(frames).index == 10
    assert camera.frames_lost == 9
    camera.close()


def test_stamps_increase_even_where_the_clock_stands_still() -> None:
    camera = Camera("Camera 0", Device(iter([True] * 5)), clock=lambda: 7.0)
    stamps = []
    with pytest.raises(Fault):
        stamps.extend(frame.time_s for frame in camera)
    assert all(later > earlier for earlier, later in pairwise(stamps))
    assert stamps[-1] == pytest.approx(7.0, abs=0.01)


def test_a_few_failed_reads_are_forgiven() -> None:
    camera = Camera("Camera 0", Device(iter([True, False, False, False, True, *[False] * 99])))
    indices = []
    with pytest.raises(Fault):
        indices.extend(frame.index for frame in camera)
    assert indices[-1] == 1


def test_a_camera_that_goes_away() -> None:
    device = Device(iter([True, True]))
    camera = Camera("Camera 0", device, silence_s=30)
    with pytest.raises(Fault, match="Camera 0 has stopped giving pictures"):
        list(camera)
    assert device.released.wait(5)


def test_a_camera_that_hangs() -> None:
    hang = threading.Event()
    device = Device(iter([True, hang.wait]))
    camera = Camera("Camera 0", device, silence_s=0.2)
    with pytest.raises(Fault, match="Camera 0 has stopped giving pictures"):
        list(camera)
    assert not device.released.is_set()
    hang.set()  # a driver that wakes up late still lets go of the camera
    assert device.released.wait(5)


def test_a_camera_without_any_picture() -> None:
    with pytest.raises(Fault, match="Camera 3 gives no picture"):
        Camera("Camera 3", Device(iter([])))


def test_closing_from_another_thread_ends_the_frames() -> None:
    camera = Camera("Camera 0", Device(iter([True, threading.Event().wait])), silence_s=30)
    frames = iter(camera)
    next(frames)
    closing = threading.Timer(0.1, camera.close)
    closing.start()
    assert list(frames) == []
    closing.join()


@pytest.mark.parametrize("number", [97, -1])
def test_no_camera(capfd: pytest.CaptureFixture[str], number: int) -> None:
    with pytest.raises(Fault, match=f"No camera answers as number {number}; plug one in"):
        open_source(number)
    assert capfd.readouterr().err == ""


def test_black_and_frozen_pictures() -> None:
    random = np.random.default_rng(4)
    scene = random.integers(40, 200, (480, 640, 3)).astype(np.uint8)
    again = np.clip(scene + random.normal(0, 2, scene.shape), 0, 255).astype(np.uint8)
    dark = random.integers(0, 4, scene.shape).astype(np.uint8)
    night = dark.copy()
    night[100:300, 200:400] = 90  # a dark room in which one still sees something
    assert picture_trouble(None, scene) is None
    assert picture_trouble(scene, again) is None
    assert picture_trouble(scene, scene.copy()) is PictureTrouble.FROZEN
    assert picture_trouble(scene[:240], scene) is None
    assert picture_trouble(None, dark) is PictureTrouble.BLACK
    assert picture_trouble(dark, night) is None


def test_a_resting_camera_decodes_only_what_it_gives() -> None:
    """Thirty pictures a second are asked for at most ten times a second."""
    ticks = count(100)
    asked, go_on = threading.Event(), threading.Event()

    def script() -> Iterator[bool | Callable[[], object]]:
        yield True
        asked.set()
        yield go_on.wait
        yield from [True] * 60
        yield threading.Event().wait

    device = Device(script())
    decoded = []
    retrieve = device.retrieve
    device.retrieve = lambda: decoded.append(1) or retrieve()  # type: ignore[method-assign]
    camera = Camera("Camera 0", device, clock=lambda: next(ticks) / 30, silence_s=0.5)
    assert asked.wait(5)
    camera.rest(0.1)
    go_on.set()
    with pytest.raises(Fault):
        list(camera)
    assert 14 <= len(decoded) <= 22
