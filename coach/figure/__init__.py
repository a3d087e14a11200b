"""A catalogue demonstration in, shapes of a drawn person out."""

from coach.figure.shapes import Drawing, Point, Role, Shape, Stroke
from coach.figure.stage import Stage, stage_of

__all__ = ["Drawing", "Point", "Role", "Shape", "Stage", "Stroke", "stage_of"]
