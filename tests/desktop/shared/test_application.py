"""Ctrl-C ends the windows and is told on."""

import os
import signal
import threading

import pytest
from PyQt6.QtCore import QTimer
from PyQt6.QtGui import QPaintEvent
from PyQt6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from coach.desktop.shared.application import create_application, run_windows


class Painting(QWidget):
    """Gets Ctrl-C while it paints."""

    finished = 0

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: N802
        os.kill(os.getpid(), signal.SIGINT)
        self.finished += 1


@pytest.fixture
def app(qapp: QApplication) -> QApplication:
    return create_application(["test"])


def test_ctrl_c_ends_idle_windows_and_is_raised(app: QApplication, qtbot: QtBot) -> None:
    window = QWidget()
    qtbot.addWidget(window)
    window.show()
    key = threading.Timer(0.05, os.kill, (os.getpid(), signal.SIGINT))
    key.start()
    with pytest.raises(KeyboardInterrupt):
        run_windows(app)
    key.join()
    assert signal.getsignal(signal.SIGINT) is signal.default_int_handler


def test_ctrl_c_lets_a_painting_end(app: QApplication, qtbot: QtBot) -> None:
    window = Painting()
    qtbot.addWidget(window)
    QTimer.singleShot(0, window.show)
    with pytest.raises(KeyboardInterrupt):
        run_windows(app)
    assert window.finished


def test_closing_the_last_window_is_no_interrupt(app: QApplication, qtbot: QtBot) -> None:
    window = QWidget()
    qtbot.addWidget(window)
    window.show()
    QTimer.singleShot(0, window.close)
    assert run_windows(app) == 0
