"""An exercise as the catalogue describes it: what is done, seen, asked, and in which words."""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated

import msgspec
from msgspec import Meta

from coach.domain.form import FormLimits
from coach.domain.movement import Movement, Position, View

Slug = Annotated[str, Meta(pattern="^[a-z0-9]+(-[a-z0-9]+)*$", max_length=60)]
"""An exercise's own name in files: small letters, digits and hyphens."""
Sentence = Annotated[str, Meta(min_length=1, max_length=400)]
Words = Annotated[str, Meta(min_length=1, max_length=80)]
HoldRange = tuple[Annotated[float, Meta(ge=1, le=60)], Annotated[float, Meta(ge=1, le=60)]]
CountRange = tuple[Annotated[int, Meta(ge=1, le=30)], Annotated[int, Meta(ge=1, le=30)]]
AngleDeg = Annotated[float, Meta(ge=-180, le=360)]


class Irritability(StrEnum):
    """How easily the shoulder is made to hurt, as the therapist judges it."""

    HIGH = "high"
    MODERATE = "moderate"
    LOW = "low"


class StiffnessPhase(StrEnum):
    """Phase of a frozen shoulder, as the therapist judges it."""

    PAINFUL = "painful"
    STIFF = "stiff"
    THAWING = "thawing"


class Equipment(StrEnum):
    """What is needed beside the laptop."""

    STICK = "stick"
    MAT = "mat"
    TOWEL = "towel"
    DOOR_FRAME = "door-frame"
    WALL = "wall"
    TABLE = "table"
    CHAIR = "chair"


class Dose(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """A usual dose: least and most, seconds and counts, and where it is from.

    It is where a therapist's prescription begins, never one by itself.
    """

    hold_s: HoldRange
    repetitions: CountRange
    per_day: CountRange
    source: Sentence


class Bend(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """How the drawn figure stands at one instant of its demonstration, in degrees.

    ``arm`` and ``other`` are plane of elevation, elevation, external rotation and elbow flexion of
    the exercised and the other arm (0, 0, 0, 0 hangs; planes as in ISB, Wu et al. 2005: 0 to the
    side, 90 forward, -90 backward). The arm is lifted straight out of hanging in its plane and only
    then rotated about itself, outward positive; at 0 the bent elbow of a hanging arm points the
    hand forward. ``trunk`` is lean toward the exercised side, turn toward it, and bend forward.
    ``at_s`` counts from the start of the loop.
    """

    at_s: Annotated[float, Meta(ge=0, le=30)]
    arm: tuple[AngleDeg, AngleDeg, AngleDeg, AngleDeg]
    other: tuple[AngleDeg, AngleDeg, AngleDeg, AngleDeg] = (0.0, 0.0, 0.0, 0.0)
    trunk: tuple[AngleDeg, AngleDeg, AngleDeg] = (0.0, 0.0, 0.0)


class Telling(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """An exercise's words in one language, for the patient.

    They speak of "the stiff arm" and "your other hand", so that they hold for either side.
    ``title`` names it, ``purpose`` says what it is for, ``laptop`` where the laptop goes and how
    one is placed before it, ``spoken`` is the instruction for someone who cannot see the screen,
    ``steps`` the same to read, ``watch`` what not to let the body do instead, ``cautions`` what
    belongs to this exercise only; ``by_time`` says why it is timed and not measured.
    """

    title: Words
    purpose: Sentence
    laptop: tuple[Sentence, Words]
    """Spoken, and the short form that is shown."""
    spoken: Sentence
    short: Words
    steps: Annotated[tuple[Sentence, ...], Meta(min_length=1, max_length=8)]
    watch: Annotated[tuple[Sentence, ...], Meta(max_length=6)] = ()
    cautions: Annotated[tuple[Sentence, ...], Meta(max_length=6)] = ()
    by_time: Sentence | None = None


class Exercise(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """One entry of the catalogue.

    ``name`` is for therapists, in trade terms; ``telling`` for patients, by language. ``movement``
    None: the camera cannot measure it honestly in this position, so it is timed and coached.
    ``form`` stands only where it is other than the usual. ``easier`` and ``harder`` name its
    neighbours.
    """

    exercise: Slug
    name: Words
    movement: Movement | None = None
    position: Position
    view: View
    equipment: Annotated[tuple[Equipment, ...], Meta(max_length=6)] = ()
    form: FormLimits | None = None
    doses: dict[Irritability, Dose]
    easier: Slug | None = None
    harder: Slug | None = None
    telling: dict[Annotated[str, Meta(pattern="^[a-z]{2}$")], Telling]
    demonstration: Annotated[tuple[Bend, ...], Meta(min_length=2, max_length=12)]
