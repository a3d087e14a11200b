import io
import math
import wave
from collections.abc import Callable
from dataclasses import replace
from itertools import pairwise

import numpy as np
import pytest
from numpy.typing import NDArray

from coach.domain.cue import Cue, Urgency
from coach.domain.fault import Fault
from coach.domain.moment import Moment, Stage
from coach.domain.movement import Movement, Side
from coach.domain.plan import PlannedExercise
from coach.domain.progress import Phase
from coach.voice.espeak import Voice
from coach.voice.sound import Sound, Synthesizer
from coach.voice.speaker import Speaker
from coach.voice.timeline import Timeline, timeline_entries, wav_bytes

Coach = Callable[[object, Synthesizer | None], Timeline]
HOLD_START_S = 20.03
ENTRY_ROUNDING_S = 5e-5


@pytest.fixture(scope="module")
def voice() -> Voice:
    return Voice()


def loudness(wav: bytes) -> tuple[NDArray[np.float64], int]:
    """Give |samples| of a WAV and its rate."""
    with wave.open(io.BytesIO(wav)) as file:
        samples = np.frombuffer(file.readframes(file.getnframes()), "<i2")
        return np.abs(samples.astype(float)), file.getframerate()


def onset_s(level: NDArray[np.float64], rate_hz: int, after_s: float) -> float:
    """Find the first sound at or after a time."""
    start = round(after_s * rate_hz)
    return after_s + float(np.argmax(level[start:] > 500)) / rate_hz


@pytest.mark.parametrize("rate_hz", [10.0, 15.0, 29.97, 60.0])
def test_the_countdown_is_heard_within_150_ms_of_true_time(
    exercise: Callable[..., object], coach: Coach, voice: Voice, rate_hz: float
) -> None:
    played = exercise(hold_s=30.0, starts_s=[HOLD_START_S], end_s=60.0, rate_hz=rate_hz)
    level, wav_hz = loudness(wav_bytes(coach(played, voice)))
    for left_s in (15.0, 10.0, 5.0, 4.0, 3.0, 2.0, 1.0, 0.0):
        true_s = HOLD_START_S + 30.0 - left_s
        heard_s = onset_s(level, wav_hz, true_s - 0.15)
        assert 0.0 <= heard_s - true_s <= 0.15, f"{left_s:g} s left"


def test_a_hold_of_30_s_as_it_is_heard(
    exercise: Callable[..., object], coach: Coach, voice: Voice
) -> None:
    timeline = coach(exercise(hold_s=30.0, starts_s=[HOLD_START_S], end_s=70.0), voice)
    entries = timeline_entries(timeline)
    level, wav_hz = loudness(wav_bytes(timeline, until_s=70.0))
    assert len(level) == 70 * wav_hz
    sounding = np.zeros(len(level), bool)
    slack = math.ceil(ENTRY_ROUNDING_S * wav_hz)
    for entry in entries:
        start, end = round(entry["start_s"] * wav_hz), round(entry["end_s"] * wav_hz)
        assert np.sqrt(np.mean(level[start:end] ** 2)) > 1_000, entry["text"]
        sounding[max(start - slack, 0) : end + slack] = True
    assert not level[~sounding].any()
    assert [entry["key"] for entry in entries] == [
        "stage.place",
        "stage.do",
        "stage.dose",
        "in-place",
        "hold",
        "number.halfway",
        *(f"number.{n}" for n in (10, 5, 4, 3, 2, 1)),
        "rest",
        "count-only",
        "stage.pain-after",
        "stage.pain-by-hand",
    ]
    assert all(b["start_s"] >= a["end_s"] for a, b in pairwise(entries))


def test_no_number_is_said_while_the_clock_stands(
    exercise: Callable[..., object], coach: Coach, voice: Voice
) -> None:
    played = exercise(hold_s=20.0, starts_s=[30.0], end_s=70.0, unseen_s=[(44.0, 49.0)])
    entries = timeline_entries(coach(played, voice))
    during = [entry["key"] for entry in entries if 44.0 <= entry["start_s"] < 49.0]
    assert during == ["sight.lost", "correct.arm-out-of-view"]
    five = next(entry for entry in entries if entry["key"] == "number.5")
    assert five["start_s"] == pytest.approx(30.0 + 15.0 + 5.0, abs=0.05)


def test_an_early_let_go_ends_the_countdown(
    exercise: Callable[..., object], coach: Coach, voice: Voice
) -> None:
    played = exercise(hold_s=12.0, starts_s=[30.0, 50.0], let_go_s={1: 38.5}, end_s=70.0)
    entries = timeline_entries(coach(played, voice))
    first = [entry["key"] for entry in entries if 30.0 <= entry["start_s"] < 50.0]
    assert first == ["hold", "number.10", "number.5", "number.4", "let-go"]


def test_without_a_voice_the_captions_come_in_the_same_order(
    exercise: Callable[..., object], coach: Coach, voice: Voice
) -> None:
    played = exercise(hold_s=15.0, starts_s=[30.0, 60.0], end_s=90.0)
    silent, spoken = coach(played, None), coach(played, voice)
    assert [p.cue for p in silent.placed] == [p.cue for p in spoken.placed]
    assert not loudness(wav_bytes(silent))[0].any()


class BrokenVoice:
    def speak(self, text: str) -> Sound:
        raise Fault(f"The voice could not say '{text}'.")


def test_a_voice_that_fails_is_told_once_and_captions_go_on() -> None:
    speaker = Speaker(BrokenVoice())
    speaker.offer([Cue(0.0, 1.0, Urgency.NORMAL, "hold", "Hold.", "Hold")])
    utterance = speaker.tick(0.0)
    assert utterance is not None
    assert (utterance.sound, utterance.cue.caption) == (None, "Hold")
    assert utterance.seconds > 0
    assert "could not say" in str(speaker.fault)


def test_an_output_that_ends_sooner_makes_room_sooner() -> None:
    speaker = Speaker(None)
    long = Cue(0.0, 9.0, Urgency.NORMAL, "long", "A rather long sentence to be said.", "")
    speaker.offer([long, Cue(0.0, 9.0, Urgency.NORMAL, "next", "Next.", "")])
    assert speaker.tick(0.0) is not None
    speaker.finished(0.5)
    assert speaker.tick(0.6) is None, "one breath between sentences"
    utterance = speaker.tick(0.9)
    assert utterance is not None
    assert (utterance.cue.key, utterance.interrupts) == ("next", False)


def test_what_is_urgent_stops_what_sounds() -> None:
    speaker = Speaker(None)
    speaker.offer([Cue(0.0, 9.0, Urgency.NORMAL, "long", "A rather long sentence.", "")])
    speaker.tick(0.0)
    speaker.offer([Cue(0.5, 2.0, Urgency.URGENT, "ease-off", "Ease off.", "Ease off")])
    utterance = speaker.tick(0.5)
    assert utterance is not None
    assert utterance.interrupts


def test_an_instruction_is_not_begun_where_it_would_run_into_a_number() -> None:
    planned = PlannedExercise(movement=Movement.ABDUCTION, side=Side.LEFT, hold_s=30, repetitions=3)
    long = Cue(100.0, 110.0, Urgency.NORMAL, "long", "x" * 40, "")
    holding = Moment(
        time_s=100.0,
        stage=Stage.EXERCISE,
        exercise_index=0,
        planned=planned,
        following=None,
        phase=Phase.HOLDING,
        remaining_s=11.0,
        cues=(long,),
    )
    speaker = Speaker(None)
    speaker.hear(holding)
    assert speaker.tick(100.0) is None, "ten is due at 101"
    speaker.hear(replace(holding, time_s=101.1, remaining_s=9.9, cues=()))
    utterance = speaker.tick(101.1)
    assert utterance is not None
    assert utterance.cue is long
