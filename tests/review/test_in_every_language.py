"""Every sentence of a review and of the note is one that a language can have for itself."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, date, datetime, timedelta

import msgspec
import numpy as np
import pytest

from coach.catalogue import catalogue
from coach.domain.exercise import Irritability, StiffnessPhase
from coach.domain.form import FormFault
from coach.domain.movement import Movement, Position, Side, View
from coach.domain.plan import NextStep, PlannedExercise, Weekday
from coach.domain.progress import EndedBecause
from coach.domain.reading import Doubt
from coach.exchange.export import exported
from coach.exchange.kind import Kind
from coach.review import hint_words
from coach.review.change import Basis
from coach.review.cohort import Concern, cohort
from coach.review.cohort_reasons import concern_words
from coach.review.diary import diary
from coach.review.doubt_wording import doubt_words
from coach.review.form_wording import fault_words
from coach.review.norms import PUBLISHED
from coach.review.overview import Overview, overview, visit_method
from coach.review.plan_changes import plan_changes
from coach.review.plan_wording import dose_text, exercise_name
from coach.review.plans import proposed, time_a_day, unusual
from coach.review.records import line_of
from coach.review.replay import replay
from coach.review.replay_wording import (
    compensations,
    form_moment,
    form_name,
    heading,
    in_words,
    moment,
    pain,
    result,
)
from coach.review.replay_wording import exercise_name as replayed_name
from coach.review.report_columns import COLUMNS, column_title
from coach.review.sittings import sittings
from tests.exchange.records import full_session, own_records
from tests.pseudo import left_over, spoken
from tests.review.conftest import make_session
from tests.review.six_patients import LAST_DAY, hold, plan_of, sitting, six_patients
from tests.review.test_replay import EVERY_TENTH, STILL, readings

SOURCES = {published.source for published in PUBLISHED.values()}
WRITTEN = {
    *(f"SH-{number}" for number in (17, "017", *range(101, 107))),
    "SH-X", "SH-Y", "stiff-shoulder-coach 0.1.0", "Gentle end range", "Gently", "Invented Heron",
    "Reach the top shelf", "Woke at night until Christmas", "Shoulder score A", *SOURCES,
    *(exercise.name for exercise in catalogue().all),
    *(exercise.telling["en"].title for exercise in catalogue().all),
}  # fmt: skip


@pytest.fixture(autouse=True)
def every_word() -> Iterator[None]:
    with spoken():
        yield


def told_by(found: Overview) -> Iterator[str]:
    """Everything that the page of one patient says."""
    report = found.report
    yield from (*found.reasons, *(part for line in found.lines for part in line))
    for hint in found.hints:
        yield from (hint.sentence, hint.rule, hint.source)
    yield from (report.period, report.software, report.method, *report.notes, visit_method())
    yield from (part for fact in report.facts for part in fact)
    for row in report.rows:
        yield from (*row.cells, *(part for line in row.findings for part in line))
        yield from (row.chart.title, row.chart.statement, row.chart.description())
        for axis in row.chart.axes():
            yield from (text for tick in axis.ticks for text in (tick.label, tick.under))


def planned_all_round() -> PlannedExercise:
    return PlannedExercise(
        exercise="table-slide", movement=Movement.FLEXION, side=Side.LEFT, hold_s=12.5,
        repetitions=20, rest_s=2.5, position=Position.SITTING, view=View.SIDE, pain_limit=9,
        per_day=9, days=(Weekday.MONDAY, Weekday.FRIDAY), target_deg=120.5,
        next_step=NextStep(sessions=3, at_least_deg=100.5, propose="pendulum"),
    )  # fmt: skip


@pytest.mark.parametrize("who", list(six_patients(1)))
def test_a_patients_page_is_whole(who: str) -> None:
    documents = six_patients(1)[who]
    found = overview(
        documents, LAST_DAY + timedelta(days=9), own_records(documents[0].plan.patient_code)
    )
    told = list(told_by(found))
    assert len(told) > 60
    assert left_over(told, WRITTEN) == []


def test_what_a_record_with_everything_in_it_says_is_whole() -> None:
    documents = [full_session(n) for n in range(8)]
    told = [*told_by(overview(documents, date(2026, 4, 1), own_records()))]
    told += [
        *(
            cause
            for s in cohort({"SH-017": documents}, date(2026, 4, 1))
            for r in s.reasons
            for cause in (r.sentence,)
        )
    ]
    assert left_over(told, WRITTEN) == []


def test_the_note_is_whole() -> None:
    now = datetime(2026, 4, 1, 12, tzinfo=UTC)
    for documents in ([full_session(n) for n in range(3)], *six_patients(2).values()):
        note = exported(documents, Kind.NOTE, now, own_records()).decode()
        assert left_over(note.splitlines(), WRITTEN) == []


@pytest.mark.parametrize("poor", [True, False])
def test_reasons_and_poor_sittings_are_whole(poor: bool) -> None:
    leaning = [hold(n, 130.0, (FormFault.LEAN,), seen=0.5) for n in (1, 2, 3)]
    documents = [
        sitting("SH-X", n, leaning, pain=(2, 9 if poor else 3), frames_lost=5500) for n in range(4)
    ]
    slow = [msgspec.structs.replace(d, duration_s=2400.0) for d in documents]
    told = [what for s in sittings(slow) for what in s.poor]
    assert len(told) == 12
    told += [
        r.sentence
        for s in cohort({"SH-X": slow, "SH-Y": documents[:1]}, date(2026, 6, 1))
        for r in s.reasons
    ]
    told += map(concern_words, Concern)
    told += told_by(overview(slow, date(2026, 6, 1), doubts=("\u0436.",)))
    told += told_by(overview(documents[:1], date(2026, 6, 1)))
    assert left_over(told, WRITTEN) == []


@pytest.mark.parametrize("basis", list(Basis))
def test_each_way_of_knowing_the_error_is_told(basis: Basis) -> None:
    movement, count = {
        Basis.OWN: (Movement.FLEXION, 12),
        Basis.PUBLISHED: (Movement.FLEXION, 3),
        Basis.READINGS: (Movement.HORIZONTAL_ADDUCTION, 3),
    }[basis]
    error = 30.0 if basis is Basis.READINGS else 6.0
    documents = [
        make_session(n, (90.0 + n % 3,), movement=movement, error=error) for n in range(count)
    ]
    found = overview(documents, LAST_DAY)
    (row,) = found.report.rows
    assert row.summary
    assert row.summary.difference
    assert row.summary.difference.basis is basis
    assert left_over(told_by(found), WRITTEN) == []


@pytest.mark.parametrize("side", list(Side))
@pytest.mark.parametrize("share", [10.0, 50.0, 57.0])
def test_hints_are_whole(side: Side, share: float) -> None:
    values = {
        Movement.FLEXION: 160.0,
        Movement.ABDUCTION: 90.0,
        Movement.EXTERNAL_ROTATION_0: share,
    }
    others = {
        Movement.FLEXION: 165.0,
        Movement.ABDUCTION: 160.0,
        Movement.EXTERNAL_ROTATION_0: 60.0,
    }
    documents = [
        make_session(0, (v,) * 3, movement=m, side=side, error=4.0, other_side=others[m])
        for m, v in values.items()
    ]
    found = overview(documents, LAST_DAY)
    assert found.hints
    assert left_over(told_by(found), WRITTEN) == []


def test_the_phase_is_told_whole_in_each_of_its_kinds() -> None:
    told = [
        hint_words.phase(fits, planned, 2.5, 7, 6)
        for fits in StiffnessPhase
        for planned in (None, *StiffnessPhase)
    ]
    told += [hint_words.phase_rule(7, 3, 4, 6), hint_words.phase_source()]
    assert left_over(told) == []


def test_plans_doses_and_their_changes_are_whole() -> None:
    asked = planned_all_round()
    names = {each.exercise: each.name for each in catalogue().all}
    told = [dose_text(asked), time_a_day([asked]), exercise_name(asked, names)]
    for exercise in catalogue().all:
        for irritability in Irritability:
            told += unusual(asked, exercise, irritability)
            told.append(dose_text(proposed(exercise, irritability, Side.RIGHT)))
    old = plan_of("SH-X")
    new = msgspec.structs.replace(
        old, patient_code="SH-Y", title="Gently", side=Side.LEFT, phase=StiffnessPhase.STIFF,
        irritability=Irritability.LOW, sessions_per_week=3, valid_until=date(2026, 5, 1),
        practice_key="age1",
        exercises=(asked, msgspec.structs.replace(old.exercises[0], side=Side.RIGHT, hold_s=2.5)),
    )  # fmt: skip
    changes = (*plan_changes(old, new, names), *plan_changes(new, old, names))
    assert len(changes) > 20
    assert left_over((*told, *changes), WRITTEN) == []


def test_records_and_the_diary_are_whole() -> None:
    records, documents = own_records(), [full_session(n) for n in range(3)]
    told = []
    for record in (
        *records.episodes, *records.treatments, *records.by_hand, *records.other_side,
        *records.scores,
    ):  # fmt: skip
        line = line_of(record)
        told += [line.on, line.what, line.value, line.beside]
    told += [series.sentence for series in diary(documents, documents[-1].plan, LAST_DAY).series]
    assert left_over(told, WRITTEN) == []


def test_a_replay_is_whole() -> None:
    told = [*map(doubt_words, Doubt), *map(fault_words, FormFault), *map(column_title, COLUMNS)]
    (document,) = [make_session(0, (100.0,) * 3)]
    value = np.where(EVERY_TENTH < 10, np.nan, 100.0)
    doubt = np.where(EVERY_TENTH < 10, 3, -1)
    table = readings(EVERY_TENTH, value, doubt=doubt, lean=7.0)
    for ended in EndedBecause:
        (record,) = document.exercises
        first = msgspec.structs.replace(
            record.repetitions[0], ended_because=ended, faults=tuple(FormFault)
        )
        record = msgspec.structs.replace(record, repetitions=(first,))
        shown = replay(msgspec.structs.replace(document, exercises=(record,)), table, STILL, 0, 1)
        told += [heading(shown), replayed_name(shown), result(shown), pain(shown)]
        told.append(compensations(shown))
        told += [in_words(shown, time_s) for time_s in (2.0, 10.0, 26.0, 9999.0)]
        told += [moment(shown, time_s) for time_s in (0.0, 7.0)]
        for series in shown.form:
            told += [form_name(series), form_moment(series, 0), form_moment(series, None)]
    assert left_over(told, WRITTEN) == []
