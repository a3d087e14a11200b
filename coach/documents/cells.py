"""Cells of a table of text: written, and read as numbers within limits."""

from __future__ import annotations

import math
import re
import warnings
from collections.abc import Sequence

import msgspec
import numpy as np
from numpy.typing import NDArray

from coach.domain.fault import Fault
from coach.texts import translate

NUMBER = re.compile(r"[+-]?([0-9]+\.?[0-9]*|\.[0-9]+)([eE][+-]?[0-9]+)?")
"""A cell that is a number."""
_NUMBERS = msgspec.json.Decoder(list[float | None])
_PART_BYTES = 65_536


def number(value: float | None, decimals: int) -> str:
    """Give a number as a cell, empty for None and NaN."""
    if value is None or not math.isfinite(value):
        return ""
    text = f"{value:.{decimals}f}"
    return text if text.strip("-0.") else text.removeprefix("-")


def number_grid(
    body: str, columns: Sequence[int], first_line: int, where: str
) -> NDArray[np.float64]:
    """Give rows of numbers as an array (rows, columns), NaN for empty cells.

    ``columns`` are their places in the table, counted from 0, and ``first_line`` the first row's
    from 1, for what is said of a cell.
    """
    if body.encode().translate(None, b"0123456789eE+-.,\n"):
        raise _not_a_number(body, columns, first_line, where)
    rows = body.count("\n") + 1
    filled = f",{body},".replace("\n", ",")
    filled = filled.replace(",,", ",null,").replace(",,", ",null,")[1:-1]
    grid: NDArray[np.float64] | None
    try:
        grid = _of_json(filled.encode())
    except msgspec.DecodeError:
        grid = _of_text(filled.replace("null", "nan"))
    if grid is None or grid.size != rows * len(columns):
        raise _not_a_number(body, columns, first_line, where)
    return grid.reshape(rows, len(columns))


def _of_json(cells: bytes) -> NDArray[np.float64]:
    """Read numbers as JSON writes them, three times as fast as NumPy reads text; null is NaN.

    Part by part, so that no more of Python's own numbers stand in memory than fit near by. Raises
    DecodeError where a number is none of JSON's, as +1 and .5 are not.
    """
    parts: list[NDArray[np.float64]] = []
    begin = 0
    while begin < len(cells):
        comma = cells.find(b",", begin + _PART_BYTES)
        end = comma if comma >= 0 else len(cells)
        found = _NUMBERS.decode(b"[%b]" % cells[begin:end])
        parts.append(np.array(found, dtype=np.float64))
        begin = end + 1
    return np.concatenate(parts)


def _of_text(cells: str) -> NDArray[np.float64] | None:
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("error", DeprecationWarning)
            return np.fromstring(cells, dtype=np.float64, sep=",")
    except (ValueError, DeprecationWarning):
        return None


def _not_a_number(body: str, columns: Sequence[int], first_line: int, where: str) -> Fault:
    """Find the first cell that is no number."""
    for row, line in enumerate(body.split("\n"), start=first_line):
        for column, cell in zip(columns, line.split(","), strict=True):
            if cell and not NUMBER.fullmatch(cell):
                return Fault(
                    translate(
                        "faults",
                        "{where}, line {row}, column {column}, holds {cell!a} where a "
                        "number belongs; ask for the file again.",
                    ).format(where=where, row=row, column=column + 1, cell=cell[:40])
                )
    return Fault(
        translate(
            "faults",
            "{where} holds cells that are no numbers; ask for the file again.",
        ).format(where=where)
    )


def check_ranges(
    grid: NDArray[np.float64],
    limits: Sequence[tuple[float, float]],
    names: Sequence[str],
    where: str,
) -> None:
    """Refuse numbers (rows, columns) outside their column's limits; NaN passes."""
    if not len(grid):
        return
    least, most = np.array(limits, dtype=np.float64).reshape(-1, 2).T
    wrong = (np.fmin.reduce(grid, axis=0) < least) | (np.fmax.reduce(grid, axis=0) > most)
    if not wrong.any():
        return
    column = int(np.argmax(wrong))
    values, (low, high) = grid[:, column], limits[column]
    row = int(np.argmax((values < low) | (values > high)))
    raise Fault(
        translate(
            "faults",
            "{where}, line {row}, {name} is {value:g}, allowed are {low:g} to "
            "{high:g}; ask for the file again.",
        ).format(
            where=where, row=row + 2, name=names[column], value=values[row], low=low, high=high
        )
    )


TIME_LIMITS_S = 0.0, 86_400.0
"""A day."""


def check_times(time_s: NDArray[np.float64], where: str) -> None:
    """Refuse times that are missing or run backwards."""
    missing = np.flatnonzero(np.isnan(time_s))
    if missing.size:
        raise Fault(
            translate(
                "faults",
                "{where}, line {line}, has no time_s; ask for the file again.",
            ).format(where=where, line=int(missing[0]) + 2)
        )
    backwards = np.flatnonzero(np.diff(time_s) < 0)
    if backwards.size:
        raise Fault(
            translate(
                "faults",
                "{where}, line {line}, time_s runs backwards; ask for the file again.",
            ).format(where=where, line=int(backwards[0]) + 3)
        )


def too_large(where: str, found: str, allowed: int) -> Fault:
    """Give the refusal of a table that would take too much memory."""
    return Fault(
        translate(
            "faults",
            "{where} is too large: {found}, at most {allowed:,} are read; check that this"
            " is the right file.",
        ).format(where=where, found=found, allowed=allowed)
    )
