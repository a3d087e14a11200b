"""A session by script: no camera and no model, but every stage, phase and reading."""

from __future__ import annotations

import math
import threading
from collections.abc import Callable, Iterator

import numpy as np

from coach.desktop.patient.coaching import Outcome
from coach.domain.cue import Cue, Urgency
from coach.domain.fault import Fault
from coach.domain.frame import Frame
from coach.domain.looked import Looked
from coach.domain.moment import Moment, Order, Stage
from coach.domain.movement import Movement, Side
from coach.domain.plan import Plan, PlannedExercise
from coach.domain.pose import Landmark, Pose
from coach.domain.progress import EndedBecause, Phase, Repetition
from coach.domain.reading import Doubt, Reading
from coach.domain.session import Camera, ExerciseRecord, SessionDocument, SessionEnd, Software

WIDTH_PX, HEIGHT_PX = 320, 240
RATE_HZ = 20.0
MOVE_S = 0.5
ANGLE_DEG, ERROR_DEG = 112.0, 5.6

PLAN = Plan(
    patient_code="P-0001",
    exercises=(
        PlannedExercise(
            movement=Movement.ABDUCTION, side=Side.LEFT, hold_s=1.0, repetitions=2, rest_s=0.5
        ),
        PlannedExercise(
            movement=Movement.EXTERNAL_ROTATION_0,
            side=Side.RIGHT,
            hold_s=1.0,
            repetitions=1,
            rest_s=0.0,
        ),
    ),
    contact="Practice at the Old Mill, 555 0100",
)


def picture() -> np.ndarray:
    """Dark, with a red square at the picture's left and a blue one at its right."""
    image = np.full((HEIGHT_PX, WIDTH_PX, 3), 40, np.uint8)
    image[100:140, 10:50] = (255, 0, 0)
    image[100:140, 270:310] = (0, 0, 255)
    image.setflags(write=False)
    return image


class ScriptedSource:
    """Frames until ``seconds`` are over or ``fail_after`` frames have come."""

    size_px = (WIDTH_PX, HEIGHT_PX)
    frames_per_s = RATE_HZ
    frame_count = None
    frames_lost = 0

    def __init__(
        self, kind: str = "camera", seconds: float = 60.0, fail_after: int | None = None
    ) -> None:
        self.kind = kind
        self._count = round(seconds * RATE_HZ)
        self._fail_after = fail_after
        self._closed = threading.Event()
        self.closed_times = 0

    def __iter__(self) -> Iterator[Frame]:
        image = picture()
        for index in range(self._count):
            if self._fail_after is not None and index >= self._fail_after:
                raise Fault("The camera went away: plug it in again and start anew.")
            if self.kind == "camera" and self._closed.wait(0.001):
                return
            yield Frame(index, index / RATE_HZ, image)

    def close(self) -> None:
        self._closed.set()
        self.closed_times += 1


def standing(arm_deg: float, side: Side, size_px: tuple[int, int] = (WIDTH_PX, HEIGHT_PX)) -> Pose:
    """Someone who faces the camera with one arm lifted sideways: their left is picture right."""
    width, height = size_px
    at = np.full((33, 2), np.nan)
    scale = height / 240
    middle = width / 2
    for name, x, y in (
        (Landmark.NOSE, 0, 50),
        (Landmark.LEFT_SHOULDER, 28, 85),
        (Landmark.RIGHT_SHOULDER, -28, 85),
        (Landmark.LEFT_HIP, 18, 165),
        (Landmark.RIGHT_HIP, -18, 165),
    ):
        at[name] = (middle + x * scale, y * scale)
    for each, sign, elbow, wrist in (
        (Side.LEFT, 1, Landmark.LEFT_ELBOW, Landmark.LEFT_WRIST),
        (Side.RIGHT, -1, Landmark.RIGHT_ELBOW, Landmark.RIGHT_WRIST),
    ):
        angle = math.radians(arm_deg if each is side else 8)
        shoulder = at[Landmark.LEFT_SHOULDER if each is Side.LEFT else Landmark.RIGHT_SHOULDER]
        along = np.array([sign * math.sin(angle), math.cos(angle)])
        at[elbow] = shoulder + 45 * scale * along
        at[wrist] = shoulder + 85 * scale * along
    return Pose(0.0, size_px, at, np.zeros((33, 3)), np.ones(33))


class ScriptedCoaching:
    """Goes through the plan by the frames' stamps alone.

    ``break_at`` raises inside ``take`` once that many steps are done.
    """

    def __init__(
        self,
        plan: Plan = PLAN,
        break_at: int | None = None,
        error: Callable[[], Exception] = lambda: ZeroDivisionError("by script"),
    ) -> None:
        self.plan = plan
        self.orders: list[tuple[Order, int | None]] = []
        self.finished_because: list[SessionEnd] = []
        self.closed_times = 0
        self.threads: set[int] = set()
        self.looking_threads: set[int] = set()
        self.steps = 0
        self.seen: set[int] = set()
        self._break_at, self._error = break_at, error
        self._stage = self._left = Stage.WELCOME
        self._index = 0
        self._since_s = 0.0
        self._now_s = 0.0
        self._done: list[Repetition] = []
        self._records: list[ExerciseRecord] = []
        self._pain_before: int | None = None

    def look(self, frame: Frame) -> Looked:
        self.looking_threads.add(threading.get_ident())
        return Looked(frame)

    def take(self, looked: Looked) -> Moment:
        self.threads.add(threading.get_ident())
        self.steps += 1
        self.seen.add(looked.frame.index)
        if self._break_at is not None and self.steps > self._break_at:
            raise self._error()
        self._now_s = looked.frame.time_s
        return self._exercise() if self._stage is Stage.EXERCISE else self._moment()

    def order(self, time_s: float, order: Order, pain: int | None = None) -> Moment:
        self.threads.add(threading.get_ident())
        self.orders.append((order, pain))
        match order, self._stage:
            case Order.START, Stage.WELCOME:
                self._stage = Stage.PAIN_BEFORE
            case Order.PAIN, Stage.PAIN_BEFORE:
                self._pain_before, self._stage = pain, Stage.PREPARE
            case Order.READY, Stage.PREPARE:
                self._stage, self._since_s = Stage.EXERCISE, self._now_s
            case Order.PAIN, Stage.PAIN_AFTER:
                self._end_exercise(SessionEnd.COMPLETED, pain)
            case Order.PAUSE, Stage.EXERCISE | Stage.PREPARE:
                self._left, self._stage = self._stage, Stage.PAUSED
            case Order.RESUME, Stage.PAUSED:
                self._stage, self._since_s = self._left, self._now_s
            case Order.SKIP, _:
                self._end_exercise(SessionEnd.SKIPPED, None)
            case Order.STOP, _:
                self._end_exercise(SessionEnd.STOPPED, None)
                self._stage = Stage.FINISHED
        return self._moment()

    def finish(self, because: SessionEnd) -> Outcome:
        self.threads.add(threading.get_ident())
        self.finished_because.append(because)
        document = SessionDocument(
            session_id="0" * 32,
            started_at="2026-03-02T09:30:00+01:00",
            duration_s=self._now_s,
            ended_because=because,
            software=Software(name="test", version="0", definitions=1, model_sha256="0" * 64),
            camera=Camera(kind="camera", width_px=320, height_px=240, frames_per_s=RATE_HZ),
            plan=self.plan,
            exercises=tuple(self._records),
        )
        return Outcome(document, "/home/rosa/Sessions/2026-03-02.session")

    def close(self) -> None:
        self.closed_times += 1

    def _exercise(self) -> Moment:
        planned = self.plan.exercises[self._index]
        passed_s = self._now_s - self._since_s
        if passed_s < MOVE_S:
            return self._moment(Phase.MOVING, ANGLE_DEG * passed_s / MOVE_S)
        passed_s -= MOVE_S
        if passed_s < planned.hold_s:
            return self._moment(Phase.HOLDING, ANGLE_DEG, planned.hold_s - passed_s)
        if len(self._done) == 0 or self._done[-1].start_s < self._since_s:
            self._done.append(repetition(len(self._done) + 1, self._since_s, planned.hold_s))
        passed_s -= planned.hold_s
        if len(self._done) == planned.repetitions:
            self._stage = Stage.PAIN_AFTER
            return self._moment()
        if passed_s >= planned.rest_s:
            self._since_s = self._now_s
        return self._moment(Phase.REST, 10.0, max(0.0, planned.rest_s - passed_s), resting=True)

    def _end_exercise(self, because: SessionEnd, pain: int | None) -> None:
        planned = self.plan.exercises[self._index]
        self._records.append(
            ExerciseRecord(
                planned_index=self._index,
                movement=planned.movement,
                side=planned.side,
                view=planned.seen_from,
                started_s=0.0,
                ended_s=self._now_s,
                ended_because=because,
                repetitions=tuple(self._done),
                pain_before=self._pain_before,
                pain_after=pain,
            )
        )
        self._done, self._pain_before = [], None
        last = self._index + 1 == len(self.plan.exercises)
        self._stage = Stage.FINISHED if last else Stage.PAIN_BEFORE
        self._index += 0 if last else 1

    def _moment(
        self,
        phase: Phase = Phase.REST,
        angle_deg: float = 10.0,
        remaining_s: float | None = None,
        *,
        resting: bool = False,
    ) -> Moment:
        planned = self.plan.exercises[self._index]
        after = self.plan.exercises[self._index + 1 :]
        return Moment(
            time_s=self._now_s,
            stage=self._stage,
            exercise_index=self._index,
            planned=planned,
            following=after[0] if after else None,
            pose=standing(angle_deg, planned.side),
            reading=Reading(self._now_s, angle_deg, ERROR_DEG),
            phase=phase,
            remaining_s=remaining_s,
            resting=resting,
            repetitions=tuple(self._done),
            completed=len(self._done),
        )


def repetition(
    number: int,
    start_s: float,
    held_s: float,
    value_deg: float = ANGLE_DEG,
    because: EndedBecause = EndedBecause.COMPLETED,
) -> Repetition:
    return Repetition(
        number=number,
        start_s=start_s,
        end_s=start_s + held_s,
        held_s=held_s,
        value=value_deg,
        error=ERROR_DEG,
        spread=1.0,
        seen_fraction=1.0,
        ended_because=because,
    )


def refused(doubt: Doubt) -> Reading:
    return Reading(0.0, None, None, doubt)


def cue(words: str) -> Cue:
    return Cue(0.0, 10.0, Urgency.NORMAL, "test", words, words)
