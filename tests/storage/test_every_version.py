"""Every version of every file that the program ever wrote opens; of later ones it says so."""

from __future__ import annotations

import io
import json
import re
import sqlite3
import zipfile
import zlib
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import pytest

from coach.catalogue import catalogue
from coach.documents.archive import DOCUMENT, unpack_session
from coach.documents.lenses import read_lenses
from coach.documents.plan import read_plan
from coach.domain.fault import Fault
from coach.domain.lens import Lens
from coach.session.assemble import assemble
from coach.storage.journal_lines import read_lines
from coach.storage.lenses import keep_lens, load_lenses
from coach.storage.store import Store
from coach.storage.store_tables import STORE_VERSION

GOLDEN = Path(__file__).parents[1] / "documents" / "golden"
FILES = sorted(path for path in GOLDEN.iterdir() if path.suffix != ".py" and path.is_file())
KINDS = ("journal", "plan", "session", "store")
LENS = Lens(
    camera=0,
    width_px=1280,
    height_px=720,
    field_of_view_deg=70.0,
    error_deg=0.5,
    miss_px=0.1,
    views=16,
)
LENSES_1 = b'{"format": "shoulder-lenses", "version": 1, "lenses": []}'


def plan(path: Path, folder: Path) -> int:
    return len(read_plan(path.read_bytes(), path.name, catalogue().by_name).exercises)


def session(path: Path, folder: Path) -> int:
    return len(unpack_session(path.read_bytes(), path.name).document.exercises)


def journal(path: Path, folder: Path) -> int:
    content = read_lines(path.read_bytes(), path.name)
    assert (content.dropped_bytes, content.skipped_lines) == (0, 0)
    return len(assemble(content.entries).document.exercises)


def store(path: Path, folder: Path) -> int:
    place = folder / "store.sqlite"
    with closing(sqlite3.connect(place)) as connection:
        connection.executescript(path.read_text("utf-8"))
    opened = Store(place)
    try:
        return len(opened.patients())
    finally:
        opened.close()


OPENS: dict[str, Callable[[Path, Path], int]] = {
    "journal": journal,
    "plan": plan,
    "session": session,
    "store": store,
}


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.name)
def test_opens(path: Path, tmp_path: Path) -> None:
    assert OPENS[path.name.split("_v")[0]](path, tmp_path) > 0


@pytest.mark.parametrize("kind", KINDS)
def test_there_is_one_of_each_version(kind: str) -> None:
    found = [re.match(rf"{kind}_v(\d+)\.", path.name) for path in FILES]
    versions = sorted(int(match[1]) for match in found if match)
    newest = {
        "journal": 3,
        "plan": 2,
        "session": 4,
        "store": STORE_VERSION - 1,  # the present one is made anew by every other test
    }[kind]
    assert versions == list(range(1, newest + 1))


def later(path: Path) -> bytes:
    raw = json.loads(path.read_bytes())
    return json.dumps(raw | {"version": 99}).encode()


def test_a_later_plan_is_refused_in_words() -> None:
    with pytest.raises(Fault, match=r"newer version of this program .* update the program"):
        read_plan(later(GOLDEN / "plan_v2.json"), "plan.json", catalogue().by_name)


def test_a_later_session_is_refused_in_words() -> None:
    made = io.BytesIO()
    with (
        zipfile.ZipFile(GOLDEN / "session_v4.shoulder.zip") as old,
        zipfile.ZipFile(made, "w") as new,
    ):
        for name in old.namelist():
            content = old.read(name)
            if name == DOCUMENT:
                content = json.dumps(json.loads(content) | {"version": 99}).encode()
            new.writestr(name, content)
    with pytest.raises(Fault, match=r"newer version of this program .* update the program"):
        unpack_session(made.getvalue(), "session.shoulder.zip")


def test_a_later_journal_is_refused_in_words() -> None:
    text = b'{"type":"opened","format":"shoulder-journal","version":99}'
    line = b"%08x %d %s\n" % (zlib.crc32(text), len(text), text)
    with pytest.raises(Fault, match=r"newer version of this program; update the program"):
        read_lines(line, "a.journal")


def test_later_settings_are_refused_in_words_and_never_written_over(tmp_path: Path) -> None:
    assert read_lenses(LENSES_1, "lenses.json").lenses == ()
    path = tmp_path / "lenses.json"
    newer = LENSES_1.replace(b'"version": 1', b'"version": 99')
    path.write_bytes(newer)
    with pytest.raises(Fault, match=r"newer version of this program .* update the program"):
        load_lenses(path)
    keep_lens(path, LENS)
    assert path.with_suffix(".unreadable").read_bytes() == newer
    assert load_lenses(path).lenses == (LENS,)
