"""One patient on one page: table, chart, what was done, pain, and how to read it."""

from __future__ import annotations

from PyQt6.QtCore import QItemSelectionModel, QModelIndex, Qt, pyqtSignal
from PyQt6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QPushButton,
    QScrollArea,
    QSizePolicy,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from coach.desktop.shared.theme import SPACES_PX, type_scale
from coach.desktop.shared.typeface import font
from coach.desktop.therapist.drawings import ChartView, WeeksView
from coach.desktop.therapist.movement_table import MovementTable
from coach.review.report import Report
from coach.review.wording import counted

_SIDE_PX = 356
_ROW_PX = 34
_MOST_ROWS_SHOWN = 6


class PatientPage(QWidget):
    """Shows a ``coach.review.report.Report``."""

    report_wanted = pyqtSignal()
    replay_wanted = pyqtSignal()

    def __init__(self) -> None:
        """Begin empty."""
        super().__init__()
        sizes = type_scale()
        small = font(sizes.small_px + 1)
        self._title = _label("title")
        self._under = _label("soft")
        self._table_model = MovementTable(sizes.small_px + 1, self)
        self.table = QTableView()
        self.table.setModel(self._table_model)
        self.table.setAccessibleName("Range by movement")
        self.table.setFont(small)
        self.table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.table.setTabKeyNavigation(False)
        self.table.setShowGrid(False)
        self.table.setAlternatingRowColors(True)
        _headers(self.table)
        self._chart = ChartView(sizes.small_px + 0.5)
        self._weeks = WeeksView(sizes.small_px)
        self._facts = QGridLayout()
        self._facts.setHorizontalSpacing(SPACES_PX[2])
        self._facts.setVerticalSpacing(SPACES_PX[0])
        self._facts.setColumnStretch(1, 1)
        self._notes = QLabel()
        self._notes.setWordWrap(True)
        self._notes.setFont(font(sizes.small_px))
        self._notes.setProperty("role", "soft")
        self._notes.setTextFormat(Qt.TextFormat.PlainText)
        self._notes.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.write_report = QPushButton("Write &report\N{HORIZONTAL ELLIPSIS}")
        self.write_report.setProperty("role", "primary")
        self.write_report.setAccessibleName("Write the one-page report as a PDF file")
        self.write_report.setToolTip("Ctrl+P")
        self.write_report.clicked.connect(self.report_wanted)
        self.replay = QPushButton("Re&play\N{HORIZONTAL ELLIPSIS}")
        self.replay.setAccessibleName("Replay repetitions of a session")
        self.replay.setToolTip("Ctrl+R")
        self.replay.clicked.connect(self.replay_wanted)
        self._arrange()
        selection = self.table.selectionModel()
        assert selection is not None
        selection.currentRowChanged.connect(self._choose)

    def _arrange(self) -> None:
        head = QHBoxLayout()
        titles = QVBoxLayout()
        titles.setSpacing(0)
        titles.addWidget(self._title)
        titles.addWidget(self._under)
        head.addLayout(titles, 1)
        head.addWidget(self.replay)
        head.addWidget(self.write_report)
        chart_card = QFrame()
        chart_card.setProperty("role", "card")
        inside = QVBoxLayout(chart_card)
        inside.setContentsMargins(*(SPACES_PX[2],) * 4)
        inside.addWidget(self._chart)
        lower = QHBoxLayout()
        lower.setSpacing(SPACES_PX[2])
        lower.addWidget(chart_card, 1)
        lower.addWidget(self._side())
        page = QVBoxLayout(self)
        page.setContentsMargins(SPACES_PX[3], SPACES_PX[2], SPACES_PX[3], SPACES_PX[2])
        page.setSpacing(SPACES_PX[2])
        page.addLayout(head)
        page.addWidget(self.table)
        page.addLayout(lower, 1)

    def _side(self) -> QWidget:
        content = QWidget()
        content.setObjectName("sheet")
        column = QVBoxLayout(content)
        column.setContentsMargins(*(SPACES_PX[2],) * 4)
        column.setSpacing(SPACES_PX[1])
        column.addWidget(_heading("What was done, pain, camera"))
        column.addLayout(self._facts)
        column.addSpacing(SPACES_PX[1])
        column.addWidget(_heading("Sessions by week, done / asked for"))
        column.addWidget(self._weeks)
        column.addSpacing(SPACES_PX[1])
        column.addWidget(_heading("How to read this"))
        column.addWidget(self._notes)
        column.addStretch(1)
        scroll = QScrollArea()
        scroll.setWidget(content)
        scroll.setWidgetResizable(True)
        scroll.setFixedWidth(_SIDE_PX)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setStyleSheet("QScrollArea, QWidget#sheet { background: transparent; }")
        scroll.setAccessibleName("What was done, pain, camera, and how to read this")
        return scroll

    def show_report(self, report: Report) -> None:
        """Show another report; the chart is that of the first row that has values."""
        self._title.setText(report.patient_code)
        under = f"{report.period}, {counted(report.sessions, 'session')}"
        self._under.setText(f"{under}. Plan: {report.title}" if report.title else under)
        self._table_model.show(report.rows)
        shown = min(len(report.rows), _MOST_ROWS_SHOWN)
        header = self.table.horizontalHeader()
        assert header is not None
        self.table.setFixedHeight(header.sizeHint().height() + shown * _ROW_PX + 4)
        self._fill_facts(report)
        self._weeks.show_adherence(report.adherence)
        self._notes.setText("\n\n".join((*report.notes, report.method)))
        first = next((i for i, r in enumerate(report.rows) if r.summary), 0)
        if report.rows:
            self._select(first)
        else:
            self._chart.show_chart(None)

    def _select(self, row: int) -> None:
        selection = self.table.selectionModel()
        assert selection is not None
        index = self._table_model.index(row, 0)
        flags = QItemSelectionModel.SelectionFlag
        selection.setCurrentIndex(index, flags.ClearAndSelect | flags.Rows)
        self._choose(index)

    def _choose(self, index: QModelIndex) -> None:
        if index.isValid():
            self._chart.show_chart(self._table_model.row(index.row()).chart)

    def _fill_facts(self, report: Report) -> None:
        while (item := self._facts.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.deleteLater()
        small = font(type_scale().small_px + 1)
        for row, (name, text) in enumerate(report.facts):
            what, value = _label("soft"), QLabel(text)
            what.setText(name)
            value.setWordWrap(True)
            value.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Minimum)
            for label in (what, value):
                label.setFont(small)
                label.setTextFormat(Qt.TextFormat.PlainText)
            top = Qt.AlignmentFlag.AlignTop
            self._facts.addWidget(what, row, 0, top)
            self._facts.addWidget(value, row, 1)


def _headers(table: QTableView) -> None:
    across, down = table.horizontalHeader(), table.verticalHeader()
    assert across is not None
    assert down is not None
    down.hide()
    down.setDefaultSectionSize(_ROW_PX)
    across.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
    across.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
    across.setHighlightSections(False)
    size_px = type_scale().small_px
    table.setStyleSheet(
        f"QHeaderView::section {{ font-size: {size_px}px; }} QTableView::item {{ padding: 0 5px; }}"
    )


def _label(role: str) -> QLabel:
    label = QLabel()
    label.setProperty("role", role)
    label.setTextFormat(Qt.TextFormat.PlainText)
    return label


def _heading(text: str) -> QLabel:
    label = QLabel(text)
    label.setFont(font(type_scale().small_px + 1, bold=True))
    return label
