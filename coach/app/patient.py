"""``coach``: the patient's window."""

from __future__ import annotations

import sys
from pathlib import Path

from coach.app.estimator import open_estimator
from coach.app.lens import known_field_of_view
from coach.app.sitting import Folders, Sitting
from coach.capture.sources import open_source
from coach.desktop.patient.window import PatientWindow
from coach.desktop.shared.application import create_application, run_windows
from coach.documents.plan import MAX_PLAN_BYTES, example_plan, read_plan
from coach.domain.fault import Fault
from coach.domain.plan import Plan
from coach.ports import FrameSource
from coach.storage.folders import journals_folder, sessions_folder
from coach.storage.recovery import recover
from coach.storage.session_file import read_bounded
from coach.voice.espeak import Voice
from coach.voice.speaker import Speaker


def run_patient(plan_path: Path | None, camera: int, clip: Path | None, folder: Path | None) -> int:
    """Open the window and stay until it is closed."""
    plan = open_plan(plan_path)
    folders = Folders(journals_folder(), folder or sessions_folder())
    application = create_application(["coach"])
    window = patient_window(plan, camera if clip is None else clip, folders)
    window.show()
    for recovered in recover(folders.journals, folders.sessions, folders.own):
        window.announce(recovered.message)
    try:
        return run_windows(application)
    finally:
        window.close()  # after Ctrl-C too: this ends the session and keeps what was done


def open_plan(path: Path | None) -> Plan:
    """Read a plan file; without one, the example plan."""
    if path is None:
        return example_plan()
    return read_plan(read_bounded(path, MAX_PLAN_BYTES, "plan file"), str(path))


def patient_window(plan: Plan, what: int | Path, folders: Folders) -> PatientWindow:
    """Build the window on a camera's number or a clip's path."""

    def begin(source: FrameSource) -> Sitting:
        known_deg = known_field_of_view(what, source.size_px)
        return Sitting(
            plan, source, open_estimator(known_deg), folders, field_of_view_deg=known_deg
        )

    return PatientWindow(plan, lambda: open_source(what), begin, Speaker(open_voice()))


def open_voice() -> Voice | None:
    """Give the voice of the packages; None, for captions only, where it cannot be loaded."""
    try:
        return Voice()
    except Fault as fault:
        print(f"coach: {fault}", file=sys.stderr)
        return None
