"""Kills an import at random moments and counts what the store lost or took in twice.

    python -m tests.bench.import_kills [--kills 100] [--seed 1] [--server]

Each round imports a folder of session files in a child process and kills it (SIGKILL). What it had
told as taken in must be in the store with the bytes of its file, nothing may be there in part, and
the same import begun anew must take in the rest. ``--server`` keeps the store on a PostgreSQL
server of its own.
"""

from __future__ import annotations

import argparse
import os
import random
import sys
import tempfile
import time
from contextlib import ExitStack
from dataclasses import dataclass, field
from datetime import timedelta
from pathlib import Path

from coach.storage.session_file import read_document
from coach.storage.store import ImportOutcome, Store
from coach.storage.store_import import import_paths
from tests.bench.crash import in_child, kill
from tests.review.conftest import BEGIN, make_session, session_file
from tests.storage.conftest import Place, database_server

FILES = 8
_TAKEN = (ImportOutcome.ACCEPTED, ImportOutcome.DOUBTFUL, ImportOutcome.KNOWN)


@dataclass
class Count:
    """What was done and what went wrong."""

    kills: int = 0
    told: int = 0
    files: int = 0
    wrong: list[str] = field(default_factory=list)

    def __str__(self) -> str:
        lines = [
            f"{self.kills} kills, {self.told} of {self.files} session files told before them as "
            f"taken in; lost, doubled or in part: {len(self.wrong)}"
        ]
        return "\n".join([*lines, *self.wrong])


def run(place: Place, folder: Path, kills: int, seed: int) -> Count:
    """Import and kill until so many imports died."""
    count, chance = Count(), random.Random(seed)
    lasts_s, number = 0.0, 0
    place.open().close()
    while count.kills < kills:
        files = _files(folder / str(number), number)
        told = folder / f"{number}.told"
        begun = time.monotonic()
        child = in_child(lambda files=files, told=told: _import(place.target, files, told))
        if number == 0:  # to know how long it takes
            os.waitpid(child, 0)
            lasts_s = time.monotonic() - begun
        else:
            count.kills += kill(child, chance.uniform(0, 1.1 * lasts_s))
        said = told.read_text().split() if told.exists() else []
        count.told += len(said)
        count.files += len(files)
        _check(count, place, files, said, number)
        number += 1
    return count


def _files(folder: Path, number: int) -> list[Path]:
    folder.mkdir()
    made = []
    for n in range(FILES):
        at = BEGIN + timedelta(minutes=FILES * number + n)
        document = make_session(at=at, code=f"SH-{number % 7}")
        path = folder / f"{n}.shoulder.zip"
        path.write_bytes(session_file(document))
        made.append(path)
    return made


def _import(target: Path | str, files: list[Path], told: Path) -> None:
    out = os.open(told, os.O_WRONLY | os.O_CREAT | os.O_APPEND, 0o600)
    store = Store(target)
    for outcome in import_paths(store, files):
        if outcome.outcome in _TAKEN:
            os.write(out, f"{outcome.path.name}\n".encode())


def _check(count: Count, place: Place, files: list[Path], said: list[str], number: int) -> None:
    store = place.open()
    try:
        for path in files:
            if path.name in said:
                session_id = read_document(path).session_id
                if store.original(session_id) != path.read_bytes():
                    count.wrong.append(f"round {number}: {path.name} has other bytes")
        # What an import leaves behind it: a file and an exercise to each session, three holds.
        rows = place.rows()
        if not rows["sessions"] == rows["files"] == rows["exercises"] == rows["repetitions"] / 3:
            count.wrong.append(f"round {number}: {rows}")
        again = [outcome.outcome for outcome in import_paths(store, files)]
        if any(each not in _TAKEN for each in again):
            count.wrong.append(f"round {number}: {again}")
        if again.count(ImportOutcome.KNOWN) < len(said):
            count.wrong.append(f"round {number}: {len(said)} told, {again}")
        if place.rows()["sessions"] != FILES * (number + 1):
            count.wrong.append(f"round {number}: {place.rows()}")
        if place.kind == "sqlite" and place.ask("pragma integrity_check") != [("ok",)]:
            count.wrong.append(f"round {number}: the file is damaged")
    except Exception as error:
        count.wrong.append(f"round {number}: {error}")
    finally:
        store.close()


def main() -> int:
    """Print the figures; 1 where anything went wrong."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--kills", type=int, default=100)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--server", action="store_true", help="on a PostgreSQL server")
    asked = parser.parse_args()
    with ExitStack() as stack:
        folder = Path(stack.enter_context(tempfile.TemporaryDirectory()))
        target: Path | str = folder / "practice" / "store.sqlite"
        if asked.server:
            target = stack.enter_context(database_server())()
        count = run(Place(target), folder, asked.kills, asked.seed)
    print(count)
    return 1 if count.wrong else 0


if __name__ == "__main__":
    sys.exit(main())
