"""When the pose model is asked, and whether anybody is there."""

from __future__ import annotations

from coach.domain.frame import Frame
from coach.domain.looked import Looked
from coach.domain.moment import Stage
from coach.ports import PoseEstimator

LOOK_GAP_S = 0.2
"""How often somebody is looked at who only may raise a hand: five times a second tell a raise, and
leave the laptop cool."""
DESERTED_S = 2.0
"""Where nobody was in view for so long, somebody is looked for as seldom as for a raised hand."""


class Looking:
    """Looks at frames, and notices where nobody is there any longer.

    ``look`` may run in a thread of its own, while what it gave for the frame before is ``seen``;
    all else is of the other thread.
    """

    def __init__(self, estimator: PoseEstimator, started_s: float) -> None:
        """Begin at frame stamp ``started_s`` with somebody there."""
        self.deserted = False
        self._estimator = estimator
        self._seen_s = started_s
        self._looked_s = float("-inf")

    def look(self, frame: Frame, stage: Stage, now_s: float) -> Looked:
        """Ask the model about a frame, where somebody is to be looked for in this stage now."""
        due = stage is not Stage.FINISHED and now_s - self._looked_s >= LOOK_GAP_S
        if not (due or self.at_work(stage)):
            return Looked(frame, asked=False)
        self._looked_s = now_s
        return Looked(frame, self._estimator.estimate(frame))

    def seen(self, looked: Looked, now_s: float) -> None:
        """Take in who was seen in a frame about which the model was asked."""
        if looked.pose is not None:
            self._seen_s = now_s
        self.deserted = now_s - self._seen_s >= DESERTED_S

    def at_work(self, stage: Stage) -> bool:
        """Whether every frame counts in this stage."""
        return stage in (Stage.EXERCISE, Stage.PREPARE) and not self.deserted
