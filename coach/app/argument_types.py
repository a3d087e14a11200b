"""Arguments that several commands take, what each may be, and what is said of others."""

from __future__ import annotations

import argparse
import math
from collections.abc import Callable
from enum import StrEnum
from typing import Any

from coach.domain.settings import TEXT_SIZES, Appearance
from coach.texts import translate


def text_size(text: str) -> int:
    """Take a size of text in per cent."""
    smallest, *_, largest = TEXT_SIZES
    if not (text.isascii() and text.isdigit() and smallest <= int(text[:9]) <= largest):
        raise argparse.ArgumentTypeError(
            translate(
                "command", "'{text}' is no size of text; name {smallest} to {largest} per cent"
            ).format(text=text[:20], smallest=smallest, largest=largest)
        )
    return int(text)


def field_of_view(text: str) -> float:
    """Take a horizontal field of view in degrees."""
    low, high = 10.0, 170.0  # what a session file holds
    try:
        value = float(text)
    except ValueError:
        value = math.nan
    if not low <= value <= high:
        raise argparse.ArgumentTypeError(
            translate(
                "command", "'{text}' is no field of view; name {low:g} to {high:g} degrees"
            ).format(text=text[:20], low=low, high=high)
        )
    return value


def one_of(kind: type[StrEnum]) -> dict[str, Any]:
    """Give what lets an argument be one word of a kind."""
    return {"type": _one_of(kind), "metavar": "|".join(kind)}


def _one_of(kind: type[StrEnum]) -> Callable[[str], StrEnum]:
    def convert(text: str) -> StrEnum:
        try:
            return kind(text)
        except ValueError:
            raise argparse.ArgumentTypeError(
                translate("command", "'{text}' is not one of {names}; name one of these").format(
                    text=text[:40], names=", ".join(kind)
                )
            ) from None

    return convert


def add_language(command: argparse.ArgumentParser, default: str | None = argparse.SUPPRESS) -> None:
    """Add the language; behind a command no default may undo what stands before it."""
    command.add_argument(
        "--language",
        metavar=translate("command", "CODE"),
        default=default,
        help=translate("command", "en or de; by default the system's, else English"),
    )


def add_looks(command: argparse.ArgumentParser, *defaults: object) -> None:
    """Add how a window looks; defaults of appearance, size of text and stillness."""
    appearance, percent, still = defaults
    command.add_argument(
        "--appearance",
        default=appearance,
        help=translate(
            "command", "ground of the window; by default as last chosen, else the system's"
        ),
        **one_of(Appearance),
    )
    command.add_argument(
        "--text-size",
        type=text_size,
        default=percent,
        metavar=translate("command", "PERCENT"),
        help=translate("command", "100 to 200; by default as last chosen, else the system's"),
    )
    command.add_argument(
        "--still",
        action="store_true",
        default=still,
        help=translate("command", "let nothing move that need not"),
    )
