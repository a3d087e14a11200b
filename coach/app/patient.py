"""``coach``: the patient's window."""

from __future__ import annotations

import sys
from collections.abc import Callable
from dataclasses import replace
from datetime import datetime
from functools import partial
from pathlib import Path

from coach.app.chosen_looks import NO_WISHES, Wishes, chosen_looks
from coach.app.estimator import WithCard, open_adapting, open_estimator
from coach.app.lens import known_field_of_view
from coach.app.plan import KEPT_PLAN, open_plan
from coach.app.sitting import Folders, Sitting
from coach.capture.sources import open_source
from coach.catalogue import catalogue
from coach.cues.language import spoken_in
from coach.desktop.patient.window import PatientWindow
from coach.desktop.patient.wording import translate
from coach.desktop.shared.application import create_application, run_windows, show_on_screen
from coach.domain.fault import Fault
from coach.domain.plan import Plan
from coach.domain.pose import PoseModel
from coach.ports import FrameSource
from coach.review.diary import diary
from coach.session.agenda import Agenda, due_now
from coach.storage.diary_files import read_history
from coach.storage.folders import data_folder, journals_folder, sessions_folder
from coach.storage.recovery import recover
from coach.storage.running import only_one
from coach.texts import language
from coach.voice.espeak import Voice
from coach.voice.speaker import Speaker


def run_patient(
    plan_path: Path | None,
    camera: int,
    clip: Path | None,
    folder: Path | None,
    *,
    begin: bool,
    model: PoseModel | None = None,
    wishes: Wishes = NO_WISHES,
) -> int:
    """Open the window and stay until it is closed; ``begin`` starts without being asked to.

    Without a ``model`` the pose model is the one that the machine keeps up with.
    """
    settings, keep = chosen_looks(wishes)
    application = create_application(["coach"], language=language(), settings=settings, keep=keep)
    plan = open_plan(plan_path, data_folder() / KEPT_PLAN)
    with only_one(data_folder()):
        shown = partial(run_windows, application)
        what = camera if clip is None else clip
        return _run(shown, plan, what, folder, begin=begin, model=model)


def _run(
    shown: Callable[[], int],
    plan: Plan,
    what: int | Path,
    folder: Path | None,
    *,
    begin: bool,
    model: PoseModel | None,
) -> int:
    folders = Folders(journals_folder(), folder or sessions_folder())
    while True:
        recoveries = recover(folders.journals, folders.sessions, folders.own)
        window = patient_window(plan, what, folders, begin=begin, model=model)
        show_on_screen(window)
        for recovered in recoveries:
            window.announce(recovered.message)
        try:
            code = shown()
        finally:
            window.close()  # after Ctrl-C too: this ends the session and keeps what was done
        if not window.outdated:
            return code
        begin = False


def patient_window(
    plan: Plan,
    what: int | Path,
    folders: Folders,
    *,
    begin: bool = False,
    model: PoseModel | None = None,
) -> PatientWindow:
    """Build the window on a camera's number or a clip's path."""
    documents, refused = read_history(folders.sessions, folders.own)
    now = datetime.now().astimezone()
    agenda = due_now(plan, documents, now, catalogue().by_name)

    def open_sitting(source: FrameSource) -> Sitting:
        known_deg = known_field_of_view(what, source.size_px)
        # Whoever was filmed hears nothing, and cannot be asked to wait.
        told = source.kind == "file"
        return Sitting(
            plan,
            source,
            _estimator(known_deg, source, model),
            folders,
            field_of_view_deg=known_deg,
            items=tuple(replace(item, told=item.told or told) for item in agenda.items),
        )

    window = PatientWindow(
        plan,
        lambda: open_source(what),
        open_sitting,
        Speaker(open_voice()),
        agenda=agenda.items,
        diary=diary(documents, plan, now.date()),
        phase=plan.phase,
        notice=_notice(agenda),
        at_once=begin,
        # A new plan brings them back; in front of a clip there is nobody to read them.
        cautions_read=isinstance(what, Path) or any(each.plan == plan for each in documents),
    )
    for sentence in refused:
        window.announce(sentence)
    return window


def _estimator(
    field_of_view_deg: float | None, source: FrameSource, model: PoseModel | None
) -> WithCard:
    """Open the pose model; only a camera does not wait for a slow machine."""
    if model is None and source.kind == "camera":
        return open_adapting(field_of_view_deg)
    return open_estimator(field_of_view_deg, model or PoseModel.FULL)


def _notice(agenda: Agenda) -> str:
    """Say what the day so far means for this sitting."""
    if agenda.minutes_ago is not None:
        return translate(
            "patient",
            "Your last sitting ended {minutes} minutes ago. Let the shoulder rest for some hours, "
            "unless your therapist said otherwise.",
        ).format(minutes=agenda.minutes_ago)
    if agenda.nothing_due:
        return translate("patient", "Everything for today is done. More than asked is not better.")
    return ""


def open_voice() -> Voice | None:
    """Give the voice of the packages; None, for captions only, where it cannot be loaded."""
    try:
        return Voice(spoken_in().voice)
    except Fault as fault:
        print(f"coach: {fault}", file=sys.stderr)
        return None
