"""Nothing of the program reaches out of the machine, compiled libraries included.

Three nets, from the coarsest to the finest: calls through Python's socket module are recorded
and refused; a child process runs in a network namespace that has no network at all; and strace
shows every socket that a child process opens.
"""

from __future__ import annotations

import shutil
import socket
import subprocess
import sys
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import numpy as np
import pytest
import skimage.data

from coach.capture.sources import open_source
from coach.pose.estimator import open_estimator
from tests.tracing import calls_beyond, can_trace, traced

NOWHERE = "192.0.2.1"  # TEST-NET-1 of RFC 5737: no host has it
LOCAL_HOSTS = {"localhost", "127.0.0.1", "::1", None, ""}

MEASURE = """
import sys
from coach.capture.sources import open_source
from coach.pose.estimator import open_estimator
estimator, source = open_estimator(), open_source(sys.argv[1])
poses = [estimator.estimate(frame) for frame in source]
source.close()
estimator.close()
print(sum(pose is not None for pose in poses))
"""
REACH_OUT = f"""
import socket
try:
    socket.create_connection(({NOWHERE!r}, 9), timeout=0.2)
except OSError:
    pass
"""


@dataclass
class Guard:
    """Refuses what is not local, and remembers it in case the refusal was swallowed."""

    attempts: list[str] = field(default_factory=list)

    def check(self, what: str, address: object) -> None:
        host = address[0] if isinstance(address, tuple) else address
        if host not in LOCAL_HOSTS:
            self.attempts.append(f"{what} {address!r}")
            raise ConnectionRefusedError(f"the guard refuses {what} {address!r}")


@pytest.fixture
def guard(monkeypatch: pytest.MonkeyPatch) -> Guard:
    guard = Guard()

    def refuse_send(method: str) -> None:
        original = getattr(socket.socket, method)

        def guarded(self: socket.socket, *args: Any) -> Any:
            # Of every one of these methods the address is the last argument.
            if self.family in (socket.AF_INET, socket.AF_INET6):
                guard.check(method, args[-1])
            return original(self, *args)

        monkeypatch.setattr(socket.socket, method, guarded)

    def refuse_look_up(function: str) -> None:
        original = getattr(socket, function)

        def guarded(host: Any, *args: Any, **kwargs: Any) -> Any:
            guard.check(function, host)
            return original(host, *args, **kwargs)

        monkeypatch.setattr(socket, function, guarded)

    for method in ("connect", "connect_ex", "sendto"):
        refuse_send(method)
    for function in ("getaddrinfo", "gethostbyname", "gethostbyname_ex", "gethostbyaddr"):
        refuse_look_up(function)
    return guard


@pytest.fixture
def clip(tmp_path: Path) -> Path:
    """A second of a photograph that moves."""
    import cv2

    photograph = skimage.data.astronaut()
    path = tmp_path / "clip.mp4"
    height, width = photograph.shape[:2]
    writer = cv2.VideoWriter(str(path), cv2.VideoWriter.fourcc(*"mp4v"), 10.0, (width, height))
    for n in range(12):
        writer.write(cv2.cvtColor(np.roll(photograph, n, axis=1), cv2.COLOR_RGB2BGR))
    writer.release()
    return path


def run(*command: str) -> str:
    done = subprocess.run(
        command, capture_output=True, text=True, check=False, timeout=300, cwd=Path.cwd()
    )
    assert done.returncode == 0, done.stderr
    return done.stdout.strip()


def works(*command: str) -> bool:
    if shutil.which(command[0]) is None:
        return False
    return subprocess.run(command, capture_output=True, check=False).returncode == 0


def sockets_opened(trace: Path, *command: str) -> list[str]:
    """Run a command; give the traced calls that concern the internet, those of its children too."""
    run(*traced(trace, [*command]))
    return calls_beyond(trace)


needs_strace = pytest.mark.skipif(not can_trace(), reason="strace is not installed or not allowed")
needs_namespace = pytest.mark.skipif(
    not works("unshare", "--map-root-user", "--net", "true"),
    reason="this system gives no network namespaces",
)


def test_the_guard_refuses_and_remembers(guard: Guard) -> None:
    with pytest.raises(ConnectionRefusedError):
        socket.create_connection((NOWHERE, 9))
    with pytest.raises(ConnectionRefusedError):
        socket.getaddrinfo("example.org", 80)
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as datagrams:
        with pytest.raises(ConnectionRefusedError):
            datagrams.sendto(b"hello", (NOWHERE, 9))
        with pytest.raises(ConnectionRefusedError):
            datagrams.connect_ex((NOWHERE, 9))
        datagrams.connect(("127.0.0.1", 9))
    assert [attempt.split()[0] for attempt in guard.attempts] == [
        "getaddrinfo",
        "getaddrinfo",
        "sendto",
        "connect_ex",
    ]


def test_frames_and_poses_make_no_connection_from_python(guard: Guard, clip: Path) -> None:
    estimator, source = open_estimator(), open_source(clip)
    poses = [estimator.estimate(frame) for frame in source]
    source.close()
    estimator.close()
    assert len(poses) == 12
    assert None not in poses
    assert guard.attempts == []


@needs_namespace
def test_frames_and_poses_work_where_there_is_no_network(clip: Path) -> None:
    command = sys.executable, "-c", MEASURE, str(clip)
    assert run("unshare", "--map-root-user", "--net", *command) == "12"


@needs_strace
def test_the_trace_shows_an_attempt(tmp_path: Path) -> None:
    opened = sockets_opened(tmp_path / "trace", sys.executable, "-c", REACH_OUT)
    assert any(NOWHERE in line for line in opened)


@needs_strace
def test_frames_and_poses_open_no_socket_to_anywhere(tmp_path: Path, clip: Path) -> None:
    opened = sockets_opened(tmp_path / "trace", sys.executable, "-c", MEASURE, str(clip))
    assert opened == []
