"""How somebody wants their windows to look."""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated

import msgspec

TEXT_SIZES = (100, 125, 150, 175, 200)
"""Steps of the text's size in per cent; WCAG 2.2's criterion 1.4.4 asks for up to 200."""


class Appearance(StrEnum):
    """Which ground the windows have."""

    SYSTEM = "system"
    LIGHT = "light"
    DARK = "dark"


class Settings(msgspec.Struct, frozen=True, kw_only=True):
    """``still``: nothing moves that need not. None is as the system has it."""

    appearance: Appearance = Appearance.SYSTEM
    text_percent: Annotated[int, msgspec.Meta(ge=100, le=200)] | None = None
    still: bool | None = None


def next_size(percent: int, step: int) -> int:
    """Give the size ``step`` steps larger than ``percent``, no further than there are any."""
    nearest = min(range(len(TEXT_SIZES)), key=lambda at: abs(TEXT_SIZES[at] - percent))
    return TEXT_SIZES[min(max(nearest + step, 0), len(TEXT_SIZES) - 1)]
