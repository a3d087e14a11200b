"""What is due: days and times of the day by the clock on the wall, as a calendar has them."""

from __future__ import annotations

from datetime import date, datetime, timedelta

import pytest
from msgspec import structs

from coach.catalogue import catalogue
from coach.domain.movement import Movement, Position, Side, View
from coach.domain.plan import Plan, PlannedExercise, Weekday
from coach.domain.progress import EndedBecause, TimedHold
from coach.domain.session import Camera, ExerciseRecord, SessionDocument, SessionEnd, Software
from coach.session.agenda import Agenda, due_now, easier_than, is_due

KNOWN = catalogue().by_name


def bare(movement: Movement = Movement.FLEXION, **changes: object) -> PlannedExercise:
    asked = {"movement": movement, "side": Side.LEFT, "hold_s": 20, "repetitions": 3} | changes
    return PlannedExercise(**asked)  # type: ignore[arg-type]


def named(name: str, **changes: object) -> PlannedExercise:
    known = KNOWN[name]
    said = {"exercise": name, "position": known.position, "view": known.view}
    return bare(known.movement, **(said | changes))  # type: ignore[arg-type]


def plan(*exercises: PlannedExercise, code: str = "INVENTED") -> Plan:
    return Plan(patient_code=code, exercises=exercises)


def sitting(
    begun: str,
    *done: PlannedExercise,
    code: str = "INVENTED",
    because: SessionEnd = SessionEnd.COMPLETED,
    duration_s: float = 600.0,
) -> SessionDocument:
    records = tuple(
        ExerciseRecord(
            planned_index=index,
            exercise=each.exercise,
            movement=each.movement,
            side=each.side,
            view=each.seen_from,
            position=each.position,
            started_s=0.0,
            ended_s=duration_s,
            ended_because=because,
        )
        for index, each in enumerate(done)
    )
    return SessionDocument(
        session_id="b" * 32,
        started_at=begun,
        duration_s=duration_s,
        ended_because=because,
        software=Software(name="t", version="1", definitions=1, model_sha256="0" * 64),
        camera=Camera(kind="camera", width_px=640, height_px=480, frames_per_s=30.0),
        plan=plan(*(done or (bare(),)), code=code),
        exercises=records,
    )


def at(now: str, asked: Plan, *history: SessionDocument) -> Agenda:
    return due_now(asked, history, datetime.fromisoformat(now), KNOWN)


def movements(agenda: Agenda) -> list[Movement | None]:
    return [item.planned.movement for item in agenda.items]


@pytest.mark.parametrize(
    ("today", "name"),
    [
        (date(2026, 11, 23), "mon"),
        (date(2026, 11, 24), "tue"),
        (date(2026, 11, 25), "wed"),
        (date(2026, 11, 26), "thu"),
        (date(2026, 11, 27), "fri"),
        (date(2026, 11, 28), "sat"),
        (date(2024, 2, 29), "thu"),
        (date(2027, 1, 3), "sun"),
    ],
)
def test_days_of_the_week_are_those_of_the_calendar(today: date, name: str) -> None:
    only = bare(days=(Weekday(name),))
    assert is_due(only, today)
    assert not any(is_due(only, today + timedelta(days=later)) for later in range(1, 7))
    assert is_due(only, today + timedelta(days=7))


def test_what_is_not_for_today_is_left_out() -> None:
    monday = bare(Movement.FLEXION, days=(Weekday.MONDAY,))
    daily = bare(Movement.ABDUCTION)
    assert movements(at("2026-11-25T10:00:00+01:00", plan(monday, daily))) == [Movement.ABDUCTION]
    agenda = at("2026-11-25T10:00:00+01:00", plan(monday))
    assert agenda.nothing_due
    assert movements(agenda) == [Movement.FLEXION]


def test_what_was_completed_today_is_done_and_what_was_broken_off_is_not() -> None:
    first, second = bare(Movement.FLEXION), bare(Movement.ABDUCTION)
    asked = plan(first, second)
    now = "2026-11-25T18:00:00+01:00"
    morning = "2026-11-25T08:00:00+01:00"
    assert movements(at(now, asked, sitting(morning, first))) == [Movement.ABDUCTION]
    assert at(now, asked, sitting(morning, first, second)).nothing_due
    for because in SessionEnd:
        if because is not SessionEnd.COMPLETED:
            agenda = at(now, asked, sitting(morning, first, second, because=because))
            assert len(agenda.items) == 2
            assert not agenda.nothing_due


def test_several_times_a_day() -> None:
    asked = plan(bare(per_day=3))
    begun = [f"2026-11-25T{hour:02}:00:00+01:00" for hour in (7, 12, 19)]
    for count in range(3):
        done = [sitting(each, *asked.exercises) for each in begun[:count]]
        assert not at("2026-11-25T21:00:00+01:00", asked, *done).nothing_due
    done = [sitting(each, *asked.exercises) for each in begun]
    assert at("2026-11-25T21:00:00+01:00", asked, *done).nothing_due


def indices(agenda: Agenda) -> list[int]:
    return [item.planned_index for item in agenda.items]


LOW, HIGH = bare(target_deg=60), bare(target_deg=90)


@pytest.mark.parametrize("done_index", [0, 1])
@pytest.mark.parametrize(
    "pair",
    [(bare(), bare(side=Side.RIGHT)), (LOW, HIGH), (bare(), bare())],
    ids=["sides", "targets", "twice"],
)
def test_the_same_exercise_twice_in_a_plan_is_done_when_each_was(
    pair: tuple[PlannedExercise, PlannedExercise], done_index: int
) -> None:
    asked = plan(*pair)
    whole = sitting("2026-11-25T08:00:00+01:00", *pair)
    one = structs.replace(whole, exercises=(whole.exercises[done_index],))
    now = "2026-11-25T18:00:00+01:00"
    assert indices(at(now, asked, one)) == [1 - done_index]
    assert at(now, asked, whole).nothing_due


def test_twice_in_a_plan_and_twice_a_day_is_four_times() -> None:
    pair = (bare(target_deg=60, per_day=2), bare(target_deg=90, per_day=2))
    asked = plan(*pair)
    morning = sitting("2026-11-25T08:00:00+01:00", *pair)
    noon = sitting("2026-11-25T12:00:00+01:00", *pair)
    half = structs.replace(noon, exercises=noon.exercises[1:])
    now = "2026-11-25T18:00:00+01:00"
    assert indices(at(now, asked, morning)) == [0, 1]
    assert indices(at(now, asked, morning, half)) == [0]
    assert at(now, asked, morning, noon).nothing_due


def test_what_was_done_under_the_plan_before_counts_for_what_asks_the_same() -> None:
    done = sitting("2026-11-25T08:00:00+01:00", HIGH, LOW)
    only_high = structs.replace(done, exercises=done.exercises[:1])
    now = "2026-11-25T18:00:00+01:00"
    # The plan was turned about at noon, or its targets changed.
    assert indices(at(now, plan(LOW, HIGH), only_high)) == [0]
    changed = plan(bare(target_deg=70), bare(target_deg=100))
    assert indices(at(now, changed, only_high)) == [1]
    assert at(now, plan(bare(target_deg=70)), done).nothing_due


@pytest.mark.parametrize(
    ("begun", "now", "done"),
    [
        ("2026-11-25T00:00:00+01:00", "2026-11-25T23:59:59+01:00", True),
        ("2026-11-24T23:59:59+01:00", "2026-11-25T00:00:01+01:00", False),
        # The day on which it began, over midnight.
        ("2026-11-24T23:55:00+01:00", "2026-11-24T23:59:59+01:00", True),
        # Flown from Tokyo to Los Angeles: the same instant, its own day.
        ("2026-11-25T08:00:00+09:00", "2026-11-24T20:00:00-08:00", False),
        ("2026-11-24T22:00:00-08:00", "2026-11-25T20:00:00+09:00", False),
        ("2026-11-25T08:00:00+09:00", "2026-11-25T20:00:00-08:00", True),
        # Both sides of the change from summer time.
        ("2026-10-25T00:30:00+02:00", "2026-10-25T23:30:00+01:00", True),
        ("2026-11-25T23:30:00Z", "2026-11-25T23:50:00+00:00", True),
    ],
)
def test_a_sitting_belongs_to_the_day_of_its_own_clock(begun: str, now: str, done: bool) -> None:
    asked = plan(bare())
    assert at(now, asked, sitting(begun, *asked.exercises)).nothing_due is done


@pytest.mark.parametrize(
    ("now", "minutes_ago"),
    [
        ("2026-11-25T10:10:00+01:00", 0),
        ("2026-11-25T10:10:59+01:00", 0),
        ("2026-11-25T10:25:30+01:00", 15),
        ("2026-11-25T09:25:30+00:00", 15),
        ("2026-11-25T11:09:59+01:00", 59),
        ("2026-11-25T11:10:00+01:00", None),
        ("2026-11-25T10:05:00+01:00", None),
        ("2026-11-24T10:25:00+01:00", None),
    ],
)
def test_a_sitting_that_ended_within_the_hour_is_told(now: str, minutes_ago: int | None) -> None:
    """It began at ten and took ten minutes."""
    asked = plan(bare(per_day=6))
    assert at(now, asked, sitting("2026-11-25T10:00:00+01:00", *asked.exercises)).minutes_ago == (
        minutes_ago
    )


def test_the_latest_of_several_sittings_counts_and_an_empty_one_does_not() -> None:
    asked = plan(bare(per_day=6))
    history = [
        sitting("2026-11-25T10:00:00+01:00", *asked.exercises),
        sitting("2026-11-25T10:20:00+01:00", *asked.exercises),
        sitting("2026-11-25T10:30:00+01:00", duration_s=60.0),
    ]
    assert at("2026-11-25T10:45:00+01:00", asked, *history).minutes_ago == 15


def test_what_others_did_is_not_looked_at() -> None:
    asked = plan(bare())
    other = sitting("2026-11-25T10:00:00+01:00", *asked.exercises, code="SOMEBODY-ELSE")
    agenda = at("2026-11-25T10:20:00+01:00", asked, other)
    assert (agenda.nothing_due, agenda.minutes_ago) == (False, None)
    assert agenda.items[0].new


def test_what_was_done_before_is_not_new_under_any_plan() -> None:
    first, second = bare(Movement.FLEXION), bare(Movement.FLEXION, side=Side.RIGHT)
    harder = bare(Movement.FLEXION, hold_s=30, repetitions=5, per_day=2)
    agenda = at(
        "2026-11-25T10:00:00Z", plan(harder, second), sitting("2026-01-02T10:00:00Z", first)
    )
    assert [item.new for item in agenda.items] == [False, True]


def test_cautions_are_told_once_a_day_and_only_a_hold_shows_that_they_were_heard() -> None:
    left = named("pendulum")
    asked = plan(left, named("pendulum", side=Side.RIGHT), named("armpit-squeeze"))
    opened = sitting("2026-11-25T08:00:00+01:00", left)
    hold = TimedHold(
        number=1, start_s=0.0, end_s=5.0, held_s=5.0, ended_because=EndedBecause.COMPLETED
    )
    begun = structs.replace(opened.exercises[0], timed=(hold,))
    held = structs.replace(opened, exercises=(begun,))
    for now, history, told in (
        ("2026-11-25T18:00:00+01:00", held, {True, False}),
        ("2026-11-25T18:00:00+01:00", opened, {False}),
        ("2026-11-26T08:00:00+01:00", held, {False}),
    ):
        items = at(now, asked, history).items
        assert {item.told for item in items} == told
        assert not any(item.told for item in items if item.planned.exercise == "armpit-squeeze")


def test_one_place_of_the_laptop_after_the_other_in_the_plans_order() -> None:
    asked = plan(
        bare(Movement.FLEXION, hold_s=10),
        bare(Movement.ABDUCTION),
        bare(Movement.EXTENSION),
        bare(Movement.FLEXION, position=Position.SITTING),
        bare(Movement.EXTERNAL_ROTATION_0),
        bare(Movement.FLEXION, side=Side.RIGHT),
        bare(Movement.HAND_BEHIND_BACK),
    )
    agenda = at("2026-11-25T10:00:00+01:00", asked)
    assert [item.planned_index for item in agenda.items] == [0, 2, 1, 4, 3, 5, 6]
    assert [item.planned for item in agenda.items] == [
        asked.exercises[item.planned_index] for item in agenda.items
    ]


def test_the_easier_neighbour_keeps_the_dose_and_the_limit() -> None:
    planned = named("doorway-rotation-low", hold_s=25, repetitions=4, rest_s=7, pain_limit=3)
    (item,) = at("2026-11-25T10:00:00+01:00", plan(planned)).items
    assert item.easier is not None
    assert (item.easier.exercise, item.easier.side) == ("doorway-rotation-braced", Side.LEFT)
    assert (item.easier.hold_s, item.easier.repetitions, item.easier.rest_s) == (25, 4, 7)
    assert (item.easier.pain_limit, item.easier.seen_from) == (3, View.FRONT)
    assert easier_than(named("pendulum"), KNOWN) is None
    assert easier_than(bare(), KNOWN) is None
