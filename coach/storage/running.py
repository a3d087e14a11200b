"""One patient's window at a time on one folder: two would take the camera from each other."""

from __future__ import annotations

import contextlib
import os
from collections.abc import Iterator
from pathlib import Path

from coach.domain.fault import Fault
from coach.storage.atomic import make_folder
from coach.storage.disk_fault import disk_fault
from coach.storage.journal import lock
from coach.texts import translate

_NAME = "running.lock"


@contextlib.contextmanager
def only_one(folder: Path) -> Iterator[None]:
    """Hold ``folder`` while the program runs; the system lets go of it however that ends.

    Raises Fault where another program holds it. Where a disk knows no locks, nothing is held.
    """
    make_folder(folder)
    path = folder / _NAME
    try:
        descriptor = os.open(path, os.O_RDWR | os.O_CREAT | getattr(os, "O_BINARY", 0), 0o600)
    except OSError as error:
        raise disk_fault(error, path, "opened") from error
    try:
        try:
            lock(descriptor)
        except (BlockingIOError, PermissionError) as error:
            raise Fault(
                translate(
                    "faults",
                    "The coach is running already: go to its window, or close it and start again.",
                )
            ) from error
        except OSError:
            pass
        yield
    finally:
        os.close(descriptor)
