"""What the store keeps of sentences: whoever reads it later reads it in their own language."""

from __future__ import annotations

import zipfile
from datetime import date
from pathlib import Path

import msgspec
import pytest
from sqlalchemy import select

from coach import texts
from coach.domain.plan import Plan
from coach.domain.practice import IssuedPlan, Person
from coach.storage.store import Store
from coach.storage.store_import import import_file
from coach.storage.store_tables import imports, sessions
from tests.pseudo import left_over, spoken
from tests.review.conftest import make_session


@pytest.fixture
def refused(tmp_path: Path) -> Path:
    path = tmp_path / "0.shoulder.zip"
    with zipfile.ZipFile(path, "w") as archive:
        archive.writestr("nothing.json", "{}")
    return path


def doubt(store: Store) -> None:
    plan = Plan(patient_code="SH-017", revision=2, exercises=make_session().plan.exercises)
    store.add(Person(code="SH-017"))
    text = msgspec.json.encode(plan).decode()
    store.add(IssuedPlan(code="SH-017", issued_on=date(2026, 1, 4), revision=2, plan=text))
    store.import_session(make_session(), b"file", "1.shoulder.zip")


def test_what_was_refused_or_doubted_in_one_language_is_read_in_english(
    store: Store, refused: Path
) -> None:
    with spoken():
        told = import_file(store, refused).reason
        doubt(store)
        assert left_over([told], ["0.shoulder.zip", "nothing.json"]) == []
        (refusal,), (doubted,) = store.refusals(), store.doubts()
        assert refusal.reason == told
        assert left_over([doubted.sentence], ["SH-017"]) == []
    (refusal,), (doubted,) = store.refusals(), store.doubts()
    assert refusal.reason.startswith("0.shoulder.zip ")
    assert doubted.sentence == (
        "The session names revision 1 of a plan and SH-017 was given 2: make sure whose session "
        "it is."
    )


def test_what_was_refused_in_english_stands_as_it_is_in_every_language(
    store: Store, refused: Path
) -> None:
    reason = import_file(store, refused).reason
    with spoken():
        (refusal,) = store.refusals()
    assert refusal.reason == reason
    with store._read() as connection:
        assert connection.scalar(select(imports.c.reason)) == reason


def test_a_language_that_is_not_there_reads_english(store: Store, refused: Path) -> None:
    with spoken():
        import_file(store, refused)
        doubt(store)
    texts.choose("yy", ".", ",", lambda _, sentence: sentence.upper())
    try:
        assert store.refusals()[0].reason.startswith("0.shoulder.zip ")
    finally:
        texts.choose("en", ".", ",", None)


def test_no_other_column_keeps_a_sentence_of_a_language(store: Store, refused: Path) -> None:
    with spoken():
        import_file(store, refused)
        doubt(store)
        store.looks()
    with store._read() as connection:
        row = connection.execute(select(sessions.c.doubt, sessions.c.document)).one()
        assert "\u0436" not in row.document
        assert row.doubt.startswith("\x01{")
