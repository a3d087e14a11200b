"""A visit's note in plain text, to paste into any record: S, O, A, P.

Its figures are those of ``coach.review.report``. What only a person can judge is left open for
the therapist, and it names no disease.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from datetime import date
from itertools import chain

from coach.domain.movement import Unit
from coach.domain.plan import Plan
from coach.domain.practice import Episode, PatientRecords
from coach.domain.progress import EndedBecause
from coach.domain.session import SessionDocument
from coach.domain.text import UNSHOWN
from coach.exchange.note_records import by_hand, told, treated
from coach.exchange.wording import dose, next_step, planned_name
from coach.review.history import in_order
from coach.review.practice_records import NO_RECORDS
from coach.review.report import COLUMNS, Report, Row, report
from coach.review.report_facts import HIGH_PAIN
from coach.review.wording import NONE, amount, counted, day, minutes

_SEEN = ("Camera", "Form", "Files refused")
"""Facts of the report that belong to what was measured; the others are what was done and told."""


def visit_note(
    documents: Sequence[SessionDocument],
    *,
    until: date | None = None,
    written_on: date | None = None,
    names: Mapping[str, str] | None = None,
    records: PatientRecords = NO_RECORDS,
) -> str:
    """Write the note of one patient.

    ``until`` is the day up to which sessions were due (``coach.review.adherence``), ``names`` are
    the exercises' names in trade terms by their names in files, ``records`` what the practice
    wrote down.
    """
    found = report(documents, until=until, printed_on=written_on, records=records)
    plan = in_order(documents)[-1].plan
    sections = (
        ("", _head(found)),
        ("S (subjective)", chain(told(records), _subjective(found, documents))),
        (
            "O (objective)",
            chain(_objective(found), by_hand(records, [r.series for r in found.rows])),
        ),
        ("A (assessment)", _assessment(found, plan, records.episode)),
        ("P (plan)", chain(_plan(plan, names or {}), treated(records))),
        ("How it was measured", iter((found.method, *found.notes))),
    )
    return (
        "\n\n".join(
            "\n".join(([title] if title else []) + [plain(line) for line in lines])
            for title, lines in sections
        )
        + "\n"
    )


def plain(text: str) -> str:
    """Keep a text on its line, which could forge a section, and in its direction."""
    return UNSHOWN.sub(" ", text)


def _head(found: Report) -> Iterator[str]:
    yield "Shoulder exercise at home, note for the record"
    yield f"Patient: {found.patient_code}"
    yield f"Period: {found.period}, {counted(found.sessions, 'session')}"
    if found.title:
        yield f"Plan: {found.title}"
    if found.printed_on:
        yield f"Written on {day(found.printed_on)}"
    yield f"Measured with {found.software}; humerothoracic, self-assisted, one camera"


def _subjective(found: Report, documents: Sequence[SessionDocument]) -> Iterator[str]:
    for name, text in found.facts:
        if name not in _SEEN:
            yield f"{name}: {text}"
    if found.pain and found.pain.high_sessions:
        yield f"Pain above {HIGH_PAIN} of 10 in {counted(found.pain.high_sessions, 'session')}"
    timed = [h for d in documents for e in d.exercises for h in e.timed]
    if timed:
        completed = sum(h.ended_because is EndedBecause.COMPLETED for h in timed)
        seconds = minutes(sum(h.held_s for h in timed))
        yield f"Timed without measuring: {counted(completed, 'hold')} completed, {seconds} held"
    yield "Night pain, function, reaction to the last change: "


def _objective(found: Report) -> Iterator[str]:
    for row in found.rows:
        cells = dict(zip(COLUMNS, row.cells, strict=True))
        yield f"{cells['Movement']}: {'; '.join(_range(row, cells))}"
    if not found.rows:
        yield "No movement was measured."
    for name, text in found.facts:
        if name in _SEEN:
            yield f"{name}: {text}"


def _range(row: Row, cells: Mapping[str, str]) -> Iterator[str]:
    result = row.summary
    if result is None:
        yield "no value"
        return
    yield f"first {cells['First']}"
    if cells["Last"] != NONE:
        yield f"last {cells['Last']}"
    yield f"best {cells['Best']}"
    if result.difference is not None:
        yield f"change {cells['Change']}, detectable from {cells['Detectable from']}"
    if result.other_side_deg is not None:
        share = "" if cells["Of other side"] == NONE else f" ({cells['Of other side']} of it)"
        yield f"other side {amount(result.other_side_deg, Unit.DEGREES)}{share}"
    else:
        yield "other side not known"
    yield counted(result.sessions, "session")


def _assessment(found: Report, plan: Plan, episode: Episode | None) -> Iterator[str]:
    phase = (episode.phase if episode else None) or plan.phase
    irritability = (episode.irritability if episode else None) or plan.irritability
    yield f"Phase, as set by the therapist: {phase or 'not set'}"
    yield f"Irritability, as set by the therapist: {irritability or 'not set'}"
    for row in found.rows:
        if row.summary is not None:
            cells = dict(zip(COLUMNS, row.cells, strict=True))
            change = "" if cells["Change"] == NONE else f" ({cells['Change']})"
            yield f"{cells['Movement']}: {cells['Verdict']}{change}"
    yield "Clinical judgement: "


def _plan(plan: Plan, names: Mapping[str, str]) -> Iterator[str]:
    for number, planned in enumerate(plan.exercises, start=1):
        yield f"{number}. {planned_name(planned, names)}: {dose(planned)}"
        step = next_step(planned, names)
        if step:
            yield f"   Next: {step}"
    yield f"{counted(plan.sessions_per_week, 'session')} a week"
    yield "Review: " + (
        f"plan holds until {day(plan.valid_until)}" if plan.valid_until else "no date set"
    )
