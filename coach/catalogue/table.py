"""The table of all exercises in ``docs/exercises.md``: ``python -m coach.catalogue.table``."""

from __future__ import annotations

import sys

from coach.catalogue.load import Catalogue, catalogue
from coach.domain.exercise import Exercise, Irritability

HEADER = (
    "| exercise | for therapists | position, view | measured | usual hold (high, moderate, low) "
    "| easier, harder |\n|---|---|---|---|---|---|\n"
)


def table(exercises: Catalogue) -> str:
    """Give the table in Markdown, a row for each exercise, with a line's end after each."""
    return HEADER + "".join(_row(exercise) for exercise in exercises.all)


def _row(exercise: Exercise) -> str:
    holds = ", ".join(_hold(exercise, irritability) for irritability in Irritability)
    neighbours = ", ".join(
        f"`{slug}`" if slug else "-" for slug in (exercise.easier, exercise.harder)
    )
    measured = f"`{exercise.movement}`" if exercise.movement else "by time"
    return (
        f"| `{exercise.exercise}` | {exercise.name} | {exercise.position}, {exercise.view} "
        f"| {measured} | {holds} | {neighbours} |\n"
    )


def _hold(exercise: Exercise, irritability: Irritability) -> str:
    least, most = exercise.doses[irritability].hold_s
    return f"{least:g} s" if least == most else f"{least:g}-{most:g} s"


if __name__ == "__main__":
    sys.stdout.write(table(catalogue()))
