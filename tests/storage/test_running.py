"""Two programs on one folder: the second says so, and a killed one leaves nothing in the way."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from pathlib import Path

import pytest

from coach.domain.fault import Fault
from coach.storage.running import only_one

ROOT = Path(__file__).parents[2]
OTHER = """
import sys
from pathlib import Path
from coach.storage.running import only_one
with only_one(Path(sys.argv[1])):
    print("here", flush=True)
    sys.stdin.read()
"""


def test_a_second_program_is_told_and_a_killed_one_lets_go(tmp_path: Path) -> None:
    other = subprocess.Popen(
        [sys.executable, "-c", OTHER, str(tmp_path)],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        text=True,
        env={**os.environ, "PYTHONPATH": str(ROOT)},
    )
    with other:
        assert other.stdout is not None
        assert other.stdout.readline() == "here\n"
        with pytest.raises(Fault, match="is running already: go to its window"), only_one(tmp_path):
            pass
        other.send_signal(getattr(signal, "SIGKILL", signal.SIGTERM))
    with only_one(tmp_path):
        pass
    with only_one(tmp_path):
        pass
