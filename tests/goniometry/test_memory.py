"""Samples kept of a time of unknown length: bounded, and spread evenly over all of it."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from coach.goniometry.memory import Spread


def kept(stamps_s: np.ndarray, most: int) -> tuple[Spread[float], np.ndarray]:
    spread: Spread[float] = Spread(most)
    for time_s in stamps_s:
        spread = spread.seen(float(time_s), float(time_s))
        assert len(spread.samples) <= most
    return spread, np.array(spread.samples)


@given(
    rate_hz=st.floats(12.0, 60.0), length_s=st.floats(5.0, 300.0), most=st.sampled_from([8, 24, 32])
)
def test_the_samples_are_bounded_and_even(rate_hz: float, length_s: float, most: int) -> None:
    """Gaps differ by a frame or two, and neither end of the time is left out."""
    stamps = np.arange(0.0, length_s, 1.0 / rate_hz)
    spread, samples = kept(stamps, most)
    gaps = np.diff(samples)
    assert samples[0] == stamps[0]
    assert np.all(gaps > 0)
    assert gaps.max() < 2.0 * gaps.min() + 3.0 / rate_hz
    assert stamps[-1] - samples[-1] <= spread.step_s
    if length_s > 0.2 * most:  # longer than the first step could fill
        assert len(samples) >= most / 2


def test_a_step_doubles_each_time_the_room_is_full() -> None:
    stamps = np.arange(0.0, 100.0, 0.1)
    spread, samples = kept(stamps, 10)
    assert spread.step_s == pytest.approx(0.1 * 2**7)
    assert np.diff(samples) == pytest.approx(np.full(len(samples) - 1, 12.8), abs=0.25)


def test_what_is_not_due_changes_nothing() -> None:
    empty: Spread[str] = Spread(4)
    spread = empty.seen(0.0, "a")
    assert not spread.due(0.05)
    assert spread.seen(0.05, "b") is spread
    assert spread.due(0.1)
    assert spread.seen(0.1, "b").samples == ("a", "b")
    assert spread.samples == ("a",)
