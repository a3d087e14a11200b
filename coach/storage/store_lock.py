"""The lock of the therapist's store: every page encrypted and authenticated by SQLCipher.

The key is derived from the passphrase with SQLCipher's own settings (PBKDF2-HMAC-SHA512, 256,000
rounds, a random salt in the file: https://www.zetetic.net/sqlcipher/design). The write-ahead log is
encrypted like the file; temporary tables stay in memory.
"""

from __future__ import annotations

import contextlib
import glob
from pathlib import Path
from typing import Any

import sqlcipher3.dbapi2 as sqlcipher
from sqlalchemy import Engine, create_engine

from coach.domain.fault import Fault
from coach.storage.atomic import PART_SUFFIX, sync_file, sync_folder
from coach.storage.disk_fault import disk_fault
from coach.storage.passphrase import new_passphrase, normal_passphrase
from coach.texts import translate

BACKUP_SUFFIX = ".backup"
"""Ends the name of a copy that is made before an upgrade."""
_PLAIN = b"SQLite format 3\x00"
_WRONG = "file is not a database"


def is_locked(path: Path) -> bool:
    """Whether the file at ``path`` needs a passphrase; a file that is not there does not."""
    try:
        with path.open("rb") as file:
            beginning = file.read(len(_PLAIN))
    except FileNotFoundError:
        return False
    except OSError as error:
        raise disk_fault(error, path, "opened") from error
    return beginning not in (b"", _PLAIN)


def locked_engine(path: Path, passphrase: str, timeout_s: float) -> Engine:
    """Give an engine on a locked store; a file that is empty so far begins locked.

    Raises Fault on a wrong passphrase and on a store that is not locked.
    """
    if path.stat().st_size == 0:
        used = new_passphrase(passphrase)
    elif is_locked(path):
        used = normal_passphrase(passphrase)
    else:
        raise Fault(
            translate(
                "faults",
                "The store at {path} is not locked: open it without a passphrase.",
            ).format(path=path)
        )

    def connect() -> Any:
        connection = sqlcipher.connect(str(path), timeout=timeout_s, check_same_thread=False)
        _give_key(connection, used)
        return connection

    with contextlib.closing(connect()) as connection:
        _try(connection, path)
    return create_engine(f"sqlite:///{path}", module=sqlcipher, creator=connect)


def lock_store(path: Path, passphrase: str, old_passphrase: str | None = None) -> None:
    """Lock a store that no program has open, or give a locked one another passphrase.

    Close it here first: two SQLite libraries in one process do not see each other's locks
    (https://www.sqlite.org/howtocorrupt.html, 2.2.1). Another process that has it open is noticed.

    Copies beside it that an upgrade made while it was readable are locked as well; those that
    were locked keep the passphrase they had. A locked file is whole on the disk before it takes
    the other's place; after a crash the store is as it was. What lay readable on the disk before
    may be found there until the disk uses its place again.
    """
    used = new_passphrase(passphrase)
    if not path.exists():
        raise Fault(
            translate(
                "faults",
                "There is no store at {path} to lock; open it once to make it.",
            ).format(path=path)
        )
    if is_locked(path) != (old_passphrase is not None):
        told = (
            translate(
                "faults", "The store at {path} is locked already; look which passphrase is meant."
            )
            if is_locked(path)
            else translate(
                "faults",
                "The store at {path} is not locked already; look which passphrase is meant.",
            )
        )
        raise Fault(told.format(path=path))
    for copy in sorted(path.parent.glob(f"{glob.escape(path.name)}.*{BACKUP_SUFFIX}")):
        if not is_locked(copy):
            _lock(copy, used, None)
    _lock(path, used, old_passphrase)


def _lock(path: Path, used: str, old_passphrase: str | None) -> None:
    part = path.with_name(f".{path.name}{PART_SUFFIX}")
    try:
        part.unlink(missing_ok=True)
        part.touch(mode=0o600)
        _copy_locked(path, old_passphrase, part, used)
        _read_back(part, used)
        sync_file(part)
        part.replace(path)
        sync_folder(path.parent)
    except sqlcipher.Error as error:
        raise Fault(
            translate(
                "faults",
                "The store at {path} could not be locked ({error}) and is as it was: "
                "close every other program that has it open, see that there is room for"
                " a copy, and try again.",
            ).format(path=path, error=error)
        ) from error
    except OSError as error:
        raise disk_fault(error, path, "locked") from error
    finally:
        with contextlib.suppress(OSError):
            part.unlink(missing_ok=True)


def _copy_locked(path: Path, old_passphrase: str | None, part: Path, used: str) -> None:
    with contextlib.closing(sqlcipher.connect(str(path), isolation_level=None)) as connection:
        if old_passphrase is not None:
            _give_key(connection, normal_passphrase(old_passphrase))
            _try(connection, path)
        # Ends the write-ahead log, which no other file then has to follow; refused while another
        # program has the store open.
        connection.execute("PRAGMA journal_mode = DELETE").fetchall()
        connection.execute("PRAGMA locking_mode = EXCLUSIVE").fetchall()
        connection.execute("BEGIN EXCLUSIVE")
        connection.execute("COMMIT")
        connection.execute("ATTACH DATABASE ? AS locked KEY ?", (str(part), used))
        connection.execute("SELECT sqlcipher_export('locked')").fetchall()
        connection.execute("DETACH DATABASE locked")


def _read_back(part: Path, used: str) -> None:
    with contextlib.closing(sqlcipher.connect(str(part))) as connection:
        _give_key(connection, used)
        authentic = connection.execute("PRAGMA cipher_integrity_check").fetchall() == []
        whole = connection.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
        if not (authentic and whole):
            raise sqlcipher.DatabaseError(translate("faults", "the copy does not read back"))


def _give_key(connection: Any, used: str) -> None:
    # A wrong passphrase is no matter for the terminal.
    connection.execute("PRAGMA cipher_log_level = NONE").fetchall()
    quoted = used.replace("'", "''")
    # The pragma takes no bound value, and refuses an empty one, which opens nothing anyway.
    connection.execute(f"PRAGMA key = '{quoted or ' '}'").fetchall()


def _try(connection: Any, path: Path) -> None:
    try:
        connection.execute("SELECT count(*) FROM sqlite_master").fetchall()
    except sqlcipher.DatabaseError as error:
        if _WRONG in str(error):
            raise Fault(
                translate(
                    "faults",
                    "The store at {path} does not open: type the passphrase again, and "
                    "if it is right the file is damaged, so put a backup copy in its "
                    "place.",
                ).format(path=path)
            ) from error
        raise Fault(
            translate(
                "faults",
                "The store at {path} cannot be opened ({error}): close every other "
                "program that has it open, and try again.",
            ).format(path=path, error=error)
        ) from error
