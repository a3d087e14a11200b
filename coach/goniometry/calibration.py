"""Standing, sitting or lying still for two seconds at the start: what it teaches, checked."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

from coach.domain.movement import View
from coach.domain.reading import Calibration
from coach.goniometry.angles import Vector
from coach.goniometry.sight import Sight

STILL_S = 2.0
LOOKED_FOR_S = 3.0
"""The two seconds lie within so many of the first usable frame: a later stillness may be a hold."""
OPENING_S = 1.0
"""Where they are not found, the first second stands for rest."""
QUIET = 0.02
"""Standard deviation of every point over two seconds, trunk lengths: a centimetre, three times
what the points of motionless tuning people wander."""
TURNS_DEG = 6.0
"""How far the trunk may turn from the first third of the time to the last, by the metric points:
breadth hides a slow turn (22 degrees take 7 % of it), depth does not. Motionless tuning people read
up to 2.7 facing the camera."""
LEAST_SAMPLES = 8
UPPER_ARM_BETWEEN = (0.03, 0.85)
"""Upper arm over trunk in the picture: 0.57 at full length, far less where it points along the
ray; outside, the points are not those of a body."""

_TILT, _TURN, _BREADTH, _UPPER_ARM, _FOREARM = range(5)


@dataclass(frozen=True, slots=True, eq=False)
class _Row:
    time_s: float
    points: Vector = field(repr=False)
    values: tuple[float, ...]


@dataclass(frozen=True, slots=True, eq=False)
class Stillness:
    """The search for two quiet seconds; immutable. ``found`` is None while it goes on."""

    view: View
    rows: tuple[_Row, ...] = ()
    started_s: float | None = None
    found: Calibration | None = None

    def seen(self, time_s: float, sight: Sight) -> Stillness:
        """Take the next usable frame."""
        if self.found is not None:
            return self
        started_s = time_s if self.started_s is None else self.started_s
        row = _row(time_s, sight, self.view)
        rows = (*(r for r in self.rows if time_s - r.time_s <= STILL_S + 0.05), row)
        found = _judged(rows)
        if found is None and time_s - started_s > LOOKED_FOR_S:
            found = Calibration(state="moving", start_s=started_s, end_s=time_s)
        return Stillness(self.view, () if found else rows, started_s, found)

    @property
    def result(self) -> Calibration:
        """What is known by now."""
        return self.found or Calibration(state="missing")

    @property
    def ended(self) -> Calibration:
        """What is known when no more frames come: two seconds that were not quiet are moving."""
        if self.found is None and _long(self.rows):
            return Calibration(state="moving", start_s=self.started_s, end_s=self.rows[-1].time_s)
        return self.result


def _row(time_s: float, sight: Sight, view: View) -> _Row:
    points = (sight.points_px - sight.hips_px) / sight.scale_px
    return _Row(
        time_s,
        points,
        (
            sight.tilt_deg,
            sight.turned_from_deg(view),
            sight.breadth,
            sight.upper_arm_share,
            sight.forearm_share,
        ),
    )


def _judged(rows: tuple[_Row, ...]) -> Calibration | None:
    """Give the calibration of these rows if they are long, quiet and of a body."""
    if not _long(rows):
        return None
    if float(np.max(np.std([row.points for row in rows], axis=0))) > QUIET:
        return None
    turns_deg, third = [row.values[_TURN] for row in rows], len(rows) // 3
    if abs(np.median(turns_deg[-third:]) - np.median(turns_deg[:third])) > TURNS_DEG:
        return None
    values = np.median([row.values for row in rows], axis=0)
    low, high = UPPER_ARM_BETWEEN
    if not low < values[_UPPER_ARM] < high:
        return None
    return Calibration(
        state="still",
        start_s=rows[0].time_s,
        end_s=rows[-1].time_s,
        trunk_tilt_deg=float(values[_TILT]),
        trunk_yaw_deg=float(values[_TURN]),
        shoulder_breadth_ratio=float(values[_BREADTH]),
        upper_arm_ratio=float(values[_UPPER_ARM]),
        forearm_ratio=float(values[_FOREARM]),
    )


def _long(rows: tuple[_Row, ...]) -> bool:
    """Whether these rows are two seconds of samples."""
    return len(rows) >= LEAST_SAMPLES and rows[-1].time_s - rows[0].time_s >= STILL_S - 0.1
