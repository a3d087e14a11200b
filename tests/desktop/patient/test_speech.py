"""What is heard and captioned, with whatever output there is."""

import sys
from dataclasses import replace
from typing import ClassVar

import numpy as np
import pytest
from PyQt6.QtCore import QObject, pyqtSignal
from PyQt6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from coach.desktop.patient.loudspeaker import Loudspeaker, fitted
from coach.desktop.patient.speech import Speech
from coach.desktop.patient.system_voice import SystemVoice
from coach.domain.cue import Cue, Urgency
from coach.domain.fault import Fault
from coach.domain.moment import Moment, Stage
from coach.voice.sound import Sound
from coach.voice.speaker import Speaker

MOMENT = Moment(0.0, Stage.WELCOME, 0, None, None)
RATE_HZ = 22_050


def tone(seconds: float = 0.3) -> Sound:
    at_s = np.arange(round(seconds * RATE_HZ)) / RATE_HZ
    return Sound((8000 * np.sin(2 * np.pi * 440 * at_s)).astype(np.int16), RATE_HZ)


class ToneVoice:
    def speak(self, text: str) -> Sound:
        return tone()


def cue(words: str, time_s: float = 0.0, stale_s: float = 60.0) -> Cue:
    return Cue(time_s, stale_s, Urgency.NORMAL, f"test.{words}", words, words.upper())


@pytest.fixture
def no_output(monkeypatch: pytest.MonkeyPatch) -> None:
    """A machine on which Qt's sound cannot even be imported."""
    monkeypatch.setitem(sys.modules, "PyQt6.QtMultimedia", None)


def test_without_sound_captions_go_on_and_it_is_said_once(
    app: QApplication, qtbot: QtBot, no_output: None
) -> None:
    said: list[str] = []
    muted: list[str] = []
    speech = Speech(Speaker(ToneVoice()), lambda: 1.0)
    speech.said.connect(said.append)
    speech.muted.connect(muted.append)
    speech.start(system_voice=False)
    speech.hear(replace(MOMENT, cues=(cue("lift"),)))
    qtbot.waitUntil(lambda: said == ["LIFT"], timeout=5000)
    assert len(muted) == 1
    assert "captions" in muted[0]
    speech.stop()


def test_nothing_is_said_before_it_is_due_or_after_it_is_stale(
    app: QApplication, qtbot: QtBot, no_output: None
) -> None:
    said: list[str] = []
    speech = Speech(Speaker(None), lambda: 5.0)
    speech.said.connect(said.append)
    speech.start(system_voice=False)
    late, early = cue("late", 1.0, 4.0), cue("early", 9.0, 12.0)
    speech.hear(replace(MOMENT, cues=(late, early, cue("now", 5.0, 8.0))))
    qtbot.waitUntil(lambda: bool(said), timeout=5000)
    qtbot.wait(100)
    assert said == ["NOW"]
    speech.stop()


def test_before_the_first_frame_nothing_is_said(
    app: QApplication, qtbot: QtBot, no_output: None
) -> None:
    said: list[str] = []
    speech = Speech(Speaker(None), lambda: None)
    speech.said.connect(said.append)
    speech.start(system_voice=False)
    speech.hear(replace(MOMENT, cues=(cue("lift"),)))
    qtbot.wait(100)
    assert said == []
    speech.stop()


class Output(QObject):
    """Stands in for the loudspeaker: there while ``plugged``, and told when it is pulled out."""

    silent = pyqtSignal()
    failed = pyqtSignal(str)
    plugged = True
    made: ClassVar[list["Output"]] = []

    def __init__(self, parent: QObject | None = None) -> None:
        if not Output.plugged:
            raise Fault("There is no sound output.")
        super().__init__(parent)
        self.played: list[Sound] = []
        Output.made.append(self)

    def play(self, sound: Sound) -> None:
        self.played.append(sound)

    def stop(self) -> None:
        pass


def test_an_output_that_was_pulled_out_speaks_again_when_it_is_back(
    app: QApplication, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("coach.desktop.patient.speech.Loudspeaker", Output)
    monkeypatch.setattr("coach.desktop.patient.speech.LOOK_MS", 10)
    monkeypatch.setattr(Output, "made", [])
    said: list[str] = []
    muted: list[str] = []
    now_s = [1.0]
    speech = Speech(Speaker(ToneVoice()), lambda: now_s[0])
    speech.said.connect(said.append)
    speech.muted.connect(muted.append)
    speech.start(system_voice=False)
    speech.hear(replace(MOMENT, cues=(cue("lift"),)))
    qtbot.waitUntil(lambda: said == ["LIFT"], timeout=5000)
    (first,) = Output.made
    assert len(first.played) == 1
    monkeypatch.setattr(Output, "plugged", False)
    first.failed.emit("There is no sound output.")
    now_s[0] = 3.0
    speech.hear(replace(MOMENT, cues=(cue("hold", 3.0),)))
    qtbot.waitUntil(lambda: said == ["LIFT", "HOLD"], timeout=5000)  # captions go on
    assert muted == ["There is no sound output."]
    monkeypatch.setattr(Output, "plugged", True)
    qtbot.waitUntil(lambda: len(Output.made) == 2, timeout=5000)
    assert muted == ["There is no sound output.", ""]
    now_s[0] = 6.0
    speech.hear(replace(MOMENT, cues=(cue("rest", 6.0),)))
    qtbot.waitUntil(lambda: said == ["LIFT", "HOLD", "REST"], timeout=5000)
    assert len(Output.made[1].played) == 1
    speech.stop()


def test_a_missing_sound_library_is_a_fault_with_words(app: QApplication, no_output: None) -> None:
    with pytest.raises(Fault, match="no sound output"):
        Loudspeaker()


def test_samples_keep_their_tone_at_another_rate() -> None:
    at_48k = fitted(tone(1.0), 48_000, 2)
    assert at_48k.shape == (48_000, 2)
    assert (at_48k[:, 0] == at_48k[:, 1]).all()
    spectrum = np.abs(np.fft.rfft(at_48k[:, 0].astype(float)))
    assert int(spectrum.argmax()) == 440


def test_samples_at_their_own_rate_are_untouched() -> None:
    sound = tone()
    assert (fitted(sound, RATE_HZ, 1) == sound.samples).all()


def test_a_system_voice_says_a_text_and_falls_silent(app: QApplication, qtbot: QtBot) -> None:
    voice = SystemVoice("en-GB", engine="mock")
    with qtbot.waitSignal(voice.silent, timeout=10_000):
        voice.say("Hold.")


def test_a_language_without_a_system_voice_is_refused(app: QApplication) -> None:
    with pytest.raises(Fault, match="no voice of its own"):
        SystemVoice("sw-KE", engine="mock")
