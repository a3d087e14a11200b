"""What the menu of looks does."""

from __future__ import annotations

from collections.abc import Callable

from PyQt6.QtCore import QObject, pyqtSignal

from coach.desktop.shared.dresser import Dresser, dresser
from coach.domain.settings import Appearance


class LookActs(QObject):
    """``text_asked`` carries a change of the text's size, for which the window is opened anew."""

    text_asked = pyqtSignal(object)

    @property
    def acts(self) -> dict[str, Callable[[], object]]:
        """Give the acts by the names of their entries."""
        return {
            "larger": lambda: self.text_asked.emit(lambda now: now.larger(1)),
            "smaller": lambda: self.text_asked.emit(lambda now: now.larger(-1)),
            "usual": lambda: self.text_asked.emit(Dresser.usual_size),
            "turn": lambda: _dress(Dresser.turn),
            "as-system": lambda: _dress(lambda now: now.appear(Appearance.SYSTEM)),
        }


def _dress(change: Callable[[Dresser], None]) -> None:
    now = dresser()
    if now is not None:
        change(now)
