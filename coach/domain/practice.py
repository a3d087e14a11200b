"""What a practice writes down of a person beside the sessions: the therapist's own records."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from enum import StrEnum
from typing import Annotated

import msgspec
from msgspec import Meta

from coach.domain.exercise import Irritability, StiffnessPhase
from coach.domain.movement import Movement, Side, Unit
from coach.domain.plan import RangeDeg, ShortText
from coach.texts import localised, translate

Code = Annotated[str, Meta(min_length=1, max_length=64)]
"""What the practice chose to know a person by; the plan's ``patient_code``."""
LongText = Annotated[str, Meta(max_length=4_000)]
Number = Annotated[int, Meta(ge=1, le=2**31 - 1)]
PlanText = Annotated[str, Meta(min_length=2, max_length=1_000_000)]
Score = Annotated[float, Meta(ge=0, le=10_000)]
_YEARS = range(1900, 2200)


class TreatmentKind(StrEnum):
    """What was done to the shoulder by someone's hand."""

    INJECTION = "injection"
    HYDRODILATATION = "hydrodilatation"
    SURGERY = "surgery"
    OTHER = "other"


class Record(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """A record of the practice; ``code`` says whose it is.

    ``id`` is the store's, None before it is added. ``edition`` counts its changes: who changes an
    edition that another desk has changed meanwhile is told so.
    """

    id: Number | None = None
    edition: Annotated[int, Meta(ge=0, le=2**31 - 1)] = 0
    code: Code


class Person(Record, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """A person in treatment; ``created_on`` is None where an older store did not keep it."""

    name: ShortText = ""
    created_on: date | None = None


class Episode(Record, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """One course of a stiff shoulder, as the therapist judges it."""

    side: Side
    began_on: date
    phase: StiffnessPhase | None = None
    irritability: Irritability | None = None
    goals: LongText = ""
    note: LongText = ""


class OfEpisode(Record, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """A record that may belong to one of the person's episodes."""

    episode_id: Number | None = None


class Treatment(OfEpisode, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """A treatment beside the exercises; ``on`` may lie ahead."""

    on: date
    kind: TreatmentKind
    text: LongText = ""


class OtherSideMeasure(OfEpisode, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """The range of the other shoulder, in degrees, to compare with."""

    on: date
    movement: Movement
    value_deg: RangeDeg


class HandMeasure(OfEpisode, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """A range that the therapist measured with a goniometer in the hand, in degrees."""

    on: date
    movement: Movement
    side: Side
    value_deg: RangeDeg
    passive: bool


class TotalScore(OfEpisode, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """The total of a questionnaire that was filled in elsewhere, out of ``maximum``."""

    on: date
    name: Annotated[str, Meta(min_length=1, max_length=100)]
    total: Score
    maximum: Score


class IssuedPlan(OfEpisode, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """A plan as it was given to the person; ``plan`` is its JSON.

    ``side`` is the plan's own; a person has each revision once.
    """

    revision: Annotated[int, Meta(ge=1, le=100_000)]
    issued_on: date
    side: Side | None = None
    plan: PlanText


class PatientRecords(msgspec.Struct, frozen=True, kw_only=True):
    """All that a practice wrote down of one person; each kind oldest first."""

    person: Person
    episodes: tuple[Episode, ...] = ()
    treatments: tuple[Treatment, ...] = ()
    other_side: tuple[OtherSideMeasure, ...] = ()
    by_hand: tuple[HandMeasure, ...] = ()
    scores: tuple[TotalScore, ...] = ()
    plans: tuple[IssuedPlan, ...] = ()

    @property
    def episode(self) -> Episode | None:
        """The episode that began last."""
        return self.episodes[-1] if self.episodes else None

    @property
    def last_plan(self) -> IssuedPlan | None:
        """The plan that was issued last."""
        return self.plans[-1] if self.plans else None

    @property
    def newest_other_side(self) -> Mapping[Movement, OtherSideMeasure]:
        """The other side's newest measure of each movement."""
        return {measure.movement: measure for measure in self.other_side}


def contradiction(record: Record) -> str | None:
    """Say what in a record cannot be, which no single field's range tells; None where all can."""
    for field in record.__struct_fields__:
        value = getattr(record, field)
        if isinstance(value, date) and value.year not in _YEARS:
            told = translate(
                "faults", "{field} is {value}, allowed are the years {first} to {last}"
            )
            return told.format(field=field, value=value, first=_YEARS[0], last=_YEARS[-1])
    match record:
        case OtherSideMeasure() | HandMeasure() if record.movement.unit is not Unit.DEGREES:
            told = translate("faults", "{movement} is not an angle and has no value_deg")
            return told.format(movement=record.movement)
        case TotalScore() if record.total > record.maximum:
            told = translate("faults", "total is {total}, more than the maximum {maximum}")
            total, most = localised(f"{record.total:g}"), localised(f"{record.maximum:g}")
            return told.format(total=total, maximum=most)
        case TotalScore() if record.maximum == 0:
            return translate("faults", "maximum is 0, allowed is more")
        case _:
            return None
