"""Session files sealed for the practice, in the age format (https://c2sp.org/age).

The patient's machine knows the public key alone and cannot open what it sealed.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from pathlib import Path
from typing import NoReturn

import pyrage

from coach.documents.archive import pack_session
from coach.domain.fault import Fault
from coach.session.assemble import Assembled
from coach.storage.atomic import make_folder, write_bytes
from coach.storage.folders import own_sessions_folder
from coach.storage.session_file import read_bounded, write_session
from coach.texts import translate

SEALED_SUFFIX = ".shoulder.age"
MAX_SEALED_BYTES = 64_000_000
"""Nothing is packed in this format: what comes out is smaller than what went in."""

_MAGIC = b"age-encryption.org/v1\n"
_HEADER_END = b"\n--- "
_MAX_HEADER_BYTES = 4_096
"""The program's own have about 400. Each recipient costs a multiplication on the curve before
anything can be authenticated, so that a long header costs much for little."""
_RECIPIENT = b"\n-> X25519 "
_NO_KEY = "No matching keys found"


@dataclass(frozen=True, slots=True)
class PracticeIdentity:
    """The practice's key, unlocked, in memory only.

    New plans carry ``public_key``. ``older`` are the keys before it, newest first and none with
    older ones of its own; they still open what was sealed for them.
    """

    public_key: str
    key: pyrage.x25519.Identity = field(repr=False)
    made_on: date | None = None
    older: tuple[PracticeIdentity, ...] = ()

    @property
    def every(self) -> tuple[PracticeIdentity, ...]:
        """All keys, the newest first."""
        return (self, *self.older)


def check_public_key(public_key: str) -> pyrage.x25519.Recipient:
    """Give a plan's ``practice_key`` as the library knows it; a mistyped one is refused."""
    try:
        return pyrage.x25519.Recipient.from_str(public_key)
    except pyrage.RecipientError as error:
        raise Fault(
            translate(
                "faults",
                "The practice's key in the plan is mistyped or cut short, so that no "
                "session could be sealed: ask the practice for the plan again.",
            )
        ) from error


def seal(data: bytes, public_key: str) -> bytes:
    """Encrypt for the holder of one public key alone."""
    return pyrage.encrypt(data, [check_public_key(public_key)])


def is_sealed(data: bytes) -> bool:
    """Whether these bytes say that they are an age file."""
    return data.startswith(_MAGIC)


def open_sealed(data: bytes, identity: PracticeIdentity, where: str) -> bytes:
    """Decrypt in memory what nobody vouches for, with whichever of the practice's keys fits.

    ``where`` names the file in a ``Fault``.
    """
    if len(data) > MAX_SEALED_BYTES:
        raise Fault(
            translate(
                "faults",
                "{where} is too large for a sealed session file: at most "
                "{max_sealed_bytes:,} bytes are read; check that this is the right "
                "file.",
            ).format(where=where, max_sealed_bytes=MAX_SEALED_BYTES)
        )
    if not is_sealed(data):
        raise Fault(
            translate(
                "faults", "{where} is not a sealed session file; check that this is the right file."
            ).format(where=where)
        )
    end = data.find(_HEADER_END, 0, _MAX_HEADER_BYTES)
    if end < 0:
        raise Fault(
            translate(
                "faults",
                "{where} is cut short, or has a longer beginning than this program "
                "writes; ask for it to be sent again.",
            ).format(where=where)
        )
    if data.count(_RECIPIENT, 0, end) > 1:
        raise Fault(
            translate(
                "faults",
                "{where} was sealed for others beside this practice, which this program"
                " never does; ask for the original file.",
            ).format(where=where)
        )
    try:
        return pyrage.decrypt(data, [one.key for one in identity.every])
    except pyrage.DecryptError as error:
        _refuse(error, where)


def _refuse(error: Exception, where: str) -> NoReturn:
    if str(error) == _NO_KEY:
        raise Fault(
            translate(
                "faults",
                "{where} was not sealed for this practice's key or an older one of it, or was "
                "changed on its way; check that the patient's plan has this practice's key, and "
                "ask for it to be sent again.",
            ).format(where=where)
        ) from error
    raise Fault(
        translate("faults", "{where} is damaged or cut short; ask for it to be sent again.").format(
            where=where
        )
    ) from error


def open_session_bytes(path: Path, identity: PracticeIdentity | None) -> bytes:
    """Read a session file as it came, sealed or not, and give the zip in it.

    A sealed one is opened in memory; ``identity`` is None while the practice's key is locked.
    """
    data = read_bounded(path, MAX_SEALED_BYTES, "session file")
    if not is_sealed(data) and path.suffix != ".age":
        return data
    if identity is None:
        raise Fault(
            translate(
                "faults", "{name} is sealed: unlock the practice's key, then import it again."
            ).format(name=path.name)
        )
    return open_sealed(data, identity, path.name)


def save_session(folder: Path, session: Assembled, own: Path | None = None) -> Path:
    """Save a session in ``folder``, sealed where its plan carries a key, and give its path.

    Of a sealed session the patient keeps a readable copy in ``own``, by default in the program's
    own folder, where the diary finds it.
    """
    public_key = session.document.plan.practice_key
    if public_key is not None:
        check_public_key(public_key)
        write_session(own or own_sessions_folder(), session)
    return save_for_practice(folder, session)


def save_for_practice(folder: Path, session: Assembled) -> Path:
    """Save only what is sent, sealed where the plan carries a key, in ``folder``; give its path."""
    public_key = session.document.plan.practice_key
    if public_key is None:
        return write_session(folder, session)
    data = pack_session(session.document, session.readings_csv, session.landmarks_csv)
    sealed = seal(data, public_key)
    make_folder(folder)
    for name in sealed_names(session.document.session_id):
        path = folder / name
        try:
            write_bytes(path, sealed, overwrite=False)
        except FileExistsError:
            # Files are there whole or not at all, and the name is random: it is this session,
            # sealed before the journal could be removed.
            if is_sealed(_beginning(path)):
                return path
        else:
            return path
    raise Fault(
        translate(
            "faults",
            "The session could not be saved: {folder} has other files of its name; "
            "choose another folder.",
        ).format(folder=folder)
    )


def sealed_names(session_id: str) -> tuple[str, str]:
    """Give the names of a sealed file: of the digits drawn at random, and nothing else."""
    return f"{session_id[:12]}{SEALED_SUFFIX}", f"{session_id}{SEALED_SUFFIX}"


def _beginning(path: Path) -> bytes:
    try:
        with path.open("rb") as file:
            return file.read(len(_MAGIC))
    except OSError:
        return b""
