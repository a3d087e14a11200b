"""Breaks every import contract once, on a copy: one that holds nothing is noticed."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[1]

VIOLATIONS = {
    "Layers point down": ("domain/pose.py", "import coach.counting"),
    "The two windows share only what is in shared": (
        "desktop/patient/wording.py",
        "import coach.desktop.therapist",
    ),
    "Pure packages know no device, window, clock, thread or disk": (
        "goniometry/sight.py",
        "import time",
    ),
    "OpenCV only in capture": ("app/measure.py", "import cv2"),
    "MediaPipe only in pose": ("capture/sources.py", "import mediapipe"),
    "Qt only in desktop": ("storage/atomic.py", "import PyQt6.QtCore"),
    "The speech library only in voice": ("app/demo.py", "import espeakng_loader"),
    "The database and encryption libraries only in storage": ("app/review.py", "import pyrage"),
    "Nothing opens a connection": ("storage/atomic.py", "import socket"),
}


def broken_contracts(folder: Path) -> str:
    shutil.copy(ROOT / "pyproject.toml", folder)
    command = [sys.executable, "-c", "from importlinter.cli import lint_imports_command as c; c()"]
    done = subprocess.run(
        [*command, "--no-cache"],
        cwd=folder,
        env={**os.environ, "PYTHONPATH": str(folder)},
        capture_output=True,
        text=True,
        check=False,
    )
    return done.stdout + done.stderr


@pytest.fixture
def copied(tmp_path: Path) -> Path:
    ignore = shutil.ignore_patterns("__pycache__", "fonts", "_installed")
    shutil.copytree(ROOT / "coach", tmp_path / "coach", ignore=ignore)
    return tmp_path


def test_the_contracts_are_kept(copied: Path) -> None:
    assert "Contracts: 9 kept, 0 broken." in broken_contracts(copied)


@pytest.mark.parametrize("contract", VIOLATIONS)
def test_a_violation_breaks_its_contract(contract: str, copied: Path) -> None:
    file, line = VIOLATIONS[contract]
    path = copied / "coach" / file
    path.write_text(path.read_text("utf-8") + f"\n{line}\n", "utf-8")
    assert f"{contract} BROKEN" in broken_contracts(copied)


@pytest.mark.parametrize("line", ["import pathlib", "import coach.storage.store"])
def test_an_export_touches_no_disk(line: str, copied: Path) -> None:
    path = copied / "coach" / "exchange" / "table.py"
    path.write_text(path.read_text("utf-8") + f"\n{line}\n", "utf-8")
    assert " BROKEN" in broken_contracts(copied)
