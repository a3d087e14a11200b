"""Frames from a camera: always the newest, stamped when taken."""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterator
from typing import Literal

from coach.capture.clock import steady_s
from coach.capture.devices import CameraDevice, Picture
from coach.capture.picture import PictureTrouble, picture_trouble
from coach.domain.fault import Fault
from coach.domain.frame import Frame
from coach.texts import translate

FAILED_GRABS_IN_A_ROW = 15
"""So many and the camera is gone; a loose plug or a mode change costs two or three."""
_PAUSE_AFTER_FAILURE_S = 0.05
_PAUSE_AFTER_REPEAT_S = 0.005
SILENCE_S = 5.0
"""So long without a picture and the camera is gone."""
_MIN_STEP_S = 1e-4  # the monotonic clock of some systems stands still for up to 16 ms


class Camera:
    """A camera as a ``FrameSource``.

    A thread of its own takes every picture and keeps the newest; one that nobody took in time
    is replaced and counted in ``frames_lost``. ``Frame.index`` counts the pictures taken, so a
    lost one leaves a gap. ``time_s`` is ``steady_s()`` at the moment the picture arrived,
    before it is decoded. A picture that repeats the one before is left out, so that a frozen
    camera leaves a gap. Iterate in one thread; ``close`` and ``rest`` may be called from any.
    """

    kind: Literal["camera"] = "camera"
    frame_count: None = None

    def __init__(
        self,
        name: str,
        device: CameraDevice,
        *,
        clock: Callable[[], float] = steady_s,
        silence_s: float = SILENCE_S,
    ) -> None:
        """Start taking pictures; ``name`` is what messages call the camera."""
        self._name = name
        self._device = device
        self._clock = clock
        self._silence_s = silence_s
        self._news = threading.Condition()
        self._unread: Frame | None = None
        self._ended = False
        self._stop = threading.Event()
        self._taken = 0
        self._gap_s = 0.0
        self._last_s = float("-inf")
        self.frames_lost = 0
        self.frames_per_s = device.frames_per_s
        self._thread = threading.Thread(target=self._run, name="camera", daemon=True)
        self._thread.start()
        first = self._wait()
        if first is None:
            self.close()
            raise Fault(
                translate(
                    "faults",
                    "{name} gives no picture; close other programs that use it, check "
                    "its cover and plug, and start again.",
                ).format(name=name)
            )
        self.size_px = first.size_px

    def __iter__(self) -> Iterator[Frame]:
        """Yield the newest frame each time, until the camera is closed."""
        while not self._stop.is_set():
            frame = self._wait(take=True)
            if self._stop.is_set():
                return
            if frame is None:
                self.close()
                raise Fault(
                    translate(
                        "faults",
                        "{name} has stopped giving pictures; check its plug, close "
                        "other programs that use it, and go on.",
                    ).format(name=self._name)
                )
            yield frame

    def rest(self, gap_s: float) -> None:
        """Give pictures no closer together than this; those between are not even decoded."""
        self._gap_s = gap_s

    def close(self) -> None:
        """Let go of the camera; may be called twice."""
        self._stop.set()
        with self._news:
            self._news.notify_all()
        # A driver that hangs keeps its thread, which is a daemon and lets go when it wakes.
        if threading.current_thread() is not self._thread:
            self._thread.join(timeout=1.0)

    def _wait(self, *, take: bool = False) -> Frame | None:
        with self._news:
            self._news.wait_for(
                lambda: self._unread is not None or self._ended or self._stop.is_set(),
                self._silence_s,
            )
            frame = self._unread
            if take:
                self._unread = None
            return frame

    def _run(self) -> None:
        failed = 0
        before: Picture | None = None
        try:
            while not self._stop.is_set() and failed < FAILED_GRABS_IN_A_ROW:
                taken = self._device.grab()
                now_s = self._clock()
                if taken and self._gap_s and now_s - self._last_s < self._gap_s:
                    continue
                picture = self._device.retrieve() if taken else None
                if picture is None:
                    failed += 1
                    self._stop.wait(_PAUSE_AFTER_FAILURE_S)
                elif picture_trouble(before, picture) is PictureTrouble.FROZEN:
                    self._stop.wait(_PAUSE_AFTER_REPEAT_S)
                else:
                    failed, before = 0, picture
                    self._put(picture, now_s)
        finally:
            self._device.release()
            with self._news:
                self._ended = True
                self._news.notify_all()

    def _put(self, picture: Picture, now_s: float) -> None:
        self._last_s = max(now_s, self._last_s + _MIN_STEP_S)
        frame = Frame(index=self._taken, time_s=self._last_s, image_rgb=picture)
        self._taken += 1
        with self._news:
            if self._unread is not None:
                self.frames_lost += 1
            self._unread = frame
            self._news.notify_all()
