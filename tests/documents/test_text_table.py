"""Cells of tables: every number as Python reads it, and what is none of them with its place."""

from __future__ import annotations

import re

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from numpy.typing import NDArray

from coach.documents import text_table
from coach.documents.cells import NUMBER, number_grid
from coach.documents.decimals import PADDING, decimals
from coach.documents.landmarks import landmark_header, read_landmarks
from coach.documents.readings import HEADER, read_readings
from coach.documents.text_table import split_table
from coach.domain.fault import Fault

GOOD_ROW = "1.000,0,holding,100.0,3.0,,,,,,,,,,,"
PLAIN = st.one_of(
    st.decimals(-999, 9999, places=3).map(str),
    st.decimals(-9, 99, places=5).map(str),
    st.integers(-(10**7) + 1, 10**8 - 1).map(str),
    st.from_regex(re.compile(r"-?[0-9]{0,3}\.[0-9]{1,3}", re.ASCII), fullmatch=True),
    st.from_regex(re.compile(r"-?[0-9]{1,6}\.?", re.ASCII), fullmatch=True),
    st.just(""),
)
WRITTEN = st.one_of(
    st.floats(allow_nan=False, allow_infinity=False).map(repr),
    st.integers(-(10**25), 10**25).map(str),
    st.from_regex(NUMBER, fullmatch=True),
    PLAIN,
)
ODD = ["1e", "--1", "1.2.3", ".", "-", "-.", "e5", "+", "1-2", "1:", "1/", "\u0663", "0x1", " 1"]


def split(text: str, columns: int, **bounds: int) -> text_table.TextTable:
    header = ",".join("abcdefgh"[:columns])
    largest = {"max_bytes": 10**7, "max_rows": 10**5, "max_columns": 100} | bounds
    return split_table(f"{header}\n{text}\n".encode(), "a table", **largest)


def at_once(cells: list[str]) -> NDArray[np.float64] | None:
    text = PADDING + ",".join(cells).encode() + b"\n"
    ends = np.array([i for i, letter in enumerate(text) if letter in b",\n"])
    return decimals(text, np.concatenate([[len(PADDING)], ends[:-1] + 1]), ends)


@given(st.lists(st.lists(WRITTEN, min_size=3, max_size=3), min_size=1, max_size=40))
@settings(max_examples=300, deadline=None)
def test_every_number_is_read_as_python_reads_it(rows: list[list[str]]) -> None:
    """Those that JSON knows, and those that it does not: +1, .5, 5. and 007."""
    body = "\n".join(",".join(row) for row in rows)
    expected = [[float(cell or "nan") for cell in row] for row in rows]
    np.testing.assert_array_equal(split(body, 3).cells("a table")[0], expected)
    np.testing.assert_array_equal(number_grid(body, range(3), 2, "a table"), expected)


@given(st.lists(PLAIN, min_size=1, max_size=60))
@settings(max_examples=500, deadline=None)
def test_short_decimals_are_read_at_once_to_the_last_bit(cells: list[str]) -> None:
    found = at_once(cells)
    assert found is not None
    np.testing.assert_array_equal(found, [float(cell or "nan") for cell in cells])


@given(st.lists(st.text(st.sampled_from("0123456789-+.e: x"), max_size=9), min_size=1, max_size=6))
@settings(max_examples=2_000, deadline=None)
def test_nothing_else_is_taken_for_a_decimal(cells: list[str]) -> None:
    plain = all(not cell or re.fullmatch(r"-?([0-9]+\.?[0-9]*|\.[0-9]+)", cell) for cell in cells)
    found = at_once(cells)
    assert (found is not None) == (plain and max(map(len, cells)) <= 8)
    if found is not None:
        np.testing.assert_array_equal(found, [float(cell or "nan") for cell in cells])


@pytest.mark.parametrize("form", ["1{}2", "12.{}", "{}"])
def test_no_letter_but_a_digit_stands_for_a_digit(form: str) -> None:
    cells = {code: form.format(chr(code)) for code in range(256) if chr(code) not in ",\n"}
    taken = {cell for cell in cells.values() if at_once(["5", cell, "6"]) is not None}
    assert taken == {form.format(digit) for digit in "0123456789"} | ({"1.2"} & {form.format(".")})


def test_a_table_of_many_pieces_is_read_whole() -> None:
    values = np.random.default_rng(3).normal(0, 1000, (19_000, 4)).round(3)
    values[::7, 2] = np.nan
    body = "\n".join(",".join("" if np.isnan(v) else repr(float(v)) for v in r) for r in values)
    assert len(body) > 3 * text_table._PIECE_BYTES
    np.testing.assert_array_equal(split(body, 4).cells("a table")[0], values)


def test_a_row_longer_than_a_piece_is_read(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(text_table, "_PIECE_BYTES", 4)
    rows = [[1.5, 2.25, np.nan], [1234.5, -1234.5, 7], [np.nan] * 3]
    found, _ = split("1.5,2.25,\n1234.5,-1234.5,7\n,,", 3).cells("a table")
    np.testing.assert_array_equal(found, rows)


@pytest.mark.parametrize("piece_bytes", [4, 131_072])
@pytest.mark.parametrize("cell", ODD)
def test_what_only_looks_like_a_number_is_refused_with_its_place(
    cell: str, piece_bytes: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(text_table, "_PIECE_BYTES", piece_bytes)
    with pytest.raises(Fault, match=r"a table, line 3, column 2, holds"):
        split(f"1,2,3\n4,{cell},6\n7,8,9", 3).cells("a table")
    with pytest.raises(Fault, match=r"a table, line 3, column 2, holds"):
        number_grid(f"1,2,3\n4,{cell},6\n7,8,9", range(3), 2, "a table")


@pytest.mark.parametrize("piece_bytes", [4, 131_072])
@pytest.mark.parametrize(
    ("body", "line", "count"),
    [
        ("1,2,3\n4,5\n6,7,8,9\n1,2,3", 3, 2),  # as many in all as there should be
        ("1,2,3\n4,5,6,7\n8,9\n1,2,3", 3, 4),
        ("1,2,3\n4,5,6\n7,8,9,0", 4, 4),
        ("1,2,3\n\n4,5,6", 3, 1),
    ],
)
def test_rows_that_are_uneven_are_refused_with_the_first(
    body: str, line: int, count: int, piece_bytes: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(text_table, "_PIECE_BYTES", piece_bytes)
    with pytest.raises(Fault, match=rf"line {line}, has {count} cells where the header has 3"):
        split(body, 3).cells("a table")


def test_a_wrong_word_far_down_is_named_with_its_line() -> None:
    rows = [GOOD_ROW] * 9_000
    rows[8_500] = GOOD_ROW.replace("holding", "hoIding")
    with pytest.raises(Fault, match=r"line 8502, phase is 'hoIding', allowed are rest, "):
        read_readings((HEADER + "\n".join(rows)).encode(), "readings.csv")


def test_a_cell_that_is_no_number_far_down_is_named_with_its_line() -> None:
    rows = ["1,640,480" + "," * (landmark_header().count(",") - 2)] * 9_000
    rows[8_500] = rows[8_500][:-1] + "1.5.,"
    with pytest.raises(Fault, match=r"line 8502, column \d+, holds '1\.5\.' where a number"):
        read_landmarks((landmark_header() + "\n".join(rows)).encode(), "landmarks.csv")


@pytest.mark.parametrize(
    ("header", "rows", "words"),
    [
        ("," * 2_000_000, "", r"2,000,001 columns, at most 211"),
        ("," * 210, ("," * 210 + "\n") * 40_000, r"8,440,000 cells, at most 7,500,000"),
        ("time_s,x", "," * 7_600_000, r"7,600,001 cells, at most 7,500,000"),
        ("time_s,x", "," * 7_000_000, r"line 2, has 7000001 cells where the header has 2"),
    ],
    ids=["columns", "rows", "one row", "one uneven row"],
)
def test_cells_are_counted_before_any_is_looked_at(
    header: str, rows: str, words: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    def looked(*_: object) -> None:
        raise AssertionError

    monkeypatch.setattr(text_table._Piece, "of", looked)
    with pytest.raises(Fault, match=words):
        read_landmarks(f"{header}\n{rows}".encode(), "landmarks.csv")


def test_marks_and_line_ends_of_other_systems_are_taken() -> None:
    data = b"\xef\xbb\xbfa,b\r\n1,2\r\n3,4"
    table = split_table(data, "a table", max_bytes=99, max_rows=9, max_columns=9)
    assert table.header == ("a", "b")
    np.testing.assert_array_equal(table.cells("a table")[0], [[1, 2], [3, 4]])


@pytest.mark.parametrize("piece_bytes", [2, 4, 131_072])
def test_an_empty_row_at_the_end_of_a_column_is_one(
    piece_bytes: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    """It has one cell, as the header has, wherever a piece ends."""
    monkeypatch.setattr(text_table, "_PIECE_BYTES", piece_bytes)
    found, _ = split("1\n25\n", 1).cells("a table")
    np.testing.assert_array_equal(found, [[1.0], [25.0], [np.nan]])


def test_a_table_may_hold_nothing_but_words() -> None:
    found, codes = split("yes,no\nno,no", 2).cells("a table", dict.fromkeys((0, 1), ("no", "yes")))
    assert found.shape == (2, 0)
    assert {column: row.tolist() for column, row in codes.items()} == {0: [1, 0], 1: [0, 0]}
