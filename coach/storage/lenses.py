"""What was learned of this machine's cameras, in its settings file."""

from __future__ import annotations

import contextlib
from pathlib import Path

from coach.documents.lenses import MAX_LENSES_BYTES, read_lenses, write_lenses
from coach.domain.fault import Fault
from coach.domain.lens import Lens, LensList
from coach.storage.atomic import make_folder, write_bytes
from coach.storage.folders import data_folder
from coach.storage.session_file import read_bounded


def lenses_path() -> Path:
    """Give the place of the settings file."""
    return data_folder() / "lenses.json"


def load_lenses(path: Path) -> LensList:
    """Read the file; an empty list where there is none, ``Fault`` where it is broken."""
    if not path.exists():
        return LensList()
    return read_lenses(read_bounded(path, MAX_LENSES_BYTES, "list of lenses"), str(path))


def keep_lens(path: Path, lens: Lens) -> None:
    """Write ``lens`` down in place of what was known of it.

    A file that cannot be read, damaged or of a newer program, is put aside and begun anew.
    """
    try:
        known = load_lenses(path)
    except Fault:
        known = LensList()
        with contextlib.suppress(OSError):
            path.replace(path.with_suffix(".unreadable"))
    make_folder(path.parent)
    write_bytes(path, write_lenses(known.with_lens(lens)))
