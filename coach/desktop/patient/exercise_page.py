"""The page of an exercise: mirror and caption at the left, numbers and buttons at the right."""

from __future__ import annotations

import math
from typing import assert_never

from PyQt6.QtCore import pyqtSignal
from PyQt6.QtGui import QImage, QResizeEvent
from PyQt6.QtWidgets import QGridLayout, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from coach.counting.timed import LEAD_S
from coach.cues.wording import doubt_sentence, form_sentence, instructed, telling
from coach.desktop.patient.band import Band
from coach.desktop.patient.caption import Caption
from coach.desktop.patient.controls import KeyButton
from coach.desktop.patient.demonstration_place import DemonstrationPlace
from coach.desktop.patient.lettering import grown
from coach.desktop.patient.limb import limb_of
from coach.desktop.patient.picture import Picture
from coach.desktop.patient.readouts import HoldCount, Readout, Tone
from coach.desktop.patient.text_block import Line, TextBlock
from coach.desktop.patient.wording import exercise_name, measured_name, value_parts
from coach.desktop.shared.looks import looks
from coach.desktop.shared.typeface import font
from coach.domain.moment import Moment, Order, Stage
from coach.domain.movement import Movement
from coach.domain.plan import PlannedExercise
from coach.domain.progress import Phase

_PANEL_OF_WIDTH = 0.38
_PANEL_GROWS = 0.3
_PANEL_OF_HEIGHT = 0.56
"""The panel's least width as a share of the window's height, so that its numbers fit."""
_FORM_OF_HEIGHT, _FORM_INSET = 0.15, 0.06


class ExercisePage(QWidget):
    """Shows a Moment of the stages EXERCISE and PAUSED; ``ordered`` is what a button asks for."""

    ordered = pyqtSignal(Order)

    def __init__(self, parent: QWidget | None = None) -> None:
        """Begin empty."""
        super().__init__(parent)
        self.setObjectName("page")
        self._paused = False
        self.picture = Picture(parent=self)
        self.caption = Caption(self)
        self.angle = Readout(0.168, self)
        self.form = Readout(0.1, self)
        self.demonstration = DemonstrationPlace(self)
        self.by_time = TextBlock(0.032, least=0.014, parent=self)
        self._timed = QWidget(self)
        timed = QHBoxLayout(self._timed)
        timed.setContentsMargins(0, 0, 0, 0)
        timed.setSpacing(14)
        timed.addWidget(self.demonstration, 6)
        timed.addWidget(self.by_time, 5)
        self.clock = Readout(0.30, self)
        self.count = HoldCount(self)
        self._title, self._then = QLabel(self), QLabel(self)
        self._title.setWordWrap(True)
        self._then.setWordWrap(True)
        self._then.setProperty("role", "soft")
        self.pause_button = KeyButton(self.tr("Pause"), self.tr("Space"), "primary")
        self.skip_button = KeyButton(self.tr("Skip"), "N", share=0.026)
        self.stop_button = KeyButton(self.tr("Stop"), "S", "stop", share=0.026)
        self.pause_button.clicked.connect(self._toggle)
        self.skip_button.clicked.connect(lambda: self.ordered.emit(Order.SKIP))
        self.stop_button.clicked.connect(lambda: self.ordered.emit(Order.STOP))
        self._panel = QWidget(self)
        column = QVBoxLayout(self._panel)
        column.setSpacing(0)
        column.addWidget(self._title, 10)
        column.addWidget(self.count, 14)
        column.addSpacing(12)
        column.addWidget(self.angle, 21)
        column.addWidget(self._timed, 21)
        column.addSpacing(8)
        column.addWidget(self.clock, 28)
        column.addWidget(self._then, 8)
        buttons = QGridLayout()
        buttons.setSpacing(10)
        buttons.addWidget(self.pause_button, 0, 0, 1, 2)
        buttons.addWidget(self.skip_button, 1, 0)
        buttons.addWidget(self.stop_button, 1, 1)
        column.addLayout(buttons, 17)

    def resizeEvent(self, event: QResizeEvent | None) -> None:  # noqa: D102, N802
        wide, tall = self.width(), self.height()
        share = _PANEL_OF_WIDTH * (1 + _PANEL_GROWS * (looks().text - 1))
        panel = min(int(max(share * wide, _PANEL_OF_HEIGHT * tall)), wide - 320)
        strip = 0 if self.caption.isHidden() else int(0.15 * tall)
        self.picture.setGeometry(0, 0, wide - panel, tall - strip)
        self.caption.setGeometry(0, tall - strip, wide - panel, strip)
        inset, height = int(_FORM_INSET * tall), int(_FORM_OF_HEIGHT * tall)
        self.form.setGeometry(
            inset, tall - strip - height - inset, wide - panel - 2 * inset, height
        )
        self._panel.setGeometry(wide - panel, 0, panel, tall)
        self._timed.setMaximumHeight(int(0.24 * tall))
        self.clock.setMinimumHeight(int(0.2 * tall))
        self.count.setMinimumHeight(int(0.08 * tall))
        edge = int(0.028 * tall)
        if (layout := self._panel.layout()) is not None:
            layout.setContentsMargins(edge, edge // 2, edge, edge)
        self._title.setFont(font(grown(0.035) * tall, bold=True))
        self._then.setFont(font(grown(0.032) * tall, bold=True))

    def show_image(self, image: QImage) -> None:
        """Show another frame, upright and unmirrored."""
        self.picture.show_image(image)

    def show_moment(self, moment: Moment) -> None:
        """Show everything else."""
        planned = moment.planned
        self._paused = moment.stage is Stage.PAUSED
        self.pause_button.name(self.tr("Go on") if self._paused else self.tr("Pause"))
        self.picture.show_veil(self.tr("Paused") if self._paused else "")
        if planned is None:
            return
        self._title.setText(exercise_name(planned))
        self.count.show_count(moment.repetitions, planned, moment.held_s, moment.completed)
        self._show_form(moment, planned)
        self.angle.setVisible(self._paused or planned.movement is not None)
        self._timed.setVisible(not self._paused and planned.movement is None)
        if self._paused:
            self._show_pause()
        else:
            if planned.movement is None:
                self._show_timed(planned)
            else:
                self._show_angle(moment, planned, planned.movement)
            self._show_clock(moment, planned)
        self._then.setText(self._what_follows(moment, planned))

    def _show_form(self, moment: Moment, planned: PlannedExercise) -> None:
        if self._paused or not moment.faults:
            self.form.hide()
            return
        words = form_sentence(moment.faults[0], planned.position).caption
        self.form.show_words(self.tr("Mind your body"), words, Tone.ALARM)
        self.form.show()
        self.form.raise_()

    def _show_timed(self, planned: PlannedExercise) -> None:
        words = telling(planned)
        why = "" if words is None else words.by_time or ""
        lines = [Line(self.tr("By time, not measured"), bold=True)]
        if why and looks().text == 1.0:  # enlarged it was read before, on a page that scrolls
            lines.append(Line(why, colour="ink_soft"))
        self.by_time.show_lines(tuple(lines))
        self.demonstration.show_planned(planned)
        self.picture.show_limb(None)

    def _show_angle(self, moment: Moment, planned: PlannedExercise, movement: Movement) -> None:
        reading = moment.reading
        heading = measured_name(movement)
        value_text = error_text = ""
        value, error = None, 0.0
        if reading is None:
            self.angle.show_words(heading, self.tr("Looking for you"))
        elif reading.value is None or reading.error is None:
            if reading.doubt is not None:
                words = doubt_sentence(reading.doubt, planned.side, planned.position).caption
                self.angle.show_words(self.tr("Not measured now"), words, Tone.ALARM)
        else:
            value = reading.value if moment.shown is None else moment.shown
            error = reading.error
            value_text, error_text = value_parts(value, error, movement.unit)
            self.angle.show_number(heading, value_text, error_text)
        limb = None if moment.pose is None else limb_of(moment.pose, planned, value, error)
        self.picture.show_limb(limb, value_text, error_text)

    def _show_pause(self) -> None:
        self.picture.show_limb(None)
        self.picture.show_band(None)
        self.angle.show_words(self.tr("Paused"), self.tr("Let your arm rest"))
        self.clock.show_words(self.tr("To go on"), self.tr("Raise your good hand, or press Space"))

    def _show_clock(self, moment: Moment, planned: PlannedExercise) -> None:
        left_s = moment.remaining_s
        holding = moment.phase is Phase.HOLDING and moment.held_s < planned.hold_s
        if left_s is not None and moment.phase is Phase.REST and not moment.resting:
            self._show_lead(left_s)
            return
        if left_s is None or not (moment.resting or holding):
            self.picture.show_band(None)
            self._show_phase(moment, planned)
            return
        whole_s = planned.rest_s if moment.resting else planned.hold_s
        unseen = moment.reading is None or not moment.reading.usable
        waiting = not moment.resting and planned.movement is not None and unseen
        self.picture.show_band(Band(left_s, whole_s, moment.resting, waiting))
        if waiting:
            heading, tone = self.tr("The clock is waiting: seconds left"), Tone.WAITING
        elif moment.resting:
            heading, tone = self.tr("Rest: seconds left"), Tone.REST
        else:
            heading, tone = self.tr("Hold: seconds left"), Tone.HOLD
        self.clock.show_number(heading, str(math.ceil(max(0.0, left_s))), tone=tone)

    def _show_lead(self, left_s: float) -> None:
        self.picture.show_band(Band(left_s, LEAD_S, resting=True))
        self.clock.show_number(
            self.tr("Get into place: seconds"), str(math.ceil(max(0.0, left_s))), tone=Tone.REST
        )

    def _show_phase(self, moment: Moment, planned: PlannedExercise) -> None:
        heading = self.tr("Now")
        match moment.phase:
            case Phase.REST:
                words = instructed(planned).caption
                if moment.reading is not None and not moment.reading.usable:
                    heading = self.tr("After that")
            case Phase.MOVING:
                words = self.tr("Slowly, until you feel a stretch")
            case Phase.SETTLING:
                words = self.tr("Stay there")
            case Phase.HOLDING if moment.held_s < planned.hold_s:
                words = self.tr("Hold")
            case Phase.HOLDING | Phase.RETURNING:
                words = self.tr("Slowly back")
                if moment.held_s >= planned.hold_s:
                    heading = self.tr("Held long enough")
            case _ as never:
                assert_never(never)
        self.clock.show_words(heading, words)

    def _what_follows(self, moment: Moment, planned: PlannedExercise) -> str:
        done, waits = moment.completed, moment.resting or self._paused
        ahead = moment.phase in (Phase.REST, Phase.MOVING, Phase.SETTLING)
        if ahead and not waits and done < planned.repetitions:
            return self.tr("Now: hold {number} of {asked}, for {hold_s} seconds").format(
                number=done + 1, asked=planned.repetitions, hold_s=f"{planned.hold_s:g}"
            )
        if moment.phase is Phase.HOLDING and moment.held_s < planned.hold_s:
            done += 1
        if done < planned.repetitions:
            if waits or planned.rest_s == 0:
                then = self.tr("Then: hold {number} of {asked}")
                return then.format(number=done + 1, asked=planned.repetitions)
            return self.tr("Then: rest for {rest_s} seconds").format(rest_s=f"{planned.rest_s:g}")
        if moment.following is not None:
            return self.tr("Then: {name}").format(name=exercise_name(moment.following))
        return self.tr("Then: you are done for today")

    def _toggle(self) -> None:
        self.ordered.emit(Order.RESUME if self._paused else Order.PAUSE)
