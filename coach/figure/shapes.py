"""What a painter is given: flat shapes, from the farthest to the nearest."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

Point = tuple[float, float]
"""Across to the right and down, in the picture's unit: its longer edge is 1."""


class Role(StrEnum):
    """What a shape is, for the painter to choose its colour."""

    FLOOR = "floor"
    MAT = "mat"
    WALL = "wall"
    FURNITURE = "furniture"
    TOOL = "tool"
    """What is held: a stick."""
    CLOTH = "cloth"
    """A towel, a pillow."""
    SKIN = "skin"
    WORKING = "working"
    """The exercised arm."""
    BEGINNING = "beginning"
    """The exercised arm where the movement begins, to be drawn as a mere shadow."""
    SHIRT = "shirt"
    TROUSERS = "trousers"
    SHOE = "shoe"
    HAIR = "hair"
    FACE = "face"


@dataclass(frozen=True, slots=True)
class Stroke:
    """A line with round ends, thicker at one end than at the other; a disc where both ends meet."""

    begin: Point
    begin_radius: float
    end: Point
    end_radius: float


@dataclass(frozen=True, slots=True)
class Shape:
    """One thing in one colour: the union of its strokes and its polygon."""

    role: Role
    strokes: tuple[Stroke, ...] = ()
    polygon: tuple[Point, ...] = ()


@dataclass(frozen=True, slots=True)
class Drawing:
    """One instant: shapes in the order of painting, the farthest first, and the hand's way.

    ``path`` goes from where the movement begins to where it is held, or from one end of a swing to
    the other (``both_ways``); it is empty where nothing moves in this picture.
    ``hand`` is where the exercised hand is now.
    """

    shapes: tuple[Shape, ...]
    path: tuple[Point, ...]
    both_ways: bool
    hand: Point
