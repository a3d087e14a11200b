"""The replay by keyboard alone, on sessions made by hand."""

from __future__ import annotations

import pyrage
import pytest
from PyQt6.QtCore import Qt
from PyQt6.QtWidgets import QAbstractButton, QFileDialog, QInputDialog

from coach.desktop.therapist.replay_page import ReplayPage
from coach.desktop.therapist.replay_sessions import choose_session
from coach.desktop.therapist.window import ReviewWindow
from coach.domain.fault import Fault
from coach.domain.movement import Movement
from coach.storage.sealed import PracticeIdentity, seal

KEY = Qt.Key


@pytest.fixture
def page(app, stored, qtbot):
    opened = ReplayPage(stored(), lambda _: stored(7, values=(120.0, 121.0)))
    qtbot.addWidget(opened)
    opened.show()
    qtbot.waitExposed(opened)
    opened.activateWindow()
    return opened


def test_arrows_step_one_picture_and_stay_inside(page, qtbot):
    assert page.since_s == 0
    qtbot.keyClick(page, KEY.Key_Right)
    assert page.since_s == pytest.approx(0.1)
    qtbot.keyClick(page, KEY.Key_Left)
    qtbot.keyClick(page, KEY.Key_Left)
    assert page.since_s == pytest.approx(-0.1)
    qtbot.keyClick(page, KEY.Key_Home)
    qtbot.keyClick(page, KEY.Key_Left)
    assert page.since_s == pytest.approx(-5)  # the recording begins 5 s before the hold
    qtbot.keyClick(page, KEY.Key_End)
    assert page.since_s == pytest.approx(23)  # 20 s of hold and 3 s after it


def test_space_plays_at_the_speed_of_the_key_and_pauses(page, qtbot):
    for key, seconds in ((KEY.Key_1, 0.5), (KEY.Key_2, 1.0), (KEY.Key_3, 2.0)):
        page.move_to(0)
        qtbot.keyClick(page, key)
        page.advance(2.0)
        assert page.since_s == pytest.approx(seconds)
        assert [b.isChecked() for b in page.buttons.speeds.values()].count(True) == 1
    qtbot.keyClick(page, KEY.Key_Space)
    assert page.playing
    assert page.buttons.play.text() == "Pause"
    qtbot.keyClick(page, KEY.Key_Space)
    assert not page.playing
    qtbot.keyClick(page, KEY.Key_Space)
    page.advance(1000)
    assert not page.playing
    qtbot.keyClick(page, KEY.Key_Space)
    assert page.playing
    assert page.since_s < 0


def test_page_keys_go_through_the_repetitions(page, qtbot):
    numbers = []
    for key in (KEY.Key_PageDown, KEY.Key_PageDown, KEY.Key_PageDown, KEY.Key_PageUp):
        qtbot.keyClick(page, key)
        numbers.append(page.shown[0].repetition.number)
    assert numbers == [2, 3, 3, 2]


def test_a_second_session_stands_at_the_same_point_of_its_hold(page, qtbot):
    qtbot.keyClick(page, KEY.Key_PageDown)
    assert not page.figures[1].isVisible()
    qtbot.keyClick(page, KEY.Key_C)
    assert page.figures[1].isVisible()
    page.move_to(2.0)
    words = [trace.accessibleDescription() for trace in page.traces]
    # The second holds begin at 35 s, where the trace stands at 85 degrees.
    first, second = "5 Jan 2026, repetition 2: 87° ± 6°", "12 Jan 2026, repetition 2: 87° ± 6°"
    assert words[0].startswith(f"{first}, 2.0 s into the hold")
    assert words[1].startswith(f"{second}, 2.0 s into the hold")
    # The other session has two repetitions only; its last one stays.
    qtbot.keyClick(page, KEY.Key_PageDown)
    assert [each.repetition.number for each in page.shown] == [3, 2]
    page.move_to(1.0)
    assert "116° ± 6°, 1.0 s into" in page.traces[0].accessibleDescription()


def cursor_columns(trace):
    image = trace.grab().toImage()
    height = image.height() - 10  # in the lowest lane
    return [x for x in range(image.width()) if image.pixelColor(x, height).name() == "#0b5fd0"]


def test_both_cursors_stand_in_one_column_and_go_on_together(page, qtbot):
    qtbot.keyClick(page, KEY.Key_C)
    columns = []
    for since_s in (0.0, 4.0, 8.0):
        page.move_to(since_s)
        first, second = (cursor_columns(trace) for trace in page.traces)
        assert first
        assert first == second
        columns.append(first[0])
    # Equal times are equally far apart.
    assert columns[1] - columns[0] == pytest.approx(columns[2] - columns[1], abs=1)
    assert columns[1] > columns[0]


def test_another_repetition_and_another_size_are_painted_anew(page):
    def heading():
        image = page.traces[0].grab().toImage()
        return image.copy(0, 0, image.width(), 22)

    first = heading()
    page.move_to(3.0)
    assert heading() == first
    page.go_to(1)
    assert heading() != first
    page.go_to(0)
    assert heading() == first
    page.resize(1500, 900)
    assert heading().width() > first.width()


def test_another_exercise_is_not_compared(page, stored, qtbot, monkeypatch):
    monkeypatch.setattr(page, "_choose", lambda _: stored(8, movement=Movement.ABDUCTION))
    qtbot.keyClick(page, KEY.Key_C)
    assert page._message.isVisible()
    assert "has no repetition of Flexion" in page._message.text()
    assert len(page.shown) == 1


def test_a_session_without_repetitions_is_refused(app, stored):
    with pytest.raises(Fault, match="no measured repetition"):
        ReplayPage(stored(values=()), lambda _: None)


def test_everything_that_takes_the_keyboard_has_a_name(page):
    buttons = page.findChildren(QAbstractButton)
    assert len(buttons) == 10
    assert all(button.accessibleName() and button.toolTip() for button in buttons)
    assert all(view.accessibleName() for view in (*page.figures, *page.traces))


@pytest.mark.parametrize("size", [(1280, 800), (1920, 1080)])
def test_a_figure_is_painted_in_the_colour_of_the_measured_arm(page, size):
    page.resize(*size)
    page.move_to(0.0)
    image = page.figures[0].grab().toImage()
    colours = {
        image.pixelColor(x, y).name()
        for x in range(0, image.width(), 2)
        for y in range(0, image.height(), 2)
    }
    assert {"#ffb938", "#9fc3ff", "#1a1328"} <= colours


def test_the_window_opens_a_stored_session(app, store, invented, qtbot, monkeypatch, tmp_path):
    for n in range(2):
        path = tmp_path / f"{n}.shoulder.zip"
        path.write_bytes(invented.session_file(invented.make_session(n)))
    window = ReviewWindow(store)
    qtbot.addWidget(window)
    window.show()
    with qtbot.waitSignal(window.imports.finished, timeout=60_000):
        window.import_paths([tmp_path])
    offered = []

    def choose(parent, title, label, items, *_):
        offered.extend(items)
        return items[1], True

    monkeypatch.setattr(QInputDialog, "getItem", choose)
    qtbot.keyClick(window, KEY.Key_R, Qt.KeyboardModifier.ControlModifier)
    (opened,) = window.findChildren(ReplayPage)
    assert [text[:10] for text in offered] == ["6 Jan 2026", "5 Jan 2026", "A session "]
    assert opened.shown[0].started_at.day == 5


def test_a_sealed_file_is_opened_with_the_practices_key(
    app, store, invented, monkeypatch, tmp_path
):
    key = pyrage.x25519.Identity.generate()
    identity = PracticeIdentity(str(key.to_public()), key)
    path = tmp_path / "visit.shoulder.age"
    content = invented.session_file(invented.make_session(3))
    path.write_bytes(seal(content, identity.public_key))
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: (str(path), ""))
    found = choose_session(None, store, None, identity)
    assert found.document == invented.make_session(3)
    assert len(found.landmarks.time_s) > 0
    with pytest.raises(Fault, match="is sealed"):
        choose_session(None, store, None)


def test_before_stands_on_the_left_of_after(app, stored, qtbot):
    for chosen, other in ((stored(0), stored(3)), (stored(3), stored(0))):
        page = ReplayPage(chosen, lambda _: None)
        qtbot.addWidget(page)
        page.compare_with(other)
        before, after = page.shown
        assert before.started_at < after.started_at
