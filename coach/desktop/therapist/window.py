"""The therapist's window."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Sequence
from datetime import date
from pathlib import Path

from PyQt6.QtCore import Qt
from PyQt6.QtGui import QCloseEvent, QDragEnterEvent, QDropEvent, QKeySequence, QShortcut
from PyQt6.QtWidgets import (
    QFileDialog,
    QHBoxLayout,
    QLabel,
    QMainWindow,
    QMessageBox,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from coach.desktop.shared.report_page import report_pdf
from coach.desktop.shared.theme import SPACES_PX
from coach.desktop.therapist.import_run import ImportRun
from coach.desktop.therapist.patient_page import PatientPage
from coach.desktop.therapist.plan_window import PlanWindow
from coach.desktop.therapist.replay_page import ReplayPage
from coach.desktop.therapist.replay_sessions import SESSION_FILES, choose_session
from coach.desktop.therapist.side_panel import SidePanel
from coach.documents.archive import StoredSession
from coach.domain.fault import Fault
from coach.review.cohort import Standing, in_need, standing
from coach.review.overview import overview
from coach.review.report import Report
from coach.review.wording import counted
from coach.storage.atomic import write_bytes
from coach.storage.sealed import PracticeIdentity
from coach.storage.store import ImportOutcome, PatientEntry, Store
from coach.storage.store_import import FileOutcome

_EMPTY = (
    "No sessions yet.\n\n"
    "Drop session files or a folder of them into this window, or press Import files (Ctrl+O).\n"
    "A patient's program leaves one file a session, named by date and ending in .shoulder.zip."
)
_YES = QMessageBox.StandardButton.Yes


class ReviewWindow(QMainWindow):
    """Imports session files, shows one patient at a time, writes the report."""

    def __init__(
        self,
        store: Store,
        today: Callable[[], date] = date.today,
        identity: PracticeIdentity | None = None,
    ) -> None:
        """Show what a store holds; the caller closes the store.

        ``identity`` opens files that were sealed for the practice.
        """
        super().__init__()
        self._store = store
        self._identity = identity
        self._today = today
        self._report: Report | None = None
        self._standings: dict[tuple[PatientEntry, date], Standing] = {}
        self.setWindowTitle("Shoulder review")
        self.setAcceptDrops(True)
        self.panel = SidePanel()
        self.page = PatientPage()
        self.plans = PlanWindow(self, today)
        self._imports = ImportRun(store, identity, self)
        self._message = QLabel()
        self._message.setWordWrap(True)
        self._message.setAccessibleName("Message")
        self._message.setTextFormat(Qt.TextFormat.PlainText)
        self._arrange()
        self._connect()
        self.resize(1280, 800)
        self.refresh()

    def _arrange(self) -> None:
        empty = QLabel(_EMPTY)
        empty.setProperty("role", "lead")
        empty.setAlignment(Qt.AlignmentFlag.AlignCenter)
        empty.setWordWrap(True)
        self._stack = QStackedWidget()
        self._stack.addWidget(empty)
        self._stack.addWidget(self.page)
        right = QVBoxLayout()
        right.setSpacing(0)
        self._message.setContentsMargins(SPACES_PX[3], SPACES_PX[1], SPACES_PX[3], SPACES_PX[1])
        self._message.hide()
        right.addWidget(self._message)
        right.addWidget(self._stack, 1)
        content = QWidget()
        content.setObjectName("page")
        row = QHBoxLayout(content)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self.panel)
        row.addLayout(right, 1)
        self.setCentralWidget(content)

    def _connect(self) -> None:
        self.panel.patient_chosen.connect(self.show_patient)
        self.panel.files_wanted.connect(self._ask_files)
        self.panel.folder_wanted.connect(self._ask_folder)
        self.panel.plan_wanted.connect(self._make_plan)
        self.panel.stop_wanted.connect(self._imports.stop)
        self.panel.forget_wanted.connect(self._forget)
        self.panel.undo_wanted.connect(self._undo)
        self.page.report_wanted.connect(self._ask_report)
        self.page.replay_wanted.connect(self._replay)
        self._imports.advanced.connect(self.panel.show_progress)
        self._imports.failed.connect(self._warn)
        self._imports.finished.connect(self._imported)
        for keys, slot in (
            ("Ctrl+O", self._ask_files),
            ("Ctrl+Shift+O", self._ask_folder),
            ("Ctrl+P", self._ask_report),
            ("Ctrl+R", self._replay),
            ("Ctrl+L", self._make_plan),
            ("Ctrl+Z", self._undo),
            ("Esc", self._imports.stop),
        ):
            QShortcut(QKeySequence(keys), self).activated.connect(slot)

    def refresh(self, chosen: str | None = None) -> None:
        """Read patients and refusals anew; stay with the patient shown or go to ``chosen``."""
        try:
            entries = self._store.patients()
            self.panel.show_refusals(self._store.refusals())
            self.panel.show_undo(self._store.last_import())
            standings = self._standings_of(entries)
        except Fault as fault:
            self._warn(str(fault))
            return
        self._stack.setCurrentIndex(1 if entries else 0)
        shown = self._report.patient_code if self._report else None
        self.panel.show_patients(entries, chosen or shown, standings)

    def _standings_of(self, entries: Sequence[PatientEntry]) -> tuple[Standing, ...]:
        """Say whom to look at first; who has nothing new is not read again."""
        today = self._today()
        self._standings = {
            (entry, today): self._standings.get((entry, today))
            or standing(entry.code, self._store.sessions_of(entry.code), today)
            for entry in entries
        }
        return in_need(self._standings.values())

    def _undo(self) -> None:
        try:
            batch = self._store.last_import()
            if batch is None:
                return
            question = f"Take {counted(batch.sessions, 'session')} of the last import out again?"
            if QMessageBox.question(self, "Shoulder review", question) == _YES:
                gone = self._store.undo_import(batch.id)
                self._tell(f"{counted(gone, 'session')} taken out again.")
        except Fault as fault:
            self._warn(str(fault))
        self._report = None
        self.refresh()

    def show_patient(self, code: str) -> None:
        """Show one patient."""
        try:
            shown = overview(
                self._store.sessions_of(code),
                self._today(),
                self._store.records_of(code),
                [doubt.sentence for doubt in self._store.doubts() if doubt.code == code],
            )
        except Fault as fault:
            self._warn(str(fault))
            return
        self._report = shown.report
        self.page.show_overview(shown)

    def import_paths(self, paths: Iterable[Path]) -> None:
        """Begin to import files and folders."""
        self._imports.add(paths)

    def write_report(self, path: Path) -> None:
        """Write the report of the patient shown; raises Fault where that is not possible."""
        if self._report is None:
            raise Fault("There is no patient to report on: import session files first.")
        write_bytes(path, report_pdf(self._report))

    def _imported(self, outcomes: list[FileOutcome]) -> None:
        self.panel.show_progress(0, 0)
        counts = Counter(o.outcome for o in outcomes)
        parts = [f"{counts[o]} {o.value}" for o in ImportOutcome if counts[o]]
        if parts:
            self._tell(f"{counted(len(outcomes), 'file')}: {', '.join(parts)}.")
        elif self._message.isHidden():
            self._tell("There was no session file to import there.")
        taken = {o.code for o in outcomes if o.code}
        self.refresh(taken.pop() if len(taken) == 1 else None)

    def _forget(self) -> None:
        try:
            self._store.forget_refusals()
        except Fault as fault:
            self._warn(str(fault))
        self.refresh()

    def _make_plan(self) -> None:
        if self._report is not None:
            self.plans.page.begin_for(self._report.patient_code)
        self.plans.show()
        self.plans.raise_()
        self.plans.activateWindow()

    def _ask_files(self) -> None:
        names, _ = QFileDialog.getOpenFileNames(self, "Import session files", "", SESSION_FILES)
        self.import_paths(map(Path, names))

    def _ask_folder(self) -> None:
        name = QFileDialog.getExistingDirectory(self, "Import a folder of session files")
        if name:
            self.import_paths([Path(name)])

    def _ask_report(self) -> None:
        if self._report is None:
            self._warn("There is no patient to report on: import session files first.")
            return
        name, _ = QFileDialog.getSaveFileName(
            self, "Write the report", report_name(self._report), "PDF (*.pdf)"
        )
        if not name:
            return
        path = Path(name)
        path = path if path.suffix.lower() == ".pdf" else path.with_name(f"{path.name}.pdf")
        try:
            self.write_report(path)
        except Fault as fault:
            self._warn(str(fault))
        else:
            self._tell(f"The report is in {path}.")

    def _replay(self) -> None:
        code = self._report.patient_code if self._report else None
        try:
            session = self._session_of(self, code)
            if session is not None:
                page = ReplayPage(session, lambda parent: self._session_of(parent, code), self)
                page.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
                page.show()
        except Fault as fault:
            self._warn(str(fault))

    def _session_of(self, parent: QWidget, code: str | None) -> StoredSession | None:
        return choose_session(parent, self._store, code, self._identity)

    def _tell(self, text: str, role: str = "soft") -> None:
        self._message.setProperty("role", role)
        style = self._message.style()
        if style is not None:
            style.polish(self._message)
        self._message.setText(text)
        self._message.show()

    def _warn(self, text: str) -> None:
        self._tell(text, "caution")

    def dragEnterEvent(self, event: QDragEnterEvent | None) -> None:  # noqa: N802
        """Take files."""
        data = event.mimeData() if event else None
        if event and data and any(u.isLocalFile() for u in data.urls()):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent | None) -> None:  # noqa: N802
        """Import what was dropped."""
        data = event.mimeData() if event else None
        if event and data:
            event.acceptProposedAction()
            self.import_paths(Path(u.toLocalFile()) for u in data.urls() if u.isLocalFile())

    def closeEvent(self, event: QCloseEvent | None) -> None:  # noqa: N802
        """Stop importing, unless a plan is still to be saved; what is in the store stays."""
        if event is not None and not self.plans.may_discard():
            event.ignore()
            return
        self._imports.stop()
        super().closeEvent(event)


def report_name(shown: Report) -> str:
    """Give a file name that no patient code can turn into a path."""
    code = "".join(c if c.isalnum() or c in "-_" else "_" for c in shown.patient_code)
    return f"{code}_{shown.end.isoformat()}_report.pdf"
