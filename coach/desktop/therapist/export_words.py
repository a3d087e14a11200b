"""What is said of each file that can be written of a patient."""

from __future__ import annotations

from dataclasses import dataclass
from typing import assert_never

from coach.exchange.kind import Kind
from coach.texts import translate


@dataclass(frozen=True, slots=True)
class ExportedFile:
    """A file's part of its name and ending; ``title`` and ``kinds`` of the dialog that asks.

    ``told`` is the sentence when it is written, with a place for its path.
    """

    word: str
    ending: str
    kinds: str
    title: str
    told: str


def exported_file(kind: Kind | None) -> ExportedFile:
    """Give a kind's file; None stands for the report."""
    match kind:
        case None:
            return ExportedFile(
                "report",
                ".pdf",
                translate("exports", "PDF (*.pdf)"),
                translate("exports", "Write the report"),
                translate("exports", "The report is in {path}."),
            )
        case Kind.FHIR:
            return ExportedFile(
                "record",
                ".json",
                translate("exports", "FHIR as JSON (*.json)"),
                translate("exports", "Write the FHIR bundle"),
                translate("exports", "The FHIR bundle is in {path}."),
            )
        case Kind.CSV:
            return ExportedFile(
                "holds",
                ".csv",
                translate("exports", "Table (*.csv)"),
                translate("exports", "Write the table of holds"),
                translate("exports", "The table of holds is in {path}."),
            )
        case Kind.MEASURES:
            return ExportedFile(
                "measures",
                ".csv",
                translate("exports", "Table (*.csv)"),
                translate("exports", "Write the table of own measures"),
                translate("exports", "The table of own measures is in {path}."),
            )
        case Kind.NOTE:
            return ExportedFile(
                "note",
                ".txt",
                translate("exports", "Text (*.txt)"),
                translate("exports", "Write the note"),
                translate("exports", "The note is in {path}."),
            )
        case Kind.PARQUET:
            raise ValueError(kind)
        case _:
            assert_never(kind)
