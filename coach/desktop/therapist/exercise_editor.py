"""The dose of one exercise of a plan, and the rule for its next step."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import msgspec
from PyQt6.QtCore import Qt, pyqtSignal
from PyQt6.QtWidgets import QCheckBox, QComboBox, QVBoxLayout, QWidget

from coach.catalogue import exercise_title
from coach.desktop.shared.theme import SPACES_PX, type_scale
from coach.desktop.therapist.button import Button
from coach.desktop.therapist.choices import sides
from coach.desktop.therapist.plan_fields import (
    Days,
    Number,
    OneOf,
    OptionalNumber,
    grid_of,
    measured_text,
    named,
    said,
)
from coach.domain.exercise import Exercise
from coach.domain.fault import Fault
from coach.domain.movement import Side, Unit
from coach.domain.plan import NextStep, PlannedExercise
from coach.review.plan_wording import exercise_name
from coach.texts import translate

_RANGE_DEG = (-180, 360)
_REST_STEP_S = 5


class ExerciseEditor(QWidget):
    """Shows one ``PlannedExercise`` and tells what it became."""

    changed = pyqtSignal(object)
    refused = pyqtSignal(str)
    anew_wanted = pyqtSignal()

    def __init__(self, known: Mapping[str, Exercise]) -> None:
        """Begin with nothing to edit; ``known`` is the catalogue by its slugs."""
        super().__init__()
        self._known = known
        self._names = {slug: exercise_title(each) for slug, each in known.items()}
        self._planned: PlannedExercise | None = None
        self._filling = False
        small = type_scale().small_px
        self.name = said(size_px=small + 2, bold=True)
        self.measured = said("soft", size_px=small)
        self.unusual = said(size_px=small)
        self.unusual.setAccessibleName(translate("plans", "What is unusual in this dose"))
        self.hold = Number(translate("plans", "Hold"), 1, 60, unit=" s")
        self.repetitions = Number(translate("plans", "Repetitions"), 1, 30)
        self.rest = Number(translate("plans", "Rest"), 0, 300, unit=" s", step=_REST_STEP_S)
        self.per_day = Number(translate("plans", "Times a day"), 1, 6)
        self.pain = Number(translate("plans", "Pain limit"), 0, 10)
        self.target = OptionalNumber(translate("plans", "Not beyond, in degrees"), *_RANGE_DEG)
        self.side = OneOf(translate("plans", "Side of this exercise"), sides())
        self.days = Days()
        self.rule = QCheckBox(translate("plans", "Ne&xt step after"))
        self.sittings = Number(translate("plans", "Sittings in a row"), 1, 60)
        self.at_least = OptionalNumber(translate("plans", "At least, in degrees"), *_RANGE_DEG)
        self.pain_at_most = Number(translate("plans", "Pain at most"), 0, 10)
        self.propose = QComboBox()
        self.propose.setAccessibleName(translate("plans", "What to propose"))
        # As wide as its column: the longest name would push the fields out of the card.
        self.propose.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.anew = Button(translate("plans", "Dose &anew"))
        self.anew.setAccessibleName(translate("plans", "Propose this exercise's dose anew"))
        self.anew.clicked.connect(self.anew_wanted)
        self._arrange()
        self._connect()
        self.show_exercise(None, (), both_sides=True)

    def _arrange(self) -> None:
        self._form, self._rule_form = QWidget(), QWidget()
        self._target_label = named(translate("plans", "Not &beyond \N{DEGREE SIGN}"), self.target)
        self._at_least_label = named(translate("plans", "Reaching \N{DEGREE SIGN}"), self.at_least)
        dose = grid_of(
            self._form,
            (
                (
                    named(translate("plans", "Ho&ld"), self.hold),
                    named(translate("plans", "&Repetitions"), self.repetitions),
                ),
                (
                    named(translate("plans", "R&est"), self.rest),
                    named(translate("plans", "Times a da&y"), self.per_day),
                ),
                (named(translate("plans", "Pai&n limit"), self.pain), self._target_label),
                (named(translate("plans", "Side"), self.side),),
            ),
        )
        dose.addWidget(self.anew, 3, 2, 1, 2)
        dose.addWidget(self.days, 4, 0, 1, 4)
        dose.addWidget(self.rule, 5, 0, 1, 2)
        self._sittings_label = named(translate("plans", "Sittings"), self.sittings)
        dose.addWidget(self._sittings_label, 5, 2)
        dose.addWidget(self.sittings, 5, 3)
        rule = grid_of(
            self._rule_form,
            ((named(translate("plans", "Pain at most"), self.pain_at_most), self._at_least_label),),
        )
        rule.addWidget(named(translate("plans", "Propose"), self.propose), 1, 0)
        rule.addWidget(self.propose, 1, 1, 1, 3)
        column = QVBoxLayout(self)
        column.setContentsMargins(*(SPACES_PX[2],) * 4)
        column.setSpacing(SPACES_PX[0])
        for part in (self.name, self.measured, self.unusual, self._form, self._rule_form):
            column.addWidget(part)
        column.addStretch(1)

    def _connect(self) -> None:
        for number in (
            self.hold,
            self.repetitions,
            self.rest,
            self.per_day,
            self.pain,
            self.sittings,
            self.pain_at_most,
        ):
            number.valueChanged.connect(lambda _: self._tell())
        for line in (self.target, self.at_least):
            line.editingFinished.connect(self._tell)
        for choice in (self.side, self.propose):
            choice.currentIndexChanged.connect(lambda _: self._tell())
        self.days.changed.connect(self._tell)
        self.rule.toggled.connect(lambda _: self._tell())

    def show_exercise(
        self,
        planned: PlannedExercise | None,
        unusual: Sequence[str],
        source: str = "",
        *,
        both_sides: bool,
    ) -> None:
        """Show an exercise with what is unusual in it; its side is free where both are treated."""
        self._planned = planned
        self._form.setVisible(planned is not None)
        self.show_unusual(unusual)
        if planned is None:
            self._rule_form.hide()
            self.name.setText(translate("plans", "No exercise chosen"))
            self.measured.setText(translate("plans", "Add one from the catalogue on the left."))
            return
        self._filling = True
        try:
            self._fill(planned)
        finally:
            self._filling = False
        self.measured.setText("\n".join(filter(None, (measured_text(planned), source))))
        degrees = planned.movement is not None and planned.movement.unit is Unit.DEGREES
        for widget in (self.target, self._target_label, self.at_least, self._at_least_label):
            widget.setVisible(degrees)
        self._show_rule(planned.next_step is not None)
        self.side.setEnabled(both_sides)
        self.anew.setEnabled(planned.exercise is not None)

    def _show_rule(self, ruled: bool) -> None:
        for part in (self._sittings_label, self.sittings, self._rule_form):
            part.setVisible(ruled)

    def _fill(self, planned: PlannedExercise) -> None:
        self.name.setText(exercise_name(planned, self._names))
        self.hold.setValue(planned.hold_s)
        self.repetitions.setValue(planned.repetitions)
        self.rest.setValue(planned.rest_s)
        self.per_day.setValue(planned.per_day)
        self.pain.setValue(planned.pain_limit)
        self.target.show_number(planned.target_deg)
        self.side.choose(planned.side)
        self.days.show_days(planned.days)
        rule = planned.next_step
        self.rule.setChecked(rule is not None)
        shown = rule or NextStep(sessions=6)
        self.sittings.setValue(shown.sessions)
        self.at_least.show_number(shown.at_least_deg)
        self.pain_at_most.setValue(shown.pain_at_most)
        exercise = self._known.get(planned.exercise or "")
        harder = None if exercise is None else exercise.harder
        self.propose.clear()
        self.propose.addItem(translate("plans", "what the therapist will choose"), None)
        for slug in dict.fromkeys(s for s in (harder, shown.propose) if s is not None):
            self.propose.addItem(self._names.get(slug, slug), slug)
        proposed = shown.propose if rule is not None else harder
        self.propose.setCurrentIndex(max(0, self.propose.findData(proposed)))

    def commit(self) -> None:
        """Take over what stands in the fields; a ``Fault`` where one is not what it says."""
        if self._filling or self._planned is None:
            return
        edited = self._edited(self._planned)
        if edited != self._planned:
            self._planned = edited
            self._show_rule(edited.next_step is not None)
            self.changed.emit(edited)

    def _tell(self) -> None:
        try:
            self.commit()
        except Fault as fault:
            self.refused.emit(str(fault))

    def _edited(self, planned: PlannedExercise) -> PlannedExercise:
        days = self.days.days()
        if not days:
            raise Fault(
                translate(
                    "plans",
                    "An exercise needs a day of the week: tick one, or remove the exercise.",
                )
            )
        rule = None
        if self.rule.isChecked():
            rule = NextStep(
                sessions=int(self.sittings.value()),
                at_least_deg=self.at_least.number(),
                pain_at_most=int(self.pain_at_most.value()),
                propose=self.propose.currentData(),
            )
        return msgspec.structs.replace(
            planned,
            side=self.side.chosen(Side) or planned.side,
            hold_s=self.hold.value(),
            repetitions=int(self.repetitions.value()),
            rest_s=self.rest.value(),
            target_deg=self.target.number(),
            pain_limit=int(self.pain.value()),
            days=days,
            per_day=int(self.per_day.value()),
            next_step=rule,
        )

    def begin(self) -> None:
        """Put the keyboard into the first field."""
        self.hold.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.hold.selectAll()

    def show_unusual(self, unusual: Sequence[str]) -> None:
        """Show anew what is unusual."""
        line = translate("plans", "Outside the usual. {reason}")
        self.unusual.setText("\n".join(line.format(reason=text) for text in unusual))
        self.unusual.setVisible(bool(unusual))
