"""What the pages of a whole programme show: getting ready, by time, form, the hand, pain, offer."""

import re
from collections.abc import Iterator
from dataclasses import replace

import msgspec
import pytest
from PyQt6.QtCore import Qt
from PyQt6.QtTest import QTest
from PyQt6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from coach.app.example import example_plan
from coach.catalogue import When, catalogue, safety
from coach.cues.wording import placed
from coach.desktop.patient.coaching import Outcome
from coach.desktop.patient.score_button import ScoreButton
from coach.desktop.patient.text_block import Line, TextBlock
from coach.desktop.patient.window import PatientWindow
from coach.desktop.shared.language import choose_language
from coach.desktop.shared.palettes import LIGHT
from coach.domain.agenda import AgendaItem
from coach.domain.form import FormFault
from coach.domain.moment import Asked, Moment, Order, Stage
from coach.domain.movement import Movement
from coach.domain.plan import Plan, PlannedExercise
from coach.domain.progress import EndedBecause, Phase, TimedHold
from coach.domain.reading import Doubt, Reading
from coach.domain.session import ExerciseRecord, SessionEnd
from coach.gestures import KEPT_S, UP_S
from coach.session.agenda import easier_than

from .scripted import ScriptedCoaching, ScriptedSource
from .test_pages import SIZES, feed, ink_height, texts

PLAN: Plan = msgspec.structs.replace(example_plan(), contact="Practice at the Old Mill, 555 0100")
TIMED, MEASURED, HARD = 0, 1, 2
"""Places in the plan: the pendulum, a rotation and a stretch that has an easier neighbour."""
ITEMS = tuple(
    AgendaItem(index, planned, easier=easier_than(planned, catalogue().by_name), new=index == TIMED)
    for index, planned in enumerate(PLAN.exercises)
)


def planned(index: int) -> PlannedExercise:
    return PLAN.exercises[index]


def moment(index: int, stage: Stage, **rest: object) -> Moment:
    after = PLAN.exercises[index + 1 :]
    made = Moment(
        time_s=10.0,
        stage=stage,
        exercise_index=index,
        planned=planned(index),
        following=after[0] if after else None,
        items=ITEMS,
    )
    return replace(made, **rest)  # type: ignore[arg-type]


@pytest.fixture(params=SIZES, ids=["small", "large"])
def window(request: pytest.FixtureRequest, app: QApplication, qtbot: QtBot) -> PatientWindow:
    made = PatientWindow(
        PLAN,
        ScriptedSource,
        lambda source: ScriptedCoaching(),
        agenda=ITEMS,
        phase=PLAN.phase,
        notice="You have done everything for today.",
        cautions_read=True,
    )
    made._started = True  # the pages are fed by hand
    qtbot.addWidget(made)
    made.resize(*request.param)
    made.show()
    qtbot.waitExposed(made)
    return made


@pytest.fixture
def orders(window: PatientWindow) -> list[Order]:
    given: list[Order] = []
    pages = window.pages
    for page in (pages.prepare, pages.offer, pages.exercise, pages.pain, pages.welcome):
        page.ordered.connect(given.append)
    return given


def press(window: PatientWindow, key: Qt.Key) -> None:
    QTest.keyClick(window.focusWidget() or window, key)


def test_the_plan_used_here_has_what_these_tests_need() -> None:
    assert planned(TIMED).movement is None
    assert planned(MEASURED).movement is Movement.EXTERNAL_ROTATION_0
    assert ITEMS[HARD].easier is not None


# The first page


def test_the_first_page_lists_today(window: PatientWindow) -> None:
    feed(window, moment(0, Stage.WELCOME))
    lines = [line.replace("\N{NO-BREAK SPACE}", " ") for line in today(window)]
    assert len(lines) == len(ITEMS)
    assert all(re.search(r"\d \w+ \w+ \d+ s\b", line) for line in lines)
    assert not any(re.search(r"[0-9] s\b", line) for line in today(window)), "figure and unit"
    assert lines[TIMED] == (
        "• Loose swings, bent forward (right arm) · 2 holds of 60 s · by time · NEW"
    )
    assert all("· measured" in line and "NEW" not in line for line in lines[1:])
    assert "You have done everything for today." in texts(window.pages.welcome)


def today(window: PatientWindow) -> list[str]:
    return window.pages.welcome.today.text.splitlines()


@pytest.fixture(params=["en", "de"])
def language(request: pytest.FixtureRequest, app: QApplication) -> Iterator[str]:
    choose_language(app, request.param)
    yield request.param
    choose_language(app, "en")


def test_every_caution_is_before_the_eyes_and_can_be_read_from_a_metre(
    language: str, window: PatientWindow
) -> None:
    feed(window, moment(0, Stage.WELCOME))
    first = texts(window.pages.welcome)
    press(window, Qt.Key.Key_C)
    feed(window, moment(0, Stage.WELCOME))  # the camera's next frame leaves it open
    everything = texts(window.pages.cautions)
    for when in When:
        for rule in safety().when(when):
            assert rule.text[language] in everything
            at_once = when in (When.STOP_NOW, When.EMERGENCY)
            assert (rule.text[language] in first) == at_once
    # 20 px at 800: at 96 dots an inch that is 15 pt, read from a metre at about the angle of 9 pt
    # from 60 cm (common practice).
    shown, cautions = window.pages.welcome, window.pages.cautions
    for block in (
        cautions.before,
        cautions.stop,
        cautions.emergency,
        shown.new_cautions,
        shown.stop,
        shown.emergency,
    ):
        assert block.type_px() >= 0.025 * window.height()
    press(window, Qt.Key.Key_Escape)
    assert shown.isVisible()


def unread(qtbot: QtBot, *, at_once: bool) -> tuple[PatientWindow, ScriptedCoaching]:
    coaching = ScriptedCoaching()
    window = PatientWindow(
        coaching.plan,
        lambda: ScriptedSource(seconds=10_000),
        lambda source: coaching,
        at_once=at_once,
    )
    qtbot.addWidget(window)
    window.show()
    qtbot.waitUntil(lambda: window.stage is Stage.WELCOME, timeout=20_000)
    return window, coaching


@pytest.mark.parametrize("at_once", [False, True])
def test_nobody_begins_by_key_who_has_not_had_the_cautions(
    app: QApplication, qtbot: QtBot, at_once: bool
) -> None:
    window, coaching = unread(qtbot, at_once=at_once)
    assert window.pages.cautions.isVisible()
    steps = coaching.steps
    qtbot.waitUntil(lambda: coaching.steps > steps + 3, timeout=20_000)
    assert window.stage is Stage.WELCOME
    press(window, Qt.Key.Key_Space)
    assert window.pages.cautions_read
    if not at_once:
        assert window.pages.welcome.isVisible()
        assert coaching.orders == []
        press(window, Qt.Key.Key_Space)
    qtbot.waitUntil(lambda: window.stage is Stage.PAIN_BEFORE, timeout=20_000)
    assert coaching.orders == [(Order.START, None)]
    window.close()


def raise_hand(window: PatientWindow) -> None:
    """Raise the good hand for two seconds and let it sink."""
    for raised_s in (None, 0.4, 1.0, 1.4, 2.0, None):
        feed(window, Moment(1.0, Stage.WELCOME, 0, None, None, raised_s=raised_s))


def test_a_raised_hand_confirms_no_cautions_that_nobody_can_have_read(
    app: QApplication, qtbot: QtBot
) -> None:
    now_s = 100.0
    window = PatientWindow(PLAN, ScriptedSource, lambda source: ScriptedCoaching())
    window._started = True
    qtbot.addWidget(window)
    window.show()
    cautions, given = window.pages.cautions, list[Order]()
    window.pages.ordered.connect(given.append)
    cautions._clock = lambda: now_s
    cautions.ask(first=True)
    words = len(" ".join(line for line in cautions.words.splitlines()).split())
    assert words > 100
    assert cautions.reading_s >= 60 * words / 300  # nobody reads more words in a minute
    now_s += cautions.reading_s - 1
    raise_hand(window)
    assert cautions.isVisible()
    assert not window.pages.cautions_read
    now_s += 2
    raise_hand(window)
    assert window.pages.cautions_read
    assert window.pages.welcome.isVisible()
    assert given == [], "one raise confirms or begins, not both"
    raise_hand(window)
    assert given == [Order.START]


def test_a_hand_that_is_raised_while_something_is_read_begins_nothing(
    app: QApplication, qtbot: QtBot
) -> None:
    window = PatientWindow(
        PLAN, ScriptedSource, lambda source: ScriptedCoaching(), cautions_read=True
    )
    window._started = True
    qtbot.addWidget(window)
    window.show()
    given = list[Order]()
    window.pages.ordered.connect(given.append)
    feed(window, Moment(1.0, Stage.WELCOME, 0, None, None))
    window.pages.welcome.understanding_button.click()
    raise_hand(window)
    assert given == []


def test_who_would_rather_not_begin_closes_the_cautions(app: QApplication, qtbot: QtBot) -> None:
    window, coaching = unread(qtbot, at_once=False)
    press(window, Qt.Key.Key_Escape)
    qtbot.waitUntil(lambda: not window.isVisible(), timeout=20_000)
    assert coaching.orders == []


def test_the_cautions_of_what_is_new_are_on_the_first_page(window: PatientWindow) -> None:
    feed(window, moment(0, Stage.WELCOME))
    cautions = catalogue().get("pendulum").telling["en"].cautions
    assert cautions
    assert all(each in window.pages.welcome.new_cautions.text for each in cautions)
    others = catalogue().get("stick-extension-standing").telling["en"].cautions
    assert not any(each in texts(window.pages.welcome) for each in others)


def test_many_new_exercises_are_only_announced(app: QApplication, qtbot: QtBot) -> None:
    from coach.desktop.patient.welcome_page import WelcomePage

    page = WelcomePage(PLAN, tuple(replace(item, new=True) for item in ITEMS))
    qtbot.addWidget(page)
    assert "before it begins" in page.new_cautions.text
    assert page.today.text.count("NEW") == len(ITEMS)


def test_reading_is_opened_and_closed_by_key(window: PatientWindow, orders: list[Order]) -> None:
    feed(window, moment(0, Stage.WELCOME))
    for close in (Qt.Key.Key_Escape, Qt.Key.Key_S):
        press(window, Qt.Key.Key_U)
        assert window.pages.understanding.isVisible()
        feed(window, moment(0, Stage.WELCOME))  # the camera's next frame leaves it open
        assert window.pages.understanding.isVisible()
        press(window, close)
        assert window.pages.welcome.isVisible()
    assert orders == []
    assert not window.pages.welcome.weeks_button.isVisible()  # without a diary


def test_a_session_that_begins_leaves_the_reading(window: PatientWindow) -> None:
    feed(window, moment(0, Stage.WELCOME))
    press(window, Qt.Key.Key_U)
    feed(window, moment(0, Stage.PAIN_BEFORE, asked=Asked()))
    assert window.pages.pain.isVisible()
    window.pages.understanding.closed.emit()
    assert window.pages.pain.isVisible()


# Getting ready


def test_getting_ready_shows_one_thing_to_change(window: PatientWindow) -> None:
    page = window.pages.prepare
    feed(window, moment(TIMED, Stage.PREPARE, doubt=Doubt.NO_ROOM))
    assert page.isVisible()
    assert page.instruction.accessibleName().endswith("No room for the right arm: step back")
    # The letters that matter are read from three metres: capitals of about a twentieth.
    assert ink_height(window, page.instruction, LIGHT.caution) >= window.height() / 20
    feed(window, moment(TIMED, Stage.PREPARE))
    assert page.instruction.accessibleName().endswith("In place")


def test_getting_ready_tells_the_exercise(window: PatientWindow) -> None:
    page = window.pages.prepare
    told = catalogue().get("pendulum").telling["en"]
    feed(window, moment(TIMED, Stage.PREPARE))
    shown = texts(page)
    for words in (told.title, told.laptop[1], "Right arm", "2 holds of 60 s", "New for you"):
        assert words in shown
    assert told.by_time is not None
    for sentence in (*told.steps, *told.cautions, told.by_time):
        assert sentence in shown
    assert page.demonstration.isVisible()
    feed(window, moment(HARD, Stage.PREPARE))
    cautions = catalogue().get(planned(HARD).exercise or "").telling["en"].cautions
    assert cautions
    assert all(each in texts(page) for each in cautions)  # once a day, as they are spoken
    told_today = tuple(replace(item, told=True) for item in ITEMS)
    feed(window, moment(MEASURED, Stage.PREPARE, items=told_today))
    shown = texts(page)
    assert "New for you" not in shown
    assert not page.cautions.isVisible()
    assert "Measured: Forearm turned out" in shown


def test_a_bare_movement_has_no_demonstration(window: PatientWindow) -> None:
    bare = msgspec.structs.replace(planned(MEASURED), exercise=None)
    feed(window, moment(MEASURED, Stage.PREPARE, planned=bare))
    assert not window.pages.prepare.demonstration.isVisible()
    assert "hand sink outwards" in window.pages.prepare.steps.text


@pytest.mark.parametrize(
    ("key", "order"),
    [
        (Qt.Key.Key_Space, Order.READY),
        (Qt.Key.Key_Return, Order.READY),
        (Qt.Key.Key_P, Order.PAUSE),
        (Qt.Key.Key_N, Order.SKIP),
        (Qt.Key.Key_S, Order.STOP),
        (Qt.Key.Key_Escape, Order.STOP),
    ],
)
def test_getting_ready_by_key(
    window: PatientWindow, orders: list[Order], key: Qt.Key, order: Order
) -> None:
    feed(window, moment(MEASURED, Stage.PREPARE))
    press(window, key)
    assert orders == [order]


@pytest.mark.parametrize("index", [TIMED, MEASURED])
def test_one_exercise_alone_is_told_on_the_first_page(
    app: QApplication, qtbot: QtBot, index: int
) -> None:
    window = PatientWindow(
        PLAN,
        ScriptedSource,
        lambda source: ScriptedCoaching(),
        agenda=(ITEMS[index],),
        cautions_read=True,
    )
    window._started = True
    qtbot.addWidget(window)
    window.show()
    page = window.pages.welcome
    assert placed(planned(index)).caption in page.today.text
    assert page.demonstration.isVisible()
    assert page.demonstration.height() > window.height() / 8


def test_before_a_hold_the_hold_is_told_and_after_it_the_rest(window: PatientWindow) -> None:
    page = window.pages.exercise
    told = {}
    for phase in (Phase.REST, Phase.MOVING, Phase.SETTLING, Phase.HOLDING, Phase.RETURNING):
        feed(window, moment(MEASURED, Stage.EXERCISE, phase=phase, completed=1))
        told[phase] = page._then.text()
    now = (
        f"Now: hold 2 of {planned(MEASURED).repetitions}, for {planned(MEASURED).hold_s:g} seconds"
    )
    assert [told[p] for p in (Phase.REST, Phase.MOVING, Phase.SETTLING)] == 3 * [now]
    rest = f"Then: rest for {planned(MEASURED).rest_s:g} seconds"
    assert [told[p] for p in (Phase.HOLDING, Phase.RETURNING)] == 2 * [rest]
    feed(window, moment(MEASURED, Stage.EXERCISE, resting=True, remaining_s=5.0, completed=1))
    assert page._then.text() == f"Then: hold 2 of {planned(MEASURED).repetitions}"
    feed(window, moment(MEASURED, Stage.PAUSED, completed=1))
    assert page._then.text() == f"Then: hold 2 of {planned(MEASURED).repetitions}"


# By time


def test_a_timed_exercise_shows_no_angle(window: PatientWindow) -> None:
    page = window.pages.exercise
    feed(
        window,
        moment(
            TIMED,
            Stage.EXERCISE,
            phase=Phase.HOLDING,
            held_s=20.0,
            remaining_s=40.0,
            completed=1,
        ),
    )
    assert not page.angle.isVisible()
    assert page.demonstration.isVisible()
    assert "By time, not measured" in page.by_time.text
    assert not re.search(r"\d°", texts(page) + page.by_time.text)
    assert page.clock.accessibleName() == "Hold: seconds left: 40"  # no frame is read: no waiting
    assert page.count.accessibleName() == "Holds done: 1 of 2"
    assert ink_height(window, page.clock, LIGHT.hold) >= window.height() / 10


def test_the_angle_comes_back_with_the_next_exercise(window: PatientWindow) -> None:
    feed(window, moment(TIMED, Stage.EXERCISE))
    reading = Reading(10.0, 42.0, 5.0)
    feed(window, moment(MEASURED, Stage.EXERCISE, reading=reading, phase=Phase.MOVING))
    assert window.pages.exercise.angle.isVisible()
    assert not window.pages.exercise.demonstration.isVisible()
    assert "42°" in window.pages.exercise.angle.accessibleName()


def test_before_the_first_timed_hold_the_seconds_are_counted_down(window: PatientWindow) -> None:
    feed(window, moment(TIMED, Stage.EXERCISE, phase=Phase.REST, remaining_s=6.2))
    assert window.pages.exercise.clock.accessibleName() == "Get into place: seconds: 7"
    resting = moment(TIMED, Stage.EXERCISE, phase=Phase.REST, remaining_s=6.2, resting=True)
    feed(window, resting)
    assert window.pages.exercise.clock.accessibleName() == "Rest: seconds left: 7"


# Form and hand


def test_a_fault_of_form_is_said_beside_the_value(window: PatientWindow) -> None:
    page = window.pages.exercise
    holding = moment(
        MEASURED,
        Stage.EXERCISE,
        reading=Reading(10.0, 42.0, 5.0),
        phase=Phase.HOLDING,
        remaining_s=20.0,
    )
    feed(window, replace(holding, faults=(FormFault.LEAN,)))
    assert page.form.isVisible()
    assert page.form.accessibleName() == "Mind your body: Body tilts: lie straight"
    assert "42°" in page.angle.accessibleName()
    feed(window, holding)
    assert not page.form.isVisible()


@pytest.mark.parametrize(
    ("raised_s", "words", "share"),
    [
        (UP_S / 2, "Hand up: pause", 0.5),
        (UP_S, "Keep it up to stop", 0.0),
        ((UP_S + KEPT_S) / 2, "Keep it up to stop", 0.5),
        (KEPT_S + 1, "Keep it up to stop", 1.0),
    ],
)
def test_the_raised_hand_fills_a_bar(
    window: PatientWindow, raised_s: float, words: str, share: float
) -> None:
    feed(window, moment(MEASURED, Stage.EXERCISE, raised_s=raised_s))
    assert window.hand.isVisible()
    assert window.hand.accessibleName() == words
    assert window.hand.share == pytest.approx(share)
    feed(window, moment(MEASURED, Stage.EXERCISE))
    assert not window.hand.isVisible()


@pytest.mark.parametrize("stage", [Stage.PAIN_BEFORE, Stage.PAIN_AFTER, Stage.WELCOME])
def test_where_keeping_it_up_does_not_stop_it_is_not_said(
    window: PatientWindow, stage: Stage
) -> None:
    feed(window, moment(MEASURED, stage, raised_s=UP_S + 1))
    assert not window.hand.isVisible()


# Pain by hand


def offered(window: PatientWindow) -> list[int]:
    buttons = window.pages.pain.findChildren(ScoreButton)
    return [button.score for button in buttons if button.offered]


def asking(asked: Asked | None) -> Moment:
    return moment(MEASURED, Stage.PAIN_BEFORE, asked=asked)


@pytest.mark.parametrize("score", [0, 4, 9, 10])
def test_the_number_on_offer_moves_along_the_scale(window: PatientWindow, score: int) -> None:
    feed(window, asking(Asked()))
    assert offered(window) == []
    assert "Raise your good hand at your number" in texts(window.pages.pain)
    feed(window, asking(Asked(offered=score)))
    assert offered(window) == [score]
    button = window.pages.pain._group.button(score)
    assert isinstance(button, ScoreButton)
    # Below the pointer of the same colour: the tallest run of rows is the number's or larger.
    assert ink_height(window, button, LIGHT.hold) >= window.height() / 10


def test_the_number_chosen_by_hand_can_be_taken_back(window: PatientWindow) -> None:
    feed(window, asking(Asked(chosen=5, sure_s=2.5)))
    assert offered(window) == [5]
    assert "You chose 5. Wrong? Raise your good hand again" in texts(window.pages.pain)
    assert window.pages.pain.sure.share == pytest.approx(0.5)  # of the five seconds it stands open
    feed(window, asking(Asked(offered=1)))
    assert window.pages.pain.sure.share is None


def test_an_answer_by_key_wins(window: PatientWindow) -> None:
    answers: list[int] = []
    window.pages.pain.answered.connect(answers.append)
    feed(window, asking(Asked(offered=3)))
    press(window, Qt.Key.Key_2)
    assert offered(window) == []
    feed(window, asking(Asked(offered=4)))
    assert offered(window) == []
    assert "Press Space to go on with 2" in texts(window.pages.pain)
    press(window, Qt.Key.Key_Space)
    assert answers == [2]


# An easier one


def test_the_offer_names_the_easier_one(window: PatientWindow) -> None:
    feed(window, moment(HARD, Stage.OFFER))
    easier = ITEMS[HARD].easier
    assert easier is not None
    assert easier.exercise is not None
    shown = texts(window.pages.offer)
    assert catalogue().get(easier.exercise).telling["en"].title in shown
    assert "Ask your therapist before you do it again" in shown
    assert window.pages.offer.demonstration.isVisible()


@pytest.mark.parametrize(
    ("key", "order"),
    [
        (Qt.Key.Key_Space, Order.ACCEPT),
        (Qt.Key.Key_Return, Order.ACCEPT),
        (Qt.Key.Key_N, Order.GO_ON),
        (Qt.Key.Key_S, Order.STOP),
        (Qt.Key.Key_Escape, Order.STOP),
    ],
)
def test_the_offer_by_key(
    window: PatientWindow, orders: list[Order], key: Qt.Key, order: Order
) -> None:
    feed(window, moment(HARD, Stage.OFFER))
    press(window, key)
    assert orders == [order]


# The last page


def outcome(because: SessionEnd, *records: ExerciseRecord) -> Outcome:
    document = ScriptedCoaching(PLAN).finish(because).document
    document = msgspec.structs.replace(document, exercises=records)
    return Outcome(document, "/home/rosa/Sessions/2026-03-02.session")


def record(index: int, done: PlannedExercise, **rest: object) -> ExerciseRecord:
    return ExerciseRecord(
        planned_index=index,
        exercise=done.exercise,
        movement=done.movement,
        side=done.side,
        view=done.seen_from,
        position=done.position,
        started_s=0.0,
        ended_s=200.0,
        **{"ended_because": SessionEnd.COMPLETED, **rest},  # type: ignore[arg-type]
    )


def test_the_summary_of_a_timed_exercise_has_no_value(window: PatientWindow) -> None:
    ends = (EndedBecause.COMPLETED, EndedBecause.STOPPED)
    holds = tuple(
        TimedHold(number=n, start_s=n * 80.0, end_s=n * 80.0 + s, held_s=s, ended_because=because)
        for n, (s, because) in enumerate(zip((60.0, 12.0), ends, strict=True), 1)
    )
    window._finish(outcome(SessionEnd.COMPLETED, record(TIMED, planned(TIMED), timed=holds)))
    QApplication.processEvents()
    shown = texts(window.pages.summary)
    for words in ("Done for today", "1 of 2 holds", "72 of 120 s held", "by time"):
        assert words in shown
    assert not re.search(r"\d°", shown)


def test_the_summary_marks_the_easier_one_and_says_whom_to_ring(window: PatientWindow) -> None:
    easier = ITEMS[HARD].easier
    assert easier is not None
    assert easier.exercise is not None
    done = record(
        HARD, easier, eased=True, ended_because=SessionEnd.PAIN, pain_before=3, pain_after=8
    )
    window._finish(outcome(SessionEnd.PAIN, done))
    QApplication.processEvents()
    shown = texts(window.pages.summary)
    assert f"Easier one: {catalogue().get(easier.exercise).telling['en'].title}" in shown
    assert "ring your practice" in shown
    assert "Practice at the Old Mill, 555 0100" in shown
    assert "Done for today" not in shown


# Beginning at once, reading aloud, text


def test_the_session_begins_at_once_where_that_is_asked(app: QApplication, qtbot: QtBot) -> None:
    coaching = ScriptedCoaching()
    window = PatientWindow(
        ScriptedCoaching().plan,
        lambda: ScriptedSource(seconds=10_000),
        lambda source: coaching,
        at_once=True,
        cautions_read=True,
    )
    qtbot.addWidget(window)
    window.show()
    qtbot.waitUntil(lambda: window.stage is Stage.PAIN_BEFORE, timeout=20_000)
    assert coaching.orders == [(Order.START, None)]
    window.close()


def test_a_block_of_text_shrinks_until_all_fits(app: QApplication, qtbot: QtBot) -> None:
    block = TextBlock(0.05)
    qtbot.addWidget(block)
    block.resize(400, 300)
    block.show()
    block.show_lines((Line("Short"),))
    assert block.type_px() == pytest.approx(15.0)
    few = tuple(Line("a sentence of some eight words or more", "•") for _ in range(40))
    block.resize(400, 700)
    block.show_lines(few)
    assert 11.0 < block.type_px() < 35.0


def everywhere(window: PatientWindow) -> Iterator[Stage]:
    for stage in (Stage.PREPARE, Stage.EXERCISE, Stage.PAUSED, Stage.PAIN_BEFORE, Stage.OFFER):
        feed(window, moment(HARD, stage))
        yield stage


def test_stop_is_one_key_on_every_page(window: PatientWindow, orders: list[Order]) -> None:
    for stage in everywhere(window):
        orders.clear()
        press(window, Qt.Key.Key_S)
        assert orders == [Order.STOP], stage


def test_nothing_of_the_new_pages_lies_outside_the_window(window: PatientWindow) -> None:
    for _ in everywhere(window):
        for part in window.findChildren(QWidget):
            if part.isVisible() and part.width() and part.height():
                corner = part.mapTo(window, part.rect().topLeft())
                far = part.mapTo(window, part.rect().bottomRight())
                assert window.rect().contains(corner), part
                assert window.rect().contains(far), part
