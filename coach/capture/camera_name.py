"""What the system calls a camera."""

from __future__ import annotations

import sys
from pathlib import Path

_LISTED = Path("/sys/class/video4linux")


def camera_name(number: int, listed: Path = _LISTED) -> str | None:
    """Give the name of a camera by its number, None where the system does not tell.

    Only Linux says it without another library (kernel documentation, Video4Linux devices).
    """
    if not sys.platform.startswith("linux"):
        return None
    try:
        text = (listed / f"video{number}" / "name").read_text("utf-8", errors="replace")
    except OSError:
        return None
    return "".join(c for c in text.strip() if c.isprintable())[:200] or None
