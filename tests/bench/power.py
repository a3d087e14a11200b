"""Cuts the power behind each call to a disk, and in the recovery as well."""

from __future__ import annotations

import contextlib
import random
import shutil
from pathlib import Path

from coach.domain.fault import Fault
from coach.session.entries import Entry, ReadingRows, SessionOpened
from tests.bench.breaking import Count, Home, check, facts, journal_all
from tests.bench.disk import Disk, Event, Fails, after_power_failure

PROMISED_S = 1.0
"""So much of the rows may be lost."""


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
                check(count, end, entries, sure, everything, where)
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
    last_s = max(times, default=0.0) - PROMISED_S
    return sum(
        e.rows.count("\n") for e in entries if isinstance(e, ReadingRows) and e.time_s <= last_s
    )
