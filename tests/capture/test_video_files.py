from __future__ import annotations

import itertools
import math
import os
import socket
import struct
import subprocess
import sys
import threading
from pathlib import Path

import cv2
import numpy as np
import pytest

from coach.capture.sources import open_source
from coach.capture.video_file import VideoFile
from coach.domain.fault import Fault
from tests.fuzz.judge import wrong_with

from .clips import corner_picture, rewrite, set_durations, turn_quarter_clockwise, write_clip


def moving(count: int, width: int = 160, height: int = 120) -> list[np.ndarray]:
    noise = np.random.default_rng(1).integers(0, 255, (height, width, 3), np.uint8)
    return [np.roll(noise, 3 * n, axis=1) for n in range(count)]


def test_frames_are_rgb_upright_contiguous_and_read_only(tmp_path: Path) -> None:
    source = open_source(str(write_clip(tmp_path / "a.mp4", [corner_picture(160, 120)] * 4)))
    frames = list(source)
    assert source.kind == "file"
    assert source.size_px == (160, 120)
    assert source.frame_count == len(frames) == 4
    assert [frame.index for frame in frames] == [0, 1, 2, 3]
    picture = frames[0].image_rgb
    assert picture.dtype == np.uint8
    assert picture.flags.c_contiguous
    assert not picture.flags.writeable
    np.testing.assert_allclose(picture[20, 20], (220, 30, 30), atol=20)
    np.testing.assert_allclose(picture[100, 140], (90, 90, 90), atol=20)
    source.close()
    source.close()


def test_the_rotation_tag_of_a_phone_turns_the_picture_upright(tmp_path: Path) -> None:
    clip = write_clip(tmp_path / "phone.mp4", [corner_picture(160, 120)] * 3)
    turn_quarter_clockwise(clip)
    source = open_source(clip)
    frame = next(iter(source))
    assert source.size_px == frame.size_px == (120, 160)
    red = frame.image_rgb[..., 0] > 150
    # The top left quarter of the stored picture is at the top right once turned clockwise.
    assert red[:80, 60:].mean() > 0.95
    assert red[80:].mean() < 0.05
    assert red[:, :60].mean() < 0.05


def test_stamps_of_a_variable_frame_rate_are_those_of_the_container(tmp_path: Path) -> None:
    clip = write_clip(tmp_path / "phone.mp4", moving(30))
    ticks = [int(n) for n in np.random.default_rng(2).integers(100, 2000, 30)]
    tick_s = set_durations(clip, ticks)
    stamps = [frame.time_s for frame in open_source(clip)]
    expected = np.concatenate([[0], np.cumsum(ticks)[:-1]]) * tick_s
    np.testing.assert_allclose(stamps, expected, atol=1e-6)


@pytest.mark.parametrize("size", [(161, 121), (97, 131), (18, 16)])
def test_odd_sizes(tmp_path: Path, size: tuple[int, int]) -> None:
    width, height = size
    source = open_source(write_clip(tmp_path / "odd.avi", moving(3, width, height)))
    assert source.size_px == size
    assert all(frame.image_rgb.shape == (height, width, 3) for frame in source)


def test_a_truncated_file_gives_what_it_holds_and_says_so(tmp_path: Path) -> None:
    clip = write_clip(tmp_path / "cut.avi", moving(60))
    whole = clip.read_bytes()
    clip.write_bytes(whole[: len(whole) // 3])
    source = open_source(clip)
    stamps = [frame.time_s for frame in source]
    assert 10 < len(stamps) < 30
    np.testing.assert_allclose(stamps, np.arange(len(stamps)) / 20, atol=1e-3)
    assert isinstance(source, VideoFile)
    assert len(source.notes) == 1
    assert "cut off" in source.notes[0]


def test_a_whole_file_has_no_notes(tmp_path: Path) -> None:
    source = open_source(write_clip(tmp_path / "a.mp4", moving(20)))
    assert isinstance(source, VideoFile)
    assert len(list(source)) == 20
    assert source.notes == []


def bad_input(folder: Path, kind: str) -> Path:
    path = folder / f"{kind}.mp4"
    if kind == "empty":
        path.write_bytes(b"")
    elif kind == "text":
        path = folder / "text.txt"
        path.write_text("This is a letter.\n" * 500)
    elif kind == "text-as-video":
        path.write_text("This is a letter.\n" * 500)
    elif kind == "noise":
        path.write_bytes(np.random.default_rng(3).bytes(50_000))
    elif kind == "no-index":
        data = write_clip(path, moving(20)).read_bytes()
        path.write_bytes(data[: data.index(b"moov") - 4])
    elif kind == "no-frames":
        data = write_clip(path, moving(3)).read_bytes()
        start, end = data.index(b"mdat") + 4, data.index(b"moov") - 4
        path.write_bytes(data[:start] + bytes(end - start) + data[end:])
    elif kind == "pipe":
        os.mkfifo(path)
    elif kind == "folder":
        path.mkdir()
    else:
        assert kind == "missing"
    return path


@pytest.mark.parametrize(
    ("kind", "words"),
    [
        ("empty", "is empty"),
        ("text", "cannot be read as a video"),
        ("text-as-video", "cannot be read as a video"),
        ("noise", "cannot be read as a video"),
        ("no-index", "cannot be read as a video"),
        ("no-frames", "holds no picture"),
        ("folder", "is a folder"),
        pytest.param(
            "pipe",
            "is a device or a pipe",
            marks=pytest.mark.skipif(sys.platform == "win32", reason="no named pipes in folders"),
        ),
        ("missing", "There is no file"),
    ],
)
def test_bad_input_gives_one_sentence_and_no_chatter(
    tmp_path: Path, capfd: pytest.CaptureFixture[str], kind: str, words: str
) -> None:
    path = bad_input(tmp_path, kind)
    with pytest.raises(Fault, match=words) as caught:
        open_source(str(path))
    sentence = str(caught.value)
    assert str(path) in sentence
    assert sentence.endswith(".")
    assert "\n" not in sentence
    assert capfd.readouterr().err == ""


def test_a_file_that_may_not_be_read(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    clip = write_clip(tmp_path / "locked.mp4", moving(3))
    if os.name == "posix" and os.geteuid() != 0:
        clip.chmod(0)
    else:  # the administrator may read everything

        def refuse(self: Path, mode: str) -> None:
            raise PermissionError(13, "Permission denied")

        monkeypatch.setattr(Path, "open", refuse)
    with pytest.raises(Fault, match="may not be read by you"):
        open_source(clip)


def test_a_play_list_is_not_followed(tmp_path: Path) -> None:
    server = socket.create_server(("127.0.0.1", 0))
    server.settimeout(0.5)
    visited = threading.Event()

    def wait() -> None:
        try:
            server.accept()[0].close()
            visited.set()
        except TimeoutError:
            pass

    waiting = threading.Thread(target=wait)
    waiting.start()
    port = server.getsockname()[1]
    write_clip(tmp_path / "good.mp4", moving(3))
    for entry in (f"http://127.0.0.1:{port}/a.ts", "good.mp4"):
        for name in ("list.m3u8", "list.mp4"):
            (tmp_path / name).write_text(
                f"#EXTM3U\n#EXT-X-TARGETDURATION:9\n#EXTINF:9,\n{entry}\n#EXT-X-ENDLIST\n"
            )
            with pytest.raises(Fault, match="cannot be read as a video"):
                open_source(tmp_path / name)
    waiting.join()
    server.close()
    assert not visited.is_set()


class Reader:
    """A decoder that gives prepared stamps."""

    def __init__(self, stamps: list[float], frames_per_s: float) -> None:
        self.frames_per_s, self.frame_count = frames_per_s, len(stamps)
        self._stamps = iter(stamps)
        self.released = 0

    def read(self) -> tuple[np.ndarray, float] | None:
        stamp = next(self._stamps, None)
        return None if stamp is None else (np.zeros((4, 6, 3), np.uint8), stamp)

    def release(self) -> None:
        self.released += 1


def test_without_stamps_the_mean_rate_counts_and_a_note_says_so() -> None:
    source = VideoFile("a.h264", Reader([0.0] * 50, 25.0))
    assert [frame.time_s for frame in source] == pytest.approx(np.arange(50) / 25)
    assert "25 pictures a second are assumed" in source.notes[0]


def test_a_stamp_that_goes_back_is_put_right_without_moving_the_others() -> None:
    given = [0.0, 0.1, 0.2, 0.1, 0.4, 0.0, 0.6]
    times = [frame.time_s for frame in VideoFile("a.mp4", Reader(given, 10.0))]
    assert times == pytest.approx([0.0, 0.1, 0.2, 0.25, 0.4, 0.45, 0.6])


def test_a_single_picture_is_a_video() -> None:
    assert [frame.time_s for frame in VideoFile("a.mp4", Reader([0.0], 10.0))] == [0.0]


def test_a_closed_file_ends() -> None:
    reader = Reader([0.0, 0.1, 0.2, 0.3], 10.0)
    source = VideoFile("a.mp4", reader)
    frames = iter(source)
    next(frames)
    source.close()
    source.close()
    assert list(frames) == []
    assert reader.released == 1


@pytest.mark.parametrize("before", [None, "/somewhere/of/my/own"])
def test_importing_opencv_leaves_the_environment_of_qt_alone(before: str | None) -> None:
    names = ("QT_QPA_PLATFORM_PLUGIN_PATH", "QT_QPA_FONTDIR")
    env = {key: value for key, value in os.environ.items() if key not in names}
    if before is not None:
        env |= dict.fromkeys(names, before)
    code = f"import os, coach.capture.opencv; print([os.environ.get(n) for n in {names}])"
    run = subprocess.run(
        [sys.executable, "-c", code], env=env, capture_output=True, text=True, check=True
    )
    assert run.stdout.strip() == str([before, before])


def odd(path: Path, box: bytes, at: int, number: int) -> Path:
    """A film of 30 pictures, 20 a second, with another number in one of its boxes."""

    def change(body: bytes) -> bytes:
        assert len(body) >= at + 4
        return body[:at] + struct.pack(">I", number) + body[at + 4 :]

    write_clip(path, moving(30))
    path.write_bytes(rewrite(path.read_bytes(), {box: change}))
    return path


@pytest.mark.parametrize("said", [0, 1, 29, 31, 100_000, 999_999, 2**31, 2**32 - 1])
def test_a_film_that_says_another_number_of_pictures_gives_what_it_has(
    tmp_path: Path, said: int
) -> None:
    """The count in 'stts' (ISO/IEC 14496-12, 8.6.1.2), beside the sizes that are there."""
    source = open_source(odd(tmp_path / "a.mp4", b"stts", 8, said))
    stamps = [frame.time_s for frame in source]
    source.close()
    assert len(stamps) == 30
    assert stamps == sorted({*stamps})
    assert ("promises" in "".join(source.notes)) is (31 < said < 2**31)


@pytest.mark.parametrize("said", [1_000_001, 99_999_999])
def test_a_film_that_says_it_has_too_many_pictures_is_refused(tmp_path: Path, said: int) -> None:
    with pytest.raises(Fault, match=f"says it has {said:,} pictures, at most .* measured; cut it"):
        open_source(odd(tmp_path / "a.mp4", b"stts", 8, said))


@pytest.mark.parametrize(
    ("box", "at", "number"),
    [
        (b"stts", 12, 0),  # ticks a picture: none, one, and as many as there can be
        (b"stts", 12, 1),
        (b"stts", 12, 2**31 - 1),
        (b"stts", 12, 2**32 - 1),
        (b"mdhd", 12, 0),  # ticks a second
        (b"mdhd", 12, 1),
        (b"mdhd", 12, 2**32 - 1),
        (b"stsz", 8, 1),  # pictures that have a size
    ],
)
def test_the_stamps_of_a_film_with_an_impossible_rate_are_finite_and_in_order(
    tmp_path: Path, box: bytes, at: int, number: int
) -> None:
    source = open_source(odd(tmp_path / "a.mp4", box, at, number))
    assert 0 <= source.frames_per_s <= 1000
    stamps = [frame.time_s for frame in source]
    source.close()
    assert 1 <= len(stamps) <= 30
    assert all(a < b < math.inf for a, b in itertools.pairwise(stamps))


@pytest.mark.parametrize("pictures", [0, 1_000, 2**32 - 1])
def test_a_film_whose_pictures_have_no_sizes_is_refused(tmp_path: Path, pictures: int) -> None:
    with pytest.raises(Fault, match=r"holds no picture|cannot be read as a video") as caught:
        open_source(odd(tmp_path / "a.mp4", b"stsz", 8, pictures))
    assert wrong_with(str(caught.value)) is None


def of_sizes(path: Path, pictures: list[np.ndarray]) -> Path:
    """Pictures of any sizes in an AVI whose header tells of the first one."""
    whole = write_clip(path, pictures[:1] * len(pictures)).read_bytes()
    body = b"movi"
    for picture in pictures:
        content = cv2.imencode(".jpg", picture)[1].tobytes()
        body += struct.pack("<4sI", b"00dc", len(content)) + content + bytes(len(content) % 2)
    head = whole[: whole.index(b"movi") - 8]
    path.write_bytes(head + struct.pack("<4sI", b"LIST", len(body)) + body)
    return path


def test_pictures_that_change_their_size_come_in_that_of_the_first(tmp_path: Path) -> None:
    large = np.zeros((3_000, 4_000, 3), np.uint8)
    path = of_sizes(tmp_path / "a.avi", [*moving(5), *moving(5, 320, 240), large, *moving(5)])
    source = open_source(path)
    assert {frame.size_px for frame in source} == {source.size_px} == {(160, 120)}
    with pytest.raises(Fault, match="are 8000 by 6000, too large to measure; record at"):
        open_source(of_sizes(path, [np.zeros((6_000, 8_000, 3), np.uint8), *moving(5)]))


def test_a_film_that_hides_how_long_it_is_ends_where_memory_would(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr("coach.capture.video_file.MAX_FRAMES", 20)
    reader = Reader([n / 10 for n in range(50)], 10.0)
    reader.frame_count = 5
    source = VideoFile("a.mp4", reader)
    assert [frame.index for frame in source] == list(range(20))
    (note,) = source.notes
    assert wrong_with(note) is None
    assert "more than 20 pictures" in note


def test_more_pictures_than_memory_holds_are_refused(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = write_clip(tmp_path / "long.mp4", [corner_picture(160, 120)] * 4)
    monkeypatch.setattr("coach.capture.sources.MAX_FRAMES", 3)
    with pytest.raises(Fault, match="says it has 4 pictures, at most 3 are measured; cut it"):
        open_source(path)
