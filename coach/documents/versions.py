"""Which format and version a document says it has, and the way up from older ones."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from coach.documents.strict_json import shown
from coach.domain.fault import Fault
from coach.texts import translate

Upgrade = Callable[[dict[str, Any]], dict[str, Any]]


def upgraded(
    raw: Any, *, name: str, newest: int, upgrades: Mapping[int, Upgrade], where: str
) -> dict[str, Any]:
    """Give ``raw`` in version ``newest`` of format ``name``.

    ``upgrades[n]`` turns version n into n + 1, ``version`` field included.
    """
    if not isinstance(raw, dict) or raw.get("format") != name:
        said = (
            shown(raw.get("format")) if isinstance(raw, dict) else translate("faults", "not given")
        )
        raise Fault(
            translate(
                "faults",
                "{where} is not of the format {name} (its format is {said}); check that"
                " this is the right file.",
            ).format(where=where, name=name, said=said)
        )
    version = raw.get("version")
    if not isinstance(version, int) or isinstance(version, bool) or version < 1:
        raise Fault(
            translate(
                "faults",
                "{where} has the version {version}, allowed are whole numbers from 1 to"
                " {newest}; ask for a new file.",
            ).format(where=where, version=shown(version), newest=newest)
        )
    if version > newest:
        raise Fault(
            translate(
                "faults",
                "{where} was made by a newer version of this program (file version "
                "{version}, known up to {newest}); update the program to open it.",
            ).format(where=where, version=version, newest=newest)
        )
    document: dict[str, Any] = raw
    while version < newest:
        document = upgrades[version](document)
        version += 1
    return document


def refusing(raw: dict[str, Any], *names: str, version: int) -> dict[str, Any]:
    """Give fields that came with ``version`` names which the check of it will refuse."""
    return {f"{n} of version {version}" if n in names else n: value for n, value in raw.items()}


def each(raw: dict[str, Any], name: str, change: Upgrade) -> dict[str, Any]:
    """Give the list of that name with each of its objects changed, nothing if it is no list."""
    entries = raw.get(name)
    if not isinstance(entries, list):
        return {}
    return {name: [change(entry) if isinstance(entry, dict) else entry for entry in entries]}
