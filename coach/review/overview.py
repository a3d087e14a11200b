"""All that one patient's page shows: the report, hints to weigh, and what else is known."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from coach.domain.practice import Episode, PatientRecords
from coach.domain.session import SessionDocument
from coach.review.chart_context import treatment_words
from coach.review.cohort import Standing, standing
from coach.review.cohort_reasons import concern_words
from coach.review.counts import sessions_counted, sittings_counted
from coach.review.course import course_of
from coach.review.findings_beside import Lines
from coach.review.hints import Hint, hints
from coach.review.history import Series
from coach.review.practice_records import NO_RECORDS
from coach.review.report import Report, report
from coach.review.sittings import Sitting
from coach.review.verdict_wording import irritability_words, phase_words
from coach.review.wording import NO_NAMES, day, listed, side_word
from coach.texts import translate

_MOST_OF_ONE = 2


def visit_method() -> str:
    """Say how the figures that the report lacks were made."""
    return translate(
        "review",
        "Since a visit: the mean of up to a week of sessions, the last ones against the last ones "
        "up to it. By week: the median of all slopes between the weeks' medians, with its 95 % "
        "interval (Theil and Sen). Days of treatments, measures, scores and plans count as visits.",
    )


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

    @property
    def series(self) -> tuple[Series, ...]:
        """What was measured, as the report's rows have it."""
        return tuple(row.series for row in self.report.rows)


def overview(
    documents: Sequence[SessionDocument],
    today: date,
    records: PatientRecords = NO_RECORDS,
    doubts: Sequence[str] = (),
    names: Mapping[str, str] = NO_NAMES,
) -> Overview:
    """Put together what is known of one patient on a day.

    ``doubts`` are the sentences of the doubtful sessions among them; ``names`` are those of the
    catalogue's exercises by their slugs.
    """
    course = course_of(documents)
    measured = [s for s in course.sittings if s.seen is not None]
    lines = [(translate("review", "Poorly measured"), _poor(measured))] if measured else []
    if doubts:
        told = translate("review", "{sessions}: {doubt}")
        told = told.format(sessions=sessions_counted(len(doubts)), doubt=doubts[-1])
        lines.append((translate("review", "Doubtful"), told))
    if records.episode:
        lines.append((translate("review", "Episode"), _episode(records.episode)))
    treatments = "; ".join(treatment_words(t) for t in records.treatments)
    none = translate("review", "none written down")
    lines.append((translate("review", "Treatments"), treatments or none))
    found = report(course, until=today, printed_on=today, records=records)
    return Overview(
        found,
        _reasons(standing(found.patient_code, course, today, names)),
        hints(course, records),
        tuple(lines),
    )


def _reasons(standing: Standing) -> tuple[str, ...]:
    """Give the sentences; of more than two with one concern only how many, as the rows say more."""
    found: list[str] = []
    for concern in dict.fromkeys(reason.concern for reason in standing.reasons):
        of_one = [r.sentence for r in standing.reasons if r.concern is concern]
        if len(of_one) > _MOST_OF_ONE:
            words = concern_words(concern)
            told = translate("review", "{concern} in {count} rows of the table.")
            words = words[0].upper() + words[1:]
            of_one = [told.format(concern=words, count=len(of_one))]
        found += of_one
    return tuple(found)


def _poor(measured: Sequence[Sitting]) -> str:
    poor = [s for s in measured if s.poor]
    of = sittings_counted(len(measured))
    if not poor:
        return translate("review", "none of {sittings}").format(sittings=of)
    return translate("review", "{poor} of {sittings}; on {day} {what}").format(
        poor=len(poor), sittings=of, day=day(poor[-1].at.date()), what=listed(poor[-1].poor)
    )


def _episode(episode: Episode) -> str:
    side = translate("review", "{side}, since {day}")
    parts = [side.format(side=side_word(episode.side), day=day(episode.began_on))]
    if episode.phase:
        phase = translate("review", "phase {phase_words}")
        parts.append(phase.format(phase_words=phase_words(episode.phase)))
    if episode.irritability:
        irritable = translate("review", "{irritability} irritability")
        parts.append(irritable.format(irritability=irritability_words(episode.irritability)))
    said, goals = ", ".join(parts), " ".join(episode.goals.split())
    if not goals:
        return said
    return translate("review", "{course}. Goals: {goals}").format(course=said, goals=goals)
