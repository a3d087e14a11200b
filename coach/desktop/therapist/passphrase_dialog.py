"""Asking for a passphrase and unlocking with it while the window stays alive."""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeVar

from PyQt6.QtCore import Qt, QThread
from PyQt6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QProgressBar,
    QVBoxLayout,
    QWidget,
)

from coach.desktop.shared.enlarged import scaled
from coach.desktop.shared.theme import SPACES_PX
from coach.desktop.therapist.button import Button
from coach.domain.fault import Fault
from coach.texts import translate

T = TypeVar("T")

_WIDTH_PX = 520


def unlocked(question: str, unlock: Callable[[str], T], parent: QWidget | None = None) -> T | None:
    """Ask until ``unlock`` takes the passphrase; None where the question was put aside.

    ``unlock`` runs in a thread of its own, since making a key out of a passphrase is slow by
    design. A ``Fault`` of it is shown and the passphrase asked for again.
    """
    found: list[T] = []
    dialog = PassphraseDialog(question, lambda passphrase: found.append(unlock(passphrase)), parent)
    dialog.exec()
    # A window over which it asked would keep it, with what was typed.
    dialog.deleteLater()
    return found[0] if found else None


class PassphraseDialog(QDialog):
    """Hands what was typed to ``unlock`` and closes when that comes back without a ``Fault``."""

    def __init__(
        self, question: str, unlock: Callable[[str], object], parent: QWidget | None = None
    ) -> None:
        """Ask ``question`` in a window of its own."""
        super().__init__(parent)
        self._unlock = unlock
        self._attempt: _Attempt | None = None
        self.setWindowTitle(translate("therapist", "Shoulder review"))
        self.field = QLineEdit()
        self.field.setEchoMode(QLineEdit.EchoMode.Password)
        self.field.setAccessibleName(translate("therapist", "Passphrase"))
        self.field.setAccessibleDescription(question)
        self.message = QLabel()
        self.message.setWordWrap(True)
        self.busy = QProgressBar()
        self.busy.setRange(0, 0)
        self.busy.setAccessibleName(translate("therapist", "Unlocking"))
        self.enter = Button(translate("therapist", "&Unlock"))
        self.enter.setProperty("role", "primary")
        self.enter.setDefault(True)
        self.enter.clicked.connect(self._try)
        self.put_aside = Button(translate("therapist", "&Cancel"))
        self.put_aside.setAutoDefault(False)
        self.put_aside.clicked.connect(self.reject)
        self._arrange(question)
        self._show_state(busy=False)

    def _arrange(self, question: str) -> None:
        asking = QLabel(question)
        asking.setWordWrap(True)
        buttons = QHBoxLayout()
        buttons.setSpacing(SPACES_PX[2])
        buttons.addStretch(1)
        buttons.addWidget(self.enter)
        buttons.addWidget(self.put_aside)
        # The same height whether it asks, unlocks or says why it did not.
        self.message.setMinimumHeight(4 * self.fontMetrics().lineSpacing())
        self.message.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.busy.setFixedHeight(SPACES_PX[2])
        kept = self.busy.sizePolicy()
        kept.setRetainSizeWhenHidden(True)
        self.busy.setSizePolicy(kept)
        column = QVBoxLayout(self)
        column.setContentsMargins(*(SPACES_PX[3],) * 4)
        column.setSpacing(SPACES_PX[2])
        for widget in (asking, self.field, self.busy, self.message):
            column.addWidget(widget)
        column.addLayout(buttons)
        self.setFixedWidth(scaled(_WIDTH_PX))

    def _show_state(self, *, busy: bool, text: str = "") -> None:
        self.message.setProperty("role", "soft" if busy or not text else "caution")
        style = self.message.style()
        if style is not None:
            style.polish(self.message)
        wait = translate("therapist", "Unlocking, a moment please\N{HORIZONTAL ELLIPSIS}")
        self.message.setText(wait if busy else text)
        self.busy.setVisible(busy)
        for widget in (self.field, self.enter, self.put_aside):
            widget.setEnabled(not busy)

    def _try(self) -> None:
        if self._attempt is None:
            self._show_state(busy=True)
            self._attempt = _Attempt(self._unlock, self.field.text())
            self._attempt.finished.connect(self._tried)
            self._attempt.start()

    def _tried(self) -> None:
        attempt, self._attempt = self._attempt, None
        if attempt is None:
            return
        attempt.wait()
        if attempt.error is None:
            self.accept()
            return
        self._show_state(busy=False, text=str(attempt.error))
        self.field.selectAll()
        self.field.setFocus()
        if not isinstance(attempt.error, Fault):
            raise attempt.error

    def reject(self) -> None:
        """Put the question aside; what is being unlocked is waited for."""
        if self._attempt is None:
            super().reject()


class _Attempt(QThread):
    """Unlocks once; ``error`` is what came in between."""

    def __init__(self, unlock: Callable[[str], object], passphrase: str) -> None:
        super().__init__()
        self._unlock, self._passphrase = unlock, passphrase
        self.error: Exception | None = None

    def run(self) -> None:
        try:
            self._unlock(self._passphrase)
        except Exception as error:
            self.error = error
