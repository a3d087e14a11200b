"""Photographs of the patient's window when something is amiss, or over before its end."""

from __future__ import annotations

from dataclasses import replace

import msgspec

from coach.cues.wording import form_sentence
from coach.desktop.patient.coaching import Outcome
from coach.desktop.patient.loudspeaker import no_sound
from coach.desktop.patient.window import PatientWindow
from coach.domain.form import FormFault
from coach.domain.moment import Moment
from coach.domain.movement import Position
from coach.domain.reading import Doubt, Reading
from coach.domain.session import ExerciseRecord, SessionDocument, SessionEnd
from docs.shots import Shot

SAVED_AT = "Sessions/2026-02-15.shoulder.zip"


def photograph_troubles(
    window: PatientWindow,
    shot: Shot,
    moments: tuple[Moment, Moment, Moment],
    document: SessionDocument,
) -> None:
    """Go through them.

    ``moments`` are of getting ready, of a hold, and of the question about pain; ``document`` is a
    sitting that went to its end.
    """
    ready, hold, pain = moments
    for name, moment in (
        ("patient_nobody_ready", replace(ready, doubt=Doubt.NOBODY)),
        ("patient_nobody", replace(hold, reading=Reading(10.0, None, None, Doubt.NOBODY))),
    ):
        window.pages.turn_to(replace(moment, pose=None, shown=None))
        shot(name, window)
    window.captions.note(no_sound())
    window.pages.turn_to(pain)
    shot("patient_silent", window)
    window.captions.say("3")
    shot("patient_silent_said", window)
    window.pages.turn_to(ready)
    window.captions.say(form_sentence(FormFault.HIKE, Position.STANDING).caption)
    shot("patient_silent_ready", window)
    window.pages.turn_to(hold)
    shot("patient_silent_hold", window)
    window.captions.note("")
    window.captions.say("")
    window.pages.end()
    first, *others = document.exercises
    stopped = (
        _ended(first, SessionEnd.PAIN, 3, 8),
        *(_ended(each, SessionEnd.SKIPPED, None, None) for each in others),
    )
    window.pages.summary.show_outcome(
        Outcome(
            msgspec.structs.replace(document, exercises=stopped, ended_because=SessionEnd.PAIN),
            SAVED_AT,
        )
    )
    shot("patient_pain_stop", window)
    none = msgspec.structs.replace(document, exercises=(), ended_because=SessionEnd.STOPPED)
    window.pages.summary.show_outcome(Outcome(none, None))
    shot("patient_none_begun", window)


def _ended(
    record: ExerciseRecord, because: SessionEnd, before: int | None, after: int | None
) -> ExerciseRecord:
    done = () if because is SessionEnd.SKIPPED else record.repetitions
    return msgspec.structs.replace(
        record,
        ended_because=because,
        repetitions=done,
        timed=(),
        pain_before=before,
        pain_after=after,
    )
