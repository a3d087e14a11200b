"""What the pages show, at both sizes of screen, read back from their pixels and names."""

from collections.abc import Callable
from dataclasses import replace

import msgspec
import numpy as np
import pytest
from PyQt6.QtCore import QRect
from PyQt6.QtGui import QColor, QImage
from PyQt6.QtWidgets import QAbstractButton, QApplication, QWidget
from pytestqt.qtbot import QtBot

from coach.desktop.patient import captions as captions_module
from coach.desktop.patient.analysis import Step, to_image
from coach.desktop.patient.band import Band
from coach.desktop.patient.exercise_page import ExercisePage
from coach.desktop.patient.picture import Picture
from coach.desktop.patient.record_card import how_it_ended
from coach.desktop.patient.text_block import TextBlock
from coach.desktop.patient.welcome_page import WelcomePage
from coach.desktop.patient.window import PatientWindow
from coach.desktop.patient.wording import with_error
from coach.desktop.shared.palettes import LIGHT
from coach.domain.frame import Frame
from coach.domain.moment import Moment, Stage
from coach.domain.movement import Side, Unit
from coach.domain.progress import EndedBecause, Phase
from coach.domain.reading import Doubt, Reading
from coach.domain.session import SessionEnd

from .scripted import (
    HEIGHT_PX,
    PLAN,
    WIDTH_PX,
    ScriptedCoaching,
    ScriptedSource,
    picture,
    refused,
    repetition,
    standing,
)

SIZES = [(1280, 800), (1920, 1080)]
HOLD = Moment(
    time_s=10.0,
    stage=Stage.EXERCISE,
    exercise_index=0,
    planned=PLAN.exercises[0],
    following=PLAN.exercises[1],
    pose=standing(112, Side.LEFT),
    reading=Reading(10.0, 112.3, 5.6),
    phase=Phase.HOLDING,
    held_s=0.4,
    remaining_s=0.6,
    repetitions=(repetition(1, 0.0, 1.0),),
    completed=1,
)


def pixels(widget: QWidget) -> np.ndarray:
    image = widget.grab().toImage().convertToFormat(QImage.Format.Format_RGB888)
    bits = image.constBits()
    assert bits is not None
    rows = np.frombuffer(bits.asstring(image.sizeInBytes()), np.uint8)
    return rows.reshape(image.height(), image.bytesPerLine())[:, : 3 * image.width()].reshape(
        image.height(), image.width(), 3
    )


def near(shot: np.ndarray, colour: str, tolerance: int = 12) -> np.ndarray:
    wanted = np.array(QColor(colour).getRgb()[:3], int)
    return (np.abs(shot.astype(int) - wanted) <= tolerance).all(axis=2)


@pytest.fixture(params=SIZES, ids=["small", "large"])
def window(request: pytest.FixtureRequest, app: QApplication, qtbot: QtBot) -> PatientWindow:
    made = PatientWindow(
        PLAN, ScriptedSource, lambda source: ScriptedCoaching(), cautions_read=True
    )
    made._started = True  # the pages are fed by hand
    qtbot.addWidget(made)
    made.resize(*request.param)
    made.show()
    qtbot.waitExposed(made)
    return made


def feed(window: PatientWindow, moment: Moment) -> None:
    image = to_image(Frame(0, moment.time_s, picture()))
    window._step(Step(moment, image))
    QApplication.processEvents()


def test_the_picture_is_a_mirror(app: QApplication, qtbot: QtBot) -> None:
    view = Picture()
    qtbot.addWidget(view)
    view.resize(800, 600)
    view.show_image(to_image(Frame(0, 0.0, picture())))
    shot = pixels(view)
    red_x, blue_x = (np.nonzero(near(shot, c, 60))[1].mean() for c in ("#ff0000", "#0000ff"))
    assert red_x > 400 > blue_x
    # and what is drawn at a pixel of the frame lands on that pixel of the mirror
    at = view.mirrored((30.0, 120.0))
    assert near(shot, "#ff0000", 60)[round(at.y()), round(at.x())]


def test_a_picture_is_neither_cropped_nor_stretched(app: QApplication, qtbot: QtBot) -> None:
    view = Picture()
    qtbot.addWidget(view)
    for width, height in ((800, 400), (400, 800)):
        view.resize(width, height)
        view.show_image(to_image(Frame(0, 0.0, picture())))
        place = view.picture_rect()
        assert place.width() / place.height() == pytest.approx(WIDTH_PX / HEIGHT_PX)
        assert view.rect().contains(place.toAlignedRect())


def test_an_image_owns_its_pixels() -> None:
    pixels_rgb = picture().copy()
    image = to_image(Frame(0, 0.0, pixels_rgb))
    pixels_rgb[:] = 0
    assert image.pixelColor(30, 120) == QColor("#ff0000")


@pytest.mark.parametrize(("resting", "colour"), [(False, LIGHT.hold), (True, LIGHT.rest)])
def test_the_band_of_a_hold_fills_and_that_of_a_rest_empties(
    app: QApplication, qtbot: QtBot, resting: bool, colour: str
) -> None:
    view = Picture()
    qtbot.addWidget(view)
    view.resize(800, 600)
    seen, lowest = [], []
    for left_s in (30.0, 20.0, 10.0, 0.0):
        view.show_band(Band(left_s, 30.0, resting))
        inked = near(pixels(view), colour)
        seen.append(int(inked.sum()))
        if inked.any():
            lowest.append(int(np.nonzero(inked.any(axis=1))[0].max()))
    if not resting:
        seen.reverse()
    full = seen[0]
    assert seen[3] == 0
    assert seen[1] / full == pytest.approx(2 / 3, abs=0.04)
    assert seen[2] / full == pytest.approx(1 / 3, abs=0.04)
    assert len(set(lowest)) == 1, "it stands on the lower edge"


def ink_height(window: PatientWindow, widget: QWidget, colour: str) -> int:
    """Height in pixels of the tallest unbroken run of rows that hold this colour."""
    rows = near(pixels(widget), colour, 40).any(axis=1)
    best = run = 0
    for inked in rows:
        run = run + 1 if inked else 0
        best = max(best, run)
    return best


def test_the_numbers_that_matter_are_a_tenth_of_the_window_high(window: PatientWindow) -> None:
    feed(window, HOLD)
    page = window.pages.exercise
    tenth = window.height() / 10
    assert ink_height(window, page.angle, LIGHT.ink) >= tenth
    assert ink_height(window, page.clock, LIGHT.hold) >= tenth
    assert ink_height(window, page.clock, LIGHT.hold) >= ink_height(window, page.angle, LIGHT.ink)


def test_a_hold_shows_angle_error_clock_and_count(window: PatientWindow) -> None:
    feed(window, HOLD)
    page = window.pages.exercise
    assert "112°" in page.angle.accessibleName()
    assert "± 6°" in page.angle.accessibleName()
    assert page.clock.accessibleName().endswith(" 1")
    assert page.count.accessibleName() == "Holds done: 1 of 2"
    assert near(pixels(page.picture), LIGHT.hold).any()


def test_the_value_beside_the_arm_carries_its_error(window: PatientWindow) -> None:
    feed(window, HOLD)
    shown = window.pages.exercise.picture
    assert (shown._value, shown._error) == ("112°", "± 6°")
    feed(window, replace(HOLD, reading=refused(Doubt.TURN_TO_FACE)))
    assert shown._value == ""


def test_a_hold_that_was_long_enough_shows_no_clock(window: PatientWindow) -> None:
    page = window.pages.exercise
    for phase in (Phase.HOLDING, Phase.RETURNING):
        feed(window, replace(HOLD, phase=phase, held_s=1.2, remaining_s=0.0))
        assert page.clock.accessibleName() == "Held long enough: Slowly back"
        assert page.picture._band is None
    feed(window, replace(HOLD, phase=Phase.RETURNING))
    assert page.clock.accessibleName() == "Now: Slowly back"
    assert page.picture._band is None


def test_the_hold_under_way_fills_the_next_box(window: PatientWindow) -> None:
    boxes = window.pages.exercise.count
    feed(window, replace(HOLD, held_s=0.0))
    before = near(pixels(boxes), LIGHT.accent).sum()
    feed(window, replace(HOLD, held_s=0.9))
    assert near(pixels(boxes), LIGHT.accent).sum() > before
    assert boxes.accessibleName() == "Holds done: 1 of 2"


def full_boxes(count: QWidget, boxes: int) -> int:
    """How many of them are filled from rim to rim on the line through their middle."""
    ink = near(pixels(count), LIGHT.accent)
    rows = np.flatnonzero(ink.sum(axis=1) > ink.shape[1] / 4)
    line = ink[int(rows[-1] - count.height() * 0.1)]
    edges = np.flatnonzero(np.diff(np.r_[0, line.astype(int), 0]))
    return int((edges[1::2] - edges[::2] > 0.9 * count.width() / boxes).sum())


@pytest.mark.parametrize("phase", [Phase.HOLDING, Phase.RETURNING])
def test_a_hold_that_was_long_enough_is_one_in_figures_boxes_and_words(
    window: PatientWindow, phase: Phase
) -> None:
    page = window.pages.exercise
    short = repetition(1, 0.0, 0.5, because=EndedBecause.LET_GO)
    for before, done in (((), 0), ((short,), 0), (HOLD.repetitions, 1)):
        at_it = replace(HOLD, phase=phase, repetitions=before, completed=done)
        boxes = 2 + before.count(short)
        feed(window, replace(at_it, held_s=0.6))
        assert full_boxes(page.count, boxes) == done
        feed(window, replace(at_it, held_s=1.2, remaining_s=0.0, completed=done + 1))
        assert page.clock.accessibleName() == "Held long enough: Slowly back"
        assert page.count.accessibleName() == f"Holds done: {done + 1} of 2"
        assert full_boxes(page.count, boxes) == done + 1
        after = "Then: rest for 0.5 seconds" if done == 0 else "Then: Right hand turned outwards"
        assert page._then.text() == after
        held = (*before, repetition(len(before) + 1, 0.0, 0.98))
        at_rest = replace(at_it, held_s=0.0, repetitions=held, completed=done + 1)
        feed(window, replace(at_rest, phase=Phase.REST))
        assert full_boxes(page.count, boxes) == done + 1, "what was held is dated back a little"


def test_a_hold_let_go_too_soon_is_followed_by_a_rest(window: PatientWindow) -> None:
    feed(window, replace(HOLD, phase=Phase.RETURNING, held_s=0.4))
    assert window.pages.exercise._then.text() == "Then: rest for 0.5 seconds"


def test_a_caption_goes_when_it_was_long_enough_there(
    window: PatientWindow, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(captions_module, "CAPTION_MS", 20)
    feed(window, HOLD)
    window.captions.say("Ease off a little")
    assert window.pages.exercise.caption.accessibleName() == "Ease off a little"
    qtbot.waitUntil(lambda: window.pages.exercise.caption.accessibleName() == "")


def test_without_a_picture_the_page_says_so(window: PatientWindow) -> None:
    assert "Not ready yet" in window.pages.welcome.start_button.text()
    window._fail("No camera answers.")
    assert "without a picture" in window.pages.welcome.start_button.text()
    assert not window.pages.welcome.start_button.isEnabled()
    feed(window, replace(HOLD, stage=Stage.WELCOME))
    assert window.pages.welcome.start_button.text() == "Start"


def test_a_refused_reading_shows_what_to_do_and_no_number(window: PatientWindow) -> None:
    feed(window, HOLD)
    feed(window, replace(HOLD, reading=refused(Doubt.TURN_TO_FACE)))
    page = window.pages.exercise
    shown = page.angle.accessibleName()
    assert "°" not in shown
    assert "Face the camera" in shown
    assert "waiting" in page.clock.accessibleName()


def test_paused_is_said_on_the_picture_and_the_button(window: PatientWindow) -> None:
    feed(window, HOLD)
    before = pixels(window.pages.exercise.picture).mean()
    feed(window, replace(HOLD, stage=Stage.PAUSED))
    assert window.pages.exercise.pause_button.text() == "Go on"
    assert pixels(window.pages.exercise.picture).mean() < before


def test_everything_of_a_page_lies_inside_the_window(window: PatientWindow) -> None:
    moments = [
        replace(HOLD, stage=Stage.WELCOME),
        HOLD,
        replace(HOLD, stage=Stage.PREPARE),
        replace(HOLD, stage=Stage.PAIN_BEFORE),
        replace(HOLD, stage=Stage.OFFER),
    ]
    for moment in moments:
        feed(window, moment)
        for part in window.findChildren(QWidget):
            if part.isVisible() and part.width() and part.height():
                corner = part.mapTo(window, part.rect().topLeft())
                assert window.rect().contains(QRect(corner, part.size())), part


def outcome_of(window: PatientWindow, because: SessionEnd = SessionEnd.COMPLETED) -> None:
    coaching = ScriptedCoaching()
    coaching._done = [
        repetition(1, 0.0, 1.0, 100.0),
        repetition(2, 2.0, 1.0, 120.0),
        repetition(3, 4.0, 1.0, 110.0),
    ]
    coaching._pain_before = 2
    coaching._end_exercise(SessionEnd.COMPLETED, 4)
    window._finish(coaching.finish(because))
    QApplication.processEvents()


def texts(page: QWidget) -> str:
    from PyQt6.QtWidgets import QLabel

    shown = [part.text() for part in page.findChildren(QLabel) if part.isVisible()]
    shown += [part.text for part in page.findChildren(TextBlock) if part.isVisible()]
    return "\n".join(shown)


def test_the_summary_tells_dose_value_pain_and_place(window: PatientWindow) -> None:
    outcome_of(window)
    shown = texts(window.pages.summary)
    for words in ("3 of 2 holds", "110° ± 6°", "2 → 4", "/home/rosa/Sessions", "pain went up"):
        assert words in shown
    assert "1 s at 100° ± 6°,  1 s at 120° ± 6°,  1 s at 110° ± 6°" in shown


def test_the_summary_has_words_for_every_end() -> None:
    told = {because: how_it_ended(because) for because in SessionEnd}
    assert told.pop(SessionEnd.COMPLETED) == ""
    assert len({*told.values()} - {""}) == len(told)


@pytest.mark.parametrize(
    ("angle_deg", "error_deg", "text"),
    [
        (112.4, 5.2, "112° ± 6°"),
        (-12.3, 0.2, "\N{MINUS SIGN}12° ± 1°"),
        (-0.3, 3.0, "0° ± 3°"),
    ],
)
def test_an_angle_is_never_written_with_too_small_an_error(
    angle_deg: float, error_deg: float, text: str
) -> None:
    assert with_error(angle_deg, error_deg, Unit.DEGREES) == text


def test_pain_is_chosen_shown_and_only_then_confirmed(window: PatientWindow) -> None:
    feed(window, replace(HOLD, stage=Stage.PAIN_BEFORE))
    answers: list[int] = []
    window.pages.pain.answered.connect(answers.append)
    window.pages.pain.confirm()
    assert answers == []
    assert not window.pages.pain.go_button.isEnabled()
    window.pages.pain.choose(6)
    assert "More than the 4 your plan allows" in texts(window.pages.pain)
    assert "left out" in texts(window.pages.pain)
    window.pages.pain.choose(4)
    assert "therapist" not in texts(window.pages.pain)
    window.pages.pain.confirm()
    assert answers == [4]
    feed(window, replace(HOLD, stage=Stage.PAIN_AFTER))
    assert window.pages.pain.chosen is None
    window.pages.pain.choose(5)
    assert "before you do this exercise again" in texts(window.pages.pain)


def test_much_pain_is_answered_whatever_the_plan_allows(window: PatientWindow) -> None:
    planned = msgspec.structs.replace(PLAN.exercises[0], pain_limit=9)
    feed(window, replace(HOLD, stage=Stage.PAIN_BEFORE, planned=planned))
    window.pages.pain.choose(8)
    assert "ask your therapist" in texts(window.pages.pain)


def test_the_cautions_name_the_plan_s_own_limits(app: QApplication, qtbot: QtBot) -> None:
    limits = (5, 3)
    exercises = tuple(
        msgspec.structs.replace(each, pain_limit=limit)
        for each, limit in zip(PLAN.exercises, limits, strict=True)
    )
    page = WelcomePage(msgspec.structs.replace(PLAN, exercises=exercises))
    qtbot.addWidget(page)
    page.show()
    assert "Pain above 3 to 5 of 10" in texts(page)


def unsaved(window: PatientWindow) -> None:
    saved = ScriptedCoaching().finish(SessionEnd.COMPLETED)
    window._finish(replace(saved, saved_at=None, fault="It is not saved; choose another folder."))
    QApplication.processEvents()


def every_stage() -> list[Callable[[PatientWindow], None]]:
    return [
        lambda window: feed(window, replace(HOLD, stage=Stage.WELCOME)),
        lambda window: feed(window, replace(HOLD, stage=Stage.PAIN_BEFORE)),
        lambda window: feed(window, replace(HOLD, stage=Stage.PREPARE)),
        lambda window: feed(window, replace(HOLD, stage=Stage.OFFER)),
        lambda window: feed(window, HOLD),
        lambda window: feed(window, replace(HOLD, stage=Stage.PAUSED)),
        outcome_of,
        unsaved,
    ]


@pytest.mark.parametrize("go", every_stage())
def test_every_control_has_a_name_and_can_be_reached_by_tab(
    window: PatientWindow, go: Callable[[PatientWindow], None]
) -> None:
    go(window)
    window.activateWindow()
    buttons = [b for b in window.findChildren(QAbstractButton) if b.isVisible() and b.isEnabled()]
    assert buttons
    assert all(button.accessibleName() for button in buttons)
    assert all(button.accessibleDescription() for button in buttons)
    reached: set[QWidget] = set()
    for _ in range(40):
        focused = window.focusWidget()
        if focused is not None:
            reached.add(focused)
        window.focusNextChild()
    missing = [b.text() for b in buttons if b not in reached and not b.property("score")]
    missing = [text for text in missing if not text.isdigit()]
    assert not missing


def test_numbers_have_names_for_a_screen_reader(window: PatientWindow) -> None:
    feed(window, HOLD)
    page: ExercisePage = window.pages.exercise
    for part in (page.angle, page.clock, page.count, page.picture):
        assert part.accessibleName()


def test_what_lasts_under_the_captions_is_told_to_a_screen_reader(window: PatientWindow) -> None:
    window.captions.note("There is no sound here.")
    assert window.pages.exercise.caption.accessibleDescription() == "There is no sound here."


def test_whoever_lands_on_the_pain_page_is_told_the_question(window: PatientWindow) -> None:
    feed(window, replace(HOLD, stage=Stage.PAIN_BEFORE))
    assert window.pages.pain.accessibleName() == "How much does your shoulder hurt now?"
