"""Lengths of the drawn person as shares of stature.

Segment lengths are those of Drillis and Contini (1966) as given in Winter, Biomechanics and Motor
Control of Human Movement, figure 4.1 (from memory). Thicknesses are our own, for the looks.
"""

from __future__ import annotations

UPPER_ARM = 0.186
FOREARM = 0.146
HAND = 0.108
THIGH = 0.245
SHANK = 0.246
ANKLE_HEIGHT = 0.039
FOOT = 0.152
SHOULDER_HEIGHT = 0.818
HIP_HEIGHT = 0.530
TRUNK = SHOULDER_HEIGHT - HIP_HEIGHT
"""Hip centres to shoulder centres."""
CHIN_HEIGHT = 0.870
SHOULDER_HALF = 0.116
"""Midline to a shoulder centre: half of the biacromial breadth, 0.129, less the bone outside."""
HIP_HALF = 0.050
"""Midline to a hip centre; our own, where the thighs of a standing figure nearly touch."""

HEAD_RADIUS = 0.072
HEAD_ABOVE_SHOULDERS = CHIN_HEIGHT - SHOULDER_HEIGHT + 0.062

FIST = 0.62
"""Share of the hand's length that a half closed hand takes."""
HALF_DEPTH = 0.055
"""From the line of the shoulder and hip centres to the back or belly."""
