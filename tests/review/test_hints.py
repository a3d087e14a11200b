from __future__ import annotations

import msgspec
import pytest

from coach.domain.exercise import StiffnessPhase
from coach.domain.movement import Movement
from coach.review.hints import Topic, hints
from tests.review.six_patients import six_patients

FLEXION, ABDUCTION, ROTATION = (
    Movement.FLEXION,
    Movement.ABDUCTION,
    Movement.EXTERNAL_ROTATION_0,
)
OTHER = {FLEXION: 165.0, ABDUCTION: 160.0, ROTATION: 60.0}


def measured(session, values, error=5.0):
    return [
        session(0, (value,) * 3, movement=movement, error=error, other_side=OTHER[movement])
        for movement, value in values.items()
    ]


def on(topic, found):
    return [h.sentence for h in found if h.topic is topic]


def test_all_directions_limited(session):
    found = hints(measured(session, {FLEXION: 100.0, ABDUCTION: 80.0, ROTATION: 10.0}))
    (sentence,) = on(Topic.DIRECTIONS, found)
    assert sentence.startswith("All 3 measured directions of the left shoulder are limited")


def test_one_direction_limited_points_elsewhere(session):
    found = hints(measured(session, {FLEXION: 160.0, ABDUCTION: 90.0, ROTATION: 56.0}))
    (sentence,) = on(Topic.DIRECTIONS, found)
    assert "only Abduction is limited" in sentence


@pytest.mark.parametrize(
    ("values", "error"),
    [
        ({FLEXION: 100.0, ABDUCTION: 80.0}, 5.0),  # two directions are too few
        ({FLEXION: 100.0, ABDUCTION: 80.0, ROTATION: 42.0}, 5.0),  # 18 +- 5 short: 15 is inside
        ({FLEXION: 100.0, ABDUCTION: 80.0, ROTATION: 10.0}, 40.0),  # 50 +- 40
    ],
)
def test_directions_are_left_open_where_the_error_does(session, values, error):
    assert not on(Topic.DIRECTIONS, hints(measured(session, values, error)))


@pytest.mark.parametrize(
    ("value", "error", "said"),
    [
        (15.0, 5.0, "below half"),  # 25 +- 8 %
        (50.0, 5.0, "above half"),  # 83 +- 8 %
        (26.0, 5.0, None),  # 43 +- 8 %
        (15.0, 16.0, None),  # 25 +- 27 %
    ],
)
def test_rotation_is_set_against_half_of_the_other_side(session, value, error, said):
    found = on(Topic.ROTATION, hints(measured(session, {ROTATION: value}, error)))
    assert bool(found) == bool(said)
    assert all(said in sentence for sentence in found)


@pytest.mark.parametrize(
    ("rotation", "abduction", "said"),
    [
        (15.0, 120.0, "are left external rotation 25"),  # 25 +- 8 % against 75 +- 3 %
        (45.0, 60.0, "not in the order"),  # 75 against 38
        (40.0, 100.0, None),  # 67 +- 8.3 against 62.5 +- 3.1
    ],
)
def test_the_capsular_pattern_is_an_order_beyond_error(session, rotation, abduction, said):
    found = on(Topic.PATTERN, hints(measured(session, {ROTATION: rotation, ABDUCTION: abduction})))
    assert bool(found) == bool(said)
    assert all(said in sentence for sentence in found)


@pytest.mark.parametrize(
    ("who", "pain", "phase"),
    [
        ("steady gain", None, StiffnessPhase.THAWING),
        ("pain rising", None, StiffnessPhase.PAINFUL),
        ("stopped after a week", None, None),
    ],
)
def test_a_phase_is_suggested_and_never_set(who, pain, phase):
    documents = six_patients(1)[who]
    found = [h for h in hints(documents) if h.topic is Topic.PHASE]
    assert [h.phase for h in found] == ([phase] if phase else [])
    assert all("is the therapist's to set" in h.sentence for h in found)
    assert all(d.plan.phase is None for d in documents)


def test_unchanged_for_six_weeks_with_little_pain_is_the_stiff_phase():
    documents = six_patients(1)["no change"]
    assert not [h for h in hints(documents) if h.topic is Topic.PHASE]  # 41 days, not 42
    (more,) = six_patients(1)["no change"][-1:]
    later = msgspec.structs.replace(more, session_id="f" * 32, started_at="2026-02-16T09:00:00Z")
    found = [h for h in hints([*documents, later]) if h.topic is Topic.PHASE]
    assert [h.phase for h in found] == [StiffnessPhase.STIFF]


def test_every_hint_has_rule_and_source_and_none_diagnoses(session):
    found = [
        *hints(measured(session, {FLEXION: 100.0, ABDUCTION: 120.0, ROTATION: 10.0})),
        *hints(six_patients(1)["steady gain"]),
    ]
    assert {h.topic for h in found} == set(Topic)
    for hint in found:
        assert hint.rule
        assert hint.source
        text = hint.sentence.lower()
        assert not any(w in text for w in ("diagnos", "capsulitis", "frozen", "patient has"))


def test_without_the_other_side_nothing_is_compared(session):
    assert hints([session(0, (20.0,), movement=ROTATION)]) == ()
    assert hints([]) == ()
