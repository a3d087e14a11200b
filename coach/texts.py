"""Whole sentences for people, in the language that is chosen when the program starts.

English sentences stand in the code, each whole, with named places; ``translate`` looks up the
chosen language's. Who starts the program puts a table in; without one everybody reads English.
"""

from __future__ import annotations

import json
import string
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from types import MappingProxyType
from typing import Any, Final, TypeVar

T = TypeVar("T")

ENGLISH: Final = "en"

Translate = Callable[[str, str], str]
"""Context and English sentence in, the sentence in the chosen language out."""


_KEPT: Final = "\N{START OF HEADING}"
"""Begins what is written down in more than one language; no sentence has it (``domain.text``)."""
_IN_ENGLISH: ContextVar[bool] = ContextVar("in_english", default=False)
_IN_BOTH: ContextVar[bool] = ContextVar("in_both", default=False)


class _Numbers(string.Formatter):
    def format_field(self, value: Any, format_spec: str) -> str:
        written: str = super().format_field(value, format_spec)
        return localised(written) if isinstance(value, int | float) else written


class Sentence(str):
    """A sentence in the chosen language that also knows itself in English.

    Numbers that are filled in are written as people of the language do. What is filled in is plain
    text again, which documents can hold, but ``in_both``.
    """

    english: str

    def __new__(cls, told: str, english: str) -> Sentence:
        """Give what is told, and the same in English."""
        made = super().__new__(cls, told)
        made.english = english
        return made

    def format(self, *args: object, **places: object) -> str:
        """Fill it in."""
        filled = _NUMBERS.vformat(str(self), args, places)
        if not _IN_BOTH.get():
            return filled
        own = {name: in_english_of(value) for name, value in places.items()}
        english = self.english.format(*map(in_english_of, args), **own)
        return Sentence(filled, english)


_NUMBERS: Final = _Numbers()


def in_english_of(told: object) -> object:
    """Give a sentence in English, and anything else as it is."""
    return told.english if isinstance(told, Sentence) else told


class _Chosen:
    language = ENGLISH
    signs: Mapping[int, str] = MappingProxyType({})
    table: Translate | None = None


def choose(language: str, decimal_sign: str, group_sign: str, table: Translate | None) -> None:
    """Choose a language by its code of ISO 639-1, how it writes numbers, and its table.

    ``group_sign`` stands between thousands, as the comma in 1,000.5.
    """
    _Chosen.language, _Chosen.table = language, table
    _Chosen.signs = MappingProxyType(str.maketrans({".": decimal_sign, ",": group_sign}))


@contextmanager
def as_before() -> Iterator[None]:
    """Go back to the language of now at the end, whichever is chosen in between."""
    before = _Chosen.language, _Chosen.signs, _Chosen.table
    try:
        yield
    finally:
        _Chosen.language, _Chosen.signs, _Chosen.table = before


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


@contextmanager
def in_both() -> Iterator[None]:
    """Let sentences know themselves in English too, so that they can be ``kept``."""
    token = _IN_BOTH.set(True)
    try:
        yield
    finally:
        _IN_BOTH.reset(token)


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
    told = _Chosen.table(context, sentence)
    return Sentence(told, sentence) if "{" in told or _IN_BOTH.get() else told


def kept(told: str) -> str:
    """Write a sentence down for whoever reads it later, perhaps in another language."""
    if not isinstance(told, Sentence) or told.english == told:
        return told
    return _KEPT + json.dumps({ENGLISH: told.english, _Chosen.language: told}, ensure_ascii=False)


def read_again(text: str) -> str:
    """Give what ``kept`` wrote down, in the chosen language where it was told in that, or English.

    What was written down before there were languages stands as it is.
    """
    if not text.startswith(_KEPT):
        return text
    tables: dict[str, str] = json.loads(text.removeprefix(_KEPT))
    return of(tables)


def localised(number: str) -> str:
    """Write a number of Python's own writing with the language's signs."""
    if _Chosen.table is None or _IN_ENGLISH.get():
        return number
    written = number.translate(_Chosen.signs)
    return Sentence(written, number) if _IN_BOTH.get() else written
