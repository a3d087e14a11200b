"""A page of several leaves that are turned with buttons or arrow keys."""

from __future__ import annotations

from PyQt6.QtCore import QEvent, QObject, Qt, pyqtSignal
from PyQt6.QtGui import QKeyEvent
from PyQt6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from coach.desktop.patient.controls import KeyButton
from coach.desktop.patient.prose import ProsePage
from coach.desktop.patient.reading_area import ReadingArea, scroll_by_key
from coach.desktop.patient.wording import translate

_ONWARD = (Qt.Key.Key_Right, Qt.Key.Key_Down, Qt.Key.Key_PageDown)
_BACK = (Qt.Key.Key_Left, Qt.Key.Key_Up, Qt.Key.Key_PageUp)
_CLOSE = (Qt.Key.Key_Escape, Qt.Key.Key_Backspace)


class LeavesPage(ProsePage):
    """Title and number of the leaf above, ``body`` between, buttons below.

    Who inherits fills ``body`` and shows a leaf whenever ``turned`` gives its place.
    """

    closed = pyqtSignal()
    turned = pyqtSignal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        """Begin with no leaf."""
        super().__init__(parent)
        # It takes the keys where no button has the focus; it is no stop for Tab.
        self.setFocusPolicy(Qt.FocusPolicy.ClickFocus)
        self.leaf = 0
        self._count = 0
        self.title = self.line("", 0.056, bold=True)
        self.number = self.line("", 0.034, role="soft", wrap=False)
        self.body = QVBoxLayout()
        self.body.setSpacing(10)
        self.close_button = KeyButton(
            translate("LeavesPage", "Go back"), translate("LeavesPage", "Esc"), share=0.03
        )
        self.previous_button = KeyButton(translate("LeavesPage", "Page before"), "←", share=0.03)
        self.next_button = KeyButton(
            translate("LeavesPage", "Next page"), "→", "primary", share=0.034
        )
        self.close_button.clicked.connect(self.closed)
        self.previous_button.clicked.connect(lambda: self.turn(-1))
        self.next_button.clicked.connect(lambda: self.turn(1))
        head = QHBoxLayout()
        head.addWidget(self.title, 1)
        head.addWidget(self.number)
        self.buttons = QHBoxLayout()
        self.buttons.setSpacing(16)
        self.buttons.addWidget(self.close_button, 3)
        self.buttons.addWidget(self.previous_button, 4)
        self.buttons.addWidget(self.next_button, 4)
        column = QVBoxLayout(self)
        column.setContentsMargins(40, 22, 40, 26)
        column.setSpacing(12)
        column.addLayout(head)
        self.body.setContentsMargins(0, 0, 0, 0)
        self.area = ReadingArea(self.body, translate("LeavesPage", "Page"), self)
        column.addWidget(self.area, 1)
        column.addLayout(self.buttons)

    def open_leaves(self, count: int) -> None:
        """Begin at the first of ``count`` leaves."""
        for button in self.findChildren(KeyButton):
            button.installEventFilter(self)
        self._count = count
        self._go(0)
        self.setFocus()

    def turn(self, step: int) -> None:
        """Go on or back by ``step`` leaves, no further than there are any."""
        target = min(max(self.leaf + step, 0), self._count - 1)
        if target != self.leaf:
            self._go(target)

    def handle_key(self, key: Qt.Key) -> bool:
        """Do what a key is for; False where it is for nothing here."""
        if scroll_by_key(self, key):
            pass
        elif key in _ONWARD:
            self.turn(1)
        elif key in _BACK:
            self.turn(-1)
        elif key in _CLOSE:
            self.closed.emit()
        else:
            return False
        return True

    def keyPressEvent(self, event: QKeyEvent | None) -> None:  # noqa: D102, N802
        if event is not None and not self.handle_key(Qt.Key(event.key())):
            super().keyPressEvent(event)

    def eventFilter(self, watched: QObject | None, event: QEvent | None) -> bool:  # noqa: D102, N802
        # A button with the focus would take the arrows to move it.
        if (
            isinstance(watched, KeyButton)
            and isinstance(event, QKeyEvent)
            and event.type() == QEvent.Type.KeyPress
            and self.handle_key(Qt.Key(event.key()))
        ):
            return True
        return super().eventFilter(watched, event)

    def _go(self, index: int) -> None:
        self.leaf = index
        self.turned.emit(index)
        self.area.to_top()
        self.setAccessibleName(self.title.text())
        self.number.setText(
            translate("LeavesPage", "{at} of {count}").format(at=index + 1, count=self._count)
            if self._count > 1
            else ""
        )
        for button, usable in (
            (self.previous_button, index > 0),
            (self.next_button, index < self._count - 1),
        ):
            if not usable and button.hasFocus():
                self.setFocus()
            button.setEnabled(usable)
