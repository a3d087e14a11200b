"""A camera that shows a clip, and the pose model alone."""

from __future__ import annotations

import threading
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from coach.capture.sources import open_source
from coach.domain.frame import Frame
from coach.pose.body import Body
from coach.pose.bundle import find_bundle, read_bundle
from coach.pose.estimator import Following
from coach.pose.landmarker import Landmarker, MediaPipeLandmarker
from coach.pose.quiet import without_remarks

ROOT = Path(__file__).parents[3]
CLIPS = ROOT / "sample_videos"
Picture = NDArray[np.uint8]


def pictures(name: str, most: int) -> list[Picture]:
    """Decode the first pictures of a sample clip."""
    source = open_source(CLIPS / f"{name}.mp4")
    try:
        found = []
        for frame in source:
            found.append(frame.image_rgb)
            if len(found) == most:
                break
        return found
    finally:
        source.close()


class FilmCamera:
    """Pictures there and back for ever, as a camera that gives ``rate_hz``; may be stopped."""

    kind: Literal["camera"] = "camera"
    frame_count = None
    frames_lost = 0

    def __init__(self, film: list[Picture], rate_hz: float) -> None:
        height, width = film[0].shape[:2]
        self.size_px = (width, height)
        self.frames_per_s = rate_hz
        self._gap_s = 0.0
        self.running = threading.Event()
        self.running.set()
        self._film = [*film, *film[-2:0:-1]]
        self._closed = threading.Event()

    def __iter__(self) -> Iterator[Frame]:
        index, due_s = 0, time.monotonic()
        while not self._closed.is_set():
            self.running.wait()
            now_s = time.monotonic()
            due_s = max(due_s + max(self._gap_s, 1 / self.frames_per_s), now_s - 0.1)
            if self._closed.wait(max(0.0, due_s - now_s)):
                return
            image = self._film[index % len(self._film)]
            yield Frame(index, time.monotonic(), image)
            index += 1

    def rest(self, gap_s: float) -> None:
        self._gap_s = gap_s

    def close(self) -> None:
        self._closed.set()
        self.running.set()


class Timed:
    """A landmarker whose time is taken: wall, and that of the thread that asks."""

    def __init__(self, landmarker: Landmarker) -> None:
        self._landmarker = landmarker
        self.wall_s = self.thread_s = 0.0

    def find(self, image_rgb: Picture, stamp_ms: int) -> list[Body]:
        wall_s, thread_s = time.perf_counter(), time.thread_time()
        found = self._landmarker.find(image_rgb, stamp_ms)
        self.wall_s += time.perf_counter() - wall_s
        self.thread_s += time.thread_time() - thread_s
        return found

    def close(self) -> None:
        self._landmarker.close()


def model(*, film: bool = True) -> Timed:
    """The bare model, as the program configures it."""
    people, confidence = (1, 0.5) if film else (2, 0.6)
    with without_remarks():
        bundle = read_bundle(find_bundle())
        return Timed(MediaPipeLandmarker(bundle, film=film, people=people, confidence=confidence))


class TimedEstimator(Following):
    """The program's own estimator on timed models."""

    def __init__(self) -> None:
        self.film, self.still = model(), model(film=False)
        super().__init__(self.film, self.still, "0" * 64)

    @property
    def wall_s(self) -> float:
        return self.film.wall_s + self.still.wall_s

    @property
    def thread_s(self) -> float:
        return self.film.thread_s + self.still.thread_s
