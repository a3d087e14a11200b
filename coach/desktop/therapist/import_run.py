"""Importing many files while the window stays alive, and taking the last import back."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from pathlib import Path

from PyQt6.QtCore import QObject, QTimer, pyqtSignal
from PyQt6.QtGui import QDropEvent
from PyQt6.QtWidgets import QMessageBox, QWidget

from coach.desktop.shared.file_questions import ask_files, ask_folder
from coach.desktop.therapist.practice_key import ask_practice_key
from coach.desktop.therapist.replay_sessions import session_file_kinds
from coach.desktop.therapist.side_panel import files_counted
from coach.domain.fault import Fault
from coach.review.counts import sessions_counted
from coach.storage.reading_ahead import ReadingAhead
from coach.storage.sealed import PracticeIdentity
from coach.storage.store import ImportOutcome, Store, new_batch
from coach.storage.store_import import FileOutcome, import_file, session_files
from coach.texts import translate

_LOOKS_AGAIN_MS = 4
"""While the next file is still being read."""


class ImportRun(QObject):
    """Takes one file at a time between two rounds of the event loop, on the window's own thread.

    A file is whole in the store before the next begins, so stopping loses nothing. Of many files
    the next are read meanwhile in processes of their own.
    """

    advanced = pyqtSignal(int, int)
    """Files done, files in all."""
    finished = pyqtSignal(list)
    """The outcomes so far, as FileOutcome."""
    failed = pyqtSignal(str)
    """What was asked could not be done; while files were imported, ``finished`` follows."""
    told = pyqtSignal(str)
    """What was done beside importing."""

    taken_back = pyqtSignal(int)
    """How many sessions went."""

    def __init__(
        self,
        store: Store,
        identity: PracticeIdentity | None = None,
        parent: QWidget | None = None,
    ) -> None:
        """Begin idle; ``identity`` opens sealed files, which are refused without."""
        super().__init__(parent)
        self._store = store
        self._ahead = ReadingAhead(identity)
        self._outcomes: list[FileOutcome] = []
        self._total = 0
        self.batch = new_batch()
        self._timer = QTimer(self)
        self._timer.timeout.connect(self._next)

    @property
    def identity(self) -> PracticeIdentity | None:
        """What opens sealed files, once it is unlocked."""
        return self._ahead.identity

    @property
    def running(self) -> bool:
        """Whether files are still waiting."""
        return self._timer.isActive()

    @property
    def progress(self) -> tuple[int, int]:
        """Files done, files in all; none of none where nothing runs."""
        return (self._total - len(self._ahead), self._total) if self.running else (0, 0)

    def add(self, paths: Iterable[Path]) -> None:
        """Queue files and folders; may be called while running."""
        try:
            files = session_files(paths)
        except (Fault, OSError) as fault:
            self.failed.emit(str(fault))
            return
        if not self.running:
            self._outcomes, self._total, self.batch = [], 0, new_batch()
        self._ahead.add(files)
        self._total += len(files)
        self._timer.start(0)

    def ask_files(self) -> None:
        """Ask which files to import."""
        title = translate("therapist", "Import session files")
        self.add(ask_files(self._over(), title, session_file_kinds()))

    def ask_folder(self) -> None:
        """Ask which folder to import."""
        title = translate("therapist", "Import a folder of session files")
        folder = ask_folder(self._over(), title)
        if folder is not None:
            self.add([folder])

    def ask_undo(self) -> None:
        """Ask whether to take the last import back, where there is one."""
        try:
            batch = self._store.last_import()
            if batch is None:
                return
            question = translate("therapist", "Take {sessions} of the last import out again?")
            answer = QMessageBox.question(
                self._over(),
                translate("therapist", "Shoulder review"),
                question.format(sessions=sessions_counted(batch.sessions)),
            )
            if answer == QMessageBox.StandardButton.Yes:
                self.taken_back.emit(self._store.undo_import(batch.id))
        except Fault as fault:
            self.failed.emit(str(fault))

    def ask_key(self) -> None:
        """Ask for the passphrase of the practice's key, for the sealed files from then on."""
        try:
            question = translate("therapist", "The passphrase of the practice's key:")
            identity = ask_practice_key(question, self._over())
        except Fault as fault:
            self.failed.emit(str(fault))
            return
        if identity is not None:
            self._ahead.identity = identity
            self.told.emit(
                translate(
                    "therapist",
                    "The practice's key is unlocked: sealed files can be imported now.",
                )
            )

    def _over(self) -> QWidget | None:
        """Give the window over which to ask; kept as an attribute, neither would ever go."""
        parent = self.parent()
        return parent if isinstance(parent, QWidget) else None

    def stop(self) -> None:
        """Leave out what still waits."""
        self._ahead.clear()

    def _next(self) -> None:
        if not len(self._ahead):
            self._timer.stop()
            self._ahead.clear()
            self.finished.emit(self._outcomes)
            return
        if not self._ahead.ready:
            self._timer.setInterval(_LOOKS_AGAIN_MS)
            return
        self._timer.setInterval(0)
        try:
            path, proved = self._ahead.take()
            done = import_file(self._store, path, self.identity, self.batch, proved)
            self._outcomes.append(done)
        except Fault as fault:
            self._ahead.clear()
            self.failed.emit(str(fault))
        self.advanced.emit(*self.progress)


def outcomes_told(outcomes: Sequence[FileOutcome]) -> str:
    """Say what became of files."""
    counts = Counter(o.outcome for o in outcomes)
    found = {
        ImportOutcome.ACCEPTED: translate("therapist", "{count} accepted"),
        ImportOutcome.DOUBTFUL: translate("therapist", "{count} doubtful"),
        ImportOutcome.KNOWN: translate("therapist", "{count} already known"),
        ImportOutcome.REFUSED: translate("therapist", "{count} refused"),
    }
    parts = [words.format(count=counts[o]) for o, words in found.items() if counts[o]]
    told = translate("therapist", "{files}: {outcomes}.")
    return told.format(files=files_counted(counts.total()), outcomes=", ".join(parts))


def dropped_paths(event: QDropEvent) -> list[Path]:
    """Give the files and folders that are dragged."""
    data = event.mimeData()
    urls = [] if data is None else data.urls()
    return [Path(url.toLocalFile()) for url in urls if url.isLocalFile()]
