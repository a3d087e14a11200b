"""One patient on one page: table, chart, what was done, pain, and how to read it."""

from __future__ import annotations

from PyQt6.QtCore import QItemSelectionModel, QModelIndex, Qt, pyqtSignal
from PyQt6.QtGui import QResizeEvent
from PyQt6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from coach.desktop.shared.enlarged import beside_or_below, scaled
from coach.desktop.shared.theme import SPACES_PX, type_scale
from coach.desktop.shared.typeface import font
from coach.desktop.therapist.button import Button
from coach.desktop.therapist.drawings import ChartView
from coach.desktop.therapist.keys import key_name
from coach.desktop.therapist.movement_table import MovementTable
from coach.desktop.therapist.one_line import OneLine
from coach.desktop.therapist.page_column import PageColumn
from coach.desktop.therapist.rows import set_rows
from coach.review.adherence import Week
from coach.review.counts import sessions_counted
from coach.review.overview import Overview
from coach.texts import translate

_CHART_SHARE, _COLUMN_SHARE = 56, 44
_ROW_PX = 32
_MOST_ROWS_SHOWN = 8
_TALL_PX = 900
_BESIDE_PX = 860
_BASELINE_PX = 4
"""Margin with which the small words stand on the line of the title."""


class PatientPage(QWidget):
    """Shows a ``coach.review.overview.Overview``."""

    report_wanted = pyqtSignal()
    replay_wanted = pyqtSignal()

    def __init__(self) -> None:
        """Begin empty."""
        super().__init__()
        sizes = type_scale()
        small = font(sizes.small_px + 1)
        self._title = OneLine()
        self._title.setProperty("role", "title")
        self._under = OneLine()
        self._under.setProperty("role", "soft")
        self._under.setMargin(_BASELINE_PX)
        self.reasons = _label("")
        self.reasons.setWordWrap(True)
        self.reasons.setFont(small)
        self.reasons.setAccessibleName(translate("therapist", "Why to look at this patient"))
        self._table_model = MovementTable(sizes.small_px + 1, self)
        self.table = QTableView()
        self.table.setModel(self._table_model)
        self.table.setAccessibleName(translate("therapist", "Range by movement"))
        self.table.setFont(small)
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.table.setTabKeyNavigation(False)
        self.table.setShowGrid(False)
        self.table.setAlternatingRowColors(True)
        _headers(self.table)
        self._chart = ChartView(sizes.small_px + 0.5)
        self.column = PageColumn()
        self._done: tuple[Week, ...] = ()
        self._beside = True
        self.write_report = Button(translate("therapist", "Write &report\N{HORIZONTAL ELLIPSIS}"))
        self.write_report.setProperty("role", "primary")
        self.write_report.setAccessibleName(
            translate("therapist", "Write the one-page report as a PDF file")
        )
        self.write_report.setToolTip(key_name("Ctrl+P"))
        self.write_report.clicked.connect(self.report_wanted)
        self.replay = Button(translate("therapist", "Re&play\N{HORIZONTAL ELLIPSIS}"))
        self.replay.setAccessibleName(translate("therapist", "Replay repetitions of a session"))
        self.replay.setToolTip(key_name("Ctrl+R"))
        self.replay.clicked.connect(self.replay_wanted)
        self._arrange()
        selection = self.table.selectionModel()
        assert selection is not None
        selection.currentRowChanged.connect(self._choose)

    def _arrange(self) -> None:
        bottom = Qt.AlignmentFlag.AlignBottom
        self._titles = QHBoxLayout()
        self._titles.addWidget(self._title, 0, bottom)
        self._titles.addWidget(self._under, 1, bottom)
        buttons = QHBoxLayout()
        buttons.addWidget(self.replay)
        buttons.addWidget(self.write_report)
        buttons.addStretch(1)
        self._head = QHBoxLayout()
        self._head.addLayout(self._titles, 1)
        self._head.addLayout(buttons)
        for row in (self._titles, buttons, self._head):
            row.setSpacing(SPACES_PX[2])
        chart_card = QFrame()
        chart_card.setProperty("role", "card")
        inside = QVBoxLayout(chart_card)
        inside.setContentsMargins(*(SPACES_PX[2],) * 4)
        inside.addWidget(self._chart)
        self._lower = QHBoxLayout()
        self._lower.setSpacing(SPACES_PX[2])
        self._lower.addWidget(chart_card, _CHART_SHARE)
        self._lower.addWidget(self.column, _COLUMN_SHARE)
        page = QVBoxLayout(self)
        page.setContentsMargins(SPACES_PX[3], SPACES_PX[2], SPACES_PX[3], SPACES_PX[2])
        page.setSpacing(SPACES_PX[2])
        page.addLayout(self._head)
        page.addWidget(self.reasons)
        page.addWidget(self.table)
        page.addLayout(self._lower, 1)

    def reflow(self, width_px: int) -> None:
        """Put the column below the chart where they have too little room beside each other."""
        beside = width_px >= scaled(_BESIDE_PX)
        for row in (self._titles, self._head, self._lower):
            beside_or_below(row, beside=beside)
        self._under.setWordWrap(not beside)
        self._under.setMargin(_BASELINE_PX if beside else 0)
        self.column.set_beside(beside)
        self._chart.set_tall(not beside)
        first = (
            QHeaderView.ResizeMode.Stretch if beside else QHeaderView.ResizeMode.ResizeToContents
        )
        if (across := self.table.horizontalHeader()) is not None:
            across.setSectionResizeMode(0, first)
        self._beside = beside
        self._fit_table()

    def show_overview(self, shown: Overview) -> None:
        """Show another patient; the chart is that of the first row that has values."""
        report = shown.report
        self._title.setText(report.patient_code)
        under = translate("therapist", "{period}, {sessions}. Plan: {title}")
        if not report.title:
            under = translate("therapist", "{period}, {sessions}")
        under = under.format(
            period=report.period, sessions=sessions_counted(report.sessions), title=report.title
        )
        self._under.setText(under)
        self._under.setToolTip(under)
        self.reasons.setText(" ".join(shown.reasons) or nothing())
        self._table_model.show(report.rows)
        self._fit_table()
        self.column.show_overview(shown)
        self._done = report.adherence.weeks
        first = next((i for i, r in enumerate(report.rows) if r.summary), 0)
        if report.rows:
            self._select(first)
        else:
            self._chart.show_chart(None)

    def resizeEvent(self, event: QResizeEvent | None) -> None:  # noqa: N802
        """Leave the chart its room on a small screen."""
        super().resizeEvent(event)
        self._fit_table()

    def _fit_table(self) -> None:
        header = self.table.horizontalHeader()
        assert header is not None
        most = _MOST_ROWS_SHOWN if self.height() >= _TALL_PX else _MOST_ROWS_SHOWN // 2
        rows = min(self._table_model.rowCount(), most)
        bar = self.table.horizontalScrollBar()
        bar_px = 0 if self._beside or bar is None else bar.sizeHint().height()
        self.table.setFixedHeight(header.sizeHint().height() + rows * scaled(_ROW_PX) + 8 + bar_px)

    def _select(self, row: int) -> None:
        selection = self.table.selectionModel()
        assert selection is not None
        index = self._table_model.index(row, 0)
        flags = QItemSelectionModel.SelectionFlag
        selection.setCurrentIndex(index, flags.ClearAndSelect | flags.Rows)
        self._choose(index)

    def _choose(self, index: QModelIndex) -> None:
        if index.isValid():
            row = self._table_model.row(index.row())
            self._chart.show_chart(row.chart, self._done)
            self.column.show_row(row)


def nothing() -> str:
    """Say that there is no reason to look at a patient."""
    return translate("therapist", "Nothing stands out.")


def _headers(table: QTableView) -> None:
    across, down = table.horizontalHeader(), table.verticalHeader()
    assert across is not None
    assert down is not None
    down.hide()
    down.setDefaultSectionSize(scaled(_ROW_PX))
    across.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
    across.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
    across.setHighlightSections(False)
    size_px = type_scale().small_px
    more = f"QHeaderView::section {{ font-size: {size_px}px; padding: 3px 4px; }}"
    set_rows(table, above_px=0, across_px=4, more=more)


def _label(role: str) -> QLabel:
    label = QLabel()
    label.setProperty("role", role)
    label.setTextFormat(Qt.TextFormat.PlainText)
    return label
