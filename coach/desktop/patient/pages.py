"""The pages of the patient's window, which of them is shown, and what each key presses there."""

from __future__ import annotations

from typing import assert_never

from PyQt6.QtCore import QRect, Qt, pyqtSignal
from PyQt6.QtGui import QImage
from PyQt6.QtWidgets import QAbstractButton, QStackedWidget, QWidget

from coach.desktop.patient.cautions_page import CautionsPage
from coach.desktop.patient.exercise_page import ExercisePage
from coach.desktop.patient.offer_page import OfferPage
from coach.desktop.patient.pain_page import PainPage
from coach.desktop.patient.prepare_page import PreparePage
from coach.desktop.patient.summary_page import SummaryPage
from coach.desktop.patient.understanding_page import UnderstandingPage
from coach.desktop.patient.weeks_page import WeeksPage
from coach.desktop.patient.welcome_page import WelcomePage
from coach.domain.agenda import AgendaItem
from coach.domain.exercise import StiffnessPhase
from coach.domain.moment import Moment, Order, Stage
from coach.domain.plan import Plan
from coach.review.diary_entries import Diary

STOP_KEYS = (Qt.Key.Key_S, Qt.Key.Key_Escape)
ENTER_KEYS = (Qt.Key.Key_Return, Qt.Key.Key_Enter)


class Pages(QStackedWidget):
    """One page a stage, and what there is to read before the first.

    ``ordered`` is what a button asks for, ``answered`` a score of pain, ``spoken`` a page that is
    to be read aloud, ``elsewhere`` a folder to save in, ``closed`` that the window is to close.
    """

    ordered = pyqtSignal(Order)
    answered = pyqtSignal(int)
    spoken = pyqtSignal(str)
    elsewhere = pyqtSignal(str)
    closed = pyqtSignal()

    def __init__(
        self,
        plan: Plan,
        agenda: tuple[AgendaItem, ...],
        notice: str,
        diary: Diary | None,
        phase: StiffnessPhase | None,
        *,
        cautions_read: bool,
        parent: QWidget | None = None,
    ) -> None:
        """Build them all and show the first; for the arguments see ``PatientWindow``."""
        super().__init__(parent)
        self.stage: Stage | None = None
        self._exercise_index = -1
        self._diary, self._phase = diary, phase
        self._cautions_read = cautions_read
        self.cautions = CautionsPage(plan, self)
        self.welcome = WelcomePage(plan, agenda, notice, self)
        self.prepare = PreparePage(self)
        self.exercise = ExercisePage(self)
        self.pain = PainPage(self)
        self.offer = OfferPage(self)
        self.summary = SummaryPage(self)
        self.weeks = WeeksPage(self)
        self.understanding = UnderstandingPage(self)
        for working in (self.welcome, self.prepare, self.exercise, self.pain, self.offer):
            working.ordered.connect(self.ordered)
            self.addWidget(working)
        for reading in (self.weeks, self.understanding):
            reading.closed.connect(self.back_to_welcome)
            self.addWidget(reading)
        self.addWidget(self.cautions)
        self.addWidget(self.summary)
        self.welcome.cautions_button.clicked.connect(self._open_cautions)
        self.cautions.read.connect(self._end_cautions)
        self.cautions.closed.connect(self.closed)
        self.cautions.spoken.connect(self.spoken)
        self.welcome.weeks_button.setVisible(diary is not None)
        self.welcome.weeks_button.clicked.connect(self._open_weeks)
        self.welcome.understanding_button.clicked.connect(self._open_understanding)
        self.welcome.stop_button.clicked.connect(self.closed)
        self.understanding.spoken.connect(self.spoken)
        self.pain.answered.connect(self.answered)
        self.summary.closed.connect(self.closed)
        self.summary.elsewhere.connect(self.elsewhere)
        if not cautions_read:
            self._open_cautions()

    @property
    def waiting(self) -> bool:
        """Whether the session has yet to be begun."""
        return self.stage in (None, Stage.WELCOME)

    @property
    def cautions_read(self) -> bool:
        """Whether all cautions were read, now or before an earlier sitting."""
        return self._cautions_read

    @property
    def reading(self) -> bool:
        """Whether something is being read that has nothing to do with the session."""
        return self.currentWidget() in (self.weeks, self.understanding)

    def press(self, key: Qt.Key) -> bool:
        """Press the button that this key stands for on the page shown, if there is one."""
        onward = key is Qt.Key.Key_Space or key in ENTER_KEYS
        stops = key in STOP_KEYS
        button: QAbstractButton | None = None
        match self.stage:
            case None | Stage.WELCOME if self.currentWidget() is self.cautions:
                button = self.cautions.button_of(key, onward=onward, stops=stops)
            case None | Stage.WELCOME if self.reading:
                if stops:
                    self.back_to_welcome()
                page = self.weeks if self.currentWidget() is self.weeks else self.understanding
                return stops or page.handle_key(key)
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
                button = self.summary.folder_button if key is Qt.Key.Key_F else button
            case _ as never:
                assert_never(never)
        if button is None or button.isHidden():
            return False
        button.click()
        return True

    def turn_to(self, moment: Moment) -> None:
        """Show the page of the moment's stage, where it is not there yet, and what it tells."""
        if (moment.stage, moment.exercise_index) != (self.stage, self._exercise_index):
            self._turn(moment)
        if moment.stage is Stage.PREPARE:
            self.prepare.show_moment(moment)
        elif moment.stage in (Stage.EXERCISE, Stage.PAUSED):
            self.exercise.show_moment(moment)
        elif moment.stage in (Stage.PAIN_BEFORE, Stage.PAIN_AFTER):
            self.pain.show_asked(moment.asked)

    def _turn(self, moment: Moment) -> None:
        self.stage, self._exercise_index = moment.stage, moment.exercise_index
        match moment.stage:
            case Stage.WELCOME:
                if not self.reading and self.currentWidget() is not self.cautions:
                    self.setCurrentWidget(self.welcome)
            case Stage.PREPARE:
                self.setCurrentWidget(self.prepare)
                self.prepare.begin(moment)
            case Stage.OFFER:
                self.setCurrentWidget(self.offer)
                self.offer.offer(moment)
            case Stage.EXERCISE | Stage.PAUSED:
                self.setCurrentWidget(self.exercise)
                self.exercise.pause_button.setFocus()
            case Stage.PAIN_BEFORE | Stage.PAIN_AFTER:
                self.setCurrentWidget(self.pain)
                self.pain.ask(moment)
            case Stage.FINISHED:
                pass  # the summary comes with the outcome
            case _ as never:
                assert_never(never)

    def end(self) -> None:
        """Show the last page."""
        self.stage = Stage.FINISHED
        self.setCurrentWidget(self.summary)

    def begin_again(self) -> None:
        """Wait for a picture once more."""
        self.welcome.wait()
        self.stage = None

    def back_to_welcome(self) -> None:
        """Leave what is being read."""
        if self.waiting:
            self.setCurrentWidget(self.welcome)
            self.welcome.start_button.setFocus()

    def show_image(self, image: QImage) -> None:
        """Show another frame, upright and unmirrored, wherever there is a picture."""
        self.welcome.picture.show_image(image)
        self.prepare.show_image(image)
        self.exercise.show_image(image)
        self.welcome.ready()

    def show_words(self, words: str) -> None:
        """Show what is being said."""
        for page in (self.cautions, self.welcome, self.prepare, self.exercise):
            page.caption.show_words(words, said=True)

    def take_words_away(self) -> None:
        """Show none of what was said any longer."""
        self.cautions.say_how_to_go_on()
        self.welcome.say_how_to_begin()
        self.prepare.caption.show_words("")
        self.exercise.caption.show_words("")

    def show_note(self, sentence: str) -> None:
        """Show something small and lasting under the captions."""
        self.cautions.show_note(sentence)
        for page in (self.welcome, self.prepare, self.exercise):
            page.caption.show_note(sentence)

    def picture_rect(self) -> QRect:
        """Give the place of the picture, or of the whole page where there is none, in pixels."""
        page = self.currentWidget()
        if isinstance(page, WelcomePage | PreparePage | ExercisePage):
            return page.picture.geometry()
        return self.rect()

    def _open_cautions(self) -> None:
        self.setCurrentWidget(self.cautions)
        self.cautions.ask(first=not self._cautions_read)

    def _end_cautions(self) -> None:
        self._cautions_read = True
        self.back_to_welcome()

    def _open_weeks(self) -> None:
        if self._diary is not None:
            self.setCurrentWidget(self.weeks)
            self.weeks.show_diary(self._diary)

    def _open_understanding(self) -> None:
        self.setCurrentWidget(self.understanding)
        self.understanding.show_for(self._phase)
