"""The right side of a patient's page: what may be said, hints, what was done, how to read it."""

from __future__ import annotations

from PyQt6.QtCore import QSize, Qt
from PyQt6.QtWidgets import QFrame, QLabel, QScrollArea, QSizePolicy, QVBoxLayout, QWidget

from coach.desktop.shared.enlarged import scaled
from coach.desktop.shared.theme import SPACES_PX, type_scale
from coach.desktop.shared.typeface import font
from coach.desktop.therapist.hints_view import HintsView
from coach.desktop.therapist.lines_view import LinesView
from coach.review.overview import Overview, visit_method
from coach.review.report import Row
from coach.texts import translate

_LEAST_PX, _MOST_PX = 372, 560


class PageColumn(QScrollArea):
    """Shows an ``Overview`` beside the chart, and more of the movement that is chosen."""

    def __init__(self) -> None:
        """Begin empty."""
        super().__init__()
        small_px = type_scale().small_px
        self._movement = heading("")
        self.findings, self.facts = LinesView(), LinesView()
        self.hints = HintsView()
        self._notes = QLabel()
        self._notes.setWordWrap(True)
        self._notes.setFont(font(small_px))
        self._notes.setProperty("role", "soft")
        self._notes.setTextFormat(Qt.TextFormat.PlainText)
        content = QWidget()
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
        self.setWidget(content)
        self.setWidgetResizable(True)
        self.setMinimumWidth(scaled(_LEAST_PX))
        self.setMaximumWidth(scaled(_MOST_PX))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setProperty("role", "reading")
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setStyleSheet("QScrollArea, QWidget#sheet { background: transparent; }")
        self.setAccessibleName(
            translate(
                "therapist", "Change, hints, what was done, pain, camera, and how to read this"
            )
        )

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
