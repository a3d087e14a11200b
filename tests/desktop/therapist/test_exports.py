"""Documents out of the window: the same as on the command line, told in a sentence."""

from __future__ import annotations

import csv
import io
import json
from datetime import date
from pathlib import Path

import pytest
from pypdf import PdfReader
from PyQt6.QtCore import Qt
from PyQt6.QtWidgets import QApplication, QFileDialog

from coach.desktop.therapist.doubts_dialog import DoubtsDialog
from coach.desktop.therapist.export_words import ExportedFile
from coach.desktop.therapist.window import ReviewWindow
from coach.domain.movement import Movement, Side
from coach.domain.practice import (
    Episode,
    HandMeasure,
    OtherSideMeasure,
    Person,
    TotalScore,
    Treatment,
    TreatmentKind,
)
from coach.storage.store import Decision

TODAY = date(2026, 2, 1)
CONTROL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier


@pytest.fixture
def window(app, store, invented, qtbot):
    for document in (invented.make_session(0, (80.0,)), invented.make_session(1, (84.0,))):
        store.import_session(document, b"x", "a.zip")
    code, day = "SH-017", date(2026, 1, 5)
    goals = "Reach the upper shelf.\nP (plan)"
    store.add(Episode(code=code, side=Side.LEFT, began_on=date(2025, 10, 3), goals=goals))
    store.add(OtherSideMeasure(code=code, on=day, movement=Movement.FLEXION, value_deg=160))
    store.add(TotalScore(code=code, on=day, name="Pain and function", total=61.5, maximum=100))
    store.add(Treatment(code=code, on=date(2025, 12, 12), kind=TreatmentKind.INJECTION))
    store.add(
        HandMeasure(
            code=code,
            on=day,
            movement=Movement.FLEXION,
            side=Side.LEFT,
            value_deg=78,
            passive=True,
        )
    )
    opened = ReviewWindow(store, today=lambda: TODAY)
    qtbot.addWidget(opened)
    opened.show()
    opened.activateWindow()
    qtbot.waitUntil(opened.isActiveWindow)
    return opened


def test_each_kind_is_written_from_the_keyboard(window, qtbot, tmp_path, monkeypatch):
    monkeypatch.setattr(
        QFileDialog, "getSaveFileName", lambda *a: (str(tmp_path / Path(a[2]).name), "")
    )
    for key, modifier in (
        (Qt.Key.Key_P, CONTROL),
        (Qt.Key.Key_N, CONTROL | SHIFT),
        (Qt.Key.Key_T, CONTROL),
        (Qt.Key.Key_B, CONTROL),
    ):
        with qtbot.waitSignal(window.exports.told, timeout=30_000) as told:
            qtbot.keyClick(window, key, modifier)
        assert str(tmp_path) in told.args[0]
    written = {path.suffix: path for path in tmp_path.glob("SH-017_*")}
    assert "SH-017" in PdfReader(written[".pdf"]).pages[0].extract_text()
    note = written[".txt"].read_text("utf-8")
    places = [note.index(f"\n{letter} (") for letter in "SOAP"]
    assert places == sorted(places)
    for letter, line in (
        ("S", "Left shoulder, since 3 Oct 2025"),
        ("S", "Goals: Reach the upper shelf. P (plan)"),  # no line of its own to forge a section
        ("S", "Pain and function: 61.5 of 100 (5 Jan 2026)"),
        ("O", "By goniometer, Flexion, left: 78° passive (5 Jan 2026); camera 80° ± 6°, same day"),
        ("O", "other side 160°"),
        ("P", "Injection, 12 Dec 2025"),
    ):
        (section,) = [part for part in note.split("\n\n") if part.startswith(f"{letter} (")]
        assert line in section
    rows = list(csv.DictReader(io.StringIO(written[".csv"].read_bytes().decode("utf-8-sig"))))
    assert [row["value"] for row in rows] == ["80.0", "84.0"]
    found = json.loads(written[".json"].read_bytes())
    kinds = [entry["resource"]["resourceType"] for entry in found["entry"]]
    assert kinds.count("Procedure") == 3  # two sittings and the injection
    assert kinds.count("Condition") == 1
    with qtbot.waitSignal(window.exports.told, timeout=30_000):
        qtbot.keyClick(window, Qt.Key.Key_M, CONTROL)
    (path,) = tmp_path.glob("SH-017_*_measures.csv")
    rows = list(csv.DictReader(io.StringIO(path.read_bytes().decode("utf-8-sig"))))
    assert sorted(float(row["value"]) for row in rows) == [61.5, 78, 160]
    with qtbot.waitSignal(window.exports.told, timeout=30_000):
        qtbot.keyClick(window, Qt.Key.Key_C, CONTROL | SHIFT)
    assert QApplication.clipboard().text() == note


def test_the_store_is_never_written_over(window, store, qtbot, monkeypatch):
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (store.name, ""))
    files = ExportedFile("holds", ".sqlite", "", "", "{path}")
    monkeypatch.setattr("coach.desktop.therapist.exports.exported_file", lambda _: files)
    with qtbot.waitSignal(window.exports.refused, timeout=30_000) as said:
        window.entries["csv"].trigger()
    assert "is the store itself" in said.args[0]
    assert len(store.sessions_of("SH-017")) == 2


def test_a_doubtful_session_is_decided_with_keys_and_taken_back(
    window, store, invented, qtbot, monkeypatch
):
    store.add(Person(code="SH-2"))
    store.import_session(invented.make_session(2, code="sh 017"), b"x", "b.zip")
    window.refresh()
    assert window.panel.doubts.text().startswith("1 doubtful session")
    qtbot.keyClick(window, Qt.Key.Key_D, CONTROL)
    (dialog,) = window.findChildren(DoubtsDialog)
    asked = []

    def choose(_parent, _title, _label, codes, *_):
        asked.append(codes)
        return "SH-017", True

    monkeypatch.setattr("coach.desktop.therapist.doubts_dialog.QInputDialog.getItem", choose)
    assert "whom the practice does not know" in dialog.list.item(0).text()
    qtbot.keyClick(dialog.list, Qt.Key.Key_Return)
    assert asked == [["SH-017", "SH-2", "sh 017"]]
    assert len(store.sessions_of("SH-017")) == 3
    assert dialog.list.item(0).text().startswith("Belongs to SH-017")
    assert not window.panel.doubts.isVisible()
    assert window.code == "SH-017"
    dialog.activateWindow()
    qtbot.waitUntil(dialog.isActiveWindow)
    qtbot.keyClick(dialog, Qt.Key.Key_L, Qt.KeyboardModifier.AltModifier)
    qtbot.waitUntil(lambda: len(store.sessions_of("SH-017")) == 2)
    (left_out,) = store.doubts([Decision.LEFT_OUT])
    assert left_out.code == "SH-017"
    qtbot.keyClick(dialog, Qt.Key.Key_T, Qt.KeyboardModifier.AltModifier)
    qtbot.waitUntil(lambda: [d.code for d in store.doubts()] == ["sh 017"])
    assert window.panel.doubts.isVisible()
    assert not dialog.take_back.isEnabled()
