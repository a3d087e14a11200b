"""Student's distribution against SciPy's."""

from __future__ import annotations

import numpy as np
import pytest
from scipy import stats

from coach.review.student import outside, point95, student95

DOFS = (3.0, 3.7, 5.5, 14.0, 87.3, 99.9, 100.1, 5000.0, 1e9)


@pytest.mark.parametrize("dof", DOFS)
def test_what_lies_outside_is_scipys(dof: float) -> None:
    t = np.geomspace(0.01, 1000.0, 200)
    expected = 2 * stats.t.sf(t, dof)
    assert outside(np.full_like(t, dof), t) == pytest.approx(expected, abs=1e-12)


def test_points_are_scipys_and_the_normal_one_at_last() -> None:
    expected = [stats.t.ppf(0.975, dof) for dof in DOFS]
    assert [student95(dof) for dof in DOFS] == pytest.approx(expected, rel=1e-11)
    assert student95(1e12) == pytest.approx(stats.norm.ppf(0.975), rel=1e-11)


def test_a_mixture_leaves_five_of_a_hundred_outside() -> None:
    """Scales far apart, as of a scatter that may or may not carry over."""
    rng = np.random.default_rng(4)
    for _ in range(50):
        weights = rng.dirichlet(np.ones(7))
        dof, scales = rng.uniform(3, 90, 7), np.exp(rng.uniform(-3, 3, 7))
        point = point95(weights, dof, scales)
        assert weights @ (2 * stats.t.sf(point / scales, dof)) == pytest.approx(0.05, rel=1e-10)
