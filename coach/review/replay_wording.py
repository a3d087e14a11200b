"""A replayed repetition in words: its heading, one moment of it, its compensations."""

from __future__ import annotations

import math

from coach.domain.movement import Unit
from coach.review.doubt_wording import doubt_words
from coach.review.form_series import FormSeries
from coach.review.form_wording import fault_words, measure_words
from coach.review.replay import Replay
from coach.review.wording import (
    day,
    ended_word,
    filmed,
    listed,
    reached,
    with_error,
)
from coach.texts import localised, translate


def heading(shown: Replay) -> str:
    """Name the day and the repetition."""
    return translate("review", "{day}, repetition {number}").format(
        day=day(shown.started_at.date()), number=shown.repetition.number
    )


def exercise_name(shown: Replay) -> str:
    """Name the movement, side, position and the camera's view."""
    record = shown.record
    return filmed(record.measured, record.side, record.position, record.view)


def result(shown: Replay) -> str:
    """Say what the repetition came to."""
    repetition = shown.repetition
    return translate("review", "{value}, held {seconds} s, {ended}").format(
        value=reached(repetition.value, repetition.error, repetition.unit),
        seconds=round(repetition.held_s),
        ended=ended_word(repetition.ended_because),
    )


def pain(shown: Replay) -> str:
    """Say the pain before and after the exercise."""
    before, after = shown.record.pain_before, shown.record.pain_after
    if before is None and after is None:
        return translate("review", "pain not given")
    return translate("review", "pain before {before}, after {after}").format(
        before=_score(before), after=_score(after)
    )


def _score(score: int | None) -> str:
    if score is None:
        return translate("review", "not given")
    return translate("review", "{score} of 10").format(score=score)


def compensations(shown: Replay) -> str:
    """Say what was wrong with the hold by the exercise's limits."""
    faults = shown.repetition.faults
    if not faults:
        return translate("review", "No compensation noted in the hold")
    told = translate("review", "Compensation in the hold: {faults}")
    return told.format(faults=listed([fault_words(fault) for fault in faults]))


def moment(shown: Replay, time_s: float) -> str:
    """Say what was measured at a time, or why nothing was."""
    reading = shown.reading_at(time_s)
    if reading is None:
        return translate("review", "no frame here")
    if reading.value is not None and reading.error is not None:
        return reached(reading.value, reading.error, shown.repetition.unit)
    if reading.doubt is None:
        return translate("review", "no value: unknown")
    return translate("review", "no value: {why}").format(why=doubt_words(reading.doubt))


def form_name(series: FormSeries) -> str:
    """Name a measure of form."""
    return measure_words(series.name)


def form_moment(series: FormSeries, row: int | None) -> str:
    """Say a measure of form in one row of the trace."""
    if row is None or math.isnan(series.value[row]):
        return translate("review", "not seen")
    value, error = float(series.value[row]), float(series.error[row])
    if math.isnan(error):
        # A file of version 1 has values of form without their errors, which are not shown.
        return translate("review", "error not known")
    return with_error(value, error, series.unit)


def in_words(shown: Replay, time_s: float) -> str:
    """Say one moment to who does not see the picture."""
    begin_s, end_s = shown.hold_s
    since_s = time_s - begin_s
    if time_s > end_s:
        told = translate("review", "{repetition}: {moment}, {seconds} s after the hold")
        since_s = time_s - end_s
    elif since_s < 0:
        told = translate("review", "{repetition}: {moment}, {seconds} s before the hold")
    else:
        told = translate("review", "{repetition}: {moment}, {seconds} s into the hold")
    return told.format(
        repetition=heading(shown),
        moment=moment(shown, time_s),
        seconds=localised(f"{abs(since_s):.1f}"),
    )


def unit_sign(unit: Unit) -> str:
    """Give what stands behind a number on an axis."""
    return "\N{DEGREE SIGN}" if unit is Unit.DEGREES else " %"
