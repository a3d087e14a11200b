import io
import json
import wave

import numpy as np
import pytest
from numpy.typing import NDArray

from coach.domain.cue import Cue, Urgency
from coach.voice.sound import Sound
from coach.voice.timeline import Timeline, timeline_entries, wav_bytes

RATE_HZ = 8_000


def tone(seconds: float, rate_hz: int = RATE_HZ) -> Sound:
    time_s = np.arange(round(seconds * rate_hz)) / rate_hz
    wave_ = 10_000 * np.cos(2 * np.pi * 400 * time_s)
    return Sound(wave_.astype(np.int16), rate_hz)


def cue(time_s: float) -> Cue:
    return Cue(time_s, time_s + 1, Urgency.NORMAL, "key", "Said.", "Shown")


def read(wav: bytes) -> NDArray[np.float64]:
    with wave.open(io.BytesIO(wav)) as file:
        assert (file.getnchannels(), file.getsampwidth(), file.getframerate()) == (1, 2, RATE_HZ)
        return np.frombuffer(file.readframes(file.getnframes()), "<i2").astype(float)


def at(track: NDArray[np.float64], start_s: float, end_s: float) -> NDArray[np.float64]:
    return np.abs(track[round(start_s * RATE_HZ) : round(end_s * RATE_HZ)])


def test_sounds_lie_where_they_were_laid_and_silence_elsewhere() -> None:
    timeline = Timeline(origin_s=100.0)
    timeline.add(100.5, tone(0.5), cue(100.5))
    timeline.add(102.0, tone(0.25), cue(102.0))
    track = read(wav_bytes(timeline, until_s=103.0))
    assert len(track) == 3 * RATE_HZ
    assert at(track, 0.5, 1.0).max() == at(track, 2.0, 2.25).max() == 10_000
    assert not at(track, 0.0, 0.5).any()
    assert not at(track, 1.0, 2.0).any()
    assert not at(track, 2.25, 3.0).any()


def test_the_last_word_is_heard_to_its_end() -> None:
    timeline = Timeline()
    timeline.add(1.0, tone(0.5), cue(1.0))
    assert len(read(wav_bytes(timeline, until_s=1.2))) == 1.5 * RATE_HZ


def test_an_interrupted_sound_fades_out_before_the_next_begins() -> None:
    timeline = Timeline()
    timeline.add(0.0, tone(2.0), cue(0.0))
    timeline.add(1.0, Sound(np.zeros(RATE_HZ, np.int16), RATE_HZ), cue(1.0))
    track = read(wav_bytes(timeline))
    assert at(track, 0.0, 0.99).max() == 10_000
    assert at(track, 0.995, 1.0).max() < 6_000
    assert not at(track, 1.0, 2.0).any()
    assert [entry["interrupted"] for entry in timeline_entries(timeline)] == [True, False]
    assert timeline_entries(timeline)[0]["end_s"] == 1.0


def test_entries_are_json_in_seconds_from_the_origin() -> None:
    timeline = Timeline(origin_s=50.0)
    timeline.add(51.0, None, cue(50.9), seconds=2.0)
    assert json.loads(json.dumps(timeline_entries(timeline))) == [
        {
            "start_s": 1.0,
            "end_s": 3.0,
            "due_s": 0.9,
            "key": "key",
            "text": "Said.",
            "caption": "Shown",
            "interrupted": False,
        }
    ]


def test_what_sounded_before_the_origin_is_left_out() -> None:
    timeline = Timeline(origin_s=10.0)
    timeline.add(9.5, tone(1.0), cue(9.5))
    track = read(wav_bytes(timeline))
    assert len(track) == 0.5 * RATE_HZ
    assert at(track, 0.0, 0.5).max() == 10_000


def test_an_empty_time_line_is_an_empty_wav() -> None:
    with wave.open(io.BytesIO(wav_bytes(Timeline()))) as file:
        assert file.getnframes() == 0


def test_what_cannot_be_laid_down_is_refused() -> None:
    timeline = Timeline()
    timeline.add(1.0, tone(0.5), cue(1.0))
    with pytest.raises(ValueError, match="comes before"):
        timeline.add(0.5, tone(0.5), cue(0.5))
    timeline.add(2.0, tone(0.5, rate_hz=16_000), cue(2.0))
    with pytest.raises(ValueError, match="different rates"):
        wav_bytes(timeline)
