"""Kills a sitting at random moments, recovers as the next start does, and counts what is missing.

    python -m tests.bench.crash [--kills 300] [--seed 1] [--long]

Each round plays a whole sitting in a child process and kills it (SIGKILL): anywhere, while the
session file is made, or anywhere and then its recovery as well. Every second plan carries a
practice's key. What the child had told as kept is compared with the session file; what was to come
is known from a sitting that nobody killed.
"""

from __future__ import annotations

import argparse
import os
import random
import signal
import sys
import tempfile
import time
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from pathlib import Path

import pyrage

from coach.app.sitting import Folders
from coach.documents.archive import StoredSession, unpack_session
from coach.domain.fault import Fault
from coach.domain.plan import Plan
from coach.domain.session import ExerciseRecord, SessionEnd
from coach.session.entries import (
    Entry,
    ExerciseStarted,
    PainGiven,
    ReadingRows,
    RepetitionDone,
    TimedHoldDone,
)
from coach.storage.diary_files import read_history
from coach.storage.journal_lines import journal_line, read_lines
from coach.storage.recovery import recover
from coach.storage.sealed import PracticeIdentity, is_sealed, open_sealed
from tests.bench.sittings import LONG, SHORT, Tape, plan, play

PLACES = ("anywhere", "finishing", "recovering")
_MOST_RECOVERIES = 4


@dataclass
class Count:
    """What was done and what went missing."""

    kills: int = 0
    told: int = 0
    files: int = 0
    lost: list[str] = field(default_factory=list)
    doubled: list[str] = field(default_factory=list)
    closed: list[str] = field(default_factory=list)
    unannounced: list[str] = field(default_factory=list)

    @property
    def clean(self) -> bool:
        return not (self.lost or self.doubled or self.closed or self.unannounced)

    def __str__(self) -> str:
        lines = [
            f"{self.kills} kills, {self.told} finished holds and scores told before them, "
            f"{self.files} session files made",
            f"lost {len(self.lost)}, doubled {len(self.doubled)}, "
            f"files that do not open {len(self.closed)}, not announced {len(self.unannounced)}",
        ]
        return "\n".join([*lines, *self.lost, *self.doubled, *self.closed, *self.unannounced])


def of_exercise(entries: Iterable[Entry], index: int) -> tuple[list[object], list[object]]:
    """Give an exercise's repetitions and timed holds."""
    reps = [e for e in entries if isinstance(e, RepetitionDone) and e.planned_index == index]
    held = [e for e in entries if isinstance(e, TimedHoldDone) and e.planned_index == index]
    return [e.repetition for e in reps], [e.hold for e in held]


def in_child(work: Callable[[], object]) -> int:
    """Fork; give the child's number. It never returns into what its parent was doing."""
    child = os.fork()
    if child:
        return child
    try:
        work()
    except BaseException:
        import traceback

        traceback.print_exc()
        os._exit(1)
    os._exit(0)


def kill(child: int, after_s: float) -> bool:
    """Kill a child after some time; say whether it still ran."""
    time.sleep(after_s)
    done, status = os.waitpid(child, os.WNOHANG)
    if done:
        if status:
            raise RuntimeError(f"the child ended by itself with {status}")
        return False
    os.kill(child, signal.SIGKILL)
    os.waitpid(child, 0)
    return True


class Rounds:
    """All the sittings of one run, in one folder as on one patient's machine."""

    def __init__(self, folder: Path, exercises: tuple[object, ...], seed: int) -> None:
        self.home = Folders(folder / "data" / "journals", folder / "sent", folder / "data" / "own")
        self.diary = folder / "told"
        self.diary.mkdir(parents=True)
        self.chance = random.Random(seed)
        self.key = pyrage.x25519.Identity.generate()
        self.plans = (plan(exercises), plan(exercises, str(self.key.to_public())))
        self.count = Count()
        self.tape = Tape()
        self.whole: list[Entry] = []
        self._known: set[Path] = set()
        elsewhere = Folders(folder / "whole", folder / "whole", folder / "whole")
        play(self.tape, self.plans[0], elsewhere, self.whole.append).close()
        begun = time.monotonic()
        child = in_child(lambda: self._sitting(-1, self.plans[0], elsewhere))
        os.waitpid(child, 0)
        self.lasts_s = time.monotonic() - begun

    def _sitting(self, number: int, asked: Plan, folders: Folders) -> None:
        told = os.open(self._told(number), os.O_WRONLY | os.O_CREAT | os.O_APPEND, 0o600)
        sitting = play(self.tape, asked, folders, lambda e: os.write(told, journal_line(e)))
        (self.diary / f"{number}.finishing").touch()
        sitting.finish(SessionEnd.COMPLETED)
        sitting.close()
        (self.diary / f"{number}.finished").touch()

    def _told(self, number: int) -> Path:
        return self.diary / f"{number}.told"

    def round(self, number: int) -> None:
        """Play, kill and recover once, and compare."""
        asked, place = self.plans[number % 2], PLACES[number % 3]
        before = set(self.home.journals.glob("*.journal"))
        child = in_child(lambda: self._sitting(number, asked, self.home))
        if place == "finishing":
            while not (self.diary / f"{number}.finishing").exists():
                time.sleep(0.001)
            after_s = self.chance.uniform(0, 0.15)
        else:
            after_s = self.chance.uniform(0, 1.1 * self.lasts_s)
        self.count.kills += kill(child, after_s)
        left = set(self.home.journals.glob("*.journal")) - before
        if place == "recovering":
            for _ in range(self.chance.randrange(1, _MOST_RECOVERIES)):
                recovering = in_child(self._recover)
                self.count.kills += kill(recovering, self.chance.uniform(0, 0.1))
        messages = " ".join(found.message for found in self._recover())
        self._compare(number, asked, bool(left) and place != "recovering", messages)

    def _recover(self) -> list[object]:
        return list(recover(self.home.journals, self.home.sessions, self.home.own))

    def _compare(self, number: int, asked: Plan, announced: bool, messages: str) -> None:
        told_path = self._told(number)
        told = read_lines(told_path.read_bytes(), "told").entries if told_path.exists() else ()
        worth = any(isinstance(e, ExerciseStarted) for e in told)
        files = set(self.home.sessions.glob("*")) - self._known
        self._known |= files
        files = {path for path in files if not path.name.endswith(".part")}
        if len(files) > 1:
            self.count.doubled.append(f"round {number}: {sorted(p.name for p in files)}")
        if not files:
            if worth:
                self.count.lost.append(f"round {number}: the whole sitting")
            return
        (path,) = files
        self.count.files += 1
        if announced and path.name not in messages:
            self.count.unannounced.append(f"round {number}: {path.name}")
        try:
            session = self._open(path)
        except Fault as fault:
            self.count.closed.append(f"round {number}: {fault}")
            return
        for record in session.document.exercises:
            self._compare_exercise(number, told, record)
        rows = sum(e.rows.count("\n") for e in told if isinstance(e, ReadingRows))
        if len(session.readings) < rows:
            self.count.lost.append(f"round {number}: {rows - len(session.readings)} readings")
        present = {record.planned_index for record in session.document.exercises}
        began = {e.planned_index for e in told if isinstance(e, ExerciseStarted)}
        if began - present:
            self.count.lost.append(f"round {number}: exercises {began - present}")

    def _compare_exercise(
        self, number: int, told: tuple[Entry, ...], record: ExerciseRecord
    ) -> None:
        index = record.planned_index
        here = (list(record.repetitions), list(record.timed))
        for said, kept, all_ in zip(
            of_exercise(told, index), here, of_exercise(self.whole, index), strict=True
        ):
            self.count.told += len(said)
            if kept[: len(said)] != said:
                self.count.lost.append(f"round {number}: {said} became {kept}")
            if kept != all_[: len(kept)]:
                self.count.doubled.append(f"round {number}: {kept} is not of {all_}")
        for given in told:
            if isinstance(given, PainGiven) and given.planned_index == index:
                self.count.told += 1
                if given.score not in (record.pain_before, record.pain_after):
                    self.count.lost.append(f"round {number}: a pain score")

    def _open(self, path: Path) -> StoredSession:
        data = path.read_bytes()
        if is_sealed(data):
            data = open_sealed(
                data, PracticeIdentity(str(self.key.to_public()), self.key), path.name
            )
        return unpack_session(data, path.name)


def run(kills: int, seed: int, *, long: bool = False) -> Count:
    """Kill until so many processes died, and give what was found."""
    with tempfile.TemporaryDirectory() as folder:
        rounds = Rounds(Path(folder), LONG if long else SHORT, seed)
        number = 0
        while rounds.count.kills < kills:
            rounds.round(number)
            number += 1
            if number % 20 == 0:
                print(f"{rounds.count.kills} kills", file=sys.stderr)
        count = rounds.count
        again = recover(rounds.home.journals, rounds.home.sessions, rounds.home.own)
        if again or list(rounds.home.journals.glob("*.journal")):
            count.doubled.append(f"recovered twice: {again}")
        documents, refused = read_history(rounds.home.sessions, rounds.home.own)
        count.closed.extend(refused)
        if len({each.session_id for each in documents}) != count.files:
            count.lost.append(f"{len(documents)} in the diary of {count.files} files")
    return count


def main() -> int:
    """Print the figures; 1 where anything was lost, doubled or does not open."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--kills", type=int, default=300)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--long", action="store_true", help="three exercises instead of two")
    asked = parser.parse_args()
    count = run(asked.kills, asked.seed, long=asked.long)
    print(count)
    return 0 if count.clean else 1


if __name__ == "__main__":
    sys.exit(main())
