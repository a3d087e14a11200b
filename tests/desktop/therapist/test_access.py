"""WCAG 2.2 AA in the therapist's windows: names and roles (4.1.2), targets (2.5.8), focus that is
seen (2.4.7), order (2.4.3), everything by keyboard and no trap (2.1.1, 2.1.2), contrast (1.4.3),
light at 100 % and dark at 200 %."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator
from itertools import pairwise

import pytest
from PyQt6.QtGui import QKeySequence
from PyQt6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractSpinBox,
    QApplication,
    QComboBox,
    QLabel,
    QLineEdit,
    QMenu,
    QMessageBox,
    QPlainTextEdit,
    QScrollArea,
    QTabBar,
    QWidget,
)
from pytestqt.qtbot import QtBot

from coach.desktop.shared.application import create_application
from coach.desktop.shared.language import choose_language
from coach.desktop.therapist.doubts_dialog import DoubtsDialog
from coach.desktop.therapist.passphrase_dialog import PassphraseDialog
from coach.desktop.therapist.record_words import entries_to_add
from coach.desktop.therapist.replay_page import ReplayPage
from coach.desktop.therapist.window import ReviewWindow
from coach.documents.archive import StoredSession
from coach.domain.practice import Episode, HandMeasure, Person, TotalScore
from coach.domain.settings import Appearance, Settings
from docs.make_case import CODE, LAST, Case, make_case
from tests.desktop.shared import access

CONTROLS = (
    QAbstractButton,
    QAbstractItemView,
    QAbstractSpinBox,
    QComboBox,
    QLineEdit,
    QPlainTextEdit,
    QTabBar,
)
"""Kinds that Qt itself tells a screen reader: button, box, list, table, tree, field, tabs."""
Open = Callable[[ReviewWindow, Callable[..., StoredSession]], QWidget]


def course(window: ReviewWindow, _: object) -> QWidget:
    return window


def people(window: ReviewWindow, _: object) -> QWidget:
    window.parts.show_people()
    return window


def records(window: ReviewWindow, _: object) -> QWidget:
    window.parts.show_records()
    return window


def plan(window: ReviewWindow, _: object) -> QWidget:
    window.entries["plan"].trigger()
    return window.plans


def new_plan(window: ReviewWindow, _: object) -> QWidget:
    window.plans.show()
    window.plans.page.add("pendulum")
    return window.plans


def form(kind: type) -> Open:
    def open_(window: ReviewWindow, _: object) -> QWidget:
        if kind is Person:
            window.records.ask_person(new=True)
        else:
            window.records.ask_add(kind)
        assert window.records.form is not None
        return window.records.form

    return open_


def doubts(window: ReviewWindow, _: object) -> QWidget:
    made = DoubtsDialog(window, window._store)
    made.open()
    return made


def passphrase(window: ReviewWindow, _: object) -> QWidget:
    made = PassphraseDialog("?", lambda _: None, window)
    made.open()
    return made


def replay(window: ReviewWindow, stored: Callable[..., StoredSession]) -> QWidget:
    made = ReplayPage(stored(), lambda _: None, window)
    made.show()
    return made


PAGES: dict[str, Open] = {
    "people": people,
    "course": course,
    "records": records,
    "plan": plan,
    "new plan": new_plan,
    "person": form(Person),
    **{kind.__name__: form(kind) for kind in (Episode, HandMeasure, TotalScore)},
    "doubts": doubts,
    "passphrase": passphrase,
    "replay": replay,
}


@pytest.fixture(scope="module")
def case(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Case]:
    made = make_case(tmp_path_factory.mktemp("case"))
    yield made
    made.store.close()


@pytest.fixture(autouse=True)
def discards(monkeypatch: pytest.MonkeyPatch) -> None:
    """Nobody is there to say whether a plan may go when its window is closed."""
    answer = QMessageBox.StandardButton.Discard
    monkeypatch.setattr(QMessageBox, "question", lambda *_: answer)


LOOKS = {
    "light": Settings(appearance=Appearance.LIGHT, text_percent=100, still=False),
    "dark-200": Settings(appearance=Appearance.DARK, text_percent=200, still=False),
}
"""What is asked of colours and what is asked of sizes: each is asked of both."""


@pytest.fixture(params=LOOKS)
def looks(request: pytest.FixtureRequest, qapp: QApplication) -> Iterator[Settings]:
    settings = LOOKS[request.param]
    create_application(["test"], settings=settings)
    yield settings
    create_application(["test"])


@pytest.fixture
def window(looks: Settings, case: Case, qtbot: QtBot) -> ReviewWindow:
    made = ReviewWindow(case.store, today=lambda: LAST)
    qtbot.addWidget(made)
    made.show()
    made.refresh(CODE)
    return made


@pytest.fixture
def page(
    request: pytest.FixtureRequest,
    window: ReviewWindow,
    stored: Callable[..., StoredSession],
    qtbot: QtBot,
) -> QWidget:
    shown = PAGES[request.param](window, stored)
    shown.activateWindow()
    qtbot.waitUntil(shown.isActiveWindow)
    return shown


def controls(page: QWidget) -> set[QWidget]:
    """What can be used in a window, without the parts of other controls."""
    return {
        each
        for each in page.findChildren(QWidget)
        if isinstance(each, CONTROLS)
        and each.window() is page
        and each.isVisible()
        and each.isEnabled()
        and not isinstance(each.parent(), CONTROLS)
    }


@pytest.mark.parametrize("page", PAGES, indirect=True)
def test_tab_reaches_all_in_the_order_of_reading_and_leaves_it_again(page: QWidget) -> None:
    found = list(access.tabbed(page))
    assert controls(page) <= {*found}
    for part in found:
        assert access.name_of(part), part
        assert isinstance(part, (*CONTROLS, QScrollArea)), part
    back = [
        (access.name_of(before), access.name_of(after))
        for before, after in pairwise((*found, found[0]))
        if access.goes_back(access.place_of(before), access.place_of(after))
    ]
    assert len(back) <= 1, back  # from the last to the first


@pytest.mark.parametrize("page", PAGES, indirect=True)
def test_targets_are_large_and_the_focus_is_seen(page: QWidget) -> None:
    for part in list(access.tabbed(page)):
        assert min(part.width(), part.height()) >= access.TARGET_PX, access.name_of(part)
        if isinstance(part, QAbstractItemView) and (model := part.model()) is not None:
            for row in range(model.rowCount()):
                high_px = part.visualRect(model.index(row, 0)).height()
                assert high_px == 0 or high_px >= access.TARGET_PX, access.name_of(part)
        part.setFocus()
        least = access.SEEN_PX * (part.width() + part.height())
        if isinstance(part, QTabBar):  # its ring is round the tab in front
            tab = part.tabRect(part.currentIndex())
            least = access.SEEN_PX * (tab.width() + tab.height())
        assert access.changed_px(part) >= least, access.name_of(part)


def in_view(part: QWidget) -> bool:
    """Scroll to a part; says whether all of it is seen then."""
    above = part.parentWidget()
    while above is not None:
        if isinstance(above, QScrollArea):
            above.ensureWidgetVisible(part)
        above = above.parentWidget()
    return part.visibleRegion().boundingRect() == part.rect()


@pytest.mark.parametrize("page", PAGES, indirect=True)
def test_words_can_be_read(page: QWidget) -> None:
    looked_at = 0
    for label in page.findChildren(QLabel):
        words = label.text().strip()
        if words and label.isVisible() and label.isEnabled() and in_view(label):
            looked_at += 1
            assert access.text_contrast(label) >= access.TEXT_RATIO, label.text()
    for line in page.findChildren(QLineEdit):
        empty = line.placeholderText() and not line.text()
        if empty and line.isVisible() and line.isEnabled() and in_view(line):
            looked_at += 1
            line.clearFocus()
            seen = access.text_contrast(line, 6)
            assert seen >= access.TEXT_RATIO, line.placeholderText()
    for button in page.findChildren(QAbstractButton):
        if button.text() and button.isVisible() and button.isEnabled() and in_view(button):
            looked_at += 1
            button.clearFocus()
            assert access.text_contrast(button, 6) >= access.TEXT_RATIO, button.text()
    assert looked_at


@pytest.mark.parametrize("language", ["en", "de"])
@pytest.mark.parametrize("name", PAGES)
def test_each_letter_with_alt_is_for_one_thing(
    app: QApplication,
    case: Case,
    stored: Callable[..., StoredSession],
    qtbot: QtBot,
    language: str,
    name: str,
) -> None:
    choose_language(app, language)
    try:
        window = ReviewWindow(case.store, today=lambda: LAST)
        qtbot.addWidget(window)
        window.show()
        window.refresh(CODE)
        page = PAGES[name](window, stored)
        QApplication.processEvents()
        lettered = [
            part.text()
            for part in page.findChildren(QWidget)
            if part.window() is page
            and part.isVisible()
            and (isinstance(part, QAbstractButton) or (isinstance(part, QLabel) and part.buddy()))
        ]
        scopes = [lettered]
        if page is window:
            bar = window.menuBar()
            assert bar is not None
            lettered += [act.text() for act in bar.actions()]
            scopes += [[act.text() for act in menu.actions()] for menu in bar.findChildren(QMenu)]
            scopes.append(list(entries_to_add().values()))
        for texts in scopes:
            letters = Counter(QKeySequence.mnemonic(text).toString() for text in texts)
            del letters[""]
            assert all(count == 1 for count in letters.values()), letters
    finally:
        choose_language(app, "en")


@pytest.mark.parametrize("page", ["course", "records", "plan"], indirect=True)
def test_the_chosen_row_differs_by_more_than_a_tint(page: QWidget) -> None:
    views = [view for view in controls(page) if isinstance(view, QAbstractItemView)]
    found = 0
    for view in views:
        chosen = view.currentIndex()
        if not chosen.isValid() or (selection := view.selectionModel()) is None:
            continue
        port = view.viewport()
        assert port is not None
        row = view.visualRect(chosen)
        with_choice = access.pixels(port, row)
        selection.clearSelection()
        without = access.pixels(port, row)
        found += 1
        assert access.differing_px(with_choice, without) >= access.SEEN_PX * row.height()
    assert found
