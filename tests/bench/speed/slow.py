"""A slow machine: one core for a half and a quarter of the time, before thirty pictures a second.

Somebody stands still until the exercise begins by itself, then raises the arm as in a clip whose
holds are known; then the same again, since what one exercise showed of the machine counts for the
next. Run alone (``python -m tests.bench.speed.slow``) it is such a sitting on this machine as it
is; the part runs it on one core and stops it for a share of each ten milliseconds, which slows all
its threads down alike.
"""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
import time
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

import numpy as np

from coach.app.estimator import open_adapting
from coach.app.patient import open_voice
from coach.app.sitting import Folders, Sitting
from coach.desktop.patient.analysis import Step
from coach.desktop.patient.window import PatientWindow
from coach.desktop.shared.application import create_application
from coach.domain.frame import Frame
from coach.domain.looked import Looked
from coach.domain.moment import Moment, Order, Stage
from coach.domain.movement import Movement, Side
from coach.domain.plan import Plan, PlannedExercise
from coach.domain.session import SessionEnd
from coach.ports import FrameSource
from coach.voice.speaker import Speaker
from tests.bench.speed.film import CLIPS, ROOT, FilmCamera, Picture, pictures
from tests.bench.speed.live import spin
from tests.bench.speed.table import Row, percentile

CLIP = "flexion_left_portrait"
CAMERA_HZ = 30.0
PULSE_S = 0.01
LONGEST_S = 300.0
EXERCISE = PlannedExercise(
    movement=Movement.FLEXION, side=Side.LEFT, hold_s=5.0, repetitions=2, rest_s=3.0
)


class Person(FilmCamera):
    """A camera whose person stands still until ``began_s``, from when the film runs once."""

    began_s: float | None = None
    over = False

    def __init__(self, film: list[Picture]) -> None:
        super().__init__(film[:2], CAMERA_HZ)
        self._whole = film

    def __iter__(self) -> Iterator[Frame]:
        for frame in super().__iter__():
            since_s = 0.0 if self.began_s is None else frame.time_s - self.began_s
            index = round(since_s * CAMERA_HZ)
            self.over = self.began_s is not None and index >= len(self._whole)
            picture = self._whole[min(index, len(self._whole) - 1)]
            yield Frame(frame.index, frame.time_s, picture)


@dataclass
class Watched:
    """What was seen of one exercise."""

    began_s: float
    stamps_s: list[float] = field(default_factory=list)
    late_s: list[float] = field(default_factory=list)
    models: list[str] = field(default_factory=list)


class TimedSitting(Sitting):
    """Notes of every frame in an exercise how late it was known, and which pose model saw it."""

    began_s: float
    person: Person
    watched: list[Watched]

    def take(self, looked: Looked) -> Moment:
        moment = super().take(looked)
        if moment.stage is Stage.EXERCISE:
            now_s = time.monotonic()
            if moment.exercise_index == len(self.watched):
                self.person.began_s = now_s
                self.watched.append(Watched(now_s))
            self.watched[-1].stamps_s.append(looked.frame.time_s)
            self.watched[-1].late_s.append(now_s - looked.frame.time_s)
            self.watched[-1].models.append(looked.model)
        elif moment.stage is Stage.PAIN_AFTER:
            self.person.began_s = None
        return moment


def sit() -> list[dict[str, Any]]:
    """A sitting of two exercises before the film: what was measured of each, and how late."""
    application = create_application(["slow"])
    truth = json.loads((CLIPS / f"{CLIP}.json").read_text())
    person = Person(pictures(CLIP, 100_000))
    plan = Plan(patient_code="P-0001", exercises=(EXERCISE, EXERCISE))
    sittings: list[TimedSitting] = []
    with TemporaryDirectory() as place:
        folders = Folders(Path(place) / "j", Path(place) / "s", Path(place) / "o")

        def begin(source: FrameSource) -> Sitting:
            began_s = time.monotonic()
            sitting = TimedSitting(plan, source, open_adapting(), folders, began_s)
            sitting.began_s, sitting.person, sitting.watched = began_s, person, []
            sittings.append(sitting)
            return sitting

        window = PatientWindow(
            plan, lambda: person, begin, Speaker(open_voice()), at_once=True, cautions_read=True
        )

        def answer(step: Step) -> None:
            match step.moment.stage:
                case Stage.WELCOME:
                    window.engine.order(Order.START)
                case Stage.PAIN_BEFORE | Stage.PAIN_AFTER:
                    window.engine.order(Order.PAIN, 2)
                case Stage.EXERCISE if person.over:
                    person.over, person.began_s = False, None
                    window.engine.order(Order.SKIP)

        window.engine.stepped.connect(answer)
        window.resize(1280, 800)
        window.show()
        until_s = time.monotonic() + LONGEST_S
        while time.monotonic() < until_s and window.engine.outcome is None:
            spin(0.2)
        window.close()
        document = sittings[0].finish(SessionEnd.STOPPED).document
    application.quit()
    return [
        {
            "late_s": percentile(seen.late_s, 95),
            "rate_hz": 1 / float(np.mean(np.diff(seen.stamps_s))),
            "models": list(dict.fromkeys(seen.models)),
            "held": [
                (r.start_s - (seen.began_s - sittings[0].began_s), r.held_s, r.value, r.error)
                for r in record.repetitions
            ],
            "true": [(h["start_s"], h["held_s"], h["value_deg"]) for h in truth["holds"]],
        }
        for seen, record in zip(sittings[0].watched, document.exercises, strict=True)
    ]


def throttled(share: float) -> list[dict[str, Any]]:
    """Run such a sitting on one core, for a share of the time."""
    command = [sys.executable, "-m", "tests.bench.speed.slow"]
    child = subprocess.Popen(
        command, cwd=ROOT, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True
    )
    os.sched_setaffinity(child.pid, {max(os.sched_getaffinity(0))})
    while child.poll() is None:
        time.sleep(share * PULSE_S)
        child.send_signal(signal.SIGSTOP)
        time.sleep((1 - share) * PULSE_S)
        child.send_signal(signal.SIGCONT)
    assert child.stdout is not None
    found: list[dict[str, Any]] = json.loads(child.stdout.read().splitlines()[-1])
    return found


def rows_of(share: float) -> list[Row]:
    """Rows of one slowness."""
    found = []
    for number, seen in enumerate(throttled(share), start=1):
        print(f"{share:.0%}, exercise {number}: {json.dumps(seen)}", file=sys.stderr)
        name = f"one core for {share:.0%}, exercise {number} ({' then '.join(seen['models'])})"
        off = [
            min((abs(r[1] - held_s) for r in seen["held"] if abs(r[0] - at_s) < 2), default=np.inf)
            for at_s, held_s, _ in seen["true"]
        ]
        found += [
            Row(f"{name}: measured", "frames/s", seen["rate_hz"]),
            Row(f"{name}: shutter to state, p95", "ms", 1e3 * seen["late_s"], 200.0),
            Row(f"{name}: seconds of a hold, worst off", "s", max(off), 0.3),
        ]
    return found


def rows() -> list[Row]:
    """Every row of a slow machine."""
    return [*rows_of(0.5), *rows_of(0.25)]


if __name__ == "__main__":
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    print(json.dumps(sit()))
