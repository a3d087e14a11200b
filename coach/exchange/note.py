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
from coach.review.counts import sessions_counted
from coach.review.history import in_order
from coach.review.practice_records import NO_RECORDS
from coach.review.report import Report, Row, report
from coach.review.report_columns import COLUMNS
from coach.review.report_facts import HIGH_PAIN
from coach.review.verdict_wording import irritability_words, phase_words
from coach.review.wording import NONE, amount, day, minutes
from coach.texts import translate


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
        (translate("note", "S (subjective)"), chain(told(records), _subjective(found, documents))),
        (
            translate("note", "O (objective)"),
            chain(_objective(found), by_hand(records, [r.series for r in found.rows])),
        ),
        (translate("note", "A (assessment)"), _assessment(found, plan, records.episode)),
        (translate("note", "P (plan)"), chain(_plan(plan, names or {}), treated(records))),
        (translate("note", "How it was measured"), iter((found.method, *found.notes))),
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
    yield translate("note", "Shoulder exercise at home, note for the record")
    yield translate("note", "Patient: {patient_code}").format(patient_code=found.patient_code)
    sessions = sessions_counted(found.sessions)
    yield translate("note", "Period: {period}, {sessions}").format(
        period=found.period, sessions=sessions
    )
    if found.title:
        yield translate("note", "Plan: {title}").format(title=found.title)
    if found.printed_on:
        yield translate("note", "Written on {day}").format(day=day(found.printed_on))
    yield translate(
        "note", "Measured with {software}; humerothoracic, self-assisted, one camera"
    ).format(software=found.software)


def _subjective(found: Report, documents: Sequence[SessionDocument]) -> Iterator[str]:
    for name, text in found.done_facts:
        yield f"{name}: {text}"
    if found.pain and found.pain.high_sessions:
        sessions = sessions_counted(found.pain.high_sessions)
        yield translate("note", "Pain above {high_pain} of 10 in {sessions}").format(
            high_pain=HIGH_PAIN, sessions=sessions
        )
    timed = [h for d in documents for e in d.exercises for h in e.timed]
    if timed:
        completed = sum(h.ended_because is EndedBecause.COMPLETED for h in timed)
        seconds = minutes(sum(h.held_s for h in timed))
        told = (
            translate("note", "Timed without measuring: 1 hold completed, {time} held")
            if completed == 1
            else translate("note", "Timed without measuring: {count} holds completed, {time} held")
        )
        yield told.format(count=completed, time=seconds)
    yield translate("note", "Night pain, function, reaction to the last change: ")


def _objective(found: Report) -> Iterator[str]:
    for row in found.rows:
        cells = dict(zip(COLUMNS, row.cells, strict=True))
        yield f"{cells['Movement']}: {'; '.join(_range(row, cells))}"
    if not found.rows:
        yield translate("note", "No movement was measured.")
    for name, text in found.seen_facts:
        yield f"{name}: {text}"


def _range(row: Row, cells: Mapping[str, str]) -> Iterator[str]:
    result = row.summary
    if result is None:
        yield translate("note", "no value")
        return
    first, last, best = cells["First"], cells["Last"], cells["Best"]
    yield translate("note", "first {first}").format(first=first)
    if last != NONE:
        yield translate("note", "last {last}").format(last=last)
    yield translate("note", "best {best}").format(best=best)
    if result.difference is not None:
        change, least = cells["Change"], cells["Detectable from"]
        yield translate("note", "change {change}, detectable from {least}").format(
            change=change, least=least
        )
    if result.other_side_deg is not None:
        value, share = amount(result.other_side_deg, Unit.DEGREES), cells["Of other side"]
        if share == NONE:
            yield translate("note", "other side {value}").format(value=value)
        else:
            yield translate("note", "other side {value} ({share} of it)").format(
                value=value, share=share
            )
    else:
        yield translate("note", "other side not known")
    yield sessions_counted(result.sessions)


def _assessment(found: Report, plan: Plan, episode: Episode | None) -> Iterator[str]:
    phase = (episode.phase if episode else None) or plan.phase
    irritability = (episode.irritability if episode else None) or plan.irritability
    phase_said = phase_words(phase) if phase else translate("note", "not set")
    irritable = irritability_words(irritability) if irritability else translate("note", "not set")
    yield translate("note", "Phase, as set by the therapist: {phase_said}").format(
        phase_said=phase_said
    )
    yield translate("note", "Irritability, as set by the therapist: {irritable}").format(
        irritable=irritable
    )
    for row in found.rows:
        if row.summary is not None:
            cells = dict(zip(COLUMNS, row.cells, strict=True))
            change = "" if cells["Change"] == NONE else f" ({cells['Change']})"
            yield f"{cells['Movement']}: {cells['Verdict']}{change}"
    yield translate("note", "Clinical judgement: ")


def _plan(plan: Plan, names: Mapping[str, str]) -> Iterator[str]:
    for number, planned in enumerate(plan.exercises, start=1):
        yield f"{number}. {planned_name(planned, names)}: {dose(planned)}"
        step = next_step(planned, names)
        if step:
            following = translate("note", "Next: {step}").format(step=step)
            yield f"   {following}"
    sessions = sessions_counted(plan.sessions_per_week)
    yield translate("note", "{sessions} a week").format(sessions=sessions)
    if plan.valid_until:
        yield translate("note", "Review: plan holds until {day}").format(day=day(plan.valid_until))
    else:
        yield translate("note", "Review: no date set")
