"""The question about pain by hand: what a listener who raises a hand at a number gets."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from coach.domain.moment import Asked
from coach.session.asking import Asking, advance, begin

QUESTION_S, NUMBER_S, ROUND_S, PAUSE_S, SURE_S, UP_S = 9.0, 2.0, 22.0, 5.0, 5.0, 1.2


class Listener:
    """Somebody whose hand is up in given spans; it means something after 1.2 s."""

    def __init__(
        self,
        *spans: tuple[float, float],
        until_s: float = 100.0,
        rate_hz: float = 30.0,
        jitter: float = 0.0,
        seed: int = 0,
    ) -> None:
        steps_s = np.random.default_rng(seed).uniform(1 - jitter, 1 + jitter, 20_000) / rate_hz
        self.asking: Asking = begin(0.0, QUESTION_S)
        self.heard: list[tuple[float, int]] = []
        self.shown: list[tuple[float, Asked]] = []
        self.over_s: float | None = None
        told: set[float] = set()
        before: int | None = None
        for time_s in map(float, np.cumsum(steps_s)):
            if time_s > until_s or self.asking.over:
                break
            raised = next((s for s in spans if s[0] <= time_s < s[1]), None)
            hand_up = raised is not None and time_s - raised[0] >= UP_S and raised[0] not in told
            if hand_up and raised is not None:
                told.add(raised[0])
            self.asking = advance(self.asking, time_s, raised and raised[0], hand_up)
            shown = self.asking.shown(time_s)
            if shown.offered is not None and shown.offered != before:
                self.heard.append((time_s, shown.offered))
            before = shown.offered
            self.shown.append((time_s, shown))
            if self.asking.over:
                self.over_s = time_s


@given(rate_hz=st.floats(5, 60), jitter=st.floats(0, 0.9), seed=st.integers(0, 99))
def test_every_number_is_offered_once_a_round_at_its_time(
    rate_hz: float, jitter: float, seed: int
) -> None:
    listener = Listener(rate_hz=rate_hz, jitter=jitter, seed=seed)
    late_s = (1 + jitter) / rate_hz + 1e-9
    assert [number for _, number in listener.heard] == [*range(11), *range(11)]
    for place, (time_s, number) in enumerate(listener.heard[:11]):
        assert number == place
        assert 0 <= time_s - (QUESTION_S + NUMBER_S * number) <= late_s
    again_s = listener.heard[11][0]
    assert again_s == pytest.approx(QUESTION_S + ROUND_S + PAUSE_S, abs=2 * late_s)


def test_who_does_not_answer_is_asked_twice_and_then_let_be() -> None:
    listener = Listener()
    assert listener.asking.over
    assert listener.asking.answered is None
    assert listener.over_s == pytest.approx(QUESTION_S + 2 * (ROUND_S + PAUSE_S), abs=0.2)


@given(
    number=st.integers(0, 10),
    reaction_s=st.floats(0.51, 2.4),
    rate_hz=st.floats(10, 60),
    jitter=st.floats(0, 0.5),
    seed=st.integers(0, 99),
)
def test_a_hand_raised_at_a_number_chooses_it(
    number: int, reaction_s: float, rate_hz: float, jitter: float, seed: int
) -> None:
    """Half a second after hearing it at the soonest, half a second into the next at the latest."""
    up_s = QUESTION_S + NUMBER_S * number + reaction_s
    listener = Listener((up_s, up_s + 2.0), rate_hz=rate_hz, jitter=jitter, seed=seed)
    assert listener.asking.answered == number
    assert listener.over_s == pytest.approx(up_s + UP_S + SURE_S, abs=4 / rate_hz)
    chosen_s = [time_s for time_s, shown in listener.shown if shown.chosen is not None]
    assert all(s.offered is None for t, s in listener.shown if t >= chosen_s[0])
    left_s = [s.sure_s for _, s in listener.shown if s.sure_s is not None]
    assert left_s == sorted(left_s, reverse=True)
    assert left_s[0] == pytest.approx(SURE_S)


def test_a_second_raise_takes_the_number_back_and_the_numbers_come_again() -> None:
    at_s = QUESTION_S + 2 * NUMBER_S + 1.0
    again_s = at_s + 4.0
    listener = Listener((at_s, at_s + 2.0), (again_s, again_s + 2.0))
    assert [n for t, n in listener.heard if t > again_s][:2] == [0, 1]
    # Two seconds after the hand is down again.
    first_s = next(t for t, n in listener.heard if t > again_s and n == 0)
    assert first_s == pytest.approx(again_s + 2.0 + NUMBER_S, abs=0.1)
    third_s = first_s + 7 * NUMBER_S + 1.0
    changed = Listener((at_s, at_s + 2.0), (again_s, again_s + 2.0), (third_s, third_s + 2.0))
    assert changed.asking.answered == 7


def test_a_hand_that_is_up_stops_the_clock() -> None:
    """In passing, for less than a raise takes: the numbers wait, and none is left out."""
    at_s = QUESTION_S + 3 * NUMBER_S + 1.5
    listener = Listener((at_s, at_s + 1.0), until_s=QUESTION_S + ROUND_S)
    times_s = {number: time_s for time_s, number in listener.heard}
    assert times_s[3] == pytest.approx(QUESTION_S + 3 * NUMBER_S, abs=0.05)
    assert times_s[4] == pytest.approx(QUESTION_S + 4 * NUMBER_S + 1.0, abs=0.1)
    assert [number for _, number in listener.heard] == list(range(11))


def test_a_hand_kept_up_is_waited_for_as_long_as_it_is() -> None:
    at_s = QUESTION_S + 1.0 - NUMBER_S
    listener = Listener((at_s, at_s + 60.0), until_s=at_s + 60.0)
    assert listener.heard == []
    assert not listener.asking.over


def test_a_raise_during_the_question_goes_on_to_the_numbers_and_chooses_none() -> None:
    listener = Listener((2.0, 4.0), until_s=20.0)
    assert [number for _, number in listener.heard][:3] == [0, 1, 2]
    assert listener.heard[0][0] == pytest.approx(4.0 + NUMBER_S, abs=0.1)
    assert listener.asking.chosen is None


def test_what_is_over_stays_so() -> None:
    over = Listener().asking
    assert advance(over, 1000.0, 999.0, hand_up=True) is over
