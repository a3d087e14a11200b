"""The committed clips are small, and their truth is about them."""

from __future__ import annotations

import json
from pathlib import Path

import cv2
import numpy as np
import pytest

CLIPS = sorted((Path(__file__).parents[2] / "sample_videos").glob("*.mp4"))


@pytest.mark.parametrize("clip", CLIPS, ids=lambda clip: clip.stem)
def test_a_clip_has_its_truth_frame_by_frame(clip: Path) -> None:
    assert clip.stat().st_size < 1_000_000
    truth = json.loads(clip.with_suffix(".json").read_text())
    video = cv2.VideoCapture(str(clip))
    assert video.get(cv2.CAP_PROP_FRAME_COUNT) == len(truth["frames"])
    assert video.get(cv2.CAP_PROP_FPS) == pytest.approx(truth["fps"])
    height, width = video.read()[1].shape[:2]
    assert (width, height) == (truth["camera"]["width_px"], truth["camera"]["height_px"])


@pytest.mark.parametrize("clip", CLIPS, ids=lambda clip: clip.stem)
def test_holds_are_where_the_true_angle_is_steady(clip: Path) -> None:
    truth = json.loads(clip.with_suffix(".json").read_text())
    time_s = np.array([frame["time_s"] for frame in truth["frames"]])
    angle_deg = np.array([frame["angle_deg"] for frame in truth["frames"]])
    assert (truth["movement"] is None) == (truth["holds"] == [])
    for hold in truth["holds"]:
        assert hold["held_s"] == pytest.approx(hold["end_s"] - hold["start_s"], abs=1e-3)
        inside = (time_s >= hold["start_s"]) & (time_s <= hold["end_s"])
        assert np.abs(angle_deg[inside] - hold["value_deg"]).max() < 3.5


def test_there_is_a_clip_of_every_movement_and_one_of_none() -> None:
    movements = {json.loads(clip.with_suffix(".json").read_text())["movement"] for clip in CLIPS}
    assert movements == {"flexion", "extension", "abduction", "external-rotation-0", None}
