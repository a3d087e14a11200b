"""Questions across patients, each answered by one statement of the database."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from sqlalchemy import select

from coach.domain.form import FormFault
from coach.domain.movement import Movement, Position, Side, Unit
from coach.review.holds import FEIGNING
from coach.storage.store_database import Database
from coach.storage.store_doubts import COUNTED
from coach.storage.store_rows import utc_text
from coach.storage.store_tables import exercises, patients, repetitions, sessions


@dataclass(frozen=True, slots=True)
class CohortHold:
    """One hold of one patient. ``error`` is the half width of the 95 % interval of ``value``.

    ``at`` is when the session began, with the zone offset of its place; ``asked_s`` is None where
    the plan does not say.
    """

    code: str
    session_id: str
    at: datetime
    side: Side
    position: Position
    definitions: int
    value: float
    error: float
    unit: Unit
    held_s: float
    asked_s: float | None
    completed: bool
    faults: tuple[FormFault, ...]


class Cohort(Database):
    """Reads all patients at once."""

    def cohort(
        self,
        movement: Movement,
        since: datetime | None = None,
        until: datetime | None = None,
    ) -> tuple[CohortHold, ...]:
        """Give every patient's holds of a movement, by code and in the order they were done.

        Without those that the trunk feigned, as in a patient's own history. ``since`` and
        ``until`` bound when the session began and have a zone.
        """
        s, e, r = sessions.c, exercises.c, repetitions.c
        query = (
            select(patients.c.code, s.id, s.started_at, e.side, e.posture, s.definitions, r.value,
                   r.error, r.unit, r.held_s, e.hold_asked_s, r.completed, r.faults)
            .select_from(exercises)
            .join(sessions, s.id == e.session_id)
            .join(patients, patients.c.id == s.patient_id)
            .join(
                repetitions,
                (r.session_id == e.session_id) & (r.exercise_position == e.position),
            )
            .where(e.movement == movement, COUNTED)
            .order_by(patients.c.code, s.started_utc, s.id, e.position, r.position)
        )  # fmt: skip
        if since is not None:
            query = query.where(s.started_utc >= utc_text(since))
        if until is not None:
            query = query.where(s.started_utc < utc_text(until))
        with self._read() as connection:
            holds = (
                CohortHold(
                    row.code,
                    row.id,
                    datetime.fromisoformat(row.started_at),
                    Side(row.side),
                    Position(row.posture),
                    row.definitions,
                    row.value,
                    row.error,
                    Unit(row.unit),
                    row.held_s,
                    row.hold_asked_s,
                    row.completed,
                    tuple(map(FormFault, row.faults.split())),
                )
                for row in connection.execute(query)
            )
            return tuple(hold for hold in holds if FEIGNING.isdisjoint(hold.faults))
