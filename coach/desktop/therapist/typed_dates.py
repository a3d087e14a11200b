"""Days as they are typed: as the language writes them, or by ISO 8601."""

from __future__ import annotations

import re
from datetime import date

from coach.texts import translate

_DOTTED = re.compile(r"(\d{1,2})\.\s*(\d{1,2})\.\s*(\d{4})")


def typed(value: date) -> str:
    """Write a day as it would be typed."""
    written = translate("dates", "{year:04}-{month:02}-{day:02}")
    return written.format(year=value.year, month=value.month, day=value.day)


def read_typed(text: str) -> date:
    """Read 2026-03-31 and 31.3.2026; a ``ValueError`` where it is neither."""
    if found := _DOTTED.fullmatch(text):
        day, month, year = map(int, found.groups())
        return date(year, month, day)
    return date.fromisoformat(text)
