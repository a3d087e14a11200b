"""The folder that people get, in ``SHOULDER_BUNDLE``: it runs alone and reaches no other machine.

``python3.11 .ci/bundle/build.py FOLDER --unpacked`` makes it.
"""

from __future__ import annotations

import os
import re
import signal
import subprocess
import time
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path

import pytest

from tests.tracing import ROOT, calls_beyond, can_trace, traced

BUNDLE = Path(os.environ.get("SHOULDER_BUNDLE", "."))
CLIP = ROOT / "sample_videos" / "external_rotation_right_two_holds.mp4"
SESSION = ROOT / "tests" / "documents" / "golden" / "session_v3.shoulder.zip"
MOST_S = 300.0

pytestmark = [
    pytest.mark.skipif("SHOULDER_BUNDLE" not in os.environ, reason="no bundle was built"),
    pytest.mark.skipif(not can_trace(), reason="strace is not installed or not allowed"),
]


def surroundings(home: Path) -> dict[str, str]:
    """Those of somebody who has no Python."""
    return {
        "PATH": "/usr/bin:/bin",
        "HOME": str(home),
        "LANG": "C.UTF-8",
        "QT_QPA_PLATFORM": "offscreen",
    }


def test_the_demo_finds_the_holds_of_its_clip(tmp_path: Path) -> None:
    trace = tmp_path / "trace"
    done = subprocess.run(
        traced(trace, [str(BUNDLE / "coach"), "demo", "--out", str(tmp_path / "out")]),
        env=surroundings(tmp_path),
        capture_output=True,
        text=True,
        check=False,
        timeout=600,
    )
    assert done.returncode == 0, done.stderr
    rows = re.findall(r"([\d.]+) s +([\d.]+)° +([\d.]+) s +([\d.]+)° ± ([\d.]+)°", done.stdout)
    assert len(rows) == 3
    for held_s, angle_deg, measured_s, measured_deg, error_deg in (map(float, row) for row in rows):
        assert measured_s == pytest.approx(held_s, abs=0.5)
        assert measured_deg == pytest.approx(angle_deg, abs=error_deg)
    assert calls_beyond(trace) == []


def measures(folder: Path) -> bool:
    """Whether a journal has a camera's picture."""
    return any(b'"type":"camera"' in path.read_bytes() for path in folder.rglob("*.journal"))


def has_a_store(folder: Path) -> bool:
    """Whether the therapist's store is there."""
    return any(path.stat().st_size for path in folder.rglob("*.sqlite"))


@pytest.mark.parametrize(
    ("command", "seen"),
    [
        (["coach", "--plan", "{plan}", "--clip", str(CLIP), "--begin"], measures),
        (["coach-review", str(SESSION)], has_a_store),
    ],
    ids=["patient", "therapist"],
)
def test_a_window_comes_up_and_reaches_no_other_machine(
    tmp_path: Path, command: list[str], seen: Callable[[Path], bool]
) -> None:
    plan, trace = tmp_path / "plan.json", tmp_path / "trace"
    plan.write_text(
        '{"format": "shoulder-plan", "version": 1, "patient_code": "T", "exercises": [{"movement":'
        ' "external-rotation-0", "side": "right", "hold_s": 5, "repetitions": 2}]}'
    )
    given = [part.format(plan=plan) for part in command[1:]]
    running = subprocess.Popen(
        traced(trace, [str(BUNDLE / command[0]), *given]),
        env=surroundings(tmp_path),
        start_new_session=True,
    )
    try:
        end_s = time.monotonic() + MOST_S
        while time.monotonic() < end_s and running.poll() is None and not seen(tmp_path):
            time.sleep(0.2)
        assert running.poll() is None
        assert seen(tmp_path)
        time.sleep(2.0)
    finally:
        with suppress(ProcessLookupError):
            os.killpg(running.pid, signal.SIGKILL)
        running.wait()
    assert calls_beyond(trace) == []
