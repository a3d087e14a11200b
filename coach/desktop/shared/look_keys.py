"""Keys that change how a window looks."""

from __future__ import annotations

from PyQt6.QtCore import Qt
from PyQt6.QtGui import QKeyEvent

from coach.desktop.shared.dresser import dresser

_KEY = Qt.Key


def dress_by_key(event: QKeyEvent) -> bool:
    """Change the looks where a key asks for it; False where it is for nothing here.

    Ctrl with plus, minus and 0: the text; with L: light or dark; with M: moving or still.
    """
    now = dresser()
    if now is None or not event.modifiers() & Qt.KeyboardModifier.ControlModifier:
        return False
    match event.key():
        case _KEY.Key_Plus | _KEY.Key_Equal:
            now.larger(1)
        case _KEY.Key_Minus:
            now.larger(-1)
        case _KEY.Key_0:
            now.usual_size()
        case _KEY.Key_L:
            now.turn()
        case _KEY.Key_M:
            now.calm()
        case _:
            return False
    return True
