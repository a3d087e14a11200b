"""Every text of the therapist's window comes from a table: in a pseudo-language none is bare."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from PyQt6.QtCore import QRectF, Qt
from PyQt6.QtWidgets import QApplication, QFileDialog, QInputDialog, QMessageBox, QWidget
from pytestqt.qtbot import QtBot

from coach.catalogue import catalogue
from coach.desktop.shared.canvas import Canvas
from coach.desktop.shared.language import choose_language
from coach.desktop.therapist.doubts_dialog import DoubtsDialog
from coach.desktop.therapist.passphrase_dialog import PassphraseDialog
from coach.desktop.therapist.record_words import entries_to_add
from coach.desktop.therapist.replay_page import ReplayPage
from coach.desktop.therapist.window import ReviewWindow
from coach.documents.archive import StoredSession
from coach.domain.fault import Fault
from coach.domain.practice import Person
from coach.storage.store import Decision, Store
from docs.make_case import CODE, LAST, MISTYPED, Case, make_case
from tests.desktop.shared import pseudo

TYPED = {
    CODE,
    MISTYPED,
    "x",
    "Quilla Marsh (invented)",
    "Reach the top shelf; sleep on the right side again",
    "The practice's own ten",
    "Forwards and up, held",
}
"""What people wrote, which no table knows."""
TITLES = {each.telling["en"].title for each in catalogue().all}
"""The catalogue has tables of its own, and none in a pseudo-language."""
DATA = re.compile(
    "|".join(re.escape(text) for text in sorted(TYPED | TITLES, key=len, reverse=True))
    # Symbols of units, levels of the spine, keys of one letter, files.
    + r"|(?<=\d )(?:s|min|h)\b|\b[CTL]\d+\b|\+[A-Z]\b|\bF\d+\b|\(C\)"
    # Files, and who published a figure.
    + r"|\S*\.shoulder\S*|\S+\.(?:pdf|csv|txt|json)\b|stiff-shoulder-coach|Tveita"
)


class Walk:
    """Collects every text that is shown, painted, told to a screen reader or asked."""

    def __init__(self, monkeypatch: pytest.MonkeyPatch) -> None:
        self.heard: set[tuple[str, str]] = set()
        self.answer: Any = None
        self._patch(monkeypatch)

    def _patch(self, monkeypatch: pytest.MonkeyPatch) -> None:
        def asked(where: str) -> Callable[..., Any]:
            def ask(*parts: object) -> Any:
                texts = [p for part in parts for p in (part if isinstance(part, list) else [part])]
                words = [text for text in texts if isinstance(text, str)]
                self.heard |= {(where, text) for text in words if not Path(text).is_absolute()}
                return self.answer

            return ask

        for kind, names in (
            (QMessageBox, ("question",)),
            (
                QFileDialog,
                (
                    "getOpenFileName",
                    "getOpenFileNames",
                    "getSaveFileName",
                    "getExistingDirectory",
                ),
            ),
            (QInputDialog, ("getItem",)),
        ):
            for name in names:
                monkeypatch.setattr(kind, name, asked(f"{kind.__name__}.{name}"))
        paint, break_up = Canvas.text, Canvas.paragraph
        whole: list[str] = []

        def text(canvas: Canvas, box: QRectF, written: str, **how: Any) -> None:
            if not whole:
                self.heard.add(("painted", written))
            paint(canvas, box, written, **how)

        def paragraph(canvas: Canvas, box: QRectF, written: str, **how: Any) -> float:
            self.heard.add(("painted", written))
            whole.append(written)
            try:
                return break_up(canvas, box, written, **how)
            finally:
                whole.pop()

        monkeypatch.setattr(Canvas, "text", text)
        monkeypatch.setattr(Canvas, "paragraph", paragraph)

    def look(self, *windows: QWidget) -> None:
        """Read all of these windows, and photograph them, so that they are painted."""
        for window in windows:
            QApplication.processEvents()
            window.grab()
            self.heard |= set(pseudo.told(window))

    @property
    def bare(self) -> dict[str, str]:
        """Words that came from no table, by the text and the place where they stand."""
        found = {f"{where}: {text}": pseudo.bare(text, DATA) for where, text in self.heard}
        return {place: words for place, words in found.items() if words}

    def check(self) -> None:
        """Fail with every text that has bare words."""
        assert self.heard
        assert not self.bare, "\n".join(f"{at} [{words}]" for at, words in self.bare.items())


@pytest.fixture
def walk(app: QApplication, monkeypatch: pytest.MonkeyPatch) -> Iterator[Walk]:
    pseudo.install(app)
    yield Walk(monkeypatch)
    choose_language(app, "en")


@pytest.fixture
def case(walk: Walk, tmp_path: Path) -> Iterator[Case]:
    made = make_case(tmp_path / "case")
    yield made
    made.store.close()


@pytest.fixture
def window(case: Case, qtbot: QtBot) -> ReviewWindow:
    return opened(case.store, qtbot)


def opened(store: Store, qtbot: QtBot) -> ReviewWindow:
    made = ReviewWindow(store, today=lambda: LAST)
    qtbot.addWidget(made)
    made.show()
    return made


def test_the_walk_finds_a_bare_text(walk: Walk, qtbot: QtBot) -> None:
    assert pseudo.bare(pseudo.wrapped("{count} sessions").format(count=3), DATA) == ""
    assert pseudo.bare(pseudo.wrapped("{sessions}, last").format(sessions="3 sessions"), DATA)
    plain = QWidget()
    qtbot.addWidget(plain)
    plain.setToolTip("Import")
    walk.look(plain)
    assert walk.bare == {"QWidget/QWidget: Import": "Import"}


def test_an_empty_practice_an_import_and_its_undoing(
    walk: Walk, store: Store, case: Case, tmp_path: Path, qtbot: QtBot
) -> None:
    window = opened(store, qtbot)
    walk.look(window)
    walk.answer = [], ""
    for name in ("report", "note", "copy", "csv", "measures", "fhir", "import-files"):
        window.entries[name].trigger()
        walk.look(window)
    walk.answer = ""
    window.entries["import-folder"].trigger()
    (tmp_path / "broken.shoulder.zip").write_bytes(b"no zip")
    with qtbot.waitSignal(window.imports.finished, timeout=60_000):
        window.import_paths([tmp_path / "case", tmp_path / "broken.shoulder.zip"])
        walk.look(window)
    walk.look(window)
    walk.answer = QMessageBox.StandardButton.Yes
    window.entries["undo"].trigger()
    walk.look(window)
    walk.check()


def test_the_course_of_a_patient_and_what_is_written_of_it(
    walk: Walk, window: ReviewWindow, tmp_path: Path, qtbot: QtBot
) -> None:
    for code in (CODE, MISTYPED):
        window.refresh(code)
        table = window.page.table
        for row in range(table.model().rowCount()):
            table.selectRow(row)
            walk.look(window)
    window.page.column.hints.why.click()
    walk.look(window)
    for name in ("report", "note", "csv", "measures", "fhir"):
        walk.answer = str(tmp_path / name), ""
        with qtbot.waitSignal(window.exports.told, timeout=60_000) as told:
            window.entries[name].trigger()
        walk.heard.add(("told", told.args[0].replace(str(tmp_path), "")))
    with qtbot.waitSignal(window.exports.told, timeout=60_000):
        window.entries["copy"].trigger()
    walk.look(window)
    walk.check()


def test_records_their_forms_and_changes(walk: Walk, window: ReviewWindow) -> None:
    window.refresh(CODE)
    window.parts.show_records()
    walk.look(window)
    records = window.records
    for kind in (Person, *entries_to_add()):
        if kind is Person:
            records.ask_person(new=True)
        else:
            records.ask_add(kind)
        assert records.form is not None
        for name, entry in records.form.fields.items():
            if name in ("value_deg", "total", "on", "began_on"):
                entry.widget.setText("x")
        records.form.accept()
        walk.look(records.form)
        records.form.reject()
    for first in ("", "1"):
        records.ask_add(next(iter(entries_to_add())))
        assert records.form is not None
        records.form.fields["began_on"].widget.setText(first and "2099-01-01")
        records.form.accept()
        walk.look(records.form)
        records.form.reject()
    for item in range(records.list.topLevelItemCount()):
        heading = records.list.topLevelItem(item)
        assert heading is not None
        records.list.setCurrentItem(heading.child(0))
        records.form = None
        records.ask_change(records.list.record)
        if records.form is not None:
            walk.look(records.form)
            records.form.accept()
        walk.look(window)
        records.remove(records.list.record)
        walk.look(window)
        assert records.changes.last
        records.undo()
        walk.look(window)
    walk.answer = QMessageBox.StandardButton.No
    window.entries["erase"].trigger()
    walk.check()


def test_a_plan_from_nothing_and_from_the_last_one(
    walk: Walk, window: ReviewWindow, tmp_path: Path
) -> None:
    plans = window.plans
    plans.show()
    walk.look(plans)
    for each in catalogue().all:
        plans.page.add(each.exercise)
        walk.look(plans)
    editor = plans.page.editor
    editor.rule.setChecked(True)
    walk.look(plans)
    for box in editor.days.boxes.values():
        box.setChecked(False)
    walk.look(plans)
    editor.days.boxes[next(iter(editor.days.boxes))].setChecked(True)
    for line in (editor.target, plans.page.head.valid_until):
        line.setText("x")
        plans._ask_save()
        walk.look(plans)
        line.clear()
    plans._ask_save()  # no code
    walk.look(plans)
    window.entries["plan"].trigger()  # not saved
    walk.look(plans)
    walk.answer = QMessageBox.StandardButton.Discard
    plans._ask_new()
    plans._ask_save()
    walk.look(plans)
    window.refresh(CODE)
    plans.begin_for(CODE)
    walk.look(plans)
    head, page = plans.page.head, plans.page
    page.add("pendulum")
    for choice in (head.side, head.phase, head.irritability):
        choice.setCurrentIndex(0)
    head.sessions.setValue(3)
    head.valid_until.setText("2026-12-31")
    head.title.setText("Forwards and up, held")
    head.contact.setText(CODE)
    editor.hold.setValue(59)
    editor.repetitions.setValue(29)
    editor.per_day.setValue(6)
    editor.pain.setValue(9)
    walk.look(plans)
    head.irritability.setCurrentIndex(3)
    walk.look(plans)
    head.key.setText("age1x")
    plans._ask_save()
    walk.look(plans)
    head.key.clear()
    out = tmp_path / "plan.json"
    walk.answer = str(out), ""
    plans._ask_save()
    walk.heard.add(("told", plans.message.text().replace(str(out), "")))
    walk.check()


def test_doubts_a_passphrase_and_a_replay(
    walk: Walk, window: ReviewWindow, stored: Callable[..., StoredSession], qtbot: QtBot
) -> None:
    doubts = DoubtsDialog(window, window._store)
    qtbot.addWidget(doubts)
    walk.look(doubts)
    walk.answer = CODE, True
    doubts._ask_whose()
    walk.look(doubts)
    for decision in (Decision.LEFT_OUT, Decision.OPEN):
        doubts._decide(decision)
        walk.look(doubts)

    def refuse(_: str) -> None:
        raise Fault("")

    passphrase = PassphraseDialog("", refuse)
    qtbot.addWidget(passphrase)
    walk.look(passphrase)
    passphrase._try()
    walk.look(passphrase)
    qtbot.waitUntil(lambda: passphrase.enter.isEnabled())
    walk.look(passphrase)
    replay = ReplayPage(stored(), lambda _: stored(7, values=(120.0, 121.0)))
    qtbot.addWidget(replay)
    replay.show()
    walk.look(replay)
    replay.toggle()
    qtbot.keyClick(replay, Qt.Key.Key_C)
    walk.look(replay)
    walk.answer = None, False
    window.refresh(CODE)
    window.entries["replay"].trigger()
    walk.check()
