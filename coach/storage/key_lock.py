"""The lock of a key file: what is inside comes out for its passphrase, at a bounded cost."""

from __future__ import annotations

import re

import pyrage

from coach.domain.fault import Fault
from coach.storage.passphrase import normal_passphrase
from coach.texts import translate

_WORK = re.compile(rb"^-> scrypt \S+ ([0-9]{1,9})\n", re.MULTILINE)
_MOST_WORK = 20
"""Logarithm of scrypt's N (https://c2sp.org/age): 2**20 takes 1 GiB and seconds; age programs
choose 15 to 19."""

_TOO_SLOW = "Excessive work parameter"
_TRIES = 20


def unlocked(locked: bytes, name: str, passphrase: str) -> bytes:
    """Give what is inside; ``name`` is the file's. Raises DecryptError where it does not open."""
    work = _WORK.search(locked)
    if work and int(work[1]) > _MOST_WORK:
        raise Fault(
            translate(
                "faults",
                "{path} asks for more memory and time to be opened than a practice key "
                "needs; take your backup.",
            ).format(path=name)
        )
    # The library refuses what it thinks takes this machine too long, which it measures for a
    # moment before each try: on a busy machine that may be a bad one.
    for _ in range(_TRIES):
        try:
            return pyrage.passphrase.decrypt(locked, normal_passphrase(passphrase))
        except pyrage.DecryptError as error:
            if not str(error).startswith(_TOO_SLOW):
                raise
    raise Fault(
        translate(
            "faults",
            "{path} cannot be opened while this computer is so busy: close other programs and try "
            "again.",
        ).format(path=name)
    )
