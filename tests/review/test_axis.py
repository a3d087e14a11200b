from __future__ import annotations

from datetime import date, datetime, timedelta, timezone
from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from coach.review.axis import angle_axis, date_axis, day_number

angles = st.floats(-180, 360)


@given(angles, angles, st.integers(3, 12))
def test_an_angle_axis_covers_its_data_with_few_round_evenly_spaced_marks(a, b, most):
    axis = angle_axis(min(a, b), max(a, b), most)
    assert axis.lo <= min(a, b) + 1e-9
    assert axis.hi >= max(a, b) - 1e-9
    values = [t.at for t in axis.ticks]
    assert 2 <= len(values) <= max(most, 4)
    steps = {round(y - x, 6) for x, y in pairwise(values)}
    assert len(steps) == 1
    assert all(v % min(steps) == 0 for v in values)
    assert [t.label.replace("\N{MINUS SIGN}", "-") for t in axis.ticks] == [
        f"{v:.0f}" for v in values
    ]


@given(
    st.dates(date(1990, 1, 1), date(2060, 1, 1)),
    st.integers(0, 8000),
    st.integers(3, 12),
)
def test_a_date_axis_covers_its_days_and_marks_each_year_once(begin, length, most):
    first = float(begin.toordinal())
    axis = date_axis(first, first + length, most)
    assert axis.lo < first
    assert axis.hi > first + length
    assert 1 <= len(axis.ticks) <= most
    assert all(axis.lo <= t.at <= axis.hi for t in axis.ticks)
    years = [t.under for t in axis.ticks if t.under]
    assert years == sorted(set(years))
    assert axis.ticks[0].under == str(date.fromordinal(int(axis.ticks[0].at)).year)
    for tick in axis.ticks:
        on = date.fromordinal(int(tick.at))
        assert on.strftime("%b") in tick.label
        assert tick.label == on.strftime("%b") or tick.label == f"{on.day} {on:%b}"


def test_short_periods_show_days_and_long_ones_months_or_years():
    first = float(date(2026, 1, 5).toordinal())
    assert [t.label for t in date_axis(first, first + 42).ticks][:2] == ["5 Jan", "12 Jan"]
    assert [t.label for t in date_axis(first, first + 200).ticks][:2] == ["Jan", "Feb"]
    assert {t.label for t in date_axis(first, first + 3000).ticks} == {"Jan"}


def test_a_day_is_the_calendars_day_of_the_place():
    far_east = timezone(timedelta(hours=14))
    noon = datetime(2026, 7, 1, 12, 0, tzinfo=far_east)
    assert day_number(noon) == date(2026, 7, 1).toordinal() + 0.5
