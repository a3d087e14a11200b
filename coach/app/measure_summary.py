"""What ``coach measure`` prints: English lines, as scripts read them."""

from __future__ import annotations

from collections import Counter

from coach.cues.wording import doubt_sentence
from coach.documents.measurement import MeasuredRepetition, Measurement
from coach.domain.movement import Unit
from coach.domain.reading import Doubt
from coach.review.levels import reach_band


def summary(measurement: Measurement, whose: str | None) -> str:
    """Tell in lines what was measured and what was refused; ``whose`` is that of
    ``measure.Tracked``."""
    frames = measurement.frames
    usable = sum(frame.usable for frame in frames)
    lines = [
        f"{measurement.movement}, {measurement.side} arm, {measurement.position}, seen from the"
        f" {measurement.view}: {usable} of {len(frames)} frames usable"
    ]
    lines += [
        f"  hold {number}: {rep.start_s:.1f} to {rep.end_s:.1f} s, held {rep.held_s:.1f} s,"
        f" {_value(rep)} ({rep.ended_because})"
        for number, rep in enumerate(measurement.repetitions, 1)
    ]
    if not measurement.repetitions:
        lines.append("  no hold of two seconds or more")
    held = sum(each.held_s > 0 for each in measurement.excursions)
    lines.append(f"  {len(measurement.excursions)} repetitions there and back, {held} of them held")
    doubts = Counter[Doubt](frame.doubt for frame in frames if frame.doubt is not None)
    lines += [
        f"  refused {count} frames: {_refusal(doubt, measurement, whose)}"
        for doubt, count in doubts.most_common()
    ]
    if whose is not None:
        lines.append(f"Points and errors are {whose}.")
    lines.append(_MEANING[measurement.movement.unit])
    return "\n".join(lines)


_MEANING = {
    Unit.DEGREES: "Angles are of the arm against the trunk, shoulder blade included, each with the"
    " half width of its 95 % interval.",
    Unit.RATIO: "Heights are of the wrist, 0 % at C7 and 100 % at the posterior superior iliac"
    " spines, each with the half width of its 95 % interval; the levels are those of the thumb's"
    " tip.",
}

_NO_MODEL = (
    "It is not known which pose model found these points, so neither is how wrong angles from them"
    " are. Put the sitting's session.json beside its landmarks.csv, or name the model with"
    " --pose-model."
)
_NO_ERROR = (
    "It was never measured how wrong this angle is with the pose model that found these points."
    " Measure a clip with the full one."
)


def _refusal(doubt: Doubt, measurement: Measurement, whose: str | None) -> str:
    if doubt is Doubt.ERROR_NOT_KNOWN:
        return _NO_MODEL if whose is None else _NO_ERROR
    return doubt_sentence(doubt, measurement.side, measurement.position).spoken


def _value(rep: MeasuredRepetition) -> str:
    if isinstance(rep.value_deg, float) and isinstance(rep.error_deg, float):
        return f"{rep.value_deg:.0f} ± {rep.error_deg:.0f} degrees"
    if isinstance(rep.value_ratio, float) and isinstance(rep.error_ratio, float):
        band = reach_band(rep.value_ratio, rep.error_ratio)
        return f"{100 * rep.value_ratio:.0f} ± {100 * rep.error_ratio:.0f} %, {band.words}"
    raise ValueError(rep)
