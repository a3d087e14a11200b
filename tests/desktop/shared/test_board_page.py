"""The printed board, looked at on the page as the camera's side would and with a ruler."""

from __future__ import annotations

import io

import numpy as np
import pytest
from pypdf import PdfReader
from PyQt6.QtWidgets import QApplication

from coach.capture.lens_board import corners_mm, find_board, marker_cells
from coach.desktop.shared.application import create_application
from coach.desktop.shared.board_page import board_pdf
from coach.domain.card_sheet import Paper

from .test_card_page import PIXELS_PER_MM, PRINTERS_MARGIN_MM, printed, upright_lines


@pytest.fixture
def app(qapp: QApplication) -> QApplication:
    return create_application(["test"])


@pytest.mark.parametrize("paper", Paper)
def test_the_board_is_what_the_detector_takes_it_for(app: QApplication, paper: Paper) -> None:
    grey = printed(board_pdf(marker_cells(), paper), paper)
    seen = find_board(grey)
    assert seen is not None
    assert sorted(seen.numbers) == list(range(24))
    found_mm = seen.image_px / PIXELS_PER_MM
    true_mm = corners_mm()[seen.numbers][:, :2]
    shift = (found_mm - true_mm).mean(axis=0)
    np.testing.assert_allclose(found_mm, true_mm + shift, atol=0.1)
    inked = np.argwhere(grey < 200)
    assert inked.min() >= PRINTERS_MARGIN_MM * PIXELS_PER_MM
    assert (np.array(grey.shape) - inked.max(axis=0)).min() >= PRINTERS_MARGIN_MM * PIXELS_PER_MM


def test_both_rulers_are_a_hundred_millimetres(app: QApplication) -> None:
    grey = printed(board_pdf(marker_cells(), Paper.A4), Paper.A4)
    right = upright_lines(grey, 30, 120, 0.95)[-1]
    for line in (grey[:, round(right * PIXELS_PER_MM)], grey[: -8 * PIXELS_PER_MM][::-1]):
        if line.ndim == 2:  # the lowest row with a long unbroken line
            rows = [row for row in line if longest(row) > 50 * PIXELS_PER_MM]
            line = rows[0]
        assert longest(line) / PIXELS_PER_MM == pytest.approx(100.0, abs=0.5)


def longest(line: np.ndarray) -> int:
    """The longest unbroken run of ink."""
    ink = np.flatnonzero(line < 160)
    runs = np.split(ink, np.flatnonzero(np.diff(ink) > 1) + 1)
    return max(len(run) for run in runs)


def test_one_page_in_plain_words(app: QApplication) -> None:
    reader = PdfReader(io.BytesIO(board_pdf(marker_cells(), Paper.LETTER)))
    assert len(reader.pages) == 1
    text = reader.pages[0].extract_text().replace("\n", " ")
    for words in ("Print at 100 %", "bank card's long edge", "stick it flat", "another printer"):
        assert words in text
    assert "…" not in text  # nothing was cut short
