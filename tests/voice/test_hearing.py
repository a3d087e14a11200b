"""Whether what must be heard has been: told by the core, checked against the voice itself."""

from __future__ import annotations

from dataclasses import replace

import pytest

from coach.catalogue import catalogue
from coach.cues import Happening, Hearing, Rules, advance, hear
from coach.cues.hearing import must_be_heard
from coach.domain.agenda import AgendaItem
from coach.domain.moment import Moment, Stage
from coach.domain.movement import Side
from coach.domain.plan import PlannedExercise
from coach.voice.espeak import Voice
from coach.voice.speaker import Speaker
from coach.voice.timeline import Timeline

KNOWN = catalogue().by_name
VOICES = {language: Voice(language) for language in ("en", "de")}
SLACK_S = 5.0
"""A person is kept waiting by no more than this, of an introduction of up to 90 s."""


def item(name: str, *, new: bool, told: bool = False) -> AgendaItem:
    known = KNOWN[name]
    planned = PlannedExercise(
        exercise=name,
        movement=known.movement,
        position=known.position,
        view=known.view,
        side=Side.LEFT,
        hold_s=20,
        repetitions=3,
    )
    return AgendaItem(0, planned, new=new, told=told)


def played(each: AgendaItem, language: str = "en") -> tuple[float, Timeline]:
    """When the core holds the introduction for heard, and what the voice said when."""
    timeline, hearing = Timeline(), Hearing()
    rules = Rules(language=language, stage=Stage.PAIN_BEFORE)
    speaker, heard_s = Speaker(VOICES[language], timeline=timeline), None
    happening = Happening(0.0, Stage.PREPARE, each.planned, item=each, exercise_count=4)
    for tick in range(900):
        happening = replace(happening, time_s=tick / 10)
        rules, cues = advance(rules, happening)
        hearing = hear(hearing, happening.time_s, cues)
        speaker.hear(Moment(happening.time_s, Stage.PREPARE, 0, each.planned, None, cues=cues))
        speaker.tick(happening.time_s)
        if heard_s is None and not hearing.awaits(each):
            heard_s = happening.time_s
        if heard_s is not None and speaker.quiet(happening.time_s):
            return heard_s, timeline
    raise AssertionError("the introduction has no end")


@pytest.mark.parametrize(("language", "new"), [("en", True), ("en", False), ("de", True)])
@pytest.mark.parametrize("name", sorted(KNOWN))
def test_nothing_begins_before_the_voice_has_said_what_must_be_heard(
    name: str, language: str, new: bool
) -> None:
    each = item(name, new=new)
    heard_s, timeline = played(each, language)
    words = KNOWN[name].telling[language]
    must = [placed for placed in timeline.placed if must_be_heard(each, placed.cue.key)]
    said = [placed.cue.spoken for placed in must]
    for sentence in (*words.cautions, *((words.spoken,) if new else ())):
        assert sentence in said
    assert not any(placed.interrupted for placed in must)
    last_s = max((placed.end_s for placed in must), default=0.0)
    assert last_s <= heard_s <= last_s + SLACK_S


@pytest.mark.parametrize("name", sorted(n for n, each in KNOWN.items() if each.movement))
def test_the_second_time_of_a_day_nobody_waits(name: str) -> None:
    heard_s, timeline = played(item(name, new=False, told=True))
    assert heard_s == 0.0
    assert not set(KNOWN[name].telling["en"].cautions) & {p.cue.spoken for p in timeline.placed}
