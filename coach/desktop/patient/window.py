"""The patient's window: one page a stage, the same keys everywhere."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import assert_never

from PyQt6.QtCore import Qt, QTimer
from PyQt6.QtGui import QCloseEvent, QKeyEvent, QShowEvent
from PyQt6.QtWidgets import (
    QAbstractButton,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from coach.desktop.patient.analysis import Step
from coach.desktop.patient.coaching import BeginCoaching, OpenSource, Outcome
from coach.desktop.patient.engine import Engine
from coach.desktop.patient.exercise_page import ExercisePage
from coach.desktop.patient.fault_banner import FaultBanner
from coach.desktop.patient.hand_gauge import HandGauge
from coach.desktop.patient.offer_page import OfferPage
from coach.desktop.patient.pain_page import PainPage
from coach.desktop.patient.prepare_page import PreparePage
from coach.desktop.patient.speech import Speech
from coach.desktop.patient.summary_page import SummaryPage
from coach.desktop.patient.understanding_page import UnderstandingPage
from coach.desktop.patient.weeks_page import WeeksPage
from coach.desktop.patient.welcome_page import WelcomePage
from coach.domain.agenda import AgendaItem
from coach.domain.exercise import StiffnessPhase
from coach.domain.moment import Moment, Order, Stage
from coach.domain.plan import Plan
from coach.review.diary_entries import Diary
from coach.voice.speaker import Speaker

STOP_KEYS = (Qt.Key.Key_S, Qt.Key.Key_Escape)
NEW_DAY_MS = 60_000
"""How often a window that waits to be begun looks whether its day is over."""
MOST_SENTENCES = 3
"""So many fit over a page."""
CAPTION_MS = 6_000
"""How long words stay: enough to read them, not so long that they are no longer true."""
_HAND_OF_HEIGHT, _HAND_INSET = 0.14, 0.03
ENTER_KEYS = (Qt.Key.Key_Return, Qt.Key.Key_Enter)


class PatientWindow(QWidget):
    """Runs one session.

    ``open_source`` and ``begin`` are called in the two threads behind the window. Without a
    ``speaker`` there is neither speech nor captions of it. ``outcome`` holds what came of it once
    the session is over. Closing the window ends the session, keeps what was done, and ends both
    threads. A window that still waits to be begun when ``today`` has changed closes itself and is
    ``outdated``: what is due and the session's date are of the day before.
    """

    def __init__(
        self,
        plan: Plan,
        open_source: OpenSource,
        begin: BeginCoaching,
        speaker: Speaker | None = None,
        *,
        file_waits: bool = True,
        agenda: tuple[AgendaItem, ...] = (),
        diary: Diary | None = None,
        phase: StiffnessPhase | None = None,
        notice: str = "",
        at_once: bool = False,
        today: Callable[[], date] = date.today,
        parent: QWidget | None = None,
    ) -> None:
        """Build the pages; the threads start when the window is first shown.

        ``agenda`` is what is due, by default the whole plan; ``diary`` what was done so far;
        ``phase`` chooses what there is to read; ``notice`` is a sentence about the day so far;
        ``at_once`` begins without being asked to.
        """
        super().__init__(parent)
        self.setObjectName("page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setWindowTitle(self.tr("Shoulder coach"))
        self.resize(1280, 800)
        self.setMinimumSize(960, 600)
        self.stage: Stage | None = None
        self._exercise_index = -1
        self._started = self._trouble_shown = False
        self.engine = Engine(open_source, begin, file_waits=file_waits, parent=self)
        self.engine.stepped.connect(self._step)
        self.engine.finished.connect(self._finish)
        self.engine.failed.connect(self._fail)
        self.engine.troubled.connect(self._trouble)
        self._diary, self._phase, self._at_once = diary, phase, at_once
        self.welcome = WelcomePage(plan, agenda, notice, self)
        self.prepare = PreparePage(self)
        self.exercise = ExercisePage(self)
        self.pain = PainPage(self)
        self.offer = OfferPage(self)
        self.weeks = WeeksPage(self)
        self.understanding = UnderstandingPage(self)
        self.hand = HandGauge(self)
        self.summary = SummaryPage(self)
        self.banner = FaultBanner(self)
        self.welcome.ordered.connect(self.engine.order)
        self.prepare.ordered.connect(self.engine.order)
        self.exercise.ordered.connect(self.engine.order)
        self.pain.ordered.connect(self.engine.order)
        self.offer.ordered.connect(self.engine.order)
        self.welcome.weeks_button.setVisible(diary is not None)
        self.welcome.weeks_button.clicked.connect(self._open_weeks)
        self.welcome.understanding_button.clicked.connect(self._open_understanding)
        self.welcome.stop_button.clicked.connect(self.close)
        self.weeks.closed.connect(self._back_to_welcome)
        self.understanding.closed.connect(self._back_to_welcome)
        self.understanding.spoken.connect(self._read_aloud)
        self.pain.answered.connect(lambda score: self.engine.order(Order.PAIN, score))
        self.summary.closed.connect(self.close)
        self.banner.again_button.clicked.connect(self._try_again)
        self._pages = QStackedWidget(self)
        for page in (
            self.welcome,
            self.prepare,
            self.exercise,
            self.pain,
            self.offer,
            self.summary,
            self.weeks,
            self.understanding,
        ):
            self._pages.addWidget(page)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.banner)
        column.addWidget(self._pages, 1)
        self.outdated = False
        self._announced: list[str] = []
        self._today, self._day = today, today()
        self._midnight = QTimer(self)
        self._midnight.timeout.connect(self._look_at_the_day)
        self._midnight.start(NEW_DAY_MS)
        self._caption_age = QTimer(self)
        self._caption_age.setSingleShot(True)
        self._caption_age.timeout.connect(self._unsay)
        self._speech: Speech | None = None
        if speaker is not None:
            self._speech = Speech(speaker, self.engine.now_s, self)
            self._speech.said.connect(self._say)
            self._speech.muted.connect(self.note)

    @property
    def outcome(self) -> Outcome | None:
        """How the session ended, None before it has."""
        return self.engine.outcome

    def showEvent(self, event: QShowEvent | None) -> None:  # noqa: D102, N802
        super().showEvent(event)
        if not self._started:
            self._started = True
            # The window is to be seen before the camera and the model take their seconds.
            QTimer.singleShot(0, self._start)

    def closeEvent(self, event: QCloseEvent | None) -> None:  # noqa: D102, N802
        if self._speech is not None:
            self._speech.stop()
        self.engine.close()
        super().closeEvent(event)

    def keyPressEvent(self, event: QKeyEvent | None) -> None:  # noqa: D102, N802
        if event is None or event.isAutoRepeat():
            return
        key = Qt.Key(event.key())
        focused = self.focusWidget()
        if key in ENTER_KEYS and isinstance(focused, QAbstractButton) and focused.isEnabled():
            focused.click()
        elif key is Qt.Key.Key_R and self.banner.again_button.isVisible():
            self._try_again()
        elif key is Qt.Key.Key_F11:
            self.setWindowState(self.windowState() ^ Qt.WindowState.WindowFullScreen)
        elif not self._order_by_key(key):
            super().keyPressEvent(event)

    def _order_by_key(self, key: Qt.Key) -> bool:
        onward = key is Qt.Key.Key_Space or key in ENTER_KEYS
        stops = key in STOP_KEYS
        button: QAbstractButton | None = None
        match self.stage:
            case None | Stage.WELCOME if self._reading:
                if stops:
                    self._back_to_welcome()
                return stops
            case None | Stage.WELCOME:
                button = self.welcome.button_of(key)
                if onward and self.stage is Stage.WELCOME:
                    button = self.welcome.start_button
                button = self.welcome.stop_button if stops else button
            case Stage.PREPARE:
                button = self.prepare.ready_button if onward else None
                button = self.prepare.skip_button if key is Qt.Key.Key_N else button
                button = self.prepare.pause_button if key is Qt.Key.Key_P else button
                button = self.prepare.stop_button if stops else button
            case Stage.EXERCISE | Stage.PAUSED:
                button = self.exercise.pause_button if onward else None
                button = self.exercise.skip_button if key is Qt.Key.Key_N else button
                button = self.exercise.stop_button if stops else button
            case Stage.PAIN_BEFORE | Stage.PAIN_AFTER:
                button = self.pain.go_button if onward else None
                button = self.pain.stop_button if stops else button
            case Stage.OFFER:
                button = self.offer.accept_button if onward else None
                button = self.offer.go_on_button if key is Qt.Key.Key_N else button
                button = self.offer.stop_button if stops else button
            case Stage.FINISHED:
                leaves = key in ENTER_KEYS or stops
                button = self.summary.close_button if leaves else None
            case _ as never:
                assert_never(never)
        if button is None:
            return False
        button.click()
        return True

    @property
    def _reading(self) -> bool:
        return self._pages.currentWidget() in (self.weeks, self.understanding)

    def _open_weeks(self) -> None:
        if self._diary is not None:
            self._pages.setCurrentWidget(self.weeks)
            self.weeks.show_diary(self._diary)

    def _open_understanding(self) -> None:
        self._pages.setCurrentWidget(self.understanding)
        self.understanding.show_for(self._phase)

    def _back_to_welcome(self) -> None:
        if self.stage in (None, Stage.WELCOME):
            self._pages.setCurrentWidget(self.welcome)
            self.welcome.start_button.setFocus()

    def _read_aloud(self, words: str) -> None:
        if self._speech is not None:
            self._speech.read_aloud(words)

    def _start(self) -> None:
        if self._speech is not None:
            self._speech.start()
        self.engine.start()

    def _try_again(self) -> None:
        self.banner.hide()
        self.welcome.wait()
        self.stage = None
        self.engine.start()

    def _step(self, step: Step) -> None:
        moment = step.moment
        if step.image is not None:
            self.welcome.picture.show_image(step.image)
            self.prepare.show_image(step.image)
            self.exercise.show_image(step.image)
            self.welcome.ready()
        if self._speech is not None:
            self._speech.hear(moment)
        self._turn_page(moment)
        if moment.stage is Stage.PREPARE:
            self.prepare.show_moment(moment)
        elif moment.stage in (Stage.EXERCISE, Stage.PAUSED):
            self.exercise.show_moment(moment)
        elif moment.stage in (Stage.PAIN_BEFORE, Stage.PAIN_AFTER):
            self.pain.show_asked(moment.asked)
        elif self._at_once and step.image is not None and moment.stage is Stage.WELCOME:
            self._at_once = False
            self.engine.order(Order.START)
        self._show_hand(moment)

    def _show_hand(self, moment: Moment) -> None:
        page = self._pages.currentWidget()
        if self._reading:
            self.hand.hide()
            return
        across = self._pages.geometry()
        if isinstance(page, WelcomePage | PreparePage | ExercisePage):
            across = page.picture.geometry().translated(self._pages.pos())
        inset = int(_HAND_INSET * self.height())
        self.hand.setGeometry(
            across.left() + inset,
            across.top() + inset,
            across.width() - 2 * inset,
            int(_HAND_OF_HEIGHT * self.height()),
        )
        self.hand.show_moment(moment)

    def _turn_page(self, moment: Moment) -> None:
        if moment.stage is self.stage and moment.exercise_index == self._exercise_index:
            return
        self.stage, self._exercise_index = moment.stage, moment.exercise_index
        match moment.stage:
            case Stage.WELCOME:
                if not self._reading:
                    self._pages.setCurrentWidget(self.welcome)
            case Stage.PREPARE:
                self._pages.setCurrentWidget(self.prepare)
                self.prepare.begin(moment)
            case Stage.OFFER:
                self._pages.setCurrentWidget(self.offer)
                self.offer.offer(moment)
            case Stage.EXERCISE | Stage.PAUSED:
                self._pages.setCurrentWidget(self.exercise)
                self.exercise.pause_button.setFocus()
            case Stage.PAIN_BEFORE | Stage.PAIN_AFTER:
                self._pages.setCurrentWidget(self.pain)
                self.pain.ask(moment)
            case Stage.FINISHED:
                pass  # the summary comes with the outcome
            case _ as never:
                assert_never(never)

    def _finish(self, outcome: Outcome) -> None:
        self.stage = Stage.FINISHED
        self.hand.hide()
        self._pages.setCurrentWidget(self.summary)
        self.summary.show_outcome(outcome)
        if outcome.fault is not None:
            self.banner.say(outcome.fault, again=False)

    def _fail(self, sentence: str) -> None:
        if self.stage is None:
            self.welcome.give_up()
        self.banner.say(sentence, again=self.stage in (None, Stage.WELCOME))

    def _look_at_the_day(self) -> None:
        waits = self.stage in (None, Stage.WELCOME) and not self._reading
        if waits and self._today() != self._day:
            self.outdated = True
            self.close()

    def _trouble(self, sentence: str) -> None:
        if sentence:
            self.banner.say(sentence, again=False)
            self._read_aloud(sentence)
        elif self._trouble_shown:
            self.banner.hide()
        self._trouble_shown = bool(sentence)

    def note(self, sentence: str) -> None:
        """Show something small and lasting under the captions."""
        self.welcome.caption.show_note(sentence)
        self.prepare.caption.show_note(sentence)
        self.exercise.caption.show_note(sentence)

    def announce(self, sentence: str) -> None:
        """Show a sentence over whatever page is shown, after those that were announced before."""
        self._announced.append(sentence)
        more = len(self._announced) - MOST_SENTENCES
        shown = self._announced[:MOST_SENTENCES]
        if more > 0:
            shown.append(self.tr("And {count} more of the kind.").format(count=more))
        self.banner.say(" ".join(shown), again=False)

    def _say(self, words: str) -> None:
        self.welcome.caption.show_words(words)
        self.prepare.caption.show_words(words)
        self.exercise.caption.show_words(words)
        self._caption_age.start(CAPTION_MS)

    def _unsay(self) -> None:
        self.welcome.say_how_to_begin()
        self.prepare.caption.show_words("")
        self.exercise.caption.show_words("")
