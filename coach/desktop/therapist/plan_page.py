"""Where the therapist makes a plan: the program proposes a dose, the practitioner decides."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from PyQt6.QtCore import QSignalBlocker, pyqtSignal
from PyQt6.QtGui import QKeySequence, QShortcut
from PyQt6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QListWidget,
    QVBoxLayout,
    QWidget,
)

from coach.catalogue import catalogue
from coach.desktop.shared.enlarged import Downward, beside_or_below, scaled
from coach.desktop.shared.theme import SPACES_PX, type_scale
from coach.desktop.shared.typeface import font
from coach.desktop.therapist.catalogue_list import CatalogueList
from coach.desktop.therapist.exercise_editor import ExerciseEditor
from coach.desktop.therapist.plan_draft import PlanDraft
from coach.desktop.therapist.plan_fields import said
from coach.desktop.therapist.plan_head import PlanHead
from coach.desktop.therapist.plan_issue import PlanStart
from coach.desktop.therapist.plan_list import PlanList
from coach.desktop.therapist.rows import set_rows
from coach.domain.exercise import Irritability
from coach.domain.fault import Fault
from coach.domain.movement import Side
from coach.domain.plan import Plan, PlannedExercise
from coach.review.plan_wording import dose_text
from coach.review.wording import day
from coach.texts import translate

_LEFT_SHARE, _MIDDLE_SHARE, _RIGHT_SHARE = 26, 38, 36
_DOSE_PX, _BESIDE_PX = 420, 1100


class PlanPage(QWidget):
    """The fields of the plan, the catalogue, the exercises chosen and the dose of one of them."""

    code_changed = pyqtSignal(str)
    told = pyqtSignal(str)
    refused = pyqtSignal(str)

    def __init__(self, today: Callable[[], date]) -> None:
        """Begin with an empty plan."""
        super().__init__()
        self._today = today
        known = catalogue().by_name
        self.draft = PlanDraft(known)
        small = type_scale().small_px
        self.head = PlanHead()
        self.choice = CatalogueList(catalogue())
        self.plan = PlanList()
        self.editor = ExerciseEditor(known)
        self.time = said(size_px=small + 1, bold=True)
        self.changes_title = said("soft", size_px=small + 1)
        self.changes = QListWidget()
        self.changes.setAccessibleName(translate("plans", "What changed against the opened plan"))
        set_rows(self.changes, wrapped=True)
        self.changes.setWordWrap(True)
        self.changes.setFont(font(small))
        self._arrange()
        self._connect()
        self._clean = self._state()
        self._show(0)

    def _arrange(self) -> None:
        left = QVBoxLayout()
        left.addWidget(self.choice, 3)
        left.addWidget(self.changes_title)
        left.addWidget(self.changes, 2)
        middle = QVBoxLayout()
        middle.addWidget(self.plan, 1)
        middle.addWidget(self.time)
        for column in (left, middle):
            column.setSpacing(SPACES_PX[1])
        self._lower = QHBoxLayout()
        self._lower.setSpacing(SPACES_PX[2])
        self._lower.addLayout(left, _LEFT_SHARE)
        self._lower.addLayout(middle, _MIDDLE_SHARE)
        self._lower.addWidget(self._right(), _RIGHT_SHARE)
        page = QVBoxLayout(self)
        page.setContentsMargins(0, 0, 0, 0)
        page.setSpacing(SPACES_PX[1])
        page.addWidget(self.head)
        page.addLayout(self._lower, 1)

    def _right(self) -> QWidget:
        card = QFrame()
        card.setProperty("role", "card")
        inside = QVBoxLayout(card)
        inside.setContentsMargins(*(SPACES_PX[0],) * 4)
        self._dose = Downward(self.editor)
        self.editor.setObjectName("sheet")
        self._dose.setStyleSheet("QScrollArea, QWidget#sheet { background: transparent; }")
        inside.addWidget(self._dose)
        return card

    def reflow(self, width_px: int) -> None:
        """Put the catalogue, the exercises and the dose below each other in too little room."""
        beside = width_px >= scaled(_BESIDE_PX)
        beside_or_below(self._lower, beside=beside)
        self._dose.set_whole(not beside)
        self._dose.setMinimumWidth(scaled(_DOSE_PX) if beside else 0)
        self.head.reflow(width_px)
        for each, high_px in ((self.choice, 280), (self.changes, 100), (self.plan, 280)):
            each.setMinimumHeight(0 if beside else scaled(high_px))

    def _connect(self) -> None:
        self.head.changed.connect(self._head_changed)
        self.choice.wanted.connect(self.add)
        self.plan.chosen.connect(lambda _: self._show(self.plan.row))
        self.plan.edit_wanted.connect(self.editor.begin)
        self.plan.move_wanted.connect(self._move)
        self.plan.remove_wanted.connect(self._remove)
        self.editor.changed.connect(self._edited)
        self.editor.refused.connect(self.refused)
        self.editor.anew_wanted.connect(self._anew)
        for keys, widget in (("Ctrl+F", self.choice.filter), ("Ctrl+L", self.plan.list)):
            QShortcut(QKeySequence(keys), self).activated.connect(widget.setFocus)

    def make(self) -> Plan:
        """Give the plan as it stands, issued today; a ``Fault`` says what is missing or wrong."""
        self.editor.commit()
        return self.draft.make(self.head.fields(), self._today())

    def begin_for(self, start: PlanStart) -> None:
        """Begin a patient's next plan from what is known of them."""
        self.begin(start.last)
        self.draft.measured(start.code, start.other_side)
        with QSignalBlocker(self.head):
            self.head.code.setText(start.code)
            self.head.side.choose(start.side)
            self.head.phase.choose(start.phase)
            self.head.irritability.choose(start.irritability)
        self._head_changed()
        self._clean = self._state()
        self.choice.filter.setFocus()

    def carry_key(self, key: str) -> None:
        """Put the practice's key into a plan that was just begun; that alone is no unsaved work."""
        self.head.key.setText(key)
        self._clean = self._state()

    @property
    def dirty(self) -> bool:
        """Whether something here is not in a file."""
        return self._state() != self._clean

    def add(self, slug: str) -> None:
        """Add an exercise behind the chosen one, with the dose to begin from."""
        at = self.plan.row + 1
        try:
            self.draft.add(slug, at)
        except Fault as fault:
            self.refused.emit(str(fault))
            return
        self._show(at)
        told = translate("plans", "Added: {exercise}, {dose}.")
        dose = dose_text(self.draft.exercises[at])
        self.told.emit(told.format(exercise=self.draft.names[slug], dose=dose))

    def begin(self, plan: Plan | None) -> None:
        """Begin anew, from a plan or from nothing."""
        self.draft.begin(plan)
        with QSignalBlocker(self.head):
            if plan is None:
                self.head.clear()
            else:
                self.head.show_plan(plan)
        self._head_changed()
        self._clean = self._state()
        self._show(0)

    def _state(self) -> tuple[object, ...]:
        return (self.head.state(), tuple(self.draft.exercises))

    def _head_changed(self) -> None:
        self.draft.side = self.head.side.chosen(Side)
        self.draft.irritability = self.head.irritability.chosen(Irritability)
        self._show(self.plan.row)

    def _edited(self, planned: PlannedExercise) -> None:
        self.draft.exercises[self.plan.row] = planned
        self.editor.show_unusual(self.draft.unusual(planned))
        self._show_texts(self.plan.row)

    def _anew(self) -> None:
        self.draft.anew(self.plan.row)
        self._show(self.plan.row)

    def _move(self, step: int) -> None:
        self._show(self.draft.move(self.plan.row, step))

    def _remove(self) -> None:
        row = self.plan.row
        if row >= 0:
            del self.draft.exercises[row]
            self._show(row)

    def _show(self, row: int) -> None:
        row = min(row, len(self.draft.exercises) - 1)
        self._show_texts(row)
        planned = self.draft.exercises[row] if row >= 0 else None
        hints = () if planned is None else self.draft.unusual(planned)
        source = "" if planned is None else self.draft.source(planned)
        self.editor.show_exercise(planned, hints, source, both_sides=self.draft.side is None)

    def _show_texts(self, row: int) -> None:
        self.plan.show_texts(self.draft.texts(), row)
        self.time.setText(self.draft.summary())
        self.code_changed.emit(self.head.code.text().strip())
        self._show_changes()

    def _show_changes(self) -> None:
        before = self.draft.opened
        self.changes.clear()
        for widget in (self.changes, self.changes_title):
            widget.setVisible(before is not None)
        if before is None:
            return
        title = translate("plans", "What changed against revision {revision}")
        if before.issued_on is not None:
            title = translate("plans", "What changed against revision {revision} of {day}")
        of = day(before.issued_on) if before.issued_on is not None else ""
        self.changes_title.setText(title.format(revision=before.revision, day=of))
        try:
            changes = self.draft.changes(self.head.fields())
        except Fault as fault:
            changes = (str(fault),)
        self.changes.addItems(changes or (translate("plans", "Nothing."),))
