"""Faults and measures of form in the words of the chosen language; files keep their own."""

from __future__ import annotations

from coach.domain.form import FormFault
from coach.texts import translate


def fault_words(fault: FormFault) -> str:
    """Say what was wrong in a hold."""
    match fault:
        case FormFault.LEAN:
            return translate("review", "trunk leaned")
        case FormFault.TURN:
            return translate("review", "trunk turned")
        case FormFault.HIKE:
            return translate("review", "shoulder rose")
        case FormFault.BENT:
            return translate("review", "elbow bent")
        case FormFault.STRAIGHT:
            return translate("review", "elbow straightened")
        case FormFault.DRIFT:
            return translate("review", "elbow drifted")


def measure_words(name: str) -> str:
    """Name a measure of form by its name in files."""
    return {
        "trunk_lean": translate("review", "Trunk leans"),
        "trunk_turn": translate("review", "Trunk turns"),
        "elbow_flexion": translate("review", "Elbow bent"),
        "shoulder_hike": translate("review", "Shoulder rises"),
        "elbow_drift": translate("review", "Elbow drifts"),
    }[name]
