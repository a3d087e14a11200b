"""Days and order of sessions: by the clock where each was held, whatever the reader's zone."""

from __future__ import annotations

import time
from collections.abc import Iterator
from datetime import UTC, date, datetime
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as some

from coach.catalogue import catalogue
from coach.domain.session import SessionDocument
from coach.review.history import in_order, started
from coach.session.agenda import due_now
from coach.storage.session_file import session_names
from coach.storage.store import Store
from tests.review.conftest import make_session

ZONES = (
    "UTC",
    "Europe/Berlin",
    "America/St_Johns",  # half an hour off
    "Asia/Kathmandu",  # three quarters
    "Australia/Lord_Howe",  # half an hour of summer time
    "Pacific/Kiritimati",  # UTC+14
    "Pacific/Pago_Pago",  # UTC-11
)
BERLIN = ZoneInfo("Europe/Berlin")
instants = some.datetimes(datetime(2024, 1, 1), datetime(2026, 11, 20)).map(
    lambda at: at.replace(tzinfo=UTC, microsecond=0)
)


def held(at: datetime, zone: str | ZoneInfo = BERLIN) -> SessionDocument:
    local = at.astimezone(ZoneInfo(zone) if isinstance(zone, str) else zone)
    return make_session(at=datetime.fromisoformat(local.isoformat()))


@pytest.fixture(params=["Pacific/Kiritimati", "Pacific/Pago_Pago"])
def reader(request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    """A therapist whose computer stands in another zone than any patient's."""
    if not hasattr(time, "tzset"):
        pytest.skip("the zone of a process cannot be chosen here")
    monkeypatch.setenv("TZ", request.param)
    time.tzset()
    yield
    monkeypatch.undo()
    time.tzset()


@settings(
    max_examples=40, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
@given(at=instants, zone=some.sampled_from(ZONES))
def test_a_session_belongs_to_the_day_on_the_clock_where_it_was_held(
    reader: None, at: datetime, zone: str
) -> None:
    there = at.astimezone(ZoneInfo(zone))
    document = held(at, zone)
    assert started(document) == at
    assert started(document).date() == there.date()
    assert session_names(document)[0].startswith(f"{there:%Y-%m-%d_%H%M}_")


@settings(max_examples=40, deadline=None)
@given(
    some.lists(
        some.tuples(instants, some.sampled_from(ZONES)), max_size=8, unique_by=lambda e: e[0]
    )
)
def test_sessions_are_sorted_by_instant(entries: list[tuple[datetime, str]]) -> None:
    documents = [held(at, zone) for at, zone in entries]
    assert [started(d) for d in in_order(documents)] == sorted(at for at, _ in entries)


def test_the_store_keeps_order_and_days(reader: None, tmp_path: Path) -> None:
    # The hour that comes twice, 2026-10-25 in Berlin, and midnight on both sides of it.
    texts = [
        "2026-10-24T23:59:59+02:00",
        "2026-10-25T00:00:00+02:00",
        "2026-10-25T02:30:00+02:00",
        "2026-10-25T02:30:00+01:00",
        "2026-10-25T23:59:59+01:00",
        "2026-10-26T00:00:00+01:00",
    ]
    store = Store(tmp_path / "store.sqlite")
    for number in (3, 0, 5, 2, 4, 1):
        document = make_session(at=datetime.fromisoformat(texts[number]))
        store.import_session(document, b"x", f"{number}.zip")
    assert [d.started_at for d in store.sessions_of("SH-017")] == texts
    (entry,) = store.patients()
    assert (entry.first_at.date(), entry.last_at.date()) == (
        date(2026, 10, 24),
        date(2026, 10, 26),
    )
    store.close()


@pytest.mark.parametrize(
    ("done", "now", "still_due"),
    [
        ("2026-11-24T23:59:59+01:00", "2026-11-25T00:00:01+01:00", True),  # midnight
        ("2026-11-25T00:00:01+01:00", "2026-11-25T23:59:59+01:00", False),
        ("2026-03-29T01:59:00+01:00", "2026-03-29T23:00:00+02:00", False),  # 23 hours
        ("2026-10-25T00:10:00+02:00", "2026-10-25T23:50:00+01:00", False),  # 25 hours
        ("2026-10-24T23:50:00+02:00", "2026-10-25T00:10:00+02:00", True),
        ("2028-02-28T20:00:00+01:00", "2028-02-29T08:00:00+01:00", True),  # leap day
        ("2028-02-29T20:00:00+01:00", "2028-03-01T08:00:00+01:00", True),
        ("2026-12-31T20:00:00+01:00", "2027-01-01T08:00:00+01:00", True),
        # Flown west: the morning's session is of today where it was held, and is not asked again.
        ("2026-11-25T09:00:00+09:00", "2026-11-25T08:00:00-08:00", False),
    ],
)
def test_what_is_due_follows_the_day_on_the_clock(done: str, now: str, still_due: bool) -> None:
    document = make_session(at=datetime.fromisoformat(done))
    agenda = due_now(document.plan, [document], datetime.fromisoformat(now), catalogue().by_name)
    assert agenda.nothing_due is not still_due


@pytest.mark.parametrize(
    ("done", "now", "minutes_ago"),
    [
        # It ended two minutes after it began; the clock went back an hour in between, or was set.
        ("2026-10-25T02:40:00+02:00", "2026-10-25T02:12:00+01:00", 30),
        ("2026-03-29T01:50:00+01:00", "2026-03-29T03:22:00+02:00", 30),
        ("2026-11-25T10:00:00+01:00", "2026-11-25T09:00:00+01:00", None),
    ],
)
def test_how_long_ago_is_true_time(done: str, now: str, minutes_ago: int | None) -> None:
    document = make_session(at=datetime.fromisoformat(done))
    known = catalogue().by_name
    agenda = due_now(document.plan, [document], datetime.fromisoformat(now), known)
    assert agenda.minutes_ago == minutes_ago
