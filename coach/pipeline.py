"""One step from a frame to what is shown, said and written down; synchronous, without a clock."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import replace
from typing import Literal

from coach import counting, cues, goniometry
from coach.domain.frame import Frame
from coach.domain.moment import Moment, Order, Stage
from coach.domain.plan import Plan
from coach.domain.pose import Pose
from coach.domain.progress import EndedBecause, ProgressEvent
from coach.domain.reading import Calibration, Reading
from coach.ports import PoseEstimator
from coach.session import course as courses
from coach.session.course import Course
from coach.session.entries import Entry, Fact
from coach.session.recorder import Recorder

Record = Callable[[Iterable[Entry]], None]
"""Takes entries for the journal, in order."""


class Pipeline:
    """A sitting, frame by frame.

    frame -> pose -> reading -> hold and repetition events -> course of the sitting -> cues,
    journal entries and the ``Moment`` to show. Poses are looked for only while an exercise is
    measured. Every method is to be called in one thread; stamps must not run backwards.
    """

    def __init__(
        self,
        plan: Plan,
        estimator: PoseEstimator,
        record: Record,
        started_s: float,
        field_of_view_deg: float | None = None,
    ) -> None:
        """Open a sitting at frame stamp ``started_s``; the journal's first entry is not ours.

        The horizontal field of view of the camera is None where it is not known.
        """
        self._field_of_view_deg = field_of_view_deg
        self._estimator = estimator
        self._record = record
        self._course: Course = courses.begin(plan, started_s)
        self._recorder = Recorder(started_s)
        self._rules = cues.Rules()
        self._now_s = started_s
        self._goniometer: goniometry.Goniometer | None = None
        self._counting = counting.begin(counting.Task())
        self._calm = goniometry.OneEuro()
        self._calibration: Calibration | None = None

    @property
    def finished(self) -> bool:
        """Whether the sitting has come to its end."""
        return self._course.stage is Stage.FINISHED

    def step(self, frame: Frame, frames_lost: int = 0) -> Moment:
        """Take the next frame; ``frames_lost`` counts those never seen since the start."""
        self._now_s = max(self._now_s, frame.time_s)
        self._move(courses.tick(self._course, self._now_s))
        pose: Pose | None = None
        reading: Reading | None = None
        events: tuple[ProgressEvent, ...] = ()
        if self._course.stage is Stage.EXERCISE and self._goniometer is not None:
            pose = self._estimator.estimate(frame)
            self._goniometer, reading = goniometry.advance(self._goniometer, frame.time_s, pose)
            self._calibrate(self._goniometer.calibration)
            if reading.value is not None:
                self._calm = self._calm.advance(self._now_s, reading.value)
            self._counting, events = counting.advance(self._counting, reading)
            self._progress(events)
        moment = self._moment(pose, reading, events)
        self._record(self._recorder.note(moment, frames_lost))
        return moment

    def order(self, time_s: float, order: Order, pain: int | None = None) -> Moment:
        """Carry out what the person asked for."""
        self._now_s = max(self._now_s, time_s)
        asked = self._course.planned
        too_much = (
            order is Order.PAIN
            and pain is not None
            and asked is not None
            and pain > asked.pain_limit
        )
        events: tuple[ProgressEvent, ...] = ()
        if courses.leaves_exercise(self._course, order, pain):
            events = self._end_hold(EndedBecause.STOPPED)
        self._move(courses.order(self._course, self._now_s, order, pain))
        return self._moment(None, None, events, pain_above_limit=too_much)

    def end_input(self) -> Moment:
        """Take in that no more frames will come."""
        events = self._end_hold(EndedBecause.INPUT_ENDED)
        self._move(courses.end_input(self._course, self._now_s))
        return self._moment(None, None, events)

    def _end_hold(
        self, because: Literal[EndedBecause.STOPPED, EndedBecause.INPUT_ENDED]
    ) -> tuple[ProgressEvent, ...]:
        events: tuple[ProgressEvent, ...] = ()
        if self._goniometer is not None:
            events = counting.finish(self._counting, self._now_s, because)
            self._progress(events)
        return events

    def _progress(self, events: tuple[ProgressEvent, ...]) -> None:
        for event in events:
            self._move(courses.progress(self._course, event))

    def _move(self, step: tuple[Course, tuple[Fact, ...]]) -> None:
        before, (self._course, facts) = self._course, step
        if (before.stage, before.exercise_index) != (
            self._course.stage,
            self._course.exercise_index,
        ):
            self._enter()
        if self._course.stage is Stage.FINISHED and before.stage is not Stage.FINISHED:
            self._record(self._recorder.flush())
        self._record(facts)

    def _calibrate(self, found: Calibration | None) -> None:
        if found is not None and found != self._calibration:
            self._calibration = found
            self._move(courses.calibrated(self._course, self._now_s, found))

    def _enter(self) -> None:
        """Begin to measure, or stop measuring, as the stage asks; a pause begins anew."""
        planned = self._course.planned
        if self._course.stage is not Stage.EXERCISE or planned is None:
            self._goniometer = None
            return
        self._goniometer = goniometry.begin(
            planned.movement,
            planned.side,
            planned.seen_from,
            planned.position,
            self._field_of_view_deg,
        )
        self._calibration = None
        task = counting.task_of(planned.movement, planned.hold_s, planned.target_deg)
        calm = goniometry.OneEuro()
        self._calm = replace(calm, beta=calm.beta * abs(task.degrees_per_unit))
        self._counting = replace(counting.begin(task), counted=len(self._course.repetitions))

    def _moment(
        self,
        pose: Pose | None,
        reading: Reading | None,
        events: tuple[ProgressEvent, ...],
        *,
        pain_above_limit: bool = False,
    ) -> Moment:
        course, state = self._course, self._counting
        measuring = course.stage is Stage.EXERCISE
        rest_s = course.rest_remaining_s(self._now_s)
        hold_s = state.remaining_s if measuring else None
        happening = cues.Happening(
            time_s=self._now_s,
            stage=course.stage,
            planned=course.planned,
            exercise_index=course.exercise_index,
            exercise_count=len(course.plan.exercises),
            events=events,
            reading=reading,
            phase=state.phase,
            held_s=state.held_s if measuring else 0.0,
            remaining_s=hold_s,
            resting=course.resting,
            rest_remaining_s=rest_s,
            repetitions_done=course.completed,
            pain_above_limit=pain_above_limit,
        )
        self._rules, said = cues.advance(self._rules, happening)
        return Moment(
            time_s=self._now_s,
            stage=course.stage,
            exercise_index=course.exercise_index,
            planned=course.planned,
            following=course.following,
            pose=pose,
            reading=reading,
            shown=self._calm.value if reading is not None and reading.usable else None,
            phase=state.phase,
            held_s=happening.held_s,
            remaining_s=rest_s if course.resting else hold_s,
            resting=course.resting,
            repetitions=course.repetitions,
            cues=said,
        )
