"""What the patient's window asks of the rest of the program."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Protocol

from coach.domain.frame import Frame
from coach.domain.looked import Looked
from coach.domain.moment import Moment, Order
from coach.domain.session import SessionDocument, SessionEnd
from coach.ports import FrameSource


@dataclass(frozen=True, slots=True)
class Outcome:
    """How a session ended: what it holds, and where it lies.

    ``saved_at`` is the session file as a path to show, None where it could not be written;
    ``fault`` then says why and what to do.
    """

    document: SessionDocument
    saved_at: str | None
    fault: str | None = None


class Coaching(Protocol):
    """One session; every method but ``look`` is called in one and the same thread."""

    def look(self, frame: Frame) -> Looked:
        """Look at the next frame, in a thread of its own, while the one before is taken."""
        ...

    def take(self, looked: Looked) -> Moment:
        """Take the next frame, looked at; each in the order in which they were looked at."""
        ...

    def order(self, time_s: float, order: Order, pain: int | None = None) -> Moment:
        """Take what the person said; ``pain`` comes with ``Order.PAIN`` only."""
        ...

    def finish(self, because: SessionEnd) -> Outcome:
        """End whatever still runs for that reason, write the session file and tell of it.

        Called once, and for a session that has come to its own end too; ``because`` then is
        COMPLETED and changes nothing. Of a session that was never started nothing is left behind.
        """
        ...

    def save_elsewhere(self, folder: str) -> Outcome:
        """Write the session file into another folder, where ``finish`` could not; tell of it."""
        ...

    def close(self) -> None:
        """Free the model; may be called twice, and without ``finish``."""
        ...


OpenSource = Callable[[], FrameSource]
"""Opens the camera or file; called in the capture thread, may take seconds, may raise a Fault."""

BeginCoaching = Callable[[FrameSource], Coaching]
"""Begins a session on an open source, of which it reads attributes only; called in the worker."""
