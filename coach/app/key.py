"""``coach key``: the practice's key, for which patients' session files are sealed."""

from __future__ import annotations

from enum import StrEnum
from pathlib import Path

from coach.app.passphrases import asked, chosen
from coach.domain.fault import Fault
from coach.storage.folders import store_path
from coach.storage.keys import (
    back_up,
    make_practice_key,
    practice_key_path,
    public_key,
    restore,
    unlock,
)
from coach.storage.store_lock import is_locked, lock_store


class Deed(StrEnum):
    """What ``coach key`` can do."""

    MAKE = "make"
    SHOW = "show"
    BACK_UP = "back-up"
    RESTORE = "restore"
    LOCK_STORE = "lock-store"


def run_key(deed: Deed, file: Path | None) -> int:
    """Do it; the passphrases are asked for at the terminal."""
    path = practice_key_path()
    match deed:
        case Deed.MAKE:
            public = make_practice_key(path, chosen("the new key"))
            print(f"Made {path}; put this public key into plans:\n{public}")
            print("Back it up now with 'coach key back-up FILE': without it nothing can be opened.")
        case Deed.SHOW:
            known = public_key(path)
            if known is None:
                raise Fault("There is no practice key here; make one with 'coach key make'.")
            print(known)
        case Deed.BACK_UP:
            backup = _named(deed, file)
            back_up(unlock(path, asked("the practice's key")), backup, chosen("the backup"))
            print(f"{backup}: keep it away from this machine.")
        case Deed.RESTORE:
            backup = _named(deed, file)
            public = restore(path, backup, asked("the backup"), chosen("the key on this machine"))
            print(f"Restored {path}; its public key is\n{public}")
        case Deed.LOCK_STORE:
            place = file or store_path()
            old = asked("the store now") if is_locked(place) else None
            lock_store(place, chosen("the store"), old)
            print(f"{place} is locked; the passphrase is asked for when it is opened.")
    return 0


def _named(deed: Deed, file: Path | None) -> Path:
    if file is None:
        raise Fault(f"'coach key {deed}' needs the name of the backup file after it.")
    return file
