"""What the counting knows between two readings."""

from __future__ import annotations

from dataclasses import dataclass, field

from coach.counting.hold import Hold
from coach.counting.task import Task
from coach.counting.trail import Trail
from coach.domain.progress import Phase, Repetition


@dataclass(frozen=True, slots=True)
class Stage:
    """A hold left upward: part of the way if a higher hold follows, else a repetition.

    It is one as soon as the arm falls below ``below_deg`` without having held higher.
    """

    repetition: Repetition
    below_deg: float


@dataclass(frozen=True, slots=True)
class State:
    """Immutable; bounded in size however long the exercise.

    ``low_deg`` and ``peak_deg`` are the lowest and highest level of the present movement,
    ``rest_deg`` the learned level of rest, ``range_deg`` the largest range held so far.
    """

    task: Task
    phase: Phase = Phase.REST
    time_s: float = -1e9
    usable_s: float = -1e9
    trail: Trail = field(default=Trail(), repr=False)
    hold: Hold | None = None
    opening: Hold | None = None
    opened: bool = False
    stage: Stage | None = None
    low_deg: float | None = None
    peak_deg: float = -1e9
    rest_deg: float | None = None
    range_deg: float = 0.0
    quiet_since_s: float | None = None
    raised_since_s: float | None = None
    tried_s: float = -1e9
    counted: int = 0

    @property
    def held_s(self) -> float:
        """Seconds held so far in the open hold, 0 without one."""
        return self.hold.held_s if self.hold else 0.0

    @property
    def remaining_s(self) -> float | None:
        """Seconds of the asked hold still to come; None without an open hold or asked time."""
        if self.hold is None or self.task.hold_s is None:
            return None
        return max(0.0, self.task.hold_s - self.hold.held_s)

    @property
    def paused(self) -> bool:
        """Whether the clock of the hold stands because the arm is not seen."""
        return self.hold is not None and self.hold.paused

    @property
    def level_deg(self) -> float | None:
        """Angle now, the median of the last third of a second; None when not seen lately."""
        return self.trail.median_deg(self.time_s - LEVEL_S, self.time_s)

    @property
    def past_target(self) -> bool:
        """Whether the arm is further than the angle not to be passed."""
        level, target = self.level_deg, self.task.target_deg
        return level is not None and target is not None and level > target


LEVEL_S = 0.35
"""Span of the running median: 21 frames at 60 a second, 3 or 4 at 10."""
RISE_DEG = 10.0
"""An end range is this far from where the arm rests (``coach.counting.approach`` says why)."""
