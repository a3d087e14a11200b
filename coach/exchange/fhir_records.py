"""What the practice wrote down itself as FHIR resources: episodes, treatments, readings, totals."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from coach.domain.movement import Unit
from coach.domain.practice import (
    Episode,
    HandMeasure,
    OfEpisode,
    OtherSideMeasure,
    PatientRecords,
    Record,
    TotalScore,
    Treatment,
)
from coach.exchange.fhir_elements import (
    Element,
    Resource,
    category,
    component,
    concept,
    identity,
    measured,
    quantity,
    reference,
    shoulder,
    text_of,
)
from coach.exchange.wording import BY_HAND, OTHER_SIDE, QUESTIONNAIRE
from coach.review.records import treatment_name
from coach.review.wording import movement_name, side_word


def practice_resources(
    records: PatientRecords, patient: str, today: date | None
) -> Iterator[Resource]:
    """Write each record as its own resource; plans are written where a sitting followed them.

    ``today`` tells treatments that lie ahead from those that were done; without it neither is
    claimed.
    """
    episodes = {episode.id: episode for episode in records.episodes}
    for episode in records.episodes:
        yield from _episode(episode, patient)
    for treatment in records.treatments:
        yield _treatment(treatment, patient, episodes.get(treatment.episode_id), today)
    for reading in records.by_hand:
        yield _by_hand(reading, patient)
    for measure in records.other_side:
        yield _other_side(measure, patient, episodes.get(measure.episode_id))
    for score in records.scores:
        yield _total(score, patient)


def _begin(resource_type: str, record: Record, patient: str) -> Resource:
    """Begin a resource; a correction keeps the id, which rests on the store's number."""
    number = record if record.id is None else record.id
    return {
        "resourceType": resource_type,
        "id": identity(resource_type, type(record).__name__, patient, number),
        "meta": {"versionId": str(record.edition)},
    }


def _episode(episode: Episode, patient: str) -> Iterator[Resource]:
    """Write a Condition in words and no diagnosis, and the goals in the person's words."""
    found: Resource = {
        **_begin("Condition", episode, patient),
        "code": concept("stiff shoulder in physiotherapy"),
        "bodySite": [shoulder(episode.side)],
        "subject": reference(patient),
        "onsetDateTime": episode.began_on.isoformat(),
    }
    judged = {"phase": episode.phase, "irritability": episode.irritability}
    stages = [
        {"summary": concept(f"{word}, as set by the therapist: {value}")}
        for word, value in judged.items()
        if value is not None
    ]
    if stages:
        found["stage"] = stages
    yield found | _note(episode.note)
    if episode.goals.strip():
        yield {
            "resourceType": "Goal",
            "id": identity("goal", found["id"]),
            "lifecycleStatus": "active",
            "description": concept(episode.goals),
            "subject": reference(patient),
            "addresses": [reference(found["id"])],
        }


def _treatment(
    treatment: Treatment, patient: str, episode: Episode | None, today: date | None
) -> Resource:
    ahead = today is not None and treatment.on > today
    found: Resource = {
        **_begin("ServiceRequest" if ahead else "Procedure", treatment, patient),
        "code": concept(treatment_name(treatment.kind)),
        "subject": reference(patient),
    }
    on = treatment.on.isoformat()
    if ahead:
        found |= {"status": "active", "intent": "plan", "occurrenceDateTime": on}
    else:
        found |= {"status": "unknown" if today is None else "completed", "performedDateTime": on}
    if episode is not None:
        found["bodySite"] = [shoulder(episode.side)]
        found["reasonReference"] = [reference(_begin("Condition", episode, patient)["id"])]
    return found | _note(treatment.text)


def _by_hand(reading: HandMeasure, patient: str) -> Resource:
    how = "passive" if reading.passive else "active"
    name = f"{movement_name(reading.movement)}, {side_word(reading.side)}"
    return {
        **_observation(reading, patient, "exam", f"{name}: {how} range by goniometer", reading.on),
        "valueQuantity": measured(reading.value_deg, Unit.DEGREES),
        "bodySite": shoulder(reading.side),
        "method": concept(f"{BY_HAND}, {how}"),
    }


def _other_side(measure: OtherSideMeasure, patient: str, episode: Episode | None) -> Resource:
    where = f"{'other' if episode is None else episode.side.other} shoulder"
    name = f"{movement_name(measure.movement)}, {where}: range to compare with"
    return {
        **_observation(measure, patient, "exam", name, measure.on),
        "valueQuantity": measured(measure.value_deg, Unit.DEGREES),
        "bodySite": concept(where),
        "method": concept(OTHER_SIDE),
    }


def _total(score: TotalScore, patient: str) -> Resource:
    return {
        **_observation(score, patient, "survey", f"{score.name}: total score", score.on),
        "valueQuantity": quantity(score.total, "unity"),
        "method": concept(QUESTIONNAIRE),
        "component": [component("highest possible total", quantity(score.maximum, "unity"))],
    }


def _observation(record: OfEpisode, patient: str, kind: str, name: str, on: date) -> Resource:
    return {
        **_begin("Observation", record, patient),
        "status": "final",
        "category": category(kind),
        "code": concept(name),
        "subject": reference(patient),
        "effectiveDateTime": on.isoformat(),
        "performer": [{"display": "the practice"}],
    }


def _note(text: str) -> Element:
    return {"note": [{"text": text_of(text)}]} if text.strip() else {}
