"""A person's records on a page: entered, changed and removed by keyboard, each with a way back."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from typing import Any

import msgspec
from PyQt6.QtCore import pyqtSignal
from PyQt6.QtWidgets import (
    QHBoxLayout,
    QMenu,
    QMessageBox,
    QVBoxLayout,
    QWidget,
)

from coach.desktop.shared.enlarged import beside_or_below, scaled
from coach.desktop.shared.theme import SPACES_PX, type_scale
from coach.desktop.therapist.button import Button
from coach.desktop.therapist.keys import key_name
from coach.desktop.therapist.one_line import OneLine
from coach.desktop.therapist.plan_fields import said
from coach.desktop.therapist.record_changes import RecordChanges
from coach.desktop.therapist.record_forms import RecordForm, episode_field, fields_of, likely
from coach.desktop.therapist.record_list import RecordList
from coach.desktop.therapist.record_words import (
    added,
    changed,
    deleted,
    entries_to_add,
    how_to,
    kind_name,
    new_title,
)
from coach.domain.fault import Fault
from coach.domain.practice import (
    IssuedPlan,
    OfEpisode,
    PatientRecords,
    Person,
    Record,
)
from coach.review.history import Series
from coach.storage.store import Store
from coach.texts import translate

_BESIDE_PX = 640


class RecordsPage(QWidget):
    """Shows a ``PatientRecords`` and keeps what is changed in the store at once."""

    changed = pyqtSignal(str)
    """Whose records changed."""
    person_added = pyqtSignal(str)
    plan_wanted = pyqtSignal()
    told = pyqtSignal(str)
    refused = pyqtSignal(str)

    def __init__(self, store: Store, today: Callable[[], date]) -> None:
        """Begin empty."""
        super().__init__()
        self._store, self._today = store, today
        self._records: PatientRecords | None = None
        self._series: Sequence[Series] = ()
        self.changes = RecordChanges(store)
        self.form: RecordForm | None = None
        self._title, self._under = OneLine(), said("soft")
        self._title.setProperty("role", "title")
        self.list = RecordList()
        self.list.add_wanted.connect(self.ask_add)
        self.list.change_wanted.connect(self.ask_change)
        self.list.remove_wanted.connect(self.remove)
        self.add = Button(translate("records", "&Add\N{HORIZONTAL ELLIPSIS}"))
        self.add.setProperty("role", "primary")
        self.add.setToolTip(key_name("Ins"))
        menu = QMenu(self.add)
        for kind, text in entries_to_add().items():
            act = menu.addAction(text)
            assert act is not None
            act.triggered.connect(lambda _, kind=kind: self.ask_add(kind))
        self.add.setMenu(menu)
        self._arrange()

    def _arrange(self) -> None:
        titles = QVBoxLayout()
        titles.setSpacing(0)
        titles.addWidget(self._title)
        titles.addWidget(self._under)
        buttons = QHBoxLayout()
        buttons.setSpacing(SPACES_PX[1])
        buttons.addWidget(self.add)
        self._head = QHBoxLayout()
        self._head.setSpacing(SPACES_PX[1])
        self._head.addLayout(titles, 1)
        self._head.addLayout(buttons)
        for text, keys, act in (
            (translate("records", "C&hange\N{HORIZONTAL ELLIPSIS}"), "Enter", self.ask_change),
            (translate("records", "&Delete"), "Del", self.remove),
        ):
            button = Button(text)
            button.setToolTip(key_name(keys))
            button.clicked.connect(lambda _, act=act: act(self.list.record))
            buttons.addWidget(button)
        buttons.addStretch(1)
        how = said("soft", size_px=type_scale().small_px)
        how.setText(how_to())
        page = QVBoxLayout(self)
        page.setContentsMargins(SPACES_PX[3], SPACES_PX[2], SPACES_PX[3], SPACES_PX[2])
        page.setSpacing(SPACES_PX[2])
        page.addLayout(self._head)
        page.addWidget(self.list, 1)
        page.addWidget(how)

    def reflow(self, width_px: int) -> None:
        """Put the buttons below the title where they have too little room beside it."""
        beside_or_below(self._head, beside=width_px >= scaled(_BESIDE_PX))

    def show_person(self, records: PatientRecords, series: Sequence[Series]) -> None:
        """Show a person's records beside what the camera measured."""
        self._records, self._series = records, series
        person = records.person
        self._title.setText(person.code)
        nameless = translate("records", "no name written down (Patient, Change code or name)")
        self._under.setText(person.name or nameless)
        self.list.show_records(records, series)

    def ask_person(self, *, new: bool) -> None:
        """Ask for a new person, or for another name or code of the one shown."""
        old = None if new or self._records is None else self._records.person
        self._ask(Person, old)

    def ask_add(self, kind: type[Record]) -> None:
        """Ask for a record of a kind."""
        if kind is IssuedPlan:
            self.plan_wanted.emit()
        elif self._records is not None:
            self._ask(kind, None)

    def ask_change(self, record: Record | None) -> None:
        """Ask what a record is to become; a plan opens in the plan window."""
        if isinstance(record, IssuedPlan):
            self.plan_wanted.emit()
        elif record is not None:
            self._ask(type(record), record)

    def _ask(self, kind: type[Record], old: Record | None) -> None:
        episodes = self._records.episodes if self._records else ()
        fields = fields_of(kind, self._today()) | episode_field(kind, episodes)
        title = new_title(kind) if old is None else kind_name(kind)
        self.form = RecordForm(self, title, fields, lambda values: self._keep(kind, old, values))
        if old is not None:
            self.form.show_record(old)
        elif self._records is not None:
            self.form.show_values(likely(kind, self._records))
        self.form.open()

    def _keep(self, kind: type[Record], old: Record | None, values: dict[str, Any]) -> None:
        try:
            if old is not None:
                new = msgspec.structs.replace(old, **values)
                kept = self.changes.change(old, new, changed(kind))
            else:
                kept = self.changes.add(kind(**self._whose(kind, values)), added(kind))
        except Fault:
            self.reread()
            raise
        told = translate("records", "{record} kept.")
        self._tell(kept, told.format(record=kind_name(kind)))
        if isinstance(kept, Person) and old is None:
            self.person_added.emit(kept.code)
        else:
            self.list.go_to(kind, kept.id)

    def _whose(self, kind: type[Record], values: dict[str, Any]) -> dict[str, Any]:
        if kind is Person or self._records is None:
            return {"created_on": self._today()} | values
        known: dict[str, Any] = {"code": self._records.person.code}
        if issubclass(kind, OfEpisode) and self._records.episode is not None:
            known["episode_id"] = self._records.episode.id
        return known | values

    def remove(self, record: Record | None) -> None:
        """Remove a record; it can be taken back."""
        if record is None:
            return
        what = deleted(type(record))
        try:
            self.changes.remove(record, what)
        except Fault as fault:
            self.reread()
            self.refused.emit(str(fault))
        else:
            told = translate("records", "{what}. {key} takes it back.")
            self._tell(record, told.format(what=what, key=key_name("Ctrl+Z")))

    def ask_erase(self) -> None:
        """Erase the person shown, if that is really meant."""
        if self._records is None:
            return
        code, buttons = self._records.person.code, QMessageBox.StandardButton
        question = translate(
            "records",
            "Erase {code} with every session, record and plan? This cannot be taken back; backup "
            "copies of the store are not touched.",
        ).format(code=code)
        answer = QMessageBox.question(
            self,
            translate("records", "Erase the patient"),
            question,
            buttons.Yes | buttons.No,
            buttons.No,
        )
        if answer != buttons.Yes:
            return
        try:
            self._store.erase_person(code)
        except Fault as fault:
            self.refused.emit(str(fault))
            return
        self._records = None
        self.changes.forget()
        self.changed.emit(code)
        self.told.emit(translate("records", "{code} is erased.").format(code=code))

    def undo(self) -> None:
        """Take the last change back."""
        what = self.changes.last
        try:
            record = self.changes.undo()
        except Fault as fault:
            self.reread()
            self.refused.emit(str(fault))
        else:
            self._tell(record, translate("records", "Taken back: {what}.").format(what=what))

    def _tell(self, record: Record, text: str) -> None:
        self.changed.emit(record.code)
        self.told.emit(text)

    def reread(self) -> None:
        """Show what the store has by now."""
        if self._records is not None:
            try:
                self.show_person(self._store.records_of(self._records.person.code), self._series)
            except Fault as fault:
                self.refused.emit(str(fault))
