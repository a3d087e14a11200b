"""The journal: every cut, a full disk, a failing disk, a removed file."""

from __future__ import annotations

import errno
import os
import random
import stat
import subprocess
import sys
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from coach.domain.fault import Fault
from coach.domain.form import FormFault
from coach.domain.movement import Position, Unit, View
from coach.domain.reading import Form
from coach.domain.session import SessionEnd
from coach.session.assemble import assemble
from coach.session.entries import (
    CameraCounts,
    Entry,
    ExerciseStarted,
    RepetitionDone,
    SessionOpened,
)
from coach.storage import journal as journals
from coach.storage.journal import Journal
from coach.storage.journal_lines import journal_line, read_lines
from coach.storage.keeper import SessionKeeper
from coach.storage.recovery import recover
from coach.storage.session_file import read_session
from tests.bench.disk import Disk, after_power_failure
from tests.storage import journaled

GOLDEN = Path(__file__).parents[1] / "documents" / "golden"
OPENED: SessionOpened = journaled.opened("ab" * 16)
ENTRIES: list[Entry] = [
    OPENED,
    ExerciseStarted(time_s=1.0, planned_index=0, view="side"),  # type: ignore[arg-type]
    *journaled.repetition_entries(1)[-3:],
    *journaled.repetition_entries(2)[-3:],
    *journaled.ending(),
]
ENTRIES = list(read_lines(b"".join(map(journal_line, ENTRIES)), "made").entries)
LINES = [journal_line(entry) for entry in ENTRIES]


@pytest.fixture
def journal(tmp_path: Path) -> Iterator[Journal]:
    opened = Journal(tmp_path / "folder" / "one.journal", OPENED)
    yield opened
    opened.close()


def test_a_line_is_checksum_length_and_json() -> None:
    """The CRC of 123456789 is the check value of CRC-32/ISO-HDLC in common catalogues."""
    import zlib

    assert zlib.crc32(b"123456789") == 0xCBF43926
    checksum, length, text = LINES[1].rstrip(b"\n").split(b" ", 2)
    assert int(checksum, 16) == zlib.crc32(text)
    assert int(length) == len(text)
    assert text.startswith(b'{"type":"exercise-started"')


def test_cut_at_any_byte_all_whole_lines_before_are_kept() -> None:
    whole = b"".join(LINES)
    ends = [0]
    for line in LINES:
        ends.append(ends[-1] + len(line))
    for length in range(len(whole) + 1):
        kept = max(i for i, end in enumerate(ends) if end <= length)
        content = read_lines(whole[:length], "cut")
        assert list(content.entries) == ENTRIES[:kept]
        assert content.dropped_bytes == length - ends[kept]
        assert content.skipped_lines == 0


def test_a_changed_byte_hides_its_line_and_what_follows() -> None:
    whole = b"".join(LINES)
    start = sum(map(len, LINES[:4]))
    for place in range(start, start + len(LINES[4])):
        for value in (whole[place] ^ 1, 0, ord("\n")):
            changed = bytearray(whole)
            if changed[place] == value:
                continue
            changed[place] = value
            content = read_lines(bytes(changed), "changed")
            assert list(content.entries) == ENTRIES[:4]
            assert content.dropped_bytes == len(whole) - start


def test_a_whole_line_of_no_meaning_is_passed_over() -> None:
    import zlib

    text = b'{"type":"from-the-future","time_s":1}'
    strange = b"%08x %d %s\n" % (zlib.crc32(text), len(text), text)
    content = read_lines(b"".join([*LINES[:3], strange, *LINES[3:]]), "mixed")
    assert list(content.entries) == ENTRIES
    assert content.skipped_lines == 1


def test_a_newer_journal_is_left_for_the_newer_program(tmp_path: Path) -> None:
    import zlib

    text = b'{"type":"opened","format":"shoulder-journal","version":4}'
    line = b"%08x %d %s\n" % (zlib.crc32(text), len(text), text)
    path = tmp_path / "new.journal"
    path.write_bytes(line)
    (found,) = recover(tmp_path, tmp_path / "sessions")
    assert "newer version" in found.message
    assert path.read_bytes() == line


def test_a_journal_that_version_1_left_behind_is_recovered(tmp_path: Path) -> None:
    (tmp_path / "old.journal").write_bytes((GOLDEN / "journal_v1.journal").read_bytes())
    (found,) = recover(tmp_path, tmp_path / "sessions")
    assert found.path is not None
    assert (found.dropped_bytes, (tmp_path / "old.journal").exists()) == (0, False)
    session = read_session(found.path)
    document = session.document
    assert (document.version, document.ended_because) == (4, SessionEnd.INTERRUPTED)
    (flexion,) = document.exercises
    assert [(r.value, r.error, r.unit) for r in flexion.repetitions] == [
        (121.4, 3.5, Unit.DEGREES),
        (124.0, 3.5, Unit.DEGREES),
        (125.75, 3.5, Unit.DEGREES),
    ]
    assert flexion.repetitions[0].form == Form(trunk_lean_deg=-4.5, elbow_flexion_deg=8.0)
    assert (flexion.position, flexion.view) == (Position.STANDING, View.SIDE)
    assert len(session.readings) == 40
    assert session.readings.value[[0, 4]].tolist() == [100.0, 101.0]
    assert session.readings.form[0, :3].tolist()[::2] == [-4.5, 8.0]


def test_a_journal_that_version_2_left_behind_is_recovered(tmp_path: Path) -> None:
    (tmp_path / "old.journal").write_bytes((GOLDEN / "journal_v2.journal").read_bytes())
    (found,) = recover(tmp_path, tmp_path / "sessions")
    assert found.path is not None
    assert (found.dropped_bytes, (tmp_path / "old.journal").exists()) == (0, False)
    document = read_session(found.path).document
    assert (document.version, document.plan.version) == (4, 2)
    assert document.ended_because is SessionEnd.INTERRUPTED
    reach, rotation = document.exercises
    assert [(r.number, r.unit, r.faults) for r in reach.repetitions] == [
        (1, Unit.RATIO, ()),
        (2, Unit.RATIO, ()),
        (3, Unit.RATIO, ()),
    ]
    assert (reach.exercise, reach.eased, reach.timed) == (None, False, ())
    assert (rotation.ended_because, rotation.pain_before) == (SessionEnd.PAIN, 4)


def test_a_journal_of_this_version_is_recovered(tmp_path: Path) -> None:
    (tmp_path / "old.journal").write_bytes((GOLDEN / "journal_v3.journal").read_bytes())
    (found,) = recover(tmp_path, tmp_path / "sessions")
    assert found.path is not None
    document = read_session(found.path).document
    assert document.ended_because is SessionEnd.INTERRUPTED
    reach, _, pendulum, squeeze = document.exercises
    assert [r.faults for r in reach.repetitions] == [(), (), (FormFault.LEAN,)]
    assert [(h.held_s, h.number) for h in pendulum.timed] == [(30.0, 1)]
    assert (pendulum.offered, squeeze.exercise) == ("armpit-squeeze", "armpit-squeeze")
    assert (squeeze.eased, squeeze.ended_because) == (True, SessionEnd.INTERRUPTED)


@pytest.mark.skipif(sys.platform == "win32", reason="POSIX rights")
def test_only_the_owner_may_look(journal: Journal) -> None:
    assert stat.S_IMODE(journal.path.stat().st_mode) == 0o600
    assert stat.S_IMODE(journal.path.parent.stat().st_mode) == 0o700


def test_an_entry_is_with_the_system_as_soon_as_append_returns(journal: Journal) -> None:
    for count, entry in enumerate(ENTRIES[1:], start=2):
        journal.append(entry)
        assert list(read_lines(journal.path.read_bytes(), "j").entries) == ENTRIES[:count]


def test_what_cannot_be_measured_again_is_forced_to_disk(
    journal: Journal, monkeypatch: pytest.MonkeyPatch
) -> None:
    forced: list[int] = []
    monkeypatch.setattr(journals.os, "fsync", lambda fd: forced.append(os.fstat(fd).st_size))
    counts = CameraCounts(time_s=0.5, frames_seen=1, frames_lost=0)
    journal.append(counts)
    journal._thread.submit(lambda: None).result()
    assert forced == []
    (repetition,) = (e for e in ENTRIES[:6] if isinstance(e, RepetitionDone))
    journal.append(repetition)
    journal._thread.submit(lambda: None).result()
    assert forced == [journal.path.stat().st_size]
    later = CameraCounts(time_s=repetition.time_s + 1.0, frames_seen=1, frames_lost=0)
    journal.append(later)
    journal._thread.submit(lambda: None).result()
    assert forced[-1] == journal.path.stat().st_size


class BadDisk:
    """Stands in for ``os.write``: takes ``room`` bytes more, then fails."""

    def __init__(self, room: int, error: int) -> None:
        self.room = room
        self.error = error
        self.real = os.write

    def __call__(self, descriptor: int, data: bytes) -> int:
        if self.room <= 0:
            raise OSError(self.error, os.strerror(self.error))
        taken = self.real(descriptor, data[: self.room])
        self.room -= taken
        return taken


@pytest.mark.parametrize(
    ("error", "words"),
    [
        (errno.ENOSPC, "is full; free some space"),
        (errno.EROFS, "may not be written to"),
        (errno.EIO, "failed; choose another disk"),
    ],
)
@pytest.mark.parametrize("room", [0, 1, 150, 500])
def test_trouble_is_told_once_and_what_waits_is_written_when_it_is_over(
    journal: Journal, monkeypatch: pytest.MonkeyPatch, error: int, words: str, room: int
) -> None:
    disk = BadDisk(room, error)
    monkeypatch.setattr("coach.storage.atomic.os.write", disk)
    told = []
    for entry in ENTRIES[1:6]:
        try:
            journal.append(entry)
        except Fault as fault:
            told.append(str(fault))
    assert len(told) == 1
    assert words in told[0]
    assert journal.fault is not None
    assert list(journal.content().entries) == ENTRIES[:6]
    on_disk = read_lines(journal.path.read_bytes(), "j").entries
    assert list(on_disk) == ENTRIES[: len(on_disk)]
    disk.room = 10**9
    for entry in ENTRIES[6:]:
        journal.append(entry)
    assert journal.fault is None
    assert list(read_lines(journal.path.read_bytes(), "j").entries) == ENTRIES


def test_closing_writes_what_still_waits(journal: Journal, monkeypatch: pytest.MonkeyPatch) -> None:
    disk = BadDisk(0, errno.ENOSPC)
    monkeypatch.setattr("coach.storage.atomic.os.write", disk)
    with pytest.raises(Fault, match="full"):
        journal.append(ENTRIES[1])
    disk.room = 10**9
    journal.close()
    journal.close()
    assert list(read_lines(journal.path.read_bytes(), "j").entries) == ENTRIES[:2]


def test_a_failing_fsync_is_told_and_nothing_written_is_lost(
    journal: Journal, monkeypatch: pytest.MonkeyPatch
) -> None:
    def fail(descriptor: int) -> None:
        raise OSError(errno.EIO, "no")

    monkeypatch.setattr(journals.os, "fsync", fail)
    journal.append(ENTRIES[1])
    journal._thread.submit(lambda: None).result()
    with pytest.raises(Fault, match=r"the disk .* failed"):
        journal.append(ENTRIES[2])
    assert list(journal.content().entries) == ENTRIES[:3]


def test_closing_writes_again_what_could_not_be_forced(tmp_path: Path) -> None:
    folder, left = tmp_path / "disk", tmp_path / "left"
    folder.mkdir()
    left.mkdir()
    with Disk(folder) as disk:
        journal = Journal(folder / "one.journal", OPENED)
        disk.fails = lambda number, name: errno.EIO if name == "fsync" else None
        journal.append(ENTRIES[1])
        journal._thread.submit(lambda: None).result()
        disk.fails = lambda number, name: None
        journal.close()
    after_power_failure(disk.events, folder, left, random.Random(1))
    assert list(read_lines((left / "one.journal").read_bytes(), "j").entries) == ENTRIES[:2]


def keeper_with(tmp_path: Path, entries: list[Entry]) -> SessionKeeper:
    keeper = SessionKeeper(tmp_path / "journals", OPENED)
    keeper.keep(entries)
    return keeper


def test_a_good_end_leaves_a_session_file_and_no_journal(tmp_path: Path) -> None:
    keeper = keeper_with(tmp_path, ENTRIES[1:])
    path = keeper.finish(tmp_path / "sessions")
    assert path is not None
    assert path.name == "2026-11-24_1015_abababab.shoulder.zip"
    assert read_session(path).document == assemble(ENTRIES).document
    assert list((tmp_path / "journals").iterdir()) == []
    assert keeper.finish(tmp_path / "sessions") == path
    assert recover(tmp_path / "journals", tmp_path / "sessions") == []


@pytest.mark.skipif(sys.platform == "win32", reason="open files cannot be removed there")
def test_a_removed_journal_still_gives_the_session(tmp_path: Path) -> None:
    keeper = keeper_with(tmp_path, ENTRIES[1:5])
    keeper.journal.path.unlink()
    keeper.keep(ENTRIES[5:])
    path = keeper.finish(tmp_path / "sessions")
    assert path is not None
    assert read_session(path).document == assemble(ENTRIES).document


def test_a_journal_that_cannot_be_read_back_gives_the_session_without_traces(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    keeper = keeper_with(tmp_path, ENTRIES[1:])

    def fail(*_: int) -> bytes:
        raise OSError(errno.EIO, "no")

    monkeypatch.setattr("coach.storage.journal.os.read", fail)
    path = keeper.finish(tmp_path / "sessions")
    monkeypatch.undo()
    assert path is not None
    assert read_session(path).document == assemble(ENTRIES).document


def test_when_the_session_file_cannot_be_saved_the_journal_stays(tmp_path: Path) -> None:
    keeper = keeper_with(tmp_path, ENTRIES[1:])
    (tmp_path / "taken").write_text("a file where a folder is wanted")
    with pytest.raises(Fault, match="taken"):
        keeper.finish(tmp_path / "taken")
    assert keeper.journal.path.exists()
    assert keeper.finish(tmp_path / "elsewhere") is not None


def test_a_sitting_in_which_nothing_was_done_leaves_nothing(tmp_path: Path) -> None:
    keeper = keeper_with(tmp_path, [])
    assert keeper.finish(tmp_path / "sessions") is None
    assert not (tmp_path / "sessions").exists()
    assert list((tmp_path / "journals").iterdir()) == []


def interrupted(tmp_path: Path, content: bytes = b"".join(LINES[:6])) -> Path:
    folder = tmp_path / "journals"
    folder.mkdir(exist_ok=True)
    path = folder / "one.journal"
    path.write_bytes(content)
    return path


def test_recovers_an_interrupted_session_once(tmp_path: Path) -> None:
    path = interrupted(tmp_path, b"".join(LINES[:6]) + LINES[6][:20])
    (found,) = recover(tmp_path / "journals", tmp_path / "sessions")
    assert found.path is not None
    assert found.dropped_bytes == 20
    assert found.message == (
        "The session of 2026-11-24 10:15 was interrupted; what was done is kept in "
        "2026-11-24_1015_abababab.shoulder.zip."
    )
    document = read_session(found.path).document
    assert document == assemble(ENTRIES[:6]).document
    assert document.ended_because is SessionEnd.INTERRUPTED
    assert not path.exists()
    assert recover(tmp_path / "journals", tmp_path / "sessions") == []


@pytest.mark.parametrize("finished", [False, True])
def test_a_crash_between_file_and_removal_doubles_nothing(tmp_path: Path, finished: bool) -> None:
    count = len(LINES) if finished else 6
    interrupted(tmp_path, b"".join(LINES[:count]))
    (first,) = recover(tmp_path / "journals", tmp_path / "sessions")
    assert first.path is not None
    before = first.path.read_bytes()
    path = interrupted(tmp_path)
    (second,) = recover(tmp_path / "journals", tmp_path / "sessions")
    assert second.path == first.path
    assert [p.read_bytes() for p in (tmp_path / "sessions").iterdir()] == [before]
    assert not path.exists()


def test_another_file_of_the_same_name_is_not_overwritten(tmp_path: Path) -> None:
    interrupted(tmp_path)
    taken = tmp_path / "sessions" / "2026-11-24_1015_abababab.shoulder.zip"
    taken.parent.mkdir()
    taken.write_bytes(b"something else")
    (found,) = recover(tmp_path / "journals", tmp_path / "sessions")
    assert found.path is not None
    assert found.path.name == f"2026-11-24_1015_{'ab' * 16}.shoulder.zip"
    assert taken.read_bytes() == b"something else"


def test_a_journal_in_use_is_left_alone(tmp_path: Path) -> None:
    keeper = keeper_with(tmp_path, ENTRIES[1:5])
    assert recover(tmp_path / "journals", tmp_path / "sessions") == []
    assert keeper.journal.path.exists()
    keeper.close()
    (found,) = recover(tmp_path / "journals", tmp_path / "sessions")
    assert found.path is not None


def test_a_journal_without_a_beginning_is_put_aside(tmp_path: Path) -> None:
    path = interrupted(tmp_path, b"\x00" * 100 + b"".join(LINES))
    (found,) = recover(tmp_path / "journals", tmp_path / "sessions")
    assert found.path is None
    assert "could not be read from its first line on" in found.message
    assert path.with_suffix(".unreadable").exists()
    assert recover(tmp_path / "journals", tmp_path / "sessions") == []


def test_what_cannot_be_saved_now_is_recovered_later(tmp_path: Path) -> None:
    path = interrupted(tmp_path)
    (tmp_path / "taken").write_text("a file where a folder is wanted")
    (found,) = recover(tmp_path / "journals", tmp_path / "taken")
    assert found.path is None
    assert path.exists()
    (found,) = recover(tmp_path / "journals", tmp_path / "sessions")
    assert found.path is not None


@pytest.fixture
def tiny_disk(tmp_path: Path) -> Iterator[Path]:
    """A real disk of 64 kB, where the tests may make one."""
    folder = tmp_path / "tiny"
    folder.mkdir()
    command = ["mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", str(folder)]
    try:
        subprocess.run(command, check=True, capture_output=True)
    except (OSError, subprocess.CalledProcessError):
        pytest.skip("no disk can be mounted here")
    yield folder
    subprocess.run(["umount", str(folder)], check=True)


def test_on_a_disk_that_is_really_full_everything_survives(tiny_disk: Path, tmp_path: Path) -> None:
    keeper = SessionKeeper(tiny_disk / "journals", OPENED)
    told = []
    for number in range(1, 31):
        try:
            keeper.keep(journaled.repetition_entries(number))
        except Fault as fault:
            told.append(str(fault))
    assert len(told) == 1
    assert "is full; free some space" in told[0]
    with pytest.raises(Fault, match="full"):
        keeper.finish(tiny_disk / "sessions")
    path = keeper.finish(tmp_path / "sessions")
    assert path is not None
    (exercise,) = read_session(path).document.exercises
    assert [repetition.number for repetition in exercise.repetitions] == list(range(1, 31))


@pytest.mark.parametrize(
    ("make", "words"),
    [
        (lambda p: (p / "file").write_text("x") and p / "file" / "j", "is not a file in a folder"),
        (lambda p: p / ("x" * 300), "its name is too long"),
    ],
)
def test_a_place_where_no_journal_can_be_begun(
    tmp_path: Path, make: Callable[[Path], Path], words: str
) -> None:
    with pytest.raises(Fault, match=words):
        SessionKeeper(make(tmp_path), OPENED)
