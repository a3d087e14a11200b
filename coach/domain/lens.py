"""The printed board that shows what a camera's lens is, and what was learned of lenses."""

from __future__ import annotations

from typing import Annotated, Literal

import msgspec
from msgspec import Meta

COLUMNS, ROWS = 7, 5
"""Squares of the board. An odd number of rows looks the same in every release of OpenCV."""
SQUARE_MM = 34.0
MARKER_MM = 25.0
"""In every white square; the largest squares that fit A4 and Letter are seen from farthest away."""
FIRST_MARKER = 31
"""Of DICT_4X4_50, counted up: none of the board's markers is one of the chest card's."""
BOARD_MM = (COLUMNS * SQUARE_MM, ROWS * SQUARE_MM)
CELLS = 6
"""Cells along a marker's side, the black border of one cell included."""

Pixels = Annotated[int, Meta(ge=1, le=20_000)]
Angle = Annotated[float, Meta(ge=10, le=170)]


class Lens(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """What was found of one camera at one size of its pictures.

    ``field_of_view_deg`` is that of the longer side, ``error_deg`` the half width of its 95 %
    interval, ``miss_px`` the root mean square distance of the board's corners from where the lens
    puts them. ``camera`` is its number, ``name`` what the system calls it, where it says.
    """

    camera: Annotated[int, Meta(ge=0, le=1_000)]
    name: Annotated[str, Meta(max_length=200)] | None = None
    width_px: Pixels
    height_px: Pixels
    field_of_view_deg: Angle
    error_deg: Annotated[float, Meta(ge=0, le=90)]
    miss_px: Annotated[float, Meta(ge=0, le=100)]
    views: Annotated[int, Meta(ge=1, le=10_000)]


class LensList(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """The settings file of lenses, version 1."""

    format: Literal["shoulder-lenses"] = "shoulder-lenses"
    version: Literal[1] = 1
    lenses: Annotated[tuple[Lens, ...], Meta(max_length=100)] = ()

    def of(self, camera: int, name: str | None, size_px: tuple[int, int]) -> Lens | None:
        """Give what is known of a camera at a picture size, None if nothing.

        Where both names are known they decide: numbers change with the order of plugs. Pictures of
        one shape are taken to show the same part of the world; the very size goes first.
        """
        same = [
            lens
            for lens in self.lenses
            if (lens.camera == camera if None in (lens.name, name) else lens.name == name)
            and _same_shape((lens.width_px, lens.height_px), size_px)
        ]
        exact = [lens for lens in same if (lens.width_px, lens.height_px) == size_px]
        return next(iter(exact or same), None)

    def with_lens(self, lens: Lens) -> LensList:
        """Give the list with ``lens`` first and what it replaces left out."""
        size_px = (lens.width_px, lens.height_px)
        kept = self.lenses
        while (old := LensList(lenses=kept).of(lens.camera, lens.name, size_px)) is not None:
            kept = tuple(each for each in kept if each is not old)
        return LensList(lenses=(lens, *kept)[:100])


def _same_shape(one: tuple[int, int], other: tuple[int, int]) -> bool:
    # A hundredth lets 854 by 480 count as 16:9 and keeps 4:3 apart.
    return abs(one[0] * other[1] / (one[1] * other[0]) - 1) < 0.01
