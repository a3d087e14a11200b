"""The printed page, the note and the table say the same numbers."""

from __future__ import annotations

import csv
import io
import re
from contextlib import closing
from datetime import date
from math import ceil, hypot, pi, sqrt
from statistics import median, stdev

import msgspec
import pytest
from pypdf import PdfReader

from coach.app.review import write_report_files
from coach.desktop.shared.report_page import report_pdf
from coach.domain.movement import Movement, Side
from coach.domain.practice import Episode, OtherSideMeasure
from coach.exchange.fhir import bundle
from coach.exchange.note import visit_note
from coach.exchange.table import holds_table
from coach.review.report import report
from coach.storage.store import Store
from tests.exchange.records import full_session

UNTIL = date(2026, 3, 1)
FIGURE = re.compile(
    "([\N{MINUS SIGN}+]?\\d+\N{DEGREE SIGN} \N{PLUS-MINUS SIGN} \\d+\N{DEGREE SIGN})"
)


def page_text(record):
    data = report_pdf(report(record, until=UNTIL, printed_on=UNTIL))
    return PdfReader(io.BytesIO(data)).pages[0].extract_text().replace("\n", " ")


@pytest.fixture
def record(invented):
    values = ((81.0, 86.5, 84.0), (90.0, 93.0, 92.4), (97.0, 96.0, 99.2))
    elevated = [
        invented.make_session(n, v, error=7.0, other_side=160.0) for n, v in enumerate(values)
    ]
    turned = [
        invented.make_session(
            n + 3, (-15.0 + n,), movement=Movement.EXTERNAL_ROTATION_0, side=Side.RIGHT, error=13.0
        )
        for n in range(2)
    ]
    return elevated + turned


def test_every_figure_of_the_note_is_on_the_page(app, record):
    note, page = visit_note(record, until=UNTIL, written_on=UNTIL), page_text(record)
    objective = note.split("O (objective)")[1].split("A (assessment)")[0]
    figures = FIGURE.findall(objective)
    assert len(figures) == 8  # first, last, best and change of two movements
    for figure in figures:
        assert figure in page
    assert set(FIGURE.findall(page)) == set(figures)
    for line in note.split("S (subjective)")[1].split("Night pain")[0].strip().splitlines():
        assert line.replace(": ", " ", 1) in page
    verdicts = re.findall(": (real change|within measurement error|too few sessions)", note)
    assert len(verdicts) == 2
    assert all(verdict in page for verdict in verdicts)


def test_the_page_shows_the_median_of_the_rows_of_the_table(app, record):
    page = page_text(record)
    rows = list(csv.DictReader(io.StringIO(holds_table(record).decode("utf-8-sig"))))
    sittings: dict[str, list[dict[str, str]]] = {}
    for row in rows:
        if row["movement"] == "flexion" and row["ended_because"] == "completed":
            sittings.setdefault(row["session_started_at"], []).append(row)
    assert len(sittings) == 3
    for began in (min(sittings), max(sittings)):
        values = [float(r["value"]) for r in sittings[began]]
        # The median, its readings' error, and its scatter: 1.96 sqrt(pi / 2) SD / sqrt(n).
        scatter = 1.96 * sqrt(pi / 2) * stdev(values) / sqrt(len(values))
        error = hypot(median(float(r["error_95"]) for r in sittings[began]), scatter)
        said = (
            f"{median(values):.0f}\N{DEGREE SIGN} \N{PLUS-MINUS SIGN} {ceil(error)}\N{DEGREE SIGN}"
        )
        assert said in page


def test_the_page_shows_the_values_of_the_bundle(app, record):
    page = page_text(record)
    found = [
        resource
        for resource in (e["resource"] for e in bundle(record)["entry"])
        if resource["resourceType"] == "Observation"
        and resource["code"]["text"].startswith("Flexion, left: range of a sitting")
    ]
    assert len(found) == 3
    for sitting in (found[0], found[-1]):
        value = sitting["valueQuantity"]["value"]
        (half,) = (
            c["valueQuantity"]["value"]
            for c in sitting["component"]
            if c["code"]["text"] == "half width of the 95 % interval"
        )
        said = f"{value:.0f}\N{DEGREE SIGN} \N{PLUS-MINUS SIGN} {ceil(half)}\N{DEGREE SIGN}"
        assert said in page


def test_a_patient_who_was_only_timed_gets_a_page_and_a_note(app):
    whole = full_session()
    timed = [msgspec.structs.replace(whole, exercises=whole.exercises[1:2])]
    page, note = page_text(timed), visit_note(timed, until=UNTIL, written_on=UNTIL)
    assert "No session gave a value to draw." in page
    assert not FIGURE.findall(page)
    assert not FIGURE.findall(note)


def test_the_report_files_know_what_the_practice_wrote_down(app, tmp_path):
    with closing(Store(tmp_path / "store.sqlite")) as store:
        document = full_session()
        store.import_session(document, b"a", "a.shoulder.zip")
        side = document.exercises[0].side
        code = document.plan.patient_code
        episode = store.add(Episode(code=code, side=side, began_on=date(2025, 11, 3)))
        store.add(
            OtherSideMeasure(
                code=code,
                episode_id=episode.id,
                on=date(2026, 1, 5),
                movement=Movement.EXTERNAL_ROTATION_0,
                value_deg=61.0,
            )
        )
        page, *_ = write_report_files(store, code, tmp_path)
    assert "other side 61\N{DEGREE SIGN}" in PdfReader(page).pages[0].extract_text()
