"""A sitting at home that is always the same: somebody who does as told, measured once.

Finding the joints of a pose costs far more than everything behind it. So the first playing keeps
what was seen and measured, and every later one, in children too, plays that again: pipeline,
counting, course, recorder, journal and session file run for real each time.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from typing import Any, Literal

from coach import goniometry
from coach.app.sitting import Folders, Sitting
from coach.domain.frame import Frame
from coach.domain.moment import Moment, Order, Stage
from coach.domain.movement import Movement
from coach.domain.plan import Plan
from coach.domain.pose import Pose
from coach.session.entries import Entry
from tests.test_programme import PICTURE, Person, bare, named

Tell = Callable[[Entry], None]

SHORT = (bare(Movement.ABDUCTION), named("pendulum"))
LONG = (
    bare(Movement.ABDUCTION, repetitions=2, rest_s=2),
    named("pendulum", repetitions=2, rest_s=2),
    bare(Movement.FLEXION),
)
_MOST_FRAMES = 20_000


class Source:
    """What a sitting asks of its camera: nothing but attributes."""

    kind: Literal["file"] = "file"
    size_px = (64, 48)
    frames_per_s = 10.0
    frame_count = None
    frames_lost = 0

    def __iter__(self) -> Iterator[Frame]:
        return iter(())

    def close(self) -> None:
        pass


class Tape:
    """Poses and measurements in the order in which they were asked for."""

    model_sha256 = Person.model_sha256

    def __init__(self) -> None:
        self.person = Person()
        self._poses: list[Pose | None] = []
        self._measured: list[Any] = []
        self._pose = self._measurement = 0

    def rewind(self) -> None:
        self._pose = self._measurement = 0
        self.person = Person()

    def hears(self, moment: Moment) -> None:
        self.person.hears(moment)

    def estimate(self, frame: Frame) -> Pose | None:
        if self._pose == len(self._poses):
            self._poses.append(self.person.estimate(frame))
        self._pose += 1
        return self._poses[self._pose - 1]

    def close(self) -> None:
        pass

    @contextmanager
    def playing(self) -> Iterator[None]:
        """Measure what is new to the tape, and play what is on it."""
        really = goniometry.advance

        def advance(*arguments: Any) -> Any:
            if self._measurement == len(self._measured):
                self._measured.append(really(*arguments))
            self._measurement += 1
            return self._measured[self._measurement - 1]

        self.rewind()
        goniometry.advance = advance  # type: ignore[assignment]
        try:
            yield
        finally:
            goniometry.advance = really


class Told(Sitting):
    """A sitting that tells of each entry as soon as it is kept."""

    tell: Tell = staticmethod(lambda entry: None)

    def _keep(self, entries: Iterable[Entry]) -> None:
        for entry in entries:
            super()._keep([entry])
            self.tell(entry)


def plan(exercises: tuple[Any, ...], practice_key: str | None = None) -> Plan:
    return Plan(patient_code="INVENTED", exercises=exercises, practice_key=practice_key)


def play(tape: Tape, asked: Plan, folders: Folders, tell: Tell) -> Told:
    """Play a whole sitting up to its last stage; what it kept is still to be made a file of."""
    with tape.playing():
        sitting = Told(asked, Source(), tape, folders, started_s=0.0)
        sitting.tell = tell  # type: ignore[method-assign]
        moment = sitting.order(0.0, Order.START)
        for n in range(_MOST_FRAMES):
            tape.hears(moment)
            if moment.stage is Stage.FINISHED:
                return sitting
            if moment.stage in (Stage.PAIN_BEFORE, Stage.PAIN_AFTER):
                moment = sitting.order(0.1 * n, Order.PAIN, 3)
            else:
                moment = sitting.step(Frame(n, 0.1 * n, PICTURE))
    raise AssertionError("a sitting without an end")
