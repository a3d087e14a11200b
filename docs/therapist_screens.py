"""Photograph the therapist's window, its pages and its dialogs, on the guide's worked case."""

from __future__ import annotations

import tempfile
from collections.abc import Collection
from dataclasses import replace
from datetime import UTC, date, datetime, time
from functools import cache
from pathlib import Path

import msgspec
import numpy as np
from PyQt6.QtWidgets import QApplication

from coach.app.demo import play, sample_clip
from coach.app.sitting import Folders
from coach.desktop.therapist.doubts_dialog import DoubtsDialog
from coach.desktop.therapist.passphrase_dialog import PassphraseDialog
from coach.desktop.therapist.replay_page import ReplayPage
from coach.desktop.therapist.window import ReviewWindow
from coach.documents.archive import StoredSession, unpack_session
from coach.domain.pose import Landmark
from coach.domain.practice import HandMeasure
from coach.domain.session import SessionDocument
from coach.storage.store import Store
from docs.make_case import CODE, FIRST, LAST, make_case
from docs.shots import Shot
from tests.review.six_patients import DAY_SD_DEG, HOLD_SD_DEG, hold, sitting

INTO_THE_HOLD_S = 4.0
LOWERED_DEG = 16.0
"""How much further down the arm was six weeks before, in the two that stand side by side."""
WEEKS, LONG_CODE = 12, "WEIR-07"
AWAY = range(37, 44)
"""Days without a sitting, in the twelve weeks."""


@cache
def played() -> StoredSession:
    """Give the sitting of the sample clip, with its points and readings, on the case's last day."""
    with tempfile.TemporaryDirectory() as folder:
        place = Path(folder)
        done = play(sample_clip(), Folders(place, place, place))
        return on(LAST, unpack_session(done.session_file.read_bytes(), done.session_file.name))


def on(day: date, stored: StoredSession) -> StoredSession:
    """Give a sitting as of another day, at nine."""
    began = datetime.combine(day, time(9), UTC).isoformat()
    document = msgspec.structs.replace(stored.document, started_at=began)
    return replace(stored, document=document)


def lowered(stored: StoredSession, by_deg: float) -> StoredSession:
    """Give a sitting with the measured arm turned down about its shoulder, as far as it was up."""
    document, points, readings = stored.document, stored.landmarks, stored.readings
    held_deg = max(r.value for e in document.exercises if e for r in e.repetitions)
    share = 1 - by_deg / held_deg
    turned = np.radians(np.interp(points.time_s, readings.time_s, readings.value) * (1 - share))
    turned = np.nan_to_num(turned)[:, np.newaxis]
    at = {mark: n for n, mark in enumerate(points.landmarks)}
    arm = [n for mark, n in at.items() if mark.name.startswith("RIGHT") and _of_arm(mark)]
    image_px = points.image_px.copy()
    shoulder = image_px[:, [at[Landmark.RIGHT_SHOULDER]]]
    x, y = np.moveaxis(image_px[:, arm] - shoulder, 2, 0)
    way = np.sign(np.nanmedian(x))  # where the arm points to the left it turns the other way round
    cos, sin = np.cos(way * turned), np.sin(way * turned)
    image_px[:, arm] = np.stack((x * cos - y * sin, x * sin + y * cos), axis=2) + shoulder
    exercises = tuple(
        msgspec.structs.replace(
            each,
            repetitions=tuple(
                msgspec.structs.replace(r, value=round(share * r.value, 1))
                for r in each.repetitions
            ),
        )
        for each in document.exercises
    )
    return replace(
        stored,
        document=msgspec.structs.replace(document, exercises=exercises),
        landmarks=replace(points, image_px=image_px),
        readings=replace(readings, value=share * readings.value),
    )


def _of_arm(mark: Landmark) -> bool:
    return any(part in mark.name for part in ("ELBOW", "WRIST", "INDEX", "PINKY", "THUMB"))


def long_course() -> list[SessionDocument]:
    """Give twelve invented weeks with a week away: stiff at first, then further, with less pain."""
    rng = np.random.default_rng(12)
    found = []
    for day in range(7 * WEEKS):
        if day in AWAY or rng.random() < 0.12:
            continue
        level = 92 + 44 / (1 + np.exp(-(day - 40) / 11)) + rng.normal(0, DAY_SD_DEG)
        pain = round(6 - 4 * day / (7 * WEEKS) + rng.normal(0, 0.5))
        holds = [hold(n, level + rng.normal(0, HOLD_SD_DEG)) for n in (1, 2, 3)]
        found.append(sitting(LONG_CODE, day, holds, pain=(pain, max(1, pain - 1))))
    return found


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
        if not wanted or any("replay" in name or "compare" in name for name in wanted):
            replay = ReplayPage(played(), lambda _: None, window)
            replay.resize(*size_px)
            replay.move_to(INTO_THE_HOLD_S)
            shot("therapist_replay", replay)
            replay.compare_with(on(FIRST, lowered(played(), LOWERED_DEG)))
            replay.move_to(INTO_THE_HOLD_S)
            shot("therapist_compare", replay)
            replay.close()
        window.close()
        case.store.close()
        _photograph_weeks(Store(Path(folder) / "weeks.sqlite"), size_px, shot)


def _photograph_weeks(store: Store, size_px: tuple[int, int], shot: Shot) -> None:
    documents = long_course()
    for number, document in enumerate(documents):
        store.import_session(document, document.session_id.encode(), f"{number}.shoulder.zip")
    last = date.fromisoformat(documents[-1].started_at[:10])
    window = _opened(store, size_px, last)
    shot("therapist_weeks", window)
    window.close()
    store.close()


def _opened(store: Store, size_px: tuple[int, int], today: date = LAST) -> ReviewWindow:
    window = ReviewWindow(store, today=lambda: today)
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
