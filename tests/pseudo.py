"""A language in which every translated letter is another one, so that what is left over shows.

``spoken()`` puts it in as long as a test runs. Its table changes each letter of a sentence but not
its places (in braces, or those of argparse), so that a text put into a place shows by itself
whether it was translated.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from contextlib import contextmanager

from coach import texts

SIGN = "\u201a"
"""A low comma for a decimal sign, which no number has by chance."""
GROUP = "\u2e31"
"""A middle dot of words between thousands."""
_PLACES = re.compile(r"(\{[^{}]*\}|%(?:\(\w+\))?[sr]\b)")
_LATIN = re.compile(r"[A-Za-z]{2,}|[A-Za-z](?=\W*$)")
_LEVEL = re.compile(r"\b(C7|T\d+|L\d|S1|PSIS)\b")
_UNIT = re.compile(r"(?<=\d )(s|min|h|mm)\b")


def pseudo(_context: str, sentence: str) -> str:
    """Give the sentence with Cyrillic letters outside its places."""
    parts = _PLACES.split(re.sub(r"(?<=\d)\.(?=\d)", SIGN, sentence))
    return "".join(
        part
        if part.startswith(("{", "%"))
        else "".join(("\u0416" if c.isupper() else "\u0436") if c.isalpha() else c for c in part)
        for part in parts
    )


@contextmanager
def spoken() -> Iterator[None]:
    """Speak it."""
    texts.choose("xx", SIGN, GROUP, pseudo)
    try:
        yield
    finally:
        texts.choose(texts.ENGLISH, ".", ",", None)


def left_over(told: Iterable[str], known: Iterable[str] = ()) -> list[str]:
    """Give the texts that still have words, or a decimal point, of English.

    ``known`` are codes, names and what people wrote themselves, which no language changes; so are
    levels of the spine and the signs of units.
    """
    found = []
    for text in told:
        rest = text
        for each in sorted(known, key=len, reverse=True):
            rest = rest.replace(each, "")
        rest = _UNIT.sub("", _LEVEL.sub("", rest))
        if _LATIN.search(rest) or re.search(r"\d[.,]\d", rest):
            found.append(text)
    return found
