"""Repetitions again as stick figures beside their traces, one session or two side by side."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Callable
from functools import partial

from PyQt6.QtCore import QElapsedTimer, Qt, QTimer
from PyQt6.QtGui import QKeySequence, QShortcut
from PyQt6.QtWidgets import QDialog, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from coach.desktop.shared.theme import SPACES_PX, type_scale
from coach.desktop.therapist.replay_figure import FigureView
from coach.desktop.therapist.replay_sessions import Choose, same_exercise
from coach.desktop.therapist.replay_trace import TraceView
from coach.documents.archive import StoredSession
from coach.domain.fault import Fault
from coach.review.replay import Replay, repetitions_of, replay
from coach.review.replay_axes import span_of, values_of
from coach.review.replay_wording import exercise_name

_TICK_MS = 33
_SPEEDS = (
    (0.25, "\N{VULGAR FRACTION ONE QUARTER}"),
    (0.5, "\N{VULGAR FRACTION ONE HALF}"),
    (1, "1"),
)
_SPEED_NAMES = ("Quarter speed", "Half speed", "Full speed")
_TOLERANCE_S = 1e-6
_KEYS = (
    "Space play or pause, Left and Right one picture, Home and End, Page Up and Page Down "
    "repetition, 1 2 3 speed, C compare, Esc close"
)


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
                f"The session of {session.document.started_at[:10]} has no measured repetition to "
                "replay; choose another one."
            )
        self._at, self._speed, self.since_s = 0, 1.0, 0.0
        self._stamps: list[float] = []
        self.shown: tuple[Replay, ...] = ()
        em_px = type_scale().small_px + 1
        self.figures = tuple(FigureView(em_px) for _ in range(2))
        self.traces = tuple(TraceView(em_px) for _ in range(2))
        self._title, self._message = QLabel(), QLabel()
        self._timer, self._elapsed = QTimer(self), QElapsedTimer()
        self._timer.setInterval(_TICK_MS)
        self._timer.timeout.connect(self._tick)
        self.setWindowTitle("Replay")
        self.setWindowFlag(Qt.WindowType.WindowMaximizeButtonHint)
        self._arrange()
        self.resize(1280, 800)
        self.go_to(0)

    def _arrange(self) -> None:
        for label, role in ((self._title, "lead"), (self._message, "caution")):
            label.setProperty("role", role)
            label.setTextFormat(Qt.TextFormat.PlainText)
        self._message.setAccessibleName("Message")
        self._message.setWordWrap(True)
        self._message.hide()
        self.play = self._button("Play", "Play or pause", "Space", self.toggle)
        self.play.setProperty("role", "primary")
        buttons = QHBoxLayout()
        buttons.setSpacing(SPACES_PX[1])
        buttons.addWidget(self.play)
        back, on = "\N{LEFTWARDS ARROW}", "\N{RIGHTWARDS ARROW}"
        steps: tuple[tuple[str, str, str, Callable[[], object]], ...] = (
            (back, "One picture back", "Left", lambda: self.step(-1)),
            (on, "One picture on", "Right", lambda: self.step(1)),
        )
        for parts in steps:
            buttons.addWidget(self._button(*parts))
        buttons.addSpacing(SPACES_PX[2])
        buttons.addWidget(QLabel("Speed"))
        self.speeds = []
        for i, (speed, text) in enumerate(_SPEEDS):
            button = self._button(text, _SPEED_NAMES[i], str(i + 1), partial(self.set_speed, speed))
            button.setCheckable(True)
            self.speeds.append(button)
            buttons.addWidget(button)
        buttons.addStretch(1)
        turns: tuple[tuple[str, str, str, Callable[[], object]], ...] = (
            ("Previous", "Previous repetition", "PgUp", lambda: self.go_to(self._at - 1)),
            ("Next", "Next repetition", "PgDown", lambda: self.go_to(self._at + 1)),
            ("Compare\N{HORIZONTAL ELLIPSIS}", "Compare with another session", "C", self._compare),
            ("Close", "Close the replay", "Esc", self.close),
        )
        for parts in turns:
            buttons.addWidget(self._button(*parts))
        for keys, edge in (("Home", 0), ("End", -1)):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.activated.connect(partial(self._to_edge, edge))
        figures, traces = QHBoxLayout(), QVBoxLayout()
        for figure, trace in zip(self.figures, self.traces, strict=True):
            figures.addWidget(figure)
            traces.addWidget(trace)
        middle = QHBoxLayout()
        middle.setSpacing(SPACES_PX[3])
        middle.addLayout(figures, 2)
        middle.addLayout(traces, 3)
        keys_line = QLabel(_KEYS)
        keys_line.setProperty("role", "soft")
        page = QVBoxLayout(self)
        page.setContentsMargins(SPACES_PX[3], SPACES_PX[2], SPACES_PX[3], SPACES_PX[2])
        page.setSpacing(SPACES_PX[2])
        for widget in (self._title, self._message):
            page.addWidget(widget)
        page.addLayout(middle, 1)
        page.addLayout(buttons)
        page.addWidget(keys_line)
        self.set_speed(1.0)

    def _button(self, text: str, name: str, keys: str, act: Callable[[], object]) -> QPushButton:
        button = QPushButton(text)
        button.setAccessibleName(name)
        button.setToolTip(f"{name} ({keys})")
        button.clicked.connect(lambda: act())
        QShortcut(QKeySequence(keys), self).activated.connect(button.click)
        return button

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
        self._say_playing()

    def _pause(self) -> None:
        self._timer.stop()
        self._say_playing()

    def _say_playing(self) -> None:
        self.play.setText("Pause" if self.playing else "Play")

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
        for button, (each, _) in zip(self.speeds, _SPEEDS, strict=True):
            button.setChecked(each == speed)

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
        shown = [_cut(self._session, exercise, number)]
        if self._other is not None:
            shown.append(_cut(self._other, *same_exercise(self._other, shown[0])))
        self._pause()
        self._message.hide()
        self.shown = tuple(shown)
        spans, values = [span_of(each) for each in shown], [values_of(each) for each in shown]
        span = min(lo for lo, _ in spans), max(hi for _, hi in spans)
        covered = min(lo for lo, _ in values), max(hi for _, hi in values)
        times = {float(t) - each.repetition.start_s for each in shown for t in each.stamps_s}
        self._stamps = sorted({*span, *times})
        count = f"{self._at + 1} of {len(self._places)}"
        self._title.setText(f"{exercise_name(shown[0])}, repetition {count} of the session")
        for i, (figure, trace) in enumerate(zip(self.figures, self.traces, strict=True)):
            figure.setVisible(i < len(shown))
            trace.setVisible(i < len(shown))
            if i < len(shown):
                figure.show_replay(shown[i])
                trace.show_replay(shown[i], span, covered)
        self.move_to(0.0)


def _cut(session: StoredSession, exercise: int, number: int) -> Replay:
    return replay(session.document, session.readings, session.landmarks, exercise, number)
