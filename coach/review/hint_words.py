"""The sentences of ``hints``: what was seen, the rule behind it and where the rule is from."""

from __future__ import annotations

from collections.abc import Sequence

from coach.domain.exercise import StiffnessPhase
from coach.domain.movement import Movement, Side
from coach.review.counts import sittings_counted
from coach.review.verdict_wording import phase_words
from coach.review.wording import listed, movement_name, percent_with_error
from coach.texts import localised, translate


def directions(limited: Sequence[Movement], of: int, side: Side) -> str:
    """Say that all directions are limited, or only one."""
    named = listed([movement_name(movement) for movement in limited])
    if len(limited) == of:
        told = (
            translate(
                "hint",
                "All {count} measured directions of the left shoulder are limited against the "
                "other side: {movements}. The cause cannot be seen from it.",
            )
            if side is Side.LEFT
            else translate(
                "hint",
                "All {count} measured directions of the right shoulder are limited against the "
                "other side: {movements}. The cause cannot be seen from it.",
            )
        )
    else:
        told = (
            translate(
                "hint",
                "Of {count} measured directions of the left shoulder only {movements} is limited "
                "against the other side; a stiff shoulder is usually limited in all, so another "
                "look may be worth it.",
            )
            if side is Side.LEFT
            else translate(
                "hint",
                "Of {count} measured directions of the right shoulder only {movements} is limited "
                "against the other side; a stiff shoulder is usually limited in all, so another "
                "look may be worth it.",
            )
        )
    return told.format(count=of, movements=named)


def directions_rule(least: int, limited_by_deg: float) -> str:
    """Say when a direction counts as limited."""
    return translate(
        "hint",
        "At least {least} directions measured on both sides; limited: more than {degrees:.0f} "
        "degrees short of the other side, this side's error included.",
    ).format(least=least, degrees=limited_by_deg)


def directions_source() -> str:
    """Say where that is from."""
    return translate(
        "hint",
        "Common practice for all against one; the 15 degrees from a published follow-up's "
        "criterion of recovery (from memory).",
    )


def rotation(side: Side, share: tuple[float, float], *, below: bool) -> str:
    """Say how external rotation stands against half of the other side's."""
    if below:
        told = (
            translate(
                "hint",
                "External rotation at the side, left, is below half of the other side's: {share}, "
                "self-assisted and measured by camera.",
            )
            if side is Side.LEFT
            else translate(
                "hint",
                "External rotation at the side, right, is below half of the other side's: {share}, "
                "self-assisted and measured by camera.",
            )
        )
    else:
        told = (
            translate(
                "hint",
                "External rotation at the side, left, is above half of the other side's: {share}, "
                "self-assisted and measured by camera.",
            )
            if side is Side.LEFT
            else translate(
                "hint",
                "External rotation at the side, right, is above half of the other side's: {share}, "
                "self-assisted and measured by camera.",
            )
        )
    return told.format(share=percent_with_error(*share))


def rotation_rule() -> str:
    """Say what is compared."""
    return translate(
        "hint",
        "External rotation with the arm at the side against half of the other side's, this side's "
        "error included.",
    )


def rotation_source() -> str:
    """Say where the half is from."""
    return translate(
        "hint",
        "Trials of frozen shoulder took in people with passive external rotation under 50 % of the "
        "other side (Rangan et al. 2020; from memory).",
    )


def pattern(
    side: Side, rotation: tuple[float, float], abduction: tuple[float, float], *, in_order: bool
) -> str:
    """Say whether what is left is in the order of the capsular pattern."""
    if in_order:
        told = (
            translate(
                "hint",
                "Of the left shoulder are left external rotation {rotation} and abduction "
                "{abduction} of the other side's: in the order of the capsular pattern, as far as "
                "measured (internal rotation is not). The pattern is not universal.",
            )
            if side is Side.LEFT
            else translate(
                "hint",
                "Of the right shoulder are left external rotation {rotation} and abduction "
                "{abduction} of the other side's: in the order of the capsular pattern, as far as "
                "measured (internal rotation is not). The pattern is not universal.",
            )
        )
    else:
        told = (
            translate(
                "hint",
                "Of the left shoulder are left external rotation {rotation} and abduction "
                "{abduction} of the other side's: not in the order of the capsular pattern, as far "
                "as measured (internal rotation is not). The pattern is not universal.",
            )
            if side is Side.LEFT
            else translate(
                "hint",
                "Of the right shoulder are left external rotation {rotation} and abduction "
                "{abduction} of the other side's: not in the order of the capsular pattern, as far "
                "as measured (internal rotation is not). The pattern is not universal.",
            )
        )
    return told.format(
        rotation=percent_with_error(*rotation), abduction=percent_with_error(*abduction)
    )


def pattern_rule() -> str:
    """Say what is compared."""
    return translate(
        "hint",
        "Share of the other side lost in external rotation against that lost in abduction, the "
        "difference larger than both errors.",
    )


def pattern_source() -> str:
    """Say where the pattern is from."""
    return translate(
        "hint",
        "Capsular pattern after Cyriax: external rotation more than abduction more than internal "
        "rotation (from memory).",
    )


def phase(
    fits: StiffnessPhase, planned: StiffnessPhase | None, pain: float, of: int, weeks: int
) -> str:
    """Say which phase it would fit and why, beside what the plan says."""
    painful = translate("hint", "pain lately {pain} of 10 (median of {sittings})").format(
        pain=localised(f"{pain:g}"), sittings=sittings_counted(of)
    )
    match fits:
        case StiffnessPhase.THAWING:
            why = translate("hint", "range grew beyond error and {painful}")
        case StiffnessPhase.PAINFUL:
            why = translate("hint", "range limited and not growing, {painful}")
        case StiffnessPhase.STIFF:
            why = translate("hint", "range limited, no real change in {weeks} weeks, {painful}")
    plan = (
        translate("hint", "the plan says {phase}").format(phase=phase_words(planned))
        if planned
        else translate("hint", "the plan names none")
    )
    return translate(
        "hint",
        "This would fit the phase '{phase}' ({why}); {plan}. The phase is the therapist's to set.",
    ).format(phase=phase_words(fits), why=why.format(painful=painful, weeks=weeks), plan=plan)


def phase_rule(lately: int, low: int, moderate: int, weeks: int) -> str:
    """Say when each phase would fit."""
    return translate(
        "hint",
        "Thawing: a change for the better beyond error and median pain of the last {lately} "
        "sittings at most {low}. Painful: limited, no real change, pain {moderate} or more. Stiff: "
        "limited, no real change in {weeks} weeks, pain at most {low}.",
    ).format(lately=lately, low=low, moderate=moderate, weeks=weeks)


def phase_source() -> str:
    """Say where that is from."""
    return translate(
        "hint",
        "Phases and their usual lengths: common practice and Kelley et al. 2013, J Orthop Sports "
        "Phys Ther 43:A1-A31; bounds of pain: the same (from memory); the combination is our "
        "choice.",
    )
