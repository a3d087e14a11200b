"""Asking for passphrases at the terminal: never an argument, never shown."""

from __future__ import annotations

from getpass import getpass

from coach.domain.fault import Fault


def asked(what: str) -> str:
    """Ask for the passphrase of something."""
    try:
        return getpass(f"Passphrase of {what}: ")
    except EOFError:
        raise Fault(
            f"The passphrase of {what} is needed; run the command where you can type it."
        ) from None


def chosen(what: str) -> str:
    """Ask for a new passphrase, twice."""
    first = asked(f"{what} (15 characters or more, several words are best)")
    if first != asked(f"{what}, once more"):
        raise Fault("The two passphrases differ; run the command again.")
    return first
