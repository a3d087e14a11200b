"""Journal entries of older versions of the program, brought up to date."""

from __future__ import annotations

from typing import Any

from coach.documents.readings import upgraded_rows
from coach.documents.session import upgraded_repetition


def from_1(raw: Any) -> Any:
    """Turn a decoded entry of version 1 into one of version 2; what is no entry is left alone."""
    match raw:
        case {"type": "opened", **rest}:
            return {"type": "opened", **rest, "version": 2}
        case {"type": "repetition", "repetition": dict(repetition), **rest}:
            return {"type": "repetition", **rest, "repetition": upgraded_repetition(repetition)}
        case {"type": "readings", "rows": str(rows), **rest}:
            return {"type": "readings", **rest, "rows": upgraded_rows(rows)}
        case _:
            return raw
