"""The display's filter against SciPy's recursive filter and its published behaviour."""

from __future__ import annotations

import math

import numpy as np
import pytest
from scipy.signal import lfilter

from coach.goniometry.smoothing import OneEuro


def filtered(samples: np.ndarray, rate_hz: float, start: OneEuro) -> list[float]:
    state, values = start, []
    for n, sample in enumerate(samples):
        state = state.advance(n / rate_hz, float(sample))
        assert state.value is not None
        values.append(state.value)
    return values


@pytest.mark.parametrize("rate_hz", [15.0, 30.0])
def test_without_speed_it_is_a_first_order_low_pass(rate_hz: float) -> None:
    samples = np.random.default_rng(4).normal(40, 3, 200)
    # Casiez, Roussel, Vogel 2012: alpha = 1 / (1 + tau / Te), tau = 1 / (2 pi fc).
    weight = 1 / (1 + rate_hz / (2 * math.pi * 1.5))
    wanted, _ = lfilter([weight], [1, weight - 1], samples, zi=[(1 - weight) * samples[0]])
    values = filtered(samples, rate_hz, OneEuro(min_cutoff_hz=1.5, beta=0.0))
    assert values == pytest.approx(wanted, abs=1e-9)


def test_a_quick_movement_lags_less_the_larger_beta() -> None:
    ramp = np.concatenate([np.zeros(30), np.linspace(0, 90, 30)])
    lags = [90 - filtered(ramp, 30.0, OneEuro(beta=beta))[-1] for beta in (0.0, 0.05, 0.5)]
    assert lags[0] > 2 * lags[1] > 4 * lags[2] > 0


def test_a_stamp_that_does_not_move_on_changes_nothing() -> None:
    state = OneEuro().advance(1.0, 20.0)
    assert state.advance(1.0, 90.0) == state
    assert state.advance(0.5, 90.0) == state
