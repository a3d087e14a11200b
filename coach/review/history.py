"""From one patient's session documents to what can be compared over time.

A session gives at most one value per movement and side: the median of its completed holds, each
already a median over its hold. A median of holds does not grow with their number as a best one
does, and one slipped hold does not move it. Holds in which the trunk leaned or turned feign range:
they count only where there is no other, and the point says so. Where no hold was completed, holds
of at least half the asked seconds stand in, and the point says so too.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime
from statistics import fmean, median

from coach.domain.fault import Fault
from coach.domain.movement import Movement, Position, Side
from coach.domain.plan import PlannedExercise
from coach.domain.progress import EndedBecause, Repetition
from coach.domain.session import ExerciseRecord, SessionDocument
from coach.review.holds import feigns
from coach.review.set_up import SetUp
from coach.review.spread import deviation
from coach.texts import translate

Z95 = 1.959964
"""The normal distribution's two-sided 95 % point."""
_MEDIAN_TO_MEAN_SE = math.sqrt(math.pi / 2)
_ENOUGH_OF_A_HOLD = 0.5


@dataclass(frozen=True, slots=True)
class Point:
    """One session's range in one movement.

    ``at`` keeps the zone offset of the place where the session was held, so ``at.date()`` is the
    patient's own date. ``error`` is the half width of the 95 % interval of ``value``.
    ``complete`` is false where no hold reached the asked seconds, ``feigned`` true where the trunk
    moved in all that there was, so that the value may not pass as range. ``feigned_share`` is the
    share of all the session's holds (of half the asked seconds at least) in which it did,
    ``lost_share`` that of the session's frames that were not measured, None where none was taken.
    """

    session_id: str
    at: datetime
    value: float
    error: float
    best: float
    mean: float
    spread: float
    held_s: float
    holds: int
    seen_fraction: float
    complete: bool
    set_up: SetUp
    feigned: bool = False
    feigned_share: float = 0.0
    lost_share: float | None = None


@dataclass(frozen=True, slots=True)
class PainPoint:
    """Pain 0-10 before and after one movement's exercise in one session."""

    session_id: str
    at: datetime
    before: int | None
    after: int | None

    @property
    def worst(self) -> int | None:
        """The higher of the two, None where neither was given."""
        return max((s for s in (self.before, self.after) if s is not None), default=None)


@dataclass(frozen=True, slots=True)
class Series:
    """One movement of one side in one position by one definition, oldest first."""

    movement: Movement
    side: Side
    definitions: int
    points: tuple[Point, ...]
    pains: tuple[PainPoint, ...]
    position: Position = Position.STANDING


_Kind = tuple[Movement, Side, Position, int]
"""Movement, side, position, definitions."""


def started(document: SessionDocument) -> datetime:
    """Read when a session began, with the zone offset of its place."""
    try:
        at = datetime.fromisoformat(document.started_at)
    except ValueError:
        at = None
    if at is None or at.tzinfo is None:
        raise Fault(
            translate(
                "faults",
                "Session {session} says it began at '{time}', which is no ISO 8601 time with a "
                "zone offset: ask the patient to send the file again",
            ).format(session=document.session_id[:8], time=document.started_at)
        )
    return at


def asked(document: SessionDocument, record: ExerciseRecord) -> PlannedExercise | None:
    """Find what the plan asked for, None where the record points outside its plan."""
    exercises = document.plan.exercises
    return exercises[record.planned_index] if record.planned_index < len(exercises) else None


def comparable(points: Sequence[Point]) -> tuple[Point, ...]:
    """Leave out what the trunk feigned."""
    return tuple(p for p in points if not p.feigned)


def lost_share(document: SessionDocument) -> float | None:
    """Give the share of frames that were taken but not measured, None where none was taken."""
    total = document.camera.frames_lost + document.camera.frames_seen
    return document.camera.frames_lost / total if total else None


def in_order(documents: Iterable[SessionDocument]) -> tuple[SessionDocument, ...]:
    """Sort by instant; places in different zones do not get mixed up."""
    return tuple(sorted(documents, key=lambda d: (started(d), d.session_id)))


def history(documents: Sequence[SessionDocument]) -> tuple[Series, ...]:
    """Arrange one patient's sessions by movement, side, position and definition.

    Raises Fault where the documents are of more than one patient.
    """
    codes = {d.plan.patient_code for d in documents}
    if len(codes) > 1:
        raise Fault(
            translate(
                "faults",
                "Sessions of {count} patients cannot be one history: review each code alone",
            ).format(count=len(codes))
        )
    points: dict[_Kind, list[Point]] = {}
    pains: dict[_Kind, list[PainPoint]] = {}
    for document in in_order(documents):
        at = started(document)
        by_kind: dict[_Kind, list[ExerciseRecord]] = {}
        for record in document.exercises:
            definitions = document.software.definitions
            if record.movement is None:
                continue  # timed only: nothing was measured
            kind = (record.movement, record.side, record.position, definitions)
            by_kind.setdefault(kind, []).append(record)
        for key, records in by_kind.items():
            before = next((r.pain_before for r in records if r.pain_before is not None), None)
            after = next(
                (r.pain_after for r in reversed(records) if r.pain_after is not None), None
            )
            pain = PainPoint(document.session_id, at, before, after)
            pains.setdefault(key, []).append(pain)
            point = point_of(document, records)
            if point is not None:
                points.setdefault(key, []).append(point)
    movements, positions = list(Movement), list(Position)
    return tuple(
        Series(movement, side, definitions, tuple(points.get(key, ())), tuple(pains[key]), position)
        for key in sorted(
            pains, key=lambda k: (movements.index(k[0]), k[1], positions.index(k[2]), k[3])
        )
        for movement, side, position, definitions in (key,)
    )


def counted_holds(
    document: SessionDocument, records: Iterable[ExerciseRecord]
) -> tuple[Repetition, ...]:
    """Choose the holds that make the value of a session in one movement."""
    return _counted(*_held(document, records))


def _counted(
    completed: Sequence[Repetition], nearly: Sequence[Repetition]
) -> tuple[Repetition, ...]:
    sound = [r for r in completed if not feigns(r)]
    return tuple(sound or completed or [r for r in nearly if not feigns(r)] or nearly)


def _held(
    document: SessionDocument, records: Iterable[ExerciseRecord]
) -> tuple[list[Repetition], list[Repetition]]:
    completed: list[Repetition] = []
    nearly: list[Repetition] = []
    for record in records:
        planned = asked(document, record)
        for repetition in record.repetitions:
            if repetition.ended_because is EndedBecause.COMPLETED:
                completed.append(repetition)
            elif planned and repetition.held_s >= _ENOUGH_OF_A_HOLD * planned.hold_s:
                nearly.append(repetition)
    return completed, nearly


def _model_sha256(document: SessionDocument, records: Sequence[ExerciseRecord]) -> str:
    """Give the pose model that measured; where two did, the one the session did not begin with."""
    others = (r.model_sha256 for r in records if r.repetitions and r.model_sha256 is not None)
    return next(others, document.software.model_sha256)


def point_of(document: SessionDocument, records: Sequence[ExerciseRecord]) -> Point | None:
    """Give what a session's exercises of one movement come to, None where no hold counts."""
    completed, nearly = _held(document, records)
    held = completed + nearly
    holds = _counted(completed, nearly)
    if not holds:
        return None
    values = [r.value for r in holds]
    spread = deviation(values)
    scatter = Z95 * _MEDIAN_TO_MEAN_SE * spread / math.sqrt(len(values))
    weights = [max(r.held_s, 0.1) for r in holds]
    camera, software = document.camera, document.software
    return Point(
        session_id=document.session_id,
        at=started(document),
        value=median(values),
        # The holds of a session share camera, clothes and body, so their errors do not average.
        error=math.hypot(median(r.error for r in holds), scatter),
        best=max(values, key=lambda v: v * holds[0].unit.sign),
        mean=fmean(values),
        spread=spread,
        held_s=sum(r.held_s for r in holds),
        holds=len(holds),
        seen_fraction=fmean((r.seen_fraction for r in holds), weights),
        complete=bool(completed),
        set_up=SetUp(
            camera.kind,
            camera.width_px,
            camera.height_px,
            camera.field_of_view_deg,
            records[0].view,
            _model_sha256(document, records),
            software.estimator,
        ),
        feigned=any(map(feigns, holds)),
        feigned_share=sum(map(feigns, held)) / len(held),
        lost_share=lost_share(document),
    )
