from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import msgspec
import numpy as np
import pytest
from scipy.stats import theilslopes

from coach.domain.form import FormFault
from coach.domain.movement import Movement
from coach.domain.plan import NextStep, PlannedExercise
from coach.domain.practice import PatientRecords, Person, Treatment, TreatmentKind
from coach.review.axis import day_number
from coach.review.overview import overview
from tests.review.conftest import BEGIN
from tests.review.six_patients import hold, sitting, six_patients

TODAY = date(2026, 3, 1)


def said(documents, today=TODAY, **more):
    return dict(overview(documents, today, **more).report.rows[0].findings)


def treated(*treatments):
    return PatientRecords(
        person=Person(code="SH-017"),
        treatments=tuple(
            Treatment(code="SH-017", on=on, kind=kind, text=text) for on, kind, text in treatments
        ),
    )


def test_the_slope_on_the_chart_is_scipys_line_through_the_weeks_medians(session):
    noise = np.random.default_rng(5).normal(0, 3, 42)
    documents = [session(n, (90 + 0.7 * n + noise[n],)) for n in range(42)]
    chart = overview(documents, TODAY).report.rows[0].chart
    weeks = [np.median(90 + 0.7 * np.arange(7 * w, 7 * w + 7) + noise[7 * w : 7 * w + 7])
             for w in range(6)]  # fmt: skip
    days = 7.0 * np.arange(6)
    slope, intercept, low, high = theilslopes(weeks, days)
    assert [w.value for w in chart.weeks] == pytest.approx(weeks)
    assert chart.slope.begin == pytest.approx(intercept)
    assert chart.slope.end == pytest.approx(intercept + 35 * slope)
    # Monday 5 January; a week's median stands in its middle.
    assert chart.slope.begin_day == BEGIN.date().toordinal() + 3.5
    by_week = said(documents)["By week"]
    assert by_week.startswith(f"+{7 * slope:.1f}°")
    assert f"+{7 * low:.1f}° to +{7 * high:.1f}°" in by_week


def test_no_week_has_its_median_after_the_last_session(session):
    documents = [session(n, (90.0 + n,)) for n in range(36)]  # ends on a Monday
    chart = overview(documents, TODAY).report.rows[0].chart
    assert len(chart.weeks) == 6
    assert chart.weeks[-1].day == chart.slope.end_day == chart.dots[-1].day
    # A degree a day: the line through full weeks' middles goes on to the last session.
    assert chart.slope.end == pytest.approx(90 + 35, abs=1.5)


def test_a_level_course_has_no_sure_direction(session):
    documents = [session(n, (90.0 + (n * 7) % 5,)) for n in range(42)]
    assert said(documents)["By week"].startswith("no sure direction: ")
    assert "fewer than 5 weeks" in said(documents[:10])["By week"]


def test_the_hand_behind_the_back_goes_up_or_down(session):
    documents = [
        session(n, (0.9 - 0.005 * n,), movement=Movement.HAND_BEHIND_BACK, error=0.05)
        for n in range(42)
    ]
    # 0.5 % of the back's length a day, upward.
    assert said(documents)["By week"].startswith("3.5 % up a week")


def test_treatments_are_on_the_dates_of_the_sessions(session):
    documents = [session(n) for n in range(10)]
    records = treated(
        (date(2019, 5, 1), TreatmentKind.SURGERY, ""),
        (date(2025, 12, 29), TreatmentKind.INJECTION, ""),
        (date(2026, 1, 12), TreatmentKind.OTHER, "Joint glide"),
    )
    found = overview(documents, TODAY, records)
    chart = found.report.rows[0].chart
    assert [e.words for e in chart.events] == ["injection, 29 Dec 2025", "Joint glide, 12 Jan 2026"]
    assert chart.events[1].day == date(2026, 1, 12).toordinal()
    days, _ = chart.axes()
    assert 0 < days.share(chart.events[0].day) < days.share(day_number(BEGIN)) < 1
    # One of years ago would squeeze the sessions; it is told beside the chart.
    assert "surgery, 1 May 2019" in dict(found.lines)["Treatments"]
    assert "Joint glide" in chart.description()


def test_the_plans_angles_are_on_the_chart_and_its_axis(session):
    (document,) = [session(0, (100.0,) * 3)]
    first = msgspec.structs.replace(
        document.plan.exercises[0],
        target_deg=170.0,
        next_step=NextStep(sessions=3, at_least_deg=140.0),
    )
    plan = msgspec.structs.replace(document.plan, exercises=(first,))
    chart = overview([msgspec.structs.replace(document, plan=plan)], TODAY).report.rows[0].chart
    assert (chart.not_beyond_deg, chart.next_step_deg) == (170.0, 140.0)
    _, values = chart.axes()
    assert values.hi >= 170
    bare = replace(chart, not_beyond_deg=None, next_step_deg=None)
    assert bare.axes()[1].hi < 140


def test_form_is_told_by_the_share_of_holds(session):
    leaning = [hold(n, 130.0, (FormFault.LEAN, FormFault.HIKE)) for n in (1, 2)]
    turned = [hold(3, 120.0, (FormFault.TURN,))]
    still = [hold(n, 100.0) for n in (1, 2, 3, 4, 5)]
    documents = [sitting("A", 0, still), sitting("A", 1, leaning + turned)]
    form = said(documents)["Form"]
    # 2 of 8 leaned and rose, 1 of 8 turned.
    assert form.startswith("trunk leaned in 25 %, shoulder rose in 25 % and trunk turned in 12 %")
    assert "of 8 holds" in form
    assert "kept out of the range" in form
    assert "no fault noted" in said(documents[:1])["Form"]


def test_the_published_error_stands_beside_the_patients_own(session):
    few, many = ([session(n, (90.0 + n % 3,)) for n in range(count)] for count in (3, 20))
    assert "20°: by hand 15° (Tveita 2008)" in said(few)["Real beyond"]
    own = said(many)["Real beyond"]
    assert "these 20 sessions" in own
    assert "by hand 15° (Tveita 2008)" in own
    assert int(own.split("°")[0]) < 15


def test_since_the_last_plan_was_issued(session):
    issued = [
        msgspec.structs.replace(
            d, plan=msgspec.structs.replace(d.plan, issued_on=(BEGIN + timedelta(days=9)).date())
        )
        for d in (session(n, (90.0 if n < 10 else 110.0,)) for n in range(20))
    ]
    assert said(issued)["Since 14 Jan 2026"].startswith("+20° ± ")
    assert said([session(0)])["Since a visit"] == "no visit is written down"


def test_the_page_says_why_to_look_and_how_well_it_was_measured():
    documents = six_patients(1)["stopped after a week"]
    found = overview(documents, date(2026, 2, 15), doubts=("It names another revision.",))
    assert found.reasons[0].startswith("No sitting since 10 Jan 2026, 36 days")
    lines = dict(found.lines)
    assert lines["Poorly measured"] == "none of 6 sittings"
    assert lines["Doubtful"] == "1 session: It names another revision."
    dim = [sitting("A", d, [hold(1, 90.0, seen=0.5)]) for d in range(3)]
    poor = dict(overview(dim, TODAY).lines)["Poorly measured"]
    assert poor.startswith("3 of 3 sittings; on 7 Jan 2026 arm seen in only 50 %")


def test_a_patient_who_was_only_timed_has_a_page(session):
    timed = PlannedExercise(exercise="pendulum", side="left", hold_s=30, repetitions=2)
    found = overview([session(0, (), planned=(timed,), pain=(None, None))], TODAY)
    assert found.report.rows[0].findings == ()
    assert "Poorly measured" not in dict(found.lines)


@pytest.mark.parametrize("who", ["noise that looks like gain", "stopped after a week"])
def test_an_open_change_says_how_many_sessions_might_tell(who):
    found = overview(six_patients(1, sittings=59, noisy=58)[who], date(2026, 3, 4)).report.rows[0]
    start = dict(found.findings)["Since the start"]
    enough = found.summary.difference.enough_sessions
    assert "cannot tell yet" in start
    if enough is None:
        assert start.endswith("more sessions alone would not")
    else:
        assert enough > found.summary.sessions
        assert start.endswith(f"about {enough} sessions in all might")
