"""Each sitting for itself: what was done, how well the camera saw it, how well it was done."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from statistics import fmean

from coach.domain.session import SessionDocument, SessionEnd
from coach.review.adherence import done_of
from coach.review.history import in_order, lost_share, started
from coach.review.holds import feigns
from coach.review.wording import percent
from coach.texts import localised, translate

POORLY_SEEN = 0.8
MOSTLY_FEIGNED = 0.5
LEAST_FRAMES_PER_S = 5.0
"""Below it a hold's begin and end are known to a quarter of a second only. Our choice, as are the
two above."""


@dataclass(frozen=True, slots=True)
class Sitting:
    """One session; shares are of 1, None where nothing was measured or no frame taken.

    ``seen`` is the share of hold time with usable readings, ``lost`` of frames not measured,
    ``feigned`` of measured holds in which the trunk leaned or turned. ``pain`` is the highest
    given in it, 0-10. ``poor`` says in words what is wrong with its data, if anything.
    """

    session_id: str
    at: datetime
    ended_because: SessionEnd
    holds_completed: int
    holds_asked: int
    seen: float | None
    lost: float | None
    frames_per_s: float | None
    field_of_view_deg: float | None
    feigned: float | None
    pain: int | None
    poor: tuple[str, ...]


def sittings(documents: Sequence[SessionDocument]) -> tuple[Sitting, ...]:
    """Describe one patient's sessions, oldest first."""
    return tuple(map(sitting_of, in_order(documents)))


def sitting_of(document: SessionDocument) -> Sitting:
    """Describe one session."""
    holds = [r for e in document.exercises for r in e.repetitions if r.held_s > 0]
    done = done_of(document)
    seen = fmean((r.seen_fraction for r in holds), [r.held_s for r in holds]) if holds else None
    feigned = sum(map(feigns, holds)) / len(holds) if holds else None
    rate = document.camera.frames_seen / document.duration_s if document.duration_s else None
    return Sitting(
        session_id=document.session_id,
        at=started(document),
        ended_because=document.ended_because,
        holds_completed=sum(min(d.completed, p.repetitions) for p, d in done),
        holds_asked=sum(p.repetitions for p, _ in done),
        seen=seen,
        lost=lost_share(document),
        frames_per_s=rate,
        field_of_view_deg=document.camera.field_of_view_deg,
        feigned=feigned,
        pain=worst_pain(document),
        poor=_poor(seen, feigned, rate) if holds else (),
    )


def worst_pain(document: SessionDocument) -> int | None:
    """Give the highest pain of a session, None where none was given."""
    scores = [s for e in document.exercises for s in (e.pain_before, e.pain_after)]
    return max((s for s in (*scores, document.pain_at_end) if s is not None), default=None)


def _poor(seen: float | None, feigned: float | None, rate: float | None) -> tuple[str, ...]:
    found: list[str] = []
    if seen is not None and seen < POORLY_SEEN:
        told = translate("review", "arm seen in only {share} of hold time")
        found.append(told.format(share=percent(seen)))
    if feigned is not None and feigned > MOSTLY_FEIGNED:
        told = translate("review", "trunk leaned or turned in {share} of holds")
        found.append(told.format(share=percent(feigned)))
    if rate is not None and rate < LEAST_FRAMES_PER_S:
        told = translate("review", "only {rate} frames measured a second")
        found.append(told.format(rate=localised(f"{rate:.1f}")))
    return tuple(found)
