"""The practice's key: made, locked, backed up and restored; opened with the age library itself."""

from __future__ import annotations

import shutil
import stat
import sys
from datetime import date
from pathlib import Path

import pyrage
import pytest

from coach.domain.fault import Fault
from coach.storage.key_text import PublicKey, read_public, read_secret
from coach.storage.keys import (
    back_up,
    make_practice_key,
    newest_for,
    public_key,
    public_keys,
    renew,
    restore,
    unlock,
)
from coach.storage.sealed import PracticeIdentity, open_sealed, seal

PASSPHRASE, OTHER = "seven herons eat toast", "thirty lamps under snow"


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("practice") / "data" / "practice.key.age"
    assert make_practice_key(path, PASSPHRASE) == public_key(path)
    return path


@pytest.fixture(scope="module")
def identity(made: Path) -> PracticeIdentity:
    """Unlocking takes a second of computing by design; most tests share one."""
    return unlock(made, PASSPHRASE)


def test_the_key_is_an_age_identity_under_the_passphrase(
    made: Path, identity: PracticeIdentity
) -> None:
    text = pyrage.passphrase.decrypt(made.read_bytes(), PASSPHRASE).decode()
    (secret,) = [line for line in text.splitlines() if not line.startswith("#")]
    key = pyrage.x25519.Identity.from_str(secret)
    assert str(key.to_public()) == public_key(made)
    assert identity.public_key == public_key(made)
    sealed = pyrage.encrypt(b"sitting", [key.to_public()])
    assert open_sealed(sealed, identity, "sealed") == b"sitting"


def test_the_secret_is_on_no_file_and_the_owner_alone_may_read(
    made: Path, identity: PracticeIdentity
) -> None:
    secret = str(identity.key).encode()
    assert secret.startswith(b"AGE-SECRET-KEY-1")
    files = list(made.parent.iterdir())
    assert {f.name for f in files} == {"practice.key.age", "practice.key.age.pub"}
    for file in files:
        assert secret not in file.read_bytes()
        assert b"SECRET" not in file.read_bytes()
        assert stat.S_IMODE(file.stat().st_mode) == 0o600 or sys.platform == "win32"


def test_a_wrong_passphrase_is_one_sentence(made: Path) -> None:
    with pytest.raises(Fault, match="does not open: type the passphrase again"):
        unlock(made, OTHER)


def test_a_key_is_never_replaced(made: Path) -> None:
    before = made.read_bytes()
    with pytest.raises(Fault, match="already"):
        make_practice_key(made, PASSPHRASE)
    assert made.read_bytes() == before


def test_a_backup_restores_the_key_under_a_new_passphrase(
    made: Path, identity: PracticeIdentity, tmp_path: Path
) -> None:
    """U+00E9 and U+0065 U+0301 are canonically equivalent (Unicode Standard Annex 15)."""
    backup = tmp_path / "stick" / "backup.age"
    back_up(identity, backup, "caf\u00e9 au lait at seven")
    assert b"SECRET" not in backup.read_bytes()
    new = tmp_path / "new machine" / "practice.key.age"
    with pytest.raises(Fault, match="does not open"):
        restore(new, backup, PASSPHRASE, PASSPHRASE)
    assert not new.exists()
    assert restore(new, backup, "cafe\u0301 au lait at seven", OTHER) == public_key(made)
    sealed = seal(b"sitting", str(public_key(made)))
    assert open_sealed(sealed, unlock(new, OTHER), "s") == b"sitting"


def test_an_age_tool_s_locked_key_is_taken_and_no_other_replaces_it(
    made: Path, tmp_path: Path
) -> None:
    """``age-keygen | age -p`` leaves comments before the key, and a line feed after it."""
    key = pyrage.x25519.Identity.generate()
    text = f"# created: 2026-01-02T03:04:05Z\n# public key: {key.to_public()}\n{key}\n"
    (tmp_path / "k.age").write_bytes(pyrage.passphrase.encrypt(text.encode(), OTHER))
    place = tmp_path / "practice.key.age"
    assert restore(place, tmp_path / "k.age", OTHER, PASSPHRASE) == str(key.to_public())
    before = place.read_bytes()
    with pytest.raises(Fault, match="another practice key"):
        restore(place, made, PASSPHRASE, PASSPHRASE)
    assert place.read_bytes() == before


@pytest.mark.parametrize("bad", ["", "fourteen chars", "a passphrase\nof two lines", "x" * 2_000])
def test_a_bad_new_passphrase_makes_nothing(tmp_path: Path, bad: str) -> None:
    with pytest.raises(Fault, match="passphrase has"):
        make_practice_key(tmp_path / "practice.key.age", bad)
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("content", [b"", b"no key", b"age-encryption.org/v1\n"])
def test_what_is_no_key_is_one_sentence(tmp_path: Path, content: bytes) -> None:
    path = tmp_path / "practice.key.age"
    with pytest.raises(Fault, match="There is no practice key"):
        unlock(path, PASSPHRASE)
    path.write_bytes(content)
    with pytest.raises(Fault, match="does not open"):
        unlock(path, PASSPHRASE)


def test_a_damaged_public_half_is_told_and_mended_by_unlocking(made: Path) -> None:
    beside = made.with_name("practice.key.age.pub")
    good = beside.read_bytes()
    beside.write_bytes(b"\xffage1")
    with pytest.raises(Fault, match="public key in"):
        public_key(made)
    unlock(made, PASSPHRASE)
    assert beside.read_bytes() == good
    assert public_key(made.with_name("none")) is None


def test_a_busy_machine_is_asked_again_before_a_key_is_refused(
    made: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """2**30 is what no machine does in the time that the library allows."""
    _, head, rest = made.read_bytes().split(b"\n", 2)
    slow = b"\n".join([b"age-encryption.org/v1", head.rsplit(b" ", 1)[0] + b" 30", rest])
    with pytest.raises(pyrage.DecryptError) as too_slow:
        pyrage.passphrase.decrypt(slow, PASSPHRASE)
    key, tries = f"{pyrage.x25519.Identity.generate()}\n".encode(), 0

    def decrypt(locked: bytes, passphrase: str) -> bytes:
        nonlocal tries
        tries += 1
        if tries < quick_after:
            raise too_slow.value
        return key

    monkeypatch.setattr("coach.storage.keys.pyrage.passphrase.decrypt", decrypt)
    quick_after = 5
    path = Path(shutil.copy(made, tmp_path))
    assert str(unlock(path, PASSPHRASE).key) == key.decode().strip()
    quick_after = 1_000
    with pytest.raises(Fault, match=r"while this computer is so busy: close other programs and"):
        unlock(path, PASSPHRASE)


class Killed(BaseException):
    """In place of a kill, between the locked key and its public half."""


@pytest.mark.parametrize("doing", ["made", "restored", "renewed"])
def test_after_a_kill_before_the_public_half_is_written_unlocking_writes_it(
    made: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, doing: str
) -> None:
    path = tmp_path / "practice.key.age"
    if doing == "renewed":
        restore(path, made, PASSPHRASE, PASSPHRASE)

    def kill(place: Path, identity: PracticeIdentity) -> None:
        raise Killed

    monkeypatch.setattr("coach.storage.keys._write_public", kill)
    deeds = {
        "made": lambda: make_practice_key(path, PASSPHRASE),
        "restored": lambda: restore(path, made, PASSPHRASE, PASSPHRASE),
        "renewed": lambda: renew(path, PASSPHRASE),
    }
    with pytest.raises(Killed):
        deeds[doing]()
    monkeypatch.undo()
    if doing == "renewed":  # plans go on with the key that everybody has
        assert public_key(path) == public_key(made)
    else:
        with pytest.raises(Fault, match=r"\.pub is missing: unlock the practice's key once"):
            public_key(path)
    identity = unlock(path, PASSPHRASE)
    assert public_key(path) == identity.public_key
    assert (public_key(made) in {key.text for key in public_keys(path)}) is (doing != "made")


def test_a_restoring_that_was_killed_is_begun_anew(made: Path, tmp_path: Path) -> None:
    path = tmp_path / "practice.key.age"
    shutil.copy(made, path)  # its public half is not there yet
    assert restore(path, made, PASSPHRASE, OTHER) == public_key(made) == public_key(path)


def test_a_key_that_nobody_can_compare_is_not_replaced(made: Path, tmp_path: Path) -> None:
    path = tmp_path / "practice.key.age"
    key = pyrage.x25519.Identity.generate()
    locked = pyrage.passphrase.encrypt(str(key).encode(), "a third passphrase of all")
    path.write_bytes(locked)
    with pytest.raises(Fault, match="nobody can say whether the backup has it: unlock it once"):
        restore(path, made, PASSPHRASE, OTHER)
    assert path.read_bytes() == locked
    locked = pyrage.passphrase.encrypt(str(key).encode(), OTHER)
    path.write_bytes(locked)
    with pytest.raises(Fault, match=r"another practice key .* that is not in practice\.key\.age"):
        restore(path, made, PASSPHRASE, OTHER)
    assert path.read_bytes() == locked


@pytest.fixture(scope="module")
def renewed(made: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The same key renewed once, in a folder of its own."""
    path = tmp_path_factory.mktemp("renewed") / made.name
    for name in (made.name, f"{made.name}.pub"):
        shutil.copy(made.with_name(name), path.with_name(name))
    renew(path, PASSPHRASE, date(2026, 3, 1))
    return path


@pytest.fixture(scope="module")
def both(renewed: Path) -> PracticeIdentity:
    return unlock(renewed, PASSPHRASE)


def test_after_a_renewal_what_was_sealed_for_either_key_opens(
    made: Path, renewed: Path, both: PracticeIdentity
) -> None:
    """The one made before was written as the program did when it kept one key and no day."""
    old, new = str(public_key(made)), str(public_key(renewed))
    assert public_keys(renewed) == (PublicKey(new, date(2026, 3, 1)), PublicKey(old))
    assert both.public_key == new != old
    assert both.made_on == date(2026, 3, 1)
    for key in (old, new):
        assert open_sealed(seal(b"sitting", key), both, "s") == b"sitting"
    foreign = str(pyrage.x25519.Identity.generate().to_public())
    with pytest.raises(Fault, match=r"^s was not sealed for this practice's key .*[.]$"):
        open_sealed(seal(b"sitting", foreign), both, "s")
    text = pyrage.passphrase.decrypt(renewed.read_bytes(), PASSPHRASE).decode()
    secrets = [line for line in text.splitlines() if not line.startswith("#")]
    for file in renewed.parent.iterdir():
        assert b"SECRET" not in file.read_bytes()
        assert stat.S_IMODE(file.stat().st_mode) == 0o600 or sys.platform == "win32"
    assert [str(pyrage.x25519.Identity.from_str(s).to_public()) for s in secrets] == [new, old]
    # An age program that seals for the file of public keys seals for the new one alone.
    lines = renewed.with_name(f"{renewed.name}.pub").read_text().splitlines()
    assert [line for line in lines if not line.startswith("#")] == [new]


def test_a_plan_with_an_older_key_gets_the_newest(made: Path, renewed: Path) -> None:
    old, new = str(public_key(made)), str(public_key(renewed))
    assert [newest_for(renewed, key) for key in (old, new, "", "age1x")] == [new, new, "", "age1x"]
    assert newest_for(made.with_name("none"), old) == old


def test_a_backup_has_every_key_and_one_without_the_newest_changes_nothing(
    made: Path, renewed: Path, both: PracticeIdentity, tmp_path: Path
) -> None:
    backup, place = tmp_path / "backup.age", tmp_path / "data" / "practice.key.age"
    back_up(both, backup, OTHER)
    shutil.copytree(made.parent, place.parent)
    assert restore(place, backup, OTHER, PASSPHRASE) == public_key(renewed)
    assert public_keys(place) == public_keys(renewed)
    before = {f: f.read_bytes() for f in place.parent.iterdir()}
    with pytest.raises(Fault, match=r"not in practice\.key\.age, and files may be sealed for it"):
        restore(place, made, PASSPHRASE, PASSPHRASE)
    damaged = bytearray(backup.read_bytes())
    damaged[-1] ^= 1
    backup.write_bytes(damaged)
    with pytest.raises(Fault, match="does not open"):
        restore(place, backup, OTHER, PASSPHRASE)
    assert {f: f.read_bytes() for f in place.parent.iterdir()} == before


def test_a_text_with_a_line_that_is_no_key_is_not_read_in_part() -> None:
    key = str(pyrage.x25519.Identity.generate())
    assert str(read_secret(f"# created: 2026-99-99\r\n\r\n{key}\r\n").key) == key
    for bad in ("", "# none", f"{key}\n{key[:-1]}", f"{key}\nAGE-PLUGIN-1X"):
        with pytest.raises(ValueError, match=r"no key|no age identity"):
            read_secret(bad)
    public = str(pyrage.x25519.Identity.from_str(key).to_public())
    for bad in ("", f"# older: {public}", f"{public}\n{public}", public[:-1]):
        with pytest.raises(ValueError, match=r"not one key|no age recipient"):
            read_public(bad)


def test_more_keys_than_can_be_read_again_are_not_written(
    renewed: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("coach.storage.keys.MOST_KEYS", 1)
    with pytest.raises(Fault, match="More than 1 practice keys"):
        restore(tmp_path / "practice.key.age", renewed, PASSPHRASE, PASSPHRASE)
    assert list(tmp_path.iterdir()) == []
