"""The practice's own records in the store: people, episodes, treatments, measures, plans."""

from __future__ import annotations

from typing import Any, TypeVar

import msgspec
from sqlalchemy import Connection, delete, insert, select, update

from coach.domain.fault import Fault
from coach.domain.practice import (
    Episode,
    HandMeasure,
    IssuedPlan,
    OtherSideMeasure,
    PatientRecords,
    Person,
    Record,
    TotalScore,
    Treatment,
)
from coach.storage.store_checks import check
from coach.storage.store_database import Database
from coach.storage.store_fit import changed_elsewhere, check_fits, check_stays
from coach.storage.store_kinds import KINDS, has_more, name_of, patient_key, table_of
from coach.storage.store_tables import patients, sessions
from coach.texts import translate

R = TypeVar("R", bound=Record)


class PracticeRecords(Database):
    """Adds, changes, removes and lists records; what does not fit raises Fault and changes nothing.

    A record is known by its ``id``; ``code`` says whose it is.
    """

    def add(self, record: R) -> R:
        """Add a record; gives it with its id. A person's code must be new, a record's known."""
        check(record, name_of(record))

        def work(connection: Connection) -> R:
            row = _row(connection, record)
            check_fits(connection, record)
            added = connection.execute(insert(table_of(record)).values(row | {"edition": 1}))
            (key,) = added.inserted_primary_key or (None,)
            return msgspec.structs.replace(record, id=key, edition=1)

        return self._write(work)

    def change(self, record: R) -> R:
        """Put a record in the place of the one with its id; gives it in its new edition.

        Raises Fault where another desk changed or removed that one since it was read.
        """
        check(record, name_of(record))

        def work(connection: Connection) -> R:
            table = table_of(record)
            row = _row(connection, record) | {"edition": record.edition + 1}
            check_fits(connection, record)
            check_stays(connection, record)
            this = (table.c.id == record.id, table.c.edition == record.edition)
            if connection.execute(update(table).where(*this).values(row)).rowcount != 1:
                raise changed_elsewhere(record)
            return msgspec.structs.replace(record, edition=record.edition + 1)

        return self._write(work)

    def remove(self, record: Record) -> None:
        """Remove a record as it was read; a person only where nothing else is kept of them.

        What belonged to a removed episode stays with the person.
        """

        def work(connection: Connection) -> None:
            table = table_of(record)
            if isinstance(record, Person) and has_more(connection, record.id):
                raise Fault(
                    translate(
                        "faults",
                        "{code} has sessions or records in the store: erase the person "
                        "with all of them, or leave the person in.",
                    ).format(code=record.code)
                )
            this = (table.c.id == record.id, table.c.edition == record.edition)
            if connection.execute(delete(table).where(*this)).rowcount != 1:
                raise changed_elsewhere(record)

        self._write(work)

    def erase_person(self, code: str) -> None:
        """Remove a person with every session, file and record; backup copies are not touched."""

        def work(connection: Connection) -> None:
            key = patient_key(connection, code)
            connection.execute(delete(sessions).where(sessions.c.patient_id == key))
            connection.execute(delete(patients).where(patients.c.id == key))

        self._write(work)

    def people(self) -> tuple[Person, ...]:
        """List everyone, with or without sessions, by code."""
        return self._listed(Person)

    def person(self, code: str) -> Person:
        """Give the person of a code; raises Fault where there is none."""
        with self._read() as connection:
            patient_key(connection, code)
            return _listed(connection, Person, code)[0]

    def records_of(self, code: str) -> PatientRecords:
        """Give all that is written down of a person, of one moment of the store."""
        with self._read() as connection:
            patient_key(connection, code)
            return PatientRecords(
                person=_listed(connection, Person, code)[0],
                episodes=_listed(connection, Episode, code),
                treatments=_listed(connection, Treatment, code),
                other_side=_listed(connection, OtherSideMeasure, code),
                by_hand=_listed(connection, HandMeasure, code),
                scores=_listed(connection, TotalScore, code),
                plans=_listed(connection, IssuedPlan, code),
            )

    def episodes(self, code: str) -> tuple[Episode, ...]:
        """List a person's episodes, oldest first."""
        return self._listed(Episode, code)

    def treatments(self, code: str) -> tuple[Treatment, ...]:
        """List a person's treatments, oldest first."""
        return self._listed(Treatment, code)

    def other_side_measures(self, code: str) -> tuple[OtherSideMeasure, ...]:
        """List the measures of a person's other side, oldest first."""
        return self._listed(OtherSideMeasure, code)

    def hand_measures(self, code: str) -> tuple[HandMeasure, ...]:
        """List what was measured by hand on a person, oldest first."""
        return self._listed(HandMeasure, code)

    def total_scores(self, code: str) -> tuple[TotalScore, ...]:
        """List a person's questionnaire totals, oldest first."""
        return self._listed(TotalScore, code)

    def issued_plans(self, code: str) -> tuple[IssuedPlan, ...]:
        """List the plans that a person was given, by revision."""
        return self._listed(IssuedPlan, code)

    def _listed(self, kind: type[R], code: str | None = None) -> tuple[R, ...]:
        with self._read() as connection:
            return _listed(connection, kind, code)


def _listed(connection: Connection, kind: type[R], code: str | None) -> tuple[R, ...]:
    table, order = KINDS[kind]
    fields = [n for n in kind.__struct_fields__ if n != "code"]
    columns = [table.c[name] for name in fields]
    query = select(*columns, patients.c.code).order_by(table.c[order], table.c.id)
    if table is not patients:
        query = query.join_from(table, patients, table.c.patient_id == patients.c.id)
    if code is not None:
        query = query.where(patients.c.code == code)
    rows = connection.execute(query).all()
    return tuple(
        msgspec.convert(dict(zip((*fields, "code"), row, strict=True)), kind) for row in rows
    )


def _row(connection: Connection, record: Record) -> dict[str, Any]:
    row = {n: getattr(record, n) for n in record.__struct_fields__ if n not in ("id", "edition")}
    if not isinstance(record, Person):
        row["patient_id"] = patient_key(connection, row.pop("code"))
    return row
