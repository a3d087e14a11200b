"""Speech laid out in time, to be measured and written as a WAV."""

from __future__ import annotations

import io
import wave
from dataclasses import dataclass, replace
from typing import Final, TypedDict

import numpy as np
from numpy.typing import NDArray

from coach.domain.cue import Cue
from coach.voice.sound import Sound

FADE_S: Final = 0.010
"""An interrupted sound fades out this fast: no click, and gone before the next one."""
SILENT_RATE_HZ: Final = 22_050
"""Rate of a time line on which nothing sounded."""


@dataclass(frozen=True, slots=True)
class Placed:
    """A cue on the time line, in seconds; ``sound`` is None where there was no voice."""

    start_s: float
    end_s: float
    cue: Cue
    sound: Sound | None
    interrupted: bool = False


class Entry(TypedDict):
    """One line of the time line as JSON holds it, in seconds from its start."""

    start_s: float
    end_s: float
    due_s: float
    key: str
    text: str
    caption: str
    interrupted: bool


class Timeline:
    """What was said when; ``origin_s`` is where its seconds count from."""

    def __init__(self, origin_s: float = 0.0) -> None:
        """Start empty."""
        self.origin_s = origin_s
        self._placed: list[Placed] = []

    @property
    def placed(self) -> tuple[Placed, ...]:
        """Everything said, in order; times as they were given."""
        return tuple(self._placed)

    def add(self, start_s: float, sound: Sound | None, cue: Cue, seconds: float = 0.0) -> None:
        """Lay a cue down; one that still sounds is cut off there.

        ``seconds`` is how long it takes without a sound. Raises ``ValueError`` for a start before
        the last one.
        """
        if self._placed:
            last = self._placed[-1]
            if start_s < last.start_s:
                raise ValueError(f"{start_s} s comes before {last.start_s} s on the time line")
            if start_s < last.end_s:
                self._placed[-1] = replace(last, end_s=start_s, interrupted=True)
        end_s = start_s + (sound.seconds if sound else seconds)
        self._placed.append(Placed(start_s, end_s, cue, sound))


def timeline_entries(timeline: Timeline) -> list[Entry]:
    """List what was said when."""
    return [
        Entry(
            start_s=round(placed.start_s - timeline.origin_s, 4),
            end_s=round(placed.end_s - timeline.origin_s, 4),
            due_s=round(placed.cue.time_s - timeline.origin_s, 4),
            key=placed.cue.key,
            text=placed.cue.spoken,
            caption=placed.cue.caption,
            interrupted=placed.interrupted,
        )
        for placed in timeline.placed
    ]


def wav_bytes(timeline: Timeline, until_s: float | None = None) -> bytes:
    """Render the time line as a WAV file: mono, 16 bit, from ``origin_s`` on.

    It ends with the last word, or with silence at ``until_s`` where that is later. What sounded
    before ``origin_s`` is left out.
    """
    rates = {placed.sound.rate_hz for placed in timeline.placed if placed.sound}
    if len(rates) > 1:
        raise ValueError(f"sounds of different rates on one time line: {sorted(rates)} Hz")
    rate_hz = rates.pop() if rates else SILENT_RATE_HZ
    ends_s = [timeline.origin_s, *(placed.end_s for placed in timeline.placed)]
    length_s = max(*ends_s, until_s or timeline.origin_s) - timeline.origin_s
    track = np.zeros(round(length_s * rate_hz), np.int16)
    for placed in timeline.placed:
        samples = _heard(placed)
        start = round((placed.start_s - timeline.origin_s) * rate_hz)
        samples = samples[max(-start, 0) :][: max(len(track) - max(start, 0), 0)]
        track[max(start, 0) : max(start, 0) + len(samples)] = samples
    written = io.BytesIO()
    with wave.open(written, "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(rate_hz)
        file.writeframes(track.astype("<i2").tobytes())
    return written.getvalue()


def _heard(placed: Placed) -> NDArray[np.int16]:
    """Cut a sound where it was interrupted, fading its last milliseconds."""
    if placed.sound is None:
        return np.zeros(0, np.int16)
    if not placed.interrupted:
        return placed.sound.samples
    rate_hz = placed.sound.rate_hz
    samples = placed.sound.samples[: round((placed.end_s - placed.start_s) * rate_hz)]
    fade = min(round(FADE_S * rate_hz), len(samples))
    gain = np.ones(len(samples))
    gain[len(samples) - fade :] = np.linspace(1.0, 0.0, fade)
    return np.round(samples * gain).astype(np.int16)
