"""The worker behind the window: frames looked at go in, what is to be shown comes out."""

from __future__ import annotations

import traceback
from collections.abc import Callable
from dataclasses import dataclass, field

from PyQt6.QtCore import QObject, pyqtSignal, pyqtSlot
from PyQt6.QtGui import QImage

from coach.desktop.patient.coaching import BeginCoaching, Coaching
from coach.desktop.patient.giving_way import give_way
from coach.desktop.patient.intake import CALM_S, PAUSED_S, Intake
from coach.desktop.patient.looker import Looker
from coach.desktop.patient.trouble import unexpected
from coach.domain.fault import Fault
from coach.domain.frame import Frame
from coach.domain.moment import Moment, Order, Stage
from coach.domain.session import SessionEnd
from coach.ports import FrameSource
from coach.texts import translate


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


def _at_the_edge(do: Callable[[Coaching], object], coaching: Coaching) -> None:
    try:
        do(coaching)
    except Exception:  # nothing above this thread could report it
        traceback.print_exc()


class Analysis(QObject):
    """Lives in the worker thread and is the only one to touch the coaching.

    But for its looks at frames, which a thread of their own takes, one frame ahead.
    """

    stepped = pyqtSignal(object)
    finished = pyqtSignal(object)
    failed = pyqtSignal(str)
    troubled = pyqtSignal(str)
    _looked = pyqtSignal()
    _drained = pyqtSignal(object)

    def __init__(self, begin: BeginCoaching) -> None:
        """Remember how to begin."""
        super().__init__()
        self._begin = begin
        self._coaching: Coaching | None = None
        self._intake: Intake | None = None
        self._looker: Looker | None = None
        self._time_s = 0.0
        self._stage = Stage.WELCOME
        self._over = False
        # Both come from the thread that looks, so Qt queues them.
        self._looked.connect(self.take)
        self._drained.connect(self._end_input)

    def wake(self) -> None:
        """Have the frame looked at that has just arrived; may be called from any thread."""
        looker = self._looker
        if looker is not None:
            looker.wake()

    @pyqtSlot(object, object)
    def opened(self, intake: Intake, source: FrameSource) -> None:
        """Begin a session on a source that was just opened."""
        self._intake = intake
        if self._coaching is None and not self._over:
            try:
                self._coaching = self._begin(source)
            except Exception as error:
                self._fail(error)
                return
            self._looker = Looker(
                intake.take,
                self._coaching.look,
                looked=self._looked.emit,
                drained=self._drained.emit,
            )
            # Else it halts the thread that looks whenever that one wakes it (docs/performance.md).
            give_way()

    @pyqtSlot()
    def take(self) -> None:
        """Measure the frame that was looked at."""
        if self._looker is None or self._coaching is None or self._over:
            return
        try:
            looked = self._looker.fetch()
            if looked is None:
                return
            self._time_s = max(self._time_s, looked.frame.time_s)
            self._show(Step(self._coaching.take(looked), to_image(looked.frame)))
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
    def input_troubled(self, sentence: str | None) -> None:
        """Pause while nothing is seen, and tell why; whoever comes back goes on by hand or key."""
        if sentence is not None:
            self.order(None, Order.PAUSE, None)
        self.troubled.emit(sentence or "")

    @pyqtSlot(object)
    def input_ended(self, fault: str | None) -> None:
        """End the session because nothing more will be seen, after all that has been."""
        if self._looker is not None and not self._over:
            self._looker.end(fault)
        else:
            self._end_input(fault)

    @pyqtSlot(object)
    def _end_input(self, fault: str | None) -> None:
        if fault is not None:
            self.failed.emit(fault)
        if self._coaching is not None and self._stage is not Stage.WELCOME:
            self._finish(SessionEnd.INPUT_ENDED)
        elif fault is None and not self._over:
            self.failed.emit(
                translate(
                    "faults", "The video ended before the session was started: open a longer one."
                )
            )

    @pyqtSlot(str)
    def save_elsewhere(self, folder: str) -> None:
        """Write the session file into another folder."""
        if self._coaching is None:
            return
        try:
            self.finished.emit(self._coaching.save_elsewhere(folder))
        except Exception as error:
            self._say(error)

    @pyqtSlot()
    def close(self) -> None:
        """End the session if it still runs, free everything and end the thread."""
        began = self._stage is not Stage.WELCOME
        if began:
            self._finish(SessionEnd.STOPPED)
        self._end_looking()
        if self._coaching is not None:
            if not began:  # nothing to tell of, but nothing may be left behind either
                _at_the_edge(lambda coaching: coaching.finish(SessionEnd.STOPPED), self._coaching)
            _at_the_edge(lambda coaching: coaching.close(), self._coaching)
        thread = self.thread()
        if thread is not None:
            thread.quit()

    def _show(self, step: Step) -> None:
        self._stage = step.moment.stage
        if self._intake is not None:
            working = self._stage in (Stage.PREPARE, Stage.EXERCISE)
            if working:
                self._intake.play()
            else:
                self._intake.stand()
            calm_s = PAUSED_S if self._stage is Stage.PAUSED else CALM_S
            self._intake.rest(0.0 if working and not step.moment.deserted else calm_s)
        self.stepped.emit(step)
        if self._stage is Stage.FINISHED:
            self._finish(SessionEnd.COMPLETED)

    def _finish(self, because: SessionEnd) -> None:
        if self._over or self._coaching is None:
            return
        self._end_looking()
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
        self._end_looking()

    def _end_looking(self) -> None:
        self._over = True
        if self._looker is not None:
            self._looker.stop()

    def _say(self, error: Exception) -> None:
        if isinstance(error, Fault):
            self.failed.emit(str(error))
        else:
            traceback.print_exception(error)
            self.failed.emit(unexpected())
