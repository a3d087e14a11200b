"""Make the sample clips again: ``python -m sample_videos.make_clips [NAME ...]``.

With ``--truth-only`` the clips stay and only their JSON is written.

Run from the repository's root with the extra packages of ``tests/bench/README.md``. All people
are tuning people of the benchmark: a clip that everybody looks at can judge nothing.
"""

from __future__ import annotations

import sys
from dataclasses import dataclass
from pathlib import Path

from tests.bench.clip import ClipSpec, Manner, prepare
from tests.bench.motion import Repetition, Script
from tests.bench.scene import ACCENTS, FLOORS, WALLS, Camera, Lens, Room
from tests.bench.video import write_clip, write_truth

FOLDER = Path(__file__).parent


@dataclass(frozen=True, slots=True)
class Sample:
    """A clip and how it is stored."""

    spec: ClipSpec
    quality: int = 27
    rotate_deg: int = 0


def _room(wall: int, floor: int, accent: int, seed: int, key_deg: float, gap_m: float) -> Room:
    return Room(
        wall=WALLS[wall], wall_kind=wall % 3, floor=FLOORS[floor], floor_kind=floor % 3,
        accent=ACCENTS[accent], wall_gap_m=gap_m, things_seed=seed, key_deg=(key_deg, 48.0),
        key=(1.6, 1.55, 1.45), ambient=(0.86, 0.88, 0.92),
    )  # fmt: skip


FAIR_LENS = Lens(gain=1.0, noise=1.2, blur_px=0.35, jpeg_quality=100)

SAMPLES = (
    Sample(
        ClipSpec(
            "flexion_right_three_holds", "dahlia", "flexion", "right", "side", 101, 25.0,
            Camera(fov_deg=62.0, distance_m=2.35, height_m=1.05, off_axis_deg=3.0),
            _room(1, 0, 1, 12, 35.0, 1.2), FAIR_LENS,
            Manner(hike_deg=4.0, lean_deg=-3.0, away_deg=8.0, away_change_deg=-3.0),
            Script(
                3.0,
                (
                    Repetition(112.0, 10.0, 2.4, 2.2, 3.0),
                    Repetition(121.0, 8.0, 2.6, 2.0, 3.0),
                    Repetition(126.0, 12.0, 2.5, 2.4, 3.0, creep_deg=1.2),
                ),
                tail_s=2.5,
            ),
        )
    ),
    Sample(
        ClipSpec(
            "abduction_left_two_holds", "elm", "abduction", "left", "front", 102, 24.0,
            Camera(fov_deg=68.0, distance_m=2.3, height_m=1.2, off_axis_deg=-5.0, roll_deg=0.6),
            _room(2, 4, 2, 31, -40.0, 1.5), FAIR_LENS,
            Manner(hike_deg=6.0, side_lean_deg=4.0, away_deg=10.0, elbow_deg=7.0),
            Script(
                4.0,
                (Repetition(84.0, 6.0, 2.2, 2.0, 2.5), Repetition(97.0, 9.0, 2.2, 2.2, 2.5)),
            ),
        )
    ),
    Sample(
        ClipSpec(
            "external_rotation_right_two_holds", "fern", "external-rotation-0", "right", "front",
            103, 20.0,
            Camera(fov_deg=60.0, distance_m=2.2, height_m=1.1, off_axis_deg=2.0),
            _room(3, 1, 4, 44, 55.0, 1.0), FAIR_LENS,
            Manner(twist_deg=3.0, away_deg=6.0, elbow_deg=88.0, forward_deg=3.0),
            Script(
                -20.0,
                (Repetition(24.0, 7.0, 1.8, 1.6, 2.5), Repetition(33.0, 10.0, 2.0, 1.8, 2.5)),
            ),
        )
    ),
    Sample(
        ClipSpec(
            "extension_left_two_holds", "cedar", "extension", "left", "side", 104, 30.0,
            Camera(fov_deg=70.0, distance_m=2.1, height_m=0.9, off_axis_deg=-4.0, roll_deg=-0.7),
            _room(5, 2, 0, 58, -20.0, 1.3), FAIR_LENS,
            Manner(hike_deg=3.0, lean_deg=4.0, away_deg=7.0, elbow_deg=6.0),
            Script(
                1.0,
                (Repetition(32.0, 5.0, 1.6, 1.5, 2.5), Repetition(39.0, 8.0, 1.7, 1.5, 2.5)),
            ),
        )
    ),
    Sample(
        ClipSpec(
            "everyday_no_holds", "ginkgo", "flexion", "right", "front", 105, 25.0,
            Camera(fov_deg=64.0, distance_m=2.5, height_m=1.25, off_axis_deg=6.0),
            _room(6, 5, 3, 67, 20.0, 1.6), FAIR_LENS, Manner(sway_deg=1.0), None,
            everyday_s=24.0,
        )
    ),
    Sample(
        ClipSpec(
            "flexion_left_portrait", "basil", "flexion", "left", "side", 106, 30.0,
            Camera(720, 1280, fov_deg=46.0, distance_m=2.25, height_m=1.15, off_axis_deg=4.0),
            _room(4, 3, 5, 73, 30.0, 1.2), FAIR_LENS,
            Manner(hike_deg=3.0, lean_deg=-2.0),
            Script(
                2.0,
                (Repetition(96.0, 5.0, 1.8, 1.6, 2.0), Repetition(108.0, 1.3, 1.6, 1.4, 1.5),
                 Repetition(104.0, 6.0, 1.8, 1.6, 2.0)),
                tail_s=1.5,
            ),
        ),
        quality=29,
        rotate_deg=90,
    ),
)  # fmt: skip


def main() -> None:
    """Make the clips named on the command line, or all of them."""
    truth_only = "--truth-only" in sys.argv
    wanted = set(sys.argv[1:]) - {"--truth-only"} or {sample.spec.name for sample in SAMPLES}
    for sample in SAMPLES:
        if sample.spec.name not in wanted:
            continue
        path = FOLDER / f"{sample.spec.name}.mp4"
        if truth_only:
            write_truth(prepare(sample.spec), path.with_suffix(".json"))
        else:
            write_clip(prepare(sample.spec), path, sample.quality, sample.rotate_deg)
            print(f"{path.name}: {path.stat().st_size / 1000:.0f} kB", flush=True)


if __name__ == "__main__":
    main()
