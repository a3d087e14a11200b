"""The printed card, measured on the page as a person with a ruler and scissors would."""

from __future__ import annotations

import io

import cv2
import numpy as np
import pytest
from pypdf import PdfReader
from PyQt6.QtCore import QBuffer, QByteArray, QIODevice, QSize
from PyQt6.QtGui import QImage
from PyQt6.QtPdf import QPdfDocument
from PyQt6.QtWidgets import QApplication

from coach.capture.card_marks import marker_cells
from coach.desktop.shared.application import create_application
from coach.desktop.shared.card_page import card_pdf
from coach.domain.card_sheet import Paper

PIXELS_PER_MM = 10
SIZES_MM = {Paper.A4: (297.0, 210.0), Paper.LETTER: (279.4, 215.9)}
PRINTERS_MARGIN_MM = 6


@pytest.fixture
def app(qapp: QApplication) -> QApplication:
    return create_application(["test"])


def printed(data: bytes, paper: Paper) -> np.ndarray:
    """The first page as grey levels, ten pixels a millimetre."""
    buffer = QBuffer()
    buffer.setData(QByteArray(data))
    buffer.open(QIODevice.OpenModeFlag.ReadOnly)
    document = QPdfDocument(None)
    document.load(buffer)
    size = QSize(*(round(length * PIXELS_PER_MM) for length in SIZES_MM[paper]))
    page = document.render(0, size).convertToFormat(QImage.Format.Format_RGBA8888)
    bits = page.constBits()
    assert bits is not None
    rgba = np.frombuffer(bits.asstring(page.sizeInBytes()), np.uint8)
    rgba = rgba.reshape(page.height(), page.bytesPerLine() // 4, 4)[:, : page.width()]
    return np.where(rgba[..., 3] == 0, 255, rgba[..., 1]).astype(np.uint8)


def upright_lines(grey: np.ndarray, top_mm: float, bottom_mm: float, share: float) -> np.ndarray:
    """Where, in mm, columns are inked over at least this share of the rows; each line once."""
    rows = grey[round(top_mm * PIXELS_PER_MM) : round(bottom_mm * PIXELS_PER_MM)] < 160
    columns = np.flatnonzero(rows.mean(axis=0) >= share)
    groups = np.split(columns, np.flatnonzero(np.diff(columns) > 2) + 1)
    return np.array([group.mean() + 0.5 for group in groups]) / PIXELS_PER_MM


@pytest.mark.parametrize("paper", Paper)
def test_the_sheet_measures_what_the_detector_takes_it_for(app: QApplication, paper: Paper) -> None:
    grey = printed(card_pdf(marker_cells(), paper), paper)
    inked = np.argwhere(grey < 200)
    height, width = grey.shape
    for low, high, length in zip(
        inked.min(axis=0), inked.max(axis=0), (height, width), strict=True
    ):
        assert low >= PRINTERS_MARGIN_MM * PIXELS_PER_MM
        assert length - high >= PRINTERS_MARGIN_MM * PIXELS_PER_MM
    dictionary = cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_4X4_50)
    parameters = cv2.aruco.DetectorParameters()
    parameters.cornerRefinementMethod = cv2.aruco.CORNER_REFINE_SUBPIX
    detector = cv2.aruco.ArucoDetector(dictionary, parameters)
    corners, numbers, _ = detector.detectMarkers(grey)
    quads = {
        int(number): (quad.reshape(4, 2) + 0.5) / PIXELS_PER_MM
        for number, quad in zip(np.ravel(numbers), corners, strict=True)
    }
    assert sorted(quads) == [11, 30]
    left, right = quads[11], quads[30]
    for quad in (left, right):
        sides = np.linalg.norm(quad - np.roll(quad, 1, axis=0), axis=1)
        np.testing.assert_allclose(sides, 100.0, atol=0.2)
    # Upright, level, with 9 mm to the ridge on both sides.
    np.testing.assert_allclose(left[:, 1], right[:, 1], atol=0.15)
    np.testing.assert_allclose(right[0] - left[1], (18.0, 0.0), atol=0.2)

    # Between the marker's upper edge and the sheet's: cut, ridge, cut.
    top = left[0, 1]
    cut_left, ridge, cut_right = upright_lines(grey, top - 7.5, top - 0.5, 0.3)[:3]
    assert ridge == pytest.approx((left[1, 0] + right[0, 0]) / 2, abs=0.1)
    faces = ridge - cut_left, cut_right - ridge
    np.testing.assert_allclose(faces, 118.0, atol=0.15)
    assert cut_left == pytest.approx(left[0, 0] - 9, abs=0.15)

    # The strip lies below; its folds are dashed, its ends and the bank card's sides solid.
    strip = upright_lines(grey, top + 138, top + 158, 0.4)
    fold_left, fold_right = strip[1], strip[-2]
    tents = [np.degrees(np.arccos((fold_right - fold_left) / 2 / face)) for face in faces]
    np.testing.assert_allclose(tents, 35.0, atol=0.2)

    # ISO/IEC 7810, ID-1: 85.60 mm wide.
    assert strip[3] - strip[2] == pytest.approx(85.6, abs=0.15)


def test_the_ruler_is_a_hundred_millimetres(app: QApplication) -> None:
    grey = printed(card_pdf(marker_cells(), Paper.A4), Paper.A4)
    line = upright_lines(grey, 30, 120, 0.9)[-1]
    column = grey[:, round(line * PIXELS_PER_MM)] < 160
    runs = np.split(np.flatnonzero(column), np.flatnonzero(np.diff(np.flatnonzero(column)) > 2) + 1)
    assert max(len(run) for run in runs) / PIXELS_PER_MM == pytest.approx(100.0, abs=0.3)


@pytest.mark.parametrize("paper", Paper)
def test_two_pages_in_words_and_in_embedded_fonts(app: QApplication, paper: Paper) -> None:
    reader = PdfReader(io.BytesIO(card_pdf(marker_cells(), paper)))
    assert len(reader.pages) == 2
    for page in reader.pages:
        size = float(page.mediabox.width), float(page.mediabox.height)
        expected = [length / 25.4 * 72 for length in SIZES_MM[paper]]
        assert size == pytest.approx(expected, abs=1)
        for font in page["/Resources"]["/Font"].values():
            descendant = font.get_object()["/DescendantFonts"][0].get_object()
            descriptor = descendant["/FontDescriptor"].get_object()
            assert "AtkinsonHyperlegible" in descriptor["/FontName"]
    sheet, how = (page.extract_text().replace("\n", " ") for page in reader.pages)
    for words in ("Print this page at 100 %", "Lay a bank card here", "fold back, print outside"):
        assert words in sheet
    for words in (
        "only where your therapist agrees",
        "away from the skin",
        "Nothing round the neck",
        "1280 by 720",
    ):
        assert words in how
    assert "…" not in sheet + how  # nothing was cut short
