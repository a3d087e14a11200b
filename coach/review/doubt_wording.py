"""Why a frame gave no value, as a therapist reads it; files keep the names of ``Doubt``."""

from __future__ import annotations

from coach.domain.reading import Doubt
from coach.texts import translate


def doubt_words(doubt: Doubt) -> str:
    """Say why there is no value."""
    return {
        Doubt.NOBODY: translate("review", "nobody in view"),
        Doubt.ANOTHER_PERSON: translate("review", "another person"),
        Doubt.NOT_ALONE: translate("review", "somebody else in view"),
        Doubt.TOO_FAR: translate("review", "too far away"),
        Doubt.TOO_CLOSE: translate("review", "too close"),
        Doubt.TOO_DARK: translate("review", "too dark"),
        Doubt.HIPS_OUT_OF_VIEW: translate("review", "hips out of view"),
        Doubt.SHOULDERS_OUT_OF_VIEW: translate("review", "shoulders out of view"),
        Doubt.ARM_OUT_OF_VIEW: translate("review", "arm out of view"),
        Doubt.NO_ROOM: translate("review", "no room for the arm"),
        Doubt.NO_ROOM_ABOVE: translate("review", "no room above for the arm"),
        Doubt.TURN_TO_FACE: translate("review", "turn to face the camera"),
        Doubt.TURN_SIDEWAYS: translate("review", "turn your side to the camera"),
        Doubt.TURN_AROUND: translate("review", "turn around"),
        Doubt.RAISE_CAMERA: translate("review", "raise the camera"),
        Doubt.LEGS_IN_THE_WAY: translate("review", "legs in the way"),
        Doubt.FEET_TO_CAMERA: translate("review", "turn your feet to the camera"),
        Doubt.LIE_ON_BACK: translate("review", "lie on your back"),
        Doubt.LIE_FACE_DOWN: translate("review", "lie face down"),
        Doubt.BE_UPRIGHT: translate("review", "stand or sit upright"),
        Doubt.WRONG_SIDE: translate("review", "wrong side to the camera"),
        Doubt.BEND_ELBOW: translate("review", "bend the elbow"),
        Doubt.STRAIGHTEN_ELBOW: translate("review", "straighten the elbow"),
        Doubt.OTHER_MOVEMENT: translate("review", "other movement"),
        Doubt.UNSURE: translate("review", "unsure"),
        Doubt.ERROR_NOT_KNOWN: translate("review", "error not known"),
    }[doubt]
