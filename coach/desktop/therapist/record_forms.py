"""What is asked for each kind of record, and the dialog that asks it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import date
from typing import Any

from PyQt6.QtGui import QKeySequence, QShortcut
from PyQt6.QtWidgets import QDialog, QDialogButtonBox, QFormLayout, QVBoxLayout, QWidget

from coach.desktop.shared.theme import SPACES_PX
from coach.desktop.therapist.plan_fields import named, said
from coach.desktop.therapist.record_fields import (
    ChoiceEntry,
    DayEntry,
    Entry,
    LongEntry,
    NumberEntry,
    TextEntry,
    words_of,
)
from coach.domain.exercise import Irritability, StiffnessPhase
from coach.domain.fault import Fault
from coach.domain.movement import Side, Unit
from coach.domain.practice import (
    Episode,
    HandMeasure,
    OfEpisode,
    OtherSideMeasure,
    Person,
    Record,
    TotalScore,
    Treatment,
    TreatmentKind,
)
from coach.review.records import treatment_name
from coach.review.wording import MOVEMENTS, SIDES, day

KIND_NAMES: Mapping[type[Record], str] = {
    Person: "person",
    Episode: "episode",
    Treatment: "treatment",
    OtherSideMeasure: "measure of the other side",
    HandMeasure: "goniometer reading",
    TotalScore: "questionnaire total",
}
_RANGE_DEG = (-90, 230)
"""Beyond every shoulder; it catches a slipped digit."""
_MOST_SCORE = 10_000
_WIDTH_PX = 560
_MOVEMENTS = {m: name for m, name in MOVEMENTS.items() if m.unit is Unit.DEGREES}

Fields = dict[str, tuple[str, Entry]]


def fields_of(kind: type[Record], today: date) -> Fields:
    """Give the fields of a form by their names in the record, each with its label."""
    if kind is Person:
        code = TextEntry("Code", 64, needed=True, hint="as it will stand in plans and files")
        name = TextEntry("Name", 200, hint="optional; it stays in this practice")
        return {"code": ("&Code", code), "name": ("&Name", name)}
    if kind is Episode:
        return {
            "side": ("Si&de", ChoiceEntry("Side", words_of(Side))),
            "began_on": ("&Began on", DayEntry("Began on", today)),
            "phase": ("P&hase", ChoiceEntry("Phase", words_of(StiffnessPhase, "not said"))),
            "irritability": (
                "&Irritability",
                ChoiceEntry("Irritability", words_of(Irritability, "not said")),
            ),
            "goals": ("&Goals, in the person's own words", LongEntry("Goals", 4_000)),
            "note": ("&Note", LongEntry("Note", 4_000)),
        }
    on: Fields = {"on": ("&Date", DayEntry("Date", today, ahead=kind is Treatment))}
    if kind is Treatment:
        return on | {
            "kind": (
                "&Treatment",
                ChoiceEntry("Treatment", {k: treatment_name(k) for k in TreatmentKind}),
            ),
            "text": ("&Note", TextEntry("Note", 4_000)),
        }
    if kind is TotalScore:
        return on | {
            "name": ("&Questionnaire", TextEntry("Questionnaire", 100, needed=True)),
            "total": ("&Total", NumberEntry("Total", 0, _MOST_SCORE)),
            "maximum": ("Out &of", NumberEntry("Out of", 0, _MOST_SCORE)),
        }
    on["movement"] = ("&Movement", ChoiceEntry("Movement", _MOVEMENTS))
    if kind is HandMeasure:
        on["side"] = ("&Side", ChoiceEntry("Side", words_of(Side)))
        on["passive"] = ("&How", ChoiceEntry("How", {True: "passive", False: "active"}))
    on["value_deg"] = ("De&grees", NumberEntry("Degrees", *_RANGE_DEG))
    return on


class RecordForm(QDialog):
    """Asks for the fields of one record; stays with a sentence where they are not taken."""

    def __init__(
        self,
        parent: QWidget,
        title: str,
        fields: Fields,
        take: Callable[[dict[str, Any]], None],
    ) -> None:
        """``take`` gets the values by their names in the record and raises ``Fault``."""
        super().__init__(parent)
        self.setWindowTitle(title)
        self.setMinimumWidth(_WIDTH_PX)
        self.fields = {name: entry for name, (_, entry) in fields.items()}
        self._take = take
        form = QFormLayout()
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        form.setHorizontalSpacing(SPACES_PX[2])
        form.setVerticalSpacing(SPACES_PX[1])
        for label, entry in fields.values():
            form.addRow(named(label, entry.widget), entry.widget)
        self.message = said("caution")
        self.message.setAccessibleName("What to correct")
        self.message.hide()
        buttons = QDialogButtonBox.StandardButton
        self.buttons = QDialogButtonBox(buttons.Save | buttons.Cancel)
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        if (save := self.buttons.button(buttons.Save)) is not None:
            save.setProperty("role", "primary")
            save.setDefault(True)
            save.setToolTip("Enter, or Ctrl+S out of a text of several lines")
        QShortcut(QKeySequence("Ctrl+S"), self).activated.connect(self.accept)
        column = QVBoxLayout(self)
        column.setContentsMargins(*(SPACES_PX[3],) * 4)
        column.setSpacing(SPACES_PX[2])
        column.addLayout(form)
        column.addWidget(self.message)
        column.addWidget(self.buttons)

    def show_record(self, record: Record) -> None:
        """Fill the fields from a record."""
        self.show_values({name: getattr(record, name) for name in self.fields})

    def show_values(self, values: Mapping[str, Any]) -> None:
        """Fill some of the fields."""
        for name, value in values.items():
            self.fields[name].show_value(value)

    def accept(self) -> None:
        """Save and close, or say what to correct and go there."""
        values: dict[str, Any] = {}
        for name, entry in self.fields.items():
            try:
                values[name] = entry.value()
            except Fault as fault:
                self._refuse(fault)
                entry.widget.setFocus()
                return
        try:
            self._take(values)
        except Fault as fault:
            self._refuse(fault)
        else:
            super().accept()

    def _refuse(self, fault: Fault) -> None:
        self.message.setText(str(fault))
        self.message.show()


def episode_field(kind: type[Record], episodes: tuple[Episode, ...]) -> Fields:
    """Give the choice of an episode, the last one first; none where there is none to choose."""
    if not issubclass(kind, OfEpisode) or len(episodes) < 2:
        return {}
    words: dict[Any, str] = {
        e.id: f"{SIDES[e.side]}, since {day(e.began_on)}" for e in reversed(episodes)
    }
    return {"episode_id": ("&Episode", ChoiceEntry("Episode", words | {None: "none"}))}
