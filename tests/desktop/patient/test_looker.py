"""One frame ahead, in order, the newest, and nothing lost at the end."""

import threading
from collections import deque
from collections.abc import Callable

import numpy as np
import pytest

from coach.desktop.patient.boxes import Belt, Box, Mailbox
from coach.desktop.patient.looker import Looker
from coach.domain.frame import Frame
from coach.domain.looked import Looked

IMAGE = np.zeros((2, 2, 3), np.uint8)
LONG_S = 10.0


def frame(index: int) -> Frame:
    return Frame(index, index / 30, IMAGE)


class Bench:
    """A looker whose looks wait until they are allowed."""

    def __init__(self, box: Box, look: Callable[[Frame], Looked] = Looked) -> None:
        self.begun: deque[int] = deque()
        self.allowed = threading.Semaphore(0)
        self.looked, self.over = threading.Semaphore(0), threading.Event()
        self.looking = threading.Semaphore(0)
        self.drained: list[str | None] = []

        def slow(frame: Frame) -> Looked:
            self.begun.append(frame.index)
            self.looking.release()
            assert self.allowed.acquire(timeout=LONG_S)
            return look(frame)

        def end(fault: str | None) -> None:
            self.drained.append(fault)
            self.over.set()

        self.box = box
        self.looker = Looker(box.take, slow, looked=self.looked.release, drained=end)

    def put(self, index: int) -> None:
        self.box.put(frame(index))
        self.looker.wake()

    def let(self, looks: int = 1) -> None:
        for _ in range(looks):
            self.allowed.release()

    def fetch(self) -> int:
        assert self.looked.acquire(timeout=LONG_S)
        got = self.looker.fetch()
        assert got is not None
        return got.frame.index


def test_the_newest_frame_is_looked_at_and_no_queue_grows_behind_one_that_is_measured() -> None:
    bench = Bench(Mailbox())
    bench.let(10)
    bench.put(0)
    assert bench.looked.acquire(timeout=LONG_S)
    bench.put(1)
    for _ in range(2):
        assert bench.looking.acquire(timeout=LONG_S)
    for index in range(2, 7):  # nobody fetches: no further one is looked at
        bench.put(index)
    assert list(bench.begun) == [0, 1]
    first = bench.looker.fetch()
    assert first is not None
    assert first.frame.index == 0
    assert bench.fetch() == 1
    assert bench.fetch() == 6
    assert list(bench.begun) == [0, 1, 6]
    assert bench.looker.fetch() is None
    bench.looker.stop()
    assert bench.box.frames_lost == 4


def test_the_next_frame_is_looked_at_while_one_is_measured() -> None:
    bench = Bench(Belt())
    bench.put(0)
    bench.put(1)
    bench.let()
    assert bench.fetch() == 0
    # Frame 0 is now being measured, for as long as this thread likes.
    bench.let()
    assert bench.looked.acquire(timeout=LONG_S)
    assert list(bench.begun) == [0, 1]
    bench.looker.stop()


def test_a_file_is_looked_at_to_its_last_frame_before_its_end_is_told() -> None:
    bench = Bench(Belt())
    bench.let(100)

    def read() -> None:
        for index in range(20):
            bench.put(index)
        bench.looker.end("The file is torn.")

    reader = threading.Thread(target=read)
    reader.start()
    assert [bench.fetch() for _ in range(20)] == list(range(20))
    assert bench.over.wait(LONG_S)
    reader.join(LONG_S)
    assert bench.drained == ["The file is torn."]
    bench.looker.stop()


def test_the_end_waits_for_what_nobody_has_fetched_yet() -> None:
    bench = Bench(Mailbox())
    bench.let()
    bench.put(0)
    assert bench.looked.acquire(timeout=LONG_S)
    bench.looker.end(None)
    assert not bench.over.wait(0.05)
    assert bench.looker.fetch() is not None
    assert bench.over.wait(LONG_S)
    bench.looker.stop()


def test_what_a_look_raises_reaches_whoever_fetches_and_the_next_frame_follows() -> None:
    def look(frame: Frame) -> Looked:
        if frame.index == 0:
            raise ZeroDivisionError("by script")
        return Looked(frame)

    bench = Bench(Belt(), look)
    bench.let(2)
    bench.put(0)
    assert bench.looked.acquire(timeout=LONG_S)
    bench.put(1)
    with pytest.raises(ZeroDivisionError, match="by script"):
        bench.looker.fetch()
    assert bench.fetch() == 1
    bench.looker.stop()


def test_stopping_waits_for_the_look_that_is_under_way() -> None:
    bench = Bench(Mailbox())
    bench.put(0)
    assert bench.looking.acquire(timeout=LONG_S)
    stopped = threading.Event()

    def stop() -> None:
        bench.looker.stop()
        stopped.set()

    stopping = threading.Thread(target=stop)
    stopping.start()
    assert not stopped.wait(0.05)
    bench.let()
    assert stopped.wait(LONG_S)
    stopping.join(LONG_S)
    bench.looker.stop()
