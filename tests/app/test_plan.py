from pathlib import Path

import msgspec
import pytest

from coach.app.example import example_plan
from coach.app.plan import KEPT_PLAN, open_plan
from coach.documents.plan import write_plan
from coach.domain.fault import Fault


@pytest.fixture
def kept(tmp_path: Path) -> Path:
    return tmp_path / "own" / KEPT_PLAN


def written(path: Path, code: str) -> Path:
    path.write_bytes(write_plan(msgspec.structs.replace(example_plan(), patient_code=code)))
    return path


def test_a_plan_once_opened_is_followed_at_later_starts(tmp_path: Path, kept: Path) -> None:
    path = written(tmp_path / "first.json", "KA-17")
    assert open_plan(path, kept).patient_code == "KA-17"
    path.unlink()
    assert open_plan(None, kept).patient_code == "KA-17"
    open_plan(written(tmp_path / "second.json", "KA-18"), kept)
    assert open_plan(None, kept).patient_code == "KA-18"


def test_the_first_start_without_a_plan_shows_the_example_and_keeps_nothing(kept: Path) -> None:
    assert open_plan(None, kept) == example_plan()
    assert not kept.exists()


def test_a_refused_plan_leaves_the_kept_one(tmp_path: Path, kept: Path) -> None:
    open_plan(written(tmp_path / "first.json", "KA-17"), kept)
    (tmp_path / "broken.json").write_text("{")
    with pytest.raises(Fault):
        open_plan(tmp_path / "broken.json", kept)
    assert open_plan(None, kept).patient_code == "KA-17"


def test_the_kept_plan_is_its_owners_alone(tmp_path: Path, kept: Path) -> None:
    open_plan(written(tmp_path / "first.json", "KA-17"), kept)
    assert kept.stat().st_mode & 0o077 == 0
    assert kept.parent.stat().st_mode & 0o077 == 0
