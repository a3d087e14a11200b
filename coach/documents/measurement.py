"""What ``coach measure --json`` writes: every frame's angle and every hold of one clip."""

from __future__ import annotations

from typing import Literal

import msgspec

from coach.domain.movement import Movement, Side, View
from coach.domain.progress import EndedBecause, Repetition
from coach.domain.reading import Doubt, Reading


class MeasuredFrame(msgspec.Struct, frozen=True):
    """One frame: an angle with the half width of its 95 % interval, or a doubt."""

    time_s: float
    angle_deg: float | None
    error_deg: float | None
    usable: bool
    doubt: Doubt | None


class MeasuredRepetition(msgspec.Struct, frozen=True):
    """One hold at the end of the range."""

    start_s: float
    end_s: float
    held_s: float
    value_deg: float
    error_deg: float
    ended_because: EndedBecause


class Measurement(msgspec.Struct, frozen=True, kw_only=True):
    """The whole of a measured clip."""

    format: Literal["shoulder-measurement"] = "shoulder-measurement"
    version: Literal[1] = 1
    movement: Movement
    side: Side
    view: View
    model_sha256: str | None
    frames: tuple[MeasuredFrame, ...]
    repetitions: tuple[MeasuredRepetition, ...]


def _rounded(value: float | None, digits: int) -> float | None:
    return None if value is None else round(value, digits)


def measured_frame(reading: Reading) -> MeasuredFrame:
    """Give a reading as a row, times to the millisecond and angles to a hundredth of a degree."""
    return MeasuredFrame(
        time_s=round(reading.time_s, 3),
        angle_deg=_rounded(reading.angle_deg, 2),
        error_deg=_rounded(reading.error_deg, 2),
        usable=reading.usable,
        doubt=reading.doubt,
    )


def measured_repetition(repetition: Repetition) -> MeasuredRepetition:
    """Give a repetition as a row, times to the millisecond and angles to a tenth of a degree."""
    return MeasuredRepetition(
        start_s=round(repetition.start_s, 3),
        end_s=round(repetition.end_s, 3),
        held_s=round(repetition.held_s, 3),
        value_deg=round(repetition.value_deg, 1),
        error_deg=round(repetition.error_deg, 1),
        ended_because=repetition.ended_because,
    )


def measurement_json(measurement: Measurement) -> bytes:
    """Encode as readable JSON (UTF-8, ends with a line feed)."""
    return msgspec.json.format(msgspec.json.encode(measurement), indent=1) + b"\n"
