"""WCAG 2.2 AA on every page: names (4.1.2), targets (2.5.8), focus that is seen (2.4.7)."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date

import numpy as np
import pytest
from PyQt6.QtCore import Qt
from PyQt6.QtWidgets import QAbstractButton, QApplication, QWidget
from pytestqt.qtbot import QtBot

from coach.desktop.patient.score_button import ScoreButton
from coach.desktop.patient.window import PatientWindow
from coach.review.diary import diary

from .scripted import PLAN, ScriptedCoaching, ScriptedSource
from .test_pages import every_stage, outcome_of, pixels

TARGET_PX = 24
"""Criterion 2.5.8."""
SEEN_PX = 2
"""Thickness of a ring of focus, as criterion 2.4.13 (AAA) asks."""

Go = Callable[[PatientWindow], None]


def reading(button: str) -> Go:
    return lambda window: getattr(window.pages.welcome, button).click()


def trouble(window: PatientWindow) -> None:
    window._fail("No camera answers.")


PAGES: dict[str, Go] = {
    "weeks": reading("weeks_button"),
    "understanding": reading("understanding_button"),
    "cautions": reading("cautions_button"),
    "trouble": trouble,
    **{f"stage {n}": go for n, go in enumerate(every_stage()) if go is not outcome_of},
    "summary": outcome_of,
}


@pytest.fixture
def window(app: QApplication, qtbot: QtBot) -> PatientWindow:
    made = PatientWindow(
        PLAN,
        ScriptedSource,
        lambda source: ScriptedCoaching(),
        diary=diary([], PLAN, date(2026, 1, 6)),
        cautions_read=True,
    )
    made._started = True  # the pages are fed by hand
    qtbot.addWidget(made)
    made.show()
    made.activateWindow()
    qtbot.waitExposed(made)
    return made


def reached(window: PatientWindow) -> Iterator[QWidget]:
    """Everything that Tab comes to, in its order."""
    seen: list[QWidget] = []
    while True:
        window.focusNextChild()
        focused = QApplication.focusWidget()
        if focused is None or focused in seen:
            return
        seen.append(focused)
        yield focused


def luminance(shot: np.ndarray) -> np.ndarray:
    """Relative luminance of every pixel, as defined in WCAG 2.2."""
    part = shot / 255
    linear = np.where(part <= 0.04045, part / 12.92, ((part + 0.055) / 1.055) ** 2.4)
    return linear @ np.array([0.2126, 0.7152, 0.0722])


def changed_px(focused: QWidget) -> int:
    """How many pixels the focus changes by a contrast of 3 or more."""
    with_focus = luminance(pixels(focused)) + 0.05
    focused.clearFocus()
    without = luminance(pixels(focused)) + 0.05
    focused.setFocus(Qt.FocusReason.TabFocusReason)
    ratio = np.maximum(with_focus, without) / np.minimum(with_focus, without)
    return int((ratio >= 3.0).sum())


@pytest.mark.parametrize("page", PAGES)
def test_whatever_tab_reaches_has_name_size_and_a_focus_that_is_seen(
    window: PatientWindow, page: str
) -> None:
    PAGES[page](window)
    QApplication.processEvents()
    found = list(reached(window))
    buttons = [b for b in window.findChildren(QAbstractButton) if b.isVisible() and b.isEnabled()]
    assert buttons
    # Tab comes to a group of scores once; arrows go on in it.
    assert {each for each in buttons if not isinstance(each, ScoreButton)} <= {*found}
    for part in found:
        part.setFocus(Qt.FocusReason.TabFocusReason)
        assert part.accessibleName(), part
        if isinstance(part, QAbstractButton):
            assert min(part.width(), part.height()) >= TARGET_PX
            # A ring is twice its thickness at every edge; one edge may lie on a dark neighbour.
            assert changed_px(part) >= SEEN_PX * (part.width() + part.height()), part.text()
