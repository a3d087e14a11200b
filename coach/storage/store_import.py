"""Files and folders into the store, one line of outcome each."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path

from coach.documents.archive import unpack_session
from coach.domain.fault import Fault
from coach.domain.text import shown_text
from coach.storage.reading_ahead import Proved, ReadingAhead
from coach.storage.sealed import PracticeIdentity, open_session_bytes
from coach.storage.store import ImportOutcome, Store, new_batch
from coach.texts import in_both, translate

_SESSION_FILES = ("*.shoulder*.zip", "*.shoulder*.age")
"""In folders; mail and browsers put a number before the ending of a second copy."""
_MOST_FILES = 20_000


@dataclass(frozen=True, slots=True)
class FileOutcome:
    """What became of one file; ``code`` says whose it is.

    ``reason`` is a sentence where it was refused or is doubtful.
    """

    path: Path
    outcome: ImportOutcome
    reason: str = ""
    code: str = ""

    @property
    def line(self) -> str:
        """The outcome as one line for people."""
        name = shown_text(self.path.name)
        if self.outcome is ImportOutcome.REFUSED:
            told = translate("import", "{name}: refused. {reason}")
        elif self.outcome is ImportOutcome.DOUBTFUL:
            told = translate("import", "{name}: doubtful ({code}). {reason}")
        elif self.outcome is ImportOutcome.KNOWN:
            told = translate("import", "{name}: already known ({code})")
        else:
            told = translate("import", "{name}: accepted ({code})")
        return told.format(name=name, reason=self.reason, code=shown_text(self.code))


def session_files(paths: Iterable[Path]) -> tuple[Path, ...]:
    """List files as given, and in place of a folder the session files in and below it."""
    found: dict[Path, None] = {}
    for path in paths:
        if path.is_dir():
            inside = (p for pattern in _SESSION_FILES for p in path.rglob(pattern) if p.is_file())
            found.update(dict.fromkeys(sorted(inside)))
        else:
            found[path] = None
        if len(found) > _MOST_FILES:
            raise Fault(
                translate(
                    "faults",
                    "There are more than {most_files} session files in {path}: import a"
                    " smaller folder at a time.",
                ).format(most_files=_MOST_FILES, path=path)
            )
    return tuple(found)


def import_file(
    store: Store,
    path: Path,
    identity: PracticeIdentity | None = None,
    batch: str | None = None,
    proved: Proved | None = None,
) -> FileOutcome:
    """Import one file; a file that cannot be taken changes nothing but the list of refusals.

    Sealed files need the practice's ``identity``; what is kept of them is the zip inside.
    ``batch`` is the import the file belongs to, see ``new_batch``; by default one of its own.
    ``proved`` is what was read of the file already. Raises Fault only where the store itself
    cannot be written.
    """
    with in_both():  # what is refused or doubtful is kept, and read in other languages
        return _imported(store, path, identity, batch, proved)


def _imported(
    store: Store,
    path: Path,
    identity: PracticeIdentity | None,
    batch: str | None,
    proved: Proved | None,
) -> FileOutcome:
    try:
        if proved is None:
            original = open_session_bytes(path, identity)
            # All of it is read, so that a damaged table is refused now and not at replay.
            proved = Proved(original, unpack_session(original, path.name).document)
        document = proved.document
        imported = store.import_session(document, proved.original, path.name, batch)
    except Fault as fault:
        store.note_refusal(path.name, fault.sentence)
        return FileOutcome(path, ImportOutcome.REFUSED, str(fault))
    return FileOutcome(path, imported.outcome, imported.doubt, document.plan.patient_code)


def import_paths(
    store: Store, paths: Iterable[Path], identity: PracticeIdentity | None = None
) -> Iterator[FileOutcome]:
    """Import files and folders as one import, yielding each outcome as soon as it is known."""
    batch, ahead = new_batch(), ReadingAhead(identity)
    try:
        ahead.add(session_files(paths))
        while len(ahead):
            path, proved = ahead.take()
            yield import_file(store, path, identity, batch, proved)
    finally:
        ahead.clear()
