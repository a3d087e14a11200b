from __future__ import annotations

from pathlib import Path

import pytest

from coach.domain.fault import Fault
from coach.domain.lens import Lens, LensList
from coach.storage.lenses import keep_lens, load_lenses


def lens(camera: int, size: tuple[int, int], deg: float, name: str | None = None) -> Lens:
    return Lens(
        camera=camera,
        name=name,
        width_px=size[0],
        height_px=size[1],
        field_of_view_deg=deg,
        error_deg=0.5,
        miss_px=0.1,
        views=16,
    )


def test_what_is_kept_is_read_back_by_camera_and_shape(tmp_path: Path) -> None:
    path = tmp_path / "new" / "lenses.json"
    assert load_lenses(path) == LensList()
    keep_lens(path, lens(0, (1280, 720), 70.0))
    keep_lens(path, lens(0, (640, 480), 55.0))
    keep_lens(path, lens(1, (1280, 720), 80.0))
    known = load_lenses(path)
    for camera, size, deg in [
        (0, (1280, 720), 70.0),
        (0, (640, 360), 70.0),
        (0, (640, 480), 55.0),
        (1, (1920, 1080), 80.0),
    ]:
        found = known.of(camera, None, size)
        assert found is not None
        assert found.field_of_view_deg == deg
    assert known.of(2, None, (1280, 720)) is None
    assert known.of(1, None, (640, 480)) is None


def test_a_new_check_replaces_the_old_one(tmp_path: Path) -> None:
    path = tmp_path / "lenses.json"
    for deg in (70.0, 71.0):
        keep_lens(path, lens(0, (1280, 720), deg))
    assert [each.field_of_view_deg for each in load_lenses(path).lenses] == [71.0]


def test_a_name_counts_more_than_a_number() -> None:
    known = LensList(lenses=(lens(0, (1280, 720), 70.0, "one"),))
    assert known.of(3, "one", (1280, 720)) is not None
    assert known.of(0, "another", (1280, 720)) is None
    assert known.of(0, None, (1280, 720)) is not None


@pytest.mark.parametrize(
    "text",
    [
        "",
        "{",
        "[]",
        '{"format": "shoulder-lenses", "version": 2, "lenses": []}',
        '{"format": "shoulder-lenses", "version": 1, "lenses": [{"camera": 0}]}',
        '{"format": "shoulder-lenses", "version": 1, "lenses": [], "more": 1}',
        '{"format": "shoulder-lenses", "version": 1, "lenses": [{"camera": 0, "width_px": 640,'
        ' "height_px": 480, "field_of_view_deg": 5, "error_deg": 1, "miss_px": 1, "views": 9}]}',
        " " * 100_001,
    ],
)
def test_a_broken_file_is_one_sentence_and_a_new_check_mends_it(tmp_path: Path, text: str) -> None:
    path = tmp_path / "lenses.json"
    path.write_text(text)
    with pytest.raises(Fault, match=r"lenses\.json"):
        load_lenses(path)
    keep_lens(path, lens(0, (640, 480), 60.0))
    assert len(load_lenses(path).lenses) == 1
