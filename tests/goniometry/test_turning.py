"""Turns against SciPy's rotations."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.spatial.transform import Rotation

from coach.goniometry.turning import across, between, turn_by, vector_of

SIZES_RAD = [0.0, 1e-12, 1e-9, 1e-7, 9.9e-7, 1.1e-6, 1e-5, 1e-3, 0.1, 1.0, 3.0, 3.14]


def directions(count: int) -> np.ndarray:
    vectors = np.random.default_rng(11).normal(size=(count, 3))
    scaled: np.ndarray = vectors / np.linalg.norm(vectors, axis=1, keepdims=True)
    return scaled


def vectors() -> st.SearchStrategy[np.ndarray]:
    """Rotation vectors shorter than half a turn."""
    number = st.floats(-1.0, 1.0)
    return st.tuples(number, number, number).map(lambda v: np.array(v) * 1.8)


@pytest.mark.parametrize("size_rad", SIZES_RAD)
def test_turns_of_every_size_are_those_of_scipy(size_rad: float) -> None:
    axes = directions(50)
    mine = turn_by(size_rad * axes)
    assert mine == pytest.approx(Rotation.from_rotvec(size_rad * axes).as_matrix(), abs=1e-12)


@pytest.mark.parametrize("size_rad", SIZES_RAD)
def test_vectors_of_every_size_come_back(size_rad: float) -> None:
    """To a share of 1e-9 of a large turn; of a tiny one to the rounding of a matrix."""
    wanted = size_rad * directions(50)
    turns = Rotation.from_rotvec(wanted).as_matrix()
    assert vector_of(turns) == pytest.approx(wanted, abs=1e-9 * max(size_rad, 1e-6))


@given(first=vectors(), second=vectors())
def test_between_is_the_turn_in_the_axes_of_the_first(
    first: np.ndarray, second: np.ndarray
) -> None:
    one, other = Rotation.from_rotvec(first), Rotation.from_rotvec(second)
    wanted = (one.inv() * other).as_rotvec()
    if np.linalg.norm(wanted) > 3.1:
        return  # at half a turn two vectors are the same turn
    assert between(one.as_matrix(), other.as_matrix()) == pytest.approx(wanted, abs=1e-7)


@given(first=vectors(), step=vectors())
def test_a_step_and_back(first: np.ndarray, step: np.ndarray) -> None:
    start = turn_by(first)
    if np.linalg.norm(step) < 3.1:
        assert between(start, start @ turn_by(step)) == pytest.approx(step, abs=1e-7)


def test_shapes_are_kept() -> None:
    steps = directions(24).reshape(2, 3, 4, 3)
    turns = turn_by(steps)
    assert turns.shape == (2, 3, 4, 3, 3)
    assert vector_of(turns) == pytest.approx(steps, abs=1e-9)
    assert between(turns[:, :1], turns).shape == (2, 3, 4, 3)


def test_two_directions_across_are_square_to_each_other() -> None:
    along = np.concatenate([directions(200), np.eye(3), -np.eye(3)])
    first, second = across(along)
    axes = np.stack([along, first, second], axis=-1)
    assert np.swapaxes(axes, -1, -2) @ axes == pytest.approx(
        np.broadcast_to(np.eye(3), axes.shape), abs=1e-12
    )
    assert np.linalg.det(axes) == pytest.approx(np.ones(len(along)), abs=1e-12)
