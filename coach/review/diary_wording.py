"""What a patient is told of a series: one plain sentence, neither praise nor target."""

from __future__ import annotations

import math

from coach.domain.movement import Unit
from coach.review.change import Difference, Summary, Verdict
from coach.review.history import Series
from coach.review.levels import reach_band
from coach.review.wording import day, with_error


def sentence_on(series: Series, result: Summary | None) -> str:
    """Say what may be concluded; only a change beyond its own error is called one."""
    if result is None:
        return "No hold was measured yet."
    difference, unit = result.difference, series.movement.unit
    if difference is None and result.sessions > 1:
        return "In too few sessions the trunk kept still, so nothing can be said of a change."
    if difference is None:
        return (
            f"Measured once, on {day(result.last.end)}: "
            f"{_told(result.last.value, result.last.error, unit)}. "
            "That is too little to speak of a change."
        )
    begin = f"the first sessions ({day(result.first.begin)})"
    match difference.verdict:
        case Verdict.REAL:
            return _changed(difference, unit, begin)
        case Verdict.WITHIN_ERROR | Verdict.TOO_FEW:
            return f"Since {begin} there is no change larger than the error of measuring."


def _changed(difference: Difference, unit: Unit, begin: str) -> str:
    further = difference.change * unit.sign > 0
    if unit is Unit.DEGREES:
        size = with_error(abs(difference.change), difference.error, unit, fine=difference.fine)
        way = "further" if further else "less far"
        told = f"The arm goes {size} {way} than in {begin}"
    else:
        size = with_error(abs(difference.change), difference.error, unit, fine=difference.fine)
        way = "higher" if further else "less high"
        told = f"The hand goes {size} of the back's length {way} than in {begin}"
    ask = "" if further else " Show this to your therapist."
    return f"{told}. That is more than the error of measuring.{ask}"


def _told(value: float, error: float, unit: Unit) -> str:
    if unit is Unit.RATIO:
        return f"the thumb reached {reach_band(value, error).words}"
    # Rounded up, as everywhere in the patient's window.
    return with_error(value, math.ceil(error), unit)
