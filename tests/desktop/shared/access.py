"""What WCAG 2.2 AA asks of a window, measured on the window itself."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
from PyQt6.QtCore import QPoint, QRect, Qt
from PyQt6.QtGui import QImage
from PyQt6.QtTest import QTest
from PyQt6.QtWidgets import QAbstractButton, QApplication, QLabel, QWidget

TARGET_PX = 24
"""Criterion 2.5.8."""
SEEN_PX = 2
"""Thickness of a ring of focus, as criterion 2.4.13 (AAA) asks."""
TEXT_RATIO, SHAPE_RATIO = 4.5, 3.0
"""Criteria 1.4.3 and 1.4.11."""
_MOST_STOPS = 200


def pixels(widget: QWidget, place: QRect | None = None) -> np.ndarray:
    """Height, width, red-green-blue of what a widget, or a place in it, shows."""
    shot = (
        (widget.grab() if place is None else widget.grab(place))
        .toImage()
        .convertToFormat(QImage.Format.Format_RGB888)
    )
    data = shot.constBits()
    assert data is not None
    rows = np.frombuffer(data.asstring(shot.sizeInBytes()), np.uint8)
    rows = rows.reshape(shot.height(), shot.bytesPerLine())
    return rows[:, : 3 * shot.width()].reshape(shot.height(), shot.width(), 3)


def luminance(shot: np.ndarray) -> np.ndarray:
    """Relative luminance of every pixel, as defined in WCAG 2.2."""
    part = shot / 255
    linear = np.where(part <= 0.04045, part / 12.92, ((part + 0.055) / 1.055) ** 2.4)
    return linear @ np.array([0.2126, 0.7152, 0.0722])


def differing_px(one: np.ndarray, other: np.ndarray, ratio: float = SHAPE_RATIO) -> int:
    """How many pixels of two pictures differ by a contrast of at least ``ratio``."""
    light, dark = luminance(one) + 0.05, luminance(other) + 0.05
    return int((np.maximum(light, dark) / np.minimum(light, dark) >= ratio).sum())


def changed_px(focused: QWidget) -> int:
    """How many pixels the focus changes by a contrast of 3 or more."""
    with_focus = pixels(focused)
    focused.clearFocus()
    without = pixels(focused)
    focused.setFocus(Qt.FocusReason.TabFocusReason)
    return differing_px(with_focus, without)


def tabbed(window: QWidget) -> Iterator[QWidget]:
    """Everything that the Tab key comes to, in its order, until it comes round."""
    seen: list[QWidget] = []
    for _ in range(_MOST_STOPS):
        QTest.keyClick(QApplication.focusWidget() or window, Qt.Key.Key_Tab)
        focused = QApplication.focusWidget()
        assert focused is not None
        if focused in seen:
            assert focused is seen[0], f"Tab never leaves {seen[-1]}, or skips {seen[0]}"
            return
        seen.append(focused)
        yield focused
    raise AssertionError("Tab comes to no end")


def name_of(widget: QWidget) -> str:
    """What a screen reader says of a widget: its name, its words, or those of its label."""
    if widget.accessibleName():
        return widget.accessibleName()
    if isinstance(widget, QAbstractButton):
        return widget.text().replace("&", "").strip()
    labels = widget.window().findChildren(QLabel) if widget.window() else []
    return next((label.text().replace("&", "") for label in labels if label.buddy() is widget), "")


def place_of(widget: QWidget) -> QRect:
    """Where a widget stands in its window."""
    return QRect(widget.mapTo(widget.window(), QPoint(0, 0)), widget.size())


def goes_back(before: QRect, after: QRect) -> bool:
    """Whether a step of Tab goes up within a column, or up and to the left."""
    above = after.bottom() < before.top()
    return above and after.left() <= before.left()


def text_contrast(widget: QWidget, edge_px: int = 0) -> float:
    """The strongest contrast within a widget but its edge: of its words and what is behind."""
    place = place_of(widget).adjusted(edge_px, edge_px, -edge_px, -edge_px)
    part = luminance(pixels(widget.window(), place)) + 0.05
    ground = float(np.median(part))
    return float(max(part.max() / ground, ground / part.min()))
