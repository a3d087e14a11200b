"""A replayed repetition in words: its heading, one moment of it, its compensations."""

from __future__ import annotations

import math

from coach.domain.form import FormFault
from coach.domain.movement import Unit
from coach.domain.progress import EndedBecause
from coach.review.form_series import FormSeries
from coach.review.replay import Replay
from coach.review.wording import MOVEMENTS, SIDES, day, listed, reached, with_error

_FORM = {
    "trunk_lean": "Trunk leans",
    "trunk_turn": "Trunk turns",
    "elbow_flexion": "Elbow bent",
    "shoulder_hike": "Shoulder rises",
    "elbow_drift": "Elbow drifts",
}
_FAULTS = {
    FormFault.LEAN: "trunk leaned",
    FormFault.TURN: "trunk turned",
    FormFault.HIKE: "shoulder rose",
    FormFault.BENT: "elbow bent",
    FormFault.STRAIGHT: "elbow straightened",
    FormFault.DRIFT: "elbow drifted",
}
_ENDS = {
    EndedBecause.COMPLETED: "completed",
    EndedBecause.LET_GO: "let go",
    EndedBecause.LOST: "ended with the arm out of sight",
    EndedBecause.STOPPED: "stopped",
    EndedBecause.INPUT_ENDED: "ended with the recording",
}


def heading(shown: Replay) -> str:
    """Name the day and the repetition."""
    return f"{day(shown.started_at.date())}, repetition {shown.repetition.number}"


def exercise_name(shown: Replay) -> str:
    """Name the movement, side, position and the camera's view."""
    record = shown.record
    name = f"{MOVEMENTS[record.measured]}, {SIDES[record.side]}, {record.position}"
    return f"{name}, camera: {record.view}"


def result(shown: Replay) -> str:
    """Say what the repetition came to."""
    repetition = shown.repetition
    value = reached(repetition.value, repetition.error, repetition.unit)
    return f"{value}, held {round(repetition.held_s)} s, {_ENDS[repetition.ended_because]}"


def pain(shown: Replay) -> str:
    """Say the pain before and after the exercise."""
    before, after = shown.record.pain_before, shown.record.pain_after
    if before is None and after is None:
        return "pain not given"
    words = ("not given" if score is None else f"{score} of 10" for score in (before, after))
    return "pain before {}, after {}".format(*words)


def compensations(shown: Replay) -> str:
    """Say what was wrong with the hold by the exercise's limits."""
    faults = shown.repetition.faults
    if faults:
        return "Compensation in the hold: " + listed([_FAULTS[fault] for fault in faults])
    return "No compensation noted in the hold"


def moment(shown: Replay, time_s: float) -> str:
    """Say what was measured at a time, or why nothing was."""
    reading = shown.reading_at(time_s)
    if reading is None:
        return "no frame here"
    if reading.value is None or reading.error is None:
        return "no value: " + (reading.doubt.replace("-", " ") if reading.doubt else "unknown")
    return reached(reading.value, reading.error, shown.repetition.unit)


def form_name(series: FormSeries) -> str:
    """Name a measure of form."""
    return _FORM[series.name]


def form_moment(series: FormSeries, row: int | None) -> str:
    """Say a measure of form in one row of the trace."""
    if row is None or math.isnan(series.value[row]):
        return "not seen"
    value, error = float(series.value[row]), float(series.error[row])
    if math.isnan(error):
        # A file of version 1 has values of form without their errors, which are not shown.
        return "error not known"
    return with_error(value, error, series.unit)


def in_words(shown: Replay, time_s: float) -> str:
    """Say one moment to who does not see the picture."""
    begin_s, end_s = shown.hold_s
    since_s = time_s - begin_s
    where = f"{abs(since_s):.1f} s {'before' if since_s < 0 else 'into'} the hold"
    if time_s > end_s:
        where = f"{time_s - end_s:.1f} s after the hold"
    return f"{heading(shown)}: {moment(shown, time_s)}, {where}"


def unit_sign(unit: Unit) -> str:
    """Give what stands behind a number on an axis."""
    return "\N{DEGREE SIGN}" if unit is Unit.DEGREES else " %"
