"""The band of the spine that a thumb reaches, against the published table and by hand."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from coach.review.levels import LEVELS, Band, reach_band, thumb_ratio

NAMES = [name for name, _ in LEVELS]
HEIGHTS = dict(LEVELS)


def test_the_measured_levels_are_those_of_the_paper() -> None:
    # Ernst et al. 2013, abstract: T4 21 %, T7 39 %, T10 54.1 %, L1 70.9 %, L4 86.1 %.
    found = [HEIGHTS[name] for name in ("T4", "T7", "T10", "L1", "L4")]
    assert found == [0.21, 0.39, 0.541, 0.709, 0.861]
    assert (HEIGHTS["C7"], HEIGHTS["PSIS"]) == (0.0, 1.0)
    assert sorted(HEIGHTS.values()) == list(HEIGHTS.values())
    assert len(NAMES) == 1 + 12 + 5 + 1 + 1


def test_the_thumb_is_two_thirds_of_a_hand_above_the_wrist() -> None:
    # A hand of 0.108 x 1.70 m is 18.4 cm, its thumb's tip 12.2 cm above the wrist; 50.9 cm of back.
    assert 0.62 - thumb_ratio(0.62) == pytest.approx(12.24 / 50.9, abs=0.002)
    assert thumb_ratio(1.3) == 1.3


@pytest.mark.parametrize(
    ("wrist", "error", "words"),
    [
        # thumb at 0.61: T11 (0.596) is nearest.
        (0.85, 0.0, "about T10 to T12"),
        # 0.56 to 0.66: T10 (0.541) to L1 (0.709) take that in.
        (0.85, 0.05, "about T10 to L1"),
        # thumb at 0.39, exactly T7.
        (0.63, 0.0, "about T6 to T8"),
        (0.2, 0.05, "about C7 to T1"),
        (1.05, 0.0, "about S1 to buttock"),
        (1.15, 0.05, "buttock"),
        (1.3, 0.05, "side of the thigh"),
    ],
)
def test_bands_by_hand(wrist: float, error: float, words: str) -> None:
    assert reach_band(wrist, error).words == words


@given(st.floats(-0.5, 2.0), st.floats(0.0, 0.6))
def test_a_band_takes_in_all_of_the_interval_and_is_never_one_vertebra(
    wrist: float, error: float
) -> None:
    band = reach_band(wrist, error)
    thumb = thumb_ratio(wrist)
    if thumb > 1.0:
        assert band.words in ("buttock", "side of the thigh")
        return
    assert band.top <= max(0.0, thumb_ratio(wrist - error)) + 1e-9
    assert band.bottom >= min(1.0, thumb_ratio(wrist + error)) - 1e-9
    below = [*NAMES, "buttock"]
    assert below.index(band.low) - below.index(band.high) >= 1


@given(st.floats(-0.5, 2.0), st.floats(0.0, 1.0))
def test_a_hand_further_up_is_never_told_to_be_lower(wrist: float, further: float) -> None:
    assert thumb_ratio(wrist - further) <= thumb_ratio(wrist)


def test_how_it_is_written() -> None:
    assert Band("T10", "L1", 0.541, 0.709).short == "T10\N{EN DASH}L1"
    assert Band("buttock", "buttock", 1.0, 1.2).short == "buttock"
