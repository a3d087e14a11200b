"""The practice's key at the command line, and sealed files into a locked store."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from coach.__main__ import main
from coach.review.wording import day
from coach.storage.keys import practice_key_path, public_key, unlock
from coach.storage.store import Store
from coach.storage.store_lock import is_locked

WORDS = "nine invented lanterns sway"
OTHER = "four invented kettles sing"


@pytest.fixture(autouse=True)
def own_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("STIFF_SHOULDER_COACH_FOLDER", str(tmp_path / "data"))


def typing(monkeypatch: pytest.MonkeyPatch, *words: str) -> None:
    waiting = list(words)
    monkeypatch.setattr("coach.app.passphrases.getpass", lambda _: waiting.pop(0))


def test_a_key_is_made_backed_up_lost_and_restored(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    typing(monkeypatch, WORDS, WORDS)
    assert main(["key", "make"]) == 0
    public = public_key(practice_key_path())
    assert public is not None
    assert public.startswith("age1")
    assert public in capsys.readouterr().out
    backup = tmp_path / "backup.age"
    typing(monkeypatch, WORDS, OTHER, OTHER)
    assert main(["key", "back-up", str(backup)]) == 0
    for path in practice_key_path().parent.glob("practice.key*"):
        path.unlink()
    assert main(["key", "show"]) == 1
    typing(monkeypatch, OTHER, WORDS, WORDS)
    assert main(["key", "restore", str(backup)]) == 0
    assert unlock(practice_key_path(), WORDS).public_key == public


def test_a_public_half_that_a_crash_left_out_is_written_when_it_is_asked_for(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    typing(monkeypatch, WORDS, WORDS, WORDS)
    assert main(["key", "make"]) == 0
    public = str(public_key(practice_key_path()))
    practice_key_path().with_name("practice.key.age.pub").unlink()
    assert main(["key", "show"]) == 0
    assert public in capsys.readouterr().out
    assert public_key(practice_key_path()) == public


def test_a_second_key_is_made_only_when_a_renewal_is_asked_for(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    typing(monkeypatch, WORDS, WORDS)
    assert main(["key", "make"]) == 0
    first = public_key(practice_key_path())
    assert main(["key", "make"]) == 1
    assert "coach key make --renew" in capsys.readouterr().err
    assert main(["key", "show", "--renew"]) == 1
    assert public_key(practice_key_path()) == first
    typing(monkeypatch, WORDS)
    assert main(["key", "make", "--renew"]) == 0
    second = public_key(practice_key_path())
    assert second != first
    capsys.readouterr()
    assert main(["key", "show"]) == 0
    new, old = capsys.readouterr().out.splitlines()
    today = day(date.today())
    assert new == f"{second}  made {today}; current, for new plans"
    assert old == f"{first}  made {today}; older, opens what was sealed for it"


def test_two_different_passphrases_make_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    typing(monkeypatch, WORDS, OTHER)
    assert main(["key", "make"]) == 1
    assert not practice_key_path().exists()


def test_a_backup_needs_a_name(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["key", "back-up"]) == 1
    assert "needs the name of the backup file" in capsys.readouterr().err


def test_a_store_is_locked(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    place = tmp_path / "review.sqlite"
    Store(place).close()
    typing(monkeypatch, WORDS, WORDS)
    assert main(["key", "lock-store", str(place)]) == 0
    assert is_locked(place)
    Store(place, WORDS).close()
