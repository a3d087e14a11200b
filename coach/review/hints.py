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
from coach.domain.movement import Movement, Position
from coach.domain.practice import PatientRecords
from coach.domain.session import SessionDocument
from coach.review.change import Summary, Verdict, percent_of_other, summary
from coach.review.history import history, in_order
from coach.review.practice_records import NO_RECORDS, other_side_of
from coach.review.sittings import sittings
from coach.review.wording import MOVEMENTS, SIDES, counted, listed, percent_with_error

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
    documents: Sequence[SessionDocument], records: PatientRecords = NO_RECORDS
) -> tuple[Hint, ...]:
    """Look for patterns in one patient's sessions, side by side where both are treated."""
    if not documents:
        return ()
    ordered = in_order(documents)
    found: list[Hint] = []
    results: list[Summary] = []
    for one in history(ordered):
        other = other_side_of(ordered, one.movement, one.side, records)
        result = summary(one, other.value_deg if other else None)
        if result is not None:
            results.append(result)
    for side in SIDES:
        of_side = [r for r in results if r.side is side and r.other_side_deg is not None]
        newest = {r.movement: r for r in sorted(of_side, key=_standing_last)}
        found += [*_directions(newest), *_rotation(newest), *_pattern(newest)]
    found += _phase(ordered, results)
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
    side = SIDES[next(iter(results.values())).side]
    if len(limited) == len(judged):
        sentence = (
            f"All {len(judged)} measured directions of the {side} shoulder are limited against "
            f"the other side: {listed([MOVEMENTS[m] for m in limited])}. The cause cannot be seen "
            "from it."
        )
    elif len(limited) == 1:
        sentence = (
            f"Of {len(judged)} measured directions of the {side} shoulder only "
            f"{MOVEMENTS[limited[0]]} is limited against the other side; a stiff shoulder "
            "is usually limited in all, so another look may be worth it."
        )
    else:
        return []
    return [
        Hint(
            Topic.DIRECTIONS,
            sentence,
            f"At least {LEAST_DIRECTIONS} directions measured on both sides; limited: more than "
            f"{LIMITED_BY_DEG:.0f} degrees short of the other side, this side's error included.",
            "Common practice for all against one; the 15 degrees from a published follow-up's "
            "criterion of recovery (from memory).",
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
    side = SIDES[results[_ROTATION].side]
    where = "below" if share[0] < HALF else "above"
    return [
        Hint(
            Topic.ROTATION,
            f"External rotation at the side, {side}, is {where} half of the other side's: "
            f"{percent_with_error(*share)}, self-assisted and measured by camera.",
            "External rotation with the arm at the side against half of the other side's, this "
            "side's error included.",
            "Trials of frozen shoulder took in people with passive external rotation under 50 % of "
            "the other side (Rangan et al. 2020; from memory).",
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
    left = (
        f"external rotation {percent_with_error(rotation, rotation_error)} and abduction "
        f"{percent_with_error(abduction, abduction_error)} of the other side's"
    )
    order = "in the order" if rotation < abduction else "not in the order"
    return [
        Hint(
            Topic.PATTERN,
            f"Of the {SIDES[results[_ROTATION].side]} shoulder are left {left}: {order} of the "
            "capsular pattern, as far as measured (internal rotation is not). The pattern is not "
            "universal.",
            "Share of the other side lost in external rotation against that lost in abduction, the "
            "difference larger than both errors.",
            "Capsular pattern after Cyriax: external rotation more than abduction more than "
            "internal rotation (from memory).",
        )
    ]


def _phase(ordered: Sequence[SessionDocument], results: Sequence[Summary]) -> list[Hint]:
    lately = [s.pain for s in sittings(ordered)[-_LATELY:] if s.pain is not None]
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
    painful = f"pain lately {pain:g} of 10 (median of {counted(len(lately), 'sitting')})"
    if grew and pain <= LOW_PAIN:
        phase, why = StiffnessPhase.THAWING, f"range grew beyond error and {painful}"
    elif limited and not changed and pain >= MODERATE_PAIN:
        phase, why = StiffnessPhase.PAINFUL, f"range limited and not growing, {painful}"
    elif limited and not changed and pain <= LOW_PAIN and watched >= STIFF_AFTER:
        weeks = watched // timedelta(weeks=1)
        phase, why = (
            StiffnessPhase.STIFF,
            f"range limited, no real change in {weeks} weeks, {painful}",
        )
    else:
        return []
    said = ordered[-1].plan.phase
    plan = f"the plan says {said}" if said else "the plan names none"
    return [
        Hint(
            Topic.PHASE,
            f"This would fit the phase '{phase}' ({why}); {plan}. The phase is the therapist's to "
            "set.",
            f"Thawing: a change for the better beyond error and median pain of the last {_LATELY} "
            f"sittings at most {LOW_PAIN}. Painful: limited, no real change, pain "
            f"{MODERATE_PAIN} or more. Stiff: limited, no real change in "
            f"{STIFF_AFTER // timedelta(weeks=1)} weeks, pain at most {LOW_PAIN}.",
            "Phases and their usual lengths: common practice and Kelley et al. 2013, J Orthop "
            "Sports Phys Ther 43:A1-A31; bounds of pain: the same (from memory); the combination "
            "is our choice.",
            phase,
        )
    ]
