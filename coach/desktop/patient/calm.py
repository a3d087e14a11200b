"""What fills while somebody waits: smoothly, or in steps for who would rather see nothing move."""

from __future__ import annotations

import math

from coach.desktop.shared.looks import looks

STEP_S = 5.0
"""Time shown in steps changes so often: a flash a second would be more movement, not less."""
STEPS = 4


def seconds_shown(remaining_s: float) -> float:
    """Give the seconds that are left, where nothing moves the whole step that is begun."""
    return math.ceil(remaining_s / STEP_S) * STEP_S if looks().still else remaining_s


def share_shown(share: float) -> float:
    """Give a share that fills, where nothing moves the steps that are done."""
    return math.floor(share * STEPS) / STEPS if looks().still else share
