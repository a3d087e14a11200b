from __future__ import annotations

import threading

import pytest
from PyQt6.QtCore import Qt, QTimer

from coach.desktop.therapist.passphrase_dialog import PassphraseDialog, unlocked
from coach.domain.fault import Fault

PATIENCE_S = 30


class Lock:
    """Takes one passphrase; stays busy until it is let go."""

    def __init__(self):
        self.thread = None
        self.let_go = threading.Event()

    def __call__(self, passphrase):
        self.thread = threading.get_ident()
        assert self.let_go.wait(PATIENCE_S)
        if passphrase != "four words together":
            raise Fault("The key does not open: type the passphrase again.")
        return "key"


@pytest.fixture
def lock():
    made = Lock()
    yield made
    made.let_go.set()


@pytest.fixture
def dialog(app, lock, qtbot):
    opened = PassphraseDialog("The passphrase of the key:", lock)
    qtbot.addWidget(opened)
    opened.show()
    return opened


def test_the_window_lives_while_it_unlocks(dialog, lock, qtbot):
    qtbot.keyClicks(dialog.field, "four words together")
    ticks = []
    timer = QTimer()
    timer.setInterval(5)
    timer.timeout.connect(lambda: ticks.append(dialog.busy.isVisible()))
    qtbot.keyClick(dialog.field, Qt.Key.Key_Return)
    timer.start()
    qtbot.waitUntil(lambda: len(ticks) > 3)
    assert all(ticks)
    assert "Unlocking" in dialog.message.text()
    assert not dialog.field.isEnabled()
    dialog.reject()  # what is being unlocked is waited for
    assert dialog.isVisible()
    lock.let_go.set()
    qtbot.waitUntil(lambda: not dialog.isVisible())
    assert dialog.result() == dialog.DialogCode.Accepted
    assert lock.thread != threading.get_ident()


def test_a_mistyped_passphrase_is_asked_for_again(dialog, lock, qtbot):
    lock.let_go.set()
    qtbot.keyClicks(dialog.field, "three words")
    qtbot.keyClick(dialog.field, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: "does not open" in dialog.message.text())
    assert not dialog.busy.isVisible()
    assert dialog.field.selectedText()
    qtbot.keyClicks(dialog.field, "four words together")
    qtbot.keyClick(dialog.field, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: not dialog.isVisible())


@pytest.mark.parametrize("key", [Qt.Key.Key_Return, Qt.Key.Key_Escape])
def test_what_was_unlocked_comes_back_and_nothing_when_put_aside(app, lock, qtbot, key):
    lock.let_go.set()

    def type_it():
        dialog = app.activeModalWidget()
        dialog.field.setText("four words together")
        qtbot.keyClick(dialog, key)

    QTimer.singleShot(0, type_it)
    assert unlocked("Passphrase:", lock) == ("key" if key == Qt.Key.Key_Return else None)
