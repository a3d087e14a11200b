"""Ctrl-C ends the windows and is told on; windows fit the screen they are shown on."""

import os
import signal
import threading
from typing import cast

import pytest
from PyQt6.QtCore import QSize, QTimer
from PyQt6.QtGui import QPaintEvent, QScreen
from PyQt6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from coach.desktop.shared.application import create_application, run_windows, show_on_screen


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


class OnASmallScreen(QWidget):
    """On the commonest screen of old laptops, with a panel of 40 pixels."""

    room = QSize(1366, 728)

    def screen(self) -> QScreen:
        class Screen:
            def availableSize(_self) -> QSize:  # noqa: N802, N805
                return self.room

        return cast(QScreen, Screen())


@pytest.mark.parametrize("width", [1280, 1600])
def test_a_window_is_no_larger_than_its_screen(width: int, app: QApplication, qtbot: QtBot) -> None:
    window = OnASmallScreen()
    qtbot.addWidget(window)
    window.resize(width, 800)
    show_on_screen(window)
    assert window.isVisible()
    assert window.width() == min(width, 1366)
    assert 728 - 60 < window.height() < 728, "with room for a title bar"
