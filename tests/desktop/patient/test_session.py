"""A whole session by the keyboard alone, and what happens when things break."""

import threading
from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import date

import pytest
from PyQt6.QtCore import Qt
from PyQt6.QtTest import QTest
from PyQt6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from coach.desktop.patient.analysis import Analysis
from coach.desktop.patient.coaching import BeginCoaching, OpenSource, Outcome
from coach.desktop.patient.intake import Intake
from coach.desktop.patient.window import PatientWindow
from coach.domain.fault import Fault
from coach.domain.frame import Frame
from coach.domain.moment import Order, Stage
from coach.domain.session import SessionEnd

from .scripted import PLAN, ScriptedCoaching, ScriptedSource

Opener = Callable[[OpenSource, BeginCoaching], PatientWindow]
LONG_MS = 20_000


@pytest.fixture
def open_window(app: QApplication, qtbot: QtBot) -> Opener:
    def make(open_source: OpenSource, begin: BeginCoaching) -> PatientWindow:
        window = PatientWindow(PLAN, open_source, begin, cautions_read=True)
        qtbot.addWidget(window)
        window.show()
        qtbot.waitExposed(window)
        return window

    return make


def press(window: PatientWindow, key: Qt.Key) -> None:
    QTest.keyClick(window.focusWidget() or window, key)


def wait_for(qtbot: QtBot, window: PatientWindow, stage: Stage) -> None:
    qtbot.waitUntil(lambda: window.stage is stage, timeout=LONG_MS)


def test_a_whole_session_by_the_keyboard(open_window: Opener, qtbot: QtBot) -> None:
    source, coaching = ScriptedSource(seconds=10_000), ScriptedCoaching()
    window = open_window(lambda: source, lambda opened: coaching)
    wait_for(qtbot, window, Stage.WELCOME)
    press(window, Qt.Key.Key_Space)
    wait_for(qtbot, window, Stage.PAIN_BEFORE)
    press(window, Qt.Key.Key_3)
    press(window, Qt.Key.Key_Space)
    wait_for(qtbot, window, Stage.PREPARE)
    press(window, Qt.Key.Key_P)
    wait_for(qtbot, window, Stage.PAUSED)
    press(window, Qt.Key.Key_Space)
    wait_for(qtbot, window, Stage.PREPARE)
    press(window, Qt.Key.Key_Space)
    wait_for(qtbot, window, Stage.EXERCISE)
    press(window, Qt.Key.Key_Space)
    wait_for(qtbot, window, Stage.PAUSED)
    press(window, Qt.Key.Key_Space)
    wait_for(qtbot, window, Stage.PAIN_AFTER)
    press(window, Qt.Key.Key_X)
    press(window, Qt.Key.Key_Left)
    press(window, Qt.Key.Key_Return)
    wait_for(qtbot, window, Stage.PAIN_BEFORE)
    press(window, Qt.Key.Key_X)
    press(window, Qt.Key.Key_Space)
    wait_for(qtbot, window, Stage.PREPARE)
    press(window, Qt.Key.Key_N)
    qtbot.waitUntil(lambda: window.outcome is not None, timeout=LONG_MS)
    assert coaching.orders == [
        (Order.START, None),
        (Order.PAIN, 3),
        (Order.PAUSE, None),
        (Order.RESUME, None),
        (Order.READY, None),
        (Order.PAUSE, None),
        (Order.RESUME, None),
        (Order.PAIN, 9),
        (Order.PAIN, 10),
        (Order.SKIP, None),
    ]
    assert coaching.finished_because == [SessionEnd.COMPLETED]
    assert window.pages.summary.isVisible()
    assert source.closed_times == 1  # the camera is let go as soon as it is over
    press(window, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: not window.isVisible(), timeout=LONG_MS)
    assert coaching.closed_times == 1
    assert threading.get_ident() not in coaching.threads | coaching.looking_threads
    assert len(coaching.threads) == len(coaching.looking_threads) == 1
    assert coaching.threads != coaching.looking_threads


@pytest.mark.parametrize("key", [Qt.Key.Key_S, Qt.Key.Key_Escape])
def test_stop_is_one_key_and_keeps_what_was_done(
    open_window: Opener, qtbot: QtBot, key: Qt.Key
) -> None:
    coaching = ScriptedCoaching()
    window = open_window(lambda: ScriptedSource(seconds=10_000), lambda opened: coaching)
    start(qtbot, window)
    press(window, key)
    qtbot.waitUntil(lambda: window.outcome is not None, timeout=LONG_MS)
    assert coaching.orders[-1] == (Order.STOP, None)
    assert "/home/rosa" in window.pages.summary._saved.text()
    window.close()


def start(qtbot: QtBot, window: PatientWindow) -> None:
    wait_for(qtbot, window, Stage.WELCOME)
    press(window, Qt.Key.Key_Space)
    wait_for(qtbot, window, Stage.PAIN_BEFORE)
    press(window, Qt.Key.Key_0)
    press(window, Qt.Key.Key_Space)
    wait_for(qtbot, window, Stage.PREPARE)
    press(window, Qt.Key.Key_Space)
    wait_for(qtbot, window, Stage.EXERCISE)


class Unsaved(ScriptedCoaching):
    """Its folder is read only, and so is the next; the third takes the file."""

    def __init__(self) -> None:
        super().__init__()
        self.folders: list[str] = []

    def finish(self, because: SessionEnd) -> Outcome:
        return replace(super().finish(because), saved_at=None, fault="It is not saved; choose.")

    def save_elsewhere(self, folder: str) -> Outcome:
        self.folders.append(folder)
        if len(self.folders) == 1:
            return replace(self.finish(SessionEnd.STOPPED), fault="Not there either; choose.")
        return super().finish(SessionEnd.STOPPED)


def test_what_could_not_be_saved_is_saved_in_another_folder_by_one_key(
    open_window: Opener, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    chosen = ["", "/first", "/second"]
    monkeypatch.setattr(
        "coach.desktop.shared.file_questions.QFileDialog.getExistingDirectory",
        lambda *told: chosen.pop(0),
    )
    coaching = Unsaved()
    window = open_window(lambda: ScriptedSource(seconds=10_000), lambda opened: coaching)
    page = window.pages.summary
    start(qtbot, window)
    press(window, Qt.Key.Key_S)
    qtbot.waitUntil(lambda: window.outcome is not None, timeout=LONG_MS)
    assert page.folder_button.isVisible()
    assert page.folder_button.accessibleName()
    assert window.banner.sentence.text() == "It is not saved; choose."
    press(window, Qt.Key.Key_F)  # and the dialog is left
    assert coaching.folders == []
    press(window, Qt.Key.Key_F)
    qtbot.waitUntil(lambda: "either" in page._saved.text(), timeout=LONG_MS)
    assert window.banner.sentence.text() == "Not there either; choose."
    assert page.folder_button.isEnabled()
    press(window, Qt.Key.Key_F)
    qtbot.waitUntil(lambda: "/home/rosa" in page._saved.text(), timeout=LONG_MS)
    assert coaching.folders == ["/first", "/second"]
    assert not window.banner.isVisible()
    assert not page.folder_button.isVisible()
    press(window, Qt.Key.Key_F)  # a button that is not there has no key
    assert chosen == []
    assert coaching.threads == {*coaching.threads} - {threading.get_ident()}
    window.close()


def test_closing_in_the_middle_saves_and_ends_both_threads(
    open_window: Opener, qtbot: QtBot
) -> None:
    coaching = ScriptedCoaching()
    window = open_window(lambda: ScriptedSource(seconds=10_000), lambda opened: coaching)
    start(qtbot, window)
    thread = window.engine._thread
    assert thread is not None
    window.close()
    assert thread.isFinished()
    assert coaching.finished_because == [SessionEnd.STOPPED]
    assert coaching.closed_times == 1


def test_closing_before_the_start_writes_nothing(open_window: Opener, qtbot: QtBot) -> None:
    coaching = ScriptedCoaching()
    window = open_window(lambda: ScriptedSource(seconds=10_000), lambda opened: coaching)
    wait_for(qtbot, window, Stage.WELCOME)
    window.close()
    assert coaching.finished_because == [SessionEnd.STOPPED]
    assert window.outcome is None
    assert coaching.closed_times == 1


def test_a_camera_that_goes_away_pauses_the_session_until_it_is_back(
    open_window: Opener, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    plugged = threading.Event()
    plugged.set()
    monkeypatch.setattr("coach.desktop.patient.engine.RETRY_S", 0.01)

    class Camera(ScriptedSource):
        def __init__(self) -> None:
            if not plugged.is_set():
                raise Fault("No camera answers.")
            super().__init__(seconds=10_000)

        def __iter__(self) -> Iterator[Frame]:
            for frame in super().__iter__():
                if not plugged.is_set():
                    raise Fault("The camera went away.")
                yield frame

    coaching = ScriptedCoaching()
    window = open_window(Camera, lambda opened: coaching)
    start(qtbot, window)
    plugged.clear()
    qtbot.waitUntil(window.banner.isVisible, timeout=LONG_MS)
    assert "camera went away" in window.banner.sentence.text()
    qtbot.waitUntil(lambda: window.stage is Stage.PAUSED, timeout=LONG_MS)
    assert coaching.orders[-1] == (Order.PAUSE, None)
    plugged.set()
    qtbot.waitUntil(lambda: not window.banner.isVisible(), timeout=LONG_MS)
    press(window, Qt.Key.Key_Space)
    wait_for(qtbot, window, Stage.EXERCISE)
    assert coaching.finished_because == []
    plugged.clear()
    qtbot.waitUntil(window.banner.isVisible, timeout=LONG_MS)
    window.close()
    assert coaching.finished_because == [SessionEnd.STOPPED]


def test_without_a_camera_it_can_be_tried_again(open_window: Opener, qtbot: QtBot) -> None:
    tries: list[int] = []

    def plug_in_at_the_second_try() -> ScriptedSource:
        tries.append(1)
        if len(tries) == 1:
            raise Fault("There is no camera number 0: plug one in.")
        return ScriptedSource(seconds=10_000)

    window = open_window(plug_in_at_the_second_try, lambda opened: ScriptedCoaching())
    qtbot.waitUntil(window.banner.isVisible, timeout=LONG_MS)
    assert "no camera number 0" in window.banner.sentence.text()
    assert not window.pages.welcome.start_button.isEnabled()
    press(window, Qt.Key.Key_R)
    wait_for(qtbot, window, Stage.WELCOME)
    assert not window.banner.isVisible()
    window.close()


def broken_model(opened: object) -> ScriptedCoaching:
    raise Fault("The pose model does not have the expected bytes: install the program again.")


def test_a_model_that_does_not_load_is_told(open_window: Opener, qtbot: QtBot) -> None:
    window = open_window(lambda: ScriptedSource(seconds=10_000), broken_model)
    qtbot.waitUntil(window.banner.isVisible, timeout=LONG_MS)
    assert "pose model" in window.banner.sentence.text()
    window.close()


def test_the_end_of_a_video_does_not_take_the_place_of_what_went_wrong(app: QApplication) -> None:
    source = ScriptedSource("file", seconds=0.1)
    intake = Intake(lambda: source, opened=print, ready=print, ended=print)
    analysis, told = Analysis(broken_model), list[str]()
    analysis.failed.connect(told.append)
    analysis.opened(intake, source)
    analysis.input_ended(None)
    assert len(told) == 1
    assert "pose model" in told[0]


def test_an_error_in_the_worker_is_told_and_the_session_kept(
    open_window: Opener, qtbot: QtBot, capsys: pytest.CaptureFixture[str]
) -> None:
    coaching = ScriptedCoaching()
    window = open_window(lambda: ScriptedSource(seconds=10_000), lambda opened: coaching)
    start(qtbot, window)
    coaching._break_at = coaching.steps
    qtbot.waitUntil(lambda: window.outcome is not None, timeout=LONG_MS)
    assert "went wrong" in window.banner.sentence.text()
    assert coaching.finished_because == [SessionEnd.INTERRUPTED]
    assert "ZeroDivisionError" in capsys.readouterr().err
    window.close()


@pytest.mark.parametrize("run", [1, 2])
def test_every_frame_of_a_file_is_measured(open_window: Opener, qtbot: QtBot, run: int) -> None:
    coaching = ScriptedCoaching()
    window = open_window(lambda: ScriptedSource("file", seconds=1.5), lambda opened: coaching)
    start(qtbot, window)
    qtbot.waitUntil(lambda: window.outcome is not None, timeout=LONG_MS)
    assert coaching.seen == set(range(30))
    assert coaching.finished_because == [SessionEnd.INPUT_ENDED]
    window.close()


def test_a_held_down_key_gives_one_order(open_window: Opener, qtbot: QtBot) -> None:
    from PyQt6.QtCore import QEvent
    from PyQt6.QtGui import QKeyEvent

    coaching = ScriptedCoaching()
    window = open_window(lambda: ScriptedSource(seconds=10_000), lambda opened: coaching)
    start(qtbot, window)
    none = Qt.KeyboardModifier.NoModifier
    for _ in range(5):
        repeat = QKeyEvent(QEvent.Type.KeyPress, Qt.Key.Key_S, none, "s", autorep=True)
        QApplication.sendEvent(window, repeat)
    qtbot.wait(50)
    assert (Order.STOP, None) not in coaching.orders
    window.close()


def test_a_window_left_open_over_midnight_closes_to_be_opened_anew(
    app: QApplication, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("coach.desktop.patient.window.NEW_DAY_MS", 10)
    # A leap day begins.
    day = [date(2028, 2, 28)]
    coaching = ScriptedCoaching()
    window = PatientWindow(
        PLAN,
        lambda: ScriptedSource(seconds=10_000),
        lambda opened: coaching,
        today=lambda: day[0],
        cautions_read=True,
    )
    qtbot.addWidget(window)
    window.show()
    wait_for(qtbot, window, Stage.WELCOME)
    qtbot.wait(50)
    assert window.isVisible()
    day[0] = date(2028, 2, 29)
    qtbot.waitUntil(lambda: not window.isVisible(), timeout=LONG_MS)
    assert window.outdated
    assert coaching.closed_times == 1


def test_a_session_goes_on_over_midnight(
    app: QApplication, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("coach.desktop.patient.window.NEW_DAY_MS", 10)
    day = [date(2026, 12, 31)]
    window = PatientWindow(
        PLAN,
        lambda: ScriptedSource(seconds=10_000),
        lambda opened: ScriptedCoaching(),
        today=lambda: day[0],
        cautions_read=True,
    )
    qtbot.addWidget(window)
    window.show()
    start(qtbot, window)
    day[0] = date(2027, 1, 1)
    qtbot.wait(50)
    assert window.isVisible()
    assert not window.outdated
    window.close()


def test_what_is_announced_stands_together(open_window: Opener, qtbot: QtBot) -> None:
    window = open_window(lambda: ScriptedSource(), lambda opened: ScriptedCoaching())
    wait_for(qtbot, window, Stage.WELCOME)
    for number in range(1, 6):
        window.announce(f"Session {number} was interrupted.")
    said = window.banner.sentence.text()
    assert said == (
        "Session 1 was interrupted. Session 2 was interrupted. Session 3 was interrupted. "
        "And 2 more of the kind."
    )
    window.close()
