"""What is looked at before a record of the practice is kept."""

from __future__ import annotations

from datetime import date, timedelta

import msgspec

from coach.documents.refusal import explain
from coach.documents.strict_json import shown
from coach.domain.fault import Fault
from coach.domain.plan import Plan
from coach.domain.practice import (
    Episode,
    HandMeasure,
    IssuedPlan,
    OtherSideMeasure,
    Record,
    TotalScore,
    contradiction,
)
from coach.domain.text import UNSHOWN
from coach.review.wording import day
from coach.texts import translate

_PAST = (Episode, OtherSideMeasure, HandMeasure, TotalScore)
_LINES = str.maketrans("", "", "\n\t")
_IN_TEXTS = dict.fromkeys(("goals", "note", "text", "plan"), _LINES)
"""What may stand in texts of several lines, by field."""
_ZONES_DIFFER = timedelta(days=1)


def check(record: Record, name: str) -> None:
    """Raise Fault where a record, called ``name`` in the sentence, cannot be kept."""
    kind, raw = type(record), msgspec.to_builtins(record)
    try:
        msgspec.convert(raw, kind)
        what = contradiction(record)
    except msgspec.ValidationError as error:
        what = explain(str(error), raw, kind)
    if what is None and isinstance(record, _PAST):
        field = "began_on" if isinstance(record, Episode) else "on"
        on: date = getattr(record, field)
        if on > date.today() + _ZONES_DIFFER:
            what = translate(
                "faults",
                "{field} is {on}, which is yet to come",
            ).format(field=field, on=day(on))
    if what is None:
        what = _unshown(record)
    if what is None and isinstance(record, IssuedPlan):
        what = _contradicts_its_plan(record)
    if what is not None:
        raise Fault(
            translate(
                "faults",
                "The {name} was not kept: {what}; correct it.",
            ).format(name=name, what=what)
        )


def _unshown(record: Record) -> str | None:
    for field in record.__struct_fields__:
        value = getattr(record, field)
        if isinstance(value, str) and UNSHOWN.search(value.translate(_IN_TEXTS.get(field, {}))):
            return translate(
                "faults",
                "{field} holds a control or unseen character ({value})",
            ).format(field=field, value=shown(value))
    return None


def _contradicts_its_plan(record: IssuedPlan) -> str | None:
    try:
        plan = msgspec.json.decode(record.plan, type=Plan)
    except msgspec.DecodeError:
        return translate(
            "faults",
            "plan is no plan of this version",
        )
    for field, said in (("patient_code", record.code), ("revision", record.revision),
                        ("side", record.side)):  # fmt: skip
        if getattr(plan, field) != said:
            return translate(
                "faults",
                "its plan has the {field} {other} and not {said}",
            ).format(field=field, other=getattr(plan, field), said=said)
    return None
