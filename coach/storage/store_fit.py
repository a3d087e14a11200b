"""Whether a record of the practice fits what the store holds already."""

from __future__ import annotations

from sqlalchemy import Connection, select

from coach.domain.fault import Fault
from coach.domain.practice import IssuedPlan, OfEpisode, Person, Record
from coach.storage.store_kinds import has_more, name_of, patient_key, table_of
from coach.storage.store_tables import episodes, issued_plans, patients
from coach.texts import translate


def check_fits(connection: Connection, record: Record) -> None:
    """Refuse a second person of a code, a second plan of a revision, another's episode."""
    match record:
        case Person():
            query = select(patients.c.id).where(patients.c.code == record.code)
            what = translate(
                "faults",
                "There is a person with the code {code} already: choose another code.",
            ).format(code=record.code)
        case IssuedPlan():
            query = (
                select(issued_plans.c.id)
                .join(patients, patients.c.id == issued_plans.c.patient_id)
                .where(patients.c.code == record.code)
                .where(issued_plans.c.revision == record.revision)
            )
            what = translate(
                "faults",
                "{code} was given a plan of revision {revision} already: issue it as "
                "the next revision.",
            ).format(code=record.code, revision=record.revision)
        case _:
            _check_episode(connection, record)
            return
    if connection.scalar(query) not in (None, record.id):
        raise Fault(what)
    _check_episode(connection, record)


def check_stays(connection: Connection, record: Record) -> None:
    """Refuse a change that would give a record to another person, or its sessions a new code."""
    if isinstance(record, Person):
        _check_code_stays(connection, record)
        return
    table = table_of(record)
    owner = connection.scalar(select(table.c.patient_id).where(table.c.id == record.id))
    if owner is not None and owner != patient_key(connection, record.code):
        raise Fault(
            translate(
                "faults",
                "The {name_of} belongs to another person than {code}: add it anew to "
                "the right one, and remove this one.",
            ).format(name_of=name_of(record), code=record.code)
        )


def _check_code_stays(connection: Connection, person: Person) -> None:
    code = connection.scalar(select(patients.c.code).where(patients.c.id == person.id))
    if code is not None and code != person.code and has_more(connection, person.id):
        raise Fault(
            translate(
                "faults",
                "The code {code} stands in the person's sessions and records and cannot"
                " become {new_code}: add a new person instead.",
            ).format(code=code, new_code=person.code)
        )


def _check_episode(connection: Connection, record: Record) -> None:
    if not isinstance(record, OfEpisode) or record.episode_id is None:
        return
    query = select(episodes.c.patient_id).where(episodes.c.id == record.episode_id)
    if connection.scalar(query) != patient_key(connection, record.code):
        raise Fault(
            translate(
                "faults",
                "The {name_of} names an episode that {code} does not have: choose one "
                "of the person's own.",
            ).format(name_of=name_of(record), code=record.code)
        )


def changed_elsewhere(record: Record) -> Fault:
    """Say that another desk was quicker."""
    return Fault(
        translate(
            "faults",
            "The {name_of} of {code} was changed or removed at another desk meanwhile: "
            "look at it again and repeat the change.",
        ).format(name_of=name_of(record), code=record.code)
    )
