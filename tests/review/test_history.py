from __future__ import annotations

from datetime import date, datetime, timedelta, timezone
from statistics import stdev

import numpy as np
import pytest

from coach.domain.fault import Fault
from coach.domain.form import FormFault
from coach.domain.movement import Movement, Side
from coach.domain.progress import EndedBecause
from coach.review.change import Verdict, summary
from coach.review.history import comparable, history
from coach.review.spread import deviation
from tests.review.six_patients import hold, sitting


def test_a_session_counts_by_the_median_of_its_holds(session):
    (series,) = history([session(0, (90.0, 130.0, 92.0))])
    (point,) = series.points
    assert (point.value, point.best, point.mean) == (92.0, 130.0, 104.0)
    assert (series.movement, series.side) == (Movement.FLEXION, Side.LEFT)


def test_holds_that_disagree_widen_the_error_and_never_narrow_it(session):
    agreeing = history([session(0, (100.0,) * 9, error=5)])[0].points[0]
    apart = history([session(0, (80.0, 100.0, 120.0), error=5)])[0].points[0]
    assert agreeing.error == 5.0
    # 1.96 * sqrt(pi/2) * 20 / sqrt(3) = 28.37, beside the 5.
    assert apart.error == pytest.approx((28.366**2 + 5**2) ** 0.5, abs=0.01)


def test_a_hold_let_go_stands_in_only_if_half_was_held(session):
    half = session(0, (70.0,), hold_s=20, held_s=10, ended=EndedBecause.LET_GO)
    less = session(1, (70.0,), hold_s=20, held_s=9, ended=EndedBecause.LET_GO)
    (series,) = history([half, less])
    assert [p.session_id for p in series.points] == [half.session_id]
    assert not series.points[0].complete
    assert len(series.pains) == 2


@pytest.mark.parametrize("hours", [-11, -5, 0, 5.75, 14])
@pytest.mark.parametrize("clock", [(0, 1), (12, 0), (23, 59)])
def test_the_date_is_that_of_the_place(session, hours, clock):
    at = datetime(2028, 2, 29, *clock, tzinfo=timezone(timedelta(hours=hours)))
    (series,) = history([session(at=at)])
    assert series.points[0].at.date() == date(2028, 2, 29)


def test_sessions_are_sorted_by_instant_and_not_by_text(session):
    auckland = session(0, at=datetime(2026, 3, 2, 8, 0, tzinfo=timezone(timedelta(hours=13))))
    honolulu = session(1, at=datetime(2026, 3, 1, 10, 0, tzinfo=timezone(timedelta(hours=-10))))
    (series,) = history([honolulu, auckland])
    assert [p.session_id for p in series.points] == [auckland.session_id, honolulu.session_id]


def test_one_trend_line_holds_one_definition(session):
    found = history([session(0, definitions=1), session(1, definitions=2)])
    assert [(s.definitions, len(s.points)) for s in found] == [(1, 1), (2, 1)]


def test_two_patients_are_not_one_history(session):
    with pytest.raises(Fault, match="2 patients"):
        history([session(0, code="A"), session(0, code="B")])


@pytest.mark.parametrize("text", ["yesterday", "2026-01-05T10:00:00", ""])
def test_a_start_without_zone_is_refused(session, text):
    import msgspec

    with pytest.raises(Fault, match="zone offset"):
        history([msgspec.structs.replace(session(), started_at=text)])


def test_a_trunk_that_leans_or_turns_gains_no_range():
    leaning = hold(1, 130.0, (FormFault.LEAN,))
    turning = hold(2, 128.0, (FormFault.TURN, FormFault.HIKE))
    raised = hold(3, 101.0, (FormFault.HIKE,))
    mixed, alone = sitting("A", 0, [leaning, turning, raised]), sitting("A", 1, [leaning, turning])
    first, second = history([mixed, alone])[0].points
    assert (first.value, first.feigned, first.holds) == (101.0, False, 1)
    assert first.feigned_share == pytest.approx(2 / 3)
    assert (second.value, second.feigned) == (129.0, True)
    assert comparable((first, second)) == (first,)


def test_a_sitting_says_how_well_it_was_seen():
    seen = sitting("A", 0, [hold(1, 100.0, seen=0.5)], frames_lost=2000, field_of_view_deg=70.0)
    (point,) = history([seen])[0].points
    assert (point.seen_fraction, point.set_up.field_of_view_deg) == (0.5, 70.0)
    assert point.lost_share == 0.25  # 2000 of 8000


def test_a_gain_that_only_the_trunk_made_is_no_change():
    days = range(20)
    sound = [sitting("A", d, [hold(1, 100.0 + d % 2)]) for d in days]
    leaning = [sitting("A", d, [hold(1, 135.0, (FormFault.LEAN,))]) for d in range(20, 30)]
    (series,) = history([*sound, *leaning])
    found = summary(series)
    assert found.verdict is Verdict.WITHIN_ERROR
    assert found.best.value == 101.0
    assert summary(history(leaning)[0]).verdict is Verdict.TOO_FEW


def test_the_deviation_of_a_sample_is_the_exact_one() -> None:
    """Against the reckoning in fractions of Python's own library."""
    rng = np.random.default_rng(2)
    for count in (2, 3, 20):
        values = [float(v) for v in rng.normal(1e6, 3.0, count)]
        assert deviation(values) == pytest.approx(stdev(values), rel=1e-12)
    assert deviation([5.0]) == 0.0
