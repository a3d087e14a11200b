from __future__ import annotations

import hashlib
import json
from pathlib import Path

import pytest

from coach.domain.fault import Fault
from coach.pose.bundle import find_bundle, read_bundle


def manifest(sha256: str, file: str = "pose_full.task") -> str:
    return json.dumps({"bundles": {"pose_full": {"file": file, "sha256": sha256}}})


def test_the_bundle_at_hand_is_found_and_whole() -> None:
    path = find_bundle()
    bundle = read_bundle(path)
    assert bundle.content == path.read_bytes()
    assert bundle.sha256 == hashlib.sha256(bundle.content).hexdigest()


@pytest.mark.parametrize(
    ("listed", "words"),
    [
        (manifest("0" * 64), "is not the one that belongs to this program"),
        (manifest("0" * 64, "other.task"), "is not in the list of models"),
        ("{", "is damaged"),
        ("[]", "is damaged"),
        ('{"bundles": {"a": 3}}', "is damaged"),
        ('{"bundles": [1]}', "is damaged"),
        ("[" * 100_000, "is damaged"),
        (None, "list of pose models .* cannot be read"),
    ],
)
def test_a_bundle_that_does_not_match_is_refused(
    tmp_path: Path, listed: str | None, words: str
) -> None:
    path = tmp_path / "pose_full.task"
    path.write_bytes(b"not a model")
    if listed is not None:
        path.with_name("manifest.json").write_text(listed)
    with pytest.raises(Fault, match=words) as caught:
        read_bundle(path)
    assert str(caught.value).endswith("install the program again.")


def test_a_missing_bundle(tmp_path: Path) -> None:
    (tmp_path / "manifest.json").write_text(manifest("0" * 64))
    with pytest.raises(Fault, match=r"The pose model .* cannot be read"):
        read_bundle(tmp_path / "pose_full.task")
