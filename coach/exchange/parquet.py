"""Holds of one patient or of many as Apache Parquet, the table's columns with their types."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import datetime
from typing import Any

from coach.domain.fault import Fault
from coach.domain.session import SessionDocument
from coach.exchange.table import COLUMNS, rows_of
from coach.texts import translate

_NUMBERS = {
    "number": "int32",
    "asked_hold_s": "float64",
    "held_s": "float64",
    "value": "float64",
    "error_95": "float64",
    "interquartile_range": "float64",
    "seen_fraction": "float64",
    "pain_before": "int8",
    "pain_after": "int8",
    "pain_at_end_of_session": "int8",
    "angle_definitions": "int32",
}
_INSTANTS = frozenset(("session_started_at", "started_at"))


def holds_parquet(patients: Iterable[Sequence[SessionDocument]]) -> bytes:
    """Write a file with one row a hold and one row group a patient, each read when it is due.

    Missing is what is unknown or does not apply; instants are UTC to the millisecond; texts are as
    they are, since no spreadsheet runs them. Raises Fault where pyarrow is not installed.
    """
    try:
        import pyarrow as arrow
        from pyarrow import parquet
    except ImportError:
        raise Fault(
            translate(
                "faults",
                "Parquet is written by pyarrow, which is not installed; export another kind, or"
                " export from a program that was installed with"
                " pip install 'stiff-shoulder-coach[parquet]'.",
            )
        ) from None
    schema = arrow.schema([(name, _type(arrow, name)) for name in COLUMNS])
    out = arrow.BufferOutputStream()
    with parquet.ParquetWriter(out, schema, compression="zstd") as writer:
        for documents in patients:
            rows = list(rows_of(documents))
            if not rows:
                continue
            columns = zip(COLUMNS, zip(*rows, strict=True), strict=True)
            cells = {name: _cells(name, column) for name, column in columns}
            writer.write_table(arrow.table(cells, schema))
    return bytes(out.getvalue().to_pybytes())


def _type(arrow: Any, name: str) -> Any:
    if name in _INSTANTS:
        return arrow.timestamp("ms", tz="UTC")
    return getattr(arrow, _NUMBERS.get(name, "string"))()


def _cells(name: str, column: Sequence[Any]) -> list[Any]:
    if name in _INSTANTS:
        return [datetime.fromisoformat(cell) for cell in column]
    if name in _NUMBERS:
        return list(column)
    return [None if cell is None else str(cell) for cell in column]
