"""What the rules of speaking know from one frame to the next."""

from __future__ import annotations

from dataclasses import dataclass, field

from coach import texts
from coach.cues.corrections import Corrections
from coach.cues.happening import Happening
from coach.cues.marks import Mark
from coach.cues.wording import sentence
from coach.domain.cue import Cue, Urgency
from coach.domain.moment import Asked, Stage


@dataclass(frozen=True, slots=True)
class Rules:
    """What has been heard and said so far."""

    language: str = field(default_factory=texts.language)
    stage: Stage | None = None
    exercise_index: int = -1
    resting: bool = False
    pain_above_limit: bool = False
    marks: tuple[Mark, ...] = ()
    lost_since_s: float | None = None
    lost_said: bool = False
    lost_said_s: float = float("-inf")
    corrections: Corrections = field(default_factory=Corrections)
    asked: Asked | None = None


def by_time(happening: Happening) -> bool:
    """Whether the exercise is timed and not measured."""
    return happening.planned is not None and happening.planned.movement is None


def cue(
    state: Rules, time_s: float, fresh_s: float, urgency: Urgency, key: str, **numbers: float
) -> Cue:
    """Say a sentence in the language of the sitting; it is true for ``fresh_s``."""
    words = sentence(key, state.language, **numbers)
    return words.as_cue(key, urgency, time_s, fresh_s)
