"""A slice of the harnesses of ``tests/bench`` that break things: few kills, one kind of error."""

from __future__ import annotations

import errno
import os
import random
import subprocess
import sys
from pathlib import Path

import pytest

from tests.bench.breaking import Count, sitting
from tests.bench.faults import fail_each_call
from tests.bench.power import cut_the_power

ROOT = Path(__file__).parents[2]


@pytest.mark.skipif(not hasattr(os, "fork"), reason="needs fork and SIGKILL")
def test_kills_at_random_moments() -> None:
    command = [sys.executable, "-m", "tests.bench.crash", "--kills", "10"]
    done = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
    assert "lost 0, doubled 0, files that do not open 0, not announced 0" in done.stdout


@pytest.mark.skipif(sys.platform == "win32", reason="folders cannot be forced there")
def test_each_call_fails_in_turn(tmp_path: Path) -> None:
    count = Count()
    fail_each_call(count, tmp_path / "home", sitting(1, sealed=True, seconds=2), (errno.EIO,))
    assert count.wrong == []
    assert min(count.tried.values()) > 10


@pytest.mark.skipif(sys.platform == "win32", reason="folders cannot be forced there")
def test_the_power_is_cut_and_forcing_fails(tmp_path: Path) -> None:
    count, entries = Count(), sitting(1, sealed=True, seconds=2)
    for doomed in ((), (16, 18, 21)):
        cut_the_power(
            count,
            tmp_path / "home",
            entries,
            random.Random(4),
            1,
            lambda n, name, doomed=doomed: (  # type: ignore[misc]
                errno.EIO if name == "fsync" and n in doomed else None
            ),
        )
    assert count.wrong == []
    assert count.tried["the power was cut and in the recovery"] > 80
