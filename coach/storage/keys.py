"""The practice's keys on the therapist's machine: the newest for new plans, older ones to open.

The files are in the age format: the keys are age identities, in one file locked with a passphrase
(scrypt). Any age program can make, lock and open one as well.
"""

from __future__ import annotations

import contextlib
from dataclasses import replace
from datetime import date
from pathlib import Path

import pyrage

from coach.domain.fault import Fault
from coach.storage.atomic import make_folder, write_bytes
from coach.storage.folders import data_folder
from coach.storage.key_lock import unlocked
from coach.storage.key_text import PublicKey, public_text, read_public, read_secret, secret_text
from coach.storage.passphrase import new_passphrase, normal_passphrase
from coach.storage.sealed import PracticeIdentity
from coach.storage.session_file import read_bounded
from coach.texts import translate

PUBLIC_SUFFIX = ".pub"
MOST_KEYS = 30
"""One a year for a working life; their text stays well below what is read of a key file."""
_MAX_KEY_BYTES = 10_000


def practice_key_path() -> Path:
    """Give the place of the practice's locked keys."""
    return data_folder() / "practice.key.age"


def make_practice_key(path: Path, passphrase: str, made_on: date | None = None) -> str:
    """Make the first key, lock it with the passphrase, and give its public half for the plans.

    Keys that are there are never replaced: what was sealed for them could not be opened any more.
    """
    used = new_passphrase(passphrase)
    if path.exists():
        raise _taken(path)
    identity = _new(made_on)
    _write(path, identity, used, overwrite=False)
    _write_public(path, identity)
    return identity.public_key


def renew(path: Path, passphrase: str, made_on: date | None = None) -> str:
    """Make a key for new plans beside those that are there, and give its public half.

    All stay under the passphrase, which has to open them. Raises Fault as ``unlock`` does.
    """
    present, new = unlock(path, passphrase), _new(made_on)
    identity = replace(new, older=(replace(present, older=()), *present.older))
    _write(path, identity, normal_passphrase(passphrase), overwrite=True)
    _write_public(path, identity)
    return identity.public_key


def public_keys(path: Path) -> tuple[PublicKey, ...]:
    """Give the public halves, the one for new plans first; no passphrase is needed.

    Empty where no key was made. Raises Fault where they are missing, as after a crash between the
    two files, or damaged: unlocking writes them anew.
    """
    if not path.exists():
        return ()
    beside = _public_path(path)
    if not beside.exists():
        raise Fault(
            translate(
                "faults",
                "The public key in {path} is missing: unlock the practice's key once "
                "to write it anew.",
            ).format(path=beside)
        )
    text = read_bounded(beside, _MAX_KEY_BYTES, "public key").decode("ascii", "replace")
    try:
        return read_public(text)
    except ValueError as error:
        raise Fault(
            translate(
                "faults",
                "The public key in {path} is damaged: unlock the practice's key "
                "once to write it anew.",
            ).format(path=beside)
        ) from error


def public_key(path: Path) -> str | None:
    """Give the public half for new plans; None where no key was made."""
    found = public_keys(path)
    return found[0].text if found else None


def newest_for(path: Path, public_key: str) -> str:
    """Give the public half for new plans in place of an older one of the same practice.

    Any other text comes back as it is.
    """
    newest, *older = public_keys(path) or (PublicKey(public_key),)
    return newest.text if public_key in {one.text for one in older} else public_key


def check_present(path: Path) -> None:
    """Raise ``Fault`` where there is no key to unlock."""
    if not path.exists():
        raise Fault(
            translate(
                "faults",
                "There is no practice key at {path}: make one with 'coach key make', or"
                " restore the one from your backup with 'coach key restore FILE'.",
            ).format(path=path)
        )


def unlock(path: Path, passphrase: str) -> PracticeIdentity:
    """Give the keys for opening sealed files; they stay in memory.

    Raises Fault on a wrong passphrase and where there is no key.
    """
    check_present(path)
    identity = _read(path, passphrase)
    _write_public(path, identity)
    return identity


def back_up(identity: PracticeIdentity, backup: Path, passphrase: str) -> None:
    """Write all keys to a file of its own, locked with a passphrase that may be another one."""
    used = new_passphrase(passphrase)
    if backup.exists():
        raise _taken(backup)
    _write(backup, identity, used, overwrite=False)


def restore(path: Path, backup: Path, backup_passphrase: str, passphrase: str) -> str:
    """Take the keys out of a backup, lock them with ``passphrase``, give the newest's public half.

    Also how a forgotten passphrase is replaced. Keys that are there stay where the backup lacks
    one of them, be it of another practice or newer than the backup.
    """
    used = new_passphrase(passphrase)
    identity = _read(backup, backup_passphrase)
    held = {one.public_key for one in identity.every}
    if not _present(path, (passphrase, backup_passphrase)) <= held:
        raise Fault(
            translate(
                "faults",
                "There is another practice key at {path} that is not in {backup}, and "
                "files may be sealed for it: take a newer backup, or move the key to a "
                "safe place first.",
            ).format(path=path, backup=backup.name)
        )
    _write(path, identity, used, overwrite=True)
    _write_public(path, identity)
    return identity.public_key


def _present(path: Path, passphrases: tuple[str, ...]) -> set[str]:
    """Give the public halves of what is at ``path``, of which the file beside it may be gone."""
    try:
        return {one.text for one in public_keys(path)}
    except Fault as fault:
        for passphrase in passphrases:
            with contextlib.suppress(Fault):
                return {one.public_key for one in _read(path, passphrase).every}
        raise Fault(
            translate(
                "faults",
                "There is a practice key at {path} of which nobody can say whether the "
                "backup has it: unlock it once, or move it to a safe place first.",
            ).format(path=path)
        ) from fault


def _new(made_on: date | None) -> PracticeIdentity:
    key = pyrage.x25519.Identity.generate()
    return PracticeIdentity(str(key.to_public()), key, made_on)


def _read(path: Path, passphrase: str) -> PracticeIdentity:
    locked = read_bounded(path, _MAX_KEY_BYTES, "practice key")
    try:
        return read_secret(unlocked(locked, path.name, passphrase).decode("ascii"))
    except (pyrage.DecryptError, ValueError) as error:
        raise Fault(
            translate(
                "faults",
                "{path} does not open: type the passphrase again, and if it is right "
                "the file is damaged or no practice key, so take your backup.",
            ).format(path=path.name)
        ) from error


def _write(path: Path, identity: PracticeIdentity, used: str, *, overwrite: bool) -> None:
    if len(identity.every) > MOST_KEYS:
        raise Fault(
            translate(
                "faults",
                "More than {most_keys} practice keys cannot be kept in one file.",
            ).format(most_keys=MOST_KEYS)
        )
    make_folder(path.parent)
    locked = pyrage.passphrase.encrypt(secret_text(identity).encode(), used)
    try:
        write_bytes(path, locked, overwrite=overwrite)
    except FileExistsError as error:
        raise _taken(path) from error


def _taken(path: Path) -> Fault:
    return Fault(
        translate(
            "faults",
            "There is a file at {path} already: choose another name.",
        ).format(path=path)
    )


def _write_public(path: Path, identity: PracticeIdentity) -> None:
    write_bytes(_public_path(path), public_text(identity).encode())


def _public_path(path: Path) -> Path:
    return path.with_name(path.name + PUBLIC_SUFFIX)
