"""Frame by frame, looking back only."""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from coach.domain.movement import Movement, Position, Side, View
from coach.domain.pose import Pose, PoseModel
from coach.domain.reading import Calibration, Doubt, Reading
from coach.goniometry.body import Body
from coach.goniometry.calibration import OPENING_S, Stillness
from coach.goniometry.camera import Pinhole
from coach.goniometry.doorway import Doorway
from coach.goniometry.evidence import Evidence
from coach.goniometry.expectation import Expectation
from coach.goniometry.fitting import learn, place
from coach.goniometry.form import Start
from coach.goniometry.lesson import Lesson
from coach.goniometry.memory import Spread
from coach.goniometry.reach import HiddenHand
from coach.goniometry.sight import Sight
from coach.goniometry.skeleton import Stance, joined
from coach.goniometry.task import Task
from coach.goniometry.values import followed, readings_of

LIVE_FRAMES = 24
"""From how many frames, spread over the time so far, the body is learned."""
FORGET_S = 0.5
"""After so long unseen, a fit begins anew."""


@dataclass(frozen=True, slots=True, eq=False)
class Goniometer:
    """Measures frame by frame; immutable, knows what earlier frames taught it."""

    task: Task
    expectation: Expectation = field(repr=False)
    stillness: Stillness = field(repr=False)
    kept: Spread[tuple[Sight, Stance]] = field(repr=False)
    model: PoseModel | None = PoseModel.FULL
    since_learned: int = 0
    lesson: Lesson | None = field(default=None, repr=False)
    body: Body | None = field(default=None, repr=False)
    start: Start | None = field(default=None, repr=False)
    opening: tuple[tuple[float, Sight, Stance], ...] = field(default=(), repr=False)
    resting: tuple[Sight, ...] = field(default=(), repr=False)
    doorway: Doorway | None = field(default=None, repr=False)
    hand: HiddenHand | None = None
    last_s: float = float("-inf")
    last: Stance | None = field(default=None, repr=False)

    @property
    def calibration(self) -> Calibration:
        """What standing still taught so far."""
        return self.stillness.result


def begin(
    movement: Movement,
    side: Side,
    view: View,
    position: Position = Position.STANDING,
    field_of_view_deg: float | None = None,
) -> Goniometer:
    """Before the first pose of an exercise; the field of view is that of the longer side."""
    return _begun(Task(movement, side, view, position, field_of_view_deg))


def _begun(task: Task) -> Goniometer:
    hand = HiddenHand() if task.movement is Movement.HAND_BEHIND_BACK else None
    return Goniometer(task, task.expectation, Stillness(task.view), Spread(LIVE_FRAMES), hand=hand)


def advance(state: Goniometer, time_s: float, pose: Pose | None) -> tuple[Goniometer, Reading]:
    """Measure one frame; ``pose`` is None where nobody was seen.

    What one pose model's points taught is not true of another's: with those it begins anew.
    """
    task = state.task
    if pose is not None and pose.model is not state.model:
        state = replace(_begun(task), model=pose.model)
    sight = None if pose is None else Sight.of(pose, task.side)
    doubt = Doubt.NOBODY if sight is None else task.doubt_of(sight)
    if sight is None or doubt is not None:
        return state, Reading(time_s, None, None, doubt)
    camera = task.camera(sight)
    expectation = state.expectation
    evidence = Evidence.of([sight], camera)
    body = state.body or learn(evidence, expectation).body
    near = state.last if time_s - state.last_s <= FORGET_S else None
    fit = place(evidence, expectation, body, near)
    stillness = state.stillness.seen(time_s, sight)
    state = replace(state, body=body, stillness=stillness, last_s=time_s, last=fit.stance)
    kept = state.kept
    state = _taught(state, time_s, sight, fit.stance, camera)
    state = _squared(_started(state, time_s, sight, fit.stance), kept)
    assert state.start is not None
    start, doorway = state.start, state.doorway
    seen = readings_of(task, expectation, [time_s], [sight], evidence, fit, start, doorway)
    seen, hand = followed(seen, [sight], state.hand)
    return replace(state, hand=hand), seen[0]


def _taught(
    state: Goniometer, time_s: float, sight: Sight, stance: Stance, camera: Pinhole
) -> Goniometer:
    """Learn the body anew, a part in each frame, whenever half of the kept frames are new."""
    if state.kept.due(time_s):
        kept = state.kept.seen(time_s, (sight, stance))
        state = replace(state, kept=kept, since_learned=state.since_learned + 1)
    samples = state.kept.samples
    if state.lesson is not None:
        lesson = state.lesson.advanced()
        if lesson.learned is None:
            return replace(state, lesson=lesson)
        return replace(state, body=lesson.learned, lesson=None)
    if state.body is None or state.since_learned < len(samples) / 2:
        return state
    evidence = Evidence.of([row[0] for row in samples], camera)
    start = joined([row[1] for row in samples])
    lesson = Lesson.begin(evidence, state.expectation, state.body, start)
    return replace(state, lesson=lesson, since_learned=0)


def _started(state: Goniometer, time_s: float, sight: Sight, stance: Stance) -> Goniometer:
    """Take the stance at rest: of the first second, until two quiet ones are found."""
    found = state.stillness.found
    if found is not None and not state.opening:
        return state
    opening = (*state.opening, (time_s, sight, stance))
    since_s = opening[0][0]
    until_s = since_s + OPENING_S
    if found is not None and found.start_s is not None and found.state == "still":
        since_s, until_s = found.start_s, time_s
    resting = [row for row in opening if since_s <= row[0] <= until_s]
    sights = tuple(row[1] for row in resting)
    start = Start.of(joined([row[2] for row in resting]), sights)
    return replace(state, start=start, resting=sights, opening=() if found else opening)


def _squared(state: Goniometer, before: Spread[tuple[Sight, Stance]]) -> Goniometer:
    """In a doorway the full breadth may come late: take it anew as frames are kept, and at rest."""
    if state.task.position is not Position.DOORWAY:
        return state
    if state.doorway is not None and state.kept is before and not state.opening:
        return state
    seen = [row[0] for row in state.kept.samples]
    return replace(state, doorway=Doorway.of(seen, state.resting))
