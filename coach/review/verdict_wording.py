"""A verdict, a phase, an irritability in the words of the chosen language; files keep their own."""

from __future__ import annotations

from coach.domain.exercise import Irritability, StiffnessPhase
from coach.review.difference import Verdict
from coach.texts import translate


def verdict_words(verdict: Verdict) -> str:
    """Say what may be said of a change."""
    match verdict:
        case Verdict.REAL:
            return translate("review", "real change")
        case Verdict.WITHIN_ERROR:
            return translate("review", "within measurement error")
        case Verdict.UNDECIDED:
            return translate("review", "cannot tell yet")
        case Verdict.TOO_FEW:
            return translate("review", "too few sessions")


def phase_words(phase: StiffnessPhase) -> str:
    """Name a phase of a stiff shoulder."""
    match phase:
        case StiffnessPhase.PAINFUL:
            return translate("review", "painful")
        case StiffnessPhase.STIFF:
            return translate("review", "stiff")
        case StiffnessPhase.THAWING:
            return translate("review", "thawing")


def irritability_words(irritability: Irritability) -> str:
    """Name how easily a shoulder is irritated."""
    match irritability:
        case Irritability.HIGH:
            return translate("review", "high")
        case Irritability.MODERATE:
            return translate("review", "moderate")
        case Irritability.LOW:
            return translate("review", "low")
