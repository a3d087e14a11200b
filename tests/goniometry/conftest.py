"""Fixtures of the goniometer's tests."""

from __future__ import annotations

import numpy as np
import pytest

from coach.goniometry import offsets


@pytest.fixture
def on_joints(monkeypatch: pytest.MonkeyPatch) -> None:
    """Let the fit take points for joint centres.

    Where a pose model's points lie beside them is data of people; without it the fit is geometry,
    and sticks whose marks are on their joints are read by it alone.
    """
    monkeypatch.setattr(offsets, "OFFSETS", np.zeros_like(offsets.OFFSETS))
