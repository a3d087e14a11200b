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
from coach.review.change import Summary, Verdict, summary
from coach.review.chart import Chart, chart
from coach.review.chart_context import in_context
from coach.review.findings import Lines, findings
from coach.review.history import Series, history, in_order, started
from coach.review.notes import notes_on
from coach.review.practice_records import NO_RECORDS, last_visit, other_side_of
from coach.review.report_facts import PainCourse, Quality, pain_course, quality_of
from coach.review.since_visit import since_visit
from coach.review.wording import (
    NONE,
    amount,
    change_with_error,
    day,
    listed,
    minutes,
    movement_of,
    percent,
    percent_with_error,
    period,
    reached,
)

COLUMNS = (
    "Movement", "Sessions", "First", "Last", "Best", "Of other side", "Change",
    "Detectable from", "Verdict",
)  # fmt: skip
METHOD = (
    "Humerothoracic angle (arm against trunk, the shoulder blade's share included) measured by one "
    "camera at home in a self-assisted stretch: neither an active nor a passive range. A session's "
    "value is the median of its completed holds with a still trunk. First and last are means of up "
    "to a week of sessions. Errors are half widths of 95 % intervals; the share of the other side "
    "has only this side's error in it."
)


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
    method: str = METHOD

    @property
    def period(self) -> str:
        """From the first session to the last."""
        return period(self.begin, self.end)

    @property
    def facts(self) -> tuple[tuple[str, str], ...]:
        """Name and text of what stands beside the table."""
        done, dose = self.adherence, self.adherence.dose
        facts = [
            ("Sessions", f"{done.done} done of {done.asked} asked for"),
            ("Holds", f"{dose.holds_completed} completed of {dose.holds_asked}"),
            ("Hold time", f"{minutes(dose.held_s)} of {minutes(dose.asked_s)}"),
        ]
        if self.pain:
            pain = self.pain
            text = f"first {pain.first}, last {pain.last}, worst {pain.worst}"
            facts.append(("Pain 0\N{EN DASH}10", f"{text} ({day(pain.worst_on)})"))
        else:
            facts.append(("Pain 0\N{EN DASH}10", "not given"))
        quality = self.quality
        seen = percent(quality.seen) if quality.seen is not None else NONE
        lost = percent(quality.lost) if quality.lost is not None else NONE
        facts.append(("Camera", f"arm seen in {seen} of hold time, {lost} of frames lost"))
        if quality.feigned:
            facts.append(("Form", f"trunk leaned or turned in {percent(quality.feigned)} of holds"))
        if quality.files_refused:
            facts.append(("Files refused", str(quality.files_refused)))
        return tuple(facts)


def report(
    documents: Sequence[SessionDocument],
    *,
    until: date | None = None,
    printed_on: date | None = None,
    files_refused: int = 0,
    records: PatientRecords = NO_RECORDS,
) -> Report:
    """Write the report of one patient from their sessions, in any order.

    ``until`` is the day on which it is looked at; ``records`` are what the practice wrote down.
    """
    if not documents:
        raise Fault("There is no session to report on: import session files first.")
    ordered = in_order(documents)
    latest = ordered[-1]
    series = history(ordered)
    visit = last_visit(ordered, records, until)
    rows = tuple(_row(s, ordered, records, visit) for s in series)
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
    )


def _row(
    series: Series,
    ordered: Sequence[SessionDocument],
    records: PatientRecords,
    visit: date | None,
) -> Row:
    other = other_side_of(ordered, series.movement, series.side, records)
    result = summary(series, other.value_deg if other else None)
    planned = _planned(series, ordered)
    drawn = in_context(
        chart(series, result), result.trend if result else None, planned, records.treatments
    )
    name = movement_of(series.movement, series.side, series.position)
    if result is None:
        cells = (name, "0", *(NONE,) * 6, Verdict.TOO_FEW.value)
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
        amount(difference.mdc, unit, fine=difference.fine) if difference else NONE,
        result.verdict.value,
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
        f"{s.name} {s.version} (angle definitions {s.definitions})"
        for s in (d.software for d in ordered)
    )
    return listed(tuple(names)[-3:])
