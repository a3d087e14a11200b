"""What the one-page report says, as data; ``coach.desktop.shared.report_page`` paints it.

It states what was measured and what was done. It names no disease and gives no advice: that is
the therapist's.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from statistics import fmean

from coach.domain.fault import Fault
from coach.domain.movement import Movement, Side, Unit
from coach.domain.session import SessionDocument
from coach.review.adherence import Adherence, adherence
from coach.review.change import Summary, Verdict, summary
from coach.review.chart import Chart, chart
from coach.review.history import Series, history, in_order, started
from coach.review.holds import feigns
from coach.review.notes import notes_on
from coach.review.sittings import worst_pain
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
HIGH_PAIN = 7
"""Above it the clinic sheet asks for the therapist (common practice)."""


@dataclass(frozen=True, slots=True)
class Row:
    """A line of the table: ``cells`` in the order of COLUMNS, from ``summary``."""

    series: Series
    summary: Summary | None
    cells: tuple[str, ...]
    chart: Chart


@dataclass(frozen=True, slots=True)
class PainCourse:
    """The highest pain given in the first and in the last session, and in any; 0-10."""

    first: int
    last: int
    worst: int
    worst_on: date
    high_sessions: int
    """Sessions in which pain above 7 was given."""


@dataclass(frozen=True, slots=True)
class Quality:
    """Shares of 1, None where nothing was held or no frame taken; ``feigned`` by the trunk."""

    seen: float | None
    lost: float | None
    files_refused: int
    feigned: float | None = None


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
) -> Report:
    """Write the report of one patient from their sessions, in any order."""
    if not documents:
        raise Fault("There is no session to report on: import session files first.")
    ordered = in_order(documents)
    latest = ordered[-1]
    series = history(ordered)
    rows = tuple(_row(s, other_side_of(ordered, s.movement, s.side)) for s in series)
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
        pain=_pain(ordered),
        quality=_quality(ordered, series, files_refused),
        notes=notes_on(
            [(r.series, r.summary) for r in rows],
            len({d.software.definitions for d in ordered}),
        ),
    )


def _row(series: Series, other_side_deg: float | None) -> Row:
    result = summary(series, other_side_deg)
    name = movement_of(series.movement, series.side, series.position)
    if result is None:
        cells = (name, "0", *(NONE,) * 6, Verdict.TOO_FEW.value)
        return Row(series, None, cells, chart(series, None))
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
    return Row(series, result, cells, chart(series, result))


def _of_other(result: Summary) -> str:
    """Write the share of the other side; the error is this side's, the other's is not known."""
    share, other_deg = result.percent_of_other, result.other_side_deg
    if share is None or other_deg is None:
        return NONE
    return percent_with_error(share, 100 * result.last.error / other_deg)


def other_side_of(
    ordered: Sequence[SessionDocument], movement: Movement, side: Side
) -> float | None:
    """Give the other side's range in degrees by the newest plan that knows, None where none does.

    A plan that exercises both sides leaves it open: which one it means is not said.
    """
    if movement.unit is not Unit.DEGREES:
        return None
    for document in reversed(ordered):
        plan = document.plan
        if any(e.movement is movement and e.side is side.other for e in plan.exercises):
            continue
        for other in plan.other_side:
            if other.movement is movement:
                return other.value_deg
    return None


def _software(ordered: Sequence[SessionDocument]) -> str:
    names = dict.fromkeys(
        f"{s.name} {s.version} (angle definitions {s.definitions})"
        for s in (d.software for d in ordered)
    )
    return listed(tuple(names)[-3:])


def _pain(ordered: Sequence[SessionDocument]) -> PainCourse | None:
    given: list[tuple[int, date]] = []
    for document in ordered:
        worst = worst_pain(document)
        if worst is not None:
            given.append((worst, started(document).date()))
    if not given:
        return None
    worst, worst_on = max(given, key=lambda g: g[0])
    high = sum(score > HIGH_PAIN for score, _ in given)
    return PainCourse(given[0][0], given[-1][0], worst, worst_on, high)


def _quality(
    ordered: Sequence[SessionDocument], series: Sequence[Series], files_refused: int
) -> Quality:
    points = [p for s in series for p in s.points]
    weights = [max(p.held_s, 0.1) for p in points]
    seen = fmean((p.seen_fraction for p in points), weights) if points else None
    lost = sum(d.camera.frames_lost for d in ordered)
    total = lost + sum(d.camera.frames_seen for d in ordered)
    held = [r for d in ordered for e in d.exercises for r in e.repetitions if r.held_s > 0]
    feigned = sum(map(feigns, held)) / len(held) if held else None
    return Quality(seen, lost / total if total else None, files_refused, feigned)
