"""The patient's window: one page a stage, the same keys everywhere."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from PyQt6.QtCore import Qt, QTimer
from PyQt6.QtGui import QCloseEvent, QKeyEvent, QResizeEvent, QShowEvent
from PyQt6.QtWidgets import QAbstractButton, QVBoxLayout, QWidget

from coach.desktop.patient.analysis import Step
from coach.desktop.patient.beginning import Beginning
from coach.desktop.patient.captions import Captions
from coach.desktop.patient.coaching import BeginCoaching, OpenSource, Outcome
from coach.desktop.patient.engine import Engine
from coach.desktop.patient.fault_banner import FaultBanner
from coach.desktop.patient.hand_gauge import HandGauge
from coach.desktop.patient.pages import ENTER_KEYS, Pages
from coach.desktop.patient.reading_area import scroll_by_key
from coach.desktop.patient.speech import Speech
from coach.desktop.shared.look_keys import dress_by_key
from coach.domain.agenda import AgendaItem
from coach.domain.exercise import StiffnessPhase
from coach.domain.moment import Moment, Order, Stage
from coach.domain.plan import Plan
from coach.review.diary_entries import Diary
from coach.voice.speaker import Speaker

NEW_DAY_MS = 60_000
"""How often a window that waits to be begun looks whether its day is over."""
_HAND_OF_HEIGHT, _HAND_INSET = 0.14, 0.03


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
        cautions_read: bool = False,
        today: Callable[[], date] = date.today,
        parent: QWidget | None = None,
    ) -> None:
        """Build the pages; the threads start when the window is first shown.

        ``agenda`` is what is due, by default the whole plan; ``diary`` what was done so far;
        ``phase`` chooses what there is to read; ``notice`` is a sentence about the day so far;
        ``at_once`` begins without being asked to, once the cautions are read: they come first
        unless they were ``cautions_read`` before an earlier sitting.
        """
        super().__init__(parent)
        self.setObjectName("page")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setWindowTitle(self.tr("Shoulder coach"))
        self.resize(1280, 800)
        self.setMinimumSize(960, 600)
        self._started = self._trouble_shown = False
        self.engine = Engine(open_source, begin, file_waits=file_waits, parent=self)
        self.engine.stepped.connect(self._step)
        self.engine.finished.connect(self._finish)
        self.engine.failed.connect(self._fail)
        self.engine.troubled.connect(self._trouble)
        self._at_once = at_once
        self.pages = Pages(
            plan, agenda, notice, diary, phase, cautions_read=cautions_read, parent=self
        )
        self._beginning = Beginning(self.pages)
        self.captions = Captions(self.pages, self)
        self.pages.currentChanged.connect(self._hush)
        self.hand = HandGauge(self)
        self.banner = FaultBanner(self)
        self.pages.ordered.connect(self.engine.order)
        self.pages.answered.connect(lambda score: self.engine.order(Order.PAIN, score))
        self.pages.spoken.connect(self._read_aloud)
        self.pages.elsewhere.connect(self._save_elsewhere)
        self.pages.closed.connect(self.close)
        self.banner.again_button.clicked.connect(self._try_again)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.banner)
        column.addWidget(self.pages, 1)
        column.addWidget(self.captions.bar)
        self.outdated = False
        self._today, self._day = today, today()
        self._midnight = QTimer(self)
        self._midnight.timeout.connect(self._look_at_the_day)
        self._midnight.start(NEW_DAY_MS)
        self._speech: Speech | None = None
        if speaker is not None:
            self._speech = Speech(speaker, self.engine.now_s, self)
            self._speech.said.connect(self.captions.say)
            self._speech.muted.connect(self.captions.note)

    @property
    def stage(self) -> Stage | None:
        """The stage of the session that is shown, None before the first picture."""
        return self.pages.stage

    @property
    def outcome(self) -> Outcome | None:
        """How the session ended, None before it has."""
        return self.engine.outcome

    def _hush(self) -> None:
        if self._speech is not None:
            self._speech.hush()

    def resizeEvent(self, event: QResizeEvent | None) -> None:  # noqa: D102, N802
        self.captions.fit(self.height())
        super().resizeEvent(event)

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
        if event is None or event.isAutoRepeat() or dress_by_key(event):
            return
        key = Qt.Key(event.key())
        focused = self.focusWidget()
        if key in ENTER_KEYS and isinstance(focused, QAbstractButton) and focused.isEnabled():
            focused.click()
        elif key is Qt.Key.Key_R and self.banner.again_button.isVisible():
            self._try_again()
        elif key is Qt.Key.Key_F11:
            self.setWindowState(self.windowState() ^ Qt.WindowState.WindowFullScreen)
        elif not (self.pages.press(key) or scroll_by_key(self.pages.currentWidget(), key)):
            super().keyPressEvent(event)

    def _read_aloud(self, words: str) -> None:
        if self._speech is not None:
            self._speech.read_aloud(words)

    def _start(self) -> None:
        if self._speech is not None:
            self._speech.start()
            if not self.pages.cautions_read:
                self._read_aloud(self.pages.cautions.prompt)
        self.engine.start()

    def _try_again(self) -> None:
        self.banner.hide()
        self.pages.begin_again()
        self.engine.start()

    def _step(self, step: Step) -> None:
        moment = step.moment
        if step.image is not None:
            self.pages.show_image(step.image)
        if self._speech is not None:
            self._speech.hear(moment)
        self.pages.turn_to(moment)
        self._beginning.take(moment)
        begins = self._at_once and self.pages.cautions_read and step.image is not None
        if begins and moment.stage is Stage.WELCOME:
            self._at_once = False
            self.engine.order(Order.START)
        self._show_hand(moment)

    def _show_hand(self, moment: Moment) -> None:
        if self.pages.reading:
            self.hand.hide()
            return
        across = self.pages.picture_rect().translated(self.pages.pos())
        inset = int(_HAND_INSET * self.height())
        self.hand.setGeometry(
            across.left() + inset,
            across.top() + inset,
            across.width() - 2 * inset,
            int(_HAND_OF_HEIGHT * self.height()),
        )
        self.hand.show_moment(moment, self._beginning.meaning())

    def _finish(self, outcome: Outcome) -> None:
        self.pages.end()
        self.hand.hide()
        self.pages.summary.show_outcome(outcome)
        if outcome.fault is not None:
            self.banner.say(outcome.fault, again=False)

    def _save_elsewhere(self, folder: str) -> None:
        self.banner.hide()
        self.engine.save_elsewhere(folder)

    def _fail(self, sentence: str) -> None:
        if self.stage is None:
            self.pages.welcome.give_up()
        self.banner.say(sentence, again=self.pages.waiting)
        self._read_aloud(sentence)

    def _look_at_the_day(self) -> None:
        waits = self.pages.waiting and not self.pages.reading
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

    def announce(self, sentence: str) -> None:
        """Show a sentence over whatever page is shown, after those that were announced before."""
        self.banner.announce(sentence)
