"""Photographs of windows, small enough to be kept in the repository."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PIL import Image
from PyQt6.QtWidgets import QApplication, QDialog, QWidget

SIZES = {"": (1280, 800), "_large": (1920, 1080)}
Shot = Callable[[str, QWidget], None]


def camera_of(out: Path, wanted: list[str], suffix: str) -> Shot:
    """Give what photographs windows of one size."""

    def shot(name: str, window: QWidget) -> None:
        if wanted and name not in wanted:
            return
        if not isinstance(window, QDialog):
            window.resize(*SIZES[suffix])
        window.show()
        for _ in range(3):
            QApplication.processEvents()
        path = out / f"{name}{suffix}.png"
        window.grab().save(str(path), "PNG")
        if not suffix:  # a palette takes a third of the room in the repository
            few = Image.Quantize.MEDIANCUT
            Image.open(path).convert("RGB").quantize(
                256, few, kmeans=2, dither=Image.Dither.NONE
            ).save(path, optimize=True)

    return shot


def in_language(shot: Shot, language: str) -> Shot:
    """Give what photographs under names that end with the language."""
    return lambda name, window: shot(f"{name}_{language}", window)
