"""``session.json``: the document of one sitting."""

from __future__ import annotations

from datetime import datetime
from typing import Any

import msgspec

from coach.documents.plan import upgraded_plan
from coach.documents.refusal import convert
from coach.documents.strict_json import parse_json
from coach.documents.versions import Upgrade, each, refusing, upgraded
from coach.domain.fault import Fault
from coach.domain.reading import Form
from coach.domain.session import ExerciseRecord, SessionDocument
from coach.texts import translate

MAX_SESSION_BYTES = 4_000_000

ROUNDING_S = 0.01
"""Slack when times are compared: they are stored in whole milliseconds."""

_YEARS = range(1970, 2200)
"""A computer that lost its clock says 1970; weeks are counted from one session to another."""

_NEW_NAMES = {"value_deg": "value", "error_deg": "error", "spread_deg": "spread"}


def upgraded_repetition(raw: dict[str, Any]) -> dict[str, Any]:
    """Turn a repetition of version 1, in which every value was in degrees, into one of version 2.

    What does not fit version 1 is left for the check of version 2 to refuse.
    """
    known = refusing(raw, *_NEW_NAMES.values(), "unit", version=2)
    if isinstance(form := raw.get("form"), dict):
        known["form"] = refusing(form, *Form.__struct_fields__[3:], version=2)
    return {_NEW_NAMES.get(name, name): value for name, value in known.items()}


def _from_1(raw: dict[str, Any]) -> dict[str, Any]:
    def exercise(old: dict[str, Any]) -> dict[str, Any]:
        known = refusing(old, "position", "calibration", version=2)
        return known | each(old, "repetitions", upgraded_repetition)

    def planned(old: dict[str, Any]) -> dict[str, Any]:
        return refusing(old, "position", version=2)

    upgraded = raw | each(raw, "exercises", exercise) | {"version": 2}
    if isinstance(plan := raw.get("plan"), dict):
        upgraded["plan"] = plan | each(plan, "exercises", planned)
    return upgraded


def _from_2(raw: dict[str, Any]) -> dict[str, Any]:
    def repetition(old: dict[str, Any]) -> dict[str, Any]:
        return refusing(old, "faults", version=3)

    def exercise(old: dict[str, Any]) -> dict[str, Any]:
        known = refusing(old, "exercise", "eased", "offered", "timed", version=3)
        return known | each(old, "repetitions", repetition)

    upgraded = raw | each(raw, "exercises", exercise) | {"version": 3}
    if isinstance(plan := raw.get("plan"), dict):
        if plan.get("version") != 1:
            return upgraded | {"plan": refusing(plan, "version", version=3)}
        upgraded["plan"] = upgraded_plan(plan)
    return upgraded


def _from_3(raw: dict[str, Any]) -> dict[str, Any]:
    def exercise(old: dict[str, Any]) -> dict[str, Any]:
        return refusing(old, "model_sha256", version=4)

    return raw | each(raw, "exercises", exercise) | {"version": 4}


_UPGRADES: dict[int, Upgrade] = {1: _from_1, 2: _from_2, 3: _from_3}


def read_session_document(data: bytes, where: str) -> SessionDocument:
    """Read a session document of any known version; ``where`` names it in a ``Fault``."""
    raw = parse_json(data, where, MAX_SESSION_BYTES)
    raw = upgraded(raw, name="shoulder-session", newest=4, upgrades=_UPGRADES, where=where)
    document = convert(raw, SessionDocument, where)
    if contradiction := _contradiction(document):
        raise Fault(
            translate(
                "faults", "{where} contradicts itself: {contradiction}; ask for a new file."
            ).format(where=where, contradiction=contradiction)
        )
    return document


def write_session_document(document: SessionDocument) -> bytes:
    """Give the document as indented UTF-8 JSON that ``read_session_document`` takes."""
    data = msgspec.json.format(msgspec.json.encode(document), indent=1) + b"\n"
    read_session_document(data, translate("faults", "The session document"))
    return data


def _contradiction(document: SessionDocument) -> str | None:
    try:
        year = datetime.fromisoformat(document.started_at).year
    except ValueError:
        return translate("faults", "started_at {started_at} is no date of the calendar").format(
            started_at=document.started_at
        )
    if year not in _YEARS:
        told = translate("faults", "started_at {started_at} is not from {first} to {last}")
        return told.format(started_at=document.started_at, first=_YEARS[0], last=_YEARS[-1])
    for count, record in enumerate(document.exercises, start=1):
        if record.planned_index >= len(document.plan.exercises):
            return translate("faults", "exercise {count} is not in its plan").format(count=count)
        if record.ended_s > document.duration_s + ROUNDING_S:
            return translate("faults", "exercise {count} ends after the session").format(
                count=count
            )
        if found := _contradiction_in(record):
            return translate("faults", "exercise {count}, {found}").format(count=count, found=found)
    return None


def _contradiction_in(record: ExerciseRecord) -> str | None:
    if record.ended_s < record.started_s:
        return translate("faults", "it ends before it starts")
    if record.movement is None and record.exercise is None:
        return translate("faults", "it has neither an exercise nor a movement")
    if record.movement is None and record.repetitions:
        return translate("faults", "it has measured repetitions without a movement")
    for hold in record.timed:
        if hold.end_s < hold.start_s or hold.held_s > hold.end_s - hold.start_s + ROUNDING_S:
            return translate(
                "faults", "timed hold {number} was held for longer than it lasted"
            ).format(number=hold.number)
        if not record.started_s - ROUNDING_S <= hold.start_s <= record.ended_s + ROUNDING_S:
            return translate("faults", "timed hold {number} starts outside the exercise").format(
                number=hold.number
            )
    unit = None if record.movement is None else record.movement.unit
    for repetition in record.repetitions:
        number = repetition.number
        if repetition.unit is not unit:
            return translate(
                "faults", "repetition {number} of {movement} is in the unit {unit}"
            ).format(number=number, movement=record.movement, unit=repetition.unit)
        if repetition.end_s < repetition.start_s:
            return translate("faults", "repetition {number} ends before it starts").format(
                number=number
            )
        if repetition.held_s > repetition.end_s - repetition.start_s + ROUNDING_S:
            return translate(
                "faults", "repetition {number} was held for longer than it lasted"
            ).format(number=number)
        if repetition.start_s < record.started_s - ROUNDING_S:
            return translate("faults", "repetition {number} starts before the exercise").format(
                number=number
            )
        if repetition.end_s > record.ended_s + ROUNDING_S:
            return translate("faults", "repetition {number} ends after the exercise").format(
                number=number
            )
    return None
