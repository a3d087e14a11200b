"""``coach demo``: the whole job on a sample clip, without a screen, a loudspeaker or a network."""

from __future__ import annotations

import json
from dataclasses import dataclass, replace
from itertools import chain
from pathlib import Path
from typing import Any

import msgspec

from coach.app.estimator import open_estimator
from coach.app.patient import open_voice, patient_window
from coach.app.progress_bar import ProgressBar
from coach.app.review import write_report_files
from coach.app.sitting import Folders, Sitting
from coach.capture.sources import open_source
from coach.desktop.shared.application import create_application, run_windows, show_on_screen
from coach.desktop.therapist.window import ReviewWindow
from coach.domain.fault import Fault
from coach.domain.moment import Moment, Order, Stage
from coach.domain.movement import Movement, Side
from coach.domain.plan import Plan, PlannedExercise
from coach.domain.session import SessionDocument, SessionEnd
from coach.review.wording import ended_word, movement_of
from coach.storage.atomic import make_folder, write_bytes
from coach.storage.store import Store
from coach.storage.store_import import import_paths
from coach.texts import language, localised, translate
from coach.voice.speaker import Speaker
from coach.voice.timeline import Timeline, timeline_entries, wav_bytes

CLIP = "flexion_right_three_holds.mp4"
TICK_S = 0.02
LONGEST_TALK_S = 90.0
_PACKAGE = Path(__file__).resolve().parents[1]
_PLACES = (_PACKAGE / "_installed" / "sample_videos", _PACKAGE.parent / "sample_videos")


def demo_plan() -> Plan:
    """Give the plan of the sample clip: three holds of seven seconds."""
    return Plan(
        patient_code="SAMPLE",
        title=translate("demo", "Sample clip of a rendered person"),
        exercises=(
            PlannedExercise(
                movement=Movement.FLEXION,
                side=Side.RIGHT,
                hold_s=7,
                repetitions=3,
                rest_s=3,
                pain_limit=4,
            ),
        ),
    )


def sample_clip() -> Path:
    """Find the sample clip in the installed program or in a checkout."""
    for place in _PLACES:
        if (place / CLIP).is_file():
            return place / CLIP
    raise Fault(
        translate(
            "faults",
            "The sample clip '{clip}' is missing; install the program again.",
        ).format(clip=CLIP)
    )


@dataclass(frozen=True, slots=True)
class Played:
    """What came of playing the clip through a sitting; ``lead_in_s`` was talk before it."""

    document: SessionDocument
    session_file: Path
    timeline: Timeline
    lead_in_s: float
    seconds: float


def run_demo(out: Path, *, show: bool) -> int:
    """Play the clip, write what comes of it into ``out``, and print it beside the truth."""
    clip = sample_clip()
    truth = json.loads(clip.with_suffix(".json").read_text("utf-8"))
    make_folder(out)
    played = play(clip, Folders(out, out, out))
    wav = out / "speech.wav"
    write_bytes(wav, wav_bytes(played.timeline, played.seconds))
    entries = timeline_entries(played.timeline)
    write_bytes(out / "speech.json", msgspec.json.format(msgspec.json.encode(entries)))
    store = Store(out / "review.sqlite")
    for outcome in import_paths(store, [played.session_file]):
        print(outcome.line)
    application = create_application(["coach"], offscreen_allowed=not show, language=language())
    written = write_report_files(store, demo_plan().patient_code, out)
    print(beside_truth(played, truth))
    print("\n" + translate("demo", "Written:"))
    for path in (played.session_file, wav, *written):
        print(f"  {path}")
    if show:
        patient = patient_window(demo_plan(), clip, Folders(out, out, out))
        review = ReviewWindow(store)
        show_on_screen(review)
        show_on_screen(patient)
        try:
            run_windows(application)
        finally:
            patient.close()
            store.close()
    else:
        store.close()
    return 0


def play(clip: Path, folders: Folders) -> Played:
    """Run one sitting on the clip; the talk before the exercise is over when the clip begins."""
    source = open_source(clip)
    timeline = Timeline()
    speaker = Speaker(open_voice(), timeline=timeline)
    sitting = Sitting(demo_plan(), source, open_estimator(), folders, started_s=0.0)
    try:
        frames = iter(source)
        first = next(frames)
        speaker.hear(sitting.step(replace(first, time_s=0.0)))
        now_s = _talk(speaker, 0.0)
        for given, pain in ((Order.START, None), (Order.PAIN, 2)):
            speaker.hear(sitting.order(now_s, given, pain))
            now_s = _talk(speaker, now_s)
        lead_in_s = now_s
        with ProgressBar(translate("demo", "playing the sample clip"), source.frame_count) as bar:
            moment: Moment | None = None
            for frame in chain([first], frames):
                at_s = lead_in_s + frame.time_s
                while now_s < at_s:
                    speaker.tick(now_s)
                    now_s += TICK_S
                moment = sitting.step(replace(frame, time_s=at_s))
                speaker.hear(moment)
                bar.advance()
        now_s = _talk(speaker, now_s)
        if moment is not None and moment.stage is Stage.PAIN_AFTER:
            speaker.hear(sitting.order(now_s, Order.PAIN, 2))
            now_s = _talk(speaker, now_s)
        outcome = sitting.finish(SessionEnd.INPUT_ENDED)
    except KeyboardInterrupt:
        sitting.finish(SessionEnd.STOPPED)
        raise
    finally:
        sitting.close()
        source.close()
    if outcome.saved_at is None:
        raise Fault(
            outcome.fault
            or translate(
                "faults", "Nothing was measured in '{clip}'; install the program again."
            ).format(clip=clip)
        )
    return Played(outcome.document, Path(outcome.saved_at), timeline, lead_in_s, now_s)


def _talk(speaker: Speaker, now_s: float) -> float:
    """Let the speaker finish; give the time at which it is quiet."""
    end_s = now_s + LONGEST_TALK_S
    while now_s < end_s:
        speaker.tick(now_s)
        now_s += TICK_S
        if speaker.quiet(now_s):
            break
    return now_s


def beside_truth(played: Played, truth: dict[str, Any]) -> str:
    """Put the measured holds beside those that the clip truly holds."""
    holds = truth["holds"]
    lines = [
        translate("demo", "Holds in the clip, {movement}: {count}").format(
            movement=movement_of(Movement.FLEXION, Side.RIGHT), count=len(holds)
        ),
        translate("demo", "            truth                      measured"),
        translate("demo", "  hold      held       angle           held       angle"),
    ]
    for exercise in played.document.exercises:
        for repetition in exercise.repetitions:
            start_s = repetition.start_s - played.lead_in_s
            true = min(holds, key=lambda hold: abs(hold["start_s"] - start_s))
            line = (
                f"  {repetition.number}      {true['held_s']:6.1f} s   {true['value_deg']:5.1f}°"
                f"        {repetition.held_s:6.1f} s   {repetition.value:5.1f}°"
                f" ± {repetition.error:.1f}° "
            )
            lines.append(localised(line) + f"({ended_word(repetition.ended_because)})")
    return "\n".join(lines)
