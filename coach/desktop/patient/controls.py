"""Buttons that show the key that does the same."""

from __future__ import annotations

from PyQt6.QtCore import QRectF, QSize, Qt
from PyQt6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen
from PyQt6.QtWidgets import QPushButton, QSizePolicy, QStyle, QStyleOptionButton, QWidget

from coach.desktop.patient.lettering import grown
from coach.desktop.shared.looks import colours, looks
from coach.desktop.shared.typeface import font

_RIM_PX = 24
_RING_PX = 12
"""Room above and below a line of type for the ring of focus, together."""
_SMALLEST_PX = 12
_KEY_OF_LABEL = 0.62


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
        if looks().text == 1.0:
            return QSize(super().sizeHint().width(), round(self._share * tall * 2.4))
        # Enlarged, it may break its label in two, and is as wide as its longest word.
        size_px = grown(self._share) * tall
        label, key = self._widths(size_px, max(self.text().split(), key=len))
        return QSize(round(label + key + 0.5 * size_px + _RIM_PX), round(size_px * 2.7))

    def minimumSizeHint(self) -> QSize:  # noqa: D102, N802
        return super().minimumSizeHint() if looks().text == 1.0 else self.sizeHint()

    def lines(self) -> tuple[list[str], float]:
        """Give the label's lines and the size of its type in pixels, as large as they fit."""
        window = self.window()
        size_px = grown(self._share) * (window.height() if window is not None else 800)
        ways = _broken(self.text()) if looks().text > 1.0 else [[self.text()]]
        while True:
            for lines in ways:
                label, key = self._widths(size_px, *lines)
                high = 1.2 * len(lines) * size_px + (4 if len(lines) > 1 else _RING_PX)
                fits = label + 0.5 * size_px + key <= self.width() - _RIM_PX
                if (fits and high <= self.height()) or size_px < _SMALLEST_PX:
                    return lines, size_px
            size_px *= 0.95

    def _widths(self, size_px: float, *lines: str) -> tuple[float, float]:
        """Give how many pixels the widest line takes, and how many the key's cap."""
        large, small = font(size_px, bold=True), font(size_px * _KEY_OF_LABEL, bold=True)
        label = max(QFontMetricsF(large).horizontalAdvance(line) for line in lines)
        return label, QFontMetricsF(small).horizontalAdvance(self._key) + size_px * 0.6

    def paintEvent(self, event: QPaintEvent | None) -> None:  # noqa: D102, N802
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        option = QStyleOptionButton()
        self.initStyleOption(option)
        option.text = ""
        style = self.style()
        if style is not None:
            style.drawControl(QStyle.ControlElement.CE_PushButton, option, painter, self)
        colour = self._ink(option)
        lines, size_px = self.lines()
        label_px, cap_px = self._widths(size_px, *lines)
        whole_px = label_px + size_px * 0.5 + cap_px
        large, small = font(size_px, bold=True), font(size_px * _KEY_OF_LABEL, bold=True)
        left_px = (self.width() - whole_px) / 2
        if self.hasFocus() and self.property("role") == "primary":
            # The ring of the style sheet is too near the accent: part them by a light line.
            painter.setPen(QPen(QColor(colours().on_accent), 2))
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(5, 5, -5, -5), 8, 8)
        painter.setPen(colour)
        painter.setFont(large)
        middle = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
        label = QRectF(left_px, 0, label_px + 2, self.height())
        painter.drawText(label, middle, "\n".join(lines))
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
            return QColor(colours().ink_soft)
        if role == "primary" or option.state & QStyle.StateFlag.State_Sunken:
            return QColor(colours().on_accent)
        return QColor(colours().caution if role == "stop" else colours().accent)


def _broken(label: str) -> list[list[str]]:
    """Give a label in one line and, where it has more than a word, in two of about one length."""
    words = label.split()
    halves = [[" ".join(words[:at]), " ".join(words[at:])] for at in range(1, len(words))]
    whole = [[label]]
    return [*whole, min(halves, key=lambda two: max(map(len, two)))] if halves else whole
