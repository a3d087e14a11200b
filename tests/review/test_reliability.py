from __future__ import annotations

import numpy as np
import pytest

from coach.review.reliability import icc_2_1, icc_3_1, mdc95, sem_of

SHROUT_FLEISS = np.array(
    [[9, 2, 5, 8], [6, 1, 3, 2], [8, 4, 6, 8], [7, 1, 2, 6], [10, 5, 6, 9], [6, 2, 4, 7]], float
)
"""Six targets by four judges, table 2 of Shrout & Fleiss 1979, Psychol Bull 86:420-428 (from
memory)."""


def test_the_published_table_gives_its_published_coefficients():
    assert round(icc_2_1(SHROUT_FLEISS), 2) == 0.29
    assert round(icc_3_1(SHROUT_FLEISS), 2) == 0.71
    # Residual mean square 1.02 in their table 3.
    assert round(sem_of(SHROUT_FLEISS) ** 2, 2) == 1.02


def test_the_detectable_change_is_the_textbooks():
    # SEM 5 deg: 13.86 (Weir 2005, from memory).
    assert mdc95(5.0) == pytest.approx(13.86, abs=0.01)


def test_a_known_error_is_found_again():
    rng = np.random.default_rng(3)
    people = rng.normal(120, 15, (4000, 1))
    table = people + np.array([[0.0, 5.0]]) + rng.normal(0, 4.0, (4000, 2))
    assert sem_of(table) == pytest.approx(4.0, rel=0.05)
    # 225 / (225 + 16), and with the shift of 5 between raters, variance 12.5, in it.
    assert icc_3_1(table) == pytest.approx(225 / 241, abs=0.01)
    assert icc_2_1(table) == pytest.approx(225 / 253.5, abs=0.01)


@pytest.mark.parametrize("shape", [(1, 4), (6, 1)])
def test_too_small_a_table_is_refused(shape):
    with pytest.raises(ValueError, match="two by two"):
        icc_2_1(np.ones(shape))
