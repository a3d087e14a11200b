"""Numbers as they are written down: no more digits than they are worth."""

from __future__ import annotations

from typing import TypeVar

import msgspec

T = TypeVar("T", bound=msgspec.Struct)

_DIGITS = {"_deg": 2, "_ratio": 4, "_s": 3}


def rounded(struct: T) -> T:
    """Round the fields whose names end in a unit: degrees, ratios, seconds."""
    found = {name: getattr(struct, name) for name in struct.__struct_fields__}
    changes = {
        name: round(value, digits)
        for name, value in found.items()
        for end, digits in _DIGITS.items()
        if name.endswith(end) and isinstance(value, float)
    }
    return msgspec.structs.replace(struct, **changes)
