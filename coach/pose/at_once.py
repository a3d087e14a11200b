"""Has MediaPipe answer in the thread that asks, where it hands every call to one of its own.

Each of those calls goes to and fro between two Python threads, and each of them waits for whoever
measures or paints at that moment (docs/performance.md). That thread is there so that a landmarker
is never asked twice at a time; ``landmarker.py`` has a lock for that.
"""

from __future__ import annotations

import sys
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, Final

_ASKED_PER_PICTURE: Final = (
    "MpPoseLandmarkerDetectForVideo",
    "MpPoseLandmarkerDetectImage",
    "MpPoseLandmarkerCloseResult",
)
"""Functions of MediaPipe's C interface, ``mediapipe/tasks/c/vision/pose_landmarker``."""


@dataclass(frozen=True, slots=True)
class _Done:
    value: Any

    def result(self) -> Any:
        """Give it."""
        return self.value


class _AtOnce:
    """Takes the place of an executor and its thread."""

    def submit(self, do: Callable[..., Any], *arguments: Any) -> _Done:
        """Do it, and raise what it raises."""
        return _Done(do(*arguments))


def answer_at_once(task: Any) -> bool:
    """Change a pose landmarker so; false where this release of MediaPipe is built otherwise.

    It works then as before, only slower.
    """
    try:
        library = task._lib
        signatures = sys.modules[type(task).__module__]._CTYPES_SIGNATURES
        calls = {
            signature.func_name: signature.create_python_wrapper(library._lib, _AtOnce())
            for signature in signatures
            if signature.func_name in _ASKED_PER_PICTURE
        }
    except (AttributeError, KeyError, TypeError):
        return False
    if len(calls) < len(_ASKED_PER_PICTURE):
        return False
    vars(library).update(calls)
    return True
