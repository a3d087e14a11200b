"""From a failed check of a document to a sentence: which place, what stands there, what may."""

from __future__ import annotations

import re
from functools import cache
from typing import Any, TypeVar

import msgspec
from msgspec import inspect

from coach.documents.strict_json import shown
from coach.domain.fault import Fault

T = TypeVar("T")

_type_info = cache(inspect.type_info)
_STEP = re.compile(r"\.([A-Za-z_]\w*)|\[(\d+)\]")
_PLAIN_NAME = re.compile("[\\w ]{1,40}")
_FIELD = re.compile(r"Object (missing required|contains unknown) field `([^`]*)`")
_ONE_OF = {"exercises": "exercise", "repetitions": "repetition", "other_side": "other side"}
_UNITS = {"_s": " seconds", "_deg": " degrees", "_px": " pixels", "_m": " metres"}


def convert(raw: Any, kind: type[T], where: str) -> T:
    """Turn parsed JSON into ``kind``; what does not fit raises a ``Fault`` naming the place."""
    try:
        return msgspec.convert(raw, kind)
    except msgspec.ValidationError as error:
        raise Fault(
            f"{where} cannot be used: {explain(str(error), raw, kind)}; correct it or ask for a "
            "new file."
        ) from error


def explain(message: str, raw: Any, kind: type) -> str:
    """Say what a failed check of ``raw`` against ``kind`` means: the place, its value, what may."""
    what, _, path = message.partition(" - at `")
    steps = [(name, int(index) if index else 0) for name, index in _STEP.findall(path)]
    place, value, info, unit = _walk(steps, raw, _type_info(kind))
    if found := _FIELD.match(what):
        name = found.group(2)
        field = name if _PLAIN_NAME.fullmatch(name) else shown(name)
        at = f"{place}, " if place else ""
        missing = found.group(1).startswith("missing")
        return f"{at}{field} is missing" if missing else f"{at}{field} is not a known field"
    return f"{place or 'the content'} is {shown(value)}, allowed {_allowed(info, unit)}"


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
            unit = next((text for end, text in _UNITS.items() if name.endswith(end)), "")
            words.append(name)
        else:
            raw = raw[index] if isinstance(raw, list) and index < len(raw) else None
            info = info.item_type if isinstance(info, inspect.VarTupleType) else inspect.AnyType()
            last = words.pop() if words else "entry"
            words.append(f"{_ONE_OF.get(last, last)} {index + 1}")
    return ", ".join(words), raw, info, unit


def _without_null(info: inspect.Type) -> inspect.Type:
    if isinstance(info, inspect.UnionType):
        return next(t for t in info.types if not isinstance(t, inspect.NoneType))
    return info


def _allowed(info: inspect.Type, unit: str) -> str:
    match info:
        case inspect.UnionType():
            return _allowed(_without_null(info), unit) + " or null"
        case inspect.IntType() | inspect.FloatType():
            whole = "whole numbers from " if isinstance(info, inspect.IntType) else ""
            return f"are {whole}{_number(info.ge)} to {_number(info.le)}{unit}"
        case inspect.EnumType():
            return "are " + ", ".join(sorted(member.value for member in info.cls))
        case inspect.LiteralType():
            return "is " + " or ".join(str(value) for value in info.values)
        case inspect.StrType():
            if info.pattern:
                return f"is text of the form {info.pattern}"
            return f"is text of {info.min_length or 0} to {info.max_length} characters"
        case inspect.VarTupleType():
            return f"is a list of {info.min_length or 0} to {info.max_length} entries"
        case inspect.StructType():
            return "is an object in braces"
        case _:
            return "is something else"


def _number(value: float | None) -> str:
    return "any" if value is None else f"{value:g}" if abs(value) < 10_000 else f"{value:,.0f}"
