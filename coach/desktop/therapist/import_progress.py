"""How far an import is, above whichever page is in front."""

from __future__ import annotations

from PyQt6.QtCore import pyqtSignal
from PyQt6.QtWidgets import QHBoxLayout, QLabel, QProgressBar, QWidget

from coach.desktop.shared.enlarged import scaled
from coach.desktop.shared.theme import SPACES_PX
from coach.desktop.therapist.button import Button
from coach.desktop.therapist.keys import key_name
from coach.texts import translate

_BAR_PX = 100


class ImportProgress(QWidget):
    """A bar, the files in words and a button that stops; hidden where no import runs."""

    stop_wanted = pyqtSignal()

    def __init__(self) -> None:
        """Begin hidden."""
        super().__init__()
        self.bar = QProgressBar()
        self.bar.setAccessibleName(translate("therapist", "Files imported"))
        self.bar.setMinimumWidth(scaled(_BAR_PX))
        self._files = QLabel()
        self._files.setProperty("role", "soft")
        self.stop = Button(translate("therapist", "&Stop importing"))
        self.stop.setAccessibleName(self.stop.text().replace("&", ""))
        self.stop.setToolTip(key_name("Esc"))
        self.stop.clicked.connect(self.stop_wanted)
        row = QHBoxLayout(self)
        row.setContentsMargins(SPACES_PX[3], SPACES_PX[1], SPACES_PX[3], SPACES_PX[1])
        row.setSpacing(SPACES_PX[2])
        row.addWidget(self.bar, 1)
        row.addWidget(self._files)
        row.addWidget(self.stop)
        self.show_progress(0, 0)

    def show_progress(self, done: int, total: int) -> None:
        """Show how many files of how many are done; hidden where all are."""
        self.bar.setRange(0, max(1, total))
        self.bar.setValue(done)
        words = translate("therapist", "{done} of {total} files")
        self._files.setText(words.format(done=done, total=total))
        self.setVisible(done < total)
