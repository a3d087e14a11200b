"""The table, read back by the standard library and by pandas."""

from __future__ import annotations

import csv
import io
from datetime import datetime

import pandas as pd
import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from coach.exchange.table import COLUMNS, guarded, holds_table
from tests.exchange.records import full_session
from tests.exchange.test_fhir_device import BEGAN_WITH, OTHER, measured_by
from tests.review.conftest import make_session

STARTS = "=+-@\t\r\n\uff1d\uff0b\uff0d\uff20"
TEXTS = ("patient", "exercise", "software", "software_version", "method")


def rows(data):
    return list(csv.DictReader(io.StringIO(data.decode("utf-8-sig"), newline="")))


def test_a_row_for_each_hold_measured_and_timed():
    found = rows(holds_table([full_session(1), full_session(0)]))
    assert [r["kind"] for r in found] == ["measured", "measured", "timed", "measured"] * 2
    first, _, timed, reach = found[:4]
    assert first["session_started_at"] == "2026-01-05T18:30:00.000+01:00"
    assert first["started_at"] == "2026-01-05T18:30:05.000+01:00"
    assert (first["movement"], first["side"]) == ("external-rotation-0", "left")
    assert (first["value"], first["error_95"], first["unit"]) == ("-12.0", "13.0", "deg")
    assert first["faults"] == "trunk-leans"
    assert (timed["exercise"], timed["eased"], timed["held_s"]) == ("table-slide", "yes", "17.5")
    assert {timed[c] for c in ("movement", "value", "error_95", "unit", "faults")} == {""}
    assert (reach["value"], reach["unit"]) == ("0.6", "1")
    assert [r["pain_after"] for r in found[:4]] == ["3", "3", "6", "3"]


def test_pandas_reads_numbers_as_numbers_and_dates_as_dates():
    table = pd.read_csv(io.BytesIO(holds_table([full_session(n) for n in range(3)])))
    assert tuple(table.columns) == COLUMNS
    assert len(table) == 12
    assert table.value.dtype == float
    assert table.number.dtype == int
    rotation = table[table.movement == "external-rotation-0"]
    assert rotation.value.tolist() == [-12.0, -9.5] * 3
    assert table.value.isna().sum() == 3  # the timed holds
    at = pd.to_datetime(table.started_at)
    assert at[0] == pd.Timestamp("2026-01-05 18:30:05", tz="Europe/Berlin")


def test_each_hold_names_the_pose_model_that_measured_its_exercise():
    found = rows(holds_table([measured_by(full_session(), None, None, OTHER)]))
    assert [(r["movement"], r["model_sha256"]) for r in found] == [
        ("external-rotation-0", BEGAN_WITH),
        ("external-rotation-0", BEGAN_WITH),
        ("", ""),  # timed: nothing was measured
        ("hand-behind-back", OTHER),
    ]


def test_a_reader_that_counts_columns_still_finds_the_earlier_ones():
    """The columns as they stood before the pose model was named, from a table of then."""
    earlier = [
        "patient", "session", "session_started_at", "exercise", "eased", "movement", "side",
        "position", "view", "kind", "number", "started_at", "asked_hold_s", "held_s",
        "ended_because", "value", "error_95", "unit", "interquartile_range", "seen_fraction",
        "faults", "pain_before", "pain_after", "pain_at_end_of_session", "method", "software",
        "software_version", "angle_definitions",
    ]  # fmt: skip
    data = holds_table([full_session()]).decode("utf-8-sig")
    head, first, *_ = csv.reader(io.StringIO(data, newline=""))
    assert head[: len(earlier)] == earlier
    assert head[len(earlier) :] == ["model_sha256"]
    assert len(first) == len(head)
    assert first[15:18] == ["-12.0", "13.0", "deg"]


def test_every_time_says_its_zone():
    for row in rows(holds_table([make_session()])):
        for column in ("session_started_at", "started_at"):
            assert datetime.fromisoformat(row[column]).utcoffset() is not None


@pytest.mark.parametrize(
    "code",
    [
        "=1+1",
        "+1",
        "-1+2",
        "@SUM(A1)",
        "\t=1",
        "\r=1",
        "  =1",
        "\uff1d1",
        'x";=1+1',
        "a,=1",
        "a\n=1",
    ],
)
def test_no_formula_is_left(code):
    data = holds_table([make_session(code=code)]).decode("utf-8-sig")
    for delimiter in ",;|\t":
        for row in csv.reader(io.StringIO(data, newline=""), delimiter=delimiter):
            for cell in row:
                text = cell.strip().lstrip('"')
                assert not text or text[0] not in STARTS, (delimiter, cell)
    # One opened without any regard to quotes is split at every separator.
    for line in data.splitlines():
        for cell in line.replace(";", ",").replace("|", ",").replace('"', ",").split(","):
            assert cell.strip()[:1] not in tuple(STARTS), cell


@settings(max_examples=300)
@given(st.text(min_size=1, max_size=64))
@example("\u202e=1")
@example('<b>O\'Neil</b> "x", S\u00f6hne')
def test_any_name_stays_one_harmless_cell(code):
    found = rows(holds_table([make_session(code=code, values=(-3.0, 4.0))]))
    assert len(found) == 2
    for row in found:
        assert None not in row
        for name in TEXTS:
            assert row[name].strip()[:1] not in tuple(STARTS)
        assert "\n" not in row["patient"]
    if code.isprintable() and not any(c in code for c in STARTS):
        assert found[0]["patient"] == code
    assert [float(r["value"]) for r in found] == [-3.0, 4.0]


@settings(max_examples=60)
@given(st.text(st.characters(codec="utf-8", exclude_characters="\0"), min_size=1, max_size=64))
def test_pandas_reads_any_name(code):
    data = holds_table([make_session(code=code, values=(-3.0, 4.0))])
    table = pd.read_csv(io.BytesIO(data), dtype={"patient": str}, keep_default_na=False)
    assert table.patient.tolist() == [guarded(code)] * 2
    assert table.value.tolist() == [-3.0, 4.0]


def test_negative_numbers_are_no_formulas():
    assert rows(holds_table([make_session(values=(-12.0,))]))[0]["value"] == "-12.0"
