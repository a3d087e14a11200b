"""The researcher's guide, followed: its commands in their order, and what it says to cite."""

from __future__ import annotations

import math
import re
import shlex
import subprocess
import sys
import tomllib
import zipfile
from pathlib import Path

import pytest

from coach import __version__
from coach.__main__ import main
from coach.domain.pose import PoseModel
from coach.goniometry import DEFINITIONS
from coach.pose.bundle import sha256_of
from tests.docs.test_pages import ROOT, fenced

GUIDE = ROOT / "docs" / "guide_researcher.md"
CITATION = ROOT / "docs" / "CITATION.cff"
SESSION = ROOT / "tests" / "documents" / "golden" / "session_v4.shoulder.zip"
FRAMES = 100
CLIP = "coach measure clip.mp4"
"""The one line that needs the pose model: ``tests/app/test_measure.py`` has it."""


def joints_table() -> str:
    """A right arm that hangs, rises and is held straight ahead, in metres."""
    still = {"left_shoulder": (0.2, 1.4, 0.0), "left_hip": (0.15, 0.9, 0.0),
             "right_shoulder": (-0.2, 1.4, 0.0), "right_hip": (-0.15, 0.9, 0.0)}  # fmt: skip
    names = [f"{place}_{axis}_m" for place in (*still, "right_elbow", "right_wrist")
             for axis in "xyz"]  # fmt: skip
    lines = [",".join(["time_s", *names])]
    for t in range(FRAMES):
        flexion = math.radians(min(90.0, max(0.0, 4.5 * (t - 10))))
        down, ahead = math.cos(flexion), math.sin(flexion)
        arm = [(-0.2, 1.4 - far * down, far * ahead) for far in (0.3, 0.55)]
        row = [value for at in (*still.values(), *arm) for value in at]
        lines.append(",".join(map(str, (t / 10, *row))))
    return "\n".join(lines) + "\n"


def test_its_commands_work_one_after_the_other(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    (tmp_path / "joints.csv").write_text(joints_table())
    told: dict[str, str] = {}
    for line in fenced(GUIDE, "sh"):
        command, *rest = shlex.split(line)
        if command == "unzip":
            assert (rest[0].endswith(".shoulder.zip"), rest[1:]) == (True, ["-d", "sitting"])
            with zipfile.ZipFile(SESSION) as archive:
                archive.extractall(tmp_path / "sitting")
        elif command == "python3":
            done = subprocess.run([sys.executable, *rest], capture_output=True, text=True)
            assert done.returncode == 0, done.stderr
            told[line] = done.stdout
        elif not line.startswith(CLIP):
            assert command == "coach", line
            assert main(rest) == 0, line
            told[line] = capsys.readouterr().out
    (read,) = (text for line, text in told.items() if line.startswith("python3"))
    assert "'doubt'" in read
    (measured,) = (text for line, text in told.items() if "measure landmarks.csv" in line)
    # Straight ahead is 90 degrees of flexion; every frame of an exact table is usable.
    assert f"{FRAMES} of {FRAMES} frames usable" in measured
    (value, error) = re.findall(r"held [\d.]+ s, (\d+) ± (\d+) degrees", measured)[0]
    assert abs(int(value) - 90) <= int(error)


def test_what_it_says_to_cite_is_the_program_of_now() -> None:
    text = " ".join(GUIDE.read_text("utf-8").split())
    (version, definitions, model) = re.findall(
        r"version ([\d.]+), angle definitions (\d+), pose model SHA-256 (\w{8}),", text
    )[0]
    assert version == __version__
    assert int(definitions) == DEFINITIONS
    assert sha256_of(PoseModel.FULL).startswith(model)


def test_the_citation_file_names_the_program_as_it_is_packed() -> None:
    """Checked against the format's own schema with cffconvert when it was written."""
    packed = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]
    cited = dict(re.findall(r"^([\w-]+):(.*)$", CITATION.read_text("utf-8"), re.MULTILINE))
    for name in ("version", "license"):
        assert cited[name].strip() == packed[name]
    assert {"cff-version", "message", "title", "authors"} <= set(cited)


def test_the_sentences_it_explains_are_those_of_the_program() -> None:
    table = GUIDE.read_text("utf-8").split("## What goes wrong", 1)[1]
    said = [line.split("|")[1].strip() for line in table.splitlines() if line.startswith("| ")][1:]
    code = " ".join(p.read_text("utf-8") for p in (ROOT / "coach").rglob("*.py"))
    code = re.sub(r'"\s*"', "", code)
    assert len(said) == 5
    for line in said:
        for part in re.split(r"\.\.\.|`", line.removesuffix(" with a reason")):
            assert part.strip() in code, part
