"""From a failed check of a document to a sentence: which place, what stands there, what may."""

from __future__ import annotations

import re
from functools import cache, reduce
from typing import Any, TypeVar

import msgspec
from msgspec import inspect

from coach.documents.strict_json import shown
from coach.domain.fault import Fault
from coach.texts import localised, translate

T = TypeVar("T")

_type_info = cache(inspect.type_info)
_STEP = re.compile(r"\.([A-Za-z_]\w*)|\[(\d+)\]")
_PLAIN_NAME = re.compile("[\\w ]{1,40}")
_FIELD = re.compile(r"Object (missing required|contains unknown) field `([^`]*)`")
_UNITS = ("s", "deg", "px", "m")


def convert(raw: Any, kind: type[T], where: str) -> T:
    """Turn parsed JSON into ``kind``; what does not fit raises a ``Fault`` naming the place."""
    try:
        return msgspec.convert(raw, kind)
    except msgspec.ValidationError as error:
        raise Fault(
            translate(
                "faults", "{where} cannot be used: {explain}; correct it or ask for a new file."
            ).format(where=where, explain=explain(str(error), raw, kind))
        ) from error


def explain(message: str, raw: Any, kind: type) -> str:
    """Say what a failed check of ``raw`` against ``kind`` means: the place, its value, what may."""
    what, _, path = message.partition(" - at `")
    steps = [(name, int(index) if index else 0) for name, index in _STEP.findall(path)]
    place, value, info, unit = _walk(steps, raw, _type_info(kind))
    if found := _FIELD.match(what):
        name = found.group(2)
        field = name if _PLAIN_NAME.fullmatch(name) else shown(name)
        field = _within(place, field)
        if found.group(1).startswith("missing"):
            return translate("faults", "{field} is missing").format(field=field)
        return translate("faults", "{field} is not a known field").format(field=field)
    allowed = _allowed(info, unit)
    if not place:
        told = translate("faults", "the content is {value}, allowed {allowed}")
        return told.format(value=shown(value), allowed=allowed)
    told = translate("faults", "{place} is {value}, allowed {allowed}")
    return told.format(place=place, value=shown(value), allowed=allowed)


def _walk(
    steps: list[tuple[str, int]], raw: Any, info: inspect.Type
) -> tuple[str, Any, inspect.Type, str]:
    words: list[str] = []
    unit = ""
    for name, index in steps:
        info = _without_null(info)
        if name:
            raw = raw.get(name) if isinstance(raw, dict) else None
            fields = info.fields if isinstance(info, inspect.StructType) else ()
            info = next((f.type for f in fields if f.encode_name == name), inspect.AnyType())
            unit = next((unit for unit in _UNITS if name.endswith(f"_{unit}")), "")
            words.append(name)
        else:
            raw = raw[index] if isinstance(raw, list) and index < len(raw) else None
            info = info.item_type if isinstance(info, inspect.VarTupleType) else inspect.AnyType()
            words.append(_entry(words.pop() if words else "", index + 1))
    return reduce(_within, words, ""), raw, info, unit


def _without_null(info: inspect.Type) -> inspect.Type:
    if isinstance(info, inspect.UnionType):
        return next(t for t in info.types if not isinstance(t, inspect.NoneType))
    return info


def _allowed(info: inspect.Type, unit: str) -> str:
    match info:
        case inspect.UnionType():
            either = translate("faults", "{allowed} or null")
            return either.format(allowed=_allowed(_without_null(info), unit))
        case inspect.IntType() | inspect.FloatType():
            least, most = _number(info.ge), _number(info.le)
            told = _whole_range() if isinstance(info, inspect.IntType) else _range(unit)
            return told.format(least=least, most=most)
        case inspect.EnumType():
            names = ", ".join(sorted(member.value for member in info.cls))
            return translate("faults", "are {names}").format(names=names)
        case inspect.LiteralType():
            names = ", ".join(str(value) for value in info.values)
            return translate("faults", "is {names}").format(names=names)
        case inspect.StrType():
            if info.pattern:
                return translate("faults", "is text of the form {pattern}").format(
                    pattern=info.pattern
                )
            fewest = info.min_length or 0
            return translate("faults", "is text of {least} to {max_length} characters").format(
                least=fewest, max_length=info.max_length
            )
        case inspect.VarTupleType():
            fewest = info.min_length or 0
            return translate("faults", "is a list of {least} to {max_length} entries").format(
                least=fewest, max_length=info.max_length
            )
        case inspect.StructType():
            return translate("faults", "is an object in braces")
        case _:
            return translate("faults", "is something else")


def _within(place: str, inner: str) -> str:
    if not place:
        return inner
    return translate("faults", "{place}, {inner}").format(place=place, inner=inner)


def _entry(of: str, number: int) -> str:
    match of:
        case "exercises":
            told = translate("faults", "exercise {number}")
        case "repetitions":
            told = translate("faults", "repetition {number}")
        case "other_side":
            told = translate("faults", "other side {number}")
        case "":
            told = translate("faults", "entry {number}")
        case _:
            return f"{of} {number}"
    return told.format(number=number)


def _whole_range() -> str:
    return translate("faults", "are whole numbers from {least} to {most}")


def _range(unit: str) -> str:
    match unit:
        case "s":
            return translate("faults", "are {least} to {most} seconds")
        case "deg":
            return translate("faults", "are {least} to {most} degrees")
        case "px":
            return translate("faults", "are {least} to {most} pixels")
        case "m":
            return translate("faults", "are {least} to {most} metres")
        case _:
            return translate("faults", "are {least} to {most}")


def _number(value: float | None) -> str:
    if value is None:
        return translate("faults", "any")
    return localised(f"{value:g}" if abs(value) < 10_000 else f"{value:,.0f}")
