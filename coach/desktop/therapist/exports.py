"""A patient's record out of the window, made in a thread of its own and told in a sentence."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date, datetime

from PyQt6.QtCore import QObject, QThread, pyqtSignal
from PyQt6.QtWidgets import QApplication, QWidget

from coach.desktop.shared.file_questions import ask_new_file
from coach.desktop.therapist.export_words import exported_file
from coach.domain.fault import Fault
from coach.domain.practice import PatientRecords
from coach.domain.session import SessionDocument
from coach.exchange.kind import Kind
from coach.review.practice_records import NO_RECORDS
from coach.review.report import Report
from coach.storage.atomic import write_bytes
from coach.storage.folders import check_is_no_store
from coach.texts import translate


class Exports(QObject):
    """Asks where to, and writes in a thread of its own: a year of sessions takes seconds."""

    told = pyqtSignal(str)
    refused = pyqtSignal(str)

    def __init__(self, parent: QWidget, store_name: str) -> None:
        """Take the store's name, so that no export is ever written over it."""
        super().__init__(parent)
        self._store_name = store_name
        self._jobs: list[_Job] = []
        self._documents: Sequence[SessionDocument] = ()
        self._report: Report | None = None
        self._records = NO_RECORDS

    @property
    def acts(self) -> dict[str, Callable[[], object]]:
        """What can be asked for, by the names of the menu's entries."""
        return {
            "report": self.ask_report,
            "note": lambda: self.ask(Kind.NOTE),
            "copy": self.copy_note,
            "csv": lambda: self.ask(Kind.CSV),
            "measures": lambda: self.ask(Kind.MEASURES),
            "fhir": lambda: self.ask(Kind.FHIR),
        }

    def show(
        self,
        documents: Sequence[SessionDocument],
        report: Report | None,
        records: PatientRecords = NO_RECORDS,
    ) -> None:
        """Take another patient's sessions, their report and the practice's own records."""
        self._documents, self._report, self._records = documents, report, records

    def ask_report(self) -> None:
        """Ask where the report goes, and write it."""
        shown = self._report
        if shown is None:
            self.refused.emit(
                translate(
                    "exports", "There is no session to report on: import session files first."
                )
            )
            return
        self._ask(None, shown.patient_code, shown.end, lambda: _pdf(shown))

    def ask(self, kind: Kind) -> None:
        """Ask where the record goes as ``kind``, and write it."""
        documents, records = self._documents, self._records
        now = datetime.now().astimezone()
        if not documents:
            self.refused.emit(
                translate("exports", "There is no session to export: import session files first.")
            )
            return
        code = documents[-1].plan.patient_code
        self._ask(kind, code, now.date(), lambda: _exported(documents, kind, now, records))

    def copy_note(self) -> None:
        """Put the note on the clipboard."""
        documents, records = self._documents, self._records
        now = datetime.now().astimezone()
        if not documents:
            self.refused.emit(
                translate("exports", "There is no session for a note: import session files first.")
            )
            return

        def copied(note: bytes) -> None:
            clipboard = QApplication.clipboard()
            if clipboard is not None:
                clipboard.setText(note.decode("utf-8"))
            self.told.emit(
                translate("exports", "The note is on the clipboard: paste it into the record.")
            )

        self._run(lambda: _exported(documents, Kind.NOTE, now, records), copied)

    def wait(self) -> None:
        """Come back when nothing is being written any more."""
        for job in self._jobs:
            job.wait()

    def _ask(self, kind: Kind | None, code: str, on: date, make: Callable[[], bytes]) -> None:
        file = exported_file(kind)
        ending = file.ending
        proposed = file_name(code, on, file.word, ending)
        path = ask_new_file(self._over(), file.title, proposed, file.kinds)
        if path is None:
            return
        path = path if path.suffix.lower() == ending else path.with_name(path.name + ending)

        def work() -> bytes:
            check_is_no_store(path, self._store_name)
            content = make()
            write_bytes(path, content)
            return content

        self._run(work, lambda _: self.told.emit(file.told.format(path=path)))

    def _over(self) -> QWidget | None:
        """Give the window over which to ask; kept as an attribute, neither would ever go."""
        parent = self.parent()
        return parent if isinstance(parent, QWidget) else None

    def _run(self, work: Callable[[], bytes], done: Callable[[bytes], None]) -> None:
        job = _Job(work, self)
        self._jobs.append(job)

        def ended() -> None:
            self._jobs.remove(job)
            if job.content is not None:
                done(job.content)
            else:
                self.refused.emit(job.fault)
            job.deleteLater()

        job.finished.connect(ended)
        job.start()


class _Job(QThread):
    """One document being made; ``content`` stays None where it could not be."""

    def __init__(self, work: Callable[[], bytes], parent: QObject) -> None:
        super().__init__(parent)
        self._work = work
        self.content: bytes | None = None
        self.fault = translate(
            "exports",
            "The export ended without a result: try again, and tell who keeps the program.",
        )

    def run(self) -> None:
        """Make it."""
        try:
            self.content = self._work()
        except Fault as fault:
            self.fault = str(fault)


def file_name(code: str, on: date, word: str, ending: str) -> str:
    """Give a file name that no patient code can turn into a path."""
    safe = "".join(c if c.isalnum() or c in "-_" else "_" for c in code)
    return f"{safe}_{on.isoformat()}_{word}{ending}"


def report_name(shown: Report) -> str:
    """Give the file name of a report."""
    return file_name(shown.patient_code, shown.end, "report", ".pdf")


def _pdf(shown: Report) -> bytes:
    # Here and below: what only writing needs is no part of the window's start.
    from coach.desktop.shared.report_page import report_pdf

    return report_pdf(shown)


def _exported(
    documents: Sequence[SessionDocument], kind: Kind, now: datetime, records: PatientRecords
) -> bytes:
    from coach.exchange.export import exported

    return exported(documents, kind, now, records)
