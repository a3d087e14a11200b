"""What must be right before an exercise, and the first thing that is not."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field, replace
from itertools import pairwise

from coach.domain.movement import Position
from coach.domain.plan import PlannedExercise
from coach.domain.pose import Pose
from coach.domain.reading import Doubt
from coach.goniometry import gates
from coach.goniometry.sight import Sight
from coach.placing.room import no_room

CALM_S = 0.7
"""What was not found for so long has changed; shorter, and what is shown would flicker with single
misread frames. Our choice."""
CROWD_S, CROWD_OF_S = 1.5, 3.0
"""Somebody else was seen for so long of the last seconds: the model takes a coat for a person now
and then. Our choice."""
GAP_S = 0.5
"""What is seen in a frame holds for so long at most. Our choice."""


@dataclass(frozen=True, slots=True)
class Placing:
    """Watches somebody get ready for an exercise; immutable.

    ``doubt`` is the one thing to change now. It stays until it was not found for ``CALM_S``; then
    the commonest of that time takes its place, and None only if all was right. ``NOBODY`` before
    the first frame. ``ready_s`` is how long ``doubt`` has been None, from the first frame in which
    all was right; 0 while it is not.
    """

    planned: PlannedExercise
    doubt: Doubt | None = Doubt.NOBODY
    ready_s: float = 0.0
    begun_s: float | None = None
    right_since_s: float | None = None
    found: tuple[tuple[float, Doubt | None], ...] = field(default=(), repr=False)
    """What the frames of the last ``CALM_S`` showed, by their stamps."""
    people: tuple[tuple[float, bool], ...] = field(default=(), repr=False)
    """Whether frames of the last ``CROWD_OF_S`` showed somebody else."""


def begin(planned: PlannedExercise) -> Placing:
    """Before the first pose."""
    return Placing(planned)


def advance(placing: Placing, time_s: float, pose: Pose | None) -> Placing:
    """Take the next frame; ``pose`` is None where nobody was seen."""
    others = pose is not None and pose.people > 1
    people = (*(row for row in placing.people if time_s - row[0] <= CROWD_OF_S), (time_s, others))
    now = _found(placing.planned, pose, _crowded(people))
    found = (*(row for row in placing.found if time_s - row[0] <= CALM_S), (time_s, now))
    begun_s = time_s if placing.begun_s is None else placing.begun_s
    placing = replace(placing, found=found, people=people, begun_s=begun_s)
    doubt = _calmed(placing, time_s)
    if doubt is not None:
        return replace(placing, doubt=doubt, ready_s=0.0, right_since_s=None)
    since_s = placing.right_since_s
    if since_s is None:
        since_s = found[0][0]
    return replace(placing, doubt=None, ready_s=time_s - since_s, right_since_s=since_s)


def _calmed(placing: Placing, time_s: float) -> Doubt | None:
    """Give what is to be shown after these frames."""
    if placing.begun_s == time_s:
        return placing.found[-1][1]
    lately = Counter(doubt for _, doubt in placing.found)
    if placing.doubt in lately:
        return placing.doubt
    doubts = [(count, doubt) for doubt, count in lately.items() if doubt is not None]
    return max(doubts)[1] if doubts else None


def _crowded(people: tuple[tuple[float, bool], ...]) -> bool:
    seen_s = sum(
        min(now_s - before_s, GAP_S)
        for (before_s, _), (now_s, others) in pairwise(people)
        if others
    )
    return seen_s > CROWD_S


def _found(planned: PlannedExercise, pose: Pose | None, crowded: bool) -> Doubt | None:
    """Give the first thing that is wrong in a frame: seen, alone, lit, placed, framed, room."""
    if pose is None:
        return Doubt.NOBODY
    if crowded:
        return Doubt.NOT_ALONE
    sight = Sight.of(pose, planned.side)
    movement, view, position = planned.movement, planned.seen_from, planned.position
    doubt = gates.person(sight)
    if movement is None:
        return None if doubt is Doubt.SHOULDERS_OUT_OF_VIEW else doubt
    if doubt is None and gates.outside(sight, sight.hips_px):
        # Hips beyond the picture are guessed, and with them how the body stands.
        doubt = gates.distance(sight, position) or Doubt.HIPS_OUT_OF_VIEW
    doubt = (
        doubt
        or gates.posture(sight, view, position)
        or gates.distance(sight, position)
        or gates.framing(sight)
    )
    if doubt is not None or position is Position.DOORWAY:
        return doubt  # the arm stays at the door frame
    return no_room(sight, movement, view, planned.target_deg)
