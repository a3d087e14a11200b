"""A journal's lines, to bytes and back.

A line is ``<CRC-32 of the JSON, 8 hex digits> <length of the JSON in bytes> <JSON>`` and a line
feed.
"""

from __future__ import annotations

import re
import zlib
from dataclasses import dataclass

import msgspec

from coach.domain.fault import Fault
from coach.session.entries import Entry
from coach.session.older_entries import brought_up
from coach.texts import translate

_HEAD = re.compile(rb"([0-9a-f]{8}) ([0-9]{1,9}) ")
_VERSION = 3
_NO_MEANING = (msgspec.MsgspecError, UnicodeDecodeError, RecursionError)
_decoder: msgspec.json.Decoder[Entry] = msgspec.json.Decoder(Entry)
_encoder = msgspec.json.Encoder()


@dataclass(frozen=True, slots=True)
class JournalContent:
    """What could be read: ``dropped_bytes`` stood from the first damaged line on, and
    ``skipped_lines`` were whole but made no sense."""

    entries: tuple[Entry, ...]
    dropped_bytes: int
    skipped_lines: int


def journal_line(entry: Entry) -> bytes:
    """Give an entry as a line of a journal."""
    text = _encoder.encode(entry)
    return b"%08x %d %s\n" % (zlib.crc32(text), len(text), text)


def read_lines(data: bytes, where: str) -> JournalContent:
    """Read a journal up to its first damaged line; ``where`` names it in a ``Fault``."""
    entries: list[Entry] = []
    skipped = position = 0
    version: int | None = None
    while (found := _line_at(data, position)) is not None:
        text, end = found
        if position == 0:
            version = _version(text, where)
        position = end
        try:
            entries.append(_decoded(text, version))
        except _NO_MEANING:
            skipped += 1
    return JournalContent(tuple(entries), len(data) - position, skipped)


def _line_at(data: bytes, position: int) -> tuple[bytes, int] | None:
    head = _HEAD.match(data, position)
    if head is None:
        return None
    start, length = head.end(), int(head.group(2))
    text = data[start : start + length]
    end = start + length
    if data[end : end + 1] != b"\n" or zlib.crc32(text) != int(head.group(1), 16):
        return None
    return text, end + 1


def _decoded(text: bytes, version: int | None) -> Entry:
    if version is None or version >= _VERSION or version < 1:
        return _decoder.decode(text)
    entry: Entry = msgspec.convert(brought_up(msgspec.json.decode(text), version), Entry)
    return entry


def _version(text: bytes, where: str) -> int | None:
    class Head(msgspec.Struct):
        format: str = ""
        version: int = 0

    try:
        head = msgspec.json.decode(text, type=Head)
    except _NO_MEANING:
        return None
    if head.format == "shoulder-journal" and head.version > _VERSION:
        raise Fault(
            translate(
                "faults",
                "{where} was made by a newer version of this program; update the "
                "program to recover that session.",
            ).format(where=where)
        )
    return head.version
