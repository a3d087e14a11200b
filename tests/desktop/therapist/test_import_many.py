"""Many files in the window: the next are read in processes of their own, and nothing is blocked."""

from __future__ import annotations

import multiprocessing
from datetime import date

import pytest
from PyQt6.QtCore import QTimer

from coach.desktop.therapist.window import ReviewWindow
from coach.storage import reading_ahead


@pytest.fixture
def window(app, store, qtbot, monkeypatch):
    start = reading_ahead._Worker.start

    def started():
        worker = start()
        assert worker.told.poll(60)
        return worker

    monkeypatch.setattr(reading_ahead, "_WORTH_BYTES", 1)
    monkeypatch.setattr(reading_ahead, "cores", lambda: 2)
    monkeypatch.setattr(reading_ahead._Worker, "start", staticmethod(started))
    opened = ReviewWindow(store, today=lambda: date(2026, 2, 1))
    qtbot.addWidget(opened)
    opened.show()
    return opened


@pytest.fixture
def mail(tmp_path, invented):
    for n in range(12):
        content = invented.session_file(invented.make_session(n))
        (tmp_path / f"{n:02d}.shoulder.zip").write_bytes(content[: -50 if n == 4 else None])
    return tmp_path


def test_all_files_come_in_and_the_processes_go(window, mail, qtbot):
    seen, ticks = [], []
    window.imports.advanced.connect(lambda done, total: seen.append((done, total)))
    ticking = QTimer(window)
    ticking.timeout.connect(lambda: ticks.append(len(seen)))
    ticking.start(0)
    with qtbot.waitSignal(window.imports.finished, timeout=60_000) as ended:
        window.import_paths([mail])
        assert len(multiprocessing.active_children()) == 2
    outcomes = ended.args[0]
    assert [o.path.name for o in outcomes] == [f"{n:02d}.shoulder.zip" for n in range(12)]
    assert [o.outcome.value for o in outcomes].count("accepted") == 11
    assert outcomes[4].reason.startswith("04.shoulder.zip is damaged or cut short")
    assert seen == [(n + 1, 12) for n in range(12)]
    assert len(set(ticks)) >= 12  # the window had its turn between any two files
    assert multiprocessing.active_children() == []


@pytest.mark.parametrize("way", ["stop", "close"])
def test_an_import_that_is_stopped_keeps_what_came_in_and_leaves_no_process(
    window, mail, qtbot, store, way
):
    def end(done, _total):
        if done == 3:
            window.close() if way == "close" else window.imports.stop()

    window.imports.advanced.connect(end)
    with qtbot.waitSignal(window.imports.finished, timeout=60_000) as ended:
        window.import_paths([mail])
    assert len(ended.args[0]) == 3
    assert [entry.sessions for entry in store.patients()] == [3]
    assert multiprocessing.active_children() == []
