"""What was measured, timed and answered in one sitting, as Observations."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from coach.domain.progress import EndedBecause, Repetition, TimedHold
from coach.domain.session import ExerciseRecord, SessionDocument
from coach.exchange.fhir_device import device_identity
from coach.exchange.fhir_elements import (
    Element,
    Resource,
    after,
    category,
    component,
    concept,
    derived,
    identity,
    measured,
    moment,
    quantity,
    reference,
    shoulder,
)
from coach.exchange.wording import METHOD, TIMED_METHOD, exercise_name
from coach.review.history import Point, Series, started
from coach.review.wording import movement_of

HALF_WIDTH = "half width of the 95 % interval"
ENDED: dict[EndedBecause, str] = {
    EndedBecause.COMPLETED: "completed: the asked seconds were held",
    EndedBecause.LET_GO: "let go before the asked seconds",
    EndedBecause.LOST: "the arm was out of sight too long",
    EndedBecause.STOPPED: "paused or stopped by the person",
    EndedBecause.INPUT_ENDED: "the camera's picture ended",
}


@dataclass(frozen=True, slots=True)
class Context:
    """Ids of what a sitting's observations point at, and the exercises' names."""

    patient: str
    plan: str
    procedure: str
    names: Mapping[str, str]

    def name_of(self, record: ExerciseRecord) -> str:
        """Name an exercise for a therapist, with its side."""
        return exercise_name(
            record.exercise, record.movement, record.side, record.position, self.names
        )


def observations(
    document: SessionDocument, points: Sequence[tuple[Series, Point]], context: Context
) -> list[Resource]:
    """Write a sitting: each hold, each movement's value, each answer on pain.

    ``points`` are the sitting's own in the patient's history.
    """
    found: list[Resource] = []
    for place, record in enumerate(document.exercises):
        found += [_repetition(document, place, r, context) for r in record.repetitions]
        found += [_timed(document, place, h, context) for h in record.timed]
    found += [_sitting(document, series, point, context) for series, point in points]
    return [*found, *_pains(document, context)]


def _base(context: Context, identifier: str, kind: str, code: Element, at: str) -> Resource:
    return {
        "resourceType": "Observation",
        "id": identifier,
        "basedOn": [reference(context.plan)],
        "partOf": [reference(context.procedure)],
        "status": "final",
        "category": category(kind),
        "code": code,
        "subject": reference(context.patient),
        "effectiveDateTime": at,
    }


def _hold_identity(document: SessionDocument, place: int, hold: Repetition | TimedHold) -> str:
    # The stamp is needed: numbers begin anew where an exercise was recovered.
    kind = "repetition" if isinstance(hold, Repetition) else "timed"
    return identity(kind, document.session_id, place, hold.number, hold.start_s)


def _device(document: SessionDocument, record: ExerciseRecord) -> str:
    return device_identity(document.software_of(record))


def _repetition(
    document: SessionDocument, place: int, hold: Repetition, context: Context
) -> Resource:
    record = document.exercises[place]
    name = movement_of(record.measured, record.side, record.position)
    parts = [
        component(HALF_WIDTH, measured(hold.error, hold.unit)),
        component("seconds held and seen", quantity(hold.held_s, "second")),
        component("interquartile range of the readings", measured(hold.spread, hold.unit)),
        component("share of the hold with readings", quantity(hold.seen_fraction, "unity")),
        component("number in the exercise", quantity(hold.number, "unity")),
        component("how the hold ended", ENDED[hold.ended_because]),
    ]
    if hold.faults:
        parts.append(component("form", ", ".join(f.replace("-", " ") for f in hold.faults)))
    return {
        **_base(
            context,
            _hold_identity(document, place, hold),
            "exam",
            concept(f"{name}: range in one hold"),
            after(started(document), hold.start_s),
        ),
        "valueQuantity": measured(hold.value, hold.unit),
        "bodySite": shoulder(record.side),
        "method": concept(METHOD),
        "device": reference(_device(document, record)),
        "component": parts,
    }


def _timed(document: SessionDocument, place: int, hold: TimedHold, context: Context) -> Resource:
    record = document.exercises[place]
    return {
        **_base(
            context,
            _hold_identity(document, place, hold),
            "therapy",
            concept(f"{context.name_of(record)}: seconds of one timed hold"),
            after(started(document), hold.start_s),
        ),
        "valueQuantity": quantity(hold.held_s, "second"),
        "bodySite": shoulder(record.side),
        "method": concept(TIMED_METHOD),
        "device": reference(_device(document, record)),
        "component": [
            component("number in the exercise", quantity(hold.number, "unity")),
            component("how the hold ended", ENDED[hold.ended_because]),
        ],
    }


def _sitting(document: SessionDocument, series: Series, point: Point, context: Context) -> Resource:
    unit = series.movement.unit
    kind = (series.movement, series.side, series.position)
    held = [
        (place, record)
        for place, record in enumerate(document.exercises)
        if (record.movement, record.side, record.position) == kind and record.repetitions
    ]
    members = [
        _hold_identity(document, place, hold)
        for place, record in held
        for hold in record.repetitions
    ]
    measured_by = list(dict.fromkeys(_device(document, record) for _, record in held))
    found: Resource = {
        **_base(
            context,
            identity("sitting", document.session_id, *kind),
            "exam",
            concept(f"{movement_of(*kind)}: range of a sitting, median of the holds that count"),
            moment(point.at),
        ),
        "valueQuantity": measured(point.value, unit),
        "bodySite": shoulder(series.side),
        "method": concept(METHOD),
        "hasMember": [reference(member) for member in members],
        "component": [
            component(HALF_WIDTH, measured(point.error, unit)),
            component("holds counted", quantity(point.holds, "unity")),
            component(
                "share of holds in which the trunk leaned or turned",
                quantity(derived(point.feigned_share), "unity"),
            ),
            component("seconds held and seen", quantity(derived(point.held_s), "second")),
            component("best hold", measured(point.best, unit)),
            component("mean of the holds", measured(point.mean, unit)),
            component("standard deviation of the holds", measured(point.spread, unit)),
        ],
    }
    notes: list[Element] = []
    if len(measured_by) == 1:
        found["device"] = reference(measured_by[0])
    else:  # R4 has room for one
        words = "The holds were measured with different pose models: each names its own."
        notes.append({"text": words})
    if not point.complete:
        words = "No hold reached the asked seconds: holds of at least half of them count."
        notes.append({"text": words})
    if point.feigned:
        words = "The trunk leaned or turned in every hold that counts: this may not pass as range."
        notes.append({"text": words})
    if notes:
        found["note"] = notes
    return found


def _pains(document: SessionDocument, context: Context) -> Iterator[Resource]:
    begin = started(document)
    answered: int | None = None
    for place, record in enumerate(document.exercises):
        name = context.name_of(record)
        # One answer stands after an exercise and before the next: it is written once.
        if record.pain_before is not None and record.pain_before != answered:
            at, words = after(begin, record.started_s), f"pain 0-10 before {name}"
            yield _pain(document, (place, "before"), words, record.pain_before, at, context)
        if record.pain_after is not None:
            at, words = after(begin, record.ended_s), f"pain 0-10 after {name}"
            yield _pain(document, (place, "after"), words, record.pain_after, at, context)
        answered = record.pain_after
    if document.pain_at_end is not None:
        at = after(begin, document.duration_s)
        words = "pain 0-10 at the end of the sitting"
        yield _pain(document, ("end",), words, document.pain_at_end, at, context)


def _pain(
    document: SessionDocument,
    when: tuple[object, ...],
    words: str,
    score: int,
    at: str,
    context: Context,
) -> Resource:
    return {
        **_base(
            context,
            identity("pain", document.session_id, *when),
            "survey",
            concept(words, "pain"),
            at,
        ),
        "performer": [reference(context.patient)],
        "valueQuantity": quantity(score, "unity"),
    }
