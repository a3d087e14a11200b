"""How fast frames are measured, and which pose model an exercise is measured with."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from coach import goniometry
from coach.domain.movement import Movement, Position, Side, View
from coach.domain.plan import PlannedExercise
from coach.domain.pose import PoseModel
from coach.tempo import AMPLE_HZ, SLOW_HZ, WINDOW_S, Tempo, model_for

FULL, LITE = PoseModel
CAMERA_HZ = 30.0


def frames(
    rate_hz: float, seconds: float, camera_hz: float = CAMERA_HZ
) -> Iterator[tuple[float, int]]:
    """Stamps of a machine that measures so many of a camera's frames, and how many it lost."""
    for taken in range(round(seconds * rate_hz)):
        time_s = 100 + taken / rate_hz
        yield time_s, round((time_s - 100) * camera_hz) - taken


def tempo_of(rate_hz: float, seconds: float = 10.0, camera_hz: float = CAMERA_HZ) -> Tempo:
    tempo = Tempo()
    for frame in frames(rate_hz, seconds, camera_hz):
        tempo = tempo.measured(*frame)
    return tempo


@pytest.mark.parametrize("rate_hz", [2.0, 5.0, 7.9, 8.1, 12.0, 30.0])
def test_the_rate_is_that_of_the_frames(rate_hz: float) -> None:
    tempo = tempo_of(rate_hz)
    assert tempo.rate_hz == pytest.approx(rate_hz, rel=1e-6)
    assert tempo.slow is (rate_hz < SLOW_HZ)
    assert tempo.ample is (rate_hz >= AMPLE_HZ)


def test_nothing_is_known_before_a_whole_window() -> None:
    tempo = tempo_of(5.0, WINDOW_S)
    assert (tempo.rate_hz, tempo.slow, tempo.ample) == (None, False, False)


@pytest.mark.parametrize("at", range(0, 20, 4))
def test_one_hiccup_is_no_slow_machine(at: int) -> None:
    tempo, verdicts = Tempo(), []
    for frame in range(60):
        late_s = 0.9 if frame > at else 0.0
        tempo = tempo.measured(frame / 30 + late_s, 27 if frame > at else 0)
        verdicts.append(tempo.slow)
    assert not any(verdicts)


def test_a_camera_that_gives_few_frames_in_the_dark_is_no_slow_machine() -> None:
    dark = tempo_of(7.5, camera_hz=7.5)
    assert dark.rate_hz == pytest.approx(7.5)
    assert not dark.slow


def test_a_standstill_between_exercises_is_not_counted() -> None:
    tempo = tempo_of(20.0).interrupted()
    lost = 1000
    for begin_s in (200.0, 202.0, 204.0):
        for frame in range(19):
            tempo = tempo.measured(begin_s + frame / 20, lost)
        tempo = tempo.interrupted()
        lost += 1000
    assert tempo.rate_hz == pytest.approx(20.0)


def planned(movement: Movement | None) -> PlannedExercise:
    exercise = None if movement else "pendulum"
    view = None if movement else View.SIDE
    return PlannedExercise(
        movement=movement, exercise=exercise, view=view, side=Side.LEFT, hold_s=20, repetitions=3
    )


@pytest.fixture
def measures_flexion_alone(monkeypatch: pytest.MonkeyPatch) -> None:
    def measures(model: PoseModel, movement: Movement, position: Position, view: View) -> bool:
        return model is FULL or (movement, position, view) == (
            Movement.FLEXION,
            Position.STANDING,
            View.SIDE,
        )

    monkeypatch.setattr(goniometry, "measures", measures)


@pytest.mark.usefixtures("measures_flexion_alone")
@pytest.mark.parametrize(
    ("present", "rate_hz", "movement", "chosen"),
    [
        (FULL, 25.0, Movement.FLEXION, FULL),
        (FULL, 8.5, Movement.FLEXION, FULL),
        (FULL, 6.0, Movement.FLEXION, LITE),
        (LITE, 9.0, Movement.FLEXION, LITE),
        (LITE, 25.0, Movement.FLEXION, FULL),
        (FULL, 6.0, Movement.HAND_BEHIND_BACK, FULL),
        (LITE, 6.0, Movement.HAND_BEHIND_BACK, FULL),
        (LITE, 6.0, None, LITE),
        (FULL, 6.0, None, FULL),
    ],
)
def test_the_small_model_is_for_slow_machines_where_its_error_is_known(
    present: PoseModel, rate_hz: float, movement: Movement | None, chosen: PoseModel
) -> None:
    assert model_for(planned(movement), present, tempo_of(rate_hz)) is chosen


@pytest.mark.usefixtures("measures_flexion_alone")
@pytest.mark.parametrize("present", PoseModel)
def test_where_the_pace_is_not_known_the_model_stays(present: PoseModel) -> None:
    assert model_for(planned(Movement.FLEXION), present, Tempo()) is present


@pytest.mark.usefixtures("measures_flexion_alone")
@pytest.mark.parametrize("full_hz", [3.0, 5.0, 7.0, 7.9])
def test_it_does_not_swing_between_the_models(full_hz: float) -> None:
    """The small model is at most 1.4 times as fast (docs/performance.md)."""
    model, chosen = FULL, []
    for _ in range(6):
        tempo = tempo_of(full_hz * (1.4 if model is LITE else 1.0))
        model = model_for(planned(Movement.FLEXION), model, tempo)
        chosen.append(model)
    assert chosen == [LITE] * 6
