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
from collections.abc import Callable
from errno import EIO
from pathlib import Path

from coach.domain.fault import Fault
from coach.session.entries import Entry
from tests.bench.breaking import Count, Home, check, facts, journal_all, sitting
from tests.bench.disk import ERRORS, SHORT, Disk
from tests.bench.power import cut_the_power


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
    check(count, home, entries, facts(entries[:sure]), everything, where)
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
    check(count, home, entries, everything, everything, f"recovery, call {number}, {error}")
    return called >= number


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
