"""What ``coach measure`` prints."""

from __future__ import annotations

from collections import Counter

from coach.cues.wording import doubt_sentence
from coach.documents.measurement import MeasuredRepetition, Measurement
from coach.domain.movement import Unit
from coach.domain.reading import Doubt
from coach.review.levels import reach_band
from coach.review.wording import ended_word, filmed, half_width
from coach.texts import translate


def summary(measurement: Measurement, whose: str | None) -> str:
    """Tell in lines what was measured and what was refused; ``whose`` is that of
    ``measure.Tracked``."""
    frames = measurement.frames
    what = filmed(measurement.movement, measurement.side, measurement.position, measurement.view)
    lines = [
        translate("measure", "{what}: {usable} of {count} frames usable").format(
            what=what, usable=sum(frame.usable for frame in frames), count=len(frames)
        )
    ]
    lines += [_hold(number, rep) for number, rep in enumerate(measurement.repetitions, 1)]
    if not measurement.repetitions:
        lines.append(translate("measure", "  no hold of two seconds or more"))
    lines.append(
        translate("measure", "  repetitions there and back: {count}, held of them: {held}").format(
            count=len(measurement.excursions),
            held=sum(each.held_s > 0 for each in measurement.excursions),
        )
    )
    doubts = Counter[Doubt](frame.doubt for frame in frames if frame.doubt is not None)
    lines += [
        translate("measure", "  refused frames: {count}. {why}").format(
            count=count, why=_refusal(doubt, measurement, whose)
        )
        for doubt, count in doubts.most_common()
    ]
    if whose is not None:
        lines.append(whose)
    lines.append(_meaning(measurement.movement.unit))
    return "\n".join(lines)


def _refusal(doubt: Doubt, measurement: Measurement, whose: str | None) -> str:
    if doubt is not Doubt.ERROR_NOT_KNOWN:
        return doubt_sentence(doubt, measurement.side, measurement.position).spoken
    if whose is None:
        return translate(
            "measure",
            "It is not known which pose model found these points, so neither is how wrong angles"
            " from them are. Put the sitting's session.json beside its landmarks.csv, or name the"
            " model with --pose-model.",
        )
    return translate(
        "measure",
        "It was never measured how wrong this angle is with the pose model that found these"
        " points. Measure a clip with the full one.",
    )


def _hold(number: int, rep: MeasuredRepetition) -> str:
    return translate(
        "measure",
        "  hold {number}: {start_s:.1f} to {end_s:.1f} s, held {held_s:.1f} s, {value} ({ended})",
    ).format(
        number=number,
        start_s=rep.start_s,
        end_s=rep.end_s,
        held_s=rep.held_s,
        value=_value(rep),
        ended=ended_word(rep.ended_because),
    )


def _value(rep: MeasuredRepetition) -> str:
    if isinstance(rep.value_deg, float) and isinstance(rep.error_deg, float):
        return translate("measure", "{value:.0f} ± {error} degrees").format(
            value=rep.value_deg, error=half_width(rep.error_deg)
        )
    if isinstance(rep.value_ratio, float) and isinstance(rep.error_ratio, float):
        return translate("measure", "{value:.0f} ± {error} %, {levels}").format(
            value=100 * rep.value_ratio,
            error=half_width(100 * rep.error_ratio),
            levels=reach_band(rep.value_ratio, rep.error_ratio).words,
        )
    raise ValueError(rep)


def _meaning(unit: Unit) -> str:
    match unit:
        case Unit.DEGREES:
            return translate(
                "measure",
                "Angles are of the arm against the trunk, shoulder blade included, each with the"
                " half width of its 95 % interval.",
            )
        case Unit.RATIO:
            return translate(
                "measure",
                "Heights are of the wrist, 0 % at C7 and 100 % at the posterior superior iliac"
                " spines, each with the half width of its 95 % interval; the levels are those of"
                " the thumb's tip.",
            )
