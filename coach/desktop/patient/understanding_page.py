"""Short pages on what happens in a stiff shoulder, to read or to have read aloud."""

from __future__ import annotations

from PyQt6.QtCore import Qt, pyqtSignal
from PyQt6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from coach.catalogue.pages import Page, pages_for
from coach.desktop.patient.controls import KeyButton
from coach.desktop.patient.drawings.view import DrawingView
from coach.desktop.patient.leaves import LeavesPage
from coach.domain.exercise import StiffnessPhase

_MOST_PARAGRAPHS = 4
ALOUD_KEY = "A"

COMMON_PRACTICE = "Common practice."
"""The one source that is no publication, whose name stays as it is in every language."""


class UnderstandingPage(LeavesPage):
    """Emits ``spoken`` with the words of a page when it is to be read aloud."""

    spoken = pyqtSignal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        """Begin empty."""
        super().__init__(parent)
        self.turned.connect(self.show_leaf)
        self._pages: tuple[Page, ...] = ()
        self._phase: StiffnessPhase | None = None
        self._paragraphs = [self.line("", 0.0365) for _ in range(_MOST_PARAGRAPHS)]
        self._sources = self.line("", 0.02, role="soft")
        self.drawing = DrawingView(self)
        words = QVBoxLayout()
        words.setSpacing(14)
        for paragraph in self._paragraphs:
            words.addWidget(paragraph)
        words.addStretch(1)
        row = QHBoxLayout()
        row.setSpacing(28)
        row.addLayout(words, 10)
        row.addWidget(self.drawing, 11)
        self.body.addLayout(row, 1)
        self.body.addWidget(self._sources)
        self.aloud_button = KeyButton(self.tr("Read aloud"), ALOUD_KEY, share=0.03)
        self.aloud_button.clicked.connect(self._read_aloud)
        self.buttons.insertWidget(1, self.aloud_button, 4)

    def show_for(self, phase: StiffnessPhase | None) -> None:
        """Begin at the first page for this phase; every page in general order without one."""
        self._phase, self._pages = phase, pages_for(phase)
        self.open_leaves(len(self._pages))

    @property
    def page(self) -> Page:
        """The page that is shown."""
        return self._pages[self.leaf]

    def show_leaf(self, index: int) -> None:
        """Show one page's words and drawing."""
        page = self._pages[index]
        self.title.setText(page.words.title)
        for place, label in enumerate(self._paragraphs):
            told = page.words.paragraphs[place] if place < len(page.words.paragraphs) else ""
            label.setText(told)
            label.setVisible(bool(told))
        common = self.tr("Common practice.")
        sources = [common if each == COMMON_PRACTICE else each for each in page.sources]
        self._sources.setText(self.tr("From: {sources}").format(sources=" ".join(sources)))
        self.drawing.show_drawing(page.drawing, self._phase)

    def handle_key(self, key: Qt.Key) -> bool:
        """Read aloud by key, besides turning and closing."""
        if key == Qt.Key.Key_A:
            self._read_aloud()
            return True
        return super().handle_key(key)

    def _read_aloud(self) -> None:
        if self._pages:
            self.spoken.emit(self.page.words.spoken)
