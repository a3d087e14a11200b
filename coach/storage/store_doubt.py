"""Whether a session contradicts what the practice knows of its patient."""

from __future__ import annotations

from datetime import timedelta

from sqlalchemy import Connection, select

from coach.domain.movement import Side
from coach.domain.session import SessionDocument
from coach.review.history import started
from coach.review.wording import day, listed, side_word
from coach.storage.store_tables import issued_plans, patients
from coach.texts import translate

_ZONES_DIFFER = timedelta(days=1)


def doubt_about(connection: Connection, document: SessionDocument) -> str | None:
    """Say in a sentence what makes it doubtful that the session is this patient's.

    None where nothing does, and where no plan of the patient is known.
    """
    plan = document.plan
    alike = _alike(connection, plan.patient_code)
    if alike is not None:
        return translate(
            "faults",
            "The session names {patient_code}, whom the practice does not know, and it "
            "knows {alike}: make sure whose session it is.",
        ).format(patient_code=plan.patient_code, alike=alike)
    query = select(issued_plans.c.revision, issued_plans.c.side, issued_plans.c.issued_on)
    query = query.join(patients).where(patients.c.code == plan.patient_code)
    known = {revision: (side, on) for revision, side, on in connection.execute(query)}
    if not known:
        return None
    if plan.revision not in known:
        return translate(
            "faults",
            "The session names revision {revision} of a plan and {patient_code} was "
            "given {revisions}: make sure whose session it is.",
        ).format(
            revision=plan.revision, patient_code=plan.patient_code, revisions=_listed(sorted(known))
        )
    side, issued_on = known[plan.revision]
    trained = {record.side for record in document.exercises} | ({plan.side} - {None})
    if side is not None and any(other != side for other in trained):
        return translate(
            "faults",
            "The session is of the other side than revision {revision} of the plan of "
            "{patient_code}, which is for the {side}: make sure whose session it is.",
        ).format(revision=plan.revision, patient_code=plan.patient_code, side=side_word(Side(side)))
    began = started(document).date()
    if began < issued_on - _ZONES_DIFFER:
        return translate(
            "faults",
            "The session began on {day} and revision {revision} of the plan of "
            "{patient_code} was issued on {issued_on}: make sure whose session it is.",
        ).format(
            day=day(began),
            revision=plan.revision,
            patient_code=plan.patient_code,
            issued_on=day(issued_on),
        )
    return None


def _alike(connection: Connection, code: str) -> str | None:
    """Give the known code that a new one is but for spaces, signs and capitals."""
    if connection.scalar(select(patients.c.id).where(patients.c.code == code)) is not None:
        return None
    known = connection.scalars(select(patients.c.code).order_by(patients.c.code))
    return next((k for k in known if _bare(k) == _bare(code)), None)


def _bare(code: str) -> str:
    bare = "".join(c for c in code.casefold() if c.isalnum())
    return bare or code


def _listed(revisions: list[int]) -> str:
    return listed([str(revision) for revision in revisions])
