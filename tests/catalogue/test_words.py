"""The words for patients: for either side, unseen, short, plain, and never praising pain."""

from __future__ import annotations

import re
from collections.abc import Iterator

import msgspec
import pytest

from coach.catalogue import catalogue, safety
from coach.domain.exercise import Exercise, Telling
from coach.domain.movement import Position, View

ALL = catalogue().all
NAMES = [exercise.exercise for exercise in ALL]
SHOWN_CHARACTERS = 45
"""What a shown line takes in large type."""


def texts(value: object) -> Iterator[str]:
    if isinstance(value, str):
        yield value
    elif isinstance(value, tuple | list):
        for item in value:
            yield from texts(item)


def words_of(telling: Telling) -> list[str]:
    return list(texts(msgspec.structs.astuple(telling)))


def sentences(telling: Telling) -> list[str]:
    shown = (telling.title, telling.short, telling.laptop[1])
    return [text for text in words_of(telling) if text not in shown]


@pytest.mark.parametrize("exercise", ALL, ids=NAMES)
def test_they_hold_for_either_side_and_have_no_digits(exercise: Exercise) -> None:
    for text in words_of(exercise.telling["en"]):
        assert not re.search(r"\b(left|right)\b|\d", text, re.IGNORECASE), text
        assert text == " ".join(text.split()), text
        assert text.isascii(), text


@pytest.mark.parametrize("exercise", ALL, ids=NAMES)
def test_what_is_shown_is_short_and_what_is_read_is_whole_sentences(exercise: Exercise) -> None:
    telling = exercise.telling["en"]
    for text in (telling.title, telling.short, telling.laptop[1]):
        assert len(text) <= SHOWN_CHARACTERS, text
        assert not text.endswith("."), text
    for text in sentences(telling):
        assert text[0].isupper(), text
        assert text.endswith("."), text


def test_titles_tell_exercises_apart() -> None:
    for field in ("exercise", "name"):
        assert len({getattr(exercise, field) for exercise in ALL}) == len(ALL)
    assert len({exercise.telling["en"].title for exercise in ALL}) == len(ALL)


@pytest.mark.parametrize("exercise", ALL, ids=NAMES)
def test_spoken_words_make_sense_without_the_screen(exercise: Exercise) -> None:
    telling = exercise.telling["en"]
    for text in (telling.spoken, telling.laptop[0], *telling.cautions):
        pointing = r"\b(picture|screen|shown|see below|above|this way|like this|arrow|figure)\b"
        assert not re.search(pointing, text), text


@pytest.mark.parametrize("exercise", ALL, ids=NAMES)
def test_the_instruction_ends_where_it_would_hurt(exercise: Exercise) -> None:
    telling = exercise.telling["en"]
    assert re.search(r"not where it hurts|not to hurt|not hurt|if it hurts", telling.spoken)
    for text in words_of(telling):
        assert not re.search(r"\b(push through|as far as you can|force|harder|no pain)\b", text)


@pytest.mark.parametrize("exercise", ALL, ids=NAMES)
def test_every_exercise_has_cautions_of_its_own(exercise: Exercise) -> None:
    cautions = " ".join(exercise.telling["en"].cautions)
    assert cautions
    if exercise.position is Position.PRONE:
        assert "neck" in cautions
    if exercise.position is Position.DOORWAY:
        assert "Stand firmly" in cautions
    if "forward" in exercise.name and exercise.movement is None:
        assert "dizzy" in cautions


@pytest.mark.parametrize("name", ["stick-flexion-lying", "wall-walk-forward", "wall-walk-sideways"])
def test_reaching_overhead_warns_of_dizziness(name: str) -> None:
    assert "dizzy" in " ".join(catalogue().get(name).telling["en"].cautions)


SEEN_FROM = {
    View.FRONT: ("face the laptop", "face it"),
    View.BACK: ("your back to it",),
    View.SIDE: ("side of your stiff arm",),
    View.FOOT: ("feet towards it",),
}


@pytest.mark.parametrize("exercise", ALL, ids=NAMES)
def test_the_laptop_goes_where_the_view_needs_it(exercise: Exercise) -> None:
    spoken = exercise.telling["en"].laptop[0]
    assert any(words in spoken for words in SEEN_FROM[exercise.view])
    others = {view for view in View if view is not exercise.view}
    if exercise.exercise != "wall-walk-sideways":  # the wall, too, is at the stiff arm's side
        assert not any(words in spoken for view in others for words in SEEN_FROM[view])


@pytest.mark.parametrize("exercise", ALL, ids=NAMES)
def test_no_word_of_the_trade_is_needed(exercise: Exercise) -> None:
    telling = exercise.telling["en"]
    trade = r"(?i)\b(abduct|adduct|flexion|rotat|extension|scapul|humer|supine|prone|capsul)"
    for text in words_of(telling):
        assert not re.search(trade, text), text


def test_the_stop_rules_are_plain_too() -> None:
    for rule in safety().rules:
        assert rule.text["en"].endswith(".")
        assert not re.search(r"\b(left|right)\b|\d", rule.text["en"])
