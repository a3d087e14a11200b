"""The lock for releases: what the program asks for, by hash and under a fit licence."""

from __future__ import annotations

import importlib.util
import re
import tomllib
from pathlib import Path

from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

ROOT = Path(__file__).resolve().parents[1]
FIT = {
    "0BSD", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "CC0-1.0", "GPL-3.0-only",
    "GPL-3.0-or-later", "LGPL-3.0-only", "MIT", "MIT-0", "MIT-CMU", "PSF-2.0", "Zlib",
}  # fmt: skip
"""Compatible with version 3 of the GPL (the Free Software Foundation's list, from memory)."""


def locked() -> dict[str, tuple[str, int]]:
    """Give each package's version and how many hashes it has."""
    text = (ROOT / ".ci" / "release.txt").read_text("utf-8")
    found: dict[str, tuple[str, int]] = {}
    for block in re.split(r"\n(?=[a-z0-9])", text):
        if pin := re.match(r"([a-z0-9-]+)==([^ ;]+)", block):
            found[pin[1]] = (pin[2], block.count("--hash=sha256:"))
    return found


def test_every_dependency_is_locked_within_what_is_asked_for() -> None:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]
    pins = locked()
    for line in project["dependencies"] + project["optional-dependencies"]["postgres"]:
        asked = Requirement(line)
        version, _ = pins[canonicalize_name(asked.name)]
        assert asked.specifier.contains(version), line


def test_every_package_has_hashes() -> None:
    assert len(locked()) > 20
    assert [name for name, (_, hashes) in locked().items() if not hashes] == []


def test_every_package_is_listed_under_a_fit_licence() -> None:
    text = (ROOT / "docs" / "licences.md").read_text("utf-8")
    listed = dict(re.findall(r"^\| `([^`]+)` \| ([^|]+) \| [^|]+ \|$", text, re.MULTILINE))
    assert set(listed) == set(locked())

    def fits(expression: str) -> bool:
        """Of licences joined by OR one is chosen; those joined by AND hold together."""
        return all({*each.split(" OR ")} & FIT for each in expression.split(" AND "))

    assert {name: licence for name, licence in listed.items() if not fits(licence)} == {}


def test_the_table_of_licences_says_what_the_installed_packages_say() -> None:
    spec = importlib.util.spec_from_file_location("licences", ROOT / ".ci" / "licences.py")
    assert spec is not None
    assert spec.loader is not None
    licences = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(licences)
    shown = (ROOT / "docs" / "licences.md").read_text("utf-8").splitlines()
    assert [row for row in licences.table() if row not in shown] == []
