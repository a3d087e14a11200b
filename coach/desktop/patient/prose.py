"""Pages of text whose type grows with the window."""

from __future__ import annotations

from PyQt6.QtCore import QCoreApplication, QEvent, Qt
from PyQt6.QtGui import QResizeEvent
from PyQt6.QtWidgets import QFrame, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from coach.desktop.patient.lettering import grown
from coach.desktop.shared.typeface import font


class ProsePage(QWidget):
    """A page that remembers how large each of its lines is, as a share of its height."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Begin empty."""
        super().__init__(parent)
        self.setObjectName("page")
        self._lines: list[tuple[QLabel, float, bool]] = []

    def line(
        self, text: str, share: float, *, bold: bool = False, role: str = "", wrap: bool = True
    ) -> QLabel:
        """Make a line of text."""
        label = QLabel(text, self)
        label.setWordWrap(wrap)
        label.setProperty("role", role)
        label.setTextFormat(Qt.TextFormat.PlainText)
        self._lines.append((label, share, bold))
        label.setFont(font(grown(share) * max(self.type_height(), 480), bold=bold))
        return label

    def type_height(self) -> int:
        """Give the height that lines are a share of, in pixels."""
        return self.height()

    def forget(self, parent: QWidget) -> None:
        """Let go of the lines inside ``parent``, which is about to be deleted."""
        self._lines = [entry for entry in self._lines if not parent.isAncestorOf(entry[0])]

    def card(self, role: str, heading: str, points: list[str], share: float) -> QFrame:
        """Make a frame with a heading and some points under it."""
        frame = QFrame(self)
        frame.setProperty("role", role)
        column = QVBoxLayout(frame)
        column.setContentsMargins(18, 10, 18, 12)
        column.setSpacing(3)
        column.addWidget(
            self.line(heading, share * 1.1, bold=True, role="caution" if role == "warning" else "")
        )
        for point in points:
            row = QHBoxLayout()
            row.setSpacing(10)
            bullet = self.line("•", share, wrap=False)
            bullet.setAlignment(Qt.AlignmentFlag.AlignTop)
            row.addWidget(bullet)
            row.addWidget(self.line(point, share), 1)
            column.addLayout(row)
        return frame

    def resizeEvent(self, event: QResizeEvent | None) -> None:  # noqa: D102, N802
        self._fit()
        super().resizeEvent(event)

    def changeEvent(self, event: QEvent | None) -> None:  # noqa: D102, N802
        # The windows are being dressed anew, the lines after their page: fit them after that.
        if event is not None and event.type() is QEvent.Type.StyleChange:
            QCoreApplication.postEvent(self, QEvent(QEvent.Type.User))
        super().changeEvent(event)

    def customEvent(self, event: QEvent | None) -> None:  # noqa: D102, N802
        self._fit()

    def _fit(self) -> None:
        for label, share, bold in self._lines:
            label.setFont(font(grown(share) * self.type_height(), bold=bold))
