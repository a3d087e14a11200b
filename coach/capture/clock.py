"""The clock of capture: it never goes back, and runs on while the machine sleeps."""

from __future__ import annotations

import time

_THROUGH_SLEEP: int | None = getattr(time, "CLOCK_BOOTTIME", getattr(time, "CLOCK_MONOTONIC", None))
"""Linux has the first, macOS the second, which goes on asleep there; Windows has neither."""


def steady_s() -> float:
    """Read it, in seconds from an arbitrary instant.

    ``time.monotonic`` stands still while Linux or macOS sleeps: a rest would still run after it,
    and a hold seem unbroken. Windows counts the sleep by itself.
    """
    return time.monotonic() if _THROUGH_SLEEP is None else time.clock_gettime(_THROUGH_SLEEP)
