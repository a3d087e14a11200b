"""A thread that, when it is woken, does not push another off the core it runs on."""

from __future__ import annotations

import os
import sys


def give_way() -> None:
    """Have the calling thread wait for a free core, where the system can be told so (Linux).

    Threads that it starts from then on do too. Elsewhere, where that is forbidden, and on a single
    core, which never is free, nothing changes.
    """
    if sys.platform == "linux" and len(os.sched_getaffinity(0)) > 1:
        try:
            os.sched_setscheduler(0, os.SCHED_BATCH, os.sched_param(0))
        except OSError:
            return
