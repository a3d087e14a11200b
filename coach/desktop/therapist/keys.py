"""Keys by the names that stand on a person's keyboard."""

from __future__ import annotations

from PyQt6.QtGui import QKeySequence


def key_name(keys: str) -> str:
    """Give what to call ``Ctrl+O`` in the chosen language and system."""
    read = QKeySequence.fromString(keys, QKeySequence.SequenceFormat.PortableText)
    return read.toString(QKeySequence.SequenceFormat.NativeText)
