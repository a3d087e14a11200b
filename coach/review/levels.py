"""How high a hand behind the back reaches, in words: a band of vertebrae, never one.

A stored value is the height of the wrist joint as a share of the line from C7 (0) to the posterior
superior iliac spines (1). People speak of the vertebra that the tip of the thumb reaches, so that
is what is told, wide enough for what the wrist does not show.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from dataclasses import dataclass

from coach.texts import translate

LEVELS: tuple[tuple[str, float], ...] = (
    ("C7", 0.0),
    ("T1", 0.049),
    ("T2", 0.101),
    ("T3", 0.155),
    ("T4", 0.210),
    ("T5", 0.269),
    ("T6", 0.331),
    ("T7", 0.390),
    ("T8", 0.442),
    ("T9", 0.490),
    ("T10", 0.541),
    ("T11", 0.596),
    ("T12", 0.654),
    ("L1", 0.709),
    ("L2", 0.761),
    ("L3", 0.812),
    ("L4", 0.861),
    ("L5", 0.909),
    ("S1", 0.955),
    ("PSIS", 1.0),
)
"""Share of the way from C7 to the posterior superior iliac spines at which a spinous process lies:
T4, T7, T10, L1 and L4 measured on 22 people, the others interpolated (Ernst et al. 2013, BMC Res
Notes 6:58)."""

MEASURED_LEVELS = tuple(
    level for level in LEVELS if level[0] in ("C7", "T4", "T7", "T10", "L1", "L4", "PSIS")
)
"""Those that were measured, and the two ends."""
BACK_OF_HEIGHT = 0.30
"""The whole line as a share of body height: 50.9 cm (SD 3.5, the same 22 people) of 1.70 m, which
is our choice."""
HAND_OF_HEIGHT = 0.108
"""Length of the hand (Drillis & Contini 1966, in Winter, Biomechanics and Motor Control of Human
Movement; from memory)."""
THUMB_OF_HAND = 2 / 3
"""Wrist to tip of the thumb, which points up along the spine as the cue asks (common practice)."""
THUMB = THUMB_OF_HAND * HAND_OF_HEIGHT / BACK_OF_HEIGHT
"""How much further up than the wrist the thumb's tip is, as a share of the line: 0.24."""
THUMB_UP, THUMB_ACROSS = 0.9, 1.1
"""A wrist up to the first can have its thumb along the spine; from the second on, well below the
spines of the pelvis, the hand lies across or hangs, and the thumb is no higher. Our choice."""
BUTTOCK = 1.2
"""Down to here the hand is on the buttock, beyond at the side of the thigh: of an arm that hangs
the wrist is at about 1.3 (0.485 of body height, as for the hand; PSIS at 0.57, our estimate)."""


@dataclass(frozen=True, slots=True)
class Band:
    """Where the thumb's tip may be: from ``high``, nearer to the head, down to ``low``.

    ``top`` and ``bottom`` are the same as shares of the line from C7 to the PSIS.
    """

    high: str
    low: str
    top: float
    bottom: float

    @property
    def short(self) -> str:
        """Write it where there is little room: T10-L1 with a true dash."""
        return self.high if self.high == self.low else f"{self.high}\N{EN DASH}{self.low}"

    @property
    def words(self) -> str:
        """Write it in a sentence: about T10 to L1."""
        if self.high == self.low:
            return self.high
        return translate("review", "about {high} to {low}").format(high=self.high, low=self.low)


def thumb_ratio(wrist_ratio: float) -> float:
    """Give the height of the thumb's tip, as a share of the line, from that of the wrist."""
    share = (THUMB_ACROSS - wrist_ratio) / (THUMB_ACROSS - THUMB_UP)
    return wrist_ratio - THUMB * min(1.0, max(0.0, share))


def reach_band(wrist_ratio: float, error_ratio: float) -> Band:
    """Give the levels that the thumb's tip reaches: the nearest one with its neighbours, or more.

    ``error_ratio`` is the half width of the wrist's 95 % interval; the band takes all of it in.
    Below the spines of the pelvis there are only two broad names.
    """
    thumb = thumb_ratio(wrist_ratio)
    buttock = translate("review", "buttock")
    if thumb > BUTTOCK:
        thigh = translate("review", "side of the thigh")
        return Band(thigh, thigh, BUTTOCK, thumb)
    if thumb > 1.0:
        return Band(buttock, buttock, 1.0, BUTTOCK)
    shares = [share for _, share in LEVELS]
    nearest = min(range(len(LEVELS)), key=lambda i: abs(shares[i] - thumb))
    high = bisect_right(shares, thumb_ratio(wrist_ratio - error_ratio)) - 1
    low = bisect_left(shares, thumb_ratio(wrist_ratio + error_ratio))
    top, top_share = LEVELS[max(0, min(high, nearest - 1))]
    bottom, bottom_share = (*LEVELS, (buttock, BUTTOCK))[min(max(low, nearest + 1), len(LEVELS))]
    return Band(top, bottom, top_share, bottom_share)
