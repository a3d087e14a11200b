import threading
from collections.abc import Callable, Iterator

import numpy as np
import pytest

from coach.desktop.patient.boxes import Belt, Mailbox
from coach.desktop.patient.coaching import OpenSource
from coach.desktop.patient.intake import Intake
from coach.desktop.patient.trouble import black, other_camera, paused
from coach.domain.fault import Fault
from coach.domain.frame import Frame
from coach.ports import FrameSource

from .scripted import ScriptedSource

IMAGE = np.zeros((2, 2, 3), np.uint8)


def frame(index: int) -> Frame:
    return Frame(index, index / 30, IMAGE)


def test_a_mailbox_keeps_the_newest_frame_and_counts_the_others_as_lost() -> None:
    box = Mailbox()
    for index in range(5):
        box.put(frame(index))
    taken = box.take()
    assert taken is not None
    assert taken.index == 4
    assert box.take() is None
    assert box.frames_lost == 4


def test_a_belt_makes_its_reader_wait_and_loses_nothing() -> None:
    belt = Belt(capacity=2)
    put: list[int] = []

    def fill() -> None:
        for index in range(20):
            belt.put(frame(index))
            put.append(index)

    reader = threading.Thread(target=fill)
    reader.start()
    taken: list[int] = []
    while len(taken) < 20:
        assert len(put) <= len(taken) + 2 + 1
        got = belt.take()
        if got is not None:
            taken.append(got.index)
    reader.join(5)
    assert taken == list(range(20))
    assert belt.frames_lost == 0


def test_closing_a_full_belt_lets_its_reader_go() -> None:
    belt = Belt(capacity=1)
    belt.put(frame(0))
    reader = threading.Thread(target=lambda: belt.put(frame(1)))
    reader.start()
    belt.close()
    reader.join(5)
    assert not reader.is_alive()


def run(open_source: OpenSource, take: bool = True) -> tuple[list[Frame], list[str | None]]:
    frames: list[Frame] = []
    ended: list[str | None] = []
    over = threading.Event()

    def ready() -> None:
        got = intake.take() if take else None
        if got is not None:
            frames.append(got)

    def end(fault: str | None) -> None:
        ended.append(fault)
        over.set()

    intake = Intake(
        open_source, opened=lambda source: None, ready=ready, ended=end, file_waits=False
    )
    intake.start()
    assert over.wait(10)
    assert intake.stop()
    return frames, ended


def test_every_frame_of_a_file_arrives_in_order_and_the_source_is_closed() -> None:
    source = ScriptedSource("file", seconds=1.0)
    frames, ended = run(lambda: source)
    assert [each.index for each in frames] == list(range(20))
    assert ended == [None]
    assert source.closed_times == 1


def broken_in_the_middle() -> ScriptedSource:
    return ScriptedSource("file", seconds=1.0, fail_after=3)


def no_camera() -> ScriptedSource:
    raise Fault("There is no camera number 7: plug one in.")


def broken_inside() -> ScriptedSource:
    raise ZeroDivisionError


@pytest.mark.parametrize(
    ("open_source", "words"),
    [
        (broken_in_the_middle, "camera went away"),
        (no_camera, "no camera number 7"),
        (broken_inside, "went wrong"),
    ],
)
def test_a_fault_of_the_source_ends_the_intake_with_its_sentence(
    open_source: Callable[[], ScriptedSource], words: str
) -> None:
    _, ended = run(open_source)
    assert len(ended) == 1
    assert ended[0] is not None
    assert words in ended[0]


def test_the_clock_of_the_stamps_runs_with_the_file() -> None:
    seen: list[tuple[float, float]] = []
    over = threading.Event()

    def ready() -> None:
        got = intake.take()
        now_s = intake.now_s()
        if got is not None and now_s is not None:
            seen.append((got.time_s, now_s))

    intake = Intake(
        lambda: ScriptedSource("file", seconds=0.5),
        opened=lambda source: None,
        ready=ready,
        ended=lambda fault: over.set(),
        file_waits=False,
    )
    intake.start()
    assert over.wait(10)
    intake.stop()
    # A frame is never handed out before its own stamp; how much later depends on the machine.
    assert all(now_s >= time_s for time_s, now_s in seen)
    assert len(seen) == 10


def test_a_file_waits_after_its_first_frame_and_its_stamps_go_on_from_the_present() -> None:
    arrived: list[Frame] = []
    first, over = threading.Event(), threading.Event()

    def ready() -> None:
        got = intake.take()
        if got is not None:
            arrived.append(got)
            first.set()

    intake = Intake(
        lambda: ScriptedSource("file", seconds=0.5),
        opened=lambda source: None,
        ready=ready,
        ended=lambda fault: over.set(),
    )
    intake.start()
    assert first.wait(10)
    assert not over.wait(0.3)
    assert {frame.index for frame in arrived} == {0}
    still = len(arrived)
    pressed_s = intake.now_s()
    assert pressed_s is not None
    intake.play()
    assert over.wait(10)
    intake.stop()
    filmed = [frame for frame in arrived if frame.index > 0]
    assert [frame.index for frame in filmed] == list(range(1, 10))
    stamps_s = np.array([frame.time_s for frame in arrived])
    assert (np.diff(stamps_s) > 0).all()
    assert still >= 2  # time goes on in the picture at which the file stands
    assert filmed[0].time_s >= pressed_s >= 0.3
    # What was filmed keeps its own time.
    assert np.diff([frame.time_s for frame in filmed]) == pytest.approx(0.05)


def test_frames_that_nobody_took_are_lost_to_the_session() -> None:
    seen: list[FrameSource] = []
    over = threading.Event()
    source = ScriptedSource("camera", seconds=1.0)
    source.frames_lost = 3
    intake = Intake(
        lambda: source, opened=seen.append, ready=lambda: None, ended=lambda fault: over.set()
    )
    intake.start()
    assert over.wait(10)
    intake.stop()
    assert seen[0].frames_lost == 3 + 19
    assert (seen[0].kind, seen[0].size_px) == (source.kind, source.size_px)


def test_a_waiting_file_can_be_stopped() -> None:
    first = threading.Event()
    intake = Intake(
        lambda: ScriptedSource("file"),
        opened=lambda source: None,
        ready=first.set,
        ended=lambda fault: None,
    )
    intake.start()
    assert first.wait(10)
    assert intake.stop()


class Unplugged:
    """A camera that answers as each of these in turn: a source, or None where it does not."""

    def __init__(self, *answers: FrameSource | None) -> None:
        self._answers = list(answers)

    def __call__(self) -> FrameSource:
        answer = self._answers.pop(0)
        if answer is None:
            raise Fault("No camera answers.")
        return answer


def troubles(open_source: OpenSource) -> tuple[list[str | None], list[int], list[str | None]]:
    """Give what was told, of how many frames each time, and how it ended."""
    told: list[str | None] = []
    ready: list[int] = []
    ended: list[str | None] = []
    over = threading.Event()
    metered: list[FrameSource] = []

    def end(fault: str | None) -> None:
        ended.append(fault)
        over.set()

    intake = Intake(
        open_source,
        opened=metered.append,
        ready=lambda: ready.append(metered[0].frames_lost),
        ended=end,
        trouble=told.append,
        retry_s=0.001,
    )
    intake.start()
    assert over.wait(10)
    assert intake.stop()
    return told, ready, ended


def test_a_camera_that_was_unplugged_goes_on_when_it_is_back() -> None:
    gone, back = ScriptedSource(fail_after=3), ScriptedSource(seconds=0.25)
    gone.frames_lost = 2
    told, ready, ended = troubles(Unplugged(gone, None, None, back))
    assert told == [paused("The camera went away: plug it in again and start anew."), None]
    assert gone.closed_times == 1
    # Three frames and five; nobody took them, so that all but the last one are lost as well.
    assert ready == [2, 3, 4, *[5, 6, 7, 8, 9]]
    assert ended == [None]


def test_another_camera_is_not_taken_for_the_one_that_went_away() -> None:
    other = ScriptedSource()
    other.size_px = (1280, 720)
    told, _, ended = troubles(Unplugged(ScriptedSource(fail_after=3), other))
    assert (len(told), ended) == (1, [other_camera()])


def test_a_camera_that_shows_nothing_from_the_start_is_given_up() -> None:
    told, _, ended = troubles(Unplugged(None))
    assert (told, ended) == ([], ["No camera answers."])


class Covered(ScriptedSource):
    """Twenty pictures a second; black from the second second to the seventh."""

    def __iter__(self) -> Iterator[Frame]:
        rng = np.random.default_rng(3)
        for each in super().__iter__():
            dark = 1.0 <= each.time_s < 7.0
            image = rng.integers(0, 3 if dark else 200, each.image_rgb.shape).astype(np.uint8)
            yield Frame(each.index, each.time_s, image)


def test_a_black_picture_is_told_after_a_while_and_when_it_is_over() -> None:
    told, _, ended = troubles(lambda: Covered(seconds=8.0))
    assert (told, ended) == ([black(), None], [None])
