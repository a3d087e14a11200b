"""What there is to read: pages on the stiff shoulder and the patient's own weeks."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from datetime import date, timedelta

import msgspec
import numpy as np
import pytest
from PyQt6.QtCore import Qt
from PyQt6.QtGui import QFontMetricsF
from PyQt6.QtTest import QTest
from PyQt6.QtWidgets import QAbstractButton, QApplication, QLabel, QWidget
from pytestqt.qtbot import QtBot

from coach.catalogue.pages import Drawing, pages_for
from coach.desktop.patient.calendar import Calendar
from coach.desktop.patient.drawings.view import DrawingView, description
from coach.desktop.patient.understanding_page import UnderstandingPage
from coach.desktop.patient.weeks_page import WeeksPage, planned_name
from coach.desktop.shared.palettes import LIGHT
from coach.domain.exercise import StiffnessPhase
from coach.domain.movement import Movement, Side
from coach.domain.plan import Plan, PlannedExercise
from coach.domain.progress import EndedBecause, TimedHold
from coach.domain.session import SessionDocument
from coach.review.diary import diary
from coach.review.diary_entries import Day, Diary, Mark
from coach.review.history import started

from .test_pages import SIZES, near, pixels

TODAY = date(2026, 2, 11)
Make = Callable[..., SessionDocument]


def luminance(rgb: Sequence[float]) -> float:
    """Relative luminance, as defined in WCAG 2.2."""
    parts = [c / 255 for c in rgb]
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one: Sequence[float], other: Sequence[float]) -> float:
    """Contrast ratio, as defined in WCAG 2.2."""
    darker, lighter = sorted((luminance(one), luminance(other)))
    return (lighter + 0.05) / (darker + 0.05)


@pytest.fixture
def make_session() -> Make:
    from importlib.util import module_from_spec, spec_from_file_location
    from pathlib import Path

    where = Path(__file__).parents[2] / "review" / "conftest.py"
    spec = spec_from_file_location("invented_patients", where)
    assert spec is not None
    assert spec.loader is not None
    module = module_from_spec(spec)
    spec.loader.exec_module(module)
    return module.make_session


@pytest.fixture(params=SIZES, ids=["small", "large"])
def understanding(
    request: pytest.FixtureRequest, app: QApplication, qtbot: QtBot
) -> UnderstandingPage:
    page = UnderstandingPage()
    qtbot.addWidget(page)
    page.resize(*request.param)
    page.show_for(None)
    page.show()
    qtbot.waitExposed(page)
    return page


@pytest.fixture(params=SIZES, ids=["small", "large"])
def weeks(request: pytest.FixtureRequest, app: QApplication, qtbot: QtBot) -> WeeksPage:
    page = WeeksPage()
    qtbot.addWidget(page)
    page.resize(*request.param)
    page.show()
    qtbot.waitExposed(page)
    return page


def shown(page: QWidget) -> str:
    return " ".join(label.text() for label in page.findChildren(QLabel) if label.isVisible())


def cut_off(page: QWidget) -> list[str]:
    """Texts that do not fit into their label or whose label reaches out of the page."""
    QApplication.processEvents()
    bad = []
    for label in page.findChildren(QLabel):
        if not label.isVisible() or not label.text():
            continue
        needed = QFontMetricsF(label.font()).boundingRect(
            label.rect().toRectF(), Qt.TextFlag.TextWordWrap.value, label.text()
        )
        corner = label.mapTo(page, label.rect().bottomRight())
        if needed.height() > label.height() + 2 or not page.rect().contains(corner):
            bad.append(label.text())
    return bad


def many(make: Make, count: int) -> list[SessionDocument]:
    rng = np.random.default_rng(5)
    begin = TODAY - timedelta(days=count)
    first = started(make(0))
    offset = begin - first.date()
    return [
        make(i, (95.0 + rng.normal(0, 4),) * 3, at=first + offset + timedelta(days=i))
        for i in range(count)
    ]


def a_diary(make: Make, count: int) -> Diary:
    return diary(many(make, count), make(0).plan, TODAY)


def test_arrows_turn_the_pages_and_stop_at_the_ends(understanding: UnderstandingPage) -> None:
    titles = [page.words.title for page in pages_for(None)]
    assert understanding.title.text() == titles[0]
    assert not understanding.previous_button.isEnabled()
    QTest.keyClick(understanding, Qt.Key.Key_Left)
    assert understanding.title.text() == titles[0]
    for title in titles[1:]:
        QTest.keyClick(understanding, Qt.Key.Key_Right)
        assert understanding.title.text() == title
    QTest.keyClick(understanding, Qt.Key.Key_Right)
    assert understanding.title.text() == titles[-1]
    assert not understanding.next_button.isEnabled()
    QTest.keyClick(understanding, Qt.Key.Key_Left)
    assert understanding.title.text() == titles[-2]


@pytest.mark.parametrize("button", ["close_button", "aloud_button", "next_button"])
def test_keys_work_wherever_the_focus_is(understanding: UnderstandingPage, button: str) -> None:
    focused = getattr(understanding, button)
    focused.setFocus()
    QTest.keyClick(focused, Qt.Key.Key_Right)
    assert understanding.leaf == 1
    QTest.keyClick(focused, Qt.Key.Key_Left)
    assert understanding.leaf == 0


def test_the_buttons_do_what_their_keys_do(understanding: UnderstandingPage, qtbot: QtBot) -> None:
    heard: list[str] = []
    closed: list[bool] = []
    understanding.spoken.connect(heard.append)
    understanding.closed.connect(lambda: closed.append(True))
    understanding.next_button.click()
    understanding.aloud_button.click()
    QTest.keyClick(understanding, Qt.Key.Key_A)
    assert len(heard) == 2
    assert heard[0] == heard[1]
    page = pages_for(None)[1]
    assert all(paragraph in heard[0] for paragraph in page.words.paragraphs)
    understanding.previous_button.click()
    assert understanding.leaf == 0
    understanding.close_button.click()
    QTest.keyClick(understanding, Qt.Key.Key_Escape)
    assert closed == [True, True]


@pytest.mark.parametrize("phase", [None, *StiffnessPhase])
def test_every_word_of_a_page_is_seen(
    understanding: UnderstandingPage, phase: StiffnessPhase | None
) -> None:
    understanding.show_for(phase)
    for place, page in enumerate(pages_for(phase)):
        told = shown(understanding)
        assert all(paragraph in told for paragraph in page.words.paragraphs)
        assert all(source in told for source in page.sources)
        assert f"{place + 1} of {len(pages_for(phase))}" in told
        assert cut_off(understanding) == []
        understanding.turn(1)


def test_type_is_large_enough_to_be_read_from_afar(understanding: UnderstandingPage) -> None:
    # The exercise page's captions are what is read from three metres; pages to read are to be no
    # smaller than 1/30 of the window's height, but for where the facts are from.
    for label in understanding.findChildren(QLabel):
        if label.isVisible() and label.text() and not label.text().startswith("From:"):
            assert label.font().pixelSize() >= understanding.height() / 30


@pytest.mark.parametrize("drawing", list(Drawing))
def test_drawings_have_words_and_ink_inside_their_card(
    drawing: Drawing, app: QApplication, qtbot: QtBot
) -> None:
    view = DrawingView()
    qtbot.addWidget(view)
    view.resize(640, 560)
    view.show_drawing(drawing, StiffnessPhase.STIFF)
    assert view.accessibleName() == description(drawing)
    shot = pixels(view).astype(int)
    ground = np.array([int(LIGHT.card[i : i + 2], 16) for i in (1, 3, 5)])
    inked = np.abs(shot - ground).sum(axis=2) > 60
    rows, columns = np.nonzero(inked[6:-6, 6:-6])
    assert inked.mean() > 0.02
    assert rows.min() > 8
    assert rows.max() < 560 - 20
    assert columns.min() > 8
    assert columns.max() < 640 - 20


@pytest.mark.parametrize("phase", list(StiffnessPhase))
def test_the_therapist_s_phase_is_pointed_at(
    phase: StiffnessPhase, app: QApplication, qtbot: QtBot
) -> None:
    view = DrawingView()
    qtbot.addWidget(view)
    view.resize(640, 560)

    def top_ink() -> np.ndarray:
        return near(pixels(view), LIGHT.ink, 40)[:190]

    view.show_drawing(Drawing.COURSE, None)
    assert not top_ink().any()
    view.show_drawing(Drawing.COURSE, phase)
    across = np.nonzero(top_ink())[1].mean() / 640
    third = {StiffnessPhase.PAINFUL: 0, StiffnessPhase.STIFF: 1, StiffnessPhase.THAWING: 2}[phase]
    assert third / 3 < across < (third + 1) / 3


@pytest.mark.parametrize("mark", [mark for mark in Mark if mark is not Mark.UNKNOWN])
def test_marks_can_be_seen_and_told_apart_without_colour(
    mark: Mark, app: QApplication, qtbot: QtBot
) -> None:
    def shape(which: Mark) -> tuple[np.ndarray, np.ndarray]:
        monday = date(2026, 1, 5)
        days = tuple(Day(monday + timedelta(days=i), 1, 0, 0, None, None, which) for i in range(84))
        calendar = Calendar()
        qtbot.addWidget(calendar)
        calendar.setObjectName("page")
        calendar.setStyleSheet(f"background: {LIGHT.paper};")
        calendar.resize(640, 560)
        calendar.show_days(days)
        shot = pixels(calendar)
        # Only the cells, without the names beside and the key below.
        return shot[30:300, 60:], shot[2, 2]

    shot, ground = shape(mark)
    flat = shot.reshape(-1, 3)
    strongest = max(contrast(pixel, ground) for pixel in np.unique(flat, axis=0))
    assert strongest >= 3.0
    for other in Mark:
        if other in (mark, Mark.UNKNOWN):
            continue
        theirs, _ = shape(other)
        # In grey, as one sees who sees no colour.
        apart = np.abs(shot.mean(axis=2) - theirs.mean(axis=2)) > 60
        assert apart.mean() > 0.01, other


def test_weeks_before_the_beginning_take_no_room(app: QApplication, qtbot: QtBot) -> None:
    def shot(unknown: int) -> np.ndarray:
        monday = date(2026, 1, 5) - timedelta(weeks=unknown)
        calendar = Calendar()
        qtbot.addWidget(calendar)
        calendar.resize(640, 560)
        calendar.show_days(
            tuple(
                Day(
                    monday + timedelta(days=i),
                    1,
                    0,
                    0,
                    None,
                    None,
                    Mark.UNKNOWN if i < 7 * unknown + 3 else Mark.DONE,
                )
                for i in range(7 * unknown + 42)
            )
        )
        return pixels(calendar)

    assert np.array_equal(shot(6), shot(0))


@pytest.mark.parametrize("width", [360, 640])
def test_the_key_to_the_cells_is_whole_where_height_is_short(
    width: int, app: QApplication, qtbot: QtBot
) -> None:
    monday = date(2026, 1, 5)
    calendar = Calendar()
    qtbot.addWidget(calendar)
    calendar.resize(width, 420)
    calendar.show_days(
        tuple(Day(monday + timedelta(days=i), 1, 0, 0, None, None, Mark.DONE) for i in range(14))
    )
    shot = pixels(calendar)
    inked = np.flatnonzero(np.ptp(shot, axis=1).max(axis=-1) > 60)
    # The lowest line is that of a box, with free room below: a cut one would reach the foot.
    assert inked[-1] < len(shot) - 2


@pytest.mark.parametrize("count", [0, 1, 2, 40, 700])
def test_any_number_of_sessions_looks_right(
    weeks: WeeksPage, make_session: Make, count: int
) -> None:
    found = a_diary(make_session, count)
    weeks.show_diary(found)
    assert "Left arm forwards and up" in shown(weeks)
    assert ("Nothing has been done yet." in shown(weeks)) == (count == 0)
    assert cut_off(weeks) == []
    assert (weeks.number.text() == "") == (count == 0)
    if count:
        QTest.keyClick(weeks, Qt.Key.Key_Right)
        assert "3 of 3 holds" in shown(weeks)
        assert cut_off(weeks) == []
    for entry in found.series:
        QTest.keyClick(weeks, Qt.Key.Key_Right)
        assert entry.sentence in shown(weeks)
        assert cut_off(weeks) == []
        assert entry.sentence in weeks.chart.accessibleName()
        assert near(pixels(weeks.chart), LIGHT.series[0], 30).any()
    QTest.keyClick(weeks, Qt.Key.Key_Right)
    assert weeks.leaf == len(found.series) + bool(count)


def test_a_target_is_nowhere(weeks: WeeksPage, make_session: Make) -> None:
    base = make_session(0)
    planned = msgspec.structs.replace(base.plan.exercises[0], target_deg=140.0)
    plan = msgspec.structs.replace(base.plan, exercises=(planned,))
    weeks.show_diary(diary(many(make_session, 40), plan, TODAY))
    told = ""
    for _ in range(3):
        told += shown(weeks)
        weeks.turn(1)
    assert weeks.leaf == 2
    assert "140" not in told
    assert not near(pixels(weeks.chart), LIGHT.series[2]).any()


def test_last_time_has_its_error_and_its_pain(weeks: WeeksPage, make_session: Make) -> None:
    document = make_session(0, (90.0, 98.6, 91.0), error=5.2)
    weeks.show_diary(diary([document], document.plan, date(2026, 1, 6)))
    weeks.turn(1)
    told = shown(weeks)
    assert "Yesterday, 5 Jan 2026" in told
    # The error is rounded up, never down.
    assert "3 of 3 holds, furthest 99° ± 6°, pain 2 before, 3 after" in told


def test_many_exercises_are_counted_where_they_do_not_fit(
    weeks: WeeksPage, make_session: Make
) -> None:
    plan = Plan(
        patient_code="SH-017",
        exercises=tuple(
            PlannedExercise(
                exercise=slug, movement=None, side=Side.LEFT, hold_s=30, repetitions=3, per_day=2
            )
            for slug in (
                "pendulum",
                "table-slide",
                "armpit-squeeze",
                "cross-body-stretch",
                "shoulder-blade-setting",
                "stick-behind-back-narrow",
                "doorway-rotation-low",
                "not-in-the-catalogue",
            )
        ),
    )
    document = make_session(0)
    hold = TimedHold(number=1, start_s=1, end_s=31, held_s=30, ended_because=EndedBecause.COMPLETED)
    records = tuple(
        msgspec.structs.replace(
            document.exercises[0],
            planned_index=index,
            exercise=planned.exercise,
            movement=None,
            repetitions=(),
            timed=(hold,),
        )
        for index, planned in enumerate(plan.exercises)
    )
    document = msgspec.structs.replace(document, plan=plan, exercises=records)
    weeks.show_diary(diary([document], plan, TODAY))
    told = shown(weeks)
    assert "Loose swings, bent forward (left arm): 0 of 2 times" in told
    assert "and 3 more" in told
    assert cut_off(weeks) == []
    weeks.turn(1)
    assert shown(weeks).count("1 of 3 holds") == 6
    assert "and 2 more" in shown(weeks)
    assert cut_off(weeks) == []
    assert planned_name(plan.exercises[-1]) == "not-in-the-catalogue (left arm)"


def test_a_plan_that_is_over_is_said_to_be(weeks: WeeksPage, make_session: Make) -> None:
    plan = msgspec.structs.replace(make_session(0).plan, valid_until=date(2026, 2, 1))
    weeks.show_diary(diary([], plan, TODAY))
    assert "Your plan held until 1 Feb 2026. Ask your therapist for a new one." in shown(weeks)


def test_both_kinds_of_value_have_a_leaf(weeks: WeeksPage, make_session: Make) -> None:
    back = make_session(1, (0.8,) * 3, movement=Movement.HAND_BEHIND_BACK, error=0.03)
    weeks.show_diary(diary([make_session(0), back], back.plan, date(2026, 1, 7)))
    weeks.turn(2)
    assert weeks.title.text() == "Left hand up the back"
    assert "0 % is the foot of the neck" in shown(weeks)
    weeks.turn(1)
    assert weeks.title.text() == "Left arm forwards and up"
    assert "foot of the neck" not in shown(weeks)


def test_every_control_has_a_name_and_can_be_reached_by_tab(
    understanding: UnderstandingPage, weeks: WeeksPage, make_session: Make
) -> None:
    weeks.show_diary(a_diary(make_session, 3))
    assert re.search(r"\bdone: [1-9]", weeks.calendar.accessibleName())
    understanding.turn(1)
    for page in (understanding, weeks):
        page.activateWindow()
        buttons = [b for b in page.findChildren(QAbstractButton) if b.isEnabled()]
        assert len(buttons) >= 2
        assert all(b.accessibleName() and b.accessibleDescription() for b in buttons)
        reached: set[QWidget] = set()
        for _ in range(12):
            page.focusNextChild()
            focused = page.focusWidget()
            if focused is not None:
                reached.add(focused)
        assert set(buttons) <= reached
