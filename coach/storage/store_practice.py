"""The practice's own records in the store: people, episodes, treatments, measures, plans."""

from __future__ import annotations

from typing import Any, TypeVar

import msgspec
from sqlalchemy import Connection, Table, delete, func, insert, select, update

from coach.domain.fault import Fault
from coach.domain.practice import (
    Episode,
    HandMeasure,
    IssuedPlan,
    OfEpisode,
    OtherSideMeasure,
    Person,
    Record,
    TotalScore,
    Treatment,
)
from coach.storage.store_checks import check
from coach.storage.store_database import Database
from coach.storage.store_tables import (
    episodes,
    hand_measures,
    issued_plans,
    other_side_measures,
    patients,
    sessions,
    total_scores,
    treatments,
)

R = TypeVar("R", bound=Record)

_KINDS: dict[type[Record], tuple[Table, str, str]] = {
    Person: (patients, "code", "person"),
    Episode: (episodes, "began_on", "episode"),
    Treatment: (treatments, "on", "treatment"),
    OtherSideMeasure: (other_side_measures, "on", "measure of the other side"),
    HandMeasure: (hand_measures, "on", "measure by hand"),
    TotalScore: (total_scores, "on", "total score"),
    IssuedPlan: (issued_plans, "revision", "plan"),
}
"""Table, the column that orders a list, and what people call it."""


class PracticeRecords(Database):
    """Adds, changes, removes and lists records; what does not fit raises Fault and changes nothing.

    A record is known by its ``id``; ``code`` says whose it is.
    """

    def add(self, record: R) -> R:
        """Add a record; gives it with its id. A person's code must be new, a record's known."""
        check(record, _name(record))

        def work(connection: Connection) -> R:
            table, _, _ = _KINDS[type(record)]
            row = _row(connection, record)
            _check_free(connection, record)
            added = connection.execute(insert(table).values(row | {"edition": 1}))
            (key,) = added.inserted_primary_key or (None,)
            return msgspec.structs.replace(record, id=key, edition=1)

        return self._write(work)

    def change(self, record: R) -> R:
        """Put a record in the place of the one with its id; gives it in its new edition.

        Raises Fault where another desk changed or removed that one since it was read.
        """
        check(record, _name(record))

        def work(connection: Connection) -> R:
            table, _, _ = _KINDS[type(record)]
            _check_free(connection, record)
            row = _row(connection, record) | {"edition": record.edition + 1}
            if isinstance(record, Person):
                _check_code_stays(connection, record)
            else:
                _check_owner_stays(connection, record)
            this = (table.c.id == record.id, table.c.edition == record.edition)
            if connection.execute(update(table).where(*this).values(row)).rowcount != 1:
                raise _changed_elsewhere(record)
            return msgspec.structs.replace(record, edition=record.edition + 1)

        return self._write(work)

    def remove(self, record: Record) -> None:
        """Remove a record as it was read; a person only where nothing else is kept of them.

        What belonged to a removed episode stays with the person.
        """

        def work(connection: Connection) -> None:
            table, _, _ = _KINDS[type(record)]
            if isinstance(record, Person) and has_more(connection, record.id):
                raise Fault(
                    f"{record.code} has sessions or records in the store: erase the person with "
                    "all of them, or leave the person in."
                )
            this = (table.c.id == record.id, table.c.edition == record.edition)
            if connection.execute(delete(table).where(*this)).rowcount != 1:
                raise _changed_elsewhere(record)

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
        found = self._listed(Person, code)
        if not found:
            raise _unknown(code)
        return found[0]

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
        table, order, _ = _KINDS[kind]
        fields = [n for n in kind.__struct_fields__ if n != "code"]
        columns = [table.c[name] for name in fields]
        query = select(*columns, patients.c.code).order_by(table.c[order], table.c.id)
        if table is not patients:
            query = query.join_from(table, patients, table.c.patient_id == patients.c.id)
        if code is not None:
            query = query.where(patients.c.code == code)
        with self._read() as connection:
            rows = connection.execute(query).all()
        return tuple(
            msgspec.convert(dict(zip((*fields, "code"), row, strict=True)), kind) for row in rows
        )


def patient_key(connection: Connection, code: str) -> int:
    """Give the key of the person of a code; raises Fault where there is none."""
    key = connection.scalar(select(patients.c.id).where(patients.c.code == code))
    if key is None:
        raise _unknown(code)
    return int(key)


def has_more(connection: Connection, patient: int | None) -> bool:
    """Whether a person has sessions or records."""
    owned = [sessions, *(table for table, _, _ in _KINDS.values() if table is not patients)]
    return any(
        connection.scalar(
            select(func.count()).select_from(table).where(table.c.patient_id == patient)
        )
        for table in owned
    )


def _row(connection: Connection, record: Record) -> dict[str, Any]:
    row = {n: getattr(record, n) for n in record.__struct_fields__ if n not in ("id", "edition")}
    if not isinstance(record, Person):
        row["patient_id"] = patient_key(connection, row.pop("code"))
    if isinstance(record, OfEpisode) and record.episode_id is not None:
        query = select(episodes.c.patient_id).where(episodes.c.id == record.episode_id)
        if connection.scalar(query) != row["patient_id"]:
            raise Fault(
                f"The {_name(record)} names an episode that {record.code} does not have: choose "
                "one of the person's own."
            )
    return row


def _check_free(connection: Connection, record: Record) -> None:
    """Refuse a second person of a code, and a second plan of a revision."""
    match record:
        case Person():
            query = select(patients.c.id).where(patients.c.code == record.code)
            what = f"There is a person with the code {record.code} already: choose another code."
        case IssuedPlan():
            query = (
                select(issued_plans.c.id)
                .join(patients, patients.c.id == issued_plans.c.patient_id)
                .where(patients.c.code == record.code)
                .where(issued_plans.c.revision == record.revision)
            )
            what = (
                f"{record.code} was given a plan of revision {record.revision} already: issue it "
                "as the next revision."
            )
        case _:
            return
    if connection.scalar(query) not in (None, record.id):
        raise Fault(what)


def _check_code_stays(connection: Connection, person: Person) -> None:
    code = connection.scalar(select(patients.c.code).where(patients.c.id == person.id))
    if code is not None and code != person.code and has_more(connection, person.id):
        raise Fault(
            f"The code {code} stands in the person's sessions and records and cannot become "
            f"{person.code}: add a new person instead."
        )


def _check_owner_stays(connection: Connection, record: Record) -> None:
    table, _, _ = _KINDS[type(record)]
    owner = connection.scalar(select(table.c.patient_id).where(table.c.id == record.id))
    if owner is not None and owner != patient_key(connection, record.code):
        raise Fault(
            f"The {_name(record)} belongs to another person than {record.code}: add it anew to "
            "the right one, and remove this one."
        )


def _name(record: Record) -> str:
    return _KINDS[type(record)][2]


def _unknown(code: str) -> Fault:
    return Fault(f"There is no person with the code {code} in the store: add the person first.")


def _changed_elsewhere(record: Record) -> Fault:
    return Fault(
        f"The {_name(record)} of {record.code} was changed or removed at another desk meanwhile: "
        "look at it again and repeat the change."
    )
