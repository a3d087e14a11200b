"""Labels of the patient's window; the sentences that are spoken come from ``coach.cues``."""

from __future__ import annotations

from typing import assert_never

from PyQt6.QtCore import QCoreApplication

from coach.cues.wording import telling
from coach.domain.movement import Movement, Position, Side, Unit
from coach.domain.plan import PlannedExercise
from coach.review.levels import reach_band
from coach.review.wording import PLUS_MINUS, half_width

translate = QCoreApplication.translate


def exercise_name(planned: PlannedExercise) -> str:
    """Name the exercise with its side, the patient's own, and how one stands, sits or lies."""
    words = telling(planned)
    if words is not None:
        return words.title
    name = _movement_name(planned)
    match planned.position:
        case Position.STANDING:
            return name
        case Position.SITTING:
            return translate("patient", "{name}, sitting").format(name=name)
        case Position.SUPINE:
            return translate("patient", "{name}, lying on your back").format(name=name)
        case Position.PRONE:
            return translate("patient", "{name}, lying face down").format(name=name)
        case Position.SIDE_LYING:
            return translate("patient", "{name}, lying on your side").format(name=name)
        case Position.DOORWAY:
            return translate("patient", "{name}, at a door frame").format(name=name)
        case _ as never:
            assert_never(never)


def _movement_name(planned: PlannedExercise) -> str:
    left = planned.side is Side.LEFT
    match planned.measured:
        case Movement.FLEXION:
            if left:
                return translate("patient", "Left arm forwards and up")
            return translate("patient", "Right arm forwards and up")
        case Movement.EXTENSION:
            if left:
                return translate("patient", "Left arm backwards")
            return translate("patient", "Right arm backwards")
        case Movement.ABDUCTION:
            if left:
                return translate("patient", "Left arm out to the side")
            return translate("patient", "Right arm out to the side")
        case Movement.EXTERNAL_ROTATION_0:
            if left:
                return translate("patient", "Left hand turned outwards")
            return translate("patient", "Right hand turned outwards")
        case Movement.EXTERNAL_ROTATION_90:
            if left:
                return translate("patient", "Left forearm turned up and back")
            return translate("patient", "Right forearm turned up and back")
        case Movement.HORIZONTAL_ADDUCTION:
            if left:
                return translate("patient", "Left arm across the chest")
            return translate("patient", "Right arm across the chest")
        case Movement.HAND_BEHIND_BACK:
            if left:
                return translate("patient", "Left hand up the back")
            return translate("patient", "Right hand up the back")
        case _ as never:
            assert_never(never)


def measured_name(movement: Movement) -> str:
    """Say in a few words what is measured."""
    match movement:
        case Movement.FLEXION | Movement.EXTENSION | Movement.ABDUCTION:
            return translate("patient", "Arm against trunk, shoulder blade included")
        case Movement.EXTERNAL_ROTATION_0:
            return translate("patient", "Forearm turned out from straight ahead")
        case Movement.EXTERNAL_ROTATION_90:
            return translate("patient", "Forearm turned up from straight ahead")
        case Movement.HORIZONTAL_ADDUCTION:
            return translate("patient", "Arm inwards from straight out to the side")
        case Movement.HAND_BEHIND_BACK:
            return translate("patient", "Tip of the thumb, by level of the spine")
        case _ as never:
            assert_never(never)


def value_parts(value: float, error: float, unit: Unit) -> tuple[str, str]:
    """Write a value and, to stand beside it, the half width of its 95 % interval.

    Angles are whole degrees, their error rounded up and never less than one. The hand behind the
    back is a band of levels that has its error in it.
    """
    if unit is Unit.RATIO:
        return reach_band(value, error).short, ""
    whole = f"{round(value)}°".replace("-", "\N{MINUS SIGN}")
    return whole, f"{PLUS_MINUS} {half_width(error)}°"


def with_error(value: float, error: float, unit: Unit) -> str:
    """Write both in one line."""
    return " ".join(part for part in value_parts(value, error, unit) if part)


def side_name(side: Side) -> str:
    """Name the arm that is exercised, the patient's own."""
    if side is Side.LEFT:
        return translate("patient", "Left arm")
    return translate("patient", "Right arm")


def with_side(title: str, side: Side) -> str:
    """Name an exercise by its title, with the arm that does it."""
    if side is Side.LEFT:
        return translate("patient", "{title} (left arm)").format(title=title)
    return translate("patient", "{title} (right arm)").format(title=title)
