"""All that one patient's page shows: the report, hints to weigh, and what else is known."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from coach.domain.practice import Episode, PatientRecords
from coach.domain.session import SessionDocument
from coach.review.chart_context import treatment_words
from coach.review.cohort import Standing, standing
from coach.review.findings import Lines
from coach.review.hints import Hint, hints
from coach.review.practice_records import NO_RECORDS
from coach.review.report import Report, report
from coach.review.sittings import Sitting, sittings
from coach.review.wording import SIDES, counted, day, listed

METHOD = (
    "Since a visit: the mean of up to a week of sessions, the last ones against the last ones up "
    "to it. By week: the median of all slopes between the weeks' medians, with its 95 % interval "
    "(Theil and Sen). Days of treatments, measures, scores and plans count as visits."
)

_MOST_OF_ONE = 2


@dataclass(frozen=True, slots=True)
class Overview:
    """A patient on one page: why to look at them, and all there is to see.

    ``reasons`` are those of the list of patients, the most pressing first; ``lines`` follow the
    report's facts.
    """

    report: Report
    reasons: tuple[str, ...]
    hints: tuple[Hint, ...]
    lines: Lines


def overview(
    documents: Sequence[SessionDocument],
    today: date,
    records: PatientRecords = NO_RECORDS,
    doubts: Sequence[str] = (),
) -> Overview:
    """Put together what is known of one patient on a day.

    ``doubts`` are the sentences of the doubtful sessions among them.
    """
    measured = [s for s in sittings(documents) if s.seen is not None]
    lines = [("Poorly measured", _poor(measured))] if measured else []
    if doubts:
        lines.append(("Doubtful", f"{counted(len(doubts), 'session')}: {doubts[-1]}"))
    if records.episode:
        lines.append(("Episode", _episode(records.episode)))
    treatments = "; ".join(treatment_words(t) for t in records.treatments)
    lines.append(("Treatments", treatments or "none written down"))
    found = report(documents, until=today, printed_on=today, records=records)
    return Overview(
        found,
        _reasons(standing(found.patient_code, documents, today)),
        hints(documents, records),
        tuple(lines),
    )


def _reasons(standing: Standing) -> tuple[str, ...]:
    """Give the sentences; of more than two with one concern only how many, as the rows say more."""
    found: list[str] = []
    for concern in dict.fromkeys(reason.concern for reason in standing.reasons):
        of_one = [r.sentence for r in standing.reasons if r.concern is concern]
        if len(of_one) > _MOST_OF_ONE:
            of_one = [f"{concern.value.capitalize()} in {len(of_one)} rows of the table."]
        found += of_one
    return tuple(found)


def _poor(measured: Sequence[Sitting]) -> str:
    poor = [s for s in measured if s.poor]
    of = counted(len(measured), "sitting")
    if not poor:
        return f"none of {of}"
    return f"{len(poor)} of {of}; on {day(poor[-1].at.date())} {listed(poor[-1].poor)}"


def _episode(episode: Episode) -> str:
    parts = [f"{SIDES[episode.side]}, since {day(episode.began_on)}"]
    if episode.phase:
        parts.append(f"phase {episode.phase}")
    if episode.irritability:
        parts.append(f"{episode.irritability} irritability")
    goals = " ".join(episode.goals.split())
    return ", ".join(parts) + (f". Goals: {goals}" if goals else "")
