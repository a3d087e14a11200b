"""Published figures that a result is set beside, each with its source.

They are context: the first reference is always the patient's own other shoulder.
"""

from __future__ import annotations

from dataclasses import dataclass

from coach.domain.movement import Movement, Position, Unit


@dataclass(frozen=True, slots=True)
class Norm:
    """A mean range in healthy people, in degrees."""

    movement: Movement
    mean_deg: float
    people: str
    source: str


@dataclass(frozen=True, slots=True)
class PublishedChange:
    """The smallest change that a published way of measuring can tell from error.

    ``detectable`` is in the movement's unit; ``level`` is the confidence the source gives it at;
    ``movement`` None stands for most motions in degrees.
    """

    movement: Movement | None
    detectable: float
    level: str
    people: str
    source: str


_BOONE = "Boone & Azen 1979, as tabulated in Norkin & White, appendix table A.1"
_WALKER = "Walker 1984, as tabulated in Norkin & White, appendix table A.1"
_GILL = "Gill et al. 2020, BMC Musculoskelet Disord 21:676"
_BOONE_PEOPLE = "109 men, 1-54 years"
_WALKER_PEOPLE = "60 people, 65-85 years"
_F, _E, _A, _X, _X90 = (
    Movement.FLEXION,
    Movement.EXTENSION,
    Movement.ABDUCTION,
    Movement.EXTERNAL_ROTATION_0,
    Movement.EXTERNAL_ROTATION_90,
)

# Rotation with the arm at the side has no row: goniometry by hand takes it at 90 deg of abduction
# (from memory), which is another quantity. Horizontal adduction has none of this definition.
NORMS: tuple[Norm, ...] = (
    Norm(_F, 167, _BOONE_PEOPLE, _BOONE),
    Norm(_E, 62, _BOONE_PEOPLE, _BOONE),
    Norm(_A, 184, _BOONE_PEOPLE, _BOONE),
    Norm(_X90, 104, _BOONE_PEOPLE, _BOONE),
    Norm(_F, 165, _WALKER_PEOPLE, _WALKER),
    Norm(_E, 44, _WALKER_PEOPLE, _WALKER),
    Norm(_A, 165, _WALKER_PEOPLE, _WALKER),
    Norm(_X90, 81, _WALKER_PEOPLE, _WALKER),
    Norm(_F, 161.5, "men of 2404 people, 20-91 years, active, right side", _GILL),
    Norm(_F, 158.5, "women of 2404 people, 20-91 years, active, right side", _GILL),
    Norm(_A, 151.5, "men of 2404 people, 20-91 years, active, right side", _GILL),
    Norm(_A, 149.7, "women of 2404 people, 20-91 years, active, right side", _GILL),
)

TVEITA = PublishedChange(
    None, 15.0, "95 %", "32 people with capsulitis, goniometer by hand", "Tveita 2008"
)
MITSUKANE = PublishedChange(
    Movement.HAND_BEHIND_BACK,
    0.053,
    "as the source gives it",
    "60 healthy people, tape by hand",
    "Mitsukane et al. 2022",
)
"""JSES Int 6:287-291: thumb to C7 over PSIS to C7, active."""
PUBLISHED: dict[Unit, PublishedChange] = {Unit.DEGREES: TVEITA, Unit.RATIO: MITSUKANE}
"""What a change must pass until the patient's own sessions say better."""

WORTH_KNOWING: dict[Unit, float] = {Unit.DEGREES: 15.0, Unit.RATIO: 0.10}
"""The change that is not to be missed: what goniometry by hand just tells (Tveita 2008); of the
hand behind the back two levels of the spine (our choice)."""

PLACEMENT_DOF = 14
"""Degrees of freedom of each of these: at least seven holds, three cameras each."""
PLACEMENT_SEM: dict[tuple[Movement, Position], float] = {
    (Movement.ABDUCTION, Position.STANDING): 2.0,
    (Movement.FLEXION, Position.STANDING): 2.5,
    (Movement.FLEXION, Position.SUPINE): 4.0,
    (Movement.EXTENSION, Position.STANDING): 2.5,
    (Movement.EXTERNAL_ROTATION_0, Position.SUPINE): 3.0,
    (Movement.EXTERNAL_ROTATION_90, Position.STANDING): 2.5,
}
"""Standard error of a hold's value, degrees, between placements of the camera: 7 to 12 holds of
rendered tuning people seen by three cameras each (docs/measurement.md), rounded up to halves. Where
it is not known, the readings' whole error stands in."""

PUBLISHED_CHANGES: tuple[PublishedChange, ...] = (
    TVEITA,
    MITSUKANE,
    PublishedChange(_F, 8.0, "90 %", "inclinometer, two raters", "Kolber 2011"),
    PublishedChange(_A, 4.0, "90 %", "inclinometer, two raters", "Kolber 2011"),
    PublishedChange(_X, 9.0, "90 %", "inclinometer, two raters", "Kolber 2011"),
)
