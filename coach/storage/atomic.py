"""Files that are there whole or not at all."""

from __future__ import annotations

import contextlib
import errno
import os
import secrets
from pathlib import Path

from coach.storage.disk_fault import disk_fault

PART_SUFFIX = ".part"
"""Ends the name of a file that is still being written."""


def write_bytes(path: Path, data: bytes, *, overwrite: bool = True) -> None:
    """Write ``data`` to ``path`` so that after a crash either all of it is there or nothing.

    The file is the owner's alone. Without ``overwrite`` an existing file raises FileExistsError;
    trouble with the disk raises ``Fault``.
    """
    part = path.with_name(f".{path.name}.{secrets.token_hex(4)}{PART_SUFFIX}")
    try:
        # A device or pipe would be replaced by the file, for every program of the machine.
        if overwrite and path.exists() and not path.is_file():
            raise IsADirectoryError(errno.EISDIR, os.strerror(errno.EISDIR))
        _write_durably(part, data)
        try:
            if overwrite:
                part.replace(path)
            else:
                _move_to_free_name(part, path)
            sync_folder(path.parent)
        except OSError:
            with contextlib.suppress(OSError):
                part.unlink(missing_ok=True)
            raise
    except FileExistsError:
        raise
    except OSError as error:
        raise disk_fault(error, path, "saved") from error


def make_folder(path: Path) -> None:
    """Make a folder that only its owner can look into, with those above it, if it is missing.

    A power failure may take a folder whose name was not forced, with all that was forced in it.
    """
    try:
        missing = [each for each in (path, *path.parents) if not each.exists()]
        for each in reversed(missing):
            each.mkdir(mode=0o700, exist_ok=True)
            sync_folder(each.parent)
        path.mkdir(mode=0o700, exist_ok=True)
    except OSError as error:
        raise disk_fault(error, path, "made") from error


def sync_file(path: Path) -> None:
    """Force what was written to a file onto the disk."""
    descriptor = os.open(path, os.O_RDWR | getattr(os, "O_BINARY", 0))
    try:
        os.fsync(descriptor)
    finally:
        os.close(descriptor)


def sync_folder(folder: Path) -> None:
    """Make a new or changed name in ``folder`` survive a power failure."""
    if os.name == "nt":  # Windows offers no such call, and keeps names in its own journal
        return
    descriptor = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(descriptor)
    finally:
        os.close(descriptor)


def write_all(descriptor: int, data: bytes) -> None:
    """Write all of ``data``, which one call need not do."""
    view = memoryview(data)
    while view:
        view = view[os.write(descriptor, view) :]


def _write_durably(part: Path, data: bytes) -> None:
    flags = os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0)
    descriptor = os.open(part, flags, 0o600)
    try:
        try:
            write_all(descriptor, data)
            os.fsync(descriptor)
        finally:
            os.close(descriptor)
    except OSError:
        with contextlib.suppress(OSError):
            part.unlink(missing_ok=True)
        raise


def _move_to_free_name(part: Path, path: Path) -> None:
    try:
        os.link(part, path)
    except FileExistsError:
        raise
    except OSError:
        # Some sticks know no hard links; between the look and the move another program could
        # take the name, which on such a disk nothing prevents.
        if path.exists():
            raise FileExistsError(path) from None
        part.rename(path)
    else:
        part.unlink()
