"""The English sentences: what is spoken, and the short form that is shown.

Simple words, whole sentences, each clear to someone who cannot see the screen. Signs to stop at
and what to do about them are common practice in physiotherapy; they do not replace its advice.
"""

from __future__ import annotations

from coach.cues.english_doubts import DOUBTS
from coach.cues.english_exercises import EXERCISES
from coach.cues.english_programme import PROGRAMME

ENGLISH: dict[str, tuple[str, str]] = {
    **EXERCISES,
    **DOUBTS,
    **PROGRAMME,
    # Before and after
    "welcome": (
        "Welcome. Do only the exercises your therapist gave you, and only as far as your shoulder "
        "lets you.",
        "Only the exercises your therapist gave you",
    ),
    "caution": (
        "Stop if the pain turns sharp or keeps growing, if your arm goes numb, tingles or feels "
        "weak, or if you feel dizzy. Then ask your therapist before you go on.",
        "Stop if: pain sharp or growing; arm numb or weak; dizzy",
    ),
    "emergency": (
        "If your chest hurts or you cannot breathe well, stop and call for emergency help.",
        "Chest pain or hard to breathe: stop, call for emergency help",
    ),
    "pain-before": (
        "How much does your shoulder hurt now? Choose a number from zero to ten. Zero is no pain. "
        "Ten is the worst pain you can think of.",
        "Pain now, 0 to 10?",
    ),
    "pain-after": (
        "This exercise is over. How much does your shoulder hurt now, from zero to ten?",
        "Pain now, 0 to 10?",
    ),
    "pain-limit": (
        "That is more pain than your therapist wants, so this exercise stops here. Ask your "
        "therapist before you do it again.",
        "Too much pain: ask your therapist",
    ),
    "paused": ("Paused. Let your arm rest.", "Paused"),
    "resumed": ("We go on.", "Going on"),
    "finished": (
        "That is all for today. Thank you for taking the time.",
        "Done for today",
    ),
    "finished-caution": (
        "If the pain gets worse for more than half an hour, or keeps you awake at night, tell your "
        "therapist.",
        "Worse for over half an hour, or at night: tell your therapist",
    ),
    # How often, how long
    "exercise-number": ("Exercise {number} of {count}.", "Exercise {number} of {count}"),
    "dose.many": (
        "Do this {repetitions} times. Hold for {hold_s} seconds each time. I count for you.",
        "{repetitions} holds of {hold_s} s",
    ),
    "dose.once": (
        "Do this once. Hold for {hold_s} seconds. I count for you.",
        "1 hold of {hold_s} s",
    ),
    "dose.many-short": (
        "Do this {repetitions} times. Hold for one second each time.",
        "{repetitions} holds of 1 s",
    ),
    "dose.once-short": ("Do this once. Hold for one second.", "1 hold of 1 s"),
    # The hold
    "hold": ("Hold.", "Hold"),
    "number.halfway": ("Halfway.", "Halfway"),
    "number.10": ("Ten seconds.", "10 s left"),
    "number.5": ("Five.", "5"),
    "number.4": ("Four.", "4"),
    "number.3": ("Three.", "3"),
    "number.2": ("Two.", "2"),
    "number.1": ("One.", "1"),
    "rest": ("And rest. Let your arm come back slowly.", "Rest: let it come back slowly"),
    "count": ("{done} of {asked}. You held the full time.", "{done} of {asked}"),
    "count-steady": ("{done} of {asked}. Full time, and steady.", "{done} of {asked}, steady"),
    "count-last": (
        "That was the last one. All {asked} holds are done.",
        "{asked} of {asked}: done",
    ),
    "count-only": ("That was it. You held the full time.", "1 of 1: done"),
    "again": (
        "When you are ready, go again. This is hold {next} of {asked}.",
        "Ready? Hold {next} of {asked}",
    ),
    "let-go": (
        "You held for {held_s} seconds. That is all right. Try again when you are ready.",
        "{held_s} s held. Try again when ready",
    ),
    "let-go-short": (
        "That was a short one. That is all right. Try again when you are ready.",
        "Short hold. Try again when ready",
    ),
    "lost-hold": (
        "I lost sight of your arm, so this hold has ended. Try again when you are ready.",
        "Lost sight: hold ended, try again",
    ),
    "broken-hold": (
        "The laptop stood still for a while, so this hold does not count. Get into place again: I "
        "begin to count in a few seconds.",
        "Laptop stood still: hold again soon",
    ),
    "sight.lost": ("The clock is waiting. I cannot measure right now.", "Clock is waiting"),
    "sight.found": ("The clock runs again. Keep holding.", "Clock runs: keep holding"),
    "ease-off": (
        "Ease off a little. That is further than your therapist asked for.",
        "Ease off a little",
    ),
}
