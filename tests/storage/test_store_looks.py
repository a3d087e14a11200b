"""Looks at all patients: what each patient's sessions tell, read again only where they changed."""

from __future__ import annotations

from datetime import UTC, date, datetime
from types import ModuleType

import pytest

from coach.review.cohort import Concern, standing
from coach.storage.store import Decision, Doubt, Store
from tests.storage.conftest import Place

TODAY = date(2026, 2, 1)


def add(store: Store, invented: ModuleType, number: int, code: str, **more: object) -> str:
    document = invented.make_session(number, code=code, **more)
    store.import_session(document, b"file", f"{code}{number}.zip")
    return str(document.session_id)


def test_kept_looks_say_what_a_fresh_look_says(
    place: Place, invented: ModuleType, monkeypatch: pytest.MonkeyPatch
) -> None:
    store = place.open()
    for number in range(4):
        add(store, invented, number, "SH-001", pain=(2, 3))
        add(store, invented, number, "SH-002", pain=(2, 8))
    read: list[str] = []
    original = Store.sessions_of

    def counted(self: Store, code: str) -> object:
        read.append(code)
        return original(self, code)

    monkeypatch.setattr(Store, "sessions_of", counted)

    def standings() -> dict[str, object]:
        return {look.patient_code: look.on(TODAY) for look in place.opened[-1].looks()}

    def expected() -> dict[str, object]:
        now = place.opened[-1]
        codes = [entry.code for entry in now.patients()]
        return {code: standing(code, original(now, code), TODAY) for code in codes}

    assert standings() == expected()
    assert sorted(read) == ["SH-001", "SH-002"]
    place.open()  # another start of the program
    read.clear()
    seen = standings()
    assert seen == expected()
    assert read == []
    assert seen["SH-002"].has(Concern.HIGH_PAIN)  # type: ignore[attr-defined]

    add(place.opened[-1], invented, 5, "SH-001", pain=(2, 9))
    assert standings() == expected()
    assert read == ["SH-001"]

    batch = place.opened[-1].last_import()
    assert batch is not None
    place.opened[-1].undo_import(batch.id)
    assert standings() == expected()
    assert read == ["SH-001", "SH-001"]


def test_a_session_left_out_and_a_person_erased_are_seen_no_longer(
    store: Store, invented: ModuleType
) -> None:
    for number in range(3):
        add(store, invented, number, "SH-001")
    worst = add(store, invented, 3, "SH-001", pain=(2, 9))
    add(store, invented, 0, "SH-002")
    assert store.looks()[0].on(TODAY).has(Concern.HIGH_PAIN)
    left_out = Doubt(worst, "SH-001", "SH-001", datetime.now(UTC), "", Decision.OPEN)
    store.decide(left_out, Decision.LEFT_OUT)
    assert not store.looks()[0].on(TODAY).has(Concern.HIGH_PAIN)
    store.erase_person("SH-001")
    assert [look.patient_code for look in store.looks()] == ["SH-002"]


def test_two_decisions_that_leave_as_many_sessions_make_another_look(
    store: Store, invented: ModuleType
) -> None:
    """The first, the last and the newest stay; of the two between them one goes and one comes."""
    ids = [
        add(store, invented, day, "SH-001", pain=(2, pain))
        for day, pain in ((0, 2), (1, 9), (2, 2), (3, 2))
    ]

    def decide(session: str, before: Decision, now: Decision) -> None:
        store.decide(Doubt(session, "SH-001", "SH-001", datetime.now(UTC), "", before), now)

    decide(ids[2], Decision.OPEN, Decision.LEFT_OUT)
    assert store.looks()[0].on(TODAY).has(Concern.HIGH_PAIN)
    decide(ids[2], Decision.LEFT_OUT, Decision.BELONGS)
    decide(ids[1], Decision.OPEN, Decision.LEFT_OUT)
    assert not store.looks()[0].on(TODAY).has(Concern.HIGH_PAIN)
