"""What the command line takes; its help is in English, as that of other commands is."""

from __future__ import annotations

import argparse
import math
from collections.abc import Callable
from enum import StrEnum
from pathlib import Path
from typing import Any

from coach import __version__
from coach.documents.joints import Axis, Stand
from coach.domain.card_sheet import Paper
from coach.domain.movement import Movement, Position, Side, View
from coach.domain.pose import PoseModel
from coach.domain.settings import TEXT_SIZES, Appearance
from coach.exchange.kind import Kind

CAUTION = (
    "Measures and times exercises that a therapist prescribed; it does not diagnose and does not"
    " replace licensed care. Stop and ask your therapist if pain rises above the agreed limit."
)


def parser() -> argparse.ArgumentParser:
    """Give the parser of all commands."""
    found = argparse.ArgumentParser(
        prog="coach",
        description=f"Home exercise coach for stiff shoulders. {CAUTION}",
        epilog="Without a command the patient's window opens.",
    )
    found.add_argument("--version", action="version", version=f"coach {__version__}")
    found.add_argument(
        "--plan", type=Path, help="plan file; without it the last one, else the example plan"
    )
    source = found.add_mutually_exclusive_group()
    source.add_argument("--camera", type=int, default=0, metavar="N", help="camera number")
    source.add_argument("--clip", type=Path, help="a video file in place of the camera")
    found.add_argument("--folder", type=Path, help="where session files go")
    found.add_argument(
        "--language", metavar="CODE", help="en or de; by default the system's, else English"
    )
    _add_looks(found, None, None, False)
    found.add_argument("--begin", action="store_true", help="begin without waiting for a signal")
    found.add_argument(
        "--pose-model",
        help="which measures; by default full, and lite on a machine too slow for it",
        **_of(PoseModel),
    )
    commands = found.add_subparsers(dest="command", metavar="COMMAND")

    review = commands.add_parser("review", help="the therapist's window")
    review.add_argument("files", nargs="*", type=Path, help="session files or folders to import")
    _add_store(review)
    # Without defaults, which would undo what stands before the command.
    _add_looks(review, *[argparse.SUPPRESS] * 3)
    _add_language(review)

    export = commands.add_parser(
        "export", help="a patient's record for another system, or all holds of everybody"
    )
    _add_store(export)
    export.add_argument(
        "--patient", metavar="CODE", help="as in the plan; without it parquet holds everybody"
    )
    export.add_argument("--kind", required=True, **_of(Kind))
    export.add_argument("--out", type=Path, required=True, metavar="FILE")
    _add_language(export, "of a note")

    key = commands.add_parser("key", help="the practice's key, and the lock of its store")
    key.add_argument(
        "deed", choices=("make", "show", "back-up", "restore", "lock-store"), help="what to do"
    )
    key.add_argument("file", nargs="?", type=Path, help="the backup, or the store")
    key.add_argument(
        "--renew", action="store_true", help="make a key for new plans beside those that are there"
    )

    _add_language(key)

    demo = commands.add_parser("demo", help="the whole job on a sample clip, no screen needed")
    demo.add_argument("--out", type=Path, default=Path("demo"), help="folder for what it makes")
    demo.add_argument("--show", action="store_true", help="open the windows as well")

    measure = commands.add_parser("measure", help="range and holds of clips")
    measure.add_argument(
        "clips", nargs="+", type=Path, metavar="CLIP", help="a clip, or a folder of clips"
    )
    measure.add_argument("--movement", required=True, **_of(Movement))
    measure.add_argument("--side", required=True, **_of(Side))
    measure.add_argument(
        "--view",
        help="where the camera stands; by default where the movement is measured best",
        **_of(View),
    )
    measure.add_argument(
        "--position",
        help="how the person stands, sits or lies; by default standing, seen from the foot supine",
        **_of(Position),
    )
    measure.add_argument(
        "--json",
        type=Path,
        metavar="FILE",
        help="write every frame's value; of several clips into a folder of this name",
    )
    measure.add_argument(
        "--field-of-view",
        type=_field_of_view,
        metavar="DEG",
        help="the camera's horizontal one, as 'coach lens' finds it; by default a common camera's",
    )
    # Without a default, which would undo what stands before the command.
    measure.add_argument(
        "--pose-model",
        default=argparse.SUPPRESS,
        help="which measures a clip, by default full; or which found the points of a table, whose"
        " errors are then given: a session's own table needs only its session.json beside it",
        **_of(PoseModel),
    )

    convert = commands.add_parser(
        "convert", help="joint centres of another recording, to a table that measure reads"
    )
    convert.add_argument("joints", type=Path, help="table of joint centres in metres, CSV")
    convert.add_argument("--out", type=Path, required=True, metavar="TABLE.csv")
    convert.add_argument("--up", default=Axis.Y, help="what points up", **_of(Axis))
    convert.add_argument(
        "--camera",
        dest="stand",
        required=True,
        help="on which side of the person the camera stands",
        **_of(Stand),
    )
    convert.add_argument("--distance", type=float, default=2.5, metavar="METRES")

    card = commands.add_parser("card", help="a card to print and wear: it shows the trunk's turn")
    card.add_argument("--paper", default=Paper.A4, **_of(Paper))
    card.add_argument("--out", type=Path, default=Path("chest_card.pdf"), metavar="FILE")
    _add_language(card)

    lens = commands.add_parser(
        "lens", help="a one-minute check of the camera's field of view with a printed board"
    )
    what = lens.add_mutually_exclusive_group(required=True)
    what.add_argument("--print", action="store_true", help="write the board to print")
    # The default of the whole program, 0, would count as not given here.
    what.add_argument("--camera", type=int, default=None, metavar="N", help="camera number")
    what.add_argument("--clip", type=Path, help="a video of the board moved before the camera")
    lens.add_argument("--paper", default=Paper.A4, **_of(Paper))
    lens.add_argument("--out", type=Path, default=Path("lens_board.pdf"), metavar="FILE")
    _add_language(lens)
    return found


def _add_language(command: argparse.ArgumentParser, what: str = "as above") -> None:
    # Without a default, which would undo what stands before the command.
    command.add_argument("--language", metavar="CODE", default=argparse.SUPPRESS, help=what)


def _add_store(command: argparse.ArgumentParser) -> None:
    command.add_argument(
        "--store",
        type=lambda text: text if "://" in text else Path(text),
        metavar="FILE or URL",
        help="where imported sessions are kept: a file, or postgresql://user@host/database",
    )


def _add_looks(command: argparse.ArgumentParser, *defaults: object) -> None:
    appearance, text_size, still = defaults
    command.add_argument(
        "--appearance",
        default=appearance,
        help="ground of the window; by default as last chosen, else the system's",
        **_of(Appearance),
    )
    command.add_argument(
        "--text-size",
        type=_text_size,
        default=text_size,
        metavar="PERCENT",
        help="100 to 200; by default as last chosen, else the system's",
    )
    command.add_argument(
        "--still", action="store_true", default=still, help="let nothing move that need not"
    )


def _text_size(text: str) -> int:
    smallest, *_, largest = TEXT_SIZES
    if not (text.isascii() and text.isdigit() and smallest <= int(text[:9]) <= largest):
        raise argparse.ArgumentTypeError(
            f"'{text[:20]}' is no size of text; name {smallest} to {largest} per cent"
        )
    return int(text)


def _field_of_view(text: str) -> float:
    low, high = 10.0, 170.0  # what a session file holds
    try:
        value = float(text)
    except ValueError:
        value = math.nan
    if not low <= value <= high:
        raise argparse.ArgumentTypeError(
            f"'{text}' is no field of view; name {low:g} to {high:g} degrees"
        )
    return value


def _of(kind: type[StrEnum]) -> dict[str, Any]:
    return {"type": _one_of(kind), "metavar": "|".join(kind)}


def _one_of(kind: type[StrEnum]) -> Callable[[str], StrEnum]:
    def convert(text: str) -> StrEnum:
        try:
            return kind(text)
        except ValueError:
            raise argparse.ArgumentTypeError(
                f"'{text}' is not one of {', '.join(kind)}; name one of these"
            ) from None

    return convert
