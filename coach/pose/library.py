"""Imports MediaPipe, and only what of it is needed."""

from __future__ import annotations

import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from types import ModuleType
from typing import Any

from coach.domain.fault import Fault
from coach.texts import translate

# MediaPipe imports cv2, which points Qt at plugins of another Qt than PyQt6's.
_QT_VARIABLES = ("QT_QPA_PLATFORM_PLUGIN_PATH", "QT_QPA_FONTDIR")


def import_mediapipe() -> tuple[Any, Any]:
    """Give the modules ``mediapipe`` and ``mediapipe.tasks.python.vision``."""
    with _environment_kept(), _without_unused_modules():
        try:
            import mediapipe
            from mediapipe.tasks.python import vision
        except (ImportError, OSError) as error:
            raise Fault(
                translate(
                    "faults",
                    "The pose model's library MediaPipe cannot be loaded ({error}); "
                    "install what it misses, or the program again.",
                ).format(error=error)
            ) from error
    return mediapipe, vision


@contextmanager
def _environment_kept() -> Iterator[None]:
    before = {name: os.environ.get(name) for name in _QT_VARIABLES}
    try:
        yield
    finally:
        for name, value in before.items():
            if value is None:
                os.environ.pop(name, None)
            else:
                os.environ[name] = value


@contextmanager
def _without_unused_modules() -> Iterator[None]:
    """Keep out what MediaPipe imports for parts that are never used here.

    Its plots import pyplot, which costs most of a second and searches the system's fonts on the
    first start; its sound classifiers import sounddevice, which opens the sound system, and do
    without where there is none.
    """
    stands_in: dict[str, ModuleType | None] = {"sounddevice": None}
    if "matplotlib" not in sys.modules:
        matplotlib, pyplot = ModuleType("matplotlib"), ModuleType("matplotlib.pyplot")
        vars(matplotlib)["pyplot"] = pyplot
        stands_in |= {"matplotlib": matplotlib, "matplotlib.pyplot": pyplot}
    stands_in = {name: module for name, module in stands_in.items() if name not in sys.modules}
    modules: dict[str, ModuleType | None] = sys.modules  # type: ignore[assignment]
    modules.update(stands_in)
    try:
        yield
    finally:
        for name in stands_in:
            modules.pop(name, None)
