from __future__ import annotations

from datetime import date, timedelta

import msgspec
import pytest

from coach.domain.movement import Side
from coach.domain.plan import PlannedExercise, Weekday
from coach.domain.progress import EndedBecause
from coach.review.adherence import adherence
from tests.review.six_patients import hold, plan_of, sitting


def test_sessions_are_counted_by_the_patients_weeks(session):
    # Monday 5 January 2026; five sessions in the first week, none in the second, one in the third.
    done = adherence([session(n, per_week=7) for n in (0, 1, 2, 3, 4, 14)])
    assert [(w.monday, w.done, w.asked) for w in done.weeks] == [
        (date(2026, 1, 5), 5, 7),
        (date(2026, 1, 12), 0, 7),
        (date(2026, 1, 19), 1, 1),
    ]
    assert (done.done, done.asked) == (6, 15)


def test_whoever_stopped_shows_only_when_todays_date_is_known(session):
    sessions = [session(n, per_week=5) for n in range(7)]
    assert adherence(sessions).asked == 5
    stopped = adherence(sessions, until=date(2026, 2, 1))
    assert [w.done for w in stopped.weeks] == [7, 0, 0, 0]
    assert stopped.asked == 20


def test_the_dose_counts_seconds_up_to_the_prescription(session):
    full = session(0, (90.0, 90.0), hold_s=20, held_s=25)
    short = session(1, (90.0,), hold_s=20, held_s=8, ended=EndedBecause.LET_GO)
    dose = adherence([full, short]).dose
    assert (dose.holds_completed, dose.holds_asked) == (2, 6)
    assert (dose.held_s, dose.asked_s) == (48.0, 120.0)


def test_opening_the_program_is_no_session(session):
    opened = session(0, ())
    result = adherence([opened, session(1)])
    assert result.done == 1
    assert result.dose.holds_asked == 3


@pytest.mark.parametrize("weekday", range(7))
@pytest.mark.parametrize("length", [1, 6, 7, 8, 30])
def test_what_is_asked_is_the_rate_times_the_days(session, weekday, length):
    last = weekday + length - 1
    result = adherence([session(weekday), session(last)] if length > 1 else [session(weekday)])
    assert result.asked == length
    assert result.weeks[0].monday == date(2026, 1, 5)
    assert result.weeks[-1].monday + timedelta(days=7) > date(2026, 1, 5) + timedelta(days=last)


def test_timed_exercises_and_easier_ones_count_as_holds():
    plan = plan_of("A")
    both = sitting("A", 0, [hold(n, 100.0) for n in (1, 2, 3)], plan=plan)
    swing_only = msgspec.structs.replace(
        sitting("A", 1, [], plan=plan), exercises=(both.exercises[1],)
    )
    eased = msgspec.structs.replace(
        sitting("A", 2, [hold(1, 90.0)], plan=plan),
        exercises=tuple(
            msgspec.structs.replace(both.exercises[1], planned_index=i, eased=not i) for i in (0, 1)
        ),
    )
    result = adherence([both, swing_only, eased])
    assert result.done == 3
    # Three holds and two swings are asked each day: 5 of 5, 2 of 5, and two easier with two swings.
    assert (result.dose.holds_completed, result.dose.holds_asked) == (5 + 2 + 4, 15)
    # 3 x 20 s and 2 x 30 s; the easier ones count up to the 20 s asked.
    assert (result.dose.held_s, result.dose.asked_s) == (120 + 60 + 40 + 60, 360)


def test_an_exercise_of_other_weekdays_is_not_asked(session):
    tuesdays = PlannedExercise(
        exercise="pendulum", side=Side.LEFT, hold_s=30, repetitions=2, days=(Weekday.TUESDAY,)
    )
    monday, tuesday = (session(n, planned=(tuesdays,)) for n in (0, 1))
    assert adherence([monday]).dose.holds_asked == 3
    assert adherence([tuesday]).dose.holds_asked == 5
