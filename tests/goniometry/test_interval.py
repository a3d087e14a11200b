"""The interval against closed forms."""

from __future__ import annotations

import re
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from coach.domain.movement import Movement, Position, Side, View
from coach.domain.pose import PoseModel
from coach.goniometry.interval import corrected, error_of, measures, uncorrected
from tests.goniometry.ways import WAYS, end_of


@pytest.mark.parametrize(("movement", "position", "view"), WAYS)
def test_every_way_has_its_interval(movement: Movement, position: Position, view: View) -> None:
    for share in (0.0, 0.5, 1.0):
        value = end_of(movement, position, share)[1]
        square = error_of(movement, position, view, value, 0.0)
        assert square > 0
        for turned_deg in (10.0, 25.0, 35.0):
            turned = error_of(movement, position, view, value, turned_deg)
            assert turned == error_of(movement, position, view, value, -turned_deg)
            assert turned >= square


@pytest.mark.parametrize("movement", [Movement.FLEXION, Movement.EXTENSION, Movement.ABDUCTION])
def test_the_interval_widens_as_an_arm_off_its_plane_errs(movement: Movement) -> None:
    """Camera far away, trunk turned by psi about its length, arm 10 degrees to either side of its
    plane: what it errs by more than at 20 degrees, where the plain interval ends."""
    elevation = np.radians(np.linspace(0, 180, 361))
    off = np.radians([[10.0], [-10.0]])

    def worst_deg(turned_deg: float) -> float:
        psi = np.radians(turned_deg)
        across = np.sin(elevation) * np.cos(off) * np.cos(psi) + np.sin(off) * np.sin(psi)
        seen = np.degrees(np.arctan2(across, np.cos(elevation) * np.cos(off)))
        return float(np.abs((seen - np.degrees(elevation) + 180) % 360 - 180).max())

    view = View.FRONT if movement is Movement.ABDUCTION else View.SIDE
    square = error_of(movement, Position.STANDING, view, 60.0, 20.0)
    for turned_deg in (25.0, 30.0, 35.0):
        widened = error_of(movement, Position.STANDING, view, 60.0, turned_deg) - square
        assert widened == pytest.approx(worst_deg(turned_deg) - worst_deg(20.0), abs=0.5)


def test_rotation_from_the_front_is_worth_less_the_further_it_goes() -> None:
    """The forearm turns out of the picture's plane: its length weighs 1 / cos."""
    halves = [
        error_of(Movement.EXTERNAL_ROTATION_0, Position.STANDING, View.FRONT, value, 0.0)
        for value in (0.0, 45.0, 60.0, 75.0)
    ]
    assert halves[0] == halves[1] < halves[2] < halves[3]


@pytest.mark.parametrize(("movement", "position", "view"), WAYS)
@given(share=st.floats(0, 1), side=st.sampled_from(list(Side)), card=st.booleans())
def test_a_bias_is_put_on_and_taken_off(
    movement: Movement, position: Position, view: View, share: float, side: Side, card: bool
) -> None:
    value = end_of(movement, position, share)[1]
    fitted = uncorrected(movement, position, view, side, value, card=card)
    again = corrected(movement, position, view, side, fitted, card=card)
    assert again == pytest.approx(value, abs=1e-6)


@pytest.mark.parametrize(
    ("movement", "position", "view"), [way for way in WAYS if measures(PoseModel.LITE, *way)]
)
@pytest.mark.parametrize("card", [False, True])
def test_the_small_model_never_claims_as_much(
    movement: Movement, position: Position, view: View, card: bool
) -> None:
    value = end_of(movement, position, 1.0)[1]
    full, lite = (
        error_of(movement, position, view, value, 10.0, card=card, model=model)
        for model in PoseModel
    )
    assert lite > full


def test_the_full_model_measures_every_way_and_the_small_one_some() -> None:
    assert all(measures(PoseModel.FULL, *way) for way in WAYS)
    assert 0 < sum(measures(PoseModel.LITE, *way) for way in WAYS) < len(WAYS)
    assert not any(measures(None, *way) for way in WAYS)


def test_the_small_model_measures_what_the_documentation_has_figures_for_and_as_widely() -> None:
    document = Path(__file__).parents[2] / "docs" / "measurement.md"
    section = document.read_text("utf-8").split("### The small pose model")[1].split("\n### ")[0]
    row = re.compile(
        r"^\| ([\w-]+), (\w+), (\w+) \|.*\| (?:([\d.]+) \(([\d.]+)\)|not allowed) \|$", re.M
    )
    told = {
        (Movement(m), Position(p), View(v)): (lite, full)
        for m, p, v, lite, full in row.findall(section)
    }
    assert len(told) == 10
    for way in WAYS:
        lite, full = told.get(way, ("", ""))
        assert measures(PoseModel.LITE, *way) is bool(lite), way
        if lite:
            widths = [error_of(*way, 30.0, 0.0, model=m) for m in (PoseModel.LITE, PoseModel.FULL)]
            assert widths == [float(lite), float(full)]
