"""One patient's sessions as several readers need them, each reading worked out once."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

from coach.domain.session import SessionDocument
from coach.review.adherence import exercised
from coach.review.change import Summary, summary
from coach.review.history import Series, history, in_order
from coach.review.sittings import Sitting, sittings


@dataclass(frozen=True)
class Course:
    """One patient's sessions, oldest first."""

    ordered: tuple[SessionDocument, ...]

    @cached_property
    def series(self) -> tuple[Series, ...]:
        """See ``history``."""
        return history(self.ordered)

    @cached_property
    def summaries(self) -> tuple[Summary | None, ...]:
        """One for each of ``series``, without the other side."""
        return tuple(map(summary, self.series))

    @cached_property
    def sittings(self) -> tuple[Sitting, ...]:
        """One for each session."""
        return sittings(self.ordered)

    @cached_property
    def worked(self) -> Course:
        """Only the sessions in which something was held."""
        kept = tuple(filter(exercised, self.ordered))
        return self if len(kept) == len(self.ordered) else Course(kept)


def course_of(documents: Sequence[SessionDocument] | Course) -> Course:
    """Give the course of one patient's sessions, in any order; a course stays what it is."""
    return documents if isinstance(documents, Course) else Course(in_order(documents))
