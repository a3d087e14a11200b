"""A pseudo-language, and everything that a window shows or tells a screen reader."""

from __future__ import annotations

import re
from collections.abc import Iterator

from PyQt6.QtCore import (
    QAbstractItemModel,
    QAbstractListModel,
    QAbstractTableModel,
    QCoreApplication,
    QModelIndex,
    Qt,
    QTranslator,
)
from PyQt6.QtGui import QAction, QKeySequence
from PyQt6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QApplication,
    QComboBox,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QTableView,
    QTabWidget,
    QTreeView,
    QWidget,
)

from coach import texts

OPEN = "\N{MATHEMATICAL LEFT WHITE SQUARE BRACKET}"
CLOSE = "\N{MATHEMATICAL RIGHT WHITE SQUARE BRACKET}"
_PLACE = re.compile(r"(\{[^{}]*\})")
_WRAPPED = re.compile(f"{OPEN}[^{OPEN}{CLOSE}]*{CLOSE}")
_LETTERS = re.compile(r"[^\W\d_]")
_FLAT = (QAbstractListModel, QAbstractTableModel)
NATIVE = QKeySequence.SequenceFormat.NativeText
CODE = "qq"
"""Of no language."""


def wrapped(sentence: str) -> str:
    """Put brackets round what a translator would translate; what fills a place stays bare."""
    parts = _PLACE.split(sentence)
    return "".join(
        part if at % 2 or not _LETTERS.search(part) else f"{OPEN}{part}{CLOSE}"
        for at, part in enumerate(parts)
    )


class _Table(QTranslator):
    def translate(self, _context: str, sentence: str, *_: object) -> str:
        return wrapped(sentence)

    def isEmpty(self) -> bool:  # noqa: N802
        return False


def install(application: QApplication) -> None:
    """Speak it from here on; ``choose_language`` goes back."""
    application.installTranslator(_Table(application))
    texts.choose(CODE, ".", ",", QCoreApplication.translate)


def bare(text: str, data: re.Pattern[str]) -> str:
    """Give the words of a text that no table gave and that are not ``data``; empty without any."""
    rest = data.sub(" ", _WRAPPED.sub(" ", text))
    return " ".join(word for word in re.findall(r"\w+", rest) if any(map(str.isalpha, word)))


def told(top: QWidget) -> Iterator[tuple[str, str]]:
    """Give each text of a window with where it stands, whatever is hidden by now too."""
    for widget in (top, *top.findChildren(QWidget)):
        name = f"{type(top).__name__}/{type(widget).__name__}"
        for text in _of(widget):
            yield name, text
    for action in top.findChildren(QAction):
        for text in (action.text(), action.toolTip(), action.shortcut().toString(NATIVE)):
            yield f"{type(top).__name__}/QAction", text


def _of(widget: QWidget) -> Iterator[str]:
    yield widget.toolTip()
    yield widget.windowTitle()
    yield widget.accessibleName()
    yield widget.accessibleDescription()
    yield widget.statusTip()
    match widget:
        case QLabel() | QAbstractButton():
            yield widget.text()
        case QLineEdit():
            yield widget.placeholderText()
            if widget.isReadOnly():
                yield widget.text()
        case QPlainTextEdit():
            yield widget.placeholderText()
        case QComboBox():
            yield from (widget.itemText(n) for n in range(widget.count()))
        case QTabWidget():
            for n in range(widget.count()):
                yield from (widget.tabText(n), widget.tabToolTip(n))
        case QAbstractItemView() if (model := widget.model()) is not None:
            yield from _cells(model, QModelIndex())
            if isinstance(widget, QTableView | QTreeView):
                for n in range(model.columnCount()):
                    yield str(model.headerData(n, Qt.Orientation.Horizontal) or "")


def _cells(model: QAbstractItemModel, parent: QModelIndex) -> Iterator[str]:
    roles = Qt.ItemDataRole
    # What is flat keeps to itself how many columns or children it has.
    columns = 1 if isinstance(model, QAbstractListModel) else model.columnCount(parent)
    for row in range(model.rowCount(parent)):
        for column in range(columns):
            index = model.index(row, column, parent)
            for role in (roles.DisplayRole, roles.ToolTipRole, roles.AccessibleTextRole):
                yield str(model.data(index, role) or "")
        first = model.index(row, 0, parent)
        if not isinstance(model, _FLAT) and model.hasChildren(first):
            yield from _cells(model, first)
