"""Which plan the patient's window follows: the one named, else the one kept, else the example."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path
from typing import Final

from coach.app.example import example_plan
from coach.catalogue import catalogue
from coach.documents.plan import MAX_PLAN_BYTES, read_plan
from coach.domain.fault import Fault
from coach.domain.plan import Plan
from coach.review.wording import day
from coach.storage.atomic import make_folder, write_bytes
from coach.storage.sealed import check_public_key
from coach.storage.session_file import read_bounded
from coach.texts import translate

KEPT_PLAN: Final = "plan.json"
"""Name of the copy from which later starts go on."""


def open_plan(path: Path | None, kept: Path | None = None) -> Plan:
    """Read a plan file that still holds, and keep a copy of it at ``kept``.

    Without ``path`` the kept one is read, or where there is none the example plan.
    """
    if path is None and kept is not None and kept.exists():
        return _read(kept)[0]
    if path is None:
        return example_plan()
    plan, data = _read(path)
    if kept is not None:
        make_folder(kept.parent)
        write_bytes(kept, data)
    return plan


def _read(path: Path) -> tuple[Plan, bytes]:
    data = read_bounded(path, MAX_PLAN_BYTES, "plan file")
    plan = read_plan(data, str(path), catalogue().by_name)
    today = datetime.now().astimezone().date()
    if plan.valid_until is not None and plan.valid_until < today:
        told = (
            translate(
                "faults",
                "The plan in {path} ended on {day}; ask your practice for a new one ({contact}).",
            )
            if plan.contact
            else translate(
                "faults", "The plan in {path} ended on {day}; ask your practice for a new one."
            )
        )
        raise Fault(told.format(path=path, day=day(plan.valid_until), contact=plan.contact))
    if plan.practice_key is not None:
        check_public_key(plan.practice_key)
    return plan, data
