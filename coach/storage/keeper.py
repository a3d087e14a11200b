"""A session on its way: journal while it runs, session file at its end."""

from __future__ import annotations

import contextlib
from collections.abc import Iterable
from pathlib import Path

from coach.domain.fault import Fault
from coach.domain.session import SessionDocument
from coach.session.assemble import Assembled, assemble
from coach.session.entries import Entry, LandmarkRows, ReadingRows, SessionOpened
from coach.storage.atomic import sync_folder
from coach.storage.journal import SUFFIX, Journal, SyncPolicy
from coach.storage.sealed import check_public_key, save_for_practice, save_session


class SessionKeeper:
    """Keeps what happens, from the first entry to the session file.

    ``keep`` adds entries; ``finish`` writes the session file out of the journal itself, as the
    recovery after a crash does, and only then removes the journal. Where the journal cannot be
    read back, the file is made without traces from what is kept in memory.
    """

    def __init__(
        self, journals: Path, opened: SessionOpened, policy: SyncPolicy | None = None
    ) -> None:
        """Begin a journal in the folder ``journals``; a plan's broken key is refused now."""
        if opened.plan.practice_key is not None:
            check_public_key(opened.plan.practice_key)
        self.journal = Journal(journals / f"{opened.session_id}{SUFFIX}", opened, policy)
        self._without_traces: list[Entry] = [opened]
        self._finished: Path | None = None

    @property
    def fault(self) -> Fault | None:
        """The present trouble with the disk, if there is any."""
        return self.journal.fault

    @property
    def document(self) -> SessionDocument:
        """The session so far, without traces."""
        return assemble(self._without_traces).document

    def keep(self, entries: Iterable[Entry]) -> None:
        """Add entries; all are kept even if the disk's trouble raises one ``Fault``."""
        trouble: Fault | None = None
        for entry in entries:
            if not isinstance(entry, ReadingRows | LandmarkRows):
                self._without_traces.append(entry)
            try:
                self.journal.append(entry)
            except Fault as fault:
                trouble = fault
        if trouble is not None:
            raise trouble

    def finish(self, sessions: Path, own: Path | None = None) -> Path | None:
        """Save the session file in the folder ``sessions`` and give its path.

        Where the plan carries a key it is sealed, and ``own`` gets the patient's copy. None
        where nothing was done that is worth a file. If saving raises a ``Fault`` the journal stays,
        and another folder may be tried.
        """
        if self._finished is not None:
            return self._finished
        session = self._whole()
        path = None if session.empty else save_session(sessions, session, own)
        self._finished = path
        self.close()
        with contextlib.suppress(OSError):
            self.journal.path.unlink(missing_ok=True)
            sync_folder(self.journal.path.parent)
        return path

    def save_elsewhere(self, folder: Path) -> Path:
        """Save what is sent in another ``folder`` where ``finish`` could not, and give its path.

        The journal stays, so that the next start makes the file where the diary looks for it. Both
        have the same identity, so that they count once.
        """
        return save_for_practice(folder, self._whole())

    def _whole(self) -> Assembled:
        try:
            return assemble(self.journal.content().entries)
        except Fault:
            return assemble(self._without_traces)

    def close(self) -> None:
        """Let go of the journal without finishing: the next start recovers it."""
        self.journal.close()
