"""Whole sentences for people, in the language that is chosen when the program starts.

English sentences stand in the code, each whole, with named places; ``translate`` looks up the
chosen language's. Who starts the program puts a table in; without one everybody reads English.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from typing import Final, TypeVar

T = TypeVar("T")

ENGLISH: Final = "en"

Translate = Callable[[str, str], str]
"""Context and English sentence in, the sentence in the chosen language out."""


_IN_ENGLISH: ContextVar[bool] = ContextVar("in_english", default=False)


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


@contextmanager
def in_english() -> Iterator[None]:
    """Write in English what other programs read; other threads go on in the chosen language."""
    token = _IN_ENGLISH.set(True)
    try:
        yield
    finally:
        _IN_ENGLISH.reset(token)


def of(tables: Mapping[str, T], code: str | None = None) -> T:
    """Give what is there in a language, by default the chosen one; in English where it is not."""
    return (
        tables[code or _Chosen.language]
        if (code or _Chosen.language) in tables
        else tables[ENGLISH]
    )


def translate(context: str, sentence: str) -> str:
    """Give the sentence in the chosen language, or as it stands where there is none."""
    if _Chosen.table is None or _IN_ENGLISH.get():
        return sentence
    return _Chosen.table(context, sentence)


def localised(number: str) -> str:
    """Write a number that has a decimal point with the language's decimal sign."""
    return number if _IN_ENGLISH.get() else number.replace(".", _Chosen.decimal_sign)
