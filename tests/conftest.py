"""What holds for every test: no screen, no clock in a verdict, the same cases in every run."""

from __future__ import annotations

import os

from hypothesis import settings

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
# What a command prints follows the machine's language; tests read it in English.
os.environ["LC_ALL"] = "C.UTF-8"
os.environ.pop("LANGUAGE", None)
# FFmpeg takes its log level from whoever uses it first, here a test that reads a clip with OpenCV.
os.environ.setdefault("OPENCV_FFMPEG_LOGLEVEL", "-8")

# CI must not fail on a case that the change did not touch: longer random runs are for benchmarks.
settings.register_profile("project", deadline=None, derandomize=True)
settings.load_profile("project")
