"""A patient's home on a disk that breaks: a sitting journaled there, and what is left of it."""

from __future__ import annotations

import contextlib
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
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
from tests.bench.disk import Disk
from tests.storage import journaled

KEY = pyrage.x25519.Identity.generate()
IDENTITY = PracticeIdentity(str(KEY.to_public()), KEY)
_ROWS = (ReadingRows, LandmarkRows, CameraCounts)


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


def check(
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
