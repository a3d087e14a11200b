"""The small parts of an HL7 FHIR R4 resource, as plain dictionaries.

R4 (4.0.1) and R4B (4.3.0) agree on the wire for everything written here.
"""

from __future__ import annotations

import re
from datetime import UTC, datetime, timedelta
from typing import Any
from uuid import UUID, uuid5

from coach.domain.movement import Side, Unit
from coach.exchange.codes import written

Element = dict[str, Any]
Resource = dict[str, Any]

NAMESPACE = UUID("5b0b8a0e-6f3e-4d55-9d0c-2f7a51c3e9b4")
"""Drawn once at random: the same record always gives the same ids."""
_FARTHEST_ZONE = timedelta(hours=14)
_FORBIDDEN = re.compile("[\x00-\x1f\x7f\ud800-\udfff]")


def identity(*parts: object) -> str:
    """Give the id of what ``parts`` name, the same in every export."""
    return str(uuid5(NAMESPACE, "\x1f".join(map(str, parts))))


def reference(identifier: str) -> Element:
    """Point at another entry of the same bundle."""
    return {"reference": f"urn:uuid:{identifier}"}


def text_of(text: str) -> str:
    """Give a text as R4 allows it: without control characters, never empty (R4, string)."""
    return _FORBIDDEN.sub(" ", text).strip() or "-"


def coding(name: str) -> Element:
    """Write a reviewed code."""
    code = written(name)
    return {"system": code.system, "code": code.code, "display": code.display}


def concept(text: str, code_name: str | None = None) -> Element:
    """Say in words what is meant, with a code where a confirmed one says the same."""
    said: Element = {"text": text_of(text)}
    return said if code_name is None else {"coding": [coding(code_name)], **said}


def category(name: str) -> list[Element]:
    """Write the kind of an observation."""
    return [{"coding": [coding(name)]}]


def quantity(value: float, unit_name: str) -> Element:
    """Write a number with its UCUM unit."""
    unit = written(unit_name)
    return {"value": value, "unit": unit.display, "system": unit.system, "code": unit.code}


def unit_name(unit: Unit) -> str:
    """Name the reviewed unit of a movement's value."""
    return "degree" if unit is Unit.DEGREES else "unity"


def measured(value: float, unit: Unit) -> Element:
    """Write a value in the unit of its movement."""
    return quantity(derived(value), unit_name(unit))


def derived(value: float) -> float:
    """Cut the digits that only the binary arithmetic of means and medians adds."""
    return round(value, 6)


def component(text: str, value: Element | str) -> Element:
    """Write what belongs to an observation's value: a quantity, or words."""
    key = "valueString" if isinstance(value, str) else "valueQuantity"
    return {"code": concept(text), key: value}


def shoulder(side: Side) -> Element:
    """Name a shoulder."""
    return concept(f"{side} shoulder")


def moment(at: datetime) -> str:
    """Write an instant with its zone offset; R4 knows none beyond 14 hours."""
    offset = at.utcoffset()
    if offset is None or abs(offset) > _FARTHEST_ZONE:
        at = at.astimezone(UTC)
    return at.isoformat(timespec="milliseconds")


def after(begin: datetime, seconds: float) -> str:
    """Write the instant so many seconds after ``begin``, in the same zone."""
    return moment(begin + timedelta(seconds=seconds))
