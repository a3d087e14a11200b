"""The widget that shows a page's drawing, and tells in words what it shows."""

from __future__ import annotations

from typing import assert_never

from PyQt6.QtCore import QCoreApplication, QRectF
from PyQt6.QtGui import QColor, QPainter, QPainterPath, QPaintEvent, QPen
from PyQt6.QtWidgets import QSizePolicy, QWidget

from coach.catalogue.pages import Drawing
from coach.desktop.patient.drawings.board import Board
from coach.desktop.patient.drawings.course import paint_afterwards, paint_course
from coach.desktop.patient.drawings.joint import paint_joint
from coach.desktop.patient.drawings.pull import paint_pull
from coach.desktop.patient.drawings.reach import paint_reach
from coach.desktop.shared.looks import colours
from coach.domain.exercise import StiffnessPhase

translate = QCoreApplication.translate
_ROUND_PX = 14.0


class DrawingView(QWidget):
    """Shows one drawing on a card."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Begin empty."""
        super().__init__(parent)
        self._drawing: Drawing | None = None
        self._phase: StiffnessPhase | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def show_drawing(self, drawing: Drawing, phase: StiffnessPhase | None) -> None:
        """Show another drawing; ``phase`` is the one the therapist set."""
        self._drawing, self._phase = drawing, phase
        self.setAccessibleName(description(drawing))
        self.update()

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: D102, N802
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        card = QPainterPath()
        card.addRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), _ROUND_PX, _ROUND_PX)
        painter.fillPath(card, QColor(colours().card))
        painter.strokePath(card, QPen(QColor(colours().hairline), 1))
        if self._drawing is not None:
            margin = 0.035 * self.width()
            room = QRectF(self.rect()).adjusted(margin, margin, -margin, -margin)
            _paint(Board(painter, room), self._drawing, self._phase)
        painter.end()


def _paint(board: Board, drawing: Drawing, phase: StiffnessPhase | None) -> None:
    match drawing:
        case Drawing.JOINT:
            paint_joint(board)
        case Drawing.COURSE:
            paint_course(board, phase)
        case Drawing.REACH_PAINFUL | Drawing.REACH_STIFF | Drawing.REACH_THAWING:
            paint_reach(board, drawing)
        case Drawing.PULL:
            paint_pull(board)
        case Drawing.AFTERWARDS:
            paint_afterwards(board)
        case _ as never:
            assert_never(never)


def description(drawing: Drawing) -> str:
    """Say what a drawing shows, for those who do not see it."""
    match drawing:
        case Drawing.JOINT:
            return translate(
                "drawings",
                "Drawing: two shoulder joints from the front. Left, a thin bag around ball and "
                "socket with a loose fold below. Right, the bag is thick and the fold is gone.",
            )
        case Drawing.COURSE:
            return translate(
                "drawings",
                "Drawing: a line of time with three humps that overlap: painful, stiff, loosening.",
            )
        case Drawing.REACH_PAINFUL:
            return translate(
                "drawings",
                "Drawing: an arm that goes a part of the way easily and is sore for a long part "
                "after it.",
            )
        case Drawing.REACH_STIFF:
            return translate(
                "drawings", "Drawing: an arm that stops early, with a mild pull just at the end."
            )
        case Drawing.REACH_THAWING:
            return translate(
                "drawings",
                "Drawing: an arm that goes further than before, with a mild pull at the end.",
            )
        case Drawing.PULL:
            return translate(
                "drawings",
                "Drawing: a scale with three parts, nothing yet, it pulls, it hurts. A hand "
                "points at it pulls.",
            )
        case Drawing.AFTERWARDS:
            return translate(
                "drawings",
                "Drawing: pain after a session. Down again within half an hour is all right; "
                "still up after that, ring.",
            )
        case _ as never:
            assert_never(never)
