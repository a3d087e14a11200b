"""Session files from strangers: every trick is refused in a sentence."""

from __future__ import annotations

import io
import stat
import struct
import zipfile
from collections.abc import Callable

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from coach.documents.archive import pack_session, unpack_document, unpack_session
from coach.documents.landmarks import write_landmarks
from coach.documents.readings import write_readings
from coach.domain.fault import Fault
from coach.domain.movement import Unit

NAMES = ["README.txt", "session.json", "readings.csv", "landmarks.csv"]


def parts(data: bytes) -> dict[str, bytes]:
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        return {name: archive.read(name) for name in archive.namelist()}


def zipped(
    members: list[tuple[str | zipfile.ZipInfo, bytes]],
    method: int = zipfile.ZIP_DEFLATED,
    comment: bytes = b"",
) -> bytes:
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w", method) as archive:
        for name, content in members:
            archive.writestr(name, content)
        archive.comment = comment
    return buffer.getvalue()


def refusal(data: bytes) -> str:
    with pytest.raises(Fault) as refused:
        unpack_session(data, "anna.zip")
    text = str(refused.value)
    assert "anna.zip" in text
    assert text.count(". ") == 0
    assert text.endswith(".")
    return text


def test_writes_the_zip_profile_of_iso_21320(golden: bytes) -> None:
    """Local headers read by hand: stored or deflated, no encryption, no descriptors."""
    position, names = 0, []
    while golden[position : position + 4] == b"PK\x03\x04":
        needed, flags, method = struct.unpack_from("<3H", golden, position + 4)
        packed, _, name_length, extra_length = struct.unpack_from("<2L2H", golden, position + 18)
        names.append(golden[position + 30 : position + 30 + name_length].decode("ascii"))
        assert needed <= 45
        assert method in (0, 8)
        assert flags == 0
        assert extra_length == 0
        position += 30 + name_length + packed
    assert names == NAMES
    assert golden[position : position + 4] == b"PK\x01\x02"
    assert b"One sitting of shoulder exercises" in golden[:200]


def test_the_same_content_gives_the_same_bytes_and_comes_back(golden: bytes) -> None:
    session = unpack_session(golden, "golden")
    tables = write_readings(session.readings, Unit.RATIO), write_landmarks(session.landmarks)
    again = pack_session(session.document, *tables)
    assert again == pack_session(session.document, *tables)
    assert unpack_document(again, "again") == session.document
    assert parts(again)["readings.csv"] == parts(golden)["readings.csv"]
    assert parts(again)["landmarks.csv"] == parts(golden)["landmarks.csv"]


def test_takes_a_file_that_was_unpacked_and_packed_again(golden: bytes) -> None:
    members = parts(golden)
    for method in (zipfile.ZIP_STORED, zipfile.ZIP_DEFLATED):
        again = zipped([(name, members[name]) for name in reversed(NAMES[1:])], method)
        assert unpack_document(again, "again") == unpack_document(golden, "golden")


def link(name: str) -> zipfile.ZipInfo:
    info = zipfile.ZipInfo(name)
    info.external_attr = (stat.S_IFLNK | 0o777) << 16
    return info


@pytest.mark.parametrize(
    ("change", "words"),
    [
        (lambda m: zipped([*m, ("../../evil.txt", b"x")]), "more than the 4 parts"),
        (lambda m: zipped([*m[1:], ("../../evil.txt", b"x")]), "'../../evil.txt', which is no"),
        (lambda m: zipped([*m[1:], ("/etc/passwd", b"x")]), "'/etc/passwd', which is no part"),
        (lambda m: zipped(m).replace(b"README.txt", b"README\x00txt"), "no part of a session"),
        (lambda m: zipped([*m[1:], ("video.mp4", b"x")]), "'video.mp4', which is no part"),
        (lambda m: zipped([*m[1:], m[1]]), "holds session.json twice"),
        (lambda m: zipped([m[0], m[2], m[3]]), "no session.json inside"),
        (lambda m: zipped([m[0], m[1], m[2]]), "no landmarks.csv inside"),
        (lambda m: zipped([*m[:3], (link("landmarks.csv"), b"/etc/passwd")]), "link or folder"),
        (lambda m: zipped([], comment=b""), "is not a session file"),
        (lambda m: zipped(m, zipfile.ZIP_BZIP2), "packed in a way that session files do not"),
        (lambda m: zipped(m, zipfile.ZIP_LZMA), "packed in a way that session files do not"),
        (lambda m: zipped(m, comment=b"hello"), "damaged or cut short"),
        (lambda m: b"#!/bin/sh\n" + zipped(m), "is not a session file"),
        (lambda m: zipped(m) + b"\x00", "damaged or cut short"),
        (lambda m: b"", "is not a session file"),
        (lambda m: b"A letter, not a session.", "is not a session file"),
        (lambda m: zipped([*m[:3], ("landmarks.csv", bytes(70_000_000))]), "unpacks to 70,000,000"),
        (lambda m: zipped([(f"{i:03}.json", b"") for i in range(500)]), "more than the 4 parts"),
    ],
)
def test_refuses_tricks(
    golden: bytes, change: Callable[[list[tuple[str, bytes]]], bytes], words: str
) -> None:
    with pytest.warns(UserWarning, match="Duplicate") if "twice" in words else _nothing():
        data = change(list(parts(golden).items()))
    assert words in refusal(data)


class _nothing:  # noqa: N801 - reads as a word beside pytest.warns
    def __enter__(self) -> None: ...
    def __exit__(self, *_: object) -> None: ...


def patched(data: bytes, name: str, offset_local: int, offset_central: int, value: bytes) -> bytes:
    """Change a field of one member in both of its headers."""
    changed = bytearray(data)
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        start = archive.getinfo(name).header_offset
    central = data.rindex(b"PK\x01\x02", 0, data.rindex(name.encode()))
    for place in (start + offset_local, central + offset_central):
        changed[place : place + len(value)] = value
    return bytes(changed)


def test_refuses_an_encrypted_member(golden: bytes) -> None:
    assert "encrypted" in refusal(patched(golden, "session.json", 6, 8, b"\x01\x00"))


def test_refuses_a_bomb_that_lies_about_its_size() -> None:
    """The header says 100 bytes, the content is 40 MB: no more than 100 are ever unpacked."""
    bomb = zipped(
        [("session.json", bytes(40_000_000)), ("readings.csv", b""), ("landmarks.csv", b"")]
    )
    assert len(bomb) < 60_000
    lying = patched(bomb, "session.json", 22, 24, struct.pack("<L", 100))
    assert "damaged or cut short" in refusal(lying)


def test_refuses_a_member_whose_checksum_is_wrong(golden: bytes) -> None:
    assert "damaged or cut short" in refusal(patched(golden, "readings.csv", 14, 16, b"\0\0\0\0"))


def test_refuses_the_file_cut_anywhere(golden: bytes) -> None:
    for length in range(len(golden)):
        refusal(golden[:length])


@settings(max_examples=300, deadline=None)
@given(st.data())
def test_a_changed_byte_is_refused_or_changes_nothing(golden: bytes, data: st.DataObject) -> None:
    """What may change unseen: the explanation, dates and rights, which are not read."""
    place = data.draw(st.integers(0, len(golden) - 1))
    changed = bytearray(golden)
    changed[place] = data.draw(st.integers(0, 255))
    try:
        session = unpack_session(bytes(changed), "anna.zip")
    except Fault:
        return
    original = unpack_session(golden, "golden")
    assert session.document == original.document
    assert write_readings(session.readings) == write_readings(original.readings)


@pytest.mark.parametrize("year", [b"0001", b"1969", b"2200", b"9999"])
def test_a_date_that_no_session_has_is_refused(golden: bytes, year: bytes) -> None:
    """The review counts weeks from one session to another, and the calendar ends in 9999."""
    members = parts(golden)
    at = members["session.json"].index(b'"started_at": "') + 15
    changed = members["session.json"][:at] + year + members["session.json"][at + 4 :]
    members["session.json"] = changed
    assert "is not from 1970 to 2199" in refusal(zipped(list(members.items())))


def test_a_newer_file_says_so(golden: bytes) -> None:
    members = parts(golden)
    members["session.json"] = members["session.json"].replace(b'"version": 4', b'"version": 5', 1)
    text = refusal(zipped(list(members.items())))
    assert "newer version of this program" in text
