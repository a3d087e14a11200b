"""Files and folders into the store, one line of outcome each."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path

from coach.domain.fault import Fault
from coach.domain.session import SessionDocument
from coach.storage.store import LARGEST_FILE_BYTES, ImportOutcome, Store

SESSION_SUFFIX = ".zip"
_MOST_FILES = 20_000

Reader = Callable[[Path], SessionDocument]


@dataclass(frozen=True, slots=True)
class FileOutcome:
    """What became of one file; ``reason`` says why it was refused, ``code`` whose it is."""

    path: Path
    outcome: ImportOutcome
    reason: str = ""
    code: str = ""

    @property
    def line(self) -> str:
        """The outcome as one line for people."""
        if self.outcome is ImportOutcome.REFUSED:
            return f"{self.path.name}: refused. {self.reason}"
        return f"{self.path.name}: {self.outcome.value} ({self.code})"


def session_files(paths: Iterable[Path]) -> tuple[Path, ...]:
    """List files as given, and in place of a folder the session files in and below it."""
    found: dict[Path, None] = {}
    for path in paths:
        if path.is_dir():
            inside = (p for p in path.rglob(f"*{SESSION_SUFFIX}") if p.is_file())
            found.update(dict.fromkeys(sorted(inside)))
        else:
            found[path] = None
        if len(found) > _MOST_FILES:
            raise Fault(
                f"There are more than {_MOST_FILES} session files in {path}: import a smaller "
                "folder at a time."
            )
    return tuple(found)


def import_file(store: Store, path: Path, read: Reader | None = None) -> FileOutcome:
    """Import one file; a file that cannot be taken changes nothing but the list of refusals.

    Raises Fault only where the store itself cannot be written.
    """
    try:
        document = (read or _read)(path)
        original = _bytes(path)
        outcome = store.import_session(document, original, path.name)
    except Fault as fault:
        store.note_refusal(path.name, str(fault))
        return FileOutcome(path, ImportOutcome.REFUSED, str(fault))
    return FileOutcome(path, outcome, code=document.plan.patient_code)


def import_paths(
    store: Store, paths: Iterable[Path], read: Reader | None = None
) -> Iterator[FileOutcome]:
    """Import files and folders, yielding each outcome as soon as it is known."""
    for path in session_files(paths):
        yield import_file(store, path, read)


def _read(path: Path) -> SessionDocument:
    from coach.storage.session_file import read_session

    return read_session(path).document


def _bytes(path: Path) -> bytes:
    try:
        if path.stat().st_size > LARGEST_FILE_BYTES:
            raise Fault(
                f"{path.name} is larger than a session file can be: ask the patient to send it "
                "again."
            )
        return path.read_bytes()
    except OSError as error:
        raise Fault(
            f"{path.name} cannot be read ({error.strerror}): look whether it is still there."
        ) from error
