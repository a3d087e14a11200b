"""Session files on disk."""

from __future__ import annotations

from pathlib import Path

from coach.documents.archive import (
    MAX_ARCHIVE_BYTES,
    StoredSession,
    pack_session,
    unpack_document,
    unpack_session,
)
from coach.domain.fault import Fault
from coach.domain.session import SessionDocument
from coach.session.assemble import Assembled
from coach.storage.atomic import make_folder, write_bytes
from coach.storage.disk_fault import disk_fault
from coach.texts import translate

SUFFIX = ".shoulder.zip"


def write_session(folder: Path, session: Assembled) -> Path:
    """Save a session under a name of its own in ``folder`` and give its path.

    No file is ever overwritten: one that holds this session already is left as it is and named
    as the result.
    """
    document = session.document
    data = pack_session(document, session.readings_csv, session.landmarks_csv)
    make_folder(folder)
    for name in session_names(document):
        path = folder / name
        try:
            write_bytes(path, data, overwrite=False)
        except FileExistsError:
            if _holds(path, document.session_id):
                return path
        else:
            return path
    raise Fault(
        translate(
            "faults",
            "The session of {started_at} could not be saved: {folder} has other files "
            "of its name; choose another folder.",
        ).format(started_at=document.started_at, folder=folder)
    )


def read_session(path: Path) -> StoredSession:
    """Read a session file that nobody vouches for."""
    return unpack_session(read_bounded(path, MAX_ARCHIVE_BYTES, "session file"), path.name)


def read_document(path: Path) -> SessionDocument:
    """Read only a session file's document, which is quicker by far."""
    return unpack_document(read_bounded(path, MAX_ARCHIVE_BYTES, "session file"), path.name)


def read_bounded(path: Path, max_bytes: int, kind: str) -> bytes:
    """Give the content of a regular file; what is larger than ``max_bytes`` is not read."""
    try:
        if not path.is_file():
            if path.exists():
                told = translate("faults", "{path} is a folder or device; choose a {kind}.")
            else:
                told = translate("faults", "{path} is not there; choose a {kind}.")
            raise Fault(told.format(path=path, kind=_named(kind)))
        with path.open("rb") as file:
            data = file.read(max_bytes + 1)
    except OSError as error:
        raise disk_fault(error, path, "read") from error
    if len(data) > max_bytes:
        raise Fault(
            translate(
                "faults",
                "{name} is too large for a {kind}: at most {max_bytes:,} bytes are "
                "read; check that this is the right file.",
            ).format(name=path.name, kind=_named(kind), max_bytes=max_bytes)
        )
    return data


def session_names(document: SessionDocument) -> tuple[str, str]:
    """Give the file names of a session: the usual one, and one for when that is taken.

    Date and time are those on the clock where it was recorded.
    """
    moment = document.started_at[:16].replace("T", "_").replace(":", "")
    return tuple(  # type: ignore[return-value]
        f"{moment}_{part}{SUFFIX}" for part in (document.session_id[:8], document.session_id)
    )


def _holds(path: Path, session_id: str) -> bool:
    try:
        return read_document(path).session_id == session_id
    except Fault:
        return False


def _named(kind: str) -> str:
    names = {
        "session file": translate("faults", "session file"),
        "plan file": translate("faults", "plan file"),
        "landmark table": translate("faults", "landmark table"),
        "table of joint centres": translate("faults", "table of joint centres"),
        "list of lenses": translate("faults", "list of lenses"),
        "public key": translate("faults", "public key"),
        "practice key": translate("faults", "practice key"),
    }
    return names.get(kind, kind)
