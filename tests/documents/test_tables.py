from __future__ import annotations

import csv
import io
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from hypothesis.extra.numpy import arrays

from coach.documents.landmarks import landmark_header, read_landmarks, write_landmarks
from coach.documents.readings import (
    COLUMNS,
    COLUMNS_1,
    HEADER,
    read_readings,
    upgraded_rows,
    write_readings,
)
from coach.documents.tables import (
    DOUBTS,
    FORM_COLUMNS,
    PHASES,
    STORED_LANDMARKS,
    LandmarkTable,
    ReadingTable,
)
from coach.domain.fault import Fault
from coach.domain.movement import Unit
from coach.domain.pose import Landmark

ROWS = st.integers(0, 12)


def floats(low: float, high: float, *, unknown: bool = True) -> st.SearchStrategy[float]:
    known = st.floats(low, high, width=64)
    return known | st.just(np.nan) if unknown else known


@st.composite
def landmark_tables(draw: st.DrawFn) -> LandmarkTable:
    n = draw(ROWS)
    chosen = draw(st.sets(st.sampled_from(Landmark), max_size=4))
    landmarks = draw(st.sampled_from([STORED_LANDMARKS, tuple(sorted(chosen))]))
    k = len(landmarks)
    times = draw(arrays(np.float64, n, elements=floats(0, 86_400, unknown=False)))
    return LandmarkTable(
        landmarks=landmarks,
        time_s=np.sort(times),
        size_px=draw(arrays(np.int64, (n, 2), elements=st.integers(1, 20_000))),
        people=draw(arrays(np.int64, n, elements=st.integers(0, 9))),
        brightness=draw(arrays(np.float64, n, elements=floats(0, 1))),
        image_px=draw(arrays(np.float64, (n, k, 2), elements=floats(-5_000, 20_000))),
        world_m=draw(arrays(np.float64, (n, k, 3), elements=floats(-9, 9))),
        visibility=draw(arrays(np.float64, (n, k), elements=floats(0, 1))),
    )


@settings(max_examples=50, deadline=None)
@given(landmark_tables())
def test_landmarks_come_back_within_their_rounding(table: LandmarkTable) -> None:
    back = read_landmarks(write_landmarks(table), "landmarks.csv")
    assert back.landmarks == table.landmarks
    np.testing.assert_array_equal(back.size_px, table.size_px)
    np.testing.assert_array_equal(back.people, table.people)
    for name, step in [
        ("time_s", 1e-3),
        ("brightness", 1e-2),
        ("image_px", 1e-1),
        ("world_m", 1e-3),
        ("visibility", 1e-2),
    ]:
        np.testing.assert_allclose(getattr(back, name), getattr(table, name), atol=0.51 * step)


def form_values(name: str) -> st.SearchStrategy[float]:
    most = 180.0 if name.endswith("_deg") else 9.0
    return floats(0 if "_error_" in name else -most, most)


@st.composite
def reading_tables(draw: st.DrawFn) -> ReadingTable:
    n = draw(ROWS)
    doubt = draw(arrays(np.int16, n, elements=st.integers(-1, len(DOUBTS) - 1)))
    value = draw(arrays(np.float64, n, elements=floats(-180, 360, unknown=False)))
    error = draw(arrays(np.float64, n, elements=floats(0, 90, unknown=False)))
    form = [draw(arrays(np.float64, n, elements=form_values(name))) for name in FORM_COLUMNS]
    times = draw(arrays(np.float64, n, elements=floats(0, 86_400, unknown=False)))
    return ReadingTable(
        time_s=np.sort(times),
        planned_index=draw(arrays(np.int16, n, elements=st.integers(0, 39))),
        phase=draw(arrays(np.int16, n, elements=st.integers(0, len(PHASES) - 1))),
        value=np.where(doubt >= 0, np.nan, value),
        error=np.where(doubt >= 0, np.nan, error),
        doubt=doubt,
        form=np.stack(form, axis=1).reshape(n, len(FORM_COLUMNS)),
    )


@settings(max_examples=80, deadline=None)
@given(reading_tables(), st.sampled_from(Unit))
def test_readings_come_back_within_their_rounding(table: ReadingTable, unit: Unit) -> None:
    data = write_readings(table, unit)
    back = read_readings(data, "readings.csv")
    worth = 1e-1 if unit is Unit.DEGREES else 1e-3
    for name in ("time_s", "planned_index", "phase", "value", "error", "doubt"):
        step = {"time_s": 1e-3, "value": worth, "error": worth}.get(name, 0.0)
        np.testing.assert_allclose(getattr(back, name), getattr(table, name), atol=0.51 * step)
    for name, read, given_ in zip(FORM_COLUMNS, back.form.T, table.form.T, strict=True):
        step = 1e-1 if name.endswith("_deg") else 1e-3
        np.testing.assert_allclose(read, given_, atol=0.51 * step)
    rows = list(csv.DictReader(io.StringIO(data.decode())))
    assert len(rows) == len(table)
    for row, phase, doubt in zip(rows, table.phase, table.doubt, strict=True):
        assert row["phase"] == PHASES[phase].value
        assert row["doubt"] == ("" if doubt < 0 else DOUBTS[doubt].value)
        # A cell that a spreadsheet would take for a formula begins with one of these.
        assert not any(cell.startswith(("=", "+", "@", "\t")) for cell in row.values())


GOOD = "1.000,0,holding,100.0,3.0,,,,"
GOOD_NOW = GOOD + "," * (len(COLUMNS) - len(COLUMNS_1))


@pytest.mark.parametrize(
    ("line", "words"),
    [
        ("1.000,0,holding,100.0,3.0", "line 3, has {few} cells where the header has {all}"),
        ("1.000,0,hovering,100.0,3.0,,,,", "line 3, phase is 'hovering', allowed are rest,"),
        ("1.000,0,holding,,,too-shy,,,", "line 3, doubt is 'too-shy'"),
        ("1.000,0,holding,100.0,,,,,", "line 3, must have either a value with its error"),
        ("1.000,0,holding,100.0,3.0,unsure,,,", "line 3, must have either a value"),
        ("0.500,0,holding,100.0,3.0,,,,", "line 3, time_s runs backwards"),
        (",0,holding,100.0,3.0,,,,", "line 3, has no time_s"),
        ("1e9,0,holding,100.0,3.0,,,,", "line 3, time_s is 1e+09, allowed are 0 to 86400"),
        ("1.000,40,holding,100.0,3.0,,,,", "planned_index is 40, allowed are 0 to 39"),
        ("1.000,0.5,holding,100.0,3.0,,,,", "planned_index that is no whole number"),
        ("1.000,0,holding,1e999,3.0,,,,", "{value} is inf"),
        ("1.000,0,holding,nan,3.0,,,,", "line 3, column 4, holds 'nan' where a number belongs"),
        ("1.000,0,holding,=1+1,3.0,,,,", "line 3, column 4, holds '=1+1'"),
        ("1.000,0,holding,1_0,3.0,,,,", "line 3, column 4, holds '1_0'"),
        ("1.000,0,holding,1.2.3,3.0,,,,", "line 3, column 4, holds '1.2.3'"),
        ("1.000,0,holding,-,3.0,,,,", "line 3, column 4, holds '-'"),
        ("1.000,0,9000000001,100.0,3.0,,,,", "line 3, phase is '9000000001'"),
        ("holding,0,holding,100.0,3.0,,,,", "line 3, column 1, holds 'holding'"),
        ("1.000,0,holding,100.0,3.0,resting,,,", "line 3, doubt is 'resting'"),
        ("1.000,0,holding,100.0,3.0,rest,,,", "line 3, doubt is 'rest'"),
        ("1.000,0,,100.0,3.0,,,,", "line 3, phase is ''"),
        ("1.000,0,holding,100.0,unsure,,,,", "line 3, column 5, holds 'unsure'"),
        ("1.000,0,holding,100.0,3.0,,,rest,", "line 3, column 8, holds 'rest'"),
        ('1.000,0,holding,"100.0",3.0,,,,', "where a number belongs"),
        ("1.000,0,holding,\u0663,3.0,,,,", "where a number belongs"),
        ("1.000,0,holding," + "1" * 41 + ",3.0,,,,", "{value} is 1.11111e+40"),
        ("", "line 3, has {least} cells"),
    ],
)
@pytest.mark.parametrize("columns", [COLUMNS, COLUMNS_1], ids=["now", "version 1"])
def test_refuses_readings_that_are_not_as_described(
    line: str, words: str, columns: tuple[str, ...]
) -> None:
    more = "," * (len(columns) - len(COLUMNS_1))
    rows = [",".join(columns), GOOD + more, line + more, GOOD + more, ""]
    with pytest.raises(Fault) as refused:
        read_readings("\n".join(rows).encode(), "readings.csv")
    counts = {"few": 5 + len(more), "all": len(columns), "least": 1 + len(more)}
    assert words.format(value=columns[3], **counts) in str(refused.value)


@pytest.mark.parametrize(
    ("name", "cell"),
    [
        ("shoulder_hike_ratio", "10.1"),
        ("elbow_drift_deg", "-361"),
        ("trunk_lean_error_deg", "-0.1"),
        ("shoulder_hike_error_ratio", "-1"),
    ],
)
def test_refuses_form_that_cannot_be(name: str, cell: str) -> None:
    cells = GOOD_NOW.split(",")
    cells[COLUMNS.index(name)] = cell
    with pytest.raises(Fault, match=f"line 2, {name} is {float(cell):g}, allowed are"):
        read_readings((HEADER + ",".join(cells) + "\n").encode(), "readings.csv")


def test_rows_of_version_1_mean_the_same_in_either_table() -> None:
    rows = "1.000,0,rest,-3.5,4.0,,1.0,-2.0,33.3\n2.000,0,moving,,,unsure,,,\n"
    old = read_readings((",".join(COLUMNS_1) + "\n" + rows).encode(), "old")
    new = read_readings((HEADER + upgraded_rows(rows)).encode(), "new")
    assert old.value.tolist()[0] == new.value.tolist()[0] == -3.5
    assert old.form[0, :3].tolist() == [1.0, -2.0, 33.3]
    assert np.isnan(old.form[0, 3:]).all()
    np.testing.assert_array_equal(old.form, new.form)
    np.testing.assert_array_equal(old.doubt, new.doubt)


def test_takes_windows_line_ends_and_a_missing_last_one() -> None:
    data = (HEADER + GOOD_NOW + "\n" + GOOD_NOW).replace("\n", "\r\n").encode()
    assert read_readings(data, "readings.csv").value.tolist() == [100.0, 100.0]


def test_landmark_columns_may_stand_in_any_order_and_may_be_missing() -> None:
    data = (
        b"left_wrist_y_px,time_s,picture_height_px,left_wrist_x_px,picture_width_px\n"
        b"7.5,0,480,3,640\n"
        b",0.1,480,,640\n"
    )
    table = read_landmarks(data, "other.csv")
    first, second = table.poses()
    assert table.landmarks == (Landmark.LEFT_WRIST,)
    assert first.image_px[Landmark.LEFT_WRIST].tolist() == [3, 7.5]
    assert np.isnan(first.world_m).all()
    assert np.isnan(second.image_px).all()
    assert (first.size_px, first.people, first.brightness) == ((640, 480), 1, None)


@pytest.mark.parametrize(
    ("header", "row", "words"),
    [
        ("time_s,picture_width_px", "0,640", "no column picture_height_px"),
        ("time_s,time_s", "0,0", "names a column twice"),
        ("time_s,picture_width_px,picture_height_px,left_knie_x_px", "0,1,1,1", "unknown column"),
        ("time_s,picture_width_px,picture_height_px,nose", "0,1,1,1", "unknown column 'nose'"),
        ("time_s,picture_width_px,picture_height_px", "0,0,480", "picture_width_px is 0"),
        ("time_s,picture_width_px,picture_height_px", "0,,480", "rows without picture_width_px"),
        ("nose_x_m,time_s,picture_width_px,picture_height_px", "1e5,0,1,1", "nose_x_m is 100000"),
        ("nose_visibility,time_s,picture_width_px,picture_height_px", "2,0,1,1", "visibility is 2"),
        ("", "", "no column time_s"),
        (",".join(["x"] * 300), "", "300 columns, at most 211"),
    ],
)
def test_refuses_landmarks_that_are_not_as_described(header: str, row: str, words: str) -> None:
    with pytest.raises(Fault) as refused:
        read_landmarks(f"{header}\n{row}\n".encode(), "landmarks.csv")
    assert words in str(refused.value)


def test_refuses_more_than_it_would_hold_in_memory() -> None:
    with pytest.raises(Fault, match="rows, at most 500,000"):
        read_readings(HEADER.encode() + b"\n" * 500_002, "readings.csv")
    with pytest.raises(Fault, match="rows, at most 200,000"):
        read_landmarks(landmark_header().encode() + b"\n" * 200_002, "landmarks.csv")
    empty = b"," * (5 + 33 * 6 - 1) + b"\n"
    header = landmark_header(tuple(Landmark)).encode()
    with pytest.raises(Fault, match=r"cells, at most 7,500,000"):
        read_landmarks(header + empty * 60_000, "landmarks.csv")


def test_the_guide_names_the_columns_that_are_written() -> None:
    guide = (Path(__file__).parents[2] / "docs" / "session_file.md").read_text(encoding="utf-8")
    points = guide.split("15 points in this order: ")[1].split(". Trunk")[0]
    named = [name.strip(" `\n") for name in points.split(",")]
    written = landmark_header().strip().split(",")
    assert written[:5] == [f"{name}" for name in written[:5] if f"`{name}`" in guide]
    assert named == [name.removesuffix("_x_px") for name in written if name.endswith("_x_px")]
    for column in COLUMNS:
        assert f"`{column}`" in guide.split("## readings.csv")[1].split("## landmarks.csv")[0]


def test_ten_million_frames_are_refused_by_their_number() -> None:
    data = b"time_s,picture_width_px,picture_height_px\n" + b"0,1,1\n" * 10_000_000
    with pytest.raises(Fault, match=r"^x is too large: .*rows, at most 200,000 are read"):
        read_landmarks(data, "x")


def test_a_long_name_of_a_column_is_cut() -> None:
    header = b"time_s,picture_width_px,picture_height_px," + b"x" * 5_000 + b"\n"
    with pytest.raises(Fault, match=r"unknown column 'x{60}'"):
        read_landmarks(header, "x")
