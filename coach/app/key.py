"""``coach key``: the practice's keys, for which patients' session files are sealed."""

from __future__ import annotations

from datetime import date
from enum import StrEnum
from pathlib import Path

from coach.app.passphrases import asked, chosen
from coach.domain.fault import Fault
from coach.review.wording import day
from coach.storage.folders import store_path
from coach.storage.key_text import PublicKey
from coach.storage.keys import (
    back_up,
    make_practice_key,
    practice_key_path,
    public_keys,
    renew,
    restore,
    unlock,
)
from coach.storage.store_lock import is_locked, lock_store
from coach.texts import translate


class Deed(StrEnum):
    """What ``coach key`` can do."""

    MAKE = "make"
    SHOW = "show"
    BACK_UP = "back-up"
    RESTORE = "restore"
    LOCK_STORE = "lock-store"


def run_key(deed: Deed, file: Path | None, *, anew: bool = False) -> int:
    """Do it; the passphrases are asked for at the terminal.

    ``anew`` makes a key for new plans beside those that are there.
    """
    path = practice_key_path()
    if anew and deed is not Deed.MAKE:
        raise Fault(
            translate(
                "faults",
                "'--renew' belongs to 'coach key make', not to 'coach key {deed}'.",
            ).format(deed=deed)
        )
    match deed:
        case Deed.MAKE if anew:
            public = renew(path, asked(translate("key", "the practice's key")), date.today())
            print(translate("key", "The key for new plans in {path} is now").format(path=path))
            print(public)
            told = translate(
                "key",
                "Older keys still open what was sealed for them; give out plans with the new one\n"
                "and back all of them up now with 'coach key back-up FILE'.",
            )
            print(told)
        case Deed.MAKE:
            # Said before two passphrases are asked for in vain.
            if path.exists():
                raise Fault(
                    translate(
                        "faults",
                        "There is a practice key at {path} already: 'coach key make "
                        "--renew' makes one for new plans beside it.",
                    ).format(path=path)
                )
            public = make_practice_key(path, chosen(translate("key", "the new key")), date.today())
            told = translate("key", "Made {path}; put this public key into plans:")
            print(told.format(path=path))
            print(public)
            told = translate(
                "key",
                "Back it up now with 'coach key back-up FILE': without it nothing can be opened.",
            )
            print(told)
        case Deed.SHOW:
            known = _public(path)
            if not known:
                raise Fault(
                    translate(
                        "faults",
                        "There is no practice key here; make one with 'coach key make'.",
                    )
                )
            for older, key in enumerate(known):
                made = (
                    translate("key", "made {day}").format(day=day(key.made_on))
                    if key.made_on
                    else translate("key", "made on an unknown day")
                )
                use = (
                    translate("key", "older, opens what was sealed for it")
                    if older
                    else translate("key", "current, for new plans")
                )
                print(f"{key.text}  {made}; {use}")
        case Deed.BACK_UP:
            backup = _named(deed, file)
            back_up(
                unlock(path, asked(translate("key", "the practice's key"))),
                backup,
                chosen(translate("key", "the backup")),
            )
            told = translate("key", "{backup}: keep it away from this machine.")
            print(told.format(backup=backup))
        case Deed.RESTORE:
            backup = _named(deed, file)
            public = restore(
                path,
                backup,
                asked(translate("key", "the backup")),
                chosen(translate("key", "the key on this machine")),
            )
            told = translate("key", "Restored {path}; the public key for new plans is")
            print(told.format(path=path))
            print(public)
        case Deed.LOCK_STORE:
            place = file or store_path()
            old = asked(translate("key", "the store now")) if is_locked(place) else None
            lock_store(place, chosen(translate("key", "the store")), old)
            told = translate(
                "key", "{place} is locked; the passphrase is asked for when it is opened."
            )
            print(told.format(place=place))
    return 0


def _public(path: Path) -> tuple[PublicKey, ...]:
    try:
        return public_keys(path)
    except Fault as fault:
        print(fault)
        unlock(path, asked(translate("key", "the practice's key")))
        return public_keys(path)


def _named(deed: Deed, file: Path | None) -> Path:
    if file is None:
        raise Fault(
            translate(
                "faults",
                "'coach key {deed}' needs the name of the backup file after it.",
            ).format(deed=deed)
        )
    return file
