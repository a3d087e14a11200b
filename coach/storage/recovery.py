"""Sessions whose program ended without saying so."""

from __future__ import annotations

import contextlib
import os
import time
from dataclasses import dataclass
from pathlib import Path

from coach.domain.fault import Fault
from coach.domain.session import SessionEnd
from coach.session.assemble import assemble
from coach.session.entries import SessionOpened
from coach.storage.atomic import PART_SUFFIX, sync_folder
from coach.storage.disk_fault import disk_fault
from coach.storage.folders import own_sessions_folder
from coach.storage.journal import MAX_JOURNAL_BYTES, SUFFIX, lock
from coach.storage.journal_lines import read_lines
from coach.storage.sealed import save_session
from coach.texts import translate

UNREADABLE_SUFFIX = ".unreadable"
_STALE_PART_S = 3_600.0


@dataclass(frozen=True, slots=True)
class Recovered:
    """What became of one journal.

    ``path`` is the session file, None if there is none; ``message`` is a sentence for people.
    ``dropped_bytes`` could not be read.
    """

    journal: Path
    path: Path | None
    message: str
    dropped_bytes: int = 0


def recover(journals: Path, sessions: Path, own: Path | None = None) -> list[Recovered]:
    """Turn every journal that no program is writing into a session file, and remove it.

    Where the plan carries a key the file is sealed, and ``own`` gets the patient's copy.
    A session that already has its file is not written again: its name and identity come from the
    journal. What cannot be recovered now stays for the next time.
    """
    for folder in (sessions, own or own_sessions_folder()):
        _remove_stale_parts(folder)
    found = []
    for journal in sorted(journals.glob(f"*{SUFFIX}")):
        try:
            recovered = _recover_one(journal, sessions, own)
        except Fault as fault:
            recovered = Recovered(journal, None, str(fault))
        if recovered is not None:
            found.append(recovered)
    return found


def _recover_one(journal: Path, sessions: Path, own: Path | None) -> Recovered | None:
    try:
        descriptor = os.open(journal, os.O_RDWR | getattr(os, "O_BINARY", 0))
    except FileNotFoundError:
        return None
    except OSError as error:
        raise disk_fault(error, journal, "recovered") from error
    try:
        try:
            lock(descriptor)
        except OSError:
            return None
        return _recover_locked(journal, descriptor, sessions, own)
    finally:
        os.close(descriptor)


def _recover_locked(
    journal: Path, descriptor: int, sessions: Path, own: Path | None
) -> Recovered | None:
    try:
        if os.fstat(descriptor).st_nlink == 0:  # another program has just recovered it
            return None
        with os.fdopen(os.dup(descriptor), "rb") as file:
            data = file.read(MAX_JOURNAL_BYTES)
    except OSError as error:
        raise disk_fault(error, journal, "recovered") from error
    content = read_lines(data, journal.name)
    if not content.entries or not isinstance(content.entries[0], SessionOpened):
        return _put_aside(journal, len(data))
    session = assemble(content.entries)
    path = None if session.empty else save_session(sessions, session, own)
    _remove(journal)
    if path is None:
        return None
    started = session.document.started_at[:16].replace("T", " ")
    if session.document.ended_because is SessionEnd.INTERRUPTED:
        message = translate(
            "faults", "The session of {started} was interrupted; what was done is kept in {name}."
        )
    else:
        message = translate("faults", "The session of {started} is saved now, as {name}.")
    message = message.format(started=started, name=path.name)
    return Recovered(journal, path, message, content.dropped_bytes)


def _put_aside(journal: Path, size: int) -> Recovered | None:
    """Keep a journal without a beginning out of the way of the next start."""
    if size == 0:
        _remove(journal)
        return None
    aside = journal.with_suffix(UNREADABLE_SUFFIX)
    with contextlib.suppress(OSError):
        journal.replace(aside)
    message = translate(
        "faults",
        "A session's journal could not be read from its first line on; it is kept as {aside}.",
    ).format(aside=aside)
    return Recovered(journal, None, message, size)


def _remove(journal: Path) -> None:
    # Left behind it does no harm: the session has its file and will not be written twice.
    with contextlib.suppress(OSError):
        journal.unlink(missing_ok=True)
        sync_folder(journal.parent)


def _remove_stale_parts(sessions: Path) -> None:
    """Remove what a crash left half written an hour ago or earlier."""
    for part in sessions.glob(f".*{PART_SUFFIX}"):
        with contextlib.suppress(OSError):
            if time.time() - part.stat().st_mtime > _STALE_PART_S:
                part.unlink()
