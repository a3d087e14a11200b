"""Photograph the therapist's window, its pages and its dialogs, on the guide's worked case."""

from __future__ import annotations

import tempfile
from collections.abc import Collection
from functools import cache
from pathlib import Path

from PyQt6.QtWidgets import QApplication

from coach.app.demo import play, sample_clip
from coach.app.sitting import Folders
from coach.desktop.therapist.doubts_dialog import DoubtsDialog
from coach.desktop.therapist.passphrase_dialog import PassphraseDialog
from coach.desktop.therapist.replay_page import ReplayPage
from coach.desktop.therapist.window import ReviewWindow
from coach.documents.archive import StoredSession, unpack_session
from coach.domain.practice import HandMeasure
from coach.storage.store import Store
from docs.make_case import CODE, LAST, make_case
from docs.shots import Shot

INTO_THE_HOLD_S = 4.0


@cache
def played() -> StoredSession:
    """Give the sitting of the sample clip, with its points and readings."""
    with tempfile.TemporaryDirectory() as folder:
        place = Path(folder)
        done = play(sample_clip(), Folders(place, place, place))
        return unpack_session(done.session_file.read_bytes(), done.session_file.name)


def photograph_therapist(
    shot: Shot, size_px: tuple[int, int], wanted: Collection[str] = ()
) -> None:
    """Go from an empty practice to a patient's course, records, plan, replay and dialogs."""
    with tempfile.TemporaryDirectory() as folder:
        empty = Store(Path(folder) / "empty.sqlite")
        window = _opened(empty, size_px)
        shot("therapist_empty", window)
        window.close()
        empty.close()
        case = make_case(Path(folder) / "case")
        window = _opened(case.store, size_px)
        _photograph_pages(window, shot)
        _photograph_dialogs(window, case.store, shot)
        if not wanted or any(name.startswith("therapist_replay") for name in wanted):
            replay = ReplayPage(played(), lambda _: None, window)
            replay.resize(*size_px)
            replay.move_to(INTO_THE_HOLD_S)
            shot("therapist_replay", replay)
            replay.close()
        window.close()
        case.store.close()


def _opened(store: Store, size_px: tuple[int, int]) -> ReviewWindow:
    window = ReviewWindow(store, today=lambda: LAST)
    window.resize(*size_px)
    window.show()
    return window


def _photograph_pages(window: ReviewWindow, shot: Shot) -> None:
    window.refresh(CODE)
    window.show_patient(CODE)
    shot("therapist_patient", window)
    window.parts.show_records()
    shot("therapist_records", window)
    window._make_plan()
    shot("therapist_plan", window.plans)
    window.plans.close()


def _photograph_dialogs(window: ReviewWindow, store: Store, shot: Shot) -> None:
    window.records.ask_add(HandMeasure)
    assert window.records.form is not None
    shot("therapist_form", window.records.form)
    window.records.form.close()
    doubts = DoubtsDialog(window, store)
    shot("therapist_doubts", doubts)
    doubts.close()
    passphrase = PassphraseDialog("The passphrase of the store:", lambda _: None)
    shot("therapist_passphrase", passphrase)
    passphrase.close()
    QApplication.processEvents()
