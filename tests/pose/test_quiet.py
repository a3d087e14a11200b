from __future__ import annotations

import os

import pytest

from coach.pose.quiet import without_remarks


def test_known_remarks_are_kept_off_and_other_lines_pass(capfd: pytest.CaptureFixture[str]) -> None:
    with without_remarks():
        os.write(2, b"before\nINFO: Created TensorFlow Lite XNNPACK delegate for CPU.\naf")
        os.write(2, b"ter, without an end")
    os.write(2, b"; later\n")
    assert capfd.readouterr().err == "before\nafter, without an end; later\n"


def test_errors_pass(capfd: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(ValueError, match="a true error"), without_remarks():
        raise ValueError("a true error")
    os.write(2, b"heard\n")
    assert capfd.readouterr().err == "heard\n"


def test_more_lines_than_a_pipe_holds(capfd: pytest.CaptureFixture[str]) -> None:
    lines = "".join(f"line {n} of many\n" for n in range(20_000))
    with without_remarks():
        os.write(2, lines.encode())
    assert capfd.readouterr().err == lines
