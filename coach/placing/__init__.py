"""Poses in, the one thing to change before an exercise out; pure."""

from coach.placing.placing import Placing, advance, begin
from coach.placing.room import no_room
from coach.placing.wrong_arm import WrongArm, watch

__all__ = ["Placing", "WrongArm", "advance", "begin", "no_room", "watch"]
