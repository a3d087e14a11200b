"""Many short decimal numbers at once: eight letters as one whole number of 64 bits.

The letters of a cell are loaded into one word, the point is taken out of it, and all digits are
made a whole number by three multiplications (D. Lemire, Number parsing at a gigabyte per second,
Software: Practice and Experience 51, 2021). A whole number below 2^53 over a power of ten up to
10^22 is the nearest double of the decimal (W. D. Clinger, How to read floating point numbers
accurately, PLDI 1990), so nothing is rounded twice. Both from memory.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

MOST_LETTERS = 8
PADDING = b"\0" * MOST_LETTERS
"""Must stand before the first cell, whose word begins in front of it."""

_Word = np.uint64


def _each(letter: int) -> np.uint64:
    return _Word(int.from_bytes(bytes([letter]) * 8, "little"))


_POINTS, _ZEROS, _LOW_BITS, _HIGH_BIT = _each(0x2E), _each(0x30), _each(0x7F), _each(0x80)
_ABOVE_NINE = _each(0x76)
"""Added to a digit's value, it sets the highest bit of what is above nine."""
_PLACE = _Word(0x0706050403020100)
_BLANKS = np.array(
    [int.from_bytes(b"\xff" * (8 - n) + b"\0" * n, "little") for n in range(9)], dtype=np.uint64
)
_KEPT = ~_BLANKS
_FILLED = _BLANKS & _ZEROS
_SIGNED, _EMPTY = 8, 16
_POWERS = 10.0 ** np.arange(8)
_DIVISORS = np.concatenate([_POWERS, -_POWERS, np.full(16, np.nan)])
"""By digits after the point, 8 more with a minus, 16 more in an empty cell."""


def decimals(
    text: bytes, starts: NDArray[np.int64], ends: NDArray[np.int64]
) -> NDArray[np.float64] | None:
    """Give the numbers that stand in ``text`` from each of ``starts`` up to ``ends``.

    Places, of one shape, which the numbers have too; ``text`` begins with ``PADDING``. NaN for
    empty cells. None where a cell is anything but digits, a minus before them and a point, eight
    letters in all: then nothing is said about what it is.
    """
    letters = np.frombuffer(text, np.uint8)
    words = np.ndarray((len(text) - 7,), "<u8", text, 0, (1,))
    length = ends - starts
    if length.max(initial=0) > MOST_LETTERS:
        return None
    empty = length == 0
    minus = letters[starts] == ord("-")
    length -= minus
    word = words[ends - MOST_LETTERS]
    word &= _KEPT[length]
    word |= _FILLED[length]
    point = _points(word)
    pointed = point != 0
    if np.count_nonzero(length == pointed) != np.count_nonzero(empty):
        return None  # a sign or a point without a digit
    divisor = ((point * _PLACE) >> _Word(56)).view(np.int64)
    divisor += _SIGNED * minus
    divisor += _EMPTY * empty
    _take_out(word, point, pointed)
    word ^= _ZEROS
    if np.bitwise_or.reduce((word + _ABOVE_NINE) | word, axis=None) & _HIGH_BIT:
        return None
    found: NDArray[np.float64] = _whole(word) / _DIVISORS[divisor]
    return found


def _points(word: NDArray[np.uint64]) -> NDArray[np.uint64]:
    """Give the lowest bit of each letter that is a point."""
    other = word ^ _POINTS
    seen = other & _LOW_BITS
    seen += _LOW_BITS
    seen |= other
    seen |= _LOW_BITS
    np.invert(seen, out=seen)
    seen >>= _Word(7)
    return seen


def _take_out(
    word: NDArray[np.uint64], point: NDArray[np.uint64], pointed: NDArray[np.bool_]
) -> None:
    """Move the letters before the one point into its place; a second one stays, and is no digit."""
    before = word & (point - pointed)
    word -= point * _Word(ord("."))
    word -= before
    before <<= _Word(8)
    word |= before
    word |= pointed * _Word(ord("0"))


def _whole(digits: NDArray[np.uint64]) -> NDArray[np.uint64]:
    """Turn eight digits, the first in the lowest byte, into the number they are; in place."""
    for factor, bits, kept in (
        (10 << 8 | 1, 8, 0x00FF00FF00FF00FF),
        (100 << 16 | 1, 16, 0x0000FFFF0000FFFF),
        (10_000 << 32 | 1, 32, 0x00000000FFFFFFFF),
    ):
        digits *= _Word(factor)
        digits >>= _Word(bits)
        digits &= _Word(kept)
    return digits
