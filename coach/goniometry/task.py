"""What is measured."""

from __future__ import annotations

from dataclasses import dataclass

from coach.domain.movement import Movement, Position, Side, View
from coach.domain.reading import Doubt
from coach.goniometry.camera import Pinhole
from coach.goniometry.expectation import Expectation
from coach.goniometry.gates import doubt_of
from coach.goniometry.interval import measures
from coach.goniometry.sight import Sight


@dataclass(frozen=True, slots=True)
class Task:
    """What is measured: a movement of one shoulder, in a position, from a view."""

    movement: Movement
    side: Side
    view: View
    position: Position
    field_of_view_deg: float | None = None

    @property
    def expectation(self) -> Expectation:
        """What it leads one to expect."""
        return Expectation.of(self.movement, self.side, self.position, self.view)

    def camera(self, sight: Sight) -> Pinhole:
        """Give the camera that took a pose."""
        return Pinhole.of(sight.pose.size_px, self.field_of_view_deg)

    def doubt_of(self, sight: Sight) -> Doubt | None:
        """Give the first reason not to measure a pose."""
        doubt = doubt_of(sight, self.movement, self.view, self.position)
        if doubt is None and not measures(
            sight.pose.model, self.movement, self.position, self.view
        ):
            return Doubt.ERROR_NOT_KNOWN
        return doubt
