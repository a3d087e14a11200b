"""No command of the program, and neither window, reaches beyond this machine."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.tracing import ROOT, calls_beyond, can_trace, traced


@pytest.mark.skipif(not can_trace(), reason="strace is not installed or not allowed")
def test_no_command_opens_a_socket_to_another_machine(tmp_path: Path) -> None:
    """In one window pages are turned and exports written, in the other a hold is measured."""
    trace = tmp_path / "trace"
    places = {"QT_QPA_PLATFORM": "offscreen", "STIFF_SHOULDER_COACH_FOLDER": str(tmp_path)}
    command = [sys.executable, "-m", "tests.app.every_command", str(tmp_path)]
    done = subprocess.run(
        traced(trace, command),
        cwd=ROOT,
        env=os.environ | places,
        capture_output=True,
        text=True,
        check=False,
        timeout=900,
    )
    said = done.stdout.splitlines()
    codes = [int(line.split()[1]) for line in said if line.startswith("exit ")]
    assert codes.count(0) == 12, done.stdout + done.stderr
    assert codes.count(130) == 2, done.stdout + done.stderr
    assert codes.count(1) == 1, done.stdout + done.stderr
    assert sum(line.startswith("chosen") for line in said) == 11, done.stdout + done.stderr
    assert said.count("seen") == 3, done.stdout + done.stderr
    assert calls_beyond(trace) == []
