"""Which table holds which kind of record of the practice, and whose a record is."""

from __future__ import annotations

from sqlalchemy import Connection, Table, func, select

from coach.domain.fault import Fault
from coach.domain.practice import (
    Episode,
    HandMeasure,
    IssuedPlan,
    OtherSideMeasure,
    Person,
    Record,
    TotalScore,
    Treatment,
)
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
from coach.texts import translate

KINDS: dict[type[Record], tuple[Table, str]] = {
    Person: (patients, "code"),
    Episode: (episodes, "began_on"),
    Treatment: (treatments, "on"),
    OtherSideMeasure: (other_side_measures, "on"),
    HandMeasure: (hand_measures, "on"),
    TotalScore: (total_scores, "on"),
    IssuedPlan: (issued_plans, "revision"),
}
"""Table, and the column that orders a list."""


def table_of(record: Record) -> Table:
    """Give the table that holds a record's kind."""
    return KINDS[type(record)][0]


def name_of(record: Record) -> str:
    """Give what people call a record's kind."""
    match record:
        case Person():
            return translate("record", "person")
        case Episode():
            return translate("record", "episode")
        case Treatment():
            return translate("record", "treatment")
        case OtherSideMeasure():
            return translate("record", "measure of the other side")
        case HandMeasure():
            return translate("record", "measure by hand")
        case TotalScore():
            return translate("record", "total score")
        case IssuedPlan():
            return translate("record", "plan")
        case _:
            raise AssertionError(type(record))


def patient_key(connection: Connection, code: str) -> int:
    """Give the key of the person of a code; raises Fault where there is none."""
    key = connection.scalar(select(patients.c.id).where(patients.c.code == code))
    if key is None:
        raise Fault(
            translate(
                "faults",
                "There is no person with the code {code} in the store: add the person first.",
            ).format(code=code)
        )
    return int(key)


def has_more(connection: Connection, patient: int | None) -> bool:
    """Whether a person has sessions or records."""
    owned = [sessions, *(table for table, _ in KINDS.values() if table is not patients)]
    return any(
        connection.scalar(
            select(func.count()).select_from(table).where(table.c.patient_id == patient)
        )
        for table in owned
    )
