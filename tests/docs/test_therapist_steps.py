"""The therapist's guide, followed step by step with the keyboard, as it says."""

from __future__ import annotations

import re
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from PyQt6.QtCore import Qt
from PyQt6.QtGui import QKeySequence, QShortcut
from PyQt6.QtWidgets import QAbstractButton, QApplication, QFileDialog, QInputDialog, QWidget
from pytestqt.qtbot import QtBot

from coach.catalogue import catalogue
from coach.desktop.shared.application import create_application
from coach.desktop.therapist.doubts_dialog import DoubtsDialog
from coach.desktop.therapist.window import ReviewWindow
from coach.documents.plan import read_plan
from coach.domain.exercise import Irritability, StiffnessPhase
from coach.domain.movement import Side
from coach.domain.practice import Episode, Person, TotalScore
from coach.storage.store import Store
from docs.make_case import CODE, FIRST, LAST, MISTYPED, PLAN, make_case

GUIDE = (Path(__file__).parents[2] / "docs" / "guide_therapist.md").read_text("utf-8")
WORDS = re.sub(r"\s+", " ", GUIDE)
CONTROL = Qt.KeyboardModifier.ControlModifier
KEYS = {
    "new patient": "new",
    "import files": "import-files",
    "course": "course",
    "records": "records",
    "list of patients": "people",
    "plan": "plan",
    "replay": "replay",
    "report": "report",
}
ELSEWHERE = {"Ctrl+Z", "Ctrl+F", "Ctrl+S"}
"""Keys of the guide that belong to a part of a window, or do what a menu says."""


@pytest.fixture
def app(qapp: QApplication) -> QApplication:
    return create_application(["test"])


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    opened = Store(tmp_path / "trial.sqlite")
    yield opened
    opened.close()


@pytest.fixture
def window(app: QApplication, store: Store, qtbot: QtBot) -> ReviewWindow:
    return opened(store, FIRST, qtbot)


def opened(store: Store, today: date, qtbot: QtBot) -> ReviewWindow:
    made = ReviewWindow(store, today=lambda: today)
    qtbot.addWidget(made)
    made.show()
    made.activateWindow()
    qtbot.waitUntil(made.isActiveWindow)
    return made


def pressed(qtbot: QtBot, window: QWidget, letter: Qt.Key) -> None:
    qtbot.keyClick(window, letter, CONTROL)


def button_of(window: QWidget, text: str) -> QAbstractButton:
    """Find what the guide names in italics among the buttons of a window."""
    assert f"*{text}*" in WORDS
    buttons = window.findChildren(QAbstractButton)
    return next(b for b in buttons if b.text().replace("&", "").rstrip("\u2026") == text)


def test_the_keys_of_the_first_section_are_those_of_the_menus(window: ReviewWindow) -> None:
    by_word = {words: keys for keys, words in re.findall(r"`(Ctrl\+\w)` ([a-z ]+),", WORDS)}
    for words, entry in KEYS.items():
        assert by_word[words] == window.entries[entry].shortcut().toString(), words
    assert window.entries["turn"].shortcut() == QKeySequence("F9")


def test_every_other_key_of_the_guide_is_one_of_the_program(window: ReviewWindow) -> None:
    known = {entry.shortcut().toString() for entry in window.entries.values()}
    of_plans = {s.key().toString() for s in window.plans.findChildren(QShortcut)}
    assert {"Ctrl+F", "Ctrl+S"} <= of_plans
    keys = set(re.findall(r"`(Ctrl\+(?:Shift\+)?\w)`", GUIDE))
    assert len(keys) > 10
    assert keys - known <= ELSEWHERE


def test_the_menus_and_entries_that_the_guide_names_are_there(window: ReviewWindow) -> None:
    bar = window.menuBar()
    assert bar is not None
    titles = {act.text().replace("&", "") for act in bar.actions()}
    assert {"File", "View", "Export", "Patient"} <= titles
    texts = {entry.text().replace("&", "").rstrip("\u2026") for entry in window.entries.values()}
    for name in ("Report as PDF", "FHIR bundle", "Undo the last import"):
        assert f"*{name}*" in WORDS
        assert name in texts
    assert "*Patient, Erase the patient*" in WORDS
    assert "Erase the patient" in texts


def test_from_an_empty_store_to_a_plan(
    window: ReviewWindow,
    store: Store,
    tmp_path: Path,
    qtbot: QtBot,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """Sections 2 and 3: a person, what is known, and the first plan."""
    records = window.records
    pressed(qtbot, window, Qt.Key.Key_N)
    assert records.form is not None
    records.form.fields["code"].show_value(CODE)
    records.form.accept()
    assert [person.code for person in store.people()] == [CODE]
    assert window.parts.on_records, "then the page Records is open"

    qtbot.keyClick(records.list, Qt.Key.Key_Insert)
    episode = records.form
    assert [*episode.fields][:4] == ["side", "began_on", "phase", "irritability"]
    known = {
        "side": Side.RIGHT,
        "began_on": date(2025, 9, 1),
        "phase": StiffnessPhase.STIFF,
        "irritability": Irritability.MODERATE,
        "goals": "Reach the top shelf",
    }
    episode.show_values(known)
    episode.accept()
    (kept,) = store.records_of(CODE).episodes
    assert (kept.side, kept.phase) == (Side.RIGHT, StiffnessPhase.STIFF)
    records.list.go_to(TotalScore, None)
    qtbot.keyClick(records.list, Qt.Key.Key_Insert)
    records.form.show_values({"name": "Own ten", "total": 62, "maximum": 100})
    records.form.accept()
    qtbot.keyClick(records.list, Qt.Key.Key_Delete)
    assert store.records_of(CODE).scores == ()
    pressed(qtbot, window, Qt.Key.Key_Z)
    assert len(store.records_of(CODE).scores) == 1, "Ctrl+Z takes the last change back"
    records.list.go_to(Episode, kept.id)
    qtbot.keyClick(records.list, Qt.Key.Key_Return)
    assert records.form.fields["goals"].value() == "Reach the top shelf", "Enter changes it"
    records.form.reject()

    pressed(qtbot, window, Qt.Key.Key_L)
    plans, page = window.plans, window.plans.page
    qtbot.waitUntil(plans.isActiveWindow)
    head = page.head
    assert head.side.chosen(Side) is Side.RIGHT, "from the episode"
    assert head.phase.chosen(StiffnessPhase) is StiffnessPhase.STIFF
    assert head.irritability.chosen(Irritability) is Irritability.MODERATE
    for word in ("pendulum", "flexion stick supine"):
        pressed(qtbot, plans, Qt.Key.Key_F)
        qtbot.waitUntil(page.choice.filter.hasFocus)
        page.choice.filter.selectAll()
        qtbot.keyClicks(page.choice.filter, word)
        qtbot.keyClick(page.choice.filter, Qt.Key.Key_Return)
    assert page.plan.list.count() == 2
    assert "By time, not measured" in page.plan.list.item(0).text(), "the others say so"
    assert "Measured" in page.plan.list.item(1).text()
    editor = page.editor
    assert "Usual dose." in editor.measured.text(), "the source stands beside it"
    editor.pain.setValue(3)
    editor.target.setText("120")
    editor.target.editingFinished.emit()
    editor.rule.setChecked(True)
    editor.sittings.setValue(3)
    editor.at_least.setText("115")
    editor.at_least.editingFinished.emit()
    place = tmp_path / "plan.json"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(place), ""))
    pressed(qtbot, plans, Qt.Key.Key_S)
    plan = read_plan(place.read_bytes(), place.name, catalogue().by_name)
    rule = plan.exercises[1].next_step
    assert rule is not None
    assert (rule.sessions, rule.at_least_deg) == (3, 115.0)
    assert plan.exercises[1].target_deg == 120.0
    (given,) = store.records_of(CODE).plans
    assert given.plan.encode() == place.read_bytes(), "entered in the records as given out"


def test_receiving_and_deciding(
    app: QApplication, tmp_path: Path, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Section 4: files are taken in, known ones once, and a doubtful one is decided."""
    mail = tmp_path / "mail"
    make_case(mail).store.close()
    (mail / "review.sqlite").unlink()
    (mail / "broken.shoulder.zip").write_bytes(b"no session")
    store = Store(tmp_path / "store.sqlite")
    try:
        store.add(Person(code=CODE, created_on=FIRST))
        window = opened(store, LAST, qtbot)
        files = sorted(str(path) for path in mail.glob("*.zip"))
        monkeypatch.setattr(QFileDialog, "getOpenFileNames", lambda *_: (files, ""))
        for told in (("doubtful", "1 refused"), ("already known", "1 refused")):
            with qtbot.waitSignal(window.imports.finished, timeout=60_000):
                pressed(qtbot, window, Qt.Key.Key_O)
            for words in told:
                assert words in window.parts.telling
        assert store.refusals()[0].file_name == "broken.shoulder.zip"
        of_case = len(store.sessions_of(CODE))
        assert of_case == len(files) - 2, "the mistyped one counts as whom its file names"
        pressed(qtbot, window, Qt.Key.Key_D)
        (dialog,) = window.findChildren(DoubtsDialog)
        row = next(n for n in range(dialog.list.count()) if chosen(dialog, n) == MISTYPED)
        dialog.list.setCurrentRow(row)
        monkeypatch.setattr(QInputDialog, "getItem", lambda *_: (CODE, True))
        button_of(dialog, "Belongs to").click()
        assert len(store.sessions_of(CODE)) == of_case + 1
        dialog.list.setCurrentRow(
            next(n for n in range(dialog.list.count()) if "Belongs to" in words_of(dialog, n))
        )
        button_of(dialog, "Leave out").click()
        assert len(store.sessions_of(CODE)) == of_case
        dialog.list.setCurrentRow(
            next(n for n in range(dialog.list.count()) if "Left out" in words_of(dialog, n))
        )
        dialog.take_back.click()
        assert "Both can be taken back" in WORDS
        assert all("Left out" not in words_of(dialog, n) for n in range(dialog.list.count()))
        dialog.close()
        window.close()
    finally:
        store.close()


def words_of(dialog: DoubtsDialog, row: int) -> str:
    item = dialog.list.item(row)
    assert item is not None
    return item.text()


def chosen(dialog: DoubtsDialog, row: int) -> str:
    dialog.list.setCurrentRow(row)
    assert dialog.doubt is not None
    return dialog.doubt.code


def test_the_sections_of_the_records_are_those_of_the_guide(window: ReviewWindow) -> None:
    listed = re.findall(r"^\| (\w[\w ]+) \|", GUIDE.split("## 3")[0], re.MULTILINE)[1:]
    window.records.ask_person(new=True)
    assert window.records.form is not None
    window.records.form.fields["code"].show_value(PLAN.patient_code)
    window.records.form.accept()
    tree = window.records.list
    headings = [
        item.text(0) for n in range(tree.topLevelItemCount()) if (item := tree.topLevelItem(n))
    ]
    assert len(listed) == len(headings) == 6
    for heading, row in zip(headings, listed, strict=True):
        assert heading.lower().startswith(row.lower()), (heading, row)
