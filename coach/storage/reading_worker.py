"""What a process does that looks through session files for another one, and nothing else."""

from __future__ import annotations

import contextlib
import signal
from typing import TYPE_CHECKING

import msgspec

from coach.documents.archive import unpack_session
from coach.domain.fault import Fault

if TYPE_CHECKING:
    from multiprocessing.connection import Connection

UP = b"up"
REFUSED = b""


def serve(asked: Connection, told: Connection) -> None:
    """Answer each session file with its document as JSON, ``REFUSED`` where it has a fault.

    All of the file is read. Why it is refused is for the asker to find again, who knows in which
    language to say it. Ends when the asker is gone.
    """
    # Ctrl-C is for the process that the person sees, which ends this one.
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    with contextlib.suppress(EOFError, OSError):
        told.send_bytes(UP)
        while True:
            told.send_bytes(_answer(asked.recv_bytes()))


def _answer(original: bytes) -> bytes:
    try:
        return msgspec.json.encode(unpack_session(original, "").document)
    except (Fault, MemoryError):
        return REFUSED
