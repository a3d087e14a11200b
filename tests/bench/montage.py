"""One compensation after the other in one recording, and what is told of each.

    python -m tests.bench.montage FOLDER --set tuning --count 11
    python -m tests.bench.montage FOLDER --score

A person comes to the end of outward rotation, facing the camera, and does there nothing, one thing
after another, and nothing again; nothing else tells people and places apart. Scored is the form of
each stretch, its first half second left out, as of a repetition: the first is what is usual.
"""

from __future__ import annotations

import argparse
import json
import sys
from collections import defaultdict
from dataclasses import replace
from pathlib import Path
from typing import Any

import numpy as np

from coach.domain.form import FormFault
from coach.form import Usual, default_limits, faults_of
from tests.bench import body as bodies
from tests.bench import clip, deliberate, drawing_lots, posing
from tests.bench.motion import Repetition, Script
from tests.bench.people import ALL
from tests.bench.spec import ClipSpec
from tests.bench.staging import put_camera
from tests.bench.tracking import landmark_set

COMBO = "external-rotation-0:standing:front"
ACTS = (
    ("clean", 0.0), ("turn", 15.0), ("drift", 15.0), ("hike", 12.0), ("lean", 15.0),
    ("feet", 15.0), ("clean", 0.0),
)  # fmt: skip
"""Degrees; with ``feet`` the whole body turns like the trunk in ``turn``."""
REST_S, RISE_S, CHANGE_S, STAY_S, SETTLED_S = 2.2, 1.4, 0.8, 1.4, 0.4
FAULT = {
    "turn": FormFault.TURN,
    "feet": FormFault.TURN,
    "drift": FormFault.DRIFT,
    "hike": FormFault.HIKE,
    "lean": FormFault.LEAN,
}


def take_of(
    which: str, number: int, fps: float
) -> tuple[clip.Take, list[tuple[str, float, float]]]:
    """Pose a person doing one act after the other; give the stretches (act, from, to), seconds."""
    combo = next(c for c in drawing_lots.COMBOS if c.name == COMBO)
    spec = deliberate.only(drawing_lots.draw(which, combo, number, 11.0, fps), "clean", 0.0)
    knots_s, stretches = [0.0, REST_S + RISE_S], list[tuple[str, float, float]]()
    for kind, _ in ACTS:
        began_s = knots_s[-1] + (CHANGE_S if stretches else 0.0)
        stretches.append((kind, began_s, began_s + STAY_S))
        knots_s += [began_s, began_s + STAY_S]
    spec = replace(spec, script=_script(spec, knots_s[-1]))
    times_s = np.arange(round(knots_s[-1] * fps) + 1) / fps
    body = bodies.load(ALL[spec.person])
    done = {
        kind: np.interp(
            times_s, knots_s, [0.0, 0.0, *(d * (k == kind) for k, d in ACTS for _ in range(2))]
        )
        for kind, _ in ACTS
    }
    posed = tuple(
        posing.stand(
            body,
            spec.side,
            *_doing(spec, arm, other, stance, {k: float(v[i]) for k, v in done.items()}),
        )
        for i, (arm, other, stance) in enumerate(clip.moments(spec, times_s, body))
    )
    return clip.Take(spec, put_camera(spec, body, posed), times_s, posed), stretches


def _script(spec: ClipSpec, until_s: float) -> Script:
    assert spec.script is not None
    peak_deg = max((rep.peak_deg for rep in spec.script.repetitions), key=abs)
    once = Repetition(peak_deg, until_s + 4.0, RISE_S, rest_s=REST_S, creep_deg=0.0)
    return Script(spec.script.rest_deg, (once,))


def _doing(
    spec: ClipSpec,
    arm: posing.Arm,
    other: posing.Arm,
    stance: posing.Stance,
    done: dict[str, float],
) -> tuple[posing.Arm, posing.Arm, posing.Stance]:
    s = 1 if spec.side == "right" else -1
    return (
        replace(arm, away_deg=arm.away_deg + done["drift"]),
        other,
        replace(
            stance,
            twist_deg=done["turn"],
            yaw_deg=stance.yaw_deg - s * done["feet"],
            side_lean_deg=deliberate.SPINE_PER_TRUNK * done["lean"],
            hike_deg=stance.hike_deg + done["hike"],
        ),
    )


def generate(folder: Path, which: str, first: int, count: int, fps: float) -> None:
    """Render and track; files that exist are kept."""
    folder.mkdir(parents=True, exist_ok=True)
    for number in range(first, first + count):
        target = folder / f"{which}_{number:02d}.npz"
        if not target.exists():
            take, stretches = take_of(which, number, fps)
            data = landmark_set(take, Path("models/pose_full.task"))
            np.savez_compressed(target, **data, stretches=np.array(json.dumps(stretches)))
            print(target.name, flush=True)


def score(folder: Path) -> None:
    """Print for every act in how many people it was told, and what was told falsely."""
    from tests.bench.compensation import middle
    from tests.bench.score import load, read, task_of

    told: dict[str, list[Any]] = defaultdict(list)
    for path in sorted(folder.glob("*.npz")):
        data = load(path)
        task = task_of(data)
        readings = read(data, task, live=True)
        limits = default_limits(task.movement, task.position, task.view)
        usual = Usual.of(task.movement, task.position, task.side)
        for kind, start_s, end_s in json.loads(str(data["stretches"])):
            form = middle([r for r in readings if start_s + SETTLED_S <= r.time_s < end_s])
            if form.trunk_lean_deg is None:
                told[kind].append(None)
                continue
            faults = faults_of(form, limits, usual)
            usual = usual if usual is None or usual.turns_deg else usual.after(form, faults)
            told[kind].append(faults)
    for kind, rows in told.items():
        seen = [faults for faults in rows if faults is not None]
        own = FAULT.get(kind)
        others = [fault.value for faults in seen for fault in faults if fault is not own]
        found = sum(own in faults for faults in seen) if own else 0
        print(
            f"{kind:6s} {len(rows):3d} stretches, {len(rows) - len(seen)} not measured;"
            f" told {found if own else '-'}; told besides: {', '.join(others) or 'nothing'}"
        )


def main() -> int:
    """Make the recordings, or score those there are."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("folder", type=Path)
    parser.add_argument("--set", default="tuning", choices=list(drawing_lots.SETS))
    parser.add_argument("--first", type=int, default=0)
    parser.add_argument("--count", type=int, default=11)
    parser.add_argument("--fps", type=float, default=6.0)
    parser.add_argument("--score", action="store_true")
    options = parser.parse_args()
    if options.score:
        score(options.folder)
    else:
        generate(options.folder, options.set, options.first, options.count, options.fps)
    return 0


if __name__ == "__main__":
    sys.exit(main())
