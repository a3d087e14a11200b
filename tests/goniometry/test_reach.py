"""The hand behind the back against geometry, and wrists that are guessed."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.spatial.transform import Rotation

from coach.goniometry.reach import C7_UP, PSIS_UP, WRIST_BEHIND, HiddenHand, reach_ratio
from coach.goniometry.skeleton import Stance

FROM_BEHIND = np.array([[0.0, 0.0, 1.0], [0.0, -1.0, 0.0], [1.0, 0.0, 0.0]])
"""Rows forward (away from the camera), up, right of a trunk in camera axes x, y down, z."""


def stance(axes: np.ndarray, middle: np.ndarray) -> Stance:
    """One frame; the arm is not looked at."""
    none = np.zeros((1, 3))
    return Stance(
        axes.T[None], (middle[:2] / middle[2])[None], middle[2:], none, none - [[0, 1, 0]], none
    )


@given(
    ratio=st.floats(-0.2, 1.4),
    aside=st.floats(-0.3, 0.3),
    depth=st.floats(3.0, 7.0),
    place=st.tuples(st.floats(-0.3, 0.3), st.floats(-0.3, 0.3)),
    turn_deg=st.tuples(st.floats(-15, 15), st.floats(-35, 35), st.floats(-15, 15)),
)
def test_a_wrist_on_the_plane_behind_the_back_is_found_at_its_height(
    ratio: float,
    aside: float,
    depth: float,
    place: tuple[float, float],
    turn_deg: tuple[float, float, float],
) -> None:
    """However the trunk leans and turns, and wherever it stands in the picture."""
    axes = FROM_BEHIND @ Rotation.from_euler("XYZ", turn_deg, degrees=True).as_matrix().T
    middle = depth * np.array([*place, 1.0])
    forward, up, right = axes
    c7, psis = C7_UP, -1.0 + PSIS_UP  # heights over the middle of the shoulders
    wrist = middle + (c7 + ratio * (psis - c7)) * up + aside * right - WRIST_BEHIND * forward
    found = reach_ratio(stance(axes, middle), (wrist[:2] / wrist[2])[None])
    assert found == pytest.approx([ratio], abs=1e-9)


def test_the_ratio_falls_as_the_hand_goes_up() -> None:
    middle = np.array([0.0, 0.0, 5.0])
    heights = np.linspace(0.4, -1.2, 9)
    slopes = np.stack([np.zeros(9), -heights / (5.0 - WRIST_BEHIND)], axis=-1)
    found = np.array([reach_ratio(stance(FROM_BEHIND, middle), s[None])[0] for s in slopes])
    assert np.all(np.diff(found) > 0)
    # A trunk's length along the spine, over the length from C7 to the spines of the ilium.
    assert np.ptp(found) == pytest.approx(1.6 / (1.0 + C7_UP - PSIS_UP))


def believed(rows: list[tuple[float, float, float]]) -> list[bool]:
    """Of (seconds, ratio, visibility)."""
    hand, out = HiddenHand(), []
    for time_s, ratio, visibility in rows:
        hand, yes = hand.seen(time_s, ratio, visibility)
        out.append(yes)
    return out


def test_a_wrist_that_moves_as_a_hand_moves_is_believed() -> None:
    times = np.arange(0.0, 2.0, 0.1)
    rows = [(float(t), 0.8 - 0.15 * float(t), 0.3) for t in times]
    assert all(believed(rows))


def test_a_guessed_wrist_that_jumps_is_not_believed_until_it_is_back() -> None:
    low = [(0.1 * t, 0.6, 0.3) for t in range(10)]
    lost = [(1.0 + 0.1 * t, 0.82, 0.3) for t in range(5)]
    back = [(1.5 + 0.1 * t, 0.6, 0.3) for t in range(5)]
    assert believed(low + lost + back) == [True] * 10 + [False] * 5 + [True] * 5


def test_a_seen_wrist_may_jump() -> None:
    assert believed([(0.0, 0.6, 0.9), (0.1, 0.9, 0.9), (0.2, 0.5, 0.9)]) == [True] * 3


def test_a_low_wrist_that_should_be_seen_and_is_not_is_not_believed() -> None:
    """The model puts a hand that it has lost where it would hang."""
    assert believed([(0.0, 1.1, 0.3)]) == [False]
    assert believed([(0.0, 1.1, 0.8)]) == [True]
