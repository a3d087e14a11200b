"""The thread in which the pose model looks at frames, one ahead of what is made of them."""

from __future__ import annotations

import threading
from collections.abc import Callable

from coach.domain.frame import Frame
from coach.domain.looked import Looked


class Looker:
    """Has one frame after the other looked at while the frame before is measured.

    At most one that was looked at waits to be fetched, and the next, once looked at, until it has
    been: of a camera always the newest one is looked at, and a slow machine looks at fewer instead
    of later. The callbacks come from this thread: ``looked`` after each frame, upon which it is to
    be fetched, ``drained`` with what ``end`` was told once no frame is left.
    """

    def __init__(
        self,
        take: Callable[[], Frame | None],
        look: Callable[[Frame], Looked],
        *,
        looked: Callable[[], None],
        drained: Callable[[str | None], None],
    ) -> None:
        """Start the thread; ``take`` gives the next frame without waiting, None if there is none.

        What ``look`` raises, ``fetch`` raises.
        """
        self._take, self._look, self._looked, self._drained = take, look, looked, drained
        self._changed = threading.Condition()
        self._arrived = True
        self._waiting: Looked | Exception | None = None
        self._end: tuple[str | None] | None = None
        self._stopping = False
        self._thread = threading.Thread(target=self._run, name="looking", daemon=True)
        self._thread.start()

    def wake(self) -> None:
        """Say that a frame has arrived."""
        with self._changed:
            self._arrived = True
            self._changed.notify()

    def end(self, fault: str | None) -> None:
        """Say that no more frames will arrive."""
        with self._changed:
            self._end = (fault,)
            self._changed.notify()

    def fetch(self) -> Looked | None:
        """Give what was looked at first, once, and let the next follow; None if there is none.

        Raises what the look at it raised.
        """
        with self._changed:
            waiting, self._waiting = self._waiting, None
            self._changed.notify()
        if isinstance(waiting, Exception):
            raise waiting
        return waiting

    def stop(self) -> None:
        """Look at nothing more; returns once the thread has ended. May be called twice."""
        with self._changed:
            self._stopping = True
            self._changed.notify()
        self._thread.join()

    def _run(self) -> None:
        while self._wait():
            frame = self._take()
            if frame is not None:
                self._hand_over(frame)
                continue
            with self._changed:
                left = self._arrived or self._waiting is not None
                end = None if left else self._end
            if end is not None:
                self._drained(end[0])
                return

    def _wait(self) -> bool:
        """Wait until there may be another frame or all is over; false once to be stopped."""
        with self._changed:
            self._changed.wait_for(
                lambda: (
                    self._stopping
                    or self._arrived
                    or (self._end is not None and self._waiting is None)
                )
            )
            self._arrived = False
            return not self._stopping

    def _hand_over(self, frame: Frame) -> None:
        looked: Looked | Exception
        try:
            looked = self._look(frame)
        except Exception as error:
            looked = error
        with self._changed:
            self._changed.wait_for(lambda: self._stopping or self._waiting is None)
            self._waiting = looked
            self._arrived = True  # a source that is read ahead may hold another
        self._looked()
