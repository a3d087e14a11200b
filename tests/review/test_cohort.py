from __future__ import annotations

from collections import Counter
from datetime import date, timedelta

import msgspec
import pytest

from coach.domain.form import FormFault
from coach.domain.plan import NextStep, Weekday
from coach.domain.session import SessionEnd
from coach.review.change import Verdict, summary
from coach.review.cohort import Concern, cohort, longest_pause_days, standing
from coach.review.history import history
from coach.review.next_step import next_step, next_step_met
from coach.review.sittings import sittings
from tests.review.golden_looks import now, written
from tests.review.six_patients import (
    BEGIN,
    FLEXION,
    LAST_DAY,
    SWING,
    hold,
    plan_of,
    sitting,
    six_patients,
)

OPEN = (Verdict.WITHIN_ERROR, Verdict.UNDECIDED)
"""All but a wrong decision, where the sittings are few or the camera is another."""
DECISIONS = {
    "steady gain": ((Verdict.REAL,), {Concern.NEXT_STEP, Concern.GAINED}),
    "no change": ((Verdict.WITHIN_ERROR,), set()),
    "noise that looks like gain": (OPEN, set()),
    "camera moved": (OPEN, {Concern.POOR_DATA}),
    "stopped after a week": (OPEN, {Concern.STOPPED}),
    "pain rising": ((Verdict.WITHIN_ERROR,), {Concern.PAIN_ROSE}),
}


def verdict_and_concerns(documents):
    result = summary(history(documents)[0])
    found = standing("A", documents, LAST_DAY)
    return result.verdict, {r.concern for r in found.reasons}


@pytest.mark.parametrize("who", DECISIONS)
def test_each_of_six_patients_gets_the_right_decision(who):
    verdicts, concerns = DECISIONS[who]
    found = [verdict_and_concerns(six_patients(seed)[who]) for seed in range(40)]
    right = Counter(verdict in verdicts and about == concerns for verdict, about in found)
    # At 5 % of wrong decisions, over 5 of 40 come up in 1 of 70 runs.
    assert right[False] <= 5


def test_the_list_begins_with_what_presses():
    patients = {d[0].plan.patient_code: d for d in six_patients(1).values()}
    found = cohort(patients, LAST_DAY)
    first = [s.reasons[0].concern if s.reasons else None for s in found]
    assert first == [
        Concern.PAIN_ROSE, Concern.STOPPED, Concern.POOR_DATA, Concern.NEXT_STEP, None, None,
    ]  # fmt: skip
    assert [s.patient_code for s in found[-2:]] == ["SH-102", "SH-103"]
    stopped = found[1]
    assert stopped.reasons[0].sentence.startswith("No sitting since 10 Jan 2026, 36 days")


def days_of(count, value=100.0, **more):
    return [sitting("A", d, [hold(1, value)], **more) for d in range(count)]


@pytest.mark.parametrize(
    ("days", "per_week", "pause"),
    [
        (tuple(Weekday), 7, 1),
        (tuple(Weekday), 3, 3),
        (tuple(Weekday), 14, 1),
        ((Weekday.MONDAY, Weekday.THURSDAY), 7, 4),  # Thursday to Monday
        ((Weekday.SUNDAY,), 1, 7),
    ],
)
def test_the_pause_a_plan_leaves(days, per_week, pause):
    planned = msgspec.structs.replace(FLEXION, days=days)
    plan = msgspec.structs.replace(plan_of("A", (planned,)), sessions_per_week=per_week)
    assert longest_pause_days(plan) == pause


def test_stopped_is_longer_than_asked_and_a_plan_that_ended_is_not_stopped():
    documents = days_of(5)
    last = BEGIN.date() + timedelta(days=4)
    assert not standing("A", documents, last + timedelta(days=3)).has(Concern.STOPPED)
    assert standing("A", documents, last + timedelta(days=4)).has(Concern.STOPPED)
    ended = msgspec.structs.replace(plan_of("A"), valid_until=last)
    assert not standing("A", days_of(5, plan=ended), date(2026, 6, 1)).has(Concern.STOPPED)


@pytest.mark.parametrize(
    ("first", "last", "rose"), [(2, 4, True), (2, 3, False), (5, 2, False), (5, 7, True)]
)
def test_pain_rose_by_two_points_or_not(first, last, rose):
    documents = [*days_of(6, pain=(first, first))]
    documents += [sitting("A", 6 + d, [hold(1, 100.0)], pain=(last, last)) for d in range(6)]
    assert standing("A", documents, LAST_DAY).has(Concern.PAIN_ROSE) is rose


@pytest.mark.parametrize("sessions", [1, 2, 3])
def test_what_was_reached_is_told_of_the_last_sitting_of_the_row(sessions):
    rule = NextStep(sessions=sessions, at_least_deg=90, pain_at_most=5)
    plan = plan_of("A", (msgspec.structs.replace(FLEXION, next_step=rule), SWING))
    furthest = (101.0, 102.0, 103.0, 104.0)
    documents = [
        sitting("A", day, [hold(1, most), hold(2, most - 6.0)], plan=plan)
        for day, most in enumerate(furthest)
    ]
    told = next_step(plan.exercises[0], documents).reason
    assert "(furthest of the last sitting 104\N{DEGREE SIGN} " in told


def test_pain_above_seven_comes_first_and_nothing_harder_is_proposed():
    rule = NextStep(sessions=1, pain_at_most=10)
    plan = plan_of("A", (msgspec.structs.replace(FLEXION, next_step=rule), SWING))
    calm = standing("A", days_of(3, plan=plan), LAST_DAY)
    assert calm.has(Concern.NEXT_STEP)
    sore = standing("A", days_of(3, plan=plan, pain=(2, 8)), LAST_DAY)
    assert sore.reasons[0].concern is Concern.HIGH_PAIN
    assert not sore.has(Concern.NEXT_STEP)


def test_poor_data_are_named():
    documents = [sitting("A", d, [hold(1, 100.0, seen=0.6)]) for d in range(4)]
    (reason,) = [
        r
        for r in standing("A", documents, BEGIN.date() + timedelta(days=4)).reasons
        if r.concern is Concern.POOR_DATA
    ]
    assert "4 of the last 4 measured sittings" in reason.sentence
    assert "arm seen in only 60 %" in reason.sentence


def test_a_sittings_own_quality():
    (one,) = sittings(
        [
            sitting(
                "A",
                0,
                [
                    hold(1, 100.0),
                    hold(2, 120.0, (FormFault.TURN,)),
                    hold(3, 121.0, (FormFault.LEAN,)),
                ],
                pain=(1, 4),
                frames_lost=2000,
                field_of_view_deg=70.0,
            )
        ]
    )
    assert (one.holds_completed, one.holds_asked) == (5, 5)
    assert one.feigned == pytest.approx(2 / 3)
    # 6000 frames measured in 240 s, 2000 of 8000 lost.
    assert (one.frames_per_s, one.lost, one.field_of_view_deg) == (25.0, 0.25, 70.0)
    assert (one.pain, one.seen) == (4, 0.95)
    assert one.poor == ("trunk leaned or turned in 67 % of holds",)


def test_the_next_step_is_met_by_sittings_in_a_row():
    good = days_of(3, 116.0)
    assert next_step_met(FLEXION, good)
    assert next_step_met(FLEXION, good[::-1])
    assert next_step(FLEXION, good[:2]).reason == "2 of 3 sittings so far meet the rule."
    assert "116° ± 7°" in next_step(FLEXION, good).reason


@pytest.mark.parametrize(
    ("last", "why"),
    [
        (sitting("A", 9, [hold(1, 114.9)]), "114.9° ± 6.2° were reached, not 115.0°"),
        (sitting("A", 9, [hold(1, 112.0)]), "112° ± 7° were reached, not 115°"),
        (sitting("A", 9, [hold(1, 130.0)], pain=(2, 4)), "pain after it was 4, above 3"),
        (sitting("A", 9, [hold(1, 130.0)], pain=(2, None)), "no pain was given"),
        (sitting("A", 9, [hold(1, 130.0)], ended=SessionEnd.STOPPED), "not completed"),
        (sitting("A", 9, [hold(1, 130.0, (FormFault.LEAN,))]), "with a still trunk"),
    ],
)
def test_the_next_step_is_not_met_with_the_reason(last, why):
    state = next_step(FLEXION, [*days_of(5, 120.0), last])
    assert (state.met, state.in_a_row) == (False, 0)
    assert why in state.reason


def test_an_easier_exercise_in_its_place_ends_the_row():
    first, *others = days_of(1, 120.0)[0].exercises
    eased = msgspec.structs.replace(
        sitting("A", 9, [hold(1, 120.0)]),
        exercises=(msgspec.structs.replace(first, eased=True), *others),
    )
    assert "easier" in next_step(FLEXION, [*days_of(5, 120.0), eased]).reason


def test_sittings_without_the_exercise_do_not_break_the_row():
    only_swing = msgspec.structs.replace(
        sitting("A", 9, []), exercises=sitting("A", 9, []).exercises[1:]
    )
    assert next_step_met(FLEXION, [*days_of(3, 120.0), only_swing])
    assert not next_step_met(SWING, [only_swing])


def test_looks_that_stores_keep_are_made_anew_when_the_rules_tell_something_else():
    golden, found = written(), now()
    assert found.looks == golden.looks, (
        "looked_at tells something else of the same sessions: raise RULES in coach/review/cohort.py"
        " so that no store shows what it kept, then python -m tests.review.golden_looks"
    )
    assert found.rules == golden.rules
    told = {r.concern for look in golden.looks for r in look.reasons}
    assert told == set(Concern) - {Concern.STOPPED}  # which depends on the day and is not kept
