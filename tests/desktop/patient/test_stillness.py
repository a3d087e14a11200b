"""Where somebody wants it still nothing moves by itself, and what fills does so in steps."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

import numpy as np
import pytest
from PyQt6.QtCore import Qt, QTimer
from PyQt6.QtTest import QTest
from PyQt6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from coach.desktop.patient.demonstration import Demonstration
from coach.desktop.patient.window import PatientWindow
from coach.desktop.shared.application import AS_ALWAYS, create_application
from coach.desktop.shared.dresser import Dresser, dresser
from coach.desktop.shared.looks import looks
from coach.desktop.shared.palettes import LIGHT
from coach.domain.moment import Stage
from coach.domain.settings import Settings

from .scripted import ScriptedCoaching, ScriptedSource
from .test_pages import HOLD, feed, near, pixels
from .test_programme_pages import ITEMS, PLAN, TIMED, moment

OFTEN_MS = 1000
"""A timer that goes more seldom moves nothing that an eye would follow."""


@pytest.fixture(params=[False, True], ids=["moving", "still"])
def window(
    request: pytest.FixtureRequest, qapp: QApplication, qtbot: QtBot
) -> Iterator[PatientWindow]:
    create_application(["test"], settings=Settings(text_percent=100, still=request.param))
    made = PatientWindow(
        PLAN, ScriptedSource, lambda source: ScriptedCoaching(), agenda=ITEMS, cautions_read=True
    )
    made._started = True  # the pages are fed by hand
    qtbot.addWidget(made)
    made.resize(1280, 800)
    made.show()
    qtbot.waitExposed(made)
    yield made
    create_application(["test"])


def moving(window: PatientWindow) -> list[QTimer]:
    timers = window.findChildren(QTimer)
    return [t for t in timers if t.isActive() and not t.isSingleShot() and t.interval() < OFTEN_MS]


@pytest.mark.parametrize("stage", [Stage.WELCOME, Stage.PREPARE, Stage.EXERCISE, Stage.OFFER])
def test_no_timer_animates_where_it_is_to_be_still(window: PatientWindow, stage: Stage) -> None:
    feed(window, moment(TIMED, stage))
    QApplication.processEvents()
    shown = [d for d in window.findChildren(Demonstration) if d.isVisible()]
    if looks().still:
        assert moving(window) == []
    elif shown:
        assert moving(window)


def test_a_hold_fills_in_steps(window: PatientWindow) -> None:
    page = window.pages.exercise
    filled: list[tuple[int, int]] = []
    planned = replace_hold(20.0)
    for tenth in range(200):
        at = replace(
            HOLD,
            planned=planned,
            held_s=tenth / 10,
            remaining_s=20.0 - tenth / 10,
            repetitions=(),
            completed=0,
        )
        if tenth % 4 == 0:
            feed(window, at)
            band = near(pixels(page.picture), LIGHT.hold)
            boxes = near(pixels(page.count), LIGHT.accent)
            filled.append((int(band.sum() / 200), int(boxes.sum() / 50)))
    bands, boxes = (len(set(each)) for each in zip(*filled, strict=True))
    if looks().still:
        assert bands <= 5
        assert boxes <= 5
    else:
        assert bands > 20
        assert boxes > 20


def replace_hold(hold_s: float):  # type: ignore[no-untyped-def]
    import msgspec

    return msgspec.structs.replace(HOLD.planned, hold_s=hold_s)


def test_it_is_chosen_while_the_window_is_open(window: PatientWindow) -> None:
    feed(window, moment(TIMED, Stage.PREPARE))
    was = looks().still
    QTest.keyClick(window, Qt.Key.Key_M, Qt.KeyboardModifier.ControlModifier)
    assert looks().still is not was
    assert bool(moving(window)) is was


@pytest.mark.parametrize(("platform", "effects", "still"), [
    ("win32", True, False),
    ("win32", False, True),
    ("linux", False, False),
])  # fmt: skip
def test_the_system_is_followed_where_qt_tells_it(
    qapp: QApplication,
    monkeypatch: pytest.MonkeyPatch,
    platform: str,
    effects: bool,
    still: bool,
) -> None:
    monkeypatch.setattr("sys.platform", platform)
    monkeypatch.setattr(QApplication, "isEffectEnabled", staticmethod(lambda effect: effects))
    Dresser(qapp, Settings(text_percent=100))
    assert looks().still is still
    create_application(["test"], settings=AS_ALWAYS)
    assert dresser() is not None


def test_a_drawing_that_is_still_shows_where_the_movement_ends(window: PatientWindow) -> None:
    feed(window, moment(TIMED, Stage.PREPARE))
    drawing = next(d for d in window.findChildren(Demonstration) if d.isVisible())
    first = pixels(drawing)
    drawing._begun_s -= 1.3
    drawing.update()
    assert np.array_equal(first, pixels(drawing)) is looks().still
