"""Changes the pose model between two frames."""

from __future__ import annotations

from collections.abc import Callable

from coach.domain.fault import Fault
from coach.domain.frame import Frame
from coach.domain.pose import Pose, PoseModel
from coach.pose.estimator import Following, open_estimator


def _opened(model: PoseModel) -> Following:
    return open_estimator(model=model)


class Switching:
    """A ``PoseEstimator`` that is ``Adaptable``; one for each film, used by one thread.

    With another model the person is looked for anew. A model is loaded when it is asked for, which
    takes a few tenths of a second, and the one before is freed.
    """

    def __init__(self, open_model: Callable[[PoseModel], Following] = _opened) -> None:
        """Begin with the full model; raises ``Fault`` where it cannot be had."""
        self._open_model = open_model
        self._following = open_model(PoseModel.FULL)

    @property
    def model(self) -> PoseModel:
        """The model that sees the next frame."""
        return self._following.model

    @property
    def model_sha256(self) -> str:
        """What its bundle hashes to."""
        return self._following.model_sha256

    def estimate(self, frame: Frame) -> Pose | None:
        """Give the followed person's pose, None if nobody is seen."""
        return self._following.estimate(frame)

    def use(self, model: PoseModel) -> None:
        """See the next frame with this model; stays as it is where that one cannot be had."""
        if model is self.model:
            return
        try:
            following = self._open_model(model)
        except Fault:  # slow is better than nothing: the one that works goes on
            return
        self._following.close()
        self._following = following

    def close(self) -> None:
        """Free the model; may be called twice."""
        self._following.close()
