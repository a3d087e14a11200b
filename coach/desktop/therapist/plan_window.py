"""The window in which a plan is made: opened, changed, saved."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from pathlib import Path

from PyQt6.QtCore import Qt, pyqtSignal
from PyQt6.QtGui import QKeySequence, QShortcut
from PyQt6.QtWidgets import QHBoxLayout, QMessageBox, QVBoxLayout, QWidget

from coach.catalogue import catalogue
from coach.desktop.shared.enlarged import beside_or_below, let_scroll, scaled
from coach.desktop.shared.file_questions import ask_file, ask_new_file
from coach.desktop.shared.theme import SPACES_PX, type_scale
from coach.desktop.therapist.button import Button
from coach.desktop.therapist.keys import key_name
from coach.desktop.therapist.plan_draft import plan_kinds, plan_name
from coach.desktop.therapist.plan_fields import said
from coach.desktop.therapist.plan_issue import PlanIssue
from coach.desktop.therapist.plan_page import PlanPage
from coach.documents.plan import MAX_PLAN_BYTES, read_plan, write_plan
from coach.domain.fault import Fault
from coach.domain.plan import Plan
from coach.storage.atomic import write_bytes
from coach.storage.keys import newest_for, practice_key_path
from coach.storage.session_file import read_bounded
from coach.storage.store import Store
from coach.texts import translate

_BESIDE_PX = 900


class PlanWindow(QWidget):
    """A window of its own, so that the patient's record can be read beside it."""

    issued = pyqtSignal(str)
    """Who was given a plan, which is in the store now."""

    def __init__(
        self,
        parent: QWidget | None = None,
        today: Callable[[], date] = date.today,
        store: Store | None = None,
    ) -> None:
        """Begin with an empty plan; in ``store`` plans are entered when their file is saved."""
        super().__init__(parent, Qt.WindowType.Window)
        self._issue = PlanIssue(store, today) if store is not None else None
        self.setObjectName("page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setWindowTitle(translate("plans", "Plan"))
        self.title = said("title")
        self.page, self._head = PlanPage(today), QHBoxLayout()
        self.message = said("soft")
        self.message.hide()
        self.message.setAccessibleName(translate("plans", "Message"))
        column = QVBoxLayout(self)
        column.setContentsMargins(SPACES_PX[3], SPACES_PX[2], SPACES_PX[3], SPACES_PX[2])
        column.setSpacing(SPACES_PX[1])
        column.addLayout(self._top())
        column.addWidget(self.page, 1)
        column.addWidget(self.message)
        self.page.told.connect(self._tell)
        self.page.refused.connect(self._warn)
        self.page.code_changed.connect(self._name)
        self._name("")
        let_scroll(self, self)
        self.resize(1280, 800)
        self.page.head.code.setFocus()

    def _top(self) -> QHBoxLayout:
        caution = said("soft", size_px=type_scale().small_px + 1)
        caution.setText(
            translate(
                "plans",
                "The program proposes usual doses; the licensed practitioner who examined the "
                "shoulder decides.",
            )
        )
        titles = QVBoxLayout()
        titles.setSpacing(0)
        titles.addWidget(self.title)
        titles.addWidget(caution)
        buttons = QHBoxLayout()
        self._head.addLayout(titles, 1)
        self._head.addLayout(buttons)
        self._head.setSpacing(SPACES_PX[1])
        for text, keys, act in (
            (translate("plans", "New plan"), "Ctrl+N", self._ask_new),
            (translate("plans", "Open plan\N{HORIZONTAL ELLIPSIS}"), "Ctrl+O", self._ask_open),
            (translate("plans", "&Save plan\N{HORIZONTAL ELLIPSIS}"), "Ctrl+S", self._ask_save),
        ):
            button = Button(text)
            button.setToolTip(key_name(keys))
            button.clicked.connect(act)
            buttons.addWidget(button)
            QShortcut(QKeySequence(keys), self).activated.connect(act)
        buttons.addStretch(1)
        button.setProperty("role", "primary")
        return self._head

    def reflow(self, width_px: int) -> None:
        """Put below each other what has too little room beside each other."""
        beside_or_below(self._head, beside=width_px >= scaled(_BESIDE_PX))
        self.page.reflow(width_px)

    def _name(self, code: str) -> None:
        title = translate("plans", "Plan for {code}") if code else translate("plans", "New plan")
        self.title.setText(title.format(code=code))

    def begin_for(self, code: str) -> None:
        """Begin a known person's next plan from the last one. Raises ``Fault``.

        Unsaved changes stay, and a sentence says so.
        """
        if self._issue is None:
            return
        start = self._issue.start(code)
        if self.page.dirty:
            self._warn(
                translate(
                    "plans",
                    "The plan shown here has changes that are not saved: save it, or begin anew "
                    "with {key}, before one for {code} is made.",
                ).format(key=key_name("Ctrl+N"), code=code)
            )
            return
        self.message.hide()
        self.page.begin_for(start)
        self._renew_key()

    def save(self, path: Path) -> Plan:
        """Write the plan; from then on changes are told against it. Raises ``Fault``.

        With a store it is entered there as given out; gives it with its revision.
        """
        made = self.page.make()
        if self._issue is None:
            write_bytes(path, write_plan(made))
        else:
            made = self._issue.give_out(made, path)
        self.page.begin(made)
        if self._issue is not None:
            self.issued.emit(made.patient_code)
        return made

    def open(self, path: Path) -> None:
        """Show the plan of a file, to change it; a ``Fault`` where it is none."""
        data = read_bounded(path, MAX_PLAN_BYTES, "plan file")
        self.page.begin(read_plan(data, path.name, catalogue().by_name))
        self._tell(translate("plans", "Opened {file}.").format(file=path.name))
        self._renew_key()

    def _renew_key(self) -> None:
        """Put the practice's newest key where a plan has an older one, and say so."""
        key = self.page.head.key.text()
        newest = newest_for(practice_key_path(), key)
        if newest != key:
            self.page.carry_key(newest)
            self._tell(
                translate("plans", "The practice's key was renewed: this plan carries the new one.")
            )

    def may_discard(self) -> bool:
        """Ask whether unsaved changes may go; True where there are none."""
        if not self.page.dirty:
            return True
        buttons = QMessageBox.StandardButton
        answer = QMessageBox.question(
            self,
            translate("plans", "Plan"),
            translate("plans", "The plan has changes that are not saved. Discard them?"),
            buttons.Discard | buttons.Cancel,
            buttons.Cancel,
        )
        return answer == buttons.Discard

    def _ask_new(self) -> None:
        if self.may_discard():
            self.page.begin(None)
            self.page.head.code.setFocus()

    def _ask_open(self) -> None:
        if not self.may_discard():
            return
        path = ask_file(self, translate("plans", "Open a plan"), plan_kinds())
        try:
            if path is not None:
                self.open(path)
        except Fault as fault:
            self._warn(str(fault))

    def _ask_save(self) -> None:
        try:
            made = self.page.make()
            if not self._may_follow(made):
                return
        except Fault as fault:
            self._warn(str(fault))
            return
        proposed = plan_name(self._issue.numbered(made) if self._issue is not None else made)
        path = ask_new_file(self, translate("plans", "Save the plan"), proposed, plan_kinds())
        if path is None:
            return
        path = path if path.suffix.lower() == ".json" else path.with_name(f"{path.name}.json")
        try:
            made = self.save(path)
        except Fault as fault:
            self._warn(str(fault))
            return
        told = translate("plans", "Revision {revision} of the plan is in {path}.")
        if self._issue is not None:
            told = translate(
                "plans",
                "Revision {revision} of the plan is in {path}, and in the store as given out.",
            )
        self._tell(told.format(revision=made.revision, path=path))

    def _may_follow(self, made: Plan) -> bool:
        """Ask whether a plan may follow one that was given out since it was begun."""
        last = self._issue.last(made.patient_code) if self._issue is not None else None
        if last is None or made.revision > last.revision:
            return True
        buttons = QMessageBox.StandardButton
        answer = QMessageBox.question(
            self,
            translate("plans", "Plan"),
            translate(
                "plans",
                "{code} was given revision {revision} of a plan, which is newer than the one this "
                "was begun from. Give this one out as the next revision?",
            ).format(code=made.patient_code, revision=last.revision),
            buttons.Yes | buttons.No,
            buttons.No,
        )
        return answer == buttons.Yes

    def _tell(self, text: str, role: str = "soft") -> None:
        self.message.setProperty("role", role)
        if (style := self.message.style()) is not None:
            style.polish(self.message)
        self.message.setText(text)
        self.message.show()

    def _warn(self, text: str) -> None:
        self._tell(text, "caution")
