"""A command that runs where little can be printed, typed or named ends in order."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from coach.__main__ import main
from coach.domain.fault import Fault
from coach.storage.atomic import write_bytes
from tests.tracing import ROOT

POSIX = pytest.mark.skipif(os.name == "nt", reason="pipes and devices of POSIX")
COACH = [sys.executable, "-m", "coach"]
TOO_LONG = "x" * 300


def run(
    tmp_path: Path, command: list[str], **environment: str
) -> subprocess.CompletedProcess[bytes]:
    """Run a command with nothing of its own but what ``environment`` says."""
    own = {"STIFF_SHOULDER_COACH_FOLDER": str(tmp_path / "own"), **environment}
    return subprocess.run(
        command,
        cwd=ROOT,
        env={**os.environ, **own},
        stdin=subprocess.DEVNULL,
        capture_output=True,
        check=False,
        timeout=120,
    )


def test_a_terminal_without_umlauts_shows_their_numbers(tmp_path: Path) -> None:
    command = [*COACH, "--language", "de", "--help"]
    done = run(tmp_path, command, PYTHONIOENCODING="ascii")
    assert done.returncode == 0, done.stderr
    assert rb"\xdc" in done.stdout


@POSIX
def test_a_name_that_is_no_utf_8_is_printed(tmp_path: Path) -> None:
    out = os.fsdecode(os.fsencode(tmp_path) + b"/\xff.pdf")
    done = run(tmp_path, [*COACH, "card", "--out", out], LC_ALL="C.UTF-8", PYTHONIOENCODING="utf-8")
    assert done.returncode == 0, done.stderr
    assert rb"\udcff.pdf" in done.stdout
    assert Path(out).read_bytes().startswith(b"%PDF")


@POSIX
def test_a_reader_that_goes_away_ends_it_in_silence(tmp_path: Path) -> None:
    read, write = os.pipe()
    os.close(read)
    out = tmp_path / "card.pdf"
    environment = {**os.environ, "STIFF_SHOULDER_COACH_FOLDER": str(tmp_path)}
    command = [*COACH, "card", "--out", str(out)]
    try:
        done = subprocess.run(
            command,
            cwd=ROOT,
            env=environment,
            stdout=write,
            stderr=subprocess.PIPE,
            check=False,
            timeout=120,
        )
    finally:
        os.close(write)
    assert (done.returncode, done.stderr) == (141, b"")
    assert out.read_bytes().startswith(b"%PDF")


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="no disk that is always full")
@pytest.mark.parametrize("unbuffered", ["", "1"])
def test_what_has_no_room_to_be_printed_is_told(unbuffered: str, tmp_path: Path) -> None:
    with Path("/dev/full").open("wb") as full:
        done = subprocess.run(
            [*COACH, "card", "--out", str(tmp_path / "card.pdf")],
            cwd=ROOT,
            env={**os.environ, "PYTHONUNBUFFERED": unbuffered},
            stdout=full,
            stderr=subprocess.PIPE,
            check=False,
            timeout=120,
        )
    assert done.returncode == 1
    assert done.stderr.startswith(b"coach: What was printed could not be written (No space left")
    assert done.stderr.count(b"\n") == 1


def test_a_passphrase_that_nobody_can_type_is_asked_for_in_a_sentence(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setenv("STIFF_SHOULDER_COACH_FOLDER", str(tmp_path))
    monkeypatch.setattr(sys, "stdin", None)
    monkeypatch.setattr("os.open", _no_terminal(os.open))
    assert main(["key", "make"]) == 1
    assert "run the command where you can type it" in capsys.readouterr().err


def _no_terminal(usual):  # type: ignore[no-untyped-def]
    def opened(path, *rest, **named):  # type: ignore[no-untyped-def]
        if path == "/dev/tty":
            raise OSError
        return usual(path, *rest, **named)

    return opened


@pytest.mark.parametrize(
    "command",
    [
        ["measure", TOO_LONG, "--movement", "flexion", "--side", "left"],
        ["export", "--kind", "csv", "--patient", "A", "--out", "o.csv", "--store", TOO_LONG],
        ["review", TOO_LONG],
    ],
    ids=["measure", "export", "review"],
)
def test_a_name_too_long_is_told(
    command: list[str],
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
    tmp_path: Path,
) -> None:
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("STIFF_SHOULDER_COACH_FOLDER", str(tmp_path))
    assert main(command) == 1
    said = capsys.readouterr().err
    assert said.count("\n") == 1
    assert said.endswith("its name is too long; choose a shorter one.\n")


@POSIX
def test_a_pipe_is_not_replaced_by_a_file(tmp_path: Path) -> None:
    pipe = tmp_path / "pipe"
    os.mkfifo(pipe)
    with pytest.raises(Fault, match="pipe is not a file in a folder"):
        write_bytes(pipe, b"card")
    assert pipe.is_fifo()
