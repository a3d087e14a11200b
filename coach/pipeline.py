"""One step from a frame to what is shown, said and written down; synchronous, without a clock."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import replace
from typing import Literal

from msgspec.structs import replace as replace_struct

from coach import counting, cues, form, gestures, goniometry, placing
from coach.catalogue import catalogue
from coach.counting import timed
from coach.domain.agenda import AgendaItem
from coach.domain.form import FormLimits
from coach.domain.frame import Frame
from coach.domain.moment import Moment, Order, Stage
from coach.domain.plan import Plan, PlannedExercise
from coach.domain.pose import Pose
from coach.domain.progress import EndedBecause, Phase, ProgressEvent, RepetitionEnded
from coach.domain.reading import Calibration, Doubt, Reading
from coach.placing import wrong_arm
from coach.ports import PoseEstimator
from coach.session import asking as askings
from coach.session import course as courses
from coach.session.asking import Asking
from coach.session.course import Course
from coach.session.entries import Entry, Fact
from coach.session.recorder import Recorder

Record = Callable[[Iterable[Entry]], None]
"""Takes entries for the journal, in order."""

LOOK_GAP_S = 0.2
"""How often somebody is looked at who only may raise a hand: five times a second tell a raise, and
leave the laptop cool."""
READY_S = 1.0
"""So long must everything be right before an exercise begins."""
ADVICE_S = 10.0
"""A second person about, or little room, is told for so long before the exercise begins all the
same: it may be the best there is."""
UNSEEN_S = 20.0
"""Where nothing is measured, so long is waited for somebody to come into view."""
OFFER_S = 25.0
"""So long an offer stands: to hear it twice and raise a hand."""
_ADVICE = (None, Doubt.NOT_ALONE, Doubt.NO_ROOM, Doubt.NO_ROOM_ABOVE)
_WORKING = (Phase.MOVING, Phase.SETTLING, Phase.HOLDING)


class Pipeline:
    """A sitting, frame by frame.

    frame -> pose -> signals of the other hand, reading -> hold and repetition events -> course of
    the sitting -> cues, journal entries and the ``Moment`` to show. Every method is to be called
    in one thread; stamps must not run backwards.
    """

    def __init__(
        self,
        plan: Plan,
        estimator: PoseEstimator,
        record: Record,
        started_s: float,
        field_of_view_deg: float | None = None,
        items: tuple[AgendaItem, ...] = (),
    ) -> None:
        """Open a sitting at frame stamp ``started_s``; the journal's first entry is not ours.

        The horizontal field of view of the camera is None where it is not known. ``items`` are
        what is due, by default the whole plan.
        """
        self._field_of_view_deg = field_of_view_deg
        self._estimator = estimator
        self._record = record
        self._course: Course = courses.begin(plan, started_s, items)
        self._recorder = Recorder(started_s)
        self._rules = cues.Rules()
        self._now_s = started_s
        self._entered_s = started_s
        self._looked_s = float("-inf")
        self._goniometer: goniometry.Goniometer | None = None
        self._counting = counting.begin(counting.Task())
        self._timed: timed.Timed | None = None
        self._calm = goniometry.OneEuro()
        self._calibration: Calibration | None = None
        self._placing: placing.Placing | None = None
        self._asking: Asking | None = None
        first = self._course.item.planned
        self._watch = gestures.begin(first.side, first.position)
        self._wrong_arm = placing.watch(first.side, first.movement, first.position)
        self._limits = FormLimits()
        self._form = form.begin(self._limits)

    @property
    def finished(self) -> bool:
        """Whether the sitting has come to its end."""
        return self._course.stage is Stage.FINISHED

    def step(self, frame: Frame, frames_lost: int = 0) -> Moment:
        """Take the next frame; ``frames_lost`` counts those never seen since the start."""
        self._now_s = max(self._now_s, frame.time_s)
        self._move(courses.tick(self._course, self._now_s))
        outcome = _Outcome()
        stage, index = self._course.stage, self._course.exercise_index
        if self._looks(stage):
            self._looked_s = self._now_s
            outcome.pose = self._estimator.estimate(frame)
            self._signals(outcome)
        if (stage, index) == (self._course.stage, self._course.exercise_index):
            self._work(outcome, frame.time_s)
        moment = self._moment(outcome)
        self._record(self._recorder.note(moment, frames_lost))
        return moment

    def order(self, time_s: float, order: Order, pain: int | None = None) -> Moment:
        """Carry out what the person asked for."""
        self._now_s = max(self._now_s, time_s)
        outcome = _Outcome()
        self._obey(outcome, order, pain)
        return self._moment(outcome)

    def end_input(self) -> Moment:
        """Take in that no more frames will come."""
        outcome = _Outcome()
        self._end_hold(outcome, EndedBecause.INPUT_ENDED)
        self._move(courses.end_input(self._course, self._now_s))
        return self._moment(outcome)

    def _looks(self, stage: Stage) -> bool:
        if stage in (Stage.EXERCISE, Stage.PREPARE):
            return True
        return stage is not Stage.FINISHED and self._now_s - self._looked_s >= LOOK_GAP_S

    def _signals(self, outcome: _Outcome) -> None:
        """Take what the other hand says: up to choose, pause and go on, kept up to stop."""
        self._watch, told = gestures.advance(self._watch, self._now_s, outcome.pose)
        for event in told:
            stage = self._course.stage
            match event.gesture:
                case gestures.Gesture.UP if stage in (Stage.PAIN_BEFORE, Stage.PAIN_AFTER):
                    outcome.hand_up = True
                case gestures.Gesture.UP if stage in _BY_HAND:
                    self._obey(outcome, _BY_HAND[stage])
                case gestures.Gesture.KEPT if stage in (Stage.PAUSED, *_BY_HAND):
                    if stage is not Stage.WELCOME:
                        self._obey(outcome, Order.STOP)
                case _:
                    pass

    def _work(self, outcome: _Outcome, time_s: float) -> None:
        match self._course.stage:
            case Stage.PREPARE:
                self._prepare(outcome, time_s)
            case Stage.EXERCISE if self._timed is not None:
                self._timed, events = timed.advance(self._timed, self._now_s)
                self._progress(outcome, events)
            case Stage.EXERCISE if self._goniometer is not None:
                self._measure(outcome, time_s)
            case Stage.PAIN_BEFORE | Stage.PAIN_AFTER if self._asking is not None:
                raised_s = self._watch.raised_s
                since_s = None if raised_s is None else self._now_s - raised_s
                self._asking = askings.advance(self._asking, self._now_s, since_s, outcome.hand_up)
                if self._asking.over:
                    answer = self._asking.answered
                    self._obey(outcome, Order.GO_ON if answer is None else Order.PAIN, answer)
            case Stage.OFFER if self._now_s - self._entered_s >= OFFER_S:
                self._obey(outcome, Order.GO_ON)
            case _:
                pass

    def _prepare(self, outcome: _Outcome, time_s: float) -> None:
        """Look whether the person is in place; the measuring begins to learn meanwhile."""
        if self._goniometer is not None:
            self._goniometer, _ = goniometry.advance(self._goniometer, time_s, outcome.pose)
        if self._placing is None:
            return
        self._placing = placing.advance(self._placing, self._now_s, outcome.pose)
        here_s = self._now_s - self._entered_s
        bearable = self._placing.doubt in _ADVICE and here_s >= ADVICE_S
        if self._placing.planned.movement is not None:
            ready = bearable or self._placing.ready_s >= READY_S
        else:
            heard = here_s >= cues.introduction_s(self._course.item)
            seen = bearable or self._placing.doubt is None
            ready = heard and (seen or here_s >= UNSEEN_S)
        if ready:
            self._obey(outcome, Order.READY)

    def _measure(self, outcome: _Outcome, time_s: float) -> None:
        if self._goniometer is None:
            return
        self._goniometer, reading = goniometry.advance(self._goniometer, time_s, outcome.pose)
        outcome.reading = reading
        self._calibrate(self._goniometer.calibration)
        if reading.value is not None:
            self._calm = self._calm.advance(self._now_s, reading.value)
        self._counting, events = counting.advance(self._counting, reading)
        self._progress(outcome, events)
        if self._counting.phase in _WORKING and reading.usable:
            self._form, noticed = form.advance(self._form, reading)
            outcome.form = noticed
        self._wrong_arm, outcome.wrong_arm = wrong_arm.advance(
            self._wrong_arm, self._now_s, outcome.pose
        )

    def _obey(self, outcome: _Outcome, order: Order, pain: int | None = None) -> None:
        if courses.leaves_exercise(self._course, order, pain):
            self._end_hold(outcome, EndedBecause.STOPPED)
        before, asked = self._course, self._course.planned
        self._move(courses.order(before, self._now_s, order, pain))
        if order is Order.PAIN and self._course is not before and pain is not None and asked:
            outcome.too_much = outcome.too_much or pain > courses.pain_allowed(asked)

    def _end_hold(
        self,
        outcome: _Outcome,
        because: Literal[EndedBecause.STOPPED, EndedBecause.INPUT_ENDED],
    ) -> None:
        if self._course.working_stage is not Stage.EXERCISE:
            return
        if self._timed is not None:
            self._progress(outcome, timed.finish(self._timed, because))
        elif self._goniometer is not None:
            self._progress(outcome, counting.finish(self._counting, self._now_s, because))

    def _progress(self, outcome: _Outcome, events: tuple[ProgressEvent, ...]) -> None:
        for event in events:
            if isinstance(event, RepetitionEnded):
                faults = form.faults_of(event.repetition.form, self._limits)
                event = replace(event, repetition=replace_struct(event.repetition, faults=faults))
            outcome.events += (event,)
            self._move(courses.progress(self._course, event))

    def _move(self, step: tuple[Course, tuple[Fact, ...]]) -> None:
        before, (self._course, facts) = self._course, step
        if (before.stage, before.exercise_index) != (
            self._course.stage,
            self._course.exercise_index,
        ):
            self._enter(before)
        if self._course.stage is Stage.FINISHED and before.stage is not Stage.FINISHED:
            self._record(self._recorder.flush())
        self._record(facts)

    def _calibrate(self, found: Calibration | None) -> None:
        if found is not None and found != self._calibration:
            self._calibration = found
            self._move(courses.calibrated(self._course, self._now_s, found))

    def _enter(self, before: Course) -> None:
        """Begin what the stage needs; a pause begins measuring anew, getting ready does not."""
        course, planned = self._course, self._course.item.planned
        self._entered_s = self._now_s
        self._asking = self._placing = None
        if self._watch.side is not planned.side:
            self._watch = gestures.begin(planned.side, planned.position)
        # A hand that is still up was told of already.
        self._watch = replace(self._watch, position=planned.position)
        match course.stage:
            case Stage.PREPARE:
                self._placing = placing.begin(planned)
                self._begin_measuring(planned)
            case Stage.EXERCISE:
                if before.stage is not Stage.PREPARE:
                    self._begin_measuring(planned)
                self._begin_counting(planned)
            case Stage.PAIN_BEFORE | Stage.PAIN_AFTER:
                self._goniometer = None
                self._asking = askings.begin(self._now_s, cues.question_s(course.stage))
            case _:
                self._goniometer = None

    def _begin_measuring(self, planned: PlannedExercise) -> None:
        self._calibration = self._goniometer = None
        if planned.movement is not None:
            self._goniometer = goniometry.begin(
                planned.movement,
                planned.side,
                planned.seen_from,
                planned.position,
                self._field_of_view_deg,
            )

    def _begin_counting(self, planned: PlannedExercise) -> None:
        course = self._course
        self._limits = _limits(planned)
        self._form = form.begin(self._limits)
        self._wrong_arm = placing.watch(planned.side, planned.movement, planned.position)
        self._timed = None
        if planned.movement is None:
            self._timed = timed.begin(
                planned.hold_s,
                planned.repetitions,
                planned.rest_s,
                course.completed,
                len(course.timed),
            )
            return
        task = counting.task_of(planned.movement, planned.hold_s, planned.target_deg)
        calm = goniometry.OneEuro()
        self._calm = replace(calm, beta=calm.beta * abs(task.degrees_per_unit))
        self._counting = replace(counting.begin(task), counted=len(course.repetitions))

    def _moment(self, outcome: _Outcome) -> Moment:
        course, state = self._course, self._counting
        measuring = course.stage is Stage.EXERCISE
        rest_s = course.rest_remaining_s(self._now_s)
        phase, held_s, hold_s = state.phase, state.held_s, state.remaining_s
        if self._timed is not None:
            phase = Phase.HOLDING if self._timed.holding else Phase.REST
            held_s, hold_s = self._timed.held_s, self._timed.remaining_s
            if measuring and not course.resting and self._timed.wait_s is not None:
                hold_s = self._timed.wait_s
        asked = None if self._asking is None else self._asking.shown(self._now_s)
        doubt = None if self._placing is None else self._placing.doubt
        happening = cues.Happening(
            time_s=self._now_s,
            stage=course.stage,
            planned=course.planned,
            exercise_index=course.exercise_index,
            exercise_count=len(course.items),
            events=outcome.events,
            reading=outcome.reading,
            phase=phase,
            held_s=held_s if measuring else 0.0,
            remaining_s=hold_s if measuring and phase is not Phase.REST else None,
            resting=course.resting,
            rest_remaining_s=rest_s,
            repetitions_done=course.completed,
            pain_above_limit=outcome.too_much,
            item=course.item,
            doubt=doubt,
            asked=asked,
            form=outcome.form,
            wrong_arm=outcome.wrong_arm,
            score=course.score,
        )
        self._rules, said = cues.advance(self._rules, happening)
        reading = outcome.reading
        return Moment(
            time_s=self._now_s,
            stage=course.stage,
            exercise_index=course.exercise_index,
            planned=course.planned,
            following=course.following,
            pose=outcome.pose,
            reading=reading,
            shown=self._calm.value if reading is not None and reading.usable else None,
            phase=phase,
            held_s=happening.held_s,
            remaining_s=rest_s if course.resting else (hold_s if measuring else None),
            resting=course.resting,
            repetitions=course.repetitions,
            cues=said,
            items=course.items,
            doubt=doubt,
            asked=asked,
            raised_s=self._watch.raised_s,
            faults=self._form.faults if measuring else (),
            completed=course.completed,
        )


class _Outcome:
    """What one step found, gathered on the way."""

    def __init__(self) -> None:
        self.pose: Pose | None = None
        self.reading: Reading | None = None
        self.events: tuple[ProgressEvent, ...] = ()
        self.form: tuple[form.FormEvent, ...] = ()
        self.wrong_arm = False
        self.hand_up = False
        self.too_much = False


_BY_HAND = {
    Stage.WELCOME: Order.START,
    Stage.PREPARE: Order.PAUSE,
    Stage.EXERCISE: Order.PAUSE,
    Stage.PAUSED: Order.RESUME,
    Stage.OFFER: Order.ACCEPT,
}


def _limits(planned: PlannedExercise) -> FormLimits:
    """Give what form asks for: the catalogue's limits, or what this view can tell."""
    exercise = catalogue().by_name.get(planned.exercise or "")
    if exercise is not None and exercise.form is not None:
        return exercise.form
    if planned.movement is None:
        return FormLimits()
    return form.default_limits(planned.movement, planned.position, planned.seen_from)
