"""The command line: ``coach``, and the commands ``review`` to ``lens``."""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from coach.app.arguments import asked_language, parser
from coach.app.chosen_language import chosen_language
from coach.app.importing import importing
from coach.app.streams import CLOSED_PIPE, all_printed, print_any_letter, print_no_more
from coach.desktop.shared.language import choose_texts
from coach.domain.fault import Fault
from coach.storage.disk_fault import disk_fault
from coach.texts import as_before, translate

if TYPE_CHECKING:
    from coach.app.chosen_looks import Wishes


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command; give 0, 1 after a fault told in one sentence, 130 after Ctrl-C."""
    print_any_letter()
    with as_before():
        try:
            with all_printed():
                choose_texts(chosen_language(asked_language(arguments)))
                return _run_told(parser().parse_args(arguments))
        except BrokenPipeError:
            print_no_more()
            return CLOSED_PIPE
        except Fault as fault:
            print(f"coach: {fault}", file=sys.stderr)
            return 1
        except KeyboardInterrupt:
            stopped = translate("command", "coach: stopped by Ctrl-C; what was recorded is kept.")
            print(stopped, file=sys.stderr)
            return 130


def _run_told(options: argparse.Namespace) -> int:
    try:
        return _run(options)
    except OSError as error:  # the look at a path already fails where its name is too long
        if not isinstance(error.filename, str | bytes):
            raise
        raise disk_fault(error, Path(os.fsdecode(error.filename)), "opened") from error


def _run(options: argparse.Namespace) -> int:
    match options.command:
        case "measure":
            from coach.app.measure import Asked
            from coach.app.measure_many import run_measures

            way = options.view, options.position, options.field_of_view, options.pose_model
            asked = Asked(options.movement, options.side, *way)
            return run_measures(options.clips, asked, options.json)
        case "convert":
            from coach.app.convert import run_convert

            return run_convert(
                options.joints, options.out, options.up, options.stand, options.distance
            )
        case "card":
            from coach.app.card import run_card

            return run_card(options.paper, options.out)
        case "lens":
            from coach.app.lens import run_lens, run_print

            if options.print:
                return run_print(options.paper, options.out)
            source = options.camera if options.clip is None else options.clip
            return run_lens(source)
        case "demo":
            from coach.app.demo import run_demo

            return run_demo(options.out, show=options.show)
        case "key":
            from coach.app.key import Deed, run_key

            return run_key(Deed(options.deed), options.file, anew=options.renew)
        case "review":
            with importing():
                from coach.app.review import run_review
            return run_review(options.files, options.store, _wishes(options))
        case "export":
            from coach.app.export import run_export

            return run_export(options.store, options.patient, options.kind, options.out)
        case _:
            with importing():
                from coach.app.patient import run_patient
            return run_patient(
                options.plan,
                options.camera,
                options.clip,
                options.folder,
                begin=options.begin,
                model=options.pose_model,
                wishes=_wishes(options),
            )


def _wishes(options: argparse.Namespace) -> Wishes:
    from coach.app.chosen_looks import Wishes

    return Wishes(options.appearance, options.text_size, options.still)


if __name__ == "__main__":
    sys.exit(main())
