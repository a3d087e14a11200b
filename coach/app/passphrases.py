"""Asking for passphrases at the terminal: never an argument, never shown."""

from __future__ import annotations

import sys
from getpass import getpass

from coach.domain.fault import Fault
from coach.texts import translate


def asked(what: str) -> str:
    """Ask for the passphrase of something."""
    try:
        if sys.stdin is None:
            raise EOFError
        return getpass(translate("key", "Passphrase of {what}:").format(what=what) + " ")
    except EOFError:
        raise Fault(
            translate(
                "faults",
                "The passphrase of {what} is needed; run the command where you can type it.",
            ).format(what=what)
        ) from None


def chosen(what: str) -> str:
    """Ask for a new passphrase, twice."""
    hint = translate("key", "{what} (15 characters or more, several words are best)")
    first = asked(hint.format(what=what))
    if first != asked(translate("key", "{what}, once more").format(what=what)):
        raise Fault(
            translate(
                "faults",
                "The two passphrases differ; run the command again.",
            )
        )
    return first
