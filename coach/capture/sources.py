"""Opens cameras and video files."""

from __future__ import annotations

from pathlib import Path

from coach.capture.camera import Camera
from coach.capture.video_file import MAX_FRAMES, VideoFile
from coach.domain.fault import Fault
from coach.domain.text import shown_text
from coach.texts import translate

MAX_PIXELS = 40_000_000
"""Larger pictures are refused before memory is spent; 8K video has 33 million."""


def open_source(what: str | Path | int) -> Camera | VideoFile:
    """Open a camera by its number, or a video file by its path.

    Raises ``Fault`` with one sentence where there is nothing to read.
    """
    return _open_camera(what) if isinstance(what, int) else _open_file(Path(what))


def _open_camera(number: int) -> Camera:
    from coach.capture import opencv

    device = opencv.open_camera(number) if number >= 0 else None
    if device is None:
        raise Fault(
            translate(
                "faults",
                "No camera answers as number {number}; plug one in, close other "
                "programs that use it, or try another number.",
            ).format(number=number)
        )
    return Camera(translate("faults", "Camera {number}").format(number=number), device)


def _open_file(path: Path) -> VideoFile:
    from coach.capture import opencv

    _check_readable(path)
    reader = opencv.open_video(path)
    if reader is None:
        raise Fault(
            translate(
                "faults",
                "'{path}' cannot be read as a video; it is another kind of file or was "
                "cut off, so copy it again from where it was recorded, or choose "
                "another.",
            ).format(path=path)
        )
    width, height = reader.size_px
    if width * height > MAX_PIXELS:
        reader.release()
        raise Fault(
            translate(
                "faults",
                "The pictures of '{path}' are {width} by {height}, too large to "
                "measure; record at 1280 by 720.",
            ).format(path=path, width=width, height=height)
        )
    if reader.frame_count is not None and reader.frame_count > MAX_FRAMES:
        reader.release()
        raise Fault(
            translate(
                "faults",
                "'{path}' says it has {frame_count:,} pictures, at most "
                "{max_frames:,} are measured; cut it into shorter pieces.",
            ).format(path=path, frame_count=reader.frame_count, max_frames=MAX_FRAMES)
        )
    return VideoFile(shown_text(str(path)), reader)


def _check_readable(path: Path) -> None:
    try:
        if path.is_dir():
            raise Fault(
                translate("faults", "'{path}' is a folder; name a video file in it.").format(
                    path=path
                )
            )
        if path.exists() and not path.is_file():  # to open a pipe would wait for its other end
            raise Fault(
                translate("faults", "'{path}' is a device or a pipe; name a video file.").format(
                    path=path
                )
            )
        with path.open("rb") as file:
            empty = not file.read(1)
    except FileNotFoundError:
        raise Fault(
            translate("faults", "There is no file '{path}'; check its name and folder.").format(
                path=path
            )
        ) from None
    except PermissionError:
        raise Fault(
            translate(
                "faults",
                "'{path}' may not be read by you; ask its owner for the right to, or "
                "copy it to a folder of yours.",
            ).format(path=path)
        ) from None
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or str(error)
        raise Fault(
            translate(
                "faults",
                "'{path}' cannot be opened ({reason}); copy it to another place and try again.",
            ).format(path=path, reason=reason)
        ) from None
    if empty:
        raise Fault(
            translate(
                "faults",
                "'{path}' is empty; copy it again from where it was recorded, or choose another.",
            ).format(path=path)
        )
