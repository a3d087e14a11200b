"""A patient's holds as a table: CSV, one row a hold, measured or timed."""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Iterable, Iterator, Sequence
from datetime import datetime, timedelta

from coach.domain.progress import Repetition, TimedHold
from coach.domain.session import ExerciseRecord, SessionDocument
from coach.domain.text import UNSHOWN
from coach.exchange.wording import METHOD, TIMED_METHOD
from coach.review.history import asked, in_order, started
from coach.review.holds import holds_of

# What reads by place reads on: a new column stands at the end.
COLUMNS = (
    "patient", "session", "session_started_at", "exercise", "eased", "movement", "side",
    "position", "view", "kind", "number", "started_at", "asked_hold_s", "held_s", "ended_because",
    "value", "error_95", "unit", "interquartile_range", "seen_fraction", "faults", "pain_before",
    "pain_after", "pain_at_end_of_session", "method", "software", "software_version",
    "angle_definitions", "model_sha256",
)  # fmt: skip
_FORMULA = re.compile("(^|[;,|\"'])(\\s*)([=+\\-@\uff1d\uff0b\uff0d\uff20])")

Cell = str | float | None


def holds_table(documents: Sequence[SessionDocument]) -> bytes:
    """Write the table: UTF-8 with its mark, RFC 4180, oldest session first.

    Empty cells are unknown or do not apply. Texts are guarded (``guarded``); numbers are numbers.
    """
    return csv_bytes(COLUMNS, rows_of(documents))


def csv_bytes(columns: Sequence[str], rows: Iterable[Sequence[Cell]]) -> bytes:
    """Write a head row and rows as ``holds_table`` says."""
    out = io.StringIO(newline="")
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerow(columns)
    for row in rows:
        writer.writerow([_cell(c) for c in row])
    # Spreadsheets take UTF-8 for an older code page unless it is marked.
    return out.getvalue().encode("utf-8-sig", errors="replace")


def rows_of(documents: Sequence[SessionDocument]) -> Iterator[tuple[Cell, ...]]:
    """Give the cells of every hold, in the order of ``COLUMNS``, oldest session first."""
    for document in in_order(documents):
        for record in document.exercises:
            for hold in sorted(holds_of(record), key=lambda h: h.start_s):
                yield tuple(_row(document, record, hold))


def guarded(text: str) -> str:
    """Give a text that no spreadsheet runs as a formula, on one line.

    An apostrophe goes before = + - @ (and their full-width forms) at the beginning, and after
    every character at which some spreadsheet, set to another separator, would begin a new cell; a
    tab or carriage return becomes a space (OWASP, "CSV Injection").
    """
    return _FORMULA.sub(r"\1\2'\3", UNSHOWN.sub(" ", text))


def _cell(value: Cell) -> str | float:
    if value is None:
        return ""
    return guarded(value) if isinstance(value, str) else value


def _row(
    document: SessionDocument, record: ExerciseRecord, hold: Repetition | TimedHold
) -> Iterator[Cell]:
    begin, planned = started(document), asked(document, record)
    yield from (document.plan.patient_code, document.session_id, _at(begin))
    yield from (record.exercise, "yes" if record.eased else "no", record.movement)
    yield from (record.side, record.position, record.view)
    measured = isinstance(hold, Repetition)
    yield from ("measured" if measured else "timed", hold.number)
    yield _at(begin + timedelta(seconds=hold.start_s))
    yield from (planned.hold_s if planned else None, hold.held_s, hold.ended_because)
    if isinstance(hold, Repetition):
        yield from (hold.value, hold.error, hold.unit, hold.spread, hold.seen_fraction)
        yield " ".join(hold.faults)
    else:
        yield from (None,) * 6
    yield from (record.pain_before, record.pain_after, document.pain_at_end)
    yield METHOD if measured else TIMED_METHOD
    yield from (document.software.name, document.software.version, document.software.definitions)
    yield document.software_of(record).model_sha256 if measured else None


def _at(at: datetime) -> str:
    return at.isoformat(timespec="milliseconds")
