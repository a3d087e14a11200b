"""JSON from strangers: bounded, without duplicate keys, without numbers that are none."""

from __future__ import annotations

import json
import math
import re
from itertools import accumulate
from typing import Any, NoReturn

from coach.domain.fault import Fault
from coach.domain.text import UNSHOWN
from coach.texts import translate

MAX_DEPTH = 32
_MAX_DIGITS = 40
# Matches from every quote on, closed or not: a pattern that could fail would try each quote again.
_STRING = re.compile(r'"(?:[^"\\]+|\\.?)*+"?', re.DOTALL)
_NO_BRACKET = re.compile(r"[^\[\]{}]+")
_STEPS = {"[": 1, "{": 1, "]": -1, "}": -1}


def parse_json(data: bytes, where: str, max_bytes: int) -> Any:
    """Give the value that ``data`` (UTF-8) holds; ``where`` names it in a ``Fault``.

    A whole number written with a point (``3.0``) counts as whole, as in JSON Schema.
    """
    if len(data) > max_bytes:
        raise Fault(
            translate(
                "faults",
                "{where} is too large: {count:,} bytes, at most {max_bytes:,} are read;"
                " check that this is the right file.",
            ).format(where=where, count=len(data), max_bytes=max_bytes)
        )
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise Fault(
            translate(
                "faults",
                "{where} is not UTF-8 text (byte {start}); check that this is the right file.",
            ).format(where=where, start=error.start)
        ) from error
    _check_depth(text, where)
    try:
        value = json.loads(
            text,
            object_pairs_hook=lambda pairs: _object(pairs, where),
            parse_constant=lambda name: _not_a_number(name, where),
            parse_float=lambda digits: _float(digits, where),
            parse_int=lambda digits: _int(digits, where),
        )
    except json.JSONDecodeError as error:
        raise Fault(
            translate(
                "faults",
                "{where} is not valid JSON (line {lineno}, column {colno}); ask for it "
                "to be sent again.",
            ).format(where=where, lineno=error.lineno, colno=error.colno)
        ) from error
    _check_text(value, where)
    return value


def _check_depth(text: str, where: str) -> None:
    brackets = _NO_BRACKET.sub("", _STRING.sub("", text))
    if max(accumulate(map(_STEPS.__getitem__, brackets)), default=0) > MAX_DEPTH:
        raise Fault(
            translate(
                "faults",
                "{where} is nested more than {max_depth} levels deep, which no file of "
                "this kind is; check that this is the right file.",
            ).format(where=where, max_depth=MAX_DEPTH)
        )


def _object(pairs: list[tuple[str, Any]], where: str) -> dict[str, Any]:
    found: dict[str, Any] = {}
    for key, value in pairs:
        if key in found:
            raise Fault(
                translate(
                    "faults",
                    "{where} gives {key} twice in one place, so it is not clear which "
                    "counts; remove one of them.",
                ).format(where=where, key=shown(key))
            )
        found[key] = value
    return found


def _not_a_number(name: str, where: str) -> NoReturn:
    raise Fault(
        translate(
            "faults", "{where} holds {name} where a number belongs; correct that value."
        ).format(where=where, name=name)
    )


def _float(digits: str, where: str) -> float | int:
    value = float(digits) if len(digits) <= _MAX_DIGITS else math.inf
    if not math.isfinite(value):
        _not_a_number(digits[:_MAX_DIGITS], where)
    return int(value) if value.is_integer() and abs(value) < 2**53 else value


def _int(digits: str, where: str) -> int:
    if len(digits) > _MAX_DIGITS:
        _not_a_number(digits[:_MAX_DIGITS] + "...", where)
    return int(digits)


def _check_text(value: Any, where: str) -> None:
    if isinstance(value, str):
        if UNSHOWN.search(value):
            raise Fault(
                translate(
                    "faults",
                    "{where} holds a text with control characters or unseen ones ({value}); take "
                    "them out.",
                ).format(where=where, value=shown(value))
            )
    elif isinstance(value, dict):
        for key, inner in value.items():
            _check_text(key, where)
            _check_text(inner, where)
    elif isinstance(value, list):
        for inner in value:
            _check_text(inner, where)


def shown(value: Any) -> str:
    """Give a value as it may stand in a sentence: JSON, short, ASCII."""
    if isinstance(value, dict):
        return translate("faults", "an object")
    if isinstance(value, list):
        return translate("faults", "a list of {count}").format(count=len(value))
    text = json.dumps(value)
    return text if len(text) <= 40 else text[:37] + "..."
