"""A machine that cannot keep up: the small pose model, between exercises only, and by name."""

from __future__ import annotations

from collections.abc import Iterable

import pytest

from coach import goniometry
from coach.domain.frame import Frame
from coach.domain.moment import Moment, Order, Stage
from coach.domain.movement import Movement, Position, Side, View
from coach.domain.plan import Plan, PlannedExercise
from coach.domain.pose import Pose, PoseModel
from coach.domain.session import Camera, SessionDocument, Software
from coach.pipeline import Pipeline
from coach.ports import Adaptable
from coach.session.assemble import assemble
from coach.session.entries import Entry, SessionOpened
from tests.goniometry.stick_body import Seen, pose
from tests.test_pipeline import PICTURE, angle_deg

FULL, LITE = PoseModel
HASHES = {FULL: "f" * 64, LITE: "1" * 64}
CAMERA_HZ = 30.0


class TwoModels:
    """Knows the truth with either model, of which the small one may be missing."""

    def __init__(self, *, lite: bool) -> None:
        self.model = FULL
        self.changes: list[tuple[PoseModel, int]] = []
        self.asked = 0
        self._lite = lite

    @property
    def model_sha256(self) -> str:
        return HASHES[self.model]

    def use(self, model: PoseModel) -> None:
        self.changes.append((model, self.asked))
        if self._lite:
            self.model = model

    def estimate(self, frame: Frame) -> Pose | None:
        self.asked += 1
        angle, seen = angle_deg(frame.time_s), Seen(View.FRONT)
        found = pose(Movement.ABDUCTION, angle, Side.LEFT, seen, frame.time_s)
        return Pose(
            found.time_s, found.size_px, found.image_px, found.world_m, found.visibility,
            model=self.model,
        )  # fmt: skip

    def close(self) -> None:
        pass


class Sitting:
    """A pipeline before a camera of thirty pictures a second, of which the machine takes some."""

    def __init__(self, movements: Iterable[Movement], *, lite: bool = True) -> None:
        planned = [
            PlannedExercise(movement=m, side=Side.LEFT, hold_s=5.0, repetitions=1)
            for m in movements
        ]
        plan = Plan(patient_code="T", exercises=tuple(planned))
        opened = SessionOpened(
            session_id="a" * 32,
            started_at="2026-02-03T10:00:00+01:00",
            software=Software(name="t", version="1", definitions=1, model_sha256=HASHES[FULL]),
            camera=Camera(kind="camera", width_px=640, height_px=480, frames_per_s=CAMERA_HZ),
            plan=plan,
        )
        self.entries: list[Entry] = [opened]
        self.models = TwoModels(lite=lite)
        self.pipeline = Pipeline(plan, self.models, self._keep, 0.0)
        self.now_s = 0.0
        self.lost = 0.0
        self.moments: list[Moment] = []
        self.give(Order.START)
        self.give(Order.PAIN, 2)

    def _keep(self, entries: Iterable[Entry]) -> None:
        self.entries += entries

    def give(self, order: Order, pain: int | None = None) -> None:
        self.moments.append(self.pipeline.order(self.now_s, order, pain))

    def play(self, seconds: float, rate_hz: float) -> None:
        for _ in range(round(seconds * rate_hz)):
            self.now_s += 1 / rate_hz
            self.lost += CAMERA_HZ / rate_hz - 1
            frame = Frame(len(self.moments), self.now_s, PICTURE)
            self.moments.append(self.pipeline.step(frame, round(self.lost)))

    def play_until(self, stage: Stage, rate_hz: float) -> None:
        while self.moments[-1].stage is not stage:
            self.play(1 / rate_hz, rate_hz)
            assert self.now_s < 60.0

    def in_exercise(self) -> list[PoseModel]:
        """Models of the poses while something was measured, without repeats."""
        poses = [m.pose for m in self.moments if m.stage is Stage.EXERCISE and m.pose is not None]
        return list(dict.fromkeys(each.model for each in poses))

    @property
    def document(self) -> SessionDocument:
        return assemble(self.entries).document


@pytest.fixture(autouse=True)
def all_but_the_hand_behind_the_back(monkeypatch: pytest.MonkeyPatch) -> None:
    def measures(model: PoseModel, movement: Movement, position: Position, view: View) -> bool:
        return model is FULL or movement is not Movement.HAND_BEHIND_BACK

    monkeypatch.setattr(goniometry, "measures", measures)


def test_the_estimator_of_the_tests_is_what_the_program_asks_for() -> None:
    assert isinstance(TwoModels(lite=True), Adaptable)


def test_a_slow_machine_takes_the_small_model_before_the_exercise_and_the_file_names_it() -> None:
    sitting = Sitting([Movement.ABDUCTION])
    sitting.play(4.0, 6.0)
    assert sitting.models.model is LITE
    sitting.play_until(Stage.EXERCISE, 6.0)
    sitting.play_until(Stage.PAIN_AFTER, 6.0)
    assert sitting.in_exercise() == [LITE]
    (exercise,) = sitting.document.exercises
    assert exercise.model_sha256 == HASHES[LITE]
    assert sitting.document.software.model_sha256 == HASHES[FULL]
    assert exercise.repetitions


@pytest.mark.parametrize("rate_hz", [9.0, 15.0])
def test_a_machine_that_keeps_up_keeps_the_full_model(rate_hz: float) -> None:
    sitting = Sitting([Movement.ABDUCTION])
    sitting.play_until(Stage.EXERCISE, rate_hz)
    sitting.play_until(Stage.PAIN_AFTER, rate_hz)
    assert sitting.models.changes == []
    assert [e.model_sha256 for e in sitting.document.exercises] == [None]


def test_within_an_exercise_nothing_changes_and_before_the_next_it_does() -> None:
    sitting = Sitting([Movement.ABDUCTION, Movement.ABDUCTION])
    sitting.play_until(Stage.EXERCISE, 20.0)
    sitting.play_until(Stage.PAIN_AFTER, 5.0)
    assert sitting.in_exercise() == [FULL]
    assert sitting.models.changes == []
    sitting.give(Order.PAIN, 2)
    sitting.play(0.5, 5.0)
    assert sitting.moments[-1].stage is Stage.PREPARE
    assert sitting.models.model is LITE
    sitting.play_until(Stage.EXERCISE, 5.0)
    sitting.play_until(Stage.PAIN_AFTER, 5.0)
    first, second = sitting.document.exercises
    assert (first.model_sha256, second.model_sha256) == (None, HASHES[LITE])
    assert second.repetitions[0].error > first.repetitions[0].error


def test_a_pause_does_not_change_the_model() -> None:
    sitting = Sitting([Movement.ABDUCTION])
    sitting.play_until(Stage.EXERCISE, 20.0)
    sitting.play(4.0, 5.0)
    sitting.give(Order.PAUSE)
    sitting.play(2.0, 5.0)
    sitting.give(Order.RESUME)
    sitting.play(3.0, 5.0)
    assert sitting.moments[-1].stage is Stage.EXERCISE
    assert sitting.in_exercise() == [FULL]


def test_the_full_model_comes_back_where_the_small_one_does_not_measure() -> None:
    sitting = Sitting([Movement.ABDUCTION, Movement.HAND_BEHIND_BACK])
    sitting.play_until(Stage.EXERCISE, 5.0)
    sitting.play_until(Stage.PAIN_AFTER, 5.0)
    assert sitting.models.model is LITE
    sitting.give(Order.PAIN, 2)
    sitting.play(6.0, 5.0)
    assert sitting.models.model is FULL


def test_begun_by_a_key_while_the_model_changes_it_begins_with_the_new_one() -> None:
    sitting = Sitting([Movement.ABDUCTION])
    while sitting.pipeline._looking.settled:
        sitting.play(1 / 5.0, 5.0)
    sitting.give(Order.READY)
    assert sitting.moments[-1].stage is Stage.PREPARE
    sitting.play(0.4, 5.0)
    assert sitting.moments[-1].stage is Stage.EXERCISE
    sitting.play(4.0, 5.0)
    assert sitting.in_exercise() == [LITE]
    sitting.give(Order.STOP)
    assert [e.model_sha256 for e in sitting.document.exercises] == [HASHES[LITE]]


def test_without_the_small_model_a_slow_machine_goes_on_with_the_full_one() -> None:
    sitting = Sitting([Movement.ABDUCTION], lite=False)
    sitting.play_until(Stage.EXERCISE, 6.0)
    sitting.play_until(Stage.PAIN_AFTER, 6.0)
    assert [model for model, _ in sitting.models.changes] == [LITE]
    assert [e.model_sha256 for e in sitting.document.exercises] == [None]
