"""The window in which a plan is made: opened, changed, saved."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from pathlib import Path

from PyQt6.QtCore import Qt
from PyQt6.QtGui import QKeySequence, QShortcut
from PyQt6.QtWidgets import QFileDialog, QHBoxLayout, QMessageBox, QPushButton, QVBoxLayout, QWidget

from coach.catalogue import catalogue
from coach.desktop.shared.theme import SPACES_PX, type_scale
from coach.desktop.therapist.plan_draft import plan_name
from coach.desktop.therapist.plan_fields import said
from coach.desktop.therapist.plan_page import PlanPage
from coach.documents.plan import MAX_PLAN_BYTES, read_plan, write_plan
from coach.domain.fault import Fault
from coach.storage.atomic import write_bytes
from coach.storage.disk_fault import disk_fault

_CAUTION = (
    "The program proposes usual doses; the licensed practitioner who examined the shoulder decides."
)
_FILES = "Plans (*.json);;All files (*)"


class PlanWindow(QWidget):
    """A window of its own, so that the patient's record can be read beside it."""

    def __init__(self, parent: QWidget | None = None, today: Callable[[], date] = date.today):
        """Begin with an empty plan."""
        super().__init__(parent, Qt.WindowType.Window)
        self.setObjectName("page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setWindowTitle("Plan")
        self.title = said("title")
        self.page = PlanPage(today)
        self.message = said("soft")
        self.message.setAccessibleName("Message")
        column = QVBoxLayout(self)
        column.setContentsMargins(SPACES_PX[3], SPACES_PX[2], SPACES_PX[3], SPACES_PX[2])
        column.setSpacing(SPACES_PX[1])
        column.addLayout(self._top())
        column.addWidget(self.page, 1)
        column.addWidget(self.message)
        self.message.hide()
        self.page.told.connect(self._tell)
        self.page.refused.connect(self._warn)
        self.page.code_changed.connect(self._name)
        self._name("")
        self.resize(1280, 800)
        self.page.head.code.setFocus()

    def _top(self) -> QHBoxLayout:
        caution = said("soft", size_px=type_scale().small_px + 1)
        caution.setText(_CAUTION)
        titles = QVBoxLayout()
        titles.setSpacing(0)
        titles.addWidget(self.title)
        titles.addWidget(caution)
        top = QHBoxLayout()
        top.setSpacing(SPACES_PX[1])
        top.addLayout(titles, 1)
        for text, keys, act in (
            ("New plan", "Ctrl+N", self._ask_new),
            ("Open plan\N{HORIZONTAL ELLIPSIS}", "Ctrl+O", self._ask_open),
            ("&Save plan\N{HORIZONTAL ELLIPSIS}", "Ctrl+S", self._ask_save),
        ):
            button = QPushButton(text)
            button.setToolTip(keys)
            button.clicked.connect(act)
            top.addWidget(button)
            QShortcut(QKeySequence(keys), self).activated.connect(act)
        button.setProperty("role", "primary")
        return top

    def _name(self, code: str) -> None:
        self.title.setText(f"Plan for {code}" if code else "New plan")

    def save(self, path: Path) -> None:
        """Write the plan; from then on changes are told against it. Raises ``Fault``."""
        made = self.page.make()
        write_bytes(path, write_plan(made))
        self.page.begin(made)

    def open(self, path: Path) -> None:
        """Show the plan of a file, to change it; a ``Fault`` where it is none."""
        try:
            with path.open("rb") as file:
                data = file.read(MAX_PLAN_BYTES + 1)
        except OSError as error:
            raise disk_fault(error, path, "opened") from error
        self.page.begin(read_plan(data, path.name, catalogue().by_name))

    def may_discard(self) -> bool:
        """Ask whether unsaved changes may go; True where there are none."""
        if not self.page.dirty:
            return True
        buttons = QMessageBox.StandardButton
        answer = QMessageBox.question(
            self,
            "Plan",
            "The plan has changes that are not saved. Discard them?",
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
        name, _ = QFileDialog.getOpenFileName(self, "Open a plan", "", _FILES)
        if name:
            self._try(lambda: self.open(Path(name)), f"Opened {Path(name).name}.")

    def _ask_save(self) -> None:
        try:
            made = self.page.make()
        except Fault as fault:
            self._warn(str(fault))
            return
        name, _ = QFileDialog.getSaveFileName(self, "Save the plan", plan_name(made), _FILES)
        if name:
            path = Path(name)
            path = path if path.suffix.lower() == ".json" else path.with_name(f"{path.name}.json")
            self._try(
                lambda: self.save(path), f"Revision {made.revision} of the plan is in {path}."
            )

    def _try(self, act: Callable[[], None], done: str) -> None:
        try:
            act()
        except Fault as fault:
            self._warn(str(fault))
        else:
            self._tell(done)

    def _tell(self, text: str, role: str = "soft") -> None:
        self.message.setProperty("role", role)
        if (style := self.message.style()) is not None:
            style.polish(self.message)
        self.message.setText(text)
        self.message.show()

    def _warn(self, text: str) -> None:
        self._tell(text, "caution")
