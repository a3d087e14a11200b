"""Where things live on this machine."""

from __future__ import annotations

import os
import sys
from pathlib import Path

from coach.domain.fault import Fault
from coach.texts import translate

OVERRIDE = "STIFF_SHOULDER_COACH_FOLDER"
"""Environment variable naming one folder for everything, for tests and portable use."""

_NAME = "stiff-shoulder-coach"


def data_folder() -> Path:
    """Give the folder of what the program keeps for itself: journals, the therapist's store.

    XDG_DATA_HOME (freedesktop.org, XDG Base Directory Specification) on Linux, the system's
    usual places on Windows and macOS.
    """
    if override := os.environ.get(OVERRIDE):
        return Path(override)
    if sys.platform == "win32":
        return Path(os.environ.get("LOCALAPPDATA") or Path.home() / "AppData" / "Local") / _NAME
    if sys.platform == "darwin":
        return Path.home() / "Library" / "Application Support" / _NAME
    named = os.environ.get("XDG_DATA_HOME", "")
    # The specification has relative paths ignored.
    base = Path(named) if named.startswith("/") else Path.home() / ".local" / "share"
    return base / _NAME


def journals_folder() -> Path:
    """Give the folder of sessions that are being recorded."""
    return data_folder() / "journals"


def sessions_folder() -> Path:
    """Give the folder of session files: one that a patient finds when a file is to be sent."""
    if override := os.environ.get(OVERRIDE):
        return Path(override) / "sessions"
    return Path.home() / "Shoulder sessions"


def own_sessions_folder() -> Path:
    """Give the folder of the patient's own copies of sessions that were sealed for the practice."""
    return data_folder() / "own-sessions"


def store_path() -> Path:
    """Give the place of the therapist's store."""
    return data_folder() / "review.sqlite"


def check_is_no_store(out: Path, store: Path | str) -> None:
    """Raise Fault where a file about to be written is the store itself, by whichever name."""
    place = Path(store)
    if out.exists() and place.exists() and out.samefile(place):
        raise Fault(
            translate(
                "faults",
                "'{out}' is the store itself; choose another name for the export.",
            ).format(out=out)
        )
