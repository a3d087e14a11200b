"""The right side of a patient's page: what may be said, hints, what was done, how to read it."""

from __future__ import annotations

from PyQt6.QtCore import QSize, Qt
from PyQt6.QtWidgets import QLabel, QSizePolicy, QVBoxLayout, QWidget

from coach.desktop.shared.enlarged import Downward, scaled
from coach.desktop.shared.theme import SPACES_PX, type_scale
from coach.desktop.shared.typeface import font
from coach.desktop.therapist.hints_view import HintsView
from coach.desktop.therapist.lines_view import LinesView
from coach.review.overview import Overview, visit_method
from coach.review.report import Row
from coach.texts import translate

_LEAST_PX, _MOST_PX, _ANY_PX = 372, 560, 16_777_215


class PageColumn(Downward):
    """Shows an ``Overview`` beside the chart, and more of the movement that is chosen."""

    def __init__(self) -> None:
        """Begin empty."""
        content = QWidget()
        super().__init__(content)
        small_px = type_scale().small_px
        self._movement = heading("")
        self.findings, self.facts = LinesView(), LinesView()
        self.hints = HintsView()
        self._notes = QLabel()
        self._notes.setWordWrap(True)
        self._notes.setFont(font(small_px))
        self._notes.setProperty("role", "soft")
        self._notes.setTextFormat(Qt.TextFormat.PlainText)
        content.setObjectName("sheet")
        column = QVBoxLayout(content)
        column.setContentsMargins(SPACES_PX[1], 0, SPACES_PX[1], SPACES_PX[1])
        column.setSpacing(SPACES_PX[1])
        done = heading(translate("therapist", "What was done, pain, camera"))
        reading = heading(translate("therapist", "How to read this"))
        for parts in (
            (self._movement, self.findings),
            (self.hints,),
            (done, self.facts),
            (reading, self._notes),
        ):
            for part in parts:
                column.addWidget(part)
            column.addSpacing(SPACES_PX[0])
        column.addStretch(1)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setProperty("role", "reading")
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setStyleSheet("QScrollArea, QWidget#sheet { background: transparent; }")
        self.set_beside(True)
        self.setAccessibleName(
            translate(
                "therapist", "Change, hints, what was done, pain, camera, and how to read this"
            )
        )

    def set_beside(self, beside: bool) -> None:
        """Stand beside the chart and scroll by itself, or stand whole below it."""
        self.setMinimumWidth(scaled(_LEAST_PX) if beside else 0)
        self.setMaximumWidth(scaled(_MOST_PX) if beside else _ANY_PX)
        self.set_whole(not beside)

    def sizeHint(self) -> QSize:  # noqa: N802
        """Ask for no more than is needed; the rest is shared out by the page."""
        return QSize(scaled(_LEAST_PX), 200)

    def show_overview(self, shown: Overview) -> None:
        """Show another patient."""
        self.hints.show_hints(shown.hints)
        self.facts.show_lines((*shown.report.facts, *shown.lines))
        self._notes.setText("\n\n".join((*shown.report.notes, shown.report.method, visit_method())))
        self.show_row(None)

    def show_row(self, row: Row | None) -> None:
        """Say more of the movement that is chosen."""
        self._movement.setText(row.chart.title if row else translate("therapist", "Movement"))
        no_value = translate("therapist", "no session gave a value")
        nothing = ((translate("therapist", "Change"), no_value),)
        self.findings.show_lines(row.findings or nothing if row else nothing)


def heading(text: str) -> QLabel:
    """Give a heading of the column."""
    label = QLabel(text)
    label.setFont(font(type_scale().small_px + 1, bold=True))
    label.setTextFormat(Qt.TextFormat.PlainText)
    return label
