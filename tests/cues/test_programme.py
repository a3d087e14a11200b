"""What is said around a whole programme: before an exercise, in the pain question, on form."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import replace

import pytest

from coach.catalogue import catalogue
from coach.cues import Happening, Rules, advance
from coach.cues.pacing import Queue, choose, offer_all
from coach.domain.agenda import AgendaItem
from coach.domain.cue import Cue, Urgency
from coach.domain.form import FormFault
from coach.domain.moment import Asked, Stage
from coach.domain.movement import Movement, Position, Side, View
from coach.domain.plan import PlannedExercise
from coach.domain.progress import EndedBecause, HoldStarted, Phase, TimedHold, TimedHoldEnded
from coach.domain.reading import Doubt, Reading
from coach.form import FormMended, FormNoticed

KNOWN = catalogue().by_name


def planned(name: str, **changes: object) -> PlannedExercise:
    known = KNOWN[name]
    asked = {
        "exercise": name,
        "movement": known.movement,
        "position": known.position,
        "view": known.view,
        "side": Side.LEFT,
        "hold_s": 20,
        "repetitions": 3,
    } | changes
    return PlannedExercise(**asked)  # type: ignore[arg-type]


BARE = PlannedExercise(movement=Movement.ABDUCTION, side=Side.RIGHT, hold_s=30, repetitions=3)


def prepare(
    each: PlannedExercise,
    *,
    new: bool = True,
    told: bool = False,
    index: int = 0,
    count: int = 1,
) -> Happening:
    item = AgendaItem(index, each, new=new, told=told)
    return Happening(
        time_s=10.0,
        stage=Stage.PREPARE,
        planned=each,
        item=item,
        exercise_index=index,
        exercise_count=count,
    )


def said(happenings: Iterable[Happening], rules: Rules | None = None) -> list[Cue]:
    rules = rules or Rules()
    cues: list[Cue] = []
    for happening in happenings:
        rules, more = advance(rules, happening)
        cues += more
    return cues


def keys(cues: Iterable[Cue]) -> list[str]:
    return [cue.key for cue in cues]


def heard(cues: list[Cue], now_s: float) -> list[Cue]:
    """What is spoken of these, each for as long as it takes at 150 words a minute."""
    queue, begun = offer_all(Queue(), cues), list[Cue]()
    for _ in range(100):
        queue, decision = choose(queue, now_s, None)
        if decision.cue is None:
            now_s += 0.5
            continue
        begun.append(decision.cue)
        now_s += len(decision.cue.spoken.split()) / 150 * 60
    return begun


ASKED = Rules(stage=Stage.PAIN_BEFORE, exercise_index=0)


@pytest.mark.parametrize("name", sorted(KNOWN))
def test_a_new_exercise_is_introduced_in_the_catalogues_words(name: str) -> None:
    words = KNOWN[name].telling["en"]
    cues = said([prepare(planned(name), index=1, count=4)], ASKED)
    spoken = [cue.spoken for cue in cues]
    before = [
        "Exercise 2 of 4.",
        words.laptop[0],
        f"{words.title}.",
        "This one is for your left arm.",
        *words.cautions,
        words.spoken,
    ]
    assert spoken[: len(before)] == before
    assert spoken[len(before)].startswith("Do this 3 times. Hold for 20 seconds")
    by_time = [words.by_time] if words.by_time else []
    assert spoken[len(before) + 1 : -1] == by_time
    assert "Raise your good hand" in spoken[-1]


@pytest.mark.parametrize("name", sorted(KNOWN))
def test_every_sentence_of_an_introduction_waits_for_its_turn(name: str) -> None:
    cues = said([prepare(planned(name), index=1, count=4)], ASKED)
    assert not [key for key, count in Counter(keys(cues)).items() if count > 1]
    assert heard(cues, 10.0) == cues


@pytest.mark.parametrize("name", sorted(KNOWN))
def test_a_known_exercise_is_told_in_short_and_its_cautions_once_a_day(name: str) -> None:
    words = KNOWN[name].telling["en"]
    for told in (False, True):
        cues = said([prepare(planned(name), new=False, told=told)], ASKED)
        assert [cue.spoken for cue in cues][:-1] == [
            words.laptop[0],
            f"{words.title}.",
            "This one is for your left arm.",
            *(() if told else words.cautions),
            words.short,
        ]


def again(before: Happening) -> list[str]:
    paused = replace(before, time_s=20.0, stage=Stage.PAUSED)
    cues = said([before, paused, replace(before, time_s=30.0)], ASKED)
    return [cue.key for cue in cues if cue.time_s == 30.0]


def test_getting_ready_again_after_a_pause_repeats_what_must_be_heard() -> None:
    timed = prepare(planned("pendulum"))
    assert again(timed) == ["stage.resumed", *keys(said([timed], ASKED))]
    measured = planned("stick-flexion-lying")
    cautions = ["stage.resumed", "stage.caution.1", "stage.caution.2"]
    assert again(prepare(measured)) == [*cautions, "stage.do"]
    assert again(prepare(measured, new=False)) == cautions
    assert again(prepare(measured, new=False, told=True)) == ["stage.resumed"]


@pytest.mark.parametrize(("each", "key"), [(planned("pendulum"), "timed-lead"), (BARE, "in-place")])
def test_being_in_place_is_told_once(each: PlannedExercise, key: str) -> None:
    ready = prepare(each)
    going = [replace(ready, time_s=40 + n / 10, stage=Stage.EXERCISE) for n in range(20)]
    cues = [cue for cue in said([ready, *going], ASKED) if cue.time_s >= 40]
    assert keys(cues) == [key]


@pytest.mark.parametrize("name", sorted(n for n, each in KNOWN.items() if each.movement))
def test_begin_when_ready_comes_behind_the_introduction_but_not_into_a_hold(name: str) -> None:
    ready = prepare(planned(name))
    going = replace(ready, time_s=12.0, stage=Stage.EXERCISE)
    cues = said([ready, going], ASKED)
    assert keys(heard(cues, 12.0))[-2:] == ["stage.signals", "in-place"]
    begun = replace(going, time_s=20.0, remaining_s=20.0, events=(HoldStarted(20.0, 19.5),))
    assert keys(heard(said([ready, going, begun], ASKED), 20.0)) == ["hold"]


def asking(time_s: float, asked: Asked | None, **more: object) -> Happening:
    happening = Happening(
        time_s=time_s, stage=Stage.PAIN_AFTER, planned=BARE, item=AgendaItem(0, BARE), asked=asked
    )
    return replace(happening, **more)  # type: ignore[arg-type]


def test_each_number_is_said_when_it_is_offered_and_the_chosen_one_once() -> None:
    frames = [asking(n / 10, Asked(offered=n // 20)) for n in range(100)]
    frames += [asking(10 + n / 10, Asked(chosen=4, sure_s=5 - n / 10)) for n in range(50)]
    cues = said(frames, Rules(stage=Stage.PAIN_AFTER, exercise_index=0))
    assert [(cue.key, cue.time_s) for cue in cues] == [
        ("pain.0", 0.0),
        ("pain.1", 2.0),
        ("pain.2", 4.0),
        ("pain.3", 6.0),
        ("pain.4", 8.0),
        ("pain-chosen", 10.0),
    ]
    assert [cue.spoken for cue in cues[:5]] == ["Zero.", "One.", "Two.", "Three.", "Four."]
    assert cues[5].spoken.startswith("You chose 4.")
    assert all(cue.urgency is Urgency.TIMED for cue in cues)


def test_a_number_that_was_taken_back_is_asked_for_anew_and_another_one_told() -> None:
    frames = [asking(1.0, Asked(chosen=4)), asking(2.0, Asked()), asking(4.0, Asked(offered=0))]
    frames += [asking(6.0, Asked(chosen=0))]
    cues = said(frames, Rules(stage=Stage.PAIN_AFTER, exercise_index=0))
    assert keys(cues) == ["pain-chosen", "pain.0", "pain-chosen"]
    assert cues[-1].spoken.startswith("You chose 0.")


def test_an_unanswered_question_is_passed_over_with_a_word_and_an_answered_one_without() -> None:
    after = Rules(stage=Stage.PAIN_AFTER, exercise_index=0)
    going = prepare(planned("pendulum"), index=1)
    for score, told in ((None, True), (3, False)):
        cues = said([asking(1.0, Asked()), replace(going, score=score)], after)
        assert ("pain-unanswered" in keys(cues)) is told


def test_the_offer_says_that_it_was_too_much_and_says_it_once() -> None:
    offer = asking(5.0, None, stage=Stage.OFFER, pain_above_limit=True, score=5)
    cues = said(
        [asking(4.0, None), offer, replace(offer, time_s=5.1, pain_above_limit=False)],
        Rules(stage=Stage.PAIN_AFTER, exercise_index=0),
    )
    assert keys(cues) == ["stage.offer"]
    for word in ("more pain than your therapist wants", "easier", "Raise your good hand"):
        assert word in cues[0].spoken


@pytest.mark.parametrize(("score", "key"), [(7, "pain-limit"), (8, "pain-stop")])
def test_above_seven_the_whole_sitting_is_stopped(score: int, key: str) -> None:
    end = asking(5.0, None, stage=Stage.FINISHED, planned=None, pain_above_limit=True, score=score)
    cues = said([asking(4.0, None), end], Rules(stage=Stage.PAIN_AFTER, exercise_index=0))
    assert keys(cues) == [key, "stage.finished", "stage.finished-caution"]
    assert cues[0].urgency is Urgency.URGENT


GOING = Happening(
    time_s=0.0, stage=Stage.EXERCISE, planned=BARE, item=AgendaItem(0, BARE), phase=Phase.MOVING
)
AT_IT = Rules(stage=Stage.EXERCISE, exercise_index=0)


@pytest.mark.parametrize("fault", FormFault)
@pytest.mark.parametrize("position", [Position.STANDING, Position.SUPINE])
def test_a_fault_of_form_is_said_when_it_is_noticed_and_praised_when_mended(
    fault: FormFault, position: Position
) -> None:
    noticed = FormNoticed(1.0, fault, 20.0, 5.0)
    each = PlannedExercise(
        movement=Movement.FLEXION,
        side=Side.RIGHT,
        hold_s=30,
        repetitions=3,
        position=position,
        view=View.SIDE,
    )
    frames = [replace(GOING, time_s=n / 10, planned=each) for n in range(40)]
    frames[10] = replace(frames[10], form=(noticed,))
    frames[30] = replace(frames[30], form=(FormMended(3.0, fault),))
    cues = said(frames, AT_IT)
    assert [(cue.key, cue.time_s) for cue in cues] == [
        (f"correct.{fault.value}", 1.0),
        ("form.mended", 3.0),
    ]
    assert cues[0].spoken.startswith("Your ")
    assert ("upright" in cues[0].spoken) <= (position is Position.STANDING)
    assert cues[1].urgency is Urgency.GENTLE


def rising(deg_per_s: float, phase: Phase, rate_hz: float = 20.0) -> list[Happening]:
    return [
        replace(
            GOING,
            time_s=n / rate_hz,
            phase=phase,
            reading=Reading(n / rate_hz, deg_per_s * n / rate_hz, 4.0),
        )
        for n in range(int(1.5 * rate_hz))
    ]


@pytest.mark.parametrize("rate_hz", [10.0, 20.0, 60.0])
@pytest.mark.parametrize(
    ("deg_per_s", "phase", "told"),
    [
        (120.0, Phase.MOVING, 1),
        (80.0, Phase.MOVING, 0),
        (-120.0, Phase.MOVING, 0),
        (120.0, Phase.RETURNING, 0),
        (120.0, Phase.HOLDING, 0),
    ],
)
def test_slowly_is_said_of_a_rush_toward_the_end_and_once_in_five_seconds(
    rate_hz: float, deg_per_s: float, phase: Phase, told: int
) -> None:
    assert keys(said(rising(deg_per_s, phase, rate_hz), AT_IT)) == ["slowly"] * told


@pytest.mark.parametrize("side", Side)
def test_the_wrong_arm_is_named_with_the_right_one(side: Side) -> None:
    each = PlannedExercise(movement=Movement.FLEXION, side=side, hold_s=30, repetitions=3)
    (cue,) = said([replace(GOING, planned=each, wrong_arm=True)], AT_IT)
    assert cue.spoken == (
        f"That is the other arm. This exercise is for your {side} arm. If it is your {side} arm, "
        "the camera mirrors its picture: turn that off in its settings."
    )


def test_what_to_change_before_an_exercise_is_said_every_eight_seconds() -> None:
    ready = prepare(BARE)
    frames = [replace(ready, time_s=10 + n / 10, doubt=Doubt.TOO_FAR) for n in range(200)]
    cues = [cue for cue in said(frames, ASKED) if cue.key.startswith("correct.")]
    assert [(cue.key, round(cue.time_s, 1)) for cue in cues] == [
        ("correct.too-far-away", 12.1),
        ("correct.too-far-away", 20.1),
        ("correct.too-far-away", 28.1),
    ]


def test_a_timed_hold_is_counted_like_a_measured_one() -> None:
    each = planned("pendulum", hold_s=10, repetitions=2)
    going = replace(GOING, planned=each, phase=Phase.HOLDING)
    frames = [
        replace(going, time_s=n / 20, remaining_s=10 - n / 20, held_s=n / 20) for n in range(200)
    ]
    frames[0] = replace(frames[0], events=(HoldStarted(0.0, 0.0),))
    hold = TimedHold(
        number=1, start_s=0.0, end_s=10.0, held_s=10.0, ended_because=EndedBecause.COMPLETED
    )
    over = replace(going, time_s=10.0, events=(TimedHoldEnded(10.0, hold),), repetitions_done=1)
    cues = said([*frames, over], AT_IT)
    numbers = [(cue.key, cue.time_s) for cue in cues if cue.key.startswith("number.")]
    assert numbers[-5:] == [(f"number.{n}", pytest.approx(10.0 - n)) for n in (5, 4, 3, 2, 1)]
    assert (cues[0].key, cues[-1].key, cues[-1].caption) == ("hold", "count", "1 of 2")


def test_a_pause_cuts_off_whatever_was_being_said_but_what_is_urgent() -> None:
    paused = said([replace(GOING, time_s=5.0, stage=Stage.PAUSED)], AT_IT)
    assert len(paused) == 1
    for urgency in Urgency:
        speaking = Cue(4.0, 9.0, urgency, "count", "Two of three.", "2 of 3")
        _, decision = choose(offer_all(Queue(), paused), 5.0, speaking)
        assert decision.interrupts is (urgency is not Urgency.URGENT)
        assert (decision.cue is None) is (urgency is Urgency.URGENT)
