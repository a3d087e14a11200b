"""Every sentence the program says, looked up by language and key.

A key stands for one whole sentence with named places for numbers; nothing is glued from parts,
so that a translation is one more table.
"""

from __future__ import annotations

from dataclasses import dataclass

from coach import texts
from coach.catalogue import catalogue
from coach.cues.language import FALLBACK, languages, spoken_in
from coach.domain.cue import Cue, Urgency
from coach.domain.exercise import Telling
from coach.domain.form import FormFault
from coach.domain.movement import Movement, Position, Side, View
from coach.domain.plan import PlannedExercise
from coach.domain.reading import Doubt


@dataclass(frozen=True, slots=True)
class Sentence:
    """What is spoken, and what is shown in its place where there is little room."""

    spoken: str
    caption: str

    def as_cue(self, key: str, urgency: Urgency, time_s: float, fresh_s: float) -> Cue:
        """Make a cue of it that is due at ``time_s`` and true for ``fresh_s`` seconds."""
        return Cue(time_s, time_s + fresh_s, urgency, key, self.spoken, self.caption)


def sentence(key: str, language: str | None = None, **numbers: float) -> Sentence:
    """Look up a sentence and fill in its numbers; a missing translation falls back to English."""
    chosen = spoken_in(language)
    if key not in chosen.sentences:
        chosen = spoken_in(FALLBACK)
    spoken, caption = chosen.sentences[key]
    shown = {name: chosen.written(number) for name, number in numbers.items()}
    return Sentence(spoken.format_map(shown), caption.format_map(shown))


def doubt_sentence(
    doubt: Doubt, side: Side, position: Position = Position.STANDING, language: str | None = None
) -> Sentence:
    """Say why a frame gives no value of this side's arm, and what to do about it."""
    key = f"doubt.{doubt.value}"
    return sentence(_chosen(key, "lying" if position.lying else "", side), language)


def placing_sentence(
    view: View, side: Side, position: Position = Position.STANDING, language: str | None = None
) -> Sentence:
    """Say how to stand, sit or lie to the camera."""
    return sentence(_chosen(f"place.{view.value}", position, side), language)


def movement_sentence(
    movement: Movement,
    side: Side,
    position: Position = Position.STANDING,
    language: str | None = None,
) -> Sentence:
    """Say what to do with the arm."""
    return sentence(_chosen(f"do.{movement.value}", position, side), language)


def telling(planned: PlannedExercise, language: str | None = None) -> Telling | None:
    """Give the catalogue's words for the exercise; None for a bare movement."""
    exercise = catalogue().by_name.get(planned.exercise or "")
    if exercise is None:
        return None
    return texts.of(exercise.telling, language)


def placed(planned: PlannedExercise, language: str | None = None) -> Sentence:
    """Say where the laptop goes and how to be placed before it."""
    told = telling(planned, language)
    if told is not None:
        return Sentence(*told.laptop)
    return placing_sentence(planned.seen_from, planned.side, planned.position, language)


def instructed(planned: PlannedExercise, language: str | None = None) -> Sentence:
    """Say what to do."""
    told = telling(planned, language)
    if told is not None:
        return Sentence(told.spoken, told.short)
    return movement_sentence(planned.measured, planned.side, planned.position, language)


def form_sentence(fault: FormFault, position: Position, language: str | None = None) -> Sentence:
    """Say what is wrong with the form, and what to do about it."""
    lying = f"form.{fault.value}.lying"
    if position.lying and lying in languages()[FALLBACK].sentences:
        return sentence(lying, language)
    return sentence(f"form.{fault.value}", language)


def dose_sentence(planned: PlannedExercise, language: str | None = None) -> Sentence:
    """Say how often and how long."""
    often = "once" if planned.repetitions == 1 else "many"
    key = f"dose.{often}-short" if planned.hold_s == 1 else f"dose.{often}"
    return sentence(key, language, repetitions=planned.repetitions, hold_s=planned.hold_s)


def _chosen(key: str, position: str, side: Side) -> str:
    """Choose the sentence for this position and side, or the nearest there is to it."""
    for chosen in (f"{key}.{position}.{side}", f"{key}.{position}", f"{key}.{side}"):
        if chosen in languages()[FALLBACK].sentences:
            return chosen
    return key
