"""Passphrases as the therapist's key and store take them."""

from __future__ import annotations

import unicodedata

from coach.domain.fault import Fault
from coach.texts import translate

FEWEST_CHARACTERS = 15
"""NIST SP 800-63B-4, recommended for what a password alone protects."""
_MOST_CHARACTERS = 1_000


def new_passphrase(text: str) -> str:
    """Give a passphrase that is being chosen as it is used; too short a one is refused."""
    used = normal_passphrase(text)
    if len(used) < FEWEST_CHARACTERS:
        raise Fault(
            translate(
                "faults",
                "The passphrase has {used} characters and needs {fewest_characters}: "
                "string four or five words together that do not belong together.",
            ).format(used=len(used), fewest_characters=FEWEST_CHARACTERS)
        )
    return used


def normal_passphrase(text: str) -> str:
    """Give a passphrase as it is used, the same from every keyboard.

    Normalized to NFKC, as NIST SP 800-63B has it: one system types an accent as a character of its
    own, another does not.
    """
    used = unicodedata.normalize("NFKC", text)
    if len(used) > _MOST_CHARACTERS or any(unicodedata.category(c) == "Cc" for c in used):
        raise Fault(
            translate(
                "faults",
                "The passphrase has a control character or more than "
                "{most_characters:,} characters: type it anew, without line breaks.",
            ).format(most_characters=_MOST_CHARACTERS)
        )
    return used
