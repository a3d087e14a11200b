"""What the practice wrote down of a patient, as lines of a visit's note."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from coach.domain.movement import Side
from coach.domain.practice import PatientRecords
from coach.review.history import Series
from coach.review.records import line_of
from coach.review.wording import day
from coach.texts import translate


def told(records: PatientRecords) -> Iterator[str]:
    """Give what the person said: course, goals, and the last total of each questionnaire."""
    episode = records.episode
    if episode is not None:
        if episode.side is Side.LEFT:
            yield translate("note", "Left shoulder, since {day}").format(day=day(episode.began_on))
        else:
            yield translate("note", "Right shoulder, since {day}").format(day=day(episode.began_on))
        if episode.goals:
            yield translate("note", "Goals: {goals}").format(goals=episode.goals)
        if episode.note:
            yield translate("note", "Of the episode: {note}").format(note=episode.note)
    for score in {score.name: score for score in records.scores}.values():
        line = line_of(score)
        yield f"{line.what}: {line.value} ({line.on})"


def by_hand(records: PatientRecords, series: Sequence[Series]) -> Iterator[str]:
    """Give the last goniometer reading of each movement beside the camera's nearest value."""
    last = {(m.movement, m.side, m.passive): m for m in records.by_hand}
    for measure in last.values():
        line = line_of(measure, series)
        yield translate("note", "By goniometer, {what}: {value} ({on}); {beside}").format(
            what=line.what, value=line.value, on=line.on, beside=line.beside
        )


def treated(records: PatientRecords) -> Iterator[str]:
    """Give the treatments beside the exercises."""
    for treatment in records.treatments:
        line = line_of(treatment)
        text = f": {line.beside}" if line.beside else ""
        yield f"{line.what}, {line.on}{text}"
