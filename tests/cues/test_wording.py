import re
import string

import pytest

from coach.cues.language import languages
from coach.cues.wording import (
    dose_sentence,
    doubt_sentence,
    movement_sentence,
    placing_sentence,
    sentence,
)
from coach.domain.movement import VIEWS, Movement, Position, Side, View, best_view
from coach.domain.plan import PlannedExercise
from coach.domain.reading import Doubt

PLACING = (
    Doubt.NOBODY,
    Doubt.TOO_FAR,
    Doubt.TOO_CLOSE,
    Doubt.HIPS_OUT_OF_VIEW,
    Doubt.SHOULDERS_OUT_OF_VIEW,
    Doubt.ARM_OUT_OF_VIEW,
    Doubt.TURN_TO_FACE,
    Doubt.TURN_SIDEWAYS,
    Doubt.TURN_AROUND,
    Doubt.WRONG_SIDE,
)
"""What one answers by moving oneself or the camera."""
NUMBERS = {
    "number": 1,
    "count": 2,
    "repetitions": 3,
    "hold_s": 30.0,
    "done": 1,
    "asked": 3,
    "next": 2,
    "held_s": 7,
}


@pytest.mark.parametrize("side", Side)
def test_every_doubt_movement_and_view_has_a_sentence_of_its_own_for_each_side(side: Side) -> None:
    spoken = [
        *(doubt_sentence(doubt, side).spoken for doubt in Doubt),
        *(movement_sentence(movement, side).spoken for movement in Movement),
        *(placing_sentence(view, side).spoken for view in View),
    ]
    assert len(set(spoken)) == len(Doubt) + len(Movement) + len(View)


@pytest.mark.parametrize("side", Side)
@pytest.mark.parametrize(("movement", "position"), VIEWS)
def test_what_is_said_fits_how_one_stands_sits_or_lies(
    movement: Movement, position: Position, side: Side
) -> None:
    view = best_view(movement, position)
    assert view is not None
    place = placing_sentence(view, side, position).spoken
    do = movement_sentence(movement, side, position).spoken
    assert side in do
    doubts = " ".join(doubt_sentence(doubt, side, position).spoken for doubt in PLACING)
    match position:
        case Position.STANDING | Position.DOORWAY:
            assert not re.search(r"\b([Ss]it|[Ll]ie)\b", place + do)
            assert ("door" in place) is (position is Position.DOORWAY)
        case Position.SITTING:
            assert "Sit" in place
            assert not re.search(r"\b([Ss]tand|[Ll]ie)\b", place + do)
        case Position.SUPINE | Position.PRONE:
            assert ("on your back" in place) is (position is Position.SUPINE)
            assert ("face down" in place) is (position is Position.PRONE)
            # Nobody who lies can step or stand.
            assert not re.search(r"\b([Ss]tep|[Ss]tand|[Ss]it)\b", place + do + doubts)


ENGLISH = languages()["en"].sentences
EVERY = [(code, key) for code, language in languages().items() for key in language.sentences]


@pytest.mark.parametrize(("language", "key"), EVERY)
def test_each_sentence_is_whole_once_its_numbers_are_in(language: str, key: str) -> None:
    said = sentence(key, language, **NUMBERS)
    for text in (said.spoken, said.caption):
        assert not re.search(r"[{}_]", text)
        assert text[0].isupper() or text[0].isdigit()
    assert said.spoken[-1] in ".?"
    assert len(said.caption) <= 64, "does not fit one line of the window"


@pytest.mark.parametrize(("language", "key"), EVERY)
def test_spoken_sentences_are_short_and_plain(language: str, key: str) -> None:
    said = sentence(key, language, **NUMBERS).spoken
    for part in re.split(r"[.?:]", said):
        assert len(part.split()) <= 26
    for letter in said:
        assert letter.isalpha() or letter in string.digits + " .,:?'\N{RIGHT SINGLE QUOTATION MARK}"


@pytest.mark.parametrize("key", [key for key in ENGLISH if key.endswith(".left")])
def test_mirroring_a_sentence_swaps_left_and_right_and_nothing_else(key: str) -> None:
    other = {"left": "right", "right": "left", "Left": "Right", "Right": "Left"}

    def mirrored(text: str) -> str:
        swapped = re.sub("left|right|Left|Right", lambda m: other[m[0]], text)
        return swapped.replace("left angle", "right angle")

    right = ENGLISH[key.removesuffix("left") + "right"]
    assert (mirrored(ENGLISH[key][0]), mirrored(ENGLISH[key][1])) == right


@pytest.mark.parametrize(
    ("repetitions", "hold_s", "said"),
    [
        (3, 30.0, "Do this 3 times. Hold for 30 seconds each time. I count for you."),
        (1, 7.5, "Do this once. Hold for 7.5 seconds. I count for you."),
        (5, 1.0, "Do this 5 times. Hold for one second each time."),
        (1, 1.0, "Do this once. Hold for one second."),
    ],
)
def test_the_dose_is_said_in_right_grammar(repetitions: int, hold_s: float, said: str) -> None:
    planned = PlannedExercise(
        movement=Movement.FLEXION, side=Side.LEFT, hold_s=hold_s, repetitions=repetitions
    )
    assert dose_sentence(planned).spoken == said


def test_a_number_is_written_as_people_of_the_language_do() -> None:
    planned = PlannedExercise(movement=Movement.FLEXION, side=Side.LEFT, hold_s=7.5, repetitions=1)
    assert "7,5 Sekunden" in dose_sentence(planned, "de").spoken


def test_a_language_without_a_table_falls_back_to_english() -> None:
    assert sentence("hold", "xx") == sentence("hold", "en")
