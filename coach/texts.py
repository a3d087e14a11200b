"""Whole sentences for people, in the language that is chosen when the program starts.

English sentences stand in the code, each whole, with named places; ``translate`` looks up the
chosen language's. Who starts the program puts a table in; without one everybody reads English.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Final, TypeVar

T = TypeVar("T")

ENGLISH: Final = "en"

Translate = Callable[[str, str], str]
"""Context and English sentence in, the sentence in the chosen language out."""


class _Chosen:
    language = ENGLISH
    decimal_sign = "."
    table: Translate | None = None


def choose(language: str, decimal_sign: str, table: Translate | None) -> None:
    """Choose a language by its code of ISO 639-1, how it writes numbers, and its table."""
    _Chosen.language, _Chosen.decimal_sign, _Chosen.table = language, decimal_sign, table


def language() -> str:
    """Give the code of the chosen language."""
    return _Chosen.language


def of(tables: Mapping[str, T], code: str | None = None) -> T:
    """Give what is there in a language, by default the chosen one; in English where it is not."""
    return (
        tables[code or _Chosen.language]
        if (code or _Chosen.language) in tables
        else tables[ENGLISH]
    )


def translate(context: str, sentence: str) -> str:
    """Give the sentence in the chosen language, or as it stands where there is none."""
    return sentence if _Chosen.table is None else _Chosen.table(context, sentence)


def localised(number: str) -> str:
    """Write a number that has a decimal point with the language's decimal sign."""
    return number.replace(".", _Chosen.decimal_sign)
