"""The pages on the stiff shoulder: for whom, how long, from where, and refused when wrong."""

from __future__ import annotations

import re

import pytest

from coach.catalogue.pages import Drawing, Page, all_pages, choose_pages, pages_for, parse_pages
from coach.domain.exercise import StiffnessPhase
from coach.domain.fault import Fault

GOOD = """
id = "a"
order = {order}
phases = {phases}
drawing = "joint"
[[facts]]
claim = "A ball in a socket."
source = "Common practice."
[telling.en]
title = "A"
paragraphs = ["One two.", "Three."]
"""


def file(slug: str = "a", order: int = 1, phases: str = "[]") -> bytes:
    return GOOD.replace('id = "a"', f'id = "{slug}"').format(order=order, phases=phases).encode()


def ids(pages: tuple[Page, ...]) -> list[str]:
    return [page.id for page in pages]


@pytest.mark.parametrize("phase", [None, *StiffnessPhase])
def test_there_are_five_to_seven_and_they_end_with_when_to_ring(
    phase: StiffnessPhase | None,
) -> None:
    pages = pages_for(phase)
    assert 5 <= len(pages) <= 7
    assert pages[-1].id == "when-to-ring"
    assert {page.id for page in pages} >= {"inside", "three-phases", "pull-or-pain"}


@pytest.mark.parametrize("phase", list(StiffnessPhase))
def test_a_phase_begins_with_its_own_page_and_has_no_other_phase_s(phase: StiffnessPhase) -> None:
    first, *rest = pages_for(phase)
    assert first.phases == (phase,)
    assert all(not page.phases for page in rest)


def test_pages_of_a_phase_come_first_and_each_group_keeps_its_order() -> None:
    pages = parse_pages(
        {
            "a.toml": file("a", 3),
            "b.toml": file("b", 1),
            "c.toml": file("c", 4, '["stiff"]'),
            "d.toml": file("d", 2, '["stiff", "painful"]'),
        }
    )
    assert ids(pages) == ["b", "d", "a", "c"]
    assert ids(choose_pages(pages, None)) == ["b", "d", "a", "c"]
    assert ids(choose_pages(pages, StiffnessPhase.STIFF)) == ["d", "c", "b", "a"]
    assert ids(choose_pages(pages, StiffnessPhase.PAINFUL)) == ["d", "b", "a"]
    assert ids(choose_pages(pages, StiffnessPhase.THAWING)) == ["b", "a"]


@pytest.mark.parametrize("page", all_pages(), ids=lambda page: page.id)
def test_words_are_few_plain_and_promise_nothing(page: Page) -> None:
    told = page.words.spoken
    assert len(told.split()) <= 95
    sentences = re.split(r"(?<=[.?!]) ", told)
    assert max(len(sentence.split()) for sentence in sentences) <= 27
    # "without praise for pain, promising nothing, diagnosing nothing"
    banned = (
        r"\b(cure|cured|guarantee\w*|will heal|always works|you have a frozen|well done|great)\b"
    )
    assert not re.search(banned, told, re.IGNORECASE)
    assert page.facts
    assert all("memory" not in fact.source for fact in page.facts)


def test_lengths_of_the_phases_are_the_published_ones() -> None:
    # Common practice: 6 weeks to 9 months, 4 to 6 months, 6 months to 2 years; Kelley et al. 2013
    # counts 24 months.
    (page,) = (page for page in all_pages() if page.drawing is Drawing.COURSE)
    told = page.words.spoken
    for length in ("6 weeks to 9 months", "4 to 6 months", "6 months to 2 years", "about 2 years"):
        assert length in told
    assert any("Kelley et al. 2013" in source for source in page.sources)


def test_what_asks_for_a_call_is_all_there() -> None:
    (page,) = (page for page in all_pages() if page.id == "when-to-ring")
    told = page.words.spoken
    for sign in (
        "2 points",
        "half an hour",
        "night",
        "numb",
        "tingles",
        "weak",
        "pop",
        "fall",
        "fever",
        "hot, red joint",
        "dizzy",
        "Chest pain",
        "breathe",
        "emergency help",
    ):
        assert sign in told


@pytest.mark.parametrize(
    ("contents", "said"),
    [
        ({"b.toml": file("a")}, "id is a, whose file is a.toml"),
        ({"a.toml": file("a"), "b.toml": file("b")}, "order 1"),
        ({"a.toml": file().replace(b"[telling.en]", b"[telling.de]")}, "telling.en is missing"),
        ({"a.toml": file().replace(b'"joint"', b'"knee"')}, "drawing"),
        ({"a.toml": file().replace(b"Three.", b"word " * 96)}, "at most 95"),
        ({"a.toml": file().replace(b"source", b"from")}, "facts"),
        ({"a.toml": b"\xff"}, "UTF-8"),
    ],
)
def test_a_wrong_file_is_refused_with_its_name(contents: dict[str, bytes], said: str) -> None:
    with pytest.raises(Fault, match=re.escape(said)) as caught:
        parse_pages(contents)
    assert ".toml" in str(caught.value)
