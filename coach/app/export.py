"""``coach export``: a patient's record as a document for another system."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from pathlib import Path
from typing import assert_never

from coach.app.passphrases import asked
from coach.catalogue.load import catalogue
from coach.domain.fault import Fault
from coach.domain.session import SessionDocument
from coach.exchange.fhir import bundle_bytes
from coach.exchange.kind import Kind
from coach.exchange.note import visit_note
from coach.exchange.table import holds_table
from coach.storage.atomic import write_bytes
from coach.storage.folders import store_path
from coach.storage.store import Store
from coach.storage.store_lock import is_locked

_MOST_NAMED = 5


def run_export(store_file: Path | None, patient_code: str, kind: Kind, out: Path) -> int:
    """Write one patient's record to ``out``; an existing file is replaced, the store never."""
    place = store_file or store_path()
    if not place.is_file():
        raise Fault(f"There is no store at '{place}'; import session files with 'coach review'.")
    if out.exists() and out.samefile(place):
        raise Fault(f"'{out}' is the store itself; choose another name for the export.")
    store = Store(place, asked(f"the locked store {place}") if is_locked(place) else None)
    try:
        documents = store.sessions_of(patient_code)
        known = [entry.code for entry in store.patients()]
    finally:
        store.close()
    if not documents:
        named = ", ".join(known[:_MOST_NAMED]) or "nobody yet"
        more = ", ..." if len(known) > _MOST_NAMED else ""
        raise Fault(
            f"There is no patient '{patient_code}' in the store at '{place}'; it knows "
            f"{named}{more}: correct the code."
        )
    write_bytes(out, exported(documents, kind, datetime.now().astimezone()))
    print(f"{out}: {len(documents)} session{'s' if len(documents) > 1 else ''} of {patient_code}")
    return 0


def exported(documents: Sequence[SessionDocument], kind: Kind, now: datetime) -> bytes:
    """Write a record as ``kind``; ``now`` has a zone."""
    names = {exercise.exercise: exercise.name for exercise in catalogue().all}
    today = now.date()
    match kind:
        case Kind.FHIR:
            return bundle_bytes(documents, written_at=now, names=names)
        case Kind.CSV:
            return holds_table(documents)
        case Kind.NOTE:
            note = visit_note(documents, until=today, written_on=today, names=names)
            return note.encode("utf-8", errors="replace")
        case _:
            assert_never(kind)
