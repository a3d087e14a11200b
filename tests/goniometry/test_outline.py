"""What the picture shows of a body facing the camera, against sticks seen by a pinhole."""

from __future__ import annotations

import pytest

from coach.domain.movement import Movement, Side, View
from coach.goniometry.outline import Outline
from coach.goniometry.sight import Sight
from tests.goniometry.stick_body import Seen, Way, pose

STRAIGHT_AHEAD = Way(out_deg=0.0)


def outline(side: Side, way: Way, value: float = 0.0) -> Outline:
    seen = Seen(View.FRONT, turned_deg=4.0)
    posed = pose(Movement.EXTERNAL_ROTATION_0, value, side, seen, way=way)
    return Outline.of(Sight.of(posed, side))


@pytest.mark.parametrize("side", Side)
@pytest.mark.parametrize("turn_deg", [15.0, -15.0])
def test_a_turn_is_read_the_way_it_goes(side: Side, turn_deg: float) -> None:
    """Sticks show all of their depth: the metric points alone tell the turn, and what narrows comes
    on top, 3.4 % by the cosine."""
    rest = outline(side, STRAIGHT_AHEAD)
    turned = outline(side, Way(out_deg=0.0, turn_left_deg=-side.sign * turn_deg))
    found = turned.turn_deg(rest)
    assert found * turn_deg > 0
    assert abs(found) == pytest.approx(15.0, abs=6.0)


@pytest.mark.parametrize("side", Side)
def test_an_upper_arm_out_to_the_side_drifts_by_its_angle(side: Side) -> None:
    rest = outline(side, STRAIGHT_AHEAD)
    assert outline(side, Way(out_deg=15.0)).drift_deg(rest) == pytest.approx(15.0, abs=2.5)
    assert outline(side, Way(out_deg=-5.0)).drift_deg(rest) == pytest.approx(-5.0, abs=2.5)


@pytest.mark.parametrize("side", Side)
def test_a_shoulder_rises_along_the_trunk_and_not_with_its_lean(side: Side) -> None:
    """Read a third too high, since a rendered shoulder's point lags behind; a body that leans as a
    whole within what people sway shows no rise, and one that leans far tells nothing."""
    rest = outline(side, STRAIGHT_AHEAD)
    found = outline(side, Way(out_deg=0.0, hike=0.09)).hike_ratio(rest)
    assert found == pytest.approx(0.12, abs=0.01)
    for lean_deg in (-1.0, 1.0):
        swaying = outline(side, Way(out_deg=0.0, lean_right_deg=lean_deg)).hike_ratio(rest)
        assert swaying == pytest.approx(0.0, abs=0.01)
    assert outline(side, Way(out_deg=0.0, lean_right_deg=9.0)).hike_ratio(rest) is None
