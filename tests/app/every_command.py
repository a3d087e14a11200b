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

import numpy as np
from PyQt6.QtCore import QTimer
from PyQt6.QtGui import QAction
from PyQt6.QtWidgets import QApplication, QDialog, QFileDialog

from coach.__main__ import main
from coach.app import key, review
from coach.app import lens as app_lens
from coach.capture.sources import open_source
from coach.desktop.shared.application import run_windows
from tests.app.test_lens import OPTICS, Filmed
from tests.capture.clips import write_clip
from tests.capture.rendered_board import draw_places, film

ROOT = Path(__file__).resolve().parents[2]
CLIP = ROOT / "sample_videos" / "external_rotation_right_two_holds.mp4"
SESSION = ROOT / "tests" / "documents" / "golden" / "session_v4.shoulder.zip"
MOST_S = 300


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


def work_through(folder: Path, ready: Callable[[], bool]) -> Callable[[QApplication], int]:
    """Give a loop for the therapist's window in which somebody looks at all pages and writes out.

    Each entry of the menus is chosen that needs no person to answer; then the window is closed as
    by Ctrl-C.
    """
    keys = ["Ctrl+1", "Ctrl+2", "Ctrl+1", "Ctrl+R", "Ctrl+L", "Ctrl+Shift+C", "Ctrl+B", "Ctrl+T",
            "Ctrl+M", "Ctrl+Shift+N", "Ctrl+P"]  # fmt: skip
    asked = iter(range(100))
    QFileDialog.getOpenFileName = lambda *told: (str(SESSION), "")
    QFileDialog.getSaveFileName = lambda *told: (str(folder / f"window-{next(asked)}"), told[-1])

    def choose() -> None:
        if not ready():
            return
        if isinstance(dialog := QApplication.activeModalWidget(), QDialog):
            dialog.accept()
        elif keys:
            entries = [e for w in QApplication.topLevelWidgets() for e in w.findChildren(QAction)]
            pressed = keys.pop(0)
            entry = next(e for e in entries if e.shortcut().toString() == pressed)
            print("chosen" if entry.isEnabled() else "not to be had", pressed, flush=True)
            QTimer.singleShot(0, entry.trigger)  # a timer in whose call a dialog waits is still
        else:
            print("seen" if len(list(folder.glob("window-*"))) >= 5 else "not seen", flush=True)
            os.kill(os.getpid(), signal.SIGINT)

    def loop(application: QApplication) -> int:
        timer = QTimer()
        timer.timeout.connect(choose)
        timer.start(200)
        return run_windows(application)

    return loop


def lens_checks(folder: Path) -> None:
    """Check a lens by a film of the board, and by a camera that shows it."""
    places = draw_places(np.random.default_rng(5), OPTICS, 16)
    clip = folder / "board.mp4"
    write_clip(clip, [f.image_rgb for f in film(OPTICS, places, np.random.default_rng(5))])
    run("lens", "--clip", clip)
    app_lens.open_source = lambda what: Filmed("camera", places)
    run("lens", "--camera", 0)
    app_lens.open_source = open_source
    run("lens", "--camera", 63)  # there is none


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

    def held() -> bool:
        return any(
            b'"type":"repetition"' in path.read_bytes() for path in folder.rglob("*.journal")
        )

    run("card", "--out", folder / "card.pdf")
    run("lens", "--print", "--out", folder / "board.pdf")
    run("convert", table, "--out", folder / "table.csv", "--camera", "front")
    run("measure", folder / "table.csv", "--movement", "abduction", "--side", "right")
    lens_checks(folder)
    review.run_windows = work_through(folder, imported)
    run("review", SESSION, "--store", store)
    code = _code(store)
    for kind in ("fhir", "csv", "note"):
        run("export", "--store", store, "--patient", code, "--kind", kind, "--out", folder / kind)
    run("key", "make")
    run("key", "back-up", folder / "backup.age")
    run("key", "lock-store", store)
    until(held, "--plan", plan, "--clip", CLIP, "--folder", folder / "sessions", "--begin")
    print("seen" if any((folder / "sessions").glob("*.shoulder.zip")) else "not saved", flush=True)


def _code(store: Path) -> str:
    with closing(sqlite3.connect(store)) as connection:
        return str(connection.execute("SELECT code FROM patients").fetchone()[0])


if __name__ == "__main__":
    every_command(Path(sys.argv[1]))
