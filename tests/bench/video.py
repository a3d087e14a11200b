"""H.264 clips with their truth beside them."""

from __future__ import annotations

import json
import subprocess
from importlib import import_module
from pathlib import Path
from typing import Any

import numpy as np

from tests.bench.clip import Take, spec_document, true_holds, truth_rows
from tests.bench.truth import Joints

FORMAT = "shoulder-clip-truth"
DIGITS = {"reach_ratio": 4}


def write_clip(take: Take, path: Path, quality: int = 26, rotate_deg: int = 0) -> None:
    """Write NAME.mp4 and NAME.json. ``quality`` is x264's rate factor (lower is better).

    With ``rotate_deg`` the pictures are stored turned and a rotation tag turns them upright.
    """
    camera = take.spec.camera
    size = (camera.width_px, camera.height_px)
    stored = size if rotate_deg % 180 == 0 else size[::-1]
    turned = path.with_suffix(".turned.mp4") if rotate_deg else path
    encoder = _encoder(turned, stored, take.spec.fps, quality)
    if encoder.stdin is None:
        raise RuntimeError("the encoder takes no pictures")
    for shot in take.shots():
        # Counter-clockwise quarter turns of what is stored; the tag undoes them.
        picture = np.rot90(shot.picture, rotate_deg // 90)
        encoder.stdin.write(np.ascontiguousarray(picture).tobytes())
    encoder.stdin.close()
    if encoder.wait() != 0:
        raise RuntimeError(f"could not write {turned}")
    if rotate_deg:
        _tag(turned, path, rotate_deg)
    write_truth(take, path.with_suffix(".json"))


def write_truth(take: Take, path: Path) -> None:
    """Write what is true of a clip, one frame to a line."""
    document = _document(take)
    frames = ",\n  ".join(json.dumps(frame) for frame in document.pop("frames"))
    head = json.dumps(document, indent=1)[: -len("\n}")]
    path.write_text(f'{head},\n "frames": [\n  {frames}\n ]\n}}\n')


def _document(take: Take) -> dict[str, Any]:
    spec = take.spec
    rows = truth_rows(spec, [Joints.of(posed) for posed in take.posed])
    rows = {key: values for key, values in rows.items() if not np.isnan(values).all()}
    frames = [
        {"time_s": round(float(t), 4)}
        | {key: round(float(v[i]), DIGITS.get(key, 2)) for key, v in rows.items()}
        for i, t in enumerate(take.times_s)
    ]
    return {
        "format": FORMAT,
        "version": 1,
        "movement": spec.movement if spec.script else None,
        "position": spec.position,
        "side": spec.side,
        "view": spec.view,
        "fps": spec.fps,
        "body": spec.person,
        "camera": spec_document(spec)["camera"],
        "recipe": spec_document(spec),
        "holds": true_holds(spec, take.times_s, rows),
        "frames": frames,
    }


def _ffmpeg() -> str:
    return str(import_module("imageio_ffmpeg").get_ffmpeg_exe())


def _encoder(
    path: Path, size: tuple[int, int], fps: float, quality: int
) -> subprocess.Popen[bytes]:
    command = [
        _ffmpeg(), "-y", "-loglevel", "error", "-f", "rawvideo", "-pix_fmt", "rgb24",
        "-s", f"{size[0]}x{size[1]}", "-r", f"{fps}", "-i", "-", "-an", "-c:v", "libx264",
        "-preset", "slow", "-crf", f"{quality}", "-pix_fmt", "yuv420p", "-threads", "1",
        "-movflags", "+faststart", str(path),
    ]  # fmt: skip
    return subprocess.Popen(command, stdin=subprocess.PIPE)


def _tag(turned: Path, path: Path, rotate_deg: int) -> None:
    command = [
        _ffmpeg(), "-y", "-loglevel", "error", "-display_rotation", f"{-rotate_deg}",
        "-i", str(turned), "-c", "copy", "-movflags", "+faststart", str(path),
    ]  # fmt: skip
    subprocess.run(command, check=True)
    turned.unlink()
