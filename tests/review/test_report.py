from __future__ import annotations

from datetime import date

import pytest

from coach.domain.fault import Fault
from coach.domain.form import FormFault
from coach.domain.movement import Movement, Side
from coach.domain.plan import PlannedExercise
from coach.review.report import report
from coach.review.report_columns import COLUMNS
from tests.review.six_patients import hold, sitting


def cells(found, row=0):
    return dict(zip(COLUMNS, found.rows[row].cells, strict=True))


def test_the_row_of_a_patient_who_gained(session):
    found = report([session(n, (80.0 + 2 * n,) * 3, other_side=160.0) for n in range(28)])
    row = cells(found)
    # Means of the first and the last seven: 80 + 2 * 3 and 80 + 2 * 24.
    assert row["First"].startswith("86°")
    assert row["Last"].startswith("128°")
    assert row["Best"] == "134° ± 6°"
    assert row["Change"].startswith("+42° ± ")
    assert row["Verdict"] == "real change"
    # 128 of 160 degrees, and 6 degrees of error are 3.75 % of 160.
    assert row["Of other side"] == "80 ± 4 %"
    assert found.period == "5 Jan 2026 to 1 Feb 2026"


def test_negative_angles_keep_their_sign(session):
    found = report([session(0, (-12.0,)), session(1, (-9.0,), other_side=-3.0)])
    row = cells(found)
    assert row["First"].startswith("\N{MINUS SIGN}12°")
    assert row["Change"].startswith("+3°")
    assert row["Of other side"] == "\N{EN DASH}"


def test_one_session_says_too_few(session):
    row = cells(report([session(0)]))
    assert row["Verdict"] == "too few sessions"
    assert row["Change"] == "\N{EN DASH}"


def test_pain_and_quality_are_told(session):
    pains = [(2, 3), (1, 9), (None, None), (0, 1)]
    found = report([session(n, pain=p) for n, p in enumerate(pains)], files_refused=2)
    assert found.pain is not None
    assert (found.pain.first, found.pain.last, found.pain.worst) == (3, 1, 9)
    assert found.pain.worst_on == date(2026, 1, 6)
    facts = dict(found.facts)
    assert facts["Camera"] == "arm seen in 95 % of hold time, 1 % of frames lost"
    assert facts["Files refused"] == "2"


def test_a_plan_that_exercises_both_sides_gives_no_percentage(session):
    right = PlannedExercise(movement=Movement.FLEXION, side=Side.RIGHT, hold_s=20, repetitions=3)
    found = report([session(0, other_side=160.0, planned=(right,))])
    assert cells(found)["Of other side"] == "\N{EN DASH}"


def test_nothing_to_report_is_said(session):
    with pytest.raises(Fault, match="import session files"):
        report([])


def test_the_report_never_diagnoses(session):
    found = report([session(n, pain=(9, 9)) for n in range(8)])
    text = " ".join([found.method, *found.notes, *(t for f in found.facts for t in f)]).lower()
    assert not any(word in text for word in ("capsulitis is", "frozen", "diagnos", "you have"))
    assert "neither an active nor a passive range" in text


def test_a_movement_whose_placing_was_never_measured_says_so(session):
    rotation = Movement.EXTERNAL_ROTATION_0
    values = [20.0 + n % 3 for n in range(10)]
    found = report([session(n, (v,), movement=rotation) for n, v in enumerate(values)])
    (note,) = [n for n in found.notes if "never measured" in n]
    assert note.startswith("External rotation at side, left")
    # About 15 degrees by hand (Tveita 2008).
    assert "up to 15°" in note
    flexion = report([session(n, (v,)) for n, v in enumerate(values)])
    assert not [n for n in flexion.notes if "never measured" in n]


def test_feigned_range_is_told(session):
    leaning = [hold(n, 130.0, (FormFault.LEAN,)) for n in (1, 2)]
    found = report([sitting("A", 0, [hold(1, 100.0), hold(2, 100.0)]), sitting("A", 1, leaning)])
    assert dict(found.facts)["Form"] == "trunk leaned or turned in 50 % of holds"
    assert cells(found)["Best"] == "100° ± 7°"
    assert cells(found)["Verdict"] == "too few sessions"
    assert any("1 value only from holds in which the trunk" in n for n in found.notes)
