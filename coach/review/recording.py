"""What the review asks of the two tables of a session file."""

from __future__ import annotations

from typing import Protocol

import numpy as np
from numpy.typing import NDArray

from coach.domain.pose import Landmark

Floats = NDArray[np.float64]


class Readings(Protocol):
    """The table of readings, as ``coach.documents.tables.ReadingTable`` has it."""

    @property
    def time_s(self) -> Floats:
        """(n,) seconds since the session's start."""

    @property
    def planned_index(self) -> NDArray[np.int16]:
        """(n,) in the plan, from 0."""

    @property
    def value(self) -> Floats:
        """(n,) in the movement's unit, NaN where there is a doubt."""

    @property
    def error(self) -> Floats:
        """(n,) half widths of 95 % intervals."""

    @property
    def doubt(self) -> NDArray[np.int16]:
        """(n,) positions in ``Doubt`` or -1."""

    @property
    def form(self) -> Floats:
        """(n, 10) a column for each field of ``Form``."""


class Points(Protocol):
    """The table of landmarks, as ``coach.documents.tables.LandmarkTable`` has it."""

    @property
    def landmarks(self) -> tuple[Landmark, ...]:
        """The k landmarks."""

    @property
    def time_s(self) -> Floats:
        """(n,) seconds since the session's start."""

    @property
    def size_px(self) -> NDArray[np.int64]:
        """(n, 2) width and height of the picture."""

    @property
    def image_px(self) -> Floats:
        """(n, k, 2) pixels, x right, y down, not mirrored."""

    @property
    def visibility(self) -> Floats:
        """(n, k) 0-1."""
