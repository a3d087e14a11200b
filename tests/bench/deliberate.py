"""One compensation done on purpose at the end of the range, and none besides."""

from __future__ import annotations

from dataclasses import replace

from tests.bench.motion import Repetition, Script
from tests.bench.spec import ClipSpec, Manner

KINDS = ("clean", "lean", "turn", "hike", "elbow", "drift")
STAND_S = 2.8
"""Standing still first, as the program asks for."""
SPINE_PER_TRUNK = 1.62
"""Bend of the whole spine that leans the line from hips to shoulders by one (tuning people)."""


def compensation(text: str) -> tuple[str, float]:
    """Read ``KIND:DEG`` or ``clean``; ``ValueError`` for anything else."""
    kind, _, amount = text.partition(":")
    if kind not in KINDS or (kind == "clean") != (amount == ""):
        raise ValueError(f"{text!r} is not clean, nor one of {', '.join(KINDS[1:])} with :DEGREES")
    return kind, float(amount or 0.0)


def only(spec: ClipSpec, kind: str, amount_deg: float) -> ClipSpec:
    """Give the clip with one compensation that is whole at the end of every repetition.

    A lean goes the way that feigns range (backward in flexion, forward in extension, aside
    elsewhere; positive), a turn takes the shoulder backward, a hike turns the collar bone up, the
    elbow bends more (negative: less), and the upper arm drifts outward (abduction: forward).
    """
    if spec.script is None:
        raise ValueError("everyday movement has no end of range")
    manner = replace(
        spec.manner,
        hike_deg=0.0,
        lean_deg=0.0,
        side_lean_deg=0.0,
        twist_deg=0.0,
        away_change_deg=0.0,
        elbow_change_deg=0.0,
    )
    manner = _with(manner, spec.movement, kind, amount_deg)
    amount = "" if kind == "clean" else f"{amount_deg:+.0f}"
    return replace(
        spec,
        name=f"{spec.name}_{kind}{amount}",
        manner=manner,
        script=_alike(spec.script),
        troubles=(*spec.troubles, f"{kind}:{amount_deg:g}"),
    )


def _with(manner: Manner, movement: str, kind: str, amount_deg: float) -> Manner:
    match kind:
        case "clean":
            return manner
        case "lean" if movement in ("flexion", "extension"):
            way = -SPINE_PER_TRUNK if movement == "flexion" else SPINE_PER_TRUNK
            return replace(manner, lean_deg=way * amount_deg)
        case "lean":
            return replace(manner, side_lean_deg=SPINE_PER_TRUNK * amount_deg)
        case "turn":
            return replace(manner, twist_deg=amount_deg)
        case "hike":
            return replace(manner, hike_deg=amount_deg)
        case "elbow":
            return replace(manner, elbow_change_deg=amount_deg)
        case "drift":
            return replace(manner, away_change_deg=amount_deg)
        case _:
            raise ValueError(f"unknown compensation {kind!r}")


def _alike(script: Script) -> Script:
    """Let every repetition reach as far, since what goes along grows with the reach."""
    top_deg = max((rep.peak_deg for rep in script.repetitions), key=abs)

    def changed(rep: Repetition, first: bool) -> Repetition:
        rest_s = max(rep.rest_s, STAND_S) if first else rep.rest_s
        return replace(rep, peak_deg=top_deg, rest_s=rest_s)

    return replace(
        script,
        repetitions=tuple(changed(rep, i == 0) for i, rep in enumerate(script.repetitions)),
    )
