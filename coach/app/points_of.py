"""Which pose model found the points of a landmark table; the table itself does not say."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from coach.documents.archive import DOCUMENT, LANDMARKS
from coach.documents.landmarks import MAX_LANDMARKS_BYTES, read_landmarks
from coach.documents.session import MAX_SESSION_BYTES, ROUNDING_S, read_session_document
from coach.domain.fault import Fault
from coach.domain.pose import Pose, PoseModel
from coach.domain.session import SessionDocument
from coach.pose.bundle import sha256_of
from coach.storage.session_file import read_bounded
from coach.texts import translate


@dataclass(frozen=True, slots=True)
class TablePoses:
    """Poses of a table; ``named`` tells whether the document beside it names their models."""

    poses: tuple[Pose, ...]
    named: bool


def poses_of_table(path: Path, stated: PoseModel | None) -> TablePoses:
    """Read a landmark table, each pose with the model that found it, None where none is known.

    A session's own table lies beside its document, which names the model of each exercise by its
    SHA-256; for any other table, ``stated`` is what the person says.
    """
    table = read_landmarks(read_bounded(path, MAX_LANDMARKS_BYTES, "landmark table"), path.name)
    beside = path.with_name(DOCUMENT)
    if path.name != LANDMARKS or not beside.is_file():
        return TablePoses(tuple(table.poses([stated] * len(table))), named=False)
    data = read_bounded(beside, MAX_SESSION_BYTES, "session file")
    document = read_session_document(data, beside.name)
    models = [_model_at(document, float(time_s)) for time_s in table.time_s]
    if stated is not None and any(model is not stated for model in models):
        raise Fault(
            translate(
                "faults",
                "The points of {name} were not found by the pose model {model} alone, by what"
                " {document} beside it says; leave the model out.",
            ).format(name=path.name, model=stated, document=beside.name)
        )
    return TablePoses(tuple(table.poses(models)), named=True)


def _model_at(document: SessionDocument, time_s: float) -> PoseModel | None:
    """Give the model of the exercise at a time, in seconds since the session's start."""
    found = {
        document.software_of(record).model_sha256
        for record in document.exercises
        if record.started_s - ROUNDING_S <= time_s <= record.ended_s + ROUNDING_S
    }
    return next((m for m in PoseModel if found == {sha256_of(m)}), None)
