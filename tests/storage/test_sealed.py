"""Sealed session files, opened with the age library itself and with nothing else."""

from __future__ import annotations

import io
import stat
import sys
import zipfile
from pathlib import Path

import msgspec
import pyrage
import pytest

from coach.documents.archive import pack_session, unpack_document, unpack_session
from coach.domain.fault import Fault
from coach.domain.session import SessionEnd
from coach.session.assemble import Assembled, assemble
from coach.session.entries import Entry, ExerciseStarted
from coach.storage import sealed
from coach.storage.diary_files import read_history
from coach.storage.folders import OVERRIDE
from coach.storage.journal_lines import journal_line
from coach.storage.keeper import SessionKeeper
from coach.storage.recovery import recover
from coach.storage.sealed import (
    PracticeIdentity,
    open_sealed,
    open_session_bytes,
    save_session,
    seal,
)
from coach.storage.session_file import read_session
from coach.storage.store import ImportOutcome, Store
from coach.storage.store_import import import_paths, session_files
from tests.storage import journaled

KEY = pyrage.x25519.Identity.generate()
PRACTICE = PracticeIdentity(str(KEY.to_public()), KEY)
OTHER = pyrage.x25519.Identity.generate()
CODE, SESSION_ID = "INVENTED", "c0ffee" + "ab" * 13
_opened = journaled.opened(SESSION_ID)
OPENED = msgspec.structs.replace(
    _opened, plan=msgspec.structs.replace(_opened.plan, practice_key=PRACTICE.public_key)
)
ENTRIES: list[Entry] = [
    OPENED,
    ExerciseStarted(time_s=1.0, planned_index=0, view="side"),  # type: ignore[arg-type]
    *journaled.repetition_entries(1),
    *journaled.repetition_entries(2),
    *journaled.ending(),
]
SESSION = assemble(ENTRIES)
LEAKS = [
    CODE.encode(),
    SESSION_ID.encode(),
    b"2026",
    b"10:15",
    b"1015",
    b"flexion",
    b"session.json",
    b"PK\x03\x04",
    b"stiff-shoulder",
    PRACTICE.public_key.encode(),
]


def finished(tmp_path: Path) -> Path:
    keeper = SessionKeeper(tmp_path / "journals", OPENED)
    keeper.keep(ENTRIES[1:])
    path = keeper.finish(tmp_path / "sessions", tmp_path / "own")
    assert path is not None
    return path


def test_only_the_practice_s_key_opens_what_a_sitting_left(tmp_path: Path) -> None:
    data = finished(tmp_path).read_bytes()
    archive = zipfile.ZipFile(io.BytesIO(pyrage.decrypt(data, [KEY])))
    assert msgspec.json.decode(archive.read("session.json"))["session_id"] == SESSION_ID
    assert archive.read("readings.csv") == SESSION.readings_csv
    with pytest.raises(pyrage.DecryptError):
        pyrage.decrypt(data, [OTHER])
    with pytest.raises(pyrage.DecryptError):
        pyrage.passphrase.decrypt(data, "")


def test_nothing_readable_is_in_the_file_its_name_or_beside_it(tmp_path: Path) -> None:
    path = finished(tmp_path)
    assert list((tmp_path / "sessions").iterdir()) == [path]
    assert path.name == f"{SESSION_ID[:12]}.shoulder.age"
    plain = pack_session(SESSION.document, SESSION.readings_csv, SESSION.landmarks_csv)
    # The same words are found in what was sealed: the search can fail.
    assert b"session.json" in plain
    data = path.read_bytes()
    for leak in LEAKS:
        assert leak not in data
        assert leak not in path.name.encode()
    assert stat.S_IMODE(path.stat().st_mode) == 0o600 or sys.platform == "win32"
    assert list((tmp_path / "journals").iterdir()) == []


def test_the_patient_keeps_a_readable_copy_that_the_diary_finds(tmp_path: Path) -> None:
    finished(tmp_path)
    (copy,) = (tmp_path / "own").iterdir()
    assert read_session(copy).document == SESSION.document
    if sys.platform != "win32":
        assert stat.S_IMODE(copy.stat().st_mode) == 0o600
        assert stat.S_IMODE(copy.parent.stat().st_mode) == 0o700
    documents, refused = read_history(tmp_path / "sessions", tmp_path / "own")
    assert (documents, refused) == ((SESSION.document,), ())
    assert read_history(tmp_path / "sessions") == ((), ())


def test_the_copy_is_in_the_program_s_own_folder(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv(OVERRIDE, str(tmp_path / "data"))
    save_session(tmp_path / "sessions", SESSION)
    (copy,) = (tmp_path / "data" / "own-sessions").iterdir()
    assert read_session(copy).document == SESSION.document


def test_without_a_key_the_file_is_the_open_zip(tmp_path: Path) -> None:
    document = msgspec.structs.replace(
        SESSION.document, plan=msgspec.structs.replace(OPENED.plan, practice_key=None)
    )
    session = Assembled(document, SESSION.readings_csv, SESSION.landmarks_csv)
    path = save_session(tmp_path / "sessions", session, tmp_path / "own")
    assert path.name.endswith(".shoulder.zip")
    assert not (tmp_path / "own").exists()
    assert open_session_bytes(path, None) == path.read_bytes()


@pytest.mark.parametrize("whole", [False, True])
def test_after_a_crash_the_file_is_sealed_too_and_only_once(tmp_path: Path, whole: bool) -> None:
    folder = tmp_path / "journals"
    folder.mkdir()
    lines = b"".join(map(journal_line, ENTRIES if whole else ENTRIES[:-2]))
    for _ in range(2):  # the second as after a crash between the file and the journal's removal
        (folder / "one.journal").write_bytes(lines)
        (found,) = recover(folder, tmp_path / "sessions", tmp_path / "own")
        assert found.path is not None
        assert found.path.name in found.message
        assert list(folder.iterdir()) == []
    (path,) = (tmp_path / "sessions").iterdir()
    document = unpack_document(pyrage.decrypt(path.read_bytes(), [KEY]), "sealed")
    because = SessionEnd.COMPLETED if whole else SessionEnd.INTERRUPTED
    assert (document.session_id, document.ended_because) == (SESSION_ID, because)
    for leak in LEAKS:
        assert leak not in path.read_bytes()
    assert len(list((tmp_path / "own").iterdir())) == 1


def test_another_file_of_the_name_is_not_overwritten(tmp_path: Path) -> None:
    taken = tmp_path / "sessions" / f"{SESSION_ID[:12]}.shoulder.age"
    taken.parent.mkdir()
    taken.write_bytes(b"something else")
    path = finished(tmp_path)
    assert path.name == f"{SESSION_ID}.shoulder.age"
    assert taken.read_bytes() == b"something else"


def test_a_mistyped_key_is_told_before_the_sitting(tmp_path: Path) -> None:
    last = "q" if PRACTICE.public_key[-1] != "q" else "p"
    plan = msgspec.structs.replace(OPENED.plan, practice_key=PRACTICE.public_key[:-1] + last)
    with pytest.raises(Fault, match="key in the plan is mistyped or cut short"):
        SessionKeeper(tmp_path / "journals", msgspec.structs.replace(OPENED, plan=plan))
    assert not (tmp_path / "journals").exists()


SMALL = seal(b"an invented sitting", PRACTICE.public_key)


def test_what_was_sealed_is_opened() -> None:
    assert open_sealed(SMALL, PRACTICE, "small") == b"an invented sitting"


def test_a_change_of_any_byte_is_refused() -> None:
    for place in range(len(SMALL)):
        changed = bytearray(SMALL)
        changed[place] ^= 1
        with pytest.raises(Fault, match=r"^small .*[.]$"):
            open_sealed(bytes(changed), PRACTICE, "small")


def test_a_cut_at_any_place_and_anything_behind_is_refused() -> None:
    for length in range(len(SMALL)):
        with pytest.raises(Fault, match=r"^small "):
            open_sealed(SMALL[:length], PRACTICE, "small")
    with pytest.raises(Fault, match="damaged"):
        open_sealed(SMALL + b"\n", PRACTICE, "small")


def test_a_cut_between_two_chunks_is_refused() -> None:
    """age encrypts chunks of 64 KiB, 16 bytes of tag each; the last one is marked as such."""
    data = seal(bytes(200_000), PRACTICE.public_key)
    payload = data.index(b"\n--- ") + len("\n--- ") + 43 + 1 + 16
    with pytest.raises(Fault, match="damaged or cut short"):
        open_sealed(data[: payload + 2 * (65_536 + 16)], PRACTICE, "small")


def mixed() -> bytes:
    """A passphrase beside a key, by hand: the format forbids it and no library writes it."""
    passphrase = pyrage.passphrase.encrypt(b"x", "a passphrase of many letters")
    stanza = passphrase[passphrase.index(b"-> scrypt") : passphrase.index(b"--- ")]
    end = SMALL.index(b"--- ")
    return SMALL[:end] + stanza + SMALL[end:]


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (seal(b"x", str(OTHER.to_public())), "not sealed for this practice's key"),
        (pyrage.encrypt(b"x", [KEY.to_public(), OTHER.to_public()]), "for others beside"),
        (mixed(), "damaged|not sealed for this practice"),
        (pyrage.passphrase.encrypt(b"x", "a passphrase of many letters"), "not sealed for this"),
        (b"PK\x03\x04", "not a sealed session file"),
        (b"", "not a sealed session file"),
        (b"age-encryption.org/v1\n" + b"-> X25519 x\ny\n" * 100_000, "longer beginning"),
        (b"age-encryption.org/v1\n--- " + b"\0" * 100, "damaged|not sealed|cut short"),
    ],
)
def test_what_is_not_for_this_practice_alone_is_refused(data: bytes, words: str) -> None:
    with pytest.raises(Fault, match=words) as found:
        open_sealed(data, PRACTICE, "strange")
    assert str(found.value).startswith("strange ")


def test_a_long_file_is_not_read(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sealed, "MAX_SEALED_BYTES", len(SMALL) - 1)
    (tmp_path / "long.shoulder.age").write_bytes(SMALL)
    with pytest.raises(Fault, match="too large"):
        open_session_bytes(tmp_path / "long.shoulder.age", PRACTICE)
    with pytest.raises(Fault, match="too large"):
        open_sealed(SMALL, PRACTICE, "small")


def test_the_secret_is_not_printed() -> None:
    assert "SECRET" not in repr(PRACTICE)
    assert str(KEY) not in repr(PRACTICE)


def test_sealed_files_are_imported_with_the_key_and_only_with_it(tmp_path: Path) -> None:
    path = finished(tmp_path)
    renamed = path.with_name("000000000000.shoulder (1).age")
    renamed.write_bytes(seal(b"no zip", PRACTICE.public_key))
    folder = path.parent
    assert set(session_files([folder])) == {path, renamed}
    store = Store(tmp_path / "store.sqlite")
    (locked,) = import_paths(store, [path])
    assert "is sealed: unlock the practice's key" in locked.reason
    wrong = PracticeIdentity(str(OTHER.to_public()), OTHER)
    (refused,) = import_paths(store, [path], wrong)
    assert "not sealed for this practice's key" in refused.reason
    outcomes = {o.path: o for o in import_paths(store, [folder], PRACTICE)}
    assert outcomes[path].outcome is ImportOutcome.ACCEPTED
    assert "not a session file" in outcomes[renamed].reason
    assert store.sessions_of(CODE) == (SESSION.document,)
    original = store.original(SESSION_ID)
    assert original is not None
    assert unpack_session(original, "original").document == SESSION.document
    # The patient's own copy is the same sitting.
    (again,) = import_paths(store, [tmp_path / "own"])
    assert again.outcome is ImportOutcome.KNOWN
    store.close()
