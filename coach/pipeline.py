"""One step from a frame to what is shown, said and written down; synchronous, without a clock."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import replace

from coach import cues, gestures
from coach.domain.agenda import AgendaItem
from coach.domain.frame import Frame
from coach.domain.looked import Looked
from coach.domain.moment import Moment, Order, Stage
from coach.domain.plan import Plan
from coach.domain.progress import EndedBecause, ProgressEvent
from coach.exercising import Exercising, Left
from coach.looking import Looking
from coach.outcome import Outcome, Standing
from coach.ports import PoseEstimator
from coach.readying import Readying
from coach.session import asking as askings
from coach.session import course as courses
from coach.session.asking import Asking
from coach.session.course import Course
from coach.session.entries import Entry, Fact, measured_with
from coach.session.recorder import Recorder

Record = Callable[[Iterable[Entry]], None]
"""Takes entries for the journal, in order."""

OFFER_S = 25.0
"""So long an offer stands: to hear it twice and raise a hand."""


class Pipeline:
    """A sitting, frame by frame.

    frame -> pose -> signals of the other hand, reading -> hold and repetition events -> course of
    the sitting -> cues, journal entries and the ``Moment`` to show. Every method but ``look`` is to
    be called in one thread; stamps must not run backwards.
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
        self._looking = Looking(estimator, started_s)
        self._record = record
        self._course: Course = courses.begin(plan, started_s, items)
        self._recorder = Recorder(started_s)
        self._rules = cues.Rules()
        self._hearing = cues.Hearing()
        self._now_s = started_s
        self._entered_s = started_s
        self._exercising: Exercising | None = None
        self._readying: Readying | None = None
        self._asking: Asking | None = None
        first = self._course.item.planned
        self._watch = gestures.begin(first.side, first.position)

    @property
    def finished(self) -> bool:
        """Whether the sitting has come to its end."""
        return self._course.stage is Stage.FINISHED

    def step(self, frame: Frame, frames_lost: int = 0) -> Moment:
        """Take the next frame; ``frames_lost`` counts those never seen since the start."""
        return self.take(self.look(frame), frames_lost)

    def look(self, frame: Frame) -> Looked:
        """Ask the pose model about the next frame, where it is to be asked.

        May run in a thread of its own while the frame before is taken: whether to ask then follows
        from how the sitting stood before that one.
        """
        return self._looking.look(frame, self._course.stage, max(self._now_s, frame.time_s))

    def take(self, looked: Looked, frames_lost: int = 0) -> Moment:
        """Take the next frame, looked at."""
        self._now_s = max(self._now_s, looked.frame.time_s)
        self._move(courses.tick(self._course, self._now_s))
        outcome = Outcome(looked.pose)
        stage, index = self._course.stage, self._course.exercise_index
        # Of a frame from before the stage in which every frame counts, nothing is known.
        known = looked.asked or not self._looking.at_work(stage)
        if looked.asked:
            self._looking.seen(looked, self._now_s, stage, frames_lost)
            self._signals(outcome)
        if known and (stage, index) == (self._course.stage, self._course.exercise_index):
            self._work(outcome, looked.frame.time_s)
        moment = self._moment(outcome)
        self._record(self._recorder.note(moment, frames_lost))
        return moment

    def order(self, time_s: float, order: Order, pain: int | None = None) -> Moment:
        """Carry out what the person asked for."""
        self._now_s = max(self._now_s, time_s)
        outcome = Outcome()
        self._obey(outcome, order, pain)
        return self._moment(outcome)

    def end_input(self) -> Moment:
        """Take in that no more frames will come."""
        outcome = Outcome()
        self._end_hold(outcome, EndedBecause.INPUT_ENDED)
        self._move(courses.end_input(self._course, self._now_s))
        return self._moment(outcome)

    def _signals(self, outcome: Outcome) -> None:
        """Take what the other hand says: up to choose, pause and go on, kept up to stop."""
        self._watch, told = gestures.advance(self._watch, self._now_s, outcome.pose)
        for event in told:
            stage = self._course.stage
            match event.gesture:
                case gestures.Gesture.UP if stage in (Stage.PAIN_BEFORE, Stage.PAIN_AFTER):
                    outcome.hand_up = True
                case gestures.Gesture.UP if stage in _BY_HAND:
                    self._obey(outcome, _BY_HAND[stage])
                case gestures.Gesture.KEPT if stage in _BY_HAND:
                    self._obey(outcome, Order.STOP)
                case _:
                    pass

    def _work(self, outcome: Outcome, time_s: float) -> None:
        match self._course.stage:
            case Stage.PREPARE:
                self._prepare(outcome, time_s)
            case Stage.EXERCISE:
                self._exercise(outcome, time_s)
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

    def _prepare(self, outcome: Outcome, time_s: float) -> None:
        """Look whether the person is in place; the measuring begins to learn meanwhile."""
        if self._exercising is None or self._readying is None:
            return
        self._looking.choose(self._course.item.planned)
        ready = self._readying.advance(self._now_s, outcome.pose, self._hearing)
        in_place = self._readying.doubt is None
        self._exercising.prepare(time_s, outcome.pose, in_place=in_place)
        if ready:
            self._obey(outcome, Order.READY)

    def _exercise(self, outcome: Outcome, time_s: float) -> None:
        if self._exercising is None:
            return
        outcome.found = found = self._exercising.advance(self._now_s, time_s, outcome.pose)
        if found.calibration is not None:
            self._move(courses.calibrated(self._course, self._now_s, found.calibration))
        self._progress(outcome, found.events)

    def _obey(self, outcome: Outcome, order: Order, pain: int | None = None) -> None:
        if order is Order.READY and self._readying is not None and not self._looking.settled:
            self._readying.told = True
            return
        if courses.leaves_exercise(self._course, order, pain):
            self._end_hold(outcome, EndedBecause.STOPPED)
        before, asked = self._course, self._course.planned
        self._move(courses.order(before, self._now_s, order, pain))
        if order is Order.PAIN and self._course is not before and pain is not None and asked:
            outcome.too_much = outcome.too_much or pain > courses.pain_allowed(asked)

    def _end_hold(self, outcome: Outcome, because: Left) -> None:
        if self._course.stage is Stage.EXERCISE and self._exercising is not None:
            self._progress(outcome, self._exercising.finish(self._now_s, because))

    def _progress(self, outcome: Outcome, events: tuple[ProgressEvent, ...]) -> None:
        for event in events:
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
        self._record(measured_with(facts, self._looking.other_sha256))

    def _enter(self, before: Course) -> None:
        """Begin what the stage needs; a pause begins measuring anew, getting ready does not."""
        course, planned = self._course, self._course.item.planned
        self._entered_s = self._now_s
        self._asking = self._readying = None
        if self._watch.side is not planned.side:
            self._watch = gestures.begin(planned.side, planned.position)
        # A hand that is still up was told of already.
        self._watch = replace(self._watch, position=planned.position)
        match course.stage:
            case Stage.PREPARE:
                self._readying = Readying(course.item, self._now_s)
                self._exercising = Exercising(planned, self._field_of_view_deg)
            case Stage.EXERCISE:
                if before.stage is not Stage.PREPARE or self._exercising is None:
                    self._exercising = Exercising(planned, self._field_of_view_deg)
                ended = len(course.timed) + len(course.repetitions)
                self._exercising.begin(course.completed, ended)
            case Stage.PAIN_BEFORE | Stage.PAIN_AFTER:
                self._exercising = None
                self._asking = askings.begin(self._now_s, cues.question_s(course.stage))
            case _:
                self._exercising = None

    def _moment(self, outcome: Outcome) -> Moment:
        standing = Standing(
            self._now_s,
            self._course,
            outcome,
            self._exercising if self._course.stage is Stage.EXERCISE else None,
            None if self._readying is None else self._readying.doubt,
            None if self._asking is None else self._asking.shown(self._now_s),
            self._watch.raised_s,
            self._looking.deserted,
        )
        self._rules, said = cues.advance(self._rules, standing.happening)
        self._hearing = cues.hear(self._hearing, self._now_s, said)
        return standing.moment(said)


_BY_HAND = {  # nor does it begin a sitting: only the window knows whether the cautions were read
    Stage.PREPARE: Order.PAUSE,
    Stage.EXERCISE: Order.PAUSE,
    Stage.PAUSED: Order.RESUME,
    Stage.OFFER: Order.ACCEPT,
}
