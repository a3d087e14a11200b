"""The threads behind the window: frames are read, looked at, measured; the window only listens."""

from __future__ import annotations

import sys

from PyQt6.QtCore import QObject, QThread, pyqtSignal, pyqtSlot

from coach.desktop.patient.analysis import Analysis
from coach.desktop.patient.coaching import BeginCoaching, OpenSource, Outcome
from coach.desktop.patient.intake import RETRY_S, Intake
from coach.domain.moment import Order

SWITCH_S = 1e-4
"""How soon Python lets another thread on that waits: with the usual 5 ms the next look at a picture
waits for whoever measures or paints (docs/performance.md)."""
STOP_WAIT_MS = 15_000
"""How long closing waits for the session file to be written."""

_HANGING: list[tuple[QThread, Analysis]] = []


class Engine(QObject):
    """Starts, steers and ends the threads; lives in the window's thread.

    ``stepped`` brings a Step after each frame and order, ``finished`` the Outcome, after which the
    camera is let go, and another one where it was saved elsewhere, ``failed`` a sentence to show,
    ``troubled`` one that holds until an empty one follows.
    """

    stepped = pyqtSignal(object)
    finished = pyqtSignal(object)
    failed = pyqtSignal(str)
    troubled = pyqtSignal(str)
    _opened = pyqtSignal(object, object)
    _input_ended = pyqtSignal(object)
    _trouble = pyqtSignal(object)
    _ordered = pyqtSignal(object, object, object)
    _elsewhere = pyqtSignal(str)
    _closing = pyqtSignal()

    def __init__(
        self,
        open_source: OpenSource,
        begin: BeginCoaching,
        *,
        file_waits: bool = True,
        parent: QObject | None = None,
    ) -> None:
        """Remember how to open and begin; ``start`` does it."""
        super().__init__(parent)
        self._open_source, self._begin, self._file_waits = open_source, begin, file_waits
        self._thread: QThread | None = None
        self._analysis: Analysis | None = None
        self._intake: Intake | None = None
        self._outcome: Outcome | None = None
        self._now_s = 0.0

    def start(self) -> None:
        """Open the source and begin; after a fault, begin anew."""
        sys.setswitchinterval(SWITCH_S)
        self.close()
        self._outcome = None
        self._now_s = 0.0
        analysis, thread = Analysis(self._begin), QThread()
        thread.setObjectName("analysis")
        analysis.moveToThread(thread)
        # Each of these comes from another thread than the analysis lives in, so Qt queues it.
        self._opened.connect(analysis.opened)
        self._input_ended.connect(analysis.input_ended)
        self._trouble.connect(analysis.input_troubled)
        self._ordered.connect(analysis.order)
        self._elsewhere.connect(analysis.save_elsewhere)
        self._closing.connect(analysis.close)
        analysis.stepped.connect(self.stepped)
        analysis.finished.connect(self._end)
        analysis.failed.connect(self.failed)
        analysis.troubled.connect(self.troubled)
        intake = Intake(
            self._open_source,
            opened=lambda source: self._opened.emit(intake, source),
            ready=analysis.wake,
            ended=self._input_ended.emit,
            trouble=self._trouble.emit,
            file_waits=self._file_waits,
            retry_s=RETRY_S,
        )
        self._thread, self._analysis, self._intake = thread, analysis, intake
        thread.start()
        intake.start()

    def order(self, order: Order, pain: int | None = None) -> None:
        """Pass on what the person says now."""
        self._ordered.emit(self.now_s(), order, pain)

    def save_elsewhere(self, folder: str) -> None:
        """Have the session that is over saved in another folder."""
        self._elsewhere.emit(folder)

    def now_s(self) -> float | None:
        """Give the present on the clock of the frames' stamps, None before the first frame.

        It never runs backwards, though a file that is measured too slowly holds it up.
        """
        now_s = None if self._intake is None else self._intake.now_s()
        if now_s is not None:
            self._now_s = max(now_s, self._now_s)
        return None if now_s is None else self._now_s

    @property
    def outcome(self) -> Outcome | None:
        """How the session ended, once it has."""
        return self._outcome

    def close(self) -> bool:
        """End the session and the threads; say whether all have ended. May be called twice."""
        ended = self._intake is None or self._intake.stop()
        if self._thread is not None and self._analysis is not None:
            self._closing.emit()
            if not self._thread.wait(STOP_WAIT_MS):
                # Qt ends the process when a running thread's object is deleted.
                _HANGING.append((self._thread, self._analysis))
                ended = False
            to_analysis = self._opened, self._input_ended, self._trouble, self._ordered
            for signal in (*to_analysis, self._elsewhere, self._closing):
                signal.disconnect()
        self._thread = self._analysis = self._intake = None
        return ended

    @pyqtSlot(object)
    def _end(self, outcome: Outcome) -> None:
        self._outcome = outcome
        if self._intake is not None:
            self._intake.stop()
        self.finished.emit(outcome)
