"""A frame and who was seen in it."""

from __future__ import annotations

from dataclasses import dataclass

from coach.domain.frame import Frame
from coach.domain.pose import Pose, PoseModel


@dataclass(frozen=True, slots=True)
class Looked:
    """``pose`` is None where nobody was seen, and where the ``model`` was not ``asked``."""

    frame: Frame
    pose: Pose | None = None
    asked: bool = True
    model: PoseModel = PoseModel.FULL
