"""SIGKILL at random moments: no finished repetition lost, none doubled, every file opens."""

from __future__ import annotations

import os
import random
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from coach.domain.session import SessionEnd
from coach.storage.recovery import recover
from coach.storage.session_file import read_session

CHILD = Path(__file__).parent / "child_journaling.py"
ROOT = Path(__file__).parents[2]
KILLS = 15


@pytest.mark.skipif(sys.platform == "win32", reason="needs SIGKILL")
def test_kills_at_random_moments(tmp_path: Path) -> None:
    chance = random.Random(5)
    journals, sessions = tmp_path / "journals", tmp_path / "sessions"
    told: dict[str, list[str]] = {}
    for round_ in range(KILLS):
        session_id = f"{round_:032x}"
        # Late rounds aim at the writing of the session file, the others anywhere before.
        target = "finishing" if round_ % 3 == 2 else str(chance.randrange(1, 60))
        told[session_id] = killed_child(journals, sessions, session_id, target, chance)
    recover(journals, sessions)
    assert recover(journals, sessions) == []
    assert list(journals.glob("*.journal")) == []
    found: dict[str, Path] = {}
    for path in sessions.glob("*.zip"):
        session = read_session(path)
        session_id = session.document.session_id
        assert session_id not in found
        found[session_id] = path
        (exercise,) = session.document.exercises
        numbers = [repetition.number for repetition in exercise.repetitions]
        said = [int(line) for line in told[session_id] if line.isdigit()]
        assert numbers == list(range(1, len(numbers) + 1))
        assert len(numbers) >= len(said)
        assert [r.value for r in exercise.repetitions] == [100.0 + n for n in numbers]
        if session.document.ended_because is not SessionEnd.INTERRUPTED:
            assert len(numbers) == 60
        readings = session.readings.time_s
        assert len(readings) >= 200 * len(numbers)
    assert set(found) == set(told)


def killed_child(
    journals: Path, sessions: Path, session_id: str, target: str, chance: random.Random
) -> list[str]:
    """Kill a child shortly after it said ``target`` and give all it said."""
    child = subprocess.Popen(
        [sys.executable, str(CHILD), str(journals), str(sessions), session_id],
        stdout=subprocess.PIPE,
        text=True,
        env={**os.environ, "PYTHONPATH": str(ROOT)},
    )
    assert child.stdout is not None
    lines: list[str] = []
    for line in child.stdout:
        lines.append(line.strip())
        if lines[-1] == target:
            time.sleep(chance.uniform(0, 0.02))
            child.send_signal(signal.SIGKILL)
            break
    lines += [line.strip() for line in child.stdout]
    child.wait(timeout=30)
    child.stdout.close()
    assert "begun" in lines
    return lines
