"""The drawn figure and the laptop's place, read back from their pixels."""

from __future__ import annotations

import numpy as np
import pytest
from PyQt6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from coach.catalogue import catalogue
from coach.desktop.patient.demonstration import FRAME_MS, Demonstration
from coach.desktop.patient.laptop_place import LaptopPlace, laptop_at
from coach.desktop.shared.palettes import LIGHT
from coach.domain.movement import Position, Side, View
from coach.figure import stage_of

from .test_pages import near, pixels

EXERCISE = catalogue().get("wall-walk-sideways")
SIZE_PX = 400


class Clock:
    def __init__(self) -> None:
        self.now_s = 100.0

    def __call__(self) -> float:
        return self.now_s


def shown(qtbot: QtBot, side: Side = Side.RIGHT, **options: object) -> Demonstration:
    figure = Demonstration(EXERCISE, side, **options)  # type: ignore[arg-type]
    qtbot.addWidget(figure)
    figure.resize(SIZE_PX, SIZE_PX)
    figure.show()
    return figure


def arm_of(figure: Demonstration) -> np.ndarray:
    """Row and column of the middle of the exercised arm's colour."""
    return np.argwhere(near(pixels(figure), LIGHT.hold)).mean(axis=0)


def test_it_plays_while_it_is_seen_and_may_move(app: QApplication, qtbot: QtBot) -> None:
    figure = shown(qtbot)
    assert figure.playing
    assert FRAME_MS >= 50
    figure.hide()
    assert not figure.playing
    figure.show()
    figure.set_animated(False)
    assert not figure.playing


def test_the_arm_rises_and_is_back_after_one_loop(app: QApplication, qtbot: QtBot) -> None:
    clock = Clock()
    figure = shown(qtbot, clock=clock)
    stage = stage_of(EXERCISE, Side.RIGHT)
    first = pixels(figure)
    low = arm_of(figure)
    clock.now_s += stage.key_s
    assert arm_of(figure)[0] < low[0] - 0.1 * SIZE_PX
    clock.now_s += stage.period_s - stage.key_s
    assert np.array_equal(pixels(figure), first)


def test_a_still_figure_shows_the_end_of_the_movement(app: QApplication, qtbot: QtBot) -> None:
    clock = Clock()
    still = shown(qtbot, clock=clock, animated=False)
    before = pixels(still)
    clock.now_s += 2.0
    assert np.array_equal(pixels(still), before)
    assert near(before, LIGHT.accent).any(), "no arrow"


def test_who_faces_the_patient_moves_as_in_a_mirror(app: QApplication, qtbot: QtBot) -> None:
    # Someone who faces us has the right arm at our left; in a mirror it is at our right.
    plain = arm_of(shown(qtbot, animated=False))
    mirror = arm_of(shown(qtbot, animated=False, mirrored=True))
    assert plain[1] < SIZE_PX / 2 < mirror[1]
    left = arm_of(shown(qtbot, side=Side.LEFT, animated=False))
    assert left[1] > SIZE_PX / 2


def test_it_is_named_for_those_who_do_not_see_it(app: QApplication, qtbot: QtBot) -> None:
    figure = shown(qtbot, side=Side.LEFT)
    assert EXERCISE.telling["en"].title in figure.accessibleName()
    assert "left" in figure.accessibleName()
    figure.show_exercise(catalogue().get("pendulum"), Side.RIGHT)
    assert catalogue().get("pendulum").telling["en"].title in figure.accessibleName()
    assert "right" in figure.accessibleName()


@pytest.mark.parametrize(
    ("view", "position", "side", "where"),
    [
        (View.FRONT, Position.STANDING, Side.LEFT, (0.0, 1.0)),
        (View.BACK, Position.SITTING, Side.LEFT, (0.0, -1.0)),
        (View.SIDE, Position.STANDING, Side.RIGHT, (1.0, 0.0)),
        (View.SIDE, Position.SITTING, Side.LEFT, (-1.0, 0.0)),
        # Seen from the ceiling, who lies on the back has the right arm at our left.
        (View.SIDE, Position.SUPINE, Side.RIGHT, (-1.0, 0.0)),
        (View.SIDE, Position.PRONE, Side.RIGHT, (1.0, 0.0)),
        (View.FOOT, Position.SUPINE, Side.LEFT, (0.0, -1.0)),
    ],
)
def test_the_laptop_is_drawn_where_the_view_asks_for_it(
    view: View,
    position: Position,
    side: Side,
    where: tuple[float, float],
    app: QApplication,
    qtbot: QtBot,
) -> None:
    assert laptop_at(view, position, side) == pytest.approx(where)
    place = LaptopPlace(view, position, side, "Put it here")
    qtbot.addWidget(place)
    place.resize(SIZE_PX, SIZE_PX)
    shot = pixels(place)
    screen = np.argwhere(near(shot, LIGHT.stage, 6))
    arm = np.argwhere(near(shot, LIGHT.hold)).mean(axis=0)
    row, column = np.median(screen, axis=0) - arm
    away = np.array([column, -row])
    assert away @ where / np.linalg.norm(away) > 0.8
    assert place.accessibleName() == "Put it here"
    assert "m" in place.accessibleDescription()
