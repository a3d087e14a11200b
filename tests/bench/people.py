"""The invented people: who is for tuning and who is for judging, for good.

Estimators may be looked at, fitted and chosen on TUNING people only; a JUDGING person is used to
state a number and for nothing else. Never move anybody from one list to the other, and add people
at the end only: clips are drawn by the place in the list.
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
SHORT, BALDING, BOB, BUN, LONG = "short", "balding", "bob", "bun", "long"

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
    Person(
        "nettle", 1.0, 0.70, 0.40, 0.92, 0.45, 0.45,
        Outfit(DARK, (0.36, 0.12, 0.16), 1.85, (0.10, 0.10, 0.12), False, (0.55, 0.55, 0.56),
               BLACK_HAIR, LONG, loose_mm=24.0),
    ),
    Person(
        "olive", 0.0, 0.98, 0.35, 0.50, 0.40, 0.5,
        Outfit(PALE, (0.27, 0.31, 0.20), 1.75, (0.30, 0.28, 0.24), False, (0.14, 0.12, 0.10),
               WHITE_HAIR, BALDING, loose_mm=22.0),
    ),
    Person(
        "poppy", 1.0, 0.67, 0.50, 0.45, 0.48, 0.6,
        Outfit(FAIR, (0.66, 0.65, 0.62), 0.75, (0.13, 0.16, 0.26), False, (0.72, 0.72, 0.73),
               BLOND_HAIR, LONG, loose_mm=28.0),
    ),
    Person(
        "quince", 0.0, 0.72, 0.55, 0.80, 0.46, 0.5,
        Outfit(BROWN, (0.12, 0.13, 0.15), 0.95, (0.28, 0.29, 0.31), True, (0.60, 0.58, 0.55),
               BLACK_HAIR, SHORT, loose_mm=30.0),
    ),
)  # fmt: skip

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
    Person(
        "reed", 0.0, 0.67, 0.55, 0.36, 0.50, 0.6,
        Outfit(DARK, (0.64, 0.42, 0.12), 0.70, (0.11, 0.11, 0.13), False, (0.75, 0.75, 0.75),
               BLACK_HAIR, SHORT, loose_mm=27.0),
    ),
    Person(
        "sage", 1.0, 0.95, 0.38, 0.88, 0.38, 0.4,
        Outfit(FAIR, (0.25, 0.37, 0.47), 1.85, (0.16, 0.14, 0.15), False, (0.30, 0.26, 0.24),
               GREY_HAIR, BUN, loose_mm=20.0),
    ),
    Person(
        "thyme", 0.0, 0.82, 0.50, 0.82, 0.44, 0.5,
        Outfit(TAN, (0.44, 0.45, 0.47), 1.90, (0.10, 0.13, 0.21), False, (0.09, 0.09, 0.09),
               BROWN_HAIR, SHORT, loose_mm=26.0),
    ),
    Person(
        "violet", 1.0, 0.67, 0.50, 0.38, 0.43, 0.6,
        Outfit(PALE, (0.20, 0.11, 0.26), 1.80, (0.40, 0.38, 0.36), False, (0.14, 0.14, 0.15),
               RED_HAIR, LONG, loose_mm=12.0),
    ),
    Person(
        "willow", 1.0, 0.80, 0.42, 0.42, 0.40, 0.5,
        Outfit(BROWN, (0.60, 0.62, 0.58), 0.80, (0.08, 0.08, 0.10), False, (0.48, 0.14, 0.14),
               BLACK_HAIR, LONG, loose_mm=25.0),
    ),
)  # fmt: skip
FOUNDERS = {"tuning": 7, "judging": 6}
"""So many of each list were there first; their clips keep their people."""

ALL: dict[str, Person] = {person.name: person for person in TUNING + JUDGING}
