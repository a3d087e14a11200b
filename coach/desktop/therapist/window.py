"""The therapist's window."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from datetime import date
from functools import cached_property
from pathlib import Path

from PyQt6.QtCore import Qt
from PyQt6.QtGui import QCloseEvent, QDragEnterEvent, QDropEvent
from PyQt6.QtWidgets import QMainWindow, QWidget

from coach.desktop.therapist.doubts_dialog import DoubtsDialog
from coach.desktop.therapist.exports import Exports
from coach.desktop.therapist.import_run import ImportRun, dropped_paths, outcomes_told
from coach.desktop.therapist.look_acts import LookActs
from coach.desktop.therapist.menus import fill
from coach.desktop.therapist.plan_window import PlanWindow
from coach.desktop.therapist.replay_page import ReplayPage
from coach.desktop.therapist.replay_sessions import choose_session
from coach.desktop.therapist.window_parts import WindowParts
from coach.documents.archive import StoredSession
from coach.domain.fault import Fault
from coach.review.cohort import in_need
from coach.review.counts import sessions_counted
from coach.review.overview import overview
from coach.storage.exercise_titles import TITLES
from coach.storage.store import Store
from coach.storage.store_import import FileOutcome
from coach.texts import translate


class ReviewWindow(QMainWindow):
    """Imports session files, shows one patient at a time, keeps records, writes documents."""

    def __init__(
        self,
        store: Store,
        today: Callable[[], date] = date.today,
        imports: ImportRun | None = None,
    ) -> None:
        """Show what a store holds; the caller closes the store.

        ``imports`` may run already: a window opened in the place of another goes on with it.
        """
        super().__init__()
        self._store, self._today = store, today
        self.code: str | None = None
        self.setWindowTitle(translate("therapist", "Shoulder review"))
        self.setAcceptDrops(True)
        self.parts = WindowParts(store, today)
        self.panel, self.page, self.records = self.parts.panel, self.parts.page, self.parts.records
        self.setCentralWidget(self.parts)
        self.looks, self.exports = LookActs(self), Exports(self, store.name)
        self.imports = imports or ImportRun(store)
        self.imports.setParent(self)
        self._connect()
        self.resize(1280, 800)
        self.panel.list.setFocus()
        self.parts.progress.show_progress(*self.imports.progress)
        self.refresh()

    def _connect(self) -> None:
        panel, records, page = self.panel, self.records, self.page
        bar = self.menuBar()
        assert bar is not None
        own: dict[str, Callable[[], object]] = {
            "import-files": self.imports.ask_files,
            "import-folder": self.imports.ask_folder,
            "stop": self.imports.stop,
            "unlock": self.imports.ask_key,
            "undo": self._undo,
            "doubts": self._show_doubts,
            "quit": self.close,
            "new": lambda: records.ask_person(new=True),
            "name": lambda: records.ask_person(new=False),
            "people": self.parts.show_people,
            "course": self.parts.show_course,
            "records": self.parts.show_records,
            "plan": self._make_plan,
            "replay": self._replay,
            "erase": records.ask_erase,
        }
        self.entries = fill(bar, own | self.exports.acts | self.looks.acts)
        for signal, name in (
            (panel.files_wanted, "import-files"),
            (panel.new_wanted, "new"),
            (panel.plan_wanted, "plan"),
            (self.parts.progress.stop_wanted, "stop"),
            (panel.doubts_wanted, "doubts"),
            (page.report_wanted, "report"),
            (page.replay_wanted, "replay"),
            (records.plan_wanted, "plan"),
        ):
            signal.connect(self.entries[name].trigger)
        panel.patient_chosen.connect(self.show_patient)
        panel.list.activated.connect(self.parts.show_course)
        panel.forget_wanted.connect(self._forget)
        panel.undo_wanted.connect(self.imports.ask_undo)
        records.changed.connect(self.refresh)
        records.person_added.connect(self.parts.show_records)
        self.parts.turned.connect(self._offer_undo)
        self.imports.told.connect(self.parts.tell)
        for teller in (records, self.exports):
            teller.told.connect(self.parts.tell)
            teller.refused.connect(self._warn)
        self.imports.taken_back.connect(self._taken_back)
        self.imports.advanced.connect(self.parts.progress.show_progress)
        self.imports.failed.connect(self._warn)
        self.imports.finished.connect(self._imported)

    @cached_property
    def plans(self) -> PlanWindow:
        """The window in which plans are made, built when it is first asked for."""
        plans = PlanWindow(self, self._today, self._store)
        plans.issued.connect(self.refresh)
        return plans

    def refresh(self, chosen: str | None = None) -> None:
        """Read patients and refusals anew; stay with the patient shown or go to ``chosen``."""
        try:
            entries, people = self._store.patients(), self._store.people()
            self.panel.show_refusals(self._store.refusals())
            self.panel.show_doubts(self._store.open_doubts())
            self.panel.show_undo(self._store.last_import())
            standings = in_need(look.on(self._today()) for look in self._store.looks())
        except Fault as fault:
            self._warn(str(fault))
            return
        self.parts.show_anybody(bool(people))
        shown, self.code = chosen or self.code, None
        self.exports.show((), None)
        self.panel.show_patients(entries, shown, standings, people)
        self._offer_undo()

    def _offer_undo(self) -> None:
        """Say what Ctrl+Z would take back."""
        what = self.records.changes.last if self.parts.on_records else ""
        if what:
            text = translate("therapist", "&Undo: {what}").format(what=what)
        else:
            text = translate("therapist", "&Undo the last import\N{HORIZONTAL ELLIPSIS}")
        self.entries["undo"].setText(text)

    def _undo(self) -> None:
        if self.parts.on_records and self.records.changes.last:
            self.records.undo()
        else:
            self.imports.ask_undo()

    def show_patient(self, code: str) -> None:
        """Show one patient."""
        today = self._today()
        try:
            documents, records = self._store.sessions_of(code), self._store.records_of(code)
            doubts = [doubt.sentence for doubt in self._store.doubts() if doubt.code == code]
            shown = overview(documents, today, records, doubts, TITLES) if documents else None
        except Fault as fault:
            self._warn(str(fault))
            return
        self.code = code
        self.records.show_person(records, shown.series if shown else ())
        self.parts.show_overview(shown)
        self.exports.show(documents, shown.report if shown else None, records)

    def import_paths(self, paths: Iterable[Path]) -> None:
        """Begin to import files and folders."""
        self.imports.add(paths)

    def _imported(self, outcomes: list[FileOutcome]) -> None:
        self.parts.progress.show_progress(0, 0)
        if outcomes:
            self.parts.tell(outcomes_told(outcomes))
        elif not self.parts.telling:
            self.parts.tell(translate("therapist", "There was no session file to import there."))
        taken = {o.code for o in outcomes if o.code}
        self.refresh(taken.pop() if len(taken) == 1 else None)

    def _taken_back(self, sessions: int) -> None:
        told = translate("therapist", "{sessions} taken out again.")
        self.parts.tell(told.format(sessions=sessions_counted(sessions)))
        self.refresh()

    def _forget(self) -> None:
        try:
            self._store.forget_refusals()
        except Fault as fault:
            self._warn(str(fault))
        self.refresh()

    def _show_doubts(self) -> None:
        try:
            dialog = DoubtsDialog(self, self._store)
        except Fault as fault:
            self._warn(str(fault))
            return
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.decided.connect(self.refresh)
        dialog.open()

    def _make_plan(self) -> None:
        try:
            if self.code is not None:
                self.plans.begin_for(self.code)
        except Fault as fault:
            self._warn(str(fault))
        self.plans.show()
        self.plans.raise_()
        self.plans.activateWindow()

    def _replay(self) -> None:
        code = self.code
        try:
            session = self._session_of(self, code)
            if session is not None:
                page = ReplayPage(session, lambda parent: self._session_of(parent, code), self)
                page.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
                page.show()
        except Fault as fault:
            self._warn(str(fault))

    def _session_of(self, parent: QWidget, code: str | None) -> StoredSession | None:
        return choose_session(parent, self._store, code, self.imports.identity)

    def _warn(self, text: str) -> None:
        self.parts.tell(text, "caution")

    def dragEnterEvent(self, event: QDragEnterEvent | None) -> None:  # noqa: N802
        """Take files."""
        if event and dropped_paths(event):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent | None) -> None:  # noqa: N802
        """Import what was dropped."""
        if event:
            event.acceptProposedAction()
            self.import_paths(dropped_paths(event))

    def closeEvent(self, event: QCloseEvent | None) -> None:  # noqa: N802
        """Stop an import that no other window goes on with, unless a plan is to be saved first."""
        if event is not None and "plans" in vars(self) and not self.plans.may_discard():
            event.ignore()
            return
        if self.imports.parent() is self:
            self.imports.stop()
        self.exports.wait()
        super().closeEvent(event)
