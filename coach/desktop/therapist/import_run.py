"""Importing many files while the window stays alive."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

from PyQt6.QtCore import QObject, QTimer, pyqtSignal

from coach.domain.fault import Fault
from coach.storage.sealed import PracticeIdentity
from coach.storage.store import Store, new_batch
from coach.storage.store_import import FileOutcome, import_file, session_files


class ImportRun(QObject):
    """Takes one file at a time between two rounds of the event loop, on the window's own thread.

    A file is whole in the store before the next begins, so stopping loses nothing.
    """

    advanced = pyqtSignal(int, int)
    """Files done, files in all."""
    finished = pyqtSignal(list)
    """The outcomes so far, as FileOutcome."""
    failed = pyqtSignal(str)
    """The store could not be written; ``finished`` follows."""

    def __init__(
        self,
        store: Store,
        identity: PracticeIdentity | None = None,
        parent: QObject | None = None,
    ) -> None:
        """Begin idle; ``identity`` opens sealed files, which are refused without."""
        super().__init__(parent)
        self._store = store
        self._identity = identity
        self._waiting: list[Path] = []
        self._outcomes: list[FileOutcome] = []
        self._total = 0
        self.batch = new_batch()
        self._timer = QTimer(self)
        self._timer.setInterval(0)
        self._timer.timeout.connect(self._next)

    @property
    def running(self) -> bool:
        """Whether files are still waiting."""
        return self._timer.isActive()

    def add(self, paths: Iterable[Path]) -> None:
        """Queue files and folders; may be called while running."""
        try:
            files = session_files(paths)
        except (Fault, OSError) as fault:
            self.failed.emit(str(fault))
            return
        if not self.running:
            self._outcomes, self._total, self.batch = [], 0, new_batch()
        self._waiting.extend(files)
        self._total += len(files)
        self._timer.start()

    def stop(self) -> None:
        """Leave out what still waits."""
        self._waiting.clear()

    def _next(self) -> None:
        if not self._waiting:
            self._timer.stop()
            self.finished.emit(self._outcomes)
            return
        try:
            path = self._waiting.pop(0)
            self._outcomes.append(import_file(self._store, path, self._identity, batch=self.batch))
        except Fault as fault:
            self._waiting.clear()
            self.failed.emit(str(fault))
        self.advanced.emit(self._total - len(self._waiting), self._total)
