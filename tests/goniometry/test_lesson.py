"""Relearning in parts: the same body as from all frames at once, and never more work in a frame."""

from __future__ import annotations

import numpy as np
import pytest

from coach.domain.movement import Movement, Position, Side, View
from coach.goniometry import Task, advance, begin, lesson
from coach.goniometry.body import Body
from coach.goniometry.fitting import place
from coach.goniometry.lesson import PART_FRAMES, STEPS, Lesson
from coach.goniometry.newton import Eliminated, eliminate
from coach.goniometry.residuals import Problem
from tests.goniometry.stick_body import raised
from tests.goniometry.ways import end_of, evidence_of, seen_from, taken

TASKS = [
    Task(Movement.ABDUCTION, Side.LEFT, View.FRONT, Position.STANDING),
    Task(Movement.EXTERNAL_ROTATION_0, Side.RIGHT, View.FRONT, Position.DOORWAY),
]


@pytest.mark.parametrize("task", TASKS, ids=lambda task: str(task.movement))
def test_parts_add_up_to_the_whole(task: Task, monkeypatch: pytest.MonkeyPatch) -> None:
    """Sums over frames do not depend on how the frames are dealt out, but for rounding."""
    values = raised(*end_of(task.movement, task.position, 0.8), 6, 10, 4)
    seen = seen_from(task.view, task.movement)
    poses = taken(task.movement, values, task.side, seen, task.position, jitter_px=0.7)
    evidence, expectation = evidence_of(poses, task), task.expectation
    body = Body.expected(expectation)
    start = place(evidence, expectation, body).stance

    def learned(part_frames: int) -> tuple[Body, int]:
        monkeypatch.setattr(lesson, "PART_FRAMES", part_frames)
        state, calls = Lesson.begin(evidence, expectation, body, start), 0
        while state.learned is None:
            state, calls = state.advanced(), calls + 1
        return state.learned, calls

    whole, calls = learned(STEPS * len(evidence))
    parts, calls_in_parts = learned(3)
    assert (calls, calls_in_parts) == (1, STEPS * len(evidence) // 3)
    assert np.abs(whole.log_lengths - body.log_lengths).max() > 1e-3
    assert parts.log_lengths == pytest.approx(whole.log_lengths, abs=1e-8)
    assert parts.rest == pytest.approx(whole.rest, abs=1e-8)
    assert parts.planes_deg == pytest.approx(whole.planes_deg, abs=1e-6)
    assert parts.covariance == pytest.approx(whole.covariance, rel=1e-6, abs=1e-9)


def test_no_frame_of_a_live_loop_learns_from_more_than_a_part(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    eliminated: list[int] = []

    def counted(problem: Problem, *, learning: bool, begun: bool) -> Eliminated:
        eliminated.append(len(problem.evidence))
        return eliminate(problem, learning=learning, begun=begun)

    monkeypatch.setattr(lesson, "eliminate", counted)
    task = TASKS[0]
    values = raised(*end_of(task.movement, task.position, 0.8), 20, 60, 70)
    seen = seen_from(task.view, task.movement)
    state = begin(task.movement, task.side, task.view)
    bodies, most = [], 0
    for time_s, pose in taken(task.movement, values, task.side, seen, rate_hz=30.0):
        eliminated.clear()
        state, _ = advance(state, time_s, pose)
        assert sum(eliminated) <= PART_FRAMES
        most = max(most, *eliminated, 0)
        bodies.append(state.body)
    assert most == PART_FRAMES
    assert len(set(map(id, bodies))) > 5  # and it is learned again and again
