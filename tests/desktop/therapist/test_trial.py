"""300 session files of six invented patients, from the folder to a decision on each page."""

from __future__ import annotations

from datetime import timedelta

import pytest
from PyQt6.QtCore import Qt
from PyQt6.QtWidgets import QApplication, QLabel

from coach.desktop.therapist.window import ReviewWindow
from coach.domain.practice import Treatment, TreatmentKind
from coach.review.change import Verdict
from tests.review.six_patients import BEGIN, six_patients

LAST_DAY = BEGIN.date() + timedelta(days=58)
INJECTED = BEGIN.date() + timedelta(days=20)
READABLE = {
    "steady gain": (True, "Last 3 sittings in a row: completed"),
    "no change": (False, "Nothing stands out."),
    "noise that looks like gain": (False, "Nothing stands out."),
    "camera moved": (False, "another camera set-up than the first"),
    "stopped after a week": (False, "No sitting since 10 Jan 2026, 53 days"),
    "pain rising": (False, "Pain rose from 2 to 6 of 10"),
}
"""Whether there is a real change, and what is to be read of why to look."""


@pytest.fixture
def folder(tmp_path, invented):
    """A folder of all the files, each as it comes from a patient."""
    mail = tmp_path / "mail"
    mail.mkdir()
    everyone = six_patients(1, sittings=59, noisy=58)
    for documents in everyone.values():
        for document in documents:
            path = mail / f"{document.session_id}.shoulder.zip"
            path.write_bytes(invented.session_file(document))
    assert len(list(mail.iterdir())) == 300
    return mail, {who: documents[0].plan.patient_code for who, documents in everyone.items()}


def test_from_the_folder_to_the_right_decision_on_each_page(app, store, qtbot, folder):
    mail, codes = folder
    window = ReviewWindow(store, today=lambda: LAST_DAY)
    qtbot.addWidget(window)
    window.show()
    with qtbot.waitSignal(window.imports.finished, timeout=120_000):
        window.import_paths([mail])
    assert sum(entry.sessions for entry in store.patients()) == 300
    gaining = codes["steady gain"]
    store.add(Treatment(code=gaining, on=INJECTED, kind=TreatmentKind.INJECTION))
    for who, (real, reason) in READABLE.items():
        window.refresh(codes[who])
        window.show_patient(codes[who])
        QApplication.processEvents()
        texts = [w.text() for w in window.page.findChildren(QLabel) if w.isVisible()]
        table = window.page.table.model()
        row = [table.index(0, column).data() for column in range(table.columnCount())]
        verdict = row[-1]
        assert (verdict == Verdict.REAL) is real, who
        assert reason in window.page.reasons.text(), who
        since_start = next(t for t in texts if f": {verdict}" in t)
        assert "\N{PLUS-MINUS SIGN}" in since_start
        if who == "steady gain":
            assert any(t.startswith("Since 25 Jan 2026") for t in texts)
            assert "injection, 25 Jan 2026" in texts
    assert not any(w.isVisible() for w in QApplication.topLevelWidgets() if w is not window)
    first = window.panel.list.model().index(0, 0).data(Qt.ItemDataRole.DisplayRole)
    assert first.startswith(codes["pain rising"])
