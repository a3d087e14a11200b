"""Bounded reading and writing of tables of text: RFC 4180 without quotes."""

from __future__ import annotations

import math
import re

import numpy as np
from numpy.typing import NDArray

from coach.domain.fault import Fault

MAX_CELL_CHARACTERS = 40
_LONG_CELL = re.compile(rb"[^,\n]{%d}" % (MAX_CELL_CHARACTERS + 1))
_EMPTY_CELL = re.compile(r"(?<![^,])(?=,)|(?<=,)$")


def number(value: float | None, decimals: int) -> str:
    """Give a number as a cell, empty for None and NaN."""
    if value is None or not math.isfinite(value):
        return ""
    text = f"{value:.{decimals}f}"
    return text if text.strip("-0.") else text.removeprefix("-")


def split_rows(
    data: bytes, where: str, *, max_bytes: int, max_rows: int, max_columns: int
) -> tuple[list[str], list[str]]:
    """Give the header's cells and the rows below it, each with as many cells, unsplit."""
    if len(data) > max_bytes:
        raise _too_large(where, f"{len(data):,} bytes", f"{max_bytes:,}")
    if data.count(b"\n") > max_rows + 1:
        raise _too_large(where, f"{data.count(bytes([10])):,} rows", f"{max_rows:,}")
    if _LONG_CELL.search(data):
        raise Fault(
            f"{where} has a cell of more than {MAX_CELL_CHARACTERS} characters; "
            "check that this is the right file."
        )
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise Fault(f"{where} is not UTF-8 text; check that this is the right file.") from error
    lines = text.replace("\r\n", "\n").removesuffix("\n").split("\n")
    header = lines.pop(0).split(",")
    if len(header) > max_columns:
        raise _too_large(where, f"{len(header):,} columns", f"{max_columns:,}")
    commas = len(header) - 1
    for number_, line in enumerate(lines, start=2):
        if line.count(",") != commas:
            raise Fault(
                f"{where}, line {number_}, has {line.count(',') + 1} cells where the header has "
                f"{len(header)}; ask for the file again."
            )
    return header, lines


def number_grid(lines: list[str], columns: int, where: str) -> NDArray[np.float64]:
    """Give rows of numbers as an array (rows, columns), NaN for empty cells."""
    if not lines:
        return np.empty((0, columns))
    filled = (_EMPTY_CELL.sub("nan", line) if ",," in f",{line}," else line for line in lines)
    try:
        if any(re.search(r"[^0-9eE+\-.,]", line) for line in lines):
            raise ValueError
        grid = np.loadtxt(filled, delimiter=",", dtype=np.float64, ndmin=2, comments=None)
    except ValueError as error:
        raise not_a_number(lines, where) from error
    return grid


def not_a_number(lines: list[str], where: str) -> Fault:
    """Find the first cell that is no number."""
    for row, line in enumerate(lines, start=2):
        for column, cell in enumerate(line.split(","), start=1):
            if cell and not re.fullmatch(r"[+-]?[0-9]*\.?[0-9]*([eE][+-]?[0-9]+)?", cell):
                return Fault(
                    f"{where}, line {row}, column {column}, holds {cell!a} where a number "
                    "belongs; ask for the file again."
                )
    return Fault(f"{where} holds cells that are no numbers; ask for the file again.")


def check_range(
    values: NDArray[np.float64], low: float, high: float, name: str, where: str
) -> None:
    """Refuse numbers outside ``low`` to ``high``; NaN passes."""
    wrong = np.flatnonzero(~((values >= low) & (values <= high)) & ~np.isnan(values))
    if wrong.size:
        row = int(wrong[0])
        raise Fault(
            f"{where}, line {row + 2}, {name} is {values[row]:g}, allowed are {low:g} to "
            f"{high:g}; ask for the file again."
        )


def check_times(time_s: NDArray[np.float64], where: str) -> None:
    """Refuse times that are missing, out of a day, or run backwards."""
    check_range(time_s, 0, 86_400, "time_s", where)
    missing = np.flatnonzero(np.isnan(time_s))
    if missing.size:
        raise Fault(f"{where}, line {int(missing[0]) + 2}, has no time_s; ask for the file again.")
    backwards = np.flatnonzero(np.diff(time_s) < 0)
    if backwards.size:
        raise Fault(
            f"{where}, line {int(backwards[0]) + 3}, time_s runs backwards; ask for the file again."
        )


def _too_large(where: str, found: str, allowed: str) -> Fault:
    return Fault(
        f"{where} is too large: {found}, at most {allowed} are read; "
        "check that this is the right file."
    )
