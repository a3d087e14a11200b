"""Numbers, dates and names as people read them; one place, so that all readers see the same."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from datetime import date
from types import MappingProxyType

from coach.domain.movement import Movement, Position, Side, Unit, View
from coach.domain.progress import EndedBecause
from coach.review.levels import reach_band
from coach.texts import localised, translate

DEGREE = "\N{DEGREE SIGN}"
NO_NAMES: Mapping[str, str] = MappingProxyType({})
"""Names of exercises by their slugs, where the catalogue's are not at hand."""
NONE = "\N{EN DASH}"
"""Stands where there is no value."""
MINUS = "\N{MINUS SIGN}"
PLUS_MINUS = "\N{PLUS-MINUS SIGN}"
_NOISE = 1e-6
"""What sums of floats are off by does not make an error another step larger."""


def movement_of(movement: Movement, side: Side, position: Position = Position.STANDING) -> str:
    """Name a movement with its side, and with its position where that is not standing."""
    name = f"{movement_name(movement)}, {side_word(side)}"
    return name if position is Position.STANDING else f"{name}, {position_word(position)}"


def movement_name(movement: Movement) -> str:
    """Name a movement in the trade terms of the chosen language."""
    match movement:
        case Movement.FLEXION:
            return translate("review", "Flexion")
        case Movement.EXTENSION:
            return translate("review", "Extension")
        case Movement.ABDUCTION:
            return translate("review", "Abduction")
        case Movement.EXTERNAL_ROTATION_0:
            return translate("review", "External rotation at side")
        case Movement.EXTERNAL_ROTATION_90:
            return translate("review", "External rotation at 90\N{DEGREE SIGN}")
        case Movement.HORIZONTAL_ADDUCTION:
            return translate("review", "Horizontal adduction")
        case Movement.HAND_BEHIND_BACK:
            return translate("review", "Hand behind back")


def side_word(side: Side) -> str:
    """Say which side, as it stands behind a name."""
    return translate("review", "left") if side is Side.LEFT else translate("review", "right")


def position_word(position: Position) -> str:
    """Say the position, as it stands behind a name."""
    match position:
        case Position.STANDING:
            return translate("review", "standing")
        case Position.SITTING:
            return translate("review", "sitting")
        case Position.SUPINE:
            return translate("review", "supine")
        case Position.PRONE:
            return translate("review", "prone")
        case Position.SIDE_LYING:
            return translate("review", "side-lying")
        case Position.DOORWAY:
            return translate("review", "doorway")


def view_word(view: View) -> str:
    """Say from where the camera looks."""
    match view:
        case View.FRONT:
            return translate("review", "front")
        case View.SIDE:
            return translate("review", "side")
        case View.BACK:
            return translate("review", "back")
        case View.FOOT:
            return translate("review", "foot")


def filmed(movement: Movement, side: Side, position: Position, view: View) -> str:
    """Name a movement with all that decides how it was measured."""
    return translate("review", "{movement}, {side}, {position}, camera: {view}").format(
        movement=movement_name(movement),
        side=side_word(side),
        position=position_word(position),
        view=view_word(view),
    )


def ended_word(because: EndedBecause) -> str:
    """Say why a hold ended."""
    match because:
        case EndedBecause.COMPLETED:
            return translate("review", "completed")
        case EndedBecause.LET_GO:
            return translate("review", "let go")
        case EndedBecause.LOST:
            return translate("review", "ended with the arm out of sight")
        case EndedBecause.STOPPED:
            return translate("review", "stopped")
        case EndedBecause.INPUT_ENDED:
            return translate("review", "ended with the recording")


def whole(value: float, *, fine: bool = False) -> str:
    """Round to a whole number (or tenths) with a true minus sign and no negative zero."""
    rounded = round(value, 1) if fine else round(value)
    return localised(f"{MINUS}{-rounded}" if rounded < 0 else str(abs(rounded)))


def amount(value: float, unit: Unit, *, fine: bool = False) -> str:
    """Write a value: whole degrees or percent, since no method here is better than that.

    ``fine``: tenths, where two values would read alike that are not.
    """
    if unit is Unit.DEGREES:
        return whole(value, fine=fine) + DEGREE
    return f"{whole(100 * value, fine=fine)} %"


def with_error(value: float, error: float, unit: Unit, *, fine: bool = False) -> str:
    """Write a value with the half width of its 95 % interval, which is never said to be less."""
    if unit is Unit.RATIO:
        return percent_with_error(100 * value, 100 * error, fine=fine)
    return f"{amount(value, unit, fine=fine)} {PLUS_MINUS} {half_width(error, fine=fine)}{DEGREE}"


def half_width(error: float, *, fine: bool = False) -> str:
    """Write the half width of an interval: rounded up, and never nothing.

    JCGM 100:2008 (GUM) 7.2.6 lets uncertainties be rounded up rather than to the nearest digit.
    """
    step = 0.1 if fine else 1.0
    return whole(max(1, steps_up(error, step)) * step, fine=fine)


def steps_up(error: float, step: float) -> int:
    """Count the steps that an error is at most."""
    return math.ceil(error / step - _NOISE)


def least(value: float, unit: Unit, *, fine: bool = False) -> str:
    """Write what a change must exceed to be real: rounded up, as the errors that it is made of."""
    if unit is Unit.DEGREES:
        return half_width(value, fine=fine) + DEGREE
    return f"{half_width(100 * value, fine=fine)} %"


def reached(value: float, error: float, unit: Unit) -> str:
    """Write how far a range goes: an angle, or the levels of the spine the thumb is between."""
    if unit is Unit.RATIO:
        return reach_band(value, error).short
    return with_error(value, error, unit)


def change_with_error(change: float, error: float, unit: Unit, *, fine: bool = False) -> str:
    """Write a change: signed degrees, or percent of the back's length up or down."""
    if unit is Unit.DEGREES:
        return "+" * (round(change, int(fine)) > 0) + with_error(change, error, unit, fine=fine)
    size = with_error(abs(change), error, unit, fine=fine)
    if round(100 * change, int(fine)) > 0:
        return translate("review", "{change} down").format(change=size)
    if round(100 * change, int(fine)) < 0:
        return translate("review", "{change} up").format(change=size)
    return size


def percent(share: float) -> str:
    """Write a share of 1."""
    return f"{whole(100 * share)} %"


def percent_with_error(percentage: float, error: float, *, fine: bool = False) -> str:
    """Write a percentage with the half width of its 95 % interval."""
    return f"{whole(percentage, fine=fine)} {PLUS_MINUS} {half_width(error, fine=fine)} %"


def day(value: date) -> str:
    """Write a date so that no country misreads it."""
    written = translate("dates", "{day} {month} {year}")
    return written.format(day=value.day, month=month(value.month), year=value.year)


def day_and_month(value: date) -> str:
    """Write a date whose year is told elsewhere."""
    written = translate("dates", "{day} {month}")
    return written.format(day=value.day, month=month(value.month))


def month(number: int) -> str:
    """Give the short name of a month, 1 to 12."""
    match number:
        case 1:
            return translate("dates", "Jan")
        case 2:
            return translate("dates", "Feb")
        case 3:
            return translate("dates", "Mar")
        case 4:
            return translate("dates", "Apr")
        case 5:
            return translate("dates", "May")
        case 6:
            return translate("dates", "Jun")
        case 7:
            return translate("dates", "Jul")
        case 8:
            return translate("dates", "Aug")
        case 9:
            return translate("dates", "Sep")
        case 10:
            return translate("dates", "Oct")
        case 11:
            return translate("dates", "Nov")
        case 12:
            return translate("dates", "Dec")
        case _:
            raise ValueError(f"no month {number}")


def period(begin: date, end: date) -> str:
    """Write from when to when."""
    if begin == end:
        return day(begin)
    return translate("review", "{begin} to {end}").format(begin=day(begin), end=day(end))


def minutes(seconds: float) -> str:
    """Write a length of time in minutes and seconds."""
    total = round(seconds)
    if total < 60:
        return f"{total} s"
    if total < 3600:
        return f"{total // 60} min {total % 60:02d} s"
    return f"{total // 3600} h {total % 3600 // 60:02d} min"


def listed(parts: Sequence[str]) -> str:
    """Join with commas and 'and'."""
    if len(parts) < 2:
        return "".join(parts)
    both = translate("review", "{first} and {last}")
    return both.format(first=", ".join(parts[:-1]), last=parts[-1])
