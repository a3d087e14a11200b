"""Add to a TFLite model the metadata that says how image pixels become its input.

Slot numbers below are field positions in the published TFLite and TFLite metadata schemas.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import flatbuffers  # type: ignore[import-untyped]
from flatbuffers.number_types import Uint32Flags  # type: ignore[import-untyped]
from flatbuffers.table import Table  # type: ignore[import-untyped]

ALIGNMENT_BYTES = 16
LENGTH_WORD_BYTES = 4

MODEL_IDENTIFIER = b"TFL3"
METADATA_IDENTIFIER = b"M001"
METADATA_NAME = "TFLITE_METADATA"
PARSER_VERSION = "1.0.0"

MODEL_VERSION, MODEL_BUFFERS, MODEL_METADATA = 0, 4, 6
MODEL_KEPT_REFERENCES = (1, 2, 3, 5, 7)
OPTIONS_ARE_NORMALIZATION = 1
CONTENT_IS_IMAGE = 2
COLOR_SPACE_RGB = 1


@dataclass(frozen=True)
class Normalization:
    """How pixel values 0 to 255 become model input: (pixel - mean) / std."""

    mean: float
    std: float


def input_metadata(normalization: Normalization) -> bytes:
    """The TFLite ``ModelMetadata`` for a network with one RGB image as its input."""
    builder = flatbuffers.Builder(1024)
    mean, std = normalization.mean, normalization.std

    mean_vector, std_vector = _float_vector(builder, mean), _float_vector(builder, std)
    options = _table(builder, 2, {0: mean_vector, 1: std_vector})
    process_unit = _union_table(builder, OPTIONS_ARE_NORMALIZATION, options)

    builder.StartObject(2)
    builder.PrependInt8Slot(0, COLOR_SPACE_RGB, 0)
    image_properties = builder.EndObject()
    content = _union_table(builder, CONTENT_IS_IMAGE, image_properties)

    highest = _float_vector(builder, (255.0 - mean) / std)
    lowest = _float_vector(builder, (0.0 - mean) / std)
    stats = _table(builder, 4, {0: highest, 1: lowest})

    name = builder.CreateString("image")
    process_units = _reference_vector(builder, [process_unit])
    tensor = _table(builder, 7, {0: name, 3: content, 4: process_units, 5: stats})
    tensors = _reference_vector(builder, [tensor])
    subgraphs = _reference_vector(builder, [_table(builder, 10, {2: tensors})])
    parser_version = builder.CreateString(PARSER_VERSION)
    builder.Finish(_table(builder, 8, {3: subgraphs, 7: parser_version}), METADATA_IDENTIFIER)
    return bytes(builder.Output())


def add_input_metadata(model: bytes, normalization: Normalization) -> bytes:
    """Put a new root with input metadata in front of a TFLite model that has none.

    References in a FlatBuffer are relative and point forward, so the published bytes stay
    whole and unchanged at the end of the result (padded with zeros to the alignment).
    """
    if model[4:8] != MODEL_IDENTIFIER:
        raise ValueError("not a TFLite model")
    root = int.from_bytes(model[:4], "little")
    old = Table(bytearray(model), root)
    old_buffers = _referenced_positions(old, MODEL_BUFFERS)
    old_entries = _referenced_positions(old, MODEL_METADATA)

    tail = model + bytes(-len(model) % ALIGNMENT_BYTES)
    builder = flatbuffers.Builder(len(tail) + 65536)
    # The builder counts from the end of its output, so old position p is at model_start - p.
    model_start = builder.CreateByteVector(tail) - LENGTH_WORD_BYTES

    metadata = input_metadata(normalization)
    builder.Prep(ALIGNMENT_BYTES, len(metadata))
    buffer = _table(builder, 3, {0: builder.CreateByteVector(metadata)})
    buffers = _reference_vector(builder, [*(model_start - at for at in old_buffers), buffer])

    name = builder.CreateString(METADATA_NAME)
    builder.StartObject(2)
    builder.PrependUOffsetTRelativeSlot(0, name, 0)
    builder.PrependUint32Slot(1, len(old_buffers), 0)
    entry = builder.EndObject()
    entries = _reference_vector(builder, [*(model_start - at for at in old_entries), entry])

    builder.StartObject(8)
    version = old.Get(Uint32Flags, root + old.Offset(_vtable_offset(MODEL_VERSION)))
    builder.PrependUint32Slot(MODEL_VERSION, version, 0)
    for slot in MODEL_KEPT_REFERENCES:
        if field := old.Offset(_vtable_offset(slot)):
            target = old.Indirect(root + field)
            builder.PrependUOffsetTRelativeSlot(slot, model_start - target, 0)
    builder.PrependUOffsetTRelativeSlot(MODEL_BUFFERS, buffers, 0)
    builder.PrependUOffsetTRelativeSlot(MODEL_METADATA, entries, 0)
    builder.Finish(builder.EndObject(), MODEL_IDENTIFIER)
    return bytes(builder.Output())


def _vtable_offset(slot: int) -> int:
    return 4 + 2 * slot


def _referenced_positions(table: Any, slot: int) -> list[int]:
    """Positions of the tables in the vector that a table's slot refers to."""
    field = table.Offset(_vtable_offset(slot))
    if not field:
        return []
    start = table.Vector(field)
    return [table.Indirect(start + 4 * index) for index in range(table.VectorLen(field))]


def _table(builder: Any, slot_count: int, references: Mapping[int, int]) -> int:
    builder.StartObject(slot_count)
    for slot, reference in references.items():
        builder.PrependUOffsetTRelativeSlot(slot, reference, 0)
    return int(builder.EndObject())


def _union_table(builder: Any, union_type: int, reference: int) -> int:
    """A table whose first field is a union: its type, then its value."""
    builder.StartObject(2)
    builder.PrependUint8Slot(0, union_type, 0)
    builder.PrependUOffsetTRelativeSlot(1, reference, 0)
    return int(builder.EndObject())


def _reference_vector(builder: Any, references: Sequence[int]) -> int:
    builder.StartVector(4, len(references), 4)
    for reference in reversed(references):
        builder.PrependUOffsetTRelative(reference)
    return int(builder.EndVector())


def _float_vector(builder: Any, value: float) -> int:
    builder.StartVector(4, 1, 4)
    builder.PrependFloat32(value)
    return int(builder.EndVector())
