from dataclasses import dataclass
from itertools import pairwise

from hypothesis import given, settings
from hypothesis import strategies as st

from coach.cues.pacing import (
    LIMIT,
    REPEAT_GAP_S,
    Queue,
    choose,
    estimate_s,
    offer,
    offer_all,
    reserve,
)
from coach.domain.cue import Cue, Urgency


def cue(
    key: str, urgency: Urgency, time_s: float = 0.0, stale_s: float = 100.0, letters: int = 20
) -> Cue:
    return Cue(time_s, stale_s, urgency, key, "x" * letters, key)


@dataclass(frozen=True)
class Begun:
    cue: Cue
    at_s: float
    cut: Cue | None


TICK_S = 0.04
SPOKEN = settings(deadline=None, max_examples=100)
CUES = st.lists(
    st.builds(
        lambda key, urgency, time_s, fresh_s, letters: cue(
            key, urgency, time_s, time_s + fresh_s, letters
        ),
        st.sampled_from(["a", "b", "c", "d", "e", "f"]),
        st.sampled_from(Urgency),
        st.floats(0, 8),
        st.floats(0.1, 6),
        st.integers(1, 80),
    ),
    max_size=15,
)


def spoken(cues: list[Cue], lead_s: float = 0.0) -> list[Begun]:
    """Offer each cue ``lead_s`` before it is due and speak for sixteen seconds."""
    queue, speaking, until_s, begun = Queue(), None, 0.0, []
    ahead = sorted(cues, key=lambda c: c.time_s)
    for index in range(400):
        now_s = index * TICK_S
        while ahead and ahead[0].time_s - lead_s <= now_s:
            queue = offer(queue, ahead.pop(0))
        assert len(queue.waiting) <= LIMIT
        if now_s >= until_s:
            speaking = None
        queue, decision = choose(queue, now_s, speaking)
        if decision.cue:
            assert decision.interrupts == (speaking is not None)
            begun.append(Begun(decision.cue, now_s, speaking))
            speaking, until_s = decision.cue, now_s + estimate_s(decision.cue)
    return begun


@SPOKEN
@given(CUES)
def test_nothing_is_begun_before_it_is_due_or_after_it_is_stale(cues: list[Cue]) -> None:
    for begun in spoken(cues):
        assert begun.cue.time_s <= begun.at_s <= begun.cue.stale_s


@SPOKEN
@given(CUES)
def test_only_numbers_and_urgent_cues_cut_and_only_what_is_lower(cues: list[Cue]) -> None:
    for begun in spoken(cues):
        if begun.cut:
            assert begun.cue.urgency >= Urgency.TIMED
            assert begun.cue.urgency > begun.cut.urgency


@SPOKEN
@given(CUES)
def test_an_urgent_cue_is_begun_at_once_unless_another_urgent_one_is_spoken(
    cues: list[Cue],
) -> None:
    urgent = [c for c in cues if c.urgency is Urgency.URGENT]
    others = [c for c in cues if c.urgency is not Urgency.URGENT]
    for first in urgent[:1]:
        begun = [b for b in spoken([first, *others]) if b.cue is first]
        repeated = [c for c in others if c.key == first.key]
        assert repeated or begun[0].at_s - first.time_s <= TICK_S + 1e-9


@SPOKEN
@given(CUES)
def test_no_kind_is_begun_twice_within_the_gap(cues: list[Cue]) -> None:
    begun = spoken(cues)
    for key in "abcdef":
        same = [b for b in begun if b.cue.key == key]
        for earlier, later in pairwise(same):
            assert later.at_s - earlier.at_s >= REPEAT_GAP_S - TICK_S


@SPOKEN
@given(CUES)
def test_numbers_known_ahead_are_never_kept_waiting_nor_run_into(cues: list[Cue]) -> None:
    calm = [c for c in cues if c.urgency < Urgency.TIMED]
    numbers = [cue(f"n{i}", Urgency.TIMED, 3.0 * i, 3.0 * i + 0.4, 4) for i in range(1, 5)]
    begun = spoken([*calm, *numbers], lead_s=8.0)
    said = {b.cue.key: b for b in begun}
    for number in numbers:
        assert said[number.key].at_s - number.time_s <= TICK_S + 1e-9
        assert said[number.key].cut is None


def test_a_reserved_moment_keeps_long_speech_back_and_lets_short_speech_pass() -> None:
    long, short = cue("long", Urgency.NORMAL, letters=80), cue("short", Urgency.NORMAL, letters=5)
    queue = reserve(offer_all(Queue(), [long, short]), due_s=2.0)
    queue, decision = choose(queue, 0.0, None)
    assert decision.cue is short
    queue, decision = choose(reserve(queue, None), 1.0, None)
    assert decision.cue is long


def test_urgent_overtakes_gentle() -> None:
    queue = offer_all(Queue(), [cue("well", Urgency.GENTLE), cue("stop", Urgency.URGENT)])
    queue, decision = choose(queue, 0.0, None)
    assert decision.cue is not None
    assert decision.cue.key == "stop"


def test_encouragement_is_dropped_first_when_too_much_waits() -> None:
    queue = offer(Queue(), cue("well", Urgency.GENTLE))
    queue = offer_all(queue, [cue(f"k{i}", Urgency.NORMAL) for i in range(LIMIT)])
    assert [c.key for c in queue.waiting] == [f"k{i}" for i in range(LIMIT)]


def test_a_new_stage_cuts_off_what_the_old_one_was_saying_but_not_the_rest() -> None:
    welcome = cue("stage.welcome", Urgency.NORMAL, 0.0)
    caution = cue("stage.caution", Urgency.NORMAL, 0.0)
    last = cue("count-last", Urgency.NORMAL, 0.0)
    pain = cue("stage.pain-before", Urgency.NORMAL, 3.0)
    queue = offer_all(Queue(), [caution, last, pain])
    assert [c.key for c in queue.waiting] == ["count-last", "stage.pain-before"]
    _, decision = choose(offer(Queue(), pain), 3.0, welcome)
    assert (decision.cue, decision.interrupts) == (pain, True)
    _, decision = choose(offer(Queue(), pain), 3.0, last)
    assert decision.cue is None


def test_an_instruction_lets_encouragement_finish() -> None:
    well, go = cue("well", Urgency.GENTLE), cue("again", Urgency.NORMAL, 1.0)
    queue, decision = choose(offer(Queue(), go), 1.0, well)
    assert decision.cue is None
    assert choose(queue, 2.0, None)[1].cue is go
