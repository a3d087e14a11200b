"""Files on disk: whole or not at all, never over another, only regular ones, bounded."""

from __future__ import annotations

import errno
import os
import stat
import subprocess
import sys
import time
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import msgspec
import pytest

from coach.documents.archive import unpack_session
from coach.documents.landmarks import write_landmarks
from coach.documents.readings import write_readings
from coach.domain.fault import Fault
from coach.session.assemble import Assembled
from coach.storage import folders
from coach.storage.atomic import write_bytes
from coach.storage.recovery import recover
from coach.storage.session_file import (
    read_bounded,
    read_document,
    read_session,
    session_names,
    write_session,
)

GOLDEN = Path(__file__).parents[1] / "documents" / "golden" / "session_v2.shoulder.zip"


@pytest.fixture(scope="module")
def session() -> Assembled:
    stored = unpack_session(GOLDEN.read_bytes(), "golden")
    return Assembled(
        stored.document, write_readings(stored.readings), write_landmarks(stored.landmarks)
    )


@pytest.mark.parametrize("overwrite", [False, True])
def test_writes_whole_files_for_their_owner(tmp_path: Path, overwrite: bool) -> None:
    path = tmp_path / "report.pdf"
    write_bytes(path, b"x" * 100_000, overwrite=overwrite)
    assert path.read_bytes() == b"x" * 100_000
    if sys.platform != "win32":
        assert stat.S_IMODE(path.stat().st_mode) == 0o600
    assert list(tmp_path.iterdir()) == [path]


def test_replaces_only_where_it_may(tmp_path: Path) -> None:
    path = tmp_path / "report.pdf"
    path.write_bytes(b"old")
    with pytest.raises(FileExistsError):
        write_bytes(path, b"new", overwrite=False)
    assert path.read_bytes() == b"old"
    write_bytes(path, b"new")
    assert path.read_bytes() == b"new"
    assert list(tmp_path.iterdir()) == [path]


@pytest.mark.parametrize("call", ["write", "fsync", "link", "replace"])
@pytest.mark.parametrize("error", [errno.ENOSPC, errno.EIO, errno.EROFS, errno.EDQUOT])
def test_a_fault_at_any_step_leaves_what_was_there(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, call: str, error: int
) -> None:
    def fail(*_: object, **__: object) -> None:
        raise OSError(error, os.strerror(error))

    path = tmp_path / "report.pdf"
    path.write_bytes(b"old")
    new = tmp_path / "new.pdf"
    if call == "link":
        monkeypatch.setattr(os, "link", fail)
        monkeypatch.setattr(Path, "rename", fail)
        target, overwrite = new, False
    else:
        target, overwrite = path, True
        monkeypatch.setattr(Path if call == "replace" else os, call, fail)
    with pytest.raises(Fault, match=target.name) as refused:
        write_bytes(target, b"new", overwrite=overwrite)
    monkeypatch.undo()
    assert str(refused.value).endswith(".")
    assert path.read_bytes() == b"old"
    assert [p for p in tmp_path.iterdir() if p != path] == []


def test_a_stick_without_hard_links_still_overwrites_nothing(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def fail(*_: object) -> None:
        raise OSError(errno.EPERM, "no hard links on this disk")

    monkeypatch.setattr(os, "link", fail)
    path = tmp_path / "a.zip"
    write_bytes(path, b"first", overwrite=False)
    with pytest.raises(FileExistsError):
        write_bytes(path, b"second", overwrite=False)
    assert path.read_bytes() == b"first"
    assert list(tmp_path.iterdir()) == [path]


def test_a_missing_folder_is_named(tmp_path: Path) -> None:
    with pytest.raises(Fault, match="is not there"):
        write_bytes(tmp_path / "gone" / "a.wav", b"x")


@pytest.fixture
def readonly_disk(tmp_path: Path) -> Iterator[Path]:
    folder = tmp_path / "readonly"
    folder.mkdir()
    command = ["mount", "-t", "tmpfs", "-o", "ro,size=64k", "tmpfs", str(folder)]
    try:
        subprocess.run(command, check=True, capture_output=True)
    except (OSError, subprocess.CalledProcessError):
        pytest.skip("no disk can be mounted here")
    yield folder
    subprocess.run(["umount", str(folder)], check=True)


def test_a_disk_that_is_really_read_only(readonly_disk: Path, session: Assembled) -> None:
    with pytest.raises(Fault, match="may not be written to; choose another folder"):
        write_session(readonly_disk, session)


def test_writes_and_reads_a_session(tmp_path: Path, session: Assembled) -> None:
    path = write_session(tmp_path / "new" / "folder", session)
    assert path.name == "2026-11-24_1015_1b2c3d4e.shoulder.zip"
    assert read_session(path).document == session.document
    assert read_document(path) == session.document
    assert write_readings(read_session(path).readings) == session.readings_csv


def test_the_same_session_is_written_once_and_others_beside_it(
    tmp_path: Path, session: Assembled
) -> None:
    first = write_session(tmp_path, session)
    inode = first.stat().st_ino
    assert write_session(tmp_path, session) == first
    assert first.stat().st_ino == inode
    twin = msgspec.structs.replace(session.document, session_id="1b2c3d4e" + "0" * 24)
    second = write_session(tmp_path, replace(session, document=twin))
    assert second.name == f"2026-11-24_1015_1b2c3d4e{'0' * 24}.shoulder.zip"
    assert {read_document(p).session_id for p in tmp_path.iterdir()} == {
        session.document.session_id,
        twin.session_id,
    }


def test_where_both_names_are_taken_nothing_is_lost(tmp_path: Path, session: Assembled) -> None:
    for name in session_names(session.document):
        (tmp_path / name).write_bytes(b"other")
    with pytest.raises(Fault, match="other files of its name; choose another folder"):
        write_session(tmp_path, session)
    assert {p.read_bytes() for p in tmp_path.iterdir()} == {b"other"}


@pytest.mark.parametrize(
    ("name", "words"),
    [("gone.zip", "is not there"), (".", "is a folder or device"), ("a\x00b", "is not there")],
)
def test_names_that_are_no_files(tmp_path: Path, name: str, words: str) -> None:
    with pytest.raises(Fault, match=words):
        read_session(tmp_path / name)


@pytest.mark.skipif(sys.platform == "win32", reason="POSIX")
def test_pipes_and_devices_are_not_waited_for(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe.zip")
    with pytest.raises(Fault, match="is a folder or device"):
        read_session(tmp_path / "pipe.zip")
    with pytest.raises(Fault, match="is a folder or device"):
        read_session(Path("/dev/zero"))


def test_no_more_is_read_than_may_be(tmp_path: Path) -> None:
    path = tmp_path / "plan.json"
    path.write_bytes(b"x" * 11)
    assert read_bounded(path, 11, "plan") == b"x" * 11
    with pytest.raises(Fault, match="too large for a plan: at most 10 bytes"):
        read_bounded(path, 10, "plan")


def test_half_written_files_of_an_earlier_crash_go(tmp_path: Path) -> None:
    old, new, other = (tmp_path / n for n in (".a.zip.12.part", ".b.zip.34.part", "notes.part"))
    for path in (old, new, other):
        path.write_bytes(b"half")
    for path in (old, other):
        os.utime(path, (time.time() - 7_200,) * 2)
    recover(tmp_path / "journals", tmp_path)
    assert sorted(p.name for p in tmp_path.iterdir()) == [new.name, other.name]


def test_folders_follow_the_override_and_the_xdg_rule(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv(folders.OVERRIDE, str(tmp_path))
    for place in (folders.journals_folder(), folders.sessions_folder(), folders.store_path()):
        assert place.parent == tmp_path
    monkeypatch.delenv(folders.OVERRIDE)
    monkeypatch.setattr(folders.sys, "platform", "linux")
    monkeypatch.setenv("XDG_DATA_HOME", "/somewhere")
    assert folders.data_folder() == Path("/somewhere/stiff-shoulder-coach")
    monkeypatch.setenv("XDG_DATA_HOME", "relative/is/ignored")
    assert folders.data_folder() == Path.home() / ".local/share/stiff-shoulder-coach"
