"""From a sitting at home to the therapist's store, sealed on the way."""

from __future__ import annotations

import errno
from collections.abc import Iterator
from pathlib import Path
from typing import Literal

import msgspec
import pytest
from pyrage.x25519 import Identity

from coach.app.plan import open_plan
from coach.app.sitting import Folders, Sitting
from coach.domain.fault import Fault
from coach.domain.frame import Frame
from coach.domain.moment import Order
from coach.domain.session import SessionEnd
from coach.storage.diary_files import read_history
from coach.storage.keys import make_practice_key, unlock
from coach.storage.recovery import recover
from coach.storage.session_file import read_session
from coach.storage.store import ImportOutcome, Store
from coach.storage.store_import import import_paths
from tests.test_pipeline import HELD_DEG, PICTURE, SeenBody, plan

PASSPHRASE = "seven herons eat toast"


def test_a_plan_with_a_mistyped_key_is_not_opened(tmp_path: Path) -> None:
    asked = msgspec.structs.replace(plan(), practice_key=str(Identity.generate().to_public()))
    path = tmp_path / "plan.json"
    path.write_bytes(msgspec.json.encode(asked))
    assert open_plan(path) == asked
    path.write_bytes(path.read_bytes().replace(b'"age1', b'"age1q'))
    with pytest.raises(Fault, match="key in the plan is mistyped"):
        open_plan(path)


class Source:
    """Ten frames a second for half a minute."""

    kind: Literal["file"] = "file"
    size_px = (640, 480)
    frames_per_s = 10.0
    frame_count = 330
    frames_lost = 0

    def __iter__(self) -> Iterator[Frame]:
        for n in range(self.frame_count):
            yield Frame(n, n / self.frames_per_s, PICTURE)

    def close(self) -> None:
        pass


def test_from_the_sitting_to_the_store(tmp_path: Path) -> None:
    key_file = tmp_path / "practice" / "practice.key.age"
    public_key = make_practice_key(key_file, PASSPHRASE)
    # At home: the plan carries the key.
    asked = msgspec.structs.replace(plan(), patient_code="HERON-7", practice_key=public_key)
    home = Folders(tmp_path / "data" / "journals", tmp_path / "sent", tmp_path / "data" / "own")
    source = Source()
    sitting = Sitting(asked, source, SeenBody(lambda _: False), home, started_s=0.0)
    sitting.order(0.0, Order.START)
    sitting.order(0.0, Order.PAIN, 2)
    for frame in source:
        sitting.step(frame)
    sitting.order(33.0, Order.PAIN, 3)
    outcome = sitting.finish(SessionEnd.COMPLETED)
    sitting.close()
    (sent,) = home.sessions.iterdir()
    assert (outcome.saved_at, outcome.fault) == (str(sent), None)
    assert b"HERON-7" not in sent.read_bytes()
    (document,), refused = read_history(home.sessions, home.own)
    assert (document, refused) == (outcome.document, ())
    # In the practice, after some mail: only the sealed file, and the key.
    store = Store(tmp_path / "practice" / "store.sqlite")
    (taken,) = import_paths(store, [sent], unlock(key_file, PASSPHRASE))
    assert (taken.outcome, taken.code) == (ImportOutcome.ACCEPTED, "HERON-7")
    (received,) = store.sessions_of("HERON-7")
    store.close()
    (exercise,) = received.exercises
    assert (exercise.pain_before, exercise.pain_after) == (2, 3)
    for repetition in exercise.repetitions:
        assert repetition.value == pytest.approx(HELD_DEG, abs=repetition.error)
    assert len(exercise.repetitions) == 2


def test_a_sitting_that_cannot_be_saved_says_when_it_will_be(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """On a disk that is full for the session file alone, and then for the journal as well."""

    def ended(name: str) -> tuple[str, Folders]:
        home = Folders(tmp_path / name / "journals", tmp_path / name / "sent", tmp_path / name)
        sitting = Sitting(plan(), Source(), SeenBody(lambda _: False), home, started_s=0.0)
        sitting.order(0.0, Order.START)
        sitting.order(0.0, Order.PAIN, 2)
        sitting.order(0.0, Order.READY)
        home.sessions.write_text("a file where a folder is wanted")
        if name == "both":
            monkeypatch.setattr("coach.storage.atomic.os.write", full)
        outcome = sitting.finish(SessionEnd.STOPPED)
        monkeypatch.undo()
        sitting.close()
        assert outcome.saved_at is None
        assert outcome.fault is not None
        home.sessions.unlink()
        return outcome.fault, home

    def full(descriptor: int, data: bytes) -> int:
        raise OSError(errno.ENOSPC, "full")

    for name, words in (
        ("file", "kept, and saved when you start the program again."),
        ("both", "as long as this window is open: make room first, then close it."),
    ):
        said, home = ended(name)
        assert said.endswith(words)
        (found,) = recover(home.journals, home.sessions, home.own)
        assert found.path is not None
        assert read_session(found.path).document.ended_because is SessionEnd.STOPPED
