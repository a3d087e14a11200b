"""One sentence that says what is wrong and what to do, over whatever page is shown."""

from __future__ import annotations

from PyQt6.QtCore import Qt
from PyQt6.QtWidgets import QFrame, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from coach.desktop.patient.controls import KeyButton
from coach.desktop.patient.lettering import grown
from coach.desktop.shared.typeface import font

_SHARE = 0.03
MOST_SENTENCES = 3
"""So many fit over a page."""


class FaultBanner(QWidget):
    """Hidden until there is something to say."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Begin hidden."""
        super().__init__(parent)
        self._announced: list[str] = []
        frame = QFrame(self)
        frame.setProperty("role", "warning")
        self.sentence = QLabel(frame)
        self.sentence.setWordWrap(True)
        self.sentence.setProperty("role", "caution")
        self.sentence.setTextFormat(Qt.TextFormat.PlainText)
        self.again_button = KeyButton(self.tr("Try again"), "R", share=_SHARE)
        self.again_button.setMinimumSize(220, 64)
        row = QHBoxLayout(frame)
        row.setContentsMargins(22, 12, 14, 12)
        row.setSpacing(20)
        row.addWidget(self.sentence, 1)
        row.addWidget(self.again_button)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 12, 16, 12)
        column.addWidget(frame)
        self.hide()

    def announce(self, sentence: str) -> None:
        """Show a sentence after those that were announced before."""
        self._announced.append(sentence)
        more = len(self._announced) - MOST_SENTENCES
        shown = self._announced[:MOST_SENTENCES]
        if more > 0:
            shown.append(self.tr("And {count} more of the kind.").format(count=more))
        self.say(" ".join(shown), again=False)

    def say(self, sentence: str, *, again: bool) -> None:
        """Show a sentence, and whether it can be tried again."""
        window = self.window()
        self.sentence.setFont(
            font(grown(_SHARE) * (800 if window is None else window.height()), bold=True)
        )
        self.sentence.setText(sentence)
        self.sentence.setAccessibleName(sentence)
        self.again_button.setVisible(again)
        self.show()
