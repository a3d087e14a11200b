"""``coach measure`` on several clips: what each alone would give, in the order they were named."""

from __future__ import annotations

import json
import shutil
from pathlib import Path

import pytest

from coach.__main__ import main
from coach.app.measure_many import clips_of
from coach.domain.fault import Fault
from tests.app.conftest import CLIPS

WAY = ["--movement", "abduction", "--side", "left"]
TABLE = """\
time_s,picture_width_px,picture_height_px
0.0,640,480
0.1,640,480
"""


def test_a_folder_is_the_clips_in_it(tmp_path: Path) -> None:
    for name in ("b.mp4", "a.MOV", "a.json", "notes.txt"):
        (tmp_path / name).touch()
    named = tmp_path / "notes.txt"
    assert [p.name for p in clips_of([tmp_path])] == ["a.MOV", "b.mp4"]
    assert [p.name for p in clips_of([named, tmp_path / "b.mp4", tmp_path])] == [
        "notes.txt", "b.mp4", "a.MOV",
    ]  # fmt: skip
    (tmp_path / "empty").mkdir()
    with pytest.raises(Fault, match="no clip in the folder"):
        clips_of([tmp_path / "empty"])


def test_each_is_told_in_turn_and_a_broken_one_stops_no_other(
    tmp_path: Path, capfd: pytest.CaptureFixture[str]
) -> None:
    """Tables of landmarks need no pose model, so this takes as long as two processes to start."""
    (tmp_path / "first.csv").write_text(TABLE)
    (tmp_path / "broken.mp4").write_text("no video")
    (tmp_path / "last.csv").write_text(TABLE)
    names = [str(tmp_path / name) for name in ("first.csv", "broken.mp4", "last.csv")]
    assert main(["measure", *names, *WAY, "--json", str(tmp_path / "tables")]) == 1
    printed, said = capfd.readouterr()
    assert [line for line in printed.splitlines() if line.startswith("/")] == names
    assert printed.count("0 of 2 frames usable") == 2
    (sentence,) = said.strip().splitlines()
    assert "broken.mp4' cannot be read as a video" in sentence
    assert sorted(p.name for p in (tmp_path / "tables").iterdir()) == ["first.json", "last.json"]
    assert len(json.loads((tmp_path / "tables" / "last.json").read_text("utf-8"))["frames"]) == 2


def test_two_clips_of_one_name_are_refused_before_anything_is_measured(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "other").mkdir()
    for folder in (tmp_path, tmp_path / "other"):
        shutil.copy(CLIPS / "abduction_left_two_holds.mp4", folder / "clip.mp4")
    clips = [str(tmp_path / "clip.mp4"), str(tmp_path / "other" / "clip.mp4")]
    assert main(["measure", *clips, *WAY, "--json", str(tmp_path / "tables")]) == 1
    assert "have the same name" in capsys.readouterr().err
    assert not (tmp_path / "tables").exists()
