"""What a window with enlarged text needs: lengths that grow with it, and a way to scroll."""

from __future__ import annotations

from PyQt6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from coach.desktop.shared.looks import looks


def scaled(px: int) -> int:
    """Give a length that goes with the size of type."""
    return round(px * looks().text)


def scrolling(inside: QWidget) -> QWidget:
    """Give a widget in which ``inside`` scrolls where it has too little room; itself at 100 %."""
    if looks().text == 1.0:
        return inside
    area = QScrollArea()
    area.setWidget(inside)
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
    return area


def let_scroll(window: QWidget) -> None:
    """Let all that is laid out in a window scroll, where its text is enlarged."""
    if looks().text == 1.0:
        return
    inside = QWidget()
    inside.setObjectName("page")
    inside.setLayout(window.layout())  # takes what is in it along
    column = QVBoxLayout(window)
    column.setContentsMargins(0, 0, 0, 0)
    column.addWidget(scrolling(inside))
