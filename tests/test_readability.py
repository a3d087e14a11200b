"""What patients read and hear is read at twelve, in each language, by published formulas.

English: Flesch-Kincaid grade level (Kincaid et al. 1975). German: first Wiener Sachtextformel
(Bamberger and Vanecek 1984). Both tell a year of school; the seventh begins at twelve. Texts are
judged in groups, since the formulas mean nothing for a caption.
"""

from __future__ import annotations

import re
import xml.etree.ElementTree as ElementTree
from collections.abc import Iterator
from pathlib import Path

import msgspec
import pytest
import textstat

from coach.catalogue import catalogue, safety
from coach.catalogue.pages import all_pages
from coach.cues.language import languages

ROOT = Path(__file__).parents[1]
TWELVE_YEARS_OLD = 6.9
HYPHENATION = {"en": "en_GB", "de": "de_DE"}
NOT_JUDGED = {
    "command", "convert", "demo", "faults", "hint", "lens", "measure", "note", "plan", "replay",
    "review",
}  # fmt: skip
"""Faults name files and devices, mostly for who installs the program; the others are for trade."""
OWN = ("place", "do", "doubt", "form", "wrong-arm", "pain")
"""Beginnings of the keys of cues that are a group of their own; all others are one."""
LEAST_WORDS = 25
"""Less is no text: one word more or less would change its year of school."""


def texts(value: object) -> Iterator[str]:
    if isinstance(value, str):
        yield value
    elif isinstance(value, tuple | list):
        for item in value:
            yield from texts(item)


def plain(markdown: str) -> str:
    """Give the sentences of a page without pictures, headings, tables and marks."""
    lines = [
        re.sub(r"^(\d+\.|-) ", "", line)
        for line in markdown.splitlines()
        if not line.startswith(("#", "|", "!["))
    ]
    return re.sub(r"\[([^\]]*)\]\([^)]*\)|[*`]", r"\1", "\n".join(lines))


def window_texts(language: str) -> Iterator[tuple[str, str]]:
    """Give the window's sentences with the part that shows them."""
    table = ElementTree.parse(ROOT / "coach" / "desktop" / "translations" / "de.ts").getroot()
    for part in table.iter("context"):
        if part.findtext("name") in NOT_JUDGED:
            continue
        for message in part.iter("message"):
            text = message.findtext("source" if language == "en" else "translation") or ""
            if text.endswith("."):
                yield f"window {part.findtext('name')}", text


def groups(language: str) -> dict[str, str]:
    found: dict[str, list[str]] = {}
    for key, (spoken, _) in languages()[language].sentences.items():
        start = next((own for own in OWN if key.startswith(own)), "course")
        found.setdefault(f"cues {start}", []).append(spoken)
    for exercise in catalogue().all:
        told = list(texts(msgspec.structs.astuple(exercise.telling[language])))
        found[f"exercise {exercise.exercise}"] = [text for text in told if text.endswith(".")]
        found[f"exercise {exercise.exercise} spoken"] = [exercise.telling[language].spoken]
    for page in all_pages():
        found[f"page {page.id}"] = list(page.telling[language].paragraphs)
    for rule in safety().rules:
        found.setdefault(f"safety {rule.when}", []).append(rule.text[language])
    for part, text in window_texts(language):
        found.setdefault(part, []).append(text)
    for path in ROOT.glob("docs/guide_patient*.md"):
        if path.stem.endswith("_de") == (language == "de"):
            found[path.name] = [plain(path.read_text("utf-8"))]
    whole = {name: re.sub(r"\{.*?\}|%n", "3", " ".join(told)) for name, told in found.items()}
    return {name: text for name, text in whole.items() if len(text.split()) >= LEAST_WORDS}


def year_of_school(text: str, language: str) -> float:
    textstat.set_lang(HYPHENATION[language])
    if language == "de":
        return float(textstat.wiener_sachtextformel(text, 1))
    return max(float(textstat.flesch_kincaid_grade(text)), grade(text))


def grade(text: str) -> float:
    """Flesch-Kincaid by groups of vowels: the library's hyphenation misses syllables of English."""
    ends = len(re.findall(r"[.!?]", text))
    words = re.findall(r"[a-z']+", text.lower())
    return 0.39 * len(words) / ends + 11.8 * sum(map(syllables, words)) / len(words) - 15.59


def syllables(word: str) -> int:
    """Count groups of vowels, less a silent e at the end."""
    found = len(re.findall(r"[aeiouy]+", word))
    return max(1, found - (word.endswith("e") and not word.endswith("le")))


def test_the_formula_is_the_published_one() -> None:
    """Counted by hand: 12 words in 2 sentences, 13 syllables; and 7 words of 27 or so."""
    easy = "The cat sat on the mat. Then it ran to the table."
    assert grade(easy) == pytest.approx(0.39 * 12 / 2 + 11.8 * 13 / 12 - 15.59)
    hard = "Progressive glenohumeral capsular contracture necessitates individualised mobilisation."
    assert grade(hard) > 20


def test_the_measures_tell_a_trade_text_from_a_plain_one() -> None:
    hard = {
        "en": "Progressive glenohumeral capsular contracture necessitates individualised "
        "mobilisation according to the irritability classification.",
        "de": "Die fortschreitende glenohumerale Kapselkontraktur erfordert eine "
        "individualisierte Mobilisationsbehandlung entsprechend der Irritabilitätsklassifikation.",
    }
    for language, text in hard.items():
        assert year_of_school(text, language) > 2 * TWELVE_YEARS_OLD


@pytest.mark.parametrize("language", HYPHENATION)
def test_every_group_of_texts_is_read_at_twelve(language: str) -> None:
    found = {name: year_of_school(text, language) for name, text in groups(language).items()}
    assert {"cues course", "page inside", "safety before-start", "window WelcomePage"} <= {*found}
    assert {name: year for name, year in found.items() if year >= TWELVE_YEARS_OLD} == {}
