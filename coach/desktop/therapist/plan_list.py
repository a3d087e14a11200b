"""The exercises of a plan in their order."""

from __future__ import annotations

from collections.abc import Sequence

from PyQt6.QtCore import QSignalBlocker, Qt, pyqtSignal
from PyQt6.QtGui import QKeySequence, QShortcut
from PyQt6.QtWidgets import QHBoxLayout, QListWidget, QVBoxLayout, QWidget

from coach.desktop.shared.theme import SPACES_PX, type_scale
from coach.desktop.shared.typeface import font
from coach.desktop.therapist.button import Button
from coach.desktop.therapist.keys import key_name
from coach.desktop.therapist.rows import set_rows
from coach.texts import translate


class PlanList(QWidget):
    """Shows a text for each exercise; tells which is chosen, moved, removed or to be edited."""

    chosen = pyqtSignal(int)
    edit_wanted = pyqtSignal()
    move_wanted = pyqtSignal(int)
    remove_wanted = pyqtSignal()

    def __init__(self) -> None:
        """Begin empty."""
        super().__init__()
        self.list = QListWidget()
        self.list.setAccessibleName(translate("plans", "Exercises of the plan"))
        self.list.setWordWrap(True)
        self.list.setTextElideMode(Qt.TextElideMode.ElideNone)
        self.list.setResizeMode(QListWidget.ResizeMode.Adjust)
        set_rows(self.list, wrapped=True)
        self.list.setAlternatingRowColors(True)
        self.list.setFont(font(type_scale().small_px + 1))
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.currentRowChanged.connect(self.chosen)
        self.list.itemActivated.connect(lambda _: self.edit_wanted.emit())
        buttons = QHBoxLayout()
        buttons.setSpacing(SPACES_PX[1])
        for text, keys, act in (
            (translate("plans", "&Up"), "Alt+Up", lambda: self.move_wanted.emit(-1)),
            (translate("plans", "D&own"), "Alt+Down", lambda: self.move_wanted.emit(1)),
            (translate("plans", "Re&move"), "Del", self.remove_wanted.emit),
        ):
            button = Button(text)
            button.setToolTip(key_name(keys))
            button.clicked.connect(lambda _, act=act: act())
            buttons.addWidget(button)
            shortcut = QShortcut(QKeySequence(keys), self.list)
            shortcut.setContext(Qt.ShortcutContext.WidgetShortcut)
            shortcut.activated.connect(act)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACES_PX[1])
        column.addWidget(self.list, 1)
        column.addLayout(buttons)

    @property
    def row(self) -> int:
        """The chosen row, -1 without one."""
        return self.list.currentRow()

    def show_texts(self, texts: Sequence[str], row: int) -> None:
        """Show other texts with ``row`` chosen, without a signal of a person's choice."""
        with QSignalBlocker(self.list):
            while self.list.count() > len(texts):
                self.list.takeItem(self.list.count() - 1)
            for at, text in enumerate(texts):
                item = self.list.item(at)
                if item is None:
                    self.list.addItem(text)
                elif item.text() != text:
                    item.setText(text)
            self.list.setCurrentRow(row)
        if (item := self.list.item(row)) is not None:
            self.list.scrollToItem(item)
