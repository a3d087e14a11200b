"""A sitting of two hours with a plan of forty exercises, and a store of ten thousand sessions.

    python -m tests.bench.load [--hours 2] [--sessions 10000] [--measure]

The window, its threads and everything behind it run as at home, on a body of sticks whose frames
come as fast as they are taken; a second here is a second of their stamps. What the process holds is
looked at every five minutes of that time: memory, threads, open files, widgets, and what a frame
costs. After the first five minutes it must not grow.
"""

from __future__ import annotations

import argparse
import gc
import os
import statistics
import sys
import tempfile
import threading
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import timedelta
from pathlib import Path
from typing import Literal

import numpy as np

from coach import goniometry
from coach.app.sitting import Folders, Sitting
from coach.desktop.patient.coaching import Outcome
from coach.desktop.patient.window import PatientWindow
from coach.desktop.shared.application import create_application
from coach.domain.frame import Frame
from coach.domain.looked import Looked
from coach.domain.moment import Moment, Order, Stage
from coach.domain.movement import Movement
from coach.domain.pose import Pose
from coach.domain.reading import Reading
from coach.domain.session import SessionEnd
from coach.ports import FrameSource
from coach.storage.store import Store
from tests.bench.sittings import plan
from tests.goniometry.ways import RANGE
from tests.review.conftest import BEGIN, make_session
from tests.test_programme import END, Person, bare, named, reach

EVERY_S = 300.0
GROWTH = 0.05
_PICTURE = np.full((48, 64, 3), 90, np.uint8)
_PAGE = os.sysconf("SC_PAGE_SIZE")


@dataclass(frozen=True, slots=True)
class Held:
    """What the process holds at one moment, and the middle cost of a measured frame before it."""

    time_s: float
    memory_mb: float
    threads: int
    files: int
    widgets: int
    frame_ms: float

    def __str__(self) -> str:
        return (
            f"{self.time_s / 60:6.0f} min {self.memory_mb:8.1f} MB {self.threads:4d} threads "
            f"{self.files:4d} files {self.widgets:5d} widgets {self.frame_ms:6.2f} ms a frame"
        )


class Looping:
    """A camera whose next frame comes when the last one was measured."""

    kind: Literal["camera"] = "camera"
    size_px = (64, 48)
    frames_per_s = 10.0
    frame_count = None
    frames_lost = 0

    def __init__(self, lasts_s: float) -> None:
        self.lasts_s = lasts_s
        self.at_work = False
        self.taken = threading.Event()
        self.closed = threading.Event()

    def __iter__(self) -> Iterator[Frame]:
        n, now_s = 0, 0.0
        while now_s < self.lasts_s and not self.closed.is_set():
            yield Frame(n, now_s, _PICTURE)
            self.taken.wait(60.0)
            self.taken.clear()
            n, now_s = n + 1, now_s + (0.1 if self.at_work else 0.2)

    def close(self) -> None:
        self.closed.set()
        self.taken.set()


def measured_by(person: Person) -> Callable[..., tuple[goniometry.Goniometer, Reading]]:
    """Give what stands in for the fitting: the value that the person has."""

    def advance(
        state: goniometry.Goniometer, time_s: float, pose: Pose | None
    ) -> tuple[goniometry.Goniometer, Reading]:
        movement, at_work = state.task.movement, person.moment
        value = RANGE[movement][0]
        if at_work is not None and at_work.stage is Stage.EXERCISE:
            value = reach(time_s - person.since_s, value, END[movement])
        return state, Reading(time_s, value, 5.0)

    return advance


class Watched:
    """A sitting that lets the next frame come, and looks what the process holds."""

    def __init__(self, sitting: Sitting, person: Person, source: Looping) -> None:
        self.sitting, self.person, self.source = sitting, person, source
        self.costs_ms: list[float] = []
        self.due_s = EVERY_S
        self.held: list[Held] = []

    def look(self, frame: Frame) -> Looked:
        return self.sitting.look(frame)

    def take(self, looked: Looked) -> Moment:
        before = time.thread_time()
        moment = self.sitting.take(looked)
        if moment.stage is Stage.EXERCISE and moment.reading is not None:
            self.costs_ms.append(1000 * (time.thread_time() - before))
        if looked.frame.time_s >= self.due_s:
            self.due_s += EVERY_S
            self._look(looked.frame.time_s)
        return self._took(moment)

    def order(self, time_s: float, order: Order, pain: int | None = None) -> Moment:
        return self._took(self.sitting.order(time_s, order, pain))

    def _took(self, moment: Moment) -> Moment:
        self.person.hears(moment)
        self.source.at_work = moment.stage in (Stage.PREPARE, Stage.EXERCISE)
        self.source.taken.set()
        return moment

    def finish(self, because: SessionEnd) -> Outcome:
        return self.sitting.finish(because)

    def close(self) -> None:
        self.sitting.close()

    def _look(self, time_s: float) -> None:
        from PyQt6.QtWidgets import QApplication

        gc.collect()
        self.held.append(
            Held(
                time_s,
                int(Path("/proc/self/statm").read_text().split()[1]) * _PAGE / 1e6,
                threading.active_count(),
                len(list(Path("/proc/self/fd").iterdir())),
                len(QApplication.allWidgets()),
                statistics.median(self.costs_ms) if self.costs_ms else 0.0,
            )
        )
        self.costs_ms.clear()
        print(self.held[-1], flush=True)


def long_sitting(hours: float, folder: Path, *, measure: bool) -> list[str]:
    """Sit for so long; give what grew that must not."""
    application = create_application(["load"])
    kinds = (
        bare(Movement.ABDUCTION, repetitions=10, rest_s=2),
        named("pendulum", repetitions=8, rest_s=2),
        bare(Movement.FLEXION, repetitions=10, rest_s=2),
        named("armpit-squeeze", repetitions=8, rest_s=2),
    )
    asked = plan(tuple(kinds[n % 4] for n in range(40)))
    source = Looping(3600 * hours)
    watched: list[Watched] = []

    def begin(opened: FrameSource) -> Watched:
        person = Person()
        if not measure:
            goniometry.advance = measured_by(person)  # type: ignore[assignment]
        folders = Folders(folder / "journals", folder / "sessions", folder / "own")
        sitting = Sitting(asked, opened, person, folders, started_s=0.0)
        watched.append(Watched(sitting, person, source))
        return watched[-1]

    window = PatientWindow(asked, lambda: source, begin, at_once=True, cautions_read=True)
    window.engine.finished.connect(application.quit)
    window.show()
    application.exec()
    (one,) = watched
    outcome = window.outcome
    window.close()
    done = 0 if outcome is None else len(outcome.document.exercises)
    print(f"{done} exercises, file {Path(outcome.saved_at).stat().st_size / 1e6:.1f} MB")
    first, *later = one.held
    wrong = [
        f"{name} grew from {getattr(first, name):.4g} to {getattr(held, name):.4g} at "
        f"{held.time_s / 60:.0f} min"
        for held in later
        for name, most in (("memory_mb", GROWTH), ("threads", 0), ("files", 0), ("widgets", GROWTH))
        if getattr(held, name) > getattr(first, name) * (1 + most)
    ]
    half = len(one.held) // 2
    early, late = (
        statistics.median(held.frame_ms for held in part if held.frame_ms)
        for part in (one.held[:half], one.held[half:])
    )
    print(f"a measured frame cost {early:.2f} ms in the first half, {late:.2f} ms in the second")
    return wrong


def full_store(count: int, folder: Path) -> None:
    """Fill a store with sessions of a hundred people, and say how long it takes to be asked."""
    store = Store(folder / "store.sqlite")
    begun = time.perf_counter()
    for number in range(count):
        at = BEGIN - timedelta(hours=5 * (count - number))
        document = make_session(at=at, code=f"SH-{number % 100}")
        store.import_session(document, b"x" * 1000, f"{number}.zip")
    print(f"{count} sessions taken in: {1000 * (time.perf_counter() - begun) / count:.1f} ms each")
    for what, ask in (
        ("the list of people", store.patients),
        ("one person's sessions", lambda: store.sessions_of("SH-7")),
        ("all holds of a movement", lambda: store.cohort(Movement.FLEXION)),
    ):
        begun = time.perf_counter()
        found = len(ask())
        print(f"{what}: {found} in {1000 * (time.perf_counter() - begun):.0f} ms")
    store.close()


def main() -> int:
    """Print what was held and how long things took; 1 where anything grew."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--hours", type=float, default=2.0)
    parser.add_argument("--sessions", type=int, default=10_000)
    parser.add_argument("--measure", action="store_true", help="fit a body to each frame")
    asked = parser.parse_args()
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    with tempfile.TemporaryDirectory() as folder:
        wrong = long_sitting(asked.hours, Path(folder), measure=asked.measure)
        print("\n".join(wrong) or "nothing grew")
        full_store(asked.sessions, Path(folder))
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
