"""From what the program knows of each frame to the journal's entries."""

from __future__ import annotations

from coach.documents.landmarks import landmark_row
from coach.documents.readings import reading_row
from coach.domain.moment import Moment, Stage
from coach.session.entries import CameraCounts, Entry, LandmarkRows, ReadingRows

CHUNK_S = 1.0
"""Rows go out together about once a second: that is what may be lost when the power fails."""

LANDMARK_GAP_S = 0.1
"""Between two rows of landmarks. Ten a second draw a slow stretch smoothly, hold every hold, and
half an hour of them takes about 2.5 MB; every frame would not fit into 5 MB."""

_EARLY_S = 0.01
"""A frame this much early still counts as due, so that jitter at 30 and 60 Hz keeps the rate."""


class Recorder:
    """Collects rows while an exercise is measured and gives them out about once a second.

    Readings are kept at full rate, landmarks thinned. Between exercises nothing of the body is
    recorded. ``started_s`` is the frame stamp from which a session's times count.
    """

    def __init__(self, started_s: float) -> None:
        """Start with nothing collected."""
        self._started_s = started_s
        self._readings: list[str] = []
        self._landmarks: list[str] = []
        self._last_s = 0.0
        self._given_s = 0.0
        self._landmark_due_s = 0.0
        self._frames_seen = 0
        self._frames_lost = 0

    def note(self, moment: Moment, frames_lost: int = 0) -> tuple[Entry, ...]:
        """Take in one frame's outcome; ``frames_lost`` counts since the session's start."""
        time_s = round(max(self._last_s, moment.time_s - self._started_s), 3)
        self._last_s = time_s
        self._frames_seen += 1
        self._frames_lost = frames_lost
        if moment.stage is Stage.EXERCISE:
            planned = moment.planned
            if moment.reading is not None and planned is not None and planned.movement is not None:
                index, unit = moment.planned_index, planned.movement.unit
                self._readings.append(
                    reading_row(time_s, index, moment.phase, moment.reading, unit)
                )
            if moment.pose is not None and time_s >= self._landmark_due_s - _EARLY_S:
                self._landmarks.append(landmark_row(time_s, moment.pose))
                behind = time_s - self._landmark_due_s >= LANDMARK_GAP_S
                self._landmark_due_s = LANDMARK_GAP_S + (time_s if behind else self._landmark_due_s)
        if time_s - self._given_s >= CHUNK_S:
            return self.flush()
        return ()

    def flush(self) -> tuple[Entry, ...]:
        """Give out what is collected; call it once more before the session's last entry."""
        time_s = self._given_s = self._last_s
        entries: list[Entry] = []
        if self._readings:
            entries.append(ReadingRows(time_s=time_s, rows="".join(self._readings)))
        if self._landmarks:
            entries.append(LandmarkRows(time_s=time_s, rows="".join(self._landmarks)))
        entries.append(
            CameraCounts(
                time_s=time_s, frames_seen=self._frames_seen, frames_lost=self._frames_lost
            )
        )
        self._readings.clear()
        self._landmarks.clear()
        return tuple(entries)
