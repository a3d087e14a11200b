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
from coach.review.verdict_wording import irritability_words, phase_words
from coach.review.wording import (
    DEGREE,
    MINUS,
    NONE,
    day,
    movement_name,
    position_word,
    reached,
    side_word,
)
from coach.texts import localised, translate

NEAR = timedelta(days=14)
"""A stiff shoulder moves within weeks: beyond it a camera's value is another state. Our choice."""


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
            return Line(day(record.on), treatment_name(record.kind), "", _one_line(record.text))
        case OtherSideMeasure():
            return Line(day(record.on), movement_name(record.movement), _degrees(record.value_deg))
        case HandMeasure():
            what = f"{movement_name(record.movement)}, {side_word(record.side)}"
            told = (
                translate("review", "{value} passive")
                if record.passive
                else translate("review", "{value} active")
            )
            value = told.format(value=_degrees(record.value_deg))
            return Line(day(record.on), what, value, beside(record, series))
        case TotalScore():
            total, most = localised(f"{record.total:g}"), localised(f"{record.maximum:g}")
            value = translate("review", "{total} of {most}").format(total=total, most=most)
            return Line(day(record.on), record.name, value)
        case IssuedPlan():
            return _plan(record)
        case _:
            raise AssertionError(type(record))


def beside(measure: HandMeasure, series: Sequence[Series]) -> str:
    """Say the camera's value of the same movement and side whose day is nearest, with that day."""
    found = _nearest(series, measure.movement, measure.side, measure.on)
    if found is None:
        return translate("review", "camera: none within {days} days").format(days=NEAR.days)
    apart, position, on, text = found
    if position is not Position.STANDING:
        text = f"{text}, {position_word(position)}"
    if not apart:
        return translate("review", "camera {text}, same day").format(text=text)
    return translate("review", "camera {text}, {day}").format(text=text, day=day(on))


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
    judged = []
    if episode.phase:
        judged.append(
            translate("review", "phase {phase_words}").format(
                phase_words=phase_words(episode.phase)
            )
        )
    if episode.irritability:
        judged.append(
            translate("review", "irritability {irritability_words}").format(
                irritability_words=irritability_words(episode.irritability)
            )
        )
    goals = (
        translate("review", "Goals: {one_line}").format(one_line=_one_line(episode.goals))
        if episode.goals
        else ""
    )
    shoulder = (
        translate("review", "Left shoulder")
        if episode.side is Side.LEFT
        else translate("review", "Right shoulder")
    )
    return Line(
        translate("review", "since {day}").format(day=day(episode.began_on)),
        shoulder,
        ", ".join(judged) or translate("review", "phase and irritability not said"),
        "\n".join(filter(None, (goals, _one_line(episode.note)))),
    )


def _plan(issued: IssuedPlan) -> Line:
    plan = msgspec.json.decode(issued.plan, type=Plan)
    if issued.side is None:
        value = translate("review", "exercises: {count}, both sides")
    elif issued.side is Side.LEFT:
        value = translate("review", "exercises: {count}, left side")
    else:
        value = translate("review", "exercises: {count}, right side")
    value = value.format(count=len(plan.exercises))
    return Line(
        day(issued.issued_on),
        translate("review", "Revision {revision}").format(revision=issued.revision),
        value,
        plan.title,
    )


def _degrees(value: float) -> str:
    return localised(f"{value:g}{DEGREE}".replace("-", MINUS))


def _one_line(text: str) -> str:
    return " ".join(text.split())


def treatment_name(kind: TreatmentKind) -> str:
    """Name a kind of treatment."""
    match kind:
        case TreatmentKind.INJECTION:
            return translate("review", "Injection")
        case TreatmentKind.HYDRODILATATION:
            return translate("review", "Hydrodilatation")
        case TreatmentKind.SURGERY:
            return translate("review", "Surgery")
        case TreatmentKind.OTHER:
            return translate("review", "Other treatment")
