"""No text out of a file can end a line, turn one around, hide in it or steer a terminal."""

from __future__ import annotations

import json
import unicodedata

import pytest

from coach.documents.plan import read_plan, write_plan
from coach.domain.fault import Fault
from coach.domain.text import UNSHOWN, shown_text
from tests.documents.example import example_plan

BIDIRECTIONAL = {"LRE", "RLE", "LRO", "RLO", "PDF", "LRI", "RLI", "FSI", "PDI"}
MARKS = (0x061C, 0x200E, 0x200F)
"""Explicit and implicit directional formatting characters of UAX #9, section 2."""


def test_what_is_refused_is_what_unicode_calls_control_separator_or_bidirectional() -> None:
    """Every character of the first 65,536 against Python's own tables of Unicode."""
    for code in range(0x10000):
        character = chr(code)
        must = (
            unicodedata.category(character) in ("Cc", "Cs", "Zl", "Zp")
            or unicodedata.bidirectional(character) in BIDIRECTIONAL
            or code in MARKS
        )
        if must:
            assert UNSHOWN.match(character), hex(code)
        elif UNSHOWN.match(character):
            assert unicodedata.category(character) in ("Cf", "Cn"), hex(code)


GERMAN = "S\u00f6hne & T\u00f6chter"
PERSIAN = "\u0645\u06cc\u200c\u062e\u0648\u0627\u0647\u0645"
FAMILY = "\U0001f468\u200d\U0001f469\u200d\U0001f467"
HIDING = ["\x1b", "\x9b", "\n", "\x7f", "\u202e", "\u2066", "\u200f", "\u2028", "\u200b", "\ufeff"]


@pytest.mark.parametrize("name", [GERMAN, PERSIAN, "\u05d3\u05d5\u05d3", FAMILY])
def test_names_of_any_script_are_taken(name: str) -> None:
    raw = json.loads(write_plan(example_plan())) | {"patient_code": name}
    assert read_plan(json.dumps(raw).encode(), "plan.json").patient_code == name


@pytest.mark.parametrize("character", HIDING)
def test_a_name_that_hides_something_is_refused(character: str) -> None:
    raw = json.loads(write_plan(example_plan())) | {"patient_code": f"A{character}B"}
    with pytest.raises(Fault, match=r"plan\.json holds a text with control characters") as refused:
        read_plan(json.dumps(raw, ensure_ascii=False).encode(), "plan.json")
    assert str(refused.value).isprintable()


def test_a_fault_shows_what_a_name_would_do() -> None:
    name = "\x1b[2Jplan\u202egnp.json\udcff\n"
    assert str(Fault(f"{name} is cut short.")) == (
        "\\x1b[2Jplan\\u202egnp.json\\udcff\\n is cut short."
    )
    assert shown_text("\u00e9 \u05d3 \u200d") == "\u00e9 \u05d3 \u200d"
