"""A practice's own records in words, each goniometer reading beside the camera's nearest."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

import msgspec

from coach.domain.movement import Movement, Position, Side
from coach.domain.plan import Plan
from coach.domain.practice import (
    Episode,
    HandMeasure,
    IssuedPlan,
    OtherSideMeasure,
    Person,
    Record,
    TotalScore,
    Treatment,
    TreatmentKind,
)
from coach.review.history import Series
from coach.review.wording import DEGREE, MINUS, MOVEMENTS, NONE, SIDES, counted, day, reached

NEAR = timedelta(days=14)
"""A stiff shoulder moves within weeks: beyond it a camera's value is another state. Our choice."""
TREATMENTS: dict[TreatmentKind, str] = {
    TreatmentKind.INJECTION: "Injection",
    TreatmentKind.HYDRODILATATION: "Hydrodilatation",
    TreatmentKind.SURGERY: "Surgery",
    TreatmentKind.OTHER: "Other treatment",
}


@dataclass(frozen=True, slots=True)
class Line:
    """One record: its day, what it is, its value, and what stands beside it."""

    on: str
    what: str
    value: str
    beside: str = ""


def line_of(record: Record, series: Sequence[Series] = ()) -> Line:
    """Tell a record; ``series`` are the camera's, for what stands beside a goniometer's reading."""
    match record:
        case Person():
            began = day(record.created_on) if record.created_on else NONE
            return Line(began, record.code, record.name)
        case Episode():
            return _episode(record)
        case Treatment():
            return Line(day(record.on), TREATMENTS[record.kind], "", _one_line(record.text))
        case OtherSideMeasure():
            return Line(day(record.on), MOVEMENTS[record.movement], _degrees(record.value_deg))
        case HandMeasure():
            what = f"{MOVEMENTS[record.movement]}, {SIDES[record.side]}"
            value = f"{_degrees(record.value_deg)} {'passive' if record.passive else 'active'}"
            return Line(day(record.on), what, value, beside(record, series))
        case TotalScore():
            value = f"{record.total:g} of {record.maximum:g}"
            return Line(day(record.on), record.name, value)
        case IssuedPlan():
            return _plan(record)
        case _:
            raise AssertionError(type(record))


def beside(measure: HandMeasure, series: Sequence[Series]) -> str:
    """Say the camera's value of the same movement and side whose day is nearest, with that day."""
    found = _nearest(series, measure.movement, measure.side, measure.on)
    if found is None:
        return f"camera: none within {NEAR.days} days"
    apart, position, on, text = found
    where = "" if position is Position.STANDING else f", {position}"
    return f"camera {text}{where}, {'same day' if not apart else day(on)}"


def _nearest(
    series: Sequence[Series], movement: Movement, side: Side, on: date
) -> tuple[timedelta, Position, date, str] | None:
    points = [
        (abs(p.at.date() - on), s.position, p)
        for s in series
        if (s.movement, s.side) == (movement, side)
        for p in s.points
        if not p.feigned
    ]
    near = [found for found in points if found[0] <= NEAR]
    if not near:
        return None
    apart, position, point = min(near, key=lambda found: found[0])
    return apart, position, point.at.date(), reached(point.value, point.error, movement.unit)


def _episode(episode: Episode) -> Line:
    judged = [
        f"phase {episode.phase}" if episode.phase else "",
        f"irritability {episode.irritability}" if episode.irritability else "",
    ]
    goals = f"Goals: {_one_line(episode.goals)}" if episode.goals else ""
    return Line(
        f"since {day(episode.began_on)}",
        f"{SIDES[episode.side].capitalize()} shoulder",
        ", ".join(filter(None, judged)) or "phase and irritability not said",
        "\n".join(filter(None, (goals, _one_line(episode.note)))),
    )


def _plan(issued: IssuedPlan) -> Line:
    plan = msgspec.json.decode(issued.plan, type=Plan)
    side = "both sides" if issued.side is None else f"{SIDES[issued.side]} side"
    value = f"{counted(len(plan.exercises), 'exercise')}, {side}"
    return Line(day(issued.issued_on), f"Revision {issued.revision}", value, plan.title)


def _degrees(value: float) -> str:
    return f"{value:g}{DEGREE}".replace("-", MINUS)


def _one_line(text: str) -> str:
    return " ".join(text.split())
