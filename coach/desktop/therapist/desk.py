"""Keeps the therapist's window open, and opens it anew where its text is to have another size."""

from __future__ import annotations

from collections.abc import Callable

from PyQt6.QtCore import QObject
from PyQt6.QtWidgets import QApplication

from coach.desktop.shared.application import show_on_screen
from coach.desktop.shared.dresser import Dresser, dresser
from coach.desktop.therapist.import_run import ImportRun
from coach.desktop.therapist.window import ReviewWindow
from coach.storage.sealed import PracticeIdentity
from coach.storage.store import Store


class Desk(QObject):
    """``window`` is the one that is open; a plan that is still to be saved is asked about."""

    def __init__(self, store: Store, identity: PracticeIdentity | None = None) -> None:
        """Open the window; the caller closes the store."""
        super().__init__()
        self._store = store
        self.window = self._opened(ImportRun(store, identity))

    def _opened(self, imports: ImportRun) -> ReviewWindow:
        window = ReviewWindow(self._store, imports=imports)
        window.looks.text_asked.connect(self._change)
        show_on_screen(window)
        return window

    def _change(self, change: Callable[[Dresser], None]) -> None:
        old, now, application = self.window, dresser(), QApplication.instance()
        if now is None or not isinstance(application, QApplication):
            return
        application.setQuitOnLastWindowClosed(False)
        try:
            place, imports = old.geometry(), old.imports
            imports.setParent(None)  # it goes on while no window is open
            if not old.close():
                imports.setParent(old)
                return
            change(now)
            self.window = self._opened(imports)
            self.window.setGeometry(place)
            if old.code is not None:
                self.window.refresh(old.code)
            self.window.parts.stand_as(old.parts)
            old.deleteLater()
        finally:
            application.setQuitOnLastWindowClosed(True)
