"""What is painted on printed pages and charts: all of it translated, none of it cut off."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta

import numpy as np
import pytest
from PyQt6.QtCore import QRectF
from PyQt6.QtWidgets import QApplication

from coach.desktop.shared.application import create_application
from coach.desktop.shared.board_page import board_pdf
from coach.desktop.shared.canvas import Canvas
from coach.desktop.shared.card_page import card_pdf
from coach.desktop.shared.chart import chart_picture
from coach.desktop.shared.language import choose_language
from coach.desktop.shared.report_page import report_pdf
from coach.domain.card_sheet import Paper
from coach.domain.movement import Movement
from coach.review.report import Report, report
from tests.exchange.records import full_session, own_records
from tests.pseudo import left_over, spoken
from tests.review.conftest import make_session
from tests.review.six_patients import LAST_DAY, six_patients
from tests.review.test_in_every_language import WRITTEN

CELLS = np.zeros((17, 6, 6), dtype=np.bool_)


@pytest.fixture
def application() -> Iterator[QApplication]:
    application = create_application(["test"])
    yield application
    choose_language(application, "en")


@pytest.fixture
def painted(monkeypatch: pytest.MonkeyPatch) -> dict[str, bool]:
    """Every line that is painted, and whether its box is wide enough for it."""
    lines: dict[str, bool] = {}
    paint = Canvas.text

    def noted(self: Canvas, box: QRectF, text: str, **how: object) -> None:
        width = self.width(text, how.get("size", 1.0), bold=how.get("bold", False))
        lines[text] = lines.get(text, True) and width <= box.width() + 0.02 * self.em
        paint(self, box, text, **how)

    monkeypatch.setattr(Canvas, "text", noted)
    return lines


def reports() -> Iterator[Report]:
    for documents in six_patients(1).values():
        records = own_records(documents[0].plan.patient_code)
        yield report(documents, until=LAST_DAY + timedelta(9), printed_on=LAST_DAY, records=records)
    yield report([full_session(n) for n in range(3)], printed_on=LAST_DAY, records=own_records())
    many = [
        make_session(n, (60.0 + n,), movement=movement, error=9.0, other_side=None)
        for n in range(70)
        for movement in (Movement.FLEXION, Movement.EXTERNAL_ROTATION_90)
    ]
    yield report(many, until=date(2026, 6, 1), printed_on=date(2026, 6, 1))


def print_all() -> None:
    for shown in reports():
        report_pdf(shown)
        for row in shown.rows:
            chart_picture(row.chart)
    for paper in Paper:
        card_pdf(CELLS[:2], paper)
        board_pdf(CELLS, paper)


def test_every_word_that_is_painted_is_translated(
    application: QApplication, painted: dict[str, bool]
) -> None:
    with spoken():
        print_all()
    assert len(painted) > 250
    assert left_over(painted, WRITTEN) == []


@pytest.mark.parametrize("language", ["en", "de"])
def test_nothing_that_is_painted_is_cut_off(
    application: QApplication, painted: dict[str, bool], language: str
) -> None:
    choose_language(application, language)
    print_all()
    assert [line for line, fits in painted.items() if not fits] == []
