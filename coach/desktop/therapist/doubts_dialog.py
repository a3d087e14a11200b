"""Doubtful sessions, one by one: whose is it, or is it left out."""

from __future__ import annotations

from PyQt6.QtCore import Qt, pyqtSignal
from PyQt6.QtGui import QKeySequence, QShortcut
from PyQt6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QInputDialog,
    QListWidget,
    QListWidgetItem,
    QVBoxLayout,
    QWidget,
)

from coach.desktop.shared.enlarged import scaled
from coach.desktop.shared.theme import SPACES_PX, type_scale
from coach.desktop.shared.typeface import font
from coach.desktop.therapist.button import Button
from coach.desktop.therapist.keys import key_name
from coach.desktop.therapist.plan_fields import said
from coach.desktop.therapist.rows import set_rows
from coach.domain.fault import Fault
from coach.review.wording import day
from coach.storage.store import Decision, Doubt, Store
from coach.texts import translate

_SIZE_PX, _MOST_PX = (760, 460), (1240, 740)
_ROLE = Qt.ItemDataRole.UserRole


class DoubtsDialog(QDialog):
    """Shows every doubtful session, the undecided ones first, and keeps what is decided."""

    decided = pyqtSignal(str)
    """Whose session it is by now."""

    def __init__(self, parent: QWidget, store: Store) -> None:
        """Show what the store has; raises ``Fault`` where it cannot be read."""
        super().__init__(parent)
        self._store = store
        self.setWindowTitle(translate("therapist", "Doubtful sessions"))
        self.resize(*(min(scaled(px), most) for px, most in zip(_SIZE_PX, _MOST_PX, strict=True)))
        lead = said("soft")
        lead.setText(
            translate(
                "therapist",
                "These sessions contradict what the practice knows. Until you decide, each counts "
                "as the person's whom its file names. A decision can be taken back at any time.",
            )
        )
        self.list = QListWidget()
        self.list.setAccessibleName(translate("therapist", "Doubtful sessions"))
        self.list.setWordWrap(True)
        self.list.setTextElideMode(Qt.TextElideMode.ElideNone)
        self.list.setResizeMode(QListWidget.ResizeMode.Adjust)
        set_rows(self.list, wrapped=True)
        self.list.setAlternatingRowColors(True)
        self.list.setFont(font(type_scale().small_px + 1))
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.itemActivated.connect(lambda _: self._ask_whose())
        self.list.currentRowChanged.connect(lambda _: self._offer())
        self.message = said("caution")
        self.message.setAccessibleName(translate("therapist", "Message"))
        self.message.hide()
        column = QVBoxLayout(self)
        column.setContentsMargins(*(SPACES_PX[3],) * 4)
        column.setSpacing(SPACES_PX[2])
        column.addWidget(lead)
        column.addWidget(self.list, 1)
        column.addWidget(self.message)
        column.addLayout(self._buttons())
        self._show(0)

    def _buttons(self) -> QHBoxLayout:
        self.belongs = Button(translate("therapist", "&Belongs to\N{HORIZONTAL ELLIPSIS}"))
        self.leave_out = Button(translate("therapist", "&Leave out"))
        self.take_back = Button(translate("therapist", "&Take back"))
        close = Button(translate("therapist", "&Close"))
        row = QHBoxLayout()
        row.setSpacing(SPACES_PX[1])
        for button, keys, act in (
            (self.belongs, "Enter", self._ask_whose),
            (self.leave_out, "Del", lambda: self._decide(Decision.LEFT_OUT)),
            (self.take_back, "Ctrl+Z", lambda: self._decide(Decision.OPEN)),
            (close, "Esc", self.close),
        ):
            button.setToolTip(key_name(keys))
            button.setAutoDefault(False)
            button.clicked.connect(lambda _, act=act: act())
            row.addWidget(button)
        for keys, button in (("Del", self.leave_out), ("Ctrl+Z", self.take_back)):
            shortcut = QShortcut(QKeySequence(keys), self.list)
            shortcut.setContext(Qt.ShortcutContext.WidgetShortcut)
            shortcut.activated.connect(button.click)
        row.insertStretch(3, 1)
        return row

    @property
    def doubt(self) -> Doubt | None:
        """The chosen one."""
        item = self.list.currentItem()
        return item.data(_ROLE) if item is not None else None

    def _show(self, row: int) -> None:
        doubts = self._store.doubts(tuple(Decision))
        self.list.clear()
        for doubt in sorted(doubts, key=lambda d: d.decision is not Decision.OPEN):
            item = QListWidgetItem(_text(doubt))
            item.setData(_ROLE, doubt)
            self.list.addItem(item)
        self.list.setCurrentRow(max(0, min(row, self.list.count() - 1)))
        self._offer()

    def _offer(self) -> None:
        doubt = self.doubt
        self.belongs.setEnabled(doubt is not None)
        is_open = doubt is not None and doubt.decision is Decision.OPEN
        self.leave_out.setEnabled(doubt is not None and doubt.decision is not Decision.LEFT_OUT)
        self.take_back.setEnabled(doubt is not None and not is_open)

    def _ask_whose(self) -> None:
        if (doubt := self.doubt) is None:
            return
        try:
            codes = [person.code for person in self._store.people()]
        except Fault as fault:
            self._warn(fault)
            return
        code, taken = QInputDialog.getItem(
            self,
            translate("therapist", "Doubtful session"),
            translate("therapist", "The session of {day} belongs to").format(
                day=day(doubt.started_at.date())
            ),
            codes,
            codes.index(doubt.code) if doubt.code in codes else 0,
            False,
        )
        if taken:
            self._decide(Decision.BELONGS, code)

    def _decide(self, decision: Decision, code: str | None = None) -> None:
        if (doubt := self.doubt) is None:
            return
        try:
            now = self._store.decide(doubt, decision, code)
            self.message.hide()
            self._show(self.list.currentRow())
        except Fault as fault:
            self._warn(fault)
        else:
            self.decided.emit(now.code)

    def _warn(self, fault: Fault) -> None:
        self._show(self.list.currentRow())
        self.message.setText(str(fault))
        self.message.show()


def _text(doubt: Doubt) -> str:
    at = doubt.started_at
    match doubt.decision:
        case Decision.OPEN:
            state = translate("therapist", "Not decided, session of {day}, {time}: {doubt}")
        case Decision.BELONGS:
            state = translate("therapist", "Belongs to {code}, session of {day}, {time}: {doubt}")
        case Decision.LEFT_OUT:
            state = translate("therapist", "Left out, session of {day}, {time}: {doubt}")
    return state.format(
        code=doubt.code, day=day(at.date()), time=f"{at:%H:%M}", doubt=doubt.sentence
    )
