"""OpenCV behind the device protocols; no other module imports it."""

from __future__ import annotations

import math
import os
import sys
from pathlib import Path

import numpy as np

from coach.capture.devices import Picture

_QT_VARIABLES = ("QT_QPA_PLATFORM_PLUGIN_PATH", "QT_QPA_FONTDIR")
_qt_before = {name: os.environ.get(name) for name in _QT_VARIABLES}

# What the libraries print is of no use to a patient, and every failure is seen in what the calls
# return. A person who looks for a fault can set both variables otherwise.
_log_level_given = "OPENCV_LOG_LEVEL" in os.environ
os.environ.setdefault("OPENCV_FFMPEG_LOGLEVEL", "-8")
# FFmpeg would also draw text files as pictures and follow play lists to other files and hosts.
os.environ["OPENCV_FFMPEG_CAPTURE_OPTIONS"] = (
    "protocol_whitelist;file|format_whitelist;"
    "asf,avi,flv,gif,h264,hevc,m4v,matroska,mjpeg,mov,mp4,mpeg,mpegts,mpegvideo,ogg,webm"
)
# Seconds until an unplugged camera's read gives up; the default is 10.
os.environ.setdefault("OPENCV_VIDEOIO_V4L_SELECT_TIMEOUT", "2")

import cv2  # noqa: E402 - its environment must stand first

# cv2 points Qt at the plugins it ships, which are of another Qt than PyQt6's.
for _name, _value in _qt_before.items():
    if _value is None:
        os.environ.pop(_name, None)
    else:
        os.environ[_name] = _value

if not _log_level_given:
    cv2.utils.logging.setLogLevel(cv2.utils.logging.LOG_LEVEL_SILENT)

_CAMERA_BACKENDS = {
    "linux": cv2.CAP_V4L2,
    "win32": cv2.CAP_DSHOW,
    "darwin": cv2.CAP_AVFOUNDATION,
}

WANTED_SIZE_PX = (1280, 720)
WANTED_FRAMES_PER_S = 30


def _rgb(picture: object) -> Picture | None:
    if not isinstance(picture, np.ndarray) or picture.ndim != 3 or picture.dtype != np.uint8:
        return None
    rgb = np.ascontiguousarray(cv2.cvtColor(picture, cv2.COLOR_BGR2RGB), dtype=np.uint8)
    rgb.setflags(write=False)
    return rgb


def _rate(capture: cv2.VideoCapture) -> float:
    rate = float(capture.get(cv2.CAP_PROP_FPS))
    return rate if math.isfinite(rate) and 0 < rate <= 1000 else 0.0


class OpenCvCamera:
    """A camera through the system's own interface."""

    def __init__(self, capture: cv2.VideoCapture) -> None:
        """Take an open capture and ask it for the wanted size and rate; it may give others."""
        self._capture = capture
        # Uncompressed 1280x720 does not fit through USB 2 at 30 pictures a second.
        capture.set(cv2.CAP_PROP_FOURCC, cv2.VideoWriter.fourcc(*"MJPG"))
        capture.set(cv2.CAP_PROP_FRAME_WIDTH, WANTED_SIZE_PX[0])
        capture.set(cv2.CAP_PROP_FRAME_HEIGHT, WANTED_SIZE_PX[1])
        capture.set(cv2.CAP_PROP_FPS, WANTED_FRAMES_PER_S)
        capture.set(cv2.CAP_PROP_BUFFERSIZE, 1)
        self.frames_per_s = _rate(capture)

    def grab(self) -> bool:
        """Wait for the next picture and take it."""
        try:
            return bool(self._capture.grab())
        except cv2.error:
            return False

    def retrieve(self) -> Picture | None:
        """Decode the picture last taken."""
        try:
            ok, picture = self._capture.retrieve()
        except cv2.error:
            return None
        return _rgb(picture) if ok else None

    def release(self) -> None:
        """Let go of the camera."""
        self._capture.release()


class OpenCvVideo:
    """A video file through FFmpeg."""

    def __init__(self, capture: cv2.VideoCapture) -> None:
        """Take an open capture."""
        self._capture = capture
        capture.set(cv2.CAP_PROP_ORIENTATION_AUTO, 1)
        self.frames_per_s = _rate(capture)
        count = float(capture.get(cv2.CAP_PROP_FRAME_COUNT))
        self.frame_count = int(count) if math.isfinite(count) and 0 < count < 1e8 else None
        self.size_px = (
            int(capture.get(cv2.CAP_PROP_FRAME_WIDTH)),
            int(capture.get(cv2.CAP_PROP_FRAME_HEIGHT)),
        )

    def read(self) -> tuple[Picture, float] | None:
        """Give the next picture and its stamp."""
        try:
            ok, picture = self._capture.read()
        except cv2.error:
            return None
        rgb = _rgb(picture) if ok else None
        if rgb is None:
            return None
        # After a read this is the stamp of the picture just read, counted from the first.
        time_s = float(self._capture.get(cv2.CAP_PROP_POS_MSEC)) / 1000
        return rgb, time_s if math.isfinite(time_s) else 0.0

    def release(self) -> None:
        """Close the file."""
        self._capture.release()


def open_camera(number: int) -> OpenCvCamera | None:
    """Open a camera by its number, None if there is none."""
    try:
        capture = cv2.VideoCapture(number, _CAMERA_BACKENDS.get(sys.platform, cv2.CAP_ANY))
    except cv2.error:
        return None
    return OpenCvCamera(capture) if capture.isOpened() else None


def open_video(path: Path) -> OpenCvVideo | None:
    """Open a video file, None if it cannot be read as one.

    Pictures come turned upright as the container's rotation tag asks.
    """
    try:
        # An absolute path cannot be taken for a protocol such as "concat:".
        capture = cv2.VideoCapture(str(path.resolve()), cv2.CAP_FFMPEG)
    except cv2.error:
        return None
    return OpenCvVideo(capture) if capture.isOpened() else None
