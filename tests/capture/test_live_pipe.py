"""A live source through OpenCV itself: pictures that come down a pipe, stall, and end.

A loopback camera needs a module of the kernel; a pipe is waited for, and ends, as a camera is.
"""

from __future__ import annotations

import os
import struct
import sys
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import cv2
import numpy as np
import pytest

from coach.capture.camera import Camera
from coach.capture.opencv import OpenCvCamera
from coach.domain.fault import Fault
from coach.domain.frame import Frame

from .clips import write_clip

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="no named pipes in folders")
COUNT, EVERY_S, LONGEST_S = 60, 0.04, 60.0


@contextmanager
def live(folder: Path, end: threading.Event | None = None) -> Iterator[Camera]:
    """Give a camera of so many pictures; where ``end`` is given they stall until it is set."""
    noise = np.random.default_rng(1).integers(0, 255, (120, 160, 3), np.uint8)
    pictures = [np.roll(noise, 3 * n, axis=1) for n in range(COUNT)]
    whole = write_clip(folder / "all.avi", pictures).read_bytes()
    pipe = folder / "pipe"
    os.mkfifo(pipe)

    def feed() -> None:
        with pipe.open("wb", buffering=0) as into:
            into.write(whole[: whole.index(b"movi") + 4])
            for picture in pictures:
                content = cv2.imencode(".jpg", picture)[1].tobytes()
                head = struct.pack("<4sI", b"00dc", len(content))
                into.write(head + content + bytes(len(content) % 2))
                time.sleep(EVERY_S)
            if end is not None:
                end.wait(LONGEST_S)

    feeding = threading.Thread(target=feed)
    feeding.start()
    capture = cv2.VideoCapture(str(pipe), cv2.CAP_FFMPEG)
    assert capture.isOpened()
    camera = Camera("The pipe", OpenCvCamera(capture))
    yield camera
    camera.close()
    feeding.join()


def watched(camera: Camera) -> tuple[list[Frame], str]:
    """Give the pictures that were seen, and what ended them."""
    seen: list[Frame] = []
    try:
        seen.extend(camera)
    except Fault as fault:
        return seen, str(fault)
    raise AssertionError("it went on")


def test_every_picture_of_a_live_source_is_given_or_counted_as_lost(tmp_path: Path) -> None:
    with live(tmp_path) as camera:
        seen, said = watched(camera)
    assert said.startswith("The pipe has stopped giving pictures; check its plug")
    assert COUNT - 1 <= len(seen) + camera.frames_lost <= COUNT
    assert {frame.size_px for frame in seen} == {(160, 120)}
    times = [frame.time_s for frame in seen]
    assert times == sorted({*times})
    # Each was there before the next was sent: 59 pauses lie between the first and the last.
    assert times[-1] - times[0] > EVERY_S * COUNT / 2


def test_a_live_source_that_stalls_is_told_while_its_read_still_waits(tmp_path: Path) -> None:
    end = threading.Event()
    with live(tmp_path, end) as camera:
        seen, said = watched(camera)
        assert said.startswith("The pipe has stopped giving pictures; check its plug")
        assert len(seen) + camera.frames_lost > COUNT / 2
        assert camera._thread.is_alive()
        end.set()
    camera._thread.join(LONGEST_S)
    assert not camera._thread.is_alive()
