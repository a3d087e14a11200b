"""Frames from a video file, with the stamps of its container."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Literal

from coach.capture.devices import Picture, VideoReader
from coach.domain.fault import Fault
from coach.domain.frame import Frame
from coach.texts import localised, translate

FALLBACK_FRAMES_PER_S = 30.0
"""Assumed where a file has neither stamps nor a rate."""

MAX_FRAMES = 1_000_000
"""Of a file: nine hours at 30 pictures a second, of which the points alone take 2 GB."""

_ENDS_EARLY_FRACTION = 0.9
_ENDS_EARLY_S = 0.5


class VideoFile:
    """A video file as a ``FrameSource``; it can be iterated once.

    Stamps are seconds from the first picture, as the container gives them, so that variable
    frame rates keep their times. Where a stamp does not advance, the frame is put half a mean
    frame time after the one before. Where the container has no stamps at all, frames are counted
    at its mean rate and ``notes`` says so.
    """

    kind: Literal["file"] = "file"
    frames_lost: int = 0

    def __init__(self, name: str, reader: VideoReader) -> None:
        """Read the first two pictures; ``name`` is what messages call the file."""
        self._name = name
        self._reader = reader
        self._closed = False
        self.notes: list[str] = []
        """Sentences about the file that a person should know; complete when it has ended."""
        self.frame_count = reader.frame_count
        self.frames_per_s = reader.frames_per_s
        self._ahead: list[tuple[Picture, float]] = []
        for _ in range(2):
            if (read := reader.read()) is not None:
                self._ahead.append(read)
        if not self._ahead:
            self.close()
            raise Fault(
                translate(
                    "faults",
                    "'{name}' holds no picture that can be read; copy it again from "
                    "where it was recorded, or choose another video.",
                ).format(name=name)
            )
        height, width = self._ahead[0][0].shape[:2]
        self.size_px = (width, height)
        self._stamped = len(self._ahead) < 2 or self._ahead[1][1] > self._ahead[0][1]
        if not self._stamped:
            self.notes.append(
                translate(
                    "faults",
                    "'{name}' does not say when its pictures were taken; {rate:g} pictures a"
                    " second are assumed, and every time rests on that.",
                ).format(name=name, rate=self._rate)
            )

    @property
    def _rate(self) -> float:
        return self.frames_per_s or FALLBACK_FRAMES_PER_S

    def __iter__(self) -> Iterator[Frame]:
        """Yield the frames in the order of their stamps."""
        index, last_s = 0, -1.0
        while not self._closed:
            read = self._ahead.pop(0) if self._ahead else self._reader.read()
            if read is None:
                self._note_early_end(index, last_s)
                return
            if index == MAX_FRAMES:  # it said that it had fewer
                self.notes.append(
                    translate(
                        "faults",
                        "'{name}' has more than {most:,} pictures; the first of them were used, so "
                        "cut it into shorter pieces.",
                    ).format(name=self._name, most=MAX_FRAMES)
                )
                return
            picture, stamp_s = read
            time_s = stamp_s if self._stamped else index / self._rate
            if index and time_s <= last_s:
                time_s = last_s + 0.5 / self._rate
            yield Frame(index=index, time_s=time_s, image_rgb=picture)
            index, last_s = index + 1, time_s

    def close(self) -> None:
        """Close the file; may be called twice."""
        if not self._closed:
            self._closed = True
            self._ahead = []
            self._reader.release()

    def _note_early_end(self, frames: int, last_s: float) -> None:
        if self.frame_count is None or not self.frames_per_s or frames >= self.frame_count:
            return
        promised_s, given_s = self.frame_count / self.frames_per_s, last_s + 1 / self._rate
        if given_s < _ENDS_EARLY_FRACTION * promised_s and promised_s - given_s > _ENDS_EARLY_S:
            self.notes.append(
                translate(
                    "faults",
                    "'{name}' ends after {given} s although it promises {promised} s; it may be "
                    "cut off, and what it holds was used.",
                ).format(
                    name=self._name,
                    given=localised(f"{given_s:.1f}"),
                    promised=localised(f"{promised_s:.1f}"),
                )
            )
