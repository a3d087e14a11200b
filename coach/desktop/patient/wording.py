"""Labels of the patient's window; the sentences that are spoken come from ``coach.cues``."""

from __future__ import annotations

from typing import assert_never

from PyQt6.QtCore import QCoreApplication

from coach.domain.movement import Movement, Side
from coach.domain.plan import PlannedExercise
from coach.domain.reading import Reading

translate = QCoreApplication.translate


def exercise_name(planned: PlannedExercise) -> str:
    """Name the exercise with its side: the patient's own left or right."""
    left = planned.side is Side.LEFT
    match planned.movement:
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
        case _ as never:
            assert_never(never)


def measured_name(movement: Movement) -> str:
    """Say in a few words what the angle is."""
    match movement:
        case Movement.FLEXION | Movement.EXTENSION | Movement.ABDUCTION:
            return translate("patient", "Arm against trunk, shoulder blade included")
        case Movement.EXTERNAL_ROTATION_0:
            return translate("patient", "Forearm turned out from straight ahead")
        case _ as never:
            assert_never(never)


def whole_degrees(angle_deg: float) -> str:
    """Write an angle as it is shown: whole degrees, a true minus sign."""
    return f"{round(angle_deg)}°".replace("-", "\N{MINUS SIGN}")


def with_error(angle_deg: float, error_deg: float) -> str:
    """Write an angle with the half width of its 95 % interval, never less than one degree."""
    return f"{whole_degrees(angle_deg)} ± {error_degrees(error_deg)}"


def error_degrees(error_deg: float) -> str:
    """Write the half width of a 95 % interval, rounded up."""
    return f"{max(1, -int(-error_deg // 1))}°"


def reading_text(reading: Reading | None) -> str:
    """Write a reading in one line, empty where there is no angle."""
    if reading is None or reading.angle_deg is None or reading.error_deg is None:
        return ""
    return with_error(reading.angle_deg, reading.error_deg)
