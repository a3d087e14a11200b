"""Follows one person through a film and counts the others."""

from __future__ import annotations

from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from coach.domain.frame import Frame
from coach.domain.pose import Pose, PoseModel
from coach.pose.body import LEAP_WITHIN_S, Body, brightness, is_somebody_else, leapt, without
from coach.pose.bundle import find_bundle, read_bundle
from coach.pose.figure import draw_figure
from coach.pose.landmarker import Landmarker, MediaPipeLandmarker
from coach.pose.quiet import without_remarks

LOOK_AROUND_S = 1.0
"""Seconds of the film between two looks for other people."""
STRANGER_S = 3.0
"""After so many seconds somebody else who is still followed counts as the person."""
_LARGER = 1.1
_FIRST_MS = 1000  # leaves room for the stamps of the run-in


class Following:
    """A ``PoseEstimator`` that follows one person; one for each film, used by one thread.

    Who is followed when several are in view:

    - At the start, and whenever nobody was followed in the frame before, the one with the longest
      trunk in the picture, hence mostly the nearest; the one the model found first where two are
      alike within a tenth.
    - From then on the same one from frame to frame, however many others there are.
    - Where the points leap within 0.3 s by more than 0.7 trunk lengths, or the trunk's length by
      more than 40 %, somebody else was taken. The person is looked for where they were, and
      followed again if found. Otherwise the poses carry ``another_person`` until the points are
      back, or nobody is followed, or 3 s have passed: then whoever is followed is the person.

    Others are looked for once a second of the film with the followed one painted over; people
    behind or within the followed one's box are not seen. The outcome depends on the frames and
    their stamps alone.
    """

    def __init__(
        self,
        film: Landmarker,
        still: Landmarker,
        model_sha256: str,
        model: PoseModel = PoseModel.FULL,
    ) -> None:
        """Take a landmarker that follows one person, and one that finds several."""
        self.model, self.model_sha256 = model, model_sha256
        self._film = film
        self._still = still
        self._stamp_ms = _FIRST_MS - 1
        self._last: tuple[float, Body] | None = None
        self._lost: tuple[float, Body] | None = None
        self._people = 1
        self._next_look_s = 0.0

    def estimate(self, frame: Frame) -> Pose | None:
        """Give the followed person's pose, None if nobody is seen."""
        body = self._follow(frame.image_rgb, frame.time_s)
        if body is None:
            self._last = self._lost = None
            return None
        if self._last is None:
            body = self._choose(frame, body)
        elif self._leapt(frame.time_s, body):
            body = self._recover(frame, body, self._lost or self._last)
        elif frame.time_s >= self._next_look_s:
            if self._lost is not None:
                body = self._recover(frame, body, self._lost)
            else:
                self._look_around(frame, body)
        self._settle(frame.time_s, body)
        self._last = (frame.time_s, body)
        return Pose(
            time_s=frame.time_s,
            size_px=frame.size_px,
            image_px=body.image_px,
            world_m=body.world_m,
            visibility=body.visibility,
            people=self._people,
            brightness=brightness(frame.image_rgb, body),
            another_person=self._lost is not None,
            model=self.model,
        )

    def close(self) -> None:
        """Free the model; may be called twice."""
        self._film.close()
        self._still.close()

    def _follow(self, image_rgb: NDArray[np.uint8], time_s: float) -> Body | None:
        self._stamp_ms = max(round(time_s * 1000) + _FIRST_MS, self._stamp_ms + 1)
        return next(iter(self._film.find(image_rgb, self._stamp_ms)), None)

    def _look_around(self, frame: Frame, body: Body) -> list[Body]:
        found = self._still.find(without(frame.image_rgb, [body]), 0)
        others = [other for other in found if is_somebody_else(other, body)]
        self._people = 1 + len(others)
        self._next_look_s = frame.time_s + LOOK_AROUND_S
        return others

    def _choose(self, frame: Frame, body: Body) -> Body:
        others = self._look_around(frame, body)
        largest = max(others, key=lambda other: other.trunk_length_px, default=body)
        if largest.trunk_length_px <= _LARGER * body.trunk_length_px:
            return body
        rest = [body, *(other for other in others if other is not largest)]
        return self._turn_to(frame, largest, rest) or body

    def _leapt(self, time_s: float, body: Body) -> bool:
        if self._last is None or time_s - self._last[0] >= LEAP_WITHIN_S:
            return False
        return leapt(self._last[1], body)

    def _recover(self, frame: Frame, body: Body, known: tuple[float, Body]) -> Body:
        others = self._look_around(frame, body)
        if not leapt(known[1], body):
            return body
        person = next((other for other in others if not leapt(known[1], other)), None)
        if person is not None:
            rest = [body, *(other for other in others if other is not person)]
            if (again := self._turn_to(frame, person, rest)) is not None:
                return again
        if self._lost is None:
            self._lost = (frame.time_s, known[1])
        return body

    def _turn_to(self, frame: Frame, person: Body, others: list[Body]) -> Body | None:
        """Make the film's landmarker let go of its person and take up the given one."""
        self._follow(np.full_like(frame.image_rgb, 128), frame.time_s)
        found = self._follow(without(frame.image_rgb, others), frame.time_s)
        return found if found is not None and not leapt(person, found) else None

    def _settle(self, time_s: float, body: Body) -> None:
        if self._lost is None:
            return
        since_s, person = self._lost
        if time_s - since_s >= STRANGER_S or not leapt(person, body):
            self._lost = None


def open_estimator(bundle: Path | None = None, model: PoseModel = PoseModel.FULL) -> Following:
    """Load the pose model, verify it, and run it in.

    ``bundle`` is another bundle than the installed one, with its manifest beside it. Takes one
    to two seconds, most of it the import of MediaPipe. Raises ``Fault`` if the model is missing,
    not the expected one, or does not start.
    """
    read = read_bundle(bundle if bundle is not None else find_bundle(model))
    with without_remarks():
        film = MediaPipeLandmarker(read, film=True, people=1, confidence=0.5)
        # Surer than the film's: on a photograph, 0.5 found one person twice.
        still = MediaPipeLandmarker(read, film=False, people=2, confidence=0.6)
        figure = draw_figure()
        film.find(figure, 0)
        film.find(np.full_like(figure, 128), 1)  # and forget it
        still.find(figure, 0)
    return Following(film, still, read.sha256, model)
