from __future__ import annotations

import io
from datetime import date

import pytest
from pypdf import PdfReader

from coach.desktop.shared.language import choose_language
from coach.desktop.shared.report_page import report_pdf
from coach.review.report import report
from coach.review.report_columns import COLUMNS


def read_back(data):
    reader = PdfReader(io.BytesIO(data))
    assert len(reader.pages) == 1
    page = reader.pages[0]
    return reader, page, page.extract_text().replace("\n", " ")


@pytest.mark.parametrize("sessions", [1, 2, 40, 700])
def test_the_page_says_the_same_numbers(app, invented, sessions):
    gain = 40 / sessions
    documents = [
        invented.make_session(n, (90.0 + gain * n, 88.0 + gain * n, 95.0), other_side=160.0)
        for n in range(sessions)
    ]
    content = report(documents, until=date(2026, 3, 1), printed_on=date(2026, 3, 1))
    reader, page, text = read_back(report_pdf(content))
    for cell in content.rows[0].cells:
        assert cell in text
    for name, said in content.facts:
        assert f"{name} {said}" in text
    for words in (*COLUMNS, content.period, "SH-017", content.software, *content.notes):
        assert words in text
    assert content.method in text
    assert "\t" not in text
    assert reader.metadata.title == "Shoulder report: SH-017"
    # A4 is 210 mm by 297 mm.
    assert float(page.mediabox.width) == pytest.approx(210 / 25.4 * 72, abs=1)
    assert float(page.mediabox.height) == pytest.approx(297 / 25.4 * 72, abs=1)


def test_text_is_text_in_embedded_fonts_and_charts_are_lines(app, invented):
    documents = [invented.make_session(n, (90.0 + n,)) for n in range(20)]
    _, page, _ = read_back(report_pdf(report(documents)))
    fonts = page["/Resources"]["/Font"].values()
    assert fonts
    for font in fonts:
        descendant = font.get_object()["/DescendantFonts"][0].get_object()
        descriptor = descendant["/FontDescriptor"].get_object()
        assert descriptor.get("/FontFile2") or descriptor.get("/FontFile3")
        # The program's own two families, whatever this machine has.
        name = descriptor["/FontName"]
        assert "AtkinsonHyperlegible" in name or "NotoSansMath" in name
    assert not page.images


def test_names_are_text_and_nothing_else(app, invented):
    code = "<b>O'Neil</b> & (Söhne) /../ =1+1"
    _, _, text = read_back(report_pdf(report([invented.make_session(code=code)])))
    assert code in text


@pytest.mark.parametrize("language", ["en", "de"])
def test_no_fact_is_shortened(app, invented, language):
    choose_language(app, language)
    try:
        documents = [invented.make_session(n) for n in range(3)]
        content = report(documents, until=date(2026, 3, 1), printed_on=date(2026, 3, 1))
        _, _, text = read_back(report_pdf(content))
        for name, said in content.facts:
            assert f"{name} {said}" in text
        assert "\N{HORIZONTAL ELLIPSIS}" not in text
    finally:
        choose_language(app, "en")
