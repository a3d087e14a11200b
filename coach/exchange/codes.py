"""The reviewed codes of ``codes.toml``: which may be written, and which may not."""

from __future__ import annotations

import tomllib
from functools import cache
from importlib.resources import files
from typing import Annotated

import msgspec
from msgspec import Meta

from coach.domain.fault import Fault
from coach.texts import translate

Line = Annotated[str, Meta(min_length=1, max_length=300)]


class Code(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """One code of a published system.

    ``confirmed`` says where code and name were seen together, ``withheld`` why it is never
    written, None where it may be.
    """

    name: Line
    system: Line
    code: Line
    display: Line
    confirmed: Line
    withheld: Line | None = None


class _File(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    code: tuple[Code, ...]


def parse_codes(data: bytes) -> dict[str, Code]:
    """Read a file of codes by their names; a ``Fault`` where an entry cannot be used."""
    where = translate("faults", "The file of codes")
    try:
        found = msgspec.convert(tomllib.loads(data.decode("utf-8")), _File).code
    except (UnicodeDecodeError, tomllib.TOMLDecodeError, msgspec.ValidationError) as error:
        raise Fault(
            translate(
                "faults",
                "{where} cannot be used ({error}): install the program again.",
            ).format(where=where, error=error)
        ) from error
    by_name = {code.name: code for code in found}
    if len(by_name) < len(found):
        raise Fault(
            translate(
                "faults",
                "{where} gives a name twice: install the program again.",
            ).format(where=where)
        )
    return by_name


@cache
def codes() -> dict[str, Code]:
    """Give the program's own codes, read once."""
    return parse_codes(files("coach.exchange").joinpath("codes.toml").read_bytes())


def written(name: str) -> Code:
    """Give a code that may be written; a ``Fault`` for one that is unknown or withheld."""
    code = codes().get(name)
    if code is None:
        raise Fault(
            translate(
                "faults",
                "The code {name!r} was never confirmed: write text in its place.",
            ).format(name=name)
        )
    if code.withheld is not None:
        raise Fault(
            translate(
                "faults",
                "The code {name!r} {withheld}: write text in its place.",
            ).format(name=name, withheld=code.withheld)
        )
    return code
