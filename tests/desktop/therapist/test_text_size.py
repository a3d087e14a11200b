"""The therapist's window at 100, 150 and 200 per cent: nothing is cut off, all can be reached."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from pathlib import Path
from types import ModuleType

import pytest
from PyQt6.QtCore import QPoint, QRect
from PyQt6.QtWidgets import (
    QAbstractScrollArea,
    QApplication,
    QCheckBox,
    QLabel,
    QPushButton,
    QWidget,
)
from pytestqt.qtbot import QtBot

from coach.desktop.shared.application import create_application
from coach.desktop.shared.looks import colours, looks
from coach.desktop.shared.palettes import DARK, LIGHT
from coach.desktop.therapist.desk import Desk
from coach.desktop.therapist.window import ReviewWindow
from coach.domain.settings import Settings
from coach.storage.store import Store

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
        if not part.text() or part.toolTip() == part.text():
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
    assert short(shown(window, qtbot)) == []
    window.parts.show_records()
    assert short(shown(window, qtbot)) == []
    window._make_plan()
    assert short(shown(window.plans, qtbot)) == []


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
            assert desk.window.panel.stop.isVisible()
            assert desk.window.panel.progress.value() == 2

    desk.window.imports.advanced.connect(look_otherwise)
    qtbot.waitUntil(lambda: not desk.window.imports.running, timeout=60_000)
    assert sum(entry.sessions for entry in store.patients()) == count
    assert (last := store.last_import()) is not None
    assert last.sessions == count, "one import, taken back as one"
    assert not desk.window.panel.stop.isVisible()
    assert desk.window.parts.telling == "8 files: 8 accepted."
    desk.window.close()
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
