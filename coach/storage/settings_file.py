"""The settings of the windows, kept for the next start; a broken file counts as none."""

from __future__ import annotations

from pathlib import Path
from typing import Final

import msgspec

from coach.domain.settings import Settings
from coach.storage.atomic import make_folder, write_bytes

SETTINGS_FILE: Final = "settings.json"
_MOST_BYTES = 10_000


def read_settings(path: Path) -> Settings:
    """Read what was kept; what cannot be read is as if it had never been chosen."""
    try:
        with path.open("rb") as file:
            return msgspec.json.decode(file.read(_MOST_BYTES), type=Settings)
    except (OSError, msgspec.MsgspecError):
        return Settings()


def keep_settings(path: Path, settings: Settings) -> None:
    """Write them; a disk that refuses raises ``Fault``."""
    make_folder(path.parent)
    write_bytes(path, msgspec.json.format(msgspec.json.encode(settings)))
