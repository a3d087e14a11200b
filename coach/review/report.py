"""What the one-page report says, as data; ``coach.desktop.shared.report_page`` paints it.

It states what was measured and what was done. It names no disease and gives no advice: that is
the therapist's.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from coach.domain.fault import Fault
from coach.domain.plan import PlannedExercise
from coach.domain.practice import PatientRecords
from coach.domain.session import SessionDocument
from coach.review.adherence import Adherence, adherence
from coach.review.change import Summary, Verdict
from coach.review.chart import Chart, chart
from coach.review.chart_context import in_context
from coach.review.course import Course, course_of
from coach.review.findings import findings
from coach.review.findings_beside import Lines
from coach.review.history import Series, started
from coach.review.notes import notes_on
from coach.review.practice_records import NO_RECORDS, last_visit, other_side_of
from coach.review.report_columns import method
from coach.review.report_facts import PainCourse, Quality, pain_course, quality_of
from coach.review.since_visit import since_visit
from coach.review.verdict_wording import verdict_words
from coach.review.wording import (
    NONE,
    change_with_error,
    day,
    least,
    listed,
    minutes,
    movement_of,
    percent,
    percent_with_error,
    period,
    reached,
)
from coach.texts import translate


@dataclass(frozen=True, slots=True)
class Row:
    """A line of the table: ``cells`` in the order of COLUMNS, from ``summary``.

    ``findings`` say more of it than the table has room for.
    """

    series: Series
    summary: Summary | None
    cells: tuple[str, ...]
    chart: Chart
    findings: Lines = ()


@dataclass(frozen=True, slots=True)
class Report:
    """Everything on the page."""

    patient_code: str
    title: str
    begin: date
    end: date
    printed_on: date | None
    sessions: int
    software: str
    rows: tuple[Row, ...]
    adherence: Adherence
    pain: PainCourse | None
    quality: Quality
    notes: tuple[str, ...]
    method: str

    @property
    def period(self) -> str:
        """From the first session to the last."""
        return period(self.begin, self.end)

    @property
    def facts(self) -> Lines:
        """Name and text of what stands beside the table."""
        return (*self.done_facts, *self.seen_facts)

    @property
    def done_facts(self) -> Lines:
        """What was done and told."""
        done, dose = self.adherence, self.adherence.dose
        sessions = translate("review", "{done} done of {asked} asked for")
        holds = translate("review", "{done} completed of {asked}")
        time = translate("review", "{done} of {asked}, each hold up to the seconds asked")
        return (
            (
                translate("review", "Sessions"),
                sessions.format(done=done.done, asked=done.asked),
            ),
            (
                translate("review", "Holds"),
                holds.format(done=dose.holds_completed, asked=dose.holds_asked),
            ),
            (
                translate("review", "Hold time"),
                time.format(done=minutes(dose.held_s), asked=minutes(dose.asked_s)),
            ),
            (translate("review", "Pain 0\N{EN DASH}10"), self._pain),
        )

    @property
    def _pain(self) -> str:
        if self.pain is None:
            return translate("review", "not given")
        told = translate("review", "first {first}, last {last}, worst {worst} ({day})")
        pain = self.pain
        return told.format(
            first=pain.first, last=pain.last, worst=pain.worst, day=day(pain.worst_on)
        )

    @property
    def seen_facts(self) -> Lines:
        """How well it was seen and measured."""
        quality = self.quality
        seen = percent(quality.seen) if quality.seen is not None else NONE
        lost = percent(quality.lost) if quality.lost is not None else NONE
        camera = translate("review", "arm seen in {seen} of hold time, {lost} of frames lost")
        facts = [(translate("review", "Camera"), camera.format(seen=seen, lost=lost))]
        if quality.feigned:
            form = translate("review", "trunk leaned or turned in {share} of holds")
            facts.append((translate("review", "Form"), form.format(share=percent(quality.feigned))))
        if quality.files_refused:
            facts.append((translate("review", "Files refused"), str(quality.files_refused)))
        return tuple(facts)


def report(
    documents: Sequence[SessionDocument] | Course,
    *,
    until: date | None = None,
    printed_on: date | None = None,
    files_refused: int = 0,
    records: PatientRecords = NO_RECORDS,
) -> Report:
    """Write the report of one patient from their sessions, in any order.

    ``until`` is the day on which it is looked at; ``records`` are what the practice wrote down.
    """
    course = course_of(documents)
    ordered, series = course.ordered, course.series
    if not ordered:
        raise Fault(
            translate("faults", "There is no session to report on: import session files first.")
        )
    latest = ordered[-1]
    visit = last_visit(ordered, records, until)
    rows = tuple(
        _row(s, alone, ordered, records, visit)
        for s, alone in zip(series, course.summaries, strict=True)
    )
    dates = [started(d).date() for d in ordered]
    return Report(
        patient_code=latest.plan.patient_code,
        title=latest.plan.title,
        begin=min(dates),
        end=max(dates),
        printed_on=printed_on,
        sessions=len(ordered),
        software=_software(ordered),
        rows=rows,
        adherence=adherence(ordered, until),
        pain=pain_course(ordered),
        quality=quality_of(ordered, series, files_refused),
        notes=notes_on(
            [(r.series, r.summary) for r in rows],
            len({d.software.definitions for d in ordered}),
        ),
        method=method(),
    )


def _row(
    series: Series,
    alone: Summary | None,
    ordered: Sequence[SessionDocument],
    records: PatientRecords,
    visit: date | None,
) -> Row:
    other = other_side_of(ordered, series.movement, series.side, records)
    result = alone.against(other.value_deg) if alone and other else alone
    planned = _planned(series, ordered)
    drawn = in_context(
        chart(series, result), result.trend if result else None, planned, records.treatments
    )
    name = movement_of(series.movement, series.side, series.position)
    if result is None:
        cells = (name, "0", *(NONE,) * 6, verdict_words(Verdict.TOO_FEW))
        return Row(series, None, cells, drawn)
    difference, unit = result.difference, result.unit
    single = result.sessions == 1
    cells = (
        name,
        str(result.sessions),
        reached(result.first.value, result.first.error, unit),
        NONE if single else reached(result.last.value, result.last.error, unit),
        reached(result.best.value, result.best.error, unit),
        _of_other(result),
        change_with_error(difference.change, difference.error, unit, fine=difference.fine)
        if difference
        else NONE,
        least(difference.mdc, unit, fine=difference.fine) if difference else NONE,
        verdict_words(result.verdict),
    )
    since = since_visit(series, visit) if visit else None
    said = findings(result, since, planned, other, series, ordered)
    return Row(series, result, cells, drawn, said)


def _planned(series: Series, ordered: Sequence[SessionDocument]) -> PlannedExercise | None:
    """Find the exercise of a movement in the latest plan."""
    kind = (series.movement, series.side, series.position)
    exercises = ordered[-1].plan.exercises
    return next((e for e in exercises if (e.movement, e.side, e.position) == kind), None)


def _of_other(result: Summary) -> str:
    """Write the share of the other side; the error is this side's, the other's is not known."""
    share, other_deg = result.percent_of_other, result.other_side_deg
    if share is None or other_deg is None:
        return NONE
    return percent_with_error(share, 100 * result.last.error / other_deg)


def _software(ordered: Sequence[SessionDocument]) -> str:
    names = dict.fromkeys(
        translate("review", "{name} {version} (angle definitions {definitions})").format(
            name=s.name, version=s.version, definitions=s.definitions
        )
        for s in (d.software for d in ordered)
    )
    return listed(tuple(names)[-3:])
