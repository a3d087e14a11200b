"""``coach review``: the therapist's window."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from functools import partial
from pathlib import Path

from coach.app.chosen_looks import NO_WISHES, Wishes, chosen_looks
from coach.desktop.shared.application import create_application, run_windows
from coach.desktop.therapist.desk import Desk
from coach.desktop.therapist.exports import report_name
from coach.desktop.therapist.keys import key_name
from coach.desktop.therapist.passphrase_dialog import unlocked
from coach.desktop.therapist.practice_key import ask_practice_key
from coach.domain.fault import Fault
from coach.domain.movement import Position
from coach.review.report import report
from coach.storage.atomic import make_folder, write_bytes
from coach.storage.folders import store_path
from coach.storage.keys import practice_key_path
from coach.storage.sealed import PracticeIdentity
from coach.storage.store import Store
from coach.storage.store_lock import is_locked
from coach.texts import language, translate


def run_review(
    files: Sequence[Path],
    place: Path | str | None,
    wishes: Wishes = NO_WISHES,
) -> int:
    """Open the window, import the files, and stay until it is closed.

    ``place`` is the store's file, or the URL of its database.
    """
    settings, keep = chosen_looks(wishes)
    application = create_application(
        ["coach"],
        name="Shoulder review",
        icon="review",
        language=language(),
        settings=settings,
        keep=keep,
    )
    application.setApplicationDisplayName(translate("therapist", "Shoulder review"))
    for path in files:
        if not path.exists():
            missing = translate("faults", "There is no file or folder '{path}'; check its name.")
            raise Fault(missing.format(path=path))
    place = place or store_path()
    if isinstance(place, Path):
        make_folder(place.parent)
    store = _opened(place)
    try:
        desk = Desk(store, _identity())
        if files:
            desk.window.import_paths(files)
        return run_windows(application)
    finally:
        store.close()


def _identity() -> PracticeIdentity | None:
    """Unlock the practice's key, where there is one; put aside, sealed files are refused."""
    if not practice_key_path().exists():
        return None
    return ask_practice_key(
        translate(
            "therapist",
            "The passphrase of the practice's key, to open sealed files (Cancel: go on without, "
            "and unlock it later with {key}):",
        ).format(key=key_name("Ctrl+K"))
    )


def _opened(place: Path | str) -> Store:
    if not (isinstance(place, Path) and is_locked(place)):
        return Store(place)
    store = unlocked(translate("therapist", "The passphrase of the store:"), partial(Store, place))
    if store is None:
        raise Fault(
            translate("faults", "The store is locked and stays closed without its passphrase.")
        )
    return store


def write_report_files(store: Store, patient_code: str, folder: Path) -> tuple[Path, ...]:
    """Write a patient's report and chart pictures into ``folder``; a QApplication must run."""
    from coach.desktop.shared.chart import chart_png
    from coach.desktop.shared.report_page import report_pdf

    today, records = date.today(), store.records_of(patient_code)
    documents = store.sessions_of(patient_code)
    content = report(documents, until=today, printed_on=today, records=records)
    page = folder / report_name(content)
    write_bytes(page, report_pdf(content))
    written = [page]
    for row in content.rows:
        series = row.series
        where = "" if series.position is Position.STANDING else f"_{series.position}"
        picture = folder / f"chart_{series.movement}_{series.side}{where}.png"
        write_bytes(picture, chart_png(row.chart))
        written.append(picture)
    return tuple(written)
