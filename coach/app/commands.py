"""What each command of the command line takes, told in the chosen language."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TypeAlias

from coach.app.argument_types import add_language, add_looks, field_of_view, one_of
from coach.documents.joints import Axis, Stand
from coach.domain.card_sheet import Paper
from coach.domain.movement import Movement, Position, Side, View
from coach.domain.pose import PoseModel
from coach.exchange.kind import Kind
from coach.texts import translate

_DEEDS = ("make", "show", "back-up", "restore", "lock-store")
Commands: TypeAlias = "argparse._SubParsersAction[argparse.ArgumentParser]"


def add_review(commands: Commands) -> None:
    """Add the therapist's window."""
    review = commands.add_parser("review", help=translate("command", "the therapist's window"))
    review.add_argument(
        "files",
        nargs="*",
        type=Path,
        metavar=translate("command", "FILE"),
        help=translate("command", "session files or folders to import"),
    )
    _add_store(review)
    # Without defaults, which would undo what stands before the command.
    add_looks(review, *[argparse.SUPPRESS] * 3)
    add_language(review)


def add_export(commands: Commands) -> None:
    """Add records for other systems."""
    export = commands.add_parser(
        "export",
        help=translate(
            "command", "a patient's record for another system, or all holds of everybody"
        ),
    )
    _add_store(export)
    export.add_argument(
        "--patient",
        metavar=translate("command", "CODE"),
        help=translate("command", "as in the plan; without it parquet holds everybody"),
    )
    export.add_argument("--kind", required=True, **one_of(Kind))
    export.add_argument("--out", type=Path, required=True, metavar=translate("command", "FILE"))
    add_language(export)


def add_key(commands: Commands) -> None:
    """Add the practice's keys."""
    key = commands.add_parser(
        "key", help=translate("command", "the practice's key, and the lock of its store")
    )
    key.add_argument(
        "deed",
        choices=_DEEDS,
        metavar="|".join(_DEEDS),
        help=translate("command", "what to do"),
    )
    key.add_argument(
        "file",
        nargs="?",
        type=Path,
        metavar=translate("command", "FILE"),
        help=translate("command", "the backup, or the store"),
    )
    key.add_argument(
        "--renew",
        action="store_true",
        help=translate("command", "make a key for new plans beside those that are there"),
    )

    add_language(key)


def add_demo(commands: Commands) -> None:
    """Add the whole job on a sample clip."""
    demo = commands.add_parser(
        "demo", help=translate("command", "the whole job on a sample clip, no screen needed")
    )
    demo.add_argument(
        "--out",
        type=Path,
        default=Path("demo"),
        metavar=translate("command", "FOLDER"),
        help=translate("command", "folder for what it makes"),
    )
    demo.add_argument(
        "--show", action="store_true", help=translate("command", "open the windows as well")
    )
    add_language(demo)


def add_measure(commands: Commands) -> None:
    """Add the measuring of clips."""
    measure = commands.add_parser("measure", help=translate("command", "range and holds of clips"))
    measure.add_argument(
        "clips",
        nargs="+",
        type=Path,
        metavar=translate("command", "CLIP"),
        help=translate("command", "a clip, or a folder of clips"),
    )
    measure.add_argument("--movement", required=True, **one_of(Movement))
    measure.add_argument("--side", required=True, **one_of(Side))
    measure.add_argument(
        "--view",
        help=translate(
            "command", "where the camera stands; by default where the movement is measured best"
        ),
        **one_of(View),
    )
    measure.add_argument(
        "--position",
        help=translate(
            "command",
            "how the person stands, sits or lies; by default standing, seen from the foot supine",
        ),
        **one_of(Position),
    )
    measure.add_argument(
        "--json",
        type=Path,
        metavar=translate("command", "FILE"),
        help=translate(
            "command", "write every frame's value; of several clips into a folder of this name"
        ),
    )
    measure.add_argument(
        "--field-of-view",
        type=field_of_view,
        metavar=translate("command", "DEG"),
        help=translate(
            "command",
            "the camera's horizontal one, as 'coach lens' finds it; by default a common camera's",
        ),
    )
    # Without a default, which would undo what stands before the command.
    measure.add_argument(
        "--pose-model",
        default=argparse.SUPPRESS,
        help=translate(
            "command",
            "which measures a clip, by default full; or which found the points of a table, whose"
            " errors are then given: a session's own table needs only its session.json beside it",
        ),
        **one_of(PoseModel),
    )
    add_language(measure)


def add_convert(commands: Commands) -> None:
    """Add the converting of other recordings."""
    convert = commands.add_parser(
        "convert",
        help=translate(
            "command", "joint centres of another recording, to a table that measure reads"
        ),
    )
    convert.add_argument(
        "joints",
        type=Path,
        metavar=translate("command", "TABLE.csv"),
        help=translate("command", "table of joint centres in metres, CSV"),
    )
    convert.add_argument(
        "--out", type=Path, required=True, metavar=translate("command", "TABLE.csv")
    )
    convert.add_argument(
        "--up", default=Axis.Y, help=translate("command", "what points up"), **one_of(Axis)
    )
    convert.add_argument(
        "--camera",
        dest="stand",
        required=True,
        help=translate("command", "on which side of the person the camera stands"),
        **one_of(Stand),
    )
    convert.add_argument(
        "--distance", type=float, default=2.5, metavar=translate("command", "METRES")
    )
    add_language(convert)


def add_card(commands: Commands) -> None:
    """Add the printed card."""
    card = commands.add_parser(
        "card", help=translate("command", "a card to print and wear: it shows the trunk's turn")
    )
    card.add_argument("--paper", default=Paper.A4, **one_of(Paper))
    card.add_argument(
        "--out", type=Path, default=Path("chest_card.pdf"), metavar=translate("command", "FILE")
    )
    add_language(card)


def add_lens(commands: Commands) -> None:
    """Add the check of a lens."""
    lens = commands.add_parser(
        "lens",
        help=translate(
            "command", "a one-minute check of the camera's field of view with a printed board"
        ),
    )
    what = lens.add_mutually_exclusive_group(required=True)
    what.add_argument(
        "--print", action="store_true", help=translate("command", "write the board to print")
    )
    # The default of the whole program, 0, would count as not given here.
    what.add_argument(
        "--camera", type=int, default=None, metavar="N", help=translate("command", "camera number")
    )
    what.add_argument(
        "--clip",
        type=Path,
        metavar=translate("command", "CLIP"),
        help=translate("command", "a video of the board moved before the camera"),
    )
    lens.add_argument("--paper", default=Paper.A4, **one_of(Paper))
    lens.add_argument(
        "--out", type=Path, default=Path("lens_board.pdf"), metavar=translate("command", "FILE")
    )
    add_language(lens)


def _add_store(command: argparse.ArgumentParser) -> None:
    command.add_argument(
        "--store",
        type=lambda text: text if "://" in text else Path(text),
        metavar=translate("command", "FILE or URL"),
        help=translate(
            "command",
            "where imported sessions are kept: a file, or postgresql://user@host/database",
        ),
    )
