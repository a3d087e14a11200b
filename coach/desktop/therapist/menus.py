"""Everything the therapist's window can do, in menus: each entry with its key."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from PyQt6.QtGui import QAction, QKeySequence
from PyQt6.QtWidgets import QMenuBar

MENUS: Mapping[str, Sequence[tuple[str, str, str]]] = {
    "Fil&e": (
        ("import-files", "&Import files\N{HORIZONTAL ELLIPSIS}", "Ctrl+O"),
        ("import-folder", "Import a &folder\N{HORIZONTAL ELLIPSIS}", "Ctrl+Shift+O"),
        ("stop", "&Stop importing", "Esc"),
        ("unlock", "Unloc&k the practice's key\N{HORIZONTAL ELLIPSIS}", "Ctrl+K"),
        ("undo", "&Undo", "Ctrl+Z"),
        ("doubts", "&Doubtful sessions\N{HORIZONTAL ELLIPSIS}", "Ctrl+D"),
        ("quit", "&Quit", "Ctrl+Q"),
    ),
    "Patien&t": (
        ("new", "&New patient\N{HORIZONTAL ELLIPSIS}", "Ctrl+N"),
        ("name", "&Change code or name\N{HORIZONTAL ELLIPSIS}", "F2"),
        ("course", "C&ourse", "Ctrl+1"),
        ("records", "R&ecords", "Ctrl+2"),
        ("plan", "P&lan\N{HORIZONTAL ELLIPSIS}", "Ctrl+L"),
        ("replay", "&Replay\N{HORIZONTAL ELLIPSIS}", "Ctrl+R"),
        ("erase", "Er&ase the patient\N{HORIZONTAL ELLIPSIS}", ""),
    ),
    "E&xport": (
        ("report", "&Report as PDF\N{HORIZONTAL ELLIPSIS}", "Ctrl+P"),
        ("note", "&Note, S-O-A-P\N{HORIZONTAL ELLIPSIS}", "Ctrl+Shift+N"),
        ("copy", "&Copy the note", "Ctrl+Shift+C"),
        ("csv", "&Table of holds (CSV)\N{HORIZONTAL ELLIPSIS}", "Ctrl+T"),
        ("measures", "Table of own &measures (CSV)\N{HORIZONTAL ELLIPSIS}", "Ctrl+M"),
        ("fhir", "&FHIR bundle\N{HORIZONTAL ELLIPSIS}", "Ctrl+B"),
    ),
}
"""Name, text and key of each entry."""


def fill(bar: QMenuBar, acts: Mapping[str, Callable[[], object]]) -> dict[str, QAction]:
    """Make the menus of ``MENUS``; gives their entries by name."""
    entries: dict[str, QAction] = {}
    for title, rows in MENUS.items():
        menu = bar.addMenu(title)
        assert menu is not None
        for name, text, keys in rows:
            entry = QAction(text, bar)
            entry.setShortcut(QKeySequence(keys))
            entry.triggered.connect(acts[name])
            menu.addAction(entry)
            entries[name] = entry
    return entries
