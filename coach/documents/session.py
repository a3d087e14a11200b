"""``session.json``: the document of one sitting."""

from __future__ import annotations

from datetime import datetime

import msgspec

from coach.documents.refusal import convert
from coach.documents.strict_json import parse_json
from coach.documents.versions import Upgrade, upgraded
from coach.domain.fault import Fault
from coach.domain.session import ExerciseRecord, SessionDocument

MAX_SESSION_BYTES = 4_000_000

ROUNDING_S = 0.01
"""Slack when times are compared: they are stored in whole milliseconds."""

_UPGRADES: dict[int, Upgrade] = {}


def read_session_document(data: bytes, where: str) -> SessionDocument:
    """Read a session document of any known version; ``where`` names it in a ``Fault``."""
    raw = parse_json(data, where, MAX_SESSION_BYTES)
    raw = upgraded(raw, name="shoulder-session", newest=1, upgrades=_UPGRADES, where=where)
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
    for repetition in record.repetitions:
        number = repetition.number
        if repetition.end_s < repetition.start_s:
            return f"repetition {number} ends before it starts"
        if repetition.held_s > repetition.end_s - repetition.start_s + ROUNDING_S:
            return f"repetition {number} was held for longer than it lasted"
        if repetition.start_s < record.started_s - ROUNDING_S:
            return f"repetition {number} starts before the exercise"
        if repetition.end_s > record.ended_s + ROUNDING_S:
            return f"repetition {number} ends after the exercise"
    return None
