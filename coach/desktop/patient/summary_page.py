"""The last page: what was done, what was measured, how it felt, where it lies."""

from __future__ import annotations

from PyQt6.QtCore import Qt, pyqtSignal
from PyQt6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QSizePolicy, QVBoxLayout, QWidget

from coach.catalogue import safety
from coach.desktop.patient.coaching import Outcome
from coach.desktop.patient.controls import KeyButton
from coach.desktop.patient.prose import ProsePage
from coach.desktop.patient.record_card import record_card, what_is_shown
from coach.desktop.shared.file_questions import ask_folder
from coach.domain.session import ExerciseRecord, SessionEnd


class SummaryPage(ProsePage):
    """Shows an Outcome; says what was held and measured, and praises neither pain nor range."""

    closed = pyqtSignal()
    elsewhere = pyqtSignal(str)
    """A folder in which to save what could not be saved."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Begin empty."""
        super().__init__(parent)
        self._title = self.line("", 0.06, bold=True)
        self._advice = self.line("", 0.036, bold=True, role="caution")
        self._saved = self.line("", 0.025)
        self._saved.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse
            | Qt.TextInteractionFlag.TextSelectableByKeyboard
        )
        self.close_button = KeyButton(self.tr("Close"), self.tr("Enter"), "primary", share=0.034)
        self.close_button.clicked.connect(self.closed)
        self.folder_button = KeyButton(self.tr("Save in another folder"), "F", share=0.034)
        self.folder_button.clicked.connect(self._choose_folder)
        self.folder_button.hide()
        for button in (self.close_button, self.folder_button):
            button.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self._scroll = QScrollArea(self)
        self._scroll.setWidgetResizable(True)
        self._scroll.setFrameShape(QFrame.Shape.NoFrame)
        self._scroll.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self._scroll.setAccessibleName(self.tr("What was done"))
        foot = QHBoxLayout()
        foot.setSpacing(24)
        foot.addWidget(self._saved, 7)
        buttons = QVBoxLayout()
        buttons.setSpacing(12)
        buttons.addWidget(self.folder_button)
        buttons.addWidget(self.close_button)
        foot.addLayout(buttons, 3)
        column = QVBoxLayout(self)
        column.setContentsMargins(44, 24, 44, 28)
        column.setSpacing(10)
        column.addWidget(self._title)
        column.addWidget(self._advice)
        column.addWidget(self._scroll, 1)
        column.addLayout(foot)

    def show_outcome(self, outcome: Outcome) -> None:
        """Show how a session ended."""
        document = outcome.document
        by_pain = document.ended_because is SessionEnd.PAIN
        kept = outcome.saved_at is not None
        if document.ended_because is SessionEnd.COMPLETED:
            self._title.setText(self.tr("Done for today"))
        elif by_pain and kept:
            self._title.setText(self.tr("Stopped because of the pain. What you did is kept."))
        elif by_pain:
            self._title.setText(self.tr("Stopped because of the pain"))
        elif kept:
            self._title.setText(self.tr("Stopped. What you did is kept."))
        else:
            self._title.setText(self.tr("Stopped"))
        advice = self._advice_on(document.exercises)
        if by_pain:
            advice = self._ring(document.plan.contact)
        self._advice.setText(advice)
        self._advice.setVisible(bool(advice))
        if outcome.saved_at is not None:
            self._saved.setText(
                self.tr("Saved for your therapist: {path}").format(path=outcome.saved_at)
            )
        else:
            self._saved.setText(outcome.fault or self.tr("Nothing was saved."))
        self.folder_button.setVisible(outcome.saved_at is None and outcome.fault is not None)
        self.folder_button.setEnabled(True)
        inside = QWidget()
        inside.setObjectName("page")
        column = QVBoxLayout(inside)
        column.setContentsMargins(0, 0, 8, 0)
        column.setSpacing(10)
        for record in document.exercises:
            column.addWidget(record_card(self, document, record))
        if not document.exercises:
            column.addWidget(self.line(self.tr("No exercise was begun."), 0.034))
        column.addWidget(self.line(what_is_shown(document.exercises), 0.026, role="soft"))
        column.addStretch(1)
        old = self._scroll.takeWidget()
        if old is not None:
            self.forget(old)
            old.deleteLater()
        self._scroll.setWidget(inside)
        self.close_button.setFocus()

    def type_height(self) -> int:
        """Take sizes from the window: what is not seen at once scrolls."""
        window = self.window()
        return self.height() if window is None else window.height()

    def _choose_folder(self) -> None:
        title = self.tr("Choose a folder for the session file")
        if folder := ask_folder(self, title):
            self.folder_button.setEnabled(False)  # until it is known what came of it
            self.elsewhere.emit(str(folder))

    def _ring(self, contact: str) -> str:
        if contact:
            return self.tr(
                "Rest your arm, and ring your practice before you exercise again: {contact}"
            ).format(contact=contact)
        return self.tr("Rest your arm, and ring your practice before you exercise again.")

    def _advice_on(self, records: tuple[ExerciseRecord, ...]) -> str:
        rises = [
            record.pain_after - record.pain_before
            for record in records
            if record.pain_before is not None and record.pain_after is not None
        ]
        if max(rises, default=0) < safety().pain_rise:
            return ""
        return self.tr(
            "Your pain went up. If it stays up for more than half an hour, or keeps you awake, "
            "tell your therapist before the next session."
        )
