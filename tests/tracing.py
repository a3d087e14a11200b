"""Every network call of a command and of its children, as the kernel saw them."""

from __future__ import annotations

import functools
import re
import shutil
import subprocess
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
_STRACE = ("strace", "-f", "-qq", "--seccomp-bpf", "-e", "trace=network", "-o")
_BEYOND = re.compile(r"\b(?:AF|PF)_(?:INET6?|PACKET|BLUETOOTH|VSOCK)\b")
"""Families of addresses that can reach another machine; AF_UNIX and AF_NETLINK stay on this one."""


@functools.cache
def can_trace() -> bool:
    """Whether strace is there and allowed."""
    if shutil.which("strace") is None:
        return False
    command = [*_STRACE, "/dev/null", "true"]
    return subprocess.run(command, capture_output=True, check=False).returncode == 0


def traced(trace: Path, command: list[str]) -> list[str]:
    """Give the command that does the same under a trace, which is written to ``trace``."""
    return [*_STRACE, str(trace), *command]


def calls_beyond(trace: Path) -> list[str]:
    """Give the traced calls that concern anything but this machine."""
    lines = trace.read_text("utf-8", errors="replace").splitlines()
    return [line for line in lines if _BEYOND.search(line)]
