"""Asking for a passphrase before the therapist's window opens."""

from __future__ import annotations

from PyQt6.QtWidgets import QInputDialog, QLineEdit


def ask_passphrase(question: str) -> str | None:
    """Ask in a window of its own; None where the question was put aside."""
    text, given = QInputDialog.getText(
        None, "Shoulder review", question, QLineEdit.EchoMode.Password
    )
    return text if given else None
