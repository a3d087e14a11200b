"""The buttons under a replay, each with its name and its key."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from PyQt6.QtGui import QKeySequence, QShortcut
from PyQt6.QtWidgets import QHBoxLayout, QLabel, QWidget

from coach.desktop.shared.enlarged import beside_or_below, scaled
from coach.desktop.shared.theme import SPACES_PX
from coach.desktop.therapist.button import Button
from coach.desktop.therapist.keys import key_name
from coach.texts import translate

SPEEDS: Mapping[str, float] = {"1": 0.25, "2": 0.5, "3": 1.0}
"""Seconds a second by their keys."""
_BESIDE_PX = 900


class ReplayButtons(QWidget):
    """Does the act of a key when its button or the key itself is pressed."""

    def __init__(self, acts: Mapping[str, Callable[[], object]]) -> None:
        """Take the acts by their keys."""
        super().__init__()
        self._acts = acts
        self.play = self._button(translate("replay", "Play or pause"), "Space")
        self.play.setProperty("role", "primary")
        self.show_playing(False)
        back = self._button(translate("replay", "One picture back"), "Left")
        back.setText("\N{LEFTWARDS ARROW}")
        on = self._button(translate("replay", "One picture on"), "Right")
        on.setText("\N{RIGHTWARDS ARROW}")
        self.speeds = {
            speed: self._button(name, key)
            for (key, speed), name in zip(SPEEDS.items(), _speed_names(), strict=True)
        }
        signs = ("\N{VULGAR FRACTION ONE QUARTER}", "\N{VULGAR FRACTION ONE HALF}", "1")
        for button, sign in zip(self.speeds.values(), signs, strict=True):
            button.setText(sign)
            button.setCheckable(True)
        previous = self._button(translate("replay", "Previous repetition"), "PgUp")
        previous.setText(translate("replay", "Previous"))
        following = self._button(translate("replay", "Next repetition"), "PgDown")
        following.setText(translate("replay", "Next"))
        compare = self._button(translate("replay", "Compare with another session"), "C")
        compare.setText(translate("replay", "Compare\N{HORIZONTAL ELLIPSIS}"))
        close = self._button(translate("replay", "Close the replay"), "Esc")
        close.setText(translate("replay", "Close"))
        playing, choosing = QHBoxLayout(), QHBoxLayout()
        for button in (self.play, back, on):
            playing.addWidget(button)
        playing.addSpacing(SPACES_PX[2])
        playing.addWidget(QLabel(translate("replay", "Speed")))
        for button in self.speeds.values():
            playing.addWidget(button)
        playing.addStretch(1)
        for button in (previous, following, compare, close):
            choosing.addWidget(button)
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.addLayout(playing, 1)
        self._row.addLayout(choosing)
        for row in (playing, choosing, self._row):
            row.setSpacing(SPACES_PX[1])

    def reflow(self, width_px: int) -> None:
        """Take two rows where one has too little room."""
        beside_or_below(self._row, beside=width_px >= scaled(_BESIDE_PX))

    def _button(self, name: str, keys: str) -> Button:
        button = Button()
        button.setAccessibleName(name)
        button.setToolTip(f"{name} ({key_name(keys)})")
        button.clicked.connect(lambda: self._acts[keys]())
        QShortcut(QKeySequence(keys), self).activated.connect(button.click)
        return button

    def show_playing(self, playing: bool) -> None:
        """Say what the first button would do."""
        words = translate("replay", "Pause") if playing else translate("replay", "Play")
        self.play.setText(words)

    def show_speed(self, speed: float) -> None:
        """Show which speed is chosen."""
        for each, button in self.speeds.items():
            button.setChecked(each == speed)


def _speed_names() -> tuple[str, ...]:
    return (
        translate("replay", "Quarter speed"),
        translate("replay", "Half speed"),
        translate("replay", "Full speed"),
    )


def keys_told() -> str:
    """Say what each key does."""
    return translate(
        "replay",
        "Space play or pause, Left and Right one picture, Home and End, Page Up and Page Down "
        "repetition, 1 2 3 speed, C compare, Esc close",
    )
