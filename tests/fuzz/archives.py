"""Files that hold others, changed at random: zip, age, SQLite, video."""

from __future__ import annotations

import contextlib
import io
import lzma
import re
import sqlite3
import struct
import warnings
import zipfile
import zlib
from random import Random

from tests.fuzz.mutations import (
    MOST_BYTES,
    ODD_TEXTS,
    ODD_TOKENS,
    Mutate,
    changed_bytes,
    changed_json,
    changed_table,
)

_NAMES = ("../session.json", "/etc/passwd", "session.json\x00", "Session.json", "video.mp4", "a/")

_UNREADABLE = (zipfile.BadZipFile, zlib.error, lzma.LZMAError, struct.error, EOFError, OSError,
               ValueError, RuntimeError)  # fmt: skip


def changed_zip(data: bytes, chance: Random) -> bytes:
    """Change what is in a session file, its list of parts, or its headers."""
    if not chance.randrange(5):
        return changed_bytes(data, chance)
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            parts = [(info.filename, archive.read(info)) for info in archive.infolist()]
    except _UNREADABLE:
        return changed_bytes(data, chance)
    method = zipfile.ZIP_DEFLATED
    for _ in range(chance.choice((1, 1, 2))):
        at = chance.randrange(len(parts)) if parts else 0
        match chance.randrange(10):
            case 0 if parts:
                del parts[at]
            case 1 if parts:
                parts.append(parts[at])
            case 2 if parts:
                parts[at] = (chance.choice(_NAMES), parts[at][1])
            case 3:
                stored = (zipfile.ZIP_STORED,) * 6
                method = chance.choice((*stored, zipfile.ZIP_BZIP2, zipfile.ZIP_LZMA))
            case 4 if parts:
                parts[at] = (parts[at][0], bytes(chance.choice((0, *[10_001] * 6, 5_000_000))))
            case _ if parts:
                name, content = parts[at]
                change: Mutate = changed_json if name.endswith(".json") else changed_table
                parts[at] = (name, change(content, chance))
    out = io.BytesIO()
    with warnings.catch_warnings(), zipfile.ZipFile(out, "w", method, compresslevel=1) as archive:
        warnings.simplefilter("ignore")
        for name, content in parts:
            archive.writestr(name, content)
    packed = out.getvalue()
    return _changed_header(packed, chance) if not chance.randrange(6) else packed


def _changed_header(data: bytes, chance: Random) -> bytes:
    """Write an odd number into a local header, the directory or the end record."""
    starts = [each.start() for each in re.finditer(rb"PK[\0-\7]", data[:-30])]
    found = bytearray(data)
    if starts:
        at = chance.choice(starts) + chance.randrange(4, 30)
        value = chance.choice((0, 1, 8, 99, 0x7FFF, 0xFFFF, len(data), 0x7FFFFFFF, 0xFFFFFFFF))
        struct.pack_into("<H" if chance.randrange(2) else "<L", found, at, value & 0xFFFF)
    return bytes(found)


def changed_store(data: bytes, chance: Random) -> bytes:
    """Change cells of a store under its own database, or its pages."""
    if not chance.randrange(3):
        return changed_bytes(data, chance)
    with contextlib.closing(sqlite3.connect(":memory:")) as connection:
        try:
            connection.deserialize(data)
            # A database in memory knows no write-ahead log.
            connection.execute("PRAGMA writable_schema = ON")
            names = connection.execute("SELECT name FROM sqlite_master WHERE type = 'table'")
            tables = [name for (name,) in names.fetchall()]
            for _ in range(chance.choice((1, 1, 2))):
                _change_cell(connection, chance.choice(tables), chance)
            connection.commit()
            return connection.serialize()
        except (sqlite3.Error, IndexError, MemoryError):
            return changed_bytes(data, chance)


def _change_cell(connection: sqlite3.Connection, table: str, chance: Random) -> None:
    columns = [row[1] for row in connection.execute(f"PRAGMA table_info('{table}')")]
    column = chance.choice(columns)
    row = connection.execute(
        f"SELECT rowid, \"{column}\" FROM '{table}' ORDER BY random() LIMIT 1"
    ).fetchone()
    match chance.randrange(12):
        case 0:
            connection.execute(f"DROP TABLE '{table}'")
        case 1:
            connection.execute(f"DELETE FROM '{table}'")
        case 2:
            connection.execute(f'ALTER TABLE "{table}" RENAME COLUMN "{column}" TO "{column}_x"')
        case _ if row is not None:
            value: object = chance.choice((None, -1, 2**62, 1e308, b"\xff\x00", *ODD_TEXTS))
            if isinstance(value, str):
                value = value.replace("\ud800", "?")
            if isinstance(row[1], str) and row[1].startswith("{") and chance.randrange(4):
                value = changed_json(row[1].encode(), chance).decode("utf-8", "replace")
            connection.execute("PRAGMA ignore_check_constraints = ON")
            connection.execute(
                f"UPDATE '{table}' SET \"{column}\" = ? WHERE rowid = ?", (value, row[0])
            )


def changed_video(data: bytes, chance: Random) -> bytes:
    """Change the size or a number of one of a film's boxes (ISO 14496-12), or bytes anywhere."""
    names = (b"moov", b"trak", b"stsz", b"stts", b"stsc", b"stco", b"tkhd", b"mdhd", b"avcC",
             b"mp4v", b"stsd", b"mvhd", b"elst", b"mdat", b"ftyp", b"esds")  # fmt: skip
    found = bytearray(data)
    places = [at for name in names if (at := data.find(name)) >= 4]
    if not places or not chance.randrange(4):
        return changed_bytes(data, chance)
    for _ in range(chance.choice((1, 1, 2, 3))):
        at = chance.choice(places) + 4 * chance.randrange(-1, 12)
        value = chance.choice((0, 1, 8, 0x7FFF, 0xFFFF, 0x7FFFFFFF, 0xFFFFFFFF, int(ODD_TOKENS[5])))
        found[at : at + 4] = value.to_bytes(4, "big")
    return bytes(found[:MOST_BYTES])
