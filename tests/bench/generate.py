"""Make benchmark files or clips: ``python -m tests.bench.generate --help``."""

from __future__ import annotations

import argparse
import time
from pathlib import Path

import numpy as np

from tests.bench import deliberate, drawing_lots, gesture_lots
from tests.bench.clip import prepare
from tests.bench.tracking import landmark_sets, mirrored_name
from tests.bench.video import write_clip


def main() -> None:
    """Read the command line and make what is asked for, one file after the other."""
    combos = {combo.name: combo for combo in drawing_lots.COMBOS}
    parser = argparse.ArgumentParser(description=__doc__, epilog="all: " + " ".join(combos))
    parser.add_argument("folder", type=Path, help="where the sets' folders go")
    parser.add_argument("--sets", nargs="+", default=list(drawing_lots.SETS))
    parser.add_argument(
        "--combos", nargs="+", default=list(combos), metavar="MOVEMENT:POSITION:VIEW"
    )
    parser.add_argument("--first", type=int, default=0, help="number of the first clip")
    parser.add_argument("--count", type=int, default=6, help="clips of each combination")
    parser.add_argument("--seconds", type=float, default=20.0)
    parser.add_argument("--fps", type=float, default=15.0)
    parser.add_argument("--hard", action="store_true", help="two to four troubles in every clip")
    parser.add_argument("--gesture", action="store_true", help="the other hand is raised")
    parser.add_argument(
        "--retake", type=int, default=0, metavar="K", help="the camera in its K-th other place"
    )
    parser.add_argument(
        "--compensation",
        type=deliberate.compensation,
        metavar="KIND:DEG",
        help=f"this one at every end of range and no other: {', '.join(deliberate.KINDS)}",
    )
    parser.add_argument(
        "--mirrored", action="store_true", help="pictures the other way round: the other arm"
    )
    parser.add_argument("--landmarks-only", action="store_true", help="npz instead of mp4")
    parser.add_argument(
        "--model",
        type=Path,
        nargs="+",
        default=[Path("models/pose_full.task")],
        help="several see the same pictures, and each has a folder of its own under FOLDER",
    )
    options = parser.parse_args()
    if unknown := set(options.combos) - set(combos):
        parser.error(f"no such combination: {', '.join(sorted(unknown))}")
    models: list[Path] = options.model
    if len(models) > 1 and not options.landmarks_only:
        parser.error("several models track landmarks: say --landmarks-only")
    if options.mirrored and not options.landmarks_only:
        parser.error("only landmarks come from mirrored pictures: say --landmarks-only")
    places = [options.folder / (model.stem if len(models) > 1 else "") for model in models]
    for which in options.sets:
        for place in places:
            (place / which).mkdir(parents=True, exist_ok=True)
        for number in range(options.first, options.first + options.count):
            for combo in options.combos:
                began_s = time.monotonic()
                spec = drawing_lots.draw(
                    which,
                    combos[combo],
                    number,
                    options.seconds,
                    options.fps,
                    options.hard,
                    options.retake,
                )
                if options.gesture:
                    spec = gesture_lots.gesturing(spec, combos[combo].peaks_deg)
                if options.compensation:
                    spec = deliberate.only(spec, *options.compensation)
                stem = mirrored_name(spec.name) if options.mirrored else spec.name
                name = f"{stem}.{'npz' if options.landmarks_only else 'mp4'}"
                targets = [place / which / name for place in places]
                if all(target.exists() for target in targets):
                    continue
                take = prepare(spec)
                if options.landmarks_only:
                    sets = landmark_sets(take, models, mirrored=options.mirrored)
                    for target, arrays in zip(targets, sets, strict=True):
                        half = target.with_suffix(".part.npz")
                        np.savez_compressed(half, **arrays)
                        half.rename(target)
                else:
                    write_clip(take, targets[0])
                spent_s = time.monotonic() - began_s
                line = f"{which} {name} {len(take.times_s)} frames {spent_s:.0f} s"
                print(line, flush=True)
                with (options.folder / "PROGRESS.txt").open("a") as log:
                    log.write(line + "\n")


if __name__ == "__main__":
    main()
