"""Ctrl-C ends the windows and is told on."""

import signal
import sys

import pytest
from PyQt6.QtCore import QTimer
from PyQt6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from coach.desktop.shared import application as module
from coach.desktop.shared.application import create_application, run_windows


@pytest.fixture
def app(qapp: QApplication, monkeypatch: pytest.MonkeyPatch) -> QApplication:
    made = create_application(["test"])
    monkeypatch.setattr(sys, "excepthook", module._report)  # in place of the test runner's own
    return made


@pytest.mark.skipif(not hasattr(signal, "setitimer"), reason="needs an alarm")
def test_ctrl_c_ends_idle_windows_and_is_raised(app: QApplication, qtbot: QtBot) -> None:
    window = QWidget()
    qtbot.addWidget(window)
    window.show()
    # An alarm stands for the key: it too comes while nothing of ours runs.
    before = signal.signal(signal.SIGALRM, signal.default_int_handler)
    signal.setitimer(signal.ITIMER_REAL, 0.05)
    try:
        with pytest.raises(KeyboardInterrupt):
            run_windows(app)
    finally:
        signal.signal(signal.SIGALRM, before)


def test_closing_the_last_window_is_no_interrupt(app: QApplication, qtbot: QtBot) -> None:
    window = QWidget()
    qtbot.addWidget(window)
    window.show()
    QTimer.singleShot(0, window.close)
    assert run_windows(app) == 0
