"""What a patient is told of a series: one plain sentence, neither praise nor target."""

from __future__ import annotations

from typing import assert_never

from coach.domain.movement import Unit
from coach.review.change import Difference, Summary, Verdict
from coach.review.history import Series
from coach.review.levels import reach_band
from coach.review.wording import day, with_error
from coach.texts import translate


def sentence_on(series: Series, result: Summary | None) -> str:
    """Say what may be concluded; only a change beyond its own error is called one."""
    if result is None:
        return translate("diary", "No hold was measured yet.")
    difference, unit = result.difference, series.movement.unit
    if difference is None and result.sessions > 1:
        return translate(
            "diary",
            "In too few sessions the trunk kept still, so nothing can be said of a change.",
        )
    if difference is None:
        return translate(
            "diary",
            "Measured once, on {day}: {reached}. That is too little to speak of a change.",
        ).format(
            day=day(result.last.end), reached=_told(result.last.value, result.last.error, unit)
        )
    match difference.verdict:
        case Verdict.REAL:
            return _changed(difference, unit).format(
                size=with_error(
                    abs(difference.change), difference.error, unit, fine=difference.fine
                ),
                day=day(result.first.begin),
            )
        case Verdict.WITHIN_ERROR:
            return translate(
                "diary",
                "Since the first sessions ({day}) there is no change larger than the error of "
                "measuring.",
            ).format(day=day(result.first.begin))
        case Verdict.UNDECIDED | Verdict.TOO_FEW:
            return translate(
                "diary",
                "Since the first sessions ({day}) no change can be told from the error of "
                "measuring yet; more sessions may tell.",
            ).format(day=day(result.first.begin))


def _changed(difference: Difference, unit: Unit) -> str:
    further = difference.change * unit.sign > 0
    match unit:
        case Unit.DEGREES if further:
            return translate(
                "diary",
                "The arm goes {size} further than in the first sessions ({day}). That is more "
                "than the error of measuring.",
            )
        case Unit.DEGREES:
            return translate(
                "diary",
                "The arm goes {size} less far than in the first sessions ({day}). That is more "
                "than the error of measuring. Show this to your therapist.",
            )
        case Unit.RATIO if further:
            return translate(
                "diary",
                "The hand goes {size} of the back's length higher than in the first sessions "
                "({day}). That is more than the error of measuring.",
            )
        case Unit.RATIO:
            return translate(
                "diary",
                "The hand goes {size} of the back's length less high than in the first sessions "
                "({day}). That is more than the error of measuring. Show this to your therapist.",
            )
        case _ as never:
            assert_never(never)


def _told(value: float, error: float, unit: Unit) -> str:
    if unit is Unit.RATIO:
        return translate("diary", "the thumb reached {levels}").format(
            levels=reach_band(value, error).words
        )
    return with_error(value, error, unit)
