"""Where there is no sound, what is said is read from three metres."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator

import numpy as np
import pytest
from PyQt6.QtCore import QRect
from PyQt6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from coach import texts
from coach.catalogue import catalogue
from coach.cues.language import languages
from coach.desktop.patient.controls import KeyButton
from coach.desktop.patient.loudspeaker import no_sound
from coach.desktop.patient.text_block import LEAST
from coach.desktop.patient.window import PatientWindow
from coach.desktop.shared.application import create_application
from coach.desktop.shared.looks import colours
from coach.domain.moment import Asked, Stage
from coach.domain.session import SessionEnd
from coach.domain.settings import Settings

from .scripted import ScriptedCoaching, ScriptedSource
from .test_pages import feed, near, pixels
from .test_programme_pages import HARD, ITEMS, MEASURED, PLAN, moment, outcome

DISTANCE_MM = 3000.0
DIAGONAL_MM = 15.6 * 25.4
"""A common laptop's; common practice."""
LEAST_ARCMIN = 16.0
"""ISO 9241-303, least height of Latin capitals; from memory."""
SIZES = [(1280, 800), (1920, 1080)]
LOOKS = [("en", 100), ("en", 200), ("de", 100), ("de", 200)]
SAID = {
    "pain": ("pain-before", "pain-by-hand", "pain-chosen", "pain-unanswered", "pain.10"),
    "offer": ("offer",),
    "summary": ("finished", "finished-caution", "pain-stop", "pain-limit"),
}
PAGES: dict[str, Callable[[PatientWindow], object]] = {
    "pain": lambda w: feed(w, moment(MEASURED, Stage.PAIN_BEFORE, asked=Asked(offered=3))),
    "offer": lambda w: feed(w, moment(HARD, Stage.OFFER)),
    "summary": lambda w: w._finish(outcome(SessionEnd.COMPLETED)),
}


def arcmin(height_px: float, size: tuple[int, int]) -> float:
    """Angle under which ``height_px`` is seen on a screen that shows ``size`` pixels."""
    height_mm = height_px * DIAGONAL_MM / math.hypot(*size)
    return math.degrees(math.atan(height_mm / DISTANCE_MM)) * 60


@pytest.fixture(params=LOOKS, ids=lambda look: f"{look[0]}-{look[1]}")
def language(request: pytest.FixtureRequest, qapp: QApplication) -> Iterator[str]:
    code, percent = request.param
    create_application(["test"], settings=Settings(text_percent=percent), language=code)
    yield code
    create_application(["test"], language="en")


@pytest.fixture(params=SIZES, ids=["small", "large"])
def window(request: pytest.FixtureRequest, language: str, qtbot: QtBot) -> PatientWindow:
    made = PatientWindow(
        PLAN, ScriptedSource, lambda source: ScriptedCoaching(), agenda=ITEMS, cautions_read=True
    )
    made._started = True  # the pages are fed by hand
    qtbot.addWidget(made)
    made.resize(*request.param)
    made.show()
    made.captions.note(no_sound())
    return made


def capitals_px(window: PatientWindow) -> int:
    """Height of the lowest line of ink in the bar, of capitals alone."""
    rows = near(pixels(window.captions.bar), colours().stage_ink, 60).any(axis=1)
    edges = np.flatnonzero(np.diff(np.r_[0, rows.astype(int), 0]))
    return int(min(edges[1::2] - edges[::2]))


@pytest.mark.parametrize("page", PAGES)
def test_the_bar_is_read_from_three_metres(window: PatientWindow, language: str, page: str) -> None:
    PAGES[page](window)
    size = window.width(), window.height()
    for key in SAID[page]:
        _, caption = languages()[language].sentences[key]
        window.captions.say(caption.format(number=10))
        QApplication.processEvents()
        window.captions.bar.grab()
        type_px = window.captions.bar.type_px
        window.captions.bar.show_words("H" * 3, said=True)
        QApplication.processEvents()
        window.captions.bar.grab()
        capital_px = capitals_px(window) * type_px / window.captions.bar.type_px
        assert arcmin(capital_px, size) >= LEAST_ARCMIN, caption


SAID_AT_WORK = (
    "hold", "number.", "rest", "count", "again", "let-go", "lost-hold", "broken-hold", "sight.",
    "ease-off", "form.", "wrong-arm.", "slowly", "doubt.", "in-place", "timed-lead", "resumed",
    "paused", "signals", "exercise-number", "place.", "do.", "dose.", "arm.", "new-exercise",
)  # fmt: skip
FIGURES = dict.fromkeys(
    ("number", "count", "done", "asked", "next", "held_s", "hold_s", "repetitions"), 10
)
KEY_CAP, RING_PX = 1.08, 5
"""Height of the frame around a key's name, of its type; the ring of focus inside a button."""
AT_WORK: dict[str, Callable[[PatientWindow], object]] = {
    "prepare": lambda w: feed(w, moment(MEASURED, Stage.PREPARE)),
    "exercise": lambda w: feed(w, moment(MEASURED, Stage.EXERCISE)),
}


def said_at_work(code: str) -> set[str]:
    """Captions of getting ready and of exercising, of the introduction to every exercise too."""
    table = languages()[code].sentences.items()
    said = {words.format(**FIGURES) for key, (_, words) in table if key.startswith(SAID_AT_WORK)}
    for each in catalogue().by_name.values():
        told = texts.of(each.telling, code)
        said |= {told.title, told.laptop[1], told.short, *told.cautions, told.by_time or "H"}
    return said


@pytest.mark.parametrize("page", AT_WORK)
def test_captions_at_work_are_read_from_three_metres(
    window: PatientWindow, language: str, page: str
) -> None:
    AT_WORK[page](window)
    size = window.width(), window.height()
    bar = window.captions.bar
    window.captions.say("HHH")
    QApplication.processEvents()
    assert bar.isVisible()
    assert not getattr(window.pages, page).caption.isVisible()
    bar.grab()
    of_type = capitals_px(window) / bar.type_px
    for words in said_at_work(language):
        parts = bar.parts(words)
        assert " ".join(part.removesuffix(" \N{HORIZONTAL ELLIPSIS}") for part in parts) == words
        for part in parts:
            bar.show_words(part, said=True)
            bar.grab()
            assert arcmin(of_type * bar.type_px, size) >= LEAST_ARCMIN, part


@pytest.mark.parametrize("page", AT_WORK)
def test_with_a_bar_for_captions_the_rest_of_the_page_is_whole(
    window: PatientWindow, page: str
) -> None:
    size = window.size()
    AT_WORK[page](window)
    QApplication.processEvents()
    assert window.size() == size
    shown = getattr(window.pages, page)
    assert shown.picture.height() >= window.height() / 3
    for button in shown.findChildren(KeyButton):
        if button.isVisible():
            corner = button.mapTo(window, button.rect().topLeft())
            place = QRect(corner, button.size())
            assert window.rect().contains(place)
            assert not place.intersects(window.captions.bar.geometry()), button.text()
            _, type_px = button.lines()
            assert KEY_CAP * type_px <= button.height() - 2 * RING_PX, button.text()
            if page == "exercise":
                assert type_px >= LEAST * window.height(), button.text()
    window.captions.note("")
    QApplication.processEvents()
    assert shown.caption.isVisible()
    assert not window.captions.bar.isVisible()


def test_a_long_caption_is_shown_part_by_part(window: PatientWindow) -> None:
    AT_WORK["prepare"](window)
    bar, words = window.captions.bar, "Stop if the other arm hurts, and tell your practice. " * 3
    parts = bar.parts(words.strip())
    assert len(parts) > 1
    window.captions.say(words.strip())
    seen = [bar.accessibleName()]
    while bar.accessibleName():
        window.captions._age.timeout.emit()
        seen.append(bar.accessibleName())
    assert seen == [*parts, ""]


def test_the_note_comes_back_when_the_words_go(window: PatientWindow) -> None:
    PAGES["pain"](window)
    QApplication.processEvents()
    bar = window.captions.bar
    noted = pixels(bar)
    assert near(noted, colours().stage_soft, 30).any()
    window.captions.say("10")
    assert not near(pixels(bar), colours().stage_soft, 10).any()
    window.captions._take_away()
    assert np.array_equal(pixels(bar), noted)


def test_what_was_done_keeps_its_room_beside_the_bar(window: PatientWindow) -> None:
    PAGES["summary"](window)
    QApplication.processEvents()
    page = window.pages.summary
    assert page._scroll.height() >= window.height() / 3
    assert page.close_button.height() <= window.height() / 7
