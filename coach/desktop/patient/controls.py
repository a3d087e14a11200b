"""Buttons that show the key that does the same."""

from __future__ import annotations

from PyQt6.QtCore import QRectF, QSize, Qt
from PyQt6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen
from PyQt6.QtWidgets import QPushButton, QSizePolicy, QStyle, QStyleOptionButton, QWidget

from coach.desktop.shared.theme import LIGHT
from coach.desktop.shared.typeface import font


class KeyButton(QPushButton):
    """A button with its key drawn as a cap beside the label.

    The window handles the key, so that it works wherever the focus is. ``share`` is the label's
    size as a share of the window's height.
    """

    def __init__(
        self,
        label: str,
        key: str,
        role: str = "",
        share: float = 0.032,
        parent: QWidget | None = None,
    ) -> None:
        """Make a button; ``role`` chooses its looks in the style sheet."""
        super().__init__(parent)
        self._key = key
        self._share = share
        self.setProperty("role", role)
        # A press by mouse must not leave the keys on this button.
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.name(label)

    def name(self, label: str) -> None:
        """Change what the button says."""
        if label != self.text():
            self.setText(label)
            self.setAccessibleName(label)
            self.setAccessibleDescription(self.tr("Key: {key}").format(key=self._key))

    def sizeHint(self) -> QSize:  # noqa: D102, N802
        window = self.window()
        tall = 800 if window is None else window.height()
        return QSize(super().sizeHint().width(), round(self._share * tall * 2.4))

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: D102, N802
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        option = QStyleOptionButton()
        self.initStyleOption(option)
        option.text = ""
        style = self.style()
        if style is not None:
            style.drawControl(QStyle.ControlElement.CE_PushButton, option, painter, self)
        window = self.window()
        size_px = self._share * (window.height() if window is not None else 800)
        colour = self._ink(option)
        while True:
            large, small = font(size_px, bold=True), font(size_px * 0.62, bold=True)
            label_px = QFontMetricsF(large).horizontalAdvance(self.text())
            cap_px = QFontMetricsF(small).horizontalAdvance(self._key) + size_px * 0.6
            whole_px = label_px + size_px * 0.5 + cap_px
            if whole_px <= self.width() - 24 or size_px < 12:
                break
            size_px *= 0.95
        left_px = (self.width() - whole_px) / 2
        if self.hasFocus() and self.property("role") == "primary":
            # The ring of the style sheet is too near the accent: part them by a light line.
            painter.setPen(QPen(QColor(LIGHT.on_accent), 2))
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(5, 5, -5, -5), 8, 8)
        painter.setPen(colour)
        painter.setFont(large)
        middle = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
        painter.drawText(QRectF(left_px, 0, label_px + 2, self.height()), middle, self.text())
        cap = QRectF(0, 0, cap_px, size_px * 1.08)
        cap.moveCenter(QRectF(self.rect()).center())
        cap.moveLeft(left_px + label_px + size_px * 0.5)
        painter.setPen(QPen(colour, max(1.2, size_px * 0.05)))
        painter.drawRoundedRect(cap, size_px * 0.24, size_px * 0.24)
        painter.setFont(small)
        painter.drawText(cap, Qt.AlignmentFlag.AlignCenter, self._key)
        painter.end()

    def _ink(self, option: QStyleOptionButton) -> QColor:
        role = self.property("role")
        if not self.isEnabled():
            return QColor(LIGHT.ink_soft)
        if role == "primary" or option.state & QStyle.StateFlag.State_Sunken:
            return QColor(LIGHT.on_accent)
        return QColor(LIGHT.caution if role == "stop" else LIGHT.accent)
