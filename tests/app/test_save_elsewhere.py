"""A session whose folder fails at its end, saved in another one and sent."""

from __future__ import annotations

from pathlib import Path

import msgspec
import pytest

from coach.app.sitting import Folders, Sitting
from coach.domain.moment import Order
from coach.domain.plan import Plan
from coach.domain.session import SessionEnd
from coach.storage.keys import make_practice_key, unlock
from coach.storage.recovery import recover
from coach.storage.sealed import PracticeIdentity
from coach.storage.store import ImportOutcome, Store
from coach.storage.store_import import import_paths
from tests.app.test_sealed_sitting import Source
from tests.test_pipeline import SeenBody, plan

PASSPHRASE = "seven herons eat toast"


def sealing(folder: Path) -> tuple[Plan, PracticeIdentity]:
    key = folder / "practice.key.age"
    public_key = make_practice_key(key, PASSPHRASE)
    return msgspec.structs.replace(plan(), practice_key=public_key), unlock(key, PASSPHRASE)


@pytest.mark.parametrize("sealed", [False, True], ids=["open", "sealed"])
def test_it_is_saved_elsewhere_and_where_it_belongs_at_the_next_start(
    tmp_path: Path, sealed: bool
) -> None:
    asked, identity = sealing(tmp_path) if sealed else (plan(), None)
    home = Folders(tmp_path / "journals", tmp_path / "sent", tmp_path / "own")
    broken = (home.sessions, home.own) if sealed else (home.sessions,)
    sitting = Sitting(asked, Source(), SeenBody(lambda _: False), home, started_s=0.0)
    sitting.order(0.0, Order.START)
    sitting.order(0.0, Order.PAIN, 2)
    sitting.order(0.0, Order.READY)
    for folder in broken:
        folder.write_text("a file where a folder is wanted")
    failed = sitting.finish(SessionEnd.STOPPED)
    assert failed.saved_at is None
    again = sitting.save_elsewhere(str(home.sessions))
    assert (again.document, again.saved_at) == (failed.document, None)
    assert again.fault is not None
    assert again.fault.startswith("sent could not be made: ")
    assert again.fault.endswith("kept, and saved when you start the program again.")
    saved = sitting.save_elsewhere(str(tmp_path / "stick"))
    assert (saved.document, saved.fault) == (failed.document, None)
    (sent,) = (tmp_path / "stick").iterdir()
    assert saved.saved_at == str(sent)
    assert sent.name.endswith(".age" if sealed else ".zip")
    sitting.close()

    for folder in broken:
        folder.unlink()
    (found,) = recover(home.journals, home.sessions, home.own)
    assert found.message.endswith(f"is saved now, as {found.path and found.path.name}.")
    assert list(home.journals.iterdir()) == []
    assert len(list((home.own if sealed else home.sessions).iterdir())) == 1
    store = Store(tmp_path / "store.sqlite")
    outcomes = [each.outcome for each in import_paths(store, [sent, home.sessions], identity)]
    store.close()
    assert outcomes == [ImportOutcome.ACCEPTED, ImportOutcome.KNOWN]


def test_what_is_in_memory_alone_goes_into_the_other_folder(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    home = Folders(tmp_path / "journals", tmp_path / "sent", tmp_path / "own")
    sitting = Sitting(plan(), Source(), SeenBody(lambda _: False), home, started_s=0.0)

    def full(descriptor: int, data: bytes) -> int:
        raise OSError(28, "full")

    monkeypatch.setattr("coach.storage.atomic.os.write", full)
    sitting.order(0.0, Order.START)
    sitting.order(0.0, Order.PAIN, 2)
    sitting.order(0.0, Order.READY)
    failed = sitting.finish(SessionEnd.STOPPED)
    assert failed.fault is not None
    assert "as long as this window is open" in failed.fault
    monkeypatch.undo()
    saved = sitting.save_elsewhere(str(tmp_path / "stick"))
    sitting.close()
    assert saved.document.exercises == failed.document.exercises
    assert len(saved.document.exercises) == 1
    assert saved.saved_at is not None
    store = Store(tmp_path / "store.sqlite")
    (taken,) = import_paths(store, [Path(saved.saved_at)])
    assert taken.outcome is ImportOutcome.ACCEPTED
    assert store.sessions_of(saved.document.plan.patient_code) == (saved.document,)
    store.close()
