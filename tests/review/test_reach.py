"""A hand behind the back over time: less is more, levels for people, percent for changes."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from coach.domain.movement import Movement, Position, Side, Unit
from coach.review.axis import value_axis
from coach.review.change import Verdict, summary
from coach.review.history import history
from coach.review.norms import NORMS
from coach.review.report import report
from coach.review.report_columns import COLUMNS

REACH = Movement.HAND_BEHIND_BACK


def reaching(session, heights, error=0.02, **more):
    return [
        session(n, (height,) * 3, movement=REACH, error=error, **more)
        for n, height in enumerate(heights)
    ]


def test_the_best_session_is_the_one_with_the_hand_furthest_up(session):
    (series,) = history(reaching(session, (0.9, 0.7, 0.8)))
    result = summary(series)
    assert result is not None
    assert result.best.value == 0.7
    assert series.points[1].best == 0.7


def test_few_sessions_must_pass_more_than_the_published_figure_of_the_same_ratio(session):
    # Mitsukane et al. 2022: 0.053 of the line from C7 to the PSIS; times 2.571 / 1.960, Student's
    # two-sided 95 % points at 5 and at infinite degrees of freedom.
    (series,) = history(reaching(session, (0.90, 0.86)))
    within = summary(series)
    assert within is not None
    assert within.difference is not None
    assert within.difference.mdc == pytest.approx(0.053 * 2.571 / 1.960, rel=1e-3)
    assert within.verdict is Verdict.TOO_FEW
    (series,) = history(reaching(session, (0.90, 0.82)))
    real = summary(series)
    assert real is not None
    assert real.verdict is Verdict.REAL


def test_the_report_tells_levels_and_which_way_the_hand_went(session):
    found = report(reaching(session, [0.95 - 0.01 * n for n in range(28)]))
    row = dict(zip(COLUMNS, found.rows[0].cells, strict=True))
    assert row["Movement"] == "Hand behind back, left"
    # Means of the first and last seven: 0.92 (thumb at 0.70) and 0.71 (at 0.47).
    assert row["First"] == "T12\N{EN DASH}L2"
    assert row["Last"] == "T8\N{EN DASH}T10"
    assert row["Change"].startswith("21 ± ")
    assert row["Change"].endswith(" % up")
    assert row["Verdict"] == "real change"
    assert row["Of other side"] == "\N{EN DASH}"
    assert any("C7 (0 %)" in note for note in found.notes)
    assert "°" not in found.rows[0].chart.statement


def test_a_single_session_is_told_in_words(session):
    found = report(reaching(session, [0.85]))
    assert found.rows[0].chart.statement == (
        "One session: about T10 to T12, 85 ± 2 %; too few sessions to speak of change."
    )


def test_a_hand_further_up_is_further_up_in_the_chart(session):
    (row,) = report(reaching(session, (0.9, 0.7))).rows
    _, values = row.chart.axes()
    assert values.share(0.7) > values.share(0.9)
    assert [values.share(t.at) for t in values.ticks] == sorted(
        (values.share(t.at) for t in values.ticks), reverse=True
    )


ratios = st.floats(-0.5, 2.0)


@given(ratios, ratios, st.integers(3, 12))
def test_an_axis_of_shares_covers_its_data_and_is_marked_in_percent(a, b, most):
    axis = value_axis(min(a, b), max(a, b), Unit.RATIO, most)
    assert axis.hi <= min(a, b) + 1e-9
    assert axis.lo >= max(a, b) - 1e-9
    assert axis.within(-9) == axis.hi
    assert axis.within(9) == axis.lo
    for tick in axis.ticks:
        assert float(tick.label.replace("\N{MINUS SIGN}", "-")) == pytest.approx(100 * tick.at)


def test_lying_and_standing_are_two_histories(session):
    standing = session(0, (100.0,))
    lying = session(1, (140.0,), position=Position.SUPINE)
    found = history([standing, lying])
    assert [(s.position, s.points[0].value) for s in found] == [
        (Position.STANDING, 100.0),
        (Position.SUPINE, 140.0),
    ]
    names = [row.cells[0] for row in report([standing, lying]).rows]
    assert names == ["Flexion, left", "Flexion, left, supine"]


def test_rotation_at_90_has_the_norms_that_were_taken_there():
    # Norkin & White, appendix table A.1: external rotation 104 (Boone & Azen), 81 (Walker).
    found = {n.mean_deg for n in NORMS if n.movement is Movement.EXTERNAL_ROTATION_90}
    assert found == {104, 81}
    without = {Movement.EXTERNAL_ROTATION_0, Movement.HORIZONTAL_ADDUCTION, REACH}
    assert not without & {n.movement for n in NORMS}


def test_both_sides_are_two_rows(session):
    right = session(1, (0.8,), movement=REACH, error=0.02, side=Side.RIGHT)
    rows = report([*reaching(session, [0.9]), right]).rows
    assert [row.cells[0] for row in rows] == ["Hand behind back, left", "Hand behind back, right"]
