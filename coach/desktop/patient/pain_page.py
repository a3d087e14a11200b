"""Asks for pain from 0 to 10, by mouse or key, before and after an exercise."""

from __future__ import annotations

from PyQt6.QtCore import Qt, pyqtSignal
from PyQt6.QtGui import (
    QKeyEvent,
)
from PyQt6.QtWidgets import (
    QButtonGroup,
    QHBoxLayout,
    QVBoxLayout,
    QWidget,
)

from coach.catalogue import safety
from coach.desktop.patient.controls import KeyButton
from coach.desktop.patient.prose import ProsePage
from coach.desktop.patient.score_button import HIGHEST, TEN_KEY, TEN_WIDER, ScoreButton, SureBar
from coach.desktop.patient.wording import exercise_name
from coach.domain.moment import Asked, Moment, Order, Stage
from coach.session.asking import SURE_S


class PainPage(ProsePage):
    """Emits ``answered`` with the score once it is chosen and confirmed."""

    answered = pyqtSignal(int)
    ordered = pyqtSignal(Order)

    def __init__(self, parent: QWidget | None = None) -> None:
        """Begin without a choice."""
        super().__init__(parent)
        # It takes the keys where no button has the focus; it is no stop for Tab.
        self.setFocusPolicy(Qt.FocusPolicy.ClickFocus)
        self._limit = HIGHEST
        self._before = True
        self._group = QButtonGroup(self)
        self._occasion = self.line("", 0.034, role="soft")
        self._question = self.line("", 0.066, bold=True)
        self._aloud = self.line("", 0.05, bold=True)
        self.sure = SureBar(self)
        self._note = self.line("", 0.034, bold=True, role="caution")
        self._note.setMinimumHeight(56)
        self.go_button = KeyButton(self.tr("Go on"), self.tr("Space"), "primary", share=0.04)
        self.stop_button = KeyButton(self.tr("Stop for today"), "S", "stop", share=0.026)
        self.go_button.clicked.connect(self.confirm)
        self.stop_button.clicked.connect(lambda: self.ordered.emit(Order.STOP))
        self._group.idToggled.connect(self._chosen)
        scores = QHBoxLayout()
        scores.setSpacing(6)
        for score in range(HIGHEST + 1):
            button = ScoreButton(score, self)
            self._group.addButton(button, score)
            scores.addWidget(button, TEN_WIDER if score == HIGHEST else 10)
        ends = QHBoxLayout()
        ends.addWidget(self.line(self.tr("no pain"), 0.03, wrap=False))
        ends.addStretch(1)
        ends.addWidget(self.line(self.tr("worst pain you can think of"), 0.03, wrap=False))
        hint = self.line(
            self.tr("Keys: 0 to 9, {key} for 10, or the arrows").format(key=TEN_KEY),
            0.025,
            role="soft",
        )
        buttons = QHBoxLayout()
        buttons.setSpacing(16)
        buttons.addWidget(self.stop_button, 3)
        buttons.addWidget(self.go_button, 8)
        column = QVBoxLayout(self)
        column.setContentsMargins(44, 30, 44, 34)
        column.addWidget(self._occasion)
        column.addWidget(self._question)
        column.addSpacing(8)
        column.addWidget(self._aloud)
        column.addWidget(self.sure)
        column.addStretch(1)
        column.addLayout(scores, 34)
        column.addLayout(ends)
        column.addWidget(hint)
        column.addStretch(2)
        column.addWidget(self._note)
        column.addLayout(buttons, 14)

    def ask(self, moment: Moment) -> None:
        """Ask anew, for the exercise of this moment."""
        planned = moment.planned
        name = exercise_name(planned) if planned is not None else ""
        self._before = moment.stage is Stage.PAIN_BEFORE
        if self._before:
            self._occasion.setText(self.tr("Before: {name}").format(name=name))
            self._question.setText(self.tr("How much does your shoulder hurt now?"))
        else:
            self._occasion.setText(self.tr("After: {name}").format(name=name))
            self._question.setText(self.tr("And how much does it hurt now?"))
        self._limit = HIGHEST if planned is None else planned.pain_limit
        self._group.setExclusive(False)
        for button in self._group.buttons():
            button.setChecked(False)
        self._group.setExclusive(True)
        self._note.setText("")
        self.go_button.setEnabled(False)
        self.show_asked(moment.asked)
        self.setAccessibleName(self._question.text())
        self.setFocus()

    def show_asked(self, asked: Asked | None) -> None:
        """Show where the spoken question stands; a choice by key or mouse goes before it."""
        by_key = self.chosen is not None
        offered = None if asked is None or by_key else asked.offered
        chosen = None if asked is None or by_key else asked.chosen
        sure_s = None if asked is None or chosen is None else asked.sure_s
        for button in self.findChildren(ScoreButton):
            button.offer(button.score in (offered, chosen))
        self.sure.show_share(None if sure_s is None else sure_s / SURE_S)
        if by_key:
            words = self.tr("Press Space to go on with {score}").format(score=self.chosen)
        elif chosen is not None:
            words = self.tr("You chose {score}. Wrong? Raise your good hand again").format(
                score=chosen
            )
        elif asked is not None:
            words = self.tr("Raise your good hand at your number")
        else:
            words = self.tr("Choose your number")
        self._aloud.setText(words)

    def choose(self, score: int) -> None:
        """Choose a score without confirming it."""
        button = self._group.button(min(max(score, 0), HIGHEST))
        if button is not None:
            button.setChecked(True)

    @property
    def chosen(self) -> int | None:
        """The score that is chosen, None before a choice."""
        score = self._group.checkedId()
        return None if score < 0 else score

    def confirm(self) -> None:
        """Answer with the chosen score, if there is one."""
        if self.chosen is not None:
            self.answered.emit(self.chosen)

    def keyPressEvent(self, event: QKeyEvent | None) -> None:  # noqa: D102, N802
        if event is None:
            return
        typed = event.text().upper()
        if len(typed) == 1 and typed in "0123456789":
            self.choose(int(typed))
        elif typed == TEN_KEY:
            self.choose(HIGHEST)
        elif event.key() in (Qt.Key.Key_Right, Qt.Key.Key_Up):
            self.choose(0 if self.chosen is None else self.chosen + 1)
        elif event.key() in (Qt.Key.Key_Left, Qt.Key.Key_Down):
            self.choose(0 if self.chosen is None else self.chosen - 1)
        else:
            super().keyPressEvent(event)

    def _chosen(self, score: int, checked: bool) -> None:
        if not checked:
            return
        self.go_button.setEnabled(True)
        self.show_asked(None)
        if score > self._limit and self._before:
            note = self.tr(
                "More than the {limit} your plan allows, so this exercise is left out today. "
                "Ask your therapist."
            )
        elif score > self._limit:
            note = self.tr(
                "More than the {limit} your plan allows. Ask your therapist before you do this "
                "exercise again."
            )
        elif score > safety().pain_to_stop:
            note = self.tr("That is a lot. Stop here and ask your therapist before you go on.")
        else:
            note = ""
        self._note.setText(note.format(limit=self._limit))
