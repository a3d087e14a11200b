"""How the windows look: as the command line says for once, else as kept, else as the system."""

from __future__ import annotations

from dataclasses import dataclass
from functools import partial

from msgspec.structs import replace

from coach.desktop.shared.dresser import Keep
from coach.domain.settings import Appearance, Settings
from coach.storage.folders import data_folder
from coach.storage.settings_file import SETTINGS_FILE, keep_settings, read_settings


@dataclass(frozen=True, slots=True)
class Wishes:
    """What the command line asks for; None where it asks for nothing."""

    appearance: Appearance | None = None
    text_percent: int | None = None
    still: bool = False


NO_WISHES = Wishes()


def chosen_looks(wishes: Wishes) -> tuple[Settings, Keep]:
    """Give the settings to begin with, and what keeps those that are chosen in the window."""
    place = data_folder() / SETTINGS_FILE
    settings = read_settings(place)
    if wishes.appearance is not None:
        settings = replace(settings, appearance=wishes.appearance)
    if wishes.text_percent is not None:
        settings = replace(settings, text_percent=wishes.text_percent)
    if wishes.still:
        settings = replace(settings, still=True)
    return settings, partial(keep_settings, place)
