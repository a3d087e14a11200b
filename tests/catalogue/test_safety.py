"""The stop rules: all that a practice expects are there, and a broken file is refused."""

from __future__ import annotations

from importlib.resources import files

import pytest

from coach.catalogue import When, parse_safety, safety
from coach.domain.fault import Fault

TEXT = files("coach.catalogue").joinpath("safety.toml").read_text(encoding="utf-8")

EXPECTED = {
    When.BEFORE_START: [
        "broken a bone",
        "out of its joint",
        "operation",
        "infection",
        "complex regional pain syndrome",
        "severe osteoporosis",
    ],
    When.STOP_NOW: ["more than seven", "dizzy"],
    When.RING_THE_PRACTICE: [
        "half an hour, or into the night",
        "numb or tingles",
        "weak",
        "loses its strength",
        "a pop",
        "a fall",
        "fever",
        "hot and red",
    ],
    When.EMERGENCY: ["chest pain", "breath"],
}
"""Common practice in physiotherapy of the shoulder."""


@pytest.mark.parametrize("when", When)
def test_everything_to_stop_or_to_ask_for_is_there(when: When) -> None:
    said = " ".join(rule.text["en"] for rule in safety().when(when))
    for words in EXPECTED[when]:
        assert words in said
    for rule in safety().when(when):
        assert "ommon practice" in rule.source


def test_every_rule_says_what_to_do() -> None:
    for rule in safety().rules:
        asks = {
            When.BEFORE_START: "Ask first",
            When.STOP_NOW: "Stop",
            When.RING_THE_PRACTICE: "Stop and ask",
            When.EMERGENCY: "call for emergency help now",
        }
        assert asks[rule.when] in rule.text["en"]


def test_the_numbers_of_pain() -> None:
    """Seven of ten; two points over half an hour (common practice; two points: Michener 2011)."""
    found = safety()
    assert (found.pain_to_stop, found.pain_rise, found.pain_rise_minutes) == (7, 2, 30)
    assert "Michener et al. 2011" in found.pain_rise_source
    assert "above 7" in found.pain_to_stop_source


@pytest.mark.parametrize(
    ("old", "new", "words"),
    [
        ("pain_to_stop = 7", "pain_to_stop = 11", "pain_to_stop: expected a whole number <= 10"),
        ("pain_rise = 2\n", "", "missing required field pain_rise"),
        ('id = "fall"', 'id = "pop"', "the rule pop stands there 2 times"),
        ('when = "stop-now"', 'when = "later"', "invalid enum value 'later'"),
        ('text.en = "If you have chest', 'text.xx = "If you have chest', "chest-pain has no text"),
        ("[[rules]]", "[[rule]]", "unknown field rule"),
        ("pain_rise_minutes = 30", "pain_rise_minutes =", "it is not TOML"),
    ],
)
def test_a_broken_file_is_refused(old: str, new: str, words: str) -> None:
    assert old in TEXT
    with pytest.raises(Fault, match=r"^The file of stop rules safety\.toml cannot be used") as no:
        parse_safety(TEXT.replace(old, new, 1).encode())
    assert words in str(no.value)


def test_no_kind_of_rule_may_be_empty() -> None:
    with pytest.raises(Fault, match="no rule says emergency"):
        parse_safety(TEXT.replace('when = "emergency"', 'when = "stop-now"').encode())
