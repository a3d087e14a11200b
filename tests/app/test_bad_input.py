"""What goes wrong is told in one sentence, with an exit code, and what was recorded is kept."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import cv2
import numpy as np
import pytest
import skimage.data

from coach.__main__ import main
from coach.domain.progress import EndedBecause
from coach.domain.session import SessionEnd
from coach.storage.session_file import read_session
from tests.app.conftest import CLIPS, ROOT

ABDUCTION = ["--movement", "abduction", "--side", "right"]


def film(path: Path, pictures: list[np.ndarray]) -> Path:
    height, width = pictures[0].shape[:2]
    writer = cv2.VideoWriter(str(path), cv2.VideoWriter.fourcc(*"mp4v"), 10.0, (width, height))
    for picture in pictures:
        writer.write(cv2.cvtColor(picture, cv2.COLOR_RGB2BGR))
    writer.release()
    return path


def refused(arguments: list[str], capsys: pytest.CaptureFixture[str]) -> str:
    """Run a command that must fail; give its one sentence."""
    assert main(arguments) == 1
    said = capsys.readouterr()
    lines = said.err.strip().splitlines()
    assert len(lines) == 1, said.err
    assert lines[0].startswith("coach: ")
    return lines[0]


def test_a_text_file_is_no_clip(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    text = tmp_path / "notes.mp4"
    text.write_text("not a film\n" * 50)
    assert "cannot be read as a video" in refused(["measure", str(text), *ABDUCTION], capsys)


def test_a_missing_clip_is_named(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    sentence = refused(["measure", str(tmp_path / "none.mp4"), *ABDUCTION], capsys)
    assert "none.mp4" in sentence


def test_a_clip_without_a_person_says_so_and_keeps_the_table(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    clip = film(tmp_path / "empty.mp4", [np.full((240, 320, 3), 120, np.uint8)] * 8)
    table = tmp_path / "table.json"
    sentence = refused(["measure", str(clip), *ABDUCTION, "--json", str(table)], capsys)
    assert "Nobody is seen" in sentence
    frames = json.loads(table.read_text("utf-8"))["frames"]
    assert len(frames) == 8
    assert {frame["doubt"] for frame in frames} == {"nobody-in-view"}


def test_of_two_people_it_says_who_is_followed(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    person = skimage.data.astronaut()
    both = np.full((512, 840, 3), 180, np.uint8)
    both[:, :512] = person
    both[204:, 532:] = cv2.resize(person, (308, 308), interpolation=cv2.INTER_AREA)
    clip = film(tmp_path / "two.mp4", [both] * 12)
    main(["measure", str(clip), *ABDUCTION])
    assert "more than one person is in view; the one nearest" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("change", "place"),
    [
        ({"hold_s": -3}, "hold_s"),
        ({"repetitions": 10_000}, "repetitions"),
        ({"side": "both"}, "side"),
        ({"movement": "cartwheel"}, "movement"),
    ],
)
def test_a_plan_that_cannot_be_is_refused_by_place(
    change: dict[str, object], place: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    exercise = {"movement": "flexion", "side": "left", "hold_s": 20, "repetitions": 3} | change
    plan = tmp_path / "plan.json"
    head = {"format": "shoulder-plan", "version": 1, "patient_code": "T"}
    plan.write_text(json.dumps(head | {"exercises": [exercise]}))
    sentence = refused(["--plan", str(plan)], capsys)
    assert place in sentence
    assert "exercise 1" in sentence


def test_a_file_to_review_that_is_not_there_is_named(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert "gone.zip" in refused(["review", str(tmp_path / "gone.zip")], capsys)


def test_a_folder_that_cannot_be_written_is_named(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    taken = tmp_path / "taken"
    taken.write_text("a file where a folder should be")
    assert str(taken) in refused(["demo", "--out", str(taken / "out")], capsys)


@pytest.mark.skipif(os.name != "posix" or os.geteuid() != 0, reason="mounting needs root")
def test_a_full_disk_is_said_and_nothing_half_is_left(tmp_path: Path) -> None:
    small = tmp_path / "small"
    small.mkdir()
    mount = ["mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", str(small)]
    if subprocess.run(mount, capture_output=True, check=False).returncode != 0:
        pytest.skip("this system mounts nothing")
    try:
        (small / "ballast").write_bytes(bytes(56 * 1024))
        clip = CLIPS / "external_rotation_right_two_holds.mp4"
        command = [sys.executable, "-m", "coach", "measure", str(clip), "--movement"]
        command += ["external-rotation-0", "--side", "right", "--json", str(small / "table.json")]
        done = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)
        assert done.returncode == 1
        assert len(done.stderr.strip().splitlines()) == 1
        assert "full" in done.stderr
        assert [path.name for path in small.iterdir()] == ["ballast"]
    finally:
        subprocess.run(["umount", str(small)], check=True)


def test_ctrl_c_keeps_what_was_done(tmp_path: Path) -> None:
    out = tmp_path / "out"
    command = [sys.executable, "-m", "coach", "demo", "--out", str(out)]
    running = subprocess.Popen(command, cwd=ROOT, stderr=subprocess.PIPE, text=True)
    until = time.monotonic() + 120
    while time.monotonic() < until:
        # The first hold is in the journal: that is what must survive.
        journals = list(out.glob("*.journal"))
        if journals and b'"type":"repetition"' in journals[0].read_bytes():
            break
        time.sleep(0.2)
    running.send_signal(signal.SIGINT)
    _, said = running.communicate(timeout=60)
    assert running.returncode == 130
    assert said.strip() == "coach: stopped by Ctrl-C; what was recorded is kept."
    (path,) = out.glob("*.shoulder.zip")
    document = read_session(path).document
    assert document.ended_because is SessionEnd.STOPPED
    assert document.exercises[0].repetitions[0].ended_because is EndedBecause.COMPLETED
    assert list(out.glob("*.journal")) == []


@pytest.mark.parametrize("command", [["--plan"], ["review"], ["measure"]])
def test_a_file_s_name_steers_no_terminal(
    command: list[str], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "\x1b]0;owned\x07\u202egnp.json"
    if command != ["review"]:
        path.write_bytes(b"{")
    more = ["--movement", "flexion", "--side", "left"] if command == ["measure"] else []
    assert main([*command, str(path), *more]) == 1
    said = capsys.readouterr()
    assert "\\x1b]0;owned\\x07" in said.err
    assert (said.out + said.err.rstrip("\n")).isprintable()
