"""Exercises by name, for therapists."""

from __future__ import annotations

from coach import texts
from coach.domain.exercise import Exercise


def exercise_title(exercise: Exercise) -> str:
    """Name an exercise: in English by its trade name, else by its title for the patient."""
    if texts.language() == texts.ENGLISH:
        return exercise.name
    return texts.of(exercise.telling).title
