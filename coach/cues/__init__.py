"""Events in, what to say and show out; pure."""

from coach.cues.happening import Happening
from coach.cues.hearing import Hearing, hear
from coach.cues.opening import question_s
from coach.cues.rules import Rules, advance

__all__ = ["Happening", "Hearing", "Rules", "advance", "hear", "question_s"]
