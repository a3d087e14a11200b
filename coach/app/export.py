"""``coach export``: a patient's record as a document for another system."""

from __future__ import annotations

import sys
from datetime import datetime
from pathlib import Path

from coach.app.chosen_language import chosen_language
from coach.app.passphrases import asked
from coach.desktop.shared.language import without_windows
from coach.domain.fault import Fault
from coach.domain.text import shown_text
from coach.exchange.export import exported
from coach.exchange.kind import Kind
from coach.exchange.parquet import holds_parquet
from coach.review.practice_records import NO_RECORDS
from coach.review.wording import counted, day
from coach.storage.atomic import write_bytes
from coach.storage.folders import check_is_no_store, store_path
from coach.storage.store import Store
from coach.storage.store_doubts import Decision, Doubt
from coach.storage.store_lock import is_locked

_MOST_NAMED = 5


def run_export(
    place: Path | str | None,
    patient_code: str | None,
    kind: Kind,
    out: Path,
    language: str | None = None,
) -> int:
    """Write one patient's record to ``out``; an existing file is replaced, the store never.

    Without a patient it is everybody's, which only ``PARQUET`` holds. ``place`` is the store's
    file, or the URL of its database. Sessions that were left out as somebody else's are not in it;
    they are told, and those about which nothing was decided yet. A note is in ``language``, by
    default in English; what other programs read is in English always.
    """
    if patient_code is None and kind is not Kind.PARQUET:
        raise Fault(f"A {kind} export is of one patient: name the code with --patient.")
    place = place or store_path()
    if isinstance(place, Path):
        if not place.is_file():
            raise Fault(f"There is no store at '{place}'; import files with 'coach review'.")
        check_is_no_store(out, place)
    locked = isinstance(place, Path) and is_locked(place)
    store = Store(place, asked(f"the locked store {place}") if locked else None)
    try:
        if patient_code is None:
            return _export_everybody(store, out)
        documents = store.sessions_of(patient_code)
        doubts = store.doubts((Decision.OPEN, Decision.LEFT_OUT))
        known = [entry.code for entry in store.patients()]
        records = store.records_of(patient_code) if documents else NO_RECORDS
    finally:
        store.close()
    doubts = tuple(d for d in doubts if d.code == patient_code)
    if not documents and doubts:
        raise Fault(f"Every session of {patient_code} was left out: decide anew in 'coach review'.")
    if not documents:
        named = ", ".join(known[:_MOST_NAMED]) or "nobody yet"
        more = ", ..." if len(known) > _MOST_NAMED else ""
        raise Fault(
            f"There is no patient '{patient_code}' in the store at '{store.name}'; it knows "
            f"{named}{more}: correct the code."
        )
    translated = None if language is None else without_windows(chosen_language(language))
    write_bytes(out, exported(documents, kind, datetime.now().astimezone(), records))
    del translated
    print(shown_text(f"{out}: {counted(len(documents), 'session')} of {patient_code}"))
    for doubt in doubts:
        line = f"{day(doubt.started_at.date())}, {_done(doubt)}: {doubt.sentence}"
        print(shown_text(line), file=sys.stderr)
    return 0


def _export_everybody(store: Store, out: Path) -> int:
    entries = store.patients()
    if not entries:
        raise Fault(f"There is no session in the store at '{store.name}' to export.")
    codes = sorted(entry.code for entry in entries)
    write_bytes(out, holds_parquet(store.sessions_of(code) for code in codes))
    print(f"{out}: {counted(len(codes), 'patient')}")
    return 0


def _done(doubt: Doubt) -> str:
    if doubt.decision is Decision.LEFT_OUT:
        return "left out"
    return "taken, though the doubt is not decided"
