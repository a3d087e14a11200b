"""Session files as bytes: an ISO/IEC 21320-1 zip of plain JSON and CSV.

Of that standard's restrictions these matter here: members stored or deflated, nothing encrypted,
signed or split (https://www.loc.gov/preservation/digital/formats/fdd/fdd000361.shtml).
"""

from __future__ import annotations

import io
import stat
import struct
import zipfile
import zlib
from dataclasses import dataclass, field

from coach.documents.landmarks import MAX_LANDMARKS_BYTES, read_landmarks
from coach.documents.readings import MAX_READINGS_BYTES, read_readings
from coach.documents.session import (
    MAX_SESSION_BYTES,
    read_session_document,
    write_session_document,
)
from coach.documents.tables import LandmarkTable, ReadingTable
from coach.domain.fault import Fault
from coach.domain.session import SessionDocument
from coach.texts import translate

MAX_ARCHIVE_BYTES = 64_000_000

README, DOCUMENT, READINGS, LANDMARKS = (
    "README.txt",
    "session.json",
    "readings.csv",
    "landmarks.csv",
)
_MOST_BYTES = {
    README: 10_000,
    DOCUMENT: MAX_SESSION_BYTES,
    READINGS: MAX_READINGS_BYTES,
    LANDMARKS: MAX_LANDMARKS_BYTES,
}
_README_TEXT = b"""\
One sitting of shoulder exercises, recorded at home, without any picture.

session.json   what was planned and done: repetitions, angles in degrees (for
               the hand behind the back its height as a share of the back's
               length) with the half width of their 95 % interval, pain 0-10
readings.csv   the value of every measured frame
landmarks.csv  points of the body in pixels and metres, ten times a second

This is health data of one person. Keep it as you would keep a letter from a
doctor. The format is open: docs/session_file.md of stiff-shoulder-coach.
"""

_EARLIEST = (1980, 1, 1, 0, 0, 0)
_LEVEL = 6
"""Of deflate: half an hour takes 3.0 MB and 0.9 s, at 9 it would be 2.7 MB and 3.8 s."""
_END = struct.Struct("<4s4H2LH")
_LOCATOR_64 = b"PK\x06\x07"
_MAX_DIRECTORY_BYTES = 4_096
_ENCRYPTED_OR_PATCHED = 0x1 | 0x20 | 0x40 | 0x2000
_BROKEN = (
    zipfile.BadZipFile,
    zlib.error,
    struct.error,
    EOFError,
    OSError,
    RuntimeError,
    ValueError,
    OverflowError,
)


@dataclass(frozen=True, slots=True)
class StoredSession:
    """What a session file holds."""

    document: SessionDocument
    readings: ReadingTable = field(repr=False)
    landmarks: LandmarkTable = field(repr=False)


def pack_session(document: SessionDocument, readings_csv: bytes, landmarks_csv: bytes) -> bytes:
    """Give the bytes of a session file; the same content gives the same bytes."""
    members = {
        README: _README_TEXT,
        DOCUMENT: write_session_document(document),
        READINGS: readings_csv,
        LANDMARKS: landmarks_csv,
    }
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w", allowZip64=False) as archive:
        for name, content in members.items():
            info = zipfile.ZipInfo(name, _EARLIEST)
            info.create_system = 3
            info.external_attr = (stat.S_IFREG | 0o600) << 16
            # Stored, the explanation can be read by whoever opens the file as it is.
            info.compress_type = zipfile.ZIP_STORED if name == README else zipfile.ZIP_DEFLATED
            archive.writestr(info, content, compresslevel=_LEVEL)
    return buffer.getvalue()


def unpack_document(data: bytes, where: str) -> SessionDocument:
    """Read only the session document, for lists of many files; ``where`` names the file."""
    return read_session_document(_members(data, where, (DOCUMENT,))[DOCUMENT], _in(where, DOCUMENT))


def unpack_session(data: bytes, where: str) -> StoredSession:
    """Read a whole session file that nobody vouches for; ``where`` names it in a ``Fault``."""
    members = _members(data, where, (DOCUMENT, READINGS, LANDMARKS))
    return StoredSession(
        document=read_session_document(members[DOCUMENT], _in(where, DOCUMENT)),
        readings=read_readings(members[READINGS], _in(where, READINGS)),
        landmarks=read_landmarks(members[LANDMARKS], _in(where, LANDMARKS)),
    )


def _in(where: str, name: str) -> str:
    return translate("faults", "{name} in {where}").format(name=name, where=where)


def _members(data: bytes, where: str, wanted: tuple[str, ...]) -> dict[str, bytes]:
    _check_directory(data, where)
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            found = _checked(archive.infolist(), where)
            return {name: _content(archive, found[name], where) for name in wanted}
    except _BROKEN as error:
        raise _damaged(where) from error


def _check_directory(data: bytes, where: str) -> None:
    """Refuse by the end record alone what the zip library should not have to open."""
    if len(data) > MAX_ARCHIVE_BYTES:
        raise Fault(
            translate(
                "faults",
                "{where} is too large for a session file: {count:,} bytes, at most "
                "{max_archive_bytes:,} are read; check that this is the right file.",
            ).format(where=where, count=len(data), max_archive_bytes=MAX_ARCHIVE_BYTES)
        )
    if not data.startswith(b"PK\x03\x04"):
        raise Fault(
            translate(
                "faults", "{where} is not a session file; check that this is the right file."
            ).format(where=where)
        )
    end = len(data) - _END.size
    if end < 0 or data[end : end + 4] != b"PK\x05\x06":
        raise _damaged(where)
    _, disk, start_disk, here, entries, size, offset, comment = _END.unpack_from(data, end)
    if (disk, start_disk, here, comment) != (0, 0, entries, 0) or offset + size != end:
        raise _damaged(where)
    if entries > len(_MOST_BYTES) or size > _MAX_DIRECTORY_BYTES:
        raise Fault(
            translate(
                "faults",
                "{where} holds more than the {count} parts of a session file; check "
                "that this is the right file.",
            ).format(where=where, count=len(_MOST_BYTES))
        )
    if data[end - 20 : end - 16] == _LOCATOR_64:
        raise Fault(
            translate(
                "faults", "{where} is a zip64 file, which no session file is; ask for a new file."
            ).format(where=where)
        )


def _checked(infos: list[zipfile.ZipInfo], where: str) -> dict[str, zipfile.ZipInfo]:
    found: dict[str, zipfile.ZipInfo] = {}
    for info in infos:
        name = info.filename
        if name not in _MOST_BYTES or info.orig_filename != name:
            raise Fault(
                translate(
                    "faults",
                    "{where} holds {name!a}, which is no part of a session file; check "
                    "that this is the right file.",
                ).format(where=where, name=name[:60])
            )
        if name in found:
            raise Fault(
                translate(
                    "faults", "{where} holds {name} twice; ask for it to be sent again."
                ).format(where=where, name=name)
            )
        if info.flag_bits & _ENCRYPTED_OR_PATCHED:
            raise Fault(
                translate(
                    "faults", "{name} in {where} is encrypted by zip; ask for a file that is not."
                ).format(name=name, where=where)
            )
        if info.compress_type not in (zipfile.ZIP_STORED, zipfile.ZIP_DEFLATED):
            raise Fault(
                translate(
                    "faults",
                    "{name} in {where} is packed in a way that session files do not "
                    "use; ask for the original file.",
                ).format(name=name, where=where)
            )
        kind = stat.S_IFMT(info.external_attr >> 16)
        if kind not in (0, stat.S_IFREG):
            raise Fault(
                translate(
                    "faults", "{name} in {where} is a link or folder; ask for the original file."
                ).format(name=name, where=where)
            )
        if info.file_size > _MOST_BYTES[name]:
            raise Fault(
                translate(
                    "faults",
                    "{name} in {where} unpacks to {file_size:,} bytes, at most "
                    "{most_bytes:,} are read; check that this is the right file.",
                ).format(
                    name=name, where=where, file_size=info.file_size, most_bytes=_MOST_BYTES[name]
                )
            )
        found[name] = info
    for name in (DOCUMENT, READINGS, LANDMARKS):
        if name not in found:
            raise Fault(
                translate(
                    "faults", "{where} has no {name} inside; check that this is the right file."
                ).format(where=where, name=name)
            )
    return found


def _content(archive: zipfile.ZipFile, info: zipfile.ZipInfo, where: str) -> bytes:
    most = _MOST_BYTES[info.filename]
    with archive.open(info) as member:
        # Reading one byte more than declared reaches the end, where the checksum is compared.
        content = member.read(min(most, info.file_size) + 1)
    if len(content) != info.file_size:
        raise Fault(
            translate(
                "faults",
                "{filename} in {where} is not as long as it says; ask for it to be sent again.",
            ).format(filename=info.filename, where=where)
        )
    return content


def _damaged(where: str) -> Fault:
    told = translate("faults", "{where} is damaged or cut short; ask for it to be sent again.")
    return Fault(told.format(where=where))
