"""``readings.csv``: the trace of angles, one row a measured frame."""

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
from coach.documents.tables import DOUBTS, PHASES, Floats, ReadingTable
from coach.domain.fault import Fault
from coach.domain.progress import Phase
from coach.domain.reading import Form, Reading

COLUMNS = (
    "time_s",
    "planned_index",
    "phase",
    "angle_deg",
    "error_deg",
    "doubt",
    "trunk_lean_deg",
    "trunk_turn_deg",
    "elbow_flexion_deg",
)
HEADER = ",".join(COLUMNS) + "\n"

MAX_READINGS_BYTES = 40_000_000
MAX_READINGS = 500_000
"""More than two hours at 60 frames a second."""

_CODE_DIGITS = "9000000"
_FIRST_PHASE, _FIRST_DOUBT = 9_000_000_000, 9_000_000_100
_PHASE_CODES = {phase.value: _FIRST_PHASE + i for i, phase in enumerate(PHASES)}
_DOUBT_CODES = {doubt.value: _FIRST_DOUBT + i for i, doubt in enumerate(DOUBTS)}
"""Words stand as these numbers while a table is read: far outside what any column may hold."""

_NUMBER_COLUMNS = [0, 1, 3, 4, 6, 7, 8]
_ROW = re.compile(
    ",".join(
        {2: f"({'|'.join(_PHASE_CODES)})", 5: f"({'|'.join(_DOUBT_CODES)}|)"}.get(
            column, f"({NUMBER.pattern})?"
        )
        for column in range(len(COLUMNS))
    )
)
_LETTERS = re.compile("[^0-9eE+\\-.,\n]")


def reading_row(time_s: float, planned_index: int, phase: Phase, reading: Reading) -> str:
    """Give one row, line end included; ``time_s`` counts from the session's start."""
    form = reading.form
    cells = (
        number(time_s, 3),
        str(planned_index),
        phase.value,
        number(reading.angle_deg, 1),
        number(reading.error_deg, 1),
        reading.doubt.value if reading.doubt else "",
        number(form.trunk_lean_deg, 1),
        number(form.trunk_turn_deg, 1),
        number(form.elbow_flexion_deg, 1),
    )
    return ",".join(cells) + "\n"


def write_readings(table: ReadingTable) -> bytes:
    """Give the whole table as CSV."""
    rows = [HEADER]
    for i in range(len(table)):
        doubt = None if table.doubt[i] < 0 else DOUBTS[table.doubt[i]]
        form = Form(
            float(table.trunk_lean_deg[i]),
            float(table.trunk_turn_deg[i]),
            float(table.elbow_flexion_deg[i]),
        )
        reading = Reading(
            time_s=float(table.time_s[i]),
            angle_deg=float(table.angle_deg[i]),
            error_deg=float(table.error_deg[i]),
            doubt=doubt,
            form=form,
        )
        phase = PHASES[table.phase[i]]
        rows.append(reading_row(reading.time_s, int(table.planned_index[i]), phase, reading))
    return "".join(rows).encode()


def read_readings(data: bytes, where: str) -> ReadingTable:
    """Read the table; ``where`` names it in a ``Fault``."""
    header, body = split_table(
        data,
        where,
        max_bytes=MAX_READINGS_BYTES,
        max_rows=MAX_READINGS,
        max_columns=len(COLUMNS),
    )
    if tuple(header) != COLUMNS:
        raise Fault(
            f"{where} does not begin with the columns {','.join(COLUMNS)}; "
            "check that this is the right file."
        )
    coded = body
    for word, code in (_PHASE_CODES | _DOUBT_CODES).items():
        coded = coded.replace(f",{word},", f",{code},")
    # No number that a table may hold has so many digits in a row; no word may be given as one.
    if _CODE_DIGITS in body or _LETTERS.search(coded):
        _find_misplaced(body, where)
    grid = number_grid(coded, len(COLUMNS), where)
    time_s, planned, phase, angle_deg, error_deg, doubt, lean_deg, turn_deg, elbow_deg = grid.T
    if (
        not np.isin(phase, list(_PHASE_CODES.values())).all()
        or not np.isin(doubt[~np.isnan(doubt)], list(_DOUBT_CODES.values())).all()
        or (grid[:, _NUMBER_COLUMNS] >= _FIRST_PHASE).any()
    ):
        _find_misplaced(body, where)
    check_times(time_s, where)
    check_range(planned, 0, 39, "planned_index", where)
    check_range(angle_deg, -180, 360, "angle_deg", where)
    check_range(error_deg, 0, 360, "error_deg", where)
    for values, name in zip((lean_deg, turn_deg, elbow_deg), COLUMNS[6:], strict=True):
        check_range(values, -360, 360, name, where)
    _check_angle_or_doubt(angle_deg, error_deg, doubt, where)
    if np.isnan(planned).any() or (planned % 1 != 0).any():
        raise Fault(f"{where} has a planned_index that is no whole number; ask for it again.")
    return ReadingTable(
        time_s=time_s,
        planned_index=planned.astype(np.int16),
        phase=(phase - _FIRST_PHASE).astype(np.int16),
        angle_deg=angle_deg,
        error_deg=error_deg,
        doubt=np.where(np.isnan(doubt), -1, doubt - _FIRST_DOUBT).astype(np.int16),
        trunk_lean_deg=lean_deg,
        trunk_turn_deg=turn_deg,
        elbow_flexion_deg=elbow_deg,
    )


def _find_misplaced(body: str, where: str) -> None:
    """Raise a ``Fault`` for the first cell that is not of its column's kind, if there is one."""
    for row, line in enumerate(body.split("\n"), start=2):
        if _ROW.fullmatch(line):
            continue
        cells = line.split(",")
        for column, codes in ((2, _PHASE_CODES), (5, {"": 0} | _DOUBT_CODES)):
            if cells[column] not in codes:
                known = ", ".join(word for word in codes if word)
                raise Fault(
                    f"{where}, line {row}, {COLUMNS[column]} is {cells[column][:40]!a}, allowed "
                    f"are {known}; ask for the file again."
                )
        cells[2] = cells[5] = ""
        raise not_a_number("\n" * (row - 2) + ",".join(cells), where)


def _check_angle_or_doubt(angle_deg: Floats, error_deg: Floats, doubt: Floats, where: str) -> None:
    doubted = ~np.isnan(doubt)
    wrong = np.flatnonzero((np.isnan(angle_deg) != doubted) | (np.isnan(error_deg) != doubted))
    if wrong.size:
        raise Fault(
            f"{where}, line {int(wrong[0]) + 2}, must have either an angle with its error or a "
            "doubt; ask for the file again."
        )
