"""Doubtful sessions: what speaks against them, and what the therapist decided."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

import msgspec
from sqlalchemy import Connection, delete, func, select, update

from coach.domain.fault import Fault
from coach.review.wording import day
from coach.storage.store_database import Database
from coach.storage.store_kinds import has_more, patient_key
from coach.storage.store_refusals import ImportOutcome
from coach.storage.store_rows import patient_of
from coach.storage.store_tables import imports, looks, patients, sessions
from coach.texts import read_again, translate


class Decision(StrEnum):
    """What became of a doubt."""

    OPEN = ""
    """Not decided: the session counts as the person's whom it names."""
    BELONGS = "belongs"
    """It counts as the person's whom the therapist said."""
    LEFT_OUT = "left out"
    """It stays in the store and counts for nothing."""


COUNTED = sessions.c.decision != Decision.LEFT_OUT
"""The condition under which a session is read."""
_DOUBTFUL = (
    # By the list of files first: to look through the sessions is to read every document.
    sessions.c.id.in_(
        select(imports.c.session_id).where(imports.c.outcome == ImportOutcome.DOUBTFUL)
    ),
    sessions.c.doubt != "",
)


@dataclass(frozen=True, slots=True)
class Doubt:
    """A doubtful session: the file names ``named``, it counts as one of ``code``.

    ``started_at`` keeps the zone offset of the patient's place.
    """

    session_id: str
    named: str
    code: str
    started_at: datetime
    sentence: str
    decision: Decision


class Doubts(Database):
    """Lists doubtful sessions and keeps what was decided; each decision can be taken back."""

    def doubts(self, decisions: Sequence[Decision] = (Decision.OPEN,)) -> tuple[Doubt, ...]:
        """Give the doubtful sessions with one of these decisions, oldest session first."""
        s = sessions.c
        query = select(s.id, s.document, patients.c.code, s.started_at, s.doubt, s.decision)
        query = query.join_from(sessions, patients, patients.c.id == s.patient_id)
        query = query.where(*_DOUBTFUL, s.decision.in_(decisions))
        with self._read() as connection:
            rows = connection.execute(query.order_by(s.started_utc, s.id))
            return tuple(
                Doubt(
                    key,
                    _named(text),
                    code,
                    datetime.fromisoformat(at),
                    read_again(said),
                    Decision(decision),
                )
                for key, text, code, at, said, decision in rows
            )

    def decide(self, doubt: Doubt, decision: Decision, code: str | None = None) -> Doubt:
        """Write down a decision; gives the doubt as it is then.

        BELONGS names the ``code`` of a known person. OPEN takes a decision back: the session
        counts as the person's again whom it names, who is added anew where they went with it.
        Raises Fault where another desk decided meanwhile.
        """

        def work(connection: Connection) -> Doubt:
            mine = sessions.c.id == doubt.session_id
            query = select(sessions.c.patient_id, sessions.c.batch).where(mine)
            row = connection.execute(
                query.join(patients).where(
                    sessions.c.decision == doubt.decision, patients.c.code == doubt.code
                )
            ).first()
            if row is None:
                raise Fault(
                    translate(
                        "faults",
                        "The doubt about the session of {date} was decided at another "
                        "desk meanwhile: look at it again.",
                    ).format(date=day(doubt.started_at.date()))
                )
            match decision:
                case Decision.BELONGS:
                    now = code or doubt.code
                    owner = patient_key(connection, now)
                case Decision.LEFT_OUT:
                    now, owner = doubt.code, row.patient_id
                case Decision.OPEN:
                    now = doubt.named
                    owner = patient_of(connection, now, row.batch)
            changed = update(sessions).where(mine).values(patient_id=owner, decision=decision)
            connection.execute(changed)
            # Two decisions may leave as many sessions, as old as before, which are others.
            connection.execute(delete(looks).where(looks.c.patient_id.in_((owner, row.patient_id))))
            if owner != row.patient_id:
                _forget_if_empty(connection, row.patient_id)
            return Doubt(
                doubt.session_id, doubt.named, now, doubt.started_at, doubt.sentence, decision
            )

        return self._write(work)

    def open_doubts(self) -> int:
        """Count the doubts that wait for a decision."""
        query = select(func.count()).select_from(sessions)
        query = query.where(*_DOUBTFUL, sessions.c.decision == Decision.OPEN)
        with self._read() as connection:
            return connection.scalar(query) or 0


def _named(document: str) -> str:
    """Give the code in a session's document, of whichever version it is."""
    return str(msgspec.json.decode(document)["plan"]["patient_code"])


def _forget_if_empty(connection: Connection, patient: int) -> None:
    """Remove a person who came with an import only and of whom nothing is kept any more."""
    came = (patients.c.id == patient, patients.c.batch.is_not(None), patients.c.name == "")
    if connection.scalar(select(patients.c.id).where(*came)) and not has_more(connection, patient):
        connection.execute(delete(patients).where(patients.c.id == patient))
