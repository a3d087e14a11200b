"""Bounded reading and writing of tables of text: RFC 4180 without quotes."""

from __future__ import annotations

import math
import re
import warnings

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


def split_table(
    data: bytes, where: str, *, max_bytes: int, max_rows: int, max_columns: int
) -> tuple[list[str], str]:
    """Give the header's cells and the text below it, whose rows have as many cells each."""
    if len(data) > max_bytes:
        raise too_large(
            where, translate("faults", "{count:,} bytes").format(count=len(data)), max_bytes
        )
    rows = data.count(b"\n")
    if rows > max_rows + 1:
        raise too_large(where, translate("faults", "{count:,} rows").format(count=rows), max_rows)
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise Fault(
            translate(
                "faults",
                "{where} is not UTF-8 text; check that this is the right file.",
            ).format(where=where)
        ) from error
    first, _, body = text.replace("\r\n", "\n").removesuffix("\n").partition("\n")
    header = first.split(",")
    if len(header) > max_columns:
        raise too_large(
            where,
            translate("faults", "{count:,} columns").format(count=len(header)),
            max_columns,
        )
    commas = len(header) - 1
    for number_, line in enumerate(body.split("\n") if body else (), start=2):
        if line.count(",") != commas:
            raise Fault(
                translate(
                    "faults",
                    "{where}, line {number}, has {count} cells where the header has "
                    "{header}; ask for the file again.",
                ).format(where=where, number=number_, count=line.count(",") + 1, header=len(header))
            )
    return header, body


def number_grid(body: str, columns: int, where: str) -> NDArray[np.float64]:
    """Give rows of numbers as an array (rows, columns), NaN for empty cells."""
    if not body:
        return np.empty((0, columns))
    if body.encode().translate(None, b"0123456789eE+-.,\n"):
        raise not_a_number(body, where)
    rows = body.count("\n") + 1
    filled = f",{body},".replace("\n", ",")
    filled = filled.replace(",,", ",null,").replace(",,", ",null,")[1:-1]
    try:
        grid = _of_json(filled.encode())
    except msgspec.DecodeError:
        grid = _of_text(filled.replace("null", "nan"), body, where)
    if grid.size != rows * columns:
        raise not_a_number(body, where)
    return grid.reshape(rows, columns)


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


def _of_text(cells: str, body: str, where: str) -> NDArray[np.float64]:
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("error", DeprecationWarning)
            return np.fromstring(cells, dtype=np.float64, sep=",")
    except (ValueError, DeprecationWarning) as error:
        raise not_a_number(body, where) from error


def not_a_number(body: str, where: str) -> Fault:
    """Find the first cell that is no number."""
    for row, line in enumerate(body.split("\n"), start=2):
        for column, cell in enumerate(line.split(","), start=1):
            if cell and not NUMBER.fullmatch(cell):
                return Fault(
                    translate(
                        "faults",
                        "{where}, line {row}, column {column}, holds {cell!a} where a "
                        "number belongs; ask for the file again.",
                    ).format(where=where, row=row, column=column, cell=cell[:40])
                )
    return Fault(
        translate(
            "faults",
            "{where} holds cells that are no numbers; ask for the file again.",
        ).format(where=where)
    )


def check_range(
    values: NDArray[np.float64], low: float, high: float, name: str, where: str
) -> None:
    """Refuse numbers outside ``low`` to ``high``; NaN passes."""
    wrong = np.flatnonzero(~((values >= low) & (values <= high)) & ~np.isnan(values))
    if wrong.size:
        row = int(wrong[0])
        raise Fault(
            translate(
                "faults",
                "{where}, line {row}, {name} is {value:g}, allowed are {low:g} to "
                "{high:g}; ask for the file again.",
            ).format(where=where, row=row + 2, name=name, value=values[row], low=low, high=high)
        )


def check_times(time_s: NDArray[np.float64], where: str) -> None:
    """Refuse times that are missing, out of a day, or run backwards."""
    check_range(time_s, 0, 86_400, "time_s", where)
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
