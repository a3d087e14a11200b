"""What ``coach measure --json`` writes: every frame's value and every hold of one clip."""

from __future__ import annotations

from typing import Literal

import msgspec
from msgspec import UNSET, UnsetType

from coach.documents.rounding import rounded
from coach.domain.excursion import Excursion
from coach.domain.movement import Movement, Position, Side, Unit, View
from coach.domain.progress import EndedBecause, Repetition
from coach.domain.reading import Calibration, Doubt, Form, Reading


class MeasuredFrame(msgspec.Struct, frozen=True, kw_only=True):
    """One frame: a value with the half width of its 95 % interval, or a doubt.

    Angles are in ``angle_deg`` and ``error_deg``, the height of the hand behind the back in
    ``reach_ratio`` and ``error_ratio``; the other two are not there.
    """

    time_s: float
    angle_deg: float | UnsetType | None = UNSET
    error_deg: float | UnsetType | None = UNSET
    reach_ratio: float | UnsetType | None = UNSET
    error_ratio: float | UnsetType | None = UNSET
    usable: bool
    doubt: Doubt | None
    form: Form


class MeasuredRepetition(msgspec.Struct, frozen=True, kw_only=True):
    """One hold at the end of the range, in degrees or as a ratio."""

    start_s: float
    end_s: float
    held_s: float
    value_deg: float | UnsetType = UNSET
    error_deg: float | UnsetType = UNSET
    value_ratio: float | UnsetType = UNSET
    error_ratio: float | UnsetType = UNSET
    ended_because: EndedBecause
    form: Form


class MeasuredExcursion(msgspec.Struct, frozen=True):
    """One movement from rest to a turning point and back, held there or not."""

    start_s: float
    peak_s: float
    end_s: float
    held_s: float
    usable: int
    frames: int
    value_deg: float | UnsetType | None = UNSET
    error_deg: float | UnsetType | None = UNSET
    value_ratio: float | UnsetType | None = UNSET
    error_ratio: float | UnsetType | None = UNSET


class Measurement(msgspec.Struct, frozen=True, kw_only=True):
    """The whole of a measured clip."""

    format: Literal["shoulder-measurement"] = "shoulder-measurement"
    version: Literal[1] = 1
    movement: Movement
    side: Side
    view: View
    position: Position
    estimator: Literal["whole-sequence"] = "whole-sequence"
    definitions: int
    model_sha256: str | None
    calibration: Calibration | None
    frames: tuple[MeasuredFrame, ...]
    repetitions: tuple[MeasuredRepetition, ...]
    excursions: tuple[MeasuredExcursion, ...]


def _rounded(value: float | None, digits: int) -> float | None:
    return None if value is None else round(value, digits)


def measured_frame(reading: Reading, unit: Unit) -> MeasuredFrame:
    """Give a reading as a row: milliseconds, hundredths of a degree, ten-thousandths of a ratio."""
    digits = unit.decimals + 1
    value, error = _rounded(reading.value, digits), _rounded(reading.error, digits)
    angle = unit is Unit.DEGREES
    return MeasuredFrame(
        time_s=round(reading.time_s, 3),
        angle_deg=value if angle else UNSET,
        error_deg=error if angle else UNSET,
        reach_ratio=UNSET if angle else value,
        error_ratio=UNSET if angle else error,
        usable=reading.usable,
        doubt=reading.doubt,
        form=rounded(reading.form),
    )


def measured_repetition(repetition: Repetition) -> MeasuredRepetition:
    """Give a repetition as a row: milliseconds, tenths of a degree, thousandths of a ratio."""
    digits, angle = repetition.unit.decimals, repetition.unit is Unit.DEGREES
    value, error = round(repetition.value, digits), round(repetition.error, digits)
    return MeasuredRepetition(
        start_s=round(repetition.start_s, 3),
        end_s=round(repetition.end_s, 3),
        held_s=round(repetition.held_s, 3),
        value_deg=value if angle else UNSET,
        error_deg=error if angle else UNSET,
        value_ratio=UNSET if angle else value,
        error_ratio=UNSET if angle else error,
        ended_because=repetition.ended_because,
        form=rounded(repetition.form),
    )


def measured_excursion(excursion: Excursion, unit: Unit) -> MeasuredExcursion:
    """Give an excursion as a row: milliseconds, tenths of a degree, thousandths of a ratio."""
    digits, angle = unit.decimals, unit is Unit.DEGREES
    value, error = _rounded(excursion.value, digits), _rounded(excursion.error, digits)
    return MeasuredExcursion(
        start_s=round(excursion.start_s, 3),
        peak_s=round(excursion.peak_s, 3),
        end_s=round(excursion.end_s, 3),
        held_s=round(excursion.held_s, 3),
        usable=excursion.usable,
        frames=excursion.frames,
        value_deg=value if angle else UNSET,
        error_deg=error if angle else UNSET,
        value_ratio=UNSET if angle else value,
        error_ratio=UNSET if angle else error,
    )


def measurement_json(measurement: Measurement) -> bytes:
    """Encode as readable JSON (UTF-8, ends with a line feed)."""
    return msgspec.json.format(msgspec.json.encode(measurement), indent=1) + b"\n"
