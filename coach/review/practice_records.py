"""What the practice wrote down of one person, asked as a review asks it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from coach.domain.movement import Movement, Side, Unit
from coach.domain.practice import PatientRecords, Person
from coach.domain.session import SessionDocument

NO_RECORDS = PatientRecords(person=Person(code="nobody"))
"""Where only sessions are known."""


@dataclass(frozen=True, slots=True)
class OtherSide:
    """The range of the other shoulder, in degrees, and the day of its measure in the practice.

    ``on`` is None where a plan says it, which gives no day.
    """

    value_deg: float
    on: date | None = None


def other_side_of(
    ordered: Sequence[SessionDocument], movement: Movement, side: Side, records: PatientRecords
) -> OtherSide | None:
    """Give what is known of the other side, None where nothing is.

    The newest measure of the practice comes first, then the newest plan that knows. Where both
    sides are exercised it is open which one is meant, unless the measure's episode says.
    """
    if movement.unit is not Unit.DEGREES:
        return None
    open_which = [
        any(e.movement is movement and e.side is side.other for e in d.plan.exercises)
        for d in ordered
    ]
    stiff = {episode.id: episode.side for episode in records.episodes}
    for measure in reversed(records.other_side):
        meant = stiff.get(measure.episode_id)
        if measure.movement is movement and (
            meant is side or (meant is None and not any(open_which))
        ):
            return OtherSide(measure.value_deg, measure.on)
    for document, is_open in zip(reversed(ordered), reversed(open_which), strict=True):
        for other in () if is_open else document.plan.other_side:
            if other.movement is movement:
                return OtherSide(other.value_deg)
    return None


def last_visit(
    ordered: Sequence[SessionDocument], records: PatientRecords, today: date | None
) -> date | None:
    """Give the last day on which the person was seen, as far as is written down.

    Days of records count, and those on which a plan was issued. ``today`` does not: a visit now is
    what the last one is compared with.
    """
    days = {
        *(treatment.on for treatment in records.treatments),
        *(measure.on for measure in records.other_side),
        *(measure.on for measure in records.by_hand),
        *(score.on for score in records.scores),
        *(plan.issued_on for plan in records.plans),
        *(d.plan.issued_on for d in ordered if d.plan.issued_on is not None),
    }
    return max((on for on in days if today is None or on < today), default=None)
