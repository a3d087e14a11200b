"""Everything a clip follows from."""

from __future__ import annotations

from dataclasses import dataclass

from tests.bench.gesturing import Act
from tests.bench.motion import Script
from tests.bench.reaching import Reach
from tests.bench.scene import Block, Bystander, Camera, Door, Lens, Room


@dataclass(frozen=True, slots=True)
class Manner:
    """How this person does it: deviations at the end of range, and restlessness throughout.

    ``hike``, lean (forward), side lean (away), twist (shoulder backward) and the ``..._change_deg``
    grow with the movement.
    All the time ``hips_deg`` bends the hips of somebody lying or sitting, ``nod_deg`` and
    ``look_deg`` turn the neck, ``slouch_deg`` bends the trunk forward, and ``shins_deg`` and
    ``thighs_apart_deg`` are those of somebody sitting.
    Across the body the other hand ``helps``, and between repetitions the arm sinks by
    ``drop_deg``. ``reach`` is how the hand goes behind the back.
    """

    hike_deg: float = 0.0
    lean_deg: float = 0.0
    side_lean_deg: float = 0.0
    twist_deg: float = 0.0
    away_deg: float = 9.0
    away_change_deg: float = 0.0
    elbow_deg: float = 9.0
    elbow_change_deg: float = 0.0
    forward_deg: float = 0.0
    sway_deg: float = 0.7
    breath_deg: float = 0.5
    wobble_deg: float = 0.6
    yaw_deg: float = 0.0
    rhythm: float = 1.0
    hips_deg: float = 0.0
    nod_deg: float = 0.0
    look_deg: float = 0.0
    slouch_deg: float = 0.0
    shins_deg: float = 0.0
    thighs_apart_deg: float = 0.0
    helps: bool = False
    drop_deg: float = 0.0
    reach: Reach | None = None


@dataclass(frozen=True, slots=True)
class ClipSpec:
    """Everything a clip follows from. ``script`` is None for everyday movement.

    For a hand behind the back the script's degrees are per cent of 1 - reach ratio. ``blocks``
    stand before the person; ``troubles`` names what was made difficult on purpose; ``gestures``
    is what the other hand does.
    """

    name: str
    person: str
    movement: str
    side: str
    view: str
    seed: int
    fps: float
    camera: Camera
    room: Room
    lens: Lens
    manner: Manner
    script: Script | None
    everyday_s: float = 20.0
    position: str = "standing"
    door: Door | None = None
    blocks: tuple[Block, ...] = ()
    bystander: Bystander | None = None
    troubles: tuple[str, ...] = ()
    gestures: tuple[Act, ...] = ()
