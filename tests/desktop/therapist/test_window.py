from __future__ import annotations

import shutil
from datetime import date

import pytest
from pypdf import PdfReader
from PyQt6.QtCore import QMimeData, QPointF, Qt, QTimer, QUrl
from PyQt6.QtGui import QDropEvent
from PyQt6.QtWidgets import QAbstractButton, QFileDialog, QLabel, QMessageBox, QWidget

from coach.desktop.therapist.exports import report_name
from coach.desktop.therapist.movement_table import MovementTable
from coach.desktop.therapist.patient_list import PatientList
from coach.desktop.therapist.window import ReviewWindow
from coach.review.report import report
from coach.storage.folders import OVERRIDE
from coach.storage.keys import practice_key_path, unlock
from coach.storage.sealed import seal
from tests.fuzz.places import KEY, PASSPHRASE
from tests.review.six_patients import LAST_DAY, six_patients


@pytest.fixture
def window(app, store, qtbot):
    opened = ReviewWindow(store, today=lambda: date(2026, 2, 1))
    qtbot.addWidget(opened)
    opened.show()
    return opened


@pytest.fixture
def mail(tmp_path, invented):
    """A folder as it comes by mail: two patients, one file twice, one cut short."""
    folder = tmp_path / "mail"
    folder.mkdir()
    for n in range(8):
        content = invented.session_file(invented.make_session(n, (80.0 + 4 * n,)))
        (folder / f"a{n}.shoulder.zip").write_bytes(content)
    (folder / "a7 again.shoulder.zip").write_bytes(content)
    (folder / "short.shoulder.zip").write_bytes(content[:-50])
    other = invented.session_file(invented.make_session(0, code="SH-200"))
    (folder / "b.shoulder.zip").write_bytes(other)
    return folder


def shown_texts(window):
    return [w.text() for w in window.findChildren(QLabel) if w.isVisible()]


def arrive(qtbot, window, act):
    with qtbot.waitSignal(window.imports.finished, timeout=60_000):
        act()


def test_an_empty_store_says_what_to_do(window):
    assert any("New patient (Ctrl+N)" in text for text in shown_texts(window))
    assert any("drop session files" in text for text in shown_texts(window))
    for name in ("report", "fhir", "csv", "note", "copy"):
        window.entries[name].trigger()
        (said,) = [t for t in shown_texts(window) if "import session files first" in t]
        assert said.startswith("There is no session")


def test_from_dropped_folder_to_written_report(window, mail, qtbot, tmp_path, monkeypatch):
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(mail))])
    copy, left = Qt.DropAction.CopyAction, Qt.MouseButton.LeftButton
    event = QDropEvent(QPointF(50, 50), copy, data, left, Qt.KeyboardModifier.NoModifier)
    arrive(qtbot, window, lambda: window.dropEvent(event))
    texts = shown_texts(window)
    assert "11 files: 9 accepted, 1 already known, 1 refused." in texts
    assert "1 file refused" in texts
    assert "short.shoulder.zip" in window.panel.refused.item(0).text()

    window.show_patient("SH-017")
    table = window.page.table.model()
    row = [table.index(0, c).data() for c in range(table.columnCount())]
    # First and last of eight sessions: means of two, 82 and 106.
    assert row[:3] == ["Flexion, left", "8", "82° ± 6°"]
    assert row[3] == "106° ± 6°"
    assert row[6].startswith("+24°")

    wanted = tmp_path / "the report"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(wanted), ""))
    qtbot.keyClick(window, Qt.Key.Key_P, Qt.KeyboardModifier.ControlModifier)
    written = tmp_path / "the report.pdf"
    qtbot.waitUntil(written.exists, timeout=30_000)
    text = PdfReader(written).pages[0].extract_text()
    assert all(cell in text for cell in row)


def test_the_keyboard_is_enough_to_go_through_patients(window, mail, qtbot, monkeypatch):
    monkeypatch.setattr(
        QFileDialog, "getOpenFileNames", lambda *_: ([str(p) for p in mail.iterdir()], "")
    )
    arrive(
        qtbot,
        window,
        lambda: qtbot.keyClick(window, Qt.Key.Key_O, Qt.KeyboardModifier.ControlModifier),
    )
    window.panel.list.setFocus()
    seen = set()
    qtbot.keyClick(window.panel.list, Qt.Key.Key_Home)
    for _ in range(2):
        seen.add(window.code)
        qtbot.keyClick(window.panel.list, Qt.Key.Key_Down)
    assert seen == {"SH-017", "SH-200"}


def test_importing_can_be_stopped_between_two_files(window, mail, qtbot, store):
    def stop_after_three(done, _total):
        if done == 3:
            window.imports.stop()

    window.imports.advanced.connect(stop_after_three)
    arrive(qtbot, window, lambda: window.import_paths([mail]))
    known = sum(e.sessions for e in store.patients())
    assert known + len(store.refusals()) <= 3
    assert known > 0


def test_a_report_that_cannot_be_written_is_said(window, mail, qtbot, tmp_path, monkeypatch):
    arrive(qtbot, window, lambda: window.import_paths([mail]))
    place = tmp_path / "gone" / "report.pdf"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(place), ""))
    window.page.write_report.click()
    qtbot.waitUntil(lambda: any("could not be saved" in text for text in shown_texts(window)))


def test_everything_that_takes_the_keyboard_has_a_name(window, mail, qtbot):
    arrive(qtbot, window, lambda: window.import_paths([mail]))
    nameless = [
        w
        for w in window.findChildren(QWidget)
        if w.focusPolicy() & Qt.FocusPolicy.TabFocus
        and w.isVisible()
        and not w.accessibleName()
        and not (isinstance(w, QAbstractButton) and w.text())
        and not w.objectName().startswith("qt_")
    ]
    assert nameless == []


@pytest.mark.parametrize("size", [(1280, 800), (1920, 1080)])
def test_nothing_is_cut_off(window, mail, qtbot, size):
    arrive(qtbot, window, lambda: window.import_paths([mail]))
    window.resize(*size)
    window.show_patient("SH-017")
    qtbot.wait(50)
    assert window.size().width() == size[0]
    table = window.page.table
    assert table.horizontalScrollBar().maximum() == 0
    assert table.verticalScrollBar().maximum() == 0
    for button in window.findChildren(QAbstractButton):
        if button.isVisible() and button.text():
            assert button.sizeHint().width() <= button.width() + 1, button.text()


def test_the_models_keep_qts_rules(app, store, invented, qtmodeltester):
    store.import_session(invented.make_session(), b"", "a.zip")
    patients = PatientList()
    patients.show(store.patients())
    qtmodeltester.check(patients)
    movements = MovementTable(14)
    movements.show(report([invented.make_session()]).rows)
    qtmodeltester.check(movements)


def test_a_code_is_no_path(invented):
    name = report_name(report([invented.make_session(code="../../etc/x y")]))
    assert name == "______etc_x_y_2026-01-05_report.pdf"


def test_the_last_import_can_be_taken_back(window, mail, qtbot, monkeypatch):
    arrive(qtbot, window, lambda: window.import_paths([mail]))
    assert window.panel.undo.isVisible()
    assert len(window._store.patients()) == 2
    monkeypatch.setattr(QMessageBox, "question", lambda *_: QMessageBox.StandardButton.No)
    window.panel.undo.click()
    assert len(window._store.patients()) == 2
    monkeypatch.setattr(QMessageBox, "question", lambda *_: QMessageBox.StandardButton.Yes)
    window.panel.undo.click()
    assert window._store.patients() == ()
    assert not window.panel.undo.isVisible()
    assert any("9 sessions taken out again" in text for text in shown_texts(window))


def test_whom_to_look_at_first_comes_first_with_the_reason(app, store, qtbot):
    for documents in six_patients(3).values():
        for document in documents:
            store.import_session(document, document.session_id.encode(), "visit.zip")
    window = ReviewWindow(store, today=lambda: LAST_DAY)
    qtbot.addWidget(window)
    model = window.panel.list.model()
    rows = [model.index(row, 0) for row in range(model.rowCount())]
    words = {
        text.split("\n")[0]: text.split("\n")[2]
        for text in (row.data(Qt.ItemDataRole.DisplayRole) for row in rows)
    }
    first = rows[0].data(Qt.ItemDataRole.DisplayRole).split("\n")[0]
    assert "pain rose" in words[first] or "high pain" in words[first]
    assert any("stopped" in why for why in words.values())
    assert any(why == "nothing stands out" for why in words.values())
    assert len(rows[0].data(Qt.ItemDataRole.ToolTipRole)) > 20


def test_a_key_put_aside_at_the_start_is_unlocked_later(
    window, invented, qtbot, app, tmp_path, monkeypatch
):
    monkeypatch.setenv(OVERRIDE, str(tmp_path))
    window.entries["unlock"].trigger()
    assert any(t.startswith("There is no practice key at") for t in shown_texts(window))
    # An age key under a passphrase whose scrypt takes no time.
    shutil.copy(KEY, practice_key_path())
    public = unlock(practice_key_path(), PASSPHRASE).public_key
    sealed = tmp_path / "0a1b2c3d4e5f.shoulder.age"
    sealed.write_bytes(seal(invented.session_file(invented.make_session(0)), public))
    arrive(qtbot, window, lambda: window.import_paths([sealed]))
    assert any("1 refused" in t for t in shown_texts(window))

    def type_it():
        dialog = app.activeModalWidget()
        dialog.field.setText(PASSPHRASE)
        qtbot.keyClick(dialog.field, Qt.Key.Key_Return)

    QTimer.singleShot(0, type_it)
    assert window.entries["unlock"].shortcut().toString() == "Ctrl+K"
    window.entries["unlock"].trigger()
    assert any("is unlocked" in t for t in shown_texts(window))
    arrive(qtbot, window, lambda: window.import_paths([sealed]))
    assert any("1 accepted" in t for t in shown_texts(window))
