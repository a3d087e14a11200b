"""Reasons not to believe a fitted body: points that it misses, or an arm that moves otherwise."""

from __future__ import annotations

import math

from coach.domain.reading import Doubt
from coach.goniometry.evidence import Evidence
from coach.goniometry.expectation import Expectation
from coach.goniometry.fitting import Fit
from coach.goniometry.skeleton import ELBOW, NEAR_SHOULDER, WRIST

MAX_MISFIT = 4.0
"""Standard deviations by which a point of the arm may miss the fitted body."""
MIN_POINTING = 0.7
"""Cosine of the angle by which a rotating upper arm may point elsewhere: 45 degrees."""
BENT_DEG = 30.0
MAX_OUT_DEG, MAX_METRIC_OUT_DEG = 20.0, 38.0
"""How far a raised straight arm may leave its plane of movement, from where people hold it: by the
fitted body, which expects it there, and by the metric points. Tuning people reach 14 and 31."""


def contradiction(fit: Fit, evidence: Evidence, row: int, expectation: Expectation) -> Doubt | None:
    """Name why the fitted body of a frame is not believed, None if it is."""
    if max(fit.misfit[row, [NEAR_SHOULDER, ELBOW, WRIST]]) > MAX_MISFIT:
        return Doubt.UNSURE
    pointing = expectation.upper_arm
    if pointing is not None and fit.stance.upper_arm[row] @ pointing < MIN_POINTING:
        return Doubt.OTHER_MOVEMENT
    if len(expectation.planes) == 1 and expectation.elbow.mean_deg < BENT_DEG:
        normal, usual_deg = expectation.normals[0], expectation.planes[0].mean_deg
        fitted = float(fit.stance.upper_arm[row] @ normal)
        metric = float(evidence.trunk[row].T @ evidence.upper_arm[row] @ normal)
        for out, limit_deg in ((fitted, MAX_OUT_DEG), (metric, MAX_METRIC_OUT_DEG)):
            if abs(math.degrees(math.asin(max(-1.0, min(1.0, out)))) - usual_deg) > limit_deg:
                return Doubt.OTHER_MOVEMENT
    return None
