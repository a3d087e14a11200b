"""What a record can be written as."""

from __future__ import annotations

from enum import StrEnum


class Kind(StrEnum):
    """Kinds of export."""

    FHIR = "fhir"
    CSV = "csv"
    MEASURES = "measures"
    NOTE = "note"
    PARQUET = "parquet"
