"""Session files looked through in processes of their own while the one before is written."""

from __future__ import annotations

import contextlib
from collections import deque
from collections.abc import Iterable
from dataclasses import dataclass, field
from pathlib import Path
from typing import TYPE_CHECKING

import msgspec

from coach.domain.fault import Fault
from coach.domain.session import SessionDocument
from coach.storage.cores import cores
from coach.storage.reading_worker import REFUSED, serve
from coach.storage.sealed import PracticeIdentity, open_session_bytes

if TYPE_CHECKING:
    from multiprocessing.connection import Connection
    from multiprocessing.context import SpawnProcess

_WORTH_BYTES = 4_000_000
"""Of files still to come: below, they are read before a process would have started."""
_MOST_WORKERS = 4
_DOCUMENT = msgspec.json.Decoder(SessionDocument)


@dataclass(frozen=True, slots=True)
class Proved:
    """A session file without a fault: the zip as it came, opened if it was sealed."""

    original: bytes = field(repr=False)
    document: SessionDocument


@dataclass(frozen=True, slots=True)
class _Worker:
    process: SpawnProcess
    ask: Connection = field(repr=False)
    told: Connection = field(repr=False)

    @staticmethod
    def start() -> _Worker:
        import multiprocessing  # only where there is much to read, not at each start of the window

        context = multiprocessing.get_context("spawn")
        asked, ask = context.Pipe(duplex=False)
        told, tell = context.Pipe(duplex=False)
        process = context.Process(target=serve, args=(asked, tell), daemon=True)
        process.start()
        # Only the process holds its own ends, so that its end is noticed here.
        asked.close()
        tell.close()
        return _Worker(process, ask, told)

    @property
    def answered(self) -> bool:
        """Whether it has told something, or is gone."""
        try:
            return self.told.poll()
        except OSError:
            return True

    def end(self) -> None:
        """End it whatever it does: it writes nothing."""
        self.process.terminate()
        self.process.join()
        self.process.close()
        self.ask.close()
        self.told.close()


@dataclass(frozen=True, slots=True)
class _Given:
    path: Path
    original: bytes = field(repr=False)
    worker: _Worker


class ReadingAhead:
    """The files of an import in their order, each with what was found in it where that is known.

    Every process has one file at a time, so that no more than these are in memory. The practice's
    key stays in this process. What a process refuses, or dies of, is read again by the caller, in
    the one way there is to say why.
    """

    def __init__(self, identity: PracticeIdentity | None = None) -> None:
        """Begin with no files and no processes; ``identity`` opens sealed files."""
        self.identity = identity
        self._waiting: deque[Path] = deque()
        self._given: deque[_Given] = deque()
        self._workers: list[_Worker] = []
        self._starting: list[_Worker] = []
        self._free: deque[_Worker] = deque()

    def __len__(self) -> int:
        """Count the files still to take."""
        return len(self._given) + len(self._waiting)

    def add(self, paths: Iterable[Path]) -> None:
        """Put files at the end; processes are started where that is worth it."""
        self._waiting.extend(paths)
        workers = min(cores(), _MOST_WORKERS)
        if not self._workers and workers > 1 and _at_least(self._waiting, _WORTH_BYTES):
            with contextlib.suppress(OSError):  # without them it only takes longer
                for _ in range(workers):
                    self._workers.append(_Worker.start())
            self._starting = list(self._workers)

    @property
    def ready(self) -> bool:
        """Whether ``take`` would not wait."""
        return not self._given or self._given[0].worker.answered

    def take(self) -> tuple[Path, Proved | None]:
        """Give the next file, with what was found in it unless it is still to be looked through."""
        if not self._given:
            path = self._waiting.popleft()
            self._hand_out()
            return path, None
        given = self._given.popleft()
        answer = REFUSED
        try:
            answer = given.worker.told.recv_bytes()
        except (EOFError, OSError):
            self._lose(given.worker)
        else:
            self._free.append(given.worker)
        self._hand_out()
        if answer == REFUSED:
            return given.path, None
        return given.path, Proved(given.original, _DOCUMENT.decode(answer))

    def clear(self) -> None:
        """Leave out what is still to take, and end the processes."""
        self._waiting.clear()
        self._given.clear()
        for worker in self._workers:
            worker.end()
        self._workers.clear()
        self._starting.clear()
        self._free.clear()

    def _hand_out(self) -> None:
        """Give each process that has none the next file, up to one that cannot be opened."""
        for worker in [each for each in self._starting if each.answered]:
            self._starting.remove(worker)
            try:
                worker.told.recv_bytes()
            except (EOFError, OSError):
                self._lose(worker)
            else:
                self._free.append(worker)
        while self._free and self._waiting:
            try:
                original = open_session_bytes(self._waiting[0], self.identity)
            except Fault:
                return  # the caller finds it again when it is this file's turn
            worker = self._free.popleft()
            try:
                worker.ask.send_bytes(original)
            except OSError:
                self._lose(worker)
            else:
                self._given.append(_Given(self._waiting.popleft(), original, worker))

    def _lose(self, worker: _Worker) -> None:
        """Go on without a process that is gone."""
        self._workers.remove(worker)
        worker.end()


def _at_least(paths: Iterable[Path], least: int) -> bool:
    found = 0
    for path in paths:
        with contextlib.suppress(OSError):
            found += path.stat().st_size
        if found >= least:
            return True
    return False
