"""Whether a session contradicts what the practice knows of its patient."""

from __future__ import annotations

from datetime import timedelta

from sqlalchemy import Connection, select

from coach.domain.session import SessionDocument
from coach.review.history import started
from coach.storage.store_tables import issued_plans, patients

_ZONES_DIFFER = timedelta(days=1)


def doubt_about(connection: Connection, document: SessionDocument) -> str | None:
    """Say in a sentence what makes it doubtful that the session is this patient's.

    None where nothing does, and where no plan of the patient is known.
    """
    plan = document.plan
    alike = _alike(connection, plan.patient_code)
    if alike is not None:
        return (
            f"The session names {plan.patient_code}, whom the practice does not know, and it knows "
            f"{alike}: make sure whose session it is."
        )
    query = select(issued_plans.c.revision, issued_plans.c.side, issued_plans.c.issued_on)
    query = query.join(patients).where(patients.c.code == plan.patient_code)
    known = {revision: (side, on) for revision, side, on in connection.execute(query)}
    if not known:
        return None
    if plan.revision not in known:
        return (
            f"The session names revision {plan.revision} of a plan and {plan.patient_code} was "
            f"given {_listed(sorted(known))}: make sure whose session it is."
        )
    side, issued_on = known[plan.revision]
    trained = {record.side for record in document.exercises} | ({plan.side} - {None})
    if side is not None and any(other != side for other in trained):
        return (
            f"The session is of the other side than revision {plan.revision} of the plan of "
            f"{plan.patient_code}, which is for the {side}: make sure whose session it is."
        )
    day = started(document).date()
    if day < issued_on - _ZONES_DIFFER:
        return (
            f"The session began on {day} and revision {plan.revision} of the plan of "
            f"{plan.patient_code} was issued on {issued_on}: make sure whose session it is."
        )
    return None


def _alike(connection: Connection, code: str) -> str | None:
    """Give the known code that a new one is but for spaces, signs and capitals."""
    known = connection.scalars(select(patients.c.code).order_by(patients.c.code)).all()
    if code in known:
        return None
    return next((k for k in known if _bare(k) == _bare(code)), None)


def _bare(code: str) -> str:
    bare = "".join(c for c in code.casefold() if c.isalnum())
    return bare or code


def _listed(revisions: list[int]) -> str:
    *most, last = map(str, revisions)
    return f"{', '.join(most)} and {last}" if most else last
