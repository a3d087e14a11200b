"""The replay of a repetition against tables made by hand."""

from __future__ import annotations

import msgspec
import numpy as np
import pytest

from coach.documents.tables import DOUBTS, FORM_COLUMNS, LandmarkTable, ReadingTable
from coach.domain.fault import Fault
from coach.domain.form import FormFault
from coach.domain.movement import Side, Unit
from coach.domain.pose import Landmark
from coach.domain.reading import Doubt
from coach.review.replay import Span, repetitions_of, replay
from coach.review.replay_axes import close_axis, time_axis
from coach.review.replay_wording import compensations, form_moment, heading, moment, pain, result

MARKS = (Landmark.LEFT_SHOULDER, Landmark.LEFT_ELBOW, Landmark.RIGHT_SHOULDER)


def readings(time_s, value, *, doubt=None, lean=None, planned=0):
    """A table with an error of 6 where there is a value, and a lean with an error of 5."""
    n = len(time_s)
    value = np.asarray(value, float)
    codes = np.full(n, -1, np.int16) if doubt is None else np.asarray(doubt, np.int16)
    form = np.full((n, len(FORM_COLUMNS)), np.nan)
    if lean is not None:
        form[:, FORM_COLUMNS.index("trunk_lean_deg")] = lean
        form[:, FORM_COLUMNS.index("trunk_lean_error_deg")] = 5.0
    return ReadingTable(
        time_s=np.asarray(time_s, float),
        planned_index=np.full(n, planned, np.int16),
        phase=np.zeros(n, np.int16),
        value=value,
        error=np.where(np.isnan(value), np.nan, 6.0),
        doubt=codes,
        form=form,
    )


def landmarks(time_s, elbow_px):
    """Shoulders that stay and a left elbow that moves, in a picture of 640 by 480."""
    n = len(time_s)
    image_px = np.zeros((n, 3, 2))
    image_px[:, 0], image_px[:, 1], image_px[:, 2] = (320, 120), elbow_px, (160, 120)
    return LandmarkTable(
        landmarks=MARKS,
        time_s=np.asarray(time_s, float),
        size_px=np.tile([640, 480], (n, 1)),
        people=np.ones(n, np.int64),
        brightness=np.full(n, 0.5),
        image_px=image_px,
        world_m=np.zeros((n, 3, 3)),
        visibility=np.ones((n, 3)),
    )


EVERY_TENTH = np.arange(0, 1000) / 10
STILL = landmarks(EVERY_TENTH, (320, 240))


def test_points_are_shares_of_the_picture_and_left_stays_where_the_camera_saw_it(session):
    shown = replay(session(), readings([5.0], [100.0]), STILL, 0, 1)
    assert shown.aspect == 640 / 480
    # 320 of 640 across; 120 and 240 of 480 down.
    assert shown.points_at(6.0).tolist() == [[0.5, 0.25], [0.5, 0.5], [0.25, 0.25]]


def test_the_arm_of_the_exercise_is_joined_and_named(session):
    table = readings([5.0], [100.0])
    left = replay(session(side=Side.LEFT), table, STILL, 0, 1)
    right = replay(session(side=Side.RIGHT), table, STILL, 0, 1)
    assert {(b.begin, b.end, b.measured) for b in left.bones} == {(0, 2, False), (0, 1, True)}
    assert {(b.begin, b.end, b.measured) for b in right.bones} == {(0, 2, False), (0, 1, False)}


def test_between_landmarks_the_figure_moves_straight_and_never_over_a_gap(session):
    # The elbow goes 64 px across in 0.1 s, is lost for 0.6 s, and comes back.
    points = landmarks([5.0, 5.1, 5.7, 6.2], [(320, 240), (384, 240), (384, 288), (448, 240)])
    shown = replay(session(), readings([5.0], [100.0]), points, 0, 1)
    assert shown.points_at(5.025)[1] == pytest.approx((0.525, 0.5))
    assert shown.points_at(5.1)[1] == pytest.approx((0.6, 0.5))
    assert np.isnan(shown.points_at(5.4)).all()
    # Half a second is still bridged: a quarter of the way from (0.6, 0.6) to (0.7, 0.5).
    assert shown.points_at(5.825)[1] == pytest.approx((0.625, 0.575))
    assert np.isnan(shown.points_at(6.3)).all()


def test_a_point_unknown_for_long_is_missing_while_the_others_are_drawn(session):
    elbow = np.tile([320.0, 240.0], (len(EVERY_TENTH), 1))
    elbow[(EVERY_TENTH > 7) & (EVERY_TENTH < 8)] = np.nan
    shown = replay(session(), readings([5.0], [100.0]), landmarks(EVERY_TENTH, elbow), 0, 1)
    at = shown.points_at(7.5)
    assert np.isnan(at[1]).all()
    assert at[0] == pytest.approx((0.5, 0.25))


def test_it_begins_after_the_hold_before_and_ends_before_the_next(session):
    # Holds of 20 s at 5, 35 and 65 s; 8 s are shown before and 3 s after.
    document, table = session(), readings(EVERY_TENTH, np.full(1000, 100.0))
    second = replay(document, table, STILL, 0, 2)
    assert second.hold_s == (35, 55)
    assert (second.begin_s, second.end_s) == (27, 58)
    assert (second.time_s.min(), second.time_s.max()) == (27, 58)
    first = replay(document, table, STILL, 0, 1)
    assert (first.begin_s, first.end_s) == (0, 28)


def test_time_without_any_frame_at_either_end_is_left_out(session):
    rows = EVERY_TENTH[(EVERY_TENTH >= 3) & (EVERY_TENTH <= 26)]
    shown = replay(session(), readings(rows, rows), landmarks(rows, (320, 240)), 0, 1)
    assert (shown.begin_s, shown.end_s) == (3, 26)
    assert shown.doubts == ()


def test_doubts_are_joined_and_frames_that_are_missing_are_said(session):
    dark, far = DOUBTS.index(Doubt.TOO_DARK), DOUBTS.index(Doubt.TOO_FAR)
    time_s = [5.0, 5.1, 5.2, 5.3, 5.4, 7.0, 7.1]
    value = [90, np.nan, np.nan, np.nan, 95, 96, 97]
    table = readings(time_s, value, doubt=[-1, dark, dark, far, -1, -1, -1])
    shown = replay(session(), table, landmarks([5.0, 25.0], (320, 240)), 0, 1)
    assert shown.doubts == (
        Span(5.1, 5.3, Doubt.TOO_DARK),
        Span(5.3, 5.4, Doubt.TOO_FAR),
        Span(5.4, 7.0, None),
        Span(7.1, 25.0, None),
    )
    assert shown.runs(shown.value) == (slice(0, 1), slice(4, 5), slice(5, 7))
    assert moment(shown, 5.15) == "no value: too dark"
    assert moment(shown, 5.0) == "90° ± 6°"
    assert moment(shown, 6.5) == "no frame here"


def test_rows_of_another_exercise_are_no_part_of_the_trace(session):
    shown = replay(session(), readings([5.0, 6.0], [90, 91], planned=1), STILL, 0, 1)
    assert len(shown.time_s) == 0


def test_form_has_its_errors_and_its_faults(session):
    document = session()
    record = document.exercises[0]
    leaning = msgspec.structs.replace(record.repetitions[0], faults=(FormFault.LEAN,))
    record = msgspec.structs.replace(record, repetitions=(leaning,))
    document = msgspec.structs.replace(document, exercises=(record,))
    table = readings([5.0, 5.1], [90, 91], lean=[12.4, np.nan])
    (lean,) = replay(document, table, STILL, 0, 1).form
    assert (lean.name, lean.faults) == ("trunk_lean", (FormFault.LEAN,))
    assert form_moment(lean, 0) == "12° ± 5°"
    assert form_moment(lean, 1) == form_moment(lean, None) == "not seen"
    shown = replay(document, table, STILL, 0, 1)
    assert compensations(shown) == "Compensation in the hold: trunk leaned"


def test_words_carry_date_error_and_pain(session):
    shown = replay(session(values=(101.6,), pain=(2, None)), readings([5.0], [100.0]), STILL, 0, 1)
    assert heading(shown) == "5 Jan 2026, repetition 1"
    assert result(shown) == "102° ± 6°, held 20 s, completed"
    assert compensations(shown) == "No compensation noted in the hold"
    assert pain(shown) == "pain before 2 of 10, after not given"


def test_a_repetition_that_is_not_there_is_refused(session):
    document = session()
    assert repetitions_of(document) == ((0, 1), (0, 2), (0, 3))
    for exercise, number in ((0, 4), (1, 1), (-1, 1)):
        with pytest.raises(Fault, match="2026-01-05 has no repetition"):
            replay(document, readings([5.0], [100.0]), STILL, exercise, number)


def test_axes_have_round_ticks_inside_what_they_cover():
    assert [tick.at for tick in time_axis(-8, 23, 7).ticks] == [-5, 0, 5, 10, 15, 20]
    axis = close_axis(-6, 131, Unit.DEGREES, 5)
    # A twentieth of the 137 degrees is left free at either end: 135 is in, -45 and 180 are not.
    assert (axis.lo, axis.hi) == pytest.approx((-12.85, 137.85))
    assert [tick.at for tick in axis.ticks] == [0, 45, 90, 135]
    # The hand behind the back goes up as its share falls.
    behind = close_axis(0.2, 0.8, Unit.RATIO, 5)
    assert (behind.lo, behind.hi) == pytest.approx((0.83, 0.17))
