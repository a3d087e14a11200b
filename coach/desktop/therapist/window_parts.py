"""What the therapist's window is put together from, and its line of messages."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from PyQt6.QtCore import Qt, pyqtSignal
from PyQt6.QtGui import QResizeEvent
from PyQt6.QtWidgets import (
    QApplication,
    QHBoxLayout,
    QLabel,
    QStackedWidget,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from coach.desktop.shared.enlarged import Downward, scaled
from coach.desktop.shared.theme import SPACES_PX
from coach.desktop.therapist.import_progress import ImportProgress
from coach.desktop.therapist.keys import key_name
from coach.desktop.therapist.patient_page import PatientPage
from coach.desktop.therapist.plan_fields import said
from coach.desktop.therapist.records_page import RecordsPage
from coach.desktop.therapist.side_panel import SidePanel
from coach.review.overview import Overview
from coach.storage.store import Store
from coach.texts import translate

_PEOPLE_PX, _LEAST_PX = 252, 640
"""Width of the list of patients, and what must be left beside it for the pages."""
_ANY_PX = 16_777_215
"""Qt's own bound of a width."""


class WindowParts(QWidget):
    """The list of patients, and beside it the course and the records of the chosen one."""

    turned = pyqtSignal()
    """Another page is in front."""

    def __init__(self, store: Store, today: Callable[[], date]) -> None:
        """Begin empty."""
        super().__init__()
        self.setObjectName("page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._anybody = False
        self.panel = SidePanel()
        self.page = PatientPage()
        self.records = RecordsPage(store, today)
        self.progress = ImportProgress()
        self._message = said()
        self._message.setAccessibleName(translate("therapist", "Message"))
        self._message.setContentsMargins(SPACES_PX[3], SPACES_PX[1], SPACES_PX[3], SPACES_PX[1])
        self._message.hide()
        self._course = _stack(_nobody(), _no_session(), Downward(self.page, self.page))
        self._aside, self._people = True, Downward(self.panel)
        self._tabs = QTabWidget()
        self._tabs.setDocumentMode(True)
        self._tabs.setAccessibleName(translate("therapist", "Course and records"))
        if (bar := self._tabs.tabBar()) is not None:
            bar.setDrawBase(False)
            bar.setAccessibleName(translate("therapist", "Course or records"))
        self._written = Downward(self.records, self.records)
        self._add_tab(self._course, translate("therapist", "Course"), "Ctrl+1")
        self._add_tab(self._written, translate("therapist", "Records"), "Ctrl+2")
        self._tabs.currentChanged.connect(self.turned)
        right = QVBoxLayout()
        right.setSpacing(0)
        right.addWidget(self.progress)
        right.addWidget(self._message)
        right.addWidget(self._tabs, 1)
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(0)
        self._row.addLayout(right, 1)
        self._set_aside()

    def _add_tab(self, page: QWidget, name: str, keys: str, at: int = -1) -> None:
        self._tabs.setTabToolTip(self._tabs.insertTab(at, page, name), key_name(keys))

    def resizeEvent(self, a0: QResizeEvent | None) -> None:  # noqa: N802
        """Make the list of patients a page of its own where it would leave too little room."""
        aside = self.width() >= scaled(_PEOPLE_PX + _LEAST_PX)
        if aside is not self._aside:
            self._aside = aside
            self._set_aside()
        super().resizeEvent(a0)

    def _set_aside(self) -> None:
        focused = QApplication.focusWidget()
        self.panel.stand_aside(self._aside)
        if self._aside:
            self._tabs.removeTab(self._tabs.indexOf(self._people))
            self._people.setFixedWidth(scaled(_PEOPLE_PX))
            self._row.insertWidget(0, self._people)
            self._people.show()
        elif self._tabs.indexOf(self._people) < 0:
            self._people.setMinimumWidth(0)
            self._people.setMaximumWidth(_ANY_PX)
            self._add_tab(self._people, translate("therapist", "Patients"), "Ctrl+3", at=0)
        self.show_anybody(self._anybody)
        if focused is not None and self.isAncestorOf(focused):
            focused.setFocus()

    @property
    def on_records(self) -> bool:
        """Whether the records are in front."""
        return self._tabs.currentWidget() is self._written

    @property
    def telling(self) -> str:
        """The message; empty where there is none."""
        return "" if self._message.isHidden() else self._message.text()

    def show_anybody(self, anybody: bool) -> None:
        """Show the pages, or what to do where there is nobody."""
        self._anybody = anybody
        self._tabs.setTabVisible(self._tabs.indexOf(self._written), anybody)
        if (bar := self._tabs.tabBar()) is not None:
            bar.setVisible(anybody or not self._aside)
        if not anybody:
            self._course.setCurrentIndex(0)

    def show_overview(self, overview: Overview | None) -> None:
        """Show a patient's course, or what to do where there is none yet."""
        self._course.setCurrentIndex(1 if overview is None else 2)
        if overview is not None:
            self.page.show_overview(overview)

    def show_people(self) -> None:
        """Turn to the list of patients."""
        if not self._aside:
            self._tabs.setCurrentWidget(self._people)
        self.panel.list.setFocus()

    def show_course(self) -> None:
        """Turn to the course."""
        self._tabs.setCurrentWidget(self._course)
        self.page.table.setFocus()

    def show_records(self) -> None:
        """Turn to the records."""
        self._tabs.setCurrentWidget(self._written)
        self.records.list.setFocus()

    def stand_as(self, other: WindowParts) -> None:
        """Turn to the page that another window has in front, and say what it says."""
        if other.on_records:
            self.show_records()
        if other.telling:
            self.tell(other.telling, other._message.property("role"))

    def tell(self, text: str, role: str = "soft") -> None:
        """Show a message; ``role`` is its look in the theme."""
        self._message.setProperty("role", role)
        if (style := self._message.style()) is not None:
            style.polish(self._message)
        self._message.setText(text)
        self._message.show()


def _stack(nobody: str, no_session: str, page: QWidget) -> QStackedWidget:
    """Give texts for where there is nothing to show, with a page behind them."""
    stack = QStackedWidget()
    for nothing in (nobody, no_session):
        text = QLabel(nothing)
        text.setProperty("role", "lead")
        text.setAlignment(Qt.AlignmentFlag.AlignCenter)
        text.setWordWrap(True)
        text.setContentsMargins(*(SPACES_PX[4],) * 4)
        stack.addWidget(Downward(text))
    stack.addWidget(page)
    return stack


def _nobody() -> str:
    return translate(
        "therapist",
        "Nobody here yet.\n\n"
        "Press New patient ({new}) to begin with a person, or drop session files or a folder of "
        "them into this window (Import files, {files}).\n"
        "A patient's program leaves one file a session, ending in .shoulder.zip or, where it is "
        "sealed for the practice, in .shoulder.age.",
    ).format(new=key_name("Ctrl+N"), files=key_name("Ctrl+O"))


def _no_session() -> str:
    return translate(
        "therapist",
        "No sessions yet.\n\n"
        "Write down what you know under Records ({records}), make a plan ({plan}) and send its "
        "file.\nWhat comes back is imported with {files}.",
    ).format(records=key_name("Ctrl+2"), plan=key_name("Ctrl+L"), files=key_name("Ctrl+O"))
