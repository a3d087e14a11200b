"""Plans and the store: what the next one starts from, and how it is given out."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import msgspec
import pytest
from PyQt6.QtCore import Qt, QTimer
from PyQt6.QtWidgets import QApplication, QComboBox, QFileDialog, QMessageBox

from coach.catalogue import catalogue
from coach.desktop.therapist.plan_window import PlanWindow
from coach.desktop.therapist.window import ReviewWindow
from coach.documents.plan import read_plan
from coach.domain.exercise import Irritability, StiffnessPhase
from coach.domain.fault import Fault
from coach.domain.movement import Movement, Side
from coach.domain.practice import Episode, OtherSideMeasure, Person
from coach.storage.store import Store

TODAY = date(2026, 2, 1)
CODE = "SH-017"
CONTROL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def known(store):
    store.add(Person(code=CODE))
    store.add(
        Episode(
            code=CODE,
            side=Side.LEFT,
            began_on=date(2025, 10, 3),
            phase=StiffnessPhase.STIFF,
            irritability=Irritability.LOW,
        )
    )
    for on, value in ((date(2026, 1, 5), 160), (date(2026, 1, 20), 165)):
        store.add(OtherSideMeasure(code=CODE, on=on, movement=Movement.FLEXION, value_deg=value))
    return store


@pytest.fixture
def window(app, known, qtbot):
    opened = PlanWindow(today=lambda: TODAY, store=known)
    qtbot.addWidget(opened)
    opened.begin_for(CODE)
    return opened


def read_back(path):
    return read_plan(path.read_bytes(), path.name, catalogue().by_name)


def changes(window):
    shown = window.page.changes
    return [shown.item(n).text() for n in range(shown.count())]


def test_the_first_plan_starts_from_the_episode_and_the_other_side(window, known, tmp_path):
    head = window.page.head.fields()
    assert (head["patient_code"], head["side"]) == (CODE, Side.LEFT)
    assert (head["phase"], head["irritability"]) == (StiffnessPhase.STIFF, Irritability.LOW)
    assert not window.page.dirty
    window.page.add("stick-flexion-lying")
    made = window.save(tmp_path / "first.json")
    assert made == read_back(tmp_path / "first.json")
    assert [(o.movement, o.value_deg) for o in made.other_side] == [(Movement.FLEXION, 165)]
    (issued,) = known.issued_plans(CODE)
    assert (issued.revision, issued.issued_on, issued.side) == (1, TODAY, Side.LEFT)
    assert issued.episode_id == known.episodes(CODE)[0].id
    assert issued.plan.encode() == (tmp_path / "first.json").read_bytes()


def test_the_next_plan_starts_from_the_last_and_says_what_changed(window, known, tmp_path):
    window.page.add("stick-flexion-lying")
    window.save(tmp_path / "first.json")
    (episode,) = known.episodes(CODE)
    known.change(msgspec.structs.replace(episode, phase=StiffnessPhase.THAWING))
    window.begin_for(CODE)
    assert window.page.changes_title.text() == "What changed against revision 1 of 1 Feb 2026"
    assert changes(window) == ["Phase from stiff to thawing."]
    window.page.editor.hold.setValue(25)
    window.save(tmp_path / "second.json")
    assert [p.revision for p in known.issued_plans(CODE)] == [1, 2]
    assert read_back(tmp_path / "second.json").exercises[0].hold_s == 25
    # Saved once more without a change it is the same plan, not a third one.
    window.save(tmp_path / "copy.json")
    assert (tmp_path / "copy.json").read_bytes() == (tmp_path / "second.json").read_bytes()
    assert len(known.issued_plans(CODE)) == 2


def test_a_file_that_cannot_be_written_leaves_no_plan_in_the_store(window, known, tmp_path):
    window.page.add("pendulum")
    with pytest.raises(Fault, match="could not be saved"):
        window.save(tmp_path / "gone" / "first.json")
    assert known.issued_plans(CODE) == ()


@pytest.mark.parametrize("anyway", [True, False])
def test_a_plan_that_another_desk_gave_out_meanwhile_is_asked_about(
    window, known, tmp_path, monkeypatch, anyway
):
    other = Store(tmp_path / "store.sqlite")
    elsewhere = PlanWindow(today=lambda: TODAY, store=other)
    elsewhere.begin_for(CODE)
    elsewhere.page.add("pendulum")
    elsewhere.save(tmp_path / "theirs.json")
    other.close()
    buttons, asked = QMessageBox.StandardButton, []

    def answer(_parent, _title, text, *_):
        asked.append(text)
        return buttons.Yes if anyway else buttons.No

    monkeypatch.setattr(QMessageBox, "question", answer)
    monkeypatch.setattr(
        QFileDialog, "getSaveFileName", lambda *a: (str(tmp_path / Path(a[2]).name), "")
    )
    window.page.add("stick-flexion-lying")
    window._ask_save()
    assert "was given revision 1 of a plan" in asked[0]
    assert [p.revision for p in known.issued_plans(CODE)] == ([1, 2] if anyway else [1])
    assert (tmp_path / "SH-017_plan_2.shoulder.json").exists() is anyway
    window.page.begin(None)
    elsewhere.page.begin(None)


def test_a_plan_may_be_the_first_that_is_known_of_a_person(window, known, tmp_path):
    window.page.begin(None)
    window.page.head.code.setText("SH-300")
    window.page.add("pendulum")
    made = window.save(tmp_path / "first.json")
    assert made.other_side == ()
    assert known.person("SH-300").created_on == TODAY
    assert len(known.issued_plans("SH-300")) == 1


def test_from_an_empty_store_to_a_plan_given_out_with_key_presses_alone(
    app, store, qtbot, tmp_path
):
    """As someone who sees the program for the first time would go."""
    window = ReviewWindow(store, today=lambda: TODAY)
    qtbot.addWidget(window)
    window.show()

    def active(one):
        one.activateWindow()  # what a window manager does
        qtbot.waitUntil(one.isActiveWindow)
        qtbot.waitUntil(lambda: one.isAncestorOf(QApplication.focusWidget()))

    def press(key, modifier=Qt.KeyboardModifier.NoModifier):
        qtbot.keyClick(QApplication.focusWidget(), key, modifier)

    def fill(*texts):
        active(window.records.form)
        for number, text in enumerate(texts):
            if number:
                press(Qt.Key.Key_Tab)
            if not isinstance(QApplication.focusWidget(), QComboBox):
                press(Qt.Key.Key_A, CONTROL)
            qtbot.keyClicks(QApplication.focusWidget(), text)
        press(Qt.Key.Key_S, CONTROL)
        assert window.records.form.isHidden()

    active(window)
    press(Qt.Key.Key_N, CONTROL)
    fill("SH-400", "Cy Imagined")
    active(window)
    assert window.records.list.hasFocus()
    press(Qt.Key.Key_Return)  # on "Episodes: none yet, Enter adds one"
    fill("right", "2025-11-20", "painful", "high", "Sleep through the night")
    active(window)
    press(Qt.Key.Key_L, CONTROL)
    plans = window.plans
    active(plans)
    assert plans.page.choice.filter.hasFocus()
    for words in ("pendulum", "supine flexion"):
        press(Qt.Key.Key_F, CONTROL)
        qtbot.keyClicks(QApplication.focusWidget(), words)
        press(Qt.Key.Key_Return)
    path = tmp_path / "for Cy.json"

    def answer_dialog():
        dialog = QApplication.activeModalWidget()
        assert isinstance(dialog, QFileDialog)
        qtbot.keyClicks(QApplication.focusWidget(), str(path))
        qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Return)

    QTimer.singleShot(500, answer_dialog)
    press(Qt.Key.Key_S, CONTROL)
    plan = read_back(path)
    assert (plan.patient_code, plan.side, plan.revision) == ("SH-400", Side.RIGHT, 1)
    assert (plan.phase, plan.irritability) == ("painful", "high")
    assert [e.exercise for e in plan.exercises] == ["pendulum", "stick-flexion-lying"]
    found = store.records_of("SH-400")
    assert found.person.name == "Cy Imagined"
    assert found.episode.goals == "Sleep through the night"
    assert found.last_plan.plan.encode() == path.read_bytes()
    assert found.last_plan.episode_id == found.episode.id
    assert not plans.page.dirty
