"""The filters of a recording's curve, against SciPy's."""

import numpy as np
import pytest
from scipy.ndimage import maximum_filter1d, median_filter, minimum_filter1d
from scipy.signal import butter, sosfiltfilt

from coach.counting.curve import (
    CUTOFF_HZ,
    GRID_HZ,
    ORDER,
    low_pass,
    running_median,
    running_range,
)

LENGTHS = (2, 16, 31, 60, 61, 400, 70_000)


def signal(length: int) -> np.ndarray:
    r = np.random.default_rng(length)
    return 60.0 + np.cumsum(r.normal(0.0, 1.0, length)) + r.normal(0.0, 5.0, length)


@pytest.mark.parametrize("length", LENGTHS)
@pytest.mark.parametrize("cutoff_hz", [CUTOFF_HZ, 0.7, 11.0])
def test_the_low_pass_is_scipys_butterworth_filter_run_forward_and_back(
    length: int, cutoff_hz: float
) -> None:
    given = signal(length)
    sections = butter(ORDER, cutoff_hz, fs=GRID_HZ, output="sos")
    pad = min(length - 1, round(GRID_HZ / cutoff_hz / 2))
    expected = sosfiltfilt(sections, given, padlen=pad)
    assert low_pass(given, cutoff_hz, GRID_HZ) == pytest.approx(expected, abs=1e-8)


def test_half_of_the_amplitude_stays_at_the_cutoff() -> None:
    time_s = np.arange(0.0, 20.0, 1 / GRID_HZ)
    swing = low_pass(np.sin(2 * np.pi * CUTOFF_HZ * time_s), CUTOFF_HZ, GRID_HZ)
    assert np.abs(swing[300:900]).max() == pytest.approx(0.5, abs=0.005)


@pytest.mark.parametrize("length", LENGTHS)
@pytest.mark.parametrize("size", [31, 61])
def test_running_median_and_range_are_scipys(length: int, size: int) -> None:
    given = signal(length)
    assert (running_median(given, size) == median_filter(given, size, mode="nearest")).all()
    swept = maximum_filter1d(given, size) - minimum_filter1d(given, size)
    assert (running_range(given, size) == swept).all()
