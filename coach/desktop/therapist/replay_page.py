"""Repetitions again as stick figures beside their traces, one session or two side by side."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Callable
from functools import partial

from PyQt6.QtCore import QElapsedTimer, Qt, QTimer
from PyQt6.QtGui import QKeySequence, QShortcut
from PyQt6.QtWidgets import QDialog, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from coach.desktop.shared.enlarged import beside_or_below, let_scroll, scaled
from coach.desktop.shared.looks import looks
from coach.desktop.shared.theme import SPACES_PX, type_scale
from coach.desktop.therapist.replay_buttons import SPEEDS, ReplayButtons, keys_told
from coach.desktop.therapist.replay_figure import FigureView
from coach.desktop.therapist.replay_sessions import Choose, began_on, same_exercise
from coach.desktop.therapist.replay_trace import TraceView
from coach.documents.archive import StoredSession
from coach.domain.fault import Fault
from coach.review.replay import Replay, repetitions_of, replay
from coach.review.replay_axes import span_of, values_of
from coach.review.replay_wording import exercise_name
from coach.texts import translate

_TICK_MS = 33
_MARGINS_PX = 20
_FIGURES_SHARE, _TRACES_SHARE = (4, 6), 6
"""Of the width; two figures get more of it than one."""
_TOLERANCE_S = 1e-6


class ReplayPage(QDialog):
    """Plays the repetitions of a session; everything has a key.

    The clock of the page counts from the beginning of the hold, so that two repetitions stand at
    the same point of it.
    """

    def __init__(self, session: StoredSession, choose: Choose, parent: QWidget | None = None):
        """Show the first repetition at its hold; a ``Fault`` where nothing was measured.

        ``choose`` asks over a window for a session to compare with; None: none was chosen.
        """
        super().__init__(parent)
        self._session, self._choose = session, choose
        self._other: StoredSession | None = None
        self._places = repetitions_of(session.document)
        if not self._places:
            raise Fault(
                translate(
                    "replay",
                    "The session of {day} has no measured repetition to replay; choose another "
                    "one.",
                ).format(day=began_on(session))
            )
        self._at, self._speed, self.since_s = 0, 1.0, 0.0
        self._width_px = 0
        self._stamps: list[float] = []
        self.shown: tuple[Replay, ...] = ()
        em_px = type_scale().small_px + 1
        self.figures = tuple(FigureView(em_px) for _ in range(2))
        self.traces = tuple(TraceView(em_px) for _ in range(2))
        self._title, self._message = QLabel(), QLabel()
        self._timer, self._elapsed = QTimer(self), QElapsedTimer()
        self._timer.setInterval(_TICK_MS)
        self._timer.timeout.connect(self._tick)
        self.setWindowTitle(translate("replay", "Replay"))
        self.setWindowFlag(Qt.WindowType.WindowMaximizeButtonHint)
        self._arrange()
        let_scroll(self, self)
        self.resize(1280, 800)
        self.go_to(0)

    def _arrange(self) -> None:
        for label, role in ((self._title, "lead"), (self._message, "caution")):
            label.setProperty("role", role)
            label.setTextFormat(Qt.TextFormat.PlainText)
            label.setWordWrap(True)
        self._message.setAccessibleName(translate("replay", "Message"))
        self._message.hide()
        acts: dict[str, Callable[[], object]] = {
            "Space": self.toggle,
            "Left": lambda: self.step(-1),
            "Right": lambda: self.step(1),
            **{key: partial(self.set_speed, speed) for key, speed in SPEEDS.items()},
            "PgUp": lambda: self.go_to(self._at - 1),
            "PgDown": lambda: self.go_to(self._at + 1),
            "C": self._compare,
            "Esc": self.close,
        }
        self.buttons = ReplayButtons(acts)
        for keys, edge in (("Home", 0), ("End", -1)):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.activated.connect(partial(self._to_edge, edge))
        figures, traces = QHBoxLayout(), QVBoxLayout()
        for figure, trace in zip(self.figures, self.traces, strict=True):
            figures.addWidget(figure)
            traces.addWidget(trace)
        self._middle = QHBoxLayout()
        self._middle.setSpacing(SPACES_PX[3])
        self._middle.addLayout(figures, _FIGURES_SHARE[0])
        self._middle.addLayout(traces, _TRACES_SHARE)
        keys_line = QLabel(keys_told())
        keys_line.setWordWrap(True)
        keys_line.setProperty("role", "soft")
        page = QVBoxLayout(self)
        page.setContentsMargins(SPACES_PX[3], SPACES_PX[2], SPACES_PX[3], SPACES_PX[2])
        page.setSpacing(SPACES_PX[2])
        for widget in (self._title, self._message):
            page.addWidget(widget)
        page.addLayout(self._middle, 1)
        page.addWidget(self.buttons)
        page.addWidget(keys_line)
        self.set_speed(1.0)

    def reflow(self, width_px: int) -> None:
        """Put the traces below the figures where they have too little room beside them."""
        self._width_px = width_px
        least_px = sum(part.minimumWidth() for part in self.figures[: max(1, len(self.shown))])
        beside = width_px >= least_px + self.traces[0].minimumWidth() + scaled(_MARGINS_PX)
        beside_or_below(self._middle, beside=beside)
        self.buttons.reflow(width_px)
        for trace in self.traces:
            trace.set_tall(looks().text > 1.0)

    @property
    def playing(self) -> bool:
        """Whether the clock runs."""
        return self._timer.isActive()

    def toggle(self) -> None:
        """Play from here, from the beginning where the end is reached, or pause."""
        if self.playing:
            self._pause()
            return
        if self.since_s >= self._stamps[-1] - _TOLERANCE_S:
            self.move_to(self._stamps[0])
        self._elapsed.start()
        self._timer.start()
        self.buttons.show_playing(self.playing)

    def _pause(self) -> None:
        self._timer.stop()
        self.buttons.show_playing(self.playing)

    def _tick(self) -> None:
        self.advance(self._elapsed.restart() / 1000)

    def advance(self, seconds: float) -> None:
        """Let so many seconds pass at the chosen speed; pause at the end."""
        self.move_to(self.since_s + self._speed * seconds)
        if self.since_s >= self._stamps[-1]:
            self._pause()

    def set_speed(self, speed: float) -> None:
        """Play at so many seconds a second."""
        self._speed = speed
        self.buttons.show_speed(speed)

    def step(self, way: int) -> None:
        """Pause and go to the next (+1) or the previous (-1) picture with landmarks."""
        self._pause()
        if way > 0:
            row = bisect_right(self._stamps, self.since_s + _TOLERANCE_S)
        else:
            row = bisect_left(self._stamps, self.since_s - _TOLERANCE_S) - 1
        self.move_to(self._stamps[min(max(row, 0), len(self._stamps) - 1)])

    def _to_edge(self, row: int) -> None:
        self.move_to(self._stamps[row])

    def move_to(self, since_s: float) -> None:
        """Show a moment, in seconds since the beginning of the hold."""
        self.since_s = min(max(since_s, self._stamps[0]), self._stamps[-1])
        for figure, trace, shown in zip(self.figures, self.traces, self.shown, strict=False):
            time_s = shown.repetition.start_s + self.since_s
            figure.show_time(time_s)
            trace.show_time(time_s)

    def go_to(self, at: int) -> None:
        """Show another repetition of the session, counted from 0, at the beginning of its hold."""
        if 0 <= at < len(self._places):
            self._at = at
            self._show()

    def compare_with(self, other: StoredSession) -> None:
        """Show the same exercise of another session beside this one; a ``Fault`` without one."""
        before, self._other = self._other, other
        try:
            self._show()
        except Fault:
            self._other = before
            raise

    def _compare(self) -> None:
        self._pause()
        try:
            other = self._choose(self)
            if other is not None:
                self.compare_with(other)
        except Fault as fault:
            self._message.setText(str(fault))
            self._message.show()

    def _show(self) -> None:
        exercise, number = self._places[self._at]
        chosen = _cut(self._session, exercise, number)
        shown = [chosen]
        if self._other is not None:
            shown.append(_cut(self._other, *same_exercise(self._other, chosen)))
            shown.sort(key=lambda each: each.started_at)  # before stands on the left of after
        self._pause()
        self._message.hide()
        self.shown = tuple(shown)
        spans, values = [span_of(each) for each in shown], [values_of(each) for each in shown]
        span = min(lo for lo, _ in spans), max(hi for _, hi in spans)
        covered = min(lo for lo, _ in values), max(hi for _, hi in values)
        times = {float(t) - each.repetition.start_s for each in shown for t in each.stamps_s}
        self._stamps = sorted({*span, *times})
        title = translate("replay", "{exercise}, repetition {number} of {count} of the session")
        self._title.setText(
            title.format(
                exercise=exercise_name(chosen), number=self._at + 1, count=len(self._places)
            )
        )
        for i, (figure, trace) in enumerate(zip(self.figures, self.traces, strict=True)):
            figure.setVisible(i < len(shown))
            trace.setVisible(i < len(shown))
            if i < len(shown):
                figure.show_replay(shown[i])
                trace.show_replay(shown[i], span, covered)
        self._middle.setStretch(0, _FIGURES_SHARE[len(shown) - 1])
        self.reflow(self._width_px)
        self.move_to(0.0)


def _cut(session: StoredSession, exercise: int, number: int) -> Replay:
    return replay(session.document, session.readings, session.landmarks, exercise, number)
