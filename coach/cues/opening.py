"""What is said when a stage of the session opens."""

from __future__ import annotations

from typing import Final, assert_never

from coach.cues.happening import Happening
from coach.cues.hearing import must_be_heard
from coach.cues.pacing import estimate_s
from coach.cues.wording import (
    Sentence,
    dose_sentence,
    instructed,
    placed,
    sentence,
    telling,
)
from coach.domain.agenda import AgendaItem
from coach.domain.cue import Cue, Urgency
from coach.domain.moment import Stage

STAGE_FRESH_S: Final = 120.0
"""A stage's sentences wait for each other, the last of the longest introduction for 65 s; the next
stage or a hold withdraws them."""


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
            keys = ("welcome", "caution", "emergency", "start-by-hand")
        case Stage.PAIN_BEFORE:
            keys = ("pain-before", "pain-by-hand")
        case Stage.PREPARE if happening.item is not None:
            item = happening.item
            number, count = happening.exercise_index + 1, happening.exercise_count
            whole = introduction(item, number, count, language)
            if after is not Stage.PAUSED or another:
                return whole
            # The pause cut it off: what must be heard is said again.
            again = [said for said in whole if must_be_heard(item, f"stage.{said[0]}")]
            return [("resumed", sentence("resumed", language)), *again]
        case Stage.EXERCISE if after is Stage.PREPARE:
            return []
        case Stage.PREPARE | Stage.EXERCISE:
            keys = ("resumed",)
        case Stage.PAUSED:
            keys = ("paused-by-hand",)
        case Stage.PAIN_AFTER:
            keys = ("pain-after", "pain-by-hand")
        case Stage.OFFER:
            keys = ("offer",)
        case Stage.FINISHED:
            keys = ("finished", "finished-caution")
        case _:
            assert_never(happening.stage)
    return [(key, sentence(key, language)) for key in keys]


def introduction(
    item: AgendaItem, number: int, count: int, language: str | None = None
) -> list[tuple[str, Sentence]]:
    """Say which exercise, how to be placed, what to mind, what to do, how often and how long.

    One that the person knows is told in short, and its cautions once a day: whoever hears what to
    do has heard them.
    """
    planned, words = item.planned, telling(item.planned, language)
    said = [("place", placed(planned, language))]
    if words is not None:
        said.append(("title", Sentence(f"{words.title}.", words.title)))
        said.append(("arm", sentence(f"arm.{planned.side.value}", language)))
    if words is not None and not item.told:
        # A cue withdraws those of its own key that still wait.
        said += [
            (f"caution.{place}", Sentence(each, each))
            for place, each in enumerate(words.cautions, start=1)
        ]
    do = instructed(planned, language)
    if words is not None and not item.new:
        do = Sentence(words.short, words.short)
    said.append(("do", do))
    said.append(("dose", dose_sentence(planned, language)))
    if item.new:
        if words is not None and words.by_time:
            said.append(("by-time", Sentence(words.by_time, words.by_time)))
        said.append(("signals", sentence("signals", language)))
    if count > 1:
        exercise = sentence("exercise-number", language, number=number, count=count)
        said.insert(0, ("exercise-number", exercise))
    return said


def question_s(stage: Stage) -> float:
    """Guess how long the question about pain takes to speak, in seconds."""
    first = "pain-before" if stage is Stage.PAIN_BEFORE else "pain-after"
    said = [sentence(first), sentence("pain-by-hand")]
    return 1.0 + sum(
        estimate_s(words.as_cue(first, Urgency.NORMAL, 0.0, STAGE_FRESH_S)) for words in said
    )
