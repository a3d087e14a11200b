"""``readings.csv``: the trace of angles, one row a measured frame."""

from __future__ import annotations

from enum import StrEnum

import numpy as np

from coach.documents.cells import check_range, check_times, number, number_grid, split_rows
from coach.documents.tables import DOUBTS, PHASES, Floats, ReadingTable
from coach.domain.fault import Fault
from coach.domain.progress import Phase
from coach.domain.reading import Doubt, Form, Reading

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

MAX_READINGS_BYTES = 64_000_000
MAX_READINGS = 1_000_000
"""More than four hours at 60 frames a second."""

_PHASE, _DOUBT = COLUMNS.index("phase"), COLUMNS.index("doubt")


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
    header, lines = split_rows(
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
    phases = {phase.value: str(code) for code, phase in enumerate(PHASES)}
    doubts = {doubt.value: str(code) for code, doubt in enumerate(DOUBTS)} | {"": "-1"}
    coded = [
        _with_codes(line, row, phases, doubts, where) for row, line in enumerate(lines, start=2)
    ]
    grid = number_grid(coded, len(COLUMNS), where)
    time_s, planned, phase, angle_deg, error_deg, doubt, lean_deg, turn_deg, elbow_deg = grid.T
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
        phase=phase.astype(np.int16),
        angle_deg=angle_deg,
        error_deg=error_deg,
        doubt=doubt.astype(np.int16),
        trunk_lean_deg=lean_deg,
        trunk_turn_deg=turn_deg,
        elbow_flexion_deg=elbow_deg,
    )


def _with_codes(
    line: str, row: int, phases: dict[str, str], doubts: dict[str, str], where: str
) -> str:
    cells = line.split(",")
    for column, codes, kind in ((_PHASE, phases, Phase), (_DOUBT, doubts, Doubt)):
        code = codes.get(cells[column])
        if code is None:
            raise _unknown_word(cells[column], row, COLUMNS[column], kind, where)
        cells[column] = code
    return ",".join(cells)


def _unknown_word(word: str, row: int, column: str, kind: type[StrEnum], where: str) -> Fault:
    known = ", ".join(member.value for member in kind)
    return Fault(
        f"{where}, line {row}, {column} is {word!a}, allowed are {known}; ask for the file again."
    )


def _check_angle_or_doubt(angle_deg: Floats, error_deg: Floats, doubt: Floats, where: str) -> None:
    doubted = doubt >= 0
    wrong = np.flatnonzero((np.isnan(angle_deg) != doubted) | (np.isnan(error_deg) != doubted))
    if wrong.size:
        raise Fault(
            f"{where}, line {int(wrong[0]) + 2}, must have either an angle with its error or a "
            "doubt; ask for the file again."
        )
