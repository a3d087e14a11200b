"""Random but reproducible clips for the benchmark."""

from __future__ import annotations

from dataclasses import dataclass, replace
from zlib import crc32

import numpy as np

from tests.bench import people
from tests.bench.hardening import harden
from tests.bench.motion import Repetition, Script
from tests.bench.reaching import Reach
from tests.bench.scene import (
    LYING,
    Camera,
    Door,
    Room,
    draw_camera,
    draw_door_camera,
    draw_lens,
    draw_lying_camera,
    draw_room,
)
from tests.bench.spec import ClipSpec, Manner
from tests.bench.truth import BEHIND_BACK

SETS: dict[str, tuple[people.Person, ...]] = {
    "tuning": people.TUNING,
    "judging": people.JUDGING,
}


@dataclass(frozen=True, slots=True)
class Combo:
    """A movement in a position before a view, and how far it goes.

    Of a hand behind the back in per cent: 100 (1 - reach ratio).
    """

    movement: str
    position: str
    view: str
    peaks_deg: tuple[float, float]

    @property
    def name(self) -> str:
        """As on the command line."""
        return f"{self.movement}:{self.position}:{self.view}"


COMBOS: tuple[Combo, ...] = (
    Combo("flexion", "standing", "side", (60, 165)),
    Combo("extension", "standing", "side", (15, 55)),
    Combo("abduction", "standing", "front", (55, 160)),
    Combo("external-rotation-0", "standing", "front", (5, 70)),
    Combo("external-rotation-90", "standing", "side", (20, 85)),
    Combo("flexion", "supine", "side", (70, 170)),
    Combo("external-rotation-0", "supine", "foot", (5, 70)),
    Combo("external-rotation-90", "supine", "side", (15, 85)),
    Combo("horizontal-adduction", "standing", "front", (60, 132)),
    Combo("horizontal-adduction", "supine", "foot", (60, 132)),
    Combo("hand-behind-back", "standing", "back", (5, 65)),
    Combo("external-rotation-0", "doorway", "front", (20, 75)),
    Combo("flexion", "sitting", "side", (60, 165)),
    Combo("abduction", "sitting", "front", (55, 160)),
    Combo("external-rotation-0", "sitting", "front", (5, 70)),
    Combo("external-rotation-90", "sitting", "side", (20, 85)),
    Combo("horizontal-adduction", "sitting", "front", (60, 132)),
    Combo("hand-behind-back", "sitting", "back", (5, 65)),
    Combo("extension", "prone", "side", (8, 45)),
    Combo("hand-behind-back", "prone", "foot", (5, 65)),
    Combo("abduction", "standing", "back", (55, 160)),
    Combo("abduction", "sitting", "back", (55, 160)),
    Combo("extension", "sitting", "side", (12, 50)),
)
RESTS_DEG = {
    "external-rotation-0": (-35, 0),
    "external-rotation-90": (-35, 0),
    "horizontal-adduction": (-15, 40),
    BEHIND_BACK: (-35, -3),
}
FOUNDING = 5
"""So many combinations keep the seeds they always had."""


def draw(
    which: str,
    combo: Combo,
    number: int,
    seconds: float,
    fps: float,
    hard: bool = False,
    retake: int = 0,
) -> ClipSpec:
    """Give clip ``number`` of a combination in a set; people and arms take turns.

    ``hard`` draws other movements and makes them difficult. ``retake`` 1, 2 ... is the same clip
    with the camera in another place.
    """
    start = COMBOS.index(combo)
    key = combo.movement if start < FOUNDING else combo.name
    key = f"{which}/{key}/{number}" + ("/hard" if hard else "")
    seed = crc32(key.encode())
    rng = np.random.default_rng(seed)
    person = _member(which, number, start)
    side = ("right", "left")[(number + start) % 2]
    script = _script(combo, rng, seconds)
    camera = draw_camera(rng)
    room = replace(draw_room(rng), position=combo.position)
    lens = draw_lens(rng)
    manner = _manner(combo.movement, rng)
    manner = _further(combo, manner, rng)
    if manner.reach is not None:
        # Over a loose shirt, not in it.
        over_m = person.outfit.loose_mm / 1000 + 0.02 if person.outfit.loose_mm > 18 else 0.0
        reach = replace(manner.reach, behind_m=max(manner.reach.behind_m, over_m))
        manner = replace(manner, reach=reach)
    if combo.position in LYING:
        support_m = float(rng.choice([0.02, round(float(rng.uniform(0.3, 0.5)), 2)]))
        gap_m = round(room.wall_gap_m + 0.75, 2)
        room = replace(room, support_m=support_m, wall_gap_m=gap_m)
        manner = _lying(combo, manner, rng)
        hidden = combo.position == "prone" or manner.hips_deg > 0.0
        camera = draw_lying_camera(rng, combo.view, support_m, hidden)
    door = None
    if combo.position == "doorway":
        camera = draw_door_camera(rng)
        door = Door(
            round(float(rng.uniform(0, 30)), 1),
            round(float(rng.uniform(0.035, 0.07)), 3),
            round(float(rng.uniform(0.08, 0.14)), 3),
        )
        # The trunk turns away from the arm, with the feet and in itself.
        manner = replace(manner, twist_deg=-manner.twist_deg)
    if combo.position == "sitting":
        in_the_way = combo.view == "back" or combo.movement == "extension"
        backrest = not in_the_way and rng.random() < 0.5
        room = replace(room, backrest=bool(backrest))
        manner = _sitting(manner, rng)
    if retake:
        again = np.random.default_rng(crc32(f"{key}/r{retake}".encode()))
        camera = _moved(combo, camera, room, manner, again)
    name = f"{combo.name.replace(':', '_')}_{side}_{number:02d}_{person.name}"
    spec = ClipSpec(
        name=name + ("_hard" if hard else "") + (f"_r{retake}" if retake else ""),
        person=person.name,
        movement=combo.movement,
        side=side,
        view=combo.view,
        seed=seed,
        fps=fps,
        camera=camera,
        room=room,
        lens=lens,
        manner=manner,
        script=script,
        position=combo.position,
        door=door,
    )
    return harden(spec, SETS[which], np.random.default_rng([seed, 1])) if hard else spec


def _moved(
    combo: Combo, camera: Camera, room: Room, manner: Manner, rng: np.random.Generator
) -> Camera:
    """Put the same camera somewhere else."""
    size_px = (camera.width_px, camera.height_px)
    if combo.position in LYING:
        hidden = combo.position == "prone" or manner.hips_deg > 0.0
        return draw_lying_camera(
            rng, combo.view, room.support_m, hidden, size_px, fov_deg=camera.fov_deg
        )
    if combo.position == "doorway":
        return draw_door_camera(rng, size_px, fov_deg=camera.fov_deg)
    return draw_camera(rng, size_px, fov_deg=camera.fov_deg)


def _member(which: str, number: int, start: int) -> people.Person:
    """Everybody's turn: the founders of the list, then the others, and round again."""
    members, first = SETS[which], people.FOUNDERS[which]
    place = number % len(members)
    if place < first:
        return members[(place + 2 * start) % first]
    return members[first + (place - first + start) % (len(members) - first)]


def _script(combo: Combo, rng: np.random.Generator, seconds: float) -> Script:
    low, high = combo.peaks_deg
    count = int(rng.integers(2, 4))
    low_rest, high_rest = RESTS_DEG.get(combo.movement, (0, 4))
    if combo.position == "doorway":
        low_rest, high_rest = -10, 10
    rest_deg = float(rng.uniform(low_rest, high_rest))
    # Ends of range spread over the whole span, so that a set covers it.
    peaks = low + (high - low) * ((rng.random() + np.arange(count) / count) % 1.0)
    moving_s = [(float(rng.uniform(1.3, 2.6)), float(rng.uniform(1.2, 2.2))) for _ in peaks]
    rests_s = [float(rng.uniform(0.8, 1.6)) for _ in peaks]
    left_s = seconds - 1.0 - sum(a + b for a, b in moving_s) - sum(rests_s)
    shares = rng.uniform(0.7, 1.3, count)
    holds_s = np.maximum(left_s * shares / shares.sum() + 0.6, 2.3)
    return Script(
        rest_deg,
        tuple(
            Repetition(
                round(float(peak), 2), round(float(hold_s), 2), raise_s, return_s, rest_s,
                creep_deg=float(rng.uniform(-0.3, 1.2)),
                pause_s=float(rng.choice([0.0, 0.0, 0.0, 0.8])),
            )
            for peak, hold_s, (raise_s, return_s), rest_s in zip(
                peaks, holds_s, moving_s, rests_s, strict=True
            )
        ),
        tail_s=1.0,
    )  # fmt: skip


def _manner(movement: str, rng: np.random.Generator) -> Manner:
    def some(scale: float, chance: float = 0.6) -> float:
        return float(abs(rng.normal(0, scale))) if rng.random() < chance else 0.0

    rotating = movement.startswith("external-rotation")
    back = -1.0 if movement in ("flexion", "abduction") else 1.0
    return Manner(
        hike_deg=min(some(7.0), 16.0),
        lean_deg=back * min(some(5.0), 12.0) * (0.3 if rotating else 1.0),
        side_lean_deg=min(some(5.0), 12.0) * (1.0 if movement == "abduction" else 0.4),
        twist_deg=min(some(6.0), 15.0),
        away_deg=float(rng.uniform(4, 14)) if movement != "abduction" else rng.uniform(0, 18),
        away_change_deg=float(rng.uniform(-8, 6)) if not rotating else 0.0,
        elbow_deg=float(rng.uniform(82, 98)) if rotating else float(rng.uniform(4, 18)),
        forward_deg=float(rng.uniform(-4, 8)) if rotating else 0.0,
        sway_deg=float(rng.uniform(0.4, 1.0)),
        breath_deg=float(rng.uniform(0.4, 0.9)),
        wobble_deg=float(rng.uniform(0.3, 0.8)),
        yaw_deg=float(np.clip(rng.normal(0, 4), -8, 8)),
    )


def _further(combo: Combo, manner: Manner, rng: np.random.Generator) -> Manner:
    """What only the later movements have."""
    if combo.movement == "horizontal-adduction":
        return replace(
            manner,
            lean_deg=0.4 * manner.lean_deg,
            twist_deg=-0.8 * manner.twist_deg,
            away_deg=round(float(rng.uniform(-12, 10)), 2),
            elbow_deg=round(float(rng.choice([rng.uniform(6, 30), rng.uniform(30, 100)])), 1),
            helps=bool(rng.random() < 0.5),
            drop_deg=round(float(rng.choice([0.0, rng.uniform(5, 35)])), 1),
        )
    if combo.movement == BEHIND_BACK:
        reach = Reach(
            1.0,
            aside_m=round(float(rng.uniform(0.0, 0.08)), 3),
            behind_m=round(float(rng.uniform(0.03, 0.06)), 3),
            back_share=round(float(rng.uniform(0.15, 0.5)), 2),
            down_share=round(float(rng.uniform(0.3, 1.0)), 2),
            out_deg=round(float(rng.uniform(5, 12)), 1),
        )
        return replace(manner, lean_deg=0.8 * manner.lean_deg, reach=reach)
    return manner


def _lying(combo: Combo, manner: Manner, rng: np.random.Generator) -> Manner:
    """The support keeps the trunk still; a pillow lifts the head; knees are bent or straight."""
    bent = combo.position == "supine" and rng.random() < (0.25 if combo.view == "foot" else 0.5)
    still = replace(
        manner,
        lean_deg=0.4 * manner.lean_deg,
        twist_deg=0.4 * manner.twist_deg,
        sway_deg=0.0,
        nod_deg=round(
            float(rng.uniform(12, 32) if combo.view == "foot" else rng.uniform(0, 16)), 1
        ),
        hips_deg=round(float(rng.uniform(38, 56)), 1) if bent else 0.0,
    )
    if combo.position == "prone":
        look_deg = float(rng.choice([-1.0, 1.0]) * rng.uniform(45, 70))
        return replace(still, nod_deg=0.0, look_deg=round(look_deg, 1))
    return still


def _sitting(manner: Manner, rng: np.random.Generator) -> Manner:
    return replace(
        manner,
        sway_deg=0.0,
        hips_deg=round(float(rng.uniform(78, 92)), 1),
        shins_deg=round(float(rng.uniform(-6, 14)), 1),
        thighs_apart_deg=round(float(rng.uniform(2, 16)), 1),
        slouch_deg=round(float(rng.uniform(-2, 12)), 1),
    )
