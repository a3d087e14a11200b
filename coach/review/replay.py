"""One repetition again: a stick figure and what was measured beside it, from a session's tables."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime

import numpy as np
from numpy.typing import NDArray

from coach.domain.fault import Fault
from coach.domain.pose import Landmark
from coach.domain.progress import Repetition
from coach.domain.reading import Doubt, Reading
from coach.domain.session import ExerciseRecord, SessionDocument
from coach.review.form_series import FormSeries, form_series
from coach.review.recording import Floats, Points, Readings
from coach.review.stick import Bone, bones_of
from coach.texts import translate

GAP_S = 0.5
"""Nothing is drawn over a longer gap: landmarks come ten times a second, and an arm can be
anywhere after five of them."""
_LEAD_S, _TAIL_S = 8.0, 3.0
"""Most of what is shown before and after a hold: the way there and the beginning of the way back
(chosen by eye)."""

_DOUBTS = tuple(Doubt)


@dataclass(frozen=True, slots=True)
class Span:
    """Seconds in which there was no value, and why; ``doubt`` None where no frame was read."""

    start_s: float
    end_s: float
    doubt: Doubt | None


@dataclass(frozen=True, slots=True, eq=False)
class Replay:
    """A repetition with the way to it and from it; seconds since the session's start.

    ``stamps_s`` (n,) of the landmarks; ``points`` (n, k, 2) shares of the picture's width and
    height, x right, y down, as the camera saw it; ``visibility`` (n, k) 0-1; ``aspect`` the
    picture's width over its height. ``time_s``, ``value`` and ``error`` (m,) are the trace in the
    unit of the repetition, NaN where there was a doubt.
    """

    started_at: datetime
    record: ExerciseRecord
    repetition: Repetition
    begin_s: float
    end_s: float
    aspect: float
    bones: tuple[Bone, ...]
    landmarks: tuple[Landmark, ...]
    stamps_s: Floats = field(repr=False)
    points: Floats = field(repr=False)
    visibility: Floats = field(repr=False)
    time_s: Floats = field(repr=False)
    value: Floats = field(repr=False)
    error: Floats = field(repr=False)
    doubts: tuple[Span, ...]
    form: tuple[FormSeries, ...]

    @property
    def hold_s(self) -> tuple[float, float]:
        """When the hold began and ended."""
        return self.repetition.start_s, self.repetition.end_s

    def points_at(self, time_s: float) -> Floats:
        """Give the points (k, 2) at any time, straight between landmarks at most ``GAP_S`` apart.

        For drawing only: nothing is measured on them. NaN where a point is not known.
        """
        points = np.full(self.points.shape[1:], np.nan)
        for k in range(len(points)):
            known = np.isfinite(self.points[:, k]).all(axis=1)
            points[k] = _between(self.stamps_s[known], self.points[known, k], time_s)
        return points

    def nearest_row(self, time_s: float) -> int | None:
        """Give the row of the landmarks nearest to a time; None where none is within ``GAP_S``."""
        if not len(self.stamps_s):
            return None
        row = int(np.argmin(np.abs(self.stamps_s - time_s)))
        return row if abs(self.stamps_s[row] - time_s) <= GAP_S else None

    def trace_row(self, time_s: float) -> int | None:
        """Give the row of the trace that held at a time; None where no frame was read."""
        row = int(np.searchsorted(self.time_s, time_s, side="right")) - 1
        return row if row >= 0 and time_s - self.time_s[row] <= GAP_S else None

    def reading_at(self, time_s: float) -> Reading | None:
        """Give what was measured at a time; None where no frame was read."""
        row = self.trace_row(time_s)
        if row is None:
            return None
        stamp_s = float(self.time_s[row])
        if np.isfinite(self.value[row]):
            return Reading(stamp_s, float(self.value[row]), float(self.error[row]))
        doubt = next((s.doubt for s in self.doubts if s.start_s <= stamp_s <= s.end_s), None)
        return Reading(stamp_s, None, None, doubt)

    def runs(self, values: Floats) -> tuple[slice, ...]:
        """Give the rows of the trace between which a line may be drawn through ``values`` (m,)."""
        known = np.flatnonzero(np.isfinite(values))
        if not len(known):
            return ()
        breaks = (np.diff(known) > 1) | (np.diff(self.time_s[known]) > GAP_S)
        parts = np.split(known, np.flatnonzero(breaks) + 1)
        return tuple(slice(int(part[0]), int(part[-1]) + 1) for part in parts)


def repetitions_of(document: SessionDocument) -> tuple[tuple[int, int], ...]:
    """Give each measured repetition as its exercise's position in the session and its number."""
    return tuple(
        (i, repetition.number)
        for i, record in enumerate(document.exercises)
        for repetition in record.repetitions
    )


def replay(
    document: SessionDocument, readings: Readings, points: Points, exercise: int, number: int
) -> Replay:
    """Cut one repetition out of a session; a ``Fault`` where the session does not have it."""
    records = document.exercises[exercise : exercise + 1] if exercise >= 0 else ()
    found = [(e, r) for e in records for r in e.repetitions if r.number == number]
    if not found:
        raise Fault(
            translate(
                "faults",
                "The session of {started_at} has no repetition {number} of exercise "
                "{exercise}; choose another one.",
            ).format(started_at=document.started_at[:10], number=number, exercise=exercise + 1)
        )
    record, repetition = found[0]
    begin_s, end_s = _seen(*_window(record, repetition), repetition, readings, points)
    rows = _inside(points.time_s, begin_s, end_s)
    read = _inside(readings.time_s, begin_s, end_s)
    read = read[readings.planned_index[read] == record.planned_index]
    size = points.size_px[rows].astype(np.float64)
    time_s = readings.time_s[read]
    return Replay(
        started_at=datetime.fromisoformat(document.started_at),
        record=record,
        repetition=repetition,
        begin_s=begin_s,
        end_s=end_s,
        aspect=float(size[0, 0] / size[0, 1]) if len(rows) else 4 / 3,
        bones=bones_of(points.landmarks, record.side),
        landmarks=points.landmarks,
        stamps_s=points.time_s[rows],
        points=points.image_px[rows] / size[:, None, :],
        visibility=points.visibility[rows],
        time_s=time_s,
        value=readings.value[read],
        error=readings.error[read],
        doubts=_spans(time_s, readings.doubt[read], begin_s, end_s),
        form=form_series(readings.form[read], repetition.faults),
    )


def _window(record: ExerciseRecord, repetition: Repetition) -> tuple[float, float]:
    others = [r for r in record.repetitions if r.number != repetition.number]
    before = [r.end_s for r in others if r.end_s <= repetition.start_s]
    after = [r.start_s for r in others if r.start_s >= repetition.end_s]
    begin_s = max(repetition.start_s - _LEAD_S, record.started_s, *before)
    end_s = min(repetition.end_s + _TAIL_S, record.ended_s, *after)
    return min(begin_s, repetition.start_s), max(end_s, repetition.end_s)


def _seen(
    begin_s: float, end_s: float, repetition: Repetition, readings: Readings, points: Points
) -> tuple[float, float]:
    """Leave out the time before the first and after the last frame, but never of the hold."""
    times = np.concatenate(
        [t[_inside(t, begin_s, end_s)] for t in (readings.time_s, points.time_s)]
    )
    if not len(times):
        return begin_s, end_s
    begin_s = min(float(times.min()), repetition.start_s)
    return begin_s, max(float(times.max()), repetition.end_s)


def _inside(time_s: Floats, begin_s: float, end_s: float) -> NDArray[np.int64]:
    return np.flatnonzero((time_s >= begin_s) & (time_s <= end_s)).astype(np.int64)


def _between(stamps_s: Floats, values: Floats, time_s: float) -> Floats:
    after = int(np.searchsorted(stamps_s, time_s))
    if after < len(stamps_s) and stamps_s[after] == time_s:
        exact: Floats = values[after]
        return exact
    if after in (0, len(stamps_s)) or stamps_s[after] - stamps_s[after - 1] > GAP_S:
        return np.full(values.shape[1:], np.nan)
    share = (time_s - stamps_s[after - 1]) / (stamps_s[after] - stamps_s[after - 1])
    between: Floats = values[after - 1] + share * (values[after] - values[after - 1])
    return between


def _spans(
    time_s: Floats, codes: NDArray[np.int16], begin_s: float, end_s: float
) -> tuple[Span, ...]:
    """Join rows of one doubt; a doubt lasts until the next row where that is not far."""
    spans: list[Span] = []
    edges = [begin_s, *time_s.tolist(), end_s]
    for i, code in enumerate([-1, *codes.tolist()]):
        start_s, until_s = edges[i], edges[i + 1]
        far = until_s - start_s > GAP_S
        if code >= 0:
            doubt = _DOUBTS[code]
            last_s = start_s if far else until_s
            if spans and spans[-1].doubt is doubt and spans[-1].end_s == start_s:
                spans[-1] = Span(spans[-1].start_s, last_s, doubt)
            else:
                spans.append(Span(start_s, last_s, doubt))
        if far:
            spans.append(Span(start_s, until_s, None))
    return tuple(spans)
