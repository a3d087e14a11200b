"""What was left out of the folder in ``SHOULDER_BUNDLE`` is missed by nothing in it."""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
from pathlib import Path

import cv2
import numpy as np
import pytest

from tests.capture.rendered_board import Optics, draw_places, film
from tests.test_bundle import BUNDLE, CLIP, surroundings

MOST_BYTES = 350e6
FRAMES = 6
FILMS = {
    "vp8.webm": "VP80",
    "vp9.webm": "VP90",
    "vp9.mkv": "VP90",
    "jpeg.avi": "MJPG",
    "mpeg4.avi": "XVID",
    "mpeg4.mov": "mp4v",
    "jpeg.mov": "mjpg",
    "mpeg4.mp4": "mp4v",
    "mpeg1.mpg": "MPG1",
    "wmv2.wmv": "WMV2",
}
"""H.264 in MP4 is what the demo's clip is."""

pytestmark = pytest.mark.skipif("SHOULDER_BUNDLE" not in os.environ, reason="no bundle was built")
of_linux = pytest.mark.skipif(sys.platform != "linux", reason="made smaller on Linux alone")


def run(home: Path, *arguments: object) -> str:
    """Give what a command of the bundle prints."""
    done = subprocess.run(
        [str(BUNDLE / "coach"), *map(str, arguments)],
        env=surroundings(home),
        capture_output=True,
        text=True,
        check=False,
        timeout=600,
    )
    assert done.returncode == 0, done.stderr
    return done.stdout


def of_bundle(script: str) -> str:
    """Give what a script prints that has the bundle's libraries, and its own Python and NumPy."""
    done = subprocess.run(
        [sys.executable, "-c", script, str(BUNDLE / "_internal")],
        env={"PATH": "/usr/bin:/bin", "LANG": "C.UTF-8"},
        capture_output=True,
        text=True,
        check=False,
        timeout=300,
    )
    assert done.returncode == 0, done.stderr
    return done.stdout


@of_linux
def test_it_stays_small() -> None:
    assert sum(path.lstat().st_size for path in BUNDLE.rglob("*")) < MOST_BYTES


def test_no_link_leads_nowhere() -> None:
    assert [path for path in BUNDLE.rglob("*") if path.is_symlink() and not path.exists()] == []


def test_the_usual_films_are_read(tmp_path: Path) -> None:
    films = tmp_path / "films"
    films.mkdir()
    capture = cv2.VideoCapture(str(CLIP))
    pictures = [capture.read()[1] for _ in range(FRAMES)]
    height, width = pictures[0].shape[:2]
    for name, code in FILMS.items():
        kind = cv2.VideoWriter.fourcc(*code)
        writer = cv2.VideoWriter(str(films / name), cv2.CAP_FFMPEG, kind, 20.0, (width, height))
        assert writer.isOpened(), name
        for picture in pictures:
            writer.write(picture)
        writer.release()
    what = ("--movement", "external-rotation-0", "--side", "right", "--json", tmp_path / "out")
    clips = [films / name for name in FILMS if name != "vp9.mkv"]
    printed = run(tmp_path, "measure", *clips, *what[:4])
    assert printed.count(f"of {FRAMES} frames usable") == len(clips)
    assert "frames usable" in run(tmp_path, "measure", films / "vp9.mkv", *what)
    assert json.loads((tmp_path / "out").read_text("utf-8"))


def test_the_lens_of_a_filmed_board_is_found(tmp_path: Path) -> None:
    optics = Optics(field_of_view_deg=78.0, k1=-0.05)
    random = np.random.default_rng(5)
    clip = tmp_path / "board.avi"
    kind = cv2.VideoWriter.fourcc(*"MJPG")
    writer = cv2.VideoWriter(str(clip), cv2.CAP_OPENCV_MJPEG, kind, 2.0, optics.size_px)
    assert writer.isOpened()
    for frame in film(optics, draw_places(np.random.default_rng(5), optics, 16), random):
        writer.write(cv2.cvtColor(frame.image_rgb, cv2.COLOR_RGB2BGR))
    writer.release()
    found = re.search(r"view: ([\d.]+) ± ([\d.]+) degrees", run(tmp_path, "lens", "--clip", clip))
    assert found
    angle_deg, error_deg = map(float, found.groups())
    assert angle_deg == pytest.approx(78.0, abs=max(error_deg, 0.6))


SOLVED = """
import sys
sys.path.insert(0, sys.argv[1])
import cv2
import numpy as np
random = np.random.default_rng(1)
for kind, most in ((np.float64, 1e-9), (np.float32, 2e-2)):
    def drawn(*shape):
        return random.normal(size=shape).astype(kind)
    def same(found, true):
        assert np.abs(found - true).max() < most
    square, tall, right = drawn(220, 220), drawn(300, 150), drawn(220, 2)
    square += 20 * np.eye(220, dtype=kind)
    spread = (square @ square.T / 400).astype(kind)
    wide, far = square.astype(float), tall.astype(float)
    same(cv2.solve(square, right, flags=cv2.DECOMP_LU)[1], np.linalg.solve(wide, right))
    same(cv2.solve(spread, right, flags=cv2.DECOMP_CHOLESKY)[1],
         np.linalg.solve(spread.astype(float), right))
    fitted = np.linalg.lstsq(far, drawn(300, 2))[0]
    for way in (cv2.DECOMP_QR, cv2.DECOMP_SVD):
        same(cv2.solve(tall, (far @ fitted).astype(kind), flags=way)[1], fitted)
    same(cv2.SVDecomp(tall)[0][:, 0], np.linalg.svd(far)[1])
    same(cv2.invert(square)[1], np.linalg.inv(wide))
    same(cv2.gemm(square, square, 1, None, 0) / 1000, wide @ wide / 1000)
    values = np.sort(cv2.eigen(spread)[1][:, 0])
    same(values, np.linalg.eigvalsh(spread.astype(float)))
    pairs = drawn(150, 150, 2)
    true = (pairs[..., 0] + 1j * pairs[..., 1]) @ (pairs[..., 0] + 1j * pairs[..., 1])
    product = cv2.gemm(pairs, pairs, 1, None, 0)
    same(product[..., 0], true.real)
    same(product[..., 1], true.imag)
print(cv2.__file__)
"""


@of_linux
def test_opencv_solves_large_systems_as_numpy_does() -> None:
    assert of_bundle(SOLVED).startswith(str(BUNDLE))


SORTED = """
import sys, types
from functools import cmp_to_key
package = sys.modules["PyQt6"] = types.ModuleType("PyQt6")
package.__path__ = [sys.argv[1] + "/PyQt6"]
package.__file__ = sys.argv[1] + "/PyQt6/__init__.py"
from PyQt6.QtCore import QByteArray, QCollator, QLocale, QTimeZone
for language in ("de_DE", "sv_SE"):
    order = cmp_to_key(QCollator(QLocale(language)).compare)
    print(*sorted(["Zebra", "\\N{LATIN CAPITAL LETTER O WITH DIAERESIS}l", "Opa"], key=order))
zone, names = QTimeZone(QByteArray(b"Europe/Berlin")), QTimeZone.NameType.LongName
print(zone.displayName(QTimeZone.TimeType.StandardTime, names, QLocale("de_DE")))
print(QLocale("tr_TR").toUpper("i") == "\\N{LATIN CAPITAL LETTER I WITH DOT ABOVE}")
"""


@of_linux
def test_qt_still_sorts_and_names_by_language() -> None:
    # As DIN 5007-1 and the Swedish alphabet have it; the zone's name is CLDR's.
    assert of_bundle(SORTED).splitlines() == [
        "Öl Opa Zebra",
        "Opa Zebra Öl",
        "Mitteleuropäische Normalzeit",
        "True",
    ]
