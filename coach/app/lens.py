"""``coach lens``: the one-minute check of a camera's field of view."""

from __future__ import annotations

import sys
from pathlib import Path

from coach.app.progress_bar import ProgressBar
from coach.capture.camera_name import camera_name
from coach.capture.lens_board import marker_cells
from coach.capture.lens_check import field_of_view
from coach.capture.lens_fit import Calibrated
from coach.capture.lens_views import Missing, Views, wish_words
from coach.capture.sources import open_source
from coach.desktop.shared.application import create_application
from coach.desktop.shared.board_page import board_pdf
from coach.domain.card_sheet import Paper
from coach.domain.fault import Fault
from coach.domain.lens import Lens
from coach.ports import FrameSource
from coach.storage.atomic import write_bytes
from coach.storage.lenses import keep_lens, lenses_path, load_lenses
from coach.texts import language, localised, translate

LONGEST_S = 180.0
"""So long a camera is watched; a minute is enough for a person who follows what is asked."""
SAY_EVERY_S = 2.0


def run_print(paper: Paper, out: Path) -> int:
    """Write the board's page."""
    # Kept until the page is drawn: Qt ends with its application.
    application = create_application(["coach"], offscreen_allowed=True, language=language())
    write_bytes(out, board_pdf(marker_cells(), paper))
    print(translate("card", "Written: {out}").format(out=out))
    told = translate(
        "lens",
        "Print it at 100 %, stick it flat on something stiff, then run 'coach lens --camera N'.",
    )
    print(told)
    del application
    return 0


def run_lens(what: int | Path) -> int:
    """Watch the board, print the field of view, and keep it where it is a camera's."""
    source = open_source(what)
    try:
        views = watch(source)
    finally:
        source.close()
    found = field_of_view(views)
    print(summary(found, len(views.kept)))
    value = round(found.fit.field_of_view_deg, 1)
    if isinstance(what, Path):
        told = translate(
            "lens", "For recordings of this camera: coach measure CLIP --field-of-view {value:g}"
        )
        print(told.format(value=value))
        return 0
    width, height = views.size_px
    lens = Lens(
        camera=what,
        name=camera_name(what),
        width_px=width,
        height_px=height,
        field_of_view_deg=value,
        error_deg=round(found.error_deg, 2),
        miss_px=round(found.fit.miss_px, 3),
        views=len(views.kept),
    )
    keep_lens(lenses_path(), lens)
    told = translate("lens", "Kept for camera {camera} at this shape of picture: {path}")
    print(told.format(camera=what, path=lenses_path()))
    return 0


def watch(source: FrameSource) -> Views:
    """Look at frames until the views are enough, the source ends or the time is up."""
    views = Views(source.size_px)
    said: Missing | None = None
    said_s = started_s = float("-inf")
    with ProgressBar(translate("lens", "looking for the board"), source.frame_count) as bar:
        for frame in source:
            wish = views.look(frame)
            if started_s == float("-inf"):
                started_s = frame.time_s
            if source.kind == "file":
                bar.advance()
            elif wish is not None and wish is not said and frame.time_s - said_s >= SAY_EVERY_S:
                told = translate("lens", "{count} views; {wish}")
                print(told.format(count=len(views.kept), wish=wish_words(wish)), flush=True)
                said, said_s = wish, frame.time_s
            live_s = frame.time_s - started_s if source.kind == "camera" else 0.0
            if wish is None or live_s > LONGEST_S:
                break
    return views


def summary(found: Calibrated, views: int) -> str:
    """Tell what was found."""
    return translate(
        "lens",
        "Horizontal field of view: {angle} ± {error} degrees (95 % interval), from {views} views; "
        "the board's corners miss by {miss} pixels.",
    ).format(
        angle=localised(f"{found.fit.field_of_view_deg:.1f}"),
        error=localised(f"{found.error_deg:.1f}"),
        views=views,
        miss=localised(f"{found.fit.miss_px:.2f}"),
    )


def known_field_of_view(what: int | Path, size_px: tuple[int, int]) -> float | None:
    """Give what was found of a camera at a picture size; None, for the default, otherwise.

    A broken settings file is told on standard error and the default is used.
    """
    if isinstance(what, Path):
        return None
    try:
        lens = load_lenses(lenses_path()).of(what, camera_name(what), size_px)
    except Fault as fault:
        told = translate("lens", "coach: {fault} The usual field of view is assumed.")
        print(told.format(fault=fault), file=sys.stderr)
        return None
    return None if lens is None else lens.field_of_view_deg
