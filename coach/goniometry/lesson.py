"""Learning the body anew in small parts, one for each frame of a live loop.

A lesson costs several times a frame's own fit. The frames that it is learned from are eliminated a
few at a time, which gives the same sums, so no picture waits for it.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from coach.goniometry.body import Body
from coach.goniometry.evidence import Evidence
from coach.goniometry.expectation import Expectation
from coach.goniometry.newton import Eliminated, eliminate, stepped
from coach.goniometry.residuals import Problem
from coach.goniometry.skeleton import Stance

STEPS = 3
"""The body and the stances are nearly right already."""
PART_FRAMES = 6


@dataclass(frozen=True, slots=True, eq=False)
class Lesson:
    """A relearning on its way; immutable."""

    problem: Problem = field(repr=False)
    parts: tuple[Eliminated, ...] = field(default=(), repr=False)
    steps: int = 0

    @classmethod
    def begin(
        cls, evidence: Evidence, expectation: Expectation, body: Body, start: Stance
    ) -> Lesson:
        """Begin at the body and the stances as they are known."""
        return cls(Problem.begin(evidence, expectation, body, start))

    @property
    def learned(self) -> Body | None:
        """The body, once the lesson is over."""
        return self.problem.body if self.steps == STEPS else None

    def advanced(self) -> Lesson:
        """Look at the next ``PART_FRAMES`` frames, of one step or of several short ones."""
        lesson, left = self, PART_FRAMES
        while left > 0 and lesson.learned is None:
            lesson, looked_at = lesson._looked(left)
            left -= looked_at
        return lesson

    def _looked(self, most: int) -> tuple[Lesson, int]:
        """Look at so many frames of this step at most; gives at how many."""
        first = sum(len(part.step) for part in self.parts)
        some = self.problem[first : first + most]
        parts = (*self.parts, eliminate(some, learning=True, begun=self.steps > 0))
        looked_at = len(some.evidence)
        if first + looked_at < len(self.problem.evidence):
            return replace(self, parts=parts), looked_at
        problem = stepped(self.problem, Eliminated.joined(parts), learning=True)
        return Lesson(problem, (), self.steps + 1), looked_at
