"""One patient on one page, on invented patients with known truth."""

from __future__ import annotations

from datetime import date

import pytest
from PyQt6.QtCore import Qt
from PyQt6.QtWidgets import QApplication, QLabel

from coach.desktop.therapist.hints_view import HintsView
from coach.desktop.therapist.patient_page import PatientPage, nothing
from coach.domain.movement import Movement
from coach.review.hints import hints
from coach.review.overview import overview

TODAY = date(2026, 2, 15)
OTHER = {Movement.FLEXION: 165.0, Movement.ABDUCTION: 160.0, Movement.EXTERNAL_ROTATION_0: 60.0}


@pytest.fixture
def stiff(invented):
    """All of three directions far behind the other side."""
    return [
        invented.make_session(n, (value,) * 3, movement=movement, error=5.0, other_side=other)
        for n, ((movement, other), value) in enumerate(
            zip(OTHER.items(), (100.0, 80.0, 10.0), strict=True)
        )
    ]


def shown(widget):
    QApplication.processEvents()
    return [w.text() for w in widget.findChildren(QLabel) if w.isVisible()]


def test_rule_and_source_of_a_hint_are_one_key_away(app, qtbot, stiff):
    view = HintsView()
    qtbot.addWidget(view)
    found = hints(stiff)
    view.show_hints(found)
    view.show()
    qtbot.waitExposed(view)
    view.activateWindow()
    title, *sentences = shown(view)
    assert "no diagnosis" in title
    assert sentences == [hint.sentence for hint in found]
    qtbot.keyClick(view, Qt.Key.Key_H, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: len(shown(view)) == 1 + 2 * len(found))
    for hint in found:
        assert f"Rule: {hint.rule} Source: {hint.source}" in shown(view)
    qtbot.keyClick(view, Qt.Key.Key_H, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: len(shown(view)) == 1 + len(found))
    view.show_hints(())
    assert not view.why.isVisible()
    assert "leave no doubt" in shown(view)[1]


def test_another_row_shows_its_own_findings(app, qtbot, stiff):
    page = PatientPage()
    qtbot.addWidget(page)
    page.show()
    found = overview(stiff, TODAY)
    page.show_overview(found)
    for row, movement in enumerate(found.report.rows):
        page.table.selectRow(row)
        said = shown(page.column.findings)
        assert [text for line in movement.findings for text in line] == said
    assert any("by the plan" in text for text in said)


def test_nothing_of_the_last_patient_stays(app, qtbot, stiff, invented):
    page = PatientPage()
    qtbot.addWidget(page)
    page.show()
    page.show_overview(overview(stiff, TODAY))
    calm = overview([invented.make_session(n, (150.0,)) for n in range(3)], date(2026, 1, 7))
    page.show_overview(calm)
    texts = shown(page.column.hints) + shown(page.column.findings) + shown(page.column.facts)
    assert not any("limited" in text for text in texts)
    assert page.reasons.text() == nothing()
    assert shown(page.column.facts) == [
        text for line in (*calm.report.facts, *calm.lines) for text in line
    ]
