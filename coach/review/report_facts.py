"""Pain and the camera over all of a patient's sessions, for the report."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from statistics import fmean

from coach.domain.session import SessionDocument
from coach.review.history import Series, started
from coach.review.holds import feigns
from coach.review.sittings import worst_pain

HIGH_PAIN = 7
"""Above it the clinic sheet asks for the therapist (common practice)."""


@dataclass(frozen=True, slots=True)
class PainCourse:
    """The highest pain given in the first and in the last session, and in any; 0-10."""

    first: int
    last: int
    worst: int
    worst_on: date
    high_sessions: int
    """Sessions in which pain above 7 was given."""


@dataclass(frozen=True, slots=True)
class Quality:
    """Shares of 1, None where nothing was held or no frame taken; ``feigned`` by the trunk."""

    seen: float | None
    lost: float | None
    files_refused: int
    feigned: float | None = None


def pain_course(ordered: Sequence[SessionDocument]) -> PainCourse | None:
    """Follow the highest pain of each session; None where none was given."""
    given: list[tuple[int, date]] = []
    for document in ordered:
        worst = worst_pain(document)
        if worst is not None:
            given.append((worst, started(document).date()))
    if not given:
        return None
    worst, worst_on = max(given, key=lambda g: g[0])
    high = sum(score > HIGH_PAIN for score, _ in given)
    return PainCourse(given[0][0], given[-1][0], worst, worst_on, high)


def quality_of(
    ordered: Sequence[SessionDocument], series: Sequence[Series], files_refused: int
) -> Quality:
    """Tell how well the camera saw and how much the trunk feigned."""
    points = [p for s in series for p in s.points]
    weights = [max(p.held_s, 0.1) for p in points]
    seen = fmean((p.seen_fraction for p in points), weights) if points else None
    lost = sum(d.camera.frames_lost for d in ordered)
    total = lost + sum(d.camera.frames_seen for d in ordered)
    held = [r for d in ordered for e in d.exercises for r in e.repetitions if r.held_s > 0]
    feigned = sum(map(feigns, held)) / len(held) if held else None
    return Quality(seen, lost / total if total else None, files_refused, feigned)
