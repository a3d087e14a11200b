"""``coach export``, from imported session files to documents on disk."""

from __future__ import annotations

import csv
import io
import json
from datetime import date
from pathlib import Path

import msgspec
import pytest
from fhir.resources.R4B.bundle import Bundle

from coach.__main__ import main
from coach.domain.movement import Side
from coach.domain.practice import IssuedPlan
from coach.storage.store import Store
from coach.storage.store_doubts import Decision
from tests.exchange.records import full_session
from tests.review.conftest import make_session, session_file


@pytest.fixture
def store(tmp_path: Path) -> Path:
    place = tmp_path / "store.sqlite"
    fill(place)
    return place


def fill(place: Path | str) -> None:
    """Two sittings of one patient, with all that a session can hold, and one of another."""
    opened = Store(place)
    for document in [full_session(0), full_session(1), make_session(code="SH-2")]:
        opened.import_session(document, session_file(document), "visit.zip")
    assert {entry.code: entry.sessions for entry in opened.patients()} == {"SH-017": 2, "SH-2": 1}
    opened.close()


def export(store: Path | str, kind: str, out: Path, patient: str = "SH-017") -> int:
    asked = ["--store", str(store), "--patient", patient, "--kind", kind, "--out", str(out)]
    return main(["export", *asked])


def test_the_three_kinds_hold_this_patient_only(store: Path, tmp_path: Path) -> None:
    paths = {kind: tmp_path / f"out.{kind}" for kind in ("fhir", "csv", "note")}
    assert [export(store, kind, path) for kind, path in paths.items()] == [0, 0, 0]
    found = json.loads(paths["fhir"].read_text("utf-8"))
    Bundle.model_validate(found)
    assert "timestamp" in found
    kinds = [e["resource"]["resourceType"] for e in found["entry"]]
    assert kinds.count("Procedure") == 2
    texts = json.dumps(found)
    assert "SH-2" not in texts
    rows = list(csv.DictReader(io.StringIO(paths["csv"].read_bytes().decode("utf-8-sig"))))
    assert {r["patient"] for r in rows} == {"SH-017"}
    assert [r["value"] for r in rows] == ["-12.0", "-9.5", "", "0.6"] * 2
    assert [r["kind"] for r in rows] == ["measured", "measured", "timed", "measured"] * 2
    note = paths["note"].read_text("utf-8")
    assert export(store, "measures", tmp_path / "none.csv") == 0
    assert (tmp_path / "none.csv").read_bytes().count(b"\r\n") == 1  # nothing was written down
    assert "Patient: SH-017" in note
    assert "1. External rotation at side, left: hold 20 s, 3 times" in note


def test_what_cannot_be_exported_is_said_in_a_sentence(
    store: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "out.json"
    assert export(store, "fhir", out, patient="SH-9") == 1
    said = capsys.readouterr().err
    assert "no patient 'SH-9'" in said
    assert "SH-017" in said
    assert export(tmp_path / "none.sqlite", "fhir", out) == 1
    assert "There is no store" in capsys.readouterr().err
    assert not (tmp_path / "none.sqlite").exists()
    assert export(store, "csv", tmp_path / "missing" / "out.csv") == 1
    assert "missing" in capsys.readouterr().err
    assert not out.exists()


def test_a_doubtful_session_is_told_and_left_out_where_that_was_decided(
    store: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """One of the right arm, where the plan that was issued is for the left."""
    opened = Store(store)
    opened.add(
        IssuedPlan(
            code="SH-017",
            revision=1,
            issued_on=date(2026, 1, 2),
            side=Side.LEFT,
            plan=msgspec.json.encode(
                msgspec.structs.replace(full_session().plan, side=Side.LEFT)
            ).decode(),
        )
    )
    other = make_session(5, (71.0,), code="SH-017", side=Side.RIGHT)
    opened.import_session(other, session_file(other), "visit.zip")
    opened.close()
    out = tmp_path / "out.csv"
    assert export(store, "csv", out) == 0
    said = capsys.readouterr()
    assert "3 sessions" in said.out
    told = "10 Jan 2026, taken, though the doubt is not decided: The session is of the other side"
    assert told in said.err
    assert b"71.0" in out.read_bytes()
    opened = Store(store)
    (doubt,) = opened.doubts()
    opened.decide(doubt, Decision.LEFT_OUT)
    opened.close()
    assert export(store, "csv", out) == 0
    said = capsys.readouterr()
    assert "2 sessions" in said.out
    assert "10 Jan 2026, left out: The session is of the other side" in said.err
    assert b"71.0" not in out.read_bytes()


def test_the_store_is_never_written_over(store: Path, capsys: pytest.CaptureFixture[str]) -> None:
    before = store.read_bytes()
    assert export(store, "note", store) == 1
    assert "the store itself" in capsys.readouterr().err
    assert store.read_bytes() == before


def test_a_locked_store_asks_for_its_passphrase(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    place, words = tmp_path / "locked.sqlite", "seven invented lamps hum"
    opened = Store(place, words)
    document = make_session()
    opened.import_session(document, session_file(document), "visit.zip")
    opened.close()
    typed = ["something else instead", words]
    monkeypatch.setattr("coach.app.passphrases.getpass", lambda _: typed.pop(0))
    out = tmp_path / "note.txt"
    assert export(place, "note", out) == 1
    assert "type the passphrase again" in capsys.readouterr().err
    assert not out.exists()
    assert export(place, "note", out) == 0
    assert "Patient: SH-017" in out.read_text("utf-8")

    def nobody(_: str) -> str:
        raise EOFError

    monkeypatch.setattr("coach.app.passphrases.getpass", nobody)
    assert export(place, "note", out) == 1
    assert "locked store" in capsys.readouterr().err


def test_an_unknown_kind_is_refused(store: Path, tmp_path: Path) -> None:
    with pytest.raises(SystemExit):
        export(store, "xml", tmp_path / "out.xml")


def test_everybody_is_written_as_parquet_and_as_nothing_else(
    store: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    duckdb = pytest.importorskip("duckdb")
    pytest.importorskip("pyarrow")
    out = tmp_path / "all.parquet"
    everybody = ["export", "--store", str(store), "--out", str(out), "--kind"]
    assert main([*everybody, "csv"]) == 1
    assert "name the code with --patient" in capsys.readouterr().err
    assert not out.exists()
    assert main([*everybody, "parquet"]) == 0
    query = f"select patient, count(*) from '{out}' group by patient order by patient"
    assert duckdb.connect().execute(query).fetchall() == [("SH-017", 8), ("SH-2", 3)]
    assert export(store, "parquet", out, "SH-2") == 0
    assert duckdb.connect().execute(query).fetchall() == [("SH-2", 3)]
