"""What is printed, wherever it goes: a terminal of few letters, a closed pipe, a full disk."""

from __future__ import annotations

import io
import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager, suppress

from coach.domain.fault import Fault
from coach.texts import translate

CLOSED_PIPE = 141
"""What a shell gives for a program whose reader went away: 128 and the number of SIGPIPE."""


def print_any_letter() -> None:
    """Print letters that the terminal, or UTF-8, does not have as their numbers."""
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors="backslashreplace")


@contextmanager
def all_printed() -> Iterator[None]:
    """Print at the end what still waits; raise Fault where it has no room."""
    try:
        try:
            yield
        finally:
            if sys.stdout is not None:
                sys.stdout.flush()
    except BrokenPipeError:
        raise
    except OSError as error:
        if error.filename is not None or _has_room():
            raise
        print_no_more()
        told = translate(
            "faults",
            "What was printed could not be written ({reason}); send it to another place.",
        )
        raise Fault(told.format(reason=error.strerror)) from error


def _has_room() -> bool:
    # Python does not say of which file an error of writing is: a line more tells.
    try:
        return os.write(sys.stdout.fileno(), b"\n") > 0
    except (OSError, ValueError, AttributeError):
        return False


def print_no_more() -> None:
    """Let what still waits to be printed go, which Python would complain of at its end."""
    with suppress(OSError, ValueError, AttributeError):
        nowhere = os.open(os.devnull, os.O_WRONLY)
        os.dup2(nowhere, sys.stdout.fileno())
        os.close(nowhere)
