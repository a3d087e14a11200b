"""What must hold of an exercise, and of all of them together, beyond the types of their fields."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import pairwise

from coach.domain.exercise import Exercise, Irritability
from coach.domain.movement import VIEWS, measurable


def wrong_in(exercise: Exercise) -> str | None:
    """Say what is wrong in one exercise: field, what stands there, what may; None if nothing is."""
    return next(_faults(exercise), None)


def wrong_among(exercises: Mapping[str, Exercise]) -> tuple[str, str] | None:
    """Give the exercise whose neighbours cannot be, and why; None where all can be."""
    for slug, exercise in exercises.items():
        for field, neighbour in (("easier", exercise.easier), ("harder", exercise.harder)):
            if neighbour is not None and neighbour not in exercises:
                return slug, f"{field} names {neighbour}, which is no exercise of the catalogue"
    for slug in exercises:
        if slug in _harder_than(slug, exercises):
            return slug, "easier and harder lead round in a circle back to it"
    return None


def _faults(exercise: Exercise) -> Iterator[str]:
    yield from _measuring(exercise)
    yield from _doses(exercise)
    if "en" not in exercise.telling:
        yield "telling.en, the words in English, is missing"
    for language, telling in exercise.telling.items():
        if exercise.movement is None and telling.by_time is None:
            yield (
                f"telling.{language}.by_time is missing, which says why an exercise without a "
                "movement is timed and not measured"
            )
        if exercise.movement is not None and telling.by_time is not None:
            yield f"telling.{language}.by_time stands beside movement, and only one of them may"
    stamps = [bend.at_s for bend in exercise.demonstration]
    if stamps[0] != 0 or any(late <= early for early, late in pairwise(stamps)):
        yield "demonstration: at_s must begin at 0 and rise from one to the next"


def _measuring(exercise: Exercise) -> Iterator[str]:
    movement = exercise.movement
    if movement is None:
        return
    if exercise.view not in VIEWS.get((movement, exercise.position), ()):
        yield (
            f"movement, position and view are {movement}, {exercise.position} from the "
            f"{exercise.view}, and {movement} is measured {measurable(movement)}"
        )


def _doses(exercise: Exercise) -> Iterator[str]:
    for irritability in Irritability:
        dose = exercise.doses.get(irritability)
        if dose is None:
            yield f"doses.{irritability} is missing"
            continue
        for field, (least, most) in (
            ("hold_s", dose.hold_s),
            ("repetitions", dose.repetitions),
            ("per_day", dose.per_day),
        ):
            if least > most:
                yield f"doses.{irritability}.{field} begins at {least:g}, above its end {most:g}"


def _harder_than(slug: str, exercises: Mapping[str, Exercise]) -> set[str]:
    """Give every exercise that the neighbours' fields make harder than this one."""
    above: dict[str, set[str]] = {name: set() for name in exercises}
    for name, exercise in exercises.items():
        if exercise.harder is not None:
            above[name].add(exercise.harder)
        if exercise.easier is not None:
            above[exercise.easier].add(name)
    found: set[str] = set()
    waiting = list(above[slug])
    while waiting:
        name = waiting.pop()
        if name not in found:
            found.add(name)
            waiting.extend(above[name])
    return found
