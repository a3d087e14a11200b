"""Numbers with their nouns in the chosen language: one sentence for one, another for more."""

from __future__ import annotations

from coach.texts import translate


def sessions_counted(count: int) -> str:
    """Write a number of sessions."""
    if count == 1:
        return translate("review", "1 session")
    return translate("review", "{count} sessions").format(count=count)


def sittings_counted(count: int) -> str:
    """Write a number of sittings."""
    if count == 1:
        return translate("review", "1 sitting")
    return translate("review", "{count} sittings").format(count=count)


def holds_counted(count: int) -> str:
    """Write a number of holds."""
    if count == 1:
        return translate("review", "1 hold")
    return translate("review", "{count} holds").format(count=count)
