"""A rig of bones turned about their heads, and where that puts every joint.

World axes, metres: x to the person's left, y to the person's back, z up (right-handed); a body
with no yaw faces -y. A rotation of a bone is the turn away from the rest pose, so the identity
everywhere is the rest pose.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]


def unit(v: Array) -> Array:
    """Scale vectors (..., 3) to length one."""
    return np.asarray(v / np.linalg.norm(v, axis=-1, keepdims=True), dtype=np.float64)


def turn(axis: Array, angle_deg: float) -> Array:
    """Give the rotation matrix (3, 3) about a unit axis (3,), right-handed, in degrees."""
    angle_rad = np.radians(angle_deg)
    x, y, z = axis
    k = np.array([[0.0, -z, y], [z, 0.0, -x], [-y, x, 0.0]])
    return np.asarray(np.eye(3) + np.sin(angle_rad) * k + (1 - np.cos(angle_rad)) * (k @ k))


@dataclass(frozen=True, slots=True, eq=False)
class Rig:
    """Bones at rest: ``heads_m`` (B, 3) world metres, ``parents`` (B,), -1 for the root.

    ``marks_m`` are further points (3,) of the rest pose by name, each fixed to a bone.
    """

    names: tuple[str, ...]
    parents: tuple[int, ...]
    heads_m: Array = field(repr=False)
    index: Mapping[str, int] = field(repr=False)
    marks_m: Mapping[str, tuple[str, Array]] = field(repr=False)

    @classmethod
    def of(
        cls,
        names: tuple[str, ...],
        parents: tuple[int, ...],
        heads_m: Array,
        marks_m: Mapping[str, tuple[str, Array]] | None = None,
    ) -> Rig:
        """Build the rig with its table of names; marks are bone and point."""
        index = {name: i for i, name in enumerate(names)}
        return cls(names, parents, heads_m, index, marks_m or {})

    def head(self, name: str) -> Array:
        """Rest position (3,) of a bone's head, metres."""
        return np.asarray(self.heads_m[self.index[name]])


@dataclass(frozen=True, slots=True, eq=False)
class Posed:
    """Bones after a pose: turns (B, 3, 3) away from rest and head positions (B, 3), metres."""

    rig: Rig = field(repr=False)
    turns: Array = field(repr=False)
    heads_m: Array = field(repr=False)

    def head(self, name: str) -> Array:
        """Position (3,) of a joint, metres."""
        return np.asarray(self.heads_m[self.rig.index[name]])

    def carried(self, bone: str, rest_point_m: Array) -> Array:
        """Where a point (3,) of the rest pose goes when it is fixed to a bone."""
        i = self.rig.index[bone]
        return np.asarray(self.turns[i] @ (rest_point_m - self.rig.heads_m[i]) + self.heads_m[i])

    def mark(self, name: str) -> Array:
        """Position (3,) of a mark of the rig, metres; NaN where the rig has none of that name."""
        if name not in self.rig.marks_m:
            return np.full(3, np.nan)
        return self.carried(*self.rig.marks_m[name])

    def skin_matrices(self) -> Array:
        """Matrices (B, 4, 4) that take rest points to posed points, column vectors."""
        out = np.zeros((len(self.turns), 4, 4))
        out[:, :3, :3] = self.turns
        out[:, :3, 3] = self.heads_m - np.einsum("bij,bj->bi", self.turns, self.rig.heads_m)
        out[:, 3, 3] = 1.0
        return out


def pose(
    rig: Rig,
    relative: Mapping[str, Array],
    absolute: Mapping[str, Array],
    root_turn: Array,
    root_head_m: Array,
) -> Posed:
    """Turn the bones from the root outwards.

    ``relative`` turns are added to the parent's, in the axes of the rest pose; ``absolute``
    ones replace what the parent would give, in world axes.
    """
    turns = np.empty((len(rig.names), 3, 3))
    heads_m = np.empty((len(rig.names), 3))
    for i, (name, parent) in enumerate(zip(rig.names, rig.parents, strict=True)):
        if parent < 0:
            turns[i], heads_m[i] = root_turn, root_head_m
            continue
        heads_m[i] = heads_m[parent] + turns[parent] @ (rig.heads_m[i] - rig.heads_m[parent])
        if name in absolute:
            turns[i] = absolute[name]
        elif name in relative:
            turns[i] = turns[parent] @ relative[name]
        else:
            turns[i] = turns[parent]
    return Posed(rig, turns, heads_m)
