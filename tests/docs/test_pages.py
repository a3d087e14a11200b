"""The pages for people: links lead somewhere, commands are real, figures are the program's."""

from __future__ import annotations

import importlib
import importlib.util
import pkgutil
import re
import shlex
from enum import StrEnum
from pathlib import Path

import pytest

import coach.domain
from coach.app.arguments import parser
from coach.domain.moment import Order
from coach.domain.plan import Weekday
from coach.domain.reading import Doubt
from docs.make_case import make_case, told
from tests.app.test_languages import names, parsers

ROOT = Path(__file__).parents[2]
PAGES = [ROOT / "README.md", ROOT / "DEVELOPERS.md", *sorted((ROOT / "docs").glob("*.md"))]
NAMES = [str(page.relative_to(ROOT)) for page in PAGES]
LINK = re.compile(r"\[[^\]]*\]\(([^)\s]+)\)")
FENCED = re.compile(r"^```(\w*)\n(.*?)^```$", re.MULTILINE | re.DOTALL)
NOT_IN_GLOSSARY = {Doubt, Weekday, Order}
"""Told there as a kind, days of a week, and what passes inside the program alone."""
PLACEHOLDERS = {"DIR": "out", "FILE": "x.json", "CODE": "SH-1", "FOLDER": "folder"}


def anchors(page: Path) -> set[str]:
    text = FENCED.sub("", page.read_text("utf-8"))
    headings = re.findall(r"^#+ (.*)$", text, re.MULTILINE)
    return {slug(re.sub(r"\[([^\]]*)\]\([^)]*\)", r"\1", title)) for title in headings}


def slug(title: str) -> str:
    """Name a heading as the built pages do."""
    return re.sub(r"[-\s]+", "-", re.sub(r"[^\w\s-]", "", title).strip().lower())


def fenced(page: Path, kind: str) -> list[str]:
    bodies = [body for found, body in FENCED.findall(page.read_text("utf-8")) if found == kind]
    return [line for body in bodies for line in body.splitlines() if line]


def commands(page: Path) -> list[str]:
    """Give the lines of code that run the program; a way of writing one is none."""
    text = FENCED.sub("", page.read_text("utf-8"))
    lines = [*fenced(page, "sh"), *re.findall(r"^ {4}(.*)$", text, re.MULTILINE)]
    found = [re.search(r"(?:^|/bin/|&& )coach(?: .*)?$", line) for line in lines]
    return [match[0] for match in found if match and not re.search(r"[|\[]", match[0])]


@pytest.mark.parametrize("page", PAGES, ids=NAMES)
def test_every_link_leads_to_a_file_and_a_heading(page: Path) -> None:
    for target in LINK.findall(FENCED.sub("", page.read_text("utf-8"))):
        if target.startswith(("https://", "http://", "mailto:")):
            continue
        name, _, anchor = target.partition("#")
        file = (page.parent / name).resolve() if name else page
        assert file.exists(), target
        assert not anchor or anchor in anchors(file), target
        if page.parent == ROOT / "docs":
            assert (ROOT / "docs") in file.parents, f"{target} is not among the built pages"


def test_every_picture_is_shown_somewhere_and_is_small() -> None:
    shown = {(p.parent / t).resolve() for p in PAGES for t in LINK.findall(p.read_text("utf-8"))}
    for picture in (ROOT / "docs" / "screens").iterdir():
        assert picture in shown, picture.name
        assert picture.stat().st_size < 200_000, picture.name


@pytest.mark.parametrize("page", PAGES, ids=NAMES)
def test_every_command_is_one_that_the_program_knows(page: Path) -> None:
    for command in commands(page):
        words = shlex.split(command, comments=True)
        at = next(n for n, word in enumerate(words) if word.endswith("coach")) + 1
        parser().parse_args([PLACEHOLDERS.get(word, word) for word in words[at:]])


def test_the_pages_have_commands() -> None:
    assert sum(len(commands(page)) for page in PAGES) >= 10


@pytest.mark.parametrize("page", PAGES, ids=NAMES)
def test_every_module_to_run_is_there(page: Path) -> None:
    for module in re.findall(r"python -m ([\w.]+)", page.read_text("utf-8")):
        assert module == "pip" or importlib.util.find_spec(module), module


def test_the_contributors_table_has_every_package() -> None:
    table = (ROOT / "DEVELOPERS.md").read_text("utf-8")
    parts = [part for part in (ROOT / "coach").iterdir() if not part.name.startswith("_")]
    assert len(parts) > 20
    assert [part.name for part in parts if f"| `coach/{part.name}` |" not in table] == []


def test_every_word_of_the_command_line_and_of_the_files_is_in_the_glossary() -> None:
    """Doubts are told as a kind: their list is that of the schema, which another test holds."""
    text = " ".join((ROOT / "docs" / "glossary.md").read_text("utf-8").lower().split())
    words = {word for found in parsers() for word in names(found) if not word.startswith("-h")}
    words -= {found.prog for found in parsers()} | {"1.0"}
    for module in pkgutil.iter_modules(coach.domain.__path__):
        for kind in vars(importlib.import_module(f"coach.domain.{module.name}")).values():
            if isinstance(kind, type) and issubclass(kind, StrEnum) and kind not in NOT_IN_GLOSSARY:
                words |= {str(word) for word in kind}
    assert len(words) > 100
    assert sorted(w for w in words if w not in text and w.replace("-", " ") not in text) == []


def test_no_option_or_command_in_the_glossary_is_stale() -> None:
    text = (ROOT / "docs" / "glossary.md").read_text("utf-8")
    known = {word for found in parsers() for word in names(found)}
    assert set(re.findall(r"--[a-z][a-z-]+", text)) <= known
    (commands,) = re.findall(r"^\| (.*) \| plain \| commands,", text, re.MULTILINE)
    assert set(re.findall(r"`(\w+)`", commands)) | {"coach"} == {
        p.prog.split()[-1] for p in parsers()
    }


def test_every_page_is_in_the_built_pages_list() -> None:
    listed = re.findall(r": (\w+\.md)$", (ROOT / "docs" / "mkdocs.yml").read_text(), re.MULTILINE)
    assert sorted(listed) == sorted(page.name for page in (ROOT / "docs").glob("*.md"))


def test_the_figures_of_the_worked_case_are_those_of_the_program(tmp_path: Path) -> None:
    case = make_case(tmp_path)
    said = told(case).splitlines()
    case.store.close()
    quoted = fenced(ROOT / "docs" / "guide_therapist.md", "text")
    assert len(quoted) > 20
    assert [line for line in quoted if line not in said] == []


PICTURE = re.compile(r"!\[[^\]]+\]\(screens/(\w+)\.png\)")


def shape(page: Path) -> list[str]:
    """Give what a page is made of: headings, points, rows of tables, pictures, in their order."""
    marks = [re.match(r"#+ |- |\||```", line) for line in page.read_text("utf-8").splitlines()]
    return [mark[0] for mark in marks if mark]


def test_the_patients_guides_tell_the_same_in_every_language() -> None:
    english = ROOT / "docs" / "guide_patient.md"
    others = sorted((ROOT / "docs").glob("guide_patient_*.md"))
    assert others
    pictures = PICTURE.findall(english.read_text("utf-8"))
    assert len(pictures) >= 6
    figures = re.findall(r"\d+", PICTURE.sub("", english.read_text("utf-8")))
    for other in others:
        code, text = other.stem.rpartition("_")[2], other.read_text("utf-8")
        assert shape(other) == shape(english)
        assert PICTURE.findall(text) == [f"{name}_{code}" for name in pictures]
        assert re.findall(r"\d+", PICTURE.sub("", text)) == figures
        words = len(text.split()), len(english.read_text("utf-8").split())
        assert words[0] == pytest.approx(words[1], rel=0.1)
