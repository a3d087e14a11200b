"""Judges a collection of views of the printed board: a field of view, or why there is none."""

from __future__ import annotations

from coach.capture.lens_fit import Calibrated, calibrate
from coach.capture.lens_views import TILT_DEG, View, Views
from coach.domain.fault import Fault
from coach.texts import localised, translate

LEAST_VIEWS, LEAST_TILTED = 10, 6
MOST_ERROR_DEG = 2.0
"""Wider, the result would say little more than the default does for common cameras."""
MOST_MISS = 0.0008
"""Of the longer side, root mean square: a pixel at 1280; sharp, flat boards stay under a third."""


def field_of_view(views: Views) -> Calibrated:
    """Calibrate from the views kept; one sentence (``Fault``) where it cannot be told."""
    kept = views.kept
    if not kept:
        if views.too_small:
            raise Fault(
                translate(
                    "faults",
                    "The board is too small in the picture to measure; hold the sheet "
                    "nearer, within half a metre, and try again.",
                )
            )
        raise Fault(
            translate(
                "faults",
                "The board was not seen sharp and still; print it with 'coach lens "
                "--print', light it well, hold all of it in the picture with short "
                "stops, and try again.",
            )
        )
    if len(kept) < LEAST_VIEWS:
        raise Fault(
            translate(
                "faults",
                "Only {kept} different views of the board were seen and {least_views} "
                "are needed; move and tilt the sheet more, with short stops, and try "
                "again.",
            ).format(kept=len(kept), least_views=LEAST_VIEWS)
        )
    tilted = sum(_tilted(view) for view in kept)
    if tilted < LEAST_TILTED:
        raise Fault(
            translate(
                "faults",
                "The board was tilted in only {tilted} views and {least_tilted} are "
                "needed, for face-on a narrow lens and a far sheet look alike; tilt it "
                "by a third of a right angle to every side and try again.",
            ).format(tilted=tilted, least_tilted=LEAST_TILTED)
        )
    found = calibrate(views.corners, views.size_px)
    if found is None:
        raise Fault(
            translate(
                "faults",
                "The views of the board do not fit one lens; stick the sheet flat on "
                "something stiff, switch zoom and autofocus off where you can, and try "
                "again.",
            )
        )
    if found.fit.miss_px > MOST_MISS * max(views.size_px):
        raise Fault(
            translate(
                "faults",
                "The board's corners miss the best lens by {miss_px} pixels; stick "
                "the sheet flat on something stiff, give more light, and try again.",
            ).format(miss_px=localised(f"{found.fit.miss_px:.1f}"))
        )
    if found.error_deg > MOST_ERROR_DEG:
        raise Fault(
            translate(
                "faults",
                "The field of view is known only to {error_deg} degrees and "
                "{most_error_deg:g} are needed; hold the sheet nearer, tilt it more to "
                "every side, and try again.",
            ).format(error_deg=localised(f"{found.error_deg:.1f}"), most_error_deg=MOST_ERROR_DEG)
        )
    return found


def _tilted(view: View) -> bool:
    return bool(abs(view.tilt_deg).max() >= TILT_DEG)
