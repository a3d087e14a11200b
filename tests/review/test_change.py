from __future__ import annotations

import math
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta

import numpy as np
import pytest
from msgspec import structs
from scipy import stats

from coach.domain.movement import Movement, Position, Side, Unit, View
from coach.review.carry_over import Scatter, Scattering, scatter_of
from coach.review.change import Basis, Verdict, compare, percent_of_other, summary
from coach.review.cohort_reasons import poorly_measured
from coach.review.history import Point, Series, history
from coach.review.notes import notes_on
from coach.review.set_up import SetUp, SetUpChange
from coach.review.student import student95
from coach.review.trend import (
    robust_line,
    slope_interval,
    trend,
    week_medians,
)
from coach.review.wording import change_with_error
from tests.review.six_patients import six_patients

SET_UP = SetUp("camera", 640, 480, 62.0, View.SIDE, "a" * 64, "frame-by-frame")
OTHER_CAMERA = SetUp("camera", 1280, 720, 70.0, View.SIDE, "a" * 64, "frame-by-frame")
BEGIN = datetime(2026, 1, 5, 9, 0, tzinfo=UTC)
VERY_MANY = 1e9


def known(sd, dof=VERY_MANY):
    """Days that have nothing to do with each other, of a known scatter."""
    return Scatter((Scattering(1.0, sd**2),), dof)


def points(values, error=4.0, set_up=SET_UP, begin=BEGIN, every_days=1.0):
    return tuple(
        Point(
            session_id=f"{i:032x}",
            at=begin + timedelta(days=every_days * i),
            value=float(value),
            error=error,
            best=float(value),
            mean=float(value),
            spread=0.0,
            held_s=60.0,
            holds=3,
            seen_fraction=1.0,
            complete=True,
            set_up=set_up,
        )
        for i, value in enumerate(values)
    )


def judged(values, error=4.0, **more):
    return summary(Series(Movement.FLEXION, Side.LEFT, 1, points(values, error, **more), ()))


def test_single_sessions_give_the_textbook_value():
    # SEM 5 deg: MDC95 = 1.96 * sqrt(2) * 5 = 13.86 (Weir 2005, equation from memory).
    own = known(5.0)
    found = compare(points([100.0], 1.0), points([110.0], 1.0), own, placement_sem=0.0)
    assert found.mdc == pytest.approx(13.86, abs=0.01)
    assert found.single_mdc == pytest.approx(13.86, abs=0.01)
    assert (found.basis, found.verdict) == (Basis.OWN, Verdict.UNDECIDED)


def test_weeks_of_daily_sessions_give_the_clinic_sheets_figure():
    # Day-to-day SD 5: means of seven have SE 1.9 and MDC95 5.2.
    own = known(5.0)
    assert own.independent(range(7)) == pytest.approx(7, abs=1e-3)
    found = compare(points([100.0] * 7, 1.0), points([106.0] * 7, 1.0), own, placement_sem=0.0)
    assert found.mdc == pytest.approx(5.2, abs=0.05)
    assert found.verdict is Verdict.REAL


def test_errors_of_two_sessions_add_in_quadrature():
    found = compare(points([100.0], 9.0), points([120.0], 12.0), None)
    assert found.error == pytest.approx(15.0)


def test_where_placing_was_never_measured_the_whole_error_of_the_readings_must_be_passed():
    own = known(0.001)
    first, last = points([100.0] * 7, 14.4), points([120.0] * 7, 14.4)
    found = compare(first, last, own)
    # Sessions of a week may share a place of the camera: nothing is averaged.
    assert found.mdc == pytest.approx(14.4 * math.sqrt(2))
    assert (found.basis, found.verdict) == (Basis.READINGS, Verdict.UNDECIDED)
    # About 15 degrees with a goniometer by hand (Tveita 2008).
    sure = compare(points([100.0] * 7, 1.0), points([120.0] * 7, 1.0), own)
    assert sure.mdc == pytest.approx(15.0, rel=1e-3)


@pytest.mark.parametrize(
    ("movement", "position"),
    [
        (Movement.EXTERNAL_ROTATION_0, Position.STANDING),
        (Movement.EXTERNAL_ROTATION_0, Position.DOORWAY),
        (Movement.EXTERNAL_ROTATION_0, Position.SITTING),
        (Movement.FLEXION, Position.SITTING),
        (Movement.ABDUCTION, Position.SITTING),
    ],
)
def test_these_were_never_placed_anew(movement, position):
    series = Series(movement, Side.LEFT, 1, points([50.0] * 21, 13.0), (), position)
    found = summary(series).difference
    assert found.mdc == pytest.approx(13.0 * math.sqrt(2))
    assert found.basis is Basis.READINGS


def test_another_camera_takes_averaging_away():
    own = known(0.001)
    first, last = points([100.0] * 4, 30.0), points([110.0] * 4, 30.0)
    moved = compare(first, last, own, set_up_changed=True, placement_sem=2.5)
    assert moved.mdc == pytest.approx(30 * math.sqrt(2))
    values = points([100.0] * 9) + points([112.0] * 9, set_up=OTHER_CAMERA, begin=BEGIN)
    result = summary(Series(Movement.FLEXION, Side.LEFT, 1, values, ()))
    assert result is not None
    assert result.set_up_change is SetUpChange.CAMERA


def measured_by(model, document):
    exercises = tuple(structs.replace(e, model_sha256=model) for e in document.exercises)
    return structs.replace(document, exercises=exercises)


@pytest.mark.parametrize("model", [None, "b" * 64])
def test_sessions_measured_with_another_pose_model_are_judged_by_the_error_of_both(session, model):
    early = [session(day, [100.0] * 3, error=8.5) for day in range(10)]
    late = [measured_by(model, session(day, [112.0] * 3, error=12.0)) for day in range(10, 20)]
    (series,) = history([*early, *late])
    found = summary(series)
    assert found.set_up_change is (SetUpChange.NONE if model is None else SetUpChange.MODEL)
    if model is not None:
        assert found.difference.mdc >= math.hypot(8.5, 12.0)
        assert found.difference.basis is Basis.READINGS


@pytest.mark.parametrize(
    ("before", "after", "changed"),
    [(None, 71.0, False), (71.0, None, False), (62.0, 64.0, False), (62.0, 70.0, True)],
)
def test_a_lens_that_was_checked_for_the_first_time_is_the_lens_it_was(before, after, changed):
    old, new = (replace(SET_UP, field_of_view_deg=fov) for fov in (before, after))
    values = points([100.0] * 9, set_up=old) + points([100.0] * 9, set_up=new)
    found = summary(Series(Movement.FLEXION, Side.LEFT, 1, values, ()))
    assert found.set_up_change is (SetUpChange.CAMERA if changed else SetUpChange.NONE)


OTHER_MODEL = replace(SET_UP, model_sha256="b" * 64)


@pytest.mark.parametrize(
    ("new", "camera", "model"),
    [
        (SET_UP, False, False),
        (OTHER_MODEL, False, True),
        (OTHER_CAMERA, True, False),
        (replace(OTHER_CAMERA, model_sha256="b" * 64), True, True),
        # A lens checked for the first time is no other camera, whatever model measures.
        (replace(OTHER_MODEL, field_of_view_deg=None), False, True),
    ],
)
def test_what_is_new_between_the_first_sessions_and_the_last_is_said(new, camera, model):
    values = points([100.0] * 9) + points([112.0] * 9, 12.0, set_up=new)
    series = Series(Movement.FLEXION, Side.LEFT, 1, values, ())
    found = summary(series)
    told = [*notes_on([(series, found)], 1), *(r.sentence for r in poorly_measured([], [found]))]
    told = [sentence for sentence in told if "were measured with another" in sentence]
    assert len(told) == 2 * (camera or model)
    for sentence in told:
        assert ("another camera set-up" in sentence) is camera
        assert ("another pose model" in sentence) is model
        assert ("by the same camera set-up" in sentence) is (model and not camera)
    if camera or model:
        assert found.difference.mdc >= math.hypot(4.0, 12.0)
        assert found.difference.basis is Basis.READINGS


def test_until_own_scatter_is_known_only_much_more_than_the_published_figure_is_decided():
    few = judged([100.0, 112.0])
    assert few.difference.basis is Basis.PUBLISHED
    # Student's two-sided 95 % point at 5 degrees of freedom, 2.571, for the normal's 1.960.
    assert few.difference.mdc == pytest.approx(15.0 * 2.571 / 1.960, rel=1e-3)
    assert few.verdict is Verdict.TOO_FEW
    assert judged([100.0, 120.0]).verdict is Verdict.REAL
    alone = judged([100.0])
    assert alone.difference is None
    assert alone.verdict is Verdict.TOO_FEW


def test_few_sessions_are_compared_singly_and_weeks_later_on():
    few = judged([90.0, 140.0, 100.0, 110.0, 95.0])
    assert (few.first.value, few.last.value, few.best.value) == (90.0, 95.0, 140.0)
    many = judged(range(100, 130))
    assert (many.first.sessions, many.last.sessions) == (7, 7)
    assert (many.first.value, many.last.value) == (103.0, 126.0)
    sparse = judged([100.0] * 12, every_days=5)
    assert (sparse.first.sessions, sparse.last.sessions) == (2, 2)


def test_the_line_agrees_with_scipy():
    rng = np.random.default_rng(4)
    for size in (2, 3, 10, 41):
        days = np.cumsum(rng.integers(0, 3, size)) + np.arange(size) * 0.1
        values = rng.normal(100, 6, size)
        slope, intercept = robust_line(days, values)
        reference = stats.theilslopes(values, days)
        assert slope == pytest.approx(reference.slope)
        assert intercept == pytest.approx(reference.intercept)


@pytest.mark.parametrize("tied", [False, True])
def test_the_slopes_interval_agrees_with_scipy(tied):
    rng = np.random.default_rng(14)
    for size in (5, 6, 12, 40):
        days = np.cumsum(rng.integers(0 if tied else 1, 3, size))
        values = rng.normal(100, 6, size).round(0 if tied else 3)
        reference = stats.theilslopes(values, days)
        assert slope_interval(days, values) == pytest.approx(
            (reference.low_slope, reference.high_slope)
        )


def test_a_trend_is_sure_where_kendalls_tau_is():
    rng = np.random.default_rng(15)
    agreed = 0
    for _ in range(300):
        weeks = np.arange(12)
        values = 100 + rng.uniform(0, 1) * weeks + rng.normal(0, 3, 12)
        found = trend(BEGIN.date(), 7.0 * weeks, values)
        tau = stats.kendalltau(weeks, values, method="asymptotic")
        # Both rest on the same normal variance of Kendall's S; ranks may round at the border.
        assert found.sure == (tau.pvalue < 0.05) or abs(tau.pvalue - 0.05) < 0.012
        agreed += found.sure and tau.pvalue < 0.05
    assert 30 < agreed < 270


def test_weeks_medians_are_those_of_the_calendar():
    # From Friday 2 January 2026: three days, then a whole week, then one day.
    days = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10]
    values = [1.0, 9.0, 2.0, 10, 11, 12, 13, 14, 15, 99, 50]
    found = week_medians(date(2026, 1, 2), days, values)
    assert [(w.monday, w.value, w.sessions) for w in found] == [
        (date(2025, 12, 29), 2.0, 3),
        (date(2026, 1, 5), 13.0, 7),
        (date(2026, 1, 12), 50.0, 1),
    ]
    assert trend(date(2026, 1, 2), days, values) is None


def test_students_factor_agrees_with_its_table():
    # Two-sided 95 % points: 4 degrees of freedom 2.776, 10: 2.228, 30: 2.042.
    assert [student95(d) for d in (4, 10, 30)] == pytest.approx([2.776, 2.228, 2.042], abs=5e-4)


def test_scatter_is_found_again_and_a_steady_gain_is_no_scatter():
    rng = np.random.default_rng(5)
    days = np.arange(90.0)
    noise = rng.normal(0, 4.0, 90)
    for course in (60, 60 + 0.2 * days):
        found = scatter_of(days, course + noise)
        sd = math.sqrt(sum(a.weight * a.variance for a in found.answers))
        assert sd == pytest.approx(4.0, rel=0.15)
        assert found.independent(range(7)) > 6
    assert scatter_of(days[:5], noise[:5]) is None


def test_days_that_resemble_each_other_are_worth_fewer():
    """The variance of a mean of n with autocorrelation r^k (Bayley & Hammersley 1946, J R Stat
    Soc Suppl 8:184, from memory): s^2 / n (1 + 2 sum (1 - k / n) r^k)."""
    n, r = 7, 0.6
    worth = n / (1 + 2 * sum((1 - k / n) * r**k for k in range(1, n)))
    carried = Scatter((Scattering(1.0, 25.0, 1.0, r),), VERY_MANY)
    assert carried.independent(range(n)) == pytest.approx(worth, rel=1e-4)
    apart = carried.half_width(range(n), range(1000, 1000 + n), 0.0, VERY_MANY)
    assert apart == pytest.approx(1.96 * math.sqrt(2 * 25 / worth), rel=1e-3)


def test_the_mixture_of_two_scatters_has_the_interval_of_drawn_values():
    rng = np.random.default_rng(6)
    mixed = Scatter((Scattering(0.7, 4.0), Scattering(0.3, 36.0)), VERY_MANY)
    sd = np.where(rng.random(200_000) < 0.7, 2.0, 6.0)
    drawn = np.abs(rng.normal(0, sd * math.sqrt(2 / 3)))
    half = mixed.half_width(range(3), range(50, 53), 0.0, VERY_MANY)
    assert half == pytest.approx(np.quantile(drawn, 0.95), rel=0.02)


def test_strongly_carried_over_days_are_recognised():
    rng = np.random.default_rng(8)
    worth = []
    for carry in (0.0, 0.8):
        steps = rng.normal(0, 4.0 * math.sqrt(1 - carry**2), (30, 60))
        for row in steps:
            values = [row[0] / math.sqrt(1 - carry**2)]
            for step in row[1:]:
                values.append(carry * values[-1] + step)
            worth.append(scatter_of(range(60), values).independent(range(7)))
    # By the formula above seven days are worth 7, and with 0.8 are worth 1.6.
    assert np.mean(worth[:30]) > 5
    assert np.mean(worth[30:]) < 2.5


def rate_of_real(rng, sessions, scatter_deg, error_deg, course, count=100):
    real = 0
    for _ in range(count):
        values = 100 + course + rng.normal(0, scatter_deg, sessions)
        result = judged(values, error_deg)
        wrong_way = course.any() and result.difference.change < 0
        real += result.verdict is Verdict.REAL and not wrong_way
    return real / count


@pytest.mark.parametrize("sessions", [2, 4, 6, 14, 42])
def test_an_unchanged_patient_is_seldom_called_changed(sessions):
    rng = np.random.default_rng(sessions)
    # 100 patients: a true rate of 5 % stays at 10 % or under in 99 of 100 runs.
    rate = rate_of_real(rng, sessions, 5.0, 3.0, np.zeros(sessions))
    assert rate <= 0.10


@pytest.mark.parametrize("shape", ["steady", "sudden", "levelling off"])
def test_a_gain_of_15_degrees_is_never_called_none(shape):
    sessions = 42
    share = np.linspace(0, 1, sessions)
    course = {
        "steady": share,
        "sudden": 1.0 * (share > 0.5),
        "levelling off": (1 - np.exp(-3 * share)) / (1 - np.exp(-3)),
    }[shape]
    rng = np.random.default_rng(7)
    found = [judged(100 + 15 * course + rng.normal(0, 5.0, sessions)).verdict for _ in range(60)]
    # 60 patients: a true rate of 5 % stays at 8 or under in 99 of 100 runs.
    assert found.count(Verdict.WITHIN_ERROR) <= 8
    assert found.count(Verdict.REAL) > 30


def test_what_is_open_says_how_many_sessions_might_do():
    rng = np.random.default_rng(9)
    asked = []
    for _ in range(40):
        found = judged(100 + rng.normal(0, 4.0, 12)).difference
        if found.verdict is Verdict.UNDECIDED:
            asked.append(found.enough_sessions)
    assert len(asked) > 20
    assert all(enough is None or 12 < enough <= 96 for enough in asked)
    some = [enough for enough in asked if enough is not None]
    assert len(some) > 20
    # So many sessions do decide for patients like these, unchanged, more often than not.
    enough = int(np.median(some))
    later = [judged(100 + rng.normal(0, 4.0, enough)).verdict for _ in range(40)]
    assert later.count(Verdict.WITHIN_ERROR) > 20


@pytest.mark.parametrize(
    ("value", "other", "percent"),
    [(80.0, 160.0, 50.0), (-10.0, 60.0, -100 / 6), (30.0, 0.0, None), (30.0, -5.0, None),
     (30.0, 4.0, None), (30.0, None, None)],
)  # fmt: skip
def test_the_other_side_is_a_reference_only_where_it_can_be(value, other, percent):
    assert percent_of_other(value, other) == (None if percent is None else pytest.approx(percent))


def test_a_camera_put_up_anew_costs_its_own_error_and_not_the_whole_readings():
    own = known(0.001)
    first, last = points([100.0], 9.0), points([106.0], 9.0)
    found = compare(first, last, own, placement_sem=1.5)
    # t sqrt(2) SEM (Weir 2005), t for the 14 degrees of freedom of ``PLACEMENT_SEM``: 2.145.
    assert found.mdc == pytest.approx(2.145 * 2**0.5 * 1.5, rel=1e-3)
    assert found.verdict is Verdict.REAL
    moved = compare(first, last, own, placement_sem=1.5, set_up_changed=True)
    assert moved.verdict is Verdict.UNDECIDED


def test_a_place_of_the_camera_is_not_averaged_and_welch_counts_its_freedom():
    own = known(4.0, 10.0)
    found = compare(points([100.0] * 7), points([110.0] * 7), own, placement_sem=2.5)
    scatter, place = 2 * 16.0 / 7, 2 * 6.25
    # Satterthwaite: (v1 + v2)^2 / (v1^2 / 10 + v2^2 / 14).
    dof = (scatter + place) ** 2 / (scatter**2 / 10 + place**2 / 14)
    assert dof == pytest.approx(22.0, abs=0.05)
    assert found.mdc == pytest.approx(stats.t.ppf(0.975, dof) * math.sqrt(scatter + place))


@pytest.mark.parametrize(
    ("change", "verdict", "text"),
    [
        (7.5, Verdict.UNDECIDED, "+8° ± 8°"),
        (7.7, Verdict.REAL, "+7.7° ± 7.6°"),
        (8.4, Verdict.REAL, "+8.4° ± 7.6°"),
        (8.6, Verdict.REAL, "+9° ± 8°"),
        (6.4, Verdict.WITHIN_ERROR, "+6° ± 8°"),
    ],
)
def test_what_is_read_agrees_with_the_verdict(change, verdict, text):
    own = known(0.001)
    # 2.145 sqrt(2) 2.5 = 7.58.
    last = points([100.0 + change], begin=BEGIN + timedelta(days=30))
    found = compare(points([100.0]), last, own, placement_sem=2.5)
    written = change_with_error(found.change, found.error, Unit.DEGREES, fine=found.fine)
    assert found.verdict is verdict
    assert written == text


def test_the_slope_of_a_steady_gain_is_inside_its_interval():
    inside = 0
    for seed in range(40):
        found = summary(history(six_patients(seed)["steady gain"])[0]).trend
        assert found.sure
        # 30 degrees in 42 days.
        inside += found.low <= 5.0 <= found.high
    # 95 % of 40 are 38; under 34 come up in 1 of 300 runs.
    assert inside >= 34


def test_a_scatter_of_nothing_leaves_the_places_error():
    found = judged([100.0] * 20)
    # 2.145 sqrt(2) 2.5, of flexion standing.
    assert found.difference.mdc == pytest.approx(7.58, abs=0.01)
    assert found.verdict is Verdict.WITHIN_ERROR
