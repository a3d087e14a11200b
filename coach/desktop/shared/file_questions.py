"""Asks for files, at first in the documents folder and then where that window last had one.

A program started by a double click stands in a folder that means nothing to anybody. What was
last used is known to the window alone and goes with it.
"""

from __future__ import annotations

from pathlib import Path

from PyQt6.QtCore import QStandardPaths
from PyQt6.QtWidgets import QFileDialog, QWidget

_USED = "folder_used"


def ask_file(over: QWidget | None, title: str, kinds: str) -> Path | None:
    """Ask for a file that is there; None where none is chosen."""
    name, _ = QFileDialog.getOpenFileName(over, title, str(start_folder(over)), kinds)
    return _used(over, Path(name)) if name else None


def ask_files(over: QWidget | None, title: str, kinds: str) -> list[Path]:
    """Ask for files that are there, all of one folder."""
    names, _ = QFileDialog.getOpenFileNames(over, title, str(start_folder(over)), kinds)
    return [_used(over, Path(name)) for name in names]


def ask_new_file(over: QWidget | None, title: str, proposed: str, kinds: str) -> Path | None:
    """Ask where to write a file that is to be named as proposed."""
    place = str(start_folder(over) / proposed)
    name, _ = QFileDialog.getSaveFileName(over, title, place, kinds)
    return _used(over, Path(name)) if name else None


def ask_folder(over: QWidget | None, title: str) -> Path | None:
    """Ask for a folder."""
    name = QFileDialog.getExistingDirectory(over, title, str(start_folder(over)))
    if not name:
        return None
    _keep(over, Path(name))
    return Path(name)


def start_folder(over: QWidget | None) -> Path:
    """Give the folder that a window's next question begins in; one that is gone is not."""
    documents = QStandardPaths.StandardLocation.DocumentsLocation
    window = over and over.window()
    used = window.property(_USED) if window else None
    for known in (used, QStandardPaths.writableLocation(documents)):
        if known and Path(known).is_dir():
            return Path(known)
    return Path.home()


def _used(over: QWidget | None, file: Path) -> Path:
    _keep(over, file.parent)
    return file


def _keep(over: QWidget | None, folder: Path) -> None:
    if window := over and over.window():
        window.setProperty(_USED, str(folder.absolute()))
