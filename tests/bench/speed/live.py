"""The live loop: window, speech, journal and fitted body, against the model alone."""

from __future__ import annotations

import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from tempfile import TemporaryDirectory

import numpy as np
from PyQt6.QtCore import QEventLoop, QTimer
from PyQt6.QtGui import QPaintEvent

from coach.app.patient import open_voice
from coach.app.sitting import Folders, Sitting
from coach.desktop.patient import picture as picture_module
from coach.desktop.patient.analysis import Step
from coach.desktop.patient.speech import Speech
from coach.desktop.patient.window import PatientWindow
from coach.domain.frame import Frame
from coach.domain.looked import Looked
from coach.domain.moment import Moment, Order, Stage
from coach.domain.movement import Movement, Side
from coach.domain.plan import Plan, PlannedExercise
from coach.ports import FrameSource
from coach.voice.speaker import Speaker, Utterance
from tests.bench.speed.film import FilmCamera, Picture, TimedEstimator, model, pictures
from tests.bench.speed.table import Row, percentile

BLOCK_S, BLOCKS = 6.0, 5
_ANSWERS = {
    Stage.WELCOME: (Order.START, None),
    Stage.PAIN_BEFORE: (Order.PAIN, 2),
    Stage.PREPARE: (Order.READY, None),
    Stage.PAIN_AFTER: (Order.PAIN, 2),
}
PLAN = Plan(
    patient_code="P-0001",
    exercises=(
        PlannedExercise(
            movement=Movement.ABDUCTION, side=Side.LEFT, hold_s=6.0, repetitions=30, rest_s=3.0
        ),
    ),
)


@dataclass
class Taken:
    """What was timed while the loop ran, seconds."""

    steps: int = 0
    pausing: bool = False
    ours_s: list[float] = field(default_factory=list)
    model_s: list[float] = field(default_factory=list)
    to_state_s: list[float] = field(default_factory=list)
    to_picture_s: list[float] = field(default_factory=list)
    paint_s: list[float] = field(default_factory=list)
    numbers_s: list[float] = field(default_factory=list)


class TimedSitting(Sitting):
    """Takes the time of every frame in the exercise, in both threads, the model's taken off."""

    taken: Taken
    estimator: TimedEstimator
    beside_s: dict[int, tuple[float, float]]
    """By the frame's index: what the look took beside the model, and the model's wall time."""

    def look(self, frame: Frame) -> Looked:
        model = self.estimator
        wall_s, thread_s, cpu_s = model.wall_s, model.thread_s, time.thread_time()
        looked = super().look(frame)
        beside_s = time.thread_time() - cpu_s - (model.thread_s - thread_s)
        self.beside_s[frame.index] = beside_s, model.wall_s - wall_s
        return looked

    def take(self, looked: Looked) -> Moment:
        cpu_s = time.thread_time()
        moment = super().take(looked)
        beside_s, model_s = self.beside_s.pop(looked.frame.index)
        if moment.stage is Stage.EXERCISE:
            self.taken.ours_s.append(beside_s + time.thread_time() - cpu_s)
            self.taken.model_s.append(model_s)
            self.taken.to_state_s.append(time.monotonic() - looked.frame.time_s)
        return moment


@contextmanager
def running(film: list[Picture], rate_hz: float) -> Iterator[tuple[FilmCamera, Taken]]:
    """A window in the middle of an exercise before a camera that shows a film."""
    camera, taken = FilmCamera(film, rate_hz), Taken()
    shown_s = [0.0]
    original_paint, original_utter = picture_module.Picture.paintEvent, Speech._utter

    def paint(self: picture_module.Picture, event: QPaintEvent | None) -> None:
        cpu_s = time.thread_time()
        original_paint(self, event)
        taken.paint_s.append(time.thread_time() - cpu_s)
        if shown_s[0]:
            taken.to_picture_s.append(time.monotonic() - shown_s[0])
            shown_s[0] = 0.0

    def utter(self: Speech, utterance: Utterance) -> None:
        if utterance.cue.key.startswith("number."):
            now_s = self._now_s()
            taken.numbers_s.append((now_s or 0.0) - utterance.cue.time_s)
        original_utter(self, utterance)

    with TemporaryDirectory() as place:
        folders = Folders(Path(place) / "j", Path(place) / "s", Path(place) / "o")

        def begin(source: FrameSource) -> Sitting:
            estimator = TimedEstimator()
            sitting = TimedSitting(PLAN, source, estimator, folders)
            sitting.taken, sitting.estimator, sitting.beside_s = taken, estimator, {}
            return sitting

        picture_module.Picture.paintEvent, Speech._utter = paint, utter
        window = PatientWindow(
            PLAN,
            lambda: camera,
            begin,
            Speaker(open_voice()),
            at_once=True,
            cautions_read=True,
        )

        def answer(step: Step) -> None:
            taken.steps += 1
            if step.image is not None and step.moment.stage is Stage.EXERCISE:
                shown_s[0] = step.moment.time_s
            if taken.pausing and step.moment.stage is Stage.EXERCISE:
                window.engine.order(Order.PAUSE)
            elif step.moment.stage in _ANSWERS:
                window.engine.order(*_ANSWERS[step.moment.stage])

        window.engine.stepped.connect(answer)
        window.resize(1280, 800)
        window.show()
        try:
            while not taken.to_state_s:
                spin(0.1)
            spin(3.0)
            for values in (taken.ours_s, taken.model_s, taken.to_state_s, taken.to_picture_s):
                values.clear()
            yield camera, taken
        finally:
            window.close()
            picture_module.Picture.paintEvent, Speech._utter = original_paint, original_utter


def spin(seconds: float) -> None:
    """Let the window live for so long, in the event loop that it always has."""
    loop = QEventLoop()
    QTimer.singleShot(round(1000 * seconds), loop.quit)
    loop.exec()


def throughput(film: list[Picture]) -> list[Row]:
    """Alternate blocks of the whole loop and of the model alone; the median of their ratios."""
    bare, ratios, rates = model(), [], []
    stamp_ms = 0
    with running(film, 90.0) as (camera, taken):
        for _ in range(BLOCKS):
            steps, begin_s = taken.steps, time.monotonic()
            spin(BLOCK_S)
            full_hz = (taken.steps - steps) / (time.monotonic() - begin_s)
            camera.running.clear()
            spin(0.5)
            done, begin_s = 0, time.monotonic()
            while time.monotonic() - begin_s < BLOCK_S:
                stamp_ms += 33
                bare.find(film[done % len(film)], stamp_ms)
                done += 1
            bare_hz = done / (time.monotonic() - begin_s)
            camera.running.set()
            ratios.append(full_hz / bare_hz)
            rates.append((full_hz, bare_hz))
    full_hz, bare_hz = np.median(rates, axis=0)
    return [
        Row("live loop over the bare model", "", float(np.median(ratios)), None, 0.9),
        Row("live loop as fast as it can", "frames/s", float(full_hz)),
        Row("bare model", "frames/s", float(bare_hz)),
    ]  # fmt: skip


def at_camera_rate(film: list[Picture], seconds: float = 40.0) -> list[Row]:
    """Thirty pictures a second for a time: our share of each, latencies, spoken numbers."""
    with running(film, 30.0) as (_, taken):
        steps, begin_s = taken.steps, time.monotonic()
        spin(seconds)
        rate_hz = (taken.steps - steps) / (time.monotonic() - begin_s)
    own, model_s = np.array(taken.ours_s) * 1e3, float(np.median(taken.model_s))
    painted = percentile(taken.paint_s, 50) * 1e3
    state_s, picture_s = percentile(taken.to_state_s, 95), percentile(taken.to_picture_s, 95)
    late_ms = percentile([abs(late_s) for late_s in taken.numbers_s], 95) * 1e3
    beyond_ms = (state_s - model_s) * 1e3, (picture_s - model_s) * 1e3
    return [
        Row("loop before a camera of 30 a second", "frames/s", rate_hz),
        Row("ours without the model, median", "ms", float(np.median(own)), 3.0),
        Row("the same, 99th percentile", "ms", percentile(list(own), 99), 8.0),
        Row("drawing the picture, median", "ms", painted),
        Row("the model in a frame, median", "ms", model_s * 1e3),
        Row("shutter to state beyond the model, p95", "ms", beyond_ms[0], 35.0),
        Row("shutter to picture beyond the model, p95", "ms", beyond_ms[1], 35.0),
        Row("shutter to picture, p95: on a slow machine too", "ms", picture_s * 1e3, 200.0),
        Row("spoken number late, p95", "ms", late_ms, 150.0),
        Row("spoken numbers", "", len(taken.numbers_s)),
    ]  # fmt: skip


def fastest() -> list[Row]:
    """The loop as fast as it can."""
    return throughput(pictures("abduction_left_two_holds", 300))


def at_rate() -> list[Row]:
    """The loop before a camera of thirty pictures a second."""
    return at_camera_rate(pictures("abduction_left_two_holds", 600))
