"""Everything the therapist's window can do, in menus: each entry with its key."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from PyQt6.QtGui import QAction, QKeySequence
from PyQt6.QtWidgets import QMenuBar

from coach.texts import translate


def menus() -> Mapping[str, Sequence[tuple[str, str, str]]]:
    """Give the menus by their titles: name, text and key of each entry."""
    return {
        translate("therapist", "Fil&e"): (
            (
                "import-files",
                translate("therapist", "&Import files\N{HORIZONTAL ELLIPSIS}"),
                "Ctrl+O",
            ),
            (
                "import-folder",
                translate("therapist", "Import a &folder\N{HORIZONTAL ELLIPSIS}"),
                "Ctrl+Shift+O",
            ),
            ("stop", translate("therapist", "&Stop importing"), "Esc"),
            (
                "unlock",
                translate("therapist", "Unloc&k the practice's key\N{HORIZONTAL ELLIPSIS}"),
                "Ctrl+K",
            ),
            ("undo", translate("therapist", "&Undo"), "Ctrl+Z"),
            (
                "doubts",
                translate("therapist", "&Doubtful sessions\N{HORIZONTAL ELLIPSIS}"),
                "Ctrl+D",
            ),
            ("quit", translate("therapist", "&Quit"), "Ctrl+Q"),
        ),
        translate("therapist", "Patien&t"): (
            ("new", translate("therapist", "&New patient\N{HORIZONTAL ELLIPSIS}"), "Ctrl+N"),
            ("name", translate("therapist", "&Change code or name\N{HORIZONTAL ELLIPSIS}"), "F2"),
            ("people", translate("therapist", "L&ist of patients"), "Ctrl+3"),
            ("course", translate("therapist", "C&ourse"), "Ctrl+1"),
            ("records", translate("therapist", "R&ecords"), "Ctrl+2"),
            ("plan", translate("therapist", "P&lan\N{HORIZONTAL ELLIPSIS}"), "Ctrl+L"),
            ("replay", translate("therapist", "&Replay\N{HORIZONTAL ELLIPSIS}"), "Ctrl+R"),
            ("erase", translate("therapist", "Er&ase the patient\N{HORIZONTAL ELLIPSIS}"), ""),
        ),
        translate("therapist", "E&xport"): (
            ("report", translate("therapist", "&Report as PDF\N{HORIZONTAL ELLIPSIS}"), "Ctrl+P"),
            (
                "note",
                translate("therapist", "&Note, S-O-A-P\N{HORIZONTAL ELLIPSIS}"),
                "Ctrl+Shift+N",
            ),
            ("copy", translate("therapist", "&Copy the note"), "Ctrl+Shift+C"),
            (
                "csv",
                translate("therapist", "&Table of holds (CSV)\N{HORIZONTAL ELLIPSIS}"),
                "Ctrl+T",
            ),
            (
                "measures",
                translate("therapist", "Table of own &measures (CSV)\N{HORIZONTAL ELLIPSIS}"),
                "Ctrl+M",
            ),
            ("fhir", translate("therapist", "&FHIR bundle\N{HORIZONTAL ELLIPSIS}"), "Ctrl+B"),
        ),
        translate("therapist", "Vie&w"): (
            ("larger", translate("therapist", "&Larger text"), "Ctrl++"),
            ("smaller", translate("therapist", "&Smaller text"), "Ctrl+-"),
            ("usual", translate("therapist", "&Usual text"), "Ctrl+0"),
            ("turn", translate("therapist", "Light or &dark"), "F9"),
            ("as-system", translate("therapist", "Light or dark &as the system"), ""),
        ),
    }


def fill(bar: QMenuBar, acts: Mapping[str, Callable[[], object]]) -> dict[str, QAction]:
    """Make the menus; gives their entries by name."""
    entries: dict[str, QAction] = {}
    for title, rows in menus().items():
        menu = bar.addMenu(title)
        assert menu is not None
        for name, text, keys in rows:
            entry = QAction(text, bar)
            entry.setShortcut(QKeySequence(keys))
            entry.triggered.connect(acts[name])
            menu.addAction(entry)
            entries[name] = entry
    return entries
