"""From poses to readings: frame by frame, or over a whole recording."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace

import numpy as np
from numpy.typing import NDArray

from coach.domain.movement import Movement, Position, Side, View
from coach.domain.pose import Pose
from coach.domain.reading import Calibration, Doubt, Reading
from coach.goniometry.angles import Vector, movement_angle_deg
from coach.goniometry.calibration import OPENING_S, Stillness
from coach.goniometry.camera import Pinhole
from coach.goniometry.doorway import Doorway
from coach.goniometry.evidence import Evidence
from coach.goniometry.expectation import Expectation
from coach.goniometry.fitting import Body, Fit, learn, place
from coach.goniometry.form import Start, forms
from coach.goniometry.gates import contradiction, doubt_of
from coach.goniometry.interval import corrected, error_of
from coach.goniometry.memory import Spread
from coach.goniometry.reach import HiddenHand, reach_ratio
from coach.goniometry.sight import WRIST_VISIBILITY, Sight
from coach.goniometry.skeleton import WRIST, Stance, joined

LIVE_FRAMES, RECORDED_FRAMES = 24, 256
"""From how many frames, spread over the time so far, the body is learned."""
FORGET_S = 0.5
"""After so long unseen, a fit begins anew."""
AT_ONCE = 512


@dataclass(frozen=True, slots=True)
class Task:
    """What is measured: a movement of one shoulder, in a position, from a view."""

    movement: Movement
    side: Side
    view: View
    position: Position
    field_of_view_deg: float | None = None

    @property
    def expectation(self) -> Expectation:
        """What it leads one to expect."""
        return Expectation.of(self.movement, self.side, self.position, self.view)

    def camera(self, sight: Sight) -> Pinhole:
        """Give the camera that took a pose."""
        return Pinhole.of(sight.pose.size_px, self.field_of_view_deg)

    def doubt_of(self, sight: Sight) -> Doubt | None:
        """Give the first reason not to measure a pose."""
        return doubt_of(sight, self.movement, self.view, self.position)


@dataclass(frozen=True, slots=True, eq=False)
class Goniometer:
    """Measures frame by frame; immutable, knows what earlier frames taught it."""

    task: Task
    expectation: Expectation = field(repr=False)
    stillness: Stillness = field(repr=False)
    kept: Spread[tuple[Sight, Stance]] = field(repr=False)
    since_learned: int = 0
    body: Body | None = field(default=None, repr=False)
    start: Start | None = field(default=None, repr=False)
    opening: tuple[tuple[float, Sight, Stance], ...] = field(default=(), repr=False)
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
    task = Task(movement, side, view, position, field_of_view_deg)
    hand = HiddenHand() if movement is Movement.HAND_BEHIND_BACK else None
    return Goniometer(task, task.expectation, Stillness(view), Spread(LIVE_FRAMES), hand=hand)


def advance(state: Goniometer, time_s: float, pose: Pose | None) -> tuple[Goniometer, Reading]:
    """Measure one frame; ``pose`` is None where nobody was seen."""
    task = state.task
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
    state = _started(_taught(state, time_s, sight, fit.stance, camera), time_s, sight, fit.stance)
    assert state.start is not None
    start, doorway = state.start, state.doorway
    seen = _readings(task, expectation, [time_s], [sight], evidence, fit, start, doorway)
    seen, hand = _followed(seen, [sight], state.hand)
    return replace(state, hand=hand), seen[0]


def _taught(
    state: Goniometer, time_s: float, sight: Sight, stance: Stance, camera: Pinhole
) -> Goniometer:
    """Learn the body anew whenever half of the kept frames are new."""
    if not state.kept.due(time_s):
        return state
    kept = state.kept.seen(time_s, (sight, stance))
    state = replace(state, kept=kept, since_learned=state.since_learned + 1)
    if state.since_learned < len(kept.samples) / 2:
        return state
    evidence = Evidence.of([row[0] for row in kept.samples], camera)
    start = joined([row[1] for row in kept.samples])
    body = learn(evidence, state.expectation, state.body, start).body
    return replace(state, body=body, since_learned=0)


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
    start = Start.of(joined([row[2] for row in resting]))
    doorway = None
    if state.task.position is Position.DOORWAY:
        seen = [row[0] for row in state.kept.samples]
        doorway = Doorway.of(seen, [row[1] for row in resting])
    return replace(state, start=start, doorway=doorway, opening=() if found else opening)


@dataclass(frozen=True, slots=True)
class Recording:
    """Readings of a whole recording, and what its start taught."""

    readings: tuple[Reading, ...]
    calibration: Calibration


def read_recording(poses: Sequence[tuple[float, Pose | None]], task: Task) -> Recording:
    """Measure a whole recording of (stamp in seconds, pose): the body is learned from all of it."""
    readings = [Reading(time_s, None, None, Doubt.NOBODY) for time_s, _ in poses]
    stillness = Stillness(task.view)
    rows: list[int] = []
    sights: list[Sight] = []
    for row, (time_s, pose) in enumerate(poses):
        if pose is None:
            continue
        sight = Sight.of(pose, task.side)
        doubt = task.doubt_of(sight)
        if doubt is not None:
            readings[row] = Reading(time_s, None, None, doubt)
            continue
        stillness = stillness.seen(time_s, sight)
        rows.append(row)
        sights.append(sight)
    if not rows:
        return Recording(tuple(readings), stillness.result)
    expectation = task.expectation
    times = np.array([poses[row][0] for row in rows])
    spread = np.unique(np.linspace(0, len(rows) - 1, RECORDED_FRAMES).round().astype(int))
    camera = task.camera(sights[0])
    resting = _at_rest(times, stillness.result)
    some_sights = [sights[i] for i in spread]
    body = learn(Evidence.of(some_sights, camera, resting[spread]), expectation).body
    first_sights = [sights[i] for i in np.flatnonzero(resting)[:AT_ONCE]]
    start = Start.of(place(Evidence.of(first_sights, camera), expectation, body).stance)
    doorway = Doorway.of(sights, first_sights) if task.position is Position.DOORWAY else None
    hand = HiddenHand() if task.movement is Movement.HAND_BEHIND_BACK else None
    for first in range(0, len(rows), AT_ONCE):
        some = slice(first, first + AT_ONCE)
        evidence = Evidence.of(sights[some], camera)
        fit = place(evidence, expectation, body)
        stamps = times[some]
        seen = _readings(task, expectation, stamps, sights[some], evidence, fit, start, doorway)
        seen, hand = _followed(seen, sights[some], hand)
        for row, reading in zip(rows[some], seen, strict=True):
            readings[row] = reading
    return Recording(tuple(readings), stillness.result)


def _at_rest(times_s: Vector, calibration: Calibration) -> NDArray[np.bool_]:
    """Which frames (N,) show the body at rest: the quiet two seconds, or else the first one."""
    since_s, until_s = float(times_s[0]), float(times_s[0]) + OPENING_S
    if calibration.state == "still":
        since_s = since_s if calibration.start_s is None else calibration.start_s
        until_s = until_s if calibration.end_s is None else calibration.end_s
    inside: NDArray[np.bool_] = (times_s >= since_s) & (times_s <= until_s)
    return inside


def _readings(
    task: Task,
    expectation: Expectation,
    times_s: Sequence[float] | Vector,
    sights: Sequence[Sight],
    evidence: Evidence,
    fit: Fit,
    start: Start,
    doorway: Doorway | None,
) -> list[Reading]:
    """Turn a fit of frames into readings."""
    stance = fit.stance
    if task.movement is Movement.HAND_BEHIND_BACK:
        values = reach_ratio(stance, evidence.slopes[:, WRIST])
    elif doorway is not None:
        values = np.array([doorway.rotation_deg(sight) for sight in sights])
    else:
        axes = np.eye(3)
        values = movement_angle_deg(
            task.movement, task.side, (axes[0], axes[1], axes[2]), stance.upper_arm, stance.forearm
        )
    known = task.movement, task.position, task.view
    out = []
    for i, form in enumerate(forms(stance, start, expectation, task.movement, task.view)):
        value = corrected(*known, float(values[i]))
        doubt = contradiction(fit, evidence, i, expectation) if doorway is None else None
        if doubt is not None:
            out.append(Reading(float(times_s[i]), None, None, doubt))
            continue
        turned_deg, card = sights[i].turned_from_deg(task.view), sights[i].pose.card is not None
        error = error_of(*known, value, turned_deg, card=card)
        out.append(Reading(float(times_s[i]), value, error, None, form))
    return out


def _followed(
    readings: list[Reading], sights: Sequence[Sight], hand: HiddenHand | None
) -> tuple[list[Reading], HiddenHand | None]:
    """Doubt readings of a hand behind the back that jump; ``hand`` is None for other movements."""
    if hand is None:
        return readings, None
    out = []
    for reading, sight in zip(readings, sights, strict=True):
        believed = True
        if reading.value is not None:
            visibility = float(sight.near.visibility[WRIST_VISIBILITY])
            hand, believed = hand.seen(reading.time_s, reading.value, visibility)
        unsure = Reading(reading.time_s, None, None, Doubt.UNSURE)
        out.append(reading if believed else unsure)
    return out, hand
