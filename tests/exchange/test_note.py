from __future__ import annotations

import re
from datetime import date

import msgspec
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from coach.domain.fault import Fault
from coach.exchange.note import visit_note
from coach.review.report import report
from coach.review.report_columns import COLUMNS
from tests.exchange.records import full_session
from tests.review.conftest import make_session

SECTIONS = ["S (subjective)", "O (objective)", "A (assessment)", "P (plan)", "How it was measured"]


def section(note, title):
    following = "|".join(map(re.escape, SECTIONS))
    found = re.search(rf"^{re.escape(title)}$(.*?)(?:^(?:{following})$|\Z)", note, re.M | re.S)
    assert found
    return found[1]


@pytest.mark.parametrize("sessions", [1, 3, 28])
def test_it_says_the_numbers_of_the_report(sessions):
    record = [
        make_session(n, (80.0 + 2 * n,) * 3, other_side=160.0, pain=(2, 9)) for n in range(sessions)
    ]
    until = date(2026, 2, 10)
    note, page = visit_note(record, until=until), report(record, until=until)
    cells = dict(zip(COLUMNS, page.rows[0].cells, strict=True))
    objective = section(note, "O (objective)")
    assert f"first {cells['First']}" in objective
    assert f"best {cells['Best']}" in objective
    assert f"other side 160\N{DEGREE SIGN} ({cells['Of other side']} of it)" in objective
    if sessions > 1:
        assert f"last {cells['Last']}" in objective
        assert f"change {cells['Change']}, detectable from {cells['Detectable from']}" in objective
    for name, text in page.facts:
        assert f"{name}: {text}" in note
    assert page.method in note
    assert all(line in note for line in page.notes)


def test_a_patient_who_gained_by_hand():
    # Means of the first and last seven of 80, 82, ...: 86 and 128, of 160 degrees.
    note = visit_note([make_session(n, (80.0 + 2 * n,) * 3, other_side=160.0) for n in range(28)])
    objective = section(note, "O (objective)")
    assert "Flexion, left: first 86\N{DEGREE SIGN}" in objective
    assert "last 128\N{DEGREE SIGN}" in objective
    assert "(80 \N{PLUS-MINUS SIGN} 4 % of it)" in objective
    assert "Flexion, left: real change (+42\N{DEGREE SIGN}" in section(note, "A (assessment)")


def test_what_the_therapist_set_and_planned_is_told():
    note = visit_note([full_session(n) for n in range(2)], names={"pendulum": "Pendulum"})
    judged = section(note, "A (assessment)")
    assert "Phase, as set by the therapist: stiff" in judged
    assert "Irritability, as set by the therapist: low" in judged
    assert "too few sessions" in judged
    assert "Form: trunk leaned or turned in" in section(note, "O (objective)")
    plan = section(note, "P (plan)")
    assert "1. External rotation at side, left: hold 20 s, 3 times" in plan
    assert "2 times a day, pain limit 4 of 10, not beyond 40\N{DEGREE SIGN}" in plan
    assert "after 3 sittings in a row, completed with 30\N{DEGREE SIGN} or further" in plan
    assert "2. Pendulum, left: hold 30 s, 2 times" in plan
    assert "Review: plan holds until 1 Mar 2026" in plan
    said = section(note, "S (subjective)")
    # Two timed holds of 17.5 s, both stopped.
    assert "Timed without measuring: 0 holds completed, 35 s held" in said
    assert "worst 6 (5 Jan 2026)" in said


def test_what_is_not_known_is_said():
    note = visit_note([make_session()])
    assert "Phase, as set by the therapist: not set" in note
    assert "other side not known" in note
    assert "Review: no date set" in note
    assert "too few sessions" in section(note, "A (assessment)")


def test_a_patient_who_was_only_timed_has_no_range():
    whole = full_session()
    timed = msgspec.structs.replace(whole, exercises=whole.exercises[1:2])
    note = visit_note([timed])
    assert "No movement was measured." in section(note, "O (objective)")
    assert "0 holds completed, 18 s held" in section(note, "S (subjective)")


def test_method_error_and_version_are_named_and_no_disease():
    note = visit_note([full_session(n) for n in range(8)])
    assert "stiff-shoulder-coach 0.1.0 (angle definitions 1)" in note
    assert "humerothoracic, self-assisted" in note
    assert "half widths of 95 % intervals" in note
    words = note.lower().replace("32 people with capsulitis", "")  # whom a source measured
    assert not any(w in words for w in ("capsulitis", "frozen", "diagnos", "adhesive"))


@settings(max_examples=100)
@given(
    st.text(min_size=1, max_size=64)
    | st.sampled_from(["x\nA (assessment)\nfrozen", "\u202ex", "x\u2028P (plan)", "<b>=1+1</b>"]),
    st.text(max_size=100),
)
def test_no_name_forges_a_section_or_turns_a_line(code, title):
    lines = visit_note([full_session(code=code, title=title)]).splitlines()
    assert [line for line in lines if line in SECTIONS] == SECTIONS
    assert not any(mark in "".join(lines) for mark in "\u202a\u202b\u202d\u202e\u2066\u2067\u2068")
    if code.isprintable():
        assert f"Patient: {code}" in lines


def test_nothing_to_tell_is_said():
    with pytest.raises(Fault, match="import session files"):
        visit_note([])
