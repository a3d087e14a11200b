"""Keeps a library's known remarks off the error stream, and lets everything else through."""

from __future__ import annotations

import os
import threading
from collections.abc import Iterator
from contextlib import contextmanager

_STDERR = 2
_REMARKS = (
    b"Created TensorFlow Lite XNNPACK delegate",
    b"All log messages before absl::InitializeLog()",
    b"inference_feedback_manager.cc",
    b"landmark_projection_calculator.cc",
)


@contextmanager
def without_remarks() -> Iterator[None]:
    """Filter the process's error stream line by line while the block runs.

    The library writes to the descriptor itself and offers no switch. Lines that are not known
    remarks arrive as they are, those of other threads included.
    """
    try:
        original = os.dup(_STDERR)
    except OSError:  # a program without a console has none
        yield
        return
    reading, writing = os.pipe()
    os.dup2(writing, _STDERR)
    os.close(writing)
    passing = threading.Thread(target=_pass_on, args=(reading, original), daemon=True)
    passing.start()
    try:
        yield
    finally:
        os.dup2(original, _STDERR)  # closes the pipe's last writing end
        passing.join()
        os.close(original)


def _pass_on(reading: int, original: int) -> None:
    with os.fdopen(reading, "rb") as lines:
        for line in lines:
            if not any(remark in line for remark in _REMARKS):
                os.write(original, line)
