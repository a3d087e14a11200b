"""Numbers, dates and names as people read them; one place, so that all readers see the same."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from coach.domain.movement import Movement, Side

MOVEMENTS: dict[Movement, str] = {
    Movement.FLEXION: "Flexion",
    Movement.EXTENSION: "Extension",
    Movement.ABDUCTION: "Abduction",
    Movement.EXTERNAL_ROTATION_0: "External rotation at side",
}
SIDES: dict[Side, str] = {Side.LEFT: "left", Side.RIGHT: "right"}
MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")
NONE = "\N{EN DASH}"
"""Stands where there is no value."""
MINUS = "\N{MINUS SIGN}"
DEGREE = "\N{DEGREE SIGN}"
PLUS_MINUS = "\N{PLUS-MINUS SIGN}"


def movement_of(movement: Movement, side: Side) -> str:
    """Name a movement with its side."""
    return f"{MOVEMENTS[movement]}, {SIDES[side]}"


def whole(value: float) -> str:
    """Round to a whole number with a true minus sign and no negative zero."""
    rounded = round(value)
    return f"{MINUS}{-rounded}" if rounded < 0 else str(rounded)


def degrees(value_deg: float) -> str:
    """Write an angle: whole degrees, since no method here is better than that."""
    return whole(value_deg) + DEGREE


def signed_degrees(value_deg: float) -> str:
    """Write a change of angle."""
    return ("+" if round(value_deg) > 0 else "") + degrees(value_deg)


def with_error(text: str, error_deg: float) -> str:
    """Add the half width of a 95 % interval, which is never said to be nothing."""
    return f"{text} {PLUS_MINUS} {max(1, round(error_deg))}{DEGREE}"


def percent(share: float) -> str:
    """Write a share of 1."""
    return f"{whole(100 * share)} %"


def percent_with_error(percentage: float, error: float) -> str:
    """Write a percentage with the half width of its 95 % interval."""
    return f"{whole(percentage)} {PLUS_MINUS} {max(1, round(error))} %"


def day(value: date) -> str:
    """Write a date so that no country misreads it."""
    return f"{value.day} {MONTHS[value.month - 1]} {value.year}"


def period(begin: date, end: date) -> str:
    """Write from when to when."""
    return day(begin) if begin == end else f"{day(begin)} to {day(end)}"


def counted(count: int, one: str, many: str | None = None) -> str:
    """Write a number with its noun: 1 session, 2 sessions."""
    return f"{count} {one if count == 1 else many or one + 's'}"


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
    return f"{', '.join(parts[:-1])} and {parts[-1]}"
