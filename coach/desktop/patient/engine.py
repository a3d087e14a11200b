"""The two threads behind the window: one reads frames, one measures; the window only listens."""

from __future__ import annotations

import traceback
from dataclasses import dataclass, field

from PyQt6.QtCore import QObject, QThread, pyqtSignal, pyqtSlot
from PyQt6.QtGui import QImage

from coach.desktop.patient.coaching import BeginCoaching, Coaching, OpenSource, Outcome
from coach.desktop.patient.intake import UNEXPECTED, Intake
from coach.domain.fault import Fault
from coach.domain.frame import Frame
from coach.domain.moment import Moment, Order, Stage
from coach.domain.session import SessionEnd
from coach.ports import FrameSource

STOP_WAIT_MS = 15_000
"""How long closing waits for the session file to be written."""


@dataclass(frozen=True, slots=True)
class Step:
    """What the window gets after each frame or order.

    ``image`` is the upright, unmirrored picture that ``moment`` belongs to and owns its pixels;
    None where nothing new was seen.
    """

    moment: Moment
    image: QImage | None = field(repr=False, default=None)


def to_image(frame: Frame) -> QImage:
    """Give a picture that owns its pixels, in the format that Qt paints fastest."""
    width, height = frame.size_px
    view = QImage(frame.image_rgb.tobytes(), width, height, 3 * width, QImage.Format.Format_RGB888)
    return view.convertToFormat(QImage.Format.Format_RGB32)


class Analysis(QObject):
    """Lives in the worker thread and is the only one to touch the coaching."""

    stepped = pyqtSignal(object)
    finished = pyqtSignal(object)
    failed = pyqtSignal(str)

    def __init__(self, begin: BeginCoaching) -> None:
        """Remember how to begin; nothing is loaded yet."""
        super().__init__()
        self._begin = begin
        self._coaching: Coaching | None = None
        self._intake: Intake | None = None
        self._time_s = 0.0
        self._stage = Stage.WELCOME
        self._over = False

    @pyqtSlot(object, object)
    def opened(self, intake: Intake, source: FrameSource) -> None:
        """Begin a session on a source that was just opened."""
        self._intake = intake
        if self._coaching is None and not self._over:
            try:
                self._coaching = self._begin(source)
            except Exception as error:
                self._fail(error)

    @pyqtSlot()
    def take(self) -> None:
        """Measure the next frame, if there is one."""
        frame = None if self._intake is None else self._intake.take()
        if frame is None or self._coaching is None or self._over:
            return
        try:
            self._time_s = max(self._time_s, frame.time_s)
            self._show(Step(self._coaching.step(frame), to_image(frame)))
        except Exception as error:
            self._fail(error)

    @pyqtSlot(object, object, object)
    def order(self, time_s: float | None, order: Order, pain: int | None) -> None:
        """Pass on what the person said; its time never lies before the last frame's."""
        if self._coaching is None or self._over:
            return
        try:
            self._time_s = max(self._time_s, time_s or 0.0)
            self._show(Step(self._coaching.order(self._time_s, order, pain)))
        except Exception as error:
            self._fail(error)

    @pyqtSlot(object)
    def input_ended(self, fault: str | None) -> None:
        """End the session because nothing more will be seen."""
        if fault is not None:
            self.failed.emit(fault)
        if self._coaching is not None and self._stage is not Stage.WELCOME:
            self._finish(SessionEnd.INPUT_ENDED)
        elif fault is None:
            self.failed.emit("The video ended before the session was started: open a longer one.")

    @pyqtSlot()
    def close(self) -> None:
        """End the session if it still runs, free everything and end the thread."""
        if self._coaching is not None and self._stage is not Stage.WELCOME:
            self._finish(SessionEnd.STOPPED)
        self._over = True
        if self._coaching is not None:
            try:
                self._coaching.close()
            except Exception:  # the edge of the thread
                traceback.print_exc()
        thread = self.thread()
        if thread is not None:
            thread.quit()

    def _show(self, step: Step) -> None:
        self._stage = step.moment.stage
        if self._intake is not None:
            if self._stage is Stage.EXERCISE:
                self._intake.play()
            else:
                self._intake.stand()
        self.stepped.emit(step)
        if self._stage is Stage.FINISHED:
            self._finish(SessionEnd.COMPLETED)

    def _finish(self, because: SessionEnd) -> None:
        if self._over or self._coaching is None:
            return
        self._over = True
        try:
            outcome = self._coaching.finish(because)
        except Exception as error:
            self._say(error)
            return
        self.finished.emit(outcome)

    def _fail(self, error: Exception) -> None:
        self._say(error)
        if self._stage is not Stage.WELCOME:
            self._finish(SessionEnd.INTERRUPTED)
        self._over = True

    def _say(self, error: Exception) -> None:
        if isinstance(error, Fault):
            self.failed.emit(str(error))
        else:
            traceback.print_exception(error)
            self.failed.emit(UNEXPECTED)


class Engine(QObject):
    """Starts, steers and ends both threads; lives in the window's thread.

    Signals: ``stepped`` with a Step after each frame and order, ``finished`` once with the Outcome,
    ``failed`` with a sentence to show. After ``finished`` the camera is let go.
    """

    stepped = pyqtSignal(object)
    finished = pyqtSignal(object)
    failed = pyqtSignal(str)
    _opened = pyqtSignal(object, object)
    _frame_ready = pyqtSignal()
    _input_ended = pyqtSignal(object)
    _ordered = pyqtSignal(object, object, object)
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
        self.close()
        self._outcome = None
        self._now_s = 0.0
        analysis, thread = Analysis(self._begin), QThread()
        thread.setObjectName("analysis")
        analysis.moveToThread(thread)
        # Each of these comes from another thread than the analysis lives in, so Qt queues it.
        self._opened.connect(analysis.opened)
        self._frame_ready.connect(analysis.take)
        self._input_ended.connect(analysis.input_ended)
        self._ordered.connect(analysis.order)
        self._closing.connect(analysis.close)
        analysis.stepped.connect(self.stepped)
        analysis.finished.connect(self._end)
        analysis.failed.connect(self.failed)
        intake = Intake(
            self._open_source,
            opened=lambda source: self._opened.emit(intake, source),
            ready=self._frame_ready.emit,
            ended=self._input_ended.emit,
            file_waits=self._file_waits,
        )
        self._thread, self._analysis, self._intake = thread, analysis, intake
        thread.start()
        intake.start()

    def order(self, order: Order, pain: int | None = None) -> None:
        """Pass on what the person says now."""
        self._ordered.emit(self.now_s(), order, pain)

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
        """End the session and both threads; say whether both have ended. May be called twice."""
        ended = self._intake is None or self._intake.stop()
        if self._thread is not None and self._analysis is not None:
            self._closing.emit()
            ended = self._thread.wait(STOP_WAIT_MS) and ended
            to_analysis = self._opened, self._frame_ready, self._input_ended, self._ordered
            for signal in (*to_analysis, self._closing):
                signal.disconnect()
        self._thread = self._analysis = self._intake = None
        return ended

    @pyqtSlot(object)
    def _end(self, outcome: Outcome) -> None:
        self._outcome = outcome
        if self._intake is not None:
            self._intake.stop()
        self.finished.emit(outcome)
