"""``session.json``: the document of one sitting."""

from __future__ import annotations

from datetime import datetime
from typing import Any

import msgspec

from coach.documents.refusal import convert
from coach.documents.strict_json import parse_json
from coach.documents.versions import Upgrade, upgraded
from coach.domain.fault import Fault
from coach.domain.reading import Form
from coach.domain.session import ExerciseRecord, SessionDocument

MAX_SESSION_BYTES = 4_000_000

ROUNDING_S = 0.01
"""Slack when times are compared: they are stored in whole milliseconds."""

_NEW_NAMES = {"value_deg": "value", "error_deg": "error", "spread_deg": "spread"}


def upgraded_repetition(raw: dict[str, Any]) -> dict[str, Any]:
    """Turn a repetition of version 1, in which every value was in degrees, into one of version 2.

    What does not fit version 1 is left for the check of version 2 to refuse.
    """
    known = _refusing(raw, *_NEW_NAMES.values(), "unit")
    if isinstance(form := raw.get("form"), dict):
        known["form"] = _refusing(form, *Form.__struct_fields__[3:])
    return {_NEW_NAMES.get(name, name): value for name, value in known.items()}


def _refusing(raw: dict[str, Any], *names: str) -> dict[str, Any]:
    """Give fields that came with version 2 names that it will refuse."""
    return {f"{n} of version 2" if n in names else n: value for n, value in raw.items()}


def _from_1(raw: dict[str, Any]) -> dict[str, Any]:
    upgraded = raw | _each(raw, "exercises", _exercise_from_1) | {"version": 2}
    if isinstance(plan := raw.get("plan"), dict):
        upgraded["plan"] = plan | _each(plan, "exercises", lambda e: _refusing(e, "position"))
    return upgraded


def _exercise_from_1(raw: dict[str, Any]) -> dict[str, Any]:
    known = _refusing(raw, "position", "calibration")
    return known | _each(raw, "repetitions", upgraded_repetition)


def _each(raw: dict[str, Any], name: str, upgrade: Upgrade) -> dict[str, Any]:
    """Give the list of that name with each of its objects upgraded, nothing if it is no list."""
    entries = raw.get(name)
    if not isinstance(entries, list):
        return {}
    return {name: [upgrade(entry) if isinstance(entry, dict) else entry for entry in entries]}


_UPGRADES: dict[int, Upgrade] = {1: _from_1}


def read_session_document(data: bytes, where: str) -> SessionDocument:
    """Read a session document of any known version; ``where`` names it in a ``Fault``."""
    raw = parse_json(data, where, MAX_SESSION_BYTES)
    raw = upgraded(raw, name="shoulder-session", newest=2, upgrades=_UPGRADES, where=where)
    document = convert(raw, SessionDocument, where)
    if contradiction := _contradiction(document):
        raise Fault(f"{where} contradicts itself: {contradiction}; ask for a new file.")
    return document


def write_session_document(document: SessionDocument) -> bytes:
    """Give the document as indented UTF-8 JSON that ``read_session_document`` takes."""
    data = msgspec.json.format(msgspec.json.encode(document), indent=1) + b"\n"
    read_session_document(data, "The session document")
    return data


def _contradiction(document: SessionDocument) -> str | None:
    try:
        datetime.fromisoformat(document.started_at)
    except ValueError:
        return f"started_at {document.started_at} is no date of the calendar"
    for count, record in enumerate(document.exercises, start=1):
        if record.planned_index >= len(document.plan.exercises):
            return f"exercise {count} is not in its plan"
        if record.ended_s > document.duration_s + ROUNDING_S:
            return f"exercise {count} ends after the session"
        if found := _contradiction_in(record):
            return f"exercise {count}, {found}"
    return None


def _contradiction_in(record: ExerciseRecord) -> str | None:
    if record.ended_s < record.started_s:
        return "it ends before it starts"
    unit = record.movement.unit
    for repetition in record.repetitions:
        number = repetition.number
        if repetition.unit is not unit:
            return f"repetition {number} of {record.movement} is in the unit {repetition.unit}"
        if repetition.end_s < repetition.start_s:
            return f"repetition {number} ends before it starts"
        if repetition.held_s > repetition.end_s - repetition.start_s + ROUNDING_S:
            return f"repetition {number} was held for longer than it lasted"
        if repetition.start_s < record.started_s - ROUNDING_S:
            return f"repetition {number} starts before the exercise"
        if repetition.end_s > record.ended_s + ROUNDING_S:
            return f"repetition {number} ends after the exercise"
    return None
