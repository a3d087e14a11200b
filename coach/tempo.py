"""Whether the machine keeps up with the camera, and with which pose model it will."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from itertools import pairwise
from statistics import median

from coach import goniometry
from coach.domain.plan import PlannedExercise
from coach.domain.pose import PoseModel

SLOW_HZ = 8.0
"""Fewer measured frames a second are too few: what is told of a frame may then be as late as the
frame's own 125 ms, one picture of a camera (33) and the measuring of the frame before: 200 ms. The
timing of holds bears 5."""
AMPLE_HZ = 16.0
"""With so many of the small model the full one gives enough too: it takes 1.4 times as long."""
WINDOW_S = 1.0
"""As long as somebody must be in place: what is found then counts for the exercise that begins."""
LEAST_GAPS = 3
LOST = 0.2
"""Share of frames that must have been passed over: in the dark a camera gives few by itself."""


@dataclass(frozen=True, slots=True)
class Tempo:
    """How many frames a second were measured of late, from their stamps and what was lost.

    ``rate_hz`` is of the newest whole window, None before there was one: by the median gap between
    frames, which a page that opens or a voice that begins does not change.
    """

    rate_hz: float | None = None
    losing: bool = False
    _seen: tuple[tuple[float, int], ...] = field(default=(), repr=False)

    def measured(self, time_s: float, frames_lost: int) -> Tempo:
        """Take a frame that was measured; ``frames_lost`` counts from the sitting's start."""
        seen = (*self._seen, (time_s, frames_lost))
        if len(seen) <= LEAST_GAPS or time_s - seen[0][0] < WINDOW_S:
            return replace(self, _seen=seen)
        gaps = [later - earlier for (earlier, _), (later, _) in pairwise(seen)]
        lost = frames_lost - seen[0][1]
        losing = lost >= LOST * (lost + len(gaps))
        return Tempo(1 / max(median(gaps), 1e-3), losing, seen[-1:])

    def interrupted(self) -> Tempo:
        """Begin the window anew, since not every frame was to be measured."""
        return replace(self, _seen=())

    @property
    def slow(self) -> bool:
        """Whether too few frames are measured because the machine cannot keep up."""
        return self.losing and self.rate_hz is not None and self.rate_hz < SLOW_HZ

    @property
    def ample(self) -> bool:
        """Whether there is room for a larger model."""
        return self.rate_hz is not None and self.rate_hz >= AMPLE_HZ


def model_for(planned: PlannedExercise, present: PoseModel, tempo: Tempo) -> PoseModel:
    """Choose the pose model for an exercise that is about to begin; ``tempo`` is of ``present``."""
    movement = planned.movement
    if movement is None:
        return present
    lite = PoseModel.LITE
    if not goniometry.measures(lite, movement, planned.position, planned.seen_from):
        return PoseModel.FULL
    if present is lite:
        return PoseModel.FULL if tempo.ample else lite
    return lite if tempo.slow else PoseModel.FULL
