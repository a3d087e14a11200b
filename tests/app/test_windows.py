"""The patient's window as a whole command: what stays behind when it is left."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import time
from pathlib import Path

from tests.app.conftest import CLIPS, ROOT


def test_ctrl_c_before_the_start_leaves_nothing_behind(tmp_path: Path) -> None:
    places = {"QT_QPA_PLATFORM": "offscreen", "STIFF_SHOULDER_COACH_FOLDER": str(tmp_path)}
    clip = CLIPS / "flexion_right_three_holds.mp4"
    running = subprocess.Popen(
        [sys.executable, "-m", "coach", "--clip", str(clip)],
        cwd=ROOT,
        env=os.environ | places,
        stderr=subprocess.PIPE,
        text=True,
    )
    until = time.monotonic() + 120
    while time.monotonic() < until and not list(tmp_path.rglob("*.journal")):
        time.sleep(0.1)
    assert list(tmp_path.rglob("*.journal"))
    running.send_signal(signal.SIGINT)
    _, said = running.communicate(timeout=60)
    assert running.returncode == 130
    assert said.splitlines()[-1] == "coach: stopped by Ctrl-C; what was recorded is kept."
    assert "Traceback" not in said
    assert [path.name for path in tmp_path.rglob("*") if path.is_file()] == ["running.lock"]
