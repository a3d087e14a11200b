"""A patient's record as a document of one kind."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime
from typing import assert_never

from coach.catalogue import catalogue, exercise_title
from coach.domain.practice import PatientRecords
from coach.domain.session import SessionDocument
from coach.exchange.fhir import bundle_bytes
from coach.exchange.kind import Kind
from coach.exchange.measures import measures_table
from coach.exchange.note import visit_note
from coach.exchange.parquet import holds_parquet
from coach.exchange.table import holds_table
from coach.review.practice_records import NO_RECORDS
from coach.texts import in_english


def exported(
    documents: Sequence[SessionDocument],
    kind: Kind,
    now: datetime,
    records: PatientRecords = NO_RECORDS,
) -> bytes:
    """Write a record as ``kind``; ``now`` has a zone.

    What the practice wrote down itself, ``records``, goes into the bundle, the note and the table
    of measures.
    """
    if kind is Kind.NOTE:
        return _note(documents, now.date(), records)
    if kind is Kind.PARQUET:  # its columns know no language, but what may go wrong is told in one
        return holds_parquet([documents])
    names = {exercise.exercise: exercise.name for exercise in catalogue().all}
    with in_english():  # what other programs read is the same in every language
        match kind:
            case Kind.FHIR:
                return bundle_bytes(documents, written_at=now, names=names, records=records)
            case Kind.CSV:
                return holds_table(documents)
            case Kind.MEASURES:
                return measures_table(records)
            case _:
                assert_never(kind)


def _note(documents: Sequence[SessionDocument], today: date, records: PatientRecords) -> bytes:
    names = {each.exercise: exercise_title(each) for each in catalogue().all}
    note = visit_note(documents, until=today, written_on=today, names=names, records=records)
    return note.encode("utf-8", errors="replace")
