"""Hints for the clinician, each with its rule and source one key away."""

from __future__ import annotations

from collections.abc import Sequence

from PyQt6.QtCore import Qt
from PyQt6.QtGui import QKeySequence
from PyQt6.QtWidgets import QHBoxLayout, QLabel, QVBoxLayout, QWidget

from coach.desktop.shared.theme import SPACES_PX, type_scale
from coach.desktop.shared.typeface import font
from coach.desktop.therapist.button import Button
from coach.desktop.therapist.keys import key_name
from coach.review.hints import Hint
from coach.texts import translate

KEYS = "Ctrl+H"


class HintsView(QWidget):
    """Shows ``Hint``s as sentences; a button shows what each is made of and taken from."""

    def __init__(self) -> None:
        """Begin empty."""
        super().__init__()
        self._reasons: list[QLabel] = []
        self._sentences = QVBoxLayout()
        self._sentences.setSpacing(SPACES_PX[1])
        self.why = Button(translate("therapist", "R&ules"))
        self.why.setCheckable(True)
        self.why.setShortcut(QKeySequence(KEYS))
        told = translate("therapist", "Show the rule and the source of each hint ({key})")
        self.why.setToolTip(told.format(key=key_name(KEYS)))
        self.why.setAccessibleName(translate("therapist", "Rules and sources of the hints"))
        self.why.toggled.connect(self._show_reasons)
        title = QLabel(translate("therapist", "Hints to weigh, no diagnosis"))
        title.setFont(font(type_scale().small_px + 1, bold=True))
        head = QHBoxLayout()
        head.addWidget(title, 1)
        head.addWidget(self.why)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(SPACES_PX[1])
        column.addLayout(head)
        column.addLayout(self._sentences)

    def show_hints(self, hints: Sequence[Hint]) -> None:
        """Show other hints."""
        while (item := self._sentences.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.deleteLater()
        self._reasons = []
        told = translate("therapist", "Rule: {rule} Source: {source}")
        for hint in hints:
            self._sentences.addWidget(_text(hint.sentence, role=""))
            reason = _text(told.format(rule=hint.rule, source=hint.source), role="soft")
            self._reasons.append(reason)
            self._sentences.addWidget(reason)
        if not hints:
            none = translate(
                "therapist",
                "None: a pattern is named only where the errors leave no doubt of it.",
            )
            self._sentences.addWidget(_text(none, role="soft"))
        self.why.setVisible(bool(hints))
        self._show_reasons(self.why.isChecked())

    def _show_reasons(self, shown: bool) -> None:
        for reason in self._reasons:
            reason.setVisible(shown)


def _text(words: str, role: str) -> QLabel:
    label = QLabel(words)
    label.setProperty("role", role)
    label.setFont(font(type_scale().small_px + (0 if role else 1)))
    label.setWordWrap(True)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    return label
