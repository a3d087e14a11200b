"""The invented people: who is for tuning and who is for judging, for good.

Estimators may be looked at, fitted and chosen on TUNING people only; a JUDGING person is used to
state a number and for nothing else. Never move anybody from one list to the other.
"""

from __future__ import annotations

from dataclasses import dataclass

Rgb = tuple[float, float, float]


@dataclass(frozen=True, slots=True)
class Outfit:
    """Clothes and looks. Lengths run along the arm in parts of shoulder-elbow-wrist (0-1-2)."""

    skin: Rgb
    shirt: Rgb
    sleeve: float
    trousers: Rgb
    shorts: bool
    shoes: Rgb
    hair: Rgb
    hair_style: str
    stripes: bool = False
    loose_mm: float = 10.0


@dataclass(frozen=True, slots=True)
class Person:
    """Shape parameters of the body model, each 0-1 (gender 0 male, 1 female; age 2/3 adult)."""

    name: str
    gender: float
    age: float
    muscle: float
    weight: float
    height: float
    proportions: float
    outfit: Outfit


PALE, FAIR, TAN = (0.87, 0.67, 0.57), (0.80, 0.58, 0.46), (0.66, 0.44, 0.31)
BROWN, DARK = (0.43, 0.27, 0.18), (0.26, 0.155, 0.105)
BLACK_HAIR, BROWN_HAIR, GREY_HAIR = (0.035, 0.03, 0.03), (0.16, 0.09, 0.05), (0.52, 0.51, 0.50)
WHITE_HAIR, BLOND_HAIR, RED_HAIR = (0.78, 0.77, 0.75), (0.55, 0.42, 0.24), (0.36, 0.14, 0.06)
SHORT, BALDING, BOB, BUN = "short", "balding", "bob", "bun"

TUNING: tuple[Person, ...] = (
    Person(
        "amber",
        1.0,
        0.72,
        0.45,
        0.50,
        0.42,
        0.5,
        Outfit(
            FAIR,
            (0.10, 0.32, 0.42),
            0.45,
            (0.07, 0.07, 0.09),
            False,
            (0.75, 0.75, 0.76),
            BROWN_HAIR,
            BOB,
        ),
    ),
    Person(
        "basil",
        0.0,
        0.78,
        0.50,
        0.62,
        0.42,
        0.4,
        Outfit(
            TAN,
            (0.45, 0.10, 0.09),
            0.50,
            (0.10, 0.14, 0.25),
            False,
            (0.08, 0.08, 0.08),
            BLACK_HAIR,
            SHORT,
            loose_mm=16.0,
        ),
    ),
    Person(
        "cedar",
        0.0,
        0.95,
        0.35,
        0.45,
        0.38,
        0.5,
        Outfit(
            PALE,
            (0.62, 0.63, 0.60),
            1.85,
            (0.24, 0.20, 0.15),
            False,
            (0.18, 0.11, 0.06),
            GREY_HAIR,
            BALDING,
            loose_mm=14.0,
        ),
    ),
    Person(
        "dahlia",
        1.0,
        0.85,
        0.40,
        0.85,
        0.36,
        0.4,
        Outfit(
            BROWN,
            (0.62, 0.45, 0.08),
            0.55,
            (0.05, 0.05, 0.06),
            False,
            (0.30, 0.05, 0.10),
            BLACK_HAIR,
            BUN,
            loose_mm=14.0,
        ),
    ),
    Person(
        "elm",
        0.0,
        0.67,
        0.65,
        0.42,
        0.50,
        0.6,
        Outfit(
            DARK,
            (0.70, 0.71, 0.74),
            0.02,
            (0.16, 0.17, 0.20),
            True,
            (0.62, 0.62, 0.60),
            BLACK_HAIR,
            SHORT,
        ),
    ),
    Person(
        "fern",
        1.0,
        0.97,
        0.35,
        0.40,
        0.36,
        0.5,
        Outfit(
            PALE,
            (0.30, 0.22, 0.42),
            1.15,
            (0.36, 0.34, 0.31),
            False,
            (0.12, 0.12, 0.14),
            WHITE_HAIR,
            BOB,
            stripes=True,
        ),
    ),
    Person(
        "ginkgo",
        1.0,
        0.67,
        0.55,
        0.35,
        0.50,
        0.7,
        Outfit(
            TAN,
            (0.04, 0.04, 0.05),
            0.02,
            (0.26, 0.27, 0.30),
            True,
            (0.80, 0.80, 0.78),
            BLACK_HAIR,
            BUN,
        ),
    ),
)

JUDGING: tuple[Person, ...] = (
    Person(
        "hazel", 1.0, 0.80, 0.45, 0.62, 0.45, 0.5,
        Outfit(PALE, (0.16, 0.33, 0.16), 0.50, (0.12, 0.15, 0.24), False, (0.66, 0.66, 0.66),
               RED_HAIR, BOB),
    ),
    Person(
        "iris", 1.0, 0.90, 0.38, 0.50, 0.32, 0.6,
        Outfit(DARK, (0.72, 0.70, 0.66), 1.85, (0.20, 0.09, 0.11), False, (0.06, 0.06, 0.06),
               GREY_HAIR, BUN, loose_mm=13.0),
    ),
    Person(
        "jasper", 0.0, 0.70, 0.60, 0.55, 0.46, 0.5,
        Outfit(FAIR, (0.07, 0.09, 0.16), 0.48, (0.34, 0.33, 0.31), True, (0.10, 0.10, 0.12),
               BLOND_HAIR, SHORT, loose_mm=15.0),
    ),
    Person(
        "kale", 0.0, 0.90, 0.45, 0.85, 0.40, 0.4,
        Outfit(BROWN, (0.22, 0.42, 0.60), 0.55, (0.17, 0.16, 0.15), False, (0.35, 0.33, 0.30),
               GREY_HAIR, BALDING, loose_mm=16.0),
    ),
    Person(
        "laurel", 1.0, 0.68, 0.60, 0.40, 0.44, 0.6,
        Outfit(BROWN, (0.55, 0.16, 0.30), 0.02, (0.06, 0.06, 0.07), False, (0.70, 0.70, 0.72),
               BLACK_HAIR, SHORT),
    ),
    Person(
        "maple", 0.0, 0.98, 0.40, 0.40, 0.42, 0.5,
        Outfit(TAN, (0.58, 0.24, 0.10), 0.55, (0.09, 0.10, 0.12), False, (0.24, 0.15, 0.09),
               WHITE_HAIR, SHORT, stripes=True, loose_mm=12.0),
    ),
)  # fmt: skip

ALL: dict[str, Person] = {person.name: person for person in TUNING + JUDGING}
