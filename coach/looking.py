"""When which pose model is asked, and whether anybody is there."""

from __future__ import annotations

from coach.domain.frame import Frame
from coach.domain.looked import Looked
from coach.domain.moment import Stage
from coach.domain.plan import PlannedExercise
from coach.domain.pose import PoseModel
from coach.ports import Adaptable, PoseEstimator
from coach.tempo import Tempo, model_for

LOOK_GAP_S = 0.2
"""How often somebody is looked at who only may raise a hand: five times a second tell a raise, and
leave the laptop cool."""
DESERTED_S = 2.0
"""Where nobody was in view for so long, somebody is looked for as seldom as for a raised hand."""


class Looking:
    """Looks at frames, and notices where nobody is there any longer, or the machine is too slow.

    ``look`` may run in a thread of its own, while what it gave for the frame before is ``seen``;
    all else is of the other thread. The pose model changes while somebody gets ready and at no
    other time: ``choose`` asks for it, the next look does it, and until a frame was seen with it
    nothing is ``settled``.
    """

    def __init__(self, estimator: PoseEstimator, started_s: float) -> None:
        """Begin at frame stamp ``started_s`` with somebody there."""
        self.deserted = False
        self._estimator = estimator
        self._seen_s = started_s
        self._looked_s = float("-inf")
        self._adaptable = estimator if isinstance(estimator, Adaptable) else None
        self._model = self._wanted = self._present()
        self._sha256 = {self._model: estimator.model_sha256}
        self._began_with = self._model
        self._refused = False
        self._tempo = Tempo()

    def _present(self) -> PoseModel:
        return PoseModel.FULL if self._adaptable is None else self._adaptable.model

    def look(self, frame: Frame, stage: Stage, now_s: float) -> Looked:
        """Ask the model about a frame, where somebody is to be looked for in this stage now."""
        due = stage is not Stage.FINISHED and now_s - self._looked_s >= LOOK_GAP_S
        if not (due or self.at_work(stage)):
            return Looked(frame, asked=False)
        self._looked_s = now_s
        if stage is Stage.PREPARE:
            self._change()
        return Looked(frame, self._estimator.estimate(frame), model=self._present())

    def _change(self) -> None:
        wanted = self._wanted
        if self._adaptable is None or self._refused or wanted is self._adaptable.model:
            return
        self._adaptable.use(wanted)
        self._refused = self._adaptable.model is not wanted
        self._sha256[self._adaptable.model] = self._estimator.model_sha256

    def seen(self, looked: Looked, now_s: float, stage: Stage, frames_lost: int) -> None:
        """Take in who was seen in a frame about which the model was asked."""
        if looked.pose is not None:
            self._seen_s = now_s
        self.deserted = now_s - self._seen_s >= DESERTED_S
        if looked.model is not self._model:
            self._model, self._tempo = looked.model, Tempo()
        counts = self.at_work(stage)
        time_s = looked.frame.time_s
        measured = self._tempo.measured(time_s, frames_lost) if counts else None
        self._tempo = measured or self._tempo.interrupted()

    def choose(self, planned: PlannedExercise) -> None:
        """Have the pose model changed where another one is better for what is about to begin."""
        if self._adaptable is not None and self.settled and not self._refused:
            self._wanted = model_for(planned, self._model, self._tempo)

    @property
    def settled(self) -> bool:
        """Whether no change of the pose model is on its way."""
        return self._refused or self._wanted is self._model

    @property
    def other_sha256(self) -> str | None:
        """The hash of the pose model that sees now, None where the sitting began with it."""
        return None if self._model is self._began_with else self._sha256[self._model]

    def at_work(self, stage: Stage) -> bool:
        """Whether every frame counts in this stage."""
        return stage in (Stage.EXERCISE, Stage.PREPARE) and not self.deserted
