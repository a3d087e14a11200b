"""One exercise under way: measured and counted, or timed where no camera can measure it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Literal

from msgspec.structs import replace as replace_struct

from coach import counting, form, goniometry, placing
from coach.catalogue import catalogue
from coach.counting import timed
from coach.domain.form import FormFault, FormLimits
from coach.domain.plan import PlannedExercise
from coach.domain.pose import Pose
from coach.domain.progress import (
    EndedBecause,
    Phase,
    ProgressEvent,
    Repetition,
    RepetitionEnded,
)
from coach.domain.reading import Calibration, Reading
from coach.placing import wrong_arm

Left = Literal[EndedBecause.STOPPED, EndedBecause.INPUT_ENDED]
"""Why an exercise is left before its end."""
_WORKING = (Phase.MOVING, Phase.SETTLING, Phase.HOLDING)


@dataclass(frozen=True, slots=True)
class Found:
    """What one frame told: ``calibration`` where it was learnt or changed in this frame."""

    events: tuple[ProgressEvent, ...] = ()
    reading: Reading | None = None
    calibration: Calibration | None = None
    form: tuple[form.FormEvent, ...] = ()
    wrong_arm: bool = False


class Exercising:
    """An exercise from getting ready to its end, or to a pause, after which a new one goes on.

    frame's pose -> reading -> hold and repetition events, faults of form, the wrong arm. Stamps
    are those of the frames. ``prepare`` as long as the person gets ready, then ``begin``, then
    ``advance``, and ``finish`` where the exercise is left before its end.
    """

    def __init__(self, planned: PlannedExercise, field_of_view_deg: float | None) -> None:
        """Get ready; the horizontal field of view of the camera is None where it is not known."""
        self._planned = planned
        self._calibration: Calibration | None = None
        self._limits = _limits(planned)
        self._form = form.begin(self._limits, _usual(planned))
        self._wrong_arm = placing.watch(planned.side, planned.movement, planned.position)
        self._goniometer: goniometry.Goniometer | None = None
        self._counting: counting.State | None = None
        self._timed: timed.Timed | None = None
        self._calm = goniometry.OneEuro()
        if planned.movement is not None:
            self._goniometer = goniometry.begin(
                planned.movement,
                planned.side,
                planned.seen_from,
                planned.position,
                field_of_view_deg,
            )

    def prepare(self, time_s: float, pose: Pose | None, *, in_place: bool) -> None:
        """Take a frame while the person gets ready: what is measured and where the arm rests.

        An arm that is up when the exercise begins, because what to do was just said, then counts
        from there on.
        """
        if self._goniometer is None:
            return
        self._goniometer, reading = goniometry.advance(self._goniometer, time_s, pose)
        known = self._counting if in_place and self._counting is not None else self._counted(0)
        self._counting, _ = counting.advance(known, reading)

    def begin(self, completed: int, ended: int) -> None:
        """Begin to count; of the ``ended`` holds before ``completed`` were held as asked."""
        planned, known = self._planned, self._counting
        if planned.movement is None:
            self._timed = timed.begin(
                planned.hold_s, planned.repetitions, planned.rest_s, completed, ended
            )
            return
        self._counting = self._counted(ended)
        if known is not None:
            self._counting = replace(self._counting, low_deg=known.low_deg, rest_deg=known.rest_deg)
        per_unit = abs(self._counting.task.degrees_per_unit)
        self._calm = replace(self._calm, beta=self._calm.beta * per_unit)

    def advance(self, now_s: float, time_s: float, pose: Pose | None) -> Found:
        """Take a frame of the exercise, stamped ``time_s``; ``now_s`` never runs backwards."""
        if self._timed is not None:
            self._timed, events = timed.advance(self._timed, now_s)
            return Found(events)
        if self._goniometer is None or self._counting is None:
            return Found()
        self._goniometer, reading = goniometry.advance(self._goniometer, time_s, pose)
        if reading.value is not None:
            self._calm = self._calm.advance(now_s, reading.value)
        self._counting, events = counting.advance(self._counting, reading)
        noticed: tuple[form.FormEvent, ...] = ()
        if self._counting.phase in _WORKING and reading.usable:
            self._form, noticed = form.advance(self._form, reading)
        self._wrong_arm, wrong = wrong_arm.advance(self._wrong_arm, now_s, pose)
        return Found(self._judged(events), reading, self._learnt(), noticed, wrong)

    def finish(self, now_s: float, because: Left) -> tuple[ProgressEvent, ...]:
        """Give the events of leaving the exercise now: an open hold ends."""
        if self._timed is not None:
            return timed.finish(self._timed, because)
        if self._counting is None:
            return ()
        return self._judged(counting.finish(self._counting, now_s, because))

    @property
    def phase(self) -> Phase:
        """Where the arm is; of a timed exercise whether a hold is being timed."""
        if self._timed is not None:
            return Phase.HOLDING if self._timed.holding else Phase.REST
        return Phase.REST if self._counting is None else self._counting.phase

    @property
    def held_s(self) -> float:
        """Seconds held so far in the open hold, 0 without one."""
        state = self._timed or self._counting
        return 0.0 if state is None else state.held_s

    @property
    def held_long_enough(self) -> bool:
        """Whether the open hold has its asked seconds: it is completed, whatever ends it."""
        hold = None if self._counting is None else self._counting.hold
        return hold is not None and hold.completed

    @property
    def remaining_s(self) -> float | None:
        """Seconds of the open hold still to come, None where none is timed."""
        state = self._timed or self._counting
        return None if state is None else state.remaining_s

    @property
    def wait_s(self) -> float | None:
        """Seconds until the next timed hold begins by itself, None where none will."""
        return None if self._timed is None else self._timed.wait_s

    @property
    def faults(self) -> tuple[FormFault, ...]:
        """What is wrong with the form now."""
        return self._form.faults

    @property
    def calm_value(self) -> float | None:
        """The newest value calmed for the eye, in the movement's unit."""
        return self._calm.value

    def _counted(self, ended: int) -> counting.State:
        planned = self._planned
        task = counting.task_of(planned.measured, planned.hold_s, planned.target_deg)
        return replace(counting.begin(task), counted=ended)

    def _judged(self, events: tuple[ProgressEvent, ...]) -> tuple[ProgressEvent, ...]:
        return tuple(
            replace(event, repetition=self._with_faults(event.repetition))
            if isinstance(event, RepetitionEnded)
            else event
            for event in events
        )

    def _with_faults(self, repetition: Repetition) -> Repetition:
        usual = self._form.usual
        faults = form.faults_of(repetition.form, self._limits, usual)
        if usual is not None:
            self._form = replace(self._form, usual=usual.after(repetition.form, faults))
        return replace_struct(repetition, faults=faults)

    def _learnt(self) -> Calibration | None:
        found = None if self._goniometer is None else self._goniometer.calibration
        if found == self._calibration:
            return None
        self._calibration = found
        return found


def _limits(planned: PlannedExercise) -> FormLimits:
    """Give what form asks for: the catalogue's limits, or what this view can tell."""
    exercise = catalogue().by_name.get(planned.exercise or "")
    if exercise is not None and exercise.form is not None:
        return exercise.form
    if planned.movement is None:
        return FormLimits()
    return form.default_limits(planned.movement, planned.position, planned.seen_from)


def _usual(planned: PlannedExercise) -> form.Usual | None:
    if planned.movement is None:
        return None
    return form.Usual.of(planned.movement, planned.position, planned.side)
