from collections.abc import Iterable
from dataclasses import replace
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from coach.cues.happening import Happening
from coach.cues.rules import Rules, advance
from coach.cues.wording import doubt_sentence
from coach.domain.cue import Cue, Urgency
from coach.domain.moment import Stage
from coach.domain.movement import Movement, Side
from coach.domain.plan import PlannedExercise
from coach.domain.progress import (
    EndedBecause,
    HoldCompleted,
    HoldPaused,
    HoldResumed,
    HoldStarted,
    Phase,
    Repetition,
    RepetitionEnded,
)
from coach.domain.reading import Doubt, Form, Reading

PLANNED = PlannedExercise(
    movement=Movement.ABDUCTION, side=Side.RIGHT, hold_s=30, repetitions=3, target_deg=90
)
GOING = Happening(time_s=0.0, stage=Stage.EXERCISE, planned=PLANNED)


def said(happenings: Iterable[Happening], rules: Rules | None = None) -> list[Cue]:
    rules = rules or Rules(stage=Stage.EXERCISE, exercise_index=0)
    cues: list[Cue] = []
    for happening in happenings:
        rules, more = advance(rules, happening)
        cues += more
    return cues


def keys(cues: Iterable[Cue]) -> list[str]:
    return [cue.key for cue in cues]


def reading(time_s: float, doubt: Doubt | None = None, angle_deg: float = 80.0) -> Reading:
    if doubt:
        return Reading(time_s, None, None, doubt)
    return Reading(time_s, angle_deg, 5.0)


def ended(why: EndedBecause, held_s: float = 30.0, form: Form | None = None) -> RepetitionEnded:
    repetition = Repetition(
        number=1,
        start_s=10.0,
        end_s=10.0 + held_s,
        held_s=held_s,
        value=80.0,
        error=5.0,
        spread=1.0,
        seen_fraction=1.0,
        ended_because=why,
        form=form or Form(),
    )
    return RepetitionEnded(10.0 + held_s, repetition)


def seconds_of(doubts: Iterable[tuple[float, Doubt | None]]) -> list[Happening]:
    return [
        replace(GOING, time_s=time_s, reading=reading(time_s, doubt)) for time_s, doubt in doubts
    ]


@settings(deadline=None, max_examples=60)
@given(
    rate_hz=st.floats(10, 120),
    start_s=st.floats(0.5, 50),
    hold_s=st.floats(1, 60),
    settled_s=st.floats(0.2, 0.9),
)
def test_numbers_carry_the_instant_at_which_they_are_true_at_any_frame_rate(
    rate_hz: float, start_s: float, hold_s: float, settled_s: float
) -> None:
    planned = PlannedExercise(
        movement=Movement.FLEXION, side=Side.LEFT, hold_s=hold_s, repetitions=2
    )
    happenings = []
    announced = False
    for index in range(int((start_s + hold_s) * rate_hz) + 1):
        now_s = index / rate_hz
        held_s = now_s - start_s
        if held_s < settled_s:
            continue
        happenings.append(
            Happening(
                time_s=now_s,
                stage=Stage.EXERCISE,
                planned=planned,
                events=() if announced else (HoldStarted(now_s, start_s),),
                phase=Phase.HOLDING,
                held_s=held_s,
                remaining_s=hold_s - held_s,
            )
        )
        announced = True
    numbers = [cue for cue in said(happenings) if cue.key.startswith("number.")]
    for cue in numbers:
        name = cue.key.removeprefix("number.")
        left_s = hold_s / 2 if name == "halfway" else float(name)
        assert cue.time_s == pytest.approx(start_s + hold_s - left_s, abs=1e-6)
        assert cue.stale_s - cue.time_s == pytest.approx(0.4)
        assert cue.urgency is Urgency.TIMED
        assert cue.time_s >= happenings[0].time_s
    spoken = {cue.key for cue in numbers}
    free_s = settled_s + 1.0 + 2 / rate_hz
    assert {f"number.{n}" for n in (10, 5, 4, 3, 2, 1) if hold_s - n > free_s} <= spoken


def test_frames_that_miss_several_seconds_give_only_the_number_that_is_true() -> None:
    start = replace(GOING, time_s=10.0, events=(HoldStarted(10.0, 9.5),), remaining_s=29.5)
    later = replace(GOING, time_s=37.0, remaining_s=2.5, phase=Phase.HOLDING)
    assert keys(said([start, later])) == ["hold", "number.3"]


def test_a_frame_that_misses_the_end_of_the_hold_says_rest_and_no_number() -> None:
    start = replace(GOING, time_s=10.0, events=(HoldStarted(10.0, 9.5),), remaining_s=29.5)
    over = replace(GOING, time_s=39.6, remaining_s=0.0, events=(HoldCompleted(39.5),))
    assert keys(said([start, over])) == ["hold", "rest"]


@pytest.mark.parametrize("stage", Stage)
def test_every_stage_opens_with_words_and_says_them_once(stage: Stage) -> None:
    happening = replace(GOING, stage=stage)
    opening = said([happening], Rules())
    assert opening
    assert all(cue.key.startswith("stage.") for cue in opening)
    assert len(said([happening, replace(happening, time_s=0.1)], Rules())) == len(opening)


def test_the_welcome_names_the_signs_to_stop_at() -> None:
    spoken = " ".join(cue.spoken for cue in said([replace(GOING, stage=Stage.WELCOME)], Rules()))
    for sign in ("sharp", "numb", "tingles", "weak", "dizzy", "chest", "breathe", "therapist"):
        assert sign in spoken


def test_going_on_after_a_pause_does_not_repeat_the_introduction() -> None:
    paused = replace(GOING, time_s=1.0, stage=Stage.PAUSED)
    assert keys(said([GOING, paused, replace(GOING, time_s=9.0)])) == [
        "stage.paused-by-hand",
        "stage.resumed",
    ]


def test_a_doubt_is_spoken_of_after_two_seconds_and_then_every_eight() -> None:
    frames = seconds_of((index / 30, Doubt.TOO_DARK) for index in range(600))
    cues = said(frames)
    assert [round(cue.time_s, 2) for cue in cues] == [2.0, 10.0, 18.0]
    assert {cue.spoken for cue in cues} == {doubt_sentence(Doubt.TOO_DARK, Side.RIGHT).spoken}


def test_a_passing_doubt_is_not_spoken_of() -> None:
    frames = seconds_of(
        (index / 30, Doubt.UNSURE if index % 90 < 45 else None) for index in range(900)
    )
    assert said(frames) == []


def test_two_doubts_in_turn_are_both_spoken_of_but_one_at_a_time() -> None:
    both = (Doubt.TOO_DARK, Doubt.TURN_TO_FACE)
    cues = said(seconds_of((index / 30, both[index % 2]) for index in range(900)))
    assert set(keys(cues)) == {f"correct.{doubt.value}" for doubt in both}
    times_s = [cue.time_s for cue in cues]
    assert all(b - a >= 4.0 - 1e-9 for a, b in pairwise(times_s))


def test_nobody_is_corrected_while_resting() -> None:
    frames = seconds_of((index / 30, Doubt.BEND_ELBOW) for index in range(300))
    assert said(replace(frame, resting=True) for frame in frames) == []


@pytest.mark.parametrize(
    ("angle_deg", "times_s"), [(92.0, []), (97.0, [0.5, 5.5])], ids=["at the target", "past it"]
)
def test_ease_off_is_said_beyond_the_target_and_not_at_it(
    angle_deg: float, times_s: list[float]
) -> None:
    frames = [
        replace(GOING, time_s=index / 20, reading=reading(index / 20, angle_deg=angle_deg))
        for index in range(200)
    ]
    cues = said(frames)
    assert [round(cue.time_s, 2) for cue in cues] == times_s
    assert all(cue.key == "ease-off" and cue.urgency is Urgency.URGENT for cue in cues)


def test_a_long_loss_of_sight_is_told_and_its_end_too() -> None:
    frames = [replace(GOING, time_s=10 + index / 10, phase=Phase.HOLDING) for index in range(40)]
    frames[5] = replace(frames[5], events=(HoldPaused(10.5, Doubt.NOBODY),))
    frames[30] = replace(frames[30], events=(HoldResumed(13.0),))
    cues = said(frames)
    assert [(cue.key, round(cue.time_s, 2)) for cue in cues] == [
        ("sight.lost", 11.5),
        ("sight.found", 13.0),
    ]


def test_a_short_loss_of_sight_is_not_worth_a_word() -> None:
    frames = [replace(GOING, time_s=10 + index / 10, phase=Phase.HOLDING) for index in range(40)]
    frames[5] = replace(frames[5], events=(HoldPaused(10.5, Doubt.NOBODY),))
    frames[13] = replace(frames[13], events=(HoldResumed(11.3),))
    assert said(frames) == []


def test_the_end_of_a_hold_is_rest_then_the_count() -> None:
    events = (HoldCompleted(40.0), ended(EndedBecause.COMPLETED))
    cues = said([replace(GOING, time_s=40.0, events=events, repetitions_done=2)])
    assert keys(cues) == ["rest", "count"]
    assert cues[1].caption == "2 of 3"


@pytest.mark.parametrize(
    ("form", "key"),
    [
        (Form(trunk_lean_deg=-2.0, trunk_turn_deg=3.0), "count-steady"),
        (Form(trunk_lean_deg=-9.0, trunk_turn_deg=3.0), "count"),
        (Form(), "count"),
    ],
)
def test_steadiness_is_praised_only_where_it_was_seen(form: Form, key: str) -> None:
    event = ended(EndedBecause.COMPLETED, form=form)
    assert keys(said([replace(GOING, events=(event,), repetitions_done=1)])) == [key]


def test_a_let_go_is_not_counted_and_names_the_seconds_held() -> None:
    event = ended(EndedBecause.LET_GO, held_s=11.8)
    (cue,) = said([replace(GOING, events=(event,))])
    assert cue.key == "let-go"
    assert "11 seconds" in cue.spoken


def test_stopping_by_oneself_is_not_commented() -> None:
    assert said([replace(GOING, events=(ended(EndedBecause.STOPPED, held_s=9.0),))]) == []


def test_the_next_hold_is_called_when_the_rest_is_over_but_not_into_a_hold() -> None:
    resting = replace(GOING, resting=True, rest_remaining_s=0.1, repetitions_done=1)
    over = replace(resting, time_s=0.1, resting=False)
    assert keys(said([resting, over])) == ["again"]
    assert said([resting, replace(over, phase=Phase.HOLDING)]) == []
    assert said([resting, replace(over, repetitions_done=3)]) == []


def test_pain_above_the_limit_is_answered_once_and_first() -> None:
    before = replace(GOING, stage=Stage.PAIN_AFTER)
    frames = [
        before,
        replace(before, time_s=5.0, stage=Stage.FINISHED, pain_above_limit=True),
        replace(before, time_s=5.1, stage=Stage.FINISHED, pain_above_limit=True),
    ]
    cues = [cue for cue in said(frames) if cue.time_s >= 5.0]
    assert keys(cues) == ["pain-limit", "stage.finished", "stage.finished-caution"]
    assert cues[0].urgency is Urgency.URGENT
    assert "therapist" in cues[0].spoken
