"""The therapist's windows at 100, 150 and 200 per cent: nothing is cut off, all can be reached, and
texts scroll one way only (WCAG 1.4.4, 1.4.10)."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path
from types import ModuleType

import pytest
from PyQt6.QtCore import QPoint, QRect, Qt
from PyQt6.QtWidgets import (
    QAbstractItemView,
    QAbstractScrollArea,
    QApplication,
    QCheckBox,
    QLabel,
    QProgressBar,
    QPushButton,
    QScrollArea,
    QWidget,
)
from pytestqt.qtbot import QtBot

from coach.desktop.shared.application import create_application
from coach.desktop.shared.looks import colours, looks
from coach.desktop.shared.palettes import DARK, LIGHT
from coach.desktop.therapist.desk import Desk
from coach.desktop.therapist.replay_page import ReplayPage
from coach.desktop.therapist.window import ReviewWindow
from coach.documents.archive import StoredSession
from coach.domain.settings import Settings
from coach.storage.store import Store
from tests.desktop.shared import access

SIZE = (1280, 800)
TODAY = date(2026, 2, 16)


@pytest.fixture(params=[("en", 100), ("de", 150), ("de", 200)], ids=lambda p: f"{p[0]}-{p[1]}")
def dressed(request: pytest.FixtureRequest, qapp: QApplication) -> Iterator[None]:
    language, percent = request.param
    create_application(["test"], settings=Settings(text_percent=percent), language=language)
    yield
    create_application(["test"])


def scrolls(part: QWidget) -> bool:
    above = part.parentWidget()
    while above is not None and not isinstance(above, QAbstractScrollArea):
        above = above.parentWidget()
    return above is not None


def short(window: QWidget) -> list[str]:
    """Name the texts that have too little room."""
    found = []
    for part in window.findChildren(QWidget):
        if not isinstance(part, QLabel | QPushButton | QCheckBox) or not part.isVisible():
            continue
        words = any(letter.isalnum() for letter in part.text())  # an arrow's line may be higher
        if not words or part.toolTip() == part.text():
            continue
        wraps = isinstance(part, QLabel) and part.wordWrap()
        needed = part.sizeHint()
        high = part.heightForWidth(part.width()) if wraps else needed.height()
        if high > part.height() + 1 or (not wraps and needed.width() > part.width() + 1):
            found.append(f"{part.text()[:40]}: {needed} {part.size()}")
        place = QRect(part.mapTo(window, QPoint(0, 0)), part.size())
        if not scrolls(part) and not window.rect().contains(place):
            found.append(f"{part.text()[:40]} is out of the window")
    return found


def sideways(window: QWidget) -> list[str]:
    """Name what is wider than the area it scrolls downward in, and what scrolls both ways."""
    found = []
    for area in window.findChildren(QScrollArea):
        inside, port = area.widget(), area.viewport()
        if not area.isVisible() or inside is None or port is None:
            continue
        if inside.minimumSizeHint().width() > port.width() or inside.width() > port.width():
            found.append(f"{inside}: {inside.minimumSizeHint().width()} of {port.width()}")
        for part in inside.findChildren(QWidget):
            right = part.mapTo(inside, QPoint(part.width(), 0)).x()
            if part.isVisible() and not boxed(part, inside) and right > port.width():
                found.append(f"{part} {access.name_of(part)} ends at {right} of {port.width()}")
    return found


def boxed(part: QWidget, inside: QWidget) -> bool:
    """Whether a part belongs to a list or table, which may scroll in its own box."""
    above = part.parentWidget()
    while above is not None and above is not inside:
        if isinstance(above, QAbstractItemView):
            return True
        above = above.parentWidget()
    return False


def shown(window: QWidget, qtbot: QtBot) -> QWidget:
    window.resize(*SIZE)
    window.show()
    qtbot.waitExposed(window)
    for _ in range(3):
        QApplication.processEvents()
    assert (window.width(), window.height()) == SIZE, "it does not fit the screen"
    return window


def test_no_text_is_cut_off(
    dressed: None, store: Store, invented: ModuleType, qtbot: QtBot
) -> None:
    for number in range(3):
        document = invented.make_session(number)
        store.import_session(document, document.session_id.encode(), f"{number}.zip")
    window = ReviewWindow(store, today=lambda: TODAY)
    qtbot.addWidget(window)
    turns = (lambda: None, window.parts.show_records, window.parts.show_people)
    for turn in turns:
        turn()
        assert short(shown(window, qtbot)) == []
        assert sideways(window) == []
    window._make_plan()
    window.plans.page.add("pendulum")
    assert short(shown(window.plans, qtbot)) == []
    assert sideways(window.plans) == []


def test_a_replay_reflows(
    dressed: None, stored: Callable[..., StoredSession], qtbot: QtBot
) -> None:
    page = ReplayPage(stored(), lambda _: None)
    qtbot.addWidget(page)
    assert short(shown(page, qtbot)) == []
    assert sideways(page) == []
    page.compare_with(stored(1))
    assert short(shown(page, qtbot)) == []
    assert sideways(page) == []
    first, second = page.figures
    assert first.y() == second.y()
    assert first.geometry().right() < second.x()


def test_nobody_yet_is_said_in_a_narrow_window(dressed: None, store: Store, qtbot: QtBot) -> None:
    window = ReviewWindow(store, today=lambda: TODAY)
    qtbot.addWidget(window)
    assert short(shown(window, qtbot)) == []
    assert sideways(window) == []
    window.entries["people"].trigger()
    assert window.panel.import_files.isVisible()


def test_in_a_narrow_window_the_patients_are_a_page_of_their_own(
    app: QApplication, store: Store, invented: ModuleType, qtbot: QtBot
) -> None:
    document = invented.make_session()
    store.import_session(document, document.session_id.encode(), "0.zip")
    window = ReviewWindow(store, today=lambda: TODAY)
    qtbot.addWidget(window)
    shown(window, qtbot)
    assert window.panel.isVisible()
    assert window.page.isVisible()
    window.resize(700, 800)
    qtbot.waitUntil(lambda: not window.panel.isVisible())
    assert window.page.isVisible()
    assert sideways(window) == []
    qtbot.keyClick(window, Qt.Key.Key_3, Qt.KeyboardModifier.ControlModifier)
    assert window.panel.list.isVisible()
    assert not window.page.isVisible()
    window.panel.list.activated.emit(window.panel.list.currentIndex())
    assert window.page.isVisible()
    window.resize(*SIZE)
    qtbot.waitUntil(window.panel.isVisible)
    assert window.page.isVisible()


def test_the_window_opens_anew_with_larger_text_on_the_same_patient(
    qapp: QApplication, store: Store, invented: ModuleType, qtbot: QtBot
) -> None:
    create_application(["test"])
    store.import_session(invented.make_session(), b"", "a.zip")
    desk = Desk(store)
    first = desk.window
    code = first.code
    assert code is not None
    height = first.panel.list.fontMetrics().height()
    first.entries["larger"].trigger()
    assert looks().text == 1.25
    assert desk.window is not first
    assert not first.isVisible()
    assert desk.window.isVisible()
    assert desk.window.code == code
    assert desk.window.panel.list.fontMetrics().height() == pytest.approx(1.25 * height, abs=2)
    desk.window.entries["usual"].trigger()
    desk.window.entries["turn"].trigger()
    assert colours() is DARK
    desk.window.close()
    create_application(["test"])
    assert colours() is LIGHT


@pytest.mark.parametrize("entry", ["larger", "turn"])
def test_an_import_goes_on_where_the_looks_are_changed(
    qapp: QApplication,
    store: Store,
    invented: ModuleType,
    tmp_path: Path,
    qtbot: QtBot,
    entry: str,
) -> None:
    create_application(["test"])
    count = 8
    for number in range(count):
        (tmp_path / f"{number}.shoulder.zip").write_bytes(
            invented.session_file(invented.make_session(number))
        )
    desk = Desk(store)
    desk.window.parts.show_records()
    desk.window.import_paths([tmp_path])

    def look_otherwise(done: int, _: int) -> None:
        if done == 2:
            desk.window.entries[entry].trigger()
            assert desk.window.parts.progress.stop.isVisible()
            assert desk.window.parts.progress.bar.value() == 2

    desk.window.imports.advanced.connect(look_otherwise)
    qtbot.waitUntil(lambda: not desk.window.imports.running, timeout=60_000)
    assert sum(entry.sessions for entry in store.patients()) == count
    assert (last := store.last_import()) is not None
    assert last.sessions == count, "one import, taken back as one"
    assert not desk.window.parts.progress.stop.isVisible()
    assert desk.window.parts.telling == "8 files: 8 accepted."
    desk.window.close()
    create_application(["test"])


@pytest.mark.parametrize("percent", [100, 200])
@pytest.mark.parametrize("page", ["people", "course", "records"])
def test_an_import_is_seen_and_can_be_stopped_from_every_page_of_a_narrow_window(
    qapp: QApplication, store: Store, invented: ModuleType, page: str, percent: int
) -> None:
    create_application(["test"], settings=Settings(text_percent=percent), language="de")
    document = invented.make_session()
    store.import_session(document, b"a", "a.shoulder.zip")
    window = ReviewWindow(store, today=lambda: TODAY)
    window.resize(900, 700)
    window.show()
    getattr(window.parts, f"show_{page}")()
    window.imports.advanced.emit(312, 900)
    QApplication.processEvents()
    seen = [
        part
        for part in window.findChildren(QWidget)
        if part.isVisible() and part.visibleRegion().boundingRect().size() == part.size()
    ]
    assert [(bar.value(), bar.maximum()) for bar in seen if isinstance(bar, QProgressBar)] == [
        (312, 900)
    ]
    texts = [part.text() for part in seen if isinstance(part, QPushButton | QLabel)]
    assert "Einlesen &stoppen" in texts
    assert "312 von 900 Dateien" in texts
    assert short(window) == []
    assert window.width() == 900
    window.imports.advanced.emit(900, 900)
    assert not any(bar.isVisible() for bar in window.findChildren(QProgressBar))
    window.close()
    create_application(["test"])


def test_another_text_size_leaves_the_page_and_the_message(
    qapp: QApplication, store: Store, invented: ModuleType
) -> None:
    create_application(["test"])
    store.import_session(invented.make_session(), b"", "a.zip")
    desk = Desk(store)
    desk.window.parts.show_records()
    desk.window.parts.tell("One sentence.", "caution")
    desk.window.entries["larger"].trigger()
    assert desk.window.parts.on_records
    assert desk.window.parts.telling == "One sentence."
    desk.window.close()
    create_application(["test"])
