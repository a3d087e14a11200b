"""Makes each call to the disk fail in turn, and cuts the power behind each, and counts the losses.

    python -m tests.bench.faults [--holds 1] [--seed 1]

A sitting is journaled, ended and recovered on a disk of ``tests.bench.disk``. A call may fail once
or from then on, with each of several errors, or take less than it was given. After a power failure
the disk holds what was forced onto it and any part of the rest.
"""

from __future__ import annotations

import argparse
import contextlib
import random
import shutil
import sys
import tempfile
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from errno import EIO
from pathlib import Path

import pyrage
from msgspec.structs import replace

from coach.documents.archive import unpack_session
from coach.domain.fault import Fault
from coach.domain.movement import View
from coach.session.assemble import assemble
from coach.session.entries import (
    CameraCounts,
    Entry,
    ExerciseStarted,
    LandmarkRows,
    ReadingRows,
    SessionOpened,
)
from coach.storage.keeper import SessionKeeper
from coach.storage.recovery import Recovered, recover
from coach.storage.sealed import PracticeIdentity, is_sealed, open_sealed
from tests.bench.disk import ERRORS, SHORT, Disk, Event, Fails, after_power_failure
from tests.storage import journaled

KEY = pyrage.x25519.Identity.generate()
IDENTITY = PracticeIdentity(str(KEY.to_public()), KEY)
_ROWS = (ReadingRows, LandmarkRows, CameraCounts)
_PROMISED_S = 1.0


@dataclass
class Count:
    """How often the disk failed, and what went wrong that should not have."""

    tried: dict[str, int] = field(default_factory=dict)
    wrong: list[str] = field(default_factory=list)

    def __str__(self) -> str:
        lines = [f"{what}: {count}" for what, count in self.tried.items()]
        return "\n".join([*lines, f"lost, doubled or not opening: {len(self.wrong)}", *self.wrong])

    def note(self, what: str) -> None:
        self.tried[what] = self.tried.get(what, 0) + 1


def sitting(holds: int, *, sealed: bool, seconds: int = 10) -> list[Entry]:
    """Give the entries of so many holds, each of so many seconds."""
    opened = journaled.opened("ab" * 16)
    if sealed:
        opened = replace(opened, plan=replace(opened.plan, practice_key=IDENTITY.public_key))
    started = ExerciseStarted(time_s=1.0, planned_index=0, view=View.SIDE)
    made = [
        entry
        for n in range(1, holds + 1)
        for entry in journaled.repetition_entries(n)[-2 * seconds - 1 :]
    ]
    return [opened, started, *made, *journaled.ending()]


def facts(entries: Iterable[Entry]) -> list[object]:
    """What must never be lost: everything but rows, without the end of an interrupted sitting."""
    exercises = assemble([e for e in entries if not isinstance(e, _ROWS)]).document.exercises
    return [(e.planned_index, e.repetitions, e.timed, e.pain_before) for e in exercises]


class Home:
    """A patient's folders on the failing disk."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.journals, self.sessions, self.own = (
            folder / "data" / "journals",
            folder / "sent",
            folder / "data" / "own",
        )
        folder.mkdir(parents=True, exist_ok=True)

    def recover(self) -> list[Recovered]:
        return recover(self.journals, self.sessions, self.own)

    def kept(self) -> list[tuple[list[object], int]]:
        """Give the facts and the number of readings of every file; each must open."""
        found = []
        for folder in (self.sessions, self.own):
            for path in sorted(folder.glob("[!.]*.shoulder.*")):
                data = path.read_bytes()
                if is_sealed(data):
                    data = open_sealed(data, IDENTITY, path.name)
                session = unpack_session(data, path.name)
                exercises = session.document.exercises
                found.append(
                    (
                        [
                            (e.planned_index, e.repetitions, e.timed, e.pain_before)
                            for e in exercises
                        ],
                        len(session.readings),
                    )
                )
        return found


def journal_all(
    home: Home, entries: list[Entry], disk: Disk, kept: Callable[[int], None]
) -> tuple[SessionKeeper, int]:
    """Journal a sitting; gives the keeper and how many entries the disk has taken for certain."""
    opened = entries[0]
    assert isinstance(opened, SessionOpened)
    keeper = SessionKeeper(home.journals, opened)
    sure = 1
    for n, entry in enumerate(entries[1:], 2):
        with contextlib.suppress(Fault):
            keeper.keep([entry])
        # The forcing runs beside the caller; here it is waited for, so that a run repeats itself.
        keeper.journal._thread.submit(lambda: None).result()
        forcing = keeper.journal._sync
        if keeper.fault is None and (forcing is None or forcing.exception() is None):
            sure = n
            kept(n)
    return keeper, sure


def fail_each_call(
    count: Count,
    folder: Path,
    entries: list[Entry],
    errors: tuple[int, ...] = (*ERRORS, SHORT),
) -> None:
    """Let each call fail in turn, once or from then on, in the sitting and in its recovery."""
    everything = facts(entries)
    for ends in ("ends well", "is killed"):
        for error in errors:
            for on in (False, True):
                number = 1
                while _fails(count, folder, entries, everything, ends, error, number, on):
                    number += 1
    for error in errors:
        number = 1
        while _fails_to_recover(count, folder, entries, everything, error, number):
            number += 1


def _failing(error: int, number: int, on: bool) -> Callable[[int, str], int | None]:
    def fails(call: int, name: str) -> int | None:
        return error if call == number or (on and call > number) else None

    return fails


def _fails(
    count: Count,
    folder: Path,
    entries: list[Entry],
    everything: list[object],
    ends: str,
    error: int,
    number: int,
    on: bool,
) -> bool:
    shutil.rmtree(folder, ignore_errors=True)
    home, where = Home(folder), f"call {number}, error {error}, on {on}, sitting {ends}"
    with Disk(folder, _failing(error, number, on)) as disk:
        try:
            keeper, sure = journal_all(home, entries, disk, lambda n: None)
        except Fault:
            return True  # not begun, and said so: nothing to lose
        if ends == "ends well":
            with contextlib.suppress(Fault):
                keeper.finish(home.sessions, home.own)
            called, sure = disk.calls, len(entries)
            disk.fails = lambda call, name: None  # room was made, or the stick put back
            with contextlib.suppress(Fault):
                keeper.finish(home.sessions, home.own)
        else:
            called = disk.calls
            disk.fails = lambda call, name: error  # whatever closing would still write is lost
        keeper.close()
        disk.fails = lambda call, name: None
        home.recover()
        home.recover()
    count.note(f"a call failed and the sitting {ends}")
    _check(count, home, entries, facts(entries[:sure]), everything, where)
    return called >= number


def _fails_to_recover(
    count: Count,
    folder: Path,
    entries: list[Entry],
    everything: list[object],
    error: int,
    number: int,
) -> bool:
    shutil.rmtree(folder, ignore_errors=True)
    home = Home(folder)
    with Disk(folder) as disk:
        journal_all(home, entries, disk, lambda n: None)[0].close()
        before = disk.calls
        disk.fails = lambda call, name: error if call >= before + number else None
        home.recover()
        called = disk.calls - before
        disk.fails = lambda call, name: None
        home.recover()
        home.recover()
    count.note("a call failed while recovering")
    _check(count, home, entries, everything, everything, f"recovery, call {number}, {error}")
    return called >= number


def _check(
    count: Count,
    home: Home,
    entries: list[Entry],
    sure: list[object],
    everything: list[object],
    where: str,
) -> None:
    try:
        files = home.kept()
    except Fault as fault:
        count.wrong.append(f"{where}: {fault}")
        return
    sealed = entries[0].plan.practice_key is not None  # type: ignore[union-attr]
    if len(files) != (2 if sealed else 1):
        if sure:
            count.wrong.append(f"{where}: {len(files)} files")
        return
    for found, _ in files:
        if not _begins(found, sure) or not _begins(everything, found):
            count.wrong.append(f"{where}: {found}")


def _begins(longer: list[object], shorter: list[object]) -> bool:
    """Whether what was done begins with what is asked, exercise by exercise."""
    if len(shorter) > len(longer):
        return False
    for (i, reps, timed, _), (j, fewer, fewer_timed, _) in zip(longer, shorter, strict=False):  # type: ignore[misc]
        if i != j or reps[: len(fewer)] != fewer or timed[: len(fewer_timed)] != fewer_timed:
            return False
    return True


def cut_the_power(
    count: Count,
    folder: Path,
    entries: list[Entry],
    chance: random.Random,
    times: int,
    fails: Fails = lambda number, name: None,
) -> None:
    """Cut the power behind every call, and in the recovery as well, and look what is left."""
    shutil.rmtree(folder, ignore_errors=True)
    home, everything = Home(folder), facts(entries)
    with Disk(folder, fails) as disk:
        keeper, _ = journal_all(home, entries, disk, lambda n: disk.mark("kept", n))
        with contextlib.suppress(Fault):
            keeper.finish(home.sessions, home.own)
            disk.mark("kept", len(entries))
    left = folder.with_name("left")
    again = folder.with_name("again")
    for behind in range(len(disk.events) + 1):
        past = disk.events[:behind]
        kept = max((event.number for event in past if event.what == "kept"), default=0)
        sure, rows = facts(entries[:kept]) if kept else [], _sure_rows(entries[:kept])
        for _ in range(times):
            for place in (left, again):
                shutil.rmtree(place, ignore_errors=True)
            after = Home(left)
            after_power_failure(past, folder, left, chance)
            with Disk(left) as recovering:
                before = _as_created(recovering, left)
                after.recover()
            twice = Home(again)
            cut = chance.randint(0, len(recovering.events) - before)
            after_power_failure(recovering.events[: before + cut], left, again, chance)
            twice.recover()
            for name, end in (("", after), (" and in the recovery", twice)):
                where = f"the power was cut behind call {behind}{name}"
                count.note(f"the power was cut{name}")
                end.recover()
                _check(count, end, entries, sure, everything, where)
                if sure and any(readings < rows for _, readings in end.kept()):
                    count.wrong.append(f"{where}: rows of more than a second")


def _as_created(disk: Disk, folder: Path) -> int:
    """Tell a disk of what is on it already, all of it forced."""
    for n, path in enumerate(sorted(folder.rglob("*")), 1_000):
        if path.is_dir():
            disk.events.append(Event("mkdir", str(path)))
        else:
            disk.events.append(Event("create", str(path), number=n))
            disk.events.append(Event("write", number=n, data=path.read_bytes()))
            disk.events.append(Event("sync", number=n))
    for path in (folder, *folder.rglob("*")):
        if path.is_dir():
            disk.events.append(Event("sync-folder", str(path)))
    return len(disk.events)


def _sure_rows(entries: list[Entry]) -> int:
    """Count the readings that are a second older than the last entry."""
    times = [e.time_s for e in entries if not isinstance(e, SessionOpened)]
    last_s = max(times, default=0.0) - _PROMISED_S
    return sum(
        e.rows.count("\n") for e in entries if isinstance(e, ReadingRows) and e.time_s <= last_s
    )


def run(holds: int, seed: int, times: int = 3) -> Count:
    """Do all of it, with a plan that seals and one that does not."""
    count, chance = Count(), random.Random(seed)
    with tempfile.TemporaryDirectory() as place:
        folder = Path(place).resolve() / "home"
        for sealed in (False, True):
            entries = sitting(holds, sealed=sealed)
            fail_each_call(count, folder, entries)
            cut_the_power(count, folder, entries, chance, times)
            # Some of the forcing fails on the way as well.
            doomed = {chance.randint(20, 80) for _ in range(8)}
            cut_the_power(
                count,
                folder,
                entries,
                chance,
                1,
                lambda n, name, doomed=doomed: EIO if name == "fsync" and n in doomed else None,
            )
    return count


def main() -> int:
    """Print the figures; 1 where anything went wrong."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--holds", type=int, default=1)
    parser.add_argument("--seed", type=int, default=1)
    asked = parser.parse_args()
    count = run(asked.holds, asked.seed)
    print(count)
    return 1 if count.wrong else 0


if __name__ == "__main__":
    sys.exit(main())
