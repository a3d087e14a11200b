"""Runs every command of the program but the demo, in this process: what a trace looks at.

``python -m tests.app.every_command FOLDER``; prints each command with its exit code.
"""

from __future__ import annotations

import os
import signal
import sqlite3
import sys
import threading
import time
from collections.abc import Callable
from contextlib import closing, suppress
from pathlib import Path

from coach.__main__ import main
from coach.app import key

ROOT = Path(__file__).resolve().parents[2]
CLIP = ROOT / "sample_videos" / "external_rotation_right_two_holds.mp4"
GOLDEN = ROOT / "tests" / "documents" / "golden"
MOST_S = 90


def run(*arguments: object) -> None:
    code = main([str(argument) for argument in arguments])
    print("exit", code, *arguments[:2], flush=True)


def until(seen: Callable[[], bool], *arguments: object) -> None:
    """Run a command with a window until something is seen, then end it as Ctrl-C does."""

    def watch() -> None:
        found, end_s = False, time.monotonic() + MOST_S
        while time.monotonic() < end_s and not (found := seen()):
            time.sleep(0.1)
        print("seen" if found else "not seen", flush=True)
        os.kill(os.getpid(), signal.SIGINT)

    threading.Thread(target=watch, daemon=True).start()
    run(*arguments)


def every_command(folder: Path) -> None:
    store = folder / "review.sqlite"
    plan = folder / "plan.json"
    plan.write_text(
        '{"format": "shoulder-plan", "version": 1, "patient_code": "T", "exercises": [{"movement":'
        ' "external-rotation-0", "side": "right", "hold_s": 5, "repetitions": 2}]}'
    )
    table = folder / "joints.csv"
    names = [f"{side}_{part}_{axis}_m" for part in ("shoulder", "hip", "elbow", "wrist")
             for side in ("left", "right") for axis in "xyz"]  # fmt: skip
    x, y = {"left": 0.2, "right": -0.2}, {"shoulder": 1.4, "hip": 0.9, "elbow": 1.1, "wrist": 0.9}
    at = [{"x": x[n.split("_")[0]], "y": y[n.split("_")[1]], "z": 0.0}[n[-3]] for n in names]
    rows = [",".join(map(str, (t / 10, *at))) for t in range(20)]
    table.write_text("\n".join([",".join(["time_s", *names]), *rows]) + "\n")
    key.asked = key.chosen = lambda _: "five invented words put together"

    def imported() -> bool:
        if not store.exists():
            return False
        connection = sqlite3.connect(f"file:{store}?mode=ro", uri=True)
        with suppress(sqlite3.Error), closing(connection):
            return bool(connection.execute("SELECT count(*) FROM sessions").fetchone()[0])
        return False

    def measured() -> bool:
        return any(b'"type":"camera"' in path.read_bytes() for path in folder.rglob("*.journal"))

    run("card", "--out", folder / "card.pdf")
    run("lens", "--print", "--out", folder / "board.pdf")
    run("convert", table, "--out", folder / "table.csv", "--camera", "front")
    run("measure", folder / "table.csv", "--movement", "abduction", "--side", "right")
    until(imported, "review", GOLDEN / "session_v4.shoulder.zip", "--store", store)
    code = _code(store)
    for kind in ("fhir", "csv", "note"):
        run("export", "--store", store, "--patient", code, "--kind", kind, "--out", folder / kind)
    run("key", "make")
    run("key", "back-up", folder / "backup.age")
    run("key", "lock-store", store)
    until(measured, "--plan", plan, "--clip", CLIP, "--folder", folder / "sessions", "--begin")


def _code(store: Path) -> str:
    with closing(sqlite3.connect(store)) as connection:
        return str(connection.execute("SELECT code FROM patients").fetchone()[0])


if __name__ == "__main__":
    every_command(Path(sys.argv[1]))
