"""The two tables of a session file, as arrays."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from coach.documents.card_columns import card_of
from coach.domain.pose import Landmark, Pose, PoseModel
from coach.domain.progress import Phase
from coach.domain.reading import Doubt, Form

Floats = NDArray[np.float64]
Codes = NDArray[np.int16]

PHASES = tuple(Phase)
DOUBTS = tuple(Doubt)
FORM_COLUMNS = Form.__struct_fields__

STORED_LANDMARKS = (
    Landmark.NOSE,
    Landmark.LEFT_EAR,
    Landmark.RIGHT_EAR,
    Landmark.LEFT_SHOULDER,
    Landmark.RIGHT_SHOULDER,
    Landmark.LEFT_ELBOW,
    Landmark.RIGHT_ELBOW,
    Landmark.LEFT_WRIST,
    Landmark.RIGHT_WRIST,
    Landmark.LEFT_INDEX,
    Landmark.RIGHT_INDEX,
    Landmark.LEFT_HIP,
    Landmark.RIGHT_HIP,
    Landmark.LEFT_KNEE,
    Landmark.RIGHT_KNEE,
)
"""What a session keeps: trunk, arms and hands to measure again, head and thighs to see which way
the person faced and whether they sat. The face's other points and the feet serve neither."""


@dataclass(frozen=True, slots=True, eq=False)
class ReadingTable:
    """One row a measured frame, n rows in time order, seconds since the session's start.

    ``planned_index`` counts in the plan from 0; ``phase`` holds positions in ``PHASES``,
    ``doubt`` in ``DOUBTS`` or -1. ``value`` and ``error`` are in the unit of the exercise's
    movement, NaN where there is a doubt. These arrays have shape (n,); ``form`` has (n, 10), a
    column each of ``FORM_COLUMNS`` in its own unit, NaN where a view cannot tell.
    """

    time_s: Floats = field(repr=False)
    planned_index: Codes = field(repr=False)
    phase: Codes = field(repr=False)
    value: Floats = field(repr=False)
    error: Floats = field(repr=False)
    doubt: Codes = field(repr=False)
    form: Floats = field(repr=False)

    def __len__(self) -> int:
        """Count the rows."""
        return len(self.time_s)


@dataclass(frozen=True, slots=True, eq=False)
class LandmarkTable:
    """One row a frame, n rows in time order, k landmarks; frames of reference as in ``Pose``.

    ``time_s`` (n,) seconds since the session's start; ``size_px`` (n, 2) the picture's width and
    height; ``people`` (n,) how many were seen; ``brightness`` (n,) 0-1; ``image_px`` (n, k, 2)
    pixels; ``world_m`` (n, k, 3) metres; ``visibility`` (n, k) 0-1; ``card`` (n, 8) the values of
    ``CARD_COLUMNS``, None for a table without. NaN is not known.
    """

    landmarks: tuple[Landmark, ...]
    time_s: Floats = field(repr=False)
    size_px: NDArray[np.int64] = field(repr=False)
    people: NDArray[np.int64] = field(repr=False)
    brightness: Floats = field(repr=False)
    image_px: Floats = field(repr=False)
    world_m: Floats = field(repr=False)
    visibility: Floats = field(repr=False)
    card: Floats | None = field(default=None, repr=False)

    def __len__(self) -> int:
        """Count the rows."""
        return len(self.time_s)

    def poses(self, models: Sequence[PoseModel | None] | None = None) -> Iterator[Pose]:
        """Give each row as a pose of all landmarks, those not in the table unknown (NaN).

        ``models`` (n,) names the pose model that found each row's points, which the table does not
        say; without it none is known.
        """
        rows = [int(landmark) for landmark in self.landmarks]
        for i in range(len(self)):
            image_px = np.full((len(Landmark), 2), np.nan)
            world_m = np.full((len(Landmark), 3), np.nan)
            visibility = np.full(len(Landmark), np.nan)
            image_px[rows] = self.image_px[i]
            world_m[rows] = self.world_m[i]
            visibility[rows] = self.visibility[i]
            for array in (image_px, world_m, visibility):
                array.setflags(write=False)
            brightness = float(self.brightness[i])
            yield Pose(
                time_s=float(self.time_s[i]),
                size_px=(int(self.size_px[i, 0]), int(self.size_px[i, 1])),
                image_px=image_px,
                world_m=world_m,
                visibility=visibility,
                people=int(self.people[i]),
                brightness=None if np.isnan(brightness) else brightness,
                card=None if self.card is None else card_of(self.card[i]),
                model=None if models is None else models[i],
            )
