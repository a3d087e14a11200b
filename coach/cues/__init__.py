"""Events in, what to say and show out; pure."""

from coach.cues.happening import Happening
from coach.cues.opening import introduction_s, question_s
from coach.cues.rules import Rules, advance

__all__ = ["Happening", "Rules", "advance", "introduction_s", "question_s"]
