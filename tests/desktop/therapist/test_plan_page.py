from __future__ import annotations

import json
from datetime import date

import msgspec
import pyrage
import pytest
from PyQt6.QtCore import Qt
from PyQt6.QtWidgets import QApplication, QFileDialog, QMessageBox

from coach.catalogue import catalogue
from coach.desktop.therapist.plan_window import PlanWindow
from coach.desktop.therapist.window import ReviewWindow
from coach.documents.plan import read_plan, write_plan
from coach.domain.fault import Fault
from coach.domain.movement import Movement, Side
from coach.domain.plan import OtherSide, Plan, PlannedExercise
from coach.domain.practice import Person
from coach.storage.keys import make_practice_key, practice_key_path

TODAY = date(2026, 2, 1)


@pytest.fixture
def window(app, qtbot):
    opened = PlanWindow(today=lambda: TODAY)
    qtbot.addWidget(opened)
    opened.show()
    opened.activateWindow()
    qtbot.waitUntil(opened.isActiveWindow)
    return opened


@pytest.fixture
def written(tmp_path):
    """A plan of an earlier day with what the page does not show: the other side's range."""
    path = tmp_path / "earlier.json"
    stretch = PlannedExercise(
        exercise="stick-flexion-lying", side=Side.LEFT, hold_s=20, repetitions=4
    )
    plan = Plan(
        patient_code="SH-017",
        title="First weeks",
        side=Side.LEFT,
        irritability="low",
        phase="stiff",
        revision=3,
        exercises=(stretch,),
        other_side=(OtherSide(movement=Movement.FLEXION, value_deg=165),),
    )
    raw = json.loads(write_plan(plan))
    for field in ("movement", "position", "view"):
        del raw["exercises"][0][field]
    path.write_text(json.dumps(raw))
    return path


@pytest.fixture
def keyboard(qtbot):
    """Types into whatever has the keyboard."""

    class Keyboard:
        def type(self, text):
            qtbot.keyClicks(QApplication.focusWidget(), text)

        def press(self, key, modifier=Qt.KeyboardModifier.NoModifier, times=1):
            for _ in range(times):
                qtbot.keyClick(QApplication.focusWidget(), key, modifier)

    return Keyboard()


def read_back(path):
    return read_plan(path.read_bytes(), path.name, catalogue().by_name)


def test_from_nothing_to_a_saved_plan_by_keyboard_alone(
    window, keyboard, qtbot, tmp_path, monkeypatch
):
    path = tmp_path / "plan"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(path), ""))
    control, alt = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.AltModifier
    tab = Qt.Key.Key_Tab
    for text in ("SH-017", "Second month", "left", "stiff", "low"):
        keyboard.type(text)
        keyboard.press(tab)
    keyboard.press(Qt.Key.Key_A, control)
    for text in ("10", "2026-03-31", "555-0101"):
        keyboard.type(text)
        keyboard.press(tab)
    for words in ("pendulum", "supine flexion", "door frame braced"):
        keyboard.press(Qt.Key.Key_F, control)
        keyboard.type(words)
        keyboard.press(Qt.Key.Key_Return)
    keyboard.press(Qt.Key.Key_L, control)
    keyboard.press(Qt.Key.Key_Up)
    keyboard.press(Qt.Key.Key_Up, alt)
    keyboard.press(Qt.Key.Key_Return)
    keyboard.type("25")
    keyboard.press(tab)
    keyboard.press(Qt.Key.Key_A, control)
    keyboard.type("5")
    keyboard.press(Qt.Key.Key_B, alt)
    keyboard.type("130")
    keyboard.press(Qt.Key.Key_X, alt)
    qtbot.waitUntil(window.page.editor.rule.isChecked)
    keyboard.press(Qt.Key.Key_L, control)
    keyboard.press(Qt.Key.Key_End)
    keyboard.press(Qt.Key.Key_Delete)
    keyboard.press(Qt.Key.Key_S, control)
    plan = json.loads((tmp_path / "plan.json").read_text())
    assert plan["patient_code"] == "SH-017"
    assert plan["title"] == "Second month"
    assert (plan["side"], plan["phase"], plan["irritability"]) == ("left", "stiff", "low")
    assert plan["sessions_per_week"] == 10
    assert (plan["issued_on"], plan["valid_until"]) == ("2026-02-01", "2026-03-31")
    assert (plan["contact"], plan["revision"]) == ("555-0101", 1)
    first, second = plan["exercises"]
    assert (first["exercise"], second["exercise"]) == ("stick-flexion-lying", "pendulum")
    assert (first["hold_s"], first["repetitions"], first["side"]) == (25, 5, "left")
    assert (first["target_deg"], first["pain_limit"]) == (130, 4)
    assert first["next_step"]["propose"] == "wall-walk-forward"
    assert second["hold_s"] == 60  # pendulum.toml, low: 30 to 60 s
    assert read_back(tmp_path / "plan.json").patient_code == "SH-017"
    assert not window.page.dirty


def test_an_opened_plan_counts_up_and_says_what_changed(window, written, tmp_path):
    window.open(written)
    changes = window.page.changes
    assert [changes.item(n).text() for n in range(changes.count())] == ["Nothing."]
    window.page.editor.hold.setValue(25)
    assert changes.item(0).text().endswith("(left): hold from 20 s to 25 s.")
    assert "revision 3" in window.page.changes_title.text()
    window.save(tmp_path / "next.json")
    saved = read_back(tmp_path / "next.json")
    assert (saved.revision, saved.issued_on) == (4, TODAY)
    assert (saved.side, saved.irritability, saved.phase) == ("left", "low", "stiff")
    assert saved.exercises[0].hold_s == 25
    assert saved.other_side[0].value_deg == 165


def test_for_another_patient_it_is_the_first_and_takes_no_range_along(window, written, tmp_path):
    window.open(written)
    window.page.head.code.setText("SH-200")
    window.save(tmp_path / "other.json")
    saved = read_back(tmp_path / "other.json")
    assert (saved.patient_code, saved.revision, saved.other_side) == ("SH-200", 1, ())


@pytest.mark.parametrize(
    ("act", "said"),
    [
        (lambda page: page.head.code.clear(), "no patient code"),
        (lambda page: page._remove(), "no exercise"),
        (lambda page: page.head.valid_until.setText("31.3."), "'31.3.', which is no date"),
        (lambda page: page.head.valid_until.setText("2025-01-01"), "before it was issued"),
        (lambda page: page.head.key.setText("age1abc"), "key is mistyped"),
        (lambda page: page.editor.target.setText("far"), "Not beyond, in degrees is 'far'"),
        (lambda page: page.editor.days.show_days(()), "needs a day of the week"),
    ],
)
def test_what_is_wrong_is_one_sentence_and_writes_nothing(window, written, tmp_path, act, said):
    window.open(written)
    act(window.page)
    with pytest.raises(Fault, match=said):
        window.save(tmp_path / "wrong.json")
    assert not (tmp_path / "wrong.json").exists()
    window._ask_save()
    assert said in window.message.text()
    assert window.message.property("role") == "caution"


def test_what_is_still_being_typed_is_saved_too(window, written, tmp_path):
    window.open(written)
    window.page.editor.target.setText("127,5")
    window.save(tmp_path / "typed.json")
    assert read_back(tmp_path / "typed.json").exercises[0].target_deg == 127.5


def test_the_rule_for_the_next_step_is_saved_as_it_is_shown(window, written, tmp_path):
    window.open(written)
    editor = window.page.editor
    assert not editor.sittings.isVisible()
    editor.rule.setChecked(True)
    for field in (editor.sittings, editor.at_least, editor.pain_at_most, editor.propose):
        assert field.isVisible()
    editor.sittings.setValue(4)
    editor.at_least.setText("150")
    editor.pain_at_most.setValue(2)
    editor.propose.setCurrentIndex(0)
    window.save(tmp_path / "rule.json")
    rule = json.loads((tmp_path / "rule.json").read_text())["exercises"][0]["next_step"]
    assert rule == {"sessions": 4, "at_least_deg": 150, "pain_at_most": 2, "propose": None}


def test_the_practices_own_key_is_taken(window, written, tmp_path):
    key = make_practice_key(tmp_path / "practice.key", "twelve invented words of some length")
    window.open(written)
    window.page.head.key.setText(key)
    window.save(tmp_path / "sealed.json")
    assert read_back(tmp_path / "sealed.json").practice_key == key


def test_a_plan_with_the_key_before_the_renewal_gets_the_new_one(
    window, written, tmp_path, monkeypatch
):
    monkeypatch.setenv("STIFF_SHOULDER_COACH_FOLDER", str(tmp_path))
    old, new = (str(pyrage.x25519.Identity.generate().to_public()) for _ in range(2))
    window.open(written)
    window.page.head.key.setText(old)
    window.save(tmp_path / "sealed.json")
    practice_key_path().write_bytes(b"locked, which no plan needs opened")
    practice_key_path().with_name("practice.key.age.pub").write_text(f"{new}\n# older: {old}\n")
    window.open(tmp_path / "sealed.json")
    assert window.page.head.key.text() == new
    assert "was renewed" in window.message.text()
    assert not window.page.dirty
    window.save(tmp_path / "renewed.json")
    assert read_back(tmp_path / "renewed.json").practice_key == new


def test_a_file_that_is_no_plan_leaves_the_page_as_it_was(window, written, tmp_path):
    window.open(written)
    broken = tmp_path / "broken.json"
    broken.write_text("{}")
    with pytest.raises(Fault, match=r"broken\.json"):
        window.open(broken)
    with pytest.raises(Fault, match=r"none\.json"):
        window.open(tmp_path / "none.json")
    assert window.page.head.code.text() == "SH-017"


def test_a_dose_outside_the_usual_is_a_hint_with_its_source_and_still_saved(
    window, written, tmp_path
):
    window.open(written)
    editor = window.page.editor
    assert not editor.unusual.isVisible()
    assert "Usual dose. " in editor.measured.text()
    editor.hold.setValue(45)
    assert "usual for low irritability is 20 to 30 s. Common practice" in editor.unusual.text()
    assert editor.unusual.isVisible()
    assert "1 outside the usual dose" in window.page.time.text()
    assert "Outside the usual dose" in window.page.plan.list.item(0).text()
    window.save(tmp_path / "long.json")
    assert read_back(tmp_path / "long.json").exercises[0].hold_s == 45


def test_a_target_is_asked_for_only_where_degrees_are_measured(window):
    editor = window.page.editor
    for slug, shown, said in (
        ("stick-flexion-lying", True, "Measured: Flexion, supine; camera at the stiff side"),
        ("stick-pull-up-behind", False, "Measured: Hand behind back, standing; camera behind"),
        ("pendulum", False, "By time, not measured"),
    ):
        window.page.add(slug)
        assert editor.target.isVisible() is shown
        assert editor.measured.text().startswith(said)


def test_without_a_side_each_exercise_has_its_own(window, tmp_path):
    page = window.page
    page.head.code.setText("SH-017")
    page.add("pendulum")
    page.add("pendulum")
    page.editor.side.choose("left")
    page.head.irritability.choose("high")
    window.save(tmp_path / "both.json")
    assert [e.side for e in read_back(tmp_path / "both.json").exercises] == ["right", "left"]
    page.head.side.choose("left")
    assert {e.side for e in page.draft.exercises} == {Side.LEFT}
    assert not page.editor.side.isEnabled()


def test_no_more_exercises_than_a_plan_may_have(window, tmp_path):
    window.page.head.code.setText("SH-017")
    for _ in range(41):
        window.page.add("pendulum")
    assert "at most 40" in window.message.text()
    window.save(tmp_path / "forty.json")
    assert len(read_back(tmp_path / "forty.json").exercises) == 40


def test_an_irritability_said_later_compares_and_proposes_anew(window):
    page = window.page
    page.add("stick-flexion-lying")
    assert page.draft.exercises[0].hold_s == 3  # as for high: 1 to 5 s
    assert "no irritability said" in page.time.text()
    page.head.irritability.choose("low")
    assert "1 outside the usual dose" in page.time.text()
    page.editor.anew.click()
    assert page.draft.exercises[0].hold_s == 30
    assert "outside" not in page.time.text()


def test_unsaved_changes_are_asked_about(window, written, monkeypatch):
    asked = []

    def cancel(*_):
        asked.append(1)
        return QMessageBox.StandardButton.Cancel

    monkeypatch.setattr(QMessageBox, "question", cancel)
    window._ask_new()
    assert not asked
    window.open(written)
    window.page.editor.pain.setValue(2)
    window._ask_new()
    assert asked
    assert window.page.head.code.text() == "SH-017"
    monkeypatch.setattr(QMessageBox, "question", lambda *_: QMessageBox.StandardButton.Discard)
    window._ask_new()
    assert window.page.head.code.text() == ""
    assert not window.page.draft.exercises


def test_the_review_opens_it_for_the_patient_shown(app, store, qtbot, invented, tmp_path):
    session = tmp_path / "a.shoulder.zip"
    session.write_bytes(invented.session_file(invented.make_session(0, code="SH-017")))
    review = ReviewWindow(store, today=lambda: TODAY)
    qtbot.addWidget(review)
    review.show()
    with qtbot.waitSignal(review.imports.finished, timeout=60_000):
        review.import_paths([session])
    assert not review.plans.isVisible()
    review.panel.make_plan.click()
    page = review.plans.page
    assert review.plans.isVisible()
    assert page.head.code.text() == "SH-017"
    assert not page.dirty
    page.head.title.setText("Begun")
    store.add(Person(code="SH-200"))
    review.plans.begin_for("SH-200")
    assert "changes that are not saved" in review.plans.message.text()
    assert page.head.code.text() == "SH-017"
    page.begin(None)


@pytest.mark.parametrize("discarded", [True, False])
def test_the_review_does_not_close_over_an_unsaved_plan(app, store, qtbot, monkeypatch, discarded):
    buttons = QMessageBox.StandardButton
    answer = buttons.Discard if discarded else buttons.Cancel
    monkeypatch.setattr(QMessageBox, "question", lambda *_: answer)
    review = ReviewWindow(store, today=lambda: TODAY)
    qtbot.addWidget(review, before_close_func=lambda w: w.plans.page.begin(None))
    review.show()
    review.plans.page.add("pendulum")
    assert review.close() is discarded
    assert review.isVisible() is not discarded


def test_the_wording_of_a_plan_made_is_the_documents_own(window, written):
    window.open(written)
    made = window.page.make()
    opened = read_back(written)
    assert made == msgspec.structs.replace(opened, revision=4, issued_on=TODAY)
