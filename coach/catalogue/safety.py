"""When not to start and when to stop, as data."""

from __future__ import annotations

from collections import Counter
from enum import StrEnum
from functools import cache
from importlib.resources import files
from typing import Annotated

import msgspec
from msgspec import Meta

from coach.catalogue.reading import read, refused
from coach.domain.exercise import Sentence, Slug
from coach.domain.fault import Fault
from coach.domain.plan import PainScore
from coach.texts import translate

FILE = "safety.toml"


class When(StrEnum):
    """What a rule asks for."""

    BEFORE_START = "before-start"
    """Do not start, and ask first."""
    STOP_NOW = "stop-now"
    """Stop this exercise and rest."""
    RING_THE_PRACTICE = "ring-the-practice"
    """Stop for today and ring the practice."""
    EMERGENCY = "emergency"
    """Stop and call for emergency help."""


class Rule(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """One thing to ask or to look out for, in words for the patient by language."""

    id: Slug
    when: When
    text: dict[Annotated[str, Meta(pattern="^[a-z]{2}$")], Sentence]
    source: Sentence


class Safety(msgspec.Struct, frozen=True, kw_only=True, forbid_unknown_fields=True):
    """All rules, and the numbers among them.

    Pain above ``pain_to_stop`` (0 to 10) ends the sitting, whatever the plan allows. Pain that is
    ``pain_rise`` or more above what it was before, for over ``pain_rise_minutes`` or into the
    night, is a reason to ask the practice before going on.
    """

    pain_to_stop: PainScore
    pain_to_stop_source: Sentence
    pain_rise: PainScore
    pain_rise_minutes: Annotated[int, Meta(ge=1, le=1440)]
    pain_rise_source: Sentence
    rules: tuple[Rule, ...]

    def when(self, when: When) -> tuple[Rule, ...]:
        """Give the rules of one kind, in the order of the file."""
        return tuple(rule for rule in self.rules if rule.when is when)


def parse_safety(data: bytes) -> Safety:
    """Read the file of rules; a ``Fault`` names the field and what may stand there."""
    where = translate("faults", "The file of stop rules {file}").format(file=FILE)
    found = read(data, Safety, where)
    for name, count in Counter(rule.id for rule in found.rules).items():
        if count > 1:
            raise refused(where, f"the rule {name} stands there {count} times")
    for rule in found.rules:
        if "en" not in rule.text:
            raise refused(where, f"the rule {rule.id} has no text.en, its words in English")
    for when in When:
        if not found.when(when):
            raise refused(where, f"no rule says {when}")
    return found


@cache
def safety() -> Safety:
    """Give the program's own rules, read once."""
    try:
        data = files("coach.catalogue").joinpath(FILE).read_bytes()
    except OSError as error:
        raise Fault(
            translate(
                "faults",
                "The file {file} is missing: install the program again.",
            ).format(file=FILE)
        ) from error
    return parse_safety(data)
