"""``coach lens`` from a film of the board to the settings file and the next sitting."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Literal

import numpy as np
import pytest

from coach.__main__ import main
from coach.app import lens as app_lens
from coach.app.example import example_plan
from coach.app.lens import known_field_of_view
from coach.app.sitting import opening_entry
from coach.domain.frame import Frame
from coach.storage.folders import OVERRIDE
from coach.storage.lenses import lenses_path
from tests.capture.rendered_board import Optics, Place, draw_places, film

OPTICS = Optics(field_of_view_deg=78.0, k1=-0.05)


class Filmed:
    """A camera or a file that shows the board."""

    size_px = OPTICS.size_px
    frames_per_s = 2.0
    frame_count = None
    frames_lost = 0

    def __init__(self, kind: Literal["camera", "file"], places: list[Place]) -> None:
        self.kind = kind
        self._places = places

    def __iter__(self) -> Iterator[Frame]:
        return film(OPTICS, self._places, np.random.default_rng(5))

    def close(self) -> None:
        pass


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.setenv(OVERRIDE, str(tmp_path))
    return tmp_path


def show(monkeypatch: pytest.MonkeyPatch, kind: Literal["camera", "file"], count: int) -> None:
    places = draw_places(np.random.default_rng(5), OPTICS, count)
    monkeypatch.setattr(app_lens, "open_source", lambda _: Filmed(kind, places))


def test_a_camera_is_checked_kept_and_used(
    folder: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    assert known_field_of_view(0, (1280, 720)) is None
    show(monkeypatch, "camera", 16)
    assert main(["lens", "--camera", "0"]) == 0
    printed = capsys.readouterr().out
    assert "edge away from the camera" in printed
    assert str(lenses_path()) in printed
    known = known_field_of_view(0, (1280, 720))
    assert known == pytest.approx(78.0, abs=0.6)
    assert known_field_of_view(0, (640, 480)) is None
    assert known_field_of_view(folder / "clip.mp4", (1280, 720)) is None
    entry = opening_entry(example_plan(), Filmed("camera", []), "0" * 64, known)
    assert entry.camera.field_of_view_deg == known


def test_a_clip_is_told_and_not_kept(
    folder: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    show(monkeypatch, "file", 16)
    assert main(["lens", "--clip", "board.mp4"]) == 0
    assert "--field-of-view 7" in capsys.readouterr().out
    assert not lenses_path().exists()


def test_too_little_is_one_sentence_and_keeps_nothing(
    folder: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    show(monkeypatch, "camera", 2)
    assert main(["lens", "--camera", "0"]) == 1
    told = capsys.readouterr().err
    assert told.startswith("coach: Only 2 different views")
    assert len(told.splitlines()) == 1
    assert not lenses_path().exists()


def test_a_broken_settings_file_is_told_and_the_default_used(
    folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    lenses_path().write_text("{")
    assert known_field_of_view(0, (1280, 720)) is None
    told = capsys.readouterr().err
    assert "lenses.json" in told
    assert len(told.splitlines()) == 1


@pytest.mark.parametrize("text", ["9", "171", "nan", "wide"])
def test_a_field_of_view_that_is_none_is_refused(
    text: str, capsys: pytest.CaptureFixture[str]
) -> None:
    with pytest.raises(SystemExit):
        main(
            ["measure", "c.mp4", "--movement", "flexion", "--side", "left", "--field-of-view", text]
        )
    assert "is no field of view; name 10 to 170 degrees" in capsys.readouterr().err
