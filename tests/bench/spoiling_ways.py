"""The ways in which clips are spoilt."""

from __future__ import annotations

from dataclasses import dataclass

from tests.bench.spoiling import (
    Spoil,
    arm_cut,
    backlight,
    barrel,
    evening,
    faint_arm,
    jpeg,
    light,
    mirrored,
    motion_blur,
    plain,
    second_person,
    sized,
    table,
    turned,
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Way:
    """How a clip is spoilt: picture by picture, and in time.

    ``rate_hz`` pictures a second, at ``uneven`` gaps (a quarter to almost twice the mean). The
    picture shows the ``other_arm`` than the clip, and that one is asked for.
    """

    spoil: Spoil = plain
    rate_hz: float = 6.0
    uneven: bool = False
    other_arm: bool = False


WAYS: dict[str, Way] = {
    "plain": Way(),
    "brightness halved": Way(light(0.5)),
    "brightness quartered": Way(light(0.25)),
    "brightness doubled": Way(light(2.0)),
    "window behind": Way(backlight),
    "noise 25": Way(light(1.0, 25.0)),
    "motion blur": Way(motion_blur),
    "JPEG quality 8": Way(jpeg(8)),
    "evening: all of these": Way(evening),
    "320 pixels": Way(sized(320)),
    "1920 pixels": Way(sized(1920)),
    "15 a second, uneven": Way(rate_hz=15.0, uneven=True),
    "10 a second, uneven": Way(rate_hz=10.0, uneven=True),
    "5 a second, uneven": Way(rate_hz=5.0, uneven=True),
    "rolled by 5": Way(turned(roll_deg=5.0)),
    "rolled by 10": Way(turned(roll_deg=10.0)),
    "rolled by -10": Way(turned(roll_deg=-10.0)),
    "tilted up by 10": Way(turned(up_deg=10.0)),
    "tilted down by 10": Way(turned(up_deg=-10.0)),
    "lens, k1 -0.15": Way(barrel(-0.15)),
    "lens, k1 -0.30": Way(barrel(-0.30)),
    "mirrored, the arm as seen": Way(mirrored, other_arm=True),
    "mirrored, the arm as it is": Way(mirrored),
    "arm faint, dark room": Way(faint_arm(0.3)),
    "arm all but unseen": Way(faint_arm(0.1)),
    "table edge at the hips": Way(table(0.05)),
    "table edge over the hips": Way(table(0.25)),
    "arm cut by the edge": Way(arm_cut),
    "second person": Way(second_person),
}
