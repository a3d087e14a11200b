"""MediaPipe's pose landmarker."""

from __future__ import annotations

import atexit
from threading import Lock
from typing import Any, Protocol

import numpy as np
from numpy.typing import NDArray

from coach.domain.fault import Fault
from coach.pose.at_once import answer_at_once
from coach.pose.body import Body
from coach.pose.bundle import Bundle
from coach.pose.library import import_mediapipe
from coach.texts import translate

_LANDMARKS = 33


class Landmarker(Protocol):
    """Finds bodies in pictures."""

    def find(self, image_rgb: NDArray[np.uint8], stamp_ms: int) -> list[Body]:
        """Give the bodies in a picture, (height, width, 3), RGB, the surest one first.

        Where pictures are taken as a film, ``stamp_ms`` must grow from call to call.
        """
        ...

    def close(self) -> None:
        """Free the model; may be called twice."""
        ...


class MediaPipeLandmarker:
    """A landmarker for a film (one person followed) or for single pictures (several found)."""

    def __init__(self, bundle: Bundle, *, film: bool, people: int, confidence: float) -> None:
        """Load the model; ``confidence`` is the least for finding and for keeping a person."""
        self._mediapipe, vision = import_mediapipe()
        self._film = film
        mode = vision.RunningMode.VIDEO if film else vision.RunningMode.IMAGE
        options = vision.PoseLandmarkerOptions(
            base_options=self._mediapipe.tasks.BaseOptions(model_asset_buffer=bundle.content),
            running_mode=mode,
            num_poses=people,
            min_pose_detection_confidence=confidence,
            min_pose_presence_confidence=confidence,
        )
        try:
            self._task = vision.PoseLandmarker.create_from_options(options)
        except (ValueError, RuntimeError, OSError) as error:
            raise Fault(
                translate(
                    "faults",
                    "The pose model cannot be started ({error}); install the program again.",
                ).format(error=error)
            ) from error
        answer_at_once(self._task)
        self._open, self._asked = True, Lock()
        atexit.register(self._leave)

    def find(self, image_rgb: NDArray[np.uint8], stamp_ms: int) -> list[Body]:
        """Give the bodies in a picture, none once it is closed."""
        image = self._mediapipe.Image(
            self._mediapipe.ImageFormat.SRGB, np.ascontiguousarray(image_rgb)
        )
        with self._asked:
            if not self._open:
                return []
            if self._film:
                result = self._task.detect_for_video(image, stamp_ms)
            else:
                result = self._task.detect(image)
        size_px = np.array([image_rgb.shape[1], image_rgb.shape[0]], dtype=np.float64)
        found = zip(result.pose_landmarks, result.pose_world_landmarks, strict=True)
        bodies = (_body(points, metric, size_px) for points, metric in found)
        return [body for body in bodies if body is not None]

    def close(self) -> None:
        """Free the model; may be called twice."""
        with self._asked:
            self._open = False
            atexit.unregister(self._leave)
            self._task.close()

    def _leave(self) -> None:
        # At the end of the interpreter the task's thread is gone before its destructor, which
        # then fails aloud; without a handle it does nothing, and the system frees the memory.
        self._task._handle = None


def _body(points: list[Any], metric: list[Any], size_px: NDArray[np.float64]) -> Body | None:
    image = np.array([(p.x, p.y, p.visibility) for p in points], dtype=np.float64)
    world = np.array([(p.x, p.y, p.z) for p in metric], dtype=np.float64)
    if image.shape != (_LANDMARKS, 3) or world.shape != (_LANDMARKS, 3):
        return None
    if not (np.isfinite(image).all() and np.isfinite(world).all()):
        return None
    parts = image[:, :2] * size_px, world, np.clip(image[:, 2], 0, 1)
    for part in parts:
        part.setflags(write=False)
    return Body(*parts)
