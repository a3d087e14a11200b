"""Which seconds of a hold are said aloud."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

TEN_S: Final = 10.0
LAST_S: Final = (5.0, 4.0, 3.0, 2.0, 1.0)
APART_S: Final = 3.0
"""Halfway is left out where it comes closer than this to ten or five: two numbers for one time."""
AFTER_HOLD_S: Final = 1.0
"""Time for the word 'hold' before the first number: 0.5 s of speech and as much silence."""


@dataclass(frozen=True, slots=True)
class Mark:
    """A number to be said when ``remaining_s`` are left."""

    remaining_s: float
    key: str


def hold_marks(hold_s: float) -> tuple[Mark, ...]:
    """Choose the numbers of a hold of ``hold_s`` seconds, the first one first."""
    half_s = hold_s / 2
    marks = [Mark(left_s, f"number.{left_s:g}") for left_s in (TEN_S, *LAST_S)]
    if half_s - LAST_S[0] >= APART_S and abs(half_s - TEN_S) >= APART_S:
        marks.append(Mark(half_s, "number.halfway"))
    return tuple(sorted(marks, key=lambda mark: -mark.remaining_s))


def marks_ahead(marks: tuple[Mark, ...], remaining_s: float) -> tuple[Mark, ...]:
    """Drop the marks that are past, or too near to be said after 'hold'."""
    return tuple(mark for mark in marks if mark.remaining_s <= remaining_s - AFTER_HOLD_S)


def next_number_s(time_s: float, hold_s: float, remaining_s: float) -> float:
    """Tell when the next number, or the end, of a running hold will be due."""
    ahead = [mark.remaining_s for mark in hold_marks(hold_s) if mark.remaining_s < remaining_s]
    return time_s + remaining_s - max(ahead, default=0.0)
