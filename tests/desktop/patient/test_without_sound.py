"""Whoever hears nothing reads it, and whoever sees nothing hears it."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PyQt6.QtGui import QColor, QImage
from PyQt6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from coach import texts
from coach.catalogue import When, safety
from coach.cues import Happening, Rules, advance
from coach.cues.language import languages
from coach.desktop.patient.caption import Caption
from coach.desktop.patient.speech import Speech
from coach.desktop.patient.window import PatientWindow
from coach.desktop.shared.looks import colours
from coach.domain.agenda import AgendaItem
from coach.domain.fault import Fault
from coach.domain.moment import Stage
from coach.voice.sound import Sound
from coach.voice.speaker import Speaker

from .scripted import PLAN, ScriptedCoaching, ScriptedSource
from .test_access import PAGES
from .test_speech import tone


class Listening:
    """A voice that remembers what it was given to say."""

    def __init__(self) -> None:
        self.heard: list[str] = []

    def speak(self, text: str) -> Sound:
        if text not in self.heard:
            self.heard.append(text)
        return tone()


class Silent:
    """Outputs that are not there."""

    def __init__(self, *_: object, **__: object) -> None:
        raise Fault("There is no sound here, captions go on.")


@pytest.fixture
def voice() -> Listening:
    return Listening()


@pytest.fixture
def window(
    app: QApplication, qtbot: QtBot, voice: Listening, monkeypatch: pytest.MonkeyPatch
) -> Iterator[PatientWindow]:
    monkeypatch.setattr("coach.desktop.patient.speech.Loudspeaker", Silent)
    made = PatientWindow(PLAN, ScriptedSource, lambda source: ScriptedCoaching(), Speaker(voice))
    made._started = True  # the pages are fed by hand
    qtbot.addWidget(made)
    made.show()
    yield made
    made.close()


def shown(window: PatientWindow) -> list[str]:
    captions = window.findChildren(Caption)
    return [caption.accessibleName() for caption in captions if caption.isVisible()]


@pytest.mark.parametrize("page", ["first", *PAGES])
def test_what_is_said_is_read_on_every_page(window: PatientWindow, page: str) -> None:
    if page != "first":
        window.pages.cautions.read_button.click()
        window.pages.welcome.weeks_button.setVisible(True)
        if page == "weeks":
            pytest.skip("there is no diary here; it has the bar of every page of leaves")
        PAGES[page](window)
    QApplication.processEvents()
    window.captions.say("Hold on a little longer")
    assert shown(window) == ["Hold on a little longer"]
    window.captions.note("There is no sound.")
    noted = [c for c in window.findChildren(Caption) if c.isVisible()]
    assert [c.accessibleDescription() for c in noted] == ["There is no sound."]


def test_every_sentence_of_a_whole_language_has_a_caption() -> None:
    for code, each in languages().items():
        if not each.begun:
            bare = [key for key, (_, caption) in each.sentences.items() if not caption.strip()]
            assert bare == [], code


READ = (When.BEFORE_START, When.STOP_NOW, When.RING_THE_PRACTICE, When.EMERGENCY)
NEEDS_THE_PERSON = [stage for stage in Stage if stage is not Stage.EXERCISE]


@pytest.mark.parametrize("stage", NEEDS_THE_PERSON)
def test_every_stage_that_waits_for_the_person_is_told_aloud(stage: Stage) -> None:
    entered = Happening(
        time_s=10.0,
        stage=stage,
        planned=PLAN.exercises[0],
        item=AgendaItem(0, PLAN.exercises[0]),
    )
    _, said = advance(Rules(), entered)
    assert any(cue.spoken.strip() for cue in said)


def speech_of(window: PatientWindow) -> Speech:
    assert window._speech is not None
    return window._speech


def wait_for(qtbot: QtBot, voice: Listening, words: str) -> None:
    qtbot.waitUntil(lambda: any(words in heard for heard in voice.heard), timeout=20_000)


def test_a_camera_that_fails_is_told_aloud_before_any_picture(
    window: PatientWindow, qtbot: QtBot, voice: Listening
) -> None:
    speech_of(window).start(system_voice=False)
    window._fail("No camera answers.")
    wait_for(qtbot, voice, "No camera answers.")
    assert window.banner.sentence.isVisible()
    assert window.banner.sentence.text() == "No camera answers."


def test_cautions_are_read_aloud_and_no_further_than_they_are_shown(
    window: PatientWindow, qtbot: QtBot, voice: Listening
) -> None:
    speech = speech_of(window)
    speech.start(system_voice=False)
    window.pages.cautions.aloud_button.click()
    last = window.pages.cautions.emergency.spoken
    wait_for(qtbot, voice, "Ask first if")
    window.pages.cautions.read_button.click()
    assert speech._speaker.quiet(speech._present_s())
    assert last not in voice.heard


def test_all_of_the_cautions_is_read(window: PatientWindow, voice: Listening) -> None:
    speech = speech_of(window)
    window.pages.cautions.aloud_button.click()
    now_s = speech._present_s()
    for _ in range(4000):
        now_s += 0.1
        speech._speaker.tick(now_s)
    assert " ".join(voice.heard) == window.pages.cautions.words
    rules = [texts.of(rule.text) for when in When for rule in safety().when(when) if when in READ]
    assert len(rules) > 10
    assert all(rule.rstrip(".") in window.pages.cautions.words for rule in rules)


def test_a_note_leaves_room_for_words_in_a_narrow_place(app: QApplication, qtbot: QtBot) -> None:
    def painted(words: str) -> QImage:
        window = QWidget()
        qtbot.addWidget(window)
        window.resize(1280, 800)
        caption = Caption(window)
        caption.setGeometry(0, 0, 215, 240)
        caption.show_note("A sentence that goes on and on, " * 4)
        caption.show_words(words)
        return caption.grab().toImage()

    with_words, without = painted("Raise your good hand, or press Space, to begin"), painted("")
    ink = QColor(colours().stage_ink)
    bright = [y for y in range(240) for x in range(215) if with_words.pixelColor(x, y) == ink]
    assert max(bright) - min(bright) > 60, "in lines that can be read"
    assert max(bright) < 120, "above the note"
    top = {without.pixelColor(x, y).name() for y in range(3) for x in range(215)}
    assert top == {QColor(colours().stage).name()}, "nothing is cut off at the top"
