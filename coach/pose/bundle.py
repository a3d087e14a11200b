"""Finds the pose model on the disk and makes sure that it is the one it should be."""

from __future__ import annotations

import hashlib
import json
from dataclasses import dataclass, field
from pathlib import Path

from coach.domain.fault import Fault

BUNDLE_FILE = "pose_full.task"
MANIFEST_FILE = "manifest.json"
_MAX_BYTES = 200_000_000
_REMEDY = "install the program again"

_PACKAGE = Path(__file__).resolve().parents[1]
_PLACES = (_PACKAGE / "_installed" / "models", _PACKAGE.parent / "models")


@dataclass(frozen=True, slots=True)
class Bundle:
    """A verified model. ``content`` is what was hashed, so it cannot change afterwards."""

    sha256: str
    content: bytes = field(repr=False)


def find_bundle() -> Path:
    """Give the path of the installed bundle, or of the one in a checkout of the repository."""
    for place in _PLACES:
        if (place / BUNDLE_FILE).is_file():
            return place / BUNDLE_FILE
    raise Fault(
        f"The pose model '{BUNDLE_FILE}' is missing (looked in"
        f" {' and '.join(repr(str(place)) for place in _PLACES)}); {_REMEDY}."
    )


def read_bundle(path: Path) -> Bundle:
    """Read a bundle and compare its SHA-256 with the manifest beside it."""
    expected = _expected_sha256(path)
    content = _read(path, "pose model")
    found = hashlib.sha256(content).hexdigest()
    if found != expected:
        raise Fault(
            f"The pose model '{path}' is not the one that belongs to this program (its SHA-256"
            f" is {found[:12]}..., {expected[:12]}... is expected), so it was not used; {_REMEDY}."
        )
    return Bundle(sha256=found, content=content)


def _expected_sha256(path: Path) -> str:
    manifest_path = path.with_name(MANIFEST_FILE)
    try:
        manifest = json.loads(_read(manifest_path, "list of pose models"))
        for entry in manifest["bundles"].values():
            if entry["file"] == path.name:
                return str(entry["sha256"])
    except (ValueError, KeyError, TypeError, AttributeError, RecursionError):
        raise Fault(f"The list of pose models '{manifest_path}' is damaged; {_REMEDY}.") from None
    raise Fault(
        f"The pose model '{path.name}' is not in the list of models '{manifest_path}'; {_REMEDY}."
    )


def _read(path: Path, what: str) -> bytes:
    try:
        with path.open("rb") as file:
            return file.read(_MAX_BYTES)
    except OSError as error:
        raise Fault(
            f"The {what} '{path}' cannot be read ({error.strerror or error}); {_REMEDY}."
        ) from None
