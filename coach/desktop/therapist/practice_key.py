"""Unlocking the practice's key, when the window opens and later."""

from __future__ import annotations

from functools import partial

from PyQt6.QtWidgets import QWidget

from coach.desktop.therapist.passphrase_dialog import unlocked
from coach.storage.keys import check_present, practice_key_path, unlock
from coach.storage.sealed import PracticeIdentity


def ask_practice_key(question: str, parent: QWidget | None = None) -> PracticeIdentity | None:
    """Ask for the passphrase until it opens the key; None where the question was put aside.

    Raises Fault where there is no key on this machine.
    """
    path = practice_key_path()
    check_present(path)
    return unlocked(question, partial(unlock, path), parent)
