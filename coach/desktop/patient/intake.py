"""The capture thread: frames from a source into a box from which the analysis takes them."""

from __future__ import annotations

import threading
import traceback
from collections import deque
from collections.abc import Callable, Iterator
from dataclasses import replace
from typing import Literal, Protocol

from coach.capture.clock import steady_s
from coach.desktop.patient.coaching import OpenSource
from coach.domain.fault import Fault
from coach.domain.frame import Frame
from coach.ports import FrameSource

BELT_FRAMES = 2
"""How far a file may be read ahead of its analysis."""

STILL_S = 0.2
"""Between two showings of the picture at which a file stands: as often as it is looked at."""
UNEXPECTED = (
    "Something inside the program went wrong; what was recorded so far is kept: "
    "close the program and start it again."
)


class Box(Protocol):
    """Between the thread that reads and the thread that measures."""

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

    @property
    def frames_lost(self) -> int:
        """Frames that were never measured, so far."""
        return self._source.frames_lost + self._box.frames_lost

    def __iter__(self) -> Iterator[Frame]:
        """Yield the source's frames."""
        return iter(self._source)

    def close(self) -> None:
        """Let go of the device or file."""
        self._source.close()


class Intake:
    """Reads a source in a thread of its own until it ends, fails or is stopped.

    A file plays in real time by its stamps, and stands still after its first frame until
    ``play`` and again after ``stand``: what it has stood is added to its later stamps, so that
    they are of one clock with what the person does meanwhile. A camera knows no standing.

    The callbacks come from the capture thread: ``opened`` once, ``ready`` after each frame,
    ``ended`` at the end of the source with None or the sentence of a fault, but not after
    ``stop``.
    """

    def __init__(
        self,
        open_source: OpenSource,
        *,
        opened: Callable[[FrameSource], None],
        ready: Callable[[], None],
        ended: Callable[[str | None], None],
        file_waits: bool = True,
    ) -> None:
        """Prepare the thread; ``start`` starts it."""
        self._open_source = open_source
        self._opened, self._ready, self._ended = opened, ready, ended
        self._stopping = threading.Event()
        self._playing = threading.Event()
        self._file_waits = file_waits
        self._still: Frame | None = None
        self._box: Box = Mailbox()
        self._ahead_s: float | None = None
        self._stood_s = 0.0
        self._thread = threading.Thread(target=self._run, name="capture", daemon=True)

    def start(self) -> None:
        """Begin to read."""
        self._thread.start()

    def play(self) -> None:
        """Let a file run."""
        self._playing.set()

    def stand(self) -> None:
        """Let a file stand still."""
        if self._file_waits:
            self._playing.clear()

    def take(self) -> Frame | None:
        """Fetch the next frame without waiting."""
        return self._box.take()

    def now_s(self) -> float | None:
        """Give the present on the clock of the frames' stamps, None before the first frame."""
        return None if self._ahead_s is None else steady_s() - self._ahead_s

    def stop(self, wait_s: float = 5.0) -> bool:
        """End the thread and say whether it has ended; a hanging driver may keep it."""
        self._stopping.set()
        self._playing.set()
        self._box.close()
        if self._thread.is_alive() and self._thread is not threading.current_thread():
            self._thread.join(wait_s)
        return not self._thread.is_alive()

    def _run(self) -> None:
        fault: str | None = None
        try:
            self._read()
        except Fault as error:
            fault = str(error)
        except Exception:  # the edge of the thread: nothing above could report it
            traceback.print_exc()
            fault = UNEXPECTED
        if not self._stopping.is_set():
            self._ended(fault)

    def _read(self) -> None:
        source = self._open_source()
        try:
            live = source.kind == "camera"
            if not live:
                self._box = Belt()
                if not self._file_waits:
                    self._playing.set()
            if self._stopping.is_set():
                return
            self._opened(MeteredSource(source, self._box))
            for frame in source:
                arrived = frame if live else self._paced(frame)
                if self._stopping.is_set():
                    return
                ahead_s = steady_s() - arrived.time_s
                if live and self._ahead_s is not None:
                    ahead_s = min(ahead_s, self._ahead_s)
                self._ahead_s = ahead_s
                self._still = arrived
                self._box.put(arrived)
                self._ready()
        finally:
            source.close()

    def _paced(self, frame: Frame) -> Frame:
        """Wait until a file's frame is due; give it, later by as much as the file has stood.

        While the file stands, the picture at which it stands is given again and again: time goes
        on for a question that nobody answers.
        """
        if self._ahead_s is None:
            return frame
        if not self._playing.is_set():
            while not self._playing.wait(STILL_S):
                if self._stopping.is_set():
                    return frame
                if self._still is not None:
                    present_s = steady_s() - self._ahead_s
                    self._box.put(replace(self._still, time_s=present_s))
                    self._ready()
            self._stood_s = steady_s() - self._ahead_s - frame.time_s
        due_s = frame.time_s + self._stood_s
        self._stopping.wait(max(0.0, due_s - (steady_s() - self._ahead_s)))
        return replace(frame, time_s=due_s) if self._stood_s else frame
