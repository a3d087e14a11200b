"""Patterns in the measured ranges that a clinician may want to weigh, each with rule and source.

None is a diagnosis, none sets anything. One is given only where the readings' errors leave no
doubt of its rule. The measured range is humerothoracic and self-assisted, so what a source says of
passive range of the joint itself is a comparison, not a test.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import timedelta
from enum import StrEnum
from statistics import median

from coach.domain.exercise import StiffnessPhase
from coach.domain.movement import Movement, Position, Side
from coach.domain.practice import PatientRecords
from coach.domain.session import SessionDocument
from coach.review import hint_words as words
from coach.review.change import Summary, Verdict, percent_of_other
from coach.review.course import Course, course_of
from coach.review.practice_records import NO_RECORDS, other_side_of

LIMITED_BY_DEG = 15.0
"""A published follow-up counted flexion and external rotation within 15 degrees of the other side
as recovered (from memory)."""
LEAST_DIRECTIONS = 3
HALF = 50.0
LOW_PAIN, MODERATE_PAIN = 3, 4
STIFF_AFTER = timedelta(weeks=6)
"""The shortest painful phase of common practice: before it nothing is said of the stiff one."""
_LATELY = 7
_ROTATION = Movement.EXTERNAL_ROTATION_0


class Topic(StrEnum):
    """What a hint is about."""

    DIRECTIONS = "directions"
    ROTATION = "external rotation"
    PATTERN = "capsular pattern"
    PHASE = "phase"


@dataclass(frozen=True, slots=True)
class Hint:
    """A sentence for a clinician, the rule behind it in words, and where the rule is from.

    ``phase`` is there for ``Topic.PHASE`` only: what the rule would suggest, never set by it.
    """

    topic: Topic
    sentence: str
    rule: str
    source: str
    phase: StiffnessPhase | None = None


def hints(
    documents: Sequence[SessionDocument] | Course, records: PatientRecords = NO_RECORDS
) -> tuple[Hint, ...]:
    """Look for patterns in one patient's sessions, side by side where both are treated."""
    course = course_of(documents)
    ordered = course.ordered
    if not ordered:
        return ()
    found: list[Hint] = []
    results: list[Summary] = []
    for alone in filter(None, course.summaries):
        other = other_side_of(ordered, alone.movement, alone.side, records)
        results.append(alone.against(other.value_deg) if other else alone)
    for side in Side:
        of_side = [r for r in results if r.side is side and r.other_side_deg is not None]
        newest = {r.movement: r for r in sorted(of_side, key=_standing_last)}
        found += [*_directions(newest), *_rotation(newest), *_pattern(newest)]
    found += _phase(course, results)
    return tuple(found)


def _standing_last(result: Summary) -> tuple[bool, int]:
    return result.position is Position.STANDING, result.sessions


def _missing_deg(result: Summary) -> float:
    return (result.other_side_deg or 0.0) - result.last.value


def _limited(result: Summary) -> bool | None:
    """Compare with the other side; None where the error leaves it open."""
    if _missing_deg(result) - result.last.error > LIMITED_BY_DEG:
        return True
    return False if _missing_deg(result) + result.last.error <= LIMITED_BY_DEG else None


def _directions(results: dict[Movement, Summary]) -> list[Hint]:
    judged = {m: _limited(r) for m, r in results.items()}
    if len(judged) < LEAST_DIRECTIONS or None in judged.values():
        return []
    limited = [m for m, is_limited in judged.items() if is_limited]
    if len(limited) not in (1, len(judged)):
        return []
    side = next(iter(results.values())).side
    return [
        Hint(
            Topic.DIRECTIONS,
            words.directions(limited, len(judged), side),
            words.directions_rule(LEAST_DIRECTIONS, LIMITED_BY_DEG),
            words.directions_source(),
        )
    ]


def _share(result: Summary) -> tuple[float, float] | None:
    """Percent of the other side with the half width of its 95 % interval from this side alone."""
    share = percent_of_other(result.last.value, result.other_side_deg)
    if share is None or result.other_side_deg is None:
        return None
    return share, 100 * result.last.error / result.other_side_deg


def _rotation(results: dict[Movement, Summary]) -> list[Hint]:
    share = _share(results[_ROTATION]) if _ROTATION in results else None
    if share is None or abs(share[0] - HALF) <= share[1]:
        return []
    return [
        Hint(
            Topic.ROTATION,
            words.rotation(results[_ROTATION].side, share, below=share[0] < HALF),
            words.rotation_rule(),
            words.rotation_source(),
        )
    ]


def _pattern(results: dict[Movement, Summary]) -> list[Hint]:
    pair = [_share(results[m]) for m in (_ROTATION, Movement.ABDUCTION) if m in results]
    if len(pair) < 2 or pair[0] is None or pair[1] is None:
        return []
    (rotation, rotation_error), (abduction, abduction_error) = pair[0], pair[1]
    if abs(rotation - abduction) <= math.hypot(rotation_error, abduction_error):
        return []
    if max(rotation + rotation_error, abduction + abduction_error) >= 100:
        return []
    side = results[_ROTATION].side
    return [
        Hint(
            Topic.PATTERN,
            words.pattern(side, pair[0], pair[1], in_order=rotation < abduction),
            words.pattern_rule(),
            words.pattern_source(),
        )
    ]


def _phase(course: Course, results: Sequence[Summary]) -> list[Hint]:
    lately = [s.pain for s in course.sittings[-_LATELY:] if s.pain is not None]
    compared = [r for r in results if r.difference is not None]
    if not lately or not compared:
        return []
    pain = median(lately)
    grew = [
        r
        for r in compared
        if r.verdict is Verdict.REAL and r.difference and r.difference.change * r.unit.sign > 0
    ]
    changed = any(r.verdict is Verdict.REAL for r in compared)
    limited = any(r.other_side_deg is not None and _limited(r) for r in compared)
    watched = max((r.last.end - r.first.begin for r in compared), default=timedelta())
    if grew and pain <= LOW_PAIN:
        phase = StiffnessPhase.THAWING
    elif limited and not changed and pain >= MODERATE_PAIN:
        phase = StiffnessPhase.PAINFUL
    elif limited and not changed and pain <= LOW_PAIN and watched >= STIFF_AFTER:
        phase = StiffnessPhase.STIFF
    else:
        return []
    weeks = watched // timedelta(weeks=1)
    return [
        Hint(
            Topic.PHASE,
            words.phase(phase, course.ordered[-1].plan.phase, pain, len(lately), weeks),
            words.phase_rule(_LATELY, LOW_PAIN, MODERATE_PAIN, STIFF_AFTER // timedelta(weeks=1)),
            words.phase_source(),
            phase,
        )
    ]
