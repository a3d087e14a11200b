"""What an error of the disk means to a person."""

from __future__ import annotations

import errno
from pathlib import Path

from coach.domain.fault import Fault
from coach.texts import translate


def disk_fault(error: OSError, path: Path, doing: str) -> Fault:
    """Give the sentence for ``error`` while ``doing`` (as in 'saved') something to ``path``."""
    return Fault(f"{_what(path.name, doing)}: {_why(error, path)}")


def _what(name: str, doing: str) -> str:
    told = {
        "saved": translate("faults", "{name} could not be saved"),
        "made": translate("faults", "{name} could not be made"),
        "read": translate("faults", "{name} could not be read"),
        "read back": translate("faults", "{name} could not be read back"),
        "opened": translate("faults", "{name} could not be opened"),
        "locked": translate("faults", "{name} could not be locked"),
        "begun": translate("faults", "{name} could not be begun"),
        "written": translate("faults", "{name} could not be written"),
        "recovered": translate("faults", "{name} could not be recovered"),
    }
    return told[doing].format(name=name)


def _why(error: OSError, path: Path) -> str:
    match error.errno:
        case errno.ENOSPC | errno.EDQUOT:
            told = translate("faults", "the disk of {folder} is full; free some space there.")
        case errno.EACCES | errno.EPERM | errno.EROFS:
            told = translate("faults", "{folder} may not be written to; choose another folder.")
        case errno.ENOENT:
            told = translate("faults", "{path} is not there; look whether it was moved or removed.")
        case errno.ENOTDIR | errno.EISDIR:
            told = translate("faults", "{path} is not a file in a folder; choose another place.")
        case errno.ENAMETOOLONG:
            told = translate("faults", "its name is too long; choose a shorter one.")
        case errno.EIO | errno.ENXIO | errno.ENODEV:
            told = translate("faults", "the disk of {folder} failed; choose another disk.")
        case _:
            told = translate(
                "faults", "the folder {folder} does not let it ({reason}); try another."
            )
    reason = error.strerror or translate("faults", "no reason given")
    return told.format(folder=path.parent, path=path, reason=reason)
