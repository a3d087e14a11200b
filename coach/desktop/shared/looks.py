"""How the windows look now: light or dark, how large the type, moving or still."""

from __future__ import annotations

from dataclasses import dataclass

from coach.desktop.shared.palettes import LIGHT, Palette


@dataclass(frozen=True, slots=True)
class Looks:
    """``text`` enlarges all type, 1 to 2; ``still`` is for who would rather see nothing move."""

    palette: Palette = LIGHT
    text: float = 1.0
    still: bool = False


_worn = [Looks()]


def looks() -> Looks:
    """Give the looks that every window has now."""
    return _worn[0]


def colours() -> Palette:
    """Give the colours that every window has now; paper stays light whatever they are."""
    return _worn[0].palette


def colour(name: str) -> str:
    """Give one of them by its name in ``Palette``."""
    return str(getattr(_worn[0].palette, name))


def wear(worn: Looks) -> None:
    """Let every window look like this from its next painting on."""
    _worn[0] = worn
