"""Finds the pose model on the disk and makes sure that it is the one it should be."""

from __future__ import annotations

import hashlib
import json
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path

from coach.domain.fault import Fault
from coach.domain.pose import PoseModel
from coach.texts import translate

MANIFEST_FILE = "manifest.json"
_MAX_BYTES = 200_000_000

_PACKAGE = Path(__file__).resolve().parents[1]
_PLACES = (_PACKAGE / "_installed" / "models", _PACKAGE.parent / "models")


@dataclass(frozen=True, slots=True)
class Bundle:
    """A verified model. ``content`` is what was hashed, so it cannot change afterwards."""

    sha256: str
    content: bytes = field(repr=False)


def find_bundle(model: PoseModel = PoseModel.FULL) -> Path:
    """Give the path of the installed bundle, or of the one in a checkout of the repository."""
    name = _name_of(model)
    for place in _PLACES:
        if (place / name).is_file():
            return place / name
    raise Fault(
        translate(
            "faults",
            "The pose model '{name}' is missing (looked in {places}); install the program again.",
        ).format(name=name, places=", ".join(repr(str(place)) for place in _PLACES))
    )


@cache
def sha256_of(model: PoseModel) -> str:
    """Give the SHA-256 of the program's own bundle of a model, from the list of models alone."""
    return _expected_sha256(find_bundle().with_name(_name_of(model)))


def read_bundle(path: Path) -> Bundle:
    """Read a bundle and compare its SHA-256 with the manifest beside it."""
    expected = _expected_sha256(path)
    content = _read(
        path,
        translate(
            "faults",
            "The pose model '{path}' cannot be read ({reason}); install the program again.",
        ),
    )
    found = hashlib.sha256(content).hexdigest()
    if found != expected:
        raise Fault(
            translate(
                "faults",
                "The pose model '{path}' is not the one that belongs to this program "
                "(its SHA-256 is {found}..., {expected}... is expected), so it was not "
                "used; install the program again.",
            ).format(path=path, found=found[:12], expected=expected[:12])
        )
    return Bundle(sha256=found, content=content)


def _name_of(model: PoseModel) -> str:
    return f"pose_{model}.task"


def _expected_sha256(path: Path) -> str:
    manifest_path = path.with_name(MANIFEST_FILE)
    unreadable = translate(
        "faults",
        "The list of pose models '{path}' cannot be read ({reason}); install the program again.",
    )
    try:
        manifest = json.loads(_read(manifest_path, unreadable))
        for entry in manifest["bundles"].values():
            if entry["file"] == path.name:
                return str(entry["sha256"])
    except (ValueError, KeyError, TypeError, AttributeError, RecursionError):
        raise Fault(
            translate(
                "faults",
                "The list of pose models '{manifest_path}' is damaged; install the program again.",
            ).format(manifest_path=manifest_path)
        ) from None
    raise Fault(
        translate(
            "faults",
            "The pose model '{name}' is not in the list of models '{manifest_path}'; "
            "install the program again.",
        ).format(name=path.name, manifest_path=manifest_path)
    )


def _read(path: Path, unreadable: str) -> bytes:
    try:
        with path.open("rb") as file:
            return file.read(_MAX_BYTES)
    except OSError as error:
        raise Fault(unreadable.format(path=path, reason=error.strerror or error)) from None
