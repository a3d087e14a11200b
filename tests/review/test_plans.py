from __future__ import annotations

from datetime import date

import msgspec
import pytest

from coach.catalogue import catalogue
from coach.documents.plan import read_plan, write_plan
from coach.domain.exercise import Irritability, StiffnessPhase
from coach.domain.movement import Movement, Position, Side, View
from coach.domain.plan import NextStep, Plan, PlannedExercise, Weekday
from coach.review.plan_changes import plan_changes
from coach.review.plans import proposed, seconds_by_day, time_a_day, unusual

STICK = "stick-flexion-lying"
FLEXION = PlannedExercise(
    exercise=STICK,
    movement=Movement.FLEXION,
    side=Side.LEFT,
    hold_s=20,
    repetitions=4,
    rest_s=10,
    position=Position.SUPINE,
    view=View.SIDE,
)
SETTING = PlannedExercise(
    exercise="shoulder-blade-setting", side=Side.LEFT, hold_s=5, repetitions=8, position="sitting"
)
PLAN = Plan(patient_code="SH-017", exercises=(FLEXION, SETTING))


def with_first(**fields):
    first = msgspec.structs.replace(FLEXION, **fields)
    return msgspec.structs.replace(PLAN, exercises=(first, SETTING))


@pytest.mark.parametrize(
    ("irritability", "hold_s", "pain_limit"),
    # stick-flexion-lying.toml: 1 to 5 s, 5 to 15 s, 20 to 30 s; 3 to 5 times, 1 to 3 a day.
    [(Irritability.HIGH, 3, 2), (Irritability.MODERATE, 10, 3), (Irritability.LOW, 30, 4)],
)
def test_the_dose_begins_in_the_middle_and_low_irritability_at_the_upper_end(
    irritability, hold_s, pain_limit
):
    begun = proposed(catalogue().get(STICK), irritability, Side.RIGHT)
    assert (begun.hold_s, begun.repetitions, begun.per_day) == (hold_s, 4, 2)
    assert (begun.pain_limit, begun.side) == (pain_limit, Side.RIGHT)
    assert (begun.movement, begun.position, begun.view) == ("flexion", "supine", "side")


@pytest.mark.parametrize("irritability", Irritability)
def test_every_proposal_is_a_plan_that_is_read_and_is_not_unusual(irritability):
    for exercise in catalogue().all:
        begun = proposed(exercise, irritability, Side.LEFT)
        assert unusual(begun, exercise, irritability) == ()
        plan = Plan(patient_code="SH-017", exercises=(begun,))
        assert read_plan(write_plan(plan), "p", catalogue().by_name).exercises == (begun,)


def test_what_is_outside_the_usual_dose_is_said_with_its_source():
    exercise = catalogue().get(STICK)
    odd = msgspec.structs.replace(FLEXION, hold_s=40, repetitions=6, per_day=4, pain_limit=5)
    hold, count, often, pain = unusual(odd, exercise, Irritability.LOW)
    assert hold.startswith("Hold 40 s: usual for low irritability is 20 to 30 s. Common practice")
    assert count.startswith("Repetitions 6: usual for low irritability is 3 to 5. ")
    assert often.startswith("Times a day 4: usual for low irritability is 1 to 3. ")
    assert pain == "Pain limit 5: usual for low irritability is at most 4. Common practice."
    (short,) = unusual(msgspec.structs.replace(FLEXION, hold_s=19), exercise, Irritability.LOW)
    assert "19 s" in short
    assert unusual(FLEXION, exercise, Irritability.LOW) == ()


def test_time_is_holds_and_the_rests_between_them():
    twice = msgspec.structs.replace(FLEXION, per_day=2, days=(Weekday.MONDAY,))
    by_day = seconds_by_day((twice, SETTING))
    # 8 x 5 + 7 x 10 = 110 s every day; 2 x (4 x 20 + 3 x 10) = 220 s on Monday.
    assert by_day[Weekday.MONDAY] == 330
    assert by_day[Weekday.TUESDAY] == 110
    assert time_a_day((twice, SETTING)) == ("1 min 50 s to 5 min 30 s a day of holds and rests")
    assert time_a_day((SETTING,)) == "1 min 50 s a day of holds and rests"


def test_the_same_plan_of_another_day_has_no_changes():
    later = msgspec.structs.replace(PLAN, revision=7, issued_on=date(2026, 2, 1))
    assert plan_changes(PLAN, later) == ()


@pytest.mark.parametrize(
    ("fields", "said"),
    [
        ({"hold_s": 30}, "hold from 20 s to 30 s."),
        ({"repetitions": 5}, "repetitions from 4 to 5."),
        ({"rest_s": 12.5}, "rest from 10 s to 12.5 s."),
        ({"target_deg": 120}, "target added: 120\N{DEGREE SIGN}."),
        ({"pain_limit": 3}, "pain limit from 4 to 3."),
        (
            {"days": (Weekday.FRIDAY, Weekday.MONDAY)},
            "days from every day to Mon and Fri.",
        ),
        ({"per_day": 2}, "times a day from 1 to 2."),
        ({"side": Side.RIGHT}, "side from left to right."),
        (
            {"next_step": NextStep(sessions=6, at_least_deg=100, propose="wall-walk-forward")},
            "next step added: 6 sittings in a row with 100\N{DEGREE SIGN} or more and pain at "
            "most 3, then wall-walk-forward.",
        ),
    ],
)
def test_each_change_of_an_exercise_is_one_sentence(fields, said):
    changed = with_first(**fields)
    assert plan_changes(PLAN, changed) == (f"{STICK} (left): {said}",)


def test_what_was_taken_away_is_said():
    assert plan_changes(with_first(target_deg=120), PLAN) == (
        f"{STICK} (left): target removed, was 120\N{DEGREE SIGN}.",
    )


def test_added_removed_and_reordered_exercises():
    pendulum = proposed(catalogue().get("pendulum"), Irritability.LOW, Side.LEFT)
    new = msgspec.structs.replace(PLAN, exercises=(pendulum, FLEXION))
    names = {e.exercise: e.name for e in catalogue().all}
    removed, added = plan_changes(PLAN, new, names)
    assert removed == "Removed: Scapular setting, sitting (left)."
    assert added.startswith("Added: Pendulum, standing bent forward (left), 2 ")
    turned = msgspec.structs.replace(PLAN, exercises=(SETTING, FLEXION))
    assert plan_changes(PLAN, turned) == ("The order of the exercises changed.",)


def test_one_exercise_on_both_sides_stays_two():
    right = msgspec.structs.replace(FLEXION, side=Side.RIGHT)
    old = msgspec.structs.replace(PLAN, exercises=(FLEXION, right))
    new = msgspec.structs.replace(
        PLAN, exercises=(FLEXION, msgspec.structs.replace(right, hold_s=25))
    )
    assert plan_changes(old, new) == (f"{STICK} (right): hold from 20 s to 25 s.",)
    only = msgspec.structs.replace(PLAN, exercises=(right,))
    assert plan_changes(old, only) == (f"Removed: {STICK} (left).",)


def test_changes_of_the_plan_itself():
    new = msgspec.structs.replace(
        PLAN,
        title="Second month",
        side=Side.LEFT,
        phase=StiffnessPhase.STIFF,
        irritability=Irritability.LOW,
        sessions_per_week=10,
        valid_until=date(2026, 3, 31),
        practice_key="age1" + "q" * 58,
    )
    assert plan_changes(PLAN, new) == (
        "Title added: Second month.",
        "Side from both to left.",
        "Phase added: stiff.",
        "Irritability added: low.",
        "Sessions a week from 7 to 10.",
        "Valid until added: 31 Mar 2026.",
        "Practice key added.",
    )
    assert plan_changes(new, PLAN)[-1] == "Practice key removed."
