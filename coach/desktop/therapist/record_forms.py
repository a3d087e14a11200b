"""What is asked for each kind of record, and the dialog that asks it."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import date
from typing import Any

from PyQt6.QtGui import QKeySequence, QShortcut
from PyQt6.QtWidgets import QDialog, QDialogButtonBox, QFormLayout, QVBoxLayout, QWidget

from coach.desktop.shared.enlarged import scaled
from coach.desktop.shared.theme import SPACES_PX
from coach.desktop.therapist.button import Button
from coach.desktop.therapist.choices import angles, irritabilities, phases, sides
from coach.desktop.therapist.keys import key_name
from coach.desktop.therapist.plan_fields import named, said
from coach.desktop.therapist.record_fields import (
    ChoiceEntry,
    DayEntry,
    Entry,
    LongEntry,
    NumberEntry,
    TextEntry,
)
from coach.domain.fault import Fault
from coach.domain.practice import (
    Episode,
    HandMeasure,
    OfEpisode,
    PatientRecords,
    Person,
    Record,
    TotalScore,
    Treatment,
    TreatmentKind,
)
from coach.review.records import treatment_name
from coach.review.wording import day, side_word
from coach.texts import translate

_RANGE_DEG = (-90, 230)
"""Beyond every shoulder; it catches a slipped digit."""
_MOST_SCORE = 10_000
_WIDTH_PX = 560

Fields = dict[str, tuple[str, Entry]]


def fields_of(kind: type[Record], today: date) -> Fields:
    """Give the fields of a form by their names in the record, each with its label."""
    if kind is Person:
        return _of_person()
    if kind is Episode:
        return _of_episode(today)
    on = translate("records", "&Date")
    fields: Fields = {"on": (on, DayEntry(plain(on), today, ahead=kind is Treatment))}
    if kind is Treatment:
        kinds = {k: treatment_name(k) for k in TreatmentKind}
        treatment, note = translate("records", "&Treatment"), translate("records", "&Note")
        return fields | {
            "kind": (treatment, ChoiceEntry(plain(treatment), kinds)),
            "text": (note, TextEntry(plain(note), 4_000)),
        }
    if kind is TotalScore:
        name, total = translate("records", "&Questionnaire"), translate("records", "&Total")
        most = translate("records", "Out &of")
        return fields | {
            "name": (name, TextEntry(plain(name), 100, needed=True)),
            "total": (total, NumberEntry(plain(total), 0, _MOST_SCORE)),
            "maximum": (most, NumberEntry(plain(most), 0, _MOST_SCORE)),
        }
    movement = translate("records", "&Movement")
    fields["movement"] = (movement, ChoiceEntry(plain(movement), angles()))
    if kind is HandMeasure:
        side, how = translate("records", "&Side"), translate("records", "&How")
        ways = {True: translate("records", "passive"), False: translate("records", "active")}
        fields["side"] = (side, ChoiceEntry(plain(side), sides()))
        fields["passive"] = (how, ChoiceEntry(plain(how), ways))
    degrees = translate("records", "De&grees")
    fields["value_deg"] = (degrees, NumberEntry(plain(degrees), *_RANGE_DEG))
    return fields


def _of_person() -> Fields:
    code, name = translate("records", "&Code"), translate("records", "&Name")
    of_code = translate("records", "as it will stand in plans and files")
    of_name = translate("records", "optional; it stays in this practice")
    return {
        "code": (code, TextEntry(plain(code), 64, needed=True, hint=of_code)),
        "name": (name, TextEntry(plain(name), 200, hint=of_name)),
    }


def _of_episode(today: date) -> Fields:
    side, began = translate("records", "Si&de"), translate("records", "&Began on")
    phase, irritability = translate("records", "P&hase"), translate("records", "&Irritability")
    goals = translate("records", "&Goals, in the person's own words")
    note = translate("records", "&Note")
    not_said: dict[Any, str] = {None: translate("records", "not said")}
    return {
        "side": (side, ChoiceEntry(plain(side), sides())),
        "began_on": (began, DayEntry(plain(began), today)),
        "phase": (phase, ChoiceEntry(plain(phase), {**not_said, **phases()})),
        "irritability": (
            irritability,
            ChoiceEntry(plain(irritability), {**not_said, **irritabilities()}),
        ),
        "goals": (goals, LongEntry(plain(goals), 4_000)),
        "note": (note, LongEntry(plain(note), 4_000)),
    }


def plain(label: str) -> str:
    """Give a label without the mark of its letter."""
    return label.replace("&", "")


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
        self.setMinimumWidth(scaled(_WIDTH_PX))
        self.fields = {name: entry for name, (_, entry) in fields.items()}
        self._take = take
        form = QFormLayout()
        form.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
        form.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        form.setHorizontalSpacing(SPACES_PX[2])
        form.setVerticalSpacing(SPACES_PX[1])
        for words, entry in fields.values():
            label = named(words, entry.widget)
            if not isinstance(entry, LongEntry):  # its label stands by the first of its lines
                label.setMinimumHeight(entry.widget.sizeHint().height())
            form.addRow(label, entry.widget)
        self.message = said("caution")
        self.message.setAccessibleName(translate("records", "What to correct"))
        self.message.hide()
        self.buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel)
        save = Button(translate("records", "Save"))
        save.setProperty("role", "primary")
        save.setDefault(True)
        told = translate("records", "{enter}, or {save} out of a text of several lines")
        save.setToolTip(told.format(enter=key_name("Enter"), save=key_name("Ctrl+S")))
        self.buttons.addButton(save, QDialogButtonBox.ButtonRole.AcceptRole)
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
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
    since = translate("records", "{side}, since {day}")
    words: dict[Any, str] = {
        e.id: since.format(side=side_word(e.side), day=day(e.began_on)) for e in reversed(episodes)
    }
    label, none = translate("records", "&Episode"), translate("records", "none")
    return {"episode_id": (label, ChoiceEntry(plain(label), words | {None: none}))}


def likely(kind: type[Record], records: PatientRecords) -> dict[str, Any]:
    """Give what a new record most likely has in common with what is known."""
    if kind is HandMeasure and records.episode is not None:
        return {"side": records.episode.side}
    if kind is TotalScore and records.scores:
        return {"name": records.scores[-1].name, "maximum": records.scores[-1].maximum}
    if kind is Episode and records.episode is not None:
        return {"side": records.episode.side.other}
    return {}
