"""The practice's own records, written down, changed and taken back with keys."""

from __future__ import annotations

from datetime import date

import msgspec
import pytest
from PyQt6.QtCore import Qt
from PyQt6.QtWidgets import QApplication, QComboBox, QMessageBox

from coach.desktop.therapist.record_list import RecordList
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
from coach.review.history import history
from coach.review.records import line_of
from coach.storage.store import Store

TODAY = date(2026, 2, 1)
CODE = "SH-017"
TAB, ENTER = Qt.Key.Key_Tab, Qt.Key.Key_Return
CONTROL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def window(app, store, qtbot):
    store.add(Person(code=CODE))
    opened = ReviewWindow(store, today=lambda: TODAY)
    qtbot.addWidget(opened)
    opened.show()
    opened.activateWindow()
    qtbot.waitUntil(opened.isActiveWindow)
    qtbot.keyClick(opened, Qt.Key.Key_2, CONTROL)
    qtbot.waitUntil(opened.records.list.hasFocus)
    return opened


@pytest.fixture
def fill(window, qtbot):
    """Types texts into a form's fields, one after the other, then presses Enter."""

    def type_in(*texts):
        form = window.records.form
        qtbot.waitUntil(form.isActiveWindow)
        qtbot.waitUntil(lambda: form.isAncestorOf(QApplication.focusWidget()))
        for number, text in enumerate(texts):
            if number:
                qtbot.keyClick(QApplication.focusWidget(), TAB)
            field = QApplication.focusWidget()
            if text is None:
                continue
            if not isinstance(field, QComboBox):
                qtbot.keyClick(field, Qt.Key.Key_A, CONTROL)
            qtbot.keyClicks(field, text)
        qtbot.keyClick(form, ENTER)
        if form.isHidden():  # what a window manager does
            window.activateWindow()
            qtbot.waitUntil(window.isActiveWindow)

    return type_in


def go_to(window, kind):
    window.records.list.go_to(kind, None)
    window.records.list.setFocus()


def texts(window):
    tree: RecordList = window.records.list
    headings = [tree.topLevelItem(n) for n in range(tree.topLevelItemCount())]
    rows = [h.child(n) for h in headings for n in range(h.childCount())]
    return [[row.text(c) for c in range(4)] for row in rows if row.text(1)]


def test_each_kind_is_written_down_with_keys(window, store, fill, qtbot):
    for kind, typed in (
        (Episode, ("left", "2025-10-03", "stiff", "low", "Reach the shelf", "Wakes at night")),
        (Treatment, ("2025-12-12", "Surgery", "arthroscopic")),
        (OtherSideMeasure, ("2026-01-05", "Abduction", "168")),
        (HandMeasure, ("2026-01-05", "External", None, "active", "-5,5")),
        (TotalScore, ("2026-01-06", "Pain and function", "61.5", "100")),
    ):
        go_to(window, kind)
        qtbot.keyClick(window.records.list, ENTER)
        fill(*typed)
    found = store.records_of(CODE)
    (episode,) = found.episodes
    assert (episode.side, episode.began_on) == (Side.LEFT, date(2025, 10, 3))
    assert (episode.phase, episode.irritability) == ("stiff", "low")
    assert (episode.goals, episode.note) == ("Reach the shelf", "Wakes at night")
    (treatment,) = found.treatments
    assert (treatment.kind, treatment.text) == (TreatmentKind.SURGERY, "arthroscopic")
    (other,) = found.other_side
    assert (other.movement, other.value_deg) == (Movement.ABDUCTION, 168)
    (hand,) = found.by_hand
    assert (hand.movement, hand.side, hand.passive, hand.value_deg) == (
        Movement.EXTERNAL_ROTATION_0,
        Side.LEFT,  # proposed from the episode
        False,
        -5.5,
    )
    (score,) = found.scores
    assert (score.name, score.total, score.maximum) == ("Pain and function", 61.5, 100)
    assert {r.episode_id for r in (treatment, other, hand, score)} == {episode.id}
    assert ["5 Jan 2026", "External rotation at side, left", "\N{MINUS SIGN}5.5° active"] in [
        row[:3] for row in texts(window)
    ]


REFUSED = (
    (Episode, ("left", "2026-02-02"), "Began on is 2026-02-02, which is yet to come"),
    (Episode, ("left", "3.10.25"), "Began on is '3.10.25', which is no date: write it like"),
    (
        HandMeasure,
        (None, None, None, None, "17O"),
        "Degrees is '17O': write a number from \N{MINUS SIGN}90",
    ),
    (
        OtherSideMeasure,
        (None, None, "1700"),
        "Degrees is '1700': write a number from \N{MINUS SIGN}90",
    ),
    (TotalScore, (None, "", "1", "2"), "Questionnaire is empty"),
    (TotalScore, (None, "Pain", "61", "50"), "total is 61, more than the maximum 50"),
    (TotalScore, (None, "Pain", "", "50"), "Total is empty: write a number from 0 to 10000."),
)


def test_what_cannot_be_is_said_in_the_form_and_kept_nowhere(window, store, fill, qtbot):
    for kind, typed, said in REFUSED:
        go_to(window, kind)
        qtbot.keyClick(window.records.list, Qt.Key.Key_Insert)
        fill(*typed)
        form = window.records.form
        assert form.isVisible()
        assert said in form.message.text()
        qtbot.keyClick(form, Qt.Key.Key_Escape)
        assert not form.isVisible()
        window.activateWindow()
    found = store.records_of(CODE)
    kept = (*found.episodes, *found.by_hand, *found.other_side, *found.scores)
    assert kept == ()


def test_a_change_and_a_removal_are_taken_back(window, store, fill, qtbot):
    episode = store.add(Episode(code=CODE, side=Side.LEFT, began_on=date(2025, 10, 3)))
    store.add(Treatment(code=CODE, on=TODAY, kind=TreatmentKind.INJECTION, episode_id=episode.id))
    window.refresh()
    go_to(window, Episode)
    qtbot.keyClick(window.records.list, ENTER)
    fill("right")
    assert store.episodes(CODE)[0].side is Side.RIGHT
    qtbot.keyClick(window.records.list, Qt.Key.Key_Delete)
    assert store.episodes(CODE) == ()
    assert store.treatments(CODE)[0].episode_id is None
    qtbot.keyClick(window.records.list, Qt.Key.Key_Z, CONTROL)
    (again,) = store.episodes(CODE)
    assert again.side is Side.RIGHT
    assert store.treatments(CODE)[0].episode_id == again.id
    qtbot.keyClick(window.records.list, Qt.Key.Key_Z, CONTROL)
    assert store.episodes(CODE)[0].side is Side.LEFT
    assert store.treatments(CODE)[0].episode_id == again.id
    assert not window.records.changes.last


def test_another_desks_change_is_said_and_not_lost(window, store, fill, qtbot, tmp_path):
    store.add(Episode(code=CODE, side=Side.LEFT, began_on=date(2025, 10, 3), goals="Old"))
    window.refresh()
    go_to(window, Episode)
    qtbot.keyClick(window.records.list, ENTER)
    other = Store(tmp_path / "store.sqlite")
    (theirs,) = other.episodes(CODE)
    theirs = other.change(msgspec.structs.replace(theirs, goals="Theirs"))
    other.close()
    fill(None, None, None, None, "Mine")
    form = window.records.form
    assert "at another desk meanwhile" in form.message.text()
    assert "Theirs" in texts(window)[0][3]
    qtbot.keyClick(form, Qt.Key.Key_Escape)
    assert store.episodes(CODE) == (theirs,)
    qtbot.keyClick(window.records.list, ENTER)
    fill(None, None, None, None, "Both")
    assert store.episodes(CODE)[0].goals == "Both"


def test_a_code_is_taken_once_and_a_name_is_changed(window, store, fill, qtbot):
    qtbot.keyClick(window, Qt.Key.Key_N, CONTROL)
    fill(CODE, "Ada Invented")
    assert "already" in window.records.form.message.text()
    qtbot.keyClick(window.records.form, Qt.Key.Key_C, Qt.KeyboardModifier.AltModifier)
    fill("SH-018")
    assert [p.code for p in store.people()] == [CODE, "SH-018"]
    assert window.code == "SH-018"
    qtbot.keyClick(window, Qt.Key.Key_F2)
    fill(None, "Bo Madeup")
    assert store.person("SH-018").name == "Bo Madeup"
    model = window.panel.list.model()
    assert "SH-018, Bo Madeup\nno session yet" in model.index(1, 0).data()


@pytest.mark.parametrize("sure", [True, False])
def test_a_patient_is_erased_only_after_a_question(window, store, qtbot, monkeypatch, sure):
    buttons = QMessageBox.StandardButton
    answer = buttons.Yes if sure else buttons.No
    monkeypatch.setattr(QMessageBox, "question", lambda *_: answer)
    window.entries["erase"].trigger()
    assert bool(store.people()) is not sure


def test_a_goniometers_reading_stands_beside_the_cameras_nearest_one(invented):
    documents = [invented.make_session(n, (80.0 + n,) * 3) for n in (0, 5, 9)]
    series = history(documents)

    def beside(on, **other):
        measure = HandMeasure(
            code=CODE, on=on, movement=Movement.FLEXION, side=Side.LEFT, value_deg=84, passive=True
        )
        return line_of(msgspec.structs.replace(measure, **other), series).beside

    # Sessions of 5, 10 and 14 January 2026, with errors of 6 degrees.
    assert beside(date(2026, 1, 10)) == "camera 85° ± 6°, same day"
    assert beside(date(2026, 1, 7)) == "camera 80° ± 6°, 5 Jan 2026"
    assert beside(date(2026, 1, 28)) == "camera 89° ± 6°, 14 Jan 2026"
    assert beside(date(2026, 1, 29)) == "camera: none within 14 days"
    assert beside(date(2026, 1, 10), side=Side.RIGHT) == "camera: none within 14 days"
