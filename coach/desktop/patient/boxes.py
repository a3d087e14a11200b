"""Where frames wait between the thread that reads them and the thread that looks at them."""

from __future__ import annotations

import threading
from collections import deque
from collections.abc import Iterator
from typing import Literal, Protocol

from coach.domain.frame import Frame
from coach.ports import FrameSource

BELT_FRAMES = 2
"""How far a file may be read ahead of the look at it."""


class Box(Protocol):
    """Between the thread that reads and the thread that looks."""

    frames_lost: int

    def put(self, frame: Frame) -> None:
        """Leave a frame."""
        ...

    def take(self) -> Frame | None:
        """Fetch the oldest unread frame without waiting."""
        ...

    def close(self) -> None:
        """Let nobody wait any longer."""
        ...


class Mailbox:
    """One slot for a camera: a new frame replaces an unread one, which counts as lost."""

    def __init__(self) -> None:
        """Begin empty."""
        self.frames_lost = 0
        self._lock = threading.Lock()
        self._frame: Frame | None = None

    def put(self, frame: Frame) -> None:
        """Leave a frame, replacing an unread one."""
        with self._lock:
            if self._frame is not None:
                self.frames_lost += 1
            self._frame = frame

    def take(self) -> Frame | None:
        """Fetch the newest frame, once."""
        with self._lock:
            frame, self._frame = self._frame, None
            return frame

    def close(self) -> None:
        """Nobody waits here."""


class Belt:
    """A short queue for a file: a full one makes the reader wait, so that no frame is lost."""

    frames_lost = 0

    def __init__(self, capacity: int = BELT_FRAMES) -> None:
        """Begin empty, with room for ``capacity`` frames."""
        self._changed = threading.Condition()
        self._frames: deque[Frame] = deque()
        self._capacity = capacity
        self._closed = False

    def put(self, frame: Frame) -> None:
        """Leave a frame, waiting for room."""
        with self._changed:
            self._changed.wait_for(lambda: self._closed or len(self._frames) < self._capacity)
            if not self._closed:
                self._frames.append(frame)

    def take(self) -> Frame | None:
        """Fetch the oldest frame."""
        with self._changed:
            frame = self._frames.popleft() if self._frames else None
            self._changed.notify_all()
            return frame

    def close(self) -> None:
        """Let a waiting reader go."""
        with self._changed:
            self._closed = True
            self._changed.notify_all()


class MeteredSource:
    """A source as the session sees it: frames that were read but never taken are lost too."""

    def __init__(self, source: FrameSource, box: Box) -> None:
        """Meter this source, whose frames go into ``box``."""
        self.kind: Literal["camera", "file"] = source.kind
        self.size_px = source.size_px
        self.frames_per_s = source.frames_per_s
        self.frame_count = source.frame_count
        self._source, self._box = source, box
        self._lost_before = 0

    @property
    def frames_lost(self) -> int:
        """Frames that were never measured, so far."""
        return self._lost_before + self._source.frames_lost + self._box.frames_lost

    def go_on_with(self, source: FrameSource) -> None:
        """Meter the same camera, opened anew."""
        self._lost_before += self._source.frames_lost
        self._source = source

    def __iter__(self) -> Iterator[Frame]:
        """Yield the source's frames."""
        return iter(self._source)

    def close(self) -> None:
        """Let go of the device or file."""
        self._source.close()
