"""Which session is replayed, and which of its repetitions stands beside another's."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime

from PyQt6.QtWidgets import QInputDialog, QWidget

from coach.desktop.shared.file_questions import ask_file
from coach.documents.archive import StoredSession, unpack_session
from coach.domain.fault import Fault
from coach.review.replay import Replay, repetitions_of
from coach.review.replay_wording import exercise_name
from coach.review.wording import day
from coach.storage.sealed import PracticeIdentity, open_session_bytes
from coach.storage.store import Store
from coach.texts import translate

Choose = Callable[[QWidget], StoredSession | None]


def session_file_kinds() -> str:
    """Give what a dialog of files offers."""
    return translate(
        "replay", "Session files (*.shoulder*.zip *.shoulder*.age *.zip);;All files (*)"
    )


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
            told = translate("replay", "{day}, {time}, {count} repetitions")
            if count == 1:
                told = translate("replay", "{day}, {time}, 1 repetition")
            name = told.format(day=day(began.date()), time=f"{began:%H:%M:%S}", count=count)
            names[name] = document.session_id
    if names:
        title, label = translate("replay", "Replay"), translate("replay", "Session to replay")
        from_file = translate("replay", "A session file\N{HORIZONTAL ELLIPSIS}")
        chosen, taken = QInputDialog.getItem(parent, title, label, [*names, from_file], 0, False)
        if not taken:
            return None
        if chosen in names:
            where = translate("replay", "the session of {session}").format(session=chosen)
            return unpack_session(store.original(names[chosen]), where)
    title = translate("replay", "Session file to replay")
    path = ask_file(parent, title, session_file_kinds())
    if path is None:
        return None
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
            translate(
                "replay",
                "The session of {day} has no repetition of {exercise}; choose another one.",
            ).format(day=began_on(session), exercise=exercise_name(first))
        )
    upto = [place for place in found if place[1] <= first.repetition.number]
    return upto[-1] if upto else found[0]


def began_on(session: StoredSession) -> str:
    """Write the day of a session."""
    return day(datetime.fromisoformat(session.document.started_at).date())
