"""Getting ready: what comes, where the laptop goes, and the one thing to change."""

from __future__ import annotations

from PyQt6.QtCore import Qt, pyqtSignal
from PyQt6.QtGui import QImage
from PyQt6.QtWidgets import QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from coach.cues.wording import dose_sentence, doubt_sentence, instructed, placed, telling
from coach.desktop.patient.button_rows import ButtonRows
from coach.desktop.patient.caption import Caption
from coach.desktop.patient.controls import KeyButton
from coach.desktop.patient.demonstration_place import DemonstrationPlace
from coach.desktop.patient.laptop_place import LaptopPlace
from coach.desktop.patient.picture import Picture
from coach.desktop.patient.prose import ProsePage
from coach.desktop.patient.reading_area import ReadingArea
from coach.desktop.patient.readouts import Readout, Tone
from coach.desktop.patient.text_block import Line, TextBlock
from coach.desktop.patient.wording import exercise_name, measured_name, side_name, translate
from coach.domain.agenda import AgendaItem
from coach.domain.moment import Moment, Order
from coach.domain.movement import Position, Side, View
from coach.domain.plan import PlannedExercise


class PreparePage(ProsePage):
    """Shows a Moment of the stage PREPARE; ``ordered`` is what a button asks for."""

    ordered = pyqtSignal(Order)

    def __init__(self, parent: QWidget | None = None) -> None:
        """Begin empty."""
        super().__init__(parent)
        self.picture = Picture(framed=False, parent=self)
        self.instruction = Readout(0.1, self)
        self.caption = Caption(self)
        self._title = self.line("", 0.05, bold=True)
        self._new = self.line(self.tr("New for you"), 0.032, bold=True, role="badge", wrap=False)
        self._dose = self.line("", 0.032, bold=True)
        self._measured = self.line("", 0.026, role="soft")
        self.demonstration = DemonstrationPlace(self)
        self.laptop = LaptopPlace(View.FRONT, Position.STANDING, Side.RIGHT, parent=self)
        self.place = TextBlock(0.034, parent=self)
        self.steps = TextBlock(0.032, parent=self)
        self.cautions = TextBlock(0.028, ground="caution_wash", edge="caution", parent=self)
        self.ready_button = KeyButton(
            self.tr("Begin now"), self.tr("Space"), "primary", share=0.036
        )
        self.pause_button = KeyButton(self.tr("Pause"), "P", share=0.026)
        self.skip_button = KeyButton(self.tr("Skip"), "N", share=0.026)
        self.stop_button = KeyButton(self.tr("Stop"), "S", "stop", share=0.026)
        for button, order in (
            (self.ready_button, Order.READY),
            (self.pause_button, Order.PAUSE),
            (self.skip_button, Order.SKIP),
            (self.stop_button, Order.STOP),
        ):
            button.clicked.connect(lambda _, given=order: self.ordered.emit(given))
            button.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        mirror = QVBoxLayout()
        mirror.setSpacing(0)
        mirror.addWidget(self.picture, 62)
        mirror.addWidget(self.instruction, 23)
        mirror.addWidget(self.caption, 15)
        row.addLayout(mirror, 46)
        row.addLayout(self._words(), 54)

    def _words(self) -> QVBoxLayout:
        head = QHBoxLayout()
        head.setSpacing(14)
        head.addWidget(self._title, 1)
        head.addWidget(self._new, 0, Qt.AlignmentFlag.AlignTop)
        laptop = QVBoxLayout()
        laptop.setSpacing(4)
        laptop.addWidget(self.laptop, 10)
        laptop.addWidget(self.place, 3)
        pictures = QHBoxLayout()
        pictures.setSpacing(18)
        pictures.addWidget(self.demonstration, 11)
        pictures.addLayout(laptop, 9)
        others = (self.stop_button, 3), (self.skip_button, 3), (self.pause_button, 3)
        buttons = ButtonRows((others, ((self.ready_button, 6),)))
        told = QVBoxLayout()
        told.setContentsMargins(0, 0, 0, 0)
        told.setSpacing(8)
        told.addLayout(head)
        told.addWidget(self._dose)
        told.addWidget(self._measured)
        told.addLayout(pictures, 50)
        told.addWidget(self.steps, 27)
        told.addWidget(self.cautions, 13)
        column = QVBoxLayout()
        column.setContentsMargins(24, 16, 24, 20)
        column.setSpacing(8)
        column.addWidget(ReadingArea(told, self.tr("What to do"), self), 1)
        column.addWidget(buttons)
        return column

    def show_image(self, image: QImage) -> None:
        """Show another frame, upright and unmirrored."""
        self.picture.show_image(image)

    def begin(self, moment: Moment) -> None:
        """Show what comes, once."""
        planned, item = moment.planned, moment.item
        if planned is None:
            return
        words = telling(planned)
        self._title.setText(exercise_name(planned))
        self._new.setVisible(item is not None and item.new)
        self._dose.setText(f"{side_name(planned.side)}  ·  {dose_sentence(planned).caption}")
        self._measured.setText(_what_is_measured(planned))
        self.demonstration.show_planned(planned)
        self.laptop.show_place(planned.seen_from, planned.position, planned.side)
        self.place.show_lines((Line(placed(planned).caption, bold=True),))
        told = (instructed(planned).spoken,) if words is None else words.steps
        self.steps.show_lines(
            tuple(
                Line(step, f"{number}." if len(told) > 1 else "")
                for number, step in enumerate(told, 1)
            )
        )
        cautions = _cautions(item)
        self.cautions.show_lines(tuple(Line(each, "!") for each in cautions))
        self.cautions.setVisible(bool(cautions))
        self.ready_button.setFocus()

    def show_moment(self, moment: Moment) -> None:
        """Show the one thing to change, or that nothing is."""
        planned = moment.planned
        if planned is None:
            return
        if moment.doubt is None:
            self.instruction.show_words(
                self.tr("Listen: it begins by itself"), self.tr("In place"), Tone.CALM
            )
        else:
            words = doubt_sentence(moment.doubt, planned.side, planned.position).caption
            self.instruction.show_words(self.tr("Change this first"), words, Tone.ALARM)


def _what_is_measured(planned: PlannedExercise) -> str:
    if planned.movement is not None:
        return translate("patient", "Measured: {what}").format(what=measured_name(planned.movement))
    words = telling(planned)
    return "" if words is None else words.by_time or ""


def _cautions(item: AgendaItem | None) -> tuple[str, ...]:
    words = None if item is None or item.told else telling(item.planned)
    return () if words is None else words.cautions
