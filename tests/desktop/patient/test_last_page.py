"""The last page tells the figures that the therapist's page tells of the same session."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import date
from statistics import median

import msgspec
import pytest
from pytestqt.qtbot import QtBot

from coach import texts
from coach.desktop.patient.summary_page import SummaryPage
from coach.desktop.shared.application import create_application
from coach.domain.form import FormFault
from coach.domain.progress import EndedBecause, Repetition
from coach.domain.session import SessionEnd
from coach.review.course import course_of
from coach.review.report import report

from .scripted import PLAN, repetition
from .test_pages import texts as shown_on
from .test_programme_pages import outcome, record

ASKED_S = 10.0
SHORT = EndedBecause.LET_GO


def hold(
    number: int,
    value_deg: float,
    held_s: float = ASKED_S,
    because: EndedBecause = EndedBecause.COMPLETED,
    faults: tuple[FormFault, ...] = (),
) -> Repetition:
    made = repetition(number, number * 30.0, held_s, value_deg, because)
    return msgspec.structs.replace(made, faults=faults)


def told(qtbot: QtBot, *holds: Repetition) -> tuple[str, str]:
    """Give what the patient's last page and the therapist's table and facts say."""
    asked = msgspec.structs.replace(PLAN.exercises[0], hold_s=ASKED_S, repetitions=2)
    plan = msgspec.structs.replace(PLAN, exercises=(asked,))
    ended = outcome(SessionEnd.COMPLETED, record(0, asked, repetitions=holds))
    document = msgspec.structs.replace(ended.document, plan=plan)
    page = SummaryPage()
    qtbot.addWidget(page)
    page.resize(1280, 800)
    page.show()
    page.show_outcome(replace(ended, document=document))
    on = date(2026, 3, 2)
    found = report(course_of([document]), until=on, printed_on=on)
    rows = [cell for row in found.rows for cell in row.cells]
    return shown_on(page), "\n".join([*rows, *(text for _, text in found.facts)])


LEAN = (FormFault.LEAN,)


@pytest.mark.parametrize(
    ("holds", "counted_deg"),
    [
        ((hold(1, 111.0), hold(2, 125.0)), (111.0, 125.0)),
        ((hold(1, 111.0), hold(2, 124.0), hold(3, 119.0)), (111.0, 124.0, 119.0)),
        ((hold(1, 111.0), hold(2, 140.0, faults=LEAN)), (111.0,)),
        ((hold(1, 111.0), hold(2, 140.0, 6.0, SHORT)), (111.0,)),
        ((hold(1, 140.0, faults=LEAN),), (140.0,)),
        ((hold(1, 120.0, 6.0, SHORT), hold(2, 60.0, 2.0, SHORT)), (120.0,)),
    ],
    ids=["two", "three", "one leaned", "one cut short", "only leaned", "only cut short"],
)
def test_both_pages_tell_the_median_of_the_holds_that_count(
    qtbot: QtBot, holds: tuple[Repetition, ...], counted_deg: tuple[float, ...]
) -> None:
    patient, therapist = told(qtbot, *holds)
    value = rf"{median(counted_deg):.0f}° ± (\d+)°"
    large = re.search(f"^{value}", patient, re.MULTILINE)
    theirs = re.search(value, therapist)
    assert large is not None
    assert theirs is not None
    # The patient's error is rounded up, never down.
    assert 0 <= int(large.group(1)) - int(theirs.group(1)) <= 1


def test_no_hold_of_half_the_seconds_is_no_value(qtbot: QtBot) -> None:
    patient, therapist = told(qtbot, hold(1, 60.0, 2.0, SHORT))
    assert "no hold long enough" in patient
    assert not re.search(r"^60° ±", patient, re.MULTILINE)
    assert "60°" not in therapist


def test_seconds_are_counted_up_to_what_was_asked_and_both_say_so(qtbot: QtBot) -> None:
    patient, therapist = told(qtbot, hold(1, 111.0, 12.0), hold(2, 124.0, 8.0))
    assert "18 of 20 s held" in patient
    assert "Seconds beyond those asked for are not counted." in patient
    assert "18 s of 20 s, each hold up to the seconds asked" in therapist


def test_what_is_said_of_the_figures_is_said_of_those_on_the_page_alone(qtbot: QtBot) -> None:
    patient, _ = told(qtbot, hold(1, 111.0))
    assert "middle of the holds" in patient
    assert "arm against the trunk" in patient
    for of_other_exercises in ("thumb", "forearm", "chest"):
        assert of_other_exercises not in patient


@pytest.mark.parametrize("because", list(SessionEnd))
@pytest.mark.parametrize("saved_at", [None, "/home/rosa/Sessions"])
def test_only_what_was_saved_is_said_to_be_kept(
    qtbot: QtBot, because: SessionEnd, saved_at: str | None
) -> None:
    page = SummaryPage()
    qtbot.addWidget(page)
    page.show()
    page.show_outcome(replace(outcome(because), saved_at=saved_at))
    assert ("Nothing was saved." in shown_on(page)) == (saved_at is None)
    if saved_at is None:
        assert "kept" not in shown_on(page)


def test_the_same_is_said_in_german(qtbot: QtBot) -> None:
    create_application(["test"], language="de")
    try:
        patient, therapist = told(qtbot, hold(1, 111.0, 12.0), hold(2, 125.0, 8.0))
    finally:
        create_application(["test"], language="en")
    assert texts.language() == "en"
    assert "18 von 20 s gehalten" in patient
    assert "die Mitte dazwischen" in patient
    assert "jedes Halten höchstens bis zur verlangten Zeit" in therapist
    assert re.search(r"^118° ± \d+°", patient, re.MULTILINE)
