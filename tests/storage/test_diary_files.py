"""Session files read back for the patient's own diary."""

from __future__ import annotations

import zipfile
from pathlib import Path

import msgspec

from coach.documents.archive import LANDMARKS, READINGS, pack_session
from coach.documents.session import read_session_document
from coach.domain.session import SessionDocument
from coach.storage.diary_files import read_history

GOLDEN = Path(__file__).parents[1] / "documents" / "golden" / "session_v2.shoulder.zip"


def document() -> SessionDocument:
    with zipfile.ZipFile(GOLDEN) as archive:
        return read_session_document(archive.read("session.json"), "golden")


def write(folder: Path, name: str, made: SessionDocument) -> None:
    with zipfile.ZipFile(GOLDEN) as archive:
        data = pack_session(made, archive.read(READINGS), archive.read(LANDMARKS))
    (folder / f"{name}.shoulder.zip").write_bytes(data)


def test_documents_come_oldest_first_whatever_their_names(tmp_path: Path) -> None:
    starts = ["2026-03-02T08:00:00+13:00", "2026-03-01T10:00:00-10:00", "2026-02-01T10:00:00Z"]
    for index, start in enumerate(starts):
        made = msgspec.structs.replace(document(), session_id=f"{index:032x}", started_at=start)
        write(tmp_path, f"{index}", made)
    documents, refused = read_history(tmp_path)
    assert [d.started_at for d in documents] == [starts[2], starts[0], starts[1]]
    assert refused == ()


def test_the_same_session_twice_counts_once(tmp_path: Path) -> None:
    for name in ("a", "b"):
        write(tmp_path, name, document())
    documents, refused = read_history(tmp_path)
    assert len(documents) == 1
    assert refused == ()


def test_each_broken_file_has_its_sentence_and_hides_no_other(tmp_path: Path) -> None:
    write(tmp_path, "good", document())
    whole = (tmp_path / "good.shoulder.zip").read_bytes()
    (tmp_path / "cut.shoulder.zip").write_bytes(whole[: len(whole) // 2])
    (tmp_path / "text.shoulder.zip").write_text("no zip")
    (tmp_path / "folder.shoulder.zip").mkdir()
    (tmp_path / "notes.txt").write_text("not ours")
    documents, refused = read_history(tmp_path)
    assert len(documents) == 1
    assert len(refused) == 3
    for name, sentence in zip(("cut", "folder", "text"), sorted(refused), strict=False):
        assert any(name in each for each in refused), sentence
    assert not any("notes" in each for each in refused)


def test_what_is_no_table_of_readings_does_not_matter(tmp_path: Path) -> None:
    data = pack_session(document(), b"no table", b"no table")
    (tmp_path / "a.shoulder.zip").write_bytes(data)
    assert len(read_history(tmp_path)[0]) == 1


def test_no_folder_is_no_history(tmp_path: Path) -> None:
    assert read_history(tmp_path / "none") == ((), ())
    (tmp_path / "file").write_text("")
    documents, refused = read_history(tmp_path / "file")
    assert documents == ()
    assert len(refused) == 1
