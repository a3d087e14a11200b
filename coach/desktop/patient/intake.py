"""The capture thread: frames from a source into a box from which they are taken to be looked at."""

from __future__ import annotations

import threading
import traceback
from collections.abc import Callable
from dataclasses import replace
from typing import Protocol, runtime_checkable

from coach.capture.clock import steady_s
from coach.capture.picture import PictureTrouble, picture_trouble
from coach.desktop.patient.boxes import Belt, Box, Mailbox, MeteredSource
from coach.desktop.patient.coaching import OpenSource
from coach.desktop.patient.trouble import black, other_camera, paused, unexpected
from coach.domain.fault import Fault
from coach.domain.frame import Frame
from coach.ports import FrameSource

STILL_S = 0.2
"""Between two showings of the picture at which a file stands: as often as it is looked at."""
RETRY_S = 2.0
"""Between two tries to open a camera that went away."""
BLACK_S = 3.0
"""So long black and it is told: a camera that wakes takes a second or two (common practice)."""
CALM_S = 0.1
"""Between two pictures of a camera while nothing is measured: a mirror that still moves, and often
enough for a raised hand, which is looked for five times a second."""
PAUSED_S = 0.2
"""The same under the veil of a pause, where only the hand counts."""


@runtime_checkable
class Restful(Protocol):
    """A source that can be asked for fewer pictures."""

    def rest(self, gap_s: float) -> None:
        """Give pictures no closer together than this."""
        ...


class Intake:
    """Reads a source in a thread of its own until it ends, fails or is stopped.

    A file plays in real time by its stamps, and stands still after its first frame until
    ``play`` and again after ``stand``: what it has stood is added to its later stamps, so that
    they are of one clock with what the person does meanwhile. A camera knows no standing.

    A camera that stops after its first picture is opened again until it comes back.

    The callbacks come from the capture thread: ``opened`` once, ``ready`` after each frame,
    ``trouble`` with a sentence while a camera shows nothing and with None when it does again,
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
        trouble: Callable[[str | None], None] = lambda sentence: None,
        file_waits: bool = True,
        retry_s: float = RETRY_S,
    ) -> None:
        """Prepare the thread; ``start`` starts it."""
        self._open_source = open_source
        self._opened, self._ready, self._ended = opened, ready, ended
        self._trouble, self._troubled, self._retry_s = trouble, False, retry_s
        self._black_since_s: float | None = None
        self._stopping = threading.Event()
        self._gap_s = 0.0
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

    def rest(self, gap_s: float) -> None:
        """Take pictures no closer together than this from a camera; a file is not touched."""
        self._gap_s = gap_s

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
            fault = unexpected()
        if not self._stopping.is_set():
            self._ended(fault)

    def _read(self) -> None:
        source = self._open_source()
        try:
            if source.kind != "camera":
                self._box = Belt()
                if not self._file_waits:
                    self._playing.set()
            if self._stopping.is_set():
                return
            metered = MeteredSource(source, self._box)
            self._opened(metered)
            while True:
                try:
                    self._hand_over(source)
                    return
                except Fault as fault:
                    if source.kind != "camera" or self._ahead_s is None:
                        raise
                    self._tell(paused(str(fault)))
                source.close()
                again = self._open_again()
                if again is None:
                    return
                source = again
                if source.size_px != metered.size_px:
                    raise Fault(other_camera())
                metered.go_on_with(source)
        finally:
            source.close()

    def _hand_over(self, source: FrameSource) -> None:
        """Put what comes into the box until the source ends."""
        live = source.kind == "camera"
        for frame in source:
            arrived = frame if live else self._paced(frame)
            if self._stopping.is_set():
                return
            ahead_s = steady_s() - arrived.time_s
            if live and self._ahead_s is not None:
                ahead_s = min(ahead_s, self._ahead_s)
            self._ahead_s = ahead_s
            self._still = arrived
            if live:
                self._look_for_black(arrived)
                if isinstance(source, Restful):
                    source.rest(self._gap_s)
            self._box.put(arrived)
            self._ready()

    def _look_for_black(self, frame: Frame) -> None:
        if picture_trouble(None, frame.image_rgb) is not PictureTrouble.BLACK:
            self._black_since_s = None
            self._tell(None)
            return
        since_s = self._black_since_s = self._black_since_s or frame.time_s
        if frame.time_s - since_s >= BLACK_S:
            self._tell(black())

    def _tell(self, sentence: str | None) -> None:
        """Pass on that trouble began or is over, once each."""
        if self._troubled is (sentence is None):
            self._troubled = sentence is not None
            self._trouble(sentence)

    def _open_again(self) -> FrameSource | None:
        """Try until the camera opens; None once the thread is to end."""
        while not self._stopping.wait(self._retry_s):
            try:
                return self._open_source()
            except Fault:
                continue
        return None

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
