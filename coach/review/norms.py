"""Published figures that a result is set beside, each with its source.

They are context: the first reference is always the patient's own other shoulder.
"""

from __future__ import annotations

from dataclasses import dataclass

from coach.domain.movement import Movement


@dataclass(frozen=True, slots=True)
class Norm:
    """A mean range in healthy people, in degrees."""

    movement: Movement
    mean_deg: float
    people: str
    source: str


@dataclass(frozen=True, slots=True)
class PublishedChange:
    """The smallest change, in degrees, that a published way of measuring can tell from error.

    ``level`` is the confidence the source gives it at; ``movement`` None stands for most motions.
    """

    movement: Movement | None
    detectable_deg: float
    level: str
    people: str
    source: str


_BOONE = "Boone & Azen 1979, as tabulated in Norkin & White, appendix table A.1"
_WALKER = "Walker 1984, as tabulated in Norkin & White, appendix table A.1"
_GILL = "Gill et al. 2020, BMC Musculoskelet Disord 21:676"
_BOONE_PEOPLE = "109 men, 1-54 years"
_WALKER_PEOPLE = "60 people, 65-85 years"
_F, _E, _A, _X = (
    Movement.FLEXION,
    Movement.EXTENSION,
    Movement.ABDUCTION,
    Movement.EXTERNAL_ROTATION_0,
)

# External rotation has no row: goniometry by hand takes it at 90 deg of abduction (from memory),
# which is another quantity than rotation with the arm at the side.
NORMS: tuple[Norm, ...] = (
    Norm(_F, 167, _BOONE_PEOPLE, _BOONE),
    Norm(_E, 62, _BOONE_PEOPLE, _BOONE),
    Norm(_A, 184, _BOONE_PEOPLE, _BOONE),
    Norm(_F, 165, _WALKER_PEOPLE, _WALKER),
    Norm(_E, 44, _WALKER_PEOPLE, _WALKER),
    Norm(_A, 165, _WALKER_PEOPLE, _WALKER),
    Norm(_F, 161.5, "men of 2404 people, 20-91 years, active, right side", _GILL),
    Norm(_F, 158.5, "women of 2404 people, 20-91 years, active, right side", _GILL),
    Norm(_A, 151.5, "men of 2404 people, 20-91 years, active, right side", _GILL),
    Norm(_A, 149.7, "women of 2404 people, 20-91 years, active, right side", _GILL),
)

TVEITA = PublishedChange(
    None, 15.0, "95 %", "32 people with capsulitis, goniometer by hand", "Tveita 2008"
)
"""What a change must pass until the patient's own sessions say better."""

PUBLISHED_CHANGES: tuple[PublishedChange, ...] = (
    TVEITA,
    PublishedChange(_F, 8.0, "90 %", "inclinometer, two raters", "Kolber 2011"),
    PublishedChange(_A, 4.0, "90 %", "inclinometer, two raters", "Kolber 2011"),
    PublishedChange(_X, 9.0, "90 %", "inclinometer, two raters", "Kolber 2011"),
)
