"""What the therapist's window is put together from, and its line of messages."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from PyQt6.QtCore import Qt, pyqtSignal
from PyQt6.QtWidgets import QHBoxLayout, QLabel, QStackedWidget, QTabWidget, QVBoxLayout, QWidget

from coach.desktop.shared.theme import SPACES_PX
from coach.desktop.therapist.keys import key_name
from coach.desktop.therapist.patient_page import PatientPage
from coach.desktop.therapist.plan_fields import said
from coach.desktop.therapist.records_page import RecordsPage
from coach.desktop.therapist.side_panel import SidePanel
from coach.review.overview import Overview
from coach.storage.store import Store
from coach.texts import translate


class WindowParts(QWidget):
    """The list of patients, and beside it the course and the records of the chosen one."""

    turned = pyqtSignal()
    """Another page is in front."""

    def __init__(self, store: Store, today: Callable[[], date]) -> None:
        """Begin empty."""
        super().__init__()
        self.setObjectName("page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.panel = SidePanel()
        self.page = PatientPage()
        self.records = RecordsPage(store, today)
        self._message = said()
        self._message.setAccessibleName(translate("therapist", "Message"))
        self._message.setContentsMargins(SPACES_PX[3], SPACES_PX[1], SPACES_PX[3], SPACES_PX[1])
        self._message.hide()
        self._course = _stack(_no_session(), self.page)
        self._tabs = QTabWidget()
        self._tabs.setDocumentMode(True)
        self._tabs.setAccessibleName(translate("therapist", "Course and records"))
        if (bar := self._tabs.tabBar()) is not None:
            bar.setDrawBase(False)
            bar.setAccessibleName(translate("therapist", "Course or records"))
        for page, name, keys in (
            (self._course, translate("therapist", "Course"), "Ctrl+1"),
            (self.records, translate("therapist", "Records"), "Ctrl+2"),
        ):
            self._tabs.setTabToolTip(self._tabs.addTab(page, name), key_name(keys))
        self._tabs.currentChanged.connect(self.turned)
        self._stack = _stack(_nobody(), self._tabs)
        right = QVBoxLayout()
        right.setSpacing(0)
        right.addWidget(self._message)
        right.addWidget(self._stack, 1)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self.panel)
        row.addLayout(right, 1)

    @property
    def on_records(self) -> bool:
        """Whether the records are in front."""
        return self._tabs.currentWidget() is self.records

    @property
    def telling(self) -> str:
        """The message; empty where there is none."""
        return "" if self._message.isHidden() else self._message.text()

    def show_anybody(self, anybody: bool) -> None:
        """Show the pages, or what to do where there is nobody."""
        self._stack.setCurrentIndex(int(anybody))

    def show_overview(self, overview: Overview | None) -> None:
        """Show a patient's course, or what to do where there is none yet."""
        self._course.setCurrentIndex(int(overview is not None))
        if overview is not None:
            self.page.show_overview(overview)

    def show_course(self) -> None:
        """Turn to the course."""
        self._tabs.setCurrentWidget(self._course)
        self.page.table.setFocus()

    def show_records(self) -> None:
        """Turn to the records."""
        self._tabs.setCurrentWidget(self.records)
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


def _stack(nothing: str, page: QWidget) -> QStackedWidget:
    """Give a text for where there is nothing, with a page behind it."""
    text = QLabel(nothing)
    text.setProperty("role", "lead")
    text.setAlignment(Qt.AlignmentFlag.AlignCenter)
    text.setWordWrap(True)
    text.setContentsMargins(*(SPACES_PX[4],) * 4)
    stack = QStackedWidget()
    stack.addWidget(text)
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
