"""The practice's key on the therapist's machine.

Both files are in the age format: the key is an age identity, locked with a passphrase (scrypt). Any
age program can make, lock and open one as well.
"""

from __future__ import annotations

import re
from pathlib import Path

import pyrage

from coach.domain.fault import Fault
from coach.storage.atomic import make_folder, write_bytes
from coach.storage.folders import data_folder
from coach.storage.passphrase import new_passphrase, normal_passphrase
from coach.storage.sealed import PracticeIdentity
from coach.storage.session_file import read_bounded

PUBLIC_SUFFIX = ".pub"
_MAX_KEY_BYTES = 10_000
_WORK = re.compile(rb"^-> scrypt \S+ ([0-9]{1,9})\n", re.MULTILINE)
_MOST_WORK = 20
"""Logarithm of scrypt's N (https://c2sp.org/age): 2**20 takes 1 GiB and seconds; age programs
choose 15 to 19."""
_SECRET = re.compile(r"^AGE-SECRET-KEY-1[0-9A-Z]+$", re.MULTILINE)


def practice_key_path() -> Path:
    """Give the place of the practice's locked key."""
    return data_folder() / "practice.key.age"


def make_practice_key(path: Path, passphrase: str) -> str:
    """Make a key, lock it with the passphrase, and give its public half for the plans.

    A key that is there is never replaced: what was sealed for it could not be opened any more.
    """
    used = new_passphrase(passphrase)
    if path.exists():
        raise _taken(path)
    key = pyrage.x25519.Identity.generate()
    identity = PracticeIdentity(str(key.to_public()), key)
    _write(path, identity, used, overwrite=False)
    _write_public(path, identity)
    return identity.public_key


def public_key(path: Path) -> str | None:
    """Give the public half, which needs no passphrase; None where no key was made."""
    if not path.exists():
        return None
    text = read_bounded(_public_path(path), _MAX_KEY_BYTES, "public key").decode("ascii", "replace")
    try:
        return str(pyrage.x25519.Recipient.from_str(text.strip()))
    except pyrage.RecipientError as error:
        raise Fault(
            f"The public key in {_public_path(path)} is damaged: unlock the practice's key once to "
            "write it anew."
        ) from error


def unlock(path: Path, passphrase: str) -> PracticeIdentity:
    """Give the key for opening sealed files; it stays in memory.

    Raises Fault on a wrong passphrase and where there is no key.
    """
    if not path.exists():
        raise Fault(
            f"There is no practice key at {path}: make one, or restore the one from your backup."
        )
    identity = _read(path, passphrase)
    _write_public(path, identity)
    return identity


def back_up(identity: PracticeIdentity, backup: Path, passphrase: str) -> None:
    """Write the key to a file of its own, locked with a passphrase that may be another one."""
    used = new_passphrase(passphrase)
    if backup.exists():
        raise _taken(backup)
    _write(backup, identity, used, overwrite=False)


def restore(path: Path, backup: Path, backup_passphrase: str, passphrase: str) -> str:
    """Take the key out of a backup, lock it with ``passphrase``, and give its public half.

    Also how a forgotten passphrase is replaced. A different key that is there stays.
    """
    used = new_passphrase(passphrase)
    identity = _read(backup, backup_passphrase)
    if path.exists() and public_key(path) != identity.public_key:
        raise Fault(
            f"There is another practice key at {path}, and files may be sealed for it: move it to "
            "a safe place first."
        )
    _write(path, identity, used, overwrite=True)
    _write_public(path, identity)
    return identity.public_key


def _read(path: Path, passphrase: str) -> PracticeIdentity:
    locked = read_bounded(path, _MAX_KEY_BYTES, "practice key")
    work = _WORK.search(locked)
    if work and int(work[1]) > _MOST_WORK:
        raise Fault(
            f"{path.name} asks for more memory and time to be opened than a practice key needs; "
            "take your backup."
        )
    try:
        text = pyrage.passphrase.decrypt(locked, normal_passphrase(passphrase)).decode("ascii")
        found = _SECRET.findall(text)
        key = pyrage.x25519.Identity.from_str(found[0])
    except (pyrage.DecryptError, pyrage.IdentityError, UnicodeDecodeError, IndexError) as error:
        raise Fault(
            f"{path.name} does not open: type the passphrase again, and if it is right the file "
            "is damaged or no practice key, so take your backup."
        ) from error
    return PracticeIdentity(str(key.to_public()), key)


def _write(path: Path, identity: PracticeIdentity, used: str, *, overwrite: bool) -> None:
    text = f"# public key: {identity.public_key}\n{identity.key}\n"
    make_folder(path.parent)
    try:
        write_bytes(path, pyrage.passphrase.encrypt(text.encode(), used), overwrite=overwrite)
    except FileExistsError as error:
        raise _taken(path) from error


def _taken(path: Path) -> Fault:
    return Fault(f"There is a file at {path} already: choose another name.")


def _write_public(path: Path, identity: PracticeIdentity) -> None:
    write_bytes(_public_path(path), f"{identity.public_key}\n".encode())


def _public_path(path: Path) -> Path:
    return path.with_name(path.name + PUBLIC_SUFFIX)
