"""The patient's program as a whole: its start, its memory, and what it takes while it waits."""

from __future__ import annotations

import os
import subprocess
import sys
import time
from pathlib import Path

from tests.bench.speed.film import ROOT, pictures
from tests.bench.speed.live import running, spin
from tests.bench.speed.table import Row

_START = """
import os, sys, time
from pathlib import Path
from tempfile import mkdtemp
from coach.app.patient import open_plan, patient_window
from coach.app.sitting import Folders
from coach.desktop.shared.application import create_application
application = create_application(["coach"])
place = Path(mkdtemp())
window = patient_window(open_plan(None), Path(sys.argv[1]), Folders(place, place, place))
def stepped(step):
    if step.image is not None:
        window.grab()
        times = os.times()
        print(time.time(), times.user + times.system, flush=True)
        os._exit(0)
window.engine.stepped.connect(stepped)
window.show()
application.exec()
"""


def starting(rounds: int = 3) -> list[Row]:
    """From the command to the first live frame, painted."""
    clip = str(ROOT / "sample_videos" / "abduction_left_two_holds.mp4")
    walls, spent = [], []
    for _ in range(rounds):
        before_s = time.time()
        command = [sys.executable, "-c", _START, clip]
        done = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=True)
        at_s, cpu_s = map(float, done.stdout.split()[-2:])
        walls.append(at_s - before_s)
        spent.append(cpu_s)
    return [
        Row("start to the first live frame, cold", "s", sorted(walls)[rounds // 2], 3.0),
        Row("the same", "s of processor", sorted(spent)[rounds // 2], 3.0),
    ]


def _resident_mb() -> float:
    pages = int(Path("/proc/self/statm").read_text().split()[1])
    return pages * os.sysconf("SC_PAGESIZE") / 1e6


def waiting(seconds: float = 20.0) -> list[Row]:
    """Paused before a camera of 30 a second; the camera's decoding is not in it."""
    film = pictures("abduction_left_two_holds", 60)
    with running(film, 30.0) as (_, taken):
        before_mb = _resident_mb()
        spin(20.0)
        after_mb = _resident_mb()
        taken.pausing = True
        spin(2.0)
        begin_s, cpu_s = time.monotonic(), time.process_time()
        spin(seconds)
        share = (time.process_time() - cpu_s) / (time.monotonic() - begin_s)
    return [
        Row("paused", "of a core", share, 0.15),
        Row("memory of the patient's program in an exercise", "MB", after_mb, 600.0),
        Row("gained in 20 s of it", "MB", after_mb - before_mb, 10.0),
    ]


def rows() -> list[Row]:
    """Every row of the patient's program."""
    return [*starting(), *waiting()]
