"""Asks for pain from 0 to 10, by mouse or key, before and after an exercise."""

from __future__ import annotations

from PyQt6.QtCore import QPointF, QRectF, Qt, pyqtSignal
from PyQt6.QtGui import (
    QColor,
    QKeyEvent,
    QPainter,
    QPainterPath,
    QPaintEvent,
    QPen,
    QPolygonF,
)
from PyQt6.QtWidgets import (
    QAbstractButton,
    QButtonGroup,
    QHBoxLayout,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from coach.catalogue import safety
from coach.desktop.patient.controls import KeyButton
from coach.desktop.patient.prose import ProsePage
from coach.desktop.patient.wording import exercise_name
from coach.desktop.shared.theme import LIGHT
from coach.desktop.shared.typeface import font
from coach.domain.moment import Asked, Moment, Order, Stage
from coach.session.asking import SURE_S

HIGHEST = 10
TEN_KEY = "X"
_LOWERED = 0.16
"""How much lower than the offered number the others stand."""
_OF_WIDTH = 0.62
_OFFERED_ONE, _OFFERED_TWO = 1.45, 0.75
"""Type of the offered number, of one digit or two, as a share of its button's width."""
_TEN_WIDER = 19
"""The width of the last button against 10 of the others, for two large digits."""


class SureBar(QWidget):
    """A thin bar that runs out while a number chosen by hand can be taken back."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Begin empty."""
        super().__init__(parent)
        self.share: float | None = None
        self.setMinimumHeight(14)

    def show_share(self, share: float | None) -> None:
        """Show how much of the time is left, 0 to 1; None for nothing."""
        if share != self.share:
            self.share = share
            self.update()

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: D102, N802
        if self.share is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(LIGHT.accent), 2))
        room = QRectF(self.rect()).adjusted(1, 1, -1, -1)
        painter.drawRoundedRect(room, 6, 6)
        room.setWidth(room.width() * self.share)
        painter.setBrush(QColor(LIGHT.accent))
        painter.drawRoundedRect(room, 6, 6)
        painter.end()


class ScoreButton(QAbstractButton):
    """One score on a slope that rises from 0 to 10; the chosen one is filled."""

    def __init__(self, score: int, parent: QWidget | None = None) -> None:
        """Make the button of ``score``."""
        super().__init__(parent)
        self.score = score
        self.setCheckable(True)
        self.setText(str(score))
        self.setAccessibleName(self.tr("Pain {score} of 10").format(score=score))
        key = TEN_KEY if score == HIGHEST else str(score)
        self.setAccessibleDescription(self.tr("Key: {key}").format(key=key))
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumWidth(56)
        self._offered = False

    @property
    def offered(self) -> bool:
        """Whether the score is marked so."""
        return self._offered

    def offer(self, offered: bool) -> None:
        """Mark the score as the one that a raised hand would choose now."""
        if offered != self._offered:
            self._offered = offered
            self.update()

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: D102, N802
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        whole = QRectF(self.rect())
        chosen, offered = self.isChecked(), self._offered
        low = 0.0 if offered else _LOWERED * whole.height()
        room = whole.adjusted(4, 4 + low, -4, -4)
        shape = QPainterPath()
        shape.addRoundedRect(room, 12, 12)
        ground = LIGHT.stage if offered else LIGHT.card
        painter.fillPath(shape, QColor(LIGHT.accent if chosen else ground))
        if not chosen and not offered:
            painter.setClipPath(shape)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(LIGHT.accent_wash))
            painter.drawPolygon(self._slope(room))
            painter.setClipping(False)
        if offered and not chosen:
            self._point_down(painter, room)
        focused = self.hasFocus()
        painter.setPen(QPen(QColor(LIGHT.focus if focused else LIGHT.accent), 5 if focused else 2))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPath(shape)
        ink = LIGHT.hold if offered else LIGHT.ink
        painter.setPen(QColor(LIGHT.on_accent if chosen else ink))
        share = _OF_WIDTH if self.score < HIGHEST else _OF_WIDTH * 10 / _TEN_WIDER
        if offered:
            share = _OFFERED_ONE if self.score < HIGHEST else _OFFERED_TWO
        painter.setFont(font(min(room.width() * share, room.height() * 0.6), bold=True))
        painter.drawText(room, Qt.AlignmentFlag.AlignCenter, self.text())
        painter.end()

    def _point_down(self, painter: QPainter, room: QRectF) -> None:
        """Draw an arrow head at the upper edge, so that the mark is not a colour alone."""
        middle, wide = room.center().x(), room.width() * 0.3
        top = room.top() + 8
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(LIGHT.hold))
        painter.drawPolygon(
            QPolygonF(
                [
                    QPointF(middle - wide, top),
                    QPointF(middle + wide, top),
                    QPointF(middle, top + wide),
                ]
            )
        )

    def _slope(self, room: QRectF) -> QPolygonF:
        steps = HIGHEST + 1
        left = room.bottom() - room.height() * self.score / steps
        right = room.bottom() - room.height() * (self.score + 1) / steps
        return QPolygonF(
            [
                QPointF(room.left(), room.bottom()),
                QPointF(room.left(), left),
                QPointF(room.right(), right),
                QPointF(room.right(), room.bottom()),
            ]
        )


class PainPage(ProsePage):
    """Emits ``answered`` with the score once it is chosen and confirmed."""

    answered = pyqtSignal(int)
    ordered = pyqtSignal(Order)

    def __init__(self, parent: QWidget | None = None) -> None:
        """Begin without a choice."""
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
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
            scores.addWidget(button, _TEN_WIDER if score == HIGHEST else 10)
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
