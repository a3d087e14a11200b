"""A table of text that nobody vouches for: RFC 4180 without quotes, its cells found at once."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from types import MappingProxyType

import numpy as np
from numpy.typing import NDArray

from coach.documents.cells import number_grid, too_large
from coach.documents.decimals import PADDING, decimals
from coach.domain.fault import Fault
from coach.texts import translate

Codes = NDArray[np.int16]
NO_WORDS: Mapping[int, Sequence[str]] = MappingProxyType({})
_COMMA, _LINE_END = b",\n"
_PIECE_BYTES = 131_072
"""Rows at a time, so that what stands between two steps stays in the processor's cache."""


@dataclass(frozen=True, slots=True)
class TextTable:
    """The names of the columns, and so many rows below them, of as many cells in all."""

    header: tuple[str, ...]
    rows: int
    body: bytes = field(repr=False)

    def cells(
        self, where: str, words: Mapping[int, Sequence[str]] = NO_WORDS
    ) -> tuple[NDArray[np.float64], dict[int, Codes]]:
        """Give the numbers (rows, columns), NaN for empty cells, and which words stand where.

        Of the columns in ``words`` each cell is one of theirs, given by its place among them;
        these columns are none of the numbers'. Anything else raises a ``Fault``.
        """
        kept = [column for column in range(len(self.header)) if column not in words]
        grid = np.empty((self.rows, len(kept)))
        codes = {column: np.empty(self.rows, np.int16) for column in words}
        row = 0
        for text in _pieces(self.body) if self.rows else ():
            piece = _Piece.of(text, row, self.header, where)
            these = slice(row, row + len(piece.ends))
            for column, known in words.items():
                codes[column][these] = piece.words(column, known)
            grid[these] = piece.numbers(kept)
            row = these.stop
        return grid, codes


@dataclass(frozen=True, slots=True, eq=False)
class _Piece:
    """Some rows: ``ends`` (rows, columns) are the places behind the cells, in ``text``."""

    text: bytes
    starts: NDArray[np.int64]
    ends: NDArray[np.int64]
    row: int
    header: tuple[str, ...]
    where: str

    @staticmethod
    def of(lines: bytes, row: int, header: tuple[str, ...], where: str) -> _Piece:
        """Find the cells; a row that has not as many as the header raises a ``Fault``."""
        columns, rows = len(header), _count(lines, _LINE_END) + 1
        text = b"".join((PADDING, lines, b"\n"))
        letters = np.frombuffer(text, np.uint8)
        behind = letters == _COMMA
        behind |= letters == _LINE_END
        if np.count_nonzero(behind) != rows * columns:
            raise _uneven(lines, row, columns, where)
        ends = np.flatnonzero(behind)
        if (letters[ends[columns - 1 :: columns]] != _LINE_END).any():
            raise _uneven(lines, row, columns, where)
        starts = np.empty_like(ends)
        starts[0] = len(PADDING)
        np.add(ends[:-1], 1, out=starts[1:])
        shape = rows, columns
        return _Piece(text, starts.reshape(shape), ends.reshape(shape), row, header, where)

    def numbers(self, kept: Sequence[int]) -> NDArray[np.float64]:
        """Give the numbers of these columns."""
        starts, ends = self.starts, self.ends
        if len(kept) < len(self.header):
            starts, ends = starts[:, kept], ends[:, kept]
        found = decimals(self.text, starts, ends)
        if found is not None:
            return found
        lines = self.text[len(PADDING) : -1].decode().split("\n")
        parted = (line.split(",") for line in lines)
        chosen = "\n".join(",".join([cells[column] for column in kept]) for cells in parted)
        return number_grid(chosen, kept, self.row + 2, self.where)

    def words(self, column: int, known: Sequence[str]) -> Codes:
        """Give which of the words stands in each row of a column."""
        letters = np.frombuffer(self.text, np.uint8)
        starts = self.starts[:, column]
        lengths = self.ends[:, column] - starts
        found = np.full(len(starts), -1, np.int16)
        some = set(np.unique(lengths).tolist())
        for code, word in enumerate(known):
            if len(word) not in some:
                continue
            rows = np.flatnonzero(lengths == len(word))
            there = letters[starts[rows, None] + np.arange(len(word))]
            found[rows[(there == np.frombuffer(word.encode(), np.uint8)).all(axis=1)]] = code
        unknown = np.flatnonzero(found < 0)
        if unknown.size:
            row = int(unknown[0])
            cell = self.text[self.starts[row, column] : self.ends[row, column]].decode()
            raise Fault(
                translate(
                    "faults",
                    "{where}, line {row}, {column} is {cell!a}, allowed are "
                    "{known}; ask for the file again.",
                ).format(
                    where=self.where,
                    row=self.row + row + 2,
                    column=self.header[column],
                    cell=cell[:40],
                    known=", ".join(word for word in known if word),
                )
            )
        return found


def split_table(
    data: bytes,
    where: str,
    *,
    max_bytes: int,
    max_rows: int,
    max_columns: int,
    max_cells: int | None = None,
) -> TextTable:
    """Give a table, its cells not looked at; one too large is refused before memory is spent."""
    if len(data) > max_bytes:
        raise too_large(
            where, translate("faults", "{count:,} bytes").format(count=len(data)), max_bytes
        )
    lines = _count(data, _LINE_END)
    if lines > max_rows + 1:
        raise too_large(where, translate("faults", "{count:,} rows").format(count=lines), max_rows)
    first, body = _parted(data, where)
    columns = _count(first, _COMMA) + 1
    if columns > max_columns:
        raise too_large(
            where,
            translate("faults", "{count:,} columns").format(count=columns),
            max_columns,
        )
    rows = _count(body, _LINE_END) + 1 if body else 0
    cells = _count(body, _COMMA) + rows
    if max_cells is not None and cells > max_cells:
        found = translate("faults", "{count:,} cells").format(count=cells)
        raise too_large(where, found, max_cells)
    if cells != columns * rows:
        raise _uneven(body, 0, columns, where)
    return TextTable(tuple(first.decode().split(",")), rows, body)


def _count(data: bytes, letter: int) -> int:
    """Count a letter that stands everywhere, which ``bytes.count`` is slow at."""
    return int(np.count_nonzero(np.frombuffer(data, np.uint8) == letter))


def _pieces(body: bytes) -> Iterator[bytes]:
    """Cut between rows."""
    begin = 0
    while begin <= len(body):  # behind a last line feed stands an empty row
        end = len(body)
        if end - begin > _PIECE_BYTES:
            end = body.rfind(b"\n", begin, begin + _PIECE_BYTES)
            if end < 0:
                end = body.find(b"\n", begin + _PIECE_BYTES)
            end = end if end >= 0 else len(body)
        yield body[begin:end]
        begin = end + 1


def _parted(data: bytes, where: str) -> tuple[bytes, bytes]:
    """Give the first line and those below it, with a line feed between two and none at the end."""
    if not data.isascii():
        try:
            data.decode()
        except UnicodeDecodeError as error:
            raise Fault(
                translate(
                    "faults",
                    "{where} is not UTF-8 text; check that this is the right file.",
                ).format(where=where)
            ) from error
        data = data.removeprefix(b"\xef\xbb\xbf")
    if b"\r" in data:
        data = data.replace(b"\r\n", b"\n")
    first = data.find(b"\n")
    if first < 0:
        return data, b""
    return data[:first], data[first + 1 : len(data) - data.endswith(b"\n")]


def _uneven(body: bytes, row: int, columns: int, where: str) -> Fault:
    """Find the first row that has more cells than the header, or fewer; ``row`` were before it."""
    line, count = next(
        (line, cells.count(b",") + 1)
        for line, cells in enumerate(body.split(b"\n"), start=row + 2)
        if cells.count(b",") + 1 != columns
    )
    return Fault(
        translate(
            "faults",
            "{where}, line {number}, has {count} cells where the header has "
            "{header}; ask for the file again.",
        ).format(where=where, number=line, count=count, header=columns)
    )
