"""``coach measure`` against bare decoding and inference, and on several clips at once."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import time
from pathlib import Path
from tempfile import TemporaryDirectory

from coach.app.measure import measure, track
from coach.capture.sources import open_source
from coach.capture.video_file import VideoFile
from coach.documents.measurement import measurement_json
from coach.domain.movement import Movement, Position, Side, needed_view
from coach.pose.library import import_mediapipe
from coach.storage.cores import cores
from tests.bench.speed.film import CLIPS, ROOT, model
from tests.bench.speed.table import Row

CLIP = CLIPS / "abduction_left_two_holds.mp4"
WAY = ("--movement", "abduction", "--side", "left")


def opened() -> VideoFile:
    """Open the clip anew."""
    source = open_source(CLIP)
    assert isinstance(source, VideoFile)
    return source


def bare() -> None:
    """Decode the clip and run the model on every frame."""
    source, landmarker = opened(), model()
    for frame in source:
        landmarker.find(frame.image_rgb, round(frame.time_s * 1000) + 1000)
    source.close()
    landmarker.close()


def ours() -> None:
    """What the command does once its imports are there."""
    source = opened()
    tracked = track(source)
    source.close()
    view = needed_view(Movement.ABDUCTION, Position.STANDING)
    found = measure(tracked, Movement.ABDUCTION, Side.LEFT, view, Position.STANDING)
    measurement_json(found)


def against_bare(rounds: int = 3) -> list[Row]:
    """Processor time of both, in turn; the median of their ratios."""
    import_mediapipe()
    ratios = []
    for _ in range(rounds):
        begin_s = time.process_time()
        bare()
        middle_s = time.process_time()
        ours()
        ratios.append((time.process_time() - middle_s) / (middle_s - begin_s))
    ratio = sorted(ratios)[rounds // 2]
    return [Row("coach measure over bare decoding and inference", "of processor time", ratio, 1.15)]


def at_once(clips: int = 4) -> list[Row]:
    """A folder of clips at once, against the same on one core at a time."""
    with TemporaryDirectory() as place:
        for number in range(clips):
            shutil.copy(CLIP, Path(place) / f"{number}.mp4")
        command = [sys.executable, "-m", "coach", "measure", *WAY]
        one = sum(_wall_s([*command, str(path)]) for path in sorted(Path(place).iterdir()))
        together = _wall_s([*command, place])
    name = f"{clips} clips one at a time over all at once, {cores()} cores"
    return [Row(name, "", one / together, None, 1.7)]


def _wall_s(command: list[str]) -> float:
    begin_s = time.perf_counter()
    subprocess.run(command, cwd=ROOT, check=True, capture_output=True, env=os.environ)
    return time.perf_counter() - begin_s


def rows() -> list[Row]:
    """Every row of measuring clips."""
    return [*against_bare(), *at_once()]
