"""One sitting: the pipeline on a source of frames, kept in a journal, ended in a session file."""

from __future__ import annotations

import uuid
from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import datetime
from pathlib import Path

from coach import __version__
from coach.capture.clock import steady_s
from coach.desktop.patient.coaching import Outcome
from coach.domain.agenda import AgendaItem
from coach.domain.fault import Fault
from coach.domain.frame import Frame
from coach.domain.looked import Looked
from coach.domain.moment import Moment, Order
from coach.domain.plan import Plan
from coach.domain.session import Camera, SessionEnd, Software
from coach.goniometry import DEFINITIONS
from coach.pipeline import Pipeline
from coach.ports import FrameSource, PoseEstimator
from coach.session.entries import Entry, SessionOpened
from coach.storage.folders import own_sessions_folder
from coach.storage.keeper import SessionKeeper
from coach.texts import translate

SOFTWARE = "stiff-shoulder-coach"


@dataclass(frozen=True, slots=True)
class Folders:
    """Where the journal is kept while the session runs, and where its file goes.

    ``own`` gets the patient's copies of sessions that are sealed for the practice.
    """

    journals: Path
    sessions: Path
    own: Path = field(default_factory=own_sessions_folder)


class Sitting:
    """A ``Coaching`` for the patient's window, and for the demo without one."""

    def __init__(
        self,
        plan: Plan,
        source: FrameSource,
        estimator: PoseEstimator,
        folders: Folders,
        started_s: float | None = None,
        field_of_view_deg: float | None = None,
        items: tuple[AgendaItem, ...] = (),
    ) -> None:
        """Open the journal; stamps count from ``started_s``, by default from now or a clip's 0.

        The horizontal field of view of the camera is None where it is not known; ``items`` are
        what is due, by default the whole plan.
        """
        self._source = source
        self._estimator = estimator
        self._folders = folders
        self._trouble: str | None = None
        self._outcome: Outcome | None = None
        self._keeper = SessionKeeper(
            folders.journals, opening_entry(plan, source, estimator.model_sha256, field_of_view_deg)
        )
        if started_s is None:
            started_s = steady_s() if source.kind == "camera" else 0.0
        self._now_s = started_s
        self._pipeline = Pipeline(plan, estimator, self._keep, started_s, field_of_view_deg, items)

    def step(self, frame: Frame) -> Moment:
        """Look at the next frame and take it."""
        return self.take(self.look(frame))

    def look(self, frame: Frame) -> Looked:
        """Look at the next frame; may run in a thread of its own while the one before is taken."""
        return self._pipeline.look(frame)

    def take(self, looked: Looked) -> Moment:
        """Take the next frame, looked at."""
        self._now_s = max(self._now_s, looked.frame.time_s)
        return self._pipeline.take(looked, self._source.frames_lost)

    def order(self, time_s: float, order: Order, pain: int | None = None) -> Moment:
        """Take what the person said."""
        self._now_s = max(self._now_s, time_s)
        return self._pipeline.order(time_s, order, pain)

    def finish(self, because: SessionEnd) -> Outcome:
        """End what still runs, write the session file and tell of it."""
        if self._outcome is not None:
            return self._outcome
        if not self._pipeline.finished:
            if because is SessionEnd.STOPPED:
                self._pipeline.order(self._now_s, Order.STOP)
            else:
                self._pipeline.end_input()
        try:
            path = self._keeper.finish(self._folders.sessions, self._folders.own)
        except Fault as fault:
            told = _kept(fault, on_disk=self._keeper.fault is None)
            self._outcome = Outcome(self._keeper.document, None, told)
        else:
            saved_at = None if path is None else str(path)
            self._outcome = Outcome(self._keeper.document, saved_at, self._trouble)
        return self._outcome

    def save_elsewhere(self, folder: str) -> Outcome:
        """Save the session file in another folder, and tell of it."""
        try:
            path = self._keeper.save_elsewhere(Path(folder))
        except Fault as fault:
            told = _kept(fault, on_disk=self._keeper.fault is None)
            return Outcome(self._keeper.document, None, told)
        return Outcome(self._keeper.document, str(path))

    def close(self) -> None:
        """Free the model and the journal."""
        self._estimator.close()
        self._keeper.close()

    def _keep(self, entries: Iterable[Entry]) -> None:
        try:
            self._keeper.keep(entries)
        except Fault as fault:
            self._trouble = str(fault)


def _kept(fault: Fault, *, on_disk: bool) -> str:
    if on_disk:
        told = translate(
            "faults", "{fault} What you did is kept, and saved when you start the program again."
        )
    else:
        told = translate(
            "faults",
            "{fault} What you did is kept as long as this window is open: make room first, then "
            "close it.",
        )
    return told.format(fault=fault)


def opening_entry(
    plan: Plan, source: FrameSource, model_sha256: str, field_of_view_deg: float | None = None
) -> SessionOpened:
    """Give the journal's first entry."""
    width_px, height_px = source.size_px
    return SessionOpened(
        session_id=uuid.uuid4().hex,
        started_at=datetime.now().astimezone().isoformat(timespec="seconds"),
        software=Software(
            name=SOFTWARE,
            version=__version__,
            definitions=DEFINITIONS,
            model_sha256=model_sha256,
        ),
        camera=Camera(
            kind=source.kind,
            width_px=width_px,
            height_px=height_px,
            frames_per_s=min(source.frames_per_s, 1000.0),
            field_of_view_deg=field_of_view_deg,
        ),
        plan=plan,
    )
