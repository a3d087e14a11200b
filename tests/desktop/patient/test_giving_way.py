"""A thread that gives way, as the system itself tells of it."""

from __future__ import annotations

import os
import sys
import threading
from collections.abc import Callable

import pytest

from coach.desktop.patient.giving_way import give_way


def _in_a_thread(do: Callable[[], None]) -> None:
    faults: list[BaseException] = []

    def run() -> None:
        try:
            do()
        except BaseException as fault:
            faults.append(fault)

    thread = threading.Thread(target=run)
    thread.start()
    thread.join()
    if faults:
        raise faults[0]


if sys.platform == "linux":

    @pytest.mark.parametrize(("cores", "policy"), [({0, 1}, os.SCHED_BATCH), ({0}, os.SCHED_OTHER)])
    def test_of_several_cores_it_gives_way_and_no_other_thread_does(
        cores: set[int], policy: int, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        policies: list[int] = []
        monkeypatch.setattr(os, "sched_getaffinity", lambda _: cores)

        def note() -> None:
            policies.append(os.sched_getscheduler(0))

        def give_way_and_note() -> None:
            give_way()
            note()

        _in_a_thread(give_way_and_note)
        _in_a_thread(note)
        assert policies == [policy, os.SCHED_OTHER]

    def test_where_it_is_forbidden_nothing_changes(monkeypatch: pytest.MonkeyPatch) -> None:
        def forbidden(*_: object) -> None:
            raise PermissionError

        before = os.sched_getscheduler(0)
        monkeypatch.setattr(os, "sched_getaffinity", lambda _: {0, 1})
        monkeypatch.setattr(os, "sched_setscheduler", forbidden)
        give_way()
        assert os.sched_getscheduler(0) == before


def test_elsewhere_nothing_is_asked(monkeypatch: pytest.MonkeyPatch) -> None:
    def never(*_: object) -> None:
        raise AssertionError

    monkeypatch.setattr(sys, "platform", "win32")
    monkeypatch.setattr(os, "sched_setscheduler", never, raising=False)
    give_way()
