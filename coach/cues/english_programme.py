"""The English sentences of a whole programme: getting ready, signals, form, pain by hand, offers.

For someone who cannot see the screen. That holds are praised for time and form, never for pain, is
common practice.
"""

from __future__ import annotations

_NUMBERS = ("Zero", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine", "Ten")

PROGRAMME: dict[str, tuple[str, str]] = {
    # Signals of the other hand
    "start-by-hand": (
        "To begin, press the space bar, or raise your good hand and keep it up.",
        "Space bar, or good hand up: begin",
    ),
    "signals": (
        "Raise your good hand straight up to pause. Raise it again to go on. Keep it up for five "
        "seconds to stop.",
        "Good hand up: pause. Kept up: stop",
    ),
    "paused-by-hand": (
        "Paused. Let your arm rest. Raise your good hand to go on.",
        "Paused. Good hand up: go on",
    ),
    # Getting ready
    "arm.left": ("This one is for your left arm.", "Left arm"),
    "arm.right": ("This one is for your right arm.", "Right arm"),
    "new-exercise": ("This exercise is new for you.", "New for you"),
    "in-place": ("You are in place. Begin when you are ready.", "In place: begin when ready"),
    "timed-lead": (
        "Get into place now. I begin to count in a few seconds.",
        "Get into place: counting soon",
    ),
    # Form
    "form.trunk-leans": (
        "Your body is leaning. Come back upright, even if the arm then goes less far.",
        "Body leans: come back upright",
    ),
    "form.trunk-leans.lying": (
        "Your body is tilting. Lie straight again, even if the arm then goes less far.",
        "Body tilts: lie straight",
    ),
    "form.trunk-turns": (
        "Your body is turning. Keep your chest still, even if the arm then goes less far.",
        "Body turns: keep the chest still",
    ),
    "form.shoulder-rises": (
        "Your shoulder is creeping up. Let it sink away from your ear.",
        "Shoulder creeps up: let it sink",
    ),
    "form.elbow-bends": (
        "Your elbow is bending. Make it as straight as you can.",
        "Elbow bends: straighten it",
    ),
    "form.elbow-straightens": (
        "Your elbow is opening. Bend it to a right angle again.",
        "Elbow opens: bend it again",
    ),
    "form.elbow-drifts": (
        "Your elbow is moving away. Bring it back to its place.",
        "Elbow drifts: bring it back",
    ),
    "form.mended": ("Good, that is straight again.", "Straight again"),
    "wrong-arm.left": (
        "That is the other arm. This exercise is for your left arm.",
        "Other arm: use the left one",
    ),
    "wrong-arm.right": (
        "That is the other arm. This exercise is for your right arm.",
        "Other arm: use the right one",
    ),
    "slowly": ("Slowly. Take your time to get there.", "Slowly"),
    # Pain by hand
    "pain-by-hand": (
        "I count up. Raise your good hand when you hear your number.",
        "Good hand up at your number",
    ),
    **{f"pain.{n}": (f"{word}.", f"{n}") for n, word in enumerate(_NUMBERS)},
    "pain-chosen": (
        "You chose {number}. If that is wrong, raise your good hand again.",
        "{number} chosen. Wrong? Good hand up",
    ),
    "pain-unanswered": (
        "I go on without a number. Stop if it hurts more than you agreed.",
        "Going on without a number",
    ),
    "pain-stop": (
        "That is a lot of pain, so we stop for today. Rest your arm, and ring your practice before "
        "you exercise again.",
        "Stop for today, ring your practice",
    ),
    # An easier one
    "offer": (
        "That is more pain than your therapist wants, so this exercise stops here. There is an "
        "easier one. Raise your good hand to try it. Otherwise we go on without it.",
        "Too much pain. Easier one: good hand up",
    ),
}
