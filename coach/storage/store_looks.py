"""What was seen in each patient's sessions, kept until the sessions are others."""

from __future__ import annotations

from dataclasses import dataclass

import msgspec
from sqlalchemy import Connection, delete, func, insert, select

from coach import __version__
from coach.domain.fault import Fault
from coach.review.cohort import RULES, Looked, looked_at
from coach.storage.exercise_titles import TITLES
from coach.storage.store_doubts import COUNTED
from coach.storage.store_sessions import Sessions
from coach.storage.store_tables import looks, patients, sessions
from coach.texts import language


@dataclass(frozen=True, slots=True)
class _Kept:
    patient_id: int
    code: str
    state: str
    look: Looked | None


class Looks(Sessions):
    """Looks across all patients at once."""

    def looks(self) -> tuple[Looked, ...]:
        """Give a look at every patient with sessions, by code.

        One statement finds whose sessions are still those that were looked at; only the others'
        are read, and what was seen in them is kept for the next time.
        """
        with self._read() as connection:
            kept = _kept(connection)
        found = [
            each.look or looked_at(each.code, self.sessions_of(each.code), TITLES) for each in kept
        ]
        fresh = [
            {"patient_id": each.patient_id, "state": each.state, "content": _text(look)}
            for each, look in zip(kept, found, strict=True)
            if each.look is None
        ]
        if fresh:
            self._keep(fresh)
        return tuple(found)

    def _keep(self, rows: list[dict[str, object]]) -> None:
        def work(connection: Connection) -> None:
            here = connection.scalars(select(patients.c.id)).all()
            still = [row for row in rows if row["patient_id"] in set(here)]
            ids = [row["patient_id"] for row in still]
            connection.execute(delete(looks).where(looks.c.patient_id.in_(ids)))
            if still:
                connection.execute(insert(looks), still)

        try:
            self._write(work)
        except Fault:
            return  # who may only read looks again the next time


def _kept(connection: Connection) -> list[_Kept]:
    s = sessions.c
    totals = (
        select(
            s.patient_id,
            func.count().label("number"),
            func.min(s.started_utc).label("first"),
            func.max(s.started_utc).label("last"),
            func.max(s.imported_utc).label("imported"),
        )
        .where(COUNTED)
        .group_by(s.patient_id)
        .subquery()
    )
    t = totals.c
    query = (
        select(t.patient_id, patients.c.code, t.number, t.first, t.last, t.imported,
               looks.c.state, looks.c.content)
        .select_from(totals)
        .join(patients, patients.c.id == t.patient_id)
        .outerjoin(looks, looks.c.patient_id == t.patient_id)
        .order_by(patients.c.code)
    )  # fmt: skip
    found = []
    for row in connection.execute(query):
        seen = (row.number, row.first, row.last, row.imported or "")
        what = (*seen, RULES, language(), __version__)
        state = " ".join(map(str, what))
        look = _look(row.content) if row.state == state else None
        found.append(_Kept(row.patient_id, row.code, state, look))
    return found


def _text(look: Looked) -> str:
    # Sentences know themselves in English too; the state says in which language they are.
    return msgspec.json.encode(look, enc_hook=str).decode()


def _look(text: str) -> Looked | None:
    try:
        return msgspec.json.decode(text, type=Looked)
    except msgspec.MsgspecError:
        return None
