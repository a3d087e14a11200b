"""What the command line takes, told in the chosen language."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from pathlib import Path

from coach import __version__
from coach.app.argparse_words import translate_argparse
from coach.app.argument_types import add_language, add_looks, one_of
from coach.app.commands import (
    add_card,
    add_convert,
    add_demo,
    add_export,
    add_key,
    add_lens,
    add_measure,
    add_review,
)
from coach.domain.pose import PoseModel
from coach.texts import translate


def asked_language(arguments: Sequence[str] | None) -> str | None:
    """Give the code behind ``--language``, before anything else is understood."""
    found = argparse.ArgumentParser(add_help=False, exit_on_error=False)
    found.add_argument("--language")
    try:
        options, _ = found.parse_known_args(arguments)
    except argparse.ArgumentError:
        return None
    language: str | None = options.language
    return language


def parser() -> argparse.ArgumentParser:
    """Give the parser of all commands."""
    translate_argparse()
    found = argparse.ArgumentParser(
        prog="coach",
        description=translate(
            "command",
            "Home exercise coach for stiff shoulders. Measures and times exercises that a"
            " therapist prescribed; it does not diagnose and does not replace licensed care."
            " Stop and ask your therapist if pain rises above the agreed limit.",
        ),
        epilog=translate("command", "Without a command the patient's window opens."),
    )
    found.add_argument(
        "--version",
        action="version",
        version=f"coach {__version__}",
        help=translate("command", "show the program's version and exit"),
    )
    found.add_argument(
        "--plan",
        type=Path,
        metavar=translate("command", "FILE"),
        help=translate("command", "plan file; without it the last one, else the example plan"),
    )
    source = found.add_mutually_exclusive_group()
    source.add_argument(
        "--camera", type=int, default=0, metavar="N", help=translate("command", "camera number")
    )
    source.add_argument(
        "--clip",
        type=Path,
        metavar=translate("command", "CLIP"),
        help=translate("command", "a video file in place of the camera"),
    )
    found.add_argument(
        "--folder",
        type=Path,
        metavar=translate("command", "FOLDER"),
        help=translate("command", "where session files go"),
    )
    add_language(found, None)
    add_looks(found, None, None, False)
    found.add_argument(
        "--begin",
        action="store_true",
        help=translate("command", "begin without waiting for a signal"),
    )
    found.add_argument(
        "--pose-model",
        help=translate(
            "command", "which measures; by default full, and lite on a machine too slow for it"
        ),
        **one_of(PoseModel),
    )
    commands = found.add_subparsers(dest="command", metavar=translate("command", "COMMAND"))
    add_review(commands)
    add_export(commands)
    add_key(commands)
    add_demo(commands)
    add_measure(commands)
    add_convert(commands)
    add_card(commands)
    add_lens(commands)
    return found
