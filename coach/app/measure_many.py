"""``coach measure`` on several clips at once: as many at a time as there are cores.

Each clip is measured by a process of its own kind, exactly as it would be alone.
"""

from __future__ import annotations

import io
import multiprocessing
import signal
import sys
from collections.abc import Iterable, Sequence
from contextlib import redirect_stderr, redirect_stdout
from dataclasses import dataclass
from pathlib import Path

from coach.app.measure import Asked, run_measure
from coach.desktop.shared.language import choose_texts
from coach.domain.fault import Fault
from coach.domain.text import shown_text
from coach.storage.atomic import make_folder
from coach.storage.cores import cores
from coach.texts import language, translate

VIDEO_SUFFIXES = frozenset(
    (".avi", ".m4v", ".mkv", ".mov", ".mp4", ".mpeg", ".mpg", ".ogv", ".webm", ".wmv")
)
"""What is taken for a clip in a folder; a clip that is named may be called anything."""


@dataclass(frozen=True, slots=True)
class Job:
    """One clip, what to measure of it, and where its table goes."""

    clip: Path
    asked: Asked
    json: Path | None


@dataclass(frozen=True, slots=True)
class Told:
    """What measuring a clip printed; ``fault`` is the sentence why it could not be measured."""

    clip: Path
    printed: str
    remarks: str
    fault: str | None = None


def run_measures(what: Sequence[Path], asked: Asked, json: Path | None) -> int:
    """Measure clips and the clips of folders, and print what was found in the order given.

    Gives 1 where a clip could not be measured, after all the others were. The tables of several
    clips go into the folder ``json``, which is made.
    """
    clips = clips_of(what)
    if len(clips) == 1 and clips[0] in what:
        return run_measure(clips[0], asked, json)
    if json is not None:
        if len({clip.stem for clip in clips}) < len(clips):
            raise Fault(
                translate(
                    "faults",
                    "Two of the clips have the same name, so one table would replace "
                    "the other; rename one, or measure them one at a time.",
                )
            )
        make_folder(json)
    jobs = []
    for clip in clips:
        table = None if json is None else json / f"{clip.stem}.json"
        jobs.append(Job(clip, asked, table))
    missed = 0
    workers = min(len(jobs), cores())
    with multiprocessing.get_context("spawn").Pool(workers, _begin, (language(),)) as pool:
        for told in pool.imap(measured, jobs):
            print(f"{shown_text(str(told.clip))}\n{told.printed}", end="", flush=True)
            print(told.remarks, end="", file=sys.stderr, flush=True)
            if told.fault is not None:
                missed += 1
                print(f"coach: {told.fault}", file=sys.stderr, flush=True)
    return 1 if missed else 0


def measured(job: Job) -> Told:
    """Measure one clip in a process of its own, and give what is to be told of it."""
    printed, remarks, fault = io.StringIO(), io.StringIO(), None
    with redirect_stdout(printed), redirect_stderr(remarks):
        try:
            run_measure(job.clip, job.asked, job.json)
        except Fault as refused:
            fault = str(refused)
    return Told(job.clip, printed.getvalue(), remarks.getvalue(), fault)


def clips_of(what: Iterable[Path]) -> tuple[Path, ...]:
    """List clips as given, and in place of a folder the clips in it, each once."""
    found: dict[Path, None] = {}
    for path in what:
        if not path.is_dir():
            found[path] = None
            continue
        inside = [p for p in sorted(path.iterdir()) if p.suffix.lower() in VIDEO_SUFFIXES]
        if not inside:
            raise Fault(
                translate(
                    "faults",
                    "There is no clip in the folder '{path}'; name another.",
                ).format(path=path)
            )
        found.update(dict.fromkeys(inside))
    return tuple(found)


def _begin(spoken: str) -> None:
    """Speak as the process that the person sees, and leave Ctrl-C to it, which ends the others."""
    choose_texts(spoken)
    signal.signal(signal.SIGINT, signal.SIG_IGN)
