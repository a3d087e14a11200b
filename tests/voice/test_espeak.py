import signal
import subprocess
import sys
import time
from pathlib import Path

import numpy as np
import pytest

from coach.cues.language import languages
from coach.domain.fault import Fault
from coach.voice.espeak import LONGEST, Voice, plain_text
from coach.voice.library import Library

NUMBERS = {
    "number": 1,
    "count": 2,
    "repetitions": 3,
    "hold_s": 30,
    "done": 1,
    "asked": 3,
    "next": 2,
    "held_s": 7,
}


EVERY = [(code, key) for code, language in languages().items() for key in language.sentences]


@pytest.fixture(scope="module")
def voice() -> Voice:
    return Voice()


@pytest.fixture(scope="module")
def voices() -> dict[str, Voice]:
    return {code: Voice(language.voice) for code, language in languages().items()}


@pytest.mark.parametrize(("language", "key"), EVERY)
def test_every_sentence_sounds_from_its_first_hundredth_second_and_is_not_clipped(
    voices: dict[str, Voice], language: str, key: str
) -> None:
    text = languages()[language].sentences[key][0].format_map(NUMBERS)
    sound = voices[language].speak(text)
    level = np.abs(sound.samples.astype(float))
    assert np.sqrt(np.mean(level**2)) > 1_000
    assert level.max() < 32_767
    assert level[: round(0.010 * sound.rate_hz)].max() > 300
    # From memory: speech runs at 3 to 7 syllables a second, about three letters each.
    assert len(text) / 25 < sound.seconds < 0.35 + len(text) / 10


@pytest.mark.parametrize("language", languages())
def test_the_seconds_are_short_enough_to_be_said_each_second(
    voices: dict[str, Voice], language: str
) -> None:
    said = [languages()[language].sentences[f"number.{n}"][0] for n in range(1, 6)]
    assert all(voices[language].speak(text).seconds < 0.8 for text in said)


def test_a_slower_voice_takes_longer_and_voices_do_not_disturb_each_other(voice: Voice) -> None:
    text = "Let your arm come back slowly."
    first = voice.speak(text).seconds
    slow = Voice(rate_wpm=110).speak(text).seconds
    assert slow > 1.2 * first
    assert Voice().speak(text).seconds == pytest.approx(first, rel=0.03)


@pytest.mark.parametrize(
    ("text", "plain"),
    [
        ("<speak><break time='9s'/>Hold.</speak>", "speak break time '9s' Hold. speak"),
        ("[[h@l'oU]] Hold\x00 on\n\tnow", "h l'oU Hold on now"),
        ("Gr\u00fc\u00df dich, e\u0301t\u00e9 \U0001f600!", "Gr\u00fc\u00df dich, \u00e9t\u00e9 !"),
        ("L\u2019\u00e9paule.", "L'\u00e9paule."),
        ("", ""),
    ],
)
def test_only_plain_words_reach_the_voice(text: str, plain: str) -> None:
    assert plain_text(text) == plain


def test_a_very_long_text_is_cut(voice: Voice) -> None:
    assert len(plain_text("arm " * 100_000)) <= LONGEST
    assert voice.speak("arm " * 100_000).seconds < 120


def test_nothing_to_say_is_silence(voice: Voice) -> None:
    assert voice.speak("\U0001f600").seconds == 0.0


def test_sounds_cannot_be_written_to(voice: Voice) -> None:
    with pytest.raises(ValueError, match="read-only"):
        voice.speak("Hold.").samples[0] = 1


def test_a_language_without_a_voice_is_a_fault_that_says_so() -> None:
    with pytest.raises(Fault, match=r"no voice for the language 'qq-zz'.*captions"):
        Voice("qq-zz")


def test_missing_voice_data_is_a_fault_that_says_where(tmp_path: Path) -> None:
    with pytest.raises(Fault, match=r"missing from .*data, so the coach goes on with captions"):
        Library(tmp_path / "libespeak-ng.so", tmp_path / "data")


def test_a_library_that_does_not_load_is_a_fault(tmp_path: Path) -> None:
    (tmp_path / "phontab").write_bytes(b"")
    broken = tmp_path / "libespeak-ng.so"
    broken.write_text("not a library")
    with pytest.raises(Fault, match=r"does not load .*captions"):
        Library(broken, tmp_path)


def test_ctrl_c_while_it_speaks_is_not_lost() -> None:
    speaks = (
        "from coach.voice.espeak import Voice\n"
        "print('ready', flush=True)\n"
        "n = 0\n"
        "while True:\n"
        "    Voice().speak(f'A long sentence that nobody has said before, number {n}.')\n"
        "    n += 1\n"
    )
    for _ in range(6):
        command = [sys.executable, "-c", speaks]
        running = subprocess.Popen(
            command, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True
        )
        assert running.stdout
        assert running.stdout.readline() == "ready\n"
        time.sleep(0.2)
        running.send_signal(signal.SIGINT)
        try:
            _, said = running.communicate(timeout=20)
        finally:
            running.kill()
        assert "KeyboardInterrupt" in said
        assert "ignored" not in said
