"""``coach card``, and the card on its way from the picture into a pose."""

from __future__ import annotations

import io
import os
import subprocess
import sys
from pathlib import Path

import pytest
from pypdf import PdfReader

from coach.app.estimator import WithCard
from coach.capture.card_watch import CardWatch
from coach.domain.frame import Frame
from coach.domain.pose import Pose
from tests.app.conftest import ROOT
from tests.capture.rendered_card import Scene, errors_deg, render, wearer


class Standing:
    """A pose model that sees the wearer of a rendered card, or nobody."""

    model_sha256 = "0" * 64

    def __init__(self, scene: Scene | None) -> None:
        self._scene = scene
        self.closed = False

    def estimate(self, frame: Frame) -> Pose | None:
        return None if self._scene is None else wearer(self._scene, frame.time_s)

    def close(self) -> None:
        self.closed = True


def test_a_pose_carries_the_card() -> None:
    scene = Scene(yaw_deg=17, at_m=(0.0, -0.1, 2.0))
    estimator = WithCard(Standing(scene), CardWatch())
    pose = estimator.estimate(Frame(0, 0.0, render(scene)))
    assert pose is not None
    assert pose.card is not None
    assert abs(errors_deg(pose.card.axes, scene)[0]) < 1.0
    assert estimator.notes == ()


def test_nobody_and_no_card_are_as_without() -> None:
    bare = Scene(only=(False, False))
    frame = Frame(0, 0.0, render(bare))
    assert WithCard(Standing(None), CardWatch()).estimate(frame) is None
    model = Standing(bare)
    estimator = WithCard(model, CardWatch())
    pose = estimator.estimate(frame)
    assert pose is not None
    assert pose.card is None
    assert estimator.model_sha256 == "0" * 64
    estimator.close()
    assert model.closed


@pytest.mark.parametrize(("paper", "width_mm"), [("a4", 297.0), ("letter", 279.4)])
def test_the_command_writes_the_card_without_a_screen(
    tmp_path: Path, paper: str, width_mm: float
) -> None:
    out = tmp_path / "card.pdf"
    hidden = {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"}
    done = subprocess.run(
        [sys.executable, "-m", "coach", "card", "--paper", paper, "--out", str(out)],
        cwd=ROOT,
        env={name: value for name, value in os.environ.items() if name not in hidden},
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    assert str(out) in done.stdout
    assert done.stderr == ""
    page = PdfReader(io.BytesIO(out.read_bytes())).pages[0]
    assert float(page.mediabox.width) == pytest.approx(width_mm / 25.4 * 72, abs=1)


def test_a_folder_that_is_not_there_is_told(tmp_path: Path) -> None:
    done = subprocess.run(
        [sys.executable, "-m", "coach", "card", "--out", str(tmp_path / "no" / "card.pdf")],
        cwd=ROOT,
        env=os.environ | {"QT_QPA_PLATFORM": "offscreen"},
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 1
    assert done.stderr.startswith("coach: ")
    assert len(done.stderr.splitlines()) == 1
