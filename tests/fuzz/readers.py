"""Each reader: what it reads in earnest, how that is changed, what is done with what it takes."""

from __future__ import annotations

import functools
from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, date, datetime
from pathlib import Path
from random import Random
from typing import Any

import numpy as np
import pyrage

from coach.catalogue import catalogue
from coach.catalogue.load import parse, shipped
from coach.catalogue.pages import parse_pages
from coach.catalogue.safety import parse_safety
from coach.documents.archive import StoredSession, unpack_session
from coach.documents.joints import read_joints
from coach.documents.landmarks import read_landmarks, write_landmarks
from coach.documents.lenses import read_lenses, write_lenses
from coach.documents.plan import read_plan, write_plan
from coach.documents.readings import read_readings, write_readings
from coach.documents.session import read_session_document, write_session_document
from coach.documents.tables import LandmarkTable, ReadingTable
from coach.domain.exercise import Irritability
from coach.domain.fault import Fault
from coach.domain.lens import Lens, LensList
from coach.domain.plan import Plan
from coach.domain.session import SessionDocument
from coach.exchange.fhir import bundle_bytes
from coach.exchange.note import visit_note
from coach.exchange.table import holds_table
from coach.review.cohort import standing
from coach.review.diary import diary
from coach.review.hints import hints
from coach.review.next_step import next_step
from coach.review.plan_changes import plan_changes
from coach.review.plans import time_a_day, unusual
from coach.review.replay import repetitions_of, replay
from coach.review.report import report
from coach.session.agenda import due_now, easier_than
from coach.session.assemble import assemble
from coach.storage.journal_lines import read_lines
from coach.storage.sealed import PracticeIdentity, open_sealed, seal
from tests.fuzz.archives import changed_zip
from tests.fuzz.mutations import (
    Mutate,
    changed_bytes,
    changed_journal,
    changed_json,
    changed_lines,
    changed_table,
)

TESTS = Path(__file__).parents[1]
GOLDEN = TESTS / "documents" / "golden"
WHERE = "input-from-outside"
NOW = datetime(2026, 3, 1, 12, tzinfo=UTC)


@dataclass(frozen=True, slots=True)
class Reader:
    """One way in. ``read`` gives what it took, or raises a ``Fault``; ``use`` does with that what
    the program does, so that nothing is taken in that fails later.

    Where using takes ten times as long as reading, it is done with one in ``every`` that is taken.
    The tests share their cases of a slow reader among ``parts`` of them, for all cores.
    """

    name: str
    seeds: Callable[[], tuple[bytes, ...]]
    change: Mutate
    read: Callable[[bytes], Any]
    use: Callable[[Any], None] = lambda taken: None
    every: int = 1
    parts: int = 1


def use_plan(plan: Plan) -> None:
    known = catalogue().by_name
    again = read_plan(write_plan(plan), WHERE, known)
    assert again == plan
    for planned in plan.exercises:
        easier_than(planned, known)
        if planned.exercise:
            unusual(planned, known[planned.exercise], plan.irritability or Irritability.LOW)
    due_now(plan, (), NOW, known)
    diary((), plan, NOW.date())
    time_a_day(plan.exercises)
    plan_changes(_plan(), plan)


@functools.cache
def _plan() -> Plan:
    return read_plan((GOLDEN / "plan_v2.json").read_bytes(), WHERE, catalogue().by_name)


def use_document(document: SessionDocument) -> None:
    """Show it as both windows do, export it, and write it again."""
    assert read_session_document(write_session_document(document), WHERE) == document
    known = catalogue().by_name
    due_now(document.plan, (document,), NOW, known)
    for today in (date(2026, 1, 6), date(2026, 12, 31)):
        diary((document,), document.plan, today)
        standing(document.plan.patient_code, (document,), today)
    report((document,), until=NOW.date(), printed_on=NOW.date())
    hints((document,))
    for planned in document.plan.exercises:
        next_step(planned, (document,))
    holds_table((document,))
    visit_note((document,), until=NOW.date(), written_on=NOW.date())
    bundle_bytes((document,), written_at=NOW)


def use_session(session: StoredSession) -> None:
    use_document(session.document)
    use_readings(session.readings)
    use_landmarks(session.landmarks)
    for exercise, number in repetitions_of(session.document)[:3]:
        shown = replay(session.document, session.readings, session.landmarks, exercise, number)
        shown.reading_at(shown.begin_s)
        shown.points_at(shown.begin_s)


def use_readings(table: ReadingTable) -> None:
    assert len(read_readings(write_readings(table), WHERE)) == len(table)
    assert not np.isinf(table.form).any()


def use_landmarks(table: LandmarkTable) -> None:
    assert len(read_landmarks(write_landmarks(table), WHERE)) == len(table)
    assert not np.isinf(table.image_px).any()


def use_lenses(lenses: LensList) -> None:
    assert read_lenses(write_lenses(lenses), WHERE) == lenses
    lenses.of(0, None, (1280, 720))


def read_journal(data: bytes) -> Any:
    """As recovery does it: a file is made of whatever can still be read."""
    entries = read_lines(data, WHERE).entries
    try:
        session = assemble(entries)
        write_session_document(session.document)
    except Fault as fault:
        # Recovery names the journal, beside which this sentence stands.
        raise Fault(f"{WHERE}: {fault}") from fault
    return session.document


@functools.cache
def identity() -> PracticeIdentity:
    key = pyrage.x25519.Identity.generate()
    return PracticeIdentity(str(key.to_public()), key)


def sealed_seeds() -> tuple[bytes, ...]:
    return tuple(seal(data, identity().public_key) for data in session_seeds())


def changed_sealed(data: bytes, chance: Random) -> bytes:
    """Change what is inside, under a right seal; or the sealed bytes."""
    if chance.randrange(2):
        return changed_bytes(data, chance)
    try:
        inside = pyrage.decrypt(data, [identity().key])
    except pyrage.DecryptError:
        return changed_bytes(data, chance)
    return seal(changed_zip(inside, chance), identity().public_key)


def session_seeds() -> tuple[bytes, ...]:
    return tuple((GOLDEN / f"session_v{n}.shoulder.zip").read_bytes() for n in (4, 3, 2, 1))


def _parts(name: str) -> Callable[[], tuple[bytes, ...]]:
    def parts() -> tuple[bytes, ...]:
        import io
        import zipfile

        return tuple(zipfile.ZipFile(io.BytesIO(data)).read(name) for data in session_seeds())

    return parts


def _files(*names: str) -> Callable[[], tuple[bytes, ...]]:
    return lambda: tuple((GOLDEN / name).read_bytes() for name in names)


def joint_seeds() -> tuple[bytes, ...]:
    from coach.documents.joints import AXES, TRUNK

    names = [f"{each.name.lower()}_{axis}" for each in TRUNK for axis in AXES]
    rows = [f"{i / 10}," + ",".join(f"{(k % 5) / 4 - 0.4}" for k in range(12)) for i in range(8)]
    return ("\n".join([",".join(["time_s", *names]), *rows]).encode() + b"\n",)


def lens_seeds() -> tuple[bytes, ...]:
    known = LensList()
    for n in range(3):
        lens = Lens(camera=n, name=f"Camera {n}", width_px=1280, height_px=720 + 240 * n,
                    field_of_view_deg=60 + n, error_deg=1.5, miss_px=0.3, views=12)  # fmt: skip
        known = known.with_lens(lens)
    return (write_lenses(known),)


def exercise_seeds() -> tuple[bytes, ...]:
    """One exercise without neighbours, which would be missed."""
    lines = shipped()["table-slide.toml"].decode().splitlines()
    alone = [line for line in lines if not line.startswith(("easier", "harder"))]
    return ("\n".join(alone).encode(),)


def _shipped(*path: str) -> Callable[[], tuple[bytes, ...]]:
    place = TESTS.parent.joinpath("coach", "catalogue", *path)
    return lambda: (place.read_bytes(),)


def _readers() -> tuple[Reader, ...]:
    from tests.fuzz.places import disk_readers

    return (
        Reader("plan", _files("plan_v2.json", "plan_v1.json"), changed_json,
               lambda d: read_plan(d, WHERE, catalogue().by_name), use_plan),
        Reader("document", _parts("session.json"), changed_json,
               lambda d: read_session_document(d, WHERE), use_document),
        Reader("readings", _parts("readings.csv"), changed_table,
               lambda d: read_readings(d, WHERE), use_readings),
        Reader("landmarks", _parts("landmarks.csv"), changed_table,
               lambda d: read_landmarks(d, WHERE), use_landmarks, parts=2),
        Reader("session", session_seeds, changed_zip,
               lambda d: unpack_session(d, WHERE), use_session, every=3, parts=3),
        Reader("sealed", sealed_seeds, changed_sealed,
               lambda d: unpack_session(open_sealed(d, identity(), WHERE), WHERE), use_session,
               every=3, parts=3),
        Reader("journal", _files("journal_v3.journal", "journal_v2.journal", "journal_v1.journal"),
               changed_journal, read_journal, use_document, every=5, parts=3),
        Reader("joints", joint_seeds, changed_table, lambda d: read_joints(d, WHERE)),
        Reader("lenses", lens_seeds, changed_json, lambda d: read_lenses(d, WHERE), use_lenses),
        Reader("exercise", exercise_seeds, changed_lines,
               lambda d: parse({"table-slide.toml": d}), parts=2),
        Reader("page", _shipped("pages", "stiff.toml"), changed_lines,
               lambda d: parse_pages({"stiff.toml": d})),
        Reader("safety", _shipped("safety.toml"), changed_lines, parse_safety, parts=2),
        *disk_readers(),
    )  # fmt: skip


@functools.cache
def readers() -> dict[str, Reader]:
    """Every reader by its name."""
    return {reader.name: reader for reader in _readers()}
