from __future__ import annotations

from datetime import date, timedelta

import pytest

from coach.domain.movement import Movement, Side
from coach.domain.plan import PlannedExercise
from coach.domain.practice import (
    Episode,
    HandMeasure,
    OtherSideMeasure,
    PatientRecords,
    Person,
    Treatment,
    TreatmentKind,
)
from coach.review.change import Verdict
from coach.review.history import history
from coach.review.practice_records import NO_RECORDS, last_visit, other_side_of
from coach.review.since_visit import since_visit
from tests.review.conftest import BEGIN

CODE = "SH-017"
FLEXION = Movement.FLEXION


def kept(**records):
    return PatientRecords(person=Person(code=CODE), **records)


def series_of(session, values):
    return history([session(n, (v,) * 3) for n, v in enumerate(values)])[0]


def test_the_weeks_on_either_side_of_the_visit_are_compared(session):
    # Ten days at 90, ten at 100; the visit is on the evening of the tenth.
    series = series_of(session, [90.0] * 10 + [100.0] * 10)
    visit = BEGIN.date() + timedelta(days=9)
    found = since_visit(series, visit)
    assert (found.before, found.after) == (7, 7)
    assert found.difference.change == pytest.approx(10)
    # Its error is that of these fourteen sessions, not that of the first and the last week.
    assert found.difference.error == pytest.approx(found.difference.mdc)
    assert found.difference.verdict is Verdict.REAL


def test_what_came_before_the_visit_is_not_counted_again(session):
    values = [60.0 + n + 2 * (-1) ** n for n in range(20)]
    series = series_of(session, values)
    found = since_visit(series, BEGIN.date() + timedelta(days=17))
    # 11 to 17 days against 18 and 19: means 74 - 2 / 7 and 78.5.
    assert (found.before, found.after) == (7, 2)
    assert found.difference.change == pytest.approx(4.5 + 2 / 7)
    # Two sessions are less sure than seven.
    assert found.difference.mdc > since_visit(series, BEGIN.date() + timedelta(9)).difference.mdc


@pytest.mark.parametrize(("days", "before", "after"), [(-1, 0, 7), (30, 7, 0)])
def test_without_sessions_on_one_side_nothing_is_compared(session, days, before, after):
    found = since_visit(series_of(session, [90.0] * 10), BEGIN.date() + timedelta(days=days))
    assert (found.before, found.after, found.difference) == (before, after, None)


def test_another_camera_since_the_visit_makes_it_less_sure(session):
    same = [session(n, (90.0 + n % 2,)) for n in range(14)]
    moved = same[:7] + [session(n, (90.0 + n % 2,), width_px=1280) for n in range(7, 14)]
    visit = BEGIN.date() + timedelta(days=6)
    first, second = (since_visit(history(d)[0], visit).difference.mdc for d in (same, moved))
    assert second > first


def test_any_record_is_a_visit_and_today_is_not_the_last_one(session):
    today = date(2026, 2, 1)
    documents = [session(0)]
    assert last_visit(documents, NO_RECORDS, today) is None
    injected = Treatment(code=CODE, on=date(2026, 1, 12), kind=TreatmentKind.INJECTION)
    ahead = Treatment(code=CODE, on=date(2026, 3, 1), kind=TreatmentKind.SURGERY)
    now = HandMeasure(
        code=CODE, on=today, movement=FLEXION, side=Side.LEFT, value_deg=100.0, passive=True
    )
    assert last_visit(documents, kept(treatments=(injected, ahead)), today) == injected.on
    assert last_visit(documents, kept(treatments=(injected,), by_hand=(now,)), today) == injected.on
    tomorrow = today + timedelta(days=1)
    assert last_visit(documents, kept(by_hand=(now,)), tomorrow) == today


def measured(value_deg, on, episode_id=None):
    return OtherSideMeasure(
        code=CODE, on=on, movement=FLEXION, value_deg=value_deg, episode_id=episode_id
    )


def test_the_newest_measure_of_the_practice_is_the_other_side(session):
    documents = [session(0, other_side=150.0)]
    records = kept(
        other_side=(measured(160.0, date(2025, 12, 1)), measured(165.0, date(2026, 1, 5)))
    )
    found = other_side_of(documents, FLEXION, Side.LEFT, records)
    assert (found.value_deg, found.on) == (165.0, date(2026, 1, 5))
    by_plan = other_side_of(documents, FLEXION, Side.LEFT, NO_RECORDS)
    assert (by_plan.value_deg, by_plan.on) == (150.0, None)


def test_where_both_sides_are_exercised_the_episode_says_which_is_meant(session):
    right = PlannedExercise(movement=FLEXION, side=Side.RIGHT, hold_s=20, repetitions=3)
    documents = [session(0, other_side=150.0, planned=(right,))]
    open_which = kept(other_side=(measured(165.0, date(2026, 1, 5)),))
    assert other_side_of(documents, FLEXION, Side.LEFT, open_which) is None
    episode = Episode(id=3, code=CODE, side=Side.LEFT, began_on=date(2025, 11, 1))
    said = kept(episodes=(episode,), other_side=(measured(165.0, date(2026, 1, 5), 3),))
    assert other_side_of(documents, FLEXION, Side.LEFT, said).value_deg == 165.0
    assert other_side_of(documents, FLEXION, Side.RIGHT, said) is None
