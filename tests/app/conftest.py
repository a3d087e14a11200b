"""The sample clips, each followed once, and one run of the demo."""

from __future__ import annotations

import functools
import json
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

from coach.app.measure import Tracked, track
from coach.capture.sources import open_source
from coach.documents.measurement import Measurement
from coach.domain.pose import PoseModel
from tests.tracing import ROOT, can_trace, traced

CLIPS = ROOT / "sample_videos"


@functools.cache
def tracked(name: str, model: PoseModel = PoseModel.FULL) -> Tracked:
    source = open_source(CLIPS / f"{name}.mp4")
    try:
        return track(source, model=model)
    finally:
        source.close()


def truth(name: str) -> dict[str, Any]:
    document: dict[str, Any] = json.loads((CLIPS / f"{name}.json").read_text("utf-8"))
    return document


def errors_deg(measurement: Measurement, true: dict[str, Any]) -> list[tuple[float, float]]:
    """Give (error, half width) of every usable frame; clip and truth have the same frames."""
    assert len(measurement.frames) == len(true["frames"])
    return [
        (frame.angle_deg - row["angle_deg"], frame.error_deg or 0.0)
        for frame, row in zip(measurement.frames, true["frames"], strict=True)
        if frame.angle_deg is not None
    ]


@dataclass(frozen=True, slots=True)
class DemoRun:
    """What ``coach demo`` left and said; ``trace`` lists its network calls, where strace works."""

    folder: Path
    printed: str
    trace: Path | None


@pytest.fixture(scope="session")
def demo(tmp_path_factory: pytest.TempPathFactory) -> DemoRun:
    place = tmp_path_factory.mktemp("demo")
    folder, trace = place / "out", place / "trace"
    command = [sys.executable, "-m", "coach", "demo", "--out", str(folder)]
    done = subprocess.run(
        traced(trace, command) if can_trace() else command,
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
        timeout=600,
    )
    assert done.returncode == 0, done.stderr
    return DemoRun(folder, done.stdout, trace if can_trace() else None)
