"""No meaning by colour alone (WCAG 2.2, criterion 1.4.1): seen in grey, or read, all differs."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from itertools import combinations

import numpy as np
import pytest
from PyQt6.QtCore import QRectF, Qt
from PyQt6.QtGui import QPainter, QPixmap
from PyQt6.QtWidgets import QApplication, QLabel

from coach.desktop.patient.calendar import _paint_mark
from coach.desktop.patient.calendar import name as mark_name
from coach.desktop.shared.application import create_application
from coach.desktop.shared.canvas import Canvas
from coach.desktop.shared.chart_heading import _key
from coach.desktop.shared.chart_marks import LevelLine
from coach.desktop.shared.language import choose_language
from coach.review.cohort_reasons import Concern, concern_words
from coach.review.diary_entries import Mark
from coach.review.difference import Verdict
from coach.review.verdict_wording import verdict_words
from tests.desktop.shared import access

SIDE_PX = 48
SEEN_RATIO = 1.2
"""A tint of a whole area is seen from here on; lines and dots are far beyond it."""
SEEN_PX = 24
KEYS = ("dot", "small", "hollow", "weeks", "band", "level", "undecided", "week", "slope")
STYLES = (Qt.PenStyle.DashLine, Qt.PenStyle.DotLine, Qt.PenStyle.DashDotLine)


@pytest.fixture
def app(qapp: QApplication) -> QApplication:
    return create_application(["test"])


@pytest.fixture(params=["en", "de"])
def language(app: QApplication, request: pytest.FixtureRequest) -> Iterator[str]:
    choose_language(app, request.param)
    yield request.param
    choose_language(app, "en")


def drawn(draw: Callable[[QPainter, QRectF], None]) -> np.ndarray:
    picture = QPixmap(SIDE_PX, SIDE_PX)
    picture.fill(Qt.GlobalColor.white)
    painter = QPainter(picture)
    draw(painter, QRectF(4, 4, SIDE_PX - 8, SIDE_PX - 8))
    painter.end()
    shown = QLabel()
    shown.setPixmap(picture)
    shown.setFixedSize(picture.size())
    return access.pixels(shown)


def legend(kind: str, level: LevelLine | None = None) -> np.ndarray:
    return drawn(lambda painter, box: _key(Canvas(painter, SIDE_PX / 2), box, kind, level))


def all_differ(pictures: dict[str, np.ndarray]) -> None:
    for (one, this), (other, that) in combinations(pictures.items(), 2):
        assert access.differing_px(this, that, SEEN_RATIO) >= SEEN_PX, (one, other)


def test_red_and_green_of_one_lightness_do_not_differ() -> None:
    red, green = (
        np.full((9, 9, 3), (255, 0, 0), np.uint8),
        np.full((9, 9, 3), (0, 149, 0), np.uint8),
    )
    assert access.differing_px(red, green, SEEN_RATIO) == 0


def test_marks_of_a_chart_differ_in_grey(app: QApplication) -> None:
    levels = {style.name: legend("level", LevelLine(0.0, "", "#000000", style)) for style in STYLES}
    all_differ({kind: legend(kind) for kind in KEYS} | levels)


def test_days_of_the_calendar_differ_in_grey(app: QApplication) -> None:
    all_differ(
        {
            mark: drawn(lambda painter, box, mark=mark: _paint_mark(painter, box, mark))
            for mark in Mark
        }
    )


def test_verdicts_concerns_and_days_have_a_word_each(language: str) -> None:
    for said, kinds in (
        ([verdict_words(each) for each in Verdict], Verdict),
        ([concern_words(each) for each in Concern], Concern),
        ([mark_name(each) for each in Mark], Mark),
    ):
        assert all(said)
        assert len({*said}) == len(kinds)
