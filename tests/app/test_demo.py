"""The whole job on the sample clip: what ``coach demo`` leaves is true and agrees with itself."""

from __future__ import annotations

import io
import itertools
import json
import wave
from pathlib import Path

import numpy as np
import pytest
from pypdf import PdfReader

from coach.domain.progress import EndedBecause
from coach.domain.session import SessionEnd
from coach.storage.session_file import read_session
from tests.app.conftest import DemoRun, truth
from tests.tracing import calls_beyond

NAME = "flexion_right_three_holds"


def session_file(demo: DemoRun) -> Path:
    (path,) = demo.folder.glob("*.shoulder.zip")
    return path


def test_the_session_file_holds_what_the_clip_holds(demo: DemoRun) -> None:
    stored = read_session(session_file(demo))
    (exercise,) = stored.document.exercises
    assert stored.document.ended_because is SessionEnd.COMPLETED
    assert exercise.ended_because is SessionEnd.COMPLETED
    assert (exercise.pain_before, exercise.pain_after) == (2, 2)
    holds = truth(NAME)["holds"]
    assert len(exercise.repetitions) == len(holds)
    for repetition, hold in zip(exercise.repetitions, holds, strict=True):
        assert repetition.ended_because is EndedBecause.COMPLETED
        assert repetition.held_s == pytest.approx(hold["held_s"], abs=0.7)
        assert abs(repetition.value - hold["value_deg"]) <= repetition.error
    starts = np.diff([repetition.start_s for repetition in exercise.repetitions])
    assert starts == pytest.approx(np.diff([hold["start_s"] for hold in holds]), abs=0.5)
    assert len(stored.landmarks.time_s) > 300


def test_the_countdown_is_spoken_at_its_time(demo: DemoRun) -> None:
    said = json.loads((demo.folder / "speech.json").read_text("utf-8"))
    repetitions = read_session(session_file(demo)).document.exercises[0].repetitions
    fives = [entry for entry in said if entry["key"] == "number.5"]
    assert len(fives) == len(repetitions)
    for entry, repetition in zip(fives, repetitions, strict=True):
        # Of a hold of seven seconds five are left two seconds after it began.
        assert entry["start_s"] == pytest.approx(repetition.start_s + 2.0, abs=0.15)
    for before, after in itertools.pairwise(said):
        assert before["end_s"] <= after["start_s"] + 0.011
    order = [entry["key"] for entry in said]
    assert order.index("stage.welcome") < order.index("stage.pain-before") < order.index("hold")
    assert order.index("rest") < order.index("stage.pain-after") < order.index("stage.finished")


def test_the_sound_is_where_the_words_are(demo: DemoRun) -> None:
    said = json.loads((demo.folder / "speech.json").read_text("utf-8"))
    with wave.open(io.BytesIO((demo.folder / "speech.wav").read_bytes())) as file:
        rate_hz = file.getframerate()
        samples = np.frombuffer(file.readframes(file.getnframes()), np.int16)
    loud = np.abs(samples.astype(np.float64)) > 300
    spoken = np.zeros(len(samples), dtype=bool)
    for entry in said:
        piece = slice(int(entry["start_s"] * rate_hz), int(entry["end_s"] * rate_hz))
        assert loud[piece].mean() > 0.2, entry["text"]
        spoken[max(0, piece.start - 500) : piece.stop + 500] = True
    assert not loud[~spoken].any()


def test_the_report_says_the_same_numbers(demo: DemoRun) -> None:
    (page,) = demo.folder.glob("*_report.pdf")
    pages = PdfReader(page).pages
    assert len(pages) == 1
    text = " ".join(pages[0].extract_text().split())
    values = [r.value for r in read_session(session_file(demo)).document.exercises[0].repetitions]
    assert f"{np.median(values):.0f}°" in text
    assert "3 completed of 3" in text
    assert "Humerothoracic" in text
    assert (demo.folder / "chart_flexion_right.png").read_bytes().startswith(b"\x89PNG")


def test_what_is_printed_stands_beside_the_truth(demo: DemoRun) -> None:
    for hold in truth(NAME)["holds"]:
        assert f"{hold['held_s']:.1f} s" in demo.printed
        assert f"{hold['value_deg']:.1f}°" in demo.printed


def test_nothing_reaches_out_of_the_machine(demo: DemoRun) -> None:
    if demo.trace is None:
        pytest.skip("strace is not installed or not allowed")
    assert calls_beyond(demo.trace) == []
