"""The patient's own session files, read back for the diary."""

from __future__ import annotations

from pathlib import Path

from coach.domain.fault import Fault
from coach.domain.session import SessionDocument
from coach.review.history import in_order
from coach.storage.disk_fault import disk_fault
from coach.storage.session_file import SUFFIX, read_document
from coach.texts import translate

MOST_FILES = 3_000
"""Four sessions a day for two years, the longest course in common practice."""


def read_history(*folders: Path) -> tuple[tuple[SessionDocument, ...], tuple[str, ...]]:
    """Read the documents in folders, oldest first, and say which files could not be read.

    Only ``session.json`` of each file is unpacked. A folder that is not there has no sessions; a
    session that lies there twice counts once. Sealed files are passed over: only the practice can
    open them, and the patient's own copies are in another folder.
    """
    documents: dict[str, SessionDocument] = {}
    refusals: list[str] = []
    for folder in folders:
        _read_folder(folder, documents, refusals)
    return in_order(documents.values()), tuple(refusals)


def _read_folder(folder: Path, documents: dict[str, SessionDocument], refusals: list[str]) -> None:
    try:
        paths = sorted(p for p in folder.iterdir() if p.name.endswith(SUFFIX))
    except FileNotFoundError:
        return
    except OSError as error:
        refusals.append(str(disk_fault(error, folder, "read")))
        return
    if len(paths) > MOST_FILES:
        # Names begin with the date, so the last ones are the newest.
        paths = paths[-MOST_FILES:]
        refusals.append(
            translate(
                "faults",
                "{name} holds more than {most_files:,} session files, and only the "
                "newest are shown; move old ones to another folder.",
            ).format(name=folder.name, most_files=MOST_FILES)
        )
    for path in paths:
        try:
            document = read_document(path)
        except Fault as fault:
            refusals.append(str(fault))
        else:
            documents.setdefault(document.session_id, document)
