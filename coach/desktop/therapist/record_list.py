"""A person's records in sections: one row a record, with what stands beside it."""

from __future__ import annotations

from collections.abc import Sequence

from PyQt6.QtCore import Qt, pyqtSignal
from PyQt6.QtGui import QKeyEvent, QResizeEvent
from PyQt6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QTreeWidget,
    QTreeWidgetItem,
)

from coach.desktop.shared.enlarged import scaled
from coach.desktop.shared.theme import SPACES_PX, type_scale
from coach.desktop.shared.typeface import font
from coach.desktop.therapist.keys import key_name
from coach.desktop.therapist.record_words import section_titles
from coach.desktop.therapist.rows import set_rows
from coach.domain.practice import (
    Episode,
    HandMeasure,
    IssuedPlan,
    OtherSideMeasure,
    PatientRecords,
    Record,
    TotalScore,
    Treatment,
)
from coach.review.history import Series
from coach.review.records import line_of
from coach.review.wording import NONE
from coach.texts import translate

_COLUMNS = 4
_LEAST_PX, _LAST_PX = 160, 100
_ROLE = Qt.ItemDataRole.UserRole


class RecordList(QTreeWidget):
    """Tells which record is to be changed or removed, and of which kind one is to be added."""

    change_wanted = pyqtSignal(object)
    remove_wanted = pyqtSignal(object)
    add_wanted = pyqtSignal(object)
    """The kind of record."""

    def __init__(self) -> None:
        """Begin empty."""
        super().__init__()
        self.setAccessibleName(translate("records", "Records"))
        self.setColumnCount(_COLUMNS)
        self.setHeaderLabels(
            (
                translate("records", "Date"),
                translate("records", "What"),
                translate("records", "Value"),
                translate("records", "Beside it"),
            )
        )
        self.setRootIsDecorated(False)
        self.setIndentation(0)
        self.setItemsExpandable(False)
        self.setUniformRowHeights(False)
        self.setWordWrap(True)
        self.setTextElideMode(Qt.TextElideMode.ElideNone)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setMinimumHeight(scaled(_LEAST_PX))
        self.setFont(font(type_scale().small_px + 1))
        set_rows(self, across_px=8, wrapped=True, more="QHeaderView::section { padding: 8px; }")
        header = self.header()
        assert header is not None
        for column, mode in enumerate(("ResizeToContents",) * 3 + ("Fixed",)):
            header.setSectionResizeMode(column, QHeaderView.ResizeMode[mode])
        header.setStretchLastSection(False)
        header.setSectionsClickable(False)
        # Rows are as high as their last column needs in the width that it has by now.
        header.sectionResized.connect(lambda *_: self.scheduleDelayedItemsLayout())
        header.sectionResized.connect(lambda *_: self._fit())

    def resizeEvent(self, e: QResizeEvent | None) -> None:  # noqa: N802
        """Give the last column what the others leave, but room for a few words at least."""
        super().resizeEvent(e)
        self._fit()

    def _fit(self) -> None:
        port, before = self.viewport(), sum(self.columnWidth(n) for n in range(_COLUMNS - 1))
        if port is not None:
            self.setColumnWidth(_COLUMNS - 1, max(port.width() - before, scaled(_LAST_PX)))

    @property
    def kind(self) -> type[Record]:
        """The kind in whose section the chosen row is."""
        item = self.currentItem()
        return item.data(0, _ROLE)[0] if item is not None else Episode

    @property
    def record(self) -> Record | None:
        """The chosen record, None on a heading."""
        item = self.currentItem()
        return item.data(0, _ROLE)[1] if item is not None else None

    def show_records(self, records: PatientRecords, series: Sequence[Series]) -> None:
        """Show other records, the newest of each kind first; stay where the keyboard was."""
        place = (self.kind, self.record.id if self.record else None)
        self.clear()
        kept: dict[type[Record], Sequence[Record]] = {
            Episode: records.episodes,
            Treatment: records.treatments,
            OtherSideMeasure: records.other_side,
            HandMeasure: records.by_hand,
            TotalScore: records.scores,
            IssuedPlan: records.plans,
        }
        bold = font(type_scale().small_px + 1, bold=True)
        for kind, title in section_titles().items():
            heading = QTreeWidgetItem([title])
            heading.setFlags(Qt.ItemFlag.ItemIsEnabled)
            heading.setFont(0, bold)
            heading.setData(0, _ROLE, (kind, None))
            self.addTopLevelItem(heading)
            heading.setFirstColumnSpanned(True)
            for record in reversed(kept[kind]):
                line = line_of(record, series)
                cells = [line.on, line.what, line.value, line.beside]
                self._add(heading, cells, (kind, record))
            if not kept[kind]:
                item = self._add(heading, [_nothing(kind)], (kind, None))
                item.setFirstColumnSpanned(True)
                item.setForeground(0, self.palette().placeholderText())
            heading.setExpanded(True)
        self.go_to(*place)

    def _add(
        self, heading: QTreeWidgetItem, cells: list[str], data: tuple[type[Record], Record | None]
    ) -> QTreeWidgetItem:
        item = QTreeWidgetItem(cells)
        item.setData(0, _ROLE, data)
        words = ", ".join(cell for cell in cells if cell and cell != NONE)
        item.setData(0, Qt.ItemDataRole.AccessibleTextRole, words)
        item.setToolTip(_COLUMNS - 1, cells[-1])
        heading.addChild(item)
        return item

    def sizeHintForColumn(self, column: int) -> int:  # noqa: N802
        """Leave a gap before the next column."""
        return super().sizeHintForColumn(column) + SPACES_PX[2]

    def go_to(self, kind: type[Record], number: int | None) -> None:
        """Choose a record, or the first row of its section where it is not there."""
        for at in range(self.topLevelItemCount()):
            heading = self.topLevelItem(at)
            if heading is None or heading.data(0, _ROLE)[0] is not kind:
                continue
            rows = [heading.child(n) for n in range(heading.childCount())]
            found = [r for r in rows if r and (one := r.data(0, _ROLE)[1]) and one.id == number]
            self.setCurrentItem(found[0] if found else rows[0])

    def keyPressEvent(self, event: QKeyEvent | None) -> None:  # noqa: N802
        """Enter changes, or adds where there is nothing; Insert adds, Delete removes."""
        key = event.key() if event is not None else 0
        record = self.record
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and record is not None:
            self.change_wanted.emit(record)
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Insert):
            self.add_wanted.emit(self.kind)
        elif key == Qt.Key.Key_Delete and record is not None:
            self.remove_wanted.emit(record)
        else:
            super().keyPressEvent(event)


def _nothing(kind: type[Record]) -> str:
    if kind is IssuedPlan:
        told = translate("records", "None yet. {enter} opens the plan window ({plan}).")
    else:
        told = translate("records", "None yet. {enter} adds one.")
    return told.format(enter=key_name("Enter"), plan=key_name("Ctrl+L"))
