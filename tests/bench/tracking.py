"""The pose model run on rendered pictures, and the file a benchmark reads."""

from __future__ import annotations

import json
import re
from collections.abc import Sequence
from importlib import import_module
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray

from tests.bench import truth
from tests.bench.clip import Take, spec_document, true_holds, truth_rows

PAIRS = ("shoulder", "elbow", "wrist", "hip", "thorax")
SIDES = ("left", "right")
JOINT_NAMES = (*(f"{side} {joint}" for joint in PAIRS for side in SIDES), "c7", "psis")


class Tracker:
    """One person per frame, video mode."""

    def __init__(self, model_path: Path) -> None:
        self._mp: Any = import_module("mediapipe")
        vision = self._mp.tasks.vision
        options = vision.PoseLandmarkerOptions(
            base_options=self._mp.tasks.BaseOptions(model_asset_path=str(model_path)),
            running_mode=vision.RunningMode.VIDEO,
            num_poses=1,
        )
        self._landmarker: Any = vision.PoseLandmarker.create_from_options(options)

    def track(self, picture: NDArray[np.uint8], time_s: float) -> dict[str, NDArray[np.float64]]:
        """Landmarks of one frame: image (33, 3), world (33, 3), visibility and presence (33,).

        Image x and y in pixels, z in pixels of the same scale; NaN where nobody was found.
        """
        height, width = picture.shape[:2]
        image = self._mp.Image(image_format=self._mp.ImageFormat.SRGB, data=picture)
        found = self._landmarker.detect_for_video(image, round(time_s * 1000))
        if not found.pose_landmarks:
            nothing = np.full((33, 3), np.nan)
            return {
                "image": nothing, "world": nothing,
                "visibility": np.zeros(33), "presence": np.zeros(33),
            }  # fmt: skip
        image_points, world_points = found.pose_landmarks[0], found.pose_world_landmarks[0]
        return {
            "image": np.array([[p.x * width, p.y * height, p.z * width] for p in image_points]),
            "world": np.array([[p.x, p.y, p.z] for p in world_points]),
            "visibility": np.array([p.visibility for p in image_points]),
            "presence": np.array([p.presence for p in image_points]),
        }

    def close(self) -> None:
        """Let the model go."""
        self._landmarker.close()


def landmark_set(take: Take, model_path: Path) -> dict[str, Any]:
    """Render a take, track it and give the arrays of its benchmark file."""
    (arrays,) = landmark_sets(take, [model_path])
    return arrays


def landmark_sets(
    take: Take, model_paths: Sequence[Path], *, mirrored: bool = False
) -> list[dict[str, Any]]:
    """Render a take once, track it with every model and give the arrays of each one's file.

    ``mirrored``, the models see every picture the other way round, as of the same person doing
    the same with the other arm before a mirrored room.
    """
    trackers = [Tracker(path) for path in model_paths]
    tracks: list[list[dict[str, NDArray[np.float64]]]] = [[] for _ in trackers]
    joints, times_s = [], []
    for shot in take.shots():
        for tracker, rows in zip(trackers, tracks, strict=True):
            picture = np.ascontiguousarray(shot.picture[:, ::-1]) if mirrored else shot.picture
            rows.append(tracker.track(picture, shot.time_s))
        joints.append(shot.joints)
        times_s.append(shot.time_s)
    for tracker in trackers:
        tracker.close()
    shared = _true_arrays(take, joints, np.array(times_s))
    shared = mirror_image(shared) if mirrored else shared
    models = [path.stem.removeprefix("pose_") for path in model_paths]
    return [
        {**shared, "model": model, **_tracked_arrays(rows)}
        for model, rows in zip(models, tracks, strict=True)
    ]


def mirrored_name(name: str) -> str:
    """Name a file after the arm that the mirrored picture shows, with ``_m`` behind the person."""
    swapped = re.sub(r"_(left|right)_", lambda side: f"_{_other(side[1])}_", name)
    return re.sub(r"(_r\d+)?$", r"_m\1", swapped, count=1)


def mirror_image(arrays: dict[str, Any]) -> dict[str, Any]:
    """Give what is true of the mirrored pictures: x in the picture turned about, sides swapped.

    The camera's place in the room and ``spec_json`` stay those of the picture as rendered.
    """
    order = [row ^ 1 for row in range(2 * len(PAIRS))] + [10, 11]
    joints_px, joints_m = (arrays[f"joints_{of}"][:, order] for of in ("px", "camera_m"))
    # The trunk's right is what its left was, seen the other way round.
    axes = arrays["thorax_axes_camera"] * np.array([[-1.0], [1.0], [1.0]]) * (1.0, 1.0, -1.0)
    return {
        **arrays,
        "side": _other(str(arrays["side"])),
        "joints_px": np.array([arrays["size_px"][0], 0]) + joints_px * (-1.0, 1.0),
        "joints_camera_m": joints_m * (-1.0, 1.0, 1.0),
        "thorax_axes_camera": axes,
    }


def _other(side: str) -> str:
    return SIDES[1 - SIDES.index(side)]


def _tracked_arrays(rows: list[dict[str, NDArray[np.float64]]]) -> dict[str, Any]:
    image = np.stack([row["image"] for row in rows])
    return {
        "found": ~np.isnan(image[:, 0, 0]),
        "image_px": image[:, :, :2],
        "image_z_px": image[:, :, 2],
        "world_m": np.stack([row["world"] for row in rows]),
        "visibility": np.stack([row["visibility"] for row in rows]),
        "presence": np.stack([row["presence"] for row in rows]),
    }


def _true_arrays(take: Take, joints: list[Any], times_s: NDArray[np.float64]) -> dict[str, Any]:
    angles = truth_rows(take.spec, joints)
    centres_m = np.stack([j.stacked() for j in joints])
    axes = np.stack([truth.thorax_axes(j) for j in joints])
    holds = true_holds(take.spec, times_s, angles)
    spec, camera = take.spec, take.spec.camera
    value = "value_ratio" if spec.movement == truth.BEHIND_BACK else "value_deg"
    return {
        "movement": spec.movement,
        "side": spec.side,
        "position": spec.position,
        "view": spec.view,
        "person": spec.person,
        "fps": spec.fps,
        "size_px": np.array([camera.width_px, camera.height_px]),
        "time_s": times_s,
        **angles,
        "joint_names": np.array(JOINT_NAMES),
        "joints_px": take.placed.project(centres_m),
        "joints_camera_m": take.placed.to_camera(centres_m),
        "thorax_axes_camera": take.placed.turn @ axes,
        "intrinsics": camera.intrinsics,
        "camera_turn": take.placed.turn,
        "camera_eye_m": take.placed.eye_m,
        "holds": np.array([list(hold.values()) for hold in holds]).reshape(-1, 4),
        "hold_fields": np.array(["start_s", "end_s", "held_s", value]),
        "spec_json": json.dumps(spec_document(spec)),
    }
