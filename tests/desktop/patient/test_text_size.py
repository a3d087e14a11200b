"""At 100, 150 and 200 per cent nothing on a page of 1280 by 800 is cut off or out of reach."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from itertools import combinations, pairwise

import pytest
from PyQt6.QtCore import QPoint, QRect, Qt
from PyQt6.QtTest import QTest
from PyQt6.QtWidgets import QApplication, QLabel, QScrollArea, QWidget
from pytestqt.qtbot import QtBot

from coach import texts
from coach.desktop.patient.calendar import Calendar
from coach.desktop.patient.coaching import Outcome
from coach.desktop.patient.controls import KeyButton
from coach.desktop.patient.lettering import grown
from coach.desktop.patient.reading_area import ReadingArea
from coach.desktop.patient.series_view import SeriesView
from coach.desktop.patient.text_block import TextBlock
from coach.desktop.patient.window import PatientWindow
from coach.desktop.shared.application import create_application
from coach.desktop.shared.looks import colours, looks
from coach.domain.form import FormFault
from coach.domain.moment import Asked, Stage
from coach.domain.progress import Phase
from coach.domain.reading import Doubt, Reading
from coach.domain.settings import Settings
from coach.review.diary import diary
from tests.review.six_patients import LAST_DAY, six_patients

from .scripted import ScriptedCoaching, ScriptedSource
from .test_pages import feed, near, pixels
from .test_programme_pages import HARD, ITEMS, MEASURED, PLAN, TIMED, moment

SIZE = (1280, 800)
DESK_PX = 16
"""Text on a desk. Much of a page is larger already and grows less: it is read from three metres."""
PAGES = {
    "cautions": None,
    "welcome": moment(TIMED, Stage.WELCOME),
    "pain": moment(TIMED, Stage.PAIN_BEFORE, asked=Asked(chosen=3, sure_s=4.0)),
    "prepare new": moment(TIMED, Stage.PREPARE, doubt=Doubt.TOO_CLOSE),
    "prepare": moment(MEASURED, Stage.PREPARE),
    "form": moment(
        MEASURED,
        Stage.EXERCISE,
        phase=Phase.HOLDING,
        held_s=8.0,
        remaining_s=12.0,
        faults=(FormFault.LEAN,),
    ),
    "timed": moment(TIMED, Stage.EXERCISE, phase=Phase.HOLDING, held_s=9.0, remaining_s=51.0),
    "paused": moment(MEASURED, Stage.PAUSED),
    "offer": moment(HARD, Stage.OFFER),
    "weeks": moment(TIMED, Stage.WELCOME),
    "understanding": moment(TIMED, Stage.WELCOME),
    "summary": moment(TIMED, Stage.WELCOME),
}
KEYS = {"weeks": Qt.Key.Key_W, "understanding": Qt.Key.Key_U}


@pytest.fixture
def app(qapp: QApplication) -> Iterator[QApplication]:
    yield qapp
    create_application(["test"])


SIZES = [("en", 100), ("en", 200), ("de", 150), ("de", 200)]


@pytest.fixture(params=SIZES, ids=lambda size: f"{size[0]}-{size[1]}")
def window(request: pytest.FixtureRequest, app: QApplication, qtbot: QtBot) -> PatientWindow:
    language, percent = request.param
    settings = Settings(text_percent=percent)
    create_application(["test"], settings=settings, language=language)
    documents = next(iter(six_patients(1).values()))
    made = PatientWindow(
        PLAN,
        ScriptedSource,
        lambda source: ScriptedCoaching(),
        agenda=ITEMS,
        diary=diary(documents, documents[-1].plan, LAST_DAY),
    )
    made._started = True  # the pages are fed by hand
    qtbot.addWidget(made)
    made.resize(*SIZE)
    made.show()
    qtbot.waitExposed(made)
    return made


def go(window: PatientWindow, page: str) -> None:
    told = PAGES[page]
    if told is None:
        return
    window.pages._end_cautions()
    feed(window, told)
    if page in KEYS:
        QTest.keyClick(window, KEYS[page])
    if page == "summary":
        window._finish(Outcome(next(iter(six_patients(1).values()))[-1], "/home/rosa/Sessions"))


def place(part: QWidget, window: QWidget) -> QRect:
    return QRect(part.mapTo(window, QPoint(0, 0)), part.size())


def scrolls(part: QWidget) -> bool:
    above = part.parentWidget()
    while above is not None:
        if isinstance(above, QScrollArea):
            return True
        above = above.parentWidget()
    return False


def size_of(part: QWidget) -> float:
    """Height of a part's type, in pixels."""
    if isinstance(part, KeyButton):
        return part.lines()[1]
    if isinstance(part, TextBlock):
        return part.type_px()
    return float(part.font().pixelSize())


def parts(window: PatientWindow) -> list[QWidget]:
    page = window.pages.currentWidget()
    assert page is not None
    kinds = (QLabel, KeyButton, TextBlock)
    found = [part for part in page.findChildren(QWidget) if isinstance(part, kinds)]
    return [part for part in found if part.isVisible() and (words(part))]


def words(part: QWidget) -> str:
    assert isinstance(part, QLabel | KeyButton | TextBlock)
    return part.text if isinstance(part, TextBlock) else part.text()


def lacks(part: QWidget) -> str:
    """Say what a part's text has too little room for, nothing where it has enough."""
    width, height = part.width(), part.height()
    if isinstance(part, QLabel):
        needed = part.heightForWidth(width) if part.wordWrap() else part.sizeHint().height()
        if needed > height + 1:
            return f"{needed} px high"
        if not part.wordWrap() and part.sizeHint().width() > width + 1:
            return f"{part.sizeHint().width()} px wide"
    if isinstance(part, TextBlock):
        room = part._room()
        needed = part._height(part.type_px(), room.width())
        return f"{needed} px" if needed > room.height() + 2 else ""
    if isinstance(part, KeyButton):
        lines, size_px = part.lines()
        label, key = part._widths(size_px, *lines)
        if 1.2 * len(lines) * size_px > height:
            return f"{1.2 * len(lines) * size_px} px high"
        return "" if label + key + 0.5 * size_px <= width else f"{label + key} px wide"
    return ""


@pytest.mark.parametrize("page", PAGES)
def test_all_of_a_page_can_be_read_as_large_as_was_asked(window: PatientWindow, page: str) -> None:
    go(window, page)
    for _ in range(3):
        QApplication.processEvents()
    assert (window.width(), window.height()) == SIZE, "it does not fit the screen"
    found = parts(window)
    assert found
    short = {words(part)[:60]: lacks(part) for part in found if lacks(part)}
    assert short == {}
    inside = window.rect()
    out = [words(p)[:60] for p in found if not scrolls(p) and not inside.contains(place(p, window))]
    assert out == []
    wide = [
        words(p)[:60]
        for p in found
        if scrolls(p) and not 0 <= place(p, window).left() <= place(p, window).right() < SIZE[0]
    ]
    assert wide == [], "nothing scrolls sideways"
    rooms = [(p, place(p, window).adjusted(2, 2, -2, -2)) for p in found]
    over = [
        (words(a)[:40], words(b)[:40])
        for (a, one), (b, other) in combinations(rooms, 2)
        if one.intersects(other) and scrolls(a) == scrolls(b)
    ]
    assert over == []

    wanted = looks().text
    now = {words(part): size_of(part) for part in found}
    create_application(["test"], language=texts.language())
    for _ in range(3):
        QApplication.processEvents()
    for part in parts(window):
        least = wanted * min(size_of(part), DESK_PX)
        assert now.get(words(part), least) >= 0.95 * least, words(part)[:60]


def test_a_leaf_that_fits_does_not_scroll_because_another_is_longer(window: PatientWindow) -> None:
    go(window, "weeks")
    page = window.pages.weeks
    bar = page.area.verticalScrollBar()
    assert bar is not None
    fits = 0
    for _leaf in range(page._count):
        for _ in range(3):
            QApplication.processEvents()
        bottom = max(
            place(part, page.area.viewport()).bottom()
            for part in page.area.findChildren(QWidget)
            if part.isVisible() and isinstance(part, QLabel | Calendar | SeriesView)
        )
        if bar.value() + bottom <= page.area.viewport().height():
            fits += 1
            assert bar.maximum() == 0, page.title.text()
        page.turn(1)
    assert fits, "the last time is a few lines at any size"


@pytest.mark.parametrize("window", [SIZES[-1]], indirect=True)
@pytest.mark.parametrize("name", ["weeks", "understanding"])
def test_a_turned_leaf_begins_at_its_top(window: PatientWindow, name: str) -> None:
    go(window, name)
    page = getattr(window.pages, name)
    if name == "weeks":  # two arms, so that a leaf as long as it follows another
        left = page._diary.series[0]
        page.show_diary(replace(page._diary, series=(left, left)))
    long = 0
    for _ in range(30):
        for _again in range(3):
            QApplication.processEvents()
        bar = page.area.verticalScrollBar()
        before = page.leaf
        bar.setValue(bar.maximum())
        if bar.maximum() == 0 or before == page._count - 1:
            page.turn(1)
            continue
        long += 1
        QTest.keyClick(page, Qt.Key.Key_Down)
        for _again in range(3):
            QApplication.processEvents()
        assert (page.leaf, bar.value()) == (before + 1, 0)
    assert long


@pytest.mark.parametrize("window", [SIZES[-1]], indirect=True)
@pytest.mark.parametrize("page", PAGES)
def test_what_scrolls_is_reached_by_key(window: PatientWindow, page: str) -> None:
    go(window, page)
    QApplication.processEvents()
    areas = [area for area in window.findChildren(ReadingArea) if area.isVisible()]
    for _ in range(60):
        QTest.keyClick(window, Qt.Key.Key_PageDown)
    if page == "understanding":
        assert not window.pages.understanding.next_button.isEnabled()
    assert all(area.at_end for area in areas)


def test_no_caution_is_taken_as_read_before_it_was_in_sight(window: PatientWindow) -> None:
    cautions = window.pages.cautions
    bar = cautions.area.verticalScrollBar()
    assert bar is not None
    seen = [0]
    bar.valueChanged.connect(seen.append)
    for _ in range(40):
        if window.pages.cautions_read:
            break
        assert not cautions.area.at_end or seen[-1] == bar.maximum()
        QTest.keyClick(window, Qt.Key.Key_Space)
    assert window.pages.cautions_read
    assert seen[-1] == bar.maximum()
    steps = [later - earlier for earlier, later in pairwise(seen)]
    assert all(step < bar.pageStep() for step in steps), "nothing is jumped over"


def test_ctrl_and_plus_enlarge_the_open_window(app: QApplication, qtbot: QtBot) -> None:
    create_application(["test"])
    made = PatientWindow(PLAN, ScriptedSource, lambda source: ScriptedCoaching())
    made._started = True
    qtbot.addWidget(made)
    made.resize(*SIZE)
    made.show()
    QApplication.processEvents()
    before = {words(part): size_of(part) for part in parts(made)}
    QTest.keyClick(made, Qt.Key.Key_Plus, Qt.KeyboardModifier.ControlModifier)
    assert looks().text == 1.25
    QApplication.processEvents()
    larger = {words(part): size_of(part) for part in parts(made)}
    assert larger.keys() == before.keys()
    assert all(larger[text] > 1.1 * before[text] for text in before)
    QTest.keyClick(made, Qt.Key.Key_Minus, Qt.KeyboardModifier.ControlModifier)
    QApplication.processEvents()
    assert {words(part): size_of(part) for part in parts(made)} == before


def test_what_is_read_from_afar_grows_no_smaller_where_its_heading_grows(
    window: PatientWindow,
) -> None:
    def ink(part: QWidget, colour: str) -> int:
        return int(near(pixels(part), colour, 40).any(axis=1).sum())

    def heights() -> list[int]:
        feed(window, told)
        for _ in range(3):
            QApplication.processEvents()
        shown = window.pages.exercise
        return [ink(shown.angle, colours().ink), ink(shown.clock, colours().hold)]

    window.pages._end_cautions()
    value = Reading(10.0, 118.0, 5.6)
    held = PAGES["form"]
    assert held is not None
    told = replace(held, reading=value, faults=())
    enlarged = heights()
    create_application(["test"], language=texts.language())
    assert all(now >= 0.75 * usual for now, usual in zip(enlarged, heights(), strict=True))


def test_the_chart_keeps_a_height_that_can_be_read(window: PatientWindow) -> None:
    go(window, "weeks")
    while window.pages.weeks.next_button.isEnabled():
        window.pages.weeks.next_button.click()
    QApplication.processEvents()
    chart = window.pages.weeks.chart
    assert chart.isVisible()
    assert chart.height() >= 14 * grown(0.027) * window.height()
