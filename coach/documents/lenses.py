"""The settings file of known lenses, to and from bytes."""

from __future__ import annotations

import msgspec

from coach.documents.refusal import convert
from coach.documents.strict_json import parse_json
from coach.documents.versions import upgraded
from coach.domain.lens import LensList

MAX_LENSES_BYTES = 100_000


def read_lenses(data: bytes, where: str) -> LensList:
    """Read the list; ``where`` names the file in a ``Fault``."""
    raw = parse_json(data, where, MAX_LENSES_BYTES)
    raw = upgraded(raw, name="shoulder-lenses", newest=1, upgrades={}, where=where)
    return convert(raw, LensList, where)


def write_lenses(lenses: LensList) -> bytes:
    """Give the list as indented UTF-8 JSON."""
    return msgspec.json.format(msgspec.json.encode(lenses), indent=2) + b"\n"
