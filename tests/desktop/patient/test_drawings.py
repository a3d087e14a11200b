"""The small drawings of a value, read back from their pixels; a reach shown to the patient."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
from PyQt6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from coach.desktop.patient.back_scale import BackScale
from coach.desktop.patient.exercise_page import ExercisePage
from coach.desktop.patient.range_dial import RangeDial
from coach.desktop.patient.wording import exercise_name, measured_name, value_parts
from coach.desktop.shared.palettes import LIGHT
from coach.domain.movement import VIEWS, Movement, Position, Side, Unit
from coach.domain.plan import PlannedExercise
from coach.domain.reading import Doubt, Reading

from .scripted import standing
from .test_pages import HOLD, near, pixels

SIZE_PX = 200
REACH = PlannedExercise(
    movement=Movement.HAND_BEHIND_BACK, side=Side.LEFT, hold_s=10, repetitions=3
)


@pytest.mark.parametrize(
    ("movement", "angle_deg", "where_deg"),
    [
        # Of a right arm, in a mirror; counter-clockwise from the right.
        (Movement.ABDUCTION, 90.0, 0.0),
        (Movement.EXTERNAL_ROTATION_0, 0.0, 90.0),
        (Movement.EXTERNAL_ROTATION_0, 60.0, 30.0),
        (Movement.EXTERNAL_ROTATION_90, 0.0, 180.0),
        (Movement.EXTERNAL_ROTATION_90, 90.0, 90.0),
        (Movement.EXTERNAL_ROTATION_90, -45.0, 225.0),
        (Movement.HORIZONTAL_ADDUCTION, 0.0, 0.0),
        (Movement.HORIZONTAL_ADDUCTION, 90.0, 90.0),
        (Movement.HORIZONTAL_ADDUCTION, 130.0, 130.0),
    ],
)
@pytest.mark.parametrize("side", list(Side))
def test_the_needle_points_where_the_arm_does(
    movement: Movement,
    angle_deg: float,
    where_deg: float,
    side: Side,
    app: QApplication,
    qtbot: QtBot,
) -> None:
    dial = RangeDial(movement, side, angle_deg, 3.0)
    qtbot.addWidget(dial)
    dial.resize(SIZE_PX, SIZE_PX)
    ink = near(pixels(dial), LIGHT.accent)
    outward = 1 if side is Side.RIGHT else -1
    along = math.radians(where_deg)
    reach = 0.7 * SIZE_PX / 2
    x = SIZE_PX / 2 + outward * reach * math.cos(along)
    y = SIZE_PX / 2 - reach * math.sin(along)
    assert ink[round(y), round(x)]


def test_the_band_on_the_back_lies_between_its_levels(app: QApplication, qtbot: QtBot) -> None:
    def rows_of(ratio: float) -> np.ndarray:
        scale = BackScale(ratio, 0.0)
        qtbot.addWidget(scale)
        scale.resize(SIZE_PX, SIZE_PX)
        return np.nonzero(near(pixels(scale), LIGHT.series[1]).any(axis=1))[0]

    high, low = rows_of(0.63), rows_of(0.85)
    # Thumb at T7 (0.39): T6 to T8; and at T11 (0.60): T10 to T12; of 1.2 over 188 pixels from 8 on.
    assert [high.min(), high.max()] == pytest.approx(
        [8 + 188 * 0.331 / 1.2, 8 + 188 * 0.442 / 1.2], abs=2
    )
    assert [low.min(), low.max()] == pytest.approx(
        [8 + 188 * 0.541 / 1.2, 8 + 188 * 0.654 / 1.2], abs=2
    )
    empty = BackScale(None, 0.0)
    qtbot.addWidget(empty)
    empty.resize(SIZE_PX, SIZE_PX)
    assert not near(pixels(empty), LIGHT.series[1]).any()


def test_a_reach_is_shown_as_a_band_and_never_as_a_number(app: QApplication, qtbot: QtBot) -> None:
    page = ExercisePage()
    qtbot.addWidget(page)
    page.resize(1280, 800)
    moment = replace(
        HOLD,
        planned=REACH,
        pose=standing(20, Side.LEFT),
        reading=Reading(10.0, 0.85, 0.05),
        repetitions=(),
    )
    page.show_moment(moment)
    name = page.angle.accessibleName()
    assert "T10\N{EN DASH}L1" in name
    assert "0.85" not in name
    assert "±" not in name
    page.show_moment(replace(moment, reading=Reading(10.0, None, None, Doubt.TURN_AROUND)))
    assert "T10" not in page.angle.accessibleName()


@pytest.mark.parametrize("side", list(Side))
def test_every_exercise_has_a_name_of_its_own(side: Side) -> None:
    names = {
        exercise_name(
            PlannedExercise(
                movement=movement, side=side, position=position, hold_s=10, repetitions=1
            )
        )
        for movement, position in VIEWS
    }
    assert len(names) == len(VIEWS)
    assert all(side.value in name.lower() for name in names)
    assert all(measured_name(movement) for movement in Movement)
    lying = {p for p in Position if p.lying}
    # Nothing is measured lying on one side.
    assert {p for _, p in VIEWS if p.lying} == lying - {Position.SIDE_LYING}


def test_only_angles_carry_their_error_beside_them() -> None:
    assert value_parts(43.4, 8.2, Unit.DEGREES) == ("43°", "± 9°")
    assert value_parts(0.63, 0.0, Unit.RATIO) == ("T6\N{EN DASH}T8", "")
