"""One exercise's demonstration: its loop, its picture, its shapes at any time."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np

from coach.domain.exercise import Bend, Equipment, Exercise
from coach.domain.movement import Position, Side, View
from coach.figure.camera import camera_of
from coach.figure.limbs import Solid, arm, person
from coach.figure.motion import Motion
from coach.figure.props import Setting, wall_side
from coach.figure.rotation import Vector
from coach.figure.shapes import Drawing, Point, Role, Shape, Stroke
from coach.figure.skeleton import LEFT, RIGHT, Joints, joints_of

_SAMPLES = 48
_PATH_STEPS = 28
_SEEN = 0.045
"""A way shorter than this, in statures, is not told by an arrow."""
_SWING = 1.3
"""A swing goes to both sides of where it begins: its ends are so much farther apart."""
_MARGIN = 0.035
_FACING = 0.6
"""How much of the shoulders' breadth is seen of someone who faces the viewer."""
_ON_SIDE_ELEVATION, _ON_SIDE_PLANE = 60.0, 45.0
"""Who holds the exercised arm out in front while lying on one side lies on that side."""


@dataclass(frozen=True, slots=True)
class _Way:
    points: tuple[Vector, ...]
    from_s: float
    to_s: float
    both: bool


class Stage:
    """Draws the figure; what never changes in the loop is found once."""

    def __init__(
        self,
        bends: Sequence[Bend],
        side: Side,
        position: Position,
        view: View,
        equipment: Sequence[Equipment] = (),
    ) -> None:
        """Take what a catalogue entry says of its demonstration, and the exercised side."""
        self._motion = Motion(bends)
        self._side, self._position = side, position
        self._equipment = tuple(equipment)
        plane, elevation = bends[0].arm[:2]
        self._on_exercised = elevation >= _ON_SIDE_ELEVATION and plane >= _ON_SIDE_PLANE
        # Bent knees would hide the arms from a camera beyond the feet.
        self._legs_flat = view is View.FOOT
        self._anchor: Vector | None = None
        self._wall = wall_side(self._posed(0.0))
        at_wall = self._wall if Equipment.WALL in self._equipment else None
        self._camera = camera_of(position, view, at_wall)
        self._anchor = self._posed(0.0).hand[RIGHT]
        times = [self.period_s * i / _SAMPLES for i in range(_SAMPLES)]
        course = tuple(self._posed(t) for t in times)
        self._setting = Setting(position, self._equipment, course)
        self._still = self._setting.standing_still
        self._way = self._found_way()
        self._fit(course)

    @property
    def period_s(self) -> float:
        """The loop's length."""
        return self._motion.period_s

    @property
    def begin_s(self) -> float:
        """When the figure is where its movement begins."""
        return self._way.from_s

    @property
    def key_s(self) -> float:
        """When it is at the end of its movement: the pose to show where nothing moves."""
        return self._way.to_s

    @property
    def facing(self) -> bool:
        """Whether the person faces the viewer, so that a mirror would show the other arm."""
        across = self._posed(0.0).shoulder[RIGHT] - self._posed(0.0).shoulder[LEFT]
        return float(across @ self._camera.right) < -_FACING * float(np.linalg.norm(across))

    @property
    def size(self) -> Point:
        """Width and height of the picture; the longer one is 1."""
        return self._size

    def joints(self, time_s: float) -> Joints:
        """Give the joints in the room, left and right the person's own, in statures."""
        posed = self._posed(time_s)
        return posed if self._side is Side.RIGHT else posed.mirrored()

    def drawing(self, time_s: float, *, beginning: bool = False) -> Drawing:
        """Draw one instant; with ``beginning``, the exercised arm's first place as well."""
        joints = self._posed(time_s)
        solids = [*self._still, *person(joints, self._camera.toward)]
        solids += self._setting.carried(joints)
        if beginning:
            first = self._posed(self.begin_s)
            solids.append(arm(first, RIGHT, Role.BEGINNING))
        shapes = [self._flat(solid) for solid in sorted(solids, key=self._nearness)]
        path = tuple(self._point(p) for p in self._way.points)
        return Drawing(tuple(shapes), path, self._way.both, self._point(joints.hand[RIGHT]))

    def _posed(self, time_s: float) -> Joints:
        """Give the joints with the right side exercised."""
        joints = joints_of(
            self._motion.at(time_s),
            self._position,
            on_exercised_side=self._on_exercised,
            legs_flat=self._legs_flat,
        )
        if self._anchor is None:
            return joints
        off = self._anchor - joints.hand[RIGHT]
        if self._position is Position.DOORWAY:
            return joints.moved(np.eye(3), off * [1.0, 0.0, 1.0])
        if Equipment.WALL in self._equipment:
            return joints.moved(np.eye(3), (off @ self._wall) * self._wall)
        return joints

    def _found_way(self) -> _Way:
        """Follow what moves most in the picture: the hand; else the other hand or shoulder."""
        for choose in (
            lambda j: j.hand[RIGHT] + 0.25 * (j.hand[RIGHT] - j.wrist[RIGHT]),
            lambda j: j.shoulder[LEFT],
            lambda j: j.hand[LEFT],
        ):
            if way := self._way_of(choose):
                return way
        middle = self._motion.key_times_s[len(self._motion.key_times_s) // 2]
        return _Way((), 0.0, middle, both=False)

    def _way_of(self, choose: Callable[[Joints], Vector]) -> _Way | None:
        times = self._motion.key_times_s[:-1]
        flat = self._camera.picture(np.stack([choose(self._posed(t)) for t in times]))[:, :2]
        apart = np.linalg.norm(flat[:, None] - flat[None], axis=-1)
        last = int(apart[0].argmax())
        if apart[0, last] < _SEEN:
            return None
        first, both = 0, False
        if apart.max() > _SWING * apart[0, last]:
            first, last = (int(i) for i in np.unravel_index(apart.argmax(), apart.shape))
            both = True
        between = np.linspace(times[first], times[last], _PATH_STEPS)
        points = tuple(choose(self._posed(float(t))) for t in between)
        return _Way(points, times[first], times[last], both=both)

    def _fit(self, course: Sequence[Joints]) -> None:
        """Find the scale and the corner with which every instant fits into the picture."""
        low, high = np.full(2, np.inf), np.full(2, -np.inf)
        solids = list(self._still)
        for joints in course:
            solids += [*person(joints, self._camera.toward), *self._setting.carried(joints)]
        for solid in solids:
            for stroke in solid.strokes:
                for centre, radius in stroke:
                    at = self._camera.picture(centre)[:2]
                    low, high = np.minimum(low, at - radius), np.maximum(high, at + radius)
            for corner in solid.polygon:
                at = self._camera.picture(corner)[:2]
                low, high = np.minimum(low, at), np.maximum(high, at)
        for point in self._way.points:
            at = self._camera.picture(point)[:2]
            low, high = np.minimum(low, at), np.maximum(high, at)
        low, high = low - _MARGIN, high + _MARGIN
        self._scale = 1.0 / float((high - low).max())
        self._low = low
        width, height = (high - low) * self._scale
        self._size = (float(width), float(height))

    def _flat(self, solid: Solid) -> Shape:
        strokes = tuple(
            Stroke(self._point(a), ra * self._scale, self._point(b), rb * self._scale)
            for (a, ra), (b, rb) in solid.strokes
        )
        return Shape(solid.role, strokes, tuple(self._point(corner) for corner in solid.polygon))

    def _nearness(self, solid: Solid) -> float:
        return float(self._camera.picture(solid.middle())[2]) + solid.nearer

    def _point(self, at: Vector) -> Point:
        x, y = (self._camera.picture(at)[:2] - self._low) * self._scale
        return (float(x if self._side is Side.RIGHT else self._size[0] - x), float(y))


def stage_of(exercise: Exercise, side: Side) -> Stage:
    """Give the stage of a catalogue entry."""
    return Stage(exercise.demonstration, side, exercise.position, exercise.view, exercise.equipment)
