"""``coach export``: a patient's record as a document for another system."""

from __future__ import annotations

import sys
from datetime import datetime
from pathlib import Path

from coach.app.passphrases import asked
from coach.domain.fault import Fault
from coach.domain.text import shown_text
from coach.exchange.export import exported
from coach.exchange.kind import Kind
from coach.exchange.parquet import holds_parquet
from coach.review.counts import sessions_counted
from coach.review.practice_records import NO_RECORDS
from coach.review.wording import day
from coach.storage.atomic import write_bytes
from coach.storage.folders import check_is_no_store, store_path
from coach.storage.store import Store
from coach.storage.store_doubts import Decision, Doubt
from coach.storage.store_lock import is_locked
from coach.texts import translate

_MOST_NAMED = 5


def run_export(place: Path | str | None, patient_code: str | None, kind: Kind, out: Path) -> int:
    """Write one patient's record to ``out``; an existing file is replaced, the store never.

    Without a patient it is everybody's, which only ``PARQUET`` holds. ``place`` is the store's
    file, or the URL of its database. Sessions that were left out as somebody else's are not in it;
    they are told, and those about which nothing was decided yet. A note is in the chosen
    language; what other programs read is in English always.
    """
    if patient_code is None and kind is not Kind.PARQUET:
        raise Fault(
            translate(
                "faults",
                "A {kind} export is of one patient: name the code with --patient.",
            ).format(kind=kind)
        )
    place = place or store_path()
    if isinstance(place, Path):
        if not place.is_file():
            raise Fault(
                translate(
                    "faults",
                    "There is no store at '{place}'; import files with 'coach review'.",
                ).format(place=place)
            )
        check_is_no_store(out, place)
    locked = isinstance(place, Path) and is_locked(place)
    store = Store(
        place,
        asked(translate("key", "the locked store {place}").format(place=place)) if locked else None,
    )
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
        raise Fault(
            translate(
                "faults",
                "Every session of {patient_code} was left out: decide anew in 'coach review'.",
            ).format(patient_code=patient_code)
        )
    if not documents:
        named = ", ".join(known[:_MOST_NAMED]) or translate("faults", "nobody yet")
        more = ", ..." if len(known) > _MOST_NAMED else ""
        raise Fault(
            translate(
                "faults",
                "There is no patient '{patient_code}' in the store at '{store}'; it "
                "knows {named}{more}: correct the code.",
            ).format(patient_code=patient_code, store=store.name, named=named, more=more)
        )
    write_bytes(out, exported(documents, kind, datetime.now().astimezone(), records))
    told = translate("export", "{out}: {sessions} of {patient_code}").format(
        out=out, sessions=sessions_counted(len(documents)), patient_code=patient_code
    )
    print(shown_text(told))
    for doubt in doubts:
        line = translate("export", "{day}, {done}: {doubt}").format(
            day=day(doubt.started_at.date()), done=_done(doubt), doubt=doubt.sentence
        )
        print(shown_text(line), file=sys.stderr)
    return 0


def _export_everybody(store: Store, out: Path) -> int:
    entries = store.patients()
    if not entries:
        raise Fault(
            translate(
                "faults",
                "There is no session in the store at '{store}' to export.",
            ).format(store=store.name)
        )
    codes = sorted(entry.code for entry in entries)
    write_bytes(out, holds_parquet(store.sessions_of(code) for code in codes))
    told = (
        translate("export", "{out}: 1 patient")
        if len(codes) == 1
        else translate("export", "{out}: {count} patients")
    )
    print(told.format(out=out, count=len(codes)))
    return 0


def _done(doubt: Doubt) -> str:
    if doubt.decision is Decision.LEFT_OUT:
        return translate("export", "left out")
    return translate("export", "taken, though the doubt is not decided")
