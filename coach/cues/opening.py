"""What is said when a stage of the session opens."""

from __future__ import annotations

from typing import Final, assert_never

from coach.cues.happening import Happening
from coach.cues.wording import (
    Sentence,
    dose_sentence,
    movement_sentence,
    placing_sentence,
    sentence,
)
from coach.domain.cue import Cue, Urgency
from coach.domain.moment import Stage

STAGE_FRESH_S: Final = 40.0
"""A stage's sentences wait for each other; the next stage or a hold withdraws them."""


def opening_cues(
    happening: Happening, after: Stage | None, another: bool, language: str
) -> list[Cue]:
    """Say what a stage is about, once it is entered.

    ``after`` is the stage before, ``another`` whether the exercise is a different one from then.
    """
    if happening.stage is after and not (another and after is not Stage.FINISHED):
        return []
    return [
        words.as_cue(f"stage.{key}", Urgency.NORMAL, happening.time_s, STAGE_FRESH_S)
        for key, words in _said(happening, after, another, language)
    ]


def _said(
    happening: Happening, after: Stage | None, another: bool, language: str
) -> list[tuple[str, Sentence]]:
    keys: tuple[str, ...]
    match happening.stage:
        case Stage.WELCOME:
            keys = ("welcome", "caution", "emergency")
        case Stage.PAIN_BEFORE:
            keys = ("pain-before",)
        case Stage.EXERCISE:
            if after is not Stage.PAUSED or another:
                return _introduction(happening, language)
            keys = ("resumed",)
        case Stage.PAUSED:
            keys = ("paused",)
        case Stage.PAIN_AFTER:
            keys = ("pain-after",)
        case Stage.FINISHED:
            keys = ("finished", "finished-caution")
        case _:
            assert_never(happening.stage)
    return [(key, sentence(key, language)) for key in keys]


def _introduction(happening: Happening, language: str) -> list[tuple[str, Sentence]]:
    """Say which exercise, how to stand, what to do, how often and how long."""
    planned = happening.planned
    if planned is None:
        return []
    side, position = planned.side, planned.position
    said = [
        ("place", placing_sentence(planned.seen_from, side, position, language)),
        ("do", movement_sentence(planned.movement, side, position, language)),
        ("dose", dose_sentence(planned, language)),
    ]
    if happening.exercise_count > 1:
        number, count = happening.exercise_index + 1, happening.exercise_count
        words = sentence("exercise-number", language, number=number, count=count)
        said.insert(0, ("exercise-number", words))
    return said
