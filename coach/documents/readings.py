"""``readings.csv``: the trace of values, one row a measured frame."""

from __future__ import annotations

import re

import numpy as np

from coach.documents.cells import (
    NUMBER,
    check_range,
    check_times,
    not_a_number,
    number,
    number_grid,
    split_table,
)
from coach.documents.tables import DOUBTS, FORM_COLUMNS, PHASES, Floats, ReadingTable
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

_CODE_DIGITS = "9000000"
_FIRST_PHASE, _FIRST_DOUBT = 9_000_000_000, 9_000_000_100
_PHASE_CODES = {phase.value: _FIRST_PHASE + i for i, phase in enumerate(PHASES)}
_DOUBT_CODES = {doubt.value: _FIRST_DOUBT + i for i, doubt in enumerate(DOUBTS)}
"""Words stand as these numbers while a table is read: far outside what any column may hold."""

_PHASE, _DOUBT, _FORM = COLUMNS.index("phase"), COLUMNS.index("doubt"), len(COLUMNS_1) - 3
_WORDS = {_PHASE: f"({'|'.join(_PHASE_CODES)})", _DOUBT: f"({'|'.join(_DOUBT_CODES)}|)"}
_LETTERS = re.compile("[^0-9eE+\\-.,\n]")
_MOST_DEG, _MOST_RATIO = 360, 10


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
    header, body = split_table(
        data,
        where,
        max_bytes=MAX_READINGS_BYTES,
        max_rows=MAX_READINGS,
        max_columns=len(COLUMNS),
    )
    columns = tuple(header)
    if columns not in (COLUMNS, COLUMNS_1):
        raise Fault(
            translate(
                "faults",
                "{where} does not begin with the columns {columns}; check that this is "
                "the right file.",
            ).format(where=where, columns=",".join(COLUMNS))
        )
    coded = body
    for word, code in (_PHASE_CODES | _DOUBT_CODES).items():
        coded = coded.replace(f",{word},", f",{code},")
    # No number that a table may hold has so many digits in a row; no word may be given as one.
    if _CODE_DIGITS in body or _LETTERS.search(coded):
        _find_misplaced(body, columns, where)
    grid = number_grid(coded, len(columns), where)
    phase, doubt = grid[:, _PHASE], grid[:, _DOUBT]
    if (
        not np.isin(phase, list(_PHASE_CODES.values())).all()
        or not np.isin(doubt[~np.isnan(doubt)], list(_DOUBT_CODES.values())).all()
        or (np.delete(grid, [_PHASE, _DOUBT], axis=1) >= _FIRST_PHASE).any()
    ):
        _find_misplaced(body, columns, where)
    time_s, planned, _, value, error = grid[:, :_DOUBT].T
    form = np.full((len(grid), len(FORM_COLUMNS)), np.nan)
    form[:, : len(columns) - _FORM] = grid[:, _FORM:]
    check_times(time_s, where)
    check_range(planned, 0, 39, "planned_index", where)
    check_range(value, -180, 360, columns[3], where)
    check_range(error, 0, 360, columns[4], where)
    for values, name in zip(form.T, FORM_COLUMNS, strict=True):
        most = _MOST_DEG if _unit_of(name) is Unit.DEGREES else _MOST_RATIO
        check_range(values, 0 if "_error_" in name else -most, most, name, where)
    _check_value_or_doubt(value, error, doubt, where)
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
        phase=(phase - _FIRST_PHASE).astype(np.int16),
        value=value,
        error=error,
        doubt=np.where(np.isnan(doubt), -1, doubt - _FIRST_DOUBT).astype(np.int16),
        form=form,
    )


def upgraded_rows(rows: str) -> str:
    """Turn rows of version 1 into rows of this version."""
    return rows.replace("\n", "," * (len(COLUMNS) - len(COLUMNS_1)) + "\n")


def _unit_of(form_column: str) -> Unit:
    return Unit.DEGREES if form_column.endswith("_deg") else Unit.RATIO


def _find_misplaced(body: str, columns: tuple[str, ...], where: str) -> None:
    """Raise a ``Fault`` for the first cell that is not of its column's kind, if there is one."""
    cell = f"({NUMBER.pattern})?"
    good = re.compile(",".join(_WORDS.get(i, cell) for i in range(len(columns))))
    for row, line in enumerate(body.split("\n"), start=2):
        if good.fullmatch(line):
            continue
        cells = line.split(",")
        for column, codes in ((_PHASE, _PHASE_CODES), (_DOUBT, {"": 0} | _DOUBT_CODES)):
            if cells[column] not in codes:
                known = ", ".join(word for word in codes if word)
                raise Fault(
                    translate(
                        "faults",
                        "{where}, line {row}, {column} is {cell!a}, allowed are "
                        "{known}; ask for the file again.",
                    ).format(
                        where=where,
                        row=row,
                        column=columns[column],
                        cell=cells[column][:40],
                        known=known,
                    )
                )
        cells[_PHASE] = cells[_DOUBT] = ""
        raise not_a_number("\n" * (row - 2) + ",".join(cells), where)


def _check_value_or_doubt(value: Floats, error: Floats, doubt: Floats, where: str) -> None:
    doubted = ~np.isnan(doubt)
    wrong = np.flatnonzero((np.isnan(value) != doubted) | (np.isnan(error) != doubted))
    if wrong.size:
        raise Fault(
            translate(
                "faults",
                "{where}, line {line}, must have either a value with its error or a "
                "doubt; ask for the file again.",
            ).format(where=where, line=int(wrong[0]) + 2)
        )
