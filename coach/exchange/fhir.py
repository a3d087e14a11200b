"""A patient's sessions as one HL7 FHIR R4 Bundle of the type collection."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from datetime import datetime

import msgspec

from coach.domain.fault import Fault
from coach.domain.practice import PatientRecords
from coach.domain.session import SessionDocument, SessionEnd
from coach.exchange.fhir_device import device_identity, devices, used
from coach.exchange.fhir_elements import (
    Element,
    Resource,
    after,
    concept,
    identity,
    moment,
    reference,
    shoulder,
    text_of,
)
from coach.exchange.fhir_observations import Context, observations
from coach.exchange.fhir_plan import plan_identity, plans
from coach.exchange.fhir_records import practice_resources
from coach.review.adherence import exercised
from coach.review.history import Point, Series, history, in_order, started
from coach.review.practice_records import NO_RECORDS
from coach.texts import translate

_WHY_ENDED: dict[SessionEnd, str] = {
    SessionEnd.COMPLETED: "completed",
    SessionEnd.STOPPED: "stopped by the person",
    SessionEnd.SKIPPED: "left out by the person",
    SessionEnd.PAIN: "ended because pain above the agreed limit was given",
    SessionEnd.UNFINISHED: "ended because too many holds were let go early",
    SessionEnd.INPUT_ENDED: "ended because the camera's picture ended",
    SessionEnd.INTERRUPTED: "interrupted; recovered from the journal",
}


def bundle(
    documents: Sequence[SessionDocument],
    *,
    written_at: datetime | None = None,
    names: Mapping[str, str] | None = None,
    records: PatientRecords = NO_RECORDS,
) -> Resource:
    """Write one patient's sessions as a Bundle; the same record gives the same ids.

    ``written_at`` is the instant of writing, with its zone: without it no plan counts as expired.
    ``names`` are the exercises' names in trade terms, by their names in files; ``records`` are what
    the practice wrote down itself.
    """
    if not documents:
        raise Fault(
            translate(
                "faults",
                "There is no session to export: import session files first.",
            )
        )
    ordered = in_order(documents)
    # A practice's code alone is not unique between practices; a session's number is.
    patient = identity("patient", ordered[0].plan.patient_code, ordered[0].session_id)
    resources: list[Resource] = [_patient(patient, ordered[-1].plan.patient_code)]
    resources += devices(ordered)
    resources += plans(ordered, patient, written_at.date() if written_at else None, names or {})
    points: dict[str, list[tuple[Series, Point]]] = {}
    for series in history(ordered):
        for point in series.points:
            points.setdefault(point.session_id, []).append((series, point))
    for document in ordered:
        context = Context(
            patient=patient,
            plan=plan_identity(patient, document.plan),
            procedure=identity("procedure", document.session_id),
            names=names or {},
        )
        resources.append(_procedure(document, context))
        resources += observations(document, points.get(document.session_id, ()), context)
    resources += practice_resources(records, patient, written_at.date() if written_at else None)
    written: Resource = {"resourceType": "Bundle", "type": "collection"}
    if written_at is not None:
        written["timestamp"] = moment(written_at)
    written["entry"] = [
        {"fullUrl": f"urn:uuid:{resource['id']}", "resource": resource} for resource in resources
    ]
    return written


def bundle_bytes(
    documents: Sequence[SessionDocument],
    *,
    written_at: datetime | None = None,
    names: Mapping[str, str] | None = None,
    records: PatientRecords = NO_RECORDS,
) -> bytes:
    """Write the same as JSON in UTF-8."""
    found = bundle(documents, written_at=written_at, names=names, records=records)
    # Python's own encoder indents four times as slowly as it writes and another indents together.
    dense = json.dumps(found, ensure_ascii=False, allow_nan=False).encode()
    return msgspec.json.format(dense, indent=2) + b"\n"


def _patient(identifier: str, code: str) -> Resource:
    return {
        "resourceType": "Patient",
        "id": identifier,
        "identifier": [{"type": concept("code given by the practice"), "value": text_of(code)}],
    }


def _procedure(document: SessionDocument, context: Context) -> Resource:
    begin = started(document)
    held = exercised(document)
    status = "completed" if document.ended_because is SessionEnd.COMPLETED else "stopped"
    found: Resource = {
        "resourceType": "Procedure",
        "id": context.procedure,
        "status": status if held else "not-done",
        "code": concept("home exercise of the shoulder, self-assisted stretching"),
        "subject": reference(context.patient),
        "basedOn": [reference(context.plan)],
        "performedPeriod": {"start": moment(begin), "end": after(begin, document.duration_s)},
        "usedReference": [reference(device_identity(each)) for each in used(document)],
    }
    if found["status"] != "completed":
        found["statusReason"] = concept(
            _WHY_ENDED[document.ended_because] if held else "nothing was held"
        )
    sides = dict.fromkeys(e.side for e in document.exercises)
    if sides:
        found["bodySite"] = [shoulder(side) for side in sides]
    notes = _notes(document, context)
    if notes:
        found["note"] = notes
    return found


def _notes(document: SessionDocument, context: Context) -> list[Element]:
    said: list[str] = []
    for record in document.exercises:
        name = context.name_of(record)
        if record.ended_because is not SessionEnd.COMPLETED:
            said.append(f"{name}: {_WHY_ENDED[record.ended_because]}.")
        if record.eased:
            said.append(f"{name}: done as the easier one, after too much pain.")
    return [{"text": text_of(line)} for line in said]
