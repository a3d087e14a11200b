"""The pose model, and beside it the search for the printed card."""

from __future__ import annotations

from dataclasses import replace

from coach.capture.card_watch import CardWatch
from coach.domain.frame import Frame
from coach.domain.pose import Pose, PoseModel
from coach.ports import CardFinder, PoseEstimator
from coach.pose import estimator as pose_model
from coach.pose.switching import Switching


class WithCard:
    """A ``PoseEstimator`` whose poses carry the printed card where it is seen."""

    def __init__(self, estimator: PoseEstimator, finder: CardFinder) -> None:
        """Join both; one for each film."""
        self._estimator = estimator
        self._finder = finder

    @property
    def model_sha256(self) -> str:
        """What the model's bundle hashes to."""
        return self._estimator.model_sha256

    @property
    def notes(self) -> tuple[str, ...]:
        """Sentences about the card that a person should know, so far."""
        return self._finder.notes

    def estimate(self, frame: Frame) -> Pose | None:
        """Give the followed person's pose, None if nobody is seen."""
        pose = self._estimator.estimate(frame)
        card = None if pose is None else self._finder.find(frame, pose)
        return pose if pose is None or card is None else replace(pose, card=card)

    def close(self) -> None:
        """Free the model; may be called twice."""
        self._estimator.close()


class Adapting(WithCard):
    """The same, ``Adaptable``."""

    def __init__(self, estimator: Switching, finder: CardFinder) -> None:
        """Join both; one for each film."""
        super().__init__(estimator, finder)
        self._switching = estimator

    @property
    def model(self) -> PoseModel:
        """The model that sees the next frame."""
        return self._switching.model

    def use(self, model: PoseModel) -> None:
        """See the next frame with this model; stays as it is where that one cannot be had."""
        self._switching.use(model)


def open_estimator(
    field_of_view_deg: float | None = None, model: PoseModel = PoseModel.FULL
) -> WithCard:
    """Load a pose model, which stays; raises ``Fault`` where it cannot be.

    The horizontal field of view of the camera is for the card, None where it is not known.
    """
    return WithCard(pose_model.open_estimator(model=model), CardWatch(field_of_view_deg))


def open_adapting(field_of_view_deg: float | None = None) -> Adapting:
    """Load the full pose model, which may make way for the small one on a slow machine."""
    return Adapting(Switching(), CardWatch(field_of_view_deg))
