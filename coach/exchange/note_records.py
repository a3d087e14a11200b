"""What the practice wrote down of a patient, as lines of a visit's note."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from coach.domain.practice import PatientRecords
from coach.review.history import Series
from coach.review.records import line_of
from coach.review.wording import SIDES, day


def told(records: PatientRecords) -> Iterator[str]:
    """Give what the person said: course, goals, and the last total of each questionnaire."""
    episode = records.episode
    if episode is not None:
        yield f"{SIDES[episode.side].capitalize()} shoulder, since {day(episode.began_on)}"
        if episode.goals:
            yield f"Goals: {episode.goals}"
        if episode.note:
            yield f"Of the episode: {episode.note}"
    for score in {score.name: score for score in records.scores}.values():
        line = line_of(score)
        yield f"{line.what}: {line.value} ({line.on})"


def by_hand(records: PatientRecords, series: Sequence[Series]) -> Iterator[str]:
    """Give the last goniometer reading of each movement beside the camera's nearest value."""
    last = {(m.movement, m.side, m.passive): m for m in records.by_hand}
    for measure in last.values():
        line = line_of(measure, series)
        yield f"By goniometer, {line.what}: {line.value} ({line.on}); {line.beside}"


def treated(records: PatientRecords) -> Iterator[str]:
    """Give the treatments beside the exercises."""
    for treatment in records.treatments:
        line = line_of(treatment)
        text = f": {line.beside}" if line.beside else ""
        yield f"{line.what}, {line.on}{text}"
