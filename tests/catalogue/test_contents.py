"""The exercises that the program brings along: doses, views, neighbours, demonstrations."""

from __future__ import annotations

from pathlib import Path

import msgspec
import pytest

from coach.catalogue import catalogue
from coach.catalogue.table import HEADER, table
from coach.domain.exercise import Bend, Dose, Exercise, Irritability, Telling
from coach.domain.form import FormLimits
from coach.domain.movement import VIEWS, Movement, Position, View

ALL = catalogue().all
NAMES = [exercise.exercise for exercise in ALL]
DOCUMENT = (Path(__file__).parents[2] / "docs" / "exercises.md").read_text(encoding="utf-8")

WANTED = {
    ("external-rotation-0", "supine", "foot"): 1,
    ("external-rotation-90", "supine", "side"): 1,
    ("flexion", "supine", "side"): 1,
    ("extension", "standing", "side"): 1,
    ("hand-behind-back", "standing", "back"): 1,
    ("external-rotation-0", "doorway", "front"): 2,
    ("flexion", "standing", "side"): 1,
    ("abduction", "standing", "front"): 1,
}
"""What is to be measured, and how often it is there; everything else is timed."""


def test_what_is_measured_is_what_a_camera_measures_honestly() -> None:
    found: dict[tuple[str, str, str], int] = {}
    for exercise in ALL:
        if exercise.movement is not None:
            key = (str(exercise.movement), str(exercise.position), str(exercise.view))
            found[key] = found.get(key, 0) + 1
            assert exercise.view in VIEWS[exercise.movement, exercise.position]
    assert found == WANTED
    assert sum(exercise.movement is None for exercise in ALL) == 13


@pytest.mark.parametrize("exercise", ALL, ids=NAMES)
def test_every_dose_has_a_source_and_gets_longer_as_irritability_falls(exercise: Exercise) -> None:
    assert set(exercise.doses) == set(Irritability)
    high, moderate, low = (exercise.doses[level] for level in Irritability)
    for dose in (high, moderate, low):
        assert "ommon practice" in dose.source or "Kelley et al. 2013" in dose.source
        assert ("Kelley" in dose.source) <= ("from memory" in dose.source)
        assert 1 <= dose.hold_s[0] <= dose.hold_s[1] <= 60
        assert dose.per_day[1] <= 3
    assert high.hold_s[0] <= moderate.hold_s[0] <= low.hold_s[0]
    assert high.hold_s[1] <= moderate.hold_s[1] <= low.hold_s[1]


KINDS = {
    "pendulum": ((15, 30), (30, 60), (30, 60)),
    "armpit-squeeze": ((5, 5), (5, 10), (5, 10)),
    "shoulder-blade-setting": ((1, 5), (5, 5), (5, 10)),
}


@pytest.mark.parametrize("exercise", ALL, ids=NAMES)
def test_a_stretch_is_held_as_its_irritability_allows(exercise: Exercise) -> None:
    """High 1-5 s, moderate 5-15 s (Kelley et al. 2013, from memory), low up to about 30 s (common
    practice); squeezing 5-10 s (common practice)."""
    holds = tuple(exercise.doses[level].hold_s for level in Irritability)
    assert holds == KINDS.get(exercise.exercise, ((1, 5), (5, 15), (20, 30)))


@pytest.mark.parametrize("exercise", ALL, ids=NAMES)
def test_neighbours_know_each_other(exercise: Exercise) -> None:
    easier = catalogue().easier(exercise.exercise)
    harder = catalogue().harder(exercise.exercise)
    assert easier is None or easier.harder == exercise.exercise
    assert harder is None or harder.easier == exercise.exercise


@pytest.mark.parametrize("exercise", ALL, ids=NAMES)
def test_a_doorway_asks_for_no_still_trunk(exercise: Exercise) -> None:
    if exercise.position is Position.DOORWAY:
        assert exercise.form is not None
        assert exercise.form.turn_deg is None
        assert min(bend.trunk[1] for bend in exercise.demonstration) <= -20, "turned away"


MOST_DEG = {
    Movement.FLEXION: 167,
    Movement.EXTENSION: 62,
    Movement.ABDUCTION: 184,
    Movement.EXTERNAL_ROTATION_0: 70,
    Movement.EXTERNAL_ROTATION_90: 104,
}
"""Normal range: Boone and Azen 1979, as tabulated in Norkin and White, Measurement of Joint Motion;
rotation with the arm at the side is from memory."""


def end_deg(exercise: Exercise) -> float:
    match exercise.movement:
        case Movement.EXTERNAL_ROTATION_0 | Movement.EXTERNAL_ROTATION_90:
            return max(bend.arm[2] for bend in exercise.demonstration)
        case _:
            return max(bend.arm[1] for bend in exercise.demonstration)


@pytest.mark.parametrize("exercise", ALL, ids=NAMES)
def test_a_demonstration_is_a_loop_of_a_stiff_shoulder(exercise: Exercise) -> None:
    bends = exercise.demonstration
    assert 3 <= len(bends) <= 6
    assert 6 <= bends[-1].at_s <= 10
    first, last = (msgspec.structs.replace(bend, at_s=0) for bend in (bends[0], bends[-1]))
    assert first == last
    assert any(bend.arm != bends[0].arm or bend.other != bends[0].other for bend in bends)
    if exercise.movement in MOST_DEG:
        assert 0.4 <= end_deg(exercise) / MOST_DEG[exercise.movement] <= 0.7


@pytest.mark.parametrize("exercise", ALL, ids=NAMES)
def test_lying_people_lie_on_a_mat_and_the_laptop_stands_where_they_are_seen(
    exercise: Exercise,
) -> None:
    if exercise.position.lying:
        assert "mat" in exercise.equipment
    if exercise.position in (Position.PRONE, Position.SUPINE):
        assert exercise.view in (View.SIDE, View.FOOT)


def test_the_document_has_the_table_of_all_exercises() -> None:
    assert HEADER in DOCUMENT
    assert DOCUMENT[DOCUMENT.index(HEADER) :] == table(catalogue())


@pytest.mark.parametrize("kind", [Exercise, Dose, Telling, Bend, FormLimits])
def test_the_document_names_every_field(kind: type[msgspec.Struct]) -> None:
    missing = {f.name for f in msgspec.structs.fields(kind) if f"`{f.name}`" not in DOCUMENT}
    assert missing <= {"doses", "telling"}, "these two stand there with their keys"
    assert "`doses.high`" in DOCUMENT
    assert "`telling.en`" in DOCUMENT
