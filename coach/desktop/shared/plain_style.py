"""The style of every window, in which a text is only ever a text."""

from __future__ import annotations

from PyQt6.QtCore import Qt
from PyQt6.QtGui import QPalette
from PyQt6.QtWidgets import QApplication, QLabel, QProxyStyle, QWidget


class PlainStyle(QProxyStyle):
    """Fusion, with labels that take no text for markup.

    Qt shows whatever looks like HTML as HTML, with pictures and links, in each label that is not
    told otherwise: also those inside message boxes, questions and tool tips, which show names out
    of files. Every widget comes by here before it is first shown.
    """

    def __init__(self) -> None:
        """Begin with Qt's own Fusion."""
        super().__init__("Fusion")

    def polish(  # type: ignore[override]
        self, what: QWidget | QPalette | QApplication | None
    ) -> QPalette | None:
        """Make a label's text plain, and do what Fusion does."""
        if isinstance(what, QLabel) and what.textFormat() is Qt.TextFormat.AutoText:
            what.setTextFormat(Qt.TextFormat.PlainText)
        return super().polish(what)
