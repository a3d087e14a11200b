"""From the bytes of a TOML file to a checked type, or to a sentence on what is wrong in it."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Mapping
from importlib.resources import files
from typing import Any, Final, TypeVar

import msgspec

from coach.domain.fault import Fault
from coach.texts import translate

T = TypeVar("T")

ENDING: Final = ".toml"
MOST_BYTES = 100_000
"""A file as people write it has 2 to 6 kB."""

_LONGEST = 300

_PLAIN = {
    "`str`": "text",
    "`float`": "a number",
    "`int`": "a whole number",
    "`array`": "a list",
    "`object`": "a table",
    "`bool`": "true or false",
}


def brought_along(package: str, folder: str, what: str) -> dict[str, bytes]:
    """Give the files of a folder within a package, by name; a ``Fault`` says what is missing."""
    try:
        place = files(package).joinpath(folder)
        return {
            file.name: file.read_bytes() for file in place.iterdir() if file.name.endswith(ENDING)
        }
    except OSError as error:
        raise Fault(
            translate(
                "faults",
                "{what} are missing ({strerror}): install the program again.",
            ).format(what=what, strerror=error.strerror)
        ) from error


def refused(where: str, what: str) -> Fault:
    """Give the one sentence with which a file of the catalogue is refused."""
    told = what if len(what) <= _LONGEST else f"{what[:_LONGEST]}..."
    return Fault(
        translate(
            "faults",
            "{where} cannot be used: {told}; correct it there.",
        ).format(where=where, told=told)
    )


def read(data: bytes, kind: type[T], where: str) -> T:
    """Read one TOML file as ``kind``; a ``Fault`` names the file, the field and what may stand."""
    if len(data) > MOST_BYTES:
        raise refused(where, f"it has {len(data)} bytes and at most {MOST_BYTES} are read")
    try:
        raw = tomllib.loads(data.decode("utf-8"))
    except UnicodeDecodeError as error:
        raise refused(where, f"byte {error.start + 1} is not UTF-8 text") from error
    except tomllib.TOMLDecodeError as error:
        raise refused(where, f"it is not TOML ({str(error).rstrip('.')})") from error
    except ValueError as error:  # a whole number of thousands of digits
        raise refused(where, "a number in it is too long") from error
    except RecursionError as error:
        raise refused(where, "its lists or tables are nested too deeply") from error
    try:
        return msgspec.convert(raw, kind)
    except msgspec.ValidationError as error:
        raise refused(where, _explain(str(error), raw, kind)) from error


def _explain(message: str, raw: Mapping[str, Any], kind: type) -> str:
    what, _, path = message.partition(" - at ")
    for name, plain in _PLAIN.items():
        what = what.replace(name, plain)
    what = what.replace("`", "").replace("Object ", "the table ")
    what = what[0].lower() + what[1:]
    place = path.replace("`", "").replace("key in $.", "a name in ").removeprefix("$.")
    return f"{_named(place, raw, kind)}: {what}" if place else what


def _named(place: str, raw: Mapping[str, Any], kind: type) -> str:
    """Say which table is meant: ``doses[...].hold_s`` alone does not tell which dose."""
    found = re.fullmatch(r"(\w+)\[\.\.\.\](.*)", place)
    if not found:
        return place
    table, rest = found.groups()
    for name, inner in raw[table].items():
        try:
            msgspec.convert({**raw, table: {name: inner}}, kind)
        except msgspec.ValidationError:
            return f"{table}.{name}{rest}"
    return place
