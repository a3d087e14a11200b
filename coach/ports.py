"""What the core asks of the outside world."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Literal, Protocol, runtime_checkable

from coach.domain.frame import Frame
from coach.domain.pose import Card, Pose, PoseModel


class FrameSource(Protocol):
    """A camera or a video file, already open.

    Iterating yields frames in time order until the source ends; faults raise
    ``coach.domain.fault.Fault`` with one sentence.
    """

    @property
    def kind(self) -> Literal["camera", "file"]:
        """Where the frames come from."""
        ...

    @property
    def size_px(self) -> tuple[int, int]:
        """Width and height of the upright frames."""
        ...

    @property
    def frames_per_s(self) -> float:
        """Nominal rate, 0 where it is not known."""
        ...

    @property
    def frame_count(self) -> int | None:
        """How many frames a file promises, often a guess; None for a camera."""
        ...

    @property
    def frames_lost(self) -> int:
        """Frames taken but never handed out, so far."""
        ...

    def __iter__(self) -> Iterator[Frame]:
        """Yield frames."""
        ...

    def close(self) -> None:
        """Let go of the device or file; may be called twice."""
        ...


class PoseEstimator(Protocol):
    """Finds one person's points in frames given in time order."""

    @property
    def model_sha256(self) -> str:
        """What the model's bundle hashes to."""
        ...

    def estimate(self, frame: Frame) -> Pose | None:
        """Give the followed person's pose, None if nobody is seen."""
        ...

    def close(self) -> None:
        """Free the model; may be called twice."""
        ...


@runtime_checkable
class Adaptable(Protocol):
    """A pose estimator that can change its model between two frames."""

    @property
    def model(self) -> PoseModel:
        """The model that sees the next frame."""
        ...

    def use(self, model: PoseModel) -> None:
        """See the next frame with this model; stays as it is where that one cannot be had."""
        ...


class CardFinder(Protocol):
    """Looks for the printed card on one person's chest, in frames given in time order."""

    @property
    def notes(self) -> tuple[str, ...]:
        """Sentences about the card that a person should know, so far."""
        ...

    def find(self, frame: Frame, pose: Pose) -> Card | None:
        """Give the card on the chest of ``pose``, None if it is not seen or not looked for."""
        ...
