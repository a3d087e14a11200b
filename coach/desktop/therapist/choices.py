"""What may be chosen in a field, in the words of the chosen language."""

from __future__ import annotations

from collections.abc import Mapping

from coach.domain.exercise import Irritability, StiffnessPhase
from coach.domain.movement import Movement, Side, Unit
from coach.review.verdict_wording import irritability_words, phase_words
from coach.review.wording import movement_name, side_word


def sides() -> Mapping[Side, str]:
    """Name the sides."""
    return {side: side_word(side) for side in Side}


def phases() -> Mapping[StiffnessPhase, str]:
    """Name the phases of a stiff shoulder."""
    return {phase: phase_words(phase) for phase in StiffnessPhase}


def irritabilities() -> Mapping[Irritability, str]:
    """Name how easily a shoulder is irritated."""
    return {each: irritability_words(each) for each in Irritability}


def angles() -> Mapping[Movement, str]:
    """Name the movements that are measured in degrees."""
    return {m: movement_name(m) for m in Movement if m.unit is Unit.DEGREES}
