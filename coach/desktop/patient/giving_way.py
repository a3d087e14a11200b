"""A thread that, when it is woken, does not push another off the core it runs on."""

from __future__ import annotations

import os
import sys


def give_way() -> None:
    """Have the calling thread wait for a free core, where the system can be told so (Linux).

    Threads that it starts from then on do too. Elsewhere, and where that is forbidden, nothing
    changes.
    """
    if sys.platform == "linux":
        try:
            os.sched_setscheduler(0, os.SCHED_BATCH, os.sched_param(0))
        except OSError:
            return
