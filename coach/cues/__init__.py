"""Events in, what to say and show out; pure."""

from coach.cues.happening import Happening
from coach.cues.rules import Rules, advance

__all__ = ["Happening", "Rules", "advance"]
