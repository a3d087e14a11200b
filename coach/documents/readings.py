"""``readings.csv``: the trace of values, one row a measured frame."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from coach.documents.cells import TIME_LIMITS_S, check_ranges, check_times, number
from coach.documents.tables import DOUBTS, FORM_COLUMNS, PHASES, Floats, ReadingTable
from coach.documents.text_table import split_table
from coach.domain.fault import Fault
from coach.domain.movement import Unit
from coach.domain.progress import Phase
from coach.domain.reading import Form, Reading
from coach.texts import translate

_FRAME_COLUMNS = ("time_s", "planned_index", "phase")
COLUMNS = (*_FRAME_COLUMNS, "value", "error", "doubt", *FORM_COLUMNS)
HEADER = ",".join(COLUMNS) + "\n"
COLUMNS_1 = (*_FRAME_COLUMNS, "angle_deg", "error_deg", "doubt", *FORM_COLUMNS[:3])
"""Of version 1: the same in the same order, without the last seven."""

MAX_READINGS_BYTES = 60_000_000
MAX_READINGS = 500_000
"""More than two hours at 60 frames a second."""

_PHASE, _DOUBT = COLUMNS.index("phase"), COLUMNS.index("doubt")
_WORDS = {_PHASE: tuple(map(str, PHASES)), _DOUBT: ("", *map(str, DOUBTS))}
_MOST_DEG, _MOST_RATIO = 360.0, 10.0
_PLANNED_LIMITS, _VALUE_LIMITS, _ERROR_LIMITS = (0.0, 39.0), (-180.0, 360.0), (0.0, 360.0)


def reading_row(
    time_s: float, planned_index: int, phase: Phase, reading: Reading, unit: Unit
) -> str:
    """Give one row, line end included; ``time_s`` counts from the session's start."""
    cells = (
        number(time_s, 3),
        str(planned_index),
        phase.value,
        number(reading.value, unit.decimals),
        number(reading.error, unit.decimals),
        reading.doubt.value if reading.doubt else "",
        *(number(getattr(reading.form, name), _unit_of(name).decimals) for name in FORM_COLUMNS),
    )
    return ",".join(cells) + "\n"


def write_readings(table: ReadingTable, unit: Unit = Unit.DEGREES) -> bytes:
    """Give the whole table as CSV, its values with as many digits as ``unit`` is worth."""
    rows = [HEADER]
    for i in range(len(table)):
        reading = Reading(
            time_s=float(table.time_s[i]),
            value=float(table.value[i]),
            error=float(table.error[i]),
            doubt=None if table.doubt[i] < 0 else DOUBTS[table.doubt[i]],
            form=Form(*table.form[i].tolist()),
        )
        phase = PHASES[table.phase[i]]
        rows.append(reading_row(reading.time_s, int(table.planned_index[i]), phase, reading, unit))
    return "".join(rows).encode()


def read_readings(data: bytes, where: str) -> ReadingTable:
    """Read the table of this version or of version 1; ``where`` names it in a ``Fault``."""
    table = split_table(
        data,
        where,
        max_bytes=MAX_READINGS_BYTES,
        max_rows=MAX_READINGS,
        max_columns=len(COLUMNS),
    )
    columns = table.header
    if columns not in (COLUMNS, COLUMNS_1):
        raise Fault(
            translate(
                "faults",
                "{where} does not begin with the columns {columns}; check that this is "
                "the right file.",
            ).format(where=where, columns=",".join(COLUMNS))
        )
    grid, codes = table.cells(where, _WORDS)
    named = [(_limits(name), name) for i, name in enumerate(columns) if i not in _WORDS]
    limits, names = zip(*named, strict=True)
    check_ranges(grid, limits, names, where)
    time_s, planned, value, error = grid[:, :4].T
    form = np.full((len(grid), len(FORM_COLUMNS)), np.nan)
    form[:, : grid.shape[1] - 4] = grid[:, 4:]
    check_times(time_s, where)
    doubt = codes[_DOUBT] - 1  # the first of its words is none
    _check_value_or_doubt(value, error, doubt >= 0, where)
    if np.isnan(planned).any() or (planned % 1 != 0).any():
        raise Fault(
            translate(
                "faults",
                "{where} has a planned_index that is no whole number; ask for it again.",
            ).format(where=where)
        )
    return ReadingTable(
        time_s=time_s,
        planned_index=planned.astype(np.int16),
        phase=codes[_PHASE],
        value=value,
        error=error,
        doubt=doubt,
        form=form,
    )


def upgraded_rows(rows: str) -> str:
    """Turn rows of version 1 into rows of this version."""
    return rows.replace("\n", "," * (len(COLUMNS) - len(COLUMNS_1)) + "\n")


def _unit_of(form_column: str) -> Unit:
    return Unit.DEGREES if form_column.endswith("_deg") else Unit.RATIO


def _limits(column: str) -> tuple[float, float]:
    match column:
        case "time_s":
            return TIME_LIMITS_S
        case "planned_index":
            return _PLANNED_LIMITS
        case "value" | "angle_deg":
            return _VALUE_LIMITS
        case "error" | "error_deg":
            return _ERROR_LIMITS
    most = _MOST_DEG if _unit_of(column) is Unit.DEGREES else _MOST_RATIO
    return (0.0 if "_error_" in column else -most), most


def _check_value_or_doubt(
    value: Floats, error: Floats, doubted: NDArray[np.bool_], where: str
) -> None:
    wrong = np.flatnonzero((np.isnan(value) != doubted) | (np.isnan(error) != doubted))
    if wrong.size:
        raise Fault(
            translate(
                "faults",
                "{where}, line {line}, must have either a value with its error or a "
                "doubt; ask for the file again.",
            ).format(where=where, line=int(wrong[0]) + 2)
        )
