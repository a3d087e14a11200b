"""The journal of a session: lines that survive a crash.

Lines are only ever added.
"""

from __future__ import annotations

import contextlib
import os
import sys
from concurrent.futures import Future, ThreadPoolExecutor
from dataclasses import dataclass
from pathlib import Path

from coach.domain.fault import Fault
from coach.session.entries import (
    CameraCounts,
    Entry,
    LandmarkRows,
    ReadingRows,
    SessionOpened,
)
from coach.storage.atomic import make_folder, sync_folder, write_all
from coach.storage.disk_fault import disk_fault
from coach.storage.journal_lines import JournalContent, journal_line, read_lines

SUFFIX = ".journal"
MAX_JOURNAL_BYTES = 1_000_000_000

_ROWS = (ReadingRows, LandmarkRows, CameraCounts)


@dataclass(frozen=True, slots=True)
class SyncPolicy:
    """When written lines are forced onto the disk.

    Rows of measurements at most ``every_s`` of recorded time later; whatever cannot be measured
    again (a repetition, a pain score, an end) at once. A crash of the program alone loses
    nothing that was written, forced or not; a power failure at most what was not yet forced.
    """

    every_s: float = 1.0


class Journal:
    """One session's journal, open for adding.

    Trouble with the disk raises one ``Fault`` when it begins; from then on lines wait in memory,
    every later ``append`` tries again, and nothing more is raised until the disk has worked again
    in between. ``fault`` says whether there is trouble now. Forcing runs beside the caller, which
    never waits for the disk. Where forcing fails, everything since it last worked is written again
    in its place: a system may have given up what it could not force, and call the next try a
    success (Rebello et al. 2020, Can applications recover from fsync failures?, USENIX ATC).
    """

    def __init__(self, path: Path, opened: SessionOpened, policy: SyncPolicy | None = None) -> None:
        """Make the file, readable by its owner only, and write its first line durably."""
        self.path = path
        self.fault: Fault | None = None
        self._policy = policy or SyncPolicy()
        self._waiting: list[bytes] = []
        self._unforced: list[bytes] = []
        self._good_bytes = self._forced_bytes = 0
        self._synced_s = 0.0
        self._sync: Future[int] | None = None
        self._sync_wanted = False
        first = journal_line(opened)
        if read_lines(first, path.name).skipped_lines:
            raise ValueError(f"a journal that could not be read again: {opened}")
        make_folder(path.parent)
        flags = os.O_RDWR | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0)
        try:
            self._descriptor = os.open(path, flags, 0o600)
        except OSError as error:
            raise disk_fault(error, path, "begun") from error
        self._thread = ThreadPoolExecutor(1, thread_name_prefix="journal")
        try:
            lock(self._descriptor)
            write_all(self._descriptor, first)
            os.fsync(self._descriptor)
            sync_folder(path.parent)
        except OSError as error:
            self.close()
            with contextlib.suppress(OSError):
                path.unlink()
            raise disk_fault(error, path, "begun") from error
        self._good_bytes = self._forced_bytes = len(first)

    def append(self, entry: Entry) -> None:
        """Add an entry."""
        self._waiting.append(journal_line(entry))
        time_s = 0.0 if isinstance(entry, SessionOpened) else entry.time_s
        if not isinstance(entry, _ROWS) or time_s - self._synced_s >= self._policy.every_s:
            self._sync_wanted = True
        had_fault = self.fault is not None
        try:
            self._collect_sync()
            self._write_waiting()
            if self._sync_wanted and self._sync is None:
                self._sync_wanted, self._synced_s = False, time_s
                self._sync = self._thread.submit(self._force, self._good_bytes)
        except OSError as error:
            self.fault = disk_fault(error, self.path, "written")
            if not had_fault:
                raise self.fault from error
        else:
            self.fault = None

    def content(self) -> JournalContent:
        """Read everything back: from the disk, even if the name is gone, and what still waits."""
        try:
            on_disk = _read_back(self._descriptor, self._good_bytes)
        except OSError as error:
            raise disk_fault(error, self.path, "read back") from error
        return read_lines(on_disk + b"".join(self._waiting), self.path.name)

    def close(self) -> None:
        """Let go of the file, which stays; may be called twice."""
        self._thread.shutdown(wait=True)
        if self._descriptor >= 0:
            with contextlib.suppress(OSError):
                self._collect_sync()
            with contextlib.suppress(OSError):
                self._write_waiting()
                os.fsync(self._descriptor)
            with contextlib.suppress(OSError):
                os.close(self._descriptor)
            self._descriptor = -1

    def _force(self, up_to: int) -> int:
        os.fsync(self._descriptor)
        return up_to

    def _collect_sync(self) -> None:
        if self._sync is None or not self._sync.done():
            return
        done, self._sync = self._sync, None
        try:
            forced = done.result()
        except OSError:
            self._waiting[:0] = self._unforced
            self._good_bytes, self._sync_wanted = self._forced_bytes, True
            self._unforced.clear()
            raise
        while self._unforced and self._forced_bytes < forced:
            self._forced_bytes += len(self._unforced.pop(0))

    def _write_waiting(self) -> None:
        # From the last whole line on, over one that a full disk cut in two.
        data = b"".join(self._waiting)
        os.lseek(self._descriptor, self._good_bytes, os.SEEK_SET)
        write_all(self._descriptor, data)
        self._good_bytes += len(data)
        self._unforced += self._waiting
        self._waiting.clear()


def _read_back(descriptor: int, size: int) -> bytes:
    os.lseek(descriptor, 0, os.SEEK_SET)
    parts = []
    while size > 0 and (part := os.read(descriptor, min(size, 1 << 20))):
        parts.append(part)
        size -= len(part)
    return b"".join(parts)


def lock(descriptor: int) -> None:
    """Mark an open journal as in use until it is closed or its program ends.

    Raises BlockingIOError or PermissionError where another program has it.
    """
    if sys.platform == "win32":
        import msvcrt

        os.lseek(descriptor, 1 << 40, os.SEEK_SET)
        msvcrt.locking(descriptor, msvcrt.LK_NBLCK, 1)
    else:
        import fcntl

        fcntl.flock(descriptor, fcntl.LOCK_EX | fcntl.LOCK_NB)
