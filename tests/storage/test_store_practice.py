"""The practice's own records, on both databases."""

from __future__ import annotations

from datetime import date, timedelta
from types import ModuleType
from typing import Any

import msgspec
import pytest

from coach.domain.exercise import Irritability, StiffnessPhase
from coach.domain.fault import Fault
from coach.domain.movement import Movement, Side
from coach.domain.plan import Plan, PlannedExercise
from coach.domain.practice import (
    Episode,
    HandMeasure,
    IssuedPlan,
    OtherSideMeasure,
    Person,
    Record,
    TotalScore,
    Treatment,
    TreatmentKind,
)
from coach.storage.store import Store
from tests.storage.conftest import Place

CODE = "INV-3"
DAY = date(2026, 3, 4)
EXERCISE = PlannedExercise(movement=Movement.FLEXION, side=Side.LEFT, hold_s=20, repetitions=3)


def issued(revision: int = 1, side: Side | None = Side.LEFT, on: date = DAY) -> IssuedPlan:
    plan = Plan(patient_code=CODE, revision=revision, side=side, exercises=(EXERCISE,))
    text = msgspec.json.encode(plan).decode()
    return IssuedPlan(code=CODE, revision=revision, issued_on=on, side=side, plan=text)


RECORDS: list[tuple[str, Record, dict[str, Any]]] = [
    (
        "episodes",
        Episode(
            code=CODE,
            side=Side.LEFT,
            began_on=DAY,
            phase=StiffnessPhase.STIFF,
            irritability=Irritability.LOW,
            goals="Reach the upper shelf, 'as before'; 100 % of it.",
            note="Wakes at night.\nÄrztin informed.",
        ),
        {"phase": StiffnessPhase.THAWING, "irritability": None},
    ),
    (
        "treatments",
        Treatment(code=CODE, on=DAY, kind=TreatmentKind.INJECTION, text="by the doctor"),
        {"kind": TreatmentKind.HYDRODILATATION},
    ),
    (
        "other_side_measures",
        OtherSideMeasure(code=CODE, on=DAY, movement=Movement.FLEXION, value_deg=172.5),
        {"value_deg": 171.0},
    ),
    (
        "hand_measures",
        HandMeasure(
            code=CODE,
            on=DAY,
            movement=Movement.EXTERNAL_ROTATION_0,
            side=Side.LEFT,
            value_deg=-5.0,
            passive=True,
        ),
        {"passive": False},
    ),
    (
        "total_scores",
        TotalScore(code=CODE, on=DAY, name="Shoulder questions", total=61.5, maximum=130),
        {"total": 12.0},
    ),
    ("issued_plans", issued(), {"issued_on": DAY + timedelta(days=1)}),
]
KINDS = pytest.mark.parametrize(("kind", "record", "other"), RECORDS, ids=[r[0] for r in RECORDS])


@pytest.fixture
def practice(store: Store) -> Store:
    store.add(Person(code=CODE, name="Ada Invented", created_on=DAY))
    store.add(Person(code="INV-4"))
    return store


def listed(store: Store, kind: str, code: str = CODE) -> tuple[Record, ...]:
    found: tuple[Record, ...] = getattr(store, kind)(code)
    return found


def replaced(record: Record, **changes: Any) -> Record:
    return msgspec.structs.replace(record, **changes)


def test_people_are_there_without_sessions(practice: Store) -> None:
    assert [(p.code, p.name, p.created_on) for p in practice.people()] == [
        (CODE, "Ada Invented", DAY),
        ("INV-4", "", None),
    ]
    assert practice.patients() == ()
    with pytest.raises(Fault, match="INV-3 already"):
        practice.add(Person(code=CODE))
    with pytest.raises(Fault, match="no person with the code INV-9"):
        practice.person("INV-9")


@KINDS
def test_a_record_is_kept_changed_and_removed(
    practice: Store, place: Place, kind: str, record: Record, other: dict[str, Any]
) -> None:
    added = practice.add(record)
    assert added.id is not None
    assert replaced(added, id=None, edition=0) == record
    desk = place.open()
    assert listed(desk, kind) == (added,)
    assert listed(desk, kind, "INV-4") == ()
    changed = desk.change(replaced(added, **other))
    assert listed(practice, kind) == (changed,)
    assert replaced(changed, edition=added.edition) == replaced(added, **other)
    practice.remove(changed)
    assert listed(desk, kind) == ()


def test_all_records_of_a_person_at_once(practice: Store) -> None:
    kept = [practice.add(record) for _, record, _ in RECORDS]
    later = practice.add(replaced(_OTHER, on=DAY + timedelta(days=9), value_deg=175.0))
    found = practice.records_of(CODE)
    assert found.person == practice.person(CODE)
    assert (found.episode, found.last_plan) == (kept[0], kept[5])
    assert (*found.treatments, *found.by_hand, *found.scores) == (kept[1], kept[3], kept[4])
    assert found.other_side == (kept[2], later)
    assert found.newest_other_side == {Movement.FLEXION: later}
    empty = practice.records_of("INV-4")
    assert (empty.episode, empty.last_plan, empty.treatments) == (None, None, ())
    with pytest.raises(Fault, match="no person with the code INV-9"):
        practice.records_of("INV-9")


@KINDS
def test_what_another_desk_changed_is_not_overwritten(
    practice: Store, place: Place, kind: str, record: Record, other: dict[str, Any]
) -> None:
    seen = practice.add(record)
    changed = place.open().change(replaced(seen, **other))
    for late in (lambda: practice.change(seen), lambda: practice.remove(seen)):
        with pytest.raises(Fault, match="at another desk meanwhile"):
            late()
    assert listed(practice, kind) == (changed,)


@KINDS
def test_a_record_needs_a_known_person_and_keeps_its_own(
    practice: Store, kind: str, record: Record, other: dict[str, Any]
) -> None:
    if not isinstance(record, IssuedPlan):
        with pytest.raises(Fault, match="no person with the code INV-9"):
            practice.add(replaced(record, code="INV-9"))
        added = practice.add(record)
        with pytest.raises(Fault, match="belongs to another person than INV-4"):
            practice.change(replaced(added, code="INV-4"))
        assert listed(practice, kind) == (added,)


_EPISODE, _TREATMENT, _OTHER, _HAND, _SCORE, _PLAN = (r[1] for r in RECORDS)
SOON = date.today() + timedelta(days=30)


@pytest.mark.parametrize(
    ("record", "said"),
    [
        (replaced(_EPISODE, goals="x" * 4001), "goals is .* allowed is text of 0 to 4000"),
        (replaced(_EPISODE, began_on=SOON), "began_on is .* yet to come"),
        (replaced(_EPISODE, began_on=date(1026, 3, 4)), "years 1900 to 2199"),
        (replaced(_EPISODE, code=""), "code is .* 1 to 64 characters"),
        (replaced(_TREATMENT, kind="massage"), "kind is .* hydrodilatation, injection"),
        (replaced(_OTHER, value_deg=361.0), "value_deg is 361.* -180 to 360 degrees"),
        (replaced(_HAND, value_deg=float("nan")), "value_deg"),
        (replaced(_HAND, movement=Movement.HAND_BEHIND_BACK), "is not an angle"),
        (replaced(_HAND, on=SOON), "on is .* yet to come"),
        (replaced(_SCORE, total=131.0), "total is 131, more than the maximum 130"),
        (replaced(_SCORE, name=""), "name is .* 1 to 100 characters"),
        (replaced(_SCORE, total=0.0, maximum=0.0), "maximum is 0"),
        (replaced(_PLAN, plan="{}"), "plan is no plan"),
        (replaced(_PLAN, revision=2), "its plan has the revision 1 and not 2"),
        (replaced(_PLAN, side=Side.RIGHT), "its plan has the side left and not right"),
    ],
)
def test_what_cannot_be_is_refused_in_a_sentence(
    practice: Store, place: Place, record: Record, said: str
) -> None:
    before = place.rows()
    with pytest.raises(Fault, match=rf"^The .* was not kept: .*{said}.*; correct it\.$"):
        practice.add(record)
    assert place.rows() == before


def test_a_treatment_may_lie_ahead(practice: Store) -> None:
    assert practice.add(replaced(_TREATMENT, on=SOON)).id


def test_lists_are_in_order_of_the_day(practice: Store) -> None:
    days = [DAY + timedelta(days=n) for n in (5, -400, 2)]
    for day in days:
        practice.add(replaced(_TREATMENT, on=day))
    assert [t.on for t in practice.treatments(CODE)] == sorted(days)


def test_records_belong_to_an_episode_of_the_same_person(practice: Store) -> None:
    episode = practice.add(_EPISODE)
    elsewhere = practice.add(replaced(_EPISODE, code="INV-4"))
    with pytest.raises(Fault, match="names an episode that INV-3 does not have"):
        practice.add(replaced(_HAND, episode_id=elsewhere.id))
    kept = practice.add(replaced(_HAND, episode_id=episode.id))
    practice.remove(episode)
    assert practice.hand_measures(CODE) == (replaced(kept, episode_id=None),)


def test_a_revision_is_issued_once(practice: Store) -> None:
    practice.add(issued(1))
    practice.add(issued(2))
    with pytest.raises(Fault, match="a plan of revision 2 already"):
        practice.add(issued(2))
    assert [p.revision for p in practice.issued_plans(CODE)] == [1, 2]


def test_a_person_with_anything_is_not_removed_by_accident(
    practice: Store, invented: ModuleType
) -> None:
    practice.import_session(invented.make_session(code="INV-4"), b"x", "a.zip")
    practice.add(_EPISODE)
    for code in (CODE, "INV-4"):
        person = practice.person(code)
        with pytest.raises(Fault, match="has sessions or records"):
            practice.remove(person)
        with pytest.raises(Fault, match="cannot become OTHER"):
            practice.change(replaced(person, code="OTHER"))
    renamed = practice.change(replaced(practice.person(CODE), name="Ada Other"))
    assert practice.person(CODE) == renamed


def test_erasing_leaves_nothing_of_a_person_and_all_of_the_others(
    practice: Store, place: Place, invented: ModuleType
) -> None:
    practice.import_session(invented.make_session(code="INV-4"), b"x", "a.zip")
    practice.add(replaced(_EPISODE, code="INV-4"))
    before = place.rows()
    practice.import_session(invented.make_session(1, code=CODE), b"x", "b.zip")
    for _, record, _ in RECORDS:
        practice.add(record)
    practice.erase_person(CODE)
    assert place.rows() == before | {"patients": before["patients"] - 1}
    assert [p.code for p in practice.people()] == ["INV-4"]
