"""Imports that are taken back or doubted, and questions across patients, on both databases."""

from __future__ import annotations

import itertools
import re
import sqlite3
from contextlib import closing
from datetime import date, datetime, timedelta, timezone
from pathlib import Path
from types import ModuleType
from typing import Any

import msgspec
import pytest
from sqlalchemy import event

from coach.domain.fault import Fault
from coach.domain.form import FormFault
from coach.domain.movement import Movement, Position, Side
from coach.domain.plan import Plan
from coach.domain.practice import IssuedPlan, Person, Treatment, TreatmentKind
from coach.domain.session import SessionDocument
from coach.storage.store import Decision, ImportOutcome, Store, new_batch
from coach.storage.store_import import import_file, import_paths
from tests.storage.conftest import Place


def write(folder: Path, invented: ModuleType, *documents: SessionDocument) -> list[Path]:
    folder.mkdir(exist_ok=True)
    paths = []
    for number, document in enumerate(documents):
        path = folder / f"{number}.shoulder.zip"
        path.write_bytes(invented.session_file(document))
        paths.append(path)
    return paths


def test_the_last_import_is_taken_back_whole_and_can_come_again(
    store: Store, place: Place, invented: ModuleType, tmp_path: Path
) -> None:
    make = invented.make_session
    assert store.last_import() is None
    first = write(tmp_path / "a", invented, make(1), make(2))
    list(import_paths(store, first))
    before = place.rows()
    second = write(tmp_path / "b", invented, make(2), make(3), make(1, code="NEW"))
    outcomes = [o.outcome.value for o in import_paths(store, second)]
    assert outcomes == ["already known", "accepted", "accepted"]
    after = place.rows()
    last = store.last_import()
    assert last is not None
    assert last.sessions == 2
    assert store.undo_import(last.id) == 2
    assert place.rows() == before
    assert store.undo_import(last.id) == 0
    assert [o.outcome.value for o in import_paths(store, second)] == outcomes
    assert place.rows() == after
    # Undone once more, and then the one before: nothing is left.
    for _ in range(2):
        last = store.last_import()
        assert last is not None
        store.undo_import(last.id)
    assert store.last_import() is None
    assert place.rows()["sessions"] == place.rows()["patients"] == 0


def test_taking_back_leaves_who_has_more_than_the_import(
    store: Store, invented: ModuleType
) -> None:
    batch = new_batch()
    store.add(Person(code="KNOWN"))
    for code in ("KNOWN", "TREATED", "NAMED", "NEITHER"):
        store.import_session(invented.make_session(code=code), b"x", f"{code}.zip", batch)
    on = date(2026, 1, 2)
    store.add(Treatment(code="TREATED", on=on, kind=TreatmentKind.SURGERY))
    store.change(msgspec.structs.replace(store.person("NAMED"), name="Ada Invented"))
    assert store.undo_import(batch) == 4
    assert [p.code for p in store.people()] == ["KNOWN", "NAMED", "TREATED"]
    assert store.patients() == ()


def test_an_unknown_code_becomes_a_person(store: Store, invented: ModuleType) -> None:
    store.import_session(invented.make_session(code="NEW"), b"x", "a.zip")
    person = store.person("NEW")
    assert (person.name, person.created_on) == ("", date.today())


def with_plan(
    document: SessionDocument, revision: int, side: Side | None = Side.LEFT
) -> SessionDocument:
    plan = msgspec.structs.replace(document.plan, revision=revision, side=side)
    return msgspec.structs.replace(document, plan=plan)


@pytest.fixture
def given(store: Store, invented: ModuleType) -> Store:
    """A store in which SH-017 was given revisions 1 and 3 for the left, on the day before day 0."""
    store.add(Person(code="SH-017"))
    plan: Plan = invented.make_session().plan
    for revision in (1, 3):
        now = msgspec.structs.replace(plan, revision=revision, side=Side.LEFT)
        text = msgspec.json.encode(now).decode()
        store.add(
            IssuedPlan(
                code="SH-017",
                revision=revision,
                issued_on=date(2026, 1, 4),
                side=Side.LEFT,
                plan=text,
            )
        )
    return store


@pytest.mark.parametrize(
    ("number", "side", "revision", "said"),
    [
        (0, Side.LEFT, 1, ""),
        (1, Side.LEFT, 3, ""),
        (0, Side.LEFT, 2, "names revision 2 of a plan and SH-017 was given 1 and 3"),
        (0, Side.LEFT, 4, "names revision 4"),
        (0, Side.RIGHT, 3, "of the other side than revision 3"),
        (-30, Side.LEFT, 1, "began on 6 Dec 2025 and revision 1 .* issued on 4 Jan 2026"),
    ],
)
def test_a_session_against_the_known_plans_is_taken_and_doubted(
    given: Store,
    invented: ModuleType,
    tmp_path: Path,
    number: int,
    side: Side,
    revision: int,
    said: str,
) -> None:
    document = with_plan(invented.make_session(number, side=side), revision, side)
    (path,) = write(tmp_path / "a", invented, document)
    outcome = import_file(given, path)
    assert outcome.code == "SH-017"
    assert given.sessions_of("SH-017") == (document,)
    if not said:
        assert outcome.outcome is ImportOutcome.ACCEPTED
        assert given.doubts() == ()
        return
    assert outcome.outcome is ImportOutcome.DOUBTFUL
    (doubt,) = given.doubts()
    assert (doubt.session_id, doubt.named, doubt.code) == (document.session_id, "SH-017", "SH-017")
    assert outcome.reason == doubt.sentence
    assert outcome.line == f"0.shoulder.zip: doubtful (SH-017). {doubt.sentence}"
    assert doubt.sentence.endswith("make sure whose session it is.")
    assert re.search(said, doubt.sentence)
    given.decide(doubt, Decision.BELONGS)
    assert given.doubts() == ()
    assert given.sessions_of("SH-017") == (document,)


def test_without_known_plans_nothing_is_doubted(store: Store, invented: ModuleType) -> None:
    document = with_plan(invented.make_session(), 7, Side.RIGHT)
    assert store.import_session(document, b"x", "a.zip").outcome is ImportOutcome.ACCEPTED


def test_an_exercise_that_is_only_timed_is_taken(store: Store, invented: ModuleType) -> None:
    document = invented.make_session()
    (record,) = document.exercises
    timed = msgspec.structs.replace(
        record, exercise="pendulum", movement=None, repetitions=(), planned_index=0
    )
    document = msgspec.structs.replace(document, exercises=(record, timed))
    assert store.import_session(document, b"x", "a.zip").outcome is ImportOutcome.ACCEPTED
    assert store.sessions_of("SH-017") == (document,)


def test_the_cohort_is_every_hold_that_the_trunk_did_not_feign(
    store: Store, invented: ModuleType
) -> None:
    documents = [
        invented.make_session(number, (80.0 + number, 90.0), code=code, movement=movement)
        for code, number, movement in itertools.product(
            ("B", "A"), (2, 0, 1), (Movement.FLEXION, Movement.ABDUCTION)
        )
    ]
    leaning = invented.make_session(5, (119, 120, 121), code="A", position=Position.SITTING)
    (record,) = leaning.exercises
    faults = ((FormFault.LEAN, FormFault.HIKE), (FormFault.HIKE,), (FormFault.TURN,))
    holds = [
        msgspec.structs.replace(hold, faults=found)
        for hold, found in zip(record.repetitions, faults, strict=True)
    ]
    record = msgspec.structs.replace(record, repetitions=tuple(holds))
    documents.append(msgspec.structs.replace(leaning, exercises=(record,)))
    for document in documents:
        store.import_session(document, b"x", "a.zip")
    expected = [
        (
            document.plan.patient_code,
            document.session_id,
            datetime.fromisoformat(document.started_at),
            record.position,
            hold.value,
            hold.error,
            hold.unit,
            20.0,
            hold.faults,
        )
        for document in sorted(documents, key=lambda d: (d.plan.patient_code, d.started_at))
        for record in document.exercises
        if record.movement is Movement.FLEXION
        for hold in record.repetitions
        if hold.value not in (119, 121)
    ]
    found = store.cohort(Movement.FLEXION)
    assert [
        (h.code, h.session_id, h.at, h.position, h.value, h.error, h.unit, h.asked_s, h.faults)
        for h in found
    ] == expected
    assert all(h.completed and h.side is Side.LEFT for h in found)
    begin: datetime = invented.BEGIN
    some = store.cohort(
        Movement.FLEXION, since=begin + timedelta(days=1), until=begin + timedelta(days=2)
    )
    assert [(h.code, h.value) for h in some] == [("A", 81), ("A", 90), ("B", 81), ("B", 90)]


def test_the_list_of_patients_is_in_order_of_instants(store: Store, invented: ModuleType) -> None:
    here, there = timezone(timedelta(hours=2)), timezone(timedelta(hours=-8))
    for code, at in (
        ("EARLY", datetime(2026, 1, 5, 23, tzinfo=here)),  # 21:00 UTC
        ("LATE", datetime(2026, 1, 5, 14, tzinfo=there)),  # 22:00 UTC
        ("EARLY", datetime(2026, 1, 1, 9, tzinfo=there)),
    ):
        store.import_session(invented.make_session(at=at, code=code), b"x", "a.zip")
    late, early = store.patients()
    assert (late.code, late.sessions, early.code, early.sessions) == ("LATE", 1, "EARLY", 2)
    assert early.first_at.isoformat() == "2026-01-01T09:00:00-08:00"
    assert early.last_at.isoformat() == "2026-01-05T23:00:00+02:00"


@pytest.fixture
def doubted(store: Store, invented: ModuleType) -> SessionDocument:
    """A session of a code that the practice knows but for a sign and a capital."""
    for code in ("SH-017", "SH-2"):
        store.add(Person(code=code))
    document: SessionDocument = invented.make_session(code="sh 017")
    imported = store.import_session(document, b"x", "a.zip")
    assert imported.outcome is ImportOutcome.DOUBTFUL
    assert "names sh 017, whom the practice does not know, and it knows SH-017" in imported.doubt
    return document


def test_a_doubtful_session_is_given_to_whom_the_therapist_says(
    store: Store, place: Place, doubted: SessionDocument
) -> None:
    before = place.rows()
    (doubt,) = store.doubts()
    given = store.decide(doubt, Decision.BELONGS, "SH-2")
    (session,) = store.sessions_of("SH-2")
    plan = msgspec.structs.replace(doubted.plan, patient_code="SH-2")
    assert session == msgspec.structs.replace(doubted, plan=plan)
    assert [(e.code, e.sessions) for e in store.patients()] == [("SH-2", 1)]
    assert [p.code for p in store.people()] == ["SH-017", "SH-2"]
    assert [h.code for h in store.cohort(Movement.FLEXION)] == ["SH-2"] * 3
    assert store.doubts() == ()
    assert store.doubts([Decision.BELONGS]) == (given,)
    # The same file again changes nothing of it.
    assert store.import_session(doubted, b"x", "a.zip").outcome is ImportOutcome.KNOWN
    assert store.decide(given, Decision.OPEN) == doubt
    assert store.sessions_of("sh 017") == (doubted,)
    assert place.rows() == before


def test_a_session_left_out_counts_for_nothing_and_can_come_back(
    store: Store, place: Place, doubted: SessionDocument
) -> None:
    before = place.rows()
    (doubt,) = store.doubts()
    left_out = store.decide(doubt, Decision.LEFT_OUT)
    assert store.sessions_of("sh 017") == store.patients() == store.cohort(Movement.FLEXION) == ()
    assert store.original(doubted.session_id) == b"x"
    assert store.open_doubts() == 0
    store.decide(left_out, Decision.OPEN)
    assert store.sessions_of("sh 017") == (doubted,)
    assert store.open_doubts() == 1
    assert place.rows() == before


def test_what_another_desk_decided_stands(
    store: Store, place: Place, doubted: SessionDocument
) -> None:
    (seen,) = store.doubts()
    place.open().decide(seen, Decision.BELONGS, "SH-017")
    for decision in (Decision.LEFT_OUT, Decision.BELONGS):
        with pytest.raises(Fault, match="was decided at another desk meanwhile"):
            store.decide(seen, decision, "SH-2")
    assert len(store.sessions_of("SH-017")) == 1


def test_a_session_is_given_to_known_people_only(store: Store, doubted: SessionDocument) -> None:
    (doubt,) = store.doubts()
    with pytest.raises(Fault, match="no person with the code SH-9"):
        store.decide(doubt, Decision.BELONGS, "SH-9")
    assert store.doubts() == (doubt,)


def test_no_import_looks_through_the_list_of_those_before_it(
    tmp_path: Path, invented: ModuleType
) -> None:
    store = Store(tmp_path / "s.sqlite")
    asked: list[tuple[str, Any]] = []

    @event.listens_for(store._engine, "before_cursor_execute")
    def _asked(_c: Any, _cursor: Any, statement: str, given: Any, *_: Any) -> None:
        asked.append((statement, given))

    for number in (0, 1):
        path = tmp_path / f"{number}.shoulder.zip"
        path.write_bytes(invented.session_file(invented.make_session(number)))
        asked.clear()
        assert import_file(store, path).outcome is ImportOutcome.ACCEPTED
    store.close()
    with closing(sqlite3.connect(tmp_path / "s.sqlite")) as connection:
        ways = [
            row[3]
            for statement, given in asked
            if statement.startswith(("SELECT", "DELETE", "UPDATE"))
            for row in connection.execute(f"EXPLAIN QUERY PLAN {statement}", given)
        ]
    assert len(ways) >= 4
    assert [way for way in ways if way.startswith("SCAN")] == []
