"""Parquet, read by another library than wrote it: the same holds as in the table."""

from __future__ import annotations

import csv
import io
from datetime import UTC, datetime
from pathlib import Path

import pytest

from coach.exchange.parquet import holds_parquet
from coach.exchange.table import COLUMNS, holds_table
from tests.exchange.records import full_session
from tests.review.conftest import make_session

duckdb = pytest.importorskip("duckdb")
pytest.importorskip("pyarrow")


def test_duckdb_reads_every_hold_with_its_type(tmp_path: Path) -> None:
    patients = [[full_session(0), full_session(1)], [], [make_session(3, code="=SH-2")]]
    path = tmp_path / "holds.parquet"
    path.write_bytes(holds_parquet(patients))
    read = duckdb.connect().execute
    names = [row[0] for row in read(f"describe select * from '{path}'").fetchall()]
    assert tuple(names) == COLUMNS
    found = read(f"select * from '{path}'").fetchall()
    wanted = [
        row
        for documents in patients
        for row in csv.reader(io.StringIO(holds_table(documents).decode("utf-8-sig")))
        if row[0] != "patient"
    ]
    assert len(found) == len(wanted) > 8
    for cells, texts in zip(found, wanted, strict=True):
        for name, cell, text in zip(COLUMNS, cells, texts, strict=True):
            if isinstance(cell, datetime):
                assert cell.astimezone(UTC) == datetime.fromisoformat(text), name
            elif isinstance(cell, float | int):
                assert cell == float(text), name
            else:
                assert (cell or "") == text.removeprefix("'"), name
    groups = read(f"select count(distinct row_group_id) from parquet_metadata('{path}')").fetchone()
    assert groups == (2,)
    median = read(f"select median(value) from '{path}' where patient = '=SH-2'").fetchone()
    assert median == (100.0,)
