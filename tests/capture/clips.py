"""Small video files, written and altered box by box (ISO/IEC 14496-12)."""

from __future__ import annotations

import struct
from collections.abc import Callable, Sequence
from pathlib import Path

import cv2
import numpy as np

RED, GREY = (220, 30, 30), (90, 90, 90)


def corner_picture(width: int, height: int) -> np.ndarray:
    """Grey, with a red quarter at the top left; RGB."""
    picture = np.full((height, width, 3), GREY, np.uint8)
    picture[: height // 2, : width // 2] = RED
    return picture


def write_clip(path: Path, pictures: Sequence[np.ndarray], frames_per_s: float = 20.0) -> Path:
    height, width = pictures[0].shape[:2]
    avi = path.suffix == ".avi"
    writer = cv2.VideoWriter(
        str(path),
        cv2.CAP_OPENCV_MJPEG if avi else cv2.CAP_FFMPEG,
        cv2.VideoWriter.fourcc(*("MJPG" if avi else "mp4v")),
        frames_per_s,
        (width, height),
    )
    assert writer.isOpened()
    for picture in pictures:
        writer.write(cv2.cvtColor(picture, cv2.COLOR_RGB2BGR))
    writer.release()
    return path


def rewrite(data: bytes, change: dict[bytes, Callable[[bytes], bytes]]) -> bytes:
    out, at = b"", 0
    while at < len(data):
        size, kind = struct.unpack_from(">I4s", data, at)
        body = data[at + 8 : at + size]
        if kind in change:
            body = change[kind](body)
        elif kind in (b"moov", b"trak", b"mdia", b"minf", b"stbl"):
            body = rewrite(body, change)
        out += struct.pack(">I4s", len(body) + 8, kind) + body
        at += size
    return out


def turn_quarter_clockwise(path: Path) -> None:
    """Set the matrix in the track header: shown turned by 90 degrees clockwise."""
    one = 0x10000
    matrix = struct.pack(">9i", 0, one, 0, -one, 0, 0, 0, 0, 0x40000000)

    def change(body: bytes) -> bytes:
        assert body[0] == 0, "version 0 of the box"
        return body[:40] + matrix + body[76:]

    path.write_bytes(rewrite(path.read_bytes(), {b"tkhd": change}))


def set_durations(path: Path, ticks: Sequence[int]) -> float:
    """Give every frame its own duration in ticks; returns seconds per tick."""
    scale = 0

    def read_scale(body: bytes) -> bytes:
        nonlocal scale
        assert body[0] == 0
        scale = struct.unpack_from(">I", body, 12)[0]
        return body

    def change(body: bytes) -> bytes:
        entries = b"".join(struct.pack(">II", 1, tick) for tick in ticks)
        return body[:4] + struct.pack(">I", len(ticks)) + entries

    data = path.read_bytes()
    assert data.index(b"moov") > data.index(b"mdat"), "else the chunk offsets would move"
    # The edit list would end the film at its old length.
    data = data.replace(b"edts", b"free")
    path.write_bytes(rewrite(data, {b"mdhd": read_scale, b"stts": change}))
    return 1 / scale
