"""The left edge of the window: patients, importing, and what was refused."""

from __future__ import annotations

from collections.abc import Sequence

from PyQt6.QtCore import QItemSelectionModel, QModelIndex, Qt, pyqtSignal
from PyQt6.QtWidgets import (
    QLabel,
    QListView,
    QListWidget,
    QVBoxLayout,
    QWidget,
)

from coach.desktop.shared.cells import Cells
from coach.desktop.shared.enlarged import scaled
from coach.desktop.shared.theme import SPACES_PX, type_scale
from coach.desktop.shared.typeface import font
from coach.desktop.therapist.button import Button
from coach.desktop.therapist.keys import key_name
from coach.desktop.therapist.patient_list import PatientList
from coach.desktop.therapist.rows import set_rows
from coach.domain.practice import Person
from coach.review.cohort import Standing
from coach.review.counts import sessions_counted
from coach.review.wording import day
from coach.storage.store import Batch, PatientEntry, Refusal
from coach.texts import translate

_LIST_PX = 120
_REFUSED_PX = 150


class SidePanel(QWidget):
    """Shows a ``PatientList`` and the store's refusals; tells which patient is chosen."""

    patient_chosen = pyqtSignal(str)
    files_wanted = pyqtSignal()
    new_wanted = pyqtSignal()
    doubts_wanted = pyqtSignal()
    plan_wanted = pyqtSignal()
    forget_wanted = pyqtSignal()
    undo_wanted = pyqtSignal()

    def __init__(self) -> None:
        """Begin empty."""
        super().__init__()
        self._patients = PatientList(self)
        self.list = QListView()
        self.list.setModel(self._patients)
        self.list.setAccessibleName(translate("therapist", "Patients"))
        self.list.setFont(font(type_scale().small_px + 1))
        self.list.setWordWrap(True)
        self.list.setResizeMode(QListView.ResizeMode.Adjust)
        set_rows(self.list, across_px=3, wrapped=True)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setMinimumHeight(scaled(_LIST_PX))
        selection = self.list.selectionModel()
        assert selection is not None
        selection.currentRowChanged.connect(self._choose)
        self.import_files = _button(
            translate("therapist", "&Import files\N{HORIZONTAL ELLIPSIS}"), "Ctrl+O"
        )
        self.import_files.setProperty("role", "primary")
        self.import_files.clicked.connect(self.files_wanted)
        self.new_patient = _button(
            translate("therapist", "&New patient\N{HORIZONTAL ELLIPSIS}"), "Ctrl+N"
        )
        self.new_patient.clicked.connect(self.new_wanted)
        self.make_plan = _button(
            translate("therapist", "Make a p&lan\N{HORIZONTAL ELLIPSIS}"), "Ctrl+L"
        )
        self.make_plan.clicked.connect(self.plan_wanted)
        self.doubts = _button("", "Ctrl+D")
        self.doubts.setProperty("role", "stop")
        self.doubts.clicked.connect(self.doubts_wanted)
        self.undo = _button(translate("therapist", "Und&o the last import"), "Ctrl+Z")
        self.undo.clicked.connect(self.undo_wanted)
        self._refused_title = QLabel()
        self._refused_title.setProperty("role", "caution")
        self.refused = QListWidget()
        self.refused.setAccessibleName(translate("therapist", "Refused files with reasons"))
        self.refused.setWordWrap(True)
        set_rows(self.refused, wrapped=True)
        self.refused.setFont(font(type_scale().small_px))
        self.refused.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.refused.setFixedHeight(scaled(_REFUSED_PX))
        self.forget = _button(translate("therapist", "&Clear this list"), "")
        self.forget.clicked.connect(self.forget_wanted)
        self._arrange()
        self.show_refusals(())
        self.show_doubts(0)

    def _arrange(self) -> None:
        self._title = QLabel(translate("therapist", "Patients"))
        self._title.setProperty("role", "lead")
        cells = Cells(SPACES_PX[1])
        for button in (
            self.import_files,
            self.new_patient,
            self.make_plan,
            self.undo,
            self.doubts,
        ):
            cells.addWidget(button)
        column = QVBoxLayout(self)
        column.setContentsMargins(SPACES_PX[2], SPACES_PX[2], 0, SPACES_PX[2])
        column.setSpacing(SPACES_PX[1])
        column.addWidget(self._title)
        column.addLayout(cells)
        column.addWidget(self.list, 1)
        column.addWidget(self._refused_title)
        column.addWidget(self.refused)
        column.addWidget(self.forget)

    def stand_aside(self, aside: bool) -> None:
        """Stand beside the pages, or be a page of its own, which has its name already."""
        self._title.setVisible(aside)
        right_px = 0 if aside else SPACES_PX[2]
        self.setContentsMargins(0, 0, right_px, 0)

    def show_patients(
        self,
        entries: Sequence[PatientEntry],
        chosen: str | None,
        standings: Sequence[Standing] = (),
        people: Sequence[Person] = (),
    ) -> None:
        """Show other patients and choose one of them, the first where it is not there.

        ``standings`` say whom to look at first, and why; ``people`` are all, with or without
        sessions.
        """
        self._patients.show(entries, standings, people)
        if self._patients.rowCount():
            index = self._patients.index(max(0, self._patients.row_of(chosen)))
            selection = self.list.selectionModel()
            assert selection is not None
            selection.setCurrentIndex(index, QItemSelectionModel.SelectionFlag.ClearAndSelect)

    def show_undo(self, batch: Batch | None) -> None:
        """Offer to undo an import; nothing where there is none."""
        self.undo.setVisible(batch is not None)
        if batch is not None:
            words = translate("therapist", "Takes {sessions} out again ({key})").format(
                sessions=sessions_counted(batch.sessions), key=key_name("Ctrl+Z")
            )
            self.undo.setToolTip(words)
            self.undo.setAccessibleDescription(words)

    def show_doubts(self, count: int) -> None:
        """Offer to decide about doubtful sessions; nothing where none waits."""
        if count == 1:
            text = translate("therapist", "1 doubtful session\N{HORIZONTAL ELLIPSIS}")
            name = translate("therapist", "1 doubtful session to decide about")
        else:
            text = translate("therapist", "{count} doubtful sessions\N{HORIZONTAL ELLIPSIS}")
            name = translate("therapist", "{count} doubtful sessions to decide about")
        self.doubts.setText(text.format(count=count))
        self.doubts.setAccessibleName(name.format(count=count))
        self.doubts.setVisible(count > 0)

    def show_refusals(self, refusals: Sequence[Refusal]) -> None:
        """Show what was refused; nothing where nothing was."""
        title = translate("therapist", "{files} refused")
        self._refused_title.setText(title.format(files=files_counted(len(refusals))))
        self.refused.clear()
        for refusal in refusals:
            reason = refusal.reason
            if refusal.file_name not in reason:
                reason = f"{refusal.file_name}: {reason}"
            self.refused.addItem(f"{day(refusal.at.astimezone().date())}: {reason}")
        self._refused_title.setVisible(bool(refusals))
        self.refused.setVisible(bool(refusals))
        self.forget.setVisible(bool(refusals))

    def _choose(self, index: QModelIndex) -> None:
        if index.isValid():
            self.patient_chosen.emit(self._patients.code(index.row()))


def _button(text: str, keys: str) -> Button:
    button = Button(text)
    button.setAccessibleName(text.replace("&", "").rstrip("\N{HORIZONTAL ELLIPSIS}"))
    if keys:
        button.setToolTip(key_name(keys))
    return button


def files_counted(count: int) -> str:
    """Write a number of files."""
    if count == 1:
        return translate("therapist", "1 file")
    return translate("therapist", "{count} files").format(count=count)
