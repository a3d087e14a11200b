"""What an error of the disk means to a person."""

from __future__ import annotations

import errno
from pathlib import Path

from coach.domain.fault import Fault


def disk_fault(error: OSError, path: Path, doing: str) -> Fault:
    """Give the sentence for ``error`` while ``doing`` (as in 'saved') something to ``path``."""
    start = f"{path.name} could not be {doing}"
    match error.errno:
        case errno.ENOSPC | errno.EDQUOT:
            return Fault(f"{start}: the disk of {path.parent} is full; free some space there.")
        case errno.EACCES | errno.EPERM | errno.EROFS:
            return Fault(f"{start}: {path.parent} may not be written to; choose another folder.")
        case errno.ENOENT:
            return Fault(f"{start}: {path} is not there; look whether it was moved or removed.")
        case errno.ENOTDIR | errno.EISDIR:
            return Fault(f"{start}: {path} is not a file in a folder; choose another place.")
        case errno.ENAMETOOLONG:
            return Fault(f"{start}: its name is too long; choose a shorter one.")
        case errno.EIO | errno.ENXIO | errno.ENODEV:
            return Fault(f"{start}: the disk of {path.parent} failed; choose another disk.")
        case _:
            reason = error.strerror or "no reason given"
            return Fault(f"{start} in {path.parent} ({reason}); try another folder.")
