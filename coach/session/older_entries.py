"""Journal entries of older versions of the program, brought up to date."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from coach.documents.plan import upgraded_plan
from coach.documents.readings import upgraded_rows
from coach.documents.session import upgraded_repetition


def from_2(raw: Any) -> Any:
    """Turn a decoded entry of version 2 into one of version 3; only the plan changed."""
    match raw:
        case {"type": "opened", "plan": dict(plan), **rest} if plan.get("version") == 1:
            return {"type": "opened", **rest, "version": 3, "plan": upgraded_plan(plan)}
        case _:
            return raw


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


UPGRADES: dict[int, Callable[[Any], Any]] = {1: from_1, 2: from_2}


def brought_up(raw: Any, version: int) -> Any:
    """Turn a decoded entry of a journal of ``version`` into one of the newest."""
    for step in range(version, max(UPGRADES) + 1):
        raw = UPGRADES[step](raw)
    return raw
