"""From journal entries to the content of a session file, after a good end and after a crash."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import assert_never

from msgspec.structs import replace

from coach.documents.landmarks import landmark_text
from coach.documents.readings import HEADER
from coach.domain.fault import Fault
from coach.domain.movement import Movement, Position, View
from coach.domain.plan import PlannedExercise
from coach.domain.progress import Repetition, TimedHold
from coach.domain.reading import Calibration
from coach.domain.session import Camera, ExerciseRecord, SessionDocument, SessionEnd
from coach.session.entries import (
    Asked,
    Calibrated,
    CameraCounts,
    EasierOffered,
    Entry,
    ExerciseEnded,
    ExerciseStarted,
    LandmarkRows,
    PainGiven,
    ReadingRows,
    RepetitionDone,
    SessionEnded,
    SessionOpened,
    TimedHoldDone,
)
from coach.texts import translate


@dataclass(frozen=True, slots=True)
class Assembled:
    """A whole session: its document and its two tables as CSV."""

    document: SessionDocument
    readings_csv: bytes = field(repr=False)
    landmarks_csv: bytes = field(repr=False)

    @property
    def empty(self) -> bool:
        """Whether nothing was done that is worth a file."""
        return not self.document.exercises


@dataclass(slots=True)
class _Record:
    started_s: float
    view: View | None = None
    position: Position | None = None
    calibration: Calibration | None = None
    ended_s: float | None = None
    ended_because: SessionEnd = SessionEnd.INTERRUPTED
    repetitions: list[Repetition] = field(default_factory=list)
    timed: list[TimedHold] = field(default_factory=list)
    exercise: str | None = None
    movement: Movement | None = None
    model_sha256: str | None = None
    offered: str | None = None
    pain_before: int | None = None
    pain_after: int | None = None
    touched: bool = False


def assemble(entries: Iterable[Entry]) -> Assembled:
    """Build the session that the entries tell of, in their order.

    The first is ``SessionOpened``. Where the end is missing, the session and an exercise still
    open end as interrupted at the last entry's time.
    """
    rest = iter(entries)
    opened = next(rest, None)
    if not isinstance(opened, SessionOpened):
        raise Fault(
            translate(
                "faults", "The session's journal has no beginning, so no session can be made of it."
            )
        )
    builder = _Builder(opened)
    for entry in rest:
        builder.take(entry)
    return builder.result()


class _Builder:
    def __init__(self, opened: SessionOpened) -> None:
        self.opened = opened
        self.camera: Camera = opened.camera
        self.records: dict[tuple[int, bool], _Record] = {}
        self.readings = [HEADER]
        self.landmarks: list[str] = []
        self.last_s = 0.0
        self.ended_because = SessionEnd.INTERRUPTED
        self.pain_at_end: int | None = None

    def take(self, entry: Entry) -> None:
        if not isinstance(entry, SessionOpened):
            self.last_s = max(self.last_s, entry.time_s)
        match entry:
            case SessionOpened():
                raise Fault(
                    translate(
                        "faults",
                        "The session's journal begins twice, so no session can be made of it.",
                    )
                )
            case ExerciseStarted():
                record = self._record(entry.planned_index, entry.time_s, entry.eased)
                record.started_s, record.touched = entry.time_s, True
                record.view, record.position = entry.view, entry.position
                record.exercise, record.movement = entry.exercise, entry.movement
                record.model_sha256 = entry.model_sha256
            case Calibrated():
                record = self._record(entry.planned_index, entry.time_s, entry.eased)
                record.calibration, record.touched = entry.calibration, True
            case PainGiven():
                self._pain(entry)
            case RepetitionDone():
                record = self._record(entry.planned_index, entry.time_s, entry.eased)
                record.repetitions.append(entry.repetition)
                record.touched = True
            case TimedHoldDone():
                record = self._record(entry.planned_index, entry.time_s, entry.eased)
                record.timed.append(entry.hold)
                record.touched = True
            case EasierOffered():
                self._record(entry.planned_index, entry.time_s, False).offered = entry.exercise
                # It may end without a start: passed over by pain, or left out.
                easier = self._record(entry.planned_index, entry.time_s, True)
                easier.exercise, easier.movement = entry.exercise, entry.movement
                easier.view, easier.position = entry.view, entry.position
            case ExerciseEnded():
                record = self._record(entry.planned_index, entry.time_s, entry.eased)
                record.ended_s, record.ended_because = entry.time_s, entry.ended_because
                record.touched = True
            case ReadingRows():
                self.readings.append(entry.rows)
            case LandmarkRows():
                self.landmarks.append(entry.rows)
            case CameraCounts():
                self.camera = replace(
                    self.camera, frames_seen=entry.frames_seen, frames_lost=entry.frames_lost
                )
            case SessionEnded():
                self.ended_because = entry.ended_because
            case _:
                assert_never(entry)

    def result(self) -> Assembled:
        exercises = tuple(
            self._exercise(self.opened.plan.exercises[index], index, eased, record)
            for (index, eased), record in self.records.items()
            if record.touched
        )
        latest_s = max([self.last_s, *(exercise.ended_s for exercise in exercises)])
        document = SessionDocument(
            session_id=self.opened.session_id,
            started_at=self.opened.started_at,
            duration_s=latest_s,
            ended_because=self.ended_because,
            software=self.opened.software,
            camera=self.camera,
            plan=self.opened.plan,
            exercises=exercises,
            pain_at_end=self.pain_at_end,
        )
        return Assembled(
            document,
            "".join(self.readings).encode(),
            landmark_text("".join(self.landmarks)).encode(),
        )

    def _record(self, planned_index: int, time_s: float, eased: bool) -> _Record:
        if planned_index >= len(self.opened.plan.exercises):
            raise Fault(
                translate(
                    "faults", "The session's journal tells of an exercise that is not in its plan."
                )
            )
        return self.records.setdefault((planned_index, eased), _Record(started_s=time_s))

    def _pain(self, given: PainGiven) -> None:
        if given.asked is Asked.AT_END or given.planned_index is None:
            self.pain_at_end = given.score
        elif given.asked is Asked.BEFORE:
            self._record(given.planned_index, given.time_s, given.eased).pain_before = given.score
        else:
            self._record(given.planned_index, given.time_s, given.eased).pain_after = given.score

    def _exercise(
        self, planned: PlannedExercise, index: int, eased: bool, record: _Record
    ) -> ExerciseRecord:
        ended_s = self.last_s if record.ended_s is None else record.ended_s
        holds: list[Repetition | TimedHold] = [*record.repetitions, *record.timed]
        return ExerciseRecord(
            planned_index=index,
            exercise=record.exercise if eased else planned.exercise,
            eased=eased,
            offered=record.offered,
            movement=record.movement if eased else planned.movement,
            side=planned.side,
            view=record.view or planned.seen_from,
            position=record.position or planned.position,
            calibration=record.calibration,
            model_sha256=record.model_sha256,
            # A hold's clock runs from before it is noticed: it may reach over the stages' stamps.
            started_s=min([record.started_s, *(hold.start_s for hold in holds)]),
            ended_s=max([ended_s, *(hold.end_s for hold in holds)]),
            ended_because=record.ended_because,
            repetitions=tuple(record.repetitions),
            timed=tuple(record.timed),
            pain_before=record.pain_before,
            pain_after=record.pain_after,
        )
