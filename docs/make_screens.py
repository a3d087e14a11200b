"""Photograph both windows in every state, at both sizes of screen.

python -m docs.make_screens DIR [NAME ...] [--appearance dark] [--text-size 200]

``DIR/<name>.png`` is 1280 by 800 and is what ``docs/screens`` keeps, ``DIR/<name>_large.png`` is
1920 by 1080. A rendered person of a sample clip stands before the camera; patients are invented.
"""

from __future__ import annotations

import argparse
import os
from dataclasses import replace
from functools import cache
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

import msgspec
from PyQt6.QtCore import Qt
from PyQt6.QtTest import QTest
from PyQt6.QtWidgets import QApplication

from coach.app.demo import sample_clip
from coach.app.estimator import open_estimator
from coach.app.example import example_plan
from coach.capture.sources import open_source
from coach.catalogue import catalogue
from coach.desktop.patient.analysis import Step, to_image
from coach.desktop.patient.coaching import Outcome
from coach.desktop.patient.window import PatientWindow
from coach.desktop.shared.application import create_application
from coach.desktop.shared.language import choose_language
from coach.domain.agenda import AgendaItem
from coach.domain.form import FormFault
from coach.domain.frame import Frame
from coach.domain.moment import Asked, Moment, Stage
from coach.domain.movement import Movement, Side
from coach.domain.plan import Plan, PlannedExercise
from coach.domain.pose import Pose
from coach.domain.progress import EndedBecause, Phase, Repetition
from coach.domain.reading import Doubt, Reading
from coach.domain.settings import Appearance, Settings
from coach.review.diary import diary
from coach.session.agenda import easier_than
from docs.patient_troubles import photograph_troubles
from docs.shots import SIZES, Shot, camera_of, in_language
from docs.therapist_screens import photograph_therapist
from tests.review.six_patients import LAST_DAY, six_patients

REST_AT_S, HOLD_AT_S = 1.0, 8.0
"""Instants of the sample clip: the arm hangs, the arm is up in the first hold."""
VALUE_DEG, RESTING_DEG, ERROR_DEG = 118.0, 6.0, 5.6
STRETCH = PlannedExercise(
    movement=Movement.FLEXION, side=Side.RIGHT, hold_s=20, repetitions=3, pain_limit=4
)
PLAN: Plan = msgspec.structs.replace(
    example_plan(),
    exercises=(STRETCH, *example_plan().exercises),
    contact="Practice at the Old Mill, 555 0100",
)
TIMED = next(n for n, each in enumerate(PLAN.exercises) if each.movement is None)
HARD = next(
    n for n, each in enumerate(PLAN.exercises) if easier_than(each, catalogue().by_name) is not None
)
ITEMS = tuple(
    AgendaItem(n, each, easier=easier_than(each, catalogue().by_name), new=n == TIMED)
    for n, each in enumerate(PLAN.exercises)
)
DIARY = next(iter(six_patients(1).values()))


@cache
def seen(at_s: float) -> tuple[Frame, Pose | None]:
    """Give the sample clip's frame at that instant, and what the pose model sees in it."""
    source, estimator = open_source(sample_clip()), open_estimator(None)
    try:
        frame = next(frame for frame in source if frame.time_s >= at_s)
        return frame, estimator.estimate(frame)
    finally:
        source.close()
        estimator.close()


def moment(index: int, stage: Stage, at_s: float = REST_AT_S, **more: object) -> Moment:
    """Give a moment of the exercise at ``index``, with the person of the clip in it."""
    after = PLAN.exercises[index + 1 :]
    made = Moment(
        time_s=10.0,
        stage=stage,
        exercise_index=index,
        planned=PLAN.exercises[index],
        following=after[0] if after else None,
        pose=seen(at_s)[1],
        items=ITEMS,
    )
    return replace(made, **more)  # type: ignore[arg-type]


class FedWindow(PatientWindow):
    """The patient's window, with moments put into it by hand."""

    def _start(self) -> None:
        """Open no camera."""

    def feed(self, moment: Moment, at_s: float = REST_AT_S) -> None:
        """Show a moment over the clip's frame at that instant."""
        self._step(Step(moment, to_image(seen(at_s)[0])))
        QApplication.processEvents()


def patient_window() -> FedWindow:
    """Open the window of a patient who has been at it for six weeks."""
    documents = DIARY

    def never(*_: object) -> None:
        raise AssertionError("no camera is opened here")

    return FedWindow(
        PLAN,
        never,  # type: ignore[arg-type]
        never,  # type: ignore[arg-type]
        agenda=ITEMS,
        diary=diary(documents, documents[-1].plan, LAST_DAY),
        phase=PLAN.phase,
    )


def hold(number: int, because: EndedBecause = EndedBecause.COMPLETED) -> Repetition:
    """Give a hold that was done."""
    return Repetition(
        number=number,
        start_s=0.0,
        end_s=20.0,
        held_s=20.0,
        value=VALUE_DEG,
        error=ERROR_DEG,
        spread=1.0,
        seen_fraction=1.0,
        ended_because=because,
    )


def at_work(**more: object) -> Moment:
    """Give a moment of the second hold of three."""
    return replace(
        moment(0, Stage.EXERCISE, HOLD_AT_S),
        reading=Reading(10.0, VALUE_DEG, ERROR_DEG),
        shown=VALUE_DEG,
        phase=Phase.HOLDING,
        held_s=8.0,
        remaining_s=12.0,
        repetitions=(hold(1),),
        completed=1,
        **more,  # type: ignore[arg-type]
    )


def photograph_patient(window: FedWindow, shot: Shot) -> None:
    """Go through every state of the patient's window."""
    shot("patient_cautions", window)
    QTest.keyClick(window, Qt.Key.Key_Space)
    shot("patient_waiting", window)
    window.feed(moment(0, Stage.WELCOME))
    shot("patient_welcome", window)
    for key, name in ((Qt.Key.Key_W, "patient_weeks"), (Qt.Key.Key_U, "patient_understanding")):
        QTest.keyClick(window, key)
        shot(name, window)
        QTest.keyClick(window, Qt.Key.Key_Escape)
    window.feed(moment(0, Stage.PAIN_BEFORE, asked=Asked(offered=3)))
    shot("patient_pain", window)
    window.feed(moment(0, Stage.PAIN_BEFORE, asked=Asked(chosen=3, sure_s=4.0)))
    shot("patient_pain_chosen", window)
    window.feed(moment(TIMED, Stage.PREPARE))
    shot("patient_prepare_new", window)
    window.feed(moment(0, Stage.PREPARE, doubt=Doubt.TOO_CLOSE))
    shot("patient_prepare", window)
    window.feed(moment(0, Stage.PREPARE))
    shot("patient_in_place", window)
    window.feed(at_work(), HOLD_AT_S)
    shot("patient_hold", window)
    window.feed(at_work(faults=(FormFault.LEAN,)), HOLD_AT_S)
    shot("patient_form", window)
    refused = Reading(10.0, None, None, Doubt.ARM_OUT_OF_VIEW)
    window.feed(replace(at_work(), reading=refused, shown=None), HOLD_AT_S)
    shot("patient_unsure", window)
    resting = replace(at_work(), phase=Phase.REST, held_s=0.0, remaining_s=9.0, resting=True)
    at_rest = Reading(10.0, RESTING_DEG, ERROR_DEG)
    window.feed(replace(resting, pose=seen(REST_AT_S)[1], reading=at_rest, shown=RESTING_DEG))
    shot("patient_rest", window)
    window.feed(moment(0, Stage.PAUSED))
    shot("patient_paused", window)
    timed = moment(TIMED, Stage.EXERCISE, phase=Phase.HOLDING, held_s=29.0, remaining_s=31.0)
    window.feed(timed)
    shot("patient_timed", window)
    window.feed(moment(HARD, Stage.OFFER))
    shot("patient_offer", window)
    window.announce("The camera has stopped giving pictures; check its plug, and go on.")
    shot("patient_fault", window)
    window.banner.hide()
    window._finish(Outcome(DIARY[-1], "Sessions/2026-02-15.shoulder.zip"))
    shot("patient_summary", window)
    asked = moment(0, Stage.PAIN_AFTER, asked=Asked(offered=3))
    photograph_troubles(window, shot, (moment(0, Stage.PREPARE), at_work(), asked), DIARY[-1])


def main(arguments: list[str] | None = None) -> None:
    """Write the pictures, or those named."""
    options = _parser().parse_args(arguments)
    looks = Settings(appearance=options.appearance, text_percent=options.text_size, still=False)
    application = create_application(["screens"], offscreen_allowed=True, settings=looks)
    out, wanted = options.out, options.name
    out.mkdir(parents=True, exist_ok=True)
    of_patient = [name for name in wanted if name.startswith("patient")]
    of_therapist = [name for name in wanted if name.startswith("therapist")]
    for suffix in options.size or SIZES:
        shot = camera_of(out, wanted, suffix)
        for language in options.language or ("en", "de"):
            choose_language(application, language)
            named = shot if language == "en" else in_language(shot, language)
            if of_patient or not wanted:
                window = patient_window()
                window.resize(*SIZES[suffix])
                window.show()
                photograph_patient(window, named)
                window.close()
            if of_therapist or not wanted:
                photograph_therapist(named, SIZES[suffix], wanted)
    choose_language(application, "en")
    application.processEvents()


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(prog="python -m docs.make_screens", description=__doc__)
    parser.add_argument("out", type=Path, metavar="DIR")
    parser.add_argument("name", nargs="*", help="which pictures; by default all")
    parser.add_argument("--appearance", type=Appearance, default=Appearance.LIGHT)
    parser.add_argument("--text-size", type=int, default=100, metavar="PERCENT")
    parser.add_argument("--size", action="append", choices=[*SIZES], help="'' or '_large'")
    parser.add_argument("--language", action="append", metavar="CODE")
    return parser


if __name__ == "__main__":
    main()
