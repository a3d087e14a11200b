"""An exercise as frames, made from the times at which an arm truly is at its end range."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

import pytest

from coach.cues.happening import Happening
from coach.cues.rules import Rules, advance
from coach.domain.agenda import AgendaItem
from coach.domain.moment import Moment, Stage
from coach.domain.movement import Movement, Side
from coach.domain.plan import PlannedExercise
from coach.domain.progress import (
    EndedBecause,
    HoldCompleted,
    HoldPaused,
    HoldResumed,
    HoldStarted,
    Phase,
    ProgressEvent,
    Repetition,
    RepetitionEnded,
)
from coach.domain.reading import Doubt, Reading
from coach.voice.sound import Synthesizer
from coach.voice.speaker import Speaker
from coach.voice.timeline import Timeline

SETTLED_S = 0.8
"""The hold is announced this long after its clock began."""


@dataclass
class Exercise:
    """Frames of one exercise; ``starts_s`` is when each hold's clock begins."""

    hold_s: float
    starts_s: list[float]
    end_s: float
    rate_hz: float = 30.0
    rest_s: float = 10.0
    unseen_s: list[tuple[float, float]] = field(default_factory=list)
    let_go_s: dict[int, float] = field(default_factory=dict)
    """Hold number from 1: when the arm leaves early."""

    @property
    def planned(self) -> PlannedExercise:
        return PlannedExercise(
            movement=Movement.FLEXION,
            side=Side.LEFT,
            hold_s=self.hold_s,
            repetitions=len(self.starts_s) - len(self.let_go_s),
            rest_s=self.rest_s,
        )

    def happenings(self) -> Iterator[Happening]:
        hold, held_s, announced, paused = 0, 0.0, False, False
        rest_until_s, done, previous_s = 0.0, 0, 0.0
        finished = False
        for index in range(round(self.end_s * self.rate_hz) + 1):
            now_s = index / self.rate_hz
            at_work = Stage.EXERCISE if index else Stage.PREPARE
            stage = Stage.PAIN_AFTER if finished else at_work
            events: list[ProgressEvent] = []
            unseen = any(a <= now_s < b for a, b in self.unseen_s)
            start_s = self.starts_s[hold] if hold < len(self.starts_s) else float("inf")
            holding = now_s >= start_s
            if holding and not unseen:
                held_s += now_s - max(previous_s, start_s)
            if holding and not announced and held_s >= SETTLED_S:
                announced = True
                events.append(HoldStarted(now_s, start_s))
            if announced and unseen and not paused:
                events.append(HoldPaused(now_s, Doubt.ARM_OUT_OF_VIEW))
                paused = True
            if announced and paused and not unseen:
                events.append(HoldResumed(now_s))
                paused = False
            released = now_s >= self.let_go_s.get(hold + 1, float("inf"))
            over = held_s >= self.hold_s or released
            if announced and over:
                done += not released
                if not released:
                    events.append(HoldCompleted(now_s))
                why = EndedBecause.LET_GO if released else EndedBecause.COMPLETED
                events.append(RepetitionEnded(now_s, _repetition(hold + 1, now_s, held_s, why)))
                rest_until_s = now_s + (0 if released else self.rest_s)
                hold, held_s, announced, holding = hold + 1, 0.0, False, False
                finished = done >= self.planned.repetitions
            resting = now_s < rest_until_s and not finished
            doubt = Doubt.ARM_OUT_OF_VIEW if unseen else None
            yield Happening(
                time_s=now_s,
                stage=stage,
                planned=self.planned,
                item=AgendaItem(0, self.planned),
                events=tuple(events),
                reading=Reading(now_s, None if unseen else 100.0, None if unseen else 5.0, doubt),
                phase=Phase.HOLDING if announced else Phase.MOVING,
                held_s=held_s if announced else 0.0,
                remaining_s=self.hold_s - held_s if announced else None,
                resting=resting,
                rest_remaining_s=rest_until_s - now_s if resting else None,
                repetitions_done=done,
            )
            previous_s = now_s


def _repetition(number: int, end_s: float, held_s: float, why: EndedBecause) -> Repetition:
    return Repetition(
        number=number,
        start_s=end_s - held_s,
        end_s=end_s,
        held_s=held_s,
        value=100.0,
        error=5.0,
        spread=1.0,
        seen_fraction=1.0,
        ended_because=why,
    )


def coached(exercise: Exercise, voice: Synthesizer | None) -> Timeline:
    """Play an exercise through rules, queue and speaker on its own frames' clock."""
    timeline = Timeline()
    speaker = Speaker(voice, timeline=timeline)
    rules = Rules()
    for happening in exercise.happenings():
        rules, cues = advance(rules, happening)
        speaker.hear(
            Moment(
                time_s=happening.time_s,
                stage=happening.stage,
                exercise_index=0,
                planned=happening.planned,
                following=None,
                reading=happening.reading,
                phase=happening.phase,
                held_s=happening.held_s,
                remaining_s=happening.remaining_s,
                resting=happening.resting,
                cues=cues,
            )
        )
        speaker.tick(happening.time_s)
    return timeline


@pytest.fixture
def exercise() -> type[Exercise]:
    return Exercise


@pytest.fixture
def coach() -> object:
    return coached
