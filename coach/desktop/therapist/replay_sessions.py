"""Which session is replayed, and which of its repetitions stands beside another's."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from pathlib import Path

from PyQt6.QtWidgets import QFileDialog, QInputDialog, QWidget

from coach.documents.archive import StoredSession, unpack_session
from coach.domain.fault import Fault
from coach.review.replay import Replay, repetitions_of
from coach.review.replay_wording import exercise_name
from coach.review.wording import counted, day
from coach.storage.sealed import PracticeIdentity, open_session_bytes
from coach.storage.store import Store

Choose = Callable[[QWidget], StoredSession | None]

SESSION_FILES = "Session files (*.shoulder*.zip *.shoulder*.age *.zip);;All files (*)"
"""What a dialog of files offers."""
_FROM_FILE = "A session file\N{HORIZONTAL ELLIPSIS}"


def choose_session(
    parent: QWidget, store: Store, code: str | None, identity: PracticeIdentity | None = None
) -> StoredSession | None:
    """Ask for one of a patient's sessions or for a file; None where the asking was given up.

    ``identity`` opens a file that was sealed for the practice.
    """
    documents = store.sessions_of(code)[::-1] if code else ()
    names = {}
    for document in documents:
        count = len(repetitions_of(document))
        if count:
            began = datetime.fromisoformat(document.started_at)
            when = f"{day(began.date())}, {began:%H:%M:%S}"
            names[f"{when}, {counted(count, 'repetition')}"] = document.session_id
    if names:
        chosen, taken = QInputDialog.getItem(
            parent, "Replay", "Session to replay", [*names, _FROM_FILE], 0, False
        )
        if not taken:
            return None
        if chosen in names:
            return unpack_session(store.original(names[chosen]), f"the session of {chosen}")
    name, _ = QFileDialog.getOpenFileName(parent, "Session file to replay", "", SESSION_FILES)
    if not name:
        return None
    path = Path(name)
    return unpack_session(open_session_bytes(path, identity), path.name)


def same_exercise(session: StoredSession, first: Replay) -> tuple[int, int]:
    """Find the repetition of the same number, or the last one before it, of the same exercise."""
    record = first.record
    key = (record.movement, record.side, record.position)
    exercises = session.document.exercises
    found = [
        place
        for place in repetitions_of(session.document)
        if (e := exercises[place[0]]) and (e.movement, e.side, e.position) == key
    ]
    if not found:
        raise Fault(
            f"The session of {session.document.started_at[:10]} has no repetition of "
            f"{exercise_name(first)}; choose another one."
        )
    upto = [place for place in found if place[1] <= first.repetition.number]
    return upto[-1] if upto else found[0]
