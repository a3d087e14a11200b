"""A plan while it is made: its exercises, what they were, and what they come to."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from typing import Any

import msgspec

from coach.catalogue import exercise_title
from coach.desktop.therapist.keys import key_name
from coach.desktop.therapist.plan_fields import measured_text
from coach.documents.plan import read_plan, write_plan
from coach.domain.exercise import Exercise, Irritability
from coach.domain.fault import Fault
from coach.domain.movement import Side
from coach.domain.plan import OtherSide, Plan, PlannedExercise
from coach.review.dose_sources import source_words
from coach.review.plan_changes import plan_changes
from coach.review.plan_wording import dose_text, exercise_name
from coach.review.plans import proposed, time_a_day, unusual
from coach.review.wording import side_word
from coach.storage.sealed import check_public_key
from coach.texts import translate

MOST_EXERCISES = 40
"""As the plan's own bounds say."""


class PlanDraft:
    """Exercises in their order, beside the plan from which they were changed, if any.

    ``irritability`` None: the doses are proposed as for high, the most careful, and not compared.
    """

    def __init__(self, known: Mapping[str, Exercise]) -> None:
        """Begin empty; ``known`` is the catalogue by its slugs."""
        self._known = known
        self.names = {slug: exercise_title(exercise) for slug, exercise in known.items()}
        self.opened: Plan | None = None
        self.exercises: list[PlannedExercise] = []
        self.irritability: Irritability | None = None
        self._side: Side | None = None
        self._measured: tuple[str, tuple[OtherSide, ...]] = ("", ())

    def begin(self, plan: Plan | None) -> None:
        """Begin anew, from a plan or from nothing."""
        self.opened = plan
        self.exercises = list(plan.exercises) if plan else []

    def measured(self, code: str, other_side: tuple[OtherSide, ...]) -> None:
        """Take what the practice measured of a patient's other side; it goes into their plan."""
        self._measured = (code, other_side)

    @property
    def side(self) -> Side | None:
        """The stiff shoulder, None where both are treated."""
        return self._side

    @side.setter
    def side(self, side: Side | None) -> None:
        """Set it, and every exercise with it."""
        self._side = side
        if side is not None:
            self.exercises = [msgspec.structs.replace(e, side=side) for e in self.exercises]

    def add(self, slug: str, at: int) -> None:
        """Add an exercise of the catalogue with the dose to begin from."""
        if len(self.exercises) >= MOST_EXERCISES:
            raise Fault(
                translate("plans", "A plan has at most {most} exercises: remove one first.").format(
                    most=MOST_EXERCISES
                )
            )
        self.exercises.insert(at, self._proposed(slug, self._side or Side.RIGHT))

    def anew(self, row: int) -> None:
        """Put the proposed dose back."""
        old = self.exercises[row]
        if old.exercise is not None:
            self.exercises[row] = self._proposed(old.exercise, old.side)

    def _proposed(self, slug: str, side: Side) -> PlannedExercise:
        return proposed(self._known[slug], self.irritability or Irritability.HIGH, side)

    def move(self, row: int, step: int) -> int:
        """Move an exercise up or down where it can be; give its row."""
        if row < 0 or not 0 <= row + step < len(self.exercises):
            return row
        self.exercises.insert(row + step, self.exercises.pop(row))
        return row + step

    def make(self, fields: Mapping[str, Any], today: date) -> Plan:
        """Give the plan, issued ``today``; a ``Fault`` says what is missing or wrong.

        The revision counts up from the plan that was opened, and the other side's range comes
        along, where it is the same patient's; what the practice measured since goes before it.
        """
        if not fields["patient_code"]:
            raise Fault(
                translate(
                    "plans",
                    "The plan has no patient code: write the practice's code for the person.",
                )
            )
        if not self.exercises:
            raise Fault(translate("plans", "The plan has no exercise: add one from the catalogue."))
        if fields["practice_key"] is not None:
            _check_key(fields["practice_key"])
        before = self._before(fields["patient_code"])
        made = self._plan(fields)
        made = msgspec.structs.replace(
            made, issued_on=today, revision=1 if before is None else before.revision + 1
        )
        return read_plan(write_plan(made), translate("plans", "The plan"), self._known)

    def _before(self, code: str) -> Plan | None:
        same = self.opened is not None and self.opened.patient_code == code
        return self.opened if same else None

    def _plan(self, fields: Mapping[str, Any]) -> Plan:
        before, (code, measured) = self._before(fields["patient_code"]), self._measured
        known = list(before.other_side if before is not None else ())
        known += measured if code == fields["patient_code"] else ()
        other_side = tuple({one.movement: one for one in known}.values())
        return Plan(**fields, exercises=tuple(self.exercises), other_side=other_side)

    def changes(self, fields: Mapping[str, Any]) -> tuple[str, ...]:
        """Say what changed against the plan that was opened."""
        if self.opened is None:
            return ()
        return plan_changes(self.opened, self._plan(fields), self.names)

    def unusual(self, planned: PlannedExercise) -> tuple[str, ...]:
        """Say what of a dose is outside the usual one."""
        if planned.exercise is None or self.irritability is None:
            return ()
        return unusual(planned, self._known[planned.exercise], self.irritability)

    def source(self, planned: PlannedExercise) -> str:
        """Say where the usual dose is from; nothing where there is none to compare with."""
        if planned.exercise is None or self.irritability is None:
            return ""
        dose = self._known[planned.exercise].doses[self.irritability]
        told = translate("plans", "Usual dose. {source}")
        return told.format(source=source_words(dose.source))

    def texts(self) -> list[str]:
        """Give each exercise in a few lines."""
        return [self._text(number, planned) for number, planned in enumerate(self.exercises, 1)]

    def _text(self, number: int, planned: PlannedExercise) -> str:
        lines = [
            f"{number}. {exercise_name(planned, self.names)}, {side_word(planned.side)}",
            dose_text(planned),
            measured_text(planned),
        ]
        if self.unusual(planned):
            lines.append(translate("plans", "Outside the usual dose"))
        return "\n".join(lines)

    def summary(self) -> str:
        """Say how much all of it is."""
        if not self.exercises:
            return translate(
                "plans", "No exercises yet. {find} to the catalogue, {enter} adds."
            ).format(find=key_name("Ctrl+F"), enter=key_name("Enter"))
        count = translate("plans", "{count} exercises")
        if len(self.exercises) == 1:
            count = translate("plans", "1 exercise")
        parts = [count.format(count=len(self.exercises)), time_a_day(self.exercises)]
        if self.irritability is None:
            parts.append(
                translate("plans", "no irritability said: proposed as for high, doses not compared")
            )
        elif odd := sum(bool(self.unusual(e)) for e in self.exercises):
            parts.append(translate("plans", "{count} outside the usual dose").format(count=odd))
        return "; ".join(parts)


def _check_key(key: str) -> None:
    try:
        check_public_key(key)
    except Fault as fault:
        raise Fault(
            translate(
                "plans",
                "The practice key is mistyped or cut short: copy it again from the practice's own, "
                "or leave it empty.",
            )
        ) from fault


def plan_name(plan: Plan) -> str:
    """Give a file name that no patient code can turn into a path."""
    code = "".join(c if c.isalnum() or c in "-_" else "_" for c in plan.patient_code)
    return f"{code}_plan_{plan.revision}.shoulder.json"


def plan_kinds() -> str:
    """Give what a dialog of files offers."""
    return translate("plans", "Plans (*.json);;All files (*)")
